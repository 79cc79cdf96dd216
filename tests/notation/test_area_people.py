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


BOX = PlannedExercise("Box Squat", sets("95", 5, 5), aliases=("box squat",))
STEP = PlannedExercise("Step-Up", sets("14", 10, 10), aliases=("step ups",), load_style=LoadStyle.PER_HAND, sides=2)
THRUST = PlannedExercise("Hip Thrust", sets("100", 8, 10), aliases=("thrusts",))
PRESS = PlannedExercise("Overhead Press", sets("42.5", 5, 7), aliases=("ohp",))
KNEELING = PlannedExercise("Kneeling Push-Up", sets("0", 6, 10), load_style=LoadStyle.BODYWEIGHT)
BAND = PlannedExercise("Band Pull-Apart", sets(None, 15, 20, 2), load_style=LoadStyle.NONE)
ADDUCTION = PlannedExercise("Hip Adduction", sets("50", 12, 15, 2))
ABDUCTION = PlannedExercise("Hip Abduction", sets("55", 12, 15, 2))
CABLE_ROW = PlannedExercise("Single-Arm Cable Row", sets("25", 10, 12), sides=2)
CABLE_RAISE = PlannedExercise("Cable Lateral Raise", sets("5", 12, 15, 2), sides=2)
BOXES = ("Box Squat#1 95x5", "Box Squat#2 95x5", "Box Squat#3 95x4")
STEPS = tuple(f"Step-Up#{n} 14x10" for n in (1, 2, 3))


@pytest.mark.parametrize(
    "text",
    [
        "９５ｋｇ×５、９５ｋｇ×５、９５ｋｇ×４", "95×5、5、4", "95kg×5・95kg×5・95kg×4", "95×5。95×5。95×4",
        "95x5 → 95x5 → 95x4", "95x5 -> 95x5 -> 95x4", "95x5 → same → 95x4", "95x5→same→4", "95x5, same, 4",
        "1set 95×5, 2set 95×5, 3set 95×4", "95x5 / same / same but 4",
    ],
)  # fmt: skip
def test_signs_of_other_scripts_and_arrows_part_sets(text: str) -> None:
    assert _read(text, BOX, STEP).performed == rows(*BOXES)


def test_an_arrow_to_less_stays_a_drop() -> None:
    assert [p.stage.value for p in _read("95x5 > 70x8", BOX).performed] == ["work", "drop"]


@pytest.mark.parametrize("link", [" → ", " / ", ", ", " > "])
@pytest.mark.parametrize("last", ["same but rir 1", "same rir 1", "same with rir 1"])
def test_each_same_is_a_set(link: str, last: str) -> None:
    want = ("Box Squat#1 95x5 rir 3", "Box Squat#2 95x5", "Box Squat#3 95x5 rir 1")
    assert _read(link.join(("95x5 rir 3", "same", last)), BOX).performed == rows(*want)


@pytest.mark.parametrize("half", ["y medio", "und halb", "e mezzo", "e meio", "et demi", "i pół", "og en halv", "½",
                                  "buçuk", "and half", "1/2"])  # fmt: skip
def test_a_half_by_any_name(half: str) -> None:
    assert _read(f"100x10 rpe 8 {half}", THRUST).performed == rows("Hip Thrust#1 100x10 rir 1.5")
    assert _read(f"42 {half} x 6", PRESS).performed == rows("Overhead Press#1 42.5x6")


@pytest.mark.parametrize("side", ["pr leg", "for every leg", "x leg", "every leg", "pro bein", "por pierna", "pr. leg",
                                  "each of the legs", "per one leg", "cada pierna"])  # fmt: skip
@pytest.mark.parametrize("count", ["3 series", "x3", "3 times"])
def test_each_side_in_other_words(side: str, count: str) -> None:
    assert _read(f"step ups 14s 10 {side} {count}", BOX, STEP).performed == rows(*STEPS)


@pytest.mark.parametrize("plan", ["according to program", "according to plan", "as it stands in the plan",
                                  "like in the plan", "accordingly to the plan", "following the program"])  # fmt: skip
def test_according_to_the_plan_is_as_planned(plan: str) -> None:
    assert _read(f"step ups, all sets {plan}", STEP, BOX).performed == rows(*STEPS)


