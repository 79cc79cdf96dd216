"""How many sets there were, told before each: `got all three in, 70 for 6, 5 and 5`, `the first two, 90x10, 9`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark

_LISTING = (Kind.NUM, Kind.X, Kind.FOR, Kind.COLON, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.THEN)
_EACH = 2
"""Links of two loads: with so many of them each set has a load of its own."""


def lists(marks: Sequence[Mark], at: int, count: int) -> bool:
    """Whether the part behind `got all three in` tells so many sets, one by one: `70 for 6, 5 and 5`."""
    kinds: list[Kind] = []
    united = kind_at(marks, at + 1) in UNITS
    while kind_at(marks, at) in (*_LISTING, *UNITS):
        kinds += [marks[at].kind] if marks[at].kind not in UNITS else []
        at += 1
    while kinds and kinds[-1] is not Kind.NUM:
        kinds.pop()
    load = kinds[:1] == [Kind.NUM] and (kinds[1:2] in ([Kind.X], [Kind.FOR], [Kind.COLON]) or united)
    linked = sum(k in (Kind.X, Kind.FOR) for k in kinds)
    each = linked == count and kinds.count(Kind.NUM) == 2 * count
    return count > 1 and (each or (linked < _EACH and kinds.count(Kind.NUM) == count + load))


def told_ahead(marks: list[Mark], place: int, told_of: Context) -> None:
    """`did the first two, 90x10 and 90x9`, `two down: 90x10, 9`, `all three in, 90 for 10, 9, 8`: how many there are is
    told in a part of its own, before they are told one by one."""
    value = marks[place].value
    if value is None or not 1 < value <= len(told_of.exercise.sets) or value != int(value):
        return
    if any(m.kind not in _BEFORE for m in marks[:place]):
        return
    at = place + 1
    while kind_at(marks, at) in _BEHIND:
        at += 1
    which = {m.kind for m in marks[:place]} & set(_WHICH)
    last = any(m.kind in (Kind.LASTREP, Kind.LASTSET) for m in marks[:place])
    said = which or any(m.kind is not Kind.SETS for m in marks[place + 1 : at])
    alike = any(m.kind is Kind.ORD and m.value != 1 for m in marks[:place])
    edge = kind_at(marks, at) in (Kind.COMMA, Kind.COLON, Kind.DASH, Kind.STOP)
    if (
        not (said and edge)
        or alike
        or (last and len(told_of.open_sets) != value)
        or not lists(marks, at + 1, int(value))
    ):
        return
    for i, mark in enumerate(marks[: place + 1]):
        if mark.kind in (*_WHICH, Kind.NUM):
            marks[i] = replace(mark, kind=Kind.FILL, value=None, parts=())
    for i in range(place + 1, at):
        if marks[i].kind in (Kind.DONE, Kind.SETS):
            marks[i] = replace(marks[i], kind=Kind.FILL)


_WHICH = (Kind.ORD, Kind.LASTREP, Kind.LASTSET, Kind.ALL)
_BEFORE = frozenset((*_WHICH, Kind.FILL, Kind.WAS, Kind.NAME, Kind.FINISH, Kind.COMMA, Kind.STOP, Kind.DONE))
_BEHIND = (Kind.FILL, Kind.DONE, Kind.SETS, Kind.NAME)
