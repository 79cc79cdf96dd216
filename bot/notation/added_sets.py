"""Sets joined by a plus: `60x10 + 9 + 8`, where nothing in the plan goes on from a set and each could be one.

Beside a planned finish, or with few repetitions behind many, what follows a plus goes on from the set before it.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle

_WEAKEST = Decimal("0.6")
"""Of the repetitions before a plus: fewer are no set of their own (common practice, no source)."""
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AT, Kind.WITH, Kind.RPE, Kind.RIR, Kind.AND,
         Kind.THEN, Kind.REPS, Kind.PLUS, Kind.NAME, Kind.FILL)  # fmt: skip


def with_added_sets(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with a comma in place of such a plus."""
    out = list(marks)
    at = 0
    while at < len(out):
        run = _run(out, at)
        if not run or not _are_sets(out, run, record, under):
            at = max(at + 1, run[-1] if run else 0)
            continue
        for place in run[1:]:
            out[place - 1] = replace(out[place - 1], kind=Kind.COMMA, text=",")
        at = run[-1] + 1
    return out


def _run(marks: Sequence[Mark], at: int) -> list[int]:
    """The places of whole numbers joined by a plus, from here on; none where fewer than two are."""
    run: list[int] = []
    place = at
    while kind_at(marks, place) is Kind.NUM and marks[place].value is not None and kind_at(marks, place + 1) in _ENDS:
        run.append(place)
        if kind_at(marks, place + 1) is not Kind.PLUS:
            break
        place += 2
    return run if len(run) > 1 and run[-1] == place else []


def _are_sets(marks: Sequence[Mark], run: Sequence[int], record: Record, under: int | None) -> bool:
    """Whether each of the numbers may be a set of the exercise that is spoken of."""
    named = [m.names[0] for m in marks[: run[0]] if m.kind is Kind.NAME and len(m.names) == 1]
    place = named[-1] if named else under
    if place is None:
        return False
    context = record.context(place)
    exercise = context.exercise
    plain = exercise.sides == 1 and all(s.finish is None for s in exercise.sets)
    if not plain or exercise.load_style is LoadStyle.BODYWEIGHT or len(run) > len(context.open_sets):
        return False
    values = [marks[i].value or Decimal(0) for i in run]
    near = all(v >= _WEAKEST * values[0] for v in values)
    return near and all(v == int(v) and context.are_reps_in_reason(int(v), None) for v in values)
