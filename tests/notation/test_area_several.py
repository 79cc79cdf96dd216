"""Several exercises in one message: their names before, in or behind their sets, turned round, shared loads, totals.

The wanted readings are those of a coach who knows the plan; common practice, no source.
"""

from itertools import product

import pytest

from bot.notation.answer import AskKind
from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, row, rows, sets

PRESS = PlannedExercise("Overhead Press", sets("45", 5, 7, 4), aliases=("press",))
CHIN = PlannedExercise("Chin-Up", sets("0", 6, 8), aliases=("chins",), load_style=LoadStyle.BODYWEIGHT)
LATERAL = PlannedExercise("Lateral Raise", sets("14", 12, 15), aliases=("laterals",), load_style=LoadStyle.PER_HAND)
CURL = PlannedExercise("Hammer Curl", sets("18", 10, 12, 2), aliases=("hammers",), load_style=LoadStyle.PER_HAND)
DAY = (PRESS, CHIN, LATERAL, CURL)
HACK = PlannedExercise("Hack Squat", sets("110", 8, 10))
CALF = PlannedExercise("Standing Calf Raise", sets("70", 12, 15))
SEATED_CALF = PlannedExercise("Seated Calf Raise", sets("40", 12, 15))
SEATED_ROW = PlannedExercise("Seated Row", sets("42.5", 10, 12, 2))
T_BAR = PlannedExercise("T-Bar Row", sets("30", 8, 10, 2), aliases=("t bar",))
Z_PRESS = PlannedExercise("Z Press", sets("40", 6, 8))
ROWS = (SEATED_ROW, T_BAR, Z_PRESS, CALF, SEATED_CALF)
BAG_SQUAT = PlannedExercise("Sandbag Squat", sets("20", 10, 10))
BAG_CARRY = PlannedExercise("Sandbag Carry", sets("20", 40, 40), measure=Measure.METRES)
BAGS = (BAG_SQUAT, BAG_CARRY)


def _read(text: str, session: tuple[PlannedExercise, ...], *done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(row(d) for d in done)))


def _alike(name: str, load: str, reps: int, count: int) -> tuple[str, ...]:
    return tuple(f"{name}#{n} {load}x{reps}" for n in range(1, count + 1))


PRESSED = _alike("Overhead Press", "45", 6, 4)
CHINS = _alike("Chin-Up", "0", 7, 3)
RAISED = _alike("Lateral Raise", "14", 13, 3)
PRESS_WORDS = (
    "4 sets of 6 on press at 45", "4x6 press at 45", "45 on press for 4 sets of 6", "4 sets of press at 45 for 6",
    "45 press 4x6", "press 45 for 6 four times", "45x6x4 press", "4 sets of press, 6 at 45",
)  # fmt: skip
CHIN_WORDS = ("3 sets of 7 chins", "3x7 on chins", "3 sets of chins for 7", "7, 7 and 7 chins", "chins 3x7")


@pytest.mark.parametrize(
    ("one", "two", "seam"), list(product(PRESS_WORDS, CHIN_WORDS, (" and ", ", ", " then ", "\n")))
)
def test_a_name_stands_before_in_or_behind_its_sets(one: str, two: str, seam: str) -> None:
    reading = _read(f"did {one}{seam}{two}", DAY)
    assert reading.ask is None
    assert reading.performed == rows(*PRESSED, *CHINS)


