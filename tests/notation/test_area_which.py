"""Sets of the exercise under way: which set it was, loads said once, failed repetitions, drops, sides, sets told apart.

Each list holds wordings of one meaning, on one plan; the wanted sets follow from the reading rules. Common practice, no
source.
"""

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import Drop, LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import DROP, MINI, NOW, row, rows, sets

HAND, BODY = LoadStyle.PER_HAND, LoadStyle.BODYWEIGHT
PLANS = {
    "hi": PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",)),
    "cl": PlannedExercise("Power Clean", sets("70", 3, 3, 4), aliases=("cleans",)),
    "sq": PlannedExercise("Back Squat", sets("100", 5, 5), aliases=("squats",)),
    "ro": PlannedExercise("Seated Row", sets("50", 10, 12), aliases=("rows",)),
    "db": PlannedExercise("Dumbbell Bench Press", sets("24", 8, 10), aliases=("db bench",), load_style=HAND),
    "sp": PlannedExercise("Split Squat", sets("16", 8, 10), aliases=("splits",), load_style=HAND, sides=2),
    "cu": PlannedExercise("Leg Curl", sets("35", 10, 12, 3, DROP), aliases=("leg curls",)),
    "dp": PlannedExercise("Weighted Dip", sets("15", 6, 8, 3, DROP), aliases=("dips",), load_style=BODY),
    "pu": PlannedExercise("Push-Up", sets("0", 12, 20, 1, MINI) * 2, aliases=("push ups",), load_style=BODY),
    "ch": PlannedExercise("Assisted Chin-Up", sets("-40", 6, 8), aliases=("chins",), load_style=BODY),
    "ex": PlannedExercise("Leg Extension", sets("42.5", 12, 15, 3, Drop(2, (20, 30))), aliases=("extensions",)),
    "rw": PlannedExercise("Single-Arm Row", sets("24", 10, 12), aliases=("arm rows",), load_style=HAND, sides=2),
    "sm": PlannedExercise("Smith Squat", sets(None, 8, 10), aliases=("smith",)),
    "lo": PlannedExercise("Low Row", sets("45", 10, 12), aliases=("low rows",)),
    "hr": PlannedExercise("High Row", sets("45", 10, 12), aliases=("high rows",)),
    "ca": PlannedExercise("Suitcase Carry", sets("24", 20, 40, 2), aliases=("carry",), load_style=HAND, sides=2,
                          measure=Measure.METRES),
}  # fmt: skip


def _rows(written: str) -> tuple[str, ...]:
    """`hi1 90x10; hi2 90x9` as rows in the way of `plans.row`; warm-ups have the number 0."""
    parts = [p.strip().split(" ", 1) for p in written.split(";") if p.strip()]
    return tuple(f"{PLANS[short[:2]].name}#{short[2:]} {body}" for short, body in parts)


def _read(session: str, done: str, text: str) -> Reading:
    exercises = tuple(PLANS[short] for short in session.split())
    return read_message(Request(text, Unit.KG, NOW, exercises, tuple(row(r) for r in _rows(done))))


def _check(session: str, done: str, text: str, wanted: str) -> None:
    reading = _read(session, done, text)
    assert (reading.ask, reading.performed, reading.skipped) == (None, rows(*_rows(wanted)), ())


