"""What stands around sets, and sets told in stories: how a set ended, what did not count, whose numbers are no sets.

Every line is written from a meaning whose sets are known: stories and talk times the ways to tell the sets beside them.
The wanted readings are those of a coach who knows the plan; common practice, no source.
"""

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, row, rows, sets

THRUST = PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",))
LEG_CURL = PlannedExercise("Leg Curl", sets("35", 10, 12))
PRESS = PlannedExercise("Overhead Press", sets("45", 6, 8), aliases=("ohp",))
ARNOLD = PlannedExercise("Arnold Press", sets("14", 8, 12), load_style=LoadStyle.PER_HAND, aliases=("arnolds",))
SPLIT = PlannedExercise("Split Squat", sets("16", 8, 10), load_style=LoadStyle.PER_HAND, sides=2, aliases=("splits",))
LATERAL = PlannedExercise("Cable Lateral Raise", sets(None, 12, 15), sides=2, aliases=("laterals",))
TIBIALIS = PlannedExercise("Tibialis Raise", sets(None, 20, 25, 2), load_style=LoadStyle.NONE, aliases=("tibs",))
DIP = PlannedExercise("Dip", sets("0", 8, 12), load_style=LoadStyle.BODYWEIGHT, aliases=("dips",))
ROPES = PlannedExercise("Battle Ropes", sets(None, 30, 30), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
ERG = PlannedExercise("Row Erg", sets(None, 500, 500), load_style=LoadStyle.NONE, measure=Measure.METRES)
PLANK = PlannedExercise(
    "Side Plank", sets(None, 30, 45, 2), load_style=LoadStyle.NONE, sides=2, measure=Measure.SECONDS
)
ROWED = ("Row Erg#1 -x500", "Row Erg#2 -x500")
PRESSED = ("Overhead Press#1 45x8",)


def _read(text: str, *exercises: PlannedExercise, done: tuple[str, ...] = ()) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, exercises, tuple(row(d) for d in done)))


def _check(
    text: str, stored: tuple[str, ...], *exercises: PlannedExercise, done: tuple[str, ...] = (), hurts: bool = False
) -> None:
    reading = _read(text, *exercises, done=done)
    got = (reading.ask, sorted(map(str, reading.performed)), reading.replaces, reading.skipped, reading.finished)
    assert got == (None, sorted(map(str, rows(*stored))), (), (), False), text
    assert (reading.minutes, reading.pain is not None) == (None, hurts), text


ENDS = """
gave up at|gave up after|quit at|ran out of steam at|ran out of gas after|had to stop at|bailed after|racked it at
died after|tapped out at|legs gave out at|my grip went at|grip opened at|called it at|had to put it down at
came up short at|fell apart after|only lasted to|cut it short at|packed it in after|lost it at|stalled at|dropped it at
"""


@pytest.mark.parametrize("end", ENDS.replace("\n", "|").strip("|").split("|"))
def test_how_a_set_ended_tells_its_repetitions(end: str) -> None:
    """`90 x 10, 90 x 9, gave up at 7` is three sets, and `30 sec, 30 sec, gave up at 20` too."""
    three = ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x7")
    _check(f"90 x 10, 90 x 9, {end} 7", three, THRUST)
    _check(f"90: 10, 9, then {end} 7", three, THRUST)
    _check(f"90x10, 90x9 and {end} 7 on the last one", three, THRUST)
    held = ("Battle Ropes#1 -x30", "Battle Ropes#2 -x30", "Battle Ropes#3 -x20")
    _check(f"ropes 30 sec, 30 sec, {end} 20", held, ROPES, PRESS)


@pytest.mark.parametrize(
    "beside",
    ["home at 7", "bus went at 7 so walked", "kids went to bed at 8", "dog went mad at 5 this morning",
     "car broke down at 7", "called the dentist at 9", "gave up smoking after 10 years", "phone died at 9 percent"],
)  # fmt: skip
def test_what_ended_otherwise_is_no_set(beside: str) -> None:
    """`90x10, dog went mad at 5` is one set."""
    _check(f"90x10, {beside}", ("Hip Thrust#1 90x10",), THRUST)


@pytest.mark.parametrize("text", ["90x10, 90x7 (grip went after 7)", "90x10 90x7 gave up at 7"])  # fmt: skip
def test_an_end_that_a_set_tells_already_is_no_other_set(text: str) -> None:
    """`90x10 90x7 gave up at 7` is two sets."""
    _check(text, ("Hip Thrust#1 90x10", "Hip Thrust#2 90x7"), THRUST)


@pytest.mark.parametrize("text", ["got 8 before my foot slipped, 90kg", "8 at 90 before the bar rolled",
                                  "90, got eight before my phone rang", "got 8 before it stalled with 90"])  # fmt: skip
