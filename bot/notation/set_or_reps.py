"""Numbers kept as repetitions that may be the number of the set, or of sets: `3: 5`, `three done`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Source
from bot.notation.bounds import MOST_SETS, SEVERAL
from bot.notation.context import ALIKE_LEAST, ALIKE_MOST, Context
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import Drop
from bot.training.report import Stage

_LISTED = (Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.COLON, Kind.X, Kind.AND, Kind.THEN, Kind.KG, Kind.LB, Kind.S,
           Kind.SECONDS, Kind.METRES, Kind.M)  # fmt: skip
_OF_MORE = (Kind.ANOTHER, Kind.MORE, Kind.AGAIN, Kind.SAME, Kind.SETS, Kind.TIMES)
_EXTRA = frozenset(
    words("extra bonus additional more another spare sneaky snuck sneaked threw added burnout amrap fun")
)
"""Words of a set that was done beside the plan."""


def may_be_sets(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The first such number; `None` where there is none."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    kinds = [m.kind for m in said]
    first = said[0] if said else None
    if first is None or not told or first.kind is not Kind.NUM or first.value is None or first.value > MOST_SETS:
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
        if len(beyond) >= SEVERAL and any(one.row.reps * 3 < low * 2 for one in rows):
            at = rows[0].grounds.reps.at
            return next((m for m in marks if at is not None and m.start < at[1] and at[0] < m.end), None)
    return None


def drops_beyond(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The first word of a drop of a stored set that has all its planned ones: it may be one of those told again."""
    if any(
        m.kind in _OF_MORE or (_EXTRA | {"forgot", "missed", "third", "too", "also"}) & set(m.text.split())
        for m in marks
    ):
        return None
    added = [one.row for one in told if one.row.stage is Stage.DROP]
    for row in added:
        place = record.place_of(row.exercise)
        before = [p for p in record.stored if (p.exercise, p.set) == (row.exercise, row.set)]
        planned = record.exercises[place].sets if place is not None else ()
        finish = planned[row.set - 1].finish if row.set is not None and 0 < row.set <= len(planned) else None
        full = isinstance(finish, Drop) and sum(p.stage is Stage.DROP for p in before) >= finish.times
        if full and before:
            return next((m for m in marks if m.kind in (Kind.DROP, Kind.DROPPED)), marks[0])
    return None


def beyond_plan(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The number of a set more than is planned, of which nothing says that it was one more: it may be another
    exercise's, a drop or no set at all."""
    if any(m.kind in _OF_MORE or _EXTRA & set(m.text.split()) for m in marks):
        return None
    for one in told:
        place = record.place_of(one.row.exercise)
        at = one.grounds.reps.at
        if place is None or at is None or one.row.set is None or one.grounds.count > 1:
            continue
        planned = len(record.exercises[place].sets)
        if not 0 < planned < one.row.set or (one.grounds.number.source is Source.SAID and one.row.set == planned + 1):
            continue
        next_one = one.row.set == planned + 1 and one.grounds.number.source is not Source.SAID
        if next_one and _is_loaded_alike(one, record.context(place)):
            continue
        name = one.grounds.exercise.at if one.grounds.exercise.source is Source.SAID else None
        if name is not None and not any(m.kind not in _LISTED for m in marks if name[1] <= m.start < at[0]):
            continue
        first = next((m for m in marks if m.start < at[1] and at[0] < m.end), None)
        load = one.grounds.load.at if one.grounds.load.source is Source.SAID else None
        spans = [at, *([load] if load is not None else [])]
        return first and replace(first, start=min(s for s, _ in spans), end=max(e for _, e in spans))
    return None


def _is_loaded_alike(one: Told, context: Context) -> bool:
    """Whether a set is told with its load, and that is near the planned one of the last set or that of a set done."""
    load = one.row.load
    if load is None or one.grounds.load.source is not Source.SAID:
        return False
    loads = [context.exercise.sets[-1].load, *(p.load for p in context.worked if p is not one.row)]
    return any(other.kg > 0 and ALIKE_LEAST <= load.kg / other.kg <= ALIKE_MOST for other in loads if other is not None)