NAMED = [
    ("14 on the laterals for 3 sets of 13, 3x7 chins and 4x6 press at 45", DAY, (*RAISED, *CHINS, *PRESSED)),
    ("laterals 14 3x13", DAY, RAISED),
    ("press 45x6, 45x5, then 8, 7 and 7 chins", DAY,
     ("Overhead Press#1 45x6", "Overhead Press#2 45x5", "Chin-Up#1 0x8", "Chin-Up#2 0x7", "Chin-Up#3 0x7")),
    ("45x6, 45x5 press, 8, 7, 7 chins", DAY,
     ("Overhead Press#1 45x6", "Overhead Press#2 45x5", "Chin-Up#1 0x8", "Chin-Up#2 0x7", "Chin-Up#3 0x7")),
    ("45x6 press + 8 chins", DAY, ("Overhead Press#1 45x6", "Chin-Up#1 0x8")),
    ("a set of 6 on press at 45 and a set of 8 chins", DAY, ("Overhead Press#1 45x6", "Chin-Up#1 0x8")),
    ("4 of 6 on press at 45, 3 of 7 on chins", DAY, (*PRESSED, *CHINS)),
    ("laterals 14 for 13/12/12, chins 8/7/6", DAY,
     ("Lateral Raise#1 14x13", "Lateral Raise#2 14x12", "Lateral Raise#3 14x12",
      "Chin-Up#1 0x8", "Chin-Up#2 0x7", "Chin-Up#3 0x6")),
    ("knocked out 21 chins as 3x7", DAY, CHINS),
    ("24 chins, 8 8 8", DAY, _alike("Chin-Up", "0", 8, 3)),
    ("3 rounds of 6 press at 45 and 7 chins", DAY, (*_alike("Overhead Press", "45", 6, 3), *CHINS)),
    ("36 total on the hammers x 12", DAY, ("Hammer Curl#1 18x12",)),
    ("36 total hammers for 12", DAY, ("Hammer Curl#1 18x12",)),
    ("hammers, two eighteens for twelve", DAY, ("Hammer Curl#1 18x12",)),
    ("hammers, could only find 16kg ones, 12 and 11", DAY, ("Hammer Curl#1 16x12", "Hammer Curl#2 16x11")),
    ("they only have 16s here, hammers 12 12", DAY, ("Hammer Curl#1 16x12", "Hammer Curl#2 16x12")),
    ("I only have the 12 kilo dumbbells at my sisters so laterals 13 13 13 and hammers 12 12", DAY,
     (*_alike("Lateral Raise", "12", 13, 3), *_alike("Hammer Curl", "12", 12, 2))),
    ("only had 16kg dumbbells so the hammers were 16 kilos twelve times both sets", DAY,
     _alike("Hammer Curl", "16", 12, 2)),
    ("row sitting 42.5 x 12, 11. t bar: 30x10", ROWS, ("Seated Row#1 42.5x12", "Seated Row#2 42.5x11",
                                                       "T-Bar Row#1 30x10")),
    ("row (seated) 42.5x12", ROWS, ("Seated Row#1 42.5x12",)),
    ("calves stood up 70x13", ROWS, ("Standing Calf Raise#1 70x13",)),
    ("zpress 40x8", ROWS, ("Z Press#1 40x8",)),
    ("carried the sandbag two times 40 m", BAGS, _alike("Sandbag Carry", "20", 40, 2)),
    ("squatted the sandbag 20x10", BAGS, ("Sandbag Squat#1 20x10",)),
    ("sandbag 20kg 40 m", BAGS, ("Sandbag Carry#1 20x40",)),
    ("sandbag 20x10", BAGS, ("Sandbag Squat#1 20x10",)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "session", "wanted"), NAMED)
def test_each_exercise_has_its_own_sets(
    text: str, session: tuple[PlannedExercise, ...], wanted: tuple[str, ...]
) -> None:
    reading = _read(text, session)
    assert reading.ask is None
    assert reading.performed == rows(*wanted)


TALK = ("should be illegal", "should be banned", "ought to be illegal", "should be easier by now", "never get easier")


@pytest.mark.parametrize(("talk", "seam"), list(product(TALK, (", ", ". ", " lol ", " - "))))
def test_talk_of_an_exercise_corrects_nothing(talk: str, seam: str) -> None:
    reading = _read(f"hack squats {talk}{seam}110x8", (HACK, CALF), "Hack Squat#1 110x9")
    assert reading.replaces == ()
    assert reading.performed == rows("Hack Squat#2 110x8")


@pytest.mark.parametrize(
    "text",
    [
        "4 sets of 6 on press at 45 and 3 sets of 7 dips",
        "3 sets of 7 dips and 4 sets of 6 on press at 45",
        "press 45x6, dips 3x10",
        "dumbbell bench 30x10 and 3x7 chins",
    ],
)
def test_an_exercise_that_the_session_lacks_is_asked_about_wherever_its_name_stands(text: str) -> None:
    reading = _read(text, DAY)
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.UNKNOWN_EXERCISE
    assert reading.performed == ()


@pytest.mark.parametrize("text", ["press 3 of 6 at 45", "45 on press for 7, 6, 7, 7 and 6 chins"])
def test_what_may_be_of_either_is_asked_about(text: str) -> None:
    reading = _read(text, DAY)
    assert reading.ask is not None
    assert reading.performed == ()