def test_what_happened_then_is_no_time_that_there_is(text: str) -> None:
    """`got 8 before my foot slipped` are eight repetitions, and no eight minutes."""
    _check(text, ("Hip Thrust#1 90x8",), THRUST)


@pytest.mark.parametrize("story", ["cramp in my left foot so 16", "my foot cramped so only 16", "got cramp so i got 16",
                                   "foot cramped at 16", "cramp hit my foot after 16"])  # fmt: skip
def test_a_cramp_leaves_the_repetitions(story: str) -> None:
    """`tibs 25, then cramp in my left foot so 16` is two sets and a pain."""
    _check(f"tibs 25, then {story}", ("Tibialis Raise#1 -x25", "Tibialis Raise#2 -x16"), TIBIALIS, hurts=True)


@pytest.mark.parametrize("story", ["8th was a push press so dont count it", "8th was cheaty so not counting it",
                                   "the 8th doesnt count", "8th didnt lock out so scrap that one",
                                   "8th i had help with so leave it out"])  # fmt: skip
@pytest.mark.parametrize("told", ["45x7", "7 strict at 45", "45 for 7"])
def test_a_repetition_that_does_not_count_scraps_no_set(told: str, story: str) -> None:
    """`7 strict at 45, 8th was a push press so dont count it` are seven."""
    _check(f"{told}, {story}", ("Overhead Press#2 45x7",), PRESS, done=PRESSED)


@pytest.mark.parametrize("text", ["45x5 and the sixth got stuck in the hole", "45x5, 6th stalled halfway up",
                                  "45x5. the 6th died on me", "45x5, stuck on the 6th", "failed the 6th at 45 so 5",
                                  "45kg, 6th rep failed, so 5", "missed the 6th at 45 so only 5"])  # fmt: skip
def test_a_repetition_that_failed_says_how_many_were_done(text: str) -> None:
    """`failed the 6th at 45 so 5` is one set of five with nothing left."""
    _check(text, ("Overhead Press#2 45x5 rir 0",), PRESS, done=PRESSED)


@pytest.mark.parametrize("text", ["did 400 of the last 500", "400 out of the last 500", "400m of the final 500",
                                  "got 400 of the third 500 done", "400 of the 500 on the third"])  # fmt: skip
def test_so_much_of_what_was_planned(text: str) -> None:
    """`did 400 of the last 500` is one set of 400."""
    _check(text, ("Row Erg#3 -x400",), ERG, done=ROWED)


def test_half_a_repetition_is_none() -> None:
    """`45 for 5 and a half, so lets call it 5` are five; `3 of 8 at 45` stays three sets of eight."""
    _check("45 for 5 and a half, so lets call it 5", ("Overhead Press#2 45x5",), PRESS, done=PRESSED)
    three = tuple(f"Overhead Press#{n} 45x8" for n in (1, 2, 3))
    _check("3 sets of 8 at 45", three, PRESS)


@pytest.mark.parametrize("told", ["70 on the bar and six of em", "loaded 70 and did six of them",
                                  "70 on it and i got six of them", "bar at 70 and 6 of them"])  # fmt: skip
def test_so_many_of_them_behind_a_loaded_bar_are_repetitions(told: str) -> None:
    """`70 on the bar and six of em` is one set of six; `80x8, 3 of em` are three sets."""
    squat = PlannedExercise("Front Squat", sets("70", 4, 6))
    _check(f"front squats done the first set, {told}", ("Front Squat#1 70x6",), squat)
    _check("70x5, 3 of em", tuple(f"Front Squat#{n} 70x5" for n in (1, 2, 3)), squat)


@pytest.mark.parametrize("back", ["back to", "then back to", "went back to", "dropped back to the", "and back to"])
@pytest.mark.parametrize("told", ["14s x 12", "14 x 12", "14s for 12", "14s 12 reps"])
def test_going_back_to_a_load_is_no_plan(back: str, told: str) -> None:
    """`16s x 10, 16s x 9, back to 14s x 12` are three sets."""
    stored = ("Arnold Press#1 16x10", "Arnold Press#2 16x9", "Arnold Press#3 14x12")
    _check(f"arnolds 16s x 10, 16s x 9, {back} {told}", stored, ARNOLD)


@pytest.mark.parametrize("load", ["7,5", "7.5", "7,5kg"])
@pytest.mark.parametrize("told", ["left 14 right 15", "l14 r15", "14 left 15 right", ": left 14, right 15", "- 14/15",
                                  "left x14 right x15", "14 (left) 15 (right)"])  # fmt: skip
def test_a_load_before_both_sides_is_no_list(load: str, told: str) -> None:
    """`laterals 7,5 left 14 right 15` is 7.5 on each side."""
    both = ("Cable Lateral Raise#1 7.5x14 left", "Cable Lateral Raise#1 7.5x15 right")
    _check(f"laterals {load} {told}", both, LATERAL)


