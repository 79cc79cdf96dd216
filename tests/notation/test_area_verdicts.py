"""A score out of ten that tells what the client thinks of an exercise, and the scores and sides beside it that don't.

The words are those of everyday talk; common practice, no source.
"""

import pytest

from tests.notation.plans import read

DONE = ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5")

VERDICTS = [
    "bench murdered me. 10/10 would die again",
    "10/10 would suffer again",
    "10/10 would do it all again",
    "10/10, would not recommend",
    "bench = 11/10 misery, zero regrets",
    "bench took my soul. ten out of ten from me",
    "bench ended me lol, 9/10 only cos nobody brought a stretcher",
    "12/10 torture",
    "bench destroyed me, ten out of ten",
    "10/10 pure evil",
    "9 out of 10 experience",
    "bench was 10/10 would cry twice",
    "8 out of 10, no notes",
    "bench ended me, ten points from ten",
]


@pytest.mark.parametrize("text", VERDICTS)
def test_a_verdict_stores_nothing_and_asks_nothing(text: str) -> None:
    reading = read(text, *DONE)
    assert reading.performed == ()
    assert reading.ask is None
    assert not reading.finished
    assert reading.pain is None


REPORTED = [
    ("split squats 16s 10/10", {"Split Squat"}),
    ("split squats 16s 10/10, would have done more", {"Split Squat"}),
    ("row 50x10, 10/10 would die again", {"Barbell Row"}),
    ("row 50x10 killed me. ten out of ten", {"Barbell Row"}),
    ("row 50 10", {"Barbell Row"}),
]


@pytest.mark.parametrize(("text", "stored"), REPORTED)
def test_sets_beside_it_are_kept(text: str, stored: set[str]) -> None:
    reading = read(text, *DONE)
    assert reading.ask is None
    assert len({row.set for row in reading.performed}) == 1
    assert {row.exercise for row in reading.performed} == stored


def test_a_score_of_a_hurt_is_its_score() -> None:
    reading = read("bench murdered my left shoulder. 7/10 and not the fun kind", *DONE)
    assert reading.performed == ()
    assert reading.pain is not None
    assert (reading.pain.where, reading.pain.score) == ("shoulder", 7)
