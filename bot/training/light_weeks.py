"""When a light week is offered: where at least three of five signs agree. The coach or the client decides.

That training is eased for about a week every four to eight is what coaches and lifters do (Bell et al. 2023, Sports Med
Open 9:87, consensus; Rogerson et al. 2024, Sports Med Open 10:26: 6.4 days every 5.6 weeks, from memory). Which signs
call for one has no agreed definition: that one sign is no reason and three are is ours. A light week is no treatment:
pain has its own ways.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from enum import StrEnum
from statistics import median

from bot.training.after_break import USUAL_RIR
from bot.training.calendar import monday_of
from bot.training.people import Programme
from bot.training.plan import PlannedExercise
from bot.training.weeks import changes_in, week_number, workout_in_week

SIGNS_NEEDED = 3
WEEKS_ON = 5
"""Weeks of training since the last light week or break (Rogerson et al. 2024: 5.6 on average)."""
STALLED_LIFTS = 2
"""Lifts without a better set in their last sessions. Common practice, no source."""
EFFORT_UP = 2
"""Points of session effort (0 to 10) above the client's own middle. Common practice, no source."""
EFFORT_SESSIONS = 2
EFFORT_BEFORE = 4
"""Rated sessions that the last ones are compared with, at least."""
SORE_OF = (2, 3)
"""Sessions with pain or soreness said, of the last ones. Common practice, no source."""
ASK_AGAIN = timedelta(weeks=3)
"""After an offer was declined. Ours."""


LIGHT_SETS, LIGHT_LOAD, LIGHT_RESERVE = Decimal("0.75"), Decimal(90), Decimal(2)
"""A programme's week is a light one where at most this share of its sets is left, or where most of them have at most
this percent of the load, or end so many repetitions further from failure. Volume and effort are what coaches cut (Bell
et al. 2022, Front Sports Act Living 4:1073223); by how much has no agreed figure: common practice, no source."""


class Sign(StrEnum):
    """What speaks for a light week."""

    LONG = "long"
    """Weeks of training without one."""
    STALLED = "stalled"
    """Lifts that don't go on."""
    CREEPING = "creeping"
    """The same work leaves less in reserve."""
    EFFORT = "effort"
    """Sessions feel harder than they used to."""
    SORE = "sore"
    """Pain or soreness said again and again."""


@dataclass(frozen=True, slots=True)
class Felt:
    """A session as it was felt: its effort (0 to 10; `None`: not rated) and whether pain or soreness was said."""

    day: date
    effort: int | None = None
    sore: bool = False


@dataclass(frozen=True, slots=True)
class Course:
    """What is looked at: the sessions done, oldest first; the Monday of the last light week, or of one
    to come, if any, by the coach's word or the programme's own; how many lifts stall and on how many the effort creeps
    up (`stalls.drift_of`); the day on which an offer was declined, if any."""

    sessions: tuple[Felt, ...]
    light: date | None = None
    stalled: int = 0
    creeping: int = 0
    declined: date | None = None


def signs_of(course: Course, today: date) -> tuple[Sign, ...]:
    """The signs that there are, in a fixed order."""
    seen = {
        Sign.LONG: weeks_on(course, today) >= WEEKS_ON,
        Sign.STALLED: course.stalled >= STALLED_LIFTS,
        Sign.CREEPING: course.creeping >= 1,
        Sign.EFFORT: _feels_harder(course.sessions),
        Sign.SORE: sum(felt.sore for felt in course.sessions[-SORE_OF[1] :]) >= SORE_OF[0],
    }
    return tuple(sign for sign in Sign if seen[sign])


def is_light(programme: Programme, week: int) -> bool:
    """Whether the programme itself makes this week (counted from 1) a light one."""
    if not changes_in(programme, week):
        return False
    plain = [e for workout in programme.workouts for e in workout.exercises]
    there = [e for n in range(len(programme.workouts)) for e in workout_in_week(programme, n, week).exercises]
    sets, left = sum(len(e.sets) for e in plain), sum(len(e.sets) for e in there)
    lighter = sum(len(now.sets) for was, now in zip(plain, there, strict=True) if _is_lighter(was, now))
    return bool(left) and (left <= LIGHT_SETS * sets or 2 * lighter > left)


def _is_lighter(was: PlannedExercise, now: PlannedExercise) -> bool:
    """By its loads, or by the repetitions that are left in reserve."""
    if now.load_percent is not None and now.load_percent <= LIGHT_LOAD and now.load_percent != was.load_percent:
        return True
    pairs = [(a.rir, b.rir) for a, b in zip(was.sets, now.sets, strict=False)]
    return bool(pairs) and all(b is not None and b - (USUAL_RIR if a is None else a) >= LIGHT_RESERVE for a, b in pairs)


def last_light(programme: Programme, begun: date, today: date) -> date | None:
    """The Monday of the programme's latest light week, as far as next week; `None` where it had none yet."""
    coming = monday_of(today) + timedelta(weeks=1)
    weeks = range(week_number(begun, coming), 0, -1)
    found = next((week for week in weeks if is_light(programme, week)), None)
    return None if found is None else monday_of(begun) + timedelta(weeks=found - 1)


def is_light_week_due(course: Course, today: date) -> bool:
    """Whether a light week is to be offered now."""
    waits = course.declined is not None and today < course.declined + ASK_AGAIN
    in_one = course.light is not None and monday_of(today) <= monday_of(course.light)
    return not waits and not in_one and len(signs_of(course, today)) >= SIGNS_NEEDED


def weeks_on(course: Course, today: date) -> int:
    """Weeks before this one with a session, one after the other; a light week or a week without ends the row."""
    trained = {monday_of(felt.day) for felt in course.sessions}
    week, count = monday_of(today) - timedelta(weeks=1), 0
    while week in trained and (course.light is None or week > monday_of(course.light)):
        week, count = week - timedelta(weeks=1), count + 1
    return count


def _feels_harder(sessions: Sequence[Felt]) -> bool:
    efforts = [felt.effort for felt in sessions if felt.effort is not None]
    last, before = efforts[-EFFORT_SESSIONS:], efforts[:-EFFORT_SESSIONS]
    return len(before) >= EFFORT_BEFORE and min(last) >= median(before) + EFFORT_UP
