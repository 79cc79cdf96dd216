"""The rest of a week laid anew without a day: its properties on weeks of any size, and a week worked by hand."""

from dataclasses import replace
from datetime import date, time, timedelta
from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.coming import Trainee, coming_days, free_days, moved, next_day, week_of
from bot.training.life import PLAIN_LIFE, LaidDay, Life, with_week
from bot.training.lost_day import Behind, Relaid, lay_rest, room_of
from bot.training.people import Programme, TrainingTime, Workout
from bot.training.plan import PlannedExercise, PlannedSet, Region, RepRange
from bot.training.timing import session_minutes, session_time

MONDAY = date(2027, 1, 11)
NAMES = ("squat", "bench", "row", "hinge", "press", "pulldown", "curl", "calf")
MUSCLES = {"squat": "quadriceps", "bench": "chest", "row": "back", "hinge": "hamstrings", "press": "shoulders"}


def exercise(name: str, sets: int, priority: int) -> PlannedExercise:
    """Some sets of eight."""
    planned = PlannedSet(RepRange(8, 8), Decimal(2), rest_s=90)
    muscles = (MUSCLES.get(name, name),)
    return PlannedExercise(name, (planned,) * sets, priority=priority, region=Region.UPPER, muscles=muscles)


@st.composite
def weeks(draw: st.DrawFn) -> Trainee:
    """A programme of one to four workouts on two to six days."""
    count = draw(st.integers(1, 4))
    workouts = []
    for n in range(count):
        names = draw(st.lists(st.sampled_from(NAMES), min_size=1, max_size=5, unique=True))
        workouts.append(
            Workout(f"W{n}", tuple(exercise(m, draw(st.integers(1, 5)), draw(st.integers(1, 3))) for m in names))
        )
    days = tuple(sorted(draw(st.sets(st.integers(0, 6), min_size=2, max_size=6))))
    turn = draw(st.integers(0, count - 1))
    return Trainee(TrainingTime(days, time(18)), Programme("p", "P", tuple(workouts)), MONDAY, turn, PLAIN_LIFE)


def lost(of: Trainee, place: int) -> tuple[Relaid, list[PlannedExercise], list[PlannedExercise]]:
    """The week without a day: the proposal, all work before, all work after."""
    coming = coming_days(of, MONDAY, MONDAY)
    gone = coming.days[place % len(coming.days)]
    found = lay_rest(coming.days, gone, minutes=room_of(of.programme), workouts=len(of.programme.workouts))
    before = [e for d in coming.days for e in d.workout.exercises]
    after = [e for d in coming_days(laid(of, found), MONDAY, MONDAY).days for e in d.workout.exercises]
    return found, before, after


def laid(of: Trainee, found: Relaid) -> Trainee:
    """The same with the week so."""
    week = week_of(of, MONDAY, MONDAY, found.days)
    return replace(of, life=with_week(Life(), MONDAY, week, today=MONDAY))


@settings(max_examples=60, deadline=None)
@given(weeks(), st.integers(0, 5))
def test_no_day_goes_over_its_minutes_and_no_set_is_made_up(of: Trainee, place: int) -> None:
    """What is kept and what is cut is all there was, by exercise."""
    found, before, after = lost(of, place)
    for day in found.days:
        assert session_time(day.exercises).seconds <= room_of(of.programme) * 60
    cut = dict(found.cut)
    for name in {e.name for e in before}:
        wanted = sum(len(e.sets) for e in before if e.name == name)
        kept = sum(len(e.sets) for e in after if e.name == name)
        assert kept + cut.get(name, 0) == wanted


@settings(max_examples=40, deadline=None)
@given(weeks(), st.integers(0, 5))
def test_the_same_week_gives_the_same_answer(of: Trainee, place: int) -> None:
    """So that a button may name it."""
    assert lost(of, place)[0] == lost(of, place)[0]


