"""Names said in other ways, substitutes, and numbers that belong to no set: people, plans, reasons, things.

The wanted readings are those of a coach who knows the plan; common practice, no source.
"""

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import DROP, NOW, row, rows, sets

SQUAT = PlannedExercise("Back Squat", sets("100", 5, 5), aliases=("squat",))
BENCH = PlannedExercise("Bench Press", sets("80", 6, 8), aliases=("bench",))
HINGE = PlannedExercise("Romanian Deadlift", sets("90", 8, 10), aliases=("rdl",))
CHIN = PlannedExercise("Pull-Up", sets("0", 5, 8), aliases=("pull ups",), load_style=LoadStyle.BODYWEIGHT)
PLANK = PlannedExercise("Plank", sets(None, 45, 60, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
BARBELL = (SQUAT, BENCH, HINGE, CHIN, PLANK)
ROW = PlannedExercise("Machine Row", sets("55", 10, 12))
CABLE_ROW = PlannedExercise("Single-Arm Cable Row", sets("22.5", 10, 12, 2), sides=2)
DECK = PlannedExercise("Reverse Pec Deck", sets("30", 12, 15, 2), aliases=("rear delts",))
HAMMER = PlannedExercise("Hammer Curl", sets("12", 8, 10, 2), load_style=LoadStyle.PER_HAND)
CABLE_CURL = PlannedExercise("Cable Curl", sets("25", 10, 12, 2))
MACHINES = (ROW, CABLE_ROW, DECK, HAMMER, CABLE_CURL)
SWING = PlannedExercise("Kettlebell Swing", sets("16", 15, 15, 4), aliases=("swings",))
PRESS_UP = PlannedExercise("Push-Up", sets("0", 8, 15), aliases=("pushups",), load_style=LoadStyle.BODYWEIGHT)
STAND = PlannedExercise("Sit-to-Stand", sets(None, 8, 12), aliases=("chair stands",), load_style=LoadStyle.NONE)
HEEL = PlannedExercise("Heel Raise", sets(None, 12, 20, 2), load_style=LoadStyle.NONE)
HOME = (SWING, PRESS_UP, STAND, HEEL)
INCLINE = PlannedExercise(
    "Incline Dumbbell Press", sets("24", 8, 10), aliases=("incline",), load_style=LoadStyle.PER_HAND
)
OVERHEAD = PlannedExercise("Overhead Cable Extension", sets("40", 12, 15, 2))
PUSH = PlannedExercise("Push Press", sets("50", 5, 6))
RAISE = PlannedExercise("Lateral Raise", sets("8", 12, 15, 2), aliases=("laterals",), load_style=LoadStyle.PER_HAND)
SPLIT = PlannedExercise(
    "Bulgarian Split Squat", sets("12", 8, 10), aliases=("bulgarians",), load_style=LoadStyle.PER_HAND, sides=2
)
ABDUCTION = PlannedExercise("Hip Abduction", sets("45", 15, 20, 2, DROP), aliases=("abduction",))
PRESSES = (INCLINE, OVERHEAD, PUSH, RAISE, SPLIT, ABDUCTION)
LEGS = (
    PlannedExercise("Leg Press", sets("140", 10, 12)),
    PlannedExercise("Standing Calf Raise", sets("60", 15, 15, 2)),
    PlannedExercise("Leg Extension", sets("50", 12, 15, 2)),
    PlannedExercise("Lying Leg Curl", sets("32.5", 10, 12, 2)),
)
SQUATTED = ("Back Squat#1 100x5",)


def _read(text: str, session: tuple[PlannedExercise, ...], *done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(row(d) for d in done)))


NAMES = [
    ("1 arm row 22.5x12 each", MACHINES, ("Single-Arm Cable Row#1 22.5x12",)),
    ("rear delt machine 30 x 15, 14", MACHINES, ("Reverse Pec Deck#1 30x15", "Reverse Pec Deck#2 30x14")),
    ("cable curl machine 25kg 11", MACHINES, ("Cable Curl#1 25x11",)),
    ("did the hammers, twelves, nine and nine", MACHINES, ("Hammer Curl#1 12x9", "Hammer Curl#2 12x9")),
    ("the lying one, 32.5x11", LEGS, ("Lying Leg Curl#1 32.5x11",)),
    ("quads 50x15", LEGS, ("Leg Extension#1 50x15",)),
    ("tricep extensions overhead 40 x 15", PRESSES, ("Overhead Cable Extension#1 40x15",)),
    ("PP 50x6", PRESSES, ("Push Press#1 50x6",)),
    ("laterals 8 15", PRESSES, ("Lateral Raise#1 8x15",)),
    ("swings 15 ✨", HOME, ("Kettlebell Swing#1 16x15",)),
    ("did swings before breakfast fifteen", HOME, ("Kettlebell Swing#1 16x15",)),
    ("did 12 push-ups before she woke up", HOME, ("Push-Up#1 0x12",)),
    ("pushups while the kettle boiled, 11", HOME, ("Push-Up#1 0x11",)),
    ("12 chair stands dear", HOME, ("Sit-to-Stand#1 -x12",)),
    ("chair stands 12 my dear", HOME, ("Sit-to-Stand#1 -x12",)),
    ("heel raises holding on to the sink, 18", HOME, ("Heel Raise#1 -x18",)),
]
PEOPLE = [
    "somebody left 200 on the squat rack lol anyway 100x5",
    "the lad before me squatted 200. me: 100x5",
    "this kid next to me repped 120 for 10 and i'm here with 100x5",
    "dad squatted 60 for the first time. i did 100x5",
    "someone had left 140 on the bar. stripped it and did 100x5",
    "there was 180 on the rack when i got there haha. squat 100x5",
    "some girl deadlifted double bodyweight, 120! meanwhile me: squat 100x5",
    "whoever had the rack before me left 160 on. stripped to 100 for 5",
]
PLANS = [
    "i was tempted to go 110, behaved myself: 100x5",
    "the sheet said 105, went with 100 for 5",
    "you had me down for 105, i went 100 for 5 reps",
    "plan: 105x5. actual: 100x5",
    "thought about 105. did 100x5",
    "had 105 in mind but 100x5 was plenty",
    "didn't fancy 105 so stuck at 100 for 5",
    "couldn't do 6, did 5. 100kg",
    "could have gone 105. did 100x5",
    "not 105, just 100 for 5",
    "it wasn't 4 it was 5 at 100",
    "loaded 80 by mistake lol took it up, 100x5",
    "last week was 97.5x5, this week 100x5",
    "100x5, think i'll go 105 next week",
]
THINGS = [
    "song at 140 bpm got me through: 100x5",
    "listening to the 90s playlist, 100x5 easy",
    "up at 5 for this. 100x5",
    "spin class at 6 so only squats: 100x5",
    "only 2 other people in the gym, bliss. 100x5",
    "it's -3 outside. 100x5",
    "level 8 on the bike for 10 min to warm up, then squat 100x5",
    "did a 5k this morning. squat 100x5",
    "did parkrun in 28:14 this morning, 100x5 after",
    "my watch says 152 bpm. 100x5",
    "lost 2-1 last night so grumpy. 100x5",
    "100x5. rest 3:30",
    "seat height 4. 100x5",
    "only 2 sets of squats left to go, this one 100x5",
]
REASONS = [
    ("24s for 8 because my left arm gave up first", PRESSES, ("Incline Dumbbell Press#1 24x8",)),
    ("I used the 26s because someone had all the 24s, 8 reps", PRESSES, ("Incline Dumbbell Press#1 26x8",)),
    ("only 20s on the incline as the 24s were gone: 10, 10, 10", PRESSES,
     ("Incline Dumbbell Press#1 20x10", "Incline Dumbbell Press#2 20x10", "Incline Dumbbell Press#3 20x10")),
    ("incline w/ 24s cuz i'm feeling fancy nine eight and eight", PRESSES,
     ("Incline Dumbbell Press#1 24x9", "Incline Dumbbell Press#2 24x8", "Incline Dumbbell Press#3 24x8")),
    ("no 12s left, grabbed 10s for the bulgarians. 10 each", PRESSES, ("Bulgarian Split Squat#1 10x10",)),
    ("was gonna take 14s for bulgarians but took the 10s. 10/leg", PRESSES, ("Bulgarian Split Squat#1 10x10",)),
    ("squat 95 because it's week 1 back, 5 5 5", BARBELL,
     ("Back Squat#1 95x5", "Back Squat#2 95x5", "Back Squat#3 95x5")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "session", "stored"), NAMES + REASONS)
def test_which_exercise(text: str, session: tuple[PlannedExercise, ...], stored: tuple[str, ...]) -> None:
    """The exercise that is meant, and its sets only; a reason holds no set and gives up nothing."""
    reading = _read(text, session)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*stored)
    assert reading.skipped == ()


