"""Seconds or metres told where the sets that are kept count repetitions, and another exercise counts those."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import Measure

_MEASURES = {Kind.SECONDS: Measure.SECONDS, Kind.METRES: Measure.METRES}
_RESTS = frozenset(("rest", "rests", "rested", "resting", "break", "breaks", "pause", "between", "hold", "down"))


def of_another_measure(marks: Sequence[Mark], record: Record) -> Mark | None:
    """The first number of such seconds, where no name says what they are of: `left leg 25 seconds and right 20`."""
    if not any(m.kind in _MEASURES for m in marks) or any(m.kind is Kind.NAME for m in marks):
        return None
    told = {row.exercise for row in record.said}
    kept = {e.measure for e in record.exercises if e.name in told}
    opened = {e.measure for place, e in enumerate(record.exercises) if record.context(place).open_sets}
    for place, mark in enumerate(marks[1:], 1):
        measure = _MEASURES.get(mark.kind)
        counted = marks[place - 1].kind is Kind.NUM and measure is not None
        near = {w for m in marks[max(0, place - 4) : place + 3] for w in m.text.split()}
        if counted and measure not in kept and measure in opened and told and not near & _RESTS:
            return marks[place - 1]
    return None
