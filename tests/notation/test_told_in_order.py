"""Lists whose numbers each have a link, efforts in short, warm-ups told behind, set numbers behind their loads."""

from collections.abc import Sequence

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, row, rows, sets

PRESS = PlannedExercise("Bench Press", sets("60", 8, 10), aliases=("bench",))
ARNOLD = PlannedExercise("Arnold Press", sets("14", 8, 12), aliases=("arnolds",), load_style=LoadStyle.PER_HAND)
LOG = PlannedExercise("Log Press", sets("62.5", 6, 6, 4))
CLEAN = PlannedExercise("Power Clean", sets("70", 3, 3, 5), aliases=("cleans",))
SLED = PlannedExercise("Sled Push", sets("180", 20, 20), aliases=("sled",), measure=Measure.METRES)
SQUAT = PlannedExercise("Front Squat", sets("70", 4, 6))
PULL = PlannedExercise("Deadlift", sets("140", 5, 5))
SPLIT = PlannedExercise("Split Squat", sets("16", 8, 10), load_style=LoadStyle.PER_HAND, sides=2)


def _read(text: str, *session: PlannedExercise, done: Sequence[str] = ()) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(row(d) for d in done)))


def _are(name: str, *values: str) -> tuple[str, ...]:
    return tuple(f"{name}#{n} {value}" for n, value in enumerate(values, 1))


LISTS = [
    (
        "two sets at 60 (10,9) one at 55 (12)",
        PRESS,
        ("Bench Press#1 60x10", "Bench Press#2 60x9", "Bench Press#3 55x12"),
    ),
    ("60 x10 x9 x8", PRESS, _are("Bench Press", "60x10", "60x9", "60x8")),
    ("60kg x10 x9 x8", PRESS, _are("Bench Press", "60x10", "60x9", "60x8")),
    ("bench 62.5 x9 x8 x8", PRESS, _are("Bench Press", "62.5x9", "62.5x8", "62.5x8")),
    ("60 x10, x9, x8", PRESS, _are("Bench Press", "60x10", "60x9", "60x8")),
    ("60 x10 x9", PRESS, _are("Bench Press", "60x10", "60x9")),
    ("14s x12 x11 x10", ARNOLD, _are("Arnold Press", "14x12", "14x11", "14x10")),
    ("14s for 12 for 11 for 10", ARNOLD, _are("Arnold Press", "14x12", "14x11", "14x10")),
    ("arnolds 14s for 12, for 11 and for uh 10", ARNOLD, _are("Arnold Press", "14x12", "14x11", "14x10")),
    ("60kg, 10 times, 9 times, 8 times", PRESS, _are("Bench Press", "60x10", "60x9", "60x8")),
    ("bench 60kg 10 times, then 9 times", PRESS, _are("Bench Press", "60x10", "60x9")),
]
EFFORTS = [
    ("60x10 with 2 in the tank then 60x9 with 1", PRESS, _are("Bench Press", "60x10 rir 2", "60x9 rir 1")),
    ("60x10 w 3 in the tank, 60x9 w 1", PRESS, _are("Bench Press", "60x10 rir 3", "60x9 rir 1")),
    ("60x10 with 1 in the tank, 60x9 with zero", PRESS, _are("Bench Press", "60x10 rir 1", "60x9 rir 0")),
    ("60 for 10 with 3 left then 62.5 for 8 with 2", PRESS, _are("Bench Press", "60x10 rir 3", "62.5x8 rir 2")),
    ("60kg, 10 reps at 7 then 9 reps at 8", PRESS, _are("Bench Press", "60x10 rir 3", "60x9 rir 2")),
    ("60kg 10 reps at 7 then 9 reps at 8 then 8 at 9", PRESS,
     _are("Bench Press", "60x10 rir 3", "60x9 rir 2", "60x8 rir 1")),
    ("60x10 with 2 in reserve, 60x9 with 1, 60x8 with zero", PRESS,
     _are("Bench Press", "60x10 rir 2", "60x9 rir 1", "60x8 rir 0")),
]  # fmt: skip
WARM = "Front Squat#0 {} warmup"
WARMUPS = [
    ("20x8 30x5 50x3 all warmups, then 70x4", SQUAT,
     (*(WARM.format(w) for w in ("20x8", "30x5", "50x3")), "Front Squat#1 70x4")),
    ("30x8, 40x5, 55x3 just warm ups so far", SQUAT, tuple(WARM.format(w) for w in ("30x8", "40x5", "55x3"))),
    ("30x8 and 50x4 were warmups", SQUAT, tuple(WARM.format(w) for w in ("30x8", "50x4"))),
    ("50x5, 70x5 - first was a warmup", SQUAT, (WARM.format("50x5"), "Front Squat#1 70x5")),
    ("50x5, 70x5, 70x4. first one was a warm up btw", SQUAT,
     (WARM.format("50x5"), "Front Squat#1 70x5", "Front Squat#2 70x4")),
    ("warm up done: bar only 20x8, then 35x5. Work set: 70x5", SQUAT,
     (WARM.format("20x8"), WARM.format("35x5"), "Front Squat#1 70x5")),
]  # fmt: skip
NUMBERS = [
    ("200 first. 200 second. 190 third. all 20m", SLED, (), _are("Sled Push", "200x20", "200x20", "190x20")),
    ("60x10 first, 60x9 second, 57.5x8 third", PRESS, (), _are("Bench Press", "60x10", "60x9", "57.5x8")),
    ("14s x 12, then 16s for the 2nd and got 9", ARNOLD, (), _are("Arnold Press", "14x12", "16x9")),
    ("went to 16s for the third and got 9", ARNOLD, ("Arnold Press#1 14x12", "Arnold Press#2 14x12"),
     ("Arnold Press#3 16x9",)),
    ("failed the third at 75", CLEAN, ("Power Clean#1 70x3",), ("Power Clean#2 75x2 rir 0",)),
    ("72.5x3, then failed the second at 75", CLEAN, (), ("Power Clean#1 72.5x3", "Power Clean#2 75x1 rir 0")),
    ("failed the 3rd rep at 72.5kg", CLEAN, (), ("Power Clean#1 72.5x2 rir 0",)),
    ("log 3: six. log 4: five", LOG, ("Log Press#1 62.5x6", "Log Press#2 62.5x6"),
     ("Log Press#3 62.5x6", "Log Press#4 62.5x5")),
    ("bench number 2: 60 kg, 9 reps", PRESS, ("Bench Press#1 60x10",), ("Bench Press#2 60x9",)),
    ("bench number 3 was 60x8", PRESS, ("Bench Press#1 60x10", "Bench Press#2 60x9"), ("Bench Press#3 60x8",)),
    ("16s, ten left and ten right. next ten and eight", SPLIT, (),
     ("Split Squat#1 16x10 left", "Split Squat#1 16x10 right", "Split Squat#2 16x10 left", "Split Squat#2 16x8 right")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "planned", "stored"), LISTS + EFFORTS + WARMUPS)
