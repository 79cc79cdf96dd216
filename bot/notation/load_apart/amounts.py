"""The load, or the count, that a part of a message tells: `only 95 because it slips`, `squeezed out 8 of them`."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.bounds import HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.load_apart.beside import are_known, effort_end, remark, remark_behind, unit_of, words_of
from bot.notation.load_apart.words import AFTER_COUNT, AFTER_LOAD, CARRIED, CHANGING, COUNTING, ENDED, LOADING
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark
from bot.training.units import Load, Unit

_LOAD_KINDS = (Kind.FILL, Kind.WORD, Kind.WAS, Kind.TO, Kind.AT, Kind.WITH, Kind.FOR, Kind.COULD, Kind.PLATES,
               Kind.TIMES, Kind.AGAIN, Kind.INSTEAD, Kind.AND, Kind.THEN, Kind.TALKNUM, Kind.OTHERTIME, Kind.DROP,
               Kind.COLON, Kind.SET, Kind.PAIR, Kind.S, Kind.NO, Kind.WEAK, Kind.WROTE, Kind.ADDED, Kind.SAME,
               Kind.SKIP, Kind.OTHERPERSON, Kind.ALL, Kind.LEFT)  # fmt: skip
"""Kinds of the words beside a load that are looked up."""
_COUNT_KINDS = (Kind.FILL, Kind.WORD, Kind.WAS, Kind.AND, Kind.FOR, Kind.TIMES, Kind.REPS, Kind.TOTAL, Kind.THEN,
                Kind.COLON, Kind.DONE, Kind.COULD, Kind.ALL, Kind.AT, Kind.TO)  # fmt: skip
_COUNTED = (Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.S, Kind.M)
_SIGNED = (Kind.SIGN, Kind.PLUS, Kind.ADDED)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_IT_WAS = ("that was", "it was", "those were", "they were", "was")
_PLAIN = AFTER_COUNT | {"times", "total", "time", "in the bank"}


@dataclass(frozen=True, slots=True)
class Amount:
    """The marks that tell it, the effort behind it, and what is remarked behind; `led`: whether words lead or follow
    its number, `changes`: whether they tell of another load than before.
    """

    said: tuple[Mark, ...]
    effort: tuple[Mark, ...] = ()
    remark: tuple[Mark, ...] = ()
    led: bool = False
    changes: bool = False


NOTHING = Amount(())
"""Of a part that tells neither."""


def read_load(marks: Sequence[Mark], context: Context) -> Amount | None:
    """`only 95 because it slips`, `the 27.5 kilo ones`, `+4 plate on the chest`, `body weight only today`."""
    places = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    bodies = [i for i, m in enumerate(marks) if m.kind is Kind.BODY]
    if len(places) == 2 and kind_at(marks, places[1] - 1) is Kind.FEELS and (marks[places[1]].value or 0) > HARDEST:
        places = places[:1]  # `95 felt like 200`
        marks = marks[: marks.index(next(m for m in marks if m.kind is Kind.FEELS))]
    if len(places) + len(bodies) != 1:
        return None
    at = (places or bodies)[0]
    start = at - (bool(places) and kind_at(marks, at - 1) in _SIGNED)
    unit = bool(places) and kind_at(marks, at + 1) in UNITS
    end = at + 1 + unit
    end += kind_at(marks, end) in (Kind.S, Kind.TOTAL) and context.is_per_hand
    added = kind_at(marks, end) is Kind.ADDED
    plated = kind_at(marks, end) is Kind.PLATES and context.is_bodyweight
    past_load = end + (added or plated or kind_at(marks, end) is Kind.TOTAL)
    lead = marks[:start]
    stop = remark_behind(marks, past_load, AFTER_LOAD, _LOAD_KINDS)
    if stop is None or not _leads_load(lead, context):
        return None
    carried = context.is_bodyweight and bool(set(words_of([*lead, *marks[past_load:stop]])) & CARRIED)
    carried = carried or (context.is_bodyweight and any(m.kind is Kind.WITH for m in lead))
    signed = start < at or added or plated or carried
    if places and not _is_load(marks[at], context, unit_of(marks[end - 1], context), signed=signed, sure=unit):
        return None
    sign = [Mark(Kind.ADDED, "added", marks[end - 1].end, marks[end - 1].end)] if signed and start == at else []
    said = (*marks[start:end], *(marks[end : end + 1] if added else sign))
    changes = bool(set(words_of(lead)) & CHANGING) and not set(words_of(lead)) & ENDED
    led = bool(lead) or stop > past_load or bool(bodies) or signed
    return Amount(said, remark=_rest(marks, stop), led=led, changes=changes)


def _leads_load(lead: Sequence[Mark], context: Context) -> bool:
    """Whether these words lead a load of a set; `that was 95` may correct the set before."""
    corrects = len(lead) == 1 and lead[0].text in _IT_WAS and bool(context.worked)
    return not corrects and are_known(lead, LOADING | CARRIED, _LOAD_KINDS)


def _is_load(mark: Mark, context: Context, unit: Unit, *, signed: bool, sure: bool) -> bool:
    """Whether a number is a load of the exercise, and no count of it unless its words say so."""
    value = mark.value
    if value is None or value <= 0 or not context.takes_load:
        return False
    before = [p.load for p in context.worked]
    fits = context.is_load_in_reason(Load.of(value, unit), None, before, signed=signed)
    return fits and (sure or signed or not _may_count(value, context))


def _may_count(value: Decimal, context: Context) -> bool:
    return value == int(value) and context.are_reps_in_reason(int(value), None)


def read_count(marks: Sequence[Mark], context: Context) -> Amount | None:
    """`ten times`, `squeezed out 8 of them`, `8 reps, rir 1`."""
    at = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM), 0)
    value = marks[at].value
    if value is None or not _may_count(value, context) or not are_known(marks[:at], COUNTING, _COUNT_KINDS):
        return None
    every = at == 1 and marks[0].kind is Kind.ALL and text_at(marks, at + 1) != "of"  # `90, all 8s`: of every set
    every = every or any(m.kind is Kind.ALL and m.text != "all" for m in marks[at + 1 :])
    if every or (kind_at(marks, at + 1) is Kind.S and not context.is_timed):
        return None
    end = at + 1 + (kind_at(marks, at + 1) in _COUNTED)
    if (text_at(marks, at) == "one" or kind_at(marks, at - 1) is Kind.AT) and end == at + 1:
        return None
    end += kind_at(marks, end) is Kind.EACH and context.exercise.sides > 1
    said = tuple(marks[at:end])
    banked = kind_at(marks, end) is Kind.TANK and text_at(marks, end) == "in the bank" and value > MOST_LEFT
    end += banked
    while kind_at(marks, end) in (Kind.TIMES, Kind.TOTAL, Kind.FILL) and set(words_of(marks[end : end + 1])) <= _PLAIN:
        end += 1
    rated = end + (kind_at(marks, end) in (Kind.WITH, Kind.AND))
    effort = tuple(marks[rated : effort_end(marks, rated)])
    end = rated + len(effort) if effort else end
    rest = remark_behind(marks, end, AFTER_COUNT, _COUNT_KINDS)
    led = at > 0 or end > at + 1
    return None if rest is None else Amount(said, effort, _rest(marks, rest), led)


def read_whole(marks: Sequence[Mark]) -> Amount | None:
    """`150x3`, `did 5 at 60`: both at once, and no effort with them."""
    places = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    if len(places) != 2 or not are_known(marks[: places[0]], LOADING, _LOAD_KINDS):
        return None
    between, behind = marks[places[0] + 1 : places[1]], marks[places[1] + 1 :]
    linked = sum(m.kind in _LINKS for m in between) == 1
    linked = linked and all(m.kind in (*_LINKS, *UNITS, Kind.REPS, Kind.S, Kind.FILL) for m in between)
    ends = all(m.kind in (Kind.REPS, Kind.FILL, *UNITS) for m in behind)
    return Amount(tuple(marks)) if linked and ends else None


def _rest(marks: Sequence[Mark], at: int) -> tuple[Mark, ...]:
    """The remark behind a load or a count."""
    return (remark(marks[at:]) or ()) if at < len(marks) else ()
