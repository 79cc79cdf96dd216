"""A programme over two to five days: all its work, by what each day holds; there and back changes nothing."""

import time
from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.days import SPREAD, DaysPlan, as_programme, over_days, side_by_side
from bot.training.days_more import Extra
from bot.training.people import MuscleTarget, Programme, WeekChange, Workout
from bot.training.plan import PlannedExercise, PlannedSet, Region, RepRange
from bot.training.samples import sample_programme
from bot.training.timing import session_minutes
from bot.training.volume import planned_sets
from bot.training.week_story import DayName
from bot.training.week_values import DayRoom, Weekday, hours_between
from tests.training.shorten_worlds import session_of

SAMPLE = sample_programme()
FLAT = [e for w in SAMPLE.workouts for e in w.exercises]


def rooms(count: int, minutes: int = 60) -> list[DayRoom]:
    """So many days, spread."""
    return [DayRoom(day, Decimal(minutes)) for day in SPREAD[count]]


def over(programme: Programme, days: list[DayRoom], extra: Extra | None = None) -> DaysPlan:
    """Laid with time enough for the proof."""
    return over_days(programme, days, clock=time.monotonic, extra=extra, time_limit_s=30)


def invented(seed: int) -> Programme:
    """Two workouts of four exercises, pairs among them."""
    return Programme(
        "p", "P", tuple(Workout(f"W{n}", session_of(2 * seed + n, 4, most_sets=3).plan.exercises) for n in range(2))
    )


@pytest.mark.parametrize("count", [2, 3, 4, 5])
def test_all_the_work_is_there(count: int) -> None:
    """With an hour a day nothing is cut: the sets by muscle are those of the two workouts, the exercises each once."""
    plan = over(SAMPLE, rooms(count))
    assert plan.sets == planned_sets(FLAT)
    assert sorted(e.name for d in plan.days for e in d.exercises) == sorted(e.name for e in FLAT)
    assert (plan.cut, plan.more, plan.proven) == ((), (), True)
    assert all(day.minutes == session_minutes(day.exercises) for day in plan.days)


def test_more_days_are_shorter_and_rest_lies_between() -> None:
    """The longest day gets shorter with every day added; no muscle is worked again within 48 h."""
    plans = side_by_side(SAMPLE, (2, 3, 4, 5), Decimal(60), clock=time.monotonic, time_limit_s=30)
    longest = [plan.longest for plan in plans]
    assert longest == sorted(longest, reverse=True)
    assert longest[-1] < longest[0]
    for plan in plans:
        assert plan.clashes == 0
        for muscle, gap_h in plan.gap_h.items():
            on = [d.day for d in plan.days if any(muscle in e.muscles for e in d.exercises)]
            assert gap_h == min((hours_between(a, b) for a in on for b in on if a < b), default=None)
            assert gap_h is None or gap_h >= 48


def test_pairs_stay_together_and_what_matters_most_comes_first() -> None:
    """Press and row are done in turn on every day that has them."""
    for count in (3, 4, 5):
        for day in over(SAMPLE, rooms(count)).days:
            pairs = [e.pair for e in day.exercises if e.pair]
            assert all(pairs.count(pair) == 2 for pair in pairs)
            priorities = [e.priority for e in day.exercises]
            assert priorities == sorted(priorities)


def test_days_are_named_by_what_they_hold() -> None:
    """Two upper and two lower exercises on two days out of one long day: an upper and a lower day."""

    def lift(name: str, region: Region, muscle: str) -> PlannedExercise:
        return PlannedExercise(name, (PlannedSet(RepRange(8, 8)),) * 3, region=region, muscles=(muscle,))

    whole = Workout(
        "All",
        (
            lift("Squat", Region.LOWER, "quadriceps"),
            lift("Leg press", Region.LOWER, "quadriceps"),
            lift("Row", Region.UPPER, "back"),
            lift("Pulldown", Region.UPPER, "back"),
        ),
    )
    monday_tuesday = [DayRoom(day, Decimal(60)) for day in (Weekday.MON, Weekday.TUE)]
    plan = over(Programme("p", "P", (whole,)), monday_tuesday)
    assert {day.name for day in plan.days} == {DayName.LEGS, DayName.PULL}


