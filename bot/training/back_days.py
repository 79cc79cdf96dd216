"""The first two weeks back after a break: on which of their training days somebody trains, at most three and then four
(Caterisano et al. 2019, Strength Cond J 41(3):1-23; see `after_break`), spread as evenly as the days allow.

A week back is counted from the first session, not from Monday: three days before a weekend and three after it would be
six in a week.
"""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import combinations, pairwise

from bot.training.after_break import MOST_DAYS, most_days
from bot.training.calendar import monday_of
from bot.training.coming import Trainee, laid_days, week_of
from bot.training.life import LaidWeek

SPAN = timedelta(weeks=len(MOST_DAYS))


def kept_days(days: Sequence[date], most: int, *, end: date, before: date | None = None) -> tuple[date, ...]:
    """So many of these days (in order) that lie as far apart as can be, also from the last day trained `before` them
    (without one the first is always kept) and from the `end`, with which the next week begins.

    >>> monday = date(2027, 2, 1)
    >>> [d.day for d in kept_days([monday + timedelta(days=n) for n in range(5)], 3, end=date(2027, 2, 8))]
    [1, 3, 5]
    """
    if len(days) <= most:
        return tuple(days)
    fixed = () if before is not None else (days[0],)
    choices = (c for c in combinations(days, most) if c[: len(fixed)] == fixed)
    return min(choices, key=lambda c: (*_crowded((*(() if before is None else (before,)), *c, end)), c))


def _crowded(days: Sequence[date]) -> tuple[int, int]:
    """How near the days lie: the least gap (the wider the better), then how uneven they are."""
    gaps = [(b - a).days for a, b in pairwise(days)]
    return -min(gaps, default=0), sum(gap * gap for gap in gaps)


def days_back(first: date, days: Sequence[date]) -> tuple[date, ...]:
    """Of the training days (in order) of the weeks from `first` on, the first session back, those that stay."""
    kept: list[date] = []
    for week in range(len(MOST_DAYS)):
        begin, end = first + timedelta(weeks=week), first + timedelta(weeks=week + 1)
        here = [d for d in days if begin <= d < end]
        kept += kept_days(here, most_days(week, len(here)), end=end, before=kept[-1] if kept else None)
    return tuple(kept)


def weeks_back(of: Trainee, first: date) -> tuple[LaidWeek, ...]:
    """The weeks from the first session back on in which a training day falls out, laid without it."""
    mondays = sorted({monday_of(first + timedelta(days=n)) for n in range(SPAN.days)})
    laid = {monday: laid_days(of, first, monday) for monday in mondays}
    coming = {d.day for days in laid.values() for d in days} | {first}
    stays = set(days_back(first, sorted(coming)))
    found: list[LaidWeek] = []
    for monday, days in laid.items():
        left = tuple(d for d in days if d.day in stays or d.day >= first + SPAN)
        week = week_of(of, first, monday, left) if left != days else None
        if week is not None:
            found.append(week)
    return tuple(found)
