"""Sets told with what went on beside them: a unit gone back to, racks swapped, a range that was left, others spoken of.

Common practice, no source: how people in a gym put it, with near ones that tell something else.
"""

import pytest

from tests.notation.plans import read, rows

FIRST = "Bench Press#1 60x6"
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...] = (
    # typed, done before, stored
    ("bench 60kg x5, back to pounds 132lb x5", (), ("Bench Press#1 60x5", "Bench Press#2 132lbx5")),
    ("bench 132lb x5, swapped racks so 60kg x5", (), ("Bench Press#1 132lbx5", "Bench Press#2 60x5")),
    ("bench 60x5, changed shoes, 60x5", (), ("Bench Press#1 60x5", "Bench Press#2 60x5")),
    ("60x6 then twice for 5", (), ("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x5")),
    ("60 for 6 and after that twice for 5", (), ("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x5")),
    ("60x6, then rested twice as long", (), ("Bench Press#1 60x6",)),
    ("5 reps with 60, prob 2-3 left", (FIRST,), ("Bench Press#2 60x5 rir 2.5",)),
    ("did 5 with 60, prolly 2-3 in the tank", (FIRST,), ("Bench Press#2 60x5 rir 2.5",)),
    ("60x5, lads won 2-1", (FIRST,), ("Bench Press#2 60x5",)),
    ("got stuck halfway on the 6th at 60", (FIRST,), ("Bench Press#2 60x5 rir 0",)),
    ("60, stalled halfway up on the 6th", (FIRST,), ("Bench Press#2 60x5 rir 0",)),
    ("60x5, one more of those to come", (), ("Bench Press#1 60x5",)),
    ("60x5. one more of those left", (), ("Bench Press#1 60x5",)),
    ("60x5, one more of those", (), ("Bench Press#1 60x5", "Bench Press#2 60x5")),
    ("5 reps at a hundred and fifty two left in the tank, that was deadlifts", (), ("Deadlift#1 150x5 rir 2",)),
    ("all my strength left me at the cake counter so bench sixty for five", (FIRST,), ("Bench Press#2 60x5",)),
    ("congratulations to you both! 60 for 5", (), ("Bench Press#1 60x5",)),
    ("my mum rang and says hi bench sixty for five", (), ("Bench Press#1 60x5",)),
    ("always forget my towel bench sixty for five", (), ("Bench Press#1 60x5",)),
    ("i never felt it coming sixty for five", (FIRST,), ("Bench Press#2 60x5",)),
    ("if i had slept sixty for five", (FIRST,), ()),
    ("my mum never liked gyms sixty for five", (FIRST,), ()),
    ("my mum does bench sixty for five", (), ()),
    ("last week i felt great bench sixty for five", (), ()),
    ("60x5, train stuck halfway in a tunnel", (FIRST,), ("Bench Press#2 60x5",)),
)


@pytest.mark.parametrize(("typed", "done", "stored"), SAID)
def test_sets_with_what_went_on_beside_them(typed: str, done: tuple[str, ...], stored: tuple[str, ...]) -> None:
    """Every set is kept, none twice, and nothing is asked."""
    reading = read(typed, *done)
    assert reading.ask is None
    assert reading.performed == rows(*stored)


@pytest.mark.parametrize(
    "typed", ["second set of bench shouldve been 5 not 6", "set 2 shouldve been 5", "shouldnt be 6, it was 5"]
)
def test_what_should_have_been_is_no_shoulder(typed: str) -> None:
    """A word of a correction names no part of the body."""
    assert read(typed, FIRST, "Bench Press#2 60x6").pain is None


def test_a_shoulder_typed_in_haste_is_one() -> None:
    """Near ones of those words are heard still."""
    for typed in ("my shouldr hurts", "my shuolder hurts"):
        pain = read(typed, FIRST).pain
        assert pain is not None
        assert pain.where == "shoulder"
