"""Rules: wall times through changes of clocks, each date at most once, restarts, lateness, two workers."""

from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.dialogue.incoming import RuleKind
from bot.dialogue.turn import RuleSet
from storage import schedule
from storage.engine import Store
from storage.schedule import DueRule, Times
from storage.work import Overtaken

EVERY_DAY = tuple(range(7))


def rule(zone: str, at: time | None = None, days: tuple[int, ...] = EVERY_DAY, **more: object) -> RuleSet:
    return RuleSet("c1", RuleKind.SESSION, zone, at, days, **more)  # type: ignore[arg-type]  # the tests' own keywords


def keep(store: Store, kept: RuleSet, now: datetime) -> None:
    with store.begin() as work:
        schedule.keep_rule(work, kept, now=now)


def due(store: Store, now: datetime) -> tuple[DueRule, ...]:
    with store.begin() as work:
        return schedule.due(work, now=now, limit=10)


def fire(store: Store, now: datetime) -> list[datetime]:
    """Everything due now is taken up; when each was due."""
    with store.begin() as work:
        rules = schedule.due(work, now=now, limit=10)
        for one in rules:
            schedule.advance(work, one, now=now)
        return [one.due_at for one in rules]


def fired(store: Store, start: datetime, end: datetime, step: timedelta) -> list[datetime]:
    """All due times while the clock runs from start to end."""
    out, now = [], start
    while now <= end:
        out += fire(store, now)
        now += step
    return out


@pytest.mark.parametrize(
    ("zone", "at", "start", "expected"),
    [
        # Clocks go forward on 28 March 2027 at 02:00 in Berlin (EU Directive 2000/84/EC): 02:30 is skipped.
        ("Europe/Berlin", time(2, 30), date(2027, 3, 27), ["27 01:30", "28 01:30", "29 00:30"]),
        # They go back on 31 October 2027 at 03:00: 02:30 comes twice, the first one counts.
        ("Europe/Berlin", time(2, 30), date(2027, 10, 30), ["30 00:30", "31 00:30", "01 01:30"]),
        # New York, back on 7 November 2027 (Energy Policy Act of 2005): 01:30 comes twice.
        ("America/New_York", time(1, 30), date(2027, 11, 6), ["06 05:30", "07 05:30", "08 06:30"]),
        # Lord Howe moves by half an hour: back on 4 April 2027 at 02:00.
        ("Australia/Lord_Howe", time(1, 45), date(2027, 4, 3), ["02 14:45", "03 14:45", "04 15:15"]),
        # Half-hour offset without changes.
        ("Asia/Kolkata", time(6, 0), date(2027, 4, 3), ["03 00:30", "04 00:30", "05 00:30"]),
    ],
)
def test_a_daily_hour_comes_once_a_date_through_changes_of_clocks(
    store: Store, zone: str, at: time, start: date, expected: list[str]
) -> None:
    begin = datetime.combine(start, time(0), ZoneInfo(zone)).astimezone(UTC)
    keep(store, rule(zone, at), begin)
    came = fired(store, begin, begin + timedelta(hours=71), timedelta(minutes=5))
    assert [f"{t:%d %H:%M}" for t in came] == expected


def test_only_the_chosen_weekdays_come(store: Store) -> None:
    keep(store, rule("Europe/Berlin", time(18), (0, 2, 4)), datetime(2027, 3, 1, tzinfo=UTC))
    came = fired(store, datetime(2027, 3, 1, tzinfo=UTC), datetime(2027, 3, 14, tzinfo=UTC), timedelta(hours=1))
    assert [f"{t:%a %d}" for t in came] == ["Mon 01", "Wed 03", "Fri 05", "Mon 08", "Wed 10", "Fri 12"]


def test_what_was_slept_through_comes_once_and_as_its_latest_time(store: Store) -> None:
    """Three days down: neither three reminders nor none, and today's if its hour is over."""
    keep(store, rule("UTC", time(7)), datetime(2027, 3, 1, tzinfo=UTC))
    assert fire(store, datetime(2027, 3, 4, 8, tzinfo=UTC)) == [datetime(2027, 3, 4, 7, tzinfo=UTC)]
    assert fire(store, datetime(2027, 3, 4, 23, tzinfo=UTC)) == []
    assert fire(store, datetime(2027, 3, 5, 7, tzinfo=UTC)) == [datetime(2027, 3, 5, 7, tzinfo=UTC)]


