"""Repetitions with their word and then the load, part by part: `10 reps 90 kg, 9 reps 85 kg`, `20m 60kg, 20m 70kg`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_COUNTED = (Kind.REPS, Kind.METRES, Kind.M, Kind.SECONDS)
_SIGNS = (Kind.PLUS, Kind.MINUS, Kind.DASH)
_UNITS = (Kind.KG, Kind.LB)
_ENDS = (None, *EDGES, Kind.AND, Kind.THEN, Kind.RPE, Kind.RIR, Kind.FEELS, Kind.EMPTY)
_BEFORE = (*_ENDS, Kind.NAME, Kind.COLON, Kind.FILL)


def reps_first(marks: list[Mark]) -> list[Mark]:
    """The marks with an `at` between the two."""
    places = [i for i in range(len(marks)) if _is_pair(marks, i)]
    united = all(_unit_behind(marks, i) for i in places)
    if not places or not (united or len(places) > 1):
        return marks
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        out.append(mark)
        if place - 1 in places:
            out.append(replace(mark, kind=Kind.AT, text="at", value=None, parts=(), start=mark.end))
    return out


def _load(marks: Sequence[Mark], place: int) -> int:
    """Where the load behind the repetitions at a place stands."""
    return place + 2 + (kind_at(marks, place + 2) in _SIGNS)


def _is_pair(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part opens here with a counted number and ends with a load."""
    counted = kind_at(marks, place) is Kind.NUM and kind_at(marks, place + 1) in _COUNTED
    if not counted or kind_at(marks, place - 1) not in _BEFORE:
        return False
    load = _load(marks, place)
    end = load + 1 + (kind_at(marks, load + 1) in _UNITS)
    return kind_at(marks, load) is Kind.NUM and kind_at(marks, end) in _ENDS


def _unit_behind(marks: Sequence[Mark], place: int) -> bool:
    return kind_at(marks, _load(marks, place) + 1) in _UNITS
