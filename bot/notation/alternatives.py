"""The readings that a question offers where the one as typed cannot be stored: each in reason, the likeliest first."""

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from functools import partial

from bot.notation.answer import AskKind, Source
from bot.notation.atoms import Effort
from bot.notation.binding import Bound, bind
from bot.notation.context import Context
from bot.notation.grounds import Told, answered, grounds_of
from bot.notation.ranking import Ranked
from bot.notation.said import Candidate, Doubt, SaidSet, Words
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit

MOST = 5
"""Readings offered at most."""


def plan_ways(
    context: Context,
    count: int,
    start: int,
    end: int,
    *,
    needs_load: bool = False,
    effort: Effort | None = None,
    label: int | None = None,
) -> Ranked:
    """So many open sets as planned; a doubt where the plan leaves a range, a finish or (if needed) the load.

    An `effort` that was said with them is the last one's; `label` is the one set that was named.
    """
    said = SaidSet(Stage.WORK, start, end, count=count, planned=True, label=label)
    if effort is not None:
        said = replace(said, rir=effort.rir, words=Words(effort=(effort.start, effort.end)))
    bound = bind(Candidate(0.0, (said,)), context)
    numbers = context.open_sets[:count] if label is None else (label,)
    if needs_load and not bound.doubts and any(p.load is None for p in bound.performed):
        return Ranked(bound, Doubt(AskKind.RANGE, start, end))
    if bound.doubts:
        rows = []
        for number in numbers:
            planned = context.planned(number)
            assert planned is not None
            rir = said.rir if number == numbers[-1] else None
            rows.append(Performed(context.exercise.name, number, Stage.WORK, planned.load, planned.reps.high, rir))
        planned_too = grounds_of(said, Source.PLAN, Source.PLAN)
        told = tuple(Told(row, planned_too) for row in rows)
        return Ranked(Bound(told, tuple(said for _ in rows)), bound.doubts[0])
    return Ranked(bound)


def range_ways(bound: Bound, context: Context) -> list[Bound]:
    """Each number of the range, where one set waits for it; none where several do."""
    if len(bound.performed) != 1:
        return []
    row = bound.performed[0]
    asked = context.range_of(row.set)
    if asked.high - asked.low >= MOST:
        return []
    return [_with_rows(bound, (replace(row, reps=reps),)) for reps in range(asked.low, asked.high + 1)]


def half_loads(bound: Bound, context: Context) -> list[Bound]:
    """Both readings of twice the planned dumbbell: each hand, or both together."""
    halves = tuple(
        replace(r, load=Load(r.load.thousandths // 2, r.load.unit))
        if r.load is not None and _is_double(r, context)
        else r
        for r in bound.performed
    )
    return [_with_rows(bound, halves), _with_rows(bound, bound.performed)]


def _is_double(row: Performed, context: Context) -> bool:
    planned = context.planned_load(row.set)
    return planned is not None and row.load is not None and row.load.kg == planned.kg * 2


def in_reason(bound: Bound, context: Context) -> list[Bound]:
    """A slip of the thumb put right (a point, a nought, the other unit), and the sets as typed."""
    slips: tuple[Callable[[Performed], Performed | None], ...] = (
        partial(_scaled, load=Decimal("0.1"), reps=Decimal(1)),
        partial(_scaled, load=Decimal(1), reps=Decimal("0.1")),
        partial(_scaled, load=Decimal(10), reps=Decimal(1)),
        _other_unit,
        partial(_scaled, load=Decimal("0.01"), reps=Decimal(1)),
    )
    found: list[Bound] = []
    for slip in slips:
        rows = []
        for row in bound.performed:
            changed = row if _fine(row, context) else slip(row)
            if changed is None or not _fine(changed, context):
                break
            rows.append(changed)
        else:
            made = _with_rows(bound, tuple(rows))
            if made not in found:
                found.append(made)
    return [*found[:2], _with_rows(bound, bound.performed)]


def _fine(row: Performed, context: Context) -> bool:
    if row.stage is not Stage.WORK:
        return True
    if not context.are_reps_in_reason(row.reps, row.set):
        return False
    return row.load is None or context.is_load_in_reason(row.load, row.set, [p.load for p in context.worked], False)


def _scaled(row: Performed, load: Decimal, reps: Decimal) -> Performed | None:
    count = row.reps * reps
    if count != int(count):
        return None
    scaled = None if row.load is None else Load.of(row.load.amount * load, row.load.unit)
    return replace(row, load=scaled, reps=int(count))


def _other_unit(row: Performed) -> Performed | None:
    if row.load is None:
        return None
    other = Unit.LB if row.load.unit is Unit.KG else Unit.KG
    return replace(row, load=Load(row.load.thousandths, other))


def _with_rows(bound: Bound, rows: tuple[Performed, ...]) -> Bound:
    told = tuple(answered(one, row) for one, row in zip(bound.told, rows, strict=True))
    return Bound(told, bound.said, bound.replaces)
