"""What comes back after a break, by published steps; and when reminders stop."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.after_break import (
    USUAL_RULES,
    BreakRule,
    Ease,
    ease_for,
    eased,
    load_share,
    missed_weeks,
    most_days,
    resumes_on,
    stops_reminders,
    weeks_off,
)
from bot.training.plan import LoadRule
from bot.training.samples import sample_programme

MONDAY = date(2026, 3, 2)
WORKOUT = sample_programme().workouts[0]


def first(off: int) -> Ease:
    """The first session back."""
    return ease_for(off, weeks_back=0, is_first=True)


def test_under_two_weeks_nothing_changes() -> None:
    """Strength holds (McMaster et al. 2013; Bosquet et al. 2013): the next session is as planned."""
    for off in (0, 1):
        assert first(off).is_full
        assert eased(WORKOUT, first(off)) == WORKOUT


def test_after_a_long_break_sets_come_back_by_the_published_steps() -> None:
    """50, 30, 20 and 10 % less, full in week five (Caterisano et al. 2019, Strength Cond J 41(3):1-23, for
    conditioning): of 20 sets a week 10, 14, 16, 18 and 20."""
    weeks = [ease_for(8, weeks_back=n, is_first=False).sets_percent for n in range(5)]
    assert [20 * percent // 100 for percent in weeks] == [10, 14, 16, 18, 20]
    assert resumes_on(MONDAY, 8) == MONDAY + timedelta(weeks=4)


def test_at_most_three_days_then_four() -> None:
    """Three training days in the first week back and four in the second (same guidelines)."""
    assert [most_days(n, 5) for n in range(3)] == [3, 4, 5]
    assert most_days(0, 2) == 2


def test_the_first_session_is_easier_by_effort() -> None:
    """Two more in reserve in it, one more in its week, none later; tracked loads are left to their state."""
    assert [ease_for(5, weeks_back=w, is_first=f).rir_more for w, f in ((0, True), (0, False), (1, False))] == [2, 1, 0]
    back = eased(WORKOUT, first(5))
    squat, was = back.exercises[0], WORKOUT.exercises[0]
    assert (len(squat.sets), squat.load_percent) == (2, None)
    assert squat.sets[0].rir == (was.sets[0].rir or 0) + 2
    assert all(s.finish is None for e in back.exercises for s in e.sets)
    assert any(s.finish is not None for e in WORKOUT.exercises for s in e.sets)


def test_loads_that_nobody_tracks_go_down() -> None:
    """A fixed load: 95 % after three weeks, 90 % after twelve, and a step more each week."""
    fixed = replace(WORKOUT, exercises=tuple(replace(e, load_rule=LoadRule.HELD) for e in WORKOUT.exercises))
    assert {e.load_percent for e in eased(fixed, first(3)).exercises} == {Decimal(95)}
    lighter = replace(fixed, exercises=tuple(replace(e, load_percent=Decimal(80)) for e in fixed.exercises))
    assert {e.load_percent for e in eased(lighter, first(12)).exercises} == {Decimal(72)}
    assert [load_share(12, n) for n in range(3)] == [90, 95, 100]


@given(st.integers(0, 300), st.integers(0, 6))
def test_longer_away_is_never_harder_and_later_is_never_easier(off: int, back: int) -> None:
    """By sets, effort and load."""

    def ease(off: int, back: int) -> Ease:
        return ease_for(off, weeks_back=back, is_first=False)

    for harder, easier in ((ease(off, back), ease(off + 1, back)), (ease(off, back + 1), ease(off, back))):
        assert easier.sets_percent <= harder.sets_percent
        assert easier.rir_more >= harder.rir_more
        assert easier.load_percent <= harder.load_percent
        assert 50 <= easier.sets_percent <= 100
        assert 70 <= easier.load_percent <= 100


@given(st.integers(0, 40), st.booleans())
def test_nothing_is_ever_harder_than_planned(off: int, is_first: bool) -> None:
    """One set at least, never more than planned; never less in reserve."""
    for was, now in zip(
        WORKOUT.exercises, eased(WORKOUT, ease_for(off, weeks_back=0, is_first=is_first)).exercises, strict=True
    ):
        assert 1 <= len(now.sets) <= len(was.sets)
        assert all((b.rir or 0) >= (a.rir or 0) for a, b in zip(was.sets, now.sets, strict=False))


def test_the_coach_s_rules_stand_over_ours() -> None:
    """Nothing eased, or eased at once and for longer."""
    assert ease_for(20, weeks_back=0, is_first=True, rules=()).is_full
    own = (BreakRule(1, (40, 60, 80)),)
    assert [ease_for(1, weeks_back=n, is_first=False, rules=own).sets_percent for n in range(4)] == [40, 60, 80, 100]
    assert resumes_on(MONDAY, 1, own) == MONDAY + timedelta(weeks=3)
    assert resumes_on(MONDAY, 1, USUAL_RULES) == MONDAY


@pytest.mark.parametrize(("days", "weeks"), [(-1, 0), (0, 0), (13, 1), (14, 2), (27, 3), (28, 4)])
def test_weeks_off_are_whole_weeks(days: int, weeks: int) -> None:
    """From the last session to today."""
    assert weeks_off(MONDAY, MONDAY + timedelta(days=days)) == weeks


def planned(*reported: bool) -> list[tuple[date, bool]]:
    """Weeks before this one, the last one first: a session on Tuesday and one on Friday."""
    return [
        (MONDAY - timedelta(weeks=n + 1) + timedelta(days=day), done and day == 4)
        for n, done in enumerate(reported)
        for day in (1, 4)
    ]


@pytest.mark.parametrize(
    ("reported", "missed", "stops"),
    [
        ((True,), 0, False),
        ((False, True), 1, False),
        ((False, False, True), 2, True),
        ((False, True, False, False), 1, False),
        ((), 0, False),
    ],
)
def test_two_missed_weeks_stop_the_reminders(reported: tuple[bool, ...], missed: int, stops: bool) -> None:
    """Full weeks with sessions planned and none reported, just before this one; one session reported is enough."""
    assert missed_weeks(planned(*reported), MONDAY + timedelta(days=2)) == missed
    assert stops_reminders(planned(*reported), MONDAY + timedelta(days=2)) is stops


def test_a_session_this_week_ends_it_and_weeks_away_do_not_count() -> None:
    """Something reported on Monday: nothing is missed any more. A paused week stands for nothing."""
    gone = planned(False, False)
    assert missed_weeks([*gone, (MONDAY, True)], MONDAY + timedelta(days=2)) == 0
    assert missed_weeks([*gone, (MONDAY, False)], MONDAY + timedelta(days=2)) == 2
    paused = [(day - timedelta(weeks=1), reported) for day, reported in gone]
    assert missed_weeks(paused, MONDAY) == 2
