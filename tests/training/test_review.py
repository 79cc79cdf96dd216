"""A programme looked over: what changes, minutes, hard sets against targets and published bounds, cautions."""

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest

from bot.sheets.writing import example
from bot.training.cautions import Caution
from bot.training.changes import Change, Changed, changes_between
from bot.training.people import MuscleTarget, Programme, WeekChange, Workout
from bot.training.plan import Drop, LoadRule, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet, RepRange, Tempo
from bot.training.review import muscle_weeks, review
from bot.training.samples import sample_programme
from bot.training.timing import session_minutes
from bot.training.units import Load, Unit

SET = PlannedSet(RepRange(8, 10), Decimal(2), rest_s=90)
BENCH = PlannedExercise(
    "Own press", (SET,) * 4, muscles=("chest",), muscles_indirect=("triceps", "shoulders"), equipment="bar"
)
ROW = PlannedExercise("Own row", (SET,) * 3, muscles=("back",), muscles_indirect=("biceps",), equipment="stack")
CURL = PlannedExercise("Own curl", (SET,) * 2, muscles=("biceps",), equipment="dumbbells")
PUSHDOWN = PlannedExercise("Own pushdown", (SET,) * 2, muscles=("triceps",), equipment="stack")


def of(*exercises: PlannedExercise, **more: Any) -> Programme:  # Any: a field of any kind
    """A programme of one workout, other fields as told."""
    return replace(Programme("p", "P", (Workout("A", exercises),)), **more)


def cautions(programme: Programme, *days: int) -> list[Caution]:
    """What is cautioned about."""
    return [one.what for one in review(programme, days or (2,)).cautions]


def test_hard_sets_a_week_worked_by_hand() -> None:
    """The fractional count (Pelland et al. 2024, preprint): bench 4, row 3, curl 2, pushdown 2 make chest 4, triceps
    4, biceps 3.5, back 3, shoulders 2 each time; twice that on two days with one workout, half with two workouts."""
    weeks = muscle_weeks(of(BENCH, ROW, CURL, PUSHDOWN), (1, 2))
    by_name = {week.muscle: [sets for _, sets in week.sets] for week in weeks}
    once = {
        m: Decimal(n) for m, n in {"chest": "4", "triceps": "4", "biceps": "3.5", "back": "3", "shoulders": "2"}.items()
    }
    assert by_name == {muscle: [sets, 2 * sets] for muscle, sets in once.items()}
    two = Programme("p", "P", (Workout("A", (BENCH,)), Workout("B", (ROW,))))
    assert {w.muscle: w.sets for w in muscle_weeks(two, (3,))}["chest"] == ((3, Decimal(6)),)


def test_targets_are_the_coachs_own() -> None:
    """A target is held to as written, published bounds only where there is none; the days are named."""
    given = of(BENCH, targets=(MuscleTarget("chest", 5, 12), MuscleTarget("calves", 4, 8)))
    found = {(c.what, c.muscle): (c.found, c.days) for c in review(given, (1, 2, 4)).cautions}
    assert found == {
        (Caution.UNDER_TARGET, "chest"): ("4", (1,)),
        (Caution.OVER_TARGET, "chest"): ("16", (4,)),
        (Caution.UNDER_TARGET, "calves"): ("0, 0, 0", (1, 2, 4)),
    }


def test_without_a_target_the_published_bounds_count() -> None:
    """Under 4 a week (Iversen et al. 2021, Sports Med 51:2079-2095), over 20 (Baz-Valle et al. 2022, J Hum Kinet
    81:199-210); 4 and 20 themselves are neither, and muscles that only work along are left out."""
    assert cautions(of(BENCH), 1) == []
    assert cautions(of(BENCH), 5) == []
    assert cautions(of(BENCH), 6) == [Caution.MANY_SETS]
    assert cautions(of(CURL), 1) == [Caution.FEW_SETS]


