"""Sets that were cut or missed come back where later days have room: never too much, and as much as can be."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from itertools import combinations
from math import ceil
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.plan import Drop, PlannedExercise, PlannedSet, RepRange
from bot.training.put_right import LaterDay, OneMore, PutRight, put_right, with_one_more
from bot.training.samples import sample_programme
from bot.training.timing import session_minutes, session_time
from tests.training.shorten_worlds import exercise_of

MONDAY = date(2026, 1, 5)
D = Decimal
TEN = PlannedSet(RepRange(8, 10), rest_s=90)
CURL = PlannedExercise("Leg curl", (TEN, TEN), muscles=("hamstrings",), equipment="stack")
PRESS = PlannedExercise("Press", (TEN, TEN), muscles=("chest",), muscles_indirect=("triceps",), equipment="stack")


def later(*exercises: PlannedExercise, day: int = 3, minutes: int = 60) -> LaterDay:
    """A later day of the week."""
    return LaterDay(MONDAY + timedelta(days=day), exercises, D(minutes))


def test_a_cut_set_comes_back_by_hand() -> None:
    """Two sets for the hamstrings were cut on Monday: Thursday's leg curl takes one more, one stays lost."""
    found = put_right({"hamstrings": D(2)}, [later(CURL, PRESS)], worked={"hamstrings": [MONDAY]})
    assert found == PutRight(
        (OneMore(MONDAY + timedelta(days=3), "Leg curl"),), {"hamstrings": D(1)}, {"hamstrings": D(1)}
    )


def test_not_without_room() -> None:
    """A set more takes a rest of 90 s and 27 s of work: a minute short, and nothing is proposed."""
    need = session_time((with_one_more(CURL),)).seconds
    assert need - session_time((CURL,)).seconds == 90 + 27
    for minutes, count in ((D(need) / 60, 1), (D(need - 1) / 60, 0)):
        day = LaterDay(MONDAY + timedelta(days=3), (CURL,), minutes)
        assert len(put_right({"hamstrings": D(1)}, [day], worked={}).more) == count


def test_not_within_the_rest_between() -> None:
    """Worked on Monday: nothing is added on Tuesday (24 h), but on Wednesday (48 h); nor where Thursday works it."""
    lost = {"hamstrings": D(1)}
    for day, count in ((1, 0), (2, 1)):
        assert len(put_right(lost, [later(CURL, day=day)], worked={"hamstrings": [MONDAY]}).more) == count
    assert not put_right(lost, [later(CURL, day=3), later(replace(CURL, name="Other"), day=4)], worked={}).more


def test_not_what_is_held_heavy_or_lighter_this_week() -> None:
    """Pain, a heavy set, a week of lighter loads: none of them grows."""
    lost = {"hamstrings": D(1)}
    assert not put_right(lost, [later(CURL)], worked={}, held={"Leg curl"}).more
    assert not put_right(lost, [later(replace(CURL, load_percent=D(80)))], worked={}).more
    heavy = replace(CURL, sets=(replace(TEN, rest_s=180),))
    assert not put_right(lost, [later(heavy)], worked={}).more


def test_what_a_muscle_gets_along_counts_a_half() -> None:
    """Triceps lost a set: the press gives a half of one back."""
    found = put_right({"triceps": D(1)}, [later(PRESS)], worked={})
    assert (found.back, found.lost) == ({"triceps": D("0.5")}, {"triceps": D("0.5")})


def test_the_drop_stays_with_the_last_set() -> None:
    """A set is added before it."""
    dropped = replace(CURL, sets=(TEN, replace(TEN, finish=Drop(1, (20, 30)))))
    assert [s.finish for s in with_one_more(dropped).sets] == [None, None, Drop(1, (20, 30))]


def test_a_missed_workout_of_the_sample_comes_back_in_part() -> None:
    """The first workout is missed on Monday: the second one on Thursday takes what fits into five minutes more."""
    first, second = sample_programme().workouts
    lost = {m: D(len(e.sets)) for e in first.exercises for m in e.muscles}
    minutes = session_minutes(second.exercises) + 5
    day = LaterDay(MONDAY + timedelta(days=3), second.exercises, D(minutes))
    found = put_right(lost, [day], worked={})
    assert 1 <= len(found.more) <= len(second.exercises)
    grown = {more.exercise for more in found.more}
    after = tuple(with_one_more(e) if e.name in grown else e for e in second.exercises)
    assert session_minutes(after) <= minutes


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10_000), st.integers(1, 3), st.integers(0, 12))
def test_as_much_as_can_be_and_never_too_much(seed: int, on: int, spare: int) -> None:
    """All sets of additions that are allowed are tried out: none brings back more, or as much with fewer."""
    chance = Random(seed)
    days = []
    for n in range(on):
        exercises = tuple(exercise_of(f"{n}{k}", chance, most_sets=2) for k in range(3))
        days.append(later(*exercises, day=2 * n + 1, minutes=session_minutes(exercises) + spare))
    muscles = sorted({m for d in days for e in d.exercises for m in e.muscles})
    lost = {m: D(chance.choice([1, 2, 3])) / 2 for m in muscles if chance.random() < 0.7}
    found = put_right(lost, days, worked={})
    ways = [OneMore(d.day, e.name) for d in days for e in d.exercises]
    allowed = [some for n in range(len(ways) + 1) for some in combinations(ways, n) if _is_allowed(some, lost, days)]
    assert found.more in allowed
    best = max((_back(some, lost, days), -len(some)) for some in allowed)
    assert (_back(found.more, lost, days), -len(found.more)) == best
    assert sum(found.back.values(), D(0)) == best[0]


def _is_allowed(some: tuple[OneMore, ...], lost: dict[str, Decimal], days: list[LaterDay]) -> bool:
    for day in days:
        grown = {more.exercise for more in some if more.day == day.day}
        after = [with_one_more(e) if e.name in grown else e for e in day.exercises]
        if grown and session_time(after).seconds > day.minutes * 60:
            return False
        if any((e.sets[-1].rest_s or 0) >= 180 for e in day.exercises if e.name in grown):
            return False
    direct = [
        m
        for more in some
        for d in days
        if d.day == more.day
        for e in d.exercises
        if e.name == more.exercise
        for m in e.muscles
    ]
    return all(direct.count(m) <= ceil(sets) for m, sets in lost.items())


def _back(some: tuple[OneMore, ...], lost: dict[str, Decimal], days: list[LaterDay]) -> Decimal:
    total = D(0)
    for muscle, sets in lost.items():
        given = D(0)
        for more in some:
            e = next(e for d in days if d.day == more.day for e in d.exercises if e.name == more.exercise)
            given += D(1) if muscle in e.muscles else D("0.5") if muscle in e.muscles_indirect else D(0)
        total += min(sets, given)
    return total
