"""The first two weeks back: at most three and then four training days, as far apart as can be."""

from datetime import date, time, timedelta
from itertools import combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.back_days import days_back, kept_days, weeks_back
from bot.training.calendar import monday_of
from bot.training.coming import Trainee, laid_days
from bot.training.life import PLAIN_LIFE
from bot.training.people import TrainingTime
from bot.training.samples import sample_programme

MONDAY = date(2027, 2, 1)


def days(*places: int) -> list[date]:
    """Days from Monday on."""
    return [MONDAY + timedelta(days=n) for n in places]


def trainee(*weekdays: int) -> Trainee:
    """Somebody who trains on these weekdays."""
    return Trainee(TrainingTime(weekdays, time(18)), sample_programme(), MONDAY, 0, PLAIN_LIFE)


@pytest.mark.parametrize(
    ("there", "most", "kept"),
    [
        ((0, 1, 2, 3, 4), 3, (0, 2, 4)),
        ((0, 1, 3, 4), 3, (0, 1, 4)),
        ((0, 1, 2, 3, 4, 5, 6), 3, (0, 2, 4)),
        ((0, 2, 4), 3, (0, 2, 4)),
        ((3,), 3, (3,)),
        ((), 3, ()),
    ],
)
def test_days_are_kept_far_apart(there: tuple[int, ...], most: int, kept: tuple[int, ...]) -> None:
    """The first one always; worked by hand."""
    assert kept_days(days(*there), most, end=MONDAY + timedelta(weeks=1)) == tuple(days(*kept))


def test_five_days_come_back_as_three_then_four_then_five() -> None:
    """From a Monday on, and from a Thursday on: weeks are counted from the first session (Caterisano et al. 2019,
    Strength Cond J 41(3):1-23: three days in the first week, four in the second)."""
    of = trainee(0, 1, 2, 3, 4)
    for first in (MONDAY, MONDAY + timedelta(days=3)):
        laid = {week.monday: week.days for week in weeks_back(of, first)}
        mondays = [monday_of(first) + timedelta(weeks=n) for n in range(4)]
        there = [d.day for monday in mondays for d in laid.get(monday, laid_days(of, first, monday))]
        begins = [first + timedelta(weeks=n) for n in range(3)]
        assert [sum(b <= d < b + timedelta(weeks=1) for d in there) for b in begins] == [3, 4, 5]


@pytest.mark.parametrize("weekdays", [(0,), (0, 3), (0, 2, 4)])
def test_who_trains_on_three_days_or_fewer_keeps_them(weekdays: tuple[int, ...]) -> None:
    """Nothing is laid."""
    assert weeks_back(trainee(*weekdays), MONDAY) == ()


def test_the_first_session_on_another_day_counts_among_them() -> None:
    """Begun on a Sunday by their own wish: with it two of Monday to Friday, then four."""
    back = days_back(MONDAY - timedelta(days=1), days(-1, *range(5), *range(7, 12)))
    assert [sum(d < MONDAY + timedelta(days=6) for d in back), len(back)] == [3, 7]


@given(st.sets(st.integers(0, 13), min_size=1), st.integers(1, 7))
def test_never_more_never_another_day_and_never_nearer_than_need_be(places: set[int], most: int) -> None:
    """The least gap of the days kept is the widest of all choices that keep the first day (tried one by one)."""
    there = days(*sorted(places))
    end = there[-1] + timedelta(days=1)
    kept = kept_days(there, most, end=end)
    assert set(kept) <= set(there)
    assert len(kept) == min(most, len(there))
    assert kept[:1] == tuple(there[:1])
    others = [c for c in combinations(there, len(kept)) if c[0] == there[0]]
    best = max(min((b - a).days for a, b in pairwise((*c, end))) for c in others)
    assert min((b - a).days for a, b in pairwise((*kept, end))) == best
