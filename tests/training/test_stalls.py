"""Stalls and drift: four sessions without a better set, effort that creeps up at the same work."""

from datetime import date, timedelta

import pytest

from bot.training.exposure import LiftedSet
from bot.training.plan import PlannedSet, RepRange
from bot.training.stalls import Advice, Trend, drift_of
from bot.training.state import State
from bot.training.strength import after_session, begin, shown_kg

DAY = date(2027, 1, 4)
PLAN = (PlannedSet(RepRange(5, 8)),)
Best = tuple[float, int, float | None]


def lived(*sessions: Best, every_days: int = 7) -> State:
    """A state after sessions of one set each."""
    state = begin()
    for n, (kg, reps, rir) in enumerate(sessions):
        day = DAY + timedelta(days=n * every_days)
        state = after_session(state, day=day, sets=(LiftedSet(kg, reps, rir),), prescribed=PLAN)
    return state


@pytest.mark.parametrize(
    ("what", "sessions", "found"),
    [
        ("too little is known", [(60, 8, 1)] * 3, None),
        ("the same four times", [(60, 8, 1)] * 4, (Trend.STALLED, Advice.LIGHT_WEEK)),
        ("down and back", [(60, 8, 1), (57.5, 8, 1), (57.5, 8, 1), (60, 8, 1)], (Trend.STALLED, Advice.LIGHT_WEEK)),
        ("easy, and nowhere", [(60, 8, 4)] * 4, (Trend.STALLED, Advice.GO_UP)),
        ("a repetition more is progress", [(60, 7, 1), (60, 7, 1), (60, 8, 1), (60, 8, 1)], None),
        ("more load is progress", [(60, 8, 1), (60, 8, 1), (60, 8, 1), (62.5, 8, 1)], None),
        ("one more left is progress", [(60, 8, 1), (60, 8, 1), (60, 8, 2), (60, 8, 2)], None),
        ("less and less left", [(60, 8, 3), (60, 8, 2), (60, 8, 1)], (Trend.CREEPING, Advice.STEP_DOWN)),
        ("less left for more repetitions", [(60, 6, 3), (60, 7, 2), (60, 8, 1)], None),
        ("less left at more load", [(60, 8, 3), (62.5, 8, 2), (65, 8, 1)], None),
        ("effort unsaid", [(60, 8, None)] * 3, None),
    ],
)  # fmt: skip
def test_what_stalls_and_what_drifts(what: str, sessions: list[Best], found: tuple[Trend, Advice] | None) -> None:
    """A table of lives."""
    drift = drift_of(lived(*sessions))
    assert (None if drift is None else (drift.trend, drift.advice)) == found, what


def test_old_sessions_tell_nothing_of_now() -> None:
    """Four sessions a month apart are no stall."""
    assert drift_of(lived(*[(60.0, 8, 1.0)] * 4, every_days=30)) is None


def test_the_finding_names_its_sets() -> None:
    """First and last, with their days."""
    drift = drift_of(lived(*[(60.0, 8, 1.0)] * 5))
    assert drift is not None
    assert (drift.first.day, drift.last.day) == (DAY + timedelta(days=7), DAY + timedelta(days=28))


def test_marks_are_kept_with_the_state_and_never_more_than_six() -> None:
    """A state from before there were marks is read as one without."""
    state = lived(*[(60.0, 8, 1.0)] * 9)
    assert len(state.marks) == 6
    assert State.from_json(state.to_json()).marks == state.marks
    old = state.to_json().partition(',"marks"')[0] + "}"
    assert State.from_json(old).marks == ()


def test_a_set_shows_what_epley_says() -> None:
    """100 kg for five to failure: 116.7 kg (Epley 1985, as in LeSuer et al. 1997, J Strength Cond Res 11:211-213)."""
    assert shown_kg(100, 5, 0) == pytest.approx(116.67, abs=0.01)
    assert shown_kg(100, 3, 2) == pytest.approx(116.67, abs=0.01)
