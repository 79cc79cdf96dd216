"""A light week is offered where three signs agree, and not for one alone."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.light_weeks import Course, Felt, Sign, is_light_week_due, signs_of, weeks_on

TODAY = date(2026, 3, 4)


def felt(weeks: int, *, efforts: tuple[int | None, ...] = (), sore: int = 0) -> tuple[Felt, ...]:
    """A session each week on Monday, the last one last week; the last efforts and sore ones as given."""
    days = [date(2026, 3, 2) - timedelta(weeks=weeks - n) for n in range(weeks)]
    told = (*((6,) * max(0, weeks - len(efforts))), *efforts)
    return tuple(Felt(day, effort, n >= weeks - sore) for n, (day, effort) in enumerate(zip(days, told, strict=True)))


LONG = Course(felt(6))


@pytest.mark.parametrize(
    ("course", "signs"),
    [
        (Course(()), ()),
        (Course(felt(4)), ()),
        (LONG, (Sign.LONG,)),
        (replace(LONG, light=date(2026, 2, 9)), ()),
        (replace(LONG, stalled=1), (Sign.LONG,)),
        (replace(LONG, stalled=2, creeping=1), (Sign.LONG, Sign.STALLED, Sign.CREEPING)),
        (Course(felt(6, efforts=(8, 8))), (Sign.LONG, Sign.EFFORT)),
        (Course(felt(6, efforts=(8, 7))), (Sign.LONG,)),
        (Course(felt(6, efforts=(8, None, 8))), (Sign.LONG,)),
        (Course(felt(7, efforts=(8, None, 8))), (Sign.LONG, Sign.EFFORT)),
        (Course(felt(6, sore=2)), (Sign.LONG, Sign.SORE)),
        (Course(felt(6, sore=1)), (Sign.LONG,)),
    ],
)
def test_signs(course: Course, signs: tuple[Sign, ...]) -> None:
    """Five weeks on without a light one (Rogerson et al. 2024: every 5.6 weeks, from memory); the others as defined."""
    assert signs_of(course, TODAY) == signs


def test_three_signs_offer_it_and_two_do_not() -> None:
    """Any three."""
    two, three = replace(LONG, stalled=2), replace(LONG, stalled=2, creeping=1)
    assert not is_light_week_due(two, TODAY)
    assert is_light_week_due(three, TODAY)
    assert is_light_week_due(replace(Course(felt(6, efforts=(9, 9), sore=3)), creeping=1), TODAY)


def test_it_is_not_offered_in_one_nor_again_at_once() -> None:
    """Declined: not for three weeks. In a light week that is on already, or planned: no."""
    due = replace(LONG, stalled=2, creeping=1)
    assert not is_light_week_due(replace(due, declined=TODAY - timedelta(days=20)), TODAY)
    assert is_light_week_due(replace(due, declined=TODAY - timedelta(days=21)), TODAY)
    harder = replace(due, sessions=felt(6, efforts=(9, 9)))
    assert not is_light_week_due(replace(harder, light=date(2026, 3, 2)), TODAY)
    assert not is_light_week_due(replace(harder, light=date(2026, 3, 9)), TODAY)


def test_a_week_without_a_session_ends_the_row() -> None:
    """Three weeks, one off, two weeks: two weeks on."""
    sessions = tuple(f for n, f in enumerate(felt(6)) if n != 3)
    assert weeks_on(Course(sessions), TODAY) == 2


@given(st.integers(0, 9), st.integers(0, 4), st.integers(0, 3), st.integers(0, 3))
def test_more_signs_never_take_an_offer_back(weeks: int, stalled: int, creeping: int, sore: int) -> None:
    """Whoever is offered a light week is offered one with more of anything."""
    course = Course(felt(max(weeks, sore), sore=sore), stalled=stalled, creeping=creeping)
    if is_light_week_due(course, TODAY):
        assert is_light_week_due(replace(course, stalled=stalled + 1, creeping=creeping + 1), TODAY)