FAMILY = [
    ("knee push-up: 9, 8, 8", KNEELING, tuple(f"Kneeling Push-Up#{n} 0x{r}" for n, r in ((1, 9), (2, 8), (3, 8)))),
    ("push ups on the floor 9, 8, 8", KNEELING,
     tuple(f"Kneeling Push-Up#{n} 0x{r}" for n, r in ((1, 9), (2, 8), (3, 8)))),
    ("Band: 20, 20", BAND, ("Band Pull-Apart#1 -x20", "Band Pull-Apart#2 -x20")),
    ("bands 20, 20", BAND, ("Band Pull-Apart#1 -x20", "Band Pull-Apart#2 -x20")),
    ("cable 25x12 each hand", CABLE_ROW, ("Single-Arm Cable Row#1 25x12",)),
    ("cable: 25 kg, 12 each hand", CABLE_ROW, ("Single-Arm Cable Row#1 25x12",)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "exercise", "want"), FAMILY)
def test_families_of_names(text: str, exercise: PlannedExercise, want: tuple[str, ...]) -> None:
    assert _read(text, exercise, CABLE_RAISE, BOX).performed == rows(*want)


AGAIN = ["then again both for 14", "then both again for 14", "both again, 14", "then 14 on both",
         "second round both 14", "and again both 14", "then both 14"]  # fmt: skip
BOTH = ("Hip Abduction#1 55x15", "Hip Adduction#1 50x15", "Hip Abduction#2 55x14", "Hip Adduction#2 50x14")


@pytest.mark.parametrize("text", AGAIN)
def test_both_again_is_a_set_of_each(text: str) -> None:
    assert _read(f"abduction 55x15, adduction 50x15, {text}", ADDUCTION, ABDUCTION).performed == rows(*BOTH)


@pytest.mark.parametrize("text", ["both felt easy", "both easy", "both were good"])
def test_how_both_felt_is_no_set(text: str) -> None:
    assert _read(f"abduction 55x15, adduction 50x15, {text}", ADDUCTION, ABDUCTION).performed == rows(*BOTH[:2])


OF_ALL = [
    *((f"chins 5 @8 and 4 @9.5, {said}", ("Chin-Up#1 15x5 rir 2", "Chin-Up#2 15x4 rir 0.5"))
      for said in ("both with +15", "both +15", "+15 on both", "both at +15", "all with +15", "both sets with +15")),
    *((f"chins +17.5x5 then {said}, 5 and 4", ("Chin-Up#1 17.5x5", "Chin-Up#2 0x5", "Chin-Up#3 0x4"))
      for said in ("two sets at just bodyweight", "two sets bw", "2 sets of bodyweight", "the last two bodyweight")),
    *((f"{said} 15x5", ("Chin-Up#1 15x5", "Chin-Up#2 15x5"))
      for said in ("2 down both", "two done, both", "both", "both at", "2 in the bag, both")),
    ("2 down both 15x5. third one i failed the fifth", ("Chin-Up#1 15x5", "Chin-Up#2 15x5", "Chin-Up#3 15x4 rir 0")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "want"), OF_ALL)
def test_what_is_told_of_both_sets(text: str, want: tuple[str, ...]) -> None:
    reading = _read(text, CHIN)
    assert (reading.performed, reading.ask) == (rows(*want), None)


@pytest.mark.parametrize("text", ["right 8 left 8, two sets", "8 right 8 left, 2 sets", "left 8, right 8, 2 times"])
def test_equal_sides_for_so_many_sets(text: str) -> None:
    want = ("Bulgarian Split Squat#1 25x8", "Bulgarian Split Squat#2 25x8")
    assert _read(f"bss 25s {text}", SPLIT).performed == rows(*want)


@pytest.mark.parametrize("text", ["how i know with which weight to begin in the machine",
                                  "with which weight i must begin",
                                  "how i must put the feet", "must i go until failure"])  # fmt: skip
def test_questions_with_their_verb_behind(text: str) -> None:
    assert _read(text, BOX).question


@pytest.mark.parametrize("text", ["i assist to a meeting after, so 35 min no more", "no more than 35 min",
                                  "so 35 min and no more"])  # fmt: skip
def test_time_bounded_by_no_more(text: str) -> None:
    assert _read(text, BOX).minutes == 35


HURTS = [("it pricks in the left shoulder when i go low", "shoulder"), ("waist is a little painful", "waist"),
         ("in the left knee it pricks when i go down", "knee")]  # fmt: skip


@pytest.mark.parametrize(("text", "where"), HURTS)
def test_hurts_in_other_words(text: str, where: str) -> None:
    pain = _read(text, BOX).pain
    assert pain is not None
    assert pain.where == where


def test_how_you_say_is_no_plan() -> None:
    reading = _read("i am constipated (how you say... with a cold) but here we go", BOX)
    assert (reading.ask, reading.pain, reading.performed) == (None, None, ())
