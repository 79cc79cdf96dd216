"""Exercises called in many ways, slips in names and small words, whole sessions told in one message, units said once.

The wanted readings are those of a coach who knows the plan; common practice, no source.
"""

from itertools import product

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import MINI, NOW, row, rows, sets

SQUAT = PlannedExercise("Back Squat", sets("100", 5, 5), aliases=("squat",))
BENCH = PlannedExercise("Bench Press", sets("80", 6, 8), aliases=("bench",))
HINGE = PlannedExercise("Romanian Deadlift", sets("90", 8, 10), aliases=("rdl",))
ROW = PlannedExercise("Barbell Row", sets("60", 8, 10))
BARBELL = (SQUAT, BENCH, HINGE, ROW)
LEG_PRESS = PlannedExercise("Leg Press", sets("140", 10, 12))
LEG_CURL = PlannedExercise("Seated Leg Curl", sets("40", 10, 12))
EXTENSION = PlannedExercise("Leg Extension", sets("50", 12, 15))
CALF = PlannedExercise("Standing Calf Raise", sets("60", 15, 15), aliases=("calves",))
LEGS = (LEG_PRESS, LEG_CURL, EXTENSION, CALF)
THRUST = PlannedExercise("Hip Thrust", sets("110", 8, 10))
ABDUCTION = PlannedExercise("Hip Abduction", sets("45", 15, 20))
GLUTES = (THRUST, ABDUCTION)
SWING = PlannedExercise("Kettlebell Swing", sets("24", 15, 15), aliases=("swings",))
CLEAN = PlannedExercise("Kettlebell Clean and Press", sets("16", 6, 8), aliases=("press",))
CURL = PlannedExercise("Hammer Curl", sets("12", 8, 10), aliases=("curls",), load_style=LoadStyle.PER_HAND)
FACE = PlannedExercise("Face Pull", sets("20", 15, 20))
BELLS = (SWING, CLEAN, CURL, FACE)
SEATED = PlannedExercise("Seated Calf Raise", sets("30", 12, 15, 2))
STANDING = PlannedExercise("Standing Calf Raise", sets("70", 10, 12, 2))
CALVES = (SEATED, STANDING)
DECK = PlannedExercise("Pec Deck", sets("30", 12, 15))
SHOULDERS = PlannedExercise("Machine Shoulder Press", sets("22.5", 8, 10))
MACHINES = (DECK, SHOULDERS)
TRAP = PlannedExercise("Trap Bar Deadlift", sets("140", 5, 5), aliases=("tbdl",))
SPLIT = PlannedExercise(
    "Bulgarian Split Squat", sets("14", 8, 10), aliases=("bulgarians",), load_style=LoadStyle.PER_HAND, sides=2
)
CARRY = PlannedExercise(
    "Suitcase Carry", sets("24", 20, 30, 2), load_style=LoadStyle.PER_HAND, measure=Measure.METRES, sides=2
)
POUNDS = (
    PlannedExercise("Leg Press", sets("90lb", 12, 15)),
    PlannedExercise("Machine Row", sets("40lb", 10, 12), aliases=("row", "rows")),
)
CALLED = [
    (LEGS, "Leg Press", "140", 12, ("press of legs", "the press of the legs", "leg prss", "legpress", "press leg")),
    (LEGS, "Seated Leg Curl", "40", 12, ("curl of leg", "seated leg crul", "hamstring curl", "the seated one")),
    (LEGS, "Standing Calf Raise", "60", 15, ("calf rise", "standing calf rase", "calves", "standing calf lifts")),
    (GLUTES, "Hip Thrust", "110", 10, ("hip thurst", "hipthrust", "thrust of hip", "hip thrusts")),
    (GLUTES, "Hip Abduction", "45", 20, ("abduction of hip", "hip abductoin", "abductions")),
    (
        BELLS,
        "Kettlebell Swing",
        "24",
        15,
        ("kettle bell swings", "kb swing", "kettlebell seing", "swing of kettlebell"),
    ),
    (BELLS, "Kettlebell Clean and Press", "16", 8, ("clean and press", "clean & press", "kettlebell claen and press")),
    (BELLS, "Face Pull", "20", 20, ("faec pull", "fce pulls", "pull of face", "facepulls")),
    (MACHINES, "Pec Deck", "30", 15, ("pec dec", "pec fly")),
    (MACHINES, "Machine Shoulder Press", "22.5", 10, ("shoulder machine", "press machine for shoulder")),
    (BARBELL, "Barbell Row", "60", 10, ("bent over rows", "row with barbell")),
]
PLACES = ("{name} {load}x{reps}", "{load} for {reps} on {name}", "{name}\n{load}x{reps}")


