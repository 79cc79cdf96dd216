"""Weeks that are otherwise, and what prescriptions beyond plain sets do to loads and minutes."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from bot.training.assemble import plan_session, strength_after, under_way
from bot.training.exposure import LiftedSet
from bot.training.facts import Reported
from bot.training.people import Gym, Programme, WeekChange, Workout
from bot.training.plan import LoadRule, PlannedExercise, PlannedSet, RepRange, Tempo
from bot.training.report import Performed, Stage
from bot.training.session import Session
from bot.training.strength import State, after_session, begin
from bot.training.timing import set_seconds
from bot.training.units import Load, Unit
from bot.training.weeks import week_number, workout_in_week

GYM = Gym.usual(Unit.KG)
SET = PlannedSet(RepRange(5, 8), Decimal(2))
SQUAT = PlannedExercise("Back squat", (SET,) * 4, equipment="bar")
ROW = PlannedExercise("Row", (SET,), equipment="stack")
DAY = date(2026, 3, 2)


def programme(*changes: WeekChange, block_weeks: int | None = None) -> Programme:
    """Two workouts with these changes."""
    return Programme("p", "P", (Workout("A", (SQUAT, ROW)), Workout("B", (SQUAT,))), "", changes, block_weeks)


def kg(amount: int | str) -> Load:
    return Load.of(amount, Unit.KG)


def lifted(
    amount: int, *, rule: LoadRule = LoadRule.TRACKED, step: Load | None = None
) -> tuple[PlannedExercise, State]:
    """The squat under a rule, and the state after two sessions of four easy tens at this load."""
    exercise = replace(SQUAT, load_rule=rule, step=step)
    state = begin(level=None, region=None, load_style=exercise.load_style)
    for day in (date(2026, 2, 23), date(2026, 2, 26)):
        sets = [LiftedSet(float(amount), 10, 2.0, Stage.WORK, n + 1) for n in range(4)]
        state = after_session(state, day=day, sets=sets, prescribed=exercise.sets, pain=None)
    return exercise, state


@pytest.mark.parametrize(
    ("day", "week"),
    [("2026-03-04", 1), ("2026-03-08", 1), ("2026-03-09", 2), ("2026-03-30", 5), ("2026-02-01", 1)],
)
def test_weeks_count_from_the_monday_before(day: str, week: int) -> None:
    """Begun on Wednesday, 4 March 2026 (ISO week 10): the Monday after is week 2."""
    assert week_number(date(2026, 3, 4), date.fromisoformat(day)) == week


@pytest.mark.parametrize(
    ("change", "sets"),
    [
        (WeekChange((4,), fewer_sets=1), 3),
        (WeekChange((4,), fewer_sets=9), 1),
        (WeekChange((4,), sets_percent=50), 2),
        (WeekChange((4,), sets_percent=60), 2),
        (WeekChange((4,), sets_percent=10), 1),
        (WeekChange((4,), fewer_sets=1, sets_percent=50), 2),
        (WeekChange((5,), fewer_sets=1), 4),
        (WeekChange((4,), workout="B", fewer_sets=1), 4),
        (WeekChange((4,), exercise="Row", fewer_sets=1), 4),
    ],
)
def test_fewer_sets_in_a_lighter_week(change: WeekChange, sets: int) -> None:
    """Worked by hand, of four sets in week 4; other weeks, workouts and exercises stay."""
    assert len(workout_in_week(programme(change), 0, 4).exercises[0].sets) == sets
    assert workout_in_week(programme(change), 0, 3).exercises[0] == SQUAT


def test_changes_come_one_after_the_other_and_begin_again() -> None:
    """90 % of 90 % is 81; in a block of four weeks, week 8 is as week 4."""
    two = (WeekChange((4,), load_percent=Decimal(90)), WeekChange((4,), exercise="Row", load_percent=Decimal(90)))
    given = programme(*two, WeekChange((4,), rir=Decimal(4)), block_weeks=4)
    squat, row = workout_in_week(given, 0, 8).exercises
    assert (squat.load_percent, row.load_percent) == (Decimal(90), Decimal(81))
    assert {planned.rir for planned in squat.sets} == {Decimal(4)}
    assert workout_in_week(given, 0, 7) == given.workouts[0]


def test_a_lighter_week_is_lighter_and_the_next_goes_on_as_before() -> None:
    """Loads are within the share on the equipment; sets of that week do not move the strength, unless it hurt."""
    exercise, state = lifted(100)
    usual = plan_session(Workout("A", (exercise,)), GYM, strengths={"Back squat": state}, held={}, day=DAY)
    light = replace(exercise, load_percent=Decimal(70))
    plan = plan_session(Workout("A", (light,)), GYM, strengths={"Back squat": state}, held={}, day=DAY)
    whole, part = usual.exercises[0].sets[0].load, plan.exercises[0].sets[0].load
    assert whole is not None
    assert part is not None
    assert Decimal("0.65") * whole.kg <= part.kg <= Decimal("0.7") * whole.kg
    assert all(step.load.kg < part.kg for step in plan.exercises[0].warmup)
    done = Performed("Back squat", 1, Stage.WORK, part, 8, Decimal(6))
    session = Session("s", "c", DAY, 0, plan, "t", (reported(done),))
    after = under_way(session, plan.exercises[0], GYM, state, held=False).sets[1].load
    assert after is not None
    assert after.kg <= Decimal("0.7") * whole.kg * Decimal("1.1")
    assert strength_after(session, plan.exercises[0], state, None).to_json() == state.to_json()
    assert strength_after(session, plan.exercises[0], state, 5).to_json() != state.to_json()


def test_a_share_is_never_more_than_the_whole() -> None:
    """A hold for pain can't be passed by a percent above 100; assistance is not shared out."""
    exercise, state = lifted(100)
    heavy = replace(exercise, load_percent=Decimal(120))
    plan = plan_session(Workout("A", (heavy,)), GYM, strengths={"Back squat": state}, held={"Back squat": DAY}, day=DAY)
    assert all(planned.load is not None and planned.load.kg <= 100 for planned in plan.exercises[0].sets)