def test_as_many_days_as_workouts_leave_the_programme_as_it_is() -> None:
    """Two days: the two workouts, untouched; given, it is the very same programme."""
    plan = over(SAMPLE, rooms(2), Extra(4, ("back",)))
    assert [day.exercises for day in plan.days] == [w.exercises for w in SAMPLE.workouts]
    assert as_programme(plan, SAMPLE, id="x", title="X", titles=("A", "B")) is SAMPLE


@settings(max_examples=15, deadline=None)
@given(st.integers(0, 500), st.integers(3, 5), st.integers(0, 4), st.sampled_from(Weekday))
def test_moving_a_day_there_and_back_changes_nothing(seed: int, count: int, which: int, to: Weekday) -> None:
    """A day is moved to another one and back, and the programme to other days and back: as before, to the set."""
    programme, days = invented(seed), rooms(count)
    before = over(programme, days)
    moved = [replace(room, day=to) if n == which % count else room for n, room in enumerate(days)]
    if len({room.day for room in moved}) == count:
        over(programme, moved)
    assert over(programme, days) == before
    assert over(programme, list(reversed(days))) == before
    assert as_programme(over(programme, rooms(2)), programme, id="p", title="P", titles=("a", "b")) == programme


@settings(max_examples=30, deadline=None)
@given(st.integers(0, 500), st.integers(3, 5), st.integers(8, 40), st.integers(0, 6))
def test_never_over_the_days_minutes_and_never_more_than_was_allowed(
    seed: int, count: int, minutes: int, sets: int
) -> None:
    """Whatever the days hold: within their minutes; cut and added sets are told, one an exercise at most."""
    programme = invented(seed)
    plan = over(programme, rooms(count, minutes), Extra(sets, ("chest", "quadriceps")))
    assert all(day.minutes <= minutes for day in plan.days)
    assert len(plan.more) <= sets
    assert len({name for name, _ in plan.more}) == len(plan.more)
    flat = [e for w in programme.workouts for e in w.exercises]
    wanted, have = sum(len(e.sets) for e in flat), sum(len(e.sets) for d in plan.days for e in d.exercises)
    assert have == wanted - sum(n for _, n in plan.cut) + sum(n for _, n in plan.more)


def test_added_days_take_a_little_more_weak_points_first() -> None:
    """Three sets more, shoulders and calves first, each in turn; the heavy lifts get none."""
    plan = over(SAMPLE, rooms(4), Extra(3, ("shoulders", "calves")))
    assert [name for name, _ in plan.more] == ["Dumbbell shoulder press", "Calf raise"]
    before = planned_sets(FLAT)
    assert plan.sets["shoulders"] - before["shoulders"] == 1
    assert plan.sets["calves"] - before["calves"] == 1


def test_after_the_weak_points_come_the_targets_and_their_top_is_kept() -> None:
    """Biceps are far under the coach's target and get the set; the back has reached the top of its own."""
    targets = (MuscleTarget("biceps", 8, 10), MuscleTarget("back", 3, 4))
    plan = over(replace(SAMPLE, targets=targets), rooms(3), Extra(2, ("back",)))
    assert plan.more == (("Biceps curl", 1),)


def test_given_it_is_a_programme_with_its_weeks() -> None:
    """Four workouts with the names given; what was otherwise in a workout's weeks follows its exercises."""
    lighter = WeekChange((4,), workout="Squat and press", sets_percent=50)
    plan = over(replace(SAMPLE, changes=(lighter,)), rooms(4))
    made = as_programme(plan, replace(SAMPLE, changes=(lighter,)), id="four", title="Four", titles=list("ABCD"))
    assert [w.title for w in made.workouts] == list("ABCD")
    assert {c.exercise for c in made.changes} == {e.name for e in SAMPLE.workouts[0].exercises}
    assert all(c.workout == "" and c.sets_percent == 50 for c in made.changes)


def test_the_same_exercise_of_both_workouts_on_one_day_is_one() -> None:
    """Both workouts have it; on a single day it stands once, with the sets of both."""
    row = PlannedExercise("Row", (PlannedSet(RepRange(8, 8)),) * 2, region=Region.UPPER, muscles=("back",))
    twice = Programme("p", "P", (Workout("A", (row,)), Workout("B", (row,))))
    plan = over(twice, rooms(1))
    assert [(e.name, len(e.sets)) for e in plan.days[0].exercises] == [("Row", 4)]