def _read(text: str, session: tuple[PlannedExercise, ...], *done: str, unit: Unit = Unit.KG) -> Reading:
    return read_message(Request(text, unit, NOW, session, tuple(row(d) for d in done)))


@pytest.mark.parametrize(
    ("called", "name", "place"),
    [(one, name, place) for one in CALLED for name, place in product(one[4], PLACES)],
)
def test_called(
    called: tuple[tuple[PlannedExercise, ...], str, str, int, tuple[str, ...]], name: str, place: str
) -> None:
    """A name told the other way round, with a slip, by its head or alone on a line: its exercise, and no pain."""
    session, exercise, load, reps, _ = called
    reading = _read(place.format(name=name, load=load, reps=reps), session)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(f"{exercise}#1 {load}x{reps}")
    assert reading.pain is None


SMALL = [
    ("100x5, 2 lft in the tank", ("Back Squat#1 100x5 rir 2",)),
    ("100x5, two leftt", ("Back Squat#1 100x5 rir 2",)),
    ("squat 100 for 5 res, 5 res, 4 res", ("Back Squat#1 100x5", "Back Squat#2 100x5", "Back Squat#3 100x4")),
    ("3 ses of 5 at 100", ("Back Squat#1 100x5", "Back Squat#2 100x5", "Back Squat#3 100x5")),
    ("wam up 60x5, then 100x5", ("Back Squat#0 60x5 warmup", "Back Squat#1 100x5")),
    ("all thee sets 100x5", ("Back Squat#1 100x5", "Back Squat#2 100x5", "Back Squat#3 100x5")),
    ("100x4 faliure", ("Back Squat#1 100x4 rir 0",)),
    ("could have done 2 moe, 100x5", ("Back Squat#1 100x5 rir 2",)),
    ("100x5 ten 100x4", ("Back Squat#1 100x5", "Back Squat#2 100x4")),
]
AGAIN = [("srcond set 4", "4"), ("sme again", "5"), ("ssme as before", "5"), ("saem weight, 4", "4")]
DUMPED = ("Back Squat#1 100x5", "Back Squat#2 100x4", "Bench Press#1 80x8", "Bench Press#2 80x7")
DUMPS = [
    "squat\nset 1: 100x5\nset 2: 100x4\nbench\nset 1: 80x8\nset 2: 80x7",
    "squat:\n1) 100x5\n2) 100x4\n\nbench:\n1) 80x8\n2) 80x7",
    "squat\n1. 100x5\n2. 100x4\nbench\n1. 80x8\n2. 80x7",
    "squat\nfirst set 100x5\nsecond set 100x4\nbench\nfirst set 80x8\nsecond set 80x7",
    "Squat. Set 1 100x5. Set 2 100x4. Bench. Set 1 80x8. Set 2 80x7.",
    "100x5, 100x4 squat, 80x8, 80x7 bench",
    "100x5, 100x4 squat then 80x8, 80x7 bench",
    "100x5, 100x4 squats / 80x8, 80x7 bench all good",
    "I did squat with 100 kilo, 5 times and 4 times I did bench with 80 kilo, 8 times and 7 times",
    "squat with 100 kilo, 5 times and 4 times / bench with 80 kilo, 8 times and 7 times",
    "squat one hundred for five then four bench eighty for eight then seven",
    "session: squat 5, 4 at 100, bench 8, 7 at 80",
]
WHOLE = [
    ("curls 10, 9, 8 at 12s", BELLS, ("Hammer Curl#1 12x10", "Hammer Curl#2 12x9", "Hammer Curl#3 12x8")),
    ("curls 12s 12 11 9", BELLS, ("Hammer Curl#1 12x12", "Hammer Curl#2 12x11", "Hammer Curl#3 12x9")),
    ("face pull 20, 19, 15 at 20", BELLS, ("Face Pull#1 20x20", "Face Pull#2 20x19", "Face Pull#3 20x15")),
    ("pec dec 3x15 30", MACHINES, ("Pec Deck#1 30x15", "Pec Deck#2 30x15", "Pec Deck#3 30x15")),
    ("standing ones 70x12, 70x11. seated ones 30x15", CALVES,
     ("Standing Calf Raise#1 70x12", "Standing Calf Raise#2 70x11", "Seated Calf Raise#1 30x15")),
    ("bulgarians 14: legt 10 right 9", (SPLIT, CARRY),
     ("Bulgarian Split Squat#1 14x10 left", "Bulgarian Split Squat#1 14x9 right")),
    ("then carried the 24 for 30m each side", (SPLIT, CARRY), ("Suitcase Carry#1 24x30",)),
]  # fmt: skip
FLY = PlannedExercise("Cable Fly", sets("15", 12, 15, 2, MINI))
SHRUG = PlannedExercise("Dumbbell Shrug", sets("30", 12, 12, 2), load_style=LoadStyle.PER_HAND)
HANG = PlannedExercise("Dead Hang", sets(None, 30, 60), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
WHOLE += [
    ("fly 15x15, 15x13 +4+3, shrugs 30x12", (FLY, SHRUG),
     ("Cable Fly#1 15x15", "Cable Fly#2 15x13", "Cable Fly#2 15x4 mini", "Cable Fly#2 15x3 mini",
      "Dumbbell Shrug#1 30x12")),
    ("fly 15x13 - both sets of shrugs as planned", (FLY, SHRUG),
     ("Cable Fly#1 15x13", "Dumbbell Shrug#1 30x12", "Dumbbell Shrug#2 30x12")),
    ("hang 1 minute, then 45 sec, swings 24x15", (HANG, SWING),
     ("Dead Hang#1 -x60", "Dead Hang#2 -x45", "Kettlebell Swing#1 24x15")),
    ("hang half a minute, swings 24x15", (HANG, SWING), ("Dead Hang#1 -x30", "Kettlebell Swing#1 24x15")),
    ("squat 102.5x5 no sorry 100x5, bench 80x7", BARBELL, ("Back Squat#1 100x5", "Bench Press#1 80x7")),
]  # fmt: skip
ONCE = (
    "{} (kg)",
    "all in kg today: {}",
    "{} - kilos today",
    "the machines here are in kilos. {}",
    "{}. these are kilos",
)
STRANGE = [
    ("did the deads with a straight bar instead 140x5", (TRAP,)),
    ("straight bar deads 140x5", (TRAP,)),
    ("used a normal bar for the deads, 140x5", (TRAP,)),
    ("bench press 24x10", (CURL, PlannedExercise("Incline Dumbbell Press", sets("24", 8, 10)))),
    ("pause bench 80x8", BARBELL),
    ("frnot squat 100x5", BARBELL),
    ("leg raise 60x15", LEGS),
    ("used hack squats for the squats, 100x5", BARBELL),
    ("did squat as leg press 100x5", BARBELL),
    ("set 2: 100x5. set 2: 100x4", BARBELL),
    ("squat\nset 1: 100x5\nblah\nset 1: 80x8", BARBELL),
]


@pytest.mark.parametrize(("text", "stored"), SMALL)
def test_slips_in_small_words(text: str, stored: tuple[str, ...]) -> None:
    """Words of three to five letters, where their neighbours call for them."""
    reading = _read(text, BARBELL)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*stored)


