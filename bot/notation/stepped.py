"""A load told by how far it is from the set before: `same but 5 kg heavier`, `5kg more, 9 reps`.

Only beside a stored set whose load the plan carries on, with the unit said and one count; else nothing changes.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle
from bot.training.report import Stage
from bot.training.units import Unit

_UNITS = {Kind.KG: Unit.KG, Kind.LB: Unit.LB}
_MORE_BEHIND, _LESS_BEHIND = frozenset(words("more heavier up extra")), frozenset(words("less lighter down off"))
_MORE_BEFORE, _LESS_BEFORE = frozenset(words("up added another extra increased")), frozenset(words("down dropped"))
_REPEATS = (Kind.SAME, Kind.AGAIN, Kind.SAMEREPS)
_OTHER = (Kind.X, Kind.SETS, Kind.QUERY, Kind.OTHERTIME, Kind.ASKING, Kind.PLUS, Kind.MINUS, Kind.WARMUP, Kind.SORRY,
          Kind.MEANT, Kind.NOT, Kind.COULD, Kind.ORD, Kind.LABEL, Kind.ALL, Kind.TALKNUM, Kind.BODY,
          Kind.OTHERPERSON)  # fmt: skip
_PART = 4
"""A step is no greater than a load divided by this (common practice, no source)."""

_MOST_REPS = 25
"""A greater number beside it may be the load itself."""


def with_steps(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such a load as it comes to."""
    out = list(marks)
    numbers = [i for i, m in enumerate(out) if m.kind is Kind.NUM]
    place = next((i for i in numbers if kind_at(out, i + 1) in _UNITS), None)
    repeats = any(m.kind in _REPEATS for m in out)
    if place is None or not (len(numbers) == 2 or (len(numbers) == 1 and repeats)):
        return out
    if any(m.kind in _OTHER for m in out):
        return out
    spans = _direction(out, place)
    before = _carried(out, record, under, _UNITS[out[place + 1].kind])
    step = out[place].value
    if spans is None or before is None or step is None or step * _PART > before:
        return out
    sign, start, end = spans
    load = replace(out[place], value=before + sign * step, parts=())
    count = next((i for i in numbers if i != place), None)
    if count is not None and (out[count].value or _MOST_REPS) >= _MOST_REPS:
        return out
    if count is None:
        reps = [Mark(Kind.SAMEREPS, "same reps", out[place + 1].end, out[place + 1].end)]
        return [*(m for m in out[:start] if m.kind is Kind.NAME), load, out[place + 1], *reps]
    gone = [m if i == count or m.kind is Kind.NAME else _nothing(m) for i, m in enumerate(out)]
    if count < start:
        gone[count] = out[count]
        return [*gone[: count + 1], _sign(Kind.AT, "at", out[place].start), load, out[place + 1], *gone[end:]]
    link = _sign(Kind.FOR, "for", out[count].start)
    return [*gone[:start], load, out[place + 1], link, *gone[end:]]


def _nothing(mark: Mark) -> Mark:
    kept = mark.kind in (Kind.STOP, Kind.LINE, Kind.REPS, Kind.RPE, Kind.RIR, Kind.TANK)
    return mark if kept else replace(mark, kind=Kind.FILL)


def _sign(kind: Kind, text: str, at: int) -> Mark:
    return Mark(kind, text, at, at)


def _direction(marks: Sequence[Mark], place: int) -> tuple[int, int, int] | None:
    """Whether a step goes up or down (1, -1), and where its words start and end."""
    end = place + 2
    behind = set(text_at(marks, end).split())
    if behind & (_MORE_BEHIND | _LESS_BEHIND):
        return (1 if behind & _MORE_BEHIND else -1), place, end + 1
    led = place - 1
    while kind_at(marks, led) is Kind.FILL and text_at(marks, led) in ("by", "another", "a"):
        led -= 1
    before = set(text_at(marks, led).split())
    if before & (_MORE_BEFORE | _LESS_BEFORE):
        return (1 if before & _MORE_BEFORE else -1), led, end + (text_at(marks, end) == "on")
    return None


def _carried(marks: Sequence[Mark], record: Record, under: int | None, unit: Unit) -> Decimal | None:
    """The load of the set before, in this unit, where the plan has the next one alike."""
    named = [m.names[0] for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
    place = named[0] if len(set(named)) == 1 else under if not named else None
    last = None if place is None else record.last(place)
    if place is None or last is None or last.load is None or last.stage is not Stage.WORK or last.load.unit is not unit:
        return None
    context = record.context(place)
    bodily = context.exercise.load_style in (LoadStyle.BODYWEIGHT, LoadStyle.NONE)
    alike = bool(context.open_sets) and context.planned_load(context.open_sets[0]) == context.planned_load(last.set)
    return last.load.amount if alike and not bodily and last.load.amount > 0 else None
