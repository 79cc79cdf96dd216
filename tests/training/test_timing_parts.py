"""A session's time by its parts, against worked arithmetic and what trials measured."""

from dataclasses import replace
from decimal import Decimal

import pytest

from bot.training.plan import Drop, PlannedExercise, PlannedSet, RepRange, Tempo, WarmupStep
from bot.training.samples import sample_programme
from bot.training.set_time import warmup_seconds
from bot.training.timing import Part, exercise_seconds, groups, session_minutes, session_time
from bot.training.units import Load, Unit


def exercise(name: str, sets: int, reps: int, rest_s: int, *, pair: str = "", setup_s: int = 0) -> PlannedExercise:
    """An exercise with equal sets and nothing to load."""
    return PlannedExercise(name, (PlannedSet(RepRange(reps, reps), rest_s=rest_s),) * sets, setup_s=setup_s, pair=pair)


SQUAT = replace(
    exercise("Squat", 3, 5, 180, setup_s=120),
    equipment="bar",
    warmup=tuple(WarmupStep(Load.of(kg, Unit.KG), 5) for kg in (50, 70, 85)),
)
PRESS = exercise("Press", 2, 10, 90, pair="A", setup_s=60)
ROW = exercise("Row", 2, 10, 90, pair="A", setup_s=30)


def test_every_part_of_a_session_worked_by_hand() -> None:
    """Squat: 120 s to set up, three warm-up sets of 75 s, 3 x 5 x 3 s, two rests of 180 s. Press and row in turn: 60
    and 30 s to set up, 4 x 10 x 3 s, two changes of 15 s, one rest of 90 s. Three minutes before it all."""
    time = session_time((SQUAT, PRESS, ROW))
    assert dict(time.parts) == {
        Part.GENERAL: 180,
        Part.SETUP: 210,
        Part.WARMUP: 225,
        Part.WORK: 165,
        Part.REST: 450,
        Part.CHANGE: 30,
    }
    assert time.seconds == 1260
    assert time.minutes == session_minutes((SQUAT, PRESS, ROW)) == 21
    assert [(e.name, e.seconds) for e in time.exercises] == [("Squat", 750), ("Press", 210), ("Row", 120)]


def test_the_parts_add_up_to_the_whole_and_so_do_the_exercises() -> None:
    """Nothing is counted twice, nothing forgotten, in each workout of the sample programme."""
    for workout in sample_programme().workouts:
        time = session_time(workout.exercises)
        assert sum(seconds for _, seconds in time.parts) == time.seconds
        assert time.general_s + sum(e.seconds for e in time.exercises) == time.seconds
        assert {e.name for e in time.exercises} == {e.name for e in workout.exercises}


def test_sets_with_short_and_with_long_rests_take_what_a_trial_measured() -> None:
    """Twenty repetitions as 5 x 4: 140 s with rests of 20 s, about 780 s with rests of 3 min (Marshall et al. 2012,
    J Sci Med Sport 15:153-158; the short one as quoted on a secondary page, the long one from memory)."""
    assert exercise_seconds(exercise("Squat", 5, 4, 20)) == 140
    assert exercise_seconds(exercise("Squat", 5, 4, 180)) == 780


@pytest.mark.parametrize("rest_s", [60, 75])
@pytest.mark.parametrize("reps", [8, 10, 12])
def test_drops_take_the_share_of_the_time_that_a_review_found(reps: int, rest_s: int) -> None:
    """A set with two drops in the place of three sets took from one third to one half of their time (Sodal et al. 2023,
    Sports Med Open 9:66, as quoted on a secondary page)."""
    three = exercise("Curl", 3, reps, rest_s)
    dropped = replace(three, sets=(replace(three.sets[0], finish=Drop(2, (20, 25))),))
    assert 0.33 <= exercise_seconds(dropped) / exercise_seconds(three) <= 0.5


def test_a_half_keeps_the_shorter_rest_that_the_coach_gave_it() -> None:
    """30 s after the first half, 90 s after the second (common practice: 30 to 60 s between halves, no source): two
    rounds are four sets of 30 s, two half rests and one whole one."""
    press, row = exercise("Press", 2, 10, 30, pair="A"), exercise("Row", 2, 10, 90, pair="A")
    time = session_time((press, row))
    assert (time.of(Part.WORK), time.of(Part.REST), time.of(Part.CHANGE)) == (120, 30 + 90 + 30, 0)


def test_no_rest_is_no_rest() -> None:
    """A rest of 0 s is not the usual one; a rest that nobody gave is."""
    assert exercise_seconds(exercise("A", 2, 10, 0)) == 60
    unsaid = replace(exercise("A", 2, 10, 0), sets=(PlannedSet(RepRange(10, 10)),) * 2)
    assert exercise_seconds(unsaid) == 60 + 90


def test_a_machine_needs_less_warming_up_than_a_bar() -> None:
    """Two quick sets on a machine, up to five times that for a bar (common practice, no source), planned or not."""
    for planned in (SQUAT, replace(SQUAT, warmup=())):
        machine = replace(planned, equipment="stack", warmup=planned.warmup[:2])
        assert warmup_seconds(machine) < warmup_seconds(planned)
    assert warmup_seconds(replace(SQUAT, warmup=(), equipment="none")) == 0


def test_tempo_drops_and_sides_by_hand() -> None:
    """3-1-X-0 is 5 s a repetition: eight of them each side are 80 s; a drop of 80 % of them, 10 s to change, each side,
    is 84 s more."""
    planned = PlannedSet(RepRange(8, 8), rest_s=60, tempo=Tempo(3, 1, None, 0), finish=Drop(1, (20, 30)))
    time = session_time((PlannedExercise("Lunge", (planned,), sides=2, setup_s=0),))
    assert (time.of(Part.WORK), time.of(Part.FINISH)) == (80, 84)


def test_what_remains_of_a_session_takes_no_setting_up_again() -> None:
    """The squat has a set behind it: in the place of setting up and warming up there is a rest."""
    rest_of_it = replace(SQUAT, sets=SQUAT.sets[1:])
    time = session_time((rest_of_it, PRESS, ROW), begun={"Squat"})
    assert time.exercises[0].parts == ((Part.WORK, 30), (Part.REST, 360))
    assert time.general_s == 0
    assert time.seconds == 390 + 330


def test_partners_belong_together_wherever_they_stand() -> None:
    """A pair is done in turn even where something stands between its halves in the plan."""
    apart = groups((PRESS, SQUAT, ROW))
    assert [[e.name for e in group] for group in apart] == [["Press", "Row"], ["Squat"]]
    assert session_time((PRESS, SQUAT, ROW)).seconds == session_time((SQUAT, PRESS, ROW)).seconds


def test_more_of_anything_never_takes_less_time() -> None:
    """A set, a repetition, a second of rest or a warm-up more."""
    least = exercise_seconds(SQUAT)
    more = (
        replace(SQUAT, sets=(*SQUAT.sets, SQUAT.sets[0])),
        replace(SQUAT, sets=tuple(replace(s, reps=RepRange(6, 6)) for s in SQUAT.sets)),
        replace(SQUAT, sets=tuple(replace(s, rest_s=181, rir=Decimal(1)) for s in SQUAT.sets)),
        replace(SQUAT, warmup=(*SQUAT.warmup, SQUAT.warmup[0])),
    )
    assert all(exercise_seconds(e) > least for e in more)
