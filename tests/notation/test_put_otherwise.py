"""A message put otherwise says the same: greeted, thanked for, in brackets, with other signs between its parts.

Every sixteenth labelled message that is read as labelled is put otherwise in each of these ways and read again. The
share that reads as before must not fall below what it was measured to be; the rest is where a comma or a bracket does
say something.
"""

import json
import re
from collections.abc import Callable
from functools import cache
from typing import Any

import pytest

from bot.cli.read import answer
from tests.notation.judging import CORPUS, Row, differences, rows_of, stored

EACH = 16
"""Of the labelled messages one in so many is tried."""

COURTESIES: tuple[Callable[[str], str], ...] = (
    lambda text: f"ok {text}",
    lambda text: f"hey coach, {text}",
    lambda text: f"so {text}",
    lambda text: f"{text} thanks",
    lambda text: f"{text}, cheers coach",
    lambda text: f"{text} 😊",
    lambda text: text.replace(" and ", " & "),
    lambda text: text.replace(" and ", " n "),
    lambda text: text.upper(),
)
"""What never changes a reading."""


@cache
def _tried() -> tuple[tuple[Row, Row], ...]:
    """Requests, with the answers that are as labelled."""
    names = [path.stem for path in sorted(CORPUS.glob("hand_*.jsonl"))]
    rows = [row for name in ("shared", *names) for row in rows_of(name)][::EACH]
    answered = [(row, answer(json.dumps(row["request"]))) for row in rows]
    return tuple((row["request"], got) for row, got in answered if not differences(row["answer"], got))


def _told(got: Row) -> tuple[Any, ...]:
    """What is kept of an answer, and whether it asks."""
    kept = tuple(json.dumps(got[key]) for key in ("finished", "minutes", "day", "pain"))
    return stored(got), kept, sorted(got["skipped"]), got["ask"] is None


def _otherwise(put: Callable[[str], str]) -> tuple[int, list[str]]:
    """How many messages the way of putting changes at all, and those that then read otherwise."""
    changed = [(one, got, put(one["text"])) for one, got in _tried() if put(one["text"]) != one["text"]]
    out = [text for one, got, text in changed if _told(answer(json.dumps({**one, "text": text}))) != _told(got)]
    return len(changed), out


@pytest.mark.parametrize("put", COURTESIES)
def test_courtesies_change_no_reading(put: Callable[[str], str]) -> None:
    """A greeting, thanks, a face, `n` for `and`, capitals: whatever is told reads the same with them."""
    tried, otherwise = _otherwise(put)
    assert tried > 100
    assert otherwise == []


def _at_commas(sign: str) -> Callable[[str], str]:
    """Puts a sign for each comma that stands before a word."""
    return lambda text: re.sub(r", (?=\D)", sign, text)


SIGNS: tuple[tuple[str, float, Callable[[str], str]], ...] = (
    ("no comma", 0.96, lambda text: re.sub(r",(?= \D)", "", text)),
    ("full stop", 0.98, _at_commas(". ")),
    ("dots", 0.98, _at_commas("... ")),
    ("line", 0.98, _at_commas("\n")),
    ("dash", 0.98, _at_commas(" - ")),
    ("brackets", 0.99, lambda text: re.sub(r", ([^,\d]+)$", r" (\1)", text)),
    ("comma for a stop", 0.97, lambda text: re.sub(r"\. (?=\D)", ", ", text)),
    ("semicolon for a stop", 0.98, lambda text: re.sub(r"\. (?=\D)", "; ", text)),
)


@pytest.mark.parametrize(("least", "put"), [one[1:] for one in SIGNS], ids=[one[0] for one in SIGNS])
def test_other_signs_change_few_readings(least: float, put: Callable[[str], str]) -> None:
    """Another sign between two parts of a message leaves nearly every reading as it was."""
    tried, otherwise = _otherwise(put)
    assert tried > 50
    assert 1 - len(otherwise) / tried >= least, otherwise
