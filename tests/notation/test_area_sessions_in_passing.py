"""What is told of a session in passing: an effort of each set, the rest of it, why it was left, a slip put right.

Each table of what is stored has one beside it of what only sounds like it. Common practice, no source: how people in a
gym put it.
"""

from dataclasses import replace

import pytest

from bot.notation.answer import Request
from bot.notation.reading import read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from tests.notation.plans import request, row, sets

PLAN = (
    PlannedExercise("Front Squat", sets("85", 5, 5), aliases=("fronts",)),
    PlannedExercise("Romanian Deadlift", sets("90", 8, 8), aliases=("rdl",)),
    PlannedExercise("Chin-Up", sets("0", 8, 10, 2), load_style=LoadStyle.BODYWEIGHT, aliases=("chins",)),
    PlannedExercise("Standing Calf Raise", sets("70", 12, 15, 2), aliases=("calves",)),
)
PAUSED = (
    PlannedExercise("Paused Bench Press", (*sets("80", 4, 4), *sets("70", 8, 8, 1)), aliases=("paused",)),
    PlannedExercise("T-Bar Row", sets("55", 8, 10), aliases=("tbar",)),
)
FRONTS = [f"Front Squat#{n} 85x5" for n in (1, 2, 3)]
RDL = [f"Romanian Deadlift#{n} 90x8" for n in (1, 2, 3)]
CHINS = ["Chin-Up#1 0x9", "Chin-Up#2 0x8"]
CALVES = ["Standing Calf Raise#1 70x13"]
HEAVY = [f"Paused Bench Press#{n} 80x4" for n in (1, 2, 3)]


def asked(text: str, *done: str, plan: tuple[PlannedExercise, ...] = PLAN, current: str | None = None) -> Request:
    """A message on such a session."""
    return replace(request(text, *done, current=current), exercises=plan)


def rated(rows: list[str], *left: str) -> list[str]:
    """The sets with an effort each; `-` where none is told."""
    return [one if n == "-" else f"{one} rir {n}" for one, n in zip(rows, left, strict=True)]


STORED: tuple[tuple[str, list[str], tuple[str, ...]], ...] = (
    ("fronts 85x5, 85x5, 85x5 (maybe one more in each)", rated(FRONTS, "1", "1", "1"), ()),
    ("fronts 85x5, 85x5, 85x5 (could have done one more in each)", rated(FRONTS, "1", "1", "1"), ()),
    ("fronts 85x5x3, probably 2 more in all of them", rated(FRONTS, "2", "2", "2"), ()),
    ("fronts 85x5x3, could have done 2 more on every set", rated(FRONTS, "2", "2", "2"), ()),
    ("fronts 85x5x3 (maybe one more in each)\nrdl 90x8x3", [*rated(FRONTS, "1", "1", "1"), *RDL], ()),
    ("85 kilos for 5 repetition, maybe i can make 1 more", rated(FRONTS[:1], "1"), ()),
    ("85x5, i think i can do 2 more", rated(FRONTS[:1], "2"), ()),
    ("85x5, i can still make 2 more repetitions", rated(FRONTS[:1], "2"), ()),
    ("ripped the skin on my palm doing chins (bw 9, 8)", CHINS, ()),
    ("my elbow hurt on the chins (9, 8)", CHINS, ()),
    ("elbow hurt during chins 9, 8 and calves 70x13", [*CHINS, *CALVES], ()),
    ("fronts 85x5 85x5, left it at two because my wrist is at 4/10. rdl 90x8x3", [*FRONTS[:2], *RDL], ("Front Squat",)),
    ("rdl 90x8 90x8. Before the third my knee hurt so I left it at two. chins 9 8", [*RDL[:2], *CHINS],
     ("Romanian Deadlift",)),
    ("fronts 85x5 85x5, kept it to two. rdl 90x8x3", [*FRONTS[:2], *RDL], ("Front Squat",)),
    ("rdl 90x8 90x8, so that was that for rdl. chins 9 8", [*RDL[:2], *CHINS], ("Romanian Deadlift",)),
    ("rdl 90x8 90x8, that was it for rdl. chins 9 8", [*RDL[:2], *CHINS], ("Romanian Deadlift",)),
    ("fronts 85x5x3. No more today, calves off", FRONTS, ("Standing Calf Raise",)),
    ("i have 20 min left, so far: fronts 85x5x3, calves not started", FRONTS, ()),
    ("20 min left, fronts 85x5x3, calves not done", FRONTS, ()),
    ("fronts 85x5x3, calves not started", FRONTS, ("Standing Calf Raise",)),
    ("calves 70x31, sorry, 13", CALVES, ()),
    ("calves 70 for 31 sorry i mean 13", CALVES, ()),
    ("fronts 85x5, 85x5, 85x5 (last one 90? no, 85). chins 9 8", [*FRONTS, *CHINS], ()),
    ("fronts 85x5, 85x5, 85x5 (90? no, 85)", FRONTS, ()),
    ("Extras? nope, stuck to the plan for once. fronts 85x5x3, rdl 90x8x3, chins 9 8, calves 70x13",
     [*FRONTS, *RDL, *CHINS, *CALVES], ()),
    ("calves 70x13, pin only goes 5 by 5 here", CALVES, ()),
    ("stack goes up in 5s, calves 70x13", CALVES, ()),
)  # fmt: skip


