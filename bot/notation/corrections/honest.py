"""The honest readings of a correction: its number is the load or the repetitions, by the old value, its words, or what
is plausible beside what was stored.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.atoms import Amount, Counts, Effort
from bot.notation.binding import Bound
from bot.notation.context import Context
from bot.notation.corrections.meant import SIDES, Correction
from bot.notation.corrections.revised import Values
from bot.notation.ranking import rank
from bot.training.report import Performed, SetKey, Side, Stage
from bot.training.units import Load, Unit


def honest_values(
    said: Correction, *, rows: Sequence[Performed], context: Context, unit: Unit, key: SetKey
) -> list[Values]:
    """The honest readings of what a set really was."""
    rated = Values()
    if said.effort is not None:
        rated = Values(rir=said.effort.rir, rir_at=(said.effort.start, said.effort.end))
    if said.sides and context.exercise.sides == len(said.sides):
        left, right = (Values(reps=reps, reps_at=at, side=side, side_at=at) for side, reps, at in said.sides)
        return [replace(left, other=right)]
    if not said.amounts:
        return [rated] if said.effort is not None else []
    if len(said.amounts) == 1 and said.amounts[0].counts is not Counts.SETS:
        rows = [r for r in rows if r.side is said.side] or rows
        ways = _single(_of_side(said), said.olds, rows=rows, context=context, unit=unit, key=key)
        return [replace(v, rir=rated.rir, rir_at=rated.rir_at) for v in ways]
    telling = [a for a in said.atoms if isinstance(a, Amount | Effort) or a.kind in SIDES]
    ranked = rank(telling, context, unit)
    bounds = ranked.honest if ranked.doubt is not None else (ranked.bound,)
    ways = []
    for bound in bounds:
        rows = [t.row for t in bound.told]
        if len(rows) == 1:
            ways.append(_values_of(bound, 0))
        elif [r.side for r in rows] == [Side.LEFT, Side.RIGHT] and rows[0].set == rows[1].set:
            ways.append(replace(_of_one_side(bound, 0), other=_of_one_side(bound, 1)))
    return ways


def _of_one_side(bound: Bound, index: int) -> Values:
    told = bound.told[index]
    at = None if told.grounds.side is None else told.grounds.side.at
    return replace(_values_of(bound, index), side=told.row.side, side_at=at)


def _values_of(bound: Bound, index: int) -> Values:
    """What a set that was read says of the one that it corrects."""
    row, grounds, load = bound.told[index].row, bound.told[index].grounds, bound.said[index].load
    made = Values(reps=row.reps, rir=row.rir, reps_at=grounds.reps.at)
    made = replace(made, rir_at=grounds.effort.at if grounds.effort is not None else None)
    if load is not None:
        made = replace(made, load=row.load, load_at=grounds.load.at, unit_at=load.unit_at)
    return made


def _of_side(said: Correction) -> Amount:
    """The number of a correction: of one side it is the repetitions, for both sides are worked with one load."""
    amount = said.amounts[0]
    plain = amount.counts is Counts.UNSAID and not amount.sign and not amount.body and not said.olds
    return replace(amount, counts=Counts.REPS) if said.side is not None and plain else amount


def _single(
    amount: Amount, olds: Sequence[Amount], *, rows: Sequence[Performed], context: Context, unit: Unit, key: SetKey
) -> list[Values]:
    """One number: the load or the repetitions."""
    work = next((r for r in rows if r.stage is Stage.WORK), rows[0])
    load = _as_load(amount, context, unit, work)
    loaded = Values(load=load, load_at=amount.at, unit_at=amount.unit_at)
    whole = amount.value is not None and amount.value == int(amount.value)
    reps = int(amount.value) if whole and amount.value is not None else None
    counted = Values(reps=reps, reps_at=amount.at)
    near = load is not None and context.is_load_in_reason(load, key[1], [work.load], False)
    if amount.counts in (Counts.REPS, Counts.SECONDS, Counts.METRES):
        return [counted] if reps is not None else []
    if amount.counts in (Counts.MINUTES, Counts.M) and context.is_timed and amount.value is not None:
        return [replace(counted, reps=int(amount.value * 60))]
    if amount.clock:
        return [replace(counted, reps=int(amount.parts[0] * 60 + amount.parts[1]))] if context.is_timed else []
    if amount.counts is Counts.S and not context.is_per_hand and reps is not None and not near:
        return [counted]
    if amount.counts in (Counts.LOAD, Counts.S) or amount.sign or amount.body or not whole:
        return [loaded] if load is not None and context.takes_load else []
    if not context.takes_load:
        return [counted]
    if olds and olds[0].value is not None:
        was = olds[0]
        stored = None if work.load is None else work.load.amount_in(was.unit or unit)
        as_load = stored is not None and (stored == was.value or (stored < 0 and -stored == was.value))
        as_reps = work.reps == was.value
        if as_load != as_reps:
            return [loaded] if as_load else [counted]
        if not as_load:
            return []
    if load is not None and load == work.load and (reps is None or reps not in context.range_of(key[1])) and near:
        return [loaded]
    ways = []
    repeated = reps is not None and reps == work.reps and context.is_bodyweight
    if repeated:
        return []
    if near and load != work.load:
        ways.append(loaded)
    if reps is not None and reps != work.reps and context.are_reps_in_reason(reps, key[1]):
        ways.append(counted)
    in_range = reps is not None and reps in context.range_of(key[1])
    if len(ways) == 2 and in_range and load is not None and (_is_far(load, work.load) or _is_off(load, context)):
        return [counted]
    if not ways and reps is not None and reps == work.reps and not near:
        return [counted]
    return [loaded] if not ways and load is not None else ways


_FAR = Decimal("0.2")
"""Of the load stored: a correction that is farther from it and within the planned range is of the repetitions
(common practice, no source)."""


def _is_far(load: Load, stored: Load | None) -> bool:
    return stored is not None and abs(load.kg - stored.kg) > _FAR * abs(stored.kg)


_PLATE = Decimal("1.25")
"""Kilograms that the loads of bars and belts go up by at least (common practice, no source)."""


def _is_off(load: Load, context: Context) -> bool:
    """Whether no plates make a load, where all others of the exercise are made of plates."""
    if context.is_per_hand or load.unit is not Unit.KG:
        return False
    known = [p.load for p in context.exercise.sets if p.load is not None and p.load.unit is Unit.KG]
    made = bool(known) and all(k.amount % (2 * _PLATE) == 0 for k in known)
    return made and load.amount % _PLATE != 0


def _as_load(amount: Amount, context: Context, unit: Unit, work: Performed) -> Load | None:
    if amount.value is None and not amount.body:
        return None
    helped = work.load is not None and work.load.thousandths < 0
    value = (amount.value or Decimal(0)) * (amount.sign or (-1 if helped else 1))
    if amount.total and context.is_per_hand:
        value = value / 2
    said = amount.unit or (work.load.unit if work.load is not None else unit)
    return Load.of(value, said)