def test_the_coachs_step_and_percent() -> None:
    """Two sessions two repetitions over the top: 100 goes up by the coach's 5 kg, not the bar's 2.5; a step below the
    bar's own is the bar's; back-off sets are 80 % of the top set where the coach says so."""
    for step, expected in ((None, "102.5"), (kg(5), "105"), (kg(1), "102.5"), (kg(6), "105")):
        exercise, state = lifted(100, rule=LoadRule.FIXED, step=step)
        plan = plan_session(Workout("A", (exercise,)), GYM, strengths={"Back squat": state}, held={}, day=DAY)
        assert {planned.load for planned in plan.exercises[0].sets} == {kg(expected)}, step
    exercise, state = lifted(100, rule=LoadRule.PERCENT)
    off = replace(exercise, sets=(SET, replace(SET, percent=Decimal(80))))
    plan = plan_session(Workout("A", (off,)), GYM, strengths={"Back squat": state}, held={}, day=DAY)
    top, back = (planned.load for planned in plan.exercises[0].sets)
    assert top is not None
    assert back is not None
    assert abs(back.kg - top.kg * Decimal("0.8")) <= Decimal("1.25")


def test_a_tempo_takes_its_seconds() -> None:
    """Ten repetitions of 3 down, 1 held, as fast as possible up (counted 1) and none at the top are 50 s."""
    planned = PlannedSet(RepRange(10, 10), tempo=Tempo(3, 1, None, 0))
    assert set_seconds(replace(SQUAT, sets=(planned,)), planned) == 50
    assert Tempo(2, 0, 2, 1).seconds == 5


def reported(done: Performed) -> Reported:
    return Reported("s", "m1", (done,))
