"""How hard a set was, said in a sentence of its own: `and that was about an eight`, `felt like a 9`, `i'd say an 8`.

Repetitions told in the same words (`first was a 10, second a 9`) stay repetitions. Common practice, no source.
"""

from decimal import Decimal
from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, sets

PLAN = (PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",)),)
SETS = ("90x10", "hip thrust ninety for ten", "10 at 90", "thrusts 90kg 10 reps", "90 10")
JUDGED = (
    " and that was about an eight",
    ", that was a 8",
    " felt like an 8",
    ", probably an 8",
    ". call it an 8",
    ", i'd say an 8",
    " was maybe an 8 out of 10",
    " effort 8",
    ", 8ish effort",
    ". i'd give that an 8",
    ". that felt about 8",
    " felt 8",
    ", 8/10 effort",
    ", so an 8",
    " thats an eight for me",
    " at about an eight",
)
RESERVE = (
    (1, ("1 left", "just one left", "one more left", "maybe one more left", "prob 1 more", "left one in the tank")),
    (1, ("had another one in me", "one rep shy of failure", "leaving one in the tank", "1 rep in reserve", "rir1")),
    (2, ("two left", "about 2 left", "probably 2 more", "left two in the tank", "a couple left", "with 2 to spare")),
    (2, ("rated 8", "rpe of 8", "8/10 effort", "intensity 8", "2 reps shy of failure", "could have done two more")),
    ("1.5", ("rpe 8-9", "between 8 and 9 rpe", "1 or 2 left", "one maybe two left", "rpe 8,5")),
    (0, ("to failure", "failed the 11th", "couldn't have done another", "zero in the tank", "no reps left")),
)
COUNTED = (
    "first one was a 10, the next a 9, then an 8",
    "90: first was a 10, second was about a 9, third just an 8",
    "90 for a 10, a 9 and an 8",
)


@pytest.mark.parametrize(("told", "judged"), list(product(SETS, JUDGED)))
def test_a_number_behind_a_set_that_judges_it_is_an_effort(told: str, judged: str) -> None:
    """One set, ten less what was said in reserve."""
    reading = read_message(Request(told + judged, Unit.KG, NOW, PLAN))
    assert reading.ask is None
    assert [(p.set, p.reps, p.rir) for p in reading.performed] == [(1, 10, Decimal(2))], reading.performed


@pytest.mark.parametrize("text", COUNTED)
def test_which_set_it_was_makes_it_a_count(text: str) -> None:
    """Three sets, no effort."""
    reading = read_message(Request(text, Unit.KG, NOW, PLAN))
    assert reading.ask is None
    assert [(p.set, p.reps, p.rir) for p in reading.performed] == [(1, 10, None), (2, 9, None), (3, 8, None)]


@pytest.mark.parametrize(
    ("text", "rir"),
    [
        (told + link + words, rir)
        for told, link in product(("90x10", "90 for 10", "thrusts 90kg 10 reps"), (" ", ", ", ". ", " - "))
        for rir, said in RESERVE
        for words in said
        if not told.endswith("reps") or (words != "one maybe two left" and not words.startswith("left "))
    ],
)
def test_what_was_left_in_reserve(text: str, rir: int | str) -> None:
    """One set, with so many in reserve."""
    reading = read_message(Request(text, Unit.KG, NOW, PLAN))
    assert reading.ask is None
    assert [(p.set, p.reps, p.rir) for p in reading.performed] == [(1, 10, Decimal(rir))], reading.performed