def test_minutes_are_held_to_the_coachs() -> None:
    """A minute less than it takes is too few, what it takes is not."""
    workout = Workout("A", (BENCH, ROW))
    takes = session_minutes(workout.exercises)
    for minutes, expected in ((takes, []), (takes - 1, [Caution.OVER_MINUTES]), (None, [])):
        one = Programme("p", "P", (replace(workout, minutes=minutes),))
        assert [c for c in cautions(one) if c is Caution.OVER_MINUTES] == expected
        assert [(m.minutes, m.wanted) for m in review(one).lengths] == [(takes, minutes)]


def test_a_lighter_week_can_be_looked_at() -> None:
    """Half the sets, half the hard sets."""
    given = of(BENCH, changes=(WeekChange((4,), sets_percent=50),), block_weeks=4)
    assert review(given, (1,), week=8).muscles[0].sets == ((1, Decimal(2)),)
    assert review(given, (1,)).muscles[0].sets == ((1, Decimal(4)),)


HEAVY = PlannedSet(RepRange(3, 5), Decimal(1), rest_s=180)
KG5 = Load.of(5, Unit.KG)


@pytest.mark.parametrize(
    ("exercise", "expected"),
    [
        (replace(BENCH, sets=(HEAVY, SET, SET, SET), priority=3), [Caution.TOP_SET_LAST]),
        (replace(BENCH, sets=(HEAVY, SET, SET, SET), priority=2), []),
        (replace(BENCH, priority=3), []),
        (replace(BENCH, sets=(replace(SET, finish=Drop(2, (10, 20))),) * 4), [Caution.DROP_UNUSUAL]),
        (replace(BENCH, sets=(replace(SET, finish=Drop(2, (20, 40))),) * 4), []),
        (replace(BENCH, sets=(replace(SET, finish=Mini(4, (3, 5))),) * 4), []),
        (replace(BENCH, sets=(replace(HEAVY, rest_s=119),) * 4), [Caution.SHORT_REST]),
        (replace(BENCH, sets=(replace(HEAVY, rest_s=120),) * 4), []),
        (replace(BENCH, sets=(replace(SET, tempo=Tempo(5, 1, 4, 1)),) * 4), [Caution.SLOW_TEMPO]),
        (replace(BENCH, sets=(replace(SET, tempo=Tempo(5, 1, 4, 0)),) * 4), []),
        (replace(BENCH, sets=(SET, replace(SET, percent=Decimal(80)), SET, SET)), [Caution.PERCENT_UNUSED]),
        (
            replace(BENCH, sets=(replace(SET, percent=Decimal(80)),) * 4, load_rule=LoadRule.PERCENT),
            [Caution.PERCENT_OF_ITSELF],
        ),
        (replace(BENCH, step=KG5), [Caution.STEP_UNUSED]),
        (replace(BENCH, step=KG5, load_rule=LoadRule.FIXED), []),
        (replace(BENCH, load_rule=LoadRule.DOUBLE), []),
        (replace(BENCH, load_rule=LoadRule.DOUBLE, sets=(replace(SET, reps=RepRange(8, 8)),) * 4), [Caution.NO_RANGE]),
        (replace(BENCH, load_rule=LoadRule.HELD), [Caution.NO_FIXED_LOAD]),
        (replace(BENCH, load_rule=LoadRule.HELD, sets=(replace(SET, load=KG5),) * 4), []),
        (replace(BENCH, equipment=""), [Caution.NO_EQUIPMENT]),
        (replace(BENCH, equipment="", load_style=LoadStyle.NONE), []),
        (replace(BENCH, equipment="", measure=Measure.SECONDS), []),
        (replace(BENCH, pair="A"), [Caution.PAIR_ALONE]),
    ],
)
def test_what_a_coach_may_look_at_again(exercise: PlannedExercise, expected: list[Caution]) -> None:
    """Each caution at its edge: where it begins, and where it does not yet."""
    assert cautions(of(exercise), 1) == expected