@pytest.mark.parametrize("text", PEOPLE + PLANS + THINGS)
def test_numbers_of_no_set(text: str) -> None:
    """Other people's lifts, what was planned or not done, and things counted: beside them one set is told."""
    reading = _read(text, BARBELL)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*SQUATTED)


@pytest.mark.parametrize(
    "text",
    [
        "Thank you. Weighed myself this morning, 84.2 kg.",
        "32k on the trails so my legs are toast today",
        "there's a queue of 4 for the rack",
        "im 71kg now btw",
        "back at it in 10",
        "my age is 54 by the way",
        "gym membership went up to 45 a month",
    ],
)
def test_talk_alone(text: str) -> None:
    """A message of such numbers alone stores nothing and asks nothing."""
    reading = _read(text, BARBELL)
    assert reading.ask is None, reading.ask
    assert reading.performed == ()


DOUBTFUL = [
    ("the machine row has a problem so i took the t-bar, 50 x 12", MACHINES),
    ("row machine was taken, used the t bar instead 50x12", MACHINES),
    ("did barbell rows instead of the machine 50 x 10", MACHINES),
    ("t-bar row 50x12 cause machine was hogged", MACHINES),
    ("bench taken so i did floor press 70x8", BARBELL),
    ("calves on the leg press 100x15", LEGS),
    ("lost count there, either 4 or 5", BARBELL),
    ("100 x 4 maybe 5", BARBELL),
    ("100x5 i think? maybe 6", BARBELL),
    ("100x5. or 4. hard to say", BARBELL),
    ("not sure if that was 5 or 6 at 100", BARBELL),
    ("pull ups 6-7", BARBELL),
    ("did 4 - 5 reps at 100, not certain", BARBELL),
    ("7 on the pull ups i think, could be 8", BARBELL),
    ("tried 110 for a laugh and racked it straight away. 100x5 though", BARBELL),
    ("didn't get the 5th. 100x4", BARBELL),
]


