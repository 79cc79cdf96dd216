"""Small grammars of whole clauses, written as word classes in a row.

A frame is a row of classes, each one of some phrases (`one_of`), which may be missing (`maybe`); every word of it has a
space behind it, so that classes stand beside each other as they are said. It is looked for in the words of a message
where a clause may begin and must end where one may end.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def one_of(*lines: str) -> str:
    """One of the phrases in these lines, which `; ` parts.

    >>> one_of("done; all done; all over")
    '(?:done |all (?:done |over ))'
    """
    phrases = [" ".join(one.split()) for line in lines for one in line.split(";")]
    return "(?:" + _branches([one.split() for one in dict.fromkeys(phrases) if one]) + ")"


def _branches(phrases: Sequence[Sequence[str]]) -> str:
    """Phrases, each word that several begin with said once: found as they are in a row, in a part of the time.

    Those with one first word may stand together, for of two first words only one can be said at a place; but none goes
    past the end of a shorter phrase that stands before it.
    """
    rows: list[dict[str, list[Sequence[str]]]] = [{}]
    for phrase in phrases:
        if not phrase:
            rows += [{"": []}, {}]
        else:
            rows[-1].setdefault(phrase[0], []).append(phrase[1:])
    return "|".join(_branch(first, rest) for row in rows for first, rest in row.items())


def _branch(first: str, rest: Sequence[Sequence[str]]) -> str:
    if not first:
        return ""
    behind = _branches(rest)
    word = f"{re.escape(first)} "
    return f"{word}(?:{behind})" if behind else word


def maybe(*lines: str) -> str:
    """One of the phrases, or nothing."""
    return one_of(*lines) + "?"


def some(*lines: str) -> str:
    """A few of the phrases in a row, none too: few enough that a message of nothing else is read in no time."""
    return one_of(*lines) + "{0,6}"


def any_of(*frames: str) -> str:
    """One of these frames."""
    return "(?:" + "|".join(frames) + ")"


@dataclass(frozen=True, slots=True)
class Said:
    """The words of a message in a row, and where each mark begins in it."""

    text: str
    starts: dict[int, int]
    """The place of the mark that begins at a letter of the text."""
    letters: tuple[int, ...]
    """Where each mark begins."""

    def letter(self, place: int) -> int:
        """Where the mark at a place begins in the text."""
        return self.letters[place]

    def place(self, at: int) -> int:
        """The place of the mark that begins at a letter, or one past the last."""
        return self.starts[at]


def said_of(marks: Sequence[Mark]) -> Said:
    """The words of marks in a row, each with a space behind it; a line's end is `¶`."""
    parts: list[str] = []
    starts: dict[int, int] = {}
    at = 0
    for place, mark in enumerate(marks):
        starts[at] = place
        part = "¶ " if mark.kind is Kind.LINE else f"{mark.text} "
        parts.append(part)
        at += len(part)
    starts[at] = len(marks)
    return Said("".join(parts), starts, tuple(starts))


@cache
def compiled(frame: str) -> re.Pattern[str]:
    """A frame, ready to be looked for."""
    return re.compile(frame)


_JOINING = frozenset(
    (
        "and",
        "so",
        "then",
        "but",
        "ok",
        "okay",
        "right",
        "well",
        "now",
        "anyway",
        "also",
        "-",
        ":",
        "=",
        "cos",
        "because",
        "coach",
        "yep",
        "yes",
        "done",
        "sorry",
        "&",
    )
)
_TOLD = frozenset(("kg", "kgs", "kilos", "kilo", "lb", "lbs", "reps", "rep", "each", "times", "s", "sec", "secs", "bw"))


def clause_starts(marks: Sequence[Mark]) -> Iterator[int]:
    """Where a clause may begin: behind an edge, a word that joins, or a set that is told."""
    for place in range(len(marks)):
        before = marks[place - 1] if place else None
        told = before is not None and (before.kind is Kind.NUM or before.text in _TOLD)
        if before is None or before.kind in EDGES or before.text in _JOINING or told:
            yield place


def put(said: Sequence[Mark], plain: str) -> list[Mark]:
    """The words of `plain` as marks in the place of those that were typed; `,` among them parts."""
    start, end = said[0].start, said[-1].end
    typed = plain.split()
    places = [said[i].start if i < len(said) else min(start + i, end) for i in range(len(typed))]
    ends = [*places[1:], end]
    return [
        replace(
            said[0],
            kind=Kind.COMMA if word == "," else Kind.WORD,
            value=None,
            parts=(),
            text=word,
            start=places[i],
            end=ends[i],
            tight=said[0].tight and i == 0,
        )
        for i, word in enumerate(typed)
    ]
