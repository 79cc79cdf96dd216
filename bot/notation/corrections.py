"""Corrections: `that was 62.5 not 60`, `sorry 8 reps`, `set 2 was 9`, an effort said afterwards, `scrap that`.

A correction names a set (the last one by default) and what it really was. The replacement repeats what was stored and
not corrected. Which number is meant is told by the old value where it is said, by its words, or by what is plausible.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Effort, read_atoms
from bot.notation.context import Context
from bot.notation.grammar import read_items
from bot.notation.kinds import Kind
from bot.notation.ranking import rank
from bot.notation.record import Record
from bot.notation.said import Doubt
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.training.report import Performed, SetKey, Side, Stage
from bot.training.units import Load, Unit

CUES = frozenset((Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.NOT))
_LATE = frozenset(["forgot", "forget", "late", "delay", "missed", "delayed", "slow"])
"""Words of an apology for something else than a number."""


@dataclass(frozen=True, slots=True)
class Values:
    """What a set really was; `None` is as stored."""

    load: Load | None = None
    reps: int | None = None
    rir: Decimal | None = None
    side: Side | None = None
    stage: Stage | None = None


@dataclass(frozen=True, slots=True)
class Corrected:
    """What came of a correction: done, or why it cannot be and the honest ways."""

    doubt: Doubt | None = None
    choices: tuple[tuple[SetKey, Values], ...] = ()


def apply_values(rows: Sequence[Performed], values: Values) -> list[Performed]:
    """A set's rows with what is corrected: the work rows (or those of the stage and side that were named)."""
    stage = values.stage or Stage.WORK
    out = []
    for row in rows:
        named = row.stage is stage and (values.side is None or row.side in (None, values.side))
        if row.stage is Stage.MINI and stage is Stage.WORK and values.load is not None:
            out.append(replace(row, load=values.load))
        elif not named:
            out.append(row)
        elif values.side is not None and row.side is None:
            other = Side.RIGHT if values.side is Side.LEFT else Side.LEFT
            changed = replace(_changed(row, values), side=values.side)
            both = (changed, replace(row, side=other))
            out.extend(both if values.side is Side.LEFT else both[::-1])
        else:
            out.append(_changed(row, values))
    return out


def _changed(row: Performed, values: Values) -> Performed:
    return replace(
        row,
        load=row.load if values.load is None else values.load,
        reps=row.reps if values.reps is None else values.reps,
        rir=row.rir if values.rir is None else values.rir,
    )


def is_correction(piece: Sequence[Mark], record: Record, under: str | None) -> bool:
    """Whether a piece of the message corrects what is said already, rather than reporting a set."""
    if record.last() is None:
        return False
    marks = [m for m in piece if m.kind is not Kind.FILL]
    kinds = [m.kind for m in marks]
    if not any(m.kind in (Kind.NUM, Kind.BODY, Kind.EMPTY, Kind.CLOCK) for m in marks):
        return False
    cue = next((i for i, k in enumerate(kinds) if k in CUES), None)
    if kinds and kinds[0] is Kind.X and len(kinds) > 1 and kinds[1] is Kind.NUM and piece[0].text == "*":
        return piece[0].end == marks[1].start
    if kinds[:1] == [Kind.NO] and kinds[1:2] == [Kind.NUM] and len(kinds) <= 4:
        return True
    names = [m for m in marks if m.kind is Kind.NAME and m.names]
    if names and all(record.last(p) is None for m in names for p in m.names):
        return False
    if _relabels(marks, record, under):
        return True
    if cue is None:
        return False
    telling = (Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL, Kind.NOT, Kind.ALL, Kind.DROP, Kind.MINI)
    if names and kinds[cue] is Kind.WAS and not any(k in telling for k in kinds) and Kind.X in kinds:
        return False
    ahead = [m for m in marks[:cue] if m.kind in (Kind.NUM, Kind.CLOCK, Kind.BODY)]
    named = any(
        k in (Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL, Kind.DROP, Kind.ALL) for k in kinds[:cue]
    )
    if ahead and not named and Kind.NOT not in kinds and Kind.WROTE not in kinds:
        return False
    if Kind.WARMUP in kinds and kinds[cue] is Kind.WAS:
        return False
    wanted = Stage.DROP if Kind.DROP in kinds else Stage.MINI if Kind.MINI in kinds else None
    last = record.last()
    stored = [] if last is None else record.rows((last.exercise, last.set or 0))
    if wanted is not None and kinds[cue] is Kind.WAS and not any(p.stage is wanted for p in stored):
        return False
    if kinds[cue] is Kind.SORRY and any(m.text in _LATE for m in piece):
        return False
    near = [k for k in kinds[cue + 1 : cue + 4] if k not in (Kind.COMMA, *CUES, Kind.STOP, Kind.AT, Kind.FOR, Kind.TO)]
    following = marks[cue + 1 :]
    if not any(m.kind in (Kind.NUM, Kind.BODY, Kind.EMPTY, Kind.RPE, Kind.RIR, Kind.CLOCK) for m in following):
        return False
    if kinds[cue] is Kind.SORRY and near and near[0] in (Kind.WORD, Kind.GAP):
        return False
    if kinds[cue] is Kind.WAS:
        at = next(i for i, m in enumerate(piece) if m is marks[cue])
        direct = [m.kind for m in piece[at + 1 : at + 4] if m.kind is not Kind.FILL]
        told = (Kind.COMMA, Kind.WORD, Kind.NAME, Kind.OTHERTIME)
        return not direct or direct[0] not in told or Kind.NOT in kinds
    return True


