"""A repetition that the client chose not to try says nothing of failure; one that would not come does.

The words are those of everyday talk; common practice, no source.
"""

from decimal import Decimal

import pytest

from tests.notation.plans import read

DONE = "Bench Press#1 60x5"

UNTRIED = [
    "60x4, back was rounding so no fifth",
    "60x4 bar path was all over so no 5th",
    "60 for 4, elbows flaring so didnt go for 5",
    "60x4, form was slipping away a touch so i left the fifth",
    "60x4. shoulders were creeping up to my ears, so no fifth.",
    "60x4, hips lifting off the bench so no fifth rep",
    "60 for 4 wrists folding back so didnt push for the fifth",
    "60x4, elbow go too wide so fifth rep no",
    "60x4 and skipped the fifth",
    "60x4, didnt chase a fifth",
    "60x4, speed was ugly so i passed on the 5th",
    "sixty for four my hips kept shifting so no fifth",
    "60x4, bar was drifting so there was no fifth",
]


@pytest.mark.parametrize("text", UNTRIED)
def test_a_repetition_that_was_not_tried_is_no_failure(text: str) -> None:
    reading = read(text, DONE, current="Bench Press")
    assert reading.ask is None
    assert [(row.set, row.reps, row.rir) for row in reading.performed] == [(2, 4, None)]
    assert reading.skipped == ()
    assert not reading.finished


FAILED = [
    "60x4, grip went so no fifth",
    "60x4 nothing left so no 5th",
    "60x4, failed the fifth",
    "60x4, tried a fifth, no chance",
    "60x4, grip gave out so no fifth",
    "60x4, the fifth died halfway",
]


@pytest.mark.parametrize("text", FAILED)
def test_a_repetition_that_would_not_come_is_one(text: str) -> None:
    reading = read(text, DONE, current="Bench Press")
    assert reading.ask is None
    assert [(row.set, row.reps, row.rir) for row in reading.performed] == [(2, 4, Decimal(0))]


def test_the_sides_are_none() -> None:
    """`left 10` behind nine on the right is a side."""
    reading = read("R9 L10", current="Split Squat")
    assert sorted(row.reps for row in reading.performed) == [9, 10]


def test_no_third_set_is_none_of_the_second() -> None:
    reading = read("60x5, rack got busy so no third set", DONE, current="Bench Press")
    assert [(row.set, row.reps, row.rir) for row in reading.performed] == [(2, 5, None)]
