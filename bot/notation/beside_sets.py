"""What a message says beside its sets: the day, the time there is, a question, a unit for all of it."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import AskKind, Meaning, Span
from bot.notation.clauses import EDGES, kind_at
from bot.notation.corrections.units import tells_unit_again
from bot.notation.days import DaySaid, is_unsure, read_day
from bot.notation.draft import Draft
from bot.notation.hurt_parts import of_times, with_edges
from bot.notation.kinds import Kind
from bot.notation.masking import masked, unsaid
from bot.notation.minutes import MinutesSaid, read_minutes
from bot.notation.minutes.durations import duration_at
from bot.notation.minutes.past import over
from bot.notation.questions import QuestionSaid, read_question
from bot.notation.ratings import of_session
from bot.notation.said import Doubt
from bot.notation.tokens import Mark
from bot.notation.twice_told import told_twice
from bot.notation.units_said import unit_for_all
from bot.notation.wordlist import words
from bot.training.plan import Measure


@dataclass(frozen=True, slots=True)
class Beside:
    """What a message says beside its sets, and its marks without that."""

    marks: list[Mark]
    day: DaySaid | None
    day_at: Span | None
    minutes: MinutesSaid | None
    question: QuestionSaid


def read_beside(draft: Draft, marks: list[Mark]) -> Beside:
    """The day, the time, the question and the unit that the message says, and its marks without them."""
    timed, metres = _counts(draft, marks, Measure.SECONDS), _counts(draft, marks, Measure.METRES)
    day = read_day(marks, draft.request.now)
    if day is not None and not is_unsure(marks, day):
        day = read_day(unsaid(marks, read_question(marks).places), draft.request.now)
    day_at = None if day is None else _whole(marks, day.places)
    marks = masked(marks, () if day is None else day.places)
    minutes, rated = read_minutes(marks, draft.request.now, timed, metres), of_session(marks)
    if minutes is not None and _is_of_coach(marks, minutes.places):
        minutes = None
    if minutes is not None:
        draft.note(_whole(marks, minutes.places), Meaning.MINUTES, f"{minutes.minutes:f}")
        marks = _without_times(marks, set(minutes.places))
    marks = _without_times(marks, over(marks) | (set() if timed else _durations(marks)))
    question = read_question(marks)
    if question.at is not None:
        draft.note(question.at, Meaning.QUESTION, "")
    marks = masked(unsaid(marks, question.places), rated)
    draft.mentions = [(m, m.names[0]) for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
    unit = None if draft.request.done and tells_unit_again(marks) else unit_for_all(marks)
    if unit is not None:
        draft.unit, draft.unit_at = unit.unit, (unit.mark.start, unit.mark.end)
        marks = masked(marks, unit.places)
    told = told_twice(marks)
    if told.differs is not None:
        draft.doubt(Doubt(AskKind.UNIT, told.differs[0].start, told.differs[1].end))
    return Beside(list(told.marks), day, day_at, minutes, question)


def _without_times(marks: Sequence[Mark], times: set[int]) -> list[Mark]:
    """The marks without times, and without what else their parts say: it is said of the time."""
    parted = with_edges(marks, times) if times else list(marks)
    return masked(unsaid(parted, of_times(parted, times)), times)


def _is_of_coach(marks: Sequence[Mark], places: Sequence[int]) -> bool:
    """`do you have 5 minutes for a call`: the coach's time; not `half an hour, thats all you get`."""
    said = [w for m in marks[max(0, min(places) - 3) : max(places) + 1] for w in m.text.split()]
    asks = {"do", "have", "got"} & set(said[: said.index("you") + 3]) if "you" in said else set()
    given = "you" in said and said[: said.index("you")][-1:] == ["all"]
    return bool(asks) and not given and not {"i", "ive", "im"} & set(said)


def _counts(draft: Draft, marks: Sequence[Mark], measure: Measure) -> bool:
    """Whether an exercise that the message names, or the one under way, counts seconds or metres."""
    if not any(e.measure is measure for e in draft.request.exercises):
        return False
    named = [i for m in marks if m.kind in (Kind.NAME, Kind.WEAK) for i in m.names]
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.NAME), len(marks))
    under = draft.under_way()
    before = any(m.kind in (Kind.SECONDS, Kind.MINUTES) for m in marks[:first])
    places = [*named, *([under] if under is not None and (before or not named) else [])]
    return any(draft.request.exercises[p].measure is measure for p in places)


def _durations(marks: Sequence[Mark]) -> set[int]:
    """Minutes and hours beside exercises that count no time: of no set, whatever they are of."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and kind_at(marks, place + 1) in (Kind.MINUTES, Kind.HOURS):
            out |= {place, place + 1}
        if mark.kind is Kind.NUM and kind_at(marks, place + 1) is Kind.HOURS:
            out |= _hours_got(marks, place + 2)
        spoken = duration_at(marks, place, metres=True) if mark.kind is Kind.FILL else None
        if spoken is not None:
            out |= set(range(place, spoken[1]))
    return out


def _hours_got(marks: Sequence[Mark], at: int) -> set[int]:
    """The 5 of `was supposed to sleep 8 hours, got 5`."""
    at += at < len(marks) and marks[at].kind in (Kind.COMMA, Kind.DASH, Kind.AND)
    got = at
    while at < len(marks) and set(marks[at].text.split()) <= _GOT:
        at += 1
    ends = at + 1 >= len(marks) or marks[at + 1].kind in EDGES
    return {at} if at > got and at < len(marks) and marks[at].kind is Kind.NUM and ends else set()


_GOT = frozenset(words("got had only just managed barely i maybe more like about actually slept"))


def _whole(marks: Sequence[Mark], places: Sequence[int]) -> Span:
    """Where marks stand, from the first to the last."""
    return marks[min(places)].start, marks[max(places)].end
