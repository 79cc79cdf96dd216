"""A set told by how far it is from the one before: `same but 5 kg heavier`, `5kg more, 9 reps`, `ditto, one rep short`.

A load only beside a stored set whose load the plan carries on, with the unit said and one count; repetitions only
beside `same`; else nothing changes.
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
_MORE_BEFORE = frozenset(words("up added another extra increased bumped raised upped nudged"))
_LESS_BEFORE = frozenset(words("down dropped reduced lowered"))
_REPEATS = (Kind.SAME, Kind.AGAIN, Kind.SAMEREPS)
_OTHER = (Kind.X, Kind.SETS, Kind.QUERY, Kind.OTHERTIME, Kind.ASKING, Kind.PLUS, Kind.MINUS, Kind.WARMUP, Kind.SORRY,
          Kind.MEANT, Kind.NOT, Kind.COULD, Kind.ORD, Kind.LABEL, Kind.ALL, Kind.TALKNUM, Kind.BODY,
          Kind.OTHERPERSON)  # fmt: skip
_PART = 4
"""A step is no greater than a load divided by this (common practice, no source)."""

_MOST_REPS = 25
"""A greater number beside it may be the load itself."""


def with_steps(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such a load, or such repetitions, as they come to."""
    ends = next((i for i, m in enumerate(marks) if m.kind is Kind.FINISH), 0)
    while ends and marks[ends - 1].kind in (Kind.STOP, Kind.COMMA, Kind.AND, Kind.THEN, Kind.LINE):
        ends -= 1
    if ends:
        return [*with_steps(marks[:ends], record, under), *marks[ends:]]  # `ditto, one rep short. that's me done`
    counted = _counted_from(marks, record, under)
    out = _without_next_label(marks, record, under)
    if counted is not None:
        return counted
    numbers = [i for i, m in enumerate(out) if m.kind is Kind.NUM]
    place = next((i for i in numbers if kind_at(out, i + 1) in _UNITS), None)
    repeats = any(m.kind in _REPEATS for m in out)
    if place is None or not (len(numbers) == 2 or (len(numbers) == 1 and repeats)):
        return list(marks)
    if any(m.kind in _OTHER and m.text != "by" for m in out):
        return list(marks)
    spans = _direction(out, place)
    before = _carried(out, record, under, _UNITS[out[place + 1].kind])
    step = out[place].value
    if spans is None or before is None or step is None or step * _PART > before:
        return list(marks)
    sign, start, end = spans
    load = replace(out[place], value=before + sign * step, parts=())
    count = next((i for i in numbers if i != place), None)
    if count is not None and (out[count].value or _MOST_REPS) >= _MOST_REPS:
        return list(marks)
    if count is None:
        reps = [Mark(Kind.SAMEREPS, "same reps", out[place + 1].end, out[place + 1].end)]
        return [*(m for m in out[:start] if m.kind is Kind.NAME), load, out[place + 1], *reps]
    gone = [m if i == count or m.kind is Kind.NAME else _nothing(m) for i, m in enumerate(out)]
    if count < start:
        gone[count] = out[count]
        return [*gone[: count + 1], _sign(Kind.AT, "at", out[place].start), load, out[place + 1], *gone[end:]]
    link = _sign(Kind.FOR, "for", out[count].start)
    return [*gone[:start], load, out[place + 1], link, *gone[end:]]


