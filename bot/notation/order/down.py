"""A load gone down to for a set that is named: `dropped to 255 for the last two` is no drop of the set before."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD
from bot.notation.tokens import Mark

_NAMING = (Kind.LASTSET, Kind.ORD, Kind.THEREST, Kind.SET, Kind.LABEL, Kind.WORKSET)
_COUNTED = (Kind.REPS, Kind.X)
_SETS = frozenset(["last", "next", "final", "other", "remaining", "rest"])


def went_down(marks: list[Mark]) -> list[Mark]:
    """The marks with such words without bearing."""
    return [replace(m, kind=Kind.FILL) if _is_of_set(marks, i) else m for i, m in enumerate(marks)]


def _is_of_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether words of dropping have a load and then the set that it is for, or that set before them."""
    mark = marks[place]
    if mark.kind is not Kind.DROP or "drop" not in mark.text or not {"to", "dropped", "down"} & set(mark.text.split()):
        return False
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, Kind.TO):
        at += 1
    if kind_at(marks, at) is not Kind.NUM:
        return False
    at += 1
    while kind_at(marks, at) in (*OF_LOAD, Kind.FILL):
        at += 1
    if kind_at(marks, at) not in (Kind.FOR, Kind.AT):
        return False
    return _names_set(marks, at + 1)


def _names_set(marks: Sequence[Mark], at: int) -> bool:
    """Whether a set, or so many of the last ones, is named here: `the last two`, `set 4`; not `the last 8 reps`."""
    while kind_at(marks, at) is Kind.FILL and not set(marks[at].text.split()) & _SETS:
        at += 1
    if at >= len(marks):
        return False
    named = marks[at].kind in _NAMING or bool(set(marks[at].text.split()) & _SETS)
    number = at + 1 if kind_at(marks, at + 1) is Kind.NUM else None
    return named and not (number is not None and kind_at(marks, number + 1) in _COUNTED)
