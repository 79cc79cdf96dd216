"""Dictated messages, second-language English, forms and shorthand, class by class, on the test session."""

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, read, row, rows, sets

ROW = "Barbell Row"


@pytest.mark.parametrize(
    ("text", "load"),
    [
        ("one forty for five", "140"),
        ("one four zero for five", "140"),
        ("hundred and forty for five", "140"),
        ("one hundred forty by five", "140"),
        ("1 hundred and 40 for five", "140"),
        ("one thirty seven and a half for five", "137.5"),
        ("137 and a half for 5", "137.5"),
        ("137 point 5 for 5", "137.5"),
        ("137 komma 5 for 5", "137.5"),
        ("137 1/2 x 5", "137.5"),
        ("137'5 x 5", "137.5"),
        ("140 times 5", "140"),
        ("140 four 5", "140"),
        ("140 into 5", "140"),
        ("140 kilo 5 wiederholungen", "140"),
    ],
)
def test_loads_as_they_are_said(text: str, load: str) -> None:
    """Rule 17: loads in words, digit by digit, with halves and decimals in every hand."""
    assert read(text, current="Deadlift").performed == rows(f"Deadlift#1 {load}x5")


@pytest.mark.parametrize(
    "text",
    [
        "first set 60 for 6 second 60 for 5 third only 4",
        "fist set 6 second 5 turd 4",
        "set one six set too five set tree four",
        "first one six, second one five, third one four",
        "first was 6 second was 5 and in the third i did 4",
        "set 1: 6, set 2: 5, set 3: 4",
        "1. set 60x6 2. set 60x5 3. set 60x4",
        "s1 60x6 s2 60x5 s3 60x4",
        "60kg\n6\n5\n4",
        "60kg. 6 5 4.",
        "60kg bench 6 5 4",
        "weight: 60 reps: 6, 5, 4",
        "all with 60: six five and four",
        "three sets, 60, six then five then four",
    ],
)
def test_sets_told_one_by_one(text: str) -> None:
    """Rules 1 and 2: three sets in many hands."""
    assert read(text).performed == rows("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x4")


@pytest.mark.parametrize(
    "text",
    [
        "the rest five",
        "the other two were five",
        "the rest the same",
        "two more sets of 5",
        "another two like that",
        "same x2",
        "sets 2-3 all 5",
        "set 2 and 3 both 5",
        "second was 5 and third 5",
    ],
)
def test_the_sets_that_are_left(text: str) -> None:
    """Rule 3: the sets that are left, told at once."""
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    if reading.ask is None:
        assert reading.performed == rows("Bench Press#2 60x5", "Bench Press#3 60x5")
    else:
        assert reading.performed == ()
        assert text == "another two like that"


@pytest.mark.parametrize(
    ("text", "rir"),
    [
        ("50x10 reserve two", "2"),
        ("50x10 with two reps more possible", "2"),
        ("50x10, two more were possible", "2"),
        ("50x10 could have done another 2", "2"),
        ("50x10 rpe ate", "2"),
        ("50x10 effort eight of ten", "2"),
        ("50x10, left two", None),
        ("50x9 failed ten", "0"),
        ("50x9 the tenth rep not come up", "0"),
        ("50x10 with one or two left", "1.5"),
    ],
)
def test_efforts_in_other_words(text: str, rir: str | None) -> None:
    """Rule 5: efforts worded the other way round; `left` is not read as an effort where sides are worked."""
    reading = read(text, current=ROW)
    if rir is None:
        assert all(p.rir is None for p in reading.performed)
    else:
        reps = "9" if "50x9" in text else "10"
        assert reading.performed == rows(f"{ROW}#1 50x{reps} rir {rir}")


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("same but right only 8", ("Split Squat#2 16x10 left", "Split Squat#2 16x8 right")),
        ("same but left only 8", ("Split Squat#2 16x10 right", "Split Squat#2 16x8 left")),
        ("same but only 8 on the left", ("Split Squat#2 16x10 right", "Split Squat#2 16x8 left")),
        ("10/9 with the 16s", ("Split Squat#2 16x10 left", "Split Squat#2 16x9 right")),
        ("8 on the right leg and 10 on the left", ("Split Squat#2 16x8 right", "Split Squat#2 16x10 left")),
    ],
)
def test_one_side_of_a_set(text: str, wanted: tuple[str, ...]) -> None:
    """Rule 7: one side other than the set before, and sides with their load behind."""
    assert read(text, "Split Squat#1 16x10", current="Split Squat").performed == rows(*wanted)


def test_the_other_side() -> None:
    """Rule 7: `other side` is the one that was not said last."""
    said = read("other side 9", "Split Squat#1 16x10 left", current="Split Squat")
    assert said.performed == rows("Split Squat#1 16x9 right")


