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