ONE = "hi1 90x10"
TWO = "hi1 90x10; hi2 90x9"
CURLS = "cu1 35x12; cu2 35x12; cu3 35x10"
CLEANS = "cl1 70x3; cl2 70x3; cl3 70x3"
Meaning = tuple[str, str, str, tuple[str, ...]]
FAILED: list[Meaning] = [
    ("hi", "", "hi1 90x10; hi2 90x9; hi3 90x7 rir 0", (
        "90x10, 90x9, missed the 8th on the last one", "90x10, 90x9, then got stuck on the 8th",
        "90 x 10, 9, 7. 8th rep wouldn't go", "90x10, 90x9, 90x7 the eighth did not go up any more",
        "90x10 90x9 and failed the 8th on the third")),
    ("hi", TWO, "hi3 90x7 rir 0", (
        "failed the 8th so 7", "the 8th got stuck", "missed the eighth on the last thrusts set",
        "missed the 8th on the last set at 90")),
    ("cl", CLEANS, "cl4 77.5x2 rir 0", ("missed the third on the last clean at 77.5", "missed the 3rd at 77.5")),
    ("sq", "sq1 100x5; sq2 100x5", "sq3 95x4", (
        "bailed after 4 at 95", "95, bailed after 4", "dropped to 95 and got 4")),
]  # fmt: skip
LOADS: list[Meaning] = [
    ("cl", "", "cl1 70x3; cl2 72.5x3; cl3 75x3; cl4 75x3", (
        "70 72.5 75 75 all triples", "cleans 3s at 70, 72.5, 75, 75", "70/72.5/75/75 x3",
        "three reps each at 70, 72.5, 75, 75", "all triples: 70, 72.5, 75 and 75")),
    ("cl", "", "cl1 70x3 rir 2; cl2 70x3 rir 2; cl3 72.5x3 rir 1; cl4 72.5x3 rir 0", (
        "cleans 3s at 70, 70, 72.5, 72.5. rir was 2, 2, 1, 0", "70, 70, 72.5, 72.5 all triples, rir 2 2 1 0")),
    ("hi", "", "hi1 80x10; hi2 80x9; hi3 80x8", (
        "10, 9, 8 at 80", "thrusts 10/9/8 @80", "10 then 9 then 8 with 80 on",
        "weight was 80, did 10, rested, did 9, then 8")),
    ("db", "", "db1 22x10; db2 22x9", (
        "ten and then nine with the 22s", "twenty twos for ten then nine", "10 then 9, both with 22s")),
    ("hi", ONE, "hi2 95x10", ("same but 5 kg heavier", "5kg more, same reps", "same again at 95", "up 5kg, 10 again")),
    ("hi", ONE, "hi2 85x10", ("same but 5kg lighter", "dropped 5kg, 10 reps")),
    ("ch", "ch1 -40x7", "ch2 -30x6", ("turned the help down to 30 and got 6", "help turned down to 30, 6")),
    ("hi", "", "hi0 40x5 warmup; hi0 60x3 warmup; hi1 90x10", (
        "w/u 40x5 60x3, then 90x10", "w/up 40x5, 60x3 then 90x10", "40x5 (w/u), 60x3 (w/u), 90x10")),
    ("hi", "", "hi0 30x8 warmup; hi1 90x10", ("30x8 warm up then 90x10", "w/u 30x8 90x10")),
    ("ro sq", "ro1 50x12; ro2 50x12; ro3 50x12", "sq1 100x5 rir 3; sq2 100x5 rir 3; sq3 100x5 rir 3", (
        "three sets of five at one hundred and rpe seven for all of them", "3 sets of 5 at 100, rpe 7 on each",
        "squats 3x5 100 rpe 7 each")),
    ("hi", "", "hi1 90x10; hi2 90x9; hi3 90x8", ("90 for 10 then 9 then 8 baby woke up",)),
    ("hi", ONE, "hi2 90x9; hi3 90x9", ("I then managed nine, and nine again after a short rest.",)),
]  # fmt: skip
FINISHES: list[Meaning] = [
    ("cu", "", f"{CURLS}; cu3 25x8 drop", (
        "35x12, 35x12, 35x10 and in the drop 25 for 8", "35 x12 x12 x10 ds 25x8",
        "35x12, 35x12, 35x10, for the drop 25x8")),
    ("cu", CURLS, "cu3 25x8 drop", (
        "the drop after that was twenty five for eight by the way", "ds 25x8", "the drop on the last one was 25x8")),
    ("dp", "dp1 15x8; dp2 15x7", "dp3 15x7; dp3 0x9 drop", ("+15x7 drop bw x 9", "15x7 then bodyweight for 9")),
    ("pu", "", "pu1 0x17; pu1 0x4 mini; pu1 0x4 mini; pu2 0x14; pu2 0x4 mini; pu2 0x3 mini", (
        "push ups 17 then 4 4, second set 14 then 4 3", "17 + 4 + 4, 14 + 4 + 3", "17 minis 4 4, 14 minis 4 3")),
]  # fmt: skip
SIDES: list[Meaning] = [
    ("sp", "", "sp1 16x8 left", ("left leg only. 16s x 8", "16s x 8 left only")),
    ("sp", "", "sp1 16x10", ("10 at 16 each leg",)),
    ("sp", "", "sp1 16x10; sp2 16x10; sp3 16x10", ("splits 10 ea x3", "10 a side, three sets, 16s")),
    ("ca", "", "ca1 24x40 right; ca1 24x30 left", ("carry 24kg right 40m left 30m, grip is weak on left",)),
]
APART: list[Meaning] = [
    ("hi", "", "hi1 90x10; hi2 90x10; hi3 90x8", (
        "90x10 three times but 8 on the last", "all three at 90 for 10, well 8 on the last")),
    ("hi", "", "hi1 90x10; hi2 90x9; hi3 90x9", (
        "3x10 at 90, last two 9", "90x10x3 but 9 on the last two", "first 10 the others 9, at 90",
        "9s at 90 except the first was 10")),
    ("cl", "", "cl1 70x3; cl2 70x3; cl3 70x2; cl4 70x2", (
        "4x3 at 70, last two 2", "70x3x4 but the last two were doubles", "first two 3, other two 2, at 70",
        "70x3 twice then 70x2 twice")),
    ("hi", "", "hi1 90x10; hi2 90x8; hi3 90x10", ("thrusts 3x10 90, 8 on the 2nd", "10s at 90 but only 8 on set 2")),
    ("hi", "", "hi1 90x10; hi2 90x10; hi3 85x10", (
        "90x10x3, last one at 85", "90x10x3 but dropped to 85 for the last")),
    ("hi", "", "hi1 90x10; hi2 90x10; hi3 85x8", (
        "first two 90x10, last 85x8", "3x10 at 90 but the last was 85 for 8")),
    ("hi", "", "hi1 90x10; hi2 90x10; hi3 90x8 rir 1", ("90x10x3, 8 on the last with 1 left",)),
    ("db", "", "db1 24x10; db2 24x10; db3 24x8", (
        "24s x10 x3, 8 on the last", "db bench all 10s with 24s, last one 8")),
    ("db", "", "db1 24x10; db2 24x10; db3 22x10", ("24s 3x10, last one with 22s",)),
    ("sp", "", "sp1 16x10; sp2 16x10; sp3 16x8", (
        "3x10 each leg with 16s, 8 on the last", "3x10/side 16s but last was 8")),
    ("hi ro", "", "hi1 90x10; hi2 90x10; hi3 90x8; ro1 50x12; ro2 50x12; ro3 50x12", (
        "thrusts 3x10 at 90 (8 on the last), rows 3x12 at 50", "thrusts 90x10x3 but last was 8\nrows 50x12x3")),
    ("hi ro", "", "hi1 90x10; hi2 90x10; hi3 90x10; ro1 50x12; ro2 50x12; ro3 50x10", (
        "90x10x3 on thrusts, 50x12x3 on rows but 10 on the last",)),
    ("hi", "", "hi1 90x10; hi2 90x10; hi3 85x10", ("first two at 90, last one 85, all 10s",)),
    ("db", "", "db1 24x10; db2 24x10; db3 22x10", ("24s for the first two, 22s for the last, all 10",)),
    ("db", "", "db1 24x10; db2 24x9", ("24s x 10 strict, x 9 and my forearms hate you",)),
    ("hi", ONE, "hi2 90x9; hi3 90x9", ("rest all 9", "the other two sets 9 reps each", "both others 9")),
]  # fmt: skip
EXT = "ex1 42.5x14; ex2 42.5x14; ex3 42.5x13; ex3 32.5x8 drop; ex3 25x7 drop"
ROWS = "rw1 24x12; rw2 24x11"
HALF = "rw1 24x12 left"
BOTH = "rw1 24x12 left; rw1 24x11 right"
SMITH = "sm1 -x9; sm2 -x8; sm3 -x8"
Change = tuple[str, str, str, str, tuple[str, ...]]
CORRECTED: list[Change] = [
    ("hi ro", TWO, "hi1", "hi1 90x8", (
        "thrusts #1 was 8 reps", "can you change thrust set 1 to 8?", "thrust set 1 i told 10 but it was 8",
        "in fact it was eight for the first thrusts", "i put 10 for thrusts #1 but it was eight",
        "can you amend the first thrust set? it was 8", "the opener on thrusts was 8",
        "one correction sir, first set of thrusts I told 10 but it was 8",
        "the first thrust set has to be 8 instead of 10")),
    ("hi ro", TWO, "hi1", "hi1 80x10", (
        "set one was 80, only the second one was 90", "set 1 was 80, second one's right",
        "hang on. set one was 80, only the second one was 90")),
    ("hi ro", TWO, "hi1 hi2", "hi1 80x10; hi2 85x9", (
        "thrusts set 1 was 80, set 2 was 85", "first thrusts 80, second 85, i mixed the plates up")),
    ("hi ro", f"{TWO}; hi3 90x8; ro1 50x12", "ro1 hi3", "ro1 52.5x12; hi3 90x7", (
        "correcting: the row was 52.5, and thrusts 3 only 7 reps",
        "two fixes: the row was 52.5 and thrust set 3 was 7")),
    ("hi ro", f"{TWO}; hi3 90x8", "hi3", "hi3 95x8; ro1 50x12", ("last thrust set was 95, and rows first set 50x12",)),
    ("hi ro", TWO, "hi1 hi2", "hi1 90x9; hi2 90x10", (
        "swap the two thrust sets round, it was 9 and then 10", "sets 1 and 2 of thrusts are swapped",
        "the two thrust sets are the wrong way round", "i mixed up the thrust sets, first was 9 and second 10")),
    ("hi ro", TWO, "hi1 hi2", "hi1 90x10 rir 3; hi2 90x9 rir 1; hi3 90x8", (
        "third set 90x8, and btw second one was 1 rir, first one 3 rir",)),
    ("hi ro", TWO, "hi1 hi2", "hi1 90x10 rir 3; hi2 90x9 rir 1", (
        "second one was 1 rir, first one 3 rir", "first thrust set @7, second @9",
        "set 2 of thrusts i had 1 left in me, set 1 3 left in me")),
    ("ex ro", EXT, "ex3", "ex3 42.5x13; ex3 32.5x8 drop; ex3 25x6 drop", (
        "the last drop was only 6 reps", "second drop was 6", "extensions set 3 second drop was 6",
        "set 3 drop 2 -> 6 reps", "the second extension drop was 6 not 7")),
    ("ex ro", f"{EXT}; ro1 50x12", "ex3", "ex3 42.5x13; ex3 30x8 drop; ex3 25x7 drop", (
        "the first drop was 30", "the first extension drop was 30 not 32.5", "first drop was 30x8")),
    ("ex ro", EXT, "ex3", "ex3 42.5x13; ex3 30x8 drop; ex3 22.5x7 drop", ("first drop 30 second drop 22.5",)),
    ("rw", ROWS, "rw2", "rw2 24x11 left; rw2 24x9 right", (
        "right arm of set 2 was 9", "set 2 L11 R9", "on the second row i got 11 left 9 right")),
    ("rw", BOTH, "rw1", "rw1 24x12 rir 1 left; rw1 24x11 rir 2 right", (
        "could have done 1 more on the left and 2 more on the right there", "left rir 1, right rir 2",
        "left had 1 in the tank, right 2", "left side was rpe 9 and right rpe 8")),
    ("rw", BOTH, "rw1", "rw1 24x12 rir 1 left; rw1 24x11 right", ("left arm was rpe 9", "that was rpe 9 on the left")),
    ("sm ro", "sm1 -x9", "sm1", "sm1 70x9", (
        "weight was 70", "forgot to say, it was 70 kilos", "with 70kg btw", "70 on the bar for that", "i used 70",
        "weight: 70", "70x9 i mean")),
    ("sm ro", SMITH, "sm1 sm2 sm3", "sm1 70x9; sm2 70x8; sm3 70x8", ("all at 70", "weight was 70 for all of them")),
    ("sm", SMITH, "sm1 sm2 sm3", "sm1 70x9; sm2 70x8; sm3 75x8", ("first two were with 70, last with 75",)),
]  # fmt: skip
GONE: list[Change] = [
    ("hi ro", f"{TWO}; ro1 50x12", "hi2", "", (
        "pls cancel the second thrust set, it didn't happen", "take thrust set 2 off again", "i never did thrust set 2",
        "wipe the second set of thrusts, logged it by accident", "can you delete thrust set 2?",
        "there was no second thrust set")),
    ("ex ro", f"{EXT}; ro1 50x12", "ex3", "ex3 42.5x13; ex3 32.5x8 drop", (
        "take the second drop off again, I only did one", "delete the last drop", "there was no second drop",
        "scrap drop number two", "the second drop shouldn't be there, delete it")),
]  # fmt: skip
TOLD_LATER: list[Meaning] = [
    ("rw", HALF, "rw1 24x12 right", (
        "okay so the right arm on that row, I forgot to say, was twelve too", "right was also 12", "same on the right",
        "the other arm was 12", "the other side was the same", "and the right arm 12 as well")),
    ("rw", "rw1 24x12", "rw2 24x9 left; rw2 24x11 right", (
        "9 on the weak side (left) and 11 on the other", "left 9, 11 on the other one")),
    ("rw", "rw1 24x12", "rw2 24x11 right; rw2 24x9 left", ("11 on the strong side (right) 9 on the weak one",)),
    ("rw", "rw1 24x12", "rw2 24x12 left; rw2 24x10 rir 0 right", ("set 2 left 12, right 10 with nothing left",)),
    ("cu ro", f"{CURLS}; ro1 50x12", "cu3 25x8 drop", (
        "forgot to write the dropset before: it was 25 for 8", "forgot the drop earlier, 25x8")),
]  # fmt: skip
DOUBTED = [
    ("hi ro", TWO, text) for text in (
        "I sent 90 but it might have been 95, not sure which plates it was", "that might have been 8",
        "thrust set 2 might have been 8", "maybe 8 on the second thrusts")
]  # fmt: skip
DOUBTED += [("lo hr hi", "lo1 45x12; lo2 45x12; hr1 45x12; hr2 45x12; hi1 90x10", "row set 2 was 11"),
            ("ex ro", EXT, "extension drops: 30x8, 25x7")]  # fmt: skip
