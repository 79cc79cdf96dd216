"""Minutes of a session, against worked arithmetic and a published time saving."""

from dataclasses import replace

from bot.training.plan import Drop, Measure, Mini, PlannedExercise, PlannedSet, RepRange
from bot.training.timing import exercise_seconds, session_minutes, set_seconds


def exercise(name: str, sets: int, reps: int, rest_s: int, **more: object) -> PlannedExercise:
    """An exercise with equal sets and no setting up."""
    pair = str(more.get("pair", ""))
    return PlannedExercise(name, (PlannedSet(RepRange(reps, reps), rest_s=rest_s),) * sets, setup_s=0, pair=pair)


def test_sets_and_rests_worked_by_hand() -> None:
    """At 3 s a repetition: 3 x 10 with 2 min rest is 330 s, 5 x 5 with 3 min rest 795 s."""
    assert exercise_seconds(exercise("A", 3, 10, 120)) == 330
    assert exercise_seconds(exercise("A", 5, 5, 180)) == 795


def test_pairs_save_the_time_that_a_trial_found() -> None:
    """Six exercises, four sets of ten, two minutes' rest: antagonist pairs took 36 % less time (Burke et al. 2024,
    preprint 10.51224/SRXIV.419). Plausible tempos and changes give 31 to 41 %; outside, the estimate is wrong."""
    alone = [exercise(f"E{n}", 4, 10, 120) for n in range(6)]
    paired = [replace(e, pair=f"P{n // 2}") for n, e in enumerate(alone)]
    warm_up_s = 180
    before = sum(exercise_seconds(e) for e in alone)
    after = session_minutes(tuple(paired)) * 60 - warm_up_s
    assert 0.31 <= 1 - after / before <= 0.42


def test_each_side_takes_its_time_and_seconds_are_seconds() -> None:
    """Eight repetitions each side are 48 s; a plank of 30 to 60 s counts 45; a carry of 40 m about 40 s."""
    lunge = replace(exercise("Lunge", 1, 8, 60), sides=2)
    assert set_seconds(lunge, lunge.sets[0]) == 48
    plank = PlannedExercise("Plank", (PlannedSet(RepRange(30, 60)),), measure=Measure.SECONDS)
    assert set_seconds(plank, plank.sets[0]) == 45
    carry = PlannedExercise("Carry", (PlannedSet(RepRange(40, 40)),), measure=Measure.METRES)
    assert set_seconds(carry, carry.sets[0]) == 40


def test_continuations_add_less_than_another_set_with_its_rest() -> None:
    """Drop sets take a third to a half of the time of ordinary sets (Sodal et al. 2023, Sports Med Open 9:66)."""
    one = exercise("A", 1, 10, 120)
    drop = replace(one, sets=(replace(one.sets[0], finish=Drop(1, (20, 40))),))
    mini = replace(one, sets=(replace(one.sets[0], finish=Mini(4, (3, 5))),))
    two = exercise("A", 2, 10, 120)
    assert exercise_seconds(one) < exercise_seconds(drop) < exercise_seconds(two)
    assert exercise_seconds(one) < exercise_seconds(mini) < exercise_seconds(two)


def test_an_empty_session_takes_no_time() -> None:
    """Nothing planned, nothing warmed up for."""
    assert session_minutes(()) == 0
