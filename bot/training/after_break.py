"""After a break: how much comes back, and when; and when reminders stop.

Under two weeks nothing changes: maximal strength is held for about that long and clearly falls from the third week
(Bosquet et al. 2013, Scand J Med Sci Sports 23:e140-e149; McMaster et al. 2013, Sports Med 43:367-384; see `layoff`).

Sets come back at 50, 70, 80 and 90 % in the first four weeks, the steps (50, 30, 20 and 10 % less) that the CSCCa and
NSCA guidelines give for conditioning after two weeks or more of inactivity (Caterisano et al. 2019, Strength Cond J
41(3):1-23; the steps as quoted on practices' pages). To use them for sets of lifting, and to enter later after shorter
breaks, is ours, as is the effort: two repetitions more in reserve in the first session, one in the rest of its week,
no drops or mini sets in it. At most three training days in the first week and four in the second (same guidelines).

A coach's own rules stand over these. After illness or injury the doctor's word stands over everybody's.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from decimal import Decimal
from math import exp

from bot.training.calendar import monday_of
from bot.training.layoff import GRACE_WEEKS, loss_of
from bot.training.people import Workout
from bot.training.plan import LoadRule, PlannedExercise, PlannedSet

STOP_AFTER_WEEKS = 2
"""Missed weeks after which no more reminders are sent and the coach is told. Ours."""
USUAL_RIR = Decimal(2)
"""The reserve taken for asked where a set asks for none."""
MOST_RIR = Decimal(5)
"""Beyond it nobody can tell what is left."""
MOST_DAYS = (3, 4)
"""Training days in the first and in the second week back."""
LOAD_STEP = 5
"""Percent points: loads that are not tracked go down to whole steps, and up by one a week."""


@dataclass(frozen=True, slots=True)
class Ease:
    """How much easier a session is: the share of its sets (percent, halves up, one stays), repetitions more in reserve,
    the share of loads that are not tracked (percent), whether drops and mini sets stay."""

    sets_percent: int = 100
    rir_more: Decimal = Decimal(0)
    load_percent: int = 100
    finishes: bool = True

    @property
    def is_full(self) -> bool:
        """Whether nothing is easier."""
        return self == Ease()


FULL = Ease()
"""Nothing is easier."""


@dataclass(frozen=True, slots=True)
class BreakRule:
    """From so many weeks off: the share of the sets in each week back, in percent."""

    from_weeks: int
    sets_percent: tuple[int, ...]


USUAL_RULES = (BreakRule(2, (70,)), BreakRule(4, (50, 70)), BreakRule(8, (50, 70, 80, 90)))


def weeks_off(last: date, today: date) -> int:
    """Whole weeks between the last session and today."""
    return max(0, (today - last).days // 7)


def ease_for(off_weeks: int, *, weeks_back: int, is_first: bool, rules: tuple[BreakRule, ...] = USUAL_RULES) -> Ease:
    """How a session is eased after so many weeks off, `weeks_back` whole weeks after the first session back (0 in the
    first week); `is_first`: the first session itself."""
    rule = max((r for r in rules if off_weeks >= r.from_weeks), key=lambda r: r.from_weeks, default=None)
    if rule is None or weeks_back >= len(rule.sets_percent):
        return Ease()
    in_first_week = weeks_back == 0
    rir_more = 2 if is_first else 1 if in_first_week else 0
    return Ease(rule.sets_percent[weeks_back], Decimal(rir_more), load_share(off_weeks, weeks_back), not in_first_week)


def load_share(off_weeks: int, weeks_back: int) -> int:
    """Percent of the load before the break for loads that are not tracked (a tracked strength knows the break).

    What is left of the strength (`layoff.loss_of`), down to a whole step, and a step more each week.

    >>> load_share(3, 0), load_share(12, 0), load_share(12, 1), load_share(12, 2)
    (95, 90, 95, 100)
    """
    left = 100 * exp(-loss_of(max(0.0, off_weeks - GRACE_WEEKS)))
    return min(100, int(left // LOAD_STEP) * LOAD_STEP + LOAD_STEP * weeks_back)


def eased(workout: Workout, ease: Ease) -> Workout:
    """The workout made easier."""
    return replace(workout, exercises=tuple(_eased(exercise, ease) for exercise in workout.exercises))


def most_days(weeks_back: int, days: int) -> int:
    """Training days of a week back, of those that somebody trains on."""
    return min(days, MOST_DAYS[weeks_back]) if weeks_back < len(MOST_DAYS) else days


def missed_weeks(sessions: Iterable[tuple[date, bool]], today: date) -> int:
    """Full weeks (Monday to Sunday) just before this one in which sessions were planned and none was reported.

    `sessions` are days with whether anything was reported. A week without a planned session neither counts nor breaks
    the row; something reported this week does.
    """
    by_week: dict[date, bool] = {}
    for day, reported in sessions:
        by_week[monday_of(day)] = by_week.get(monday_of(day), False) or reported
    this_week = monday_of(today)
    if by_week.get(this_week, False):
        return 0
    count = 0
    for monday in sorted((m for m in by_week if m < this_week), reverse=True):
        if by_week[monday]:
            break
        count += 1
    return count


def stops_reminders(sessions: Iterable[tuple[date, bool]], today: date) -> bool:
    """Whether so many weeks were missed that reminders stop until the client is heard of again."""
    return missed_weeks(sessions, today) >= STOP_AFTER_WEEKS


def resumes_on(first_back: date, off_weeks: int, rules: tuple[BreakRule, ...] = USUAL_RULES) -> date:
    """The day from which everything is as before."""
    rule = max((r for r in rules if off_weeks >= r.from_weeks), key=lambda r: r.from_weeks, default=None)
    return first_back + timedelta(weeks=0 if rule is None else len(rule.sets_percent))


def _eased(exercise: PlannedExercise, ease: Ease) -> PlannedExercise:
    kept = max(1, (len(exercise.sets) * ease.sets_percent + 50) // 100)
    sets = tuple(_eased_set(planned, ease) for planned in exercise.sets[:kept])
    if exercise.load_rule in (LoadRule.TRACKED, LoadRule.PERCENT) or ease.load_percent == 100:
        return replace(exercise, sets=sets)
    before = Decimal(100) if exercise.load_percent is None else exercise.load_percent
    return replace(exercise, sets=sets, load_percent=before * ease.load_percent / 100)


def _eased_set(planned: PlannedSet, ease: Ease) -> PlannedSet:
    asked = USUAL_RIR if planned.rir is None else planned.rir
    rir = planned.rir if not ease.rir_more else max(asked, min(asked + ease.rir_more, MOST_RIR))
    return replace(planned, rir=rir, finish=planned.finish if ease.finishes else None)
