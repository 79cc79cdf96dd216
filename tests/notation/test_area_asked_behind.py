"""A question behind a correction is heard, and the correction stays."""

import pytest

from tests.notation.plans import read, row

CORRECTIONS = (
    "set 1 was 5 reps actually",
    "sorry only 5 on that last one",
    "the bench was 5 not 6",
    "no, 5 reps",
)
QUESTIONS = ("is that ok?", "should i go up next week?", "does that matter?", "what should i do next?")


@pytest.mark.parametrize("question", QUESTIONS)
@pytest.mark.parametrize("correction", CORRECTIONS)
def test_a_question_behind_a_correction_is_heard(correction: str, question: str) -> None:
    """Behind a comma it is a sentence of its own."""
    reading = read(f"{correction}, {question}", "Bench Press#1 60x6")
    assert reading.performed == (row("Bench Press#1 60x5"),)
    assert reading.replaces
    assert reading.question
