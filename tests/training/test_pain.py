"""What follows from pain: help first, no score taken as low, bands where their sources put them."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.pain import (
    AskScore,
    GetHelp,
    KeepHeld,
    KeepLoad,
    Morning,
    PainOnDay,
    PainPolicy,
    PainSaid,
    Release,
    StopExercise,
    Tell,
    after_morning,
    holds_exercise,
    is_rising,
    respond,
    tells_at_once,
)
from bot.training.report import Side

SAID = st.builds(
    PainSaid,
    st.one_of(st.none(), st.sampled_from(["knee", "lower back"])),
    st.one_of(st.none(), st.integers(0, 10)),
    st.one_of(st.none(), st.sampled_from(Side)),
    st.booleans(),
)
POLICY = st.builds(
    PainPolicy,
    safe_to=st.integers(0, 3),
    acceptable_to=st.integers(3, 6),
    severe_from=st.integers(6, 10),
    tell_at_once_from=st.integers(0, 10),
)


def knee(score: int | None, *, urgent: bool = False) -> PainSaid:
    """Pain in a knee."""
    return PainSaid("knee", score, None, urgent)


@pytest.mark.parametrize(
    ("score", "expected"),
    [
        (0, KeepLoad(watch=False, tell=Tell.AT_ONCE)),
        (2, KeepLoad(watch=False, tell=Tell.AT_ONCE)),
        (3, KeepLoad(watch=True, tell=Tell.AT_ONCE)),
        (5, KeepLoad(watch=True, tell=Tell.AT_ONCE)),
        (6, StopExercise(severe=False, tell=Tell.AT_ONCE)),
        (7, StopExercise(severe=True, tell=Tell.AT_ONCE)),
        (10, StopExercise(severe=True, tell=Tell.AT_ONCE)),
    ],
)
def test_the_bands_are_those_of_the_pain_monitoring_model(score: int, expected: object) -> None:
    """0 to 2 safe, 3 to 5 acceptable, over 5 high risk (Thomeé 1997, from memory); severe from 7 (Serlin 1995)."""
    assert respond(knee(score)) == expected


def test_without_a_score_it_is_asked_and_the_exercise_is_held() -> None:
    """A missing score is never taken as low."""
    response = respond(knee(None))
    assert response == AskScore(Tell.AT_ONCE)
    assert holds_exercise(response)


@given(SAID, POLICY)
def test_an_urgent_sign_comes_before_everything(said: PainSaid, policy: PainPolicy) -> None:
    """Whatever score was said and whatever a coach has set: help first, held, told at once."""
    response = respond(PainSaid(said.where, said.score, said.side, urgent=True), policy)
    assert response == GetHelp()
    assert holds_exercise(response)
    assert tells_at_once(response)


@given(SAID, POLICY)
def test_more_pain_is_never_answered_more_lightly(said: PainSaid, policy: PainPolicy) -> None:
    """Raising the score never lifts a hold nor silences the coach."""
    if said.score is None or said.score == 10:
        return
    low = respond(said, policy)
    high = respond(PainSaid(said.where, said.score + 1, said.side, said.urgent), policy)
    assert holds_exercise(high) >= holds_exercise(low)
    assert tells_at_once(high) >= tells_at_once(low)


def test_a_coach_may_hear_of_little_pain_in_the_digest() -> None:
    """The telling is a setting; what stops an exercise is told at once all the same."""
    policy = PainPolicy(tell_at_once_from=8)
    assert not tells_at_once(respond(knee(2), policy))
    assert tells_at_once(respond(knee(6), policy))
    assert tells_at_once(respond(knee(None), policy))


@pytest.mark.parametrize(
    "bands",
    [
        {"safe_to": 6},
        {"acceptable_to": 10},
        {"severe_from": 11},
        {"safe_to": -1},
        {"severe_from": 2},
        {"tell_at_once_from": 11},
        {"rising_weeks": 0},
    ],
)
def test_bands_out_of_order_are_refused(bands: dict[str, int]) -> None:
    """A policy that would answer more pain more lightly can't be made."""
    with pytest.raises(ValueError, match=r"pain bands|tell_at_once_from"):
        PainPolicy(**bands)


@pytest.mark.parametrize(
    ("answer", "expected"),
    [
        (Morning.GONE, Release()),
        (Morning.BETTER, KeepHeld(Tell.DIGEST)),
        (Morning.SAME, KeepHeld(Tell.AT_ONCE)),
        (Morning.WORSE, KeepHeld(Tell.AT_ONCE)),
        (Morning.SILENT, KeepHeld(Tell.DIGEST)),
    ],
)
def test_only_gone_lifts_the_hold(answer: Morning, expected: object) -> None:
    """Pain must have settled by the next morning."""
    assert after_morning(knee(4), answer) == expected


@pytest.mark.parametrize("answer", list(Morning))
def test_an_urgent_sign_is_let_go_by_the_coach_alone(answer: Morning) -> None:
    """`gone` the next morning doesn't lift it."""
    assert after_morning(knee(None, urgent=True), answer) == KeepHeld(Tell.AT_ONCE)


def on(day: int, score: int) -> PainOnDay:
    """A score on a day of March."""
    return PainOnDay(date(2026, 3, day), score)


@pytest.mark.parametrize(
    ("scores", "rising"),
    [
        ((), False),
        ((on(2, 5),), False),
        ((on(2, 2), on(9, 3)), True),
        ((on(9, 3), on(2, 2)), True),
        ((on(2, 3), on(9, 3)), False),
        ((on(2, 4), on(9, 3)), False),
        ((on(2, 2), on(4, 4), on(9, 3)), True),
        ((on(2, 2), on(16, 3)), False),
        ((on(8, 1), on(9, 5)), False),
    ],
)
def test_rising_is_week_against_week(scores: tuple[PainOnDay, ...], rising: bool) -> None:
    """The newest seven days against the seven before; days within one week say nothing yet."""
    assert is_rising(scores) is rising
