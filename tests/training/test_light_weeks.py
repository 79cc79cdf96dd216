"""A light week is offered where three signs agree, and not for one alone."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.light_weeks import Course, Felt, Sign, is_light, is_light_week_due, last_light, signs_of, weeks_on
from bot.training.people import Programme, WeekChange
from bot.training.samples import sample_programme

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


# --- the programme's own light weeks


def programme(*changes: WeekChange, block: int | None = None) -> Programme:
    """The sample programme with weeks that are otherwise."""
    return replace(sample_programme(), changes=changes, block_weeks=block)


@pytest.mark.parametrize(
    ("change", "light"),
    [
        (WeekChange((4,), sets_percent=50), True),
        (WeekChange((4,), fewer_sets=1), True),
        (WeekChange((4,), sets_percent=90), False),
        (WeekChange((4,), load_percent=Decimal(80)), True),
        (WeekChange((4,), load_percent=Decimal(95)), False),
        (WeekChange((4,), rir=Decimal(4)), True),
        (WeekChange((4,), rir=Decimal(1)), False),
        (WeekChange((4,), note="enjoy it"), False),
        (WeekChange((4,), exercise="Back squat", sets_percent=50), False),
    ],
)
def test_which_weeks_of_a_programme_are_light(change: WeekChange, light: bool) -> None:
    """Half the sets, or most of them lighter or further from failure; not for a note or one exercise."""
    assert is_light(programme(change), 4) is light
    assert not is_light(programme(change), 3)


def test_the_last_light_week_of_a_block_that_repeats() -> None:
    """Every fourth week: on a Wednesday of week 10 it was week 8; in week 7 week 8 comes next, and stands already."""
    every_fourth = programme(WeekChange((4,), sets_percent=50), block=4)
    begun = date(2026, 1, 7)
    monday = date(2026, 1, 5)
    assert last_light(every_fourth, begun, monday + timedelta(weeks=9, days=2)) == monday + timedelta(weeks=7)
    assert last_light(every_fourth, begun, monday + timedelta(weeks=6)) == monday + timedelta(weeks=7)
    assert last_light(every_fourth, begun, monday) is None
    assert last_light(programme(), begun, monday + timedelta(weeks=90)) is None


def test_who_had_the_programmes_light_week_is_not_weeks_without_one() -> None:
    """Six weeks on, a light one three weeks ago: two weeks since; with it to come next week nothing is offered."""
    assert Sign.LONG not in signs_of(replace(LONG, light=date(2026, 2, 9)), TODAY)
    due = replace(LONG, stalled=2, creeping=1, sessions=felt(6, efforts=(9, 9)))
    assert is_light_week_due(due, TODAY)
    assert not is_light_week_due(replace(due, light=date(2026, 3, 9)), TODAY)