def test_pairs_and_weeks() -> None:
    """Two of a pair are one, wherever they stand; a week after the block's last never comes."""
    assert Caution.PAIR_ALONE not in cautions(of(replace(BENCH, pair="A"), ROW, replace(CURL, pair="A")))
    assert Caution.PAIR_ALONE in cautions(of(replace(BENCH, pair="A"), replace(ROW, pair="B")))
    assert Caution.WEEK_NEVER in cautions(of(BENCH, changes=(WeekChange((5,), fewer_sets=1),), block_weeks=4))
    assert Caution.WEEK_NEVER not in cautions(of(BENCH, changes=(WeekChange((4,), fewer_sets=1),), block_weeks=4))


def test_nothing_changes_between_a_programme_and_itself() -> None:
    """Whatever it holds; its id does not count."""
    for same in (example(), sample_programme()):
        assert changes_between(same, replace(same, id="other")) == ()


def test_a_first_programme_names_its_workouts() -> None:
    assert changes_between(None, of(BENCH)) == (Change(Changed.FIRST, after="A"),)


@pytest.mark.parametrize(
    ("after", "expected"),
    [
        (of(replace(BENCH, sets=(SET,) * 5), ROW), [Changed.SETS_ADDED]),
        (of(replace(BENCH, sets=(SET,) * 3), ROW), [Changed.SETS_GONE]),
        (of(replace(BENCH, sets=(replace(SET, rir=Decimal(1)),) * 4), ROW), [Changed.SETS]),
        (of(BENCH), [Changed.EXERCISE_GONE]),
        (of(BENCH, ROW, CURL), [Changed.EXERCISE_ADDED]),
        (of(ROW, BENCH), [Changed.EXERCISE_ORDER]),
        (of(replace(BENCH, pair="A"), ROW), [Changed.PAIR]),
        (of(replace(BENCH, load_rule=LoadRule.DOUBLE), ROW), [Changed.RULE]),
        (of(replace(BENCH, step=KG5), ROW), [Changed.STEP]),
        (of(replace(BENCH, priority=1), ROW), [Changed.PRIORITY]),
        (of(replace(BENCH, sides=2), ROW), [Changed.SIDES]),
        (of(replace(BENCH, cue="up"), ROW), [Changed.CUE]),
        (of(replace(BENCH, note="slow"), ROW), [Changed.EXERCISE_NOTE]),
        (of(replace(BENCH, link="https://example.org"), ROW), [Changed.LINK]),
        (of(replace(BENCH, equipment="stack"), ROW), [Changed.KIND]),
        (of(replace(BENCH, aliases=("press",)), ROW), []),
        (of(BENCH, ROW, title="Q"), [Changed.TITLE]),
        (of(BENCH, ROW, note="n"), [Changed.NOTE]),
        (of(BENCH, ROW, block_weeks=4), [Changed.BLOCK]),
        (of(BENCH, ROW, changes=(WeekChange((4,), fewer_sets=1),)), [Changed.WEEKS]),
        (of(BENCH, ROW, targets=(MuscleTarget("chest", 4, 8),)), [Changed.TARGETS]),
        (of(BENCH, ROW, workouts=(Workout("A", (BENCH, ROW), 40),)), [Changed.MINUTES]),
        (of(BENCH, ROW, workouts=(Workout("B", (BENCH, ROW)),)), [Changed.WORKOUT_RENAMED]),
        (of(BENCH, ROW, workouts=(Workout("B", (CURL,)),)), [Changed.WORKOUT_ADDED, Changed.WORKOUT_GONE]),
    ],
)
def test_every_change_is_told_once(after: Programme, expected: list[Changed]) -> None:
    """Against bench and row, one thing at a time."""
    assert [change.what for change in changes_between(of(BENCH, ROW), after)] == expected


def test_a_change_shows_both_sides() -> None:
    """In the short text of the sheet's own cells."""
    other = of(replace(BENCH, sets=(HEAVY, *(replace(SET, percent=Decimal(80)),) * 2)))
    (change,) = changes_between(of(BENCH), other)
    assert change == Change(
        Changed.SETS_GONE,
        "A",
        "Own press",
        "4 x 8-10, RIR 2, rest 90 s",
        "1 x 3-5, RIR 1, rest 180 s; 2 x 8-10, RIR 2, 80 % of the top set, rest 90 s",
    )
