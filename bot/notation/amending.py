"""Corrections applied: which set one is about, which number is meant, and whether that can be stored.

A correction names a set (the last one by default) and what it really was. The replacement repeats what was stored and
not corrected. Which number is meant is told by the old value where it is said, by its words, or by what is plausible.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.answer import AskKind, Span
from bot.notation.atoms import Amount, Atom, Counts, Effort, read_atoms
from bot.notation.context import Context
from bot.notation.corrections import CUES
from bot.notation.grammar import read_items
from bot.notation.kinds import Kind
from bot.notation.ranking import rank
from bot.notation.record import Record
from bot.notation.revised import Values, apply_values
from bot.notation.said import Doubt
from bot.notation.shaping import shape_marks
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
class Corrected:
    """What came of a correction: done, or why it cannot be and the honest ways."""

    doubt: Doubt | None = None
    choices: tuple[tuple[SetKey, Values], ...] = ()


@dataclass(frozen=True, slots=True)
class _Said:
    """The correction as said: what it was, what it was not, the effort, and of which stage and side."""

    atoms: tuple[Atom, ...]
    amounts: tuple[Amount, ...]
    olds: tuple[Amount, ...]
    effort: Effort | None
    stage: Stage | None
    side: Side | None
    side_at: Span | None


def correct(piece: Sequence[Mark], record: Record, unit: Unit, place: int | None) -> Corrected:
    """Applies a correction to the record; a doubt where the set or the number is not clear."""
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], True)
    if shaped and shaped[0].kind is Kind.LEADX:
        shaped = shaped[1:]
    start, end = piece[0].start, piece[-1].end
    said = _read(shaped)
    keys = _targets(shaped, record, place)
    if keys is None:
        return Corrected(Doubt(AskKind.WHICH_SET, start, end))
    if any(m.kind is Kind.BAD for m in shaped):
        return Corrected(Doubt(AskKind.NUMBER_FORMAT, start, end))
    for key in keys:
        rows = record.rows(key)
        where = record.place_of(key[0])
        if not rows or where is None:
            return Corrected(Doubt(AskKind.WHICH_SET, start, end))
        context = _context_without(record, where, key)
        staged = [r for r in rows if r.stage is said.stage] or rows
        ways = [_of_stage_and_side(v, said) for v in _values(said, rows=staged, context=context, unit=unit, key=key)]
        if len(ways) != 1:
            doubt = Doubt(AskKind.ORDER if ways else AskKind.UNSURE, start, end)
            return Corrected(doubt, tuple((key, v) for v in ways))
        kind = _out_of_reason(ways[0], rows, context)
        if kind is not None:
            return Corrected(Doubt(kind, start, end))
        record.change(key, lambda gone, values=ways[0]: apply_values(gone, values))  # type: ignore[misc]
        record.last_exercise = where
    return Corrected()


def _read(shaped: Sequence[Mark]) -> _Said:
    new, old = _new_and_old(shaped)
    atoms = _atoms(new)
    efforts = [a for a in atoms if isinstance(a, Effort)]
    stage = Stage.DROP if any(m.kind is Kind.DROP for m in shaped) else None
    if stage is None and any(m.kind is Kind.MINI for m in shaped):
        stage = Stage.MINI
    sided = next((m for m in shaped if m.kind in _SIDES), None)
    return _Said(
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


def _of_stage_and_side(values: Values, said: _Said) -> Values:
    if said.side is not None:
        values = replace(values, side=said.side, side_at=said.side_at)
    return values if said.stage is None else replace(values, stage=said.stage)


def _context_without(record: Record, where: int, key: SetKey) -> Context:
    context = record.context(where)
    return Context(context.exercise, context.unit, tuple(p for p in context.done if (p.exercise, p.set) != key))


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


def _targets(marks: Sequence[Mark], record: Record, place: int | None) -> list[SetKey] | None:
    """The sets that a correction is about."""
    last = record.last(place)
    if last is None or last.set is None:
        return None
    labels = [int(m.value) for m in marks if m.kind is Kind.LABEL and m.value is not None]
    if any(m.kind is Kind.ALL for m in marks) and not any(m.kind is Kind.LASTSET for m in marks):
        done = record.context(record.place_of(last.exercise) or 0).worked
        return list(dict.fromkeys((p.exercise, p.set) for p in done if p.set is not None))
    if labels:
        keys = [(last.exercise, n) for n in labels]
        return keys if all(record.rows(k) for k in keys) else None
    return [(last.exercise, last.set)]


def _values(said: _Said, *, rows: Sequence[Performed], context: Context, unit: Unit, key: SetKey) -> list[Values]:
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


def _out_of_reason(values: Values, rows: Sequence[Performed], context: Context) -> AskKind | None:
    number = rows[0].set
    if values.stage in (Stage.DROP, Stage.MINI):
        return None
    earlier = [p.load for p in context.worked]
    signed = values.load is not None and values.load.thousandths <= 0
    if values.load is not None and not context.is_load_in_reason(values.load, number, earlier, signed):
        return AskKind.OUT_OF_REASON
    if values.reps is not None and not context.are_reps_in_reason(values.reps, number):
        return AskKind.OUT_OF_REASON
    return None
