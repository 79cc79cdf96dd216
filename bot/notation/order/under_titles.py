"""Numbered lines under a name on a line of its own: `squat`, `set 1: 100x5`, `set 2: 100x5`, `bench`, `set 1: 80x8`.

A number of a set counts from its own exercise's first one. Without the name beside it, `set 1` of the second exercise
would be the first one of the exercise before, put right.
"""

from collections.abc import Iterator
from dataclasses import replace

from bot.notation.bounds import MOST_SETS
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BULLETS = (Kind.COLON, Kind.CLOSE, Kind.STOP, Kind.DASH)
_NUMBERS = (Kind.NUM, Kind.BODY, Kind.SIGN, Kind.PLUS)
_TITLE = (Kind.NAME, Kind.COLON, Kind.DASH, Kind.STOP, Kind.FILL, Kind.COMMA)


def under_titles(marks: list[Mark]) -> list[Mark]:
    """The marks with such lines behind their name, in one sentence with it."""
    out = list(marks)
    dropped: set[int] = set()
    title: int | None = None
    ends: list[int] = []
    for start, end in _lines(marks):
        said = [i for i in range(start, end) if marks[i].kind is not Kind.FILL]
        if not said:
            ends.append(end)
        elif _is_title(marks, start, end):
            title, ends = end, [end]
        elif title is not None and (label := _label(marks, said)) is not None:
            first = ends[0] == title
            for i, line in enumerate(ends):
                out[line] = replace(marks[line], kind=Kind.FILL if first or i else Kind.COMMA)
            if label != said[0]:
                out[said[0]] = replace(marks[said[0]], kind=Kind.LABEL)
                dropped.add(label)
            ends = [end]
        else:
            title = None
    return [m for i, m in enumerate(out) if i not in dropped]


def _lines(marks: list[Mark]) -> Iterator[tuple[int, int]]:
    """Where each line or sentence starts, and where its end stands (one beyond the marks for the last)."""
    start = 0
    for place in range(len(marks) + 1):
        ends = place == len(marks) or marks[place].kind is Kind.LINE
        if ends or (marks[place].kind is Kind.STOP and [m.kind for m in marks[start:place]] != [Kind.NUM]):
            yield start, place
            start = place + 1


def _is_title(marks: list[Mark], start: int, end: int) -> bool:
    """Whether a line is a name and no more."""
    line = marks[start:end]
    names = [m for m in line if m.kind is Kind.NAME]
    return end < len(marks) and len(names) == 1 and bool(names[0].names) and all(m.kind in _TITLE for m in line)


def _label(marks: list[Mark], said: list[int]) -> int | None:
    """Where the number of a set at a line's start ends: its own place for `set 1`, its bullet's for `1:`; else none."""
    first = marks[said[0]]
    if first.kind is Kind.SET and kind_at(marks, said[0] + 1) is Kind.NUM:
        return said[0]
    if (
        first.kind is Kind.ORD
        and len(said) > 1
        and marks[said[1]].kind in (Kind.SET, Kind.WORKSET, *_BULLETS, Kind.NUM)
    ):
        return said[0]
    counted = first.kind is Kind.NUM and first.value is not None and first.value == int(first.value)
    bullet = len(said) > 2 and marks[said[1]].kind in _BULLETS and marks[said[2]].kind in _NUMBERS
    return said[1] if counted and bullet and first.value is not None and 1 <= first.value <= MOST_SETS else None
