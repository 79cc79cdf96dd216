"""The unit of stored loads put right: `that 60 was kilos`, `the last one was in pounds`, `220 lb not kg`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Source, Span
from bot.notation.grounds import Ground, Told
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.report import SetKey
from bot.training.units import Load, Unit

_UNITS = {Kind.KG: Unit.KG, Kind.LB: Unit.LB}
_SAID = (Kind.WAS, Kind.MEANT, Kind.SORRY, Kind.NOT)
_PLAIN = (*_SAID, Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.NAME, Kind.LABEL, Kind.LASTSET, Kind.ALL,
          Kind.NUM, Kind.KG, Kind.LB, Kind.SETS, Kind.SET, Kind.AT, Kind.FOR, Kind.GAP, Kind.ORD, Kind.WROTE,
          Kind.WITH, Kind.S)  # fmt: skip


def tells_unit_again(marks: Sequence[Mark]) -> bool:
    """Whether a message may only say in which unit stored loads were, so that the unit is not that of new sets."""
    numbers = sum(m.kind is Kind.NUM for m in marks)
    marks = _of_unit(marks)
    return numbers <= 1 and any(m.kind in _SAID for m in marks) and all(m.kind in _PLAIN for m in marks)


def correct_unit(piece: Sequence[Mark], record: Record, place: int | None) -> bool:
    """Whether the piece only says in which unit stored loads were; then they are put right."""
    piece = _of_unit(piece)
    unit, at = _unit(piece)
    last = record.last(place)
    if unit is None or at is None or last is None or last.set is None:
        return False
    if not any(m.kind in _SAID for m in piece) or not all(m.kind in _PLAIN for m in piece):
        return False
    numbers = [m.value for m in piece if m.kind is Kind.NUM]
    stored = list(dict.fromkeys(_keys(record, last.exercise)))
    keys: list[SetKey] = []
    labels = [int(m.value) for m in piece if m.kind is Kind.LABEL and m.value is not None]
    if len(numbers) > 1 or (not numbers and not _tells_unit(piece)):
        return False
    if labels:
        keys = [(last.exercise, n) for n in labels]
    elif any(m.kind is Kind.ALL or _is_plural(m) for m in piece):
        keys = stored
    elif numbers:
        keys = [k for k in stored if any(p.load is not None and p.load.amount == numbers[0] for p in record.rows(k))]
    elif len(stored) > 1 and not any(_is_one(m) for m in piece):
        return False
    else:
        keys = [(last.exercise, last.set)]
    loads = [p.load for k in keys for p in record.rows(k)]
    wrong = [load for load in loads if load is not None and load.unit is not unit]
    told = not numbers or all(load is not None and load.amount == numbers[0] for load in loads)
    if not loads or not wrong or not told:
        return False
    for key in keys:
        record.change(key, lambda rows: [_in_unit(t, unit, at) for t in rows])
    return True


def _of_unit(marks: Sequence[Mark]) -> Sequence[Mark]:
    """`i'm an idiot, that's pounds`, `sorry, pounds`: the part with the unit, where no other has a number."""
    place = next((i for i, m in enumerate(marks) if m.kind in _UNITS), None)
    if place is None:
        return marks
    start = max((i + 1 for i in range(place) if marks[i].kind in (Kind.COMMA, Kind.STOP, Kind.LINE)), default=0)
    if any(m.kind is Kind.NUM for m in marks[:start]):
        return marks
    cues = [m for m in marks[:start] if m.kind in (Kind.SORRY, Kind.MEANT)]
    return [*([] if any(m.kind in _SAID for m in marks[start:]) else cues[:1]), *marks[start:]]


def _is_plural(mark: Mark) -> bool:
    """`both`, `those were`, `squats were`: all stored sets."""
    said = mark.text.split()
    return bool(said) and (said[0] in ("both", "those", "they", "these") or (mark.kind is Kind.WAS and "were" in said))


def _is_one(mark: Mark) -> bool:
    """`that was`, `it was`, `the last one`: one set."""
    one = mark.kind is Kind.WAS or bool({"that", "it", "this"} & set(mark.text.split()))
    return one or mark.kind in (Kind.LASTSET, Kind.LASTREP, Kind.MEANT)


def _keys(record: Record, exercise: str) -> list[SetKey]:
    where = record.place_of(exercise)
    return [] if where is None else [(p.exercise, p.set) for p in record.context(where).worked if p.set is not None]


def _unit(piece: Sequence[Mark]) -> tuple[Unit | None, Span | None]:
    """The unit that is said, not the one that it was not; none where two are said, or none."""
    said = []
    denied = False
    for mark in piece:
        if mark.kind is Kind.NOT:
            denied = True
        elif mark.kind in _UNITS:
            if not denied:
                said.append((_UNITS[mark.kind], (mark.start, mark.end)))
            denied = False
        elif mark.kind is not Kind.FILL:
            denied = False
    return said[0] if len(said) == 1 else (None, None)


def _tells_unit(piece: Sequence[Mark]) -> bool:
    """Whether a unit stands without a number: `was in pounds`."""
    kinds = [m.kind for m in piece if m.kind is not Kind.FILL]
    return any(k in _UNITS and (i == 0 or kinds[i - 1] is not Kind.NUM) for i, k in enumerate(kinds))


def _in_unit(told: Told, unit: Unit, at: Span) -> Told:
    load = told.row.load
    if load is None:
        return told
    grounds = replace(told.grounds, unit=Ground(Source.SAID, at))
    return replace(told, row=replace(told.row, load=Load.of(load.amount, unit)), grounds=grounds)
