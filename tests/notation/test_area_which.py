"""Sets of the exercise under way: which set it was, loads said once, failed repetitions, drops, sides, sets told apart.

Each list holds wordings of one meaning, on one plan; the wanted sets follow from the reading rules. Common practice, no
source.
"""

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
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
    "ca": PlannedExercise("Suitcase Carry", sets("24", 20, 40, 2), aliases=("carry",), load_style=HAND, sides=2,
                          measure=Measure.METRES),
}  # fmt: skip


def _rows(written: str) -> tuple[str, ...]:
    """`hi1 90x10; hi2 90x9` as rows in the way of `plans.row`; warm-ups have the number 0."""
    parts = [p.strip().split(" ", 1) for p in written.split(";") if p.strip()]
    return tuple(f"{PLANS[short[:2]].name}#{short[2:]} {body}" for short, body in parts)


def _check(session: str, done: str, text: str, wanted: str) -> None:
    exercises = tuple(PLANS[short] for short in session.split())
    reading = read_message(Request(text, Unit.KG, NOW, exercises, tuple(row(r) for r in _rows(done))))
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
CASES = [
    (session, done, text, wanted)
    for session, done, wanted, texts in (*FAILED, *LOADS, *FINISHES, *SIDES, *APART)
    for text in texts
]


@pytest.mark.parametrize(("session", "done", "text", "wanted"), CASES)
def test_the_sets_are_those_that_the_words_tell(session: str, done: str, text: str, wanted: str) -> None:
    _check(session, done, text, wanted)
