"""How many sets a message tells and which set is which: counted in words, repeated, continued, told by number."""

from collections import Counter

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import DROP, MINI, NOW, row, rows, sets

BENCH = PlannedExercise("Bench Press", sets("60", 8, 10), aliases=("bench",))
SQUAT = PlannedExercise("Back Squat", sets("100", 5, 5, 5), aliases=("squat",))
HEAVY = PlannedExercise("Trap Bar Deadlift", sets("275", 5, 5))
PRESS = PlannedExercise("Leg Press", sets("140", 10, 12, 4))
PULL = PlannedExercise("Deadlift", (*sets("140", 5, 5, 1), *sets("115", 8, 8, 2)), aliases=("deads",))
CURL = PlannedExercise("Cable Curl", sets("25", 12, 12), aliases=("curls",))
GOBLET = PlannedExercise("Goblet Squat", sets("20", 10, 10), aliases=("goblets",))
CLEAN = PlannedExercise("Power Clean", sets("70", 3, 3, 5), aliases=("cleans",))
ROW = PlannedExercise("Dumbbell Row", sets("28", 8, 10), aliases=("rows",), load_style=LoadStyle.PER_HAND, sides=2)
SPLIT = PlannedExercise("Split Squat", sets("16", 10, 10), aliases=("split squats",), load_style=LoadStyle.PER_HAND,
                        sides=2)  # fmt: skip