def test_yesterdays_evening_comes_in_the_morning_after_a_night_down(store: Store) -> None:
    keep(store, rule("UTC", time(22)), datetime(2027, 3, 1, tzinfo=UTC))
    assert fire(store, datetime(2027, 3, 2, 6, tzinfo=UTC)) == [datetime(2027, 3, 1, 22, tzinfo=UTC)]
    assert fire(store, datetime(2027, 3, 2, 22, tzinfo=UTC)) == [datetime(2027, 3, 2, 22, tzinfo=UTC)]


def test_a_restart_changes_nothing(open_store: Callable[[], Store]) -> None:
    """Due and not yet taken up stays due; the same rule set again does not put it off."""
    now = datetime(2027, 3, 1, 6, tzinfo=UTC)
    first = open_store()
    keep(first, rule("UTC", time(7)), now)
    first.close()
    again = open_store()
    keep(again, rule("UTC", time(7)), now + timedelta(hours=2))
    assert fire(again, now + timedelta(hours=2)) == [datetime(2027, 3, 1, 7, tzinfo=UTC)]


def test_another_hour_on_the_same_day_does_not_come_a_second_time(store: Store) -> None:
    """At most once a local date, also where the hour or the zone is changed after it came."""
    now = datetime(2027, 3, 1, 7, tzinfo=UTC)
    keep(store, rule("UTC", time(7)), now - timedelta(hours=1))
    fire(store, now)
    keep(store, rule("UTC", time(19)), now + timedelta(minutes=1))
    assert fire(store, now + timedelta(hours=13)) == []
    assert fire(store, now + timedelta(hours=36)) == [datetime(2027, 3, 2, 19, tzinfo=UTC)]


def test_a_changed_hour_counts_from_now_where_the_day_had_nothing_yet(store: Store) -> None:
    now = datetime(2027, 3, 1, 6, tzinfo=UTC)
    keep(store, rule("UTC", time(7)), now)
    keep(store, rule("UTC", time(19)), now)
    assert fire(store, now + timedelta(hours=2)) == []
    assert fire(store, now + timedelta(hours=13)) == [datetime(2027, 3, 1, 19, tzinfo=UTC)]


def test_once_is_once_even_when_it_is_set_again_or_late(store: Store) -> None:
    at = datetime(2027, 3, 2, 9, tzinfo=UTC)
    once = rule("UTC", once_at=at, ref="pain-1", days=())
    keep(store, once, at - timedelta(days=1))
    assert fire(store, at - timedelta(minutes=1)) == []
    assert fire(store, at + timedelta(days=3)) == [at], "late, and with its own time: the talk decides"
    keep(store, once, at + timedelta(days=3))
    assert fire(store, at + timedelta(days=4)) == []
    keep(store, rule("UTC", once_at=at + timedelta(days=9), ref="pain-1", days=()), at + timedelta(days=4))
    assert fire(store, at + timedelta(days=10)) == [at + timedelta(days=9)], "another time is another matter"


def test_rules_are_told_apart_by_whose_kind_and_ref(store: Store) -> None:
    now = datetime(2027, 3, 1, 6, tzinfo=UTC)
    for ref in ("pain-1", "pain-2"):
        keep(store, rule("UTC", once_at=now, ref=ref, days=()), now)
    keep(store, rule("UTC", time(7)), now)
    keep(store, RuleSet("c2", RuleKind.SESSION, "UTC", time(7), EVERY_DAY), now)
    assert len(due(store, now + timedelta(hours=2))) == 4


def test_a_rule_without_times_is_removed(store: Store) -> None:
    now = datetime(2027, 3, 1, 6, tzinfo=UTC)
    keep(store, rule("UTC", time(7)), now)
    keep(store, RuleSet("c1", RuleKind.SESSION, "UTC"), now)
    assert due(store, now + timedelta(days=1)) == ()
    with store.begin() as work:
        assert schedule.next_due_at(work) is None


