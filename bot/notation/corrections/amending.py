"""Corrections applied: which set one is about, which number is meant, and whether that can be stored.

A correction names a set (the last one by default) and what it really was. The replacement repeats what was stored and
not corrected. Which number is meant is told by the old value where it is said, by its words, or by what is plausible.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import pairwise

from bot.notation.answer import AskKind, Source
from bot.notation.atoms import Counts, Join
from bot.notation.context import Context
from bot.notation.corrections.continued import which_continuation, with_continuations, with_one_changed
from bot.notation.corrections.honest import honest_values
from bot.notation.corrections.meant import PAIRING, SIDES, Correction, read_correction
from bot.notation.corrections.revised import Values, apply_values
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.said import Doubt
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.training.report import Performed, SetKey, Stage
from bot.training.units import Load, Unit


@dataclass(frozen=True, slots=True)
class Corrected:
    """What came of a correction: done, or why it cannot be and the honest ways."""

    doubt: Doubt | None = None
    choices: tuple[tuple[SetKey, Values], ...] = ()


def correct(piece: Sequence[Mark], record: Record, unit: Unit, place: int | None) -> Corrected:
    """Applies a correction to the record; a doubt where the set or the number is not clear."""
    shaped = shape_marks(_without_talk([m for m in piece if m.kind is not Kind.NAME]), True)
    if shaped and shaped[0].kind is Kind.LEADX:
        shaped = shaped[1:]
    start, end = piece[0].start, piece[-1].end
    said = _as_named(read_correction(shaped), piece)
    numbered = any(m.kind is Kind.LABEL for m in shaped)
    of_drop = said.stage is None and _is_of_drop(shaped, record, numbered=numbered)
    if of_drop:
        said = replace(said, stage=Stage.DROP)
    of_one = numbered or any(m.kind in (*SIDES, Kind.LASTSET) for m in shaped)
    whole = [] if of_one else _each_set(said, record, place)
    for one, (reps, at) in zip(whole, said.counts, strict=True) if whole else ():
        record.change(one, lambda gone, reps=reps, at=at: apply_values(gone, Values(reps=reps, reps_at=at)))  # type: ignore[misc]
    if whole:
        record.last_exercise = record.place_of(whole[0][0])
        return Corrected()
    keys = _targets(shaped, record, place)
    whole_set = len(said.amounts) == 2 and said.amounts[1].join in PAIRING
    several = len(said.amounts) > 1 and not whole_set
    if keys is None or (len(keys) > 1 and several and any(m.kind is Kind.LABEL for m in shaped)):
        return Corrected(Doubt(AskKind.WHICH_SET, start, end))
    if any(m.kind is Kind.BAD for m in shaped):
        return Corrected(Doubt(AskKind.NUMBER_FORMAT, start, end))
    for key in keys:
        rows = record.rows(key)
        where = record.place_of(key[0])
        if not rows or where is None:
            return Corrected(Doubt(AskKind.WHICH_SET, start, end))
        context = _context_without(record, where, key)
        continued = said.stage is not None and sum(r.stage is said.stage for r in rows) > 1
        if continued and len(said.counts) > 1:
            record.change(key, lambda gone: with_continuations(gone, said))
            record.last_exercise = where
            continue
        many = sum(r.stage is said.stage for r in rows)
        nth = which_continuation(shaped, many) if continued and (whole_set or len(said.amounts) == 1) else None
        if nth is not None:
            staged = [r for r in rows if r.stage is said.stage][nth:][:1]
            ways = (
                _as_told(said, staged[0], unit)
                if whole_set
                else honest_values(said, rows=staged, context=context, unit=unit, key=key)
            )
            if len(ways) != 1:
                return Corrected(Doubt(AskKind.ORDER if ways else AskKind.UNSURE, start, end))
            _change_one(record, key, said.stage, nth, ways[0])
            continue
        if continued and not any(m.kind is Kind.ALL for m in shaped):
            return Corrected(Doubt(AskKind.WHICH_SET, start, end))
        staged = [r for r in rows if r.stage is said.stage] or rows
        ways = [
            _of_stage_and_side(v, said, context)
            for v in honest_values(said, rows=staged, context=context, unit=unit, key=key)
        ]
        if len(ways) > 1:
            ways = _of_number_before(ways, record, piece, key) or ways
        if len(ways) != 1:
            doubt = Doubt(AskKind.ORDER if ways else AskKind.UNSURE, start, end)
            return Corrected(doubt, tuple((key, v) for v in ways))
        kind = _out_of_reason(ways[0], rows, context)
        if kind is not None:
            return Corrected(Doubt(kind, start, end))
        if of_drop:
            record.told[-1:] = apply_values(record.told[-1:], ways[0])
            return Corrected()
        record.change(key, lambda gone, values=ways[0]: apply_values(gone, values))  # type: ignore[misc]
        record.last_exercise = where
    return Corrected()


def _as_told(said: Correction, row: Performed, unit: Unit) -> list[Values]:
    """The load and the repetitions of one continuation, told together: `second drop was 22.5x7`."""
    load, reps = said.amounts
    if load.value is None or reps.value is None or reps.value != int(reps.value) or reps.join is Join.AT:
        return []
    weight = Load.of(load.value, load.unit or (row.load.unit if row.load is not None else unit))
    return [Values(load=weight, reps=int(reps.value), load_at=load.at, unit_at=load.unit_at, reps_at=reps.at)]


def _change_one(record: Record, key: SetKey, stage: Stage | None, nth: int, values: Values) -> None:
    """Puts one continuation of a set right."""
    record.change(key, lambda gone: with_one_changed(gone, stage, nth, values))
    record.last_exercise = record.place_of(key[0])


def _is_of_drop(shaped: Sequence[Mark], record: Record, *, numbered: bool) -> bool:
    """`15 15 12 then 15 for 11... sorry, for 10`: the drop that this message told straight before."""
    aimed = numbered or any(m.kind in (Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.NOT, Kind.ALL) for m in shaped)
    return bool(record.told) and record.told[-1].row.stage is Stage.DROP and not aimed


def _as_named(said: Correction, piece: Sequence[Mark]) -> Correction:
    """`wrong weight, set 1 was 10`, `miscounted, set 1 was 10`: the one number is of what was wrong."""
    spoken = {w for m in piece if m.kind in (Kind.MEANT, Kind.SORRY, Kind.WORD) for w in m.text.split()}
    loaded, counted = bool(spoken & _LOADED), bool(spoken & _COUNTED - {"reps", "rep", "times"})
    if len(said.amounts) != 1 or said.amounts[0].counts is not Counts.UNSAID or loaded == counted:
        return said
    counts = Counts.LOAD if loaded else Counts.REPS
    return replace(said, amounts=(replace(said.amounts[0], counts=counts),))


_LOADED = frozenset(["weight", "weights", "load", "plates", "misloaded", "loaded", "dumbbell", "dumbbells"])
_COUNTED = frozenset(["count", "counted", "miscounted", "counting", "recounted", "miscount", "rep", "reps", "times"])


def _of_number_before(ways: list[Values], record: Record, piece: Sequence[Mark], key: SetKey) -> list[Values]:
    """The reading of the repetitions where the number that was told straight before is theirs, or counting is said:
    `12x9. no, 10`, `12 kg, 9 times. I count wrong, it was 10`.
    """
    counted = [v for v in ways if v.load is None and v.reps is not None]
    if {w for m in piece for w in m.text.split()} & _COUNTED:
        return counted
    told = [t for t in record.told if (t.row.exercise, t.row.set) == key]
    if not told or told[-1].grounds.reps.at is None or told[-1].grounds.load.at is None:
        return []
    if told[-1].grounds.load.source is not Source.SAID:
        return counted
    return counted if told[-1].grounds.reps.at > told[-1].grounds.load.at else []


def _each_set(said: Correction, record: Record, place: int | None) -> list[SetKey]:
    """The sets of an exercise where all are told again, in order: `squats were 5 5 4 4`; none otherwise."""
    last = record.last(place)
    if last is None or said.stage is not None or said.side is not None or said.olds:
        return []
    worked = record.context(record.place_of(last.exercise) or 0).worked
    keys = list(dict.fromkeys((p.exercise, p.set) for p in worked if p.set is not None))
    context = record.context(record.place_of(last.exercise) or 0)
    reasonable = all(context.are_reps_in_reason(reps, 1) for reps, _ in said.counts)
    sides = any(p.side is not None for p in worked) or not reasonable
    return keys if 1 < len(keys) == len(said.counts) and not sides else []


def _without_talk(piece: Sequence[Mark]) -> list[Mark]:
    """The marks without words that stand apart from numbers: `was only 4 now that i think of it`."""
    out: list[Mark] = []
    for place, mark in enumerate(piece):
        counted = bool(place) and piece[place - 1].kind is Kind.NUM
        sets = mark.kind is Kind.SETS and not counted and piece[place + 1 : place + 2] != []
        if (mark.kind is not Kind.WORD or counted) and not (sets and piece[place + 1].kind is not Kind.NUM):
            out.append(mark)
    return out


def _of_stage_and_side(values: Values, said: Correction, context: Context) -> Values:
    if values.other is not None:
        return values
    if said.side is not None and context.exercise.sides == 2:
        values = replace(values, side=said.side, side_at=said.side_at)
    return values if said.stage is None else replace(values, stage=said.stage)


def _context_without(record: Record, where: int, key: SetKey) -> Context:
    context = record.context(where)
    return Context(context.exercise, context.unit, tuple(p for p in context.done if (p.exercise, p.set) != key))


def _is_all(mark: Mark) -> bool:
    """`all`, `were all`, `should all be`."""
    return mark.kind is Kind.ALL or (mark.kind in (Kind.WAS, Kind.MEANT) and "all" in mark.text.split())


def _targets(marks: Sequence[Mark], record: Record, place: int | None) -> list[SetKey] | None:
    """The sets that a correction is about."""
    last = record.last(place)
    if last is None or last.set is None:
        return None
    labels = [int(m.value) for m in marks if m.kind is Kind.LABEL and m.value is not None]
    those = any(m.kind is Kind.WAS and m.text.split(" ")[0] in ("those", "they", "these") for m in marks)
    said = [p for p in record.said if p.exercise == last.exercise]
    told: list[SetKey] = list(dict.fromkeys((p.exercise, p.set) for p in said if p.set is not None))
    denied = _denied(marks)
    worked = record.context(record.place_of(last.exercise) or 0).worked if denied else ()
    old = [p for p in worked if denied[0] in (p.reps, None if p.load is None else p.load.amount)]
    both = any(m.text.split()[-1:] == ["both"] or m.text.startswith("both ") for m in marks)
    if both and not labels and len(told) == 2:
        return told
    if both and not labels and len(record.context(record.place_of(last.exercise) or 0).worked) > 2:
        keys = list(dict.fromkeys((p.exercise, p.set) for p in old if p.set is not None))
        return keys if len(keys) == 2 else None
    if those and len(told) > 1 and not labels:
        return told
    if those and not told and not labels and len({p.set for p in old}) > 1:
        return list(dict.fromkeys((p.exercise, p.set) for p in old if p.set is not None))
    if labels and (len(labels) > 1 or not any(_is_all(m) for m in marks)):
        keys = [(last.exercise, n) for n in labels]
        return keys if all(record.rows(k) for k in keys) else None
    if any(_is_all(m) for m in marks) and not any(m.kind is Kind.LASTSET for m in marks):
        done = record.context(record.place_of(last.exercise) or 0).worked
        return list(dict.fromkeys((p.exercise, p.set) for p in done if p.set is not None))
    others = list(dict.fromkeys((p.exercise, p.set) for p in old if p.set is not None))
    if others and (last.exercise, last.set) not in others:
        return others if len(others) == 1 else None
    return [(last.exercise, last.set)]


def _denied(marks: Sequence[Mark]) -> list[Decimal | None]:
    """The values of stored sets that a correction denies; an effort's, as in `rpe 8 not 7`, is no set's."""
    if any(m.kind in (Kind.RPE, Kind.RIR, Kind.TANK) for m in marks):
        return []
    return [two.value for one, two in pairwise(marks) if two.kind is Kind.NUM and one.kind in (Kind.NOT, Kind.WROTE)]


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
