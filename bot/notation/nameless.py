"""A session told line by line without a name, each line under the load that only its exercise has: `90 10 10 9`.

A full stop, a semicolon or a slash with room about it parts exercises as a line does.

Read so where the first number of every line is exactly the planned load of the next exercise with sets left, and no two
of these have the same load: what the load says, no name would say better.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.units import Unit

_NUMBERS = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.BAD)
_ENTRY = (Kind.NUM, Kind.X, Kind.FOR, Kind.COMMA, Kind.SLASH, Kind.AND, Kind.COLON, Kind.DASH, Kind.KG, Kind.LB,
          Kind.REPS, Kind.FILL, Kind.S, Kind.EACH)  # fmt: skip
_NAMES = (Kind.NAME, Kind.WEAK)
_HEAD = 3
"""Marks of `in order:`."""
_REPS_MOST = 2
"""Times the top of the range: more is no count of repetitions."""


def with_names_by_load(marks: list[Mark], record: Record, unit: Unit) -> list[Mark]:
    """The marks with the exercise of each such line named before it, by the words of its load."""
    head = _order_said(marks)
    if head or not any(_parts(m) for m in marks):
        return _entry_by_entry(marks, head, record, unit)
    return _line_by_line(marks, record, unit)


def _entry_by_entry(marks: list[Mark], head: int, record: Record, unit: Unit) -> list[Mark]:
    """`85x5 5 5, 60x8 8 7`, `in order: …`: a comma before a load parts the exercises, if their loads say so."""
    parted = [
        replace(m, kind=Kind.LINE, text="\n") if m.kind is Kind.COMMA and _is_load(marks, head + i + 1) else m
        for i, m in enumerate(marks[head:])
    ]
    named = _line_by_line(parted, record, unit)
    places = [m.names[0] for m in named if m.kind is Kind.NAME and m not in parted]
    loads = [{s.load for s in record.exercises[place].sets if s.load is not None} for place in places]
    shared = any(one & other for i, one in enumerate(loads) for other in loads[:i])
    return marks if named == parted or shared else named


def _order_said(marks: Sequence[Mark]) -> int:
    """How many marks say `in order:` before the sets."""
    words = [m.text for m in marks[:_HEAD]]
    if words[:2] != ["in", "order"]:
        return 0
    return 2 + (len(words) > 2 and marks[2].kind in (Kind.COLON, Kind.COMMA, Kind.STOP, Kind.LINE))


def _is_load(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number stands there that leads its own repetitions: `60 x 8`."""
    return [kind_at(marks, place), kind_at(marks, place + 1)] in ([Kind.NUM, Kind.X], [Kind.NUM, Kind.FOR])


def _line_by_line(marks: list[Mark], record: Record, unit: Unit) -> list[Mark]:
    told = [line for line in _lines(marks) if any(m.kind in (*_NUMBERS, *_NAMES) for m in marks[slice(*line)])]
    named = [any(m.kind in _NAMES for m in marks[slice(*line)]) for line in told]
    lines = told[: named.index(True)] if True in named else told
    if any(not any(m.kind in _NUMBERS for m in marks[slice(*line)]) for line in told):
        return marks
    others = {name for m in marks if m.kind in _NAMES for name in m.names}
    places = [place for place in _next_open(record, len(record.exercises)) if place not in others][: len(lines)]
    loads = [_load(record, place) for place in places]
    if len(lines) < SEVERAL or len(places) < len(lines) or len(set(loads)) < len(loads):
        return marks
    apart = all(m.kind is Kind.LINE for m in marks if _parts(m))
    heads: dict[int, Mark] = {}
    for (start, end), place in zip(lines, places, strict=True):
        if not _is_of(marks[start:end], record, place, unit):
            return marks
        planned = record.context(place).planned(None)
        alone = sum(m.kind is Kind.NUM for m in marks[start:end]) <= SEVERAL
        if alone and not (apart and planned is not None and planned.finish is None):
            return marks
        first = next(m for m in marks[start:end] if m.kind is Kind.NUM)
        heads[start] = Mark(Kind.NAME, first.text, first.start, first.end, names=(place,))
    return [m for i, mark in enumerate(marks) for m in ((heads[i], mark) if i in heads else (mark,))]


def _lines(marks: Sequence[Mark]) -> Iterator[tuple[int, int]]:
    start = 0
    for place in range(len(marks) + 1):
        if place == len(marks) or _parts(marks[place]):
            yield start, place
            start = place + 1


def _parts(mark: Mark) -> bool:
    """Whether a mark parts the sets of one exercise from those of the next."""
    return mark.kind in (Kind.LINE, Kind.STOP, Kind.BREAK, Kind.THEN) or (mark.kind is Kind.SLASH and not mark.tight)


def _next_open(record: Record, count: int) -> list[int]:
    """The next exercises with sets left, in the session's order."""
    opens = [p for p in range(len(record.exercises)) if record.context(p).open_sets]
    return opens[:count]


def _load(record: Record, place: int) -> Decimal | None:
    planned = record.context(place).planned_load(None)
    return None if planned is None else planned.kg


def _is_of(line: Sequence[Mark], record: Record, place: int, unit: Unit) -> bool:
    """Whether a line is the planned load of an exercise and as many counts as it has sets left, or fewer."""
    context = record.context(place)
    planned = context.planned_load(None)
    if planned is None or planned.unit is not unit or any(m.kind not in _ENTRY for m in line):
        return False
    load = planned.amount_in(unit)
    numbers = [v for m in line if m.kind is Kind.NUM for v in (m.parts if m.value is None else (m.value,))]
    counts = [v for v in numbers if v != load]
    most = _REPS_MOST * context.range_of(None).high
    whole = all(v == int(v) and 0 < v <= most for v in counts)
    told = load > most / _REPS_MOST or any(m.kind in (Kind.X, Kind.FOR) for m in line)
    return numbers[:1] == [load] and whole and told and 0 < len(counts) <= len(context.open_sets)