@pytest.mark.parametrize(("text", "stored", "left_out"), STORED, ids=[s[0] for s in STORED])
def test_what_is_told_in_passing(text: str, stored: list[str], left_out: tuple[str, ...]) -> None:
    """It is stored as it was meant, and no question is put to the client or the coach."""
    reading = read_message(asked(text))
    assert reading.ask is None
    assert not reading.question
    assert sorted(map(repr, reading.performed)) == sorted(repr(row(one)) for one in stored)
    assert reading.skipped == left_out


NEAR: tuple[tuple[str, list[str], tuple[str, ...]], ...] = (
    ("fronts 85x5x3, one more in each than last week", FRONTS, ()),
    ("fronts 85x5x3, couldnt have done one more in each", rated(FRONTS, "0", "0", "0"), ()),
    ("fronts 85x5x3 (maybe one more)", rated(FRONTS, "-", "-", "1"), ()),
    ("fronts 85x5x3, might do one more in each next time", FRONTS, ()),
    ("85x5, maybe i can make 1 more set", FRONTS[:1], ()),
    ("85x5, maybe next time i can make 1 more", FRONTS[:1], ()),
    ("85x5, can't make 1 more", FRONTS[:1], ()),
    ("elbow pain doing chins (4/10)", [], ()),
    ("elbow hurts on chins (9)", [], ()),
    ("fronts 85x5 85x5 85x5, left it at three. rdl 90x8x3", [*FRONTS, *RDL], ()),
    ("fronts 85x5 85x5, left the gym at two because of work", FRONTS[:2], ()),
    ("fronts 85x5 85x4, left two in the tank. rdl 90x8x3",
     [FRONTS[0], "Front Squat#2 85x4 rir 2", *RDL], ()),
    ("fronts 85x5x3. that was that for fronts. on to rdl 90x8", [*FRONTS, RDL[0]], ()),
    ("fronts 85x5x3. calves off a step 70x13", [*FRONTS, *CALVES], ()),
    ("fronts 85x5x3. calves felt off", FRONTS, ()),
    ("fronts 85x5x3. day off tomorrow", FRONTS, ()),
    ("20 min left, fronts 85x5x3, calves skipped", FRONTS, ("Standing Calf Raise",)),
    ("calves 70x13, sorry, 12", ["Standing Calf Raise#1 70x12"], ()),
    ("calves went 70 by 13", CALVES, ()),
)  # fmt: skip


@pytest.mark.parametrize(("text", "stored", "left_out"), NEAR, ids=[s[0] for s in NEAR])
def test_what_only_sounds_like_it(text: str, stored: list[str], left_out: tuple[str, ...]) -> None:
    """Another set, another day, a hurt's score, a place or a comparison is not taken for it."""
    reading = read_message(asked(text))
    assert reading.ask is None
    assert sorted(map(repr, reading.performed)) == sorted(repr(row(one)) for one in stored)
    assert reading.skipped == left_out


ASKED = (
    "fronts 85x5x3 and everything else as planned, no drama",
    "fronts 85x5x3 everything else as planned",
    "fronts 85x5x3 then the rest as planned",
    "fronts 85x5x3 and everything else as planned 👍",
    "fronts 85x5x3, one more in each",
    "elbow hurts on chins: 4, 5",
    "85x5, maybe i can make 1 more tomorrow",
    "calves 70x31, sorry",
    "calves 70x31, sorry, 70",
    "calves 70x31, sorry, 30",
    "calves 70x31, sorry late, 13 more to come",
    "stuck to the plan. fronts 85x5x3",
    "fronts 85x5, 85x5, 90x5 (last one 90? no, 85)",
)


