"""Repetitions told once behind sets of several loads: `first two at 90, last one 85, all 10s`.

Only where each set is named and none has repetitions of its own; each load then gets them behind it.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import MOST_REPS, SEVERAL
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD, past_fill, whole_number
from bot.notation.tokens import Mark

_NAMING = (Kind.LABEL, Kind.SETS, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET)
_HELD = (Kind.REPS, Kind.RPE, Kind.RIR, Kind.TANK, Kind.STOP, Kind.LINE, Kind.QUERY, Kind.DROP, Kind.MINI, Kind.WARMUP,
         Kind.SAME, Kind.BODY, Kind.SLASH, Kind.PLUS)  # fmt: skip


def shared_counts(marks: list[Mark]) -> list[Mark]:
    """The marks with such repetitions behind each load."""
    end = len(marks)
    while end and marks[end - 1].kind in (Kind.STOP, Kind.LINE, Kind.FILL):
        end -= 1
    every = next((i for i in range(max(0, end - 5), end) if marks[i].kind is Kind.ALL), None)
    if every is None or kind_at(marks, every - 1) not in (Kind.COMMA, Kind.AND):
        return marks
    at = past_fill(marks, every + 1)
    at += kind_at(marks, at) in (Kind.X, Kind.FOR)
    reps = whole_number(marks, at, 1, MOST_REPS)
    stop = at + 1 + (kind_at(marks, at + 1) in (Kind.S, Kind.REPS))
    if reps is None or stop < end:
        return marks
    before = marks[: every - 1]
    loads = _loads(before, reps)
    if loads is None:
        return marks
    count = marks[at]
    out: list[Mark] = []
    for place, mark in enumerate(before):
        out.append(mark)
        if place in loads:
            out += [Mark(Kind.X, "x", mark.end, mark.end), replace(count, tight=False)]
    return [*out, *marks[end:]]


def _loads(marks: Sequence[Mark], reps: int) -> set[int] | None:
    """Where each load ends, one for each set or group that is named; `None` where that is not what is told."""
    if any(m.kind in (Kind.X, *_HELD) for m in marks) or sum(m.kind in _NAMING for m in marks) < SEVERAL:
        return None
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and kind_at(marks, i + 1) is not Kind.SETS]
    numbers = [i for i in numbers if kind_at(marks, i - 1) is not Kind.SET]
    if len(numbers) < SEVERAL or any((marks[i].value or 0) < SEVERAL * reps - reps // 2 for i in numbers):
        return None
    return {i + (kind_at(marks, i + 1) in OF_LOAD) for i in numbers}
