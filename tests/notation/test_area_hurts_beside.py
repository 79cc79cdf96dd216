"""Pain told beside a report takes nothing from it, and the report takes nothing from the pain.

Each row is a hurt, a report, what is done before and what is stored: in either order, with every sign or word between
the two, the sets are those of the report alone and the place that of the hurt alone. What is meant is common practice,
no source.
"""

from itertools import product

import pytest

from bot.notation.hurt_apart import hurts_apart
from bot.notation.pain import read_pain, told_pain
from tests.notation.plans import read, rows

BETWEEN = (". ", ", ", " and ", " but ", " - ", "\n")
HURTS = (
    ("my lower back hurts", "lower back", False),
    ("left elbow stung", "elbow", False),
    ("i nearly fainted", None, True),
    ("my pee is like cola", None, True),
)
DONE = ("Bench Press#1 60x5",)
REPORTS: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...] = (
    # typed, done before, stored
    ("scrap that last one, it was a warm-up", DONE, ()),
    ("set 1 was 4 not 5", DONE, ("Bench Press#1 60x4",)),
    ("bench 60x5", (), ("Bench Press#1 60x5",)),
    ("failed the 6th on bench", (), ("Bench Press#1 60x5 rir 0",)),
)
NO_SCORE = (
    "knee hurts, the drop was 9 not 10",
    "felt a twinge in my hip and i wrote 11 but it was 10",
    "elbow stung, maybe one in the tank",
    "knee hurts, train is at ten past seven",
    "shoulder hurts, need to go by ten to six",
    "wrist stung and plank was 1:05",
    "shoulder is sore, left leg 9, right only 7",
    "wrist hurts, chins with a 5 on the belt",
)
SCORE = (
    ("knee hurts, about a 4", 4),
    ("knee hurt on the last set, about a 4", 4),
    ("knees hurt, right was 7, left was 4", 7),
    ("foot hurts, about a five and it aches", 5),
    ("elbow pain was 3 on the last set", 3),
)
NEVER_LOST = (
    ("100x8, nothing left and low back pinched", "lower back", False),
    ("stuck at work, will train later and left knee hurts", "knee", False),
    ("somebody has the bar, but left knee is grumbling", "knee", False),
    ("rows, 52 total for 8 - nearly fainted", None, True),
    ("my heel hurts a little - worst headache ever", "head", True),
    ("i passed out - right hip hurts rolling over in bed", None, True),
    ("my pee is like cola and ok i'm finished", None, True),
    ("monday: bench 60x5, but chest tight", "chest", True),
)


@pytest.mark.parametrize(("hurt", "report"), tuple(product(HURTS, REPORTS)), ids=lambda p: p[0])
def test_a_hurt_beside_a_report_changes_neither(
    hurt: tuple[str, str | None, bool], report: tuple[str, tuple[str, ...], tuple[str, ...]]
) -> None:
    typed, where, urgent = hurt
    told, done, stored = report
    for between in BETWEEN:
        reading = read(typed + between + told, *done)
        assert reading.ask is None, between
        assert reading.performed == rows(*stored), between
        assert bool(reading.replaces) is bool(done), between
        assert reading.pain is not None, between
        assert (reading.pain.where, reading.pain.urgent, reading.pain.score) == (where, urgent, None), between


@pytest.mark.parametrize("text", NO_SCORE)
def test_a_number_of_a_set_a_time_or_a_load_is_no_score(text: str) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.score is None


@pytest.mark.parametrize(("text", "score"), SCORE)
def test_a_score_stays_one(text: str, score: int) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.score == score


@pytest.mark.parametrize(("text", "where", "urgent"), NEVER_LOST)
def test_what_stands_beside_does_not_deny_it(text: str, where: str | None, urgent: bool) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert (pain.where, pain.urgent) == (where, urgent)


@pytest.mark.parametrize(
    "text", ["35 left 30 right, knee hurts", "one left. fingers are tingling", "nothing left, knee hurts"]
)
def test_the_side_of_a_set_or_what_is_left_is_no_side_of_a_hurt(text: str) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.side is None


@pytest.mark.parametrize(
    "text",
    ["knee hurts and has for 3 weeks", "60x5 and 65x5 hurt my knee", "my knee and 2 fingers hurt", "60x5 and 8x50"],
)
def test_what_is_one_stays_one(text: str) -> None:
    assert hurts_apart(text, read_pain(text).spans) == text
