"""The load of two dumbbells told both ways: `28 total ie 14 a hand`, `32kg total (2 x 16s)`."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS, past
from bot.notation.tokens import Mark

_BETWEEN = (Kind.FILL, Kind.WORD, Kind.GAP, Kind.OPEN, Kind.COMMA, Kind.DASH, Kind.WAS, Kind.OR, Kind.SLASH, Kind.COLON)
_ONE_HAND = (Kind.S, Kind.HAND, Kind.EACH)
Said = tuple[int, int, bool]
"""Where a load starts and ends, and whether it is of both hands."""


def one_hand(marks: list[Mark]) -> list[Mark]:
    """The marks with the total without bearing, where the number of one hand stands beside it and is half of it."""
    marks = _together(marks)
    out = list(marks)
    said = _loads(marks)
    for one, two in pairwise(said):
        between = marks[one[1] : two[0]]
        total, hand = (one, two) if one[2] else (two, one)
        if one[2] is two[2] or _value(marks, total) != 2 * _value(marks, hand):
            continue
        if not all(m.kind in _BETWEEN for m in between):
            if _is_once_more(between):
                out = [replace(m, kind=Kind.FILL, value=None, parts=()) if two[0] <= i < two[1] else m
                       for i, m in enumerate(out)]  # fmt: skip
            continue
        gone = {*range(total[0], total[1]), *range(one[1], two[0])}
        gone |= {two[1]} if kind_at(marks, two[1]) is Kind.CLOSE else set()
        start = hand[0] + 2 * (kind_at(marks, hand[0] + 1) is Kind.X)
        gone |= set(range(hand[0], start))
        out = [replace(m, kind=Kind.FILL, value=None, parts=()) if i in gone else m for i, m in enumerate(out)]
    return out


def _together(marks: list[Mark]) -> list[Mark]:
    """`both dumbbells together 28`, `28 for 11, thats both together`: the words behind the number that they are of."""
    out = list(marks)
    place = 0
    while place < len(out):
        spoken = past(out, max(place - 1, 0), Kind.FILL) == place and place > 1
        if out[place].kind is Kind.TOTAL and out[place].text == "both hands" and spoken:
            held = out[place - 1].text == "in" and kind_at(out, place - 2) in (Kind.S, *UNITS)
            out[place] = replace(out[place], kind=Kind.HAND if held else Kind.TOTAL)
        if out[place].kind is not Kind.TOTAL:
            place += 1
            continue
        stop = past(out, place, Kind.TOTAL)
        before = kind_at(out, place - 1)
        if before in (*_OPENS, Kind.OPEN, Kind.WAS):
            number = past(out, stop, Kind.FILL, Kind.WAS, Kind.COLON)
            end = number + 1 + (kind_at(out, number + 1) in UNITS)
            free = kind_at(out, end) in (None, Kind.COMMA, Kind.FOR, Kind.X, Kind.STOP, Kind.LINE)
            if before in _OPENS and kind_at(out, number) is Kind.NUM and free:
                total = replace(out[place], start=out[end - 1].end, end=out[end - 1].end)
                gone = [replace(m, kind=Kind.FILL) for m in out[place:number]]
                out[place:end] = [*gone, *out[number:end], total]
                return out
            load = _load_before(out, place) if before in (Kind.OPEN, Kind.WAS) else None
            if load is not None and kind_at(out, stop) in (None, Kind.CLOSE, Kind.STOP, Kind.COMMA, Kind.LINE):
                total = out[place]
                out[place:stop] = [replace(m, kind=Kind.FILL) for m in out[place:stop]]
                out.insert(load, total)
                return out
        place = stop
    return out


_OPENS = (None, Kind.NAME, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.COLON)


def _load_before(marks: Sequence[Mark], place: int) -> int | None:
    """Where the only load before a place ends, `28 for 11` before `thats both together`; `None` without one."""
    at = place
    while kind_at(marks, at - 1) in (Kind.OPEN, Kind.WAS, Kind.COMMA, Kind.FILL, Kind.REPS):
        at -= 1
    linked = [kind_at(marks, at - 2), kind_at(marks, at - 1)] in ([Kind.FOR, Kind.NUM], [Kind.X, Kind.NUM])
    alone = sum(m.kind is Kind.NUM for m in marks) == len(("load", "repetitions"))
    load = at - 2
    return load if linked and alone and kind_at(marks, load - 1) in (Kind.NUM, *UNITS) else None


def _is_once_more(between: Sequence[Mark]) -> bool:
    """`total for 11 so thats`: the load of one hand is only reckoned, behind the repetitions."""
    numbers = [i for i, m in enumerate(between) if m.kind is Kind.NUM]
    linked = len(numbers) == 1 and between[max(0, numbers[0] - 1)].kind in (Kind.FOR, Kind.X, Kind.COMMA)
    rest = between[numbers[0] + 1 :] if linked else ()
    apart = bool(rest) and rest[-1].kind in (Kind.OPEN, Kind.COMMA) and len(rest) == 1
    reckoned = apart or bool({w for m in rest for w in m.text.split()} & _RECKONED)
    return reckoned and all(m.kind in (*_BETWEEN, Kind.REPS, Kind.STOP) for m in rest)


_RECKONED = frozenset(["so", "thats", "making", "ie", "meaning", "which", "is"])


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
