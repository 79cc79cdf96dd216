"""A list of repetitions, or the counts of two sides, and their load: in either order, with any mark between.

The wanted readings are those of a coach who knows the plan; common practice, no source.
"""

from decimal import Decimal
from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import PlannedExercise
from bot.training.report import Side
from bot.training.units import Unit
from tests.notation.plans import NOW, SPLIT, sets

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


SIDES = (
    "L10 R9",
    "left 10 right 9",
    "10/9",
    "10 left 9 right",
    "10L 9R",
    "left: 10, right: 9",
    "left leg 10, right leg 9",
)
LOAD = ("16s", "16kg", "with the 16s", "@16", "16 each hand", "using 16kg", "32 total")


@pytest.mark.parametrize(
    "text",
    ["".join(parts) for parts in product(("", "split squat "), SIDES, (" ", ", ", " - "), LOAD)],
)
def test_two_sides_and_their_load(text: str) -> None:
    """One set, left and right, no day."""
    reading = read_message(Request(text, Unit.KG, NOW, (SPLIT,)))
    assert reading.ask is None
    told = [(p.set, p.load.amount if p.load else None, p.reps, p.side) for p in reading.performed]
    assert told == [(1, Decimal(16), 10, Side.LEFT), (1, Decimal(16), 9, Side.RIGHT)]
    assert reading.day is None
