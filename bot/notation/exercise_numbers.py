"""An exercise told by its place in the session: `first exercise`, `exercise 2`, `ex 3:`, `the last exercise`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_WORDS = frozenset(["exercise", "ex", "excercise", "exercice", "movement", "lift"])


def exercises_by_number(marks: Sequence[Mark], count: int) -> list[Mark]:
    """The marks with such words as names. `count`: the exercises of the session."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, end = marks[at], at + 1
        place = _place(marks, at)
        if mark.kind is Kind.THEREST and mark.text.endswith(("last exercise", "final exercise")):
            place = count
        elif place is not None:
            end = at + 2
        if place is not None and 1 <= place <= count:
            last = marks[end - 1]
            out.append(replace(mark, kind=Kind.NAME, names=(place - 1,), value=None, parts=(), end=last.end))
            at = end
            continue
        out.append(mark)
        at += 1
    return out


def _place(marks: Sequence[Mark], at: int) -> int | None:
    """The place that two words from here name, which open a part or stand before a colon or a number."""
    mark, after = marks[at], marks[at + 1] if at + 1 < len(marks) else None
    if after is None or kind_at(marks, at - 1) not in (None, *EDGES, Kind.FILL, Kind.THEN, Kind.AND, Kind.NUM):
        return None
    word = after.text in _WORDS and kind_at(marks, at + 2) in (Kind.COLON, Kind.NUM, Kind.WAS, Kind.COMMA, Kind.DASH)
    if mark.kind is Kind.ORD and mark.value is not None and word:
        return int(mark.value)
    numbered = text_at(marks, at) in _WORDS and after.kind is Kind.NUM and after.value is not None
    told = kind_at(marks, at + 2) in (Kind.COLON, Kind.NUM, Kind.COMMA, Kind.DASH)
    whole = numbered and after.value is not None and after.value == int(after.value)
    return int(after.value) if whole and told and after.value is not None else None
