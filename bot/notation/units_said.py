"""A unit said once for the whole message: `all in pounds`."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.units import Unit

_LEADING = frozenset(["in", "all", "everything", "weights", "using", "units", "loads", "numbers"])

_NOW = frozenset(["today", "here", "btw", "now"])
_EDGES = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.DASH)


@dataclass(frozen=True, slots=True)
class UnitSaid:
    """The unit of every number that names none, the mark that says it, and the places of the words about it."""

    unit: Unit
    mark: Mark
    places: range


def unit_for_all(marks: Sequence[Mark]) -> UnitSaid | None:
    """The unit that holds for the whole message, if one is said."""
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.KG, Kind.LB) or mark.text in ("k", "#"):
            continue
        before = marks[place - 1] if place else None
        if before is not None and (before.kind in (Kind.NUM, Kind.CLOCK) or (before.kind is Kind.GAP and before.value)):
            continue
        listed = place + 2 < len(marks) and marks[place + 1].kind is Kind.NUM and marks[place + 2].kind is Kind.REPS
        if listed and place == 0:
            continue
        said = " ".join(m.text for m in marks[max(0, place - 3) : place]).split()
        stands_apart = len(marks) > 1 and (place == 0 or place == len(marks) - 1)
        ends = all(m.kind is Kind.FILL or m.text in _NOW for m in marks[place + 1 :])
        stands_apart = stands_apart or (ends and before is not None and before.kind in _EDGES)
        bracketed = [m.kind for m in marks[place + 1 : place + 2]] == [Kind.CLOSE]
        stands_apart = stands_apart or (bracketed and before is not None and before.kind is Kind.OPEN)
        if _LEADING & set(said) or stands_apart:
            first = place
            while first > 0 and marks[first - 1].kind in (Kind.FILL, Kind.ALL, Kind.WITH, Kind.AT, Kind.WAS):
                first -= 1
            unit = Unit.KG if mark.kind is Kind.KG else Unit.LB
            return UnitSaid(unit, mark, range(first, place + 1))
    return None
