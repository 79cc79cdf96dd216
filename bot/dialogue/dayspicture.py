"""A programme on several numbers of days as a picture: minutes day by day, sets and rest of each muscle."""

from collections.abc import Sequence
from decimal import Decimal

from bot.saying import DaysChart, DaysMuscle, DaysWeek
from bot.training.days import DaysPlan
from bot.training.people import Programme
from bot.training.week_values import Weekday

NONE = Decimal(0)


def days_chart(programme: Programme, minutes: int, plans: Sequence[DaysPlan]) -> DaysChart:
    """The plans side by side; `minutes` are those that a day has."""
    targets = {target.muscle: target for target in programme.targets}
    muscles = []
    for muscle in muscles_by_sets(plans):
        sets = tuple(plan.sets.get(muscle, NONE) for plan in plans)
        rest_h = tuple(plan.gap_h.get(muscle) for plan in plans)
        target = targets.get(muscle)
        aim = (None, None) if target is None else (target.low, target.high)
        muscles.append(DaysMuscle(muscle, sets, rest_h, *aim))
    weeks = tuple(_week(plan, is_now=len(plan.days) == len(programme.workouts)) for plan in plans)
    return DaysChart(programme.title, minutes, weeks, tuple(muscles))


def muscles_by_sets(plans: Sequence[DaysPlan]) -> list[str]:
    """The muscles that are worked, those with most sets first."""
    most = {m: max(p.sets.get(m, NONE) for p in plans) for p in plans for m in p.sets}
    return sorted(most, key=lambda m: (-most[m], m))


def _week(plan: DaysPlan, *, is_now: bool) -> DaysWeek:
    on = {day.day: day.minutes for day in plan.days}
    return DaysWeek(tuple(on.get(day) for day in Weekday), is_now)