def _relabels(marks: Sequence[Mark], record: Record, under: str | None) -> bool:
    """Whether a piece starts with the number of a set that is stored: `set 2: 9`, `second set 62.5`."""
    last = record.last(record.last_exercise)
    if last is None or any(m.kind is Kind.NAME for m in marks) or under != last.exercise:
        return False
    shaped = [m for m in shape_marks(marks, True) if m.kind is not Kind.GAP]
    labels = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    numbers = [m for m in shaped if m.kind is Kind.NUM]
    return (
        bool(shaped)
        and shaped[0].kind is Kind.LABEL
        and len(labels) == 1
        and 0 < len(numbers) <= 2
        and bool(record.rows((last.exercise, labels[0])))
    )


def read_scrap(piece: Sequence[Mark]) -> bool:
    """Whether a piece takes a set back."""
    return any(m.kind is Kind.SCRAP for m in piece)


def split_pieces(marks: Sequence[Mark]) -> list[list[Mark]]:
    """The message in pieces: sentences, and what follows a correcting word inside one."""
    pieces: list[list[Mark]] = [[]]
    for place, mark in enumerate(marks):
        if mark.kind in (Kind.LINE, Kind.STOP, Kind.QUERY):
            pieces[-1].append(mark)
            if pieces[-1]:
                pieces.append([])
            continue
        if (
            mark.text == "got"
            and any(m.text in ("tried", "attempted", "went") for m in pieces[-1])
            and any(m.kind is Kind.X for m in pieces[-1])
        ):
            pieces.append([replace(mark, kind=Kind.MEANT)])
            continue
        again = (
            mark.kind is Kind.AND
            and any(m.kind in (Kind.MEANT, Kind.WAS) for m in pieces[-1])
            and _labels_next(marks, place)
        )
        if again:
            pieces.append([])
            continue
        starts = mark.kind in (Kind.SORRY, Kind.MEANT, Kind.SCRAP) or (mark.kind is Kind.NOT and _is_no(mark))
        if mark.kind in (Kind.MEANT, Kind.SORRY) and _waits(pieces[-1]) and _numbers_follow(marks, place):
            pieces[-1] = [replace(m, kind=Kind.GAP, value=None) if m.kind is Kind.NUM else m for m in pieces[-1]]
            continue
        no = mark.kind is Kind.NO and place + 1 < len(marks) and marks[place + 1].kind in (Kind.NUM, Kind.SORRY)
        if (starts or no) and _breaks(pieces[-1], marks, place):
            pieces.append([])
        pieces[-1].append(mark)
    return [p for p in pieces if p]


