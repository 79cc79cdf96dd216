"""What lies behind somebody: an exercise's estimates day by day, hard sets week by week, days done, pain."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from bot.training.assemble import fresh_state, strength_after
from bot.training.attendance import DayMark
from bot.training.calendar import monday_of
from bot.training.exposure import LiftedSet, lifted_sets
from bot.training.pain import PainSaid
from bot.training.people import SessionId
from bot.training.session import Session
from bot.training.strength import Estimate, State, estimate
from bot.training.volume import Done, hard_sets, planned_sets

# --- strength


@dataclass(frozen=True, slots=True)
class LiftDay:
    """A day on which an exercise was done: the estimate after it, and its work sets with a load."""

    day: date
    estimate: Estimate | None
    sets: tuple[LiftedSet, ...]


def lift_days(sessions: Iterable[Session], exercise: str, scores: Mapping[SessionId, int]) -> tuple[LiftDay, ...]:
    """The exercise's days, from sessions in order of theirs, as its kept state came about: each estimate is what was
    known that evening. `scores` are the pain scores said with the exercise."""
    state: State | None = None
    days: list[LiftDay] = []
    for session in sessions:
        planned = next((e for e in session.plan.exercises if e.name == exercise), None)
        if planned is None:
            continue
        state = strength_after(session, planned, state or fresh_state(planned), scores.get(session.id))
        done = lifted_sets(p for p in session.work_done(exercise) if p.load is not None)
        days.append(LiftDay(session.day, estimate(state, session.day), done))
    return tuple(days)


# --- volume


@dataclass(frozen=True, slots=True)
class SetsWeek:
    """A week's hard sets by muscle, done and planned (of the sessions that were sent)."""

    monday: date
    done: Mapping[str, Decimal]
    planned: Mapping[str, Decimal]


def sets_weeks(sessions: Sequence[Session], mondays: Iterable[date]) -> tuple[SetsWeek, ...]:
    """Those weeks, also the empty ones."""
    return tuple(_week([s for s in sessions if monday_of(s.day) == monday], monday) for monday in mondays)


def _week(sessions: Sequence[Session], monday: date) -> SetsWeek:
    done = hard_sets(Done(s.exercise(p.exercise), p) for s in sessions for p in s.done)
    return SetsWeek(monday, done, planned_sets(e for s in sessions for e in s.plan.exercises))


# --- what a look back gives


@dataclass(frozen=True, slots=True)
class PastPain:
    """Pain as it was said, when, and how it ended: on the day `settled` with `how` (the client's last answer; empty
    where it isn't kept); it is open still where that is `None`."""

    day: date
    exercise: str | None
    said: PainSaid
    settled: date | None
    how: str = ""


@dataclass(frozen=True, slots=True)
class Past:
    """What lies behind a client, as far as the matter at hand looks back: twelve months at most.

    `lift` are the days of the exercise that is asked about; `weeks` the last weeks' hard sets; `marks` what became of
    each day since `since`; `done` of `due` sessions are those of four weeks; `pains` the last ones, the latest first;
    `trained` the last days with sets, the latest first; `sessions` those of the day that is asked about.
    """

    lift: tuple[LiftDay, ...] = ()
    weeks: tuple[SetsWeek, ...] = ()
    marks: tuple[DayMark, ...] = ()
    since: date | None = None
    done: int = 0
    due: int = 0
    pains: tuple[PastPain, ...] = ()
    trained: tuple[date, ...] = ()
    sessions: tuple[Session, ...] = ()


NO_PAST = Past()
