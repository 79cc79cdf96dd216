"""What was done less of, or else, and not how many; lists put right inside; common practice, no source."""

import pytest

from tests.notation.plans import read, rows

ASKED = [
    ("deads as planned bar the last rep of the third set", "Deadlift"),
    ("deads all as planned except the last rep", "Deadlift"),
    ("everything bar the last rep of the last set", "Deadlift"),
    ("140x5, cut the last one short", "Deadlift"),
    ("60x5, 5 and in the last i stopped before the end", "Bench Press"),
    ("60x5, 5, and the third is 4 if youre strict, 5 if youre kind", "Bench Press"),
    ("went up a bit for the second set, 5 reps", "Bench Press"),
    ("bit more weight, 5", "Bench Press"),
    ("added a bit, 5 reps", "Bench Press"),
    ("upped it a bit, 5", "Bench Press"),
]


@pytest.mark.parametrize(("text", "current"), ASKED, ids=[text for text, _ in ASKED])
def test_what_is_not_told_is_asked_for(text: str, current: str) -> None:
    reading = read(text, current=current)
    assert reading.ask is not None
    assert reading.skipped == ()


KEPT = [
    ("rows 50: 10, 9 no wait 8, 8", ["Barbell Row#1 50x10", "Barbell Row#2 50x8", "Barbell Row#3 50x8"]),
    (
        "rows 50 10 then 9 no tell a lie 8 and then 8",
        ["Barbell Row#1 50x10", "Barbell Row#2 50x8", "Barbell Row#3 50x8"],
    ),
    ("rows 50: 10, 9 no wait 50x8, 8", ["Barbell Row#1 50x10", "Barbell Row#2 50x8", "Barbell Row#3 50x8"]),
    ("rows 50x10, 45x9 no wait 50x9, 8", ["Barbell Row#1 50x10", "Barbell Row#2 50x9", "Barbell Row#3 50x8"]),
    ("rows 50x10 no sorry 9, 8, 8", ["Barbell Row#1 50x9", "Barbell Row#2 50x8", "Barbell Row#3 50x8"]),
    ("went up a bit to 62.5, 5", ["Bench Press#1 62.5x5"]),
    ("60x5 went up a bit", ["Bench Press#1 60x5"]),
    ("60x5, the last rep was slow", ["Bench Press#1 60x5"]),
    ("60x5 did you see that one", ["Bench Press#1 60x5"]),
    ("did u get the 60x5 from before", []),
    ("have you got the 60x5", []),
]


@pytest.mark.parametrize(("text", "expected"), KEPT, ids=[text for text, _ in KEPT])
def test_what_is_told_is_kept(text: str, expected: list[str]) -> None:
    reading = read(text, current="Bench Press")
    assert (reading.performed, reading.ask) == (rows(*expected), None)


TOO = [
    ("second set identical. third also", ["Bench Press#2 60x5", "Bench Press#3 60x5"]),
    ("second the same and the third as well", ["Bench Press#2 60x5", "Bench Press#3 60x5"]),
    ("set 2 same, set 3 too", ["Bench Press#2 60x5", "Bench Press#3 60x5"]),
    ("second the same, third too hard", ["Bench Press#2 60x5"]),
]


@pytest.mark.parametrize(("text", "expected"), TOO, ids=[text for text, _ in TOO])
def test_a_set_that_was_so_too_is_the_same(text: str, expected: list[str]) -> None:
    assert read(text, "Bench Press#1 60x5", current="Bench Press").performed == rows(*expected)
