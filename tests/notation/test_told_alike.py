"""Sets told alike but for one, sets as planned by their number, and which of two names a load fits."""

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, row, rows, sets

THRUST = PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",))
HINGE = PlannedExercise("Romanian Deadlift", sets("60", 8, 10), aliases=("rdl",))
FRONT = PlannedExercise("Front Squat", sets("80", 5, 5), aliases=("fronts",))
PRESS = PlannedExercise("Overhead Press", sets("40", 5, 7, 4), aliases=("press",))
ARM = PlannedExercise("Single-Arm Row", sets("26", 10, 12), load_style=LoadStyle.PER_HAND, sides=2)
UNDER = PlannedExercise("Inverted Row", sets("0", 8, 12), load_style=LoadStyle.BODYWEIGHT)


def _read(text: str, *exercises: PlannedExercise, done: tuple[str, ...] = ()) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, exercises, tuple(row(d) for d in done), None))


def _three(last: str, *, of: str = "Hip Thrust", alike: str = "90x10") -> tuple[str, ...]:
    return (f"{of}#1 {alike}", f"{of}#2 {alike}", f"{of}#3 {last}")


LAST = ["last 8", "8 on the last", "last was 8", "last one 8", "the last set was 8", "only 8 on the last one",
        "last set only 8", "third was 8", "set 3 was 8", "last one just 8 reps"]  # fmt: skip
ALIKE = ["all 10s", "10s across the board", "3x10 at 90", "90x10x3", "3 sets of 10 at 90", "3 sets at 90, 10s"]
JOINS = [", ", ". ", " but ", ", but "]


@pytest.mark.parametrize("join", JOINS)
@pytest.mark.parametrize("alike", ALIKE)
@pytest.mark.parametrize("last", LAST)
def test_the_last_of_sets_told_alike_is_the_one_that_differs(alike: str, join: str, last: str) -> None:
    assert _read(f"{alike}{join}{last}", THRUST).performed == rows(*_three("90x8"))


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("3x10 at 90 but the second was 9", ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x10")),
        ("3x10 at 90 but 85x8 on the last", _three("85x8")),
        ("3x10 at 90, last was 8 @9", _three("90x8 rir 1")),
        ("thrusts 90 3x10 (8 on the last)", _three("90x8")),
        ("only managed 7 on the last thrust, the first two were 10 and 9",
         ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x7")),
        ("last set 7, first two 10 and 9", ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x7")),
        ("last one was 7, the rest 10s", _three("90x7")),
        ("thrusts went 90 x 10, 90 x 9, then I got greedy: 95 x 8",
         ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 95x8")),
        ("rdl 3x10 at 60 but 8 on the last, thrusts 3x10 90 but last was 9",
         (*_three("60x8", of="Romanian Deadlift", alike="60x10"), *_three("90x9"))),
    ],
)  # fmt: skip
def test_one_told_apart(text: str, wanted: tuple[str, ...]) -> None:
    assert _read(text, THRUST, HINGE).performed == rows(*wanted)


def test_a_last_set_behind_fewer_than_are_open_is_a_set_of_its_own() -> None:
    wanted = [f"Overhead Press#{n} 40x7" for n in (1, 2, 3)]
    assert _read("press 3x7 at 40, last one 5", PRESS).performed == rows(*wanted, "Overhead Press#4 40x5")
    assert _read("4x7 at 40, last one 5", PRESS).performed == rows(*wanted, "Overhead Press#4 40x5")


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("fronts as planned, last one 4", "80x4"),
        ("fronts as written, except the last set, only 4", "80x4"),
        ("fronts as planned but i used 75 on the last one", "75x5"),
        ("fronts all as planned, 3 on the last", "80x3"),
        ("fronts as planned apart from the last (4)", "80x4"),
        ("followed the plan on fronts, last one 4", "80x4"),
    ],
)
def test_as_planned_but_for_one(text: str, last: str) -> None:
    assert _read(text, FRONT, THRUST).performed == rows(*_three(last, of="Front Squat", alike="80x5"))


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("first one done", ("Front Squat#1 80x5",)),
        ("set 2 done", ("Front Squat#2 80x5",)),
        ("third as planned", ("Front Squat#3 80x5",)),
        ("squats set 1 done", ("Front Squat#1 80x5",)),
        ("two as planned", ("Front Squat#1 80x5", "Front Squat#2 80x5")),
        ("first set as planned, second 80x4", ("Front Squat#1 80x5", "Front Squat#2 80x4")),
        ("first as planned, second 4, third as planned",
         ("Front Squat#1 80x5", "Front Squat#2 80x4", "Front Squat#3 80x5")),
    ],
)  # fmt: skip
def test_a_set_as_planned_is_the_one_that_is_named(text: str, wanted: tuple[str, ...]) -> None:
    assert _read(text, FRONT).performed == rows(*wanted)


