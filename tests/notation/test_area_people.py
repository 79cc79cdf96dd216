"""How new people tell the same things: sets of both sides, rounds, the last set's effort, loads only spoken of."""

from datetime import date, timedelta

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import MINI, NOW, row, rows, sets

DEAD = PlannedExercise("Deadlift", (*sets("275", 5, 5, 1), *sets("245", 5, 5, 2)), aliases=("deads",))
BENCH = PlannedExercise("Bench Press", sets("70", 6, 8, 4), aliases=("bench",))
SWING = PlannedExercise("Kettlebell Swing", sets("20", 15, 15, 4), aliases=("swings",))
GOBLET = PlannedExercise("Goblet Squat", sets("20", 10, 12), aliases=("goblet", "goblets"))
SPLIT = PlannedExercise("Bulgarian Split Squat", sets("25", 8, 10), aliases=("bss",), load_style=LoadStyle.PER_HAND,
                        sides=2)  # fmt: skip
CHIN = PlannedExercise("Chin-Up", sets("15", 5, 5), aliases=("chins",), load_style=LoadStyle.BODYWEIGHT)
ROW = PlannedExercise("Seated Row", sets("30", 10, 12), aliases=("row",))
ROPE = PlannedExercise("Rope Pushdown", sets("27.5", 12, 15, 3, MINI), aliases=("rope",))
HYPER = PlannedExercise("Reverse Hyper", sets("50", 12, 15, 2), aliases=("hypers",))
HANG = PlannedExercise("Copenhagen Plank", sets(None, 20, 30, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS,
                       sides=2)  # fmt: skip


def _read(text: str, *exercises: PlannedExercise, done: tuple[str, ...] = ()) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, exercises, tuple(row(d) for d in done), None))


DEADS = ("Deadlift#1 275x5",)
CHINS = ("Chin-Up#1 15x5", "Chin-Up#2 15x5")
SPLITS = ("Bulgarian Split Squat#1 25x10", "Bulgarian Split Squat#2 25x9 left", "Bulgarian Split Squat#2 25x8 right")
FIRST = ("Bulgarian Split Squat#1 25x9 left", "Bulgarian Split Squat#1 25x10 right")
ROUNDS = (*(f"Kettlebell Swing#{n} 20x15" for n in (1, 2, 3)), *(f"Goblet Squat#{n} 20x10" for n in (1, 2, 3)))
FIVES = ("Chin-Up#1 15x5", "Chin-Up#2 15x5")

LAST = [
    "all three at 15 for 5, last one @9",
    "15 for 5, all three, last set rpe 9",
    "15 x5 x3 last @9",
    "3x5 at 15 last rpe 9",
    "15x5 all sets, rpe 9 on the last",
    "15 5 5 5 rpe 9 on the last one",
    "all 5s at 15, only last was @9",
    "15 all for 5, last rpe 9",
]


@pytest.mark.parametrize("text", LAST)
def test_an_effort_of_the_last_set_is_of_no_other(text: str) -> None:
    assert _read(text, CHIN).performed == rows(*FIVES, "Chin-Up#3 15x5 rir 1")


SIDES = [
    ("bss 25s L9 R10, then 9", ("Bulgarian Split Squat#2 25x9",)),
    ("bss 25s L9 R10, 9, 9", ("Bulgarian Split Squat#2 25x9", "Bulgarian Split Squat#3 25x9")),
    ("bss 25s L9 R10 then two sets of 9", ("Bulgarian Split Squat#2 25x9", "Bulgarian Split Squat#3 25x9")),
    ("bss 25s L9 R10, 2nd 9, 3rd 8", ("Bulgarian Split Squat#2 25x9", "Bulgarian Split Squat#3 25x8")),
    ("bss 25s L9 R10, 9/8", ("Bulgarian Split Squat#2 25x9 left", "Bulgarian Split Squat#2 25x8 right")),
    ("bss 25s L9 R10, then 9 and 8", ("Bulgarian Split Squat#2 25x9 left", "Bulgarian Split Squat#2 25x8 right")),
]


