"""Wordings of clients in classes, each with the sets that it stores: corrections, skips, body weight, halves, efforts.

Every row is made up; none is from the labelled corpora. A row that should be asked about has no stored sets.
"""

import pytest

from tests.notation.plans import read, rows

DONE = ("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x5")
MINIS = ("Triceps Pushdown#3 25x14", *("Triceps Pushdown#3 25x4 mini",) * 3)


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("the second set of bench was 4", "Bench Press#2 60x4"),
        ("third bench set was 62.5", "Bench Press#3 62.5x5"),
        ("second bench was actually 4", "Bench Press#2 60x4"),
        ("bench 2 was 4", "Bench Press#2 60x4"),
        ("make the middle one 4", "Bench Press#2 60x4"),
        ("make set 2 4", "Bench Press#2 60x4"),
        ("change the last bench set to 4", "Bench Press#3 60x4"),
        ("that last one i only got 4", "Bench Press#3 60x4"),
        ("the 5 should be 4", "Bench Press#3 60x4"),
        ("change 5 to 4", "Bench Press#3 60x4"),
        ("4 instead of 5", "Bench Press#3 60x4"),
        ("4*", "Bench Press#3 60x4"),
        ("last set bench 4 reps my mistake", "Bench Press#3 60x4"),
        ("typo. 62.5", "Bench Press#3 62.5x5"),
        ("rpe 9 on the last set", "Bench Press#3 60x5 rir 1"),
    ],
)
def test_one_set_is_corrected(text: str, stored: str) -> None:
    """A correction names its set in many ways; it replaces that set and no other."""
    reading = read(text, *DONE, current="Bench Press")
    assert reading.ask is None
    assert reading.performed == rows(stored)
    assert reading.replaces == tuple((p.exercise, p.set) for p in rows(stored))


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("first two sets were 62.5", ("Bench Press#1 62.5x6", "Bench Press#2 62.5x5")),
        ("sets 1 and 3 were 62.5", ("Bench Press#1 62.5x6", "Bench Press#3 62.5x5")),
        ("bench was 5 5 4", ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x4")),
        (
            "the three bench sets were rpe 7, 8 and 9",
            ("Bench Press#1 60x6 rir 3", "Bench Press#2 60x5 rir 2", "Bench Press#3 60x5 rir 1"),
        ),
    ],
)
def test_several_sets_are_corrected(text: str, stored: tuple[str, ...]) -> None:
    """A correction of several sets replaces each of them."""
    reading = read(text, *DONE, current="Bench Press")
    assert (reading.ask, reading.performed) == (None, rows(*stored))


def test_minis_are_told_again() -> None:
    """All minis of a set told again take the place of those stored; the work set stays."""
    reading = read("minis were 5 4 3", *MINIS, current="Triceps Pushdown")
    minis = tuple(f"Triceps Pushdown#3 25x{n} mini" for n in (5, 4, 3))
    assert reading.performed == rows("Triceps Pushdown#3 25x14", *minis)


def test_sides_swapped() -> None:
    """`other way round` with both sides corrects the last set, one side each."""
    done = ("Split Squat#1 16x10 left", "Split Squat#1 16x9 right")
    reading = read("got them backwards. L9 R10", *done, current="Split Squat")
    assert reading.performed == rows("Split Squat#1 16x9 left", "Split Squat#1 16x10 right")
    assert reading.replaces == (("Split Squat", 1),)