def _breaks(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """Whether a correcting word starts a new piece: after numbers, before others, and not about a stored set."""
    numbers = any(m.kind in (Kind.NUM, Kind.BODY, Kind.SAME) for m in piece)
    wrote = any(m.kind is Kind.WROTE for m in piece)
    return numbers and not wrote and _numbers_follow(marks, place) and not _has_label(piece)


def _labels_next(marks: Sequence[Mark], place: int) -> bool:
    """Whether another set is named after `and`: `set 1 should be 60 and set 2 65`."""
    following = [m.kind for m in marks[place + 1 : place + 3]]
    return following in ([Kind.SET, Kind.NUM], [Kind.ORD, Kind.SET])


def _waits(piece: Sequence[Mark]) -> bool:
    """Whether a piece holds one number only, whose other half is still to come: `row 30, i mean 35 for 11`."""
    kinds = [m.kind for m in piece if m.kind is not Kind.FILL]
    halves = (Kind.NUM, Kind.NAME, Kind.DASH, Kind.COMMA, Kind.KG, Kind.LB, Kind.COLON)
    return kinds.count(Kind.NUM) == 1 and all(k in halves for k in kinds)


def _is_no(mark: Mark) -> bool:
    return mark.text == "no"


def _has_label(piece: Sequence[Mark]) -> bool:
    """Whether the piece is about a stored set up to here: `set 1 should be 100`."""
    kinds = [m.kind for m in piece if m.kind is not Kind.FILL]
    if not kinds:
        return False
    entries = [i for i, k in enumerate(kinds) if k in (Kind.X, Kind.FOR, Kind.AT, Kind.COMMA)]
    return (Kind.SET in kinds or Kind.ORD in kinds) and not entries


def _numbers_follow(marks: Sequence[Mark], place: int) -> bool:
    if marks[place].kind is Kind.SCRAP:
        return True
    for mark in marks[place + 1 : place + 6]:
        if mark.kind in (Kind.NUM, Kind.BODY, Kind.RPE, Kind.RIR):
            return True
        if mark.kind not in (Kind.FILL, Kind.COMMA, Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.SET, Kind.LASTSET, Kind.NAME,
                             Kind.COLON, Kind.STOP, Kind.DASH, Kind.ORD, Kind.NO):  # fmt: skip
            return False
    return False


def correct(piece: Sequence[Mark], record: Record, unit: Unit, place: int | None) -> Corrected:
    """Applies a correction to the record; a doubt where the set or the number is not clear."""
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], True)
    if shaped and shaped[0].kind is Kind.LEADX:
        shaped = shaped[1:]
    start, end = piece[0].start, piece[-1].end
    new, old = _new_and_old(shaped)
    atoms = read_atoms(read_items(_without_cues(new)))
    amounts = [a for a in atoms if isinstance(a, Amount)]
    olds = [a for a in read_atoms(read_items(_without_cues(old))) if isinstance(a, Amount)]
    efforts = [a for a in atoms if isinstance(a, Effort)]
    keys = _targets(shaped, record, place)
    if keys is None:
        return Corrected(Doubt(AskKind.WHICH_SET, start, end))
    stage = Stage.DROP if any(m.kind is Kind.DROP for m in shaped) else None
    if stage is None and any(m.kind is Kind.MINI for m in shaped):
        stage = Stage.MINI
    side = next((Side.LEFT if m.kind in (Kind.LEFT, Kind.LEFTPOST) else Side.RIGHT for m in shaped
                 if m.kind in (Kind.LEFT, Kind.LEFTPOST, Kind.RIGHT, Kind.RIGHTPOST)), None)  # fmt: skip
    if any(m.kind is Kind.BAD for m in shaped):
        return Corrected(Doubt(AskKind.NUMBER_FORMAT, start, end))
    for key in keys:
        rows = record.rows(key)
        where = record.place_of(key[0])
        if not rows or where is None:
            return Corrected(Doubt(AskKind.WHICH_SET, start, end))
        context = _context_without(record, where, key)
        staged = [r for r in rows if r.stage is stage] or rows
        ways = _values(atoms, amounts, olds=olds, efforts=efforts, rows=staged, context=context, unit=unit, key=key)
        ways = [replace(v, side=side if side else v.side, stage=stage if stage else v.stage) for v in ways]
        if len(ways) != 1:
            return Corrected(
                Doubt(AskKind.ORDER if ways else AskKind.UNSURE, start, end), tuple((key, v) for v in ways)
            )
        doubt = _out_of_reason(ways[0], rows, context, start, end)
        if doubt is not None:
            return Corrected(doubt)
        record.change(key, lambda gone, values=ways[0]: apply_values(gone, values))  # type: ignore[misc]
        record.last_exercise = where
    return Corrected()


def _context_without(record: Record, where: int, key: SetKey) -> Context:
    context = record.context(where)
    return Context(context.exercise, context.unit, tuple(p for p in context.done if (p.exercise, p.set) != key))