def test_a_set_that_is_stored_is_not_stored_again_as_done() -> None:
    assert _read("set 1 done", FRONT, done=("Front Squat#1 80x5",)).ask is not None


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("same for the rest", ("Front Squat#2 80x5", "Front Squat#3 80x5")),
        ("same but 82.5", ("Front Squat#2 82.5x5",)),
        ("same at 82.5kg", ("Front Squat#2 82.5x5",)),
        ("as before", ("Front Squat#2 80x5",)),
    ],
)
def test_like_the_set_before(text: str, wanted: tuple[str, ...]) -> None:
    assert _read(text, FRONT, done=("Front Squat#1 80x5",)).performed == rows(*wanted)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [("rows with the 26, 11 both sides", "Single-Arm Row#1 26x11"), ("rows bw x 12", "Inverted Row#1 0x12")],
)
def test_of_two_exercises_of_a_name_the_one_that_the_load_fits(text: str, wanted: str) -> None:
    assert _read(text, ARM, UNDER).performed == rows(wanted)


def test_a_name_without_a_load_that_fits_two_is_asked_about() -> None:
    assert _read("rows 10 10 10", ARM, UNDER).ask is not None


def test_a_count_with_a_word_for_how_it_went_is_a_set() -> None:
    assert _read("8 and 7 and a scrappy 6", PRESS).performed == rows(
        "Overhead Press#1 40x8", "Overhead Press#2 40x7", "Overhead Press#3 40x6"
    )


SPLIT = PlannedExercise("Split Squat", sets("16", 8, 10), load_style=LoadStyle.PER_HAND, sides=2)
SIDE = PlannedExercise("Side Plank", sets(None, 30, 40, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS, sides=2)
CARRY = PlannedExercise("Farmer Carry", sets("24", 40, 40), load_style=LoadStyle.PER_HAND, measure=Measure.METRES)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("40 metres with the 24s, three times", [f"Farmer Carry#{n} 24x40" for n in (1, 2, 3)]),
        ("48 total, 40 metres", ["Farmer Carry#1 24x40"]),
        ("35 secs L, 40 secs R", ["Side Plank#1 -x35 left", "Side Plank#1 -x40 right"]),
        ("16s x 10 each, 30 sec rest", ["Split Squat#1 16x10"]),
    ],
)
def test_a_measure_that_one_exercise_has_is_of_that_one(text: str, wanted: list[str]) -> None:
    assert _read(text, SPLIT, SIDE, CARRY).performed == rows(*wanted)


LAND = PlannedExercise("Landmine Press", sets("20", 8, 10), aliases=("landmine",), sides=2)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("L10 R9. left had nothing left, right could have done 2 more", ("20x10 left rir 0", "20x9 right rir 2")),
        ("landmine 20 for 10 on the left, 9 on the right, right was to failure", ("20x10 left", "20x9 right rir 0")),
        ("10 left, 9 right, right rpe 9", ("20x10 left", "20x9 right rir 1")),
        ("L10 R9. left rpe 7, right rpe 9", ("20x10 left rir 3", "20x9 right rir 1")),
    ],
)
def test_the_effort_of_one_side(text: str, wanted: tuple[str, ...]) -> None:
    assert _read(text, LAND).performed == rows(*(f"Landmine Press#1 {w}" for w in wanted))


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("90 x 10, last 2 reps were ugly", ("90x10",)),
        ("90 for 10, last two were ugly", ("90x10",)),
        ("90x10, first 5 reps flew", ("90x10",)),
        ("90 10 9 8, rpe 9 on the 8", ("90x10", "90x9", "90x8 rir 1")),
        ("90 10 9 8, the eight was rpe 9", ("90x10", "90x9", "90x8 rir 1")),
        ("90 for 8. twice", ("90x8", "90x8")),
        ("90 for a dozen", ("90x12",)),
        ("hip thrusts with 90 kilos. Ten repetitions. Three sets.", ("90x10", "90x10", "90x10")),
        ("10 reps, 90 on the bar", ("90x10",)),
        ("was meant to be 90 but I did 85 for 10", ("85x10",)),
        ("first set 90x10, went up to 95 for the last two, 8 and 7", ("90x10", "95x8", "95x7")),
        ("90x10. next one 90x9. then 8.", ("90x10", "90x9", "90x8")),
        ("90 10. set 2 90 9", ("90x10", "90x9")),
        ("90x10, 3s eccentric", ("90x10",)),
        ("90 for 10, 2 count pause at the bottom", ("90x10",)),
        ("90 across. 10 10 9", ("90x10", "90x10", "90x9")),
        ("90 of course. 10, 10, 9", ("90x10", "90x10", "90x9")),
        ("another 10 at 90", ("90x10",)),
        ("round 1: 90x10", ("90x10",)),
        ("set 1 - 10, set 2 - 9", ("90x10", "90x9")),
    ],
)
def test_what_only_speaks_of_sets_told_and_what_counts_them(text: str, wanted: tuple[str, ...]) -> None:
    assert _read(text, THRUST).performed == rows(*(f"Hip Thrust#{n} {w}" for n, w in enumerate(wanted, 1)))
