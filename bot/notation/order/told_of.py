"""Numbers that only speak of what is told already: `60x8, last two were ugly`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_LAST = frozenset(["last", "final"])
_MOST = 6
"""Repetitions of a set that are spoken of: `the last three were slow`."""
_EFFORTS = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.EMPTY, Kind.COULD, Kind.FAILED, Kind.RPEPOST, Kind.RIRPOST, Kind.FEELS)
_WORTH = (
    Kind.NUM,
    Kind.CLOCK,
    Kind.X,
    Kind.FOR,
    Kind.AT,
    Kind.COLON,
    Kind.BODY,
    Kind.SAME,
    Kind.KG,
    Kind.LB,
    *_EFFORTS,
)
"""Kinds that give a set its values."""


def told_of(marks: list[Mark]) -> list[Mark]:
    """The marks with such numbers without bearing."""
    return _last_ones(_after_which(marks))


def _after_which(marks: list[Mark]) -> list[Mark]:
    """`12, 11 and 10 and dropped to 25 for 9 after the 10`: the set that a drop came after."""
    out = list(marks)
    for place in range(3, len(marks)):
        if marks[place].kind is not Kind.NUM or marks[place - 1].text != "the" or marks[place - 2].text != "after":
            continue
        told = any(m.kind is Kind.NUM and m.value == marks[place].value for m in marks[: place - 2])
        ends = kind_at(marks, place + 1) in (None, *EDGES, Kind.DROP, Kind.FILL, Kind.THEN, Kind.AND, Kind.NAME)
        if told and ends:
            out[place - 2 : place + 1] = [
                replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place - 2 : place + 1]
            ]
    return out


def _last_ones(marks: list[Mark]) -> list[Mark]:
    """`last 2 reps were ugly`, `first 5 reps flew`: repetitions of the set told before."""
    out = list(marks)
    for place, mark in enumerate(marks):
        last = mark.kind in (Kind.LASTREP, Kind.LASTSET) and mark.text.split(" ")[-1] in _LAST
        first = mark.kind is Kind.ORD and mark.value == 1 and kind_at(marks, place + 2) is Kind.REPS
        number = marks[place + 1] if kind_at(marks, place + 1) is Kind.NUM else None
        if not (last or first) or number is None or number.value is None or number.value > _MOST:
            continue
        end = place + 2
        while end < len(marks) and marks[end].kind not in EDGES and marks[end].kind not in (Kind.AND, Kind.THEN):
            end += 1
        rest = marks[place + 2 : end]
        counted = bool(rest) and rest[0].kind is Kind.REPS
        told = any(m.kind is Kind.NUM for m in marks[:place])
        if told and not rest and _is_rough(marks, place):
            out[place : place + 2] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place : place + 2]]
            continue
        if told and rest and not any(m.kind in _WORTH for m in rest) and (counted or _is_judged(rest)):
            for at in range(place, place + 2 + counted):
                out[at] = replace(marks[at], kind=Kind.GAP, value=None, parts=())
    return out


def _is_rough(marks: Sequence[Mark], place: int) -> bool:
    """Whether words straight before `last 2` say how they went: `90x10 but bad form last 2`."""
    start = next(i for i in range(place - 1, -1, -1) if marks[i].kind is Kind.NUM) + 1
    said = {w for m in marks[start:place] for w in m.text.split()}
    return bool(said & _ROUGH) and all(m.kind in (Kind.FILL, Kind.WORD, Kind.WITH, Kind.AT) for m in marks[start:place])


_ROUGH = frozenset(["form", "ugly", "slow", "sloppy", "shaky", "rough", "grindy", "cheated", "grinders", "dodgy"])


def _is_judged(rest: Sequence[Mark]) -> bool:
    """Whether words say how they went."""
    said = rest[1:] if rest[0].kind is Kind.WAS else rest
    return bool(said) and all(m.kind in (Kind.FILL, Kind.WORD, Kind.GAP, Kind.WITH) for m in said)