CASES = [
    (session, done, text, wanted)
    for session, done, wanted, texts in (*FAILED, *LOADS, *FINISHES, *SIDES, *APART, *TOLD_LATER)
    for text in texts
]


@pytest.mark.parametrize(("session", "done", "text", "wanted"), CASES)
def test_the_sets_are_those_that_the_words_tell(session: str, done: str, text: str, wanted: str) -> None:
    _check(session, done, text, wanted)


CHANGES = [
    (session, done, text, replaced, wanted)
    for session, done, replaced, wanted, texts in (*CORRECTED, *GONE)
    for text in texts
]


@pytest.mark.parametrize(("session", "done", "text", "replaced", "wanted"), CHANGES)
def test_a_correction_replaces_just_the_sets_that_it_names(
    session: str, done: str, text: str, replaced: str, wanted: str
) -> None:
    reading = _read(session, done, text)
    keys = {(PLANS[key[:2]].name, int(key[2:])) for key in replaced.split()}
    said = (reading.ask, reading.skipped, reading.question, set(reading.replaces))
    assert said == (None, (), False, keys)
    assert sorted(map(repr, reading.performed)) == sorted(map(repr, rows(*_rows(wanted))))


@pytest.mark.parametrize(("session", "done", "text"), DOUBTED)
def test_what_is_in_doubt_of_a_stored_set_is_asked(session: str, done: str, text: str) -> None:
    reading = _read(session, done, text)
    assert reading.ask is not None
    assert (reading.performed, reading.replaces) == ((), ())