def test_told_in_lists(text: str, planned: PlannedExercise, stored: tuple[str, ...]) -> None:
    """Each number is its own set's; each effort and warm-up is of the sets that it was said of."""
    reading = _read(text, planned)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*stored)


@pytest.mark.parametrize(("text", "planned", "done", "stored"), NUMBERS)
def test_told_by_number(text: str, planned: PlannedExercise, done: tuple[str, ...], stored: tuple[str, ...]) -> None:
    """Which set it is may stand behind what is told of it, or among it."""
    reading = _read(text, planned, done=done)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*stored)


DOUBTFUL = [
    ("that's three benches then! 60, 9 reps", PRESS, ("Bench Press#1 60x10", "Bench Press#2 60x10")),
    ("second went well, 140 for 5. third I bailed, did not get past 3", PULL, ("Deadlift#1 140x5",)),
    ("third one nope 4", PULL, ()),
    ("140x5, rir 2 obvs maybe, rir 1", PULL, ()),
    ("hold on, 2. 60x9", PRESS, ()),
    ("60x10 60x9 55x8 55x8 50x8", PRESS, ()),
]


@pytest.mark.parametrize(("text", "planned", "done"), DOUBTFUL)
def test_what_no_set_shows_is_asked(text: str, planned: PlannedExercise, done: tuple[str, ...]) -> None:
    """A number, an ordinal or an effort beside sets that no kept set uses: asked about, and nothing is kept."""
    reading = _read(text, planned, done=done)
    assert reading.performed == () or reading.ask is None
    assert reading.ask is not None, reading.performed


