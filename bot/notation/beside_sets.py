"""What a message says beside its sets: the day, the time there is, a question, a unit for all of it."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import AskKind, Meaning, Span
from bot.notation.corrections.units import tells_unit_again
from bot.notation.days import DaySaid, read_day
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.masking import masked, unsaid
from bot.notation.minutes import MinutesSaid, read_minutes
from bot.notation.questions import QuestionSaid, read_question
from bot.notation.ratings import of_session
from bot.notation.said import Doubt
from bot.notation.tokens import Mark
from bot.notation.twice_told import told_twice
from bot.notation.units_said import unit_for_all
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
    if day is not None:
        day = read_day(unsaid(marks, read_question(marks).places), draft.request.now)
    day_at = None if day is None else _whole(marks, day.places)
    marks = masked(marks, () if day is None else day.places)
    minutes = read_minutes(marks, draft.request.now, timed, metres)
    if minutes is not None:
        draft.note(_whole(marks, minutes.places), Meaning.MINUTES, f"{minutes.minutes:f}")
        marks = masked(marks, minutes.places)
    question = read_question(marks)
    if question.at is not None:
        draft.note(question.at, Meaning.QUESTION, "")
    marks = masked(unsaid(marks, question.places), {*of_session(marks), *(() if timed else _durations(marks))})
    draft.mentions = [(m, m.names[0]) for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
    unit = None if draft.request.done and tells_unit_again(marks) else unit_for_all(marks)
    if unit is not None:
        draft.unit, draft.unit_at = unit.unit, (unit.mark.start, unit.mark.end)
        marks = masked(marks, unit.places)
    told = told_twice(marks)
    if told.differs is not None:
        draft.doubt(Doubt(AskKind.UNIT, told.differs[0].start, told.differs[1].end))
    return Beside(list(told.marks), day, day_at, minutes, question)


def _counts(draft: Draft, marks: Sequence[Mark], measure: Measure) -> bool:
    """Whether an exercise that the message names, or the one under way, counts seconds or metres."""
    named = [i for m in marks if m.kind is Kind.NAME for i in m.names]
    under = draft.under_way()
    places = named or ([] if under is None else [under])
    return any(draft.request.exercises[p].measure is measure for p in places)


def _durations(marks: Sequence[Mark]) -> set[int]:
    """Minutes and hours beside exercises that count no time: of no set, whatever they are of."""
    out: set[int] = set()
    for place in range(len(marks) - 1):
        if marks[place].kind is Kind.NUM and marks[place + 1].kind in (Kind.MINUTES, Kind.HOURS):
            out |= {place, place + 1}
    return out


def _whole(marks: Sequence[Mark], places: Sequence[int]) -> Span:
    """Where marks stand, from the first to the last."""
    return marks[min(places)].start, marks[max(places)].end
