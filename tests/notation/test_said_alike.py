"""Words that say the same are read the same: pairs of phrases put one for the other in the hands' messages.

Each pair is tried on messages that have the first phrase; the share of readings that stay as they were must not fall
below what it was measured to be. The rest are sentences in which the two do not mean the same (`left` of a side).
"""

import json
import re
from collections.abc import Sequence
from functools import cache

import pytest

from bot.cli.read import ReadRequest
from bot.notation.reading import read_message
from tests.notation.judging import CORPUS

MOST = 16
"""Messages that a pair is tried on."""

PAIRS: tuple[tuple[str, str, float], ...] = ()


@cache
def messages() -> tuple[tuple[str, str], ...]:
    """Text and request of every message of the hands that may be looked at."""
    rows = (
        json.loads(line)["request"]
        for file in sorted(CORPUS.glob("hand_*.jsonl"))
        for line in file.read_text("utf-8").splitlines()
    )
    return tuple((row["text"], json.dumps(row)) for row in rows)


@cache
def reading(request: str, text: str) -> object:
    """What is kept of a text, and whether it is asked about."""
    read = read_message(ReadRequest.model_validate({**json.loads(request), "text": text}).request())
    kept = (read.performed, read.replaces, read.skipped, read.finished, read.pain, read.minutes, read.day)
    return (*kept, read.question, read.ask is None)


def put(said: str, alike: str, text: str) -> str:
    """The text with one phrase for the other, as whole words where it is written in letters."""
    words = said if said.startswith("(?") else rf"(?<![\w'-])(?:{said})(?![\w'-])"
    return re.sub(words, alike, text, flags=re.IGNORECASE)


def tried(said: str, alike: str) -> Sequence[tuple[str, str, str]]:
    """Requests with their texts as typed and as said alike, spread over all hands."""
    found = [(row, text, put(said, alike, text)) for text, row in messages() if put(said, alike, text) != text]
    return found[:: max(1, len(found) // MOST)][:MOST]


@pytest.mark.parametrize(("said", "alike", "least"), PAIRS, ids=[f"{said}->{alike}" for said, alike, _ in PAIRS])
def test_what_says_the_same_is_read_the_same(said: str, alike: str, least: float) -> None:
    cases = tried(said, alike)
    changed = [other for row, text, other in cases if reading(row, text) != reading(row, other)]
    assert len(cases) > 2
    assert 1 - len(changed) / len(cases) >= least, changed
