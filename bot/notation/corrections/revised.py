"""What a set really was, as a correction says it: each value with its words, put over what was stored."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.answer import Source, Span
from bot.notation.grounds import Ground, Told
from bot.training.report import Side, Stage
from bot.training.units import Load


@dataclass(frozen=True, slots=True)
class Values:
    """What a set really was; `None` is as stored. `*_at` are where the words of each value stand (folded text)."""

    load: Load | None = None
    reps: int | None = None
    rir: Decimal | None = None
    side: Side | None = None
    stage: Stage | None = None
    load_at: Span | None = None
    unit_at: Span | None = None
    reps_at: Span | None = None
    rir_at: Span | None = None
    side_at: Span | None = None
    other: "Values | None" = None
    """What the other side really was, where both sides are told apart."""


def apply_values(rows: Sequence[Told], values: Values) -> list[Told]:
    """A set's rows with what is corrected: the work rows (or those of the stage and side that were named)."""
    if values.other is not None:
        return apply_values(apply_values(rows, replace(values, other=None)), values.other)
    stage = values.stage or Stage.WORK
    out: list[Told] = []
    for told in rows:
        row = told.row
        named = row.stage is stage and (values.side is None or row.side in (None, values.side))
        if row.stage is Stage.MINI and stage is Stage.WORK and values.load is not None:
            out.append(_revised(told, Values(load=values.load, load_at=values.load_at, unit_at=values.unit_at)))
        elif not named:
            out.append(told)
        elif values.side is not None and row.side is None:
            out.extend(_sides(told, values, values.side))
        else:
            out.append(_revised(told, values))
    return out


def _sides(told: Told, values: Values, side: Side) -> tuple[Told, Told]:
    """A set of both sides, of which one is corrected: left, then right."""
    other = Side.RIGHT if side is Side.LEFT else Side.LEFT
    grounds = replace(told.grounds, side=Ground(Source.SAID, values.side_at))
    changed = _revised(Told(replace(told.row, side=side), grounds), values)
    kept = Told(replace(told.row, side=other), grounds)
    return (changed, kept) if side is Side.LEFT else (kept, changed)


def _revised(told: Told, values: Values) -> Told:
    row, grounds = told.row, told.grounds
    if values.load is not None:
        unit = Ground(Source.OWN, values.load_at) if values.unit_at is None else Ground(Source.SAID, values.unit_at)
        if values.unit_at is None and row.load is not None and row.load.unit is values.load.unit:
            unit = grounds.unit
        row = replace(row, load=values.load)
        grounds = replace(grounds, load=Ground(Source.SAID, values.load_at), unit=unit)
    if values.reps is not None:
        row = replace(row, reps=values.reps)
        grounds = replace(grounds, reps=Ground(Source.SAID, values.reps_at))
    if values.rir is not None:
        row = replace(row, rir=values.rir)
        grounds = replace(grounds, effort=Ground(Source.SAID, values.rir_at))
    return Told(row, grounds)