@pytest.mark.parametrize("told", ["16s, 10 on the good leg (right) and 8 on the left", "16s 8 (left) 10 (right)",
                                  "started with the left one 8, right one 10, 16kg", "right 10 but left only 8, 16s",
                                  "16s, left first: 8, then right: 10"])  # fmt: skip
def test_sides_are_told_in_many_ways(told: str) -> None:
    """`10 on the good leg (right) and 8 on the left`."""
    _check(f"splits {told}", ("Split Squat#1 16x8 left", "Split Squat#1 16x10 right"), SPLIT)


@pytest.mark.parametrize("told", ["left 16 x 9, right the same", "16 x 9 left, same right", "left 16x9 right ditto",
                                  "16x9 left and the same on the right", "16x9 left, right was the same"])  # fmt: skip
def test_the_other_side_the_same_is_one_set(told: str) -> None:
    """`left 16 x 9, right the same` is one set of both sides."""
    _check(f"splits {told}", ("Split Squat#1 16x9",), SPLIT)


def test_a_name_may_stand_between_a_side_and_its_number() -> None:
    """`left plank 40, right plank 30`."""
    _check("left plank 40, right plank 30", ("Side Plank#1 -x40 left", "Side Plank#1 -x30 right"), PLANK)


@pytest.mark.parametrize("told", ["light one first 50 x 15, doesnt count just warm up", "50x15 warm up only",
                                  "50 for 15 (warm up)", "50x15 to get going, not a work set", "50x15 first, warm up",
                                  "primer 50x15, not a real set"])  # fmt: skip
def test_a_lone_warm_up_stands_before_its_word(told: str) -> None:
    """`50x15 warm up only` answers no prescribed set."""
    _check(told, ("Hip Thrust#0 50x15 warmup",), THRUST)
    _check(f"{told}, then 90x10", ("Hip Thrust#0 50x15 warmup", "Hip Thrust#1 90x10"), THRUST)


TALK = """
machine 4 is broken|platform 3 today|bloke next to me doing 140 for 10|paid 15 for a smoothie|kids are 4 and 6
week 2 of 8|been here since half 6|spotter counted 11 lol|she turned 7 today|slept 5 hours|queue of 4 at the rack
room 12 was full|82.4 on the scales|two of the 20 plates are missing|looked like 200 kg|3-0 down at half time|pr by 5
hr 150|last week i got 9|her max is 150|only 2 more weeks|guy in lane 2 had 140 on his
"""


@pytest.mark.parametrize("talk", TALK.replace("\n", "|").strip("|").split("|"))
def test_numbers_of_talk_are_no_sets(talk: str) -> None:
    """Sets are kept, and nothing else is, whichever way talk stands beside them."""
    two = ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9")
    for text in (f"{talk}. 90x10, 90x9", f"90x10, 90x9. {talk}", f"90x10 90x9, {talk}", f"{talk}\n90x10\n90x9"):
        _check(text, two, THRUST)


