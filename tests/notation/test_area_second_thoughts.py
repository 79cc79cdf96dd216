"""A count taken back in the same breath is one set; a lower count that is told beside it is the next one.

The words are those of everyday talk; common practice, no source.
"""

import pytest

from tests.notation.plans import read

DONE = "Bench Press#1 60x5"

TAKEN_BACK = [
    "60x5.. well 4 really, forgot to pause one",
    "60 5.. well 4 really",
    "60x5 - ok ok 4, cut the depth on one",
    "60x5, hmm 4 if im honest",
    "60 for 5, well 4 tbh",
    "60x5. honestly 4",
    "60x5, 4 if im honest",
    "60x5, eh 4, the last one was half",
    "60x5... nah 4, one was bounced",
    "60x5 um 4 really, spotter touched one",
    "60x5, 4 really",
    "60x5 - fine, 4, one was short",
    "60x5, well it was 4 to be honest",
]


@pytest.mark.parametrize("text", TAKEN_BACK)
def test_a_count_taken_back_is_one_set(text: str) -> None:
    reading = read(text, DONE, current="Bench Press")
    assert reading.ask is None
    assert [(row.set, row.reps) for row in reading.performed] == [(2, 4)]
    assert reading.replaces == ()


def test_a_count_of_each_side_is_taken_back() -> None:
    reading = read("16s 10 each.. hmm 9 each if im honest, fell off the box once lol", current="Split Squat")
    assert reading.ask is None
    assert [(row.set, row.reps) for row in reading.performed] == [(1, 9)]


TWO = [
    "60x5.. well, 4 on the next one, form went",
    "60x5, 4",
    "60x5 then 4, really tough",
    "60x5, ok then 60x4",
    "60x5, 60x4 really hard",
]


@pytest.mark.parametrize("text", TWO)
def test_two_sets_are_two(text: str) -> None:
    reading = read(text, DONE, current="Bench Press")
    assert reading.ask is None
    assert [(row.set, row.reps) for row in reading.performed] == [(2, 5), (3, 4)]
