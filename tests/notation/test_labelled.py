"""A list of repetitions and its load told as on a form, in either order and with any mark between; common practice."""

from decimal import Decimal
from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, sets

PLAN = (PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",)),)
LISTS = ("10 9 8", "10, 9, 8", "10/9/8", "10,9,8", "10 then 9 then 8")
BEHIND = (
    ": load 90",
    ": with 90",
    ": 90kg",
    " - at 90",
    " - 90kg",
    " - weight 90kg",
    ", load: 90",
    " (90kg)",
    ". all at 90",
)
BEFORE = (
    "90kg. reps: ",
    "all at 90 reps: ",
    "3 sets @90 reps: ",
    "weight 90, reps: ",
    "load: 90 reps: ",
    "90kg\nreps: ",
    "weight: 90kg. reps: ",
    "weight 90kg: ",
)


@pytest.mark.parametrize(
    "text",
    [
        *(name + told + load for name, told, load in product(("", "thrusts: "), LISTS, BEHIND)),
        *(name + load + told for name, told, load in product(("", "hip thrusts - "), LISTS, BEFORE)),
    ],
)
def test_a_list_and_its_load(text: str) -> None:
    """Three sets at 90."""
    reading = read_message(Request(text, Unit.KG, NOW, PLAN))
    assert reading.ask is None
    told = [(p.set, p.load.amount if p.load else None, p.reps) for p in reading.performed]
    assert told == [(n, Decimal(90), reps) for n, reps in ((1, 10), (2, 9), (3, 8))]
    assert reading.day is None
