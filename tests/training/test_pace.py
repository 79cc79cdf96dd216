"""A client's pace from the times between reports: found where there is one, moved by nothing else."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta
from math import exp
from statistics import fmean

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.facts import Reported
from bot.training.pace import NEAR, Pace, Told, Trait, pace_after
from bot.training.plan import PlannedExercise
from bot.training.report import Performed, Side, Stage
from bot.training.samples import sample_programme
from bot.training.timing import session_time
from tests.bench.pace import run
from tests.training.pace_worlds import START, Habits, train

WORKOUTS = tuple(w.exercises for w in sample_programme().workouts)


def trained(habits: Habits, sessions: int, *, exercises: Sequence[PlannedExercise] = WORKOUTS[0]) -> Pace:
    """The pace after so many sessions of a client with these habits."""
    chance, pace = np.random.default_rng(3), Pace()
    for _ in range(sessions):
        pace = pace_after(pace, exercises, train(habits, exercises, chance).told)
    return pace


def clockwork(within: float = 1.0, between: float = 1.0) -> tuple[Told, ...]:
    """Reports of the first workout, each the moment its set ends, at these factors exactly."""
    now, told = 0.0, []
    for step in session_time(WORKOUTS[0]).steps:
        apart = step.setup_s + step.warmup_s
        now += (step.seconds - apart) * within + apart * between
        told.append(Told(START + timedelta(seconds=now), ((step.exercise, step.set),)))
    return tuple(told)


@pytest.mark.parametrize(("within", "between"), [(1.0, 1.0), (0.75, 1.3), (1.4, 0.8)])
def test_a_steady_pace_is_found(within: float, between: float) -> None:
    """After ten sessions like clockwork the factors are the client's own, to a tenth."""
    pace = Pace()
    for _ in range(10):
        pace = pace_after(pace, WORKOUTS[0], clockwork(within, between))
    assert pace.within.factor == pytest.approx(within, rel=0.1)
    assert pace.between.factor == pytest.approx(between, rel=0.12)
    assert (pace.sessions, pace.is_known) == (10, True)
    assert pace.within.sd < 0.1


def test_minutes_at_a_pace_by_hand() -> None:
    """Sets and rests a quarter faster, changes half as slow again; the general warm-up stays."""
    time = session_time(WORKOUTS[0])
    apart = sum(s.setup_s + s.warmup_s for s in time.steps)
    pace = Pace(Trait(float(np.log(0.75)), 0.1), Trait(float(np.log(1.5)), 0.1), 1)
    seconds = 180 + (time.seconds - 180 - apart) * 0.75 + apart * 1.5
    assert pace.minutes(time) == round(seconds / 60)
    assert Pace().minutes(time) == round(time.seconds / 60)


@given(st.integers(0, 12), st.integers(10, 120))
def test_a_pause_moves_nothing(place: int, minutes: int) -> None:
    """Ten minutes or two hours between two sets, wherever they fall: the pace hardly knows."""
    told = clockwork()
    late = told[: place + 1] + tuple(replace(t, at=t.at + timedelta(minutes=minutes)) for t in told[place + 1 :])
    plain, paused = pace_after(Pace(), WORKOUTS[0], told), pace_after(Pace(), WORKOUTS[0], late)
    assert paused.within.mean == pytest.approx(plain.within.mean, abs=0.03)
    assert paused.between.mean == pytest.approx(plain.between.mean, abs=0.12)


@given(st.integers(0, 9), st.integers(1, 15))
def test_a_set_typed_late_moves_little(place: int, before_s: int) -> None:
    """A set typed a few seconds before the next one: the long interval and the short one both count for nothing."""
    told = list(clockwork())
    told[place] = replace(told[place], at=max(told[place].at, told[place + 1].at - timedelta(seconds=before_s)))
    plain, late = pace_after(Pace(), WORKOUTS[0], clockwork()), pace_after(Pace(), WORKOUTS[0], told)
    assert late.within.mean == pytest.approx(plain.within.mean, abs=0.08)
    assert late.between.mean == pytest.approx(plain.between.mean, abs=0.12)


def test_batches_say_nothing() -> None:
    """Whoever reports several sets at once, by exercise or the whole session, has the pace as before, to the bit."""
    whole = tuple((s.exercise, s.set) for s in session_time(WORKOUTS[0]).steps)
    assert trained(Habits(within=1.5, batches=1.0), 5) == Pace()
    assert pace_after(Pace(), WORKOUTS[0], [Told(START, whole)]) == Pace()
    assert pace_after(Pace(), WORKOUTS[0], []) == Pace()
    two = [Told(START, whole[:5]), Told(START + timedelta(seconds=3), whole[5:])]
    assert pace_after(Pace(), WORKOUTS[0], two) == Pace()


def test_a_correction_and_another_order_say_nothing() -> None:
    """A report in the place of another has no time of its own; sets out of their order are not planned neighbours."""
    done = Performed("Back squat", 1, Stage.WORK, None, 5)
    assert Told.of(Reported("s", "m1", (done,), replaces=(("Back squat", 1),)), START).sets == ()
    told = clockwork()
    keys = [t.sets for t in told][::-1]
    backwards = [replace(t, sets=k) for t, k in zip(told, keys, strict=True)]
    assert pace_after(Pace(), WORKOUTS[0], backwards) == Pace()


def test_both_sides_and_the_drops_of_a_set_are_one_report() -> None:
    """Left, right and a drop belong to one set; a warm-up is none."""
    left = Performed("Split squat", 2, Stage.WORK, None, 8, side=Side.LEFT)
    report = Reported(
        "s",
        "m1",
        (
            Performed("Split squat", None, Stage.WARMUP, None, 5),
            left,
            replace(left, side=Side.RIGHT),
            replace(left, stage=Stage.DROP),
        ),
    )
    assert Told.of(report, START) == Told(START, (("Split squat", 2),))


@given(st.floats(-2, 2), st.floats(0.01, 1), st.integers(0, 500))
def test_the_kept_text_gives_the_pace_back(mean: float, sd: float, sessions: int) -> None:
    """To the last bit."""
    pace = Pace(Trait(mean, sd), Trait(-mean, sd / 2), sessions)
    assert Pace.from_json(pace.to_json()) == pace


@pytest.mark.parametrize("text", ["", "{}", "[]", '{"v":2,"pace":[0,1,0,1],"n":1}', '{"v":1,"pace":[0,1],"n":1}'])
def test_another_text_is_no_pace(text: str) -> None:
    """It is refused with `ValueError`."""
    with pytest.raises(ValueError):
        Pace.from_json(text)


def test_one_session_moves_it_by_no_more_than_it_can_bear() -> None:
    """Whatever is reported in one session: the factor stays between those of the bounds of what counts."""
    for factor in (0.05, 0.45, 2.4, 20):
        pace = pace_after(Pace(), WORKOUTS[0], clockwork(factor, factor))
        assert exp(-1.4 - NEAR) <= pace.within.factor <= exp(1.4 + NEAR)


def test_five_sessions_teach() -> None:
    """A wide crowd with pauses, late typing and batches (`python -m tests.bench pace`): the error after five sessions
    is at most four fifths of what it is without learning, and smaller than by the last session's ratio."""
    errors, _ = run(200, 6, seed=5)

    def error(n: int, way: str) -> float:
        return fmean(a for a, _ in errors[n, way])

    assert error(0, "ours") == error(0, "no learning")
    assert error(5, "ours") <= 0.8 * error(5, "no learning")
    assert error(5, "ours") < error(5, "last session")
    assert error(5, "at the pace") < error(5, "ours")
