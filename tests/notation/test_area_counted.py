"""Sets of the exercise under way in more words: failures, one told apart, sides, hands, plurals, loads for all."""

from collections import Counter
from dataclasses import replace
from datetime import UTC, datetime
from itertools import product

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed, Side
from bot.training.units import Unit
from tests.notation.plans import DROP, MINI, NOW, row, sets

HAND, BODY, NONE = LoadStyle.PER_HAND, LoadStyle.BODYWEIGHT, LoadStyle.NONE
BENCH = (
    PlannedExercise("Bench Press", sets("60", 8, 10), aliases=("bench",)),
    PlannedExercise("Back Squat", sets("100", 5, 5), aliases=("squat",)),
)
FIVES = (PlannedExercise("Bench Press", sets("60", 5, 5), aliases=("bench",)),)
PRESS = (PlannedExercise("Leg Press", sets("140", 12, 12, 4)),)
PULL = (PlannedExercise("Deadlift", (*sets("140", 5, 5, 1), *sets("115", 8, 8, 2)), aliases=("deads",)),)
ROW = (PlannedExercise("Dumbbell Row", sets("26", 8, 10), aliases=("rows",), load_style=HAND, sides=2),)
SPLIT = (
    PlannedExercise("Split Squat", sets("16", 10, 10), aliases=("splits",), load_style=HAND, sides=2),
    PlannedExercise("Side Plank", sets(None, 30, 45, 2), load_style=NONE, sides=2, measure=Measure.SECONDS),
    PlannedExercise("Farmer Carry", sets("24", 40, 40), aliases=("carries",), load_style=HAND, measure=Measure.METRES),
)
BELL = (PlannedExercise("Kettlebell Press", sets("20", 5, 5), aliases=("kb press",), load_style=HAND, sides=2),)
CURL = (PlannedExercise("Hammer Curl", sets("14", 10, 12), aliases=("hammers",), load_style=HAND),)
FLY = (PlannedExercise("Chest Fly", sets("15", 12, 15), aliases=("flyes",), load_style=HAND),)
LOG = (
    PlannedExercise("Log Press", sets("70", 2, 2, 5), aliases=("log",)),
    PlannedExercise("Sandbag Carry", sets("80", 20, 20, 2), aliases=("sandbag",), measure=Measure.METRES),
)
CHIN = (
    PlannedExercise("Chin-Up", sets("10", 6, 8), aliases=("chins",), load_style=BODY),
    PlannedExercise("Ring Row", sets("0", 10, 15, 2), aliases=("ring rows",), load_style=BODY),
)
DIP = (PlannedExercise("Assisted Dip", sets("-25", 8, 10), aliases=("dips",), load_style=BODY),)
SLED = (
    PlannedExercise("Sled Push", sets("60", 20, 20, 4), aliases=("sled",), measure=Measure.METRES),
    PlannedExercise(
        "Rowing Machine", sets(None, 500, 500, 2), aliases=("erg",), load_style=NONE, measure=Measure.METRES
    ),
    PlannedExercise("Plank", sets(None, 30, 45), load_style=NONE, measure=Measure.SECONDS),
)