@pytest.mark.parametrize(("text", "reps"), AGAIN)
def test_slips_in_what_repeats(text: str, reps: str) -> None:
    """The set before once more, or its load."""
    reading = _read(text, BARBELL, "Back Squat#1 100x5")
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(f"Back Squat#2 100x{reps}")
    assert reading.replaces == ()


@pytest.mark.parametrize(("text", "session", "stored"), [*((d, BARBELL, DUMPED) for d in DUMPS), *WHOLE])
def test_whole_sessions(text: str, session: tuple[PlannedExercise, ...], stored: tuple[str, ...]) -> None:
    """Every set of every exercise that the message tells, under its own name and number."""
    reading = _read(text, session)
    assert reading.ask is None, reading.ask
    assert sorted(reading.performed, key=str) == sorted(rows(*stored), key=str)
    assert reading.day is None
    assert reading.replaces == ()


@pytest.mark.parametrize("how", ONCE)
def test_a_unit_said_once(how: str) -> None:
    """A unit said once holds for the whole message: beside it, 18 kg is the planned 40 lb."""
    reading = _read(how.format("leg press 40x15, row 18x12"), POUNDS, unit=Unit.LB)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows("Leg Press#1 40x15", "Machine Row#1 18x12")


@pytest.mark.parametrize(("text", "session"), STRANGE)
def test_what_the_session_lacks_asks(text: str, session: tuple[PlannedExercise, ...]) -> None:
    """Another exercise, another bar, one number for two sets: asked about, nothing stored."""
    reading = _read(text, session)
    assert reading.ask is not None, reading.performed
    assert reading.performed == ()


@pytest.mark.parametrize("told", ["a final set of ten at the same weight", "last set 10 same weight"])
def test_the_same_weight_behind_a_count(told: str) -> None:
    """The load of the set before, told behind the repetitions."""
    reading = _read(f"rows 40x12, 40x11, {told}", POUNDS, unit=Unit.LB)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows("Machine Row#1 40lbx12", "Machine Row#2 40lbx11", "Machine Row#3 40lbx10")
