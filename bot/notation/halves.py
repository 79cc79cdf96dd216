"""One set told on both sides of its name: `60 on the sled, 20m`, `500m on the erg, took me 1:58`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_LOADS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
_COUNTS = (Kind.REPS, Kind.METRES, Kind.M, Kind.SECONDS)
_FAR = (Kind.METRES, Kind.M)
_NUMBERS = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.BAD, Kind.SAMELOAD)
_ENDS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)


def completes(before: Sequence[Mark], marks: Sequence[Mark]) -> bool:
    """Whether marks behind a name go on with the one number before it: a load with its counts, metres with their load
    or with the time that they took.
    """
    first = [i for i, m in enumerate(before) if m.kind in _NUMBERS]
    second = [i for i, m in enumerate(marks) if m.kind in _NUMBERS]
    if len(first) != 1 or not second or any(m.kind in (*_LINKS, Kind.LABEL, Kind.SETS) for m in before[: first[0]]):
        return False
    one, two = kind_at(before, first[0] + 1), kind_at(marks, second[0] + 1)
    if before[first[0]].kind is not Kind.NUM:
        return False
    if one in _LOADS:
        return marks[second[0]].kind is Kind.NUM and two in _COUNTS
    if one is Kind.WITH and kind_at(before, first[0] + 2) is None and marks[second[0]].kind is Kind.NUM:
        return two in _FAR
    if one in _FAR and len(second) == 1:
        alone = two in (None, Kind.STOP, Kind.COMMA, Kind.LINE, Kind.KG, Kind.LB)
        return marks[second[0]].kind is Kind.CLOCK or (marks[second[0]].kind is Kind.NUM and alone)
    return False


def is_only_timed(before: Sequence[Mark], rest: Sequence[Mark]) -> bool:
    """Whether metres stand before a name, and behind it only the time that they took: `500m on the erg in 1:58`."""
    end = next((i for i, m in enumerate(rest) if m.kind in _ENDS), len(rest))
    numbers = [m.kind for m in rest[:end] if m.kind in _NUMBERS]
    told = [i for i, m in enumerate(before) if m.kind is Kind.NUM]
    return numbers == [Kind.CLOCK] and len(told) == 1 and kind_at(before, told[0] + 1) in _FAR