@pytest.mark.parametrize(
    "text",
    [
        "that last set isnt right",
        "bench 60x5, no wait that was the row",
        "sometime last week: bench 60x5",
        "no bench free so i did bench 60x5",
        "1, 2 or 3 of them, 60x5 not all 5s, 60x5 60x5",
    ],
)
def test_what_is_doubtful_is_asked_about(text: str) -> None:
    """A set called wrong with no value, another exercise's, a day that may be several, a substitute: asked about."""
    reading = read(text, *DONE, current="Bench Press")
    assert reading.ask is not None
    assert reading.performed == ()


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("Bench. 60. 6 5 5.", ("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x5")),
        ("bench 60... 6... 5", ("Bench Press#1 60x6", "Bench Press#2 60x5")),
        ("five reps. sixty.", ("Bench Press#1 60x5",)),
        ("60 on bench got 6 and 5", ("Bench Press#1 60x6", "Bench Press#2 60x5")),
        ("hit 60 on bench for 6, 5", ("Bench Press#1 60x6", "Bench Press#2 60x5")),
        ("6 and 5 on bench at 60", ("Bench Press#1 60x6", "Bench Press#2 60x5")),
        ("60x6 60x5, all two left in the tank", ("Bench Press#1 60x6 rir 2", "Bench Press#2 60x5 rir 2")),
        ("60x5 with to in the tank", ("Bench Press#1 60x5 rir 2",)),
        ("60x5, one maybe two left", ("Bench Press#1 60x5 rir 1.5",)),
        ("60x5 RIR: 2-3", ("Bench Press#1 60x5 rir 2.5",)),
        ("60x5 x2... x3! did three of them", ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5")),
        ("60: 6... 5! 5. counted wrong", ("Bench Press#1 60x5",)),
        ("sixty for... no. 62.5 for 5.", ("Bench Press#1 62.5x5",)),
        ("bench 60 for six no five", ("Bench Press#1 60x5",)),
        ("chins bodyweight 8/7/6", ("Chin-Up#1 0x8", "Chin-Up#2 0x7", "Chin-Up#3 0x6")),
        ("6 chins unassisted", ("Chin-Up#1 0x6",)),
        ("im 72kg bw now. chins x7", ("Chin-Up#1 0x7",)),
        ("chins 7 with a 15kg band", ("Chin-Up#1 -15x7",)),
        (
            "split squat L10 R9, the left was always the weak one",
            ("Split Squat#1 16x10 left", "Split Squat#1 16x9 right"),
        ),
        ("row 50x9. dog outside the window 10/10", ("Barbell Row#1 50x9",)),
    ],
)
def test_reports_in_many_hands(text: str, stored: tuple[str, ...]) -> None:
    """Halves in two sentences, names inside their sets, efforts as they are heard, slips of the tongue, body weight."""
    reading = read(text)
    assert (reading.ask, reading.performed) == (None, rows(*stored))


@pytest.mark.parametrize(
    ("text", "skipped"),
    [
        ("calves", ()),
        ("row x", ("Barbell Row",)),
        ("plank: nope", ("Plank",)),
        ("neither plank nor row today", ("Plank", "Barbell Row")),
        ("plank + row skipped", ("Barbell Row", "Plank")),
        ("row is broken, skipping", ("Barbell Row",)),
        ("skip the last exercise", ("Farmer Carry",)),
        ("60x5 on bench no cap", ()),
    ],
)
def test_skips(text: str, skipped: tuple[str, ...]) -> None:
    """Crosses, a `no` behind a name, lists and a bare `skipping` give up what they name."""
    assert sorted(read(text).skipped) == sorted(skipped)


@pytest.mark.parametrize("dash", [" - no, ", " – no, ", " -- no, ", ", no, ", " no wait ", ". no, ", " - no sorry, "])
def test_a_set_is_told_again_behind_a_dash(dash: str) -> None:
    """`60x5 - no, 62.5x5` is one set."""
    reading = read(f"60x5{dash}62.5x5", current="Bench Press")
    assert (reading.ask, reading.performed) == (None, rows("Bench Press#1 62.5x5"))


@pytest.mark.parametrize(
    ("text", "asks"),
    [
        ("one bench set was 4 not 5, don't know which one", True),
        ("bench set was 4, forget which", True),
        ("bench set 2 was 4, which is fine", False),
    ],
)
def test_a_set_that_nobody_remembers_is_asked_about(text: str, asks: bool) -> None:
    """Which set it was is not guessed where the client says that it is not known."""
    reading = read(text, *DONE, current="Bench Press")
    assert (reading.ask is not None) is asks
    assert bool(reading.replaces) is not asks