@pytest.mark.parametrize(
    "talk", ["playlist on 11", "train was 20 late", "alarm at 5", "meeting at 2", "paid 15 for tea"]
)
def test_talk_that_runs_into_its_sets_is_parted_from_them(talk: str) -> None:
    """`playlist on 11 and 90x10` is one set."""
    for text in (f"{talk} 90x10 90x9", f"{talk} and 90x10 90x9", f"{talk} - 90x10 90x9"):
        _check(text, ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9"), THRUST)


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("my brother did 12 dips, i only did 9", ("Dip#1 0x9",)),
        ("dips bw 12, 11, 9 shoulders pumped", ("Dip#1 0x12", "Dip#2 0x11", "Dip#3 0x9")),
        ("90x10, 90x9, legs gone", ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9")),
        ("90x10 90x9, cut the last set at 6", ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x6")),
        ("90 fir 10", ("Hip Thrust#1 90x10",)),
        ("spotter touched the last one so 9 not 10, 90 kg", ("Hip Thrust#1 90x9",)),
        ("90x10 but with bad form last 2", ("Hip Thrust#1 90x10",)),
        ("90 for 9 but depth was high on 2 of them", ("Hip Thrust#1 90x9",)),
        ("no 2.5 kg plates in this gym so 87 instead of 90, 9 reps", ("Hip Thrust#1 87x9",)),
    ],
)
def test_single_meanings(text: str, stored: tuple[str, ...]) -> None:
    """Other ways to tell a set with something beside it."""
    _check(text, stored, THRUST, DIP, LEG_CURL)


@pytest.mark.parametrize(
    "talk", ["my mate watched", "my mate spotted me", "a guy let me work in", "the trainer saw it"]
)
def test_a_set_behind_somebody_who_lifted_nothing_is_the_clients(talk: str) -> None:
    """`my mate watched and 90x10` is a set; `my mate did 100 and 90 for 9` may be all his."""
    for told in ("90x10, 90x9", "90x10 90x9", "90 10 9"):
        _check(f"{talk} and {told}", ("Hip Thrust#1 90x10", "Hip Thrust#2 90x9"), THRUST)


@pytest.mark.parametrize(
    "talk", ["music at 100", "volume at 80", "finished work at 6", "struggled on the 3rd", "slowed down on the 5th"]
)
def test_a_loudness_an_hour_and_a_hard_repetition_are_no_set_and_no_day(talk: str) -> None:
    """`90x10 and finished work at 6` is one set; `struggled on the 3rd` is no date."""
    reading = _read(f"90x10 and {talk}", THRUST)
    assert (reading.ask, reading.performed, reading.day) == (None, rows("Hip Thrust#1 90x10"), None)


@pytest.mark.parametrize(
    "told", ["did it again and got 8", "did it again after 20 min and got 8", "same again but got 8"]
)
def test_a_set_done_again_with_fewer_is_one_set(told: str) -> None:
    """What was done again is the load, where its count is told."""
    _check(told, ("Hip Thrust#2 90x8",), THRUST, done=("Hip Thrust#1 90x9",))


CRUSHER = PlannedExercise("Skull Crusher", sets("22.5", 10, 12), aliases=("skulls",))
LUNGE = PlannedExercise("Reverse Lunge", sets("24", 8, 10), load_style=LoadStyle.PER_HAND, sides=2)
ADDUCTOR = PlannedExercise("Adductor Machine", sets("35", 12, 15))
ABDUCTOR = PlannedExercise("Abductor Machine", sets("40", 12, 15))
SHOULDERS = PlannedExercise("Machine Shoulder Press", sets(None, 10, 12))
HANG = PlannedExercise("Dead Hang", sets(None, 30, 45, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
WHEEL = PlannedExercise("Ab Wheel", sets(None, 8, 12), load_style=LoadStyle.NONE, aliases=("wheel",))
NAMED = [
    (("Skull Crusher#1 22.5x12",), ("skullcrushers {}", "skullcrusher {}", "scullcrushers {}", "skull crushers {}"),
     "22.5x12"),
    (("Reverse Lunge#1 24x10",), ("back lunges {}", "back lunge {}", "lunges backwards {}"), "24x10"),
    (("Adductor Machine#1 35x14",),
     ("aductor {}", "hip adduction {}", "adduction machine {}", "inner thigh machine {}", "adducter {}"), "35x14"),
    (("Abductor Machine#1 40x14",),
     ("aductor {}", "hip abduction {}", "abduction {}", "outer thigh {}", "hip abductor {}"), "40x14"),
    (("Machine Shoulder Press#1 30x11",), ("the shoulder machine {}", "on the shoulder machine {}"), "30, 11 times"),
    (("Dead Hang#1 -x38",), ("hanging {}", "i was hanging for {}", "{} hanging", "hung {}"), "38s"),
    (("Ab Wheel#1 -x10",),
     ("enough squats, on to the wheel. {}", "done with skulls, wheel next. {}", "lunges are done so wheel now. {}"),
     "10"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("stored", "text"), [(stored, said.format(told)) for stored, names, told in NAMED for said in names]
)
def test_other_names_of_one_exercise(stored: tuple[str, ...], text: str) -> None:
    """Names in one word or two, by what is trained, as a verb, and of what was moved on to."""
    squat = PlannedExercise("Box Squat", sets("100", 5, 5), aliases=("squats",))
    _check(text, stored, squat, CRUSHER, LUNGE, ADDUCTOR, ABDUCTOR, SHOULDERS, HANG, WHEEL)


@pytest.mark.parametrize(
    "end", [", 3 times through", ", three times round", ". did that 3 times", ", three rounds", ", 3 rounds of it"]
)
@pytest.mark.parametrize("link", [" then ", ", ", " + ", " and "])
def test_a_circuit_gone_through_so_many_times(link: str, end: str) -> None:
    """`12 curls then 10 dips, 3 times through` is three sets of each."""
    stored = tuple(f"{name}#{n} {told}" for n in (1, 2, 3) for name, told in (("Leg Curl", "35x12"), ("Dip", "0x10")))
    _check(f"12 leg curls{link}10 dips{end}", stored, LEG_CURL, DIP)


@pytest.mark.parametrize(
    "text",
    ["keep the 90 or go 95 today, which is better", "stay at 90 or go up", "use the 90 or the 95, which one",
     "keep 90 or drop to 85, your call"],
)  # fmt: skip
def test_a_choice_of_what_to_do_is_a_question(text: str) -> None:
    """`keep the 90 or go 95 today` stores nothing."""
    _check(text, (), THRUST)
    assert _read(text, THRUST).question
