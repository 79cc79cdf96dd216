"""Seconds beside a hold that only compare it or are a part of it, and holds of their own that stand like them.

The words are those of everyday talk; common practice, no source.
"""

import pytest

from tests.notation.plans import read

COMPARED = [
    ("plank 1:10!! beat my kid by 4 sec", 70),
    ("plank 50 sec, beat last week by 3 seconds", 50),
    ("plank 1:20!! thats 5 sec up on last week", 80),
    ("plank 55 sec, thats 5 sec more", 55),
    ("held the plank 1 min 8, my brother still has me by 10 sec", 68),
    ("plank 0:52, shook like a jelly for the last 5 secs", 52),
    ("plank 58 sec. the last 10 secs were hell", 58),
    ("Plank: 1 min 2 s. Chalk made about 6 s of difference, I'd say.", 62),
    ("plank 60 sec, 5 sec longer than monday", 60),
    ("plank 62 sec, 4 sec better than last time", 62),
    ("plank 47 seconds, 3 seconds short of my best", 47),
    ("plank 50 sec, my sister won by 12 seconds", 50),
    ("plank 65 sec. wobbled in the final 8 secs", 65),
    ("plank 55 sec, 2 sec pb", 55),
]


@pytest.mark.parametrize(("text", "seconds"), COMPARED)
def test_seconds_compared_are_no_hold(text: str, seconds: int) -> None:
    reading = read(text)
    assert reading.ask is None
    assert [(row.exercise, row.set, row.reps) for row in reading.performed] == [("Plank", 1, seconds)]


HELD = [
    ("plank 45 sec, 50 sec", [45, 50]),
    ("plank 45 sec, last 40 sec", [45, 40]),
    ("plank 1:10, 0:48!! kid beat me on the 2nd one", [70, 48]),
    ("plank 45 sec then 50 sec, better", [45, 50]),
    ("plank 50 sec, beat the kid", [50]),
    ("16s x 8 on the split squats", [8]),
    ("plank first 50 secs second 40 secs", [50, 40]),
]


@pytest.mark.parametrize(("text", "seconds"), HELD)
def test_holds_are_kept(text: str, seconds: list[int]) -> None:
    reading = read(text)
    assert reading.ask is None
    assert [row.reps for row in reading.performed] == seconds
