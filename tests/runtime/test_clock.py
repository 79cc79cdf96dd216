"""The clocks: aware, in UTC, and set where a rehearsal sets them."""

import os
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from bot.faults import SettingsFault
from bot.runtime.clock import FileClock, SetClock, SystemClock

NOON = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)


def test_the_machines_clock_is_aware_and_in_utc() -> None:
    """And it moves on."""
    clock = SystemClock()
    first = clock.now()
    assert first.utcoffset() == timedelta(0)
    assert clock.now() >= first


def test_a_set_clock_stands_until_it_is_moved() -> None:
    """To any moment, in any zone."""
    clock = SetClock(NOON)
    assert clock.now() == clock.now() == NOON
    clock.advance(timedelta(hours=1))
    assert clock.now() == NOON + timedelta(hours=1)
    clock.set(datetime(2027, 3, 1, 13, 0, tzinfo=ZoneInfo("Europe/Berlin")))
    assert clock.now() == NOON
    assert clock.now().tzinfo is UTC


def test_a_running_clock_goes_on_from_where_it_was_set() -> None:
    """By real time."""
    clock = SetClock(NOON, runs=True)
    assert NOON <= clock.now() < NOON + timedelta(minutes=1)
    assert clock.now() <= clock.now()


def test_a_moment_without_a_zone_is_refused() -> None:
    """Naive moments are how hours get lost."""
    with pytest.raises(ValueError, match="without a zone"):
        SetClock(datetime(2027, 3, 1, 12, 0))


def test_a_file_sets_the_clock_of_another_process(tmp_path: Path) -> None:
    """Each time that it is written; from there time runs on."""
    file = tmp_path / "clock"
    file.write_text(NOON.isoformat())
    clock = FileClock(file)
    assert NOON <= clock.now() < NOON + timedelta(minutes=1)
    file.write_text("2027-03-02T07:00:00+01:00")
    os.utime(file, ns=(file.stat().st_mtime_ns, file.stat().st_mtime_ns + 1_000))
    later = datetime(2027, 3, 2, 6, 0, tzinfo=UTC)
    assert later <= clock.now() < later + timedelta(minutes=1)


@pytest.mark.parametrize("text", ["", "soon", "2027-03-01T12:00:00"])
def test_a_clock_file_that_tells_no_moment_is_a_fault(text: str, tmp_path: Path) -> None:
    """In one sentence that names it; so is a missing one."""
    file = tmp_path / "clock"
    with pytest.raises(SettingsFault, match="clock"):
        FileClock(file)
    file.write_text(text)
    with pytest.raises(SettingsFault, match="clock"):
        FileClock(file)