@pytest.mark.parametrize("text", ASKED)
def test_what_is_asked_about(text: str) -> None:
    """What the plan does not settle is asked about, and stores nothing."""
    reading = read_message(asked(text))
    assert reading.ask is not None
    assert not reading.performed


@pytest.mark.parametrize("joint", [" and ", " ", " plus ", ", and ", " then ", " and then "])
def test_the_rest_as_planned_behind_any_joint(joint: str) -> None:
    """Where the plan fixes the rest, all of it is stored, whatever joins it to the sets before."""
    reading = read_message(asked(f"fronts 90x5x3{joint}everything else as planned", plan=PLAN[:2]))
    assert reading.ask is None
    fronts = [f"Front Squat#{n} 90x5" for n in (1, 2, 3)]
    assert sorted(map(repr, reading.performed)) == sorted(repr(row(one)) for one in (*fronts, *RDL))


@pytest.mark.parametrize(
    "said",
    ["and not everything else went as planned", "and rest times as planned", "with 2 minutes rest as planned",
     "and is everything else as planned?", "and rest day tomorrow as planned",
     "and hopefully everything else as planned"],
)  # fmt: skip
def test_what_is_no_rest_of_the_session(said: str) -> None:
    """What is denied, asked, hoped for or a pause stores no other exercise."""
    reading = read_message(asked(f"fronts 85x5x3 {said}", plan=PLAN[:2]))
    assert {p.exercise for p in reading.performed} <= {"Front Squat"}


@pytest.mark.parametrize(
    ("text", "left"),
    [("again but rpe 8.5 this time", "1.5"), ("again rpe 9", "1"), ("again but @9", "1"), ("again but 2 left", "2"),
     ("again with rpe 8.5", "1.5"), ("again but nothing left", "0"), ("another one but rpe 8.5", "1.5"),
     ("another one, rpe 9", "1")],
)  # fmt: skip
def test_again_with_its_effort(text: str, left: str) -> None:
    """It is a set more, and the one before it stays as it is."""
    reading = read_message(asked(text, FRONTS[0], current="Front Squat"))
    assert reading.performed == (row(f"{FRONTS[1]} rir {left}"),)
    assert not reading.replaces


@pytest.mark.parametrize(
    "text",
    ["rpe 9 again", "felt like 9 again", "rpe 9 this time", "again rpe 9 on the first", "again that was rpe 9",
     "another rep and rpe 9", "actually rpe 9"],
)  # fmt: skip
def test_an_effort_of_the_set_before(text: str) -> None:
    """An effort alone, or one said again, is of the set before it."""
    reading = read_message(asked(text, FRONTS[0], current="Front Squat"))
    assert reading.performed == (row(f"{FRONTS[0]} rir 1"),)
    assert reading.replaces == (("Front Squat", 1),)


@pytest.mark.parametrize(
    "text",
    ["rpe 9 on the 2nd one and 9.5 on the third btw", "rpe 9 for the second and 9.5 for the third",
     "rpe 9 on set 2 and 9.5 on set 3", "the 2nd one was rpe 9 and the third 9.5"],
)  # fmt: skip
def test_efforts_on_the_same_scale(text: str) -> None:
    """The effort of the next set needs no word of its own."""
    reading = read_message(asked(text, *FRONTS, current="Front Squat"))
    assert reading.ask is None
    assert reading.performed == (row(f"{FRONTS[1]} rir 1"), row(f"{FRONTS[2]} rir 0.5"))


@pytest.mark.parametrize(
    ("text", "third"),
    [("rpe 9 on the 2nd one and 87.5 on the third", "Front Squat#3 87.5x5"),
     ("rpe 9 on the 2nd one and 4 on the third", "Front Squat#3 85x4"),
     ("set 2 was rpe 9, set 3 was 6", "Front Squat#3 85x6")],
)  # fmt: skip
def test_what_is_on_no_scale(text: str, third: str) -> None:
    """A load or repetitions behind an effort are none."""
    reading = read_message(asked(text, *FRONTS, current="Front Squat"))
    assert reading.performed == (row(f"{FRONTS[1]} rir 1"), row(third))


