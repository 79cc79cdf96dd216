"""Session load, monotony and strain, against a published week and against an independent reckoning."""

import statistics
from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.session_load import NoMonotony, SessionSaid, monotony_of, week_load

MONDAY = date(2026, 1, 5)
PUBLISHED = (940, 50, 840, 280, 180, 390, 50, 390, 280)
"""The session loads of Foster et al. 2001 (J Strength Cond Res 15:109-115), Table 5, as printed (900 and 600 would be
the products of two of its rows)."""
BY_DAY = (940, 50, 840 + 280, 180, 390, 50, 390 + 280)


def week(*daily: int) -> list[SessionSaid]:
    """A session a day at effort 1, so that minutes are the load; none on a day of 0."""
    return [SessionSaid(MONDAY + timedelta(days=n), 1, load) for n, load in enumerate(daily) if load]


@pytest.mark.parametrize(
    ("effort", "minutes", "load"), [(2, 25, 50), (7, 120, 840), (7, 40, 280), (3, 60, 180), (6, 60, 360)]
)
def test_a_session_is_effort_times_minutes(effort: int, minutes: int, load: int) -> None:
    """Rows of Table 5 of Foster et al. 2001 (two runs, skating, weights, a ride), and 6 x 60."""
    assert SessionSaid(MONDAY, effort, minutes).load == load


def test_the_published_week() -> None:
    """Table 5 of Foster et al. 2001 prints a week's load of 3400, monotony 1.26 and strain 4284.

    The load and `strain = load x monotony` are ours to the unit. 1.26 comes out of its nine sessions with the divisor
    n; by days, as the definition of 1998 says, it is 1.21 or, with the divisor n - 1 that we use, 1.12.
    """
    ours = week_load(MONDAY, week(*BY_DAY))
    assert ours.load == 3400
    assert ours.load * Decimal("1.26") == 4284
    assert round(monotony_of(PUBLISHED, divisor_less=0) or 0, 2) == Decimal("1.26")
    assert round(monotony_of(BY_DAY, divisor_less=0) or 0, 2) == Decimal("1.21")
    assert ours.monotony is not None
    assert round(ours.monotony, 2) == Decimal("1.12")


@pytest.mark.parametrize(
    ("daily", "monotony", "strain"),
    [
        ((360, 0, 490, 0, 480, 0, 0), "0.790", "1050.2"),
        ((300,) * 6 + (0,), "2.268", "4082.0"),
        ((600, 100, 600, 100, 600, 100, 0), "1.061", "2227.4"),
    ],
)
def test_worked_weeks(daily: tuple[int, ...], monotony: str, strain: str) -> None:
    """Three sessions, six equal days, hard and easy days in turn: reckoned by hand from the definitions."""
    ours = week_load(MONDAY, week(*daily))
    assert ours.monotony is not None
    assert ours.strain is not None
    assert (round(ours.monotony, 3), round(ours.strain, 1)) == (Decimal(monotony), Decimal(strain))


@given(st.lists(st.integers(0, 1500), min_size=7, max_size=7).filter(lambda loads: len(set(loads)) > 1))
def test_as_the_standard_library_reckons(daily: list[int]) -> None:
    """Mean over sample standard deviation by Python's own `statistics`."""
    ours = week_load(MONDAY, week(*daily))
    assert ours.load == sum(daily)
    assert float(ours.monotony or 0) == pytest.approx(statistics.mean(daily) / statistics.stdev(daily))
    assert float(ours.strain or 0) == pytest.approx(sum(daily) * float(ours.monotony or 0))


def test_nothing_is_divided_by_zero() -> None:
    """A flat week and an empty one have no monotony, and say why."""
    flat, empty = week_load(MONDAY, week(*(300,) * 7)), week_load(MONDAY, [])
    assert (flat.load, flat.monotony, flat.strain, flat.why) == (2100, None, None, NoMonotony.FLAT)
    assert (empty.load, empty.monotony, empty.strain, empty.why) == (0, None, None, NoMonotony.EMPTY)


@pytest.mark.parametrize(("effort", "minutes"), [(None, 60), (6, None), (None, None)])
def test_what_is_not_known_is_not_taken_for_nothing(effort: int | None, minutes: int | None) -> None:
    """A session without rating or minutes is no rest day: the week's load is a part of it, and there is no monotony."""
    said = [SessionSaid(MONDAY, 6, 60), SessionSaid(MONDAY + timedelta(days=3), effort, minutes)]
    ours = week_load(MONDAY, said)
    assert (ours.load, ours.known, ours.sessions, ours.is_whole) == (360, 1, 2, False)
    assert ours.daily == (360, 0, 0, None, 0, 0, 0)
    assert (ours.monotony, ours.strain, ours.why) == (None, None, NoMonotony.UNRATED)


def test_two_sessions_of_a_day_add_up_and_other_weeks_stay_out() -> None:
    """Loads of a day are one load."""
    said = [SessionSaid(MONDAY, 6, 60), SessionSaid(MONDAY, 2, 20), SessionSaid(MONDAY + timedelta(days=7), 9, 90)]
    ours = week_load(MONDAY, said)
    assert (ours.daily[0], ours.load, ours.sessions) == (400, 400, 2)
    assert ours.is_whole
