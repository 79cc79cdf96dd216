"""Numbers kept as repetitions that may be the number of the set, or of sets: `3: 5`, `three done`."""

from collections.abc import Sequence

from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

_MOST_SETS = 12
_SEVERAL = 2


def may_be_sets(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The first such number; `None` where there is none."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    kinds = [m.kind for m in said]
    first = said[0] if said else None
    if first is None or not told or first.kind is not Kind.NUM or first.value is None or first.value > _MOST_SETS:
        return None
    row = told[0].row
    place = record.place_of(row.exercise)
    if place is None or row.reps != first.value:
        return None
    asked = record.context(place).range_of(row.set)
    if kinds[:3] == [Kind.NUM, Kind.COLON, Kind.NUM] and row.set == first.value:
        return first
    return first if kinds == [Kind.NUM, Kind.DONE] and row.reps < asked.low else None


def too_many(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The first number of a list that goes two sets or more beyond the plan with repetitions far from it."""
    for name in dict.fromkeys(one.row.exercise for one in told):
        rows = [one for one in told if one.row.exercise == name]
        place = record.place_of(name)
        if place is None:
            continue
        planned = len(record.exercises[place].sets)
        beyond = [one for one in rows if (one.row.set or 0) > planned > 0]
        low = record.context(place).range_of(1).low
        if len(beyond) >= _SEVERAL and any(one.row.reps * 3 < low * 2 for one in rows):
            at = rows[0].grounds.reps.at
            return next((m for m in marks if at is not None and m.start < at[1] and at[0] < m.end), None)
    return None
