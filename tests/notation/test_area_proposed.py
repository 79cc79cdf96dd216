"""A step that is only proposed, a single before its load, a time put better: what was heard as something else before.

The sets and times are those of the words; common practice, no source.
"""

import pytest

from tests.notation.plans import read

BENCH = "Bench Press"
ONE = ((BENCH, 2, "60", 5),)

PROPOSED = [
    "60x5 bar speed was nice. bump it to 62.5 for set 3?",
    "60x5 moved well. put 65 on for set 3?",
    "60x5. stay at 60 for set 3?",
    "60x5. so next go up to 62.5 for the third?",
    "take 55 for set 3? it felt heavy. 60x5",
    "60x5. keep going or call it",
    "60x5. push on or stop there",
    "60x5. go heavier or same",
]


@pytest.mark.parametrize("text", PROPOSED)
def test_a_proposed_step_is_a_question_and_no_set(text: str) -> None:
    reading = read(text, "Bench Press#1 60x5", current=BENCH)
    assert reading.question
    assert reading.ask is None
    assert _rows(reading.performed) == ONE


TOLD = [
    ("went up to 62.5 for set 3, 5 reps?", ((BENCH, 3, "62.5", 5),)),
    ("single at 62.5", ((BENCH, 2, "62.5", 1),)),
    ("1 rep @ 62.5", ((BENCH, 2, "62.5", 1),)),
    ("62.5 for a single", ((BENCH, 2, "62.5", 1),)),
    ("top single @ 70", ((BENCH, 2, "70", 1),)),
    ("last warm up single @ 50", ((BENCH, None, "50", 1),)),
    ("warm up single 50", ((BENCH, None, "50", 1),)),
    ("some legend left the bar loaded w 6 plates, stripping it now", ()),
]


@pytest.mark.parametrize(("text", "rows"), TOLD)
def test_a_single_and_what_was_done_are_kept(text: str, rows: object) -> None:
    reading = read(text, "Bench Press#1 60x5", current=BENCH)
    assert reading.ask is None
    assert _rows(reading.performed) == rows


@pytest.mark.parametrize("text", ["1x60", "1@60"])
def test_one_before_the_planned_load_is_asked_about_with_one_reading(text: str) -> None:
    """It may be one set; the reading stands on one button, not on two alike."""
    ask = read(text, "Bench Press#1 60x5", current=BENCH).ask
    assert ask is not None
    assert len({choice.label for choice in ask.choices}) == len(ask.choices) == 1


MINUTES = [
    ("an hour and a bit is tight but ok, say 65 min", 65),
    ("i have an hour, say 50 min to be safe", 50),
    ("about an hour, well 50 minutes", 50),
    ("i have an hour, rested 5 min", 60),
    ("in fifty minutes comes my bus", 50),
    ("in 40 min starts the yoga class", 40),
]


@pytest.mark.parametrize(("text", "minutes"), MINUTES)
def test_the_time_that_was_said_last_counts(text: str, minutes: int) -> None:
    assert read(text).minutes == minutes


def _rows(performed: object) -> tuple[object, ...]:
    assert isinstance(performed, tuple)
    return tuple((p.exercise, p.set, f"{p.load.amount:f}", p.reps) for p in performed)