SLED = PlannedExercise("Sled Push", sets("80", 20, 20, 4), aliases=("sled",), measure=Measure.METRES)
PLANK = PlannedExercise("Plank", sets(None, 30, 45), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
SIDE = PlannedExercise("Side Plank", sets(None, 15, 25), load_style=LoadStyle.NONE, measure=Measure.SECONDS, sides=2)
WHEEL = PlannedExercise("Ab Wheel", sets(None, 8, 12), load_style=LoadStyle.NONE)
SWING = PlannedExercise("Kettlebell Swing", sets("24", 15, 20, 4), aliases=("swings",))
EXTENSION = PlannedExercise("Leg Extension", sets("50", 12, 15, 3, DROP), aliases=("extensions",))
PUSHDOWN = PlannedExercise("Triceps Pushdown", sets("25", 12, 15, 3, MINI), aliases=("pushdowns",))


def _rows(planned: PlannedExercise, told: str) -> tuple[str, ...]:
    """`1 60x10, 2 60x9` as sets of an exercise."""
    return tuple(f"{planned.name}#{one.strip()}" for one in told.split(",") if one.strip())


def _read(text: str, planned: PlannedExercise, done: str) -> Reading:
    stored = tuple(row(one) for one in _rows(planned, done))
    return read_message(Request(text, Unit.KG, NOW, (planned,), stored))


Case = tuple[str, PlannedExercise, str, str]
COUNTED: list[Case] = [
    ("ab wheel 12s across", WHEEL, "", "1 -x12, 2 -x12, 3 -x12"),
    ("ab wheel tens for all 3", WHEEL, "", "1 -x10, 2 -x10, 3 -x10"),
    ("ab wheel 12s each set", WHEEL, "", "1 -x12, 2 -x12, 3 -x12"),
    ("140 kilo 4 set, all 12 times", PRESS, "", "1 140x12, 2 140x12, 3 140x12, 4 140x12"),
    ("leg press 4 sets, each 12 times", PRESS, "", "1 140x12, 2 140x12, 3 140x12, 4 140x12"),
    ("leg press 12 all 4 times", PRESS, "", "1 140x12, 2 140x12, 3 140x12, 4 140x12"),
    ("one more like 9", BENCH, "1 60x9", "2 60x9"),
    ("left 20 sec. right groin pulled and hurt so stopped at 12 that side", SIDE, "", "1 -x20 left, 1 -x12 right"),
    ("left 20s. my right groin hurt so only 12s that side", SIDE, "", "1 -x20 left, 1 -x12 right"),
    ("right 20. left groin hurt so 12 on that side", SIDE, "", "1 -x20 right, 1 -x12 left"),
    ("left 20. then 18 that side again. right groin hurts", SIDE, "", "1 -x20 left, 2 -x18 left"),
    ("two more sets of curls, 12 and 12", CURL, "1 25x12", "2 25x12, 3 25x12"),
    ("100 by 5, five of them", SQUAT, "", "1 100x5, 2 100x5, 3 100x5, 4 100x5, 5 100x5"),
    ("4 lots of 20m with 80 on the sled", SLED, "", "1 80x20, 2 80x20, 3 80x20, 4 80x20"),
    ("sled 80, 4 pushes of 20", SLED, "", "1 80x20, 2 80x20, 3 80x20, 4 80x20"),
    ("140 x 12 twice, then 11, then 10", PRESS, "", "1 140x12, 2 140x12, 3 140x11, 4 140x10"),
    ("60 x 10, 60 x 9 (twice)", BENCH, "", "1 60x10, 2 60x9, 3 60x9"),
    ("5 fives at 100", SQUAT, "", "1 100x5, 2 100x5, 3 100x5, 4 100x5, 5 100x5"),
    ("three tens on the goblets w/ 20", GOBLET, "", "1 20x10, 2 20x10, 3 20x10"),
    ("2 more: 11, 10", PRESS, "1 140x12, 2 140x12", "3 140x11, 4 140x10"),
    ("another 2 at 140, 11 and 10", PRESS, "1 140x12, 2 140x12", "3 140x11, 4 140x10"),
    ("did 3, each one 60 for 9", BENCH, "", "1 60x9, 2 60x9, 3 60x9"),
    ("leg press: 2 at 140 for 12, 2 at 130 for 12", PRESS, "", "1 140x12, 2 140x12, 3 130x12, 4 130x12"),
    ("three planks, 45 seconds each", PLANK, "", "1 -x45, 2 -x45, 3 -x45"),
    ("plank 45s 3x", PLANK, "", "1 -x45, 2 -x45, 3 -x45"),
    ("swings done 20 per set with the 24", SWING, "", "1 24x20, 2 24x20, 3 24x20, 4 24x20"),
    ("deads top set 140x5, back offs 115x8 both", PULL, "", "1 140x5, 2 115x8, 3 115x8"),
    ("just the two on bench so far: 60x10 and 60x9", BENCH, "", "1 60x10, 2 60x9"),
    ("squats all 100x5 but the fifth was 100x3", SQUAT, "", "1 100x5, 2 100x5, 3 100x5, 4 100x5, 5 100x3"),
]  # fmt: skip
GROUPED: list[Case] = [
    ("first two at 140 for 12, last two 130 for 12", PRESS, "", "1 140x12, 2 140x12, 3 130x12, 4 130x12"),
    ("140x12 for the first two, 11 on the third and 10 on the fourth", PRESS, "",
     "1 140x12, 2 140x12, 3 140x11, 4 140x10"),
    ("cleans: 1-4 at 70 x 3, 5th at 72.5 x 3", CLEAN, "", "1 70x3, 2 70x3, 3 70x3, 4 70x3, 5 72.5x3"),
    ("first 2 were the full 20, third only 12", SLED, "", "1 80x20, 2 80x20, 3 80x12"),
    ("60x10 x3 but last one was 8", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("3x10 @60 except the last which was 8", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("1st and 2nd 60x10, third 60x8", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("first two were all 10, last one just 8", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("squat 4 and 5 both 95x5", SQUAT, "1 100x5, 2 100x5, 3 100x5", "4 95x5, 5 95x5"),
    ("10 reps on the first, 9 on the others, 60 kg", BENCH, "", "1 60x10, 2 60x9, 3 60x9"),
    ("last: 60x8. first: 60x10. middle one: 60x9", BENCH, "", "1 60x10, 2 60x9, 3 60x8"),
    ("went down to 55 for the last one. 8", BENCH, "1 60x9, 2 60x8", "3 55x8"),
    ("dropped to 12 for the last split squat set, 10 each side", SPLIT, "1 16x10, 2 16x10", "3 12x10"),
    ("squat 3: 100x5", SQUAT, "1 100x5, 2 100x5", "3 100x5"),
    ("100\n5", SQUAT, "", "1 100x5"),
    ("bench\n60\n10\n9", BENCH, "", "1 60x10, 2 60x9"),
]  # fmt: skip
REPEATED: list[Case] = [
    ("The same once more.", ROW, "1 28x10 left, 1 28x8 right", "2 28x10 left, 2 28x8 right"),
    ("and again, same", BENCH, "1 60x9", "2 60x9"),
    ("one more of those", SWING, "1 24x18", "2 24x18"),
    ("two more like the first", BENCH, "1 60x9", "2 60x9, 3 60x9"),
    ("set 3 like set 1", BENCH, "1 60x10, 2 60x8", "3 60x10"),
    ("set 3 identical to set 2", BENCH, "1 60x10, 2 60x9", "3 60x9"),
    ("rows 28 x 10 both arms the same", ROW, "", "1 28x10"),
    ("split squats 16s x 10 and after 9, both legs the same", SPLIT, "", "1 16x10, 2 16x9"),
    ("60x10 and the other two also", BENCH, "", "1 60x10, 2 60x10, 3 60x10"),
    ("60 x 10, rest of the sets identical", BENCH, "", "1 60x10, 2 60x10, 3 60x10"),
    ("Same same but with 57,5", BENCH, "1 60x9", "2 57.5x9"),
    ("same weight 8 reps, and once more 8", BENCH, "1 60x9", "2 60x8, 3 60x8"),
    ("and the same again please haha 100x5", SQUAT, "1 100x5", "2 100x5"),
    ("did that twice more", BENCH, "1 60x9", "2 60x9, 3 60x9"),
]
PROGRESS: list[Case] = [
    ("thats three down two to go, all 100x5", SQUAT, "", "1 100x5, 2 100x5, 3 100x5"),
    ("that's 3 of 5 done, 100x5 each", SQUAT, "", "1 100x5, 2 100x5, 3 100x5"),
    ("2 of 3 done: 60x10, 60x9", BENCH, "", "1 60x10, 2 60x9"),
    ("3/5 done 100x5", SQUAT, "1 100x5, 2 100x5", "3 100x5"),
    ("set 3 of 5: 100x5", SQUAT, "1 100x5, 2 100x5", "3 100x5"),
    ("that makes 4! 100x5", SQUAT, "1 100x5, 2 100x5, 3 100x5", "4 100x5"),
    ("that's the third one in the bag, 60 x 8", BENCH, "1 60x10, 2 60x9", "3 60x8"),
    ("ok one left. that was 60x9", BENCH, "1 60x10", "2 60x9"),
    ("2 left on squats, just finished 100x5", SQUAT, "1 100x5, 2 100x5", "3 100x5"),
]
CONTINUED: list[Case] = [
    ("50x12, no rest, 35x9", EXTENSION, "1 50x15, 2 50x14", "3 50x12, 3 35x9 drop"),
    ("50x12 and directly after 35x9", EXTENSION, "1 50x15, 2 50x14", "3 50x12, 3 35x9 drop"),
    ("then no break and 35 for 10", EXTENSION, "1 50x15, 2 50x14, 3 50x13", "3 35x10 drop"),
    ("50x12, dropped the weight to 35, another 8 straight away", EXTENSION, "1 50x15, 2 50x14",
     "3 50x12, 3 35x8 drop"),
    ("forgot the minis: +4 +3", PUSHDOWN, "1 25x15, 2 25x14, 3 25x14", "3 25x4 mini, 3 25x3 mini"),
    ("got 4, 4 and 3 on the minis", PUSHDOWN, "1 25x15, 2 25x14, 3 25x14", "3 25x4 mini, 3 25x4 mini, 3 25x3 mini"),
    ("25x14 with three minis of 4", PUSHDOWN, "1 25x15, 2 25x14", "3 25x14, 3 25x4 mini, 3 25x4 mini, 3 25x4 mini"),
    ("2 mini sets, 4 and 3", PUSHDOWN, "1 25x15, 2 25x14, 3 25x14", "3 25x4 mini, 3 25x3 mini"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "planned", "done", "told"), [*COUNTED, *GROUPED, *REPEATED, *PROGRESS, *CONTINUED])
def test_each_set_is_told_once(text: str, planned: PlannedExercise, done: str, told: str) -> None:
    """As many sets as the words say, each with its number, and none twice."""
    reading = _read(text, planned, done)
    assert reading.ask is None, reading.ask
    assert Counter(reading.performed) == Counter(rows(*_rows(planned, told)))
    assert not reading.replaces


DOUBTFUL = [
    ("curls, sets of 12, did two, 40 kg", CURL, ""),
    ("went up 2.5 each set starting at 55: 10, 9, 8", BENCH, ""),
    ("50 for 13 then took 15 off and got 10 more", EXTENSION, "1 50x15, 2 50x14"),
    ("rows 28s 10 and 10, then 10 and 9, left first", ROW, ""),
]


@pytest.mark.parametrize(("text", "planned", "done"), DOUBTFUL)
def test_a_count_that_is_not_met_is_asked_about(text: str, planned: PlannedExercise, done: str) -> None:
    """Sets that are counted and not told, loads that are only reckoned, sets or sides: nothing is kept."""
    reading = _read(text, planned, done)
    assert reading.ask is not None, reading.performed
    assert reading.performed == ()


def test_a_range_in_a_question_is_no_set() -> None:
    """What is asked about the plan is not what was done."""
    reading = _read("does 8-10 mean stop at 10? got 60 x 10 on the first one", BENCH, "")
    assert reading.question
    assert reading.performed == rows("Bench Press#1 60x10")


def test_hundred_behind_of_is_read_to_its_end() -> None:
    """`hundred` where repetitions may stand, before `for`: one number, and the reading goes on behind it."""
    told = "1 100x5, 2 100x5, 3 100x5"
    assert _read("3 sets of hundred for 5", SQUAT, "").performed == rows(*_rows(SQUAT, told))


BENCHED = "1 60x9, 2 60x9, 3 60x8"
SPOKEN: list[Case] = [
    ("bench 60 9 9 8 and the 8 was all i had", BENCH, "", BENCHED),
    ("bench 60 9 9 8 and the 8 was all i had, nothing left", BENCH, "", "1 60x9, 2 60x9, 3 60x8 rir 0"),
    ("bench 60 9 9 8, the 8 was a grinder, nothing left", BENCH, "", "1 60x9, 2 60x9, 3 60x8 rir 0"),
    ("bench 60 9 9 8. the 8 was slow, rpe 10", BENCH, "", "1 60x9, 2 60x9, 3 60x8 rir 0"),
    ("bench 60 9 9 8, the 8 was ugly", BENCH, "", BENCHED),
    ("bench 60x9, the 9 was easy so 62.5x9", BENCH, "", "1 60x9, 2 62.5x9"),
    ("140 4x10, first three easy last one rpe 9", PRESS, "", "1 140x10, 2 140x10, 3 140x10, 4 140x10 rir 1"),
    ("140 10 10 10 10 first three fine", PRESS, "", "1 140x10, 2 140x10, 3 140x10, 4 140x10"),
    ("140 4x10, first two were easy, last two rpe 9", PRESS, "",
     "1 140x10, 2 140x10, 3 140x10 rir 1, 4 140x10 rir 1"),
    ("140x5 @8, 115x8 @7.5, second back off 115x8 @8-9", PULL, "",
     "1 140x5 rir 2, 2 115x8 rir 2.5, 3 115x8 rir 1.5"),
    ("first two sets 28x10 a side, third one left 9 right 8", ROW, "",
     "1 28x10, 2 28x10, 3 28x9 left, 3 28x8 right"),
    ("16s 10 each, 10 each, and on the third 8 left and then nothing", SPLIT, "", "1 16x10, 2 16x10, 3 16x8 left"),
    ("16 x 8 left. skipped the right", SPLIT, "1 16x10", "2 16x8 left"),
    ("16x10 each 2 left", SPLIT, "", "1 16x10 rir 2"),
    ("sled 85x20 85x20, back to 80 for the other two", SLED, "", "1 85x20, 2 85x20, 3 80x20, 4 80x20"),
    ("I make 3 serie of 10 with 60", BENCH, "", "1 60x10, 2 60x10, 3 60x10"),
    ("bench 60 for 9 and 8, more in a bit", BENCH, "", "1 60x9, 2 60x8"),
    ("ten at sixty nine at sixty then i upped it to sixty five and got eight", BENCH, "", "1 60x10, 2 60x9, 3 65x8"),
    ("first real set two seventy five for five", HEAVY, "", "1 275x5"),
    ("60 eight reps left two in there", BENCH, "", "1 60x8 rir 2"),
    ("weighed in at 82.4 this morning, down 0.6 since last week", BENCH, "", ""),
    ("lol my dog chewed 2 of my 3 pairs of straps", BENCH, "", ""),
]  # fmt: skip


@pytest.mark.parametrize(("text", "planned", "done", "told"), SPOKEN)
def test_what_is_said_of_a_set_is_no_set_more(text: str, planned: PlannedExercise, done: str, told: str) -> None:
    """A set spoken of again, how the first ones felt, which one it was, and numbers that ran together."""
    reading = _read(text, planned, done)
    assert reading.ask is None
    assert sorted(map(str, reading.performed)) == sorted(map(str, rows(*_rows(planned, told))))


def test_one_load_then_counts_like_it_may_be_counts_alone() -> None:
    """Rule 1: `10 10 10` on 10 kg, for repetitions near it, is asked about; repetitions in the range are taken."""
    light = PlannedExercise("Back Extension", sets("10", 12, 15))
    assert _read("10 10 10", light, "").ask is not None
    assert _read("10 12 12", light, "").performed == rows(*_rows(light, "1 10x12, 2 10x12"))


@pytest.mark.parametrize(
    "text", ["rpe on that one more like 9", "rpe for this one more like 9", "rpe of the last one was more like 9"]
)
def test_one_more_like_is_the_effort_of_the_set_that_was_done(text: str) -> None:
    """No further set of nine: the one is the set before, and its effort is put right."""
    reading = _read(text, BENCH, "1 60x8")
    assert (reading.ask, reading.performed) == (None, rows(*_rows(BENCH, "1 60x8 rir 1")))


@pytest.mark.parametrize("text", ["ab wheel 12s", "ab wheel straight 12s"])
def test_plural_counts_of_how_many_sets_are_asked_about(text: str) -> None:
    """One set of twelve or all of them: nothing says which."""
    assert _read(text, WHEEL, "").ask is not None