def test_a_circuit() -> None:
    """Rule 2: rounds of everything are so many sets of each exercise."""
    said = read("2 rounds of everything: 10 rows @50, 8 split squats each leg @16s, 6 chins")
    each = (("Barbell Row", "50x10"), ("Split Squat", "16x8"), ("Chin-Up", "0x6"))
    wanted = [f"{name}#{n} {what}" for name, what in each for n in (1, 2)]
    assert said.performed == rows(*wanted)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("8 chins, 10kg added", "Chin-Up#1 10x8"),
        ("5 deads, 140kg, rpe 8", "Deadlift#1 140x5 rir 2"),
        ("140kg deads for 5", "Deadlift#1 140x5"),
        ("barbell rose 50 for 10", "Barbell Row#1 50x10"),
        ("up 5 on deads, 145x5", "Deadlift#1 145x5"),
    ],
)
def test_loads_beside_names(text: str, wanted: str) -> None:
    """Rule 11: a load before or after the name; a name as dictation hears it; how much was added is no load."""
    assert read(text).performed == rows(wanted)


@pytest.mark.parametrize(
    "text",
    [
        "7x5",
        "60x6, 12, 5 thingies and 8 cooked then",
        "3: 5",
        "two done",
        "left 6 right 5",
        "60x5 10 5 3 5 4",
        "10 each but 8 on the left",
        "second and third 5",
    ],
)
def test_what_may_be_otherwise_is_asked_about(text: str) -> None:
    """Rule 19 and the first law: what fits nothing, or may be the number of a set, is not stored."""
    reading = read(text, "Bench Press#1 60x5", "Bench Press#2 60x5", current="Bench Press")
    assert reading.ask is not None
    assert reading.performed == ()


ROWS = PlannedExercise("Inverted Row", sets("0", 8, 8), aliases=("rows",), load_style=LoadStyle.BODYWEIGHT)
PLANK = PlannedExercise(
    "Side Plank", sets(None, 20, 30, 2), load_style=LoadStyle.NONE, sides=2, measure=Measure.SECONDS
)
PREACHER = PlannedExercise("Preacher Curl", sets("45", 8, 8), aliases=("preachers",))
DIPS = PlannedExercise("Assisted Dip", sets("-15", 8, 10, 2), aliases=("dips",), load_style=LoadStyle.BODYWEIGHT)
WALK = PlannedExercise(
    "Farmer Walk", sets("28", 30, 40, 2), aliases=("farmers",), load_style=LoadStyle.PER_HAND, measure=Measure.METRES
)
BUGS = PlannedExercise("Dead Bug", sets(None, 6, 8), aliases=("dead bugs",), load_style=LoadStyle.NONE, sides=2)
PULLS = PlannedExercise("Weighted Pull-Up", sets("10", 8, 10), aliases=("pull ups",), load_style=LoadStyle.BODYWEIGHT)


@pytest.mark.parametrize(
    ("text", "exercises", "done", "wanted"),
    [
        ("rows bodyweight for eight then bodyweight for seven side plank twenty five seconds", (ROWS, PLANK), (),
         ("Inverted Row#1 0x8", "Inverted Row#2 0x7", "Side Plank#1 -x25")),
        ("preachers forty five for eight then eight reps rpe nine side plank twenty seconds", (PREACHER, PLANK), (),
         ("Preacher Curl#1 45x8", "Preacher Curl#2 45x8 rir 1", "Side Plank#1 -x20")),
        ("dips i did minus fifteen for nine and ten i did farmers thirty kilos forty metres", (DIPS, WALK), (),
         ("Assisted Dip#1 -15x9", "Assisted Dip#2 -15x10", "Farmer Walk#1 30x40")),
        ("the dead bugs six and then six each the farmers twenty eight each hand forty metres", (BUGS, WALK), (),
         ("Dead Bug#1 -x6", "Dead Bug#2 -x6", "Farmer Walk#1 28x40")),
        ("plus ten for eight", (WALK, PULLS), ("Farmer Walk#1 28x40", "Farmer Walk#2 28x40"),
         ("Weighted Pull-Up#1 10x8",)),
        ("side plank was twenty five seconds each side", (PLANK, ROWS), ("Side Plank#1 -x30",), ("Side Plank#2 -x25",)),
        ("dips was minus seventeen point five nine reps", (DIPS,), ("Assisted Dip#1 -15x10",),
         ("Assisted Dip#2 -17.5x9",)),
    ],
)  # fmt: skip
def test_exercises_told_in_one_breath(
    text: str, exercises: tuple[PlannedExercise, ...], done: tuple[str, ...], wanted: tuple[str, ...]
) -> None:
    """Where a name stands between two entries, what is before it is of the name before; a whole set `was` a new one."""
    reading = read_message(Request(text, Unit.KG, NOW, exercises, tuple(row(one) for one in done)))
    assert (reading.ask, reading.performed, reading.replaces) == (None, rows(*wanted), ())