@pytest.mark.parametrize(("text", "rest"), SIDES)
def test_a_set_behind_both_sides_is_of_neither_alone(text: str, rest: tuple[str, ...]) -> None:
    assert _read(text, SPLIT).performed == rows(*FIRST, *rest)


def test_sides_told_as_lists_stay_sides() -> None:
    told = _read("bss 25s left 10 9 8, right 10 10 9", SPLIT).performed
    assert [p.side.value for p in told if p.side is not None] == ["left"] * 3 + ["right"] * 3


@pytest.mark.parametrize(
    "text",
    [
        "3 rounds already: swings 15 and goblet 10",
        "3 rounds done, swings 15 and goblets 10",
        "3 rounds of swings 15, goblets 10",
        "all 3 rounds done: swings 15, goblets 10",
        "swings 15 goblets 10, three rounds of that",
        "3 rounds of everything with the 20: swings 15, goblets 10",
    ],
)
def test_rounds_are_sets_of_each_exercise(text: str) -> None:
    assert _read(text, SWING, GOBLET).performed == rows(*ROUNDS)


RATED = [
    ("coulda got 1 more on that 275", "1"),
    ("could have done 2 more on that 275", "2"),
    ("that 275 was rpe 9", "1"),
    ("275 was rpe 9", "1"),
    ("that 275 had 1 left in it", "1"),
    ("1 left in the tank on that 275", "1"),
    ("rpe 8 on the 275", "2"),
]


@pytest.mark.parametrize(("text", "rir"), RATED)
def test_a_stored_set_named_by_its_load_is_rated(text: str, rir: str) -> None:
    reading = _read(text, DEAD, done=DEADS)
    assert reading.performed == rows(f"Deadlift#1 275x5 rir {rir}")
    assert reading.replaces == (("Deadlift", 1),)


SETS = [
    ("245x5 tpe 9", DEAD, DEADS, ("Deadlift#2 245x5 rir 1",)),
    ("245x5, rpw 8", DEAD, DEADS, ("Deadlift#2 245x5 rir 2",)),
    ("245x5 eir 2", DEAD, DEADS, ("Deadlift#2 245x5 rir 2",)),
    ("245x5 but is too easy i think 255 next", DEAD, DEADS, ("Deadlift#2 245x5",)),
    ("245x5 easy, 255 kg next!", DEAD, DEADS, ("Deadlift#2 245x5",)),
    ("245x5 next 245x4", DEAD, DEADS, ("Deadlift#2 245x5", "Deadlift#3 245x4")),
    ("band on for the third, call it -10, 8 reps", CHIN, CHINS, ("Chin-Up#3 -10x8",)),
    ("third with the band, call it -10, 7", CHIN, CHINS, ("Chin-Up#3 -10x7",)),
    ("third one call it 5", CHIN, CHINS, ("Chin-Up#3 15x5",)),
    ("bench 70 8 8, third my spotter helped so count only 6", BENCH, (),
     ("Bench Press#1 70x8", "Bench Press#2 70x8", "Bench Press#3 70x6")),
    ("bench 70 8 8 then my spotter helped so call it 6", BENCH, (),
     ("Bench Press#1 70x8", "Bench Press#2 70x8", "Bench Press#3 70x6")),
    ("bench 70: 8, 8, third a guy helped me so say 6", BENCH, (),
     ("Bench Press#1 70x8", "Bench Press#2 70x8", "Bench Press#3 70x6")),
    ("row has no 30 today, only 25 and 35. I took 35, was 8.", ROW, (), ("Seated Row#1 35x8",)),
    ("no 30 on the row so took 35 for 8", ROW, (), ("Seated Row#1 35x8",)),
    ("two warm ups with the 12 for 10 each time, then the 20 for 15", SWING, (),
     ("Kettlebell Swing#0 12x10 warmup", "Kettlebell Swing#0 12x10 warmup", "Kettlebell Swing#1 20x15")),
    ("warmed up twice with the 12, then 20 x 15", SWING, (), ("Kettlebell Swing#1 20x15",)),
    ("Four rounds of swings in the books, 15 apiece with the 20.", SWING, (),
     tuple(f"Kettlebell Swing#{n} 20x15" for n in (1, 2, 3, 4))),
    ("Next set also same ma'am", CHIN, ("Chin-Up#1 15x5",), ("Chin-Up#2 15x5",)),
    ("next set will be same", CHIN, ("Chin-Up#1 15x5",), ()),
    ("copenhagen 30 seg each side x2", HANG, (), ("Copenhagen Plank#1 -x30", "Copenhagen Plank#2 -x30")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "exercise", "done", "want"), SETS)
