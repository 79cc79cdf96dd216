"""Words on each repetition, on the whole load and on the exercise before, which were heard as all sets or as none.

Common practice, no source.
"""

import pytest

from tests.notation.plans import read

BENCH = "Bench Press"


@pytest.mark.parametrize(
    "text",
    [
        "60x5, elbows tucked the whole way",
        "60 x five, proper squeeze at the top each time",
        "60kg all told for 5",
        "60 all in for 5",
        "60kg all up x5",
    ],
)
def test_what_is_said_of_each_repetition_or_of_the_load_is_said_of_one_set(text: str) -> None:
    reading = read(text)
    assert reading.ask is None
    assert [(r.exercise, r.set, r.reps) for r in reading.performed] == [(BENCH, 1, 5)]


@pytest.mark.parametrize("text", ["60x5 all sets", "60x5 for all of them", "60x5 each time", "60x5, all three"])
def test_what_is_said_of_all_sets_is_still_said_of_them(text: str) -> None:
    assert len(read(text).performed) > 1


def test_a_list_that_goes_on_with_and_then_for_keeps_its_last_number() -> None:
    assert [r.reps for r in read("sixty for five and then for four").performed] == [5, 4]
