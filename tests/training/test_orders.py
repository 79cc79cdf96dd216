"""A coach's standing swap in the weeks of a programme: it follows the week as the programme's own exercise would."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

from bot.training.facts import ExerciseSwapped
from bot.training.orders import NO_ORDERS, follow, ordered
from bot.training.people import Gym, WeekChange
from bot.training.samples import sample_programme
from bot.training.swap import SwapAsked, swaps
from bot.training.swap_hand import AtHand
from bot.training.units import Unit
from bot.training.weeks import changed

DAY = date(2027, 1, 11)
WORKOUT = sample_programme().workouts[0]
SQUAT = WORKOUT.exercises[0]
PRESS = swaps(SwapAsked(SQUAT, AtHand(Gym.usual(Unit.KG)), DAY, WORKOUT.exercises, preferred=("Leg press",)))[0].planned
ORDERS = follow(NO_ORDERS, ExerciseSwapped("c", SQUAT.name, PRESS), today=DAY)


def test_a_swapped_exercise_stands_where_the_programmes_own_stood() -> None:
    """With its pair and priority; the rest stays."""
    exercises = ordered(WORKOUT, ORDERS, day=DAY).exercises
    assert [e.name for e in exercises] == ["Leg press", *(e.name for e in WORKOUT.exercises[1:])]
    assert (exercises[0].sets, exercises[0].priority) == (PRESS.sets, SQUAT.priority)


def test_in_a_week_of_fewer_sets_and_lighter_loads_it_has_these_too() -> None:
    """A change of the week is made on the programme's own; what took its place has as many sets, the same share of the
    load, and the same effort."""
    change = WeekChange(weeks=(4,), fewer_sets=1, load_percent=Decimal(80), rir=Decimal(4))
    light = replace(WORKOUT, exercises=tuple(changed(e, change) for e in WORKOUT.exercises))
    swapped = ordered(light, ORDERS, day=DAY).exercises[0]
    assert (len(swapped.sets), swapped.load_percent) == (2, Decimal(80))
    assert {s.rir for s in swapped.sets} == {Decimal(4)}


def test_taken_back_the_programmes_own_is_there() -> None:
    """As if it had never been swapped."""
    back = follow(ORDERS, ExerciseSwapped("c", SQUAT.name, None), today=DAY)
    assert ordered(WORKOUT, back, day=DAY) == WORKOUT