def _without_next_label(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """`set 2 went 2.5 kilos heavier, 8 reps`: without the number of the set, where it is the next one."""
    named = [m.names[0] for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
    place = named[0] if named else under
    open_sets = () if place is None else record.context(place).open_sets
    out = list(marks)
    for at, mark in enumerate(marks[:-1]):
        after = marks[at + 1]
        ordinal = mark.kind is Kind.ORD and (after.kind in (Kind.SET, *_ENDS) or at + 2 == len(marks))
        number = mark if ordinal else after if mark.kind is Kind.SET and after.kind is Kind.NUM else None
        if number is None or not open_sets or number.value != open_sets[0]:
            continue
        end = at + 1 + (after.kind in (Kind.SET, Kind.NUM))
        out[at:end] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[at:end]]
        if kind_at(marks, end) is Kind.COLON:
            out[end] = replace(marks[end], kind=Kind.COMMA)
        return out
    return out


_ENDS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.COLON)
_FEW_REPS = 4
"""A greater step of repetitions is asked about, as one without the word that may be of the load."""
_FEWER = frozenset(words("less fewer short shy down under lower off"))
_FURTHER = frozenset(words("more extra up better"))
_LOST = frozenset(words("minus lost dropped missed less fewer down short"))
_WON = frozenset(words("plus gained added"))
_ONE = ("a", "one", "1")
_BESIDE = (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.SAME, Kind.AGAIN, Kind.SAMELOAD, Kind.NAME, Kind.AND)
_RATED = (Kind.RPE, Kind.RIR, Kind.AT, Kind.TANK)


def _counted_from(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark] | None:
    """`same but one rep less`, `ditto minus a rep`, `same weight, 2 reps more` as the repetitions that they come to."""
    same = next((i for i, m in enumerate(marks) if m.kind in (Kind.SAME, Kind.AGAIN, Kind.SAMELOAD)), None)
    found = (
        None if same is None else next(filter(None, (_step_at(marks, i) for i in range(same + 1, len(marks)))), None)
    )
    if found is None:
        return None
    step, start, end = found
    rest = marks[end:]
    rated = any(m.kind in _RATED for m in rest) and sum(m.kind is Kind.NUM for m in rest) == 1
    named = [m.names[0] for m in marks[:start] if m.kind is Kind.NAME and len(m.names) == 1]
    place = named[0] if named else under
    last = None if place is None else record.last(place)
    rows = [] if last is None else record.rows((last.exercise, last.set or 0))
    plain = all(m.kind in _BESIDE for m in marks[:start]) and (rated or all(m.kind in _BESIDE for m in rest))
    if not plain or len(rows) != 1 or rows[0].stage is not Stage.WORK or rows[0].reps + step <= 0:
        return None
    at = marks[start].start
    number = Mark(Kind.NUM, str(rows[0].reps + step), at, marks[end - 1].end, value=Decimal(rows[0].reps + step))
    repeats = marks[same or 0]
    load = [] if rows[0].load is None else [replace(repeats, kind=Kind.SAMELOAD, text="same weight")]
    names = [m for m in marks[:start] if m.kind is Kind.NAME]
    return [*names, *load, number, _sign(Kind.REPS, "reps", number.end), *rest]


def _step_at(marks: Sequence[Mark], place: int) -> tuple[int, int, int] | None:
    """How many repetitions more (fewer: negative) the words from here say, and where they start and end."""
    value = marks[place].value if marks[place].kind is Kind.NUM else None
    step = int(value) if value is not None and value == int(value) else 1 if marks[place].text in _ONE else 0
    if not 0 < step <= _FEW_REPS:
        return None
    led = text_at(marks, place - 1).split()[-1:]
    sign = -1 if set(led) & _LOST else 1 if set(led) & _WON else 0
    end = place + 1
    reps = worded = False
    while end < len(marks) and end < place + 4:
        said = set(text_at(marks, end).split())
        if kind_at(marks, end) is Kind.REPS and not reps:
            reps = True
        elif not worded and sign == 0 and said & (_FEWER | _FURTHER) and len(said) <= 2:
            worded, sign = True, -1 if said & _FEWER else 1
        else:
            break
        end += 1
    sure = reps or (sign == -1 and worded and marks[place].text != "a")
    return (sign * step, place - (not worded), end) if sign and sure else None


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
    while text_at(marks, led) in ("by", "another", "a", "it", "the", "weight", "load"):
        led -= 1
    before = set(text_at(marks, led).split())
    if before & (_MORE_BEFORE | _LESS_BEFORE):
        return (1 if before & _MORE_BEFORE else -1), led, end + (text_at(marks, end) == "on")
    if text_at(marks, place - 1) in ("another", "extra") and text_at(marks, end) == "on":
        return 1, place - 1, end + 1
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