CURL = PlannedExercise("Leg Curl", sets("40", 10, 12), aliases=("curls",))
CALF = PlannedExercise("Seated Calf Raise", sets("40", 15, 20))
CHIN = PlannedExercise("Chin-Up", sets("10", 5, 8), aliases=("chins",), load_style=LoadStyle.BODYWEIGHT)
PULLUP = PlannedExercise("Assisted Pull-Up", sets("-25", 8, 10), load_style=LoadStyle.BODYWEIGHT)
HOLD = PlannedExercise("Hollow Hold", sets(None, 20, 40), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
ONE, TWO = ("Bench Press#1 60x10",), ("Bench Press#1 60x10", "Bench Press#2 60x10")
CURLED = ("Leg Curl#1 40x12",)
HANDS = [
    ("28kg total (2 x 14s) for 10", "14x10"),
    ("14s (28 total) x 10", "14x10"),
    ("28 total so 14 each hand, 11 reps", "14x11"),
    ("2 x 16s = 32kg total, 9 reps", "16x9"),
    ("16 per hand (32kg total) x9", "16x9"),
    ("used 12 a hand so 24 total, 12 reps", "12x12"),
    ("30 total ie 15 a hand, 8 reps", "15x8"),
]
HALVES = [
    ("16s. first 10, second 9, third 8", (ARNOLD,), (), _are("Arnold Press", "16x10", "16x9", "16x8")),
    ("14s. first one was 12, second was 11 and third was 9 rpe 9", (ARNOLD,), (),
     _are("Arnold Press", "14x12", "14x11", "14x9 rir 1")),
    ("with the 16s. left 10, right 9", (SPLIT,), (), ("Split Squat#1 16x10 left", "Split Squat#1 16x9 right")),
    ("20 assist this time! 8", (PULLUP,), (), ("Assisted Pull-Up#1 -20x8",)),
    ("30 assist. 9 reps", (PULLUP,), (), ("Assisted Pull-Up#1 -30x9",)),
    ("60 for... 9", (PRESS,), (), ("Bench Press#1 60x9",)),
    ("60x9. x3", (PRESS,), (), _are("Bench Press", "60x9", "60x9", "60x9")),
    ("sled 180 for 20m... x3", (SLED,), (), _are("Sled Push", "180x20", "180x20", "180x20")),
    ("65... no sorry, 60x9", (PRESS,), ONE, ("Bench Press#2 60x9",)),
    ("70. no wait, 60 for 9", (PRESS,), (), ("Bench Press#1 60x9",)),
    ("someone's on the bench so i started with curls!! 40x12", (PRESS, CURL), (), CURLED),
    ("some guy was on the bench so i did leg curls 40x12", (PRESS, CURL), (), CURLED),
    ("moved on to leg curls. 40x12", (PRESS, CURL), (), CURLED),
    ("went +15 instead of +10 on chins, 5 reps", (CHIN,), (), ("Chin-Up#1 15x5",)),
    ("40 x 16 calves", (PRESS, CALF), (), ("Seated Calf Raise#1 40x16",)),
    ("17 more for the second", (CALF,), ("Seated Calf Raise#1 40x17",), ("Seated Calf Raise#2 40x17",)),
    ("curl hurt my knee in the second set, 40x12 40x10", (CURL,), (), _are("Leg Curl", "40x12", "40x10")),
    ("hold 2, thirty five seconds", (HOLD,), ("Hollow Hold#1 -x30",), ("Hollow Hold#2 -x35",)),
    ("holds were 0:38 and 0:31", (HOLD,), (), _are("Hollow Hold", "-x38", "-x31")),
    ("bar pad slipped, second one was just 8", (PRESS,), ONE, ("Bench Press#2 60x8",)),
    ("60x9, bar speed was good", (PRESS,), (), ("Bench Press#1 60x9",)),
    ("8 then failed on the 9th", (PRESS,), (), ("Bench Press#1 60x8 rir 0",)),
    ("same again but just 9 this time", (PRESS,), ONE, ("Bench Press#2 60x9",)),
    ("same again, only 8", (PRESS,), ONE, ("Bench Press#2 60x8",)),
    ("third set i had to rack it at 6", (PRESS,), TWO, ("Bench Press#3 60x6",)),
    ("third I had to stop at 8, wrist ached", (PRESS,), TWO, ("Bench Press#3 60x8",)),
    ("60x10 felt like 7/10", (PRESS,), (), ("Bench Press#1 60x10 rir 3",)),
    ("60x10, rest was 90s", (PRESS,), (), ("Bench Press#1 60x10",)),
    ("57.5x10 last time, 60x9 now", (PRESS,), (), ("Bench Press#1 60x9",)),
    ("60x8 5 in the morning lol", (PRESS,), (), ("Bench Press#1 60x8",)),
    ("did 2 warmup sets then 60x9", (PRESS,), (), ("Bench Press#1 60x9",)),
    ("3 warm up sets, 60x9", (PRESS,), (), ("Bench Press#1 60x9",)),
    ("60x8, could only get 8 after", (PRESS,), (), _are("Bench Press", "60x8", "60x8")),
    ("35 sec, 30 sec rest, 30 sec", (HOLD,), (), _are("Hollow Hold", "-x35", "-x30")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "told"), HANDS)
def test_total_and_one_hand(text: str, told: str) -> None:
    """The load of two dumbbells told both ways is that of one."""
    reading = _read(text, ARNOLD)
    assert (reading.ask, reading.performed) == (None, rows(f"Arnold Press#1 {told}"))


@pytest.mark.parametrize(("text", "session", "done", "stored"), HALVES)
def test_told_in_halves(
    text: str, session: tuple[PlannedExercise, ...], done: tuple[str, ...], stored: tuple[str, ...]
) -> None:
    """A load in one sentence and its sets in the next; what was taken back, or is somebody else's, has no bearing."""
    reading = _read(text, *session, done=done)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*stored)


