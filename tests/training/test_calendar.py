"""Days, weeks, hours, cut-offs, and the zone behind a local time."""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.calendar import (
    PLACES,
    cutoff_of,
    instant,
    is_zone,
    local_day,
    monday_of,
    next_training_day,
    places_at,
    week_summary_at,
)
from bot.training.people import TrainingTime

days = st.dates(date(2020, 1, 1), date(2040, 1, 1))


@given(days)
def test_weeks_are_those_of_iso_8601(day: date) -> None:
    """Monday to Sunday, by the standard library's ISO calendar."""
    monday = monday_of(day)
    assert monday.isocalendar()[:2] == day.isocalendar()[:2]
    assert monday.isoweekday() == 1


@given(days, st.times(), st.sampled_from([p.zone for p in PLACES]))
def test_a_wall_time_becomes_its_instant_and_back(day: date, at: time, zone: str) -> None:
    """Except in the hour that a change of clocks skips, the wall clock then shows just that time."""
    when = instant(day, at, zone)
    wall = when.astimezone(ZoneInfo(zone)).replace(tzinfo=None)
    gap = wall - datetime.combine(day, at)
    assert timedelta(0) <= gap <= timedelta(hours=1)


def test_a_skipped_hour_moves_forward_and_a_doubled_one_is_its_first() -> None:
    """Berlin 2027-03-28 02:30 does not exist: 03:30 summer time, 01:30 UTC. 2027-10-31 02:30 comes twice: the first,
    00:30 UTC. (European Union rule: last Sunday of March and October at 01:00 UTC.)"""
    assert instant(date(2027, 3, 28), time(2, 30), "Europe/Berlin") == datetime(2027, 3, 28, 1, 30, tzinfo=UTC)
    assert instant(date(2027, 10, 31), time(2, 30), "Europe/Berlin") == datetime(2027, 10, 31, 0, 30, tzinfo=UTC)


@pytest.mark.parametrize(
    ("at", "cutoff", "week"),
    [
        (time(6, 30), time(21), time(21, 15)),
        (time(18), time(21), time(21, 15)),
        (time(19, 30), time(22, 30), time(22, 45)),
        (time(21), time(23, 30), time(23, 45)),
        (time(23, 30), time(23, 30), time(23, 45)),
    ],
)
def test_when_a_day_is_over(at: time, cutoff: time, week: time) -> None:
    """Three hours after the training hour, between nine and half past eleven; the summary a quarter later."""
    trains = TrainingTime((0,), at)
    assert cutoff_of(trains) == cutoff
    assert week_summary_at(trains) == week


@given(days, st.sets(st.integers(0, 6)))
def test_the_next_training_day(day: date, weekdays: set[int]) -> None:
    """The first of the week to come; none where nobody trains."""
    found = next_training_day(TrainingTime(tuple(sorted(weekdays)), time(18)), day)
    if not weekdays:
        assert found is None
        return
    assert found is not None
    assert found.weekday() in weekdays
    assert all((day + timedelta(days=n)).weekday() not in weekdays for n in range(1, (found - day).days))


@given(st.datetimes(datetime(2025, 1, 1), datetime(2030, 1, 1)), st.sampled_from([p.zone for p in PLACES]))
def test_a_place_is_found_by_its_clock(naive: datetime, zone: str) -> None:
    """Whoever tells the time on their wall finds their own zone among the places offered."""
    now = naive.replace(tzinfo=UTC)
    wall = now.astimezone(ZoneInfo(zone)).time()
    assert zone in [p.zone for p in places_at(now, wall)]


def test_the_coachs_zone_comes_first_and_made_up_zones_are_none() -> None:
    """Most clients live where their coach does."""
    now = datetime(2027, 1, 11, 17, tzinfo=UTC)
    assert places_at(now, time(18), first=("Europe/Warsaw",))[0].zone == "Europe/Warsaw"
    assert local_day(datetime(2027, 1, 11, 23, 30, tzinfo=UTC), "Europe/Berlin") == date(2027, 1, 12)
    assert is_zone("Europe/Berlin")
    assert not any(map(is_zone, ("Berlin/Europe", "", "../etc", "Mars/Base", "\x00")))
