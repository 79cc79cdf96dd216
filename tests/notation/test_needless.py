"""Messages that a coach with the plan would not ask about, and near ones that a coach would: a row each."""

from collections.abc import Sequence

import pytest

from bot.notation.reading import AskKind, Reading, Request, read_message
from bot.training.plan import PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, row, rows, sets

EIGHTS = PlannedExercise("Back Squat", sets("90", 8, 8))
TO_EIGHT = PlannedExercise("Back Squat", sets("90", 6, 8))
FIVES = PlannedExercise("Back Squat", sets("80", 5, 5))
PRESS = PlannedExercise("Bench Press", sets("60", 4, 6))
FOUR_FIVES = PlannedExercise("Bench Press", sets("60", 5, 5, 4))
CURL = PlannedExercise("Leg Curl", sets("40", 10, 12))
ALL_EIGHTS = ("Back Squat#1 90x8", "Back Squat#2 90x8", "Back Squat#3 90x8")
TWO_AND_ONE = ("Back Squat#1 80x5", "Back Squat#2 80x5", "Back Squat#3 75x5")


def _read(text: str, *session: PlannedExercise, done: Sequence[str] = ()) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(row(d) for d in done)))


@pytest.mark.parametrize(
    ("text", "planned", "stored"),
    [
        ("90 90 90", EIGHTS, ALL_EIGHTS),
        ("90 90", EIGHTS, ALL_EIGHTS[:2]),
        ("90, 90, 90", EIGHTS, ALL_EIGHTS),
        ("90, all 8s", EIGHTS, ALL_EIGHTS),
        ("90, all 8s", TO_EIGHT, ALL_EIGHTS),
        ("90: all 8s", TO_EIGHT, ALL_EIGHTS),
        ("all 8s at 90", TO_EIGHT, ALL_EIGHTS),
        ("all 8s", TO_EIGHT, ALL_EIGHTS),
        ("all eights", TO_EIGHT, ALL_EIGHTS),
        ("as planned, rpe 8", EIGHTS, ("Back Squat#1 90x8 rir 2",)),
        ("as planned 2 left", EIGHTS, ("Back Squat#1 90x8 rir 2",)),
        ("all as planned, rpe 8", EIGHTS, tuple(f"{r} rir 2" for r in ALL_EIGHTS)),
        ("squat as planned, rpe 8", EIGHTS, (*ALL_EIGHTS[:2], "Back Squat#3 90x8 rir 2")),
        ("80x5 (2 sets), 75x5", FIVES, TWO_AND_ONE),
        ("80x5 (x2), 75x5", FIVES, TWO_AND_ONE),
        ("80x5 (twice), 75x5", FIVES, TWO_AND_ONE),
        ("80x5 2 sets, 75x5", FIVES, TWO_AND_ONE),
        ("up 2.5kg on last week: 62.5x6", PRESS, ("Bench Press#1 62.5x6",)),
        ("62.5x6, up 2.5kg on last week", PRESS, ("Bench Press#1 62.5x6",)),
        ("2.5 more than last week: 62.5x6", PRESS, ("Bench Press#1 62.5x6",)),
        ("went up 2.5kg, 62.5x6", PRESS, ("Bench Press#1 62.5x6",)),
        ("60 4 5", PRESS, ("Bench Press#1 60x4", "Bench Press#2 60x5")),
        ("60 5 4 4", FOUR_FIVES, ("Bench Press#1 60x5", "Bench Press#2 60x4", "Bench Press#3 60x4")),
    ],
)
def test_what_the_plan_answers_is_not_asked(text: str, planned: PlannedExercise, stored: tuple[str, ...]) -> None:
    """Loads alone, all alike, as planned with an effort, counts in brackets, a step from last week, a bare list."""
    reading = _read(text, planned)
    assert reading.ask is None
    assert reading.performed == rows(*stored)


@pytest.mark.parametrize(
    ("text", "planned", "kind"),
    [
        ("60 4 5", FOUR_FIVES, AskKind.ORDER),
        ("60 3 5", PRESS, AskKind.ORDER),
        ("as planned", EIGHTS, AskKind.DONE),
        ("as planned, rpe 8", TO_EIGHT, AskKind.RANGE),
        ("80x5 2 sets 75x5", FIVES, AskKind.ORDER),
    ],
)
def test_what_the_plan_leaves_open_is_asked(text: str, planned: PlannedExercise, kind: AskKind) -> None:
    """As many as the sets that are open, then a number: sets of it, or the first of a list; a range; one set or all."""
    reading = _read(text, planned)
    assert reading.ask is not None
    assert reading.ask.kind is kind
    assert reading.performed == ()


def test_counted_or_listed_are_both_offered() -> None:
    """`60 3 5` with three sets open: a three and a five, or three fives."""
    reading = _read("60 3 5", PRESS)
    assert reading.ask is not None
    offered = {choice.reading.performed for choice in reading.ask.choices}
    assert offered == {
        rows("Bench Press#1 60x3", "Bench Press#2 60x5"),
        rows("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
    }


STOPS = ["80x5 stopping there", "80x5, thats enough", "80x5 leaving it there"]


@pytest.mark.parametrize("text", STOPS)
def test_stopping_there_may_be_the_exercise(text: str) -> None:
    """With sets of it left and another exercise to come it is asked which; either way the set is kept."""
    reading = _read(text, FIVES, CURL)
    assert reading.ask is not None
    assert (reading.ask.kind, reading.finished, reading.performed) == (AskKind.STOP, False, ())
    exercise, session = (choice.reading for choice in reading.ask.choices)
    assert (exercise.skipped, exercise.finished) == (("Back Squat",), False)
    assert (session.skipped, session.finished) == ((), True)
    assert exercise.performed == session.performed == rows("Back Squat#1 80x5")
    assert [choice.label for choice in reading.ask.choices] == ["Back Squat", "Back Squat, Leg Curl"]


@pytest.mark.parametrize(
    ("text", "session", "done"),
    [
        ("80x5 stopping there for today", (FIVES, CURL), ()),
        ("80x5 stopping there", (FIVES,), ()),
        ("80x5 stopping there", (FIVES, CURL), TWO_AND_ONE[:2]),
        ("stopping there", (FIVES, CURL), TWO_AND_ONE),
        ("80x5, that's me done", (FIVES, CURL), ()),
    ],
)
def test_stopping_is_the_session(text: str, session: tuple[PlannedExercise, ...], done: tuple[str, ...]) -> None:
    """Where it is said, where nothing else waits, or where the exercise is done."""
    reading = _read(text, *session, done=done)
    assert (reading.ask, reading.finished) == (None, True)