def _without_cues(marks: Sequence[Mark]) -> list[Mark]:
    gone = (
        *CUES,
        Kind.LASTSET,
        Kind.LABEL,
        Kind.WROTE,
        Kind.COMMA,
        Kind.STOP,
        Kind.GAP,
        Kind.LINE,
        Kind.QUERY,
        Kind.SET,
        Kind.ORD,
        Kind.COLON,
        Kind.DROP,
        Kind.MINI,
        Kind.LEFT,
        Kind.RIGHT,
        Kind.LASTREP,
        Kind.ALL,
        Kind.TO,
        Kind.DASH,
    )
    return [m for m in marks if m.kind not in gone]


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
        elif mark.kind in (Kind.LABEL, Kind.LASTSET) and mark.kind is Kind.LABEL:
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


def _values(
    atoms: Sequence[object],
    amounts: Sequence[Amount],
    *,
    olds: Sequence[Amount],
    efforts: Sequence[Effort],
    rows: Sequence[Performed],
    context: Context,
    unit: Unit,
    key: SetKey,
) -> list[Values]:
    """The honest readings of what a set really was."""
    rir = efforts[-1].rir if efforts else None
    if not amounts:
        return [Values(rir=rir)] if efforts else []
    if len(amounts) == 1 and amounts[0].counts is not Counts.SETS:
        ways = _single(amounts[0], olds, rows=rows, context=context, unit=unit, key=key)
        return [replace(v, rir=rir) for v in ways]
    ranked = rank([a for a in atoms if isinstance(a, Amount | Effort)], context, unit)
    bounds = ranked.honest if ranked.doubt is not None else (ranked.bound,)
    ways = []
    for bound in bounds:
        if len(bound.performed) == 1:
            row, said = bound.performed[0], bound.said[0]
            ways.append(Values(row.load if said.load is not None else None, row.reps, row.rir))
    return ways


def _single(
    amount: Amount, olds: Sequence[Amount], *, rows: Sequence[Performed], context: Context, unit: Unit, key: SetKey
) -> list[Values]:
    """One number: the load or the repetitions."""
    work = next((r for r in rows if r.stage is Stage.WORK), rows[0])
    load = _as_load(amount, context, unit, work)
    whole = amount.value is not None and amount.value == int(amount.value)
    reps = int(amount.value) if whole and amount.value is not None else None
    if amount.counts in (Counts.REPS, Counts.SECONDS, Counts.METRES):
        return [Values(reps=reps)] if reps is not None else []
    if amount.counts in (Counts.MINUTES, Counts.M) and context.is_timed and amount.value is not None:
        return [Values(reps=int(amount.value * 60))]
    if amount.clock:
        return [Values(reps=int(amount.parts[0] * 60 + amount.parts[1]))] if context.is_timed else []
    if amount.counts in (Counts.LOAD, Counts.S) or amount.sign or amount.body or not whole:
        return [Values(load=load)] if load is not None and context.takes_load else []
    if not context.takes_load:
        return [Values(reps=reps)]
    if olds and olds[0].value is not None:
        was = olds[0]
        as_load = work.load is not None and work.load.amount_in(was.unit or unit) == was.value
        as_reps = work.reps == was.value
        if as_load != as_reps:
            return [Values(load=load)] if as_load else [Values(reps=reps)]
        if not as_load:
            return []
    ways = []
    near = load is not None and context.is_load_in_reason(load, key[1], [work.load], False)
    if near and load != work.load:
        ways.append(Values(load=load))
    if reps is not None and reps != work.reps and context.are_reps_in_reason(reps, key[1]):
        ways.append(Values(reps=reps))
    if not ways and load is not None:
        return [Values(load=load)]
    return ways


def _as_load(amount: Amount, context: Context, unit: Unit, work: Performed) -> Load | None:
    if amount.value is None and not amount.body:
        return None
    value = (amount.value or Decimal(0)) * (amount.sign or 1)
    if amount.total and context.is_per_hand:
        value = value / 2
    said = amount.unit or (work.load.unit if work.load is not None else unit)
    return Load.of(value, said)


def _out_of_reason(values: Values, rows: Sequence[Performed], context: Context, start: int, end: int) -> Doubt | None:
    number = rows[0].set
    doubt = Doubt(AskKind.OUT_OF_REASON, start, end)
    if values.stage in (Stage.DROP, Stage.MINI):
        return None
    earlier = [p.load for p in context.worked]
    signed = values.load is not None and values.load.thousandths <= 0
    if values.load is not None and not context.is_load_in_reason(values.load, number, earlier, signed):
        return doubt
    if values.reps is not None and not context.are_reps_in_reason(values.reps, number):
        return doubt
    return None