@pytest.mark.parametrize("text", ["paused 80 3x4, 70x8", "paused 3x4 @ 80, 70x8", "paused 80 3x4 70x8"])
def test_the_block_of_the_plan(text: str) -> None:
    """Three sets of four, where the plan has just these at that load, are not four of three."""
    reading = read_message(asked(text, plan=PAUSED))
    assert reading.ask is None
    assert reading.performed == tuple(row(one) for one in (*HEAVY, "Paused Bench Press#4 70x8"))


@pytest.mark.parametrize("text", ["paused 80 2x4", "paused 80 4x3", "paused 80 4x3, 70x8", "tbar 55 2x3"])
def test_what_is_no_block_of_the_plan(text: str) -> None:
    """Where the plan has no such block, which number is which stays a question."""
    reading = read_message(asked(text, plan=PAUSED))
    assert reading.ask is not None
    assert not reading.performed


TALK = (
    ("for calves is 70 better or 75? pin only goes 5 by 5 here", True),
    ("the plates go 5 by 5 here", False),
    ("the stack goes up 5 at a time", False),
)


@pytest.mark.parametrize(("text", "question"), TALK)
def test_loads_that_are_only_spoken_of(text: str, question: bool) -> None:
    """What is asked about loads, and by how much they go up, is no set."""
    reading = read_message(asked(text, current="Standing Calf Raise"))
    assert reading.ask is None
    assert not reading.performed
    assert reading.question is question


@pytest.mark.parametrize(
    ("text", "question"),
    [("cardio? no. fronts 85x5x3", False), ("extras? none, fronts 85x5x3", False),
     ("fronts 85x5x3, should i add weight? no?", True), ("fronts 85x5x3, add weight? no or yes", True),
     ("fronts 85x5x3. ok to skip rdl? no, yes?", True)],
)  # fmt: skip
def test_who_answers_a_question(text: str, question: bool) -> None:
    """What somebody asks and answers themselves does not wait for the coach."""
    reading = read_message(asked(text))
    assert reading.question is question
    assert reading.performed == tuple(row(one) for one in FRONTS)


CODED = (
    PlannedExercise("Front Squat", sets("85", 5, 5)),
    PlannedExercise("Walking Lunge", sets("12", 8, 10, 2), load_style=LoadStyle.PER_HAND, sides=2),
    PlannedExercise("Side Plank", sets(None, 30, 45, 1), load_style=LoadStyle.NONE, measure=Measure.SECONDS, sides=2),
)
LUNGES = [f"Walking Lunge#{n} 12x8" for n in (1, 2)]
PLANK = ["Side Plank#1 -x30 left", "Side Plank#1 -x30 right"]


@pytest.mark.parametrize(
    ("text", "stored"),
    [("FS 85x5x3\nWL 12x8 12x8\nSP 30s/30s", [*FRONTS, *LUNGES, *PLANK]), ("wl 12 8 8", LUNGES),
     ("fs 85x5, wl 12x8", [FRONTS[0], LUNGES[0]]), ("SP: 30s/30s", PLANK)],
)  # fmt: skip
def test_two_letters_at_the_head_of_a_set(text: str, stored: list[str]) -> None:
    """What an exercise of the session begins with names it there."""
    reading = read_message(asked(text, plan=CODED))
    assert reading.ask is None
    assert sorted(map(repr, reading.performed)) == sorted(repr(row(one)) for one in stored)


@pytest.mark.parametrize("text", ["ok 85x5", "so 85x5", "bw 85x5", "pr 85x5", "felt like fs 85x5", "db 85x5"])
def test_two_letters_that_name_nothing(text: str) -> None:
    """Little words, kit and bests name no exercise; the first one stays the one that is meant."""
    plan = (CODED[0], PlannedExercise("Standing Overhead Press", sets("40", 8, 8)), CODED[1])
    assert {p.exercise for p in read_message(asked(text, plan=plan)).performed} <= {"Front Squat"}


def test_again_behind_a_set() -> None:
    """`85x5, again 2 left`: the effort came again, and is of the set before it."""
    reading = read_message(asked("85x5, again 2 left", FRONTS[0], current="Front Squat"))
    assert reading.performed == (row(f"{FRONTS[1]} rir 2"),)
