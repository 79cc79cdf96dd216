"""Remarks joined to sets by `so`, `but`, `and`, a dash or a laugh: the set beside is a new one, no more.

What was (`that was easy so ...`) is how a set went, and puts none right. By construction: remarks, joins and sets, with
a set kept before. Common practice, no source.
"""

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import SetKey
from bot.training.units import Unit
from tests.notation.plans import NOW, row, rows, sets

THRUST = PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",))
SPLIT = PlannedExercise("Split Squat", sets("16", 8, 10), load_style=LoadStyle.PER_HAND, sides=2, aliases=("splits",))
RAISE = PlannedExercise("Lateral Raise", sets("8", 12, 15), load_style=LoadStyle.PER_HAND, aliases=("laterals",))
JUDGED = [
    "that was easy",
    "it was heavy",
    "that was way too light",
    "last set was easy",
    "the last one was hard",
    "first one was too light",
    "90 was too easy",
    "90 felt light",
    "the rack was taken",
    "i was tired today",
    "the kids were up all night",
    "my mate was watching",
    "no belt today",
    "i slept badly",
    "felt crap today",
    "grip was slipping",
    "music was on point",
    "you were right",
    "it is freezing in here",
]
JOINS = [" so went ", " so i did ", " but still ", " and then ", ". ", "\n"]
TOLD = [("95x8", "Hip Thrust#2 95x8"), ("95 for 8", "Hip Thrust#2 95x8"), ("8 reps", "Hip Thrust#2 90x8")]


def _read(text: str, *done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, (THRUST, SPLIT, RAISE), tuple(row(d) for d in done)))


@pytest.mark.parametrize("join", JOINS)
@pytest.mark.parametrize("remark", JUDGED)
def test_a_set_behind_a_remark_is_a_new_one(remark: str, join: str) -> None:
    """Nothing that is kept is put right, nothing is asked, and the set is kept."""
    for told, stored in TOLD:
        reading = _read(f"{remark}{join}{told}", "Hip Thrust#1 90x10")
        assert (reading.ask, reading.performed, reading.replaces) == (None, rows(stored), ()), (remark, join, told)
        assert (reading.skipped, reading.finished, reading.question) == ((), False, False)


@pytest.mark.parametrize("join", [" but ", " because ", " - ", ", ", " lol "])
@pytest.mark.parametrize("remark", ["the rack was taken", "i slept badly", "my mate was watching", "grip was slipping"])
def test_a_remark_behind_a_set_says_nothing_of_it(remark: str, join: str) -> None:
    """Why it went so, told behind it."""
    reading = _read(f"95x8{join}{remark}", "Hip Thrust#1 90x10")
    assert (reading.ask, reading.performed, reading.replaces) == (None, rows("Hip Thrust#2 95x8"), ())
    assert (reading.skipped, reading.finished) == ((), False)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("that was 95 not 90", ("Hip Thrust", 1)),
        ("that was only 8", ("Hip Thrust", 1)),
        ("it was actually 8", ("Hip Thrust", 1)),
        ("that was wrong, it was 8", ("Hip Thrust", 1)),
        ("that was meant to be 8", ("Hip Thrust", 1)),
        ("set 1 was 8", ("Hip Thrust", 1)),
    ],
)
def test_what_puts_right_still_does(text: str, key: SetKey) -> None:
    """A number right behind `was`, or words between that say how sure it is."""
    assert _read(text, "Hip Thrust#1 90x10").replaces == (key,)


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("16s splits 9, 9, 8", [f"Split Squat#{n} 16x{r}" for n, r in ((1, 9), (2, 9), (3, 8))]),
        ("18s splits 9 each, 9 each", ["Split Squat#1 18x9", "Split Squat#2 18x9"]),
        ("16kg splits 9 reps, 8 reps", ["Split Squat#1 16x9", "Split Squat#2 16x8"]),
        ("8s laterals 15, 14, 12", [f"Lateral Raise#{n} 8x{r}" for n, r in ((1, 15), (2, 14), (3, 12))]),
    ],
)
def test_a_load_before_the_name(text: str, stored: list[str]) -> None:
    """Its counts stand behind the name, parted by commas."""
    reading = _read(text)
    assert (reading.ask, reading.performed) == (None, rows(*stored))


@pytest.mark.parametrize(
    "word", ["shame", "lame", "crap", "cleaner", "longer", "slipping", "tame", "leaves", "impressed"]
)
def test_real_words_are_no_slips_for_commands(word: str) -> None:
    """`shame` is no `same`, `slipping` no `skipping`, `crap` no `scrap`, and `cleaner` no `clean, er`."""
    for text in (f"{word}. 95x8", f"95x8, felt {word} today", f"bar was {word} on that one. 95x8"):
        reading = _read(text, "Hip Thrust#1 90x10")
        assert (reading.ask, reading.performed, reading.replaces) == (None, rows("Hip Thrust#2 95x8"), ()), text
        assert not reading.skipped, text
