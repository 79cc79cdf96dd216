"""What a correction says a set really was: which number is meant, by the old value, its words, or what is plausible."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.answer import Span
from bot.notation.atoms import Amount, Atom, Counts, Effort
from bot.notation.atoms.entries import read_atoms
from bot.notation.context import Context
from bot.notation.corrections import CUES
from bot.notation.corrections.revised import Values
from bot.notation.grammar import read_items
from bot.notation.kinds import Kind
from bot.notation.ranking import rank
from bot.notation.tokens import Mark
from bot.training.report import Performed, SetKey, Side, Stage
from bot.training.units import Load, Unit

_SIDES = {Kind.LEFT: Side.LEFT, Kind.LEFTPOST: Side.LEFT, Kind.RIGHT: Side.RIGHT, Kind.RIGHTPOST: Side.RIGHT}
_STEERING = frozenset(
    (*CUES, Kind.LASTSET, Kind.LABEL, Kind.WROTE, Kind.COMMA, Kind.STOP, Kind.GAP, Kind.LINE, Kind.QUERY, Kind.SET,
     Kind.ORD, Kind.COLON, Kind.DROP, Kind.MINI, Kind.LEFT, Kind.RIGHT, Kind.LASTREP, Kind.ALL, Kind.TO, Kind.DASH)
)  # fmt: skip
"""Marks of a correction that say which set or how, and no value."""


@dataclass(frozen=True, slots=True)
class Correction:
    """The correction as said: what it was, what it was not, the effort, and of which stage and side."""

    atoms: tuple[Atom, ...]
    amounts: tuple[Amount, ...]
    olds: tuple[Amount, ...]
    effort: Effort | None
    stage: Stage | None
    side: Side | None
    side_at: Span | None


def read_correction(shaped: Sequence[Mark]) -> Correction:
    new, old = _new_and_old(shaped)
    atoms = _atoms(new)
    efforts = [a for a in atoms if isinstance(a, Effort)]
    stage = Stage.DROP if any(m.kind is Kind.DROP for m in shaped) else None
    if stage is None and any(m.kind is Kind.MINI for m in shaped):
        stage = Stage.MINI
    sided = next((m for m in shaped if m.kind in _SIDES), None)
    return Correction(
        atoms,
        tuple(a for a in atoms if isinstance(a, Amount)),
        tuple(a for a in _atoms(old) if isinstance(a, Amount)),
        efforts[-1] if efforts else None,
        stage,
        None if sided is None else _SIDES[sided.kind],
        None if sided is None else (sided.start, sided.end),
    )


def _atoms(marks: Sequence[Mark]) -> tuple[Atom, ...]:
    return read_atoms(read_items([m for m in marks if m.kind not in _STEERING]))


def _new_and_old(marks: Sequence[Mark]) -> tuple[list[Mark], list[Mark]]:
    """What it was, and what it was not: after `not` or `i put`, up to a comma or another cue."""
    new: list[Mark] = []
    old: list[Mark] = []
    is_old = False
    for mark in marks:
        if mark.kind in (Kind.NOT, Kind.WROTE):
            is_old = True
        elif is_old and mark.kind in (Kind.COMMA, Kind.MEANT, Kind.SORRY, Kind.WAS, Kind.STOP, Kind.AND) and old:
            is_old = False
        elif mark.kind is Kind.LABEL:
            continue
        (old if is_old and mark.kind not in (Kind.NOT, Kind.WROTE) else new).append(mark)
    return new, old


def honest_values(
    said: Correction, *, rows: Sequence[Performed], context: Context, unit: Unit, key: SetKey
) -> list[Values]:
    """The honest readings of what a set really was."""
    rated = Values()
    if said.effort is not None:
        rated = Values(rir=said.effort.rir, rir_at=(said.effort.start, said.effort.end))
    if not said.amounts:
        return [rated] if said.effort is not None else []
    if len(said.amounts) == 1 and said.amounts[0].counts is not Counts.SETS:
        ways = _single(said.amounts[0], said.olds, rows=rows, context=context, unit=unit, key=key)
        return [replace(v, rir=rated.rir, rir_at=rated.rir_at) for v in ways]
    ranked = rank([a for a in said.atoms if isinstance(a, Amount | Effort)], context, unit)
    bounds = ranked.honest if ranked.doubt is not None else (ranked.bound,)
    ways = []
    for bound in bounds:
        if len(bound.told) == 1:
            row, grounds, load = bound.told[0].row, bound.told[0].grounds, bound.said[0].load
            made = Values(reps=row.reps, rir=row.rir, reps_at=grounds.reps.at)
            made = replace(made, rir_at=grounds.effort.at if grounds.effort is not None else None)
            if load is not None:
                made = replace(made, load=row.load, load_at=grounds.load.at, unit_at=load.unit_at)
            ways.append(made)
    return ways


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
    if amount.counts in (Counts.REPS, Counts.SECONDS, Counts.METRES):
        return [counted] if reps is not None else []
    if amount.counts in (Counts.MINUTES, Counts.M) and context.is_timed and amount.value is not None:
        return [replace(counted, reps=int(amount.value * 60))]
    if amount.clock:
        return [replace(counted, reps=int(amount.parts[0] * 60 + amount.parts[1]))] if context.is_timed else []
    if amount.counts in (Counts.LOAD, Counts.S) or amount.sign or amount.body or not whole:
        return [loaded] if load is not None and context.takes_load else []
    if not context.takes_load:
        return [counted]
    if olds and olds[0].value is not None:
        was = olds[0]
        as_load = work.load is not None and work.load.amount_in(was.unit or unit) == was.value
        as_reps = work.reps == was.value
        if as_load != as_reps:
            return [loaded] if as_load else [counted]
        if not as_load:
            return []
    ways = []
    near = load is not None and context.is_load_in_reason(load, key[1], [work.load], False)
    if near and load != work.load:
        ways.append(loaded)
    if reps is not None and reps != work.reps and context.are_reps_in_reason(reps, key[1]):
        ways.append(counted)
    return [loaded] if not ways and load is not None else ways


def _as_load(amount: Amount, context: Context, unit: Unit, work: Performed) -> Load | None:
    if amount.value is None and not amount.body:
        return None
    value = (amount.value or Decimal(0)) * (amount.sign or 1)
    if amount.total and context.is_per_hand:
        value = value / 2
    said = amount.unit or (work.load.unit if work.load is not None else unit)
    return Load.of(value, said)