@settings(max_examples=100, deadline=None)
@given(weeks(), st.integers(0, 5), st.integers(0, 6))
def test_moving_a_day_there_and_back_changes_nothing(of: Trainee, place: int, to: int) -> None:
    """The week is an ordinary one again, or as it had been laid before."""
    coming = coming_days(of, MONDAY, MONDAY)
    day = coming.days[place % len(coming.days)].day
    free = free_days(coming, MONDAY, MONDAY)
    if not free:
        return
    there = free[to % len(free)]
    week = week_of(of, MONDAY, MONDAY, moved(coming, day, there))
    assert week is not None
    again = replace(of, life=with_week(Life(), MONDAY, week, today=MONDAY))
    back = coming_days(again, MONDAY, MONDAY)
    assert back.on(there) is not None
    assert back.on(day) is None
    assert week_of(again, MONDAY, MONDAY, moved(back, there, day)) is None


@settings(max_examples=60, deadline=None)
@given(weeks(), st.integers(0, 5))
def test_the_turn_goes_on_after_the_last_workout_of_the_week(of: Trainee, place: int) -> None:
    """Next week begins with the workout that it would have begun with."""
    coming = coming_days(of, MONDAY, MONDAY)
    found, _, _ = lost(of, place)
    if not found.days or found.days[-1].day != max(d.day for d in coming.days if d.day != _gone(of, place)):
        return
    assert coming_days(laid(of, found), MONDAY, MONDAY).turn == coming.turn


def _gone(of: Trainee, place: int) -> date:
    coming = coming_days(of, MONDAY, MONDAY)
    return coming.days[place % len(coming.days)].day


def test_the_most_important_work_stays() -> None:
    """By hand: two workouts of four sets each, 25 minutes a day; one day is left, and it keeps the four sets of
    priority 1 of both before any of priority 3."""
    heavy = Workout("A", (exercise("squat", 2, 1), exercise("curl", 2, 3)))
    other = Workout("B", (exercise("bench", 2, 1), exercise("calf", 2, 3)))
    trains = TrainingTime((0, 3), time(18))
    of = Trainee(trains, Programme("p", "P", (heavy, other)), MONDAY, 0, PLAIN_LIFE)
    coming = coming_days(of, MONDAY, MONDAY)
    minutes = session_minutes((exercise("squat", 2, 1), exercise("bench", 2, 1)))
    found = lay_rest(coming.days, coming.days[1], minutes=minutes, workouts=2)
    assert [(e.name, len(e.sets)) for e in found.days[0].exercises] == [("squat", 2), ("bench", 2)]
    assert found.cut == (("curl", 2), ("calf", 2))
    assert found.days[0].title == "A + B"
    assert found.days[0].workout == 1


def test_work_stays_away_from_a_day_that_worked_the_same_muscle() -> None:
    """Squats were done on Monday: of Tuesday and Friday, which both have room, Friday gets them."""
    lost_day = Workout("A", (exercise("squat", 2, 1),))
    others = (Workout("B", (exercise("bench", 2, 1),)), Workout("C", (exercise("row", 2, 1),)))
    trains = TrainingTime((1, 2, 4), time(18))
    of = Trainee(trains, Programme("p", "P", (others[0], lost_day, others[1])), MONDAY, 0, PLAIN_LIFE)
    coming = coming_days(of, MONDAY, MONDAY)
    behind = Behind(MONDAY, (exercise("squat", 3, 1),))
    found = lay_rest(coming.days, coming.days[1], minutes=60, workouts=3, behind=[behind])
    friday = next(d for d in found.days if d.day == MONDAY + timedelta(days=4))
    assert any(e.name == "squat" for e in friday.exercises)


def test_days_to_come_follow_what_was_laid() -> None:
    """The next day with a session, over the end of a week whose last day was given up."""
    trains = TrainingTime((0, 3), time(18))
    of = Trainee(trains, Programme("p", "P", (Workout("A", (exercise("squat", 2, 1),)),)), MONDAY, 0, PLAIN_LIFE)
    week = week_of(of, MONDAY, MONDAY, (LaidDay(MONDAY),))
    assert week is not None
    life = with_week(Life(), MONDAY, week, today=MONDAY)
    assert next_day(life, trains, MONDAY) == MONDAY + timedelta(days=7)
    assert next_day(PLAIN_LIFE, trains, MONDAY) == MONDAY + timedelta(days=3)
