"""Efforts said in full once and in short after it: `100x10 with 2 in the tank, then 100x9 with 1`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT, SEVERAL
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.THEN, Kind.AND, Kind.QUERY, Kind.BREAK)


def short_efforts(marks: list[Mark]) -> list[Mark]:
    """The marks with each effort said in full."""
    return _on_scale(_in_tank(marks))


def _in_tank(marks: list[Mark]) -> list[Mark]:
    out: list[Mark] = []
    full: Mark | None = None
    for place, mark in enumerate(marks):
        out.append(mark)
        if mark.kind is not Kind.NUM or kind_at(marks, place - 1) is not Kind.WITH:
            continue
        after = kind_at(marks, place + 1)
        if after in (Kind.TANK, Kind.LEFT, Kind.RIR):
            full = marks[place + 1]
        elif full is not None and mark.value is not None and mark.value <= MOST_LEFT and _ends(marks, place + 1):
            out.append(replace(full, kind=Kind.TANK, start=mark.end, end=mark.end))
    return out


def _ends(marks: Sequence[Mark], place: int) -> bool:
    while kind_at(marks, place) is Kind.FILL:
        place += 1
    return kind_at(marks, place) in _ENDS


def _on_scale(marks: list[Mark]) -> list[Mark]:
    """`10 reps at 7 then 9 reps at 8 then 8 at 9`: where several counted repetitions are rated, each is."""
    places = [
        i
        for i, m in enumerate(marks)
        if m.kind is Kind.AT
        and kind_at(marks, i - 1) in (Kind.REPS, Kind.NUM)
        and _is_scale(marks, i + 1)
        and _ends(marks, i + 2)
    ]
    if sum(kind_at(marks, i - 1) is Kind.REPS for i in places) < SEVERAL:
        return marks
    return [replace(m, kind=Kind.RPE, text="rpe") if i in places else m for i, m in enumerate(marks)]


def _is_scale(marks: Sequence[Mark], place: int) -> bool:
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and EASIEST <= value <= HARDEST
