"""The load of two dumbbells told both ways: `28 total ie 14 a hand`, `32kg total (2 x 16s)`."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark

_BETWEEN = (Kind.FILL, Kind.WORD, Kind.GAP, Kind.OPEN, Kind.COMMA, Kind.DASH, Kind.WAS, Kind.OR, Kind.SLASH, Kind.COLON)
_ONE_HAND = (Kind.S, Kind.HAND, Kind.EACH)
Said = tuple[int, int, bool]
"""Where a load starts and ends, and whether it is of both hands."""


def one_hand(marks: list[Mark]) -> list[Mark]:
    """The marks with the total without bearing, where the number of one hand stands beside it and is half of it."""
    out = list(marks)
    said = _loads(marks)
    for one, two in pairwise(said):
        between = marks[one[1] : two[0]]
        apart = all(m.kind in _BETWEEN for m in between) and one[2] is not two[2]
        total, hand = (one, two) if one[2] else (two, one)
        if not apart or _value(marks, total) != 2 * _value(marks, hand):
            continue
        gone = {*range(total[0], total[1]), *range(one[1], two[0])}
        gone |= {two[1]} if kind_at(marks, two[1]) is Kind.CLOSE else set()
        start = hand[0] + 2 * (kind_at(marks, hand[0] + 1) is Kind.X)
        gone |= set(range(hand[0], start))
        out = [replace(m, kind=Kind.FILL, value=None, parts=()) if i in gone else m for i, m in enumerate(out)]
    return out


def _loads(marks: Sequence[Mark]) -> list[Said]:
    """The loads that say whether they are of one hand or of both."""
    found: list[Said] = []
    place = 0
    while place < len(marks):
        paired = _is_pair(marks, place)
        start = place + 2 if paired else place
        end = _end(marks, start)
        if end is None:
            place += 1
            continue
        both = marks[end - 1].kind is Kind.TOTAL
        found.append((place, end, both))
        place = end
    return found


def _is_pair(marks: Sequence[Mark], place: int) -> bool:
    """`2 x` before what one hand holds."""
    return kind_at(marks, place) is Kind.NUM and marks[place].value == 2 and kind_at(marks, place + 1) is Kind.X


def _end(marks: Sequence[Mark], place: int) -> int | None:
    if kind_at(marks, place) is not Kind.NUM or marks[place].value is None:
        return None
    at = place + 1 + (kind_at(marks, place + 1) in UNITS)
    return at + 1 if kind_at(marks, at) in (Kind.TOTAL, *_ONE_HAND) else None


def _value(marks: Sequence[Mark], said: Said) -> int:
    """The number of a load, in thousandths."""
    place = said[0] + 2 * _is_pair(marks, said[0])
    return int((marks[place].value or 0) * 1000)