def test_sets(text: str, exercise: PlannedExercise, done: tuple[str, ...], want: tuple[str, ...]) -> None:
    reading = _read(text, exercise, done=done)
    assert (reading.performed, reading.replaces, reading.ask) == (rows(*want), (), None)


@pytest.mark.parametrize("text", ["hypers out today", "left the hypers out", "gave the hypers a miss", "hypers out",
                                  "The hypers I don't do today", "NAE TIME FOR HYPERS", "flicking the hypers",
                                  "left the hypers for next time"])  # fmt: skip
def test_skips(text: str) -> None:
    assert _read(text, DEAD, HYPER).skipped == ("Reverse Hyper",)


@pytest.mark.parametrize("text", ["flat out today", "not leaving the hypers out"])
def test_what_skips_nothing(text: str) -> None:
    assert _read(text, DEAD, HYPER).skipped == ()


BESIDE = [
    ("omg gonna be so sore tmrw hahaha all done!!", True, None, None),
    ("All finished, a lovely session. See you on Thursday.", True, None, None),
    ("all done, back on friday", True, None, None),
    ("picking up at quarter past six so til then. 275x5", False, 15, None),
    ("from work i come late, to 18:50 i have time", False, 50, None),
    ("I take the bus of half past six, so 25 minutes.", False, 25, None),
    ("2 sets left, 15 min, enough?", False, 15, None),
    ("I was on Tuesday here but phone was empty. deads 275x5", False, None, 1),
    ("ystday i did deads 275x5 sorry late msg", False, None, 1),
]


@pytest.mark.parametrize(("text", "finished", "minutes", "ago"), BESIDE)
def test_what_is_told_beside_sets(text: str, finished: bool, minutes: int | None, ago: int | None) -> None:
    reading = _read(text, DEAD, HYPER)
    day: date | None = None if ago is None else NOW.date() - timedelta(days=ago)
    assert (reading.finished, reading.minutes, reading.day) == (finished, minutes, day)


def test_a_phrase_of_one_who_thinks_asks_nothing() -> None:
    reading = _read("um what was i going to say oh the deadlift was five reps at 265", DEAD)
    assert (reading.performed, reading.question) == (rows("Deadlift#1 265x5"), False)


def test_minis_counted_and_told() -> None:
    done = (*(f"Rope Pushdown#{n} 27.5x14" for n in (1, 2, 3)), "Rope Pushdown#3 27.5x4 mini")
    reading = _read("also did 2 more minis after, 3 and 2", ROPE, done=done)
    assert reading.performed == rows("Rope Pushdown#3 27.5x3 mini", "Rope Pushdown#3 27.5x2 mini")


@pytest.mark.parametrize("who", ["my 8 year old", "my 6yo", "my 10-year-old", "the toddler", "our nine year old",
                                 "a 70 year old", "my 8 yr old"])  # fmt: skip
@pytest.mark.parametrize("mine", ["", " haha. mine: 30x10", ", me 30x10"])
def test_what_somebody_of_an_age_did_is_not_the_clients(who: str, mine: str) -> None:
    """`my 8 year old did 3 rows with a bottle`: who did it is another, however he is called."""
    reading = _read(f"{who} did 3 rows with a bottle{mine}", ROW)
    assert (reading.ask, reading.performed) == (None, rows("Seated Row#1 30x10") if mine else ())