@pytest.mark.parametrize(("text", "session"), DOUBTFUL)
def test_asked_about(text: str, session: tuple[PlannedExercise, ...]) -> None:
    """A substitute, one of two numbers, a load alone in talk: asked about, not stored, and no question to the coach."""
    reading = _read(text, session)
    assert reading.ask is not None, reading.performed
    assert reading.performed == ()
    assert not reading.question


@pytest.mark.parametrize("called", [
    "chair stands", "stand-ups", "stand ups", "sit to stands", "sit-to-stand", "chair rises",
])  # fmt: skip
def test_a_sit_to_stand_by_its_other_names(called: str) -> None:
    stand = PlannedExercise("Sit to Stand", sets(None, 8, 12), load_style=LoadStyle.NONE)
    told = [f"{called}: 12, 11, 10", f"my balance is much improved. {called} 12, 11 and 10", f"{called} 12 11 10"]
    for text in told:
        reading = _read(text, (stand,))
        assert (reading.ask, [p.reps for p in reading.performed]) == (None, [12, 11, 10]), text
    alone = _read(f"I did 10 {called} from the kitchen chair, hands crossed as you showed me", (stand,))
    assert (alone.ask, [p.reps for p in alone.performed]) == (None, [10])


@pytest.mark.parametrize("text", ["I could not stand up afterwards", "had to stand up and rest"])
def test_standing_up_is_no_exercise(text: str) -> None:
    stand = PlannedExercise("Sit to Stand", sets(None, 8, 12), load_style=LoadStyle.NONE)
    assert _read(text, (stand,)).performed == ()