def test_two_workers_take_a_rule_up_once(open_store: Callable[[], Store]) -> None:
    """The second one learns that it was overtaken, and undoes its turn."""
    now = datetime(2027, 3, 1, 7, tzinfo=UTC)
    one, two = open_store(), open_store()
    keep(one, rule("UTC", time(7)), now - timedelta(hours=1))
    seen_by_one, seen_by_two = due(one, now), due(two, now)
    assert seen_by_one == seen_by_two
    with one.begin() as work:
        schedule.advance(work, seen_by_one[0], now=now)
    with pytest.raises(Overtaken), two.begin() as work:
        schedule.advance(work, seen_by_two[0], now=now)
    assert due(two, now) == ()


def test_on_postgresql_a_rule_in_work_is_not_given_to_another(open_store: Callable[[], Store]) -> None:
    """On SQLite the second worker waits for the first one's transaction instead."""
    now = datetime(2027, 3, 1, 7, tzinfo=UTC)
    one, two = open_store(), open_store()
    if not one.is_postgres:
        assert one.engine.dialect.name == "sqlite"
        return
    keep(one, rule("UTC", time(7)), now - timedelta(hours=1))
    with one.begin() as mine:
        assert len(schedule.due(mine, now=now, limit=10)) == 1
        assert due(two, now) == ()


def test_a_rule_that_is_changed_by_its_own_turn_keeps_the_change(store: Store) -> None:
    """The turn of a once-rule may set it anew: it moves first, then the turn is kept."""
    now = datetime(2027, 3, 1, 9, tzinfo=UTC)
    keep(store, rule("UTC", once_at=now, ref="p", days=()), now - timedelta(days=1))
    with store.begin() as work:
        (one,) = schedule.due(work, now=now, limit=10)
        schedule.advance(work, one, now=now)
        anew = rule("UTC", once_at=now + timedelta(days=1), ref="p", days=())
        schedule.keep_rule(work, anew, now=now)
    assert fire(store, now + timedelta(days=1)) == [now + timedelta(days=1)]


def test_when_the_next_rule_comes_is_known(store: Store) -> None:
    now = datetime(2027, 3, 1, 6, tzinfo=UTC)
    keep(store, rule("UTC", time(7)), now)
    keep(store, RuleSet("c2", RuleKind.SESSION, "Asia/Tokyo", time(16, 30), EVERY_DAY), now)
    with store.begin() as work:
        assert schedule.next_due_at(work) == datetime(2027, 3, 1, 7, tzinfo=UTC)


ZONES = ("Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "Pacific/Apia", "Africa/Cairo", "UTC")


@settings(max_examples=150, deadline=None)
@given(
    zone=st.sampled_from(ZONES),
    hour=st.times().map(lambda t: t.replace(second=0, microsecond=0)),
    days=st.sets(st.integers(0, 6), min_size=1).map(lambda d: tuple(sorted(d))),
    start=st.datetimes(datetime(2011, 12, 20), datetime(2030, 1, 1), timezones=st.just(UTC)),
    steps=st.lists(st.integers(1, 60 * 50), min_size=1, max_size=40),
)
def test_however_the_ticks_fall_every_local_date_comes_at_most_once_and_none_too_early(
    zone: str, hour: time, days: tuple[int, ...], start: datetime, steps: list[int]
) -> None:
    """The same arithmetic as the rows', over many zones, hours and gaps between ticks."""
    times = Times(zone, hour, days, None)
    next_due, now = times.first_after(start, last_day=None), start
    dates = []
    for minutes in steps:
        now += timedelta(minutes=minutes)
        assert next_due is not None
        if next_due > now:
            continue
        due_at = times.latest(next_due, now)
        assert next_due <= due_at <= now
        local = due_at.astimezone(ZoneInfo(zone)).date()
        dates.append(local)
        following = times.first_after(max(now, due_at), last_day=local)
        assert following is not None
        assert following > now
        next_due = following
    assert dates == sorted(set(dates))