LEFT = [
    ("skipping the rest of the curls", CURLED),
    ("binning the rest of my curls, calves 40x16", CURLED),
    ("leave what's left of those", CURLED),
    ("40x12, 40x10 and the third i skipped", ()),
]


@pytest.mark.parametrize(("text", "done"), LEFT)
def test_the_rest_of_one_exercise_is_left_out(text: str, done: tuple[str, ...]) -> None:
    """Not the rest of the session."""
    reading = _read(text, CURL, CALF, done=done)
    assert (reading.ask, reading.skipped) == (None, ("Leg Curl",))


@pytest.mark.parametrize("text", ["carry on with curls or skip them?", "should i do curls or drop them?"])
def test_one_of_two_ways_asked_about_skips_nothing(text: str) -> None:
    """It is the coach's to say."""
    reading = _read(text, CURL, CALF)
    assert (reading.question, reading.skipped) == (True, ())


ELSEWHERE = [
    ("60 10 10 last set 7 with a spot on 2", ()),
    ("60x10 (8 clean)", ()),
    ("60x10, 60x9, could do 2 more on the first, none on the second", ()),
    ("16s, 10 right 9 left, then 9 and 8", ()),
    ("add one rep to the last set", TWO),
    ("60x10x3, no only did 2", ()),
    ("60x10 then two reps fewer", ()),
    ("60x10 but 2 were ugly", ()),
    ("60x10 or was it 9", ()),
    ("between 8 and 10 at 60", ()),
    ("60x8-9", ()),
    ("60x9, 3 of them paused", ()),
    ("10 was 9", TWO),
    ("60x10, couldve got 12", ()),
    ("incline 50x8", ()),
    ("close grip 60x9", ()),
    ("sumo 60x9", ()),
]


@pytest.mark.parametrize(("text", "done"), ELSEWHERE)
def test_what_speaks_of_another_thing_is_asked(text: str, done: tuple[str, ...]) -> None:
    """A spotter's repetitions, clean ones, another set's effort, a change to a stored set: none is a set of its own."""
    reading = _read(text, SPLIT if text.startswith("16s") else PRESS, done=done)
    assert reading.ask is not None, reading.performed
    assert (reading.performed, reading.replaces) == ((), ())
