"""Sets in everyday words, and the words that bind two exercises, as they are told by people who count aloud.

Each row is a class of wordings: a count of lifts, the repetition that was reached, a sum of even sets, a load that got
somebody so many, and what only says which sets they were. The last table holds near ones that tell something else.
"""

import pytest

from tests.notation.plans import read, rows

FIRST = "Bench Press#1 60x6"
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...] = (
    # typed, done before, stored
    ("knocked off five at sixty", (), ("Bench Press#1 60x5",)),
    ("polished off five at sixty", (), ("Bench Press#1 60x5",)),
    ("five lots of sixty", (), ("Bench Press#1 60x5",)),
    ("5 goes at 60", (), ("Bench Press#1 60x5",)),
    ("5 presses with 60", (), ("Bench Press#1 60x5",)),
    ("9 rows done at 50", (), ("Barbell Row#1 50x9",)),
    ("ground out the 5th at 60", (), ("Bench Press#1 60x5",)),
    ("reached the fifth at 60", (), ("Bench Press#1 60x5",)),
    ("pushed sixty off my chest five times", (), ("Bench Press#1 60x5",)),
    ("60 loaded, five in the books", (), ("Bench Press#1 60x5",)),
    ("five reps, 60 on there", (), ("Bench Press#1 60x5",)),
    ("60 kg got me 5, then with full rest 55 kg got me 6", (), ("Bench Press#1 60x5", "Bench Press#2 55x6")),
    ("one less: 5 at 60", (FIRST,), ("Bench Press#2 60x5",)),
    ("five at 60, one fewer than the first", (FIRST,), ("Bench Press#2 60x5",)),
    ("repeated the weight, reps fell to 5", (FIRST,), ("Bench Press#2 60x5",)),
    ("5 was the count for set two, weight as before", (FIRST,), ("Bench Press#2 60x5",)),
    ("five reps on this one. 60 as planned", (), ("Bench Press#1 60x5",)),
    ("15 reps in three even sets, 60kg on bench", (),
     ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5")),
    ("16 reps over three sets at 60: 6, 5, 5", (), ("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x5")),
    ("3 equal sets of row: 50kg x 9", (), ("Barbell Row#1 50x9", "Barbell Row#2 50x9", "Barbell Row#3 50x9")),
    ("trio of fives at sixty on the bench", (), ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5")),
    ("bench → 60x5, row → 50x9", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
    ("bench 60x5, row 50x9, both first sets", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
    ("bench 60 for 5 and again row 50 for 9", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
    ("bench 60x5\nmoved to the row as the bench was busy, 50x9", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
    ("two sets to report, bench 60 for 5 and row 50 for 9", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
)  # fmt: skip
OTHERWISE: tuple[tuple[str, tuple[str, ...], int], ...] = (
    # typed, done before, how many sets
    ("60x5, both sets", (), 2),
    ("bench 60x5, 60x5 and again", (), 3),
    ("did the 5th set of bench at 60", (), 0),
    ("next set I'll try 57.5 for 5", (), 0),
    ("60x5, rest skipped", (), 1),
    ("3 lots of 5 at 60", (), 3),
)


@pytest.mark.parametrize(("typed", "done", "stored"), SAID, ids=[s[0] for s in SAID])
def test_said(typed: str, done: tuple[str, ...], stored: tuple[str, ...]) -> None:
    """Such a set is stored as it would be in plain words."""
    reading = read(typed, *done)
    assert (reading.ask, reading.replaces, reading.pain) == (None, (), None)
    assert reading.performed == rows(*stored)


@pytest.mark.parametrize(("typed", "done", "count"), OTHERWISE, ids=[o[0] for o in OTHERWISE])
def test_otherwise(typed: str, done: tuple[str, ...], count: int) -> None:
    """Near words that tell of more, fewer or later sets keep their meaning."""
    assert len(read(typed, *done).performed) == count