Session = tuple[PlannedExercise, ...]
Case = tuple[str, Session, str, str]
FAILED: list[Case] = [
    ("60x5 (f)", FIVES, "", "1 60x5 rir 0"),
    ("60x5, 5, 4 F", FIVES, "", "1 60x5, 2 60x5, 3 60x4 rir 0"),
    ("60x4 then a miss", FIVES, "", "1 60x4 rir 0"),
    ("60x4 + miss", FIVES, "", "1 60x4 rir 0"),
    ("60 for 4, then failed", FIVES, "", "1 60x4 rir 0"),
    ("60 for 4 with a miss on the fifth", FIVES, "", "1 60x4 rir 0"),
    ("60x4 + a failed rep", FIVES, "", "1 60x4 rir 0"),
    ("4 then a miss", FIVES, "1 60x5", "2 60x4 rir 0"),
    ("got 4, then a fail", FIVES, "1 60x5", "2 60x4 rir 0"),
    ("4 good reps and then one miss", FIVES, "1 60x5", "2 60x4 rir 0"),
    ("60x8f. squat 100x5", BENCH, "", "1 60x8 rir 0, Back#1 100x5"),
    ("60x10 @ failure", BENCH, "", "1 60x10 rir 0"),
    ("60 x 10 amrap", BENCH, "", "1 60x10"),
    ("60x9, 9f, 8f", BENCH, "", "1 60x9, 2 60x9 rir 0, 3 60x8 rir 0"),
    ("60x10 missed my bus", BENCH, "", "1 60x10"),
]
BEHIND: list[Case] = [
    ("5 at 140 then 8 and 8 at 115", PULL, "", "1 140x5, 2 115x8, 3 115x8"),
    ("5 at 140 and then 8, 8 at 115", PULL, "", "1 140x5, 2 115x8, 3 115x8"),
    ("5 reps at 140, 8 reps and 7 reps at 115", PULL, "", "1 140x5, 2 115x8, 3 115x7"),
    ("5 at 140, then two 8s at 115", PULL, "", "1 140x5, 2 115x8, 3 115x8"),
    ("10 at 60, 9 and 8 at 55", BENCH, "", "1 60x10, 2 55x9, 3 55x8"),
    ("10, 9 at 60, 8 at 55", BENCH, "", "1 60x10, 2 60x9, 3 55x8"),
    ("10 9 8 at 60", BENCH, "", "1 60x10, 2 60x9, 3 60x8"),
    ("12 with the 14s, 11 and 10 with the 12s", CURL, "", "1 14x12, 2 12x11, 3 12x10"),
    ("8 with 10, 7 and 6 bodyweight", CHIN, "", "1 10x8, 2 0x7, 3 0x6"),
]
ALIKE: list[Case] = [
    ("two eights", PULL, "1 140x5", "2 115x8, 3 115x8"),
    ("2 more 9s", BENCH, "1 60x10", "2 60x9, 3 60x9"),
    ("two solid nines", BENCH, "1 60x10", "2 60x9, 3 60x9"),
    ("couple of 9s", BENCH, "1 60x10", "2 60x9, 3 60x9"),
    ("two tens and an eight", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("bench 60, couple of tens, then a nine", BENCH, "", "1 60x10, 2 60x10, 3 60x9"),
    ("3 times 60x9", BENCH, "", "1 60x9, 2 60x9, 3 60x9"),
    ("60 for 9 done thrice", BENCH, "", "1 60x9, 2 60x9, 3 60x9"),
    ("two twelves with the 14s", CURL, "", "1 14x12, 2 14x12"),
    ("and one single", LOG, "1 70x2, 2 70x2, 3 70x2, 4 70x2", "5 70x1"),
    ("two, two, two, two, one", LOG, "", "1 70x2, 2 70x2, 3 70x2, 4 70x2, 5 70x1"),
    ("four doubles then one single", LOG, "", "1 70x2, 2 70x2, 3 70x2, 4 70x2, 5 70x1"),
    ("single", LOG, "1 70x2, 2 70x2, 3 70x2, 4 70x2", "5 70x1"),
]
HANDS: list[Case] = [
    ("28 total for 11, making 14 each hand", CURL, "", "1 14x11"),
    ("28 total so 14 a hand, 11 reps", CURL, "", "1 14x11"),
    ("both dumbbells together 28, 11 reps", CURL, "", "1 14x11"),
    ("together 28kg for 11", CURL, "", "1 14x11"),
    ("28 between the two, 11 reps", CURL, "", "1 14x11"),
    ("28 for 11 (total)", CURL, "", "1 14x11"),
]
APART: list[Case] = [
    ("w/u 40x5, 60x5", FIVES, "", "0 40x5 warmup, 1 60x5"),
    ("bench w.u. 40x5, 60x5", FIVES, "", "0 40x5 warmup, 1 60x5"),
    ("40x5 (wu), 60x5", FIVES, "", "0 40x5 warmup, 1 60x5"),
    ("60x10 for all but the last, 8 there", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("60x10 on all but the last, only 8 on that one", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("10 on all but the last, 8 on the last", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("10 reps every set except the last, 8 there", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("all sets 60x10 bar the last, 8 on it", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
    ("all but the last 12s, last 9", PRESS, "", "1 140x12, 2 140x12, 3 140x12, 4 140x9"),
    ("12 on every set but the last, 9 on it", PRESS, "", "1 140x12, 2 140x12, 3 140x12, 4 140x9"),
    ("the last was 60x8, the one before 60x9 and the first 60x10", BENCH, "", "1 60x10, 2 60x9, 3 60x8"),
    ("last one 8, the one before 9", BENCH, "1 60x10", "2 60x9, 3 60x8"),
    ("60x5, r.i.r. 2", FIVES, "", "1 60x5 rir 2"),
]
SIDED: list[Case] = [
    ("10/9 rir left 2 right 1", ROW, "", "1 26x10 left rir 2, 1 26x9 right rir 1"),
    ("10/9 rpe 8/9", ROW, "", "1 26x10 left rir 2, 1 26x9 right rir 1"),
    ("left 10 @8, right 9 @9", ROW, "", "1 26x10 left rir 2, 1 26x9 right rir 1"),
    ("26x10 each, rpe 8 left, 9 right", ROW, "", "1 26x10 left rir 2, 1 26x10 right rir 1"),
    ("10/9, rpe 9 on the right", ROW, "", "1 26x10 left, 1 26x9 right rir 1"),
    ("left 10 right 9, rpe 9 on the right side", ROW, "", "1 26x10 left, 1 26x9 right rir 1"),
    ("10/9 rir 1 both", ROW, "", "1 26x10 left rir 1, 1 26x9 right rir 1"),
    ("10 a side, rpe 8 on both", ROW, "", "1 26x10 rir 2"),
    ("10 each arm, both rpe 8", ROW, "", "1 26x10 rir 2"),
    ("10 with the left and 9 with the right, dumbbell of 26, last two on the right were ugly", ROW, "",
     "1 26x10 left, 1 26x9 right"),
    ("10/9, last 3 on the right were grinders", ROW, "", "1 26x10 left, 1 26x9 right"),
    ("left 10 right 8, then left 9 right 9", ROW, "", "1 26x10 left, 1 26x8 right, 2 26x9"),
    ("10 left 8 right, then 9 left 9 right", ROW, "", "1 26x10 left, 1 26x8 right, 2 26x9"),
    ("left ten right eight then left nine right nine", ROW, "", "1 26x10 left, 1 26x8 right, 2 26x9"),
    ("left 10 right 8 then right 9 left 10", SPLIT, "", "1 16x10 left, 1 16x8 right, 2 16x9 right, 2 16x10 left"),
    ("set 2: 5 and 5", BELL, "1 20x5", "2 20x5"),
    ("next set 5 and 5, 20kg bell", BELL, "1 20x5", "2 20x5"),
    ("last set 10 and 9", ROW, "1 26x10, 2 26x9", "3 26x10 left, 3 26x9 right"),
]  # fmt: skip
HALVES: list[Case] = [
    ("60x10, last couple of reps were slow", BENCH, "", "1 60x10"),
    ("60kg on the sled, 20m", SLED, "", "1 60x20"),
    ("60 sled 20m twice", SLED, "", "1 60x20, 2 60x20"),
    ("65 kilos sled, 20m", SLED, "1 60x20", "2 65x20"),
    ("20m again at 70", SLED, "1 60x20", "2 70x20"),
    ("500m on the erg in 1:58", SLED, "1 60x20, 2 60x20, 3 60x20, 4 60x20", "Rowing#1 -x500"),
    ("rowed 500m, time 1:58", SLED, "1 60x20, 2 60x20, 3 60x20, 4 60x20", "Rowing#1 -x500"),
    ("500m on the erg", SLED, "1 60x20, 2 60x20, 3 60x20, 4 60x20", "Rowing#1 -x500"),
    ("held the plank 45 sec twice", SLED, "1 60x20, 2 60x20, 3 60x20, 4 60x20", "Plank#1 -x45, Plank#2 -x45"),
    ("side planks half a minute each side x2", SPLIT, "1 16x10, 2 16x10, 3 16x10", "Side#1 -x30, Side#2 -x30"),
    ("sandbag 80 for the 20m, second carry i dropped it at 12", LOG, "1 70x2, 2 70x2, 3 70x2, 4 70x2, 5 70x2",
     "Sandbag#1 80x20, Sandbag#2 80x12"),
]  # fmt: skip
ADDED: list[Case] = [
    ("60kg 10+9+8", BENCH, "", "1 60x10, 2 60x9, 3 60x8"),
    ("9 + 8", BENCH, "1 60x10", "2 60x9, 3 60x8"),
    ("8 at +10, then took the belt off, 7 and 7", CHIN, "", "1 10x8, 2 0x7, 3 0x7"),
    ("10x8, then bodyweight 7 and 6", CHIN, "", "1 10x8, 2 0x7, 3 0x6"),
    ("8 7 7 without the weight", CHIN, "", "1 0x8, 2 0x7, 3 0x7"),
    ("-25 10, -20 8, -20 7", DIP, "", "1 -25x10, 2 -20x8, 3 -20x7"),
    ("no assistance this time, 6", DIP, "1 -25x9", "2 0x6"),
    ("16s 10/10 three times", SPLIT, "", "1 16x10, 2 16x10, 3 16x10"),
    ("splits 10/10 throughout", SPLIT, "", "1 16x10, 2 16x10, 3 16x10"),
    ("15s: 15 15 12", FLY, "", "1 15x15, 2 15x15, 3 15x12"),
    ("15kg 15 15 12", FLY, "", "1 15x15, 2 15x15, 3 15x12"),
    ("3x10 with the 14s, 12s for the last one", CURL, "", "1 14x10, 2 14x10, 3 12x10"),
    ("60 for the first, 65 for the other two, 9 reps each", BENCH, "", "1 60x9, 2 65x9, 3 65x9"),
    ("60 x 10, easy, the other two 65 x 8", BENCH, "", "1 60x10, 2 65x8, 3 65x8"),
]
EACH: list[Case] = [
    ("60 for the first, 65 for the other two, 9 reps each", BENCH, "", "1 60x9, 2 65x9, 3 65x9"),
    ("bench first set 60, other two 62.5, 9 reps each", BENCH, "", "1 60x9, 2 62.5x9, 3 62.5x9"),
    ("9 each: first 60, second 62.5, third 65", BENCH, "", "1 60x9, 2 62.5x9, 3 65x9"),
    ("first set with 60kg, other two with 65kg, 9 reps each", BENCH, "", "1 60x9, 2 65x9, 3 65x9"),
    ("14s for the first two, 12s on the last, all 10", CURL, "", "1 14x10, 2 14x10, 3 12x10"),
    ("10 each set, 14s on the first two and 12s on the last", CURL, "", "1 14x10, 2 14x10, 3 12x10"),
    ("first two 10, last 8, all at 60", BENCH, "", "1 60x10, 2 60x10, 3 60x8"),
]

NAMED: list[Case] = [
    ("10 9 8, first two rpe 8, last rpe 9", BENCH, "", "1 60x10 rir 2, 2 60x9 rir 2, 3 60x8 rir 1"),
    ("10, 9, 8. first was rpe 7, last was rpe 9", BENCH, "", "1 60x10 rir 3, 2 60x9, 3 60x8 rir 1"),
    ("3x9 rpe 8 for the first two, 9 for the last", BENCH, "", "1 60x9 rir 2, 2 60x9 rir 2, 3 60x9 rir 1"),
    ("10 9 8, last rpe 9 the others 8", BENCH, "", "1 60x10 rir 2, 2 60x9 rir 2, 3 60x8 rir 1"),
    ("60x10, 60x9, 60x8. first two rir 2, last one rir 0", BENCH, "", "1 60x10 rir 2, 2 60x9 rir 2, 3 60x8 rir 0"),
    ("60x9x3 @7, @8, @9", BENCH, "", "1 60x9 rir 3, 2 60x9 rir 2, 3 60x9 rir 1"),
]


DUMP = (
    PlannedExercise("Hip Thrust", sets("100", 8, 8)),
    PlannedExercise("Lying Leg Curl", sets("30", 10, 12)),
    PlannedExercise("Seated Calf Raise", sets("35", 12, 15)),
)
ARM = (PlannedExercise("Single-Arm Cable Row", sets("22.5", 10, 12, 2), sides=2),)
GOBLET = (PlannedExercise("Goblet Squat", sets("20", 10, 12), aliases=("goblets",)),)
HOLD = (
    PlannedExercise(
        "Suitcase Hold", sets("20", 20, 30, 2), aliases=("holds",), load_style=HAND, sides=2, measure=Measure.SECONDS
    ),
)
STEP = (PlannedExercise("Step-Up", sets("14", 8, 10), load_style=HAND, sides=2),)
COUNTS: list[Case] = [
    *(
        (f"{head}{tail}", BENCH, "1 60x9, 2 60x9", "3 60x10")
        for head in ("60, 10", "60x10", "10 at 60")
        for tail in (
            ", and that's all three benches in the bag", ". three down", ", that's my three", ". three done now",
            ", that's the three of them", ", which makes it three", ", making it three", ". third one done and dusted",
        )
    ),
    *((f"60x10 {jest} 60x9", BENCH, "", "1 60x10, 2 60x9") for jest in ("lol,", "then", "ouch.")),
    *(
        (f"{jest} 60x8", BENCH, "", "1 60x8")
        for jest in (
            "600x8, i wish.", "170x80 in my dreams,", "600x8 yeah right.", "160x80. as if.", "600x8 dream on.",
        )
    ),
    *(
        (text, PRESS, "1 140x12", "2 140x12, 3 140x12")
        for text in (
            "2nd and 3rd leg press same like first", "2nd and 3rd same as the 1st", "2nd and 3rd sets same as first",
            "second and third the same as the first",
        )
    ),
    *(
        (f"sled 60, 20m{how}", SLED, "", "1 60x20, 2 60x20, 3 60x20")
        for how in (", three times", ". Three times.", ", three runs", ", x3")
    ),
    ("60 on the sled, 20m x3", SLED, "", "1 60x20, 2 60x20, 3 60x20"),
    ("The sled was loaded to 60 and I pushed it 20 metres, three times.", SLED, "", "1 60x20, 2 60x20, 3 60x20"),
    ("first of three: 60x10", BENCH, "", "1 60x10"),
    ("60x10, first of 3", BENCH, "", "1 60x10"),
    ("last of the three: 60x10", BENCH, "1 60x9, 2 60x9", "3 60x10"),
    *(
        (f"22,5 left 12 right 12, {then}", ARM, "", "1 22.5x12 left, 1 22.5x12 right, 2 25x11 left, 2 25x10 right")
        for then in ("then 25 with 11/10", "25 x 11/10", "then 25kg 11 left 10 right", "next 25 11 / 10")
    ),
    *(
        (f"{gone} 12, 12, 12", GOBLET, "", "1 16x12, 2 16x12, 3 16x12")
        for gone in (
            "the 20 is with my husband, I use 16 for the goblet:", "the 20 is gone, used 16 for goblets:",
            "the 20 is at my sister's, so goblets with 16:",
        )
    ),
    *(
        (f"{name}{rest}", HOLD, "1 20x30", "2 20x30")
        for name in ("hold no. 2", "hold nr 2", "Hold No.2", "hold number 2")
        for rest in (" @20: 30s each side", " at 20, 30 sec a side")
    ),
    *((f"{age} 60x9", BENCH, "", "1 60x9") for age in ("I am 66 today.", "turned 66 today,", "not bad for 66:")),
    ("10 per leg with two sixteens", SPLIT, "1 16x10", "2 16x10"),
    ("10 each leg holding two sixteens", SPLIT, "1 16x10", "2 16x10"),
    *(
        (f"{load}10 on each leg, then 9 on each, then 8", STEP, "", "1 14x10, 2 14x9, 3 14x8")
        for load in ("14s. ", "step ups, two 14s. ", "step ups with 14s. ")
    ),
    *(
        (
            f"{ht} 100 8 8\n{curl} 30 12/11\n{calf} 35 15 15", DUMP, "",
            "Hip#1 100x8, Hip#2 100x8, Lying#1 30x12, Lying#2 30x11, Seated#1 35x15, Seated#2 35x15",
        )
        for ht in ("HT", "hip thr")
        for curl in ("LLC", "llc", "LC")
        for calf in ("SCR", "seated CR")
    ),
    ("chins 8,7 // ring rows 12, 10", CHIN, "", "Chin#1 10x8, Chin#2 10x7, Ring#1 0x12, Ring#2 0x10"),
]  # fmt: skip
"""How many sets there were, which one it was, numbers in talk, and what was said in jest."""


def _rows(session: Session, told: str) -> list[Performed]:
    """`1 60x10, Rowing#1 -x500`: sets of the first exercise, or of the one that a name begins."""
    out = []
    for one in told.split(", "):
        named, _, body = one.rpartition("#")
        planned = next((e for e in session if named and e.name.startswith(named)), session[0])
        out += [row(f"{planned.name}#{body}")] if one else []
    return out


def _read(text: str, session: Session, done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(_rows(session, done))))


def _alike(rows: list[Performed]) -> Counter[Performed]:
    """The sets, both sides of one that are equal as each side."""
    left = Counter(rows)
    for one in rows:
        other = replace(one, side=Side.RIGHT)
        if one.side is Side.LEFT and left[other]:
            left -= Counter([one, other])
            left[replace(one, side=None)] += 1
    return left


LEGS = (
    PlannedExercise("Hack Squat", sets("80", 8, 10), aliases=("hack",)),
    PlannedExercise("Romanian Deadlift", sets("70", 8, 8), aliases=("rdl",)),
    PlannedExercise("Chin-Up", sets("0", 6, 8), aliases=("chins",), load_style=BODY),
)
TOLD = "Hack#1 80x10, Hack#2 80x9, Hack#3 77.5x9, Romanian#1 70x8, Romanian#2 70x8, Chin#1 0x8, Chin#2 0x7"
BLOCKS = (("Hack Squat", ("80 10", "80 9", "77.5 9")), ("rdl", ("70 8", "70 8")), ("Chin-Up", ("bw 8", "bw 7")))
ROWS = {
    "bare": "{load} x {reps}",
    "numbered": "{n}. {load}x{reps}",
    "bracket": "{n}) {load} x {reps}",
    "hash": "#{n} {load}x{reps}",
    "letter": "S{n}: {load}x{reps}",
    "word": "Set {n} - {load} x {reps} reps",
    "keycap": "{n}\ufe0f\u20e3 {load}x{reps}",
    "tabs": "{n}\t{load}\t{reps}",
    "bars": "| {n} | {load} | {reps} |",
    "bullet": "- {load} x {reps}",
    "ticked": "{load} x {reps} ✅",
    "timed": "{load} x {reps} (17:4{n})",
}
"""A set as lists, notes and tables lay it out."""
COLUMNS = {
    "spaces": ("set  kg    reps", "{n}    {load}    {reps}"),
    "commas": ("set,weight,reps", "{n},{load},{reps}"),
    "reps first": ("# reps kg", "{n} {reps} {load}"),
    "rule": ("| set | weight | reps |\n|---|---|---|", "| {n} | {load} | {reps} |"),
    "no numbers": ("weight reps", "{load}   {reps}"),
}
"""A heading of columns, and the row below it."""
HEADINGS = ("{name}", "{name}:", "{k}. {name}", "{k}) {name}", "A{k}) {name}", "**{name}**", "## {name}", "- {name}",
            "{name} (3 sets)", "{name} - 3x8-10", "Exercise {k}: {name}")  # fmt: skip
TOPS = ("W1D2", "Week 3 Day 1", "Session 4 of 12", "workout 12", "Thu 5 Mar, 17:40", "5 Mar 2026", "2026-03-05",
        "05/03/2026", "Bodyweight: 81.5 kg", "Duration: 52 min")  # fmt: skip
ENDS = ("Total volume: 6540 kg", "total 6,540kg", "3 exercises, 7 sets, 6540 kg", "Total sets: 7", "Vol: 6.5k", "1 PR",
        "bw 81.5", "time 58 min", "412 kcal")  # fmt: skip


def _paste(line: str, heading: str = "{name}", *, columns: str = "") -> str:
    """The sets of `TOLD` with a heading above those of each exercise."""
    blocks = []
    for k, (name, told) in enumerate(BLOCKS, 1):
        pairs = [one.split() for one in told]
        lines = [line.format(n=n, load=load, reps=reps) for n, (load, reps) in enumerate(pairs, 1)]
        blocks.append("\n".join([heading.format(k=k, name=name), *([columns] if columns else []), *lines]))
    return "\n\n".join(blocks)


def _in_march(text: str, session: Session) -> Reading:
    return read_message(Request(text, Unit.KG, datetime(2026, 3, 5, 18, 54, tzinfo=UTC), session, ()))


PASTES = [
    *(_paste(line) for line in ROWS.values()),
    *(_paste(line, columns=heading) for heading, line in COLUMNS.values()),
    *(_paste(ROWS[form], heading) for form, heading in product(("bare", "numbered"), HEADINGS)),
    *(f"{top}\n{_paste(ROWS[form])}" for form, top in product(("bare", "numbered"), TOPS)),
    *(f"{_paste(ROWS[form])}\n\n{end}" for form, end in product(("bare", "numbered"), ENDS)),
]


@pytest.mark.parametrize("text", PASTES)
def test_a_pasted_report_holds_its_sets_and_nothing_else(text: str) -> None:
    """Numbers of rows, exercises, days, times and sums are no sets; today's date is no late day."""
    reading = _in_march(text, LEGS)
    assert reading.ask is None, reading.ask
    assert _alike(list(reading.performed)) == _alike(_rows(LEGS, TOLD))
    assert (reading.day, reading.skipped, reading.question) == (None, (), False)


LAID_OUT: list[Case] = [
    ("| Exercise | Weight | Reps |\n|---|---|---|\n| Hack Squat | 80 | 10, 9 |\n| rdl | 70 | 8 |", LEGS, "",
     "Hack#1 80x10, Hack#2 80x9, Romanian#1 70x8"),
    ("| Exercise | Sets | Reps | kg |\n| Hack Squat | 3 | 10 | 80 |\n| rdl | 2 | 8 | 70 |", LEGS, "",
     "Hack#1 80x10, Hack#2 80x10, Hack#3 80x10, Romanian#1 70x8, Romanian#2 70x8"),
    ("exercise,set,weight,reps\nHack Squat,1,80,10\nHack Squat,2,80,9\nrdl,1,70,8", LEGS, "",
     "Hack#1 80x10, Hack#2 80x9, Romanian#1 70x8"),
    ("Hack squat\nset reps load rpe\n1 10 80 8\n2 9 80 9", LEGS, "", "Hack#1 80x10 rir 2, Hack#2 80x9 rir 1"),
    ("hack (1) 80x10 (2) 80x9\nchins 1) bwx8 2) bwx7", LEGS, "",
     "Hack#1 80x10, Hack#2 80x9, Chin#1 0x8, Chin#2 0x7"),
    ("hack S1-80x10, S2-80x9", LEGS, "", "Hack#1 80x10, Hack#2 80x9"),
    ("chins\nset reps\n1 8\n2 7", LEGS, "", "Chin#1 0x8, Chin#2 0x7"),
    ("chins\nbodyweight 8\nbodyweight 7\nhack 80x10", LEGS, "", "Chin#1 0x8, Chin#2 0x7, Hack#1 80x10"),
    ("hack\n75x10\n80 for 10 pr", LEGS, "", "Hack#1 75x10, Hack#2 80x10"),
    ("2. rdl\n70x8\n70x8", LEGS, "Hack#1 80x10", "Romanian#1 70x8, Romanian#2 70x8"),
    ("splits\nset L R\n1 10 9\n2 9 8", SPLIT, "", "1 16x10 left, 1 16x9 right, 2 16x9 left, 2 16x8 right"),
    ("side plank\nset time\n1 45\n2 40", SPLIT, "", "Side#1 -x45, Side#2 -x40"),
    ("splits 16 (L/R): 10/9, 9/8", SPLIT, "", "1 16x10 left, 1 16x9 right, 2 16x9 left, 2 16x8 right"),
    ("splits 16 (R/L): 10/9, 9/8", SPLIT, "", "1 16x9 left, 1 16x10 right, 2 16x8 left, 2 16x9 right"),
    ("splits 16: 10/9/8", SPLIT, "", "1 16x10, 2 16x9, 3 16x8"),
    ("splits 16x10/9/8", SPLIT, "", "1 16x10, 2 16x9, 3 16x8"),
    ("splits w/ 16s: R9 L8 first set, R9 L9 second", SPLIT, "", "1 16x8 left, 1 16x9 right, 2 16x9"),
    ("16s: 9 each and 9 each", SPLIT, "", "1 16x9, 2 16x9"),
    ("hack 80x10, rdl 70x8, back to hack 80x9", LEGS, "", "Hack#1 80x10, Romanian#1 70x8, Hack#2 80x9"),
    ("Second push done, 60, all 20 metres", SLED, "1 60x20", "2 60x20"),
    ("worked a double, half asleep. 60x5, 60x5", FIVES, "", "1 60x5, 2 60x5"),
]  # fmt: skip
"""Other tables, and near neighbours of rows and sums that are sets."""

BOTH = (
    PlannedExercise("Floor Press", sets("65", 6, 6, 4)),
    PlannedExercise("Pendlay Row", sets("65", 6, 6, 4), aliases=("pendlays",)),
)
LEGS_TOO = (
    PlannedExercise("Leg Curl", sets("40", 10, 12)),
    PlannedExercise("Leg Extension", sets("50", 12, 15, 2), aliases=("leg ext",)),
)
THREE_EACH = ", ".join(f"{name}#{n} 65x6" for name in ("Floor", "Pendlay") for n in (1, 2, 3))
TURNS = "Leg Curl#1 40x12, Leg Curl#2 40x11, Leg Extension#1 50x15, Leg Extension#2 50x14"
TOP = (PlannedExercise("Bench Press", (*sets("225", 5, 5, 1), *sets("195", 8, 8)), aliases=("bench",)),)
LUNGE = (PlannedExercise("Walking Lunge", sets("14", 10, 12), aliases=("lunges",), load_style=HAND, sides=2),)
PULLS = (PlannedExercise("Face Pull", sets("20", 15, 20, 2), aliases=("face pulls",)), *CURL)
STEPS = (PlannedExercise("Step-Up", sets("12", 10, 10), aliases=("step ups",), load_style=HAND, sides=2), *DIP)
TOGETHER: list[Case] = [
    *(
        (said, BOTH, "", THREE_EACH)
        for said in (
            "supersetting floor press and pendlays, 65x6 on both, 3 rounds in",
            "floor press and pendlays both 65x6, 3 sets",
            "floor press + pendlays 65x6 each, 3 rounds", "floor press and pendlays both 3x6 at 65",
            "3 rounds of floor press and pendlays, 65x6 on both",
            "floor press and pendlays superset, both 65x6 for 3 rounds",
        )
    ),
    *(
        (f"{head}{joined.join(('40x12', '50x15'))}, {joined.join(('40x11', '50x14'))}", LEGS_TOO, "", TURNS)
        for head in ("leg curl + leg ext superset: ", "leg curl and leg ext: ", "supersetted leg curl with leg ext ")
        for joined in (" / ", "/", " + ")
    ),
    ("bench 225x5, then 195 for 8 8 7, those three all @8", TOP, "",
     "1 225x5, 2 195x8 rir 2, 3 195x8 rir 2, 4 195x7 rir 2"),
    ("bench 225x5 @8.5, 195 8 8 7, all three @8", TOP, "",
     "1 225x5 rir 1.5, 2 195x8 rir 2, 3 195x8 rir 2, 4 195x7 rir 2"),
    *(
        (f"{first} 10{link}{second} 9", LUNGE, "1 14x12", f"2 14x10 {first}, 2 14x9 {second}")
        for first, second in (("left", "right"), ("right", "left"))
        for link in (" ", ", ")
    ),
    ("10 left but only 9 on the right", LUNGE, "1 14x12", "2 14x10 left, 2 14x9 right"),
    ("right 10, left only 9", LUNGE, "1 14x12", "2 14x10 right, 2 14x9 left"),
    ("10 each leg and next set left 10 right 8", LUNGE, "", "1 14x10, 2 14x10 left, 2 14x8 right"),
    ("those lunges nearly killed me, left 10 right 9", LUNGE, "", "1 14x10 left, 1 14x9 right"),
    ("10 each easyyy", LUNGE, "", "1 14x10"),
    ("11 on the second", CURL, "1 14x12", "2 14x11"),
    ("14x12?", CURL, "", "1 14x12"),
    ("12. ok?", CURL, "", "1 14x12"),
    ("20 on the face pulls, 18 reps", PULLS, "", "1 20x18"),
    ("16 on the hammers, 10 reps", PULLS, "", "Hammer#1 16x10"),
    ("step ups tens each leg", STEPS, "", "1 12x10"),
    ("step ups tens each leg with the twelves", STEPS, "", "1 12x10"),
    ("step ups tens each leg all three with the twelves dips at minus twenty five nine eight", STEPS, "",
     "1 12x10, 2 12x10, 3 12x10, Assisted#1 -25x9, Assisted#2 -25x8"),
    ("step ups 12s each side for 10", STEPS, "", "1 12x10"),
]  # fmt: skip
"""Exercises told together, efforts of the last so many sets, sides near the planned load."""


GYM = (
    PlannedExercise("Bench Press", sets("80", 6, 8), aliases=("bench",)),
    PlannedExercise("T-Bar Row", sets("100", 8, 10), aliases=("t-bar",)),
    PlannedExercise("Assisted Chin-Up", sets("-15", 8, 10), aliases=("chins",), load_style=BODY),
    PlannedExercise("Leg Press", sets("160", 10, 12, 3, DROP), aliases=("press",)),
    PlannedExercise("Power Clean", sets("65", 2, 2, 5), aliases=("cleans",)),
    PlannedExercise("Lateral Raise", sets("20", 12, 15, 2, MINI), aliases=("laterals",)),
    PlannedExercise("Side Plank", sets(None, 30, 45, 2), load_style=NONE, sides=2, measure=Measure.SECONDS),
    PlannedExercise("Sled Push", sets("60", 20, 20, 4), aliases=("sled",), measure=Measure.METRES),
)
FALLING = "1 80x8, 2 80x7, 3 80x6"
CHINNED = ", ".join(f"Assisted#{n} -15x{reps}" for n, reps in ((1, 10), (2, 9), (3, 8)))
DOUBLES = ", ".join(f"Power#{n} 65x2" for n in range(1, 6))
PRESSED = "Leg#1 160x12, Leg#2 160x12, Leg#3 160x12, Leg#3 105x9 drop"
RAISED = "Lateral#1 20x13, Lateral#2 20x13, " + ", ".join(["Lateral#2 20x4 mini"] * 3)
PLANKED = "Side#1 -x40, Side#2 -x40"
PUSHED = ", ".join([*(f"Sled#{n} 60x20" for n in (1, 2, 3)), "Sled#4 50x20"])
ENTRIES = [
    ([f"bench {loads}{link}{counts}" for loads in ("80 80 80", "80, 80, 80", "eighty eighty eighty")
      for link in (" for ", " x ") for counts in ("8 7 6", "8, 7 and 6")], FALLING),
    ([f"bench 8, 7, 6 {link} 80, 80, 80" for link in ("at", "with")], FALLING),
    (["chins 10 9 8", "chins ten nine and eight with fifteen of help", "chins 15 kilos assistance 10, 9, 8"], CHINNED),
    ([f"cleans 65{link}{count} doubles" for link in (", ", " ", " for ") for count in ("5", "five")], DOUBLES),
    (["press 160 for 12 all three, straight on with 105 for 9", "press 160x12 all three immediately 105x9",
      "press one sixty for twelve all three sets then dropped to one hundred and five for nine",
      "press 160 12 12 12 and i dropped to 105 for 9 after the 12"], PRESSED),
    ([f"laterals 20 for 13 twice{minis}" for minis in (
        " and then three minis of 4", ", 3 minis, 4 each", ", 3 mini sets of 4", " and 3 lots of 4 as minis")], RAISED),
    (["side plank both 40 sec both sides", "side plank forty secs each side twice", "side plank 40 secs each both"],
     PLANKED),
    (["sled sixty for twenty three times then back to fifty for twenty",
      "sled 60 for 20 metres three times then 50 for 20"], PUSHED),
]  # fmt: skip
"""Each of several ways to tell an exercise, with what it stores."""
WHOLE: list[Case] = [
    (f"{lead}{joined.join((said, others[turn % len(others)]))}", GYM, "", f"{told}, {stored}")
    for turn, (ways, told) in enumerate(ENTRIES)
    for others, stored in (ENTRIES[(turn + 2) % len(ENTRIES)],)
    for said in ways
    for lead, joined in (("", ". "), ("my kid got sick and it was a quick one ", " then "))
]
"""Two of them in one message, typed or in one breath."""
ONCE: list[Case] = [
    ("t-bar one hundred ten nine nine", GYM, "", "T-Bar#1 100x10, T-Bar#2 100x9, T-Bar#3 100x9"),
    ("t-bar one hundred ten ten nine eight", GYM, "", "T-Bar#1 110x10, T-Bar#2 110x9, T-Bar#3 110x8"),
    ("bench three sets at eighty five eight seven six", GYM, "", "1 85x8, 2 85x7, 3 85x6"),
    ("80x6. only 6 because my grip went", GYM, "", "1 80x6"),
    ("bench 80x7, just 7 cause i slept badly", GYM, "", "1 80x7"),
    ("bench 80x8. After t-bar 100 kg 9, 8, 8", GYM, "", "1 80x8, T-Bar#1 100x9, T-Bar#2 100x8, T-Bar#3 100x8"),
    ("bench the 82.5 because the 80 was taken six reps three rounds t-bar 100 9 9 8", GYM, "",
     "1 82.5x6, 2 82.5x6, 3 82.5x6, T-Bar#1 100x9, T-Bar#2 100x9, T-Bar#3 100x8"),
    ("t-bar felt bad so did 90 for 9 instead", GYM, "", "T-Bar#1 90x9"),
    ("side plank forty both sides sled sixty for twenty", GYM, "", "Side#1 -x40, Sled#1 60x20"),
    ("side plank 45/40 sec each side", GYM, "", "Side#1 -x45, Side#2 -x40"),
    ("deads 140x5, back downs 115x8 and 115x8", PULL, "", "1 140x5, 2 115x8, 3 115x8"),
    ("deads 140x5 then 115x8 and the second 115x7", PULL, "", "1 140x5, 2 115x8, 3 115x7"),
    ("splits set 1 16 for 10 each set 2 16 for 9 each", SPLIT, "", "1 16x10, 2 16x9"),
    ("hammers 12 all three. flyes 15x14", (*CURL, *FLY), "", "1 14x12, 2 14x12, 3 14x12, Chest#1 15x14"),
    ("chins nine three times bench eighty for six three times", GYM, "",
     "Assisted#1 -15x9, Assisted#2 -15x9, Assisted#3 -15x9, 1 80x6, 2 80x6, 3 80x6"),
]  # fmt: skip
"""Numbers that two sets or two exercises might claim."""


@pytest.mark.parametrize(
    ("text", "session", "done", "told"),
    [
        *FAILED,
        *BEHIND,
        *ALIKE,
        *HANDS,
        *APART,
        *SIDED,
        *HALVES,
        *ADDED,
        *EACH,
        *NAMED,
        *COUNTS,
        *LAID_OUT,
        *TOGETHER,
        *WHOLE,
        *ONCE,
    ],
)
def test_the_sets_are_as_told(text: str, session: Session, done: str, told: str) -> None:
    """Each number is what its words make it, and no set is lost or made up."""
    reading = _read(text, session, done)
    assert reading.ask is None, reading.ask
    assert _alike(list(reading.performed)) == _alike(_rows(session, told))
    assert not reading.replaces
    assert not reading.skipped


DOUBTFUL = [
    ("60x5, then missed 62.5", FIVES, ""),
    ("60x5, then a fail at 65", FIVES, ""),
    ("60x5. missed 65 twice", FIVES, ""),
    ("62.5 didnt move", FIVES, "1 60x5"),
    ("60x10 for all but the last", BENCH, ""),
    ("last one was 8, before that 9 and 10", BENCH, ""),
    ("15 15 15 12", FLY, ""),
    ("wait hammers were 11 on the second", CURL, ""),
    ("actually bench was 9 on the third", BENCH, ""),
    ("asdf ;;; 12-ish?? maybe", CURL, ""),
    ("12 maybe?", CURL, ""),
    ("12?", CURL, ""),
]


@pytest.mark.parametrize(("text", "session", "done"), DOUBTFUL)
def test_what_is_not_said_is_asked(text: str, session: Session, done: str) -> None:
    """How many were done of a load that was missed, what the set apart was, which of two came first, which set is put
    right where none is kept, and a count that is itself a question."""
    reading = _read(text, session, done)
    assert reading.ask is not None, reading.performed
    assert reading.performed == ()
