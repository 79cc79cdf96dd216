"""Names begun or turned, extra sets, sessions told under their loads, what a set counts to, headings, questions.

The wanted readings are those of a coach who knows the plan; common practice, no source.
"""

from itertools import product

import pytest

from bot.notation.in_plain_words import EFFORTS, SAID_PLAINLY
from bot.notation.kinds import Kind
from bot.notation.names import session_index
from bot.notation.order import STEPS
from bot.notation.order.groups import GROUPS
from bot.notation.order.how_many import HOW_MANY
from bot.notation.order.steps import is_idle, said_in
from bot.notation.order.told_counts import TOLD_COUNTS
from bot.notation.reading import Reading, Request, read_message
from bot.notation.script import read_script
from bot.notation.tagging import read_kinds
from bot.notation.tokens import read_marks
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.units import Unit
from tests.notation.judging import rows_of
from tests.notation.plans import NOW, row, rows, sets

HAND = LoadStyle.PER_HAND
BENCH = PlannedExercise("Bench Press", sets("80", 5, 5), aliases=("bench",))
ROW = PlannedExercise("Barbell Row", sets("60", 8, 10), aliases=("rows",))
RAISE = PlannedExercise("Lateral Raise", sets("10", 12, 15), aliases=("laterals",), load_style=HAND)
BARBELL = (BENCH, ROW, RAISE)
THRUST = PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",))
HINGE = PlannedExercise("Romanian Deadlift", sets("60", 8, 10), aliases=("rdl",))
CURL = PlannedExercise("Leg Curl", sets("35", 10, 12))
HIPS = (THRUST, HINGE, CURL)
FLOOR = PlannedExercise("Floor Press", sets("60", 6, 8, 2))
ONE = PlannedExercise("Concentration Curl", sets("10", 10, 12, 2), load_style=HAND, sides=2)
REAR = PlannedExercise("Rear Delt Raise", sets("6", 12, 15, 2), load_style=HAND)
BEGUN = (PlannedExercise("Skull Crusher", sets("20", 10, 12)), ONE, REAR, FLOOR)
SHOULDERS = (
    PlannedExercise("Dumbbell Shoulder Press", sets("16", 8, 10), load_style=HAND),
    PlannedExercise("Machine Shoulder Press", sets("35", 10, 12, 2)),
)
PUSHES = (
    PlannedExercise("Band Pull-Apart", sets(None, 15, 20, 2), load_style=LoadStyle.NONE),
    PlannedExercise("Wall Push-Up", sets("0", 10, 15, 2), load_style=LoadStyle.BODYWEIGHT),
    PlannedExercise("Decline Push-Up", sets("0", 12, 20, 2), load_style=LoadStyle.BODYWEIGHT),
)
STEP = PlannedExercise("Step-Up", sets("12", 10, 10), load_style=HAND, sides=2)
BUG = PlannedExercise("Dead Bug", sets(None, 8, 10, 2), load_style=LoadStyle.NONE, sides=2)
TBAR = (
    PlannedExercise("T-Bar Row", sets("60", 8, 10)),
    PlannedExercise("Chest-Supported Row", sets("24", 10, 12), aliases=("csr",), load_style=HAND),
    PlannedExercise("Plank", sets(None, 40, 60, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS),
)


def _read(text: str, session: tuple[PlannedExercise, ...], *done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(row(d) for d in done)))


DONE = tuple(f"Hip Thrust#{n} 90x10" for n in (1, 2, 3))
EXTRA = [
    "one extra hip thrust set, {set}",
    "extra set of thrusts {set}",
    "an additional set of thrusts: {set}",
    "did a bonus hip thrust set {set}",
    "plus a cheeky bonus set of thrusts {set}",
    "one extra thrust: {set}",
    "bonus round of thrusts, {set}",
]


@pytest.mark.parametrize(("told", "set_told"), list(product(EXTRA, ("70x12", "70 for 12"))))
def test_extra_set(told: str, set_told: str) -> None:
    """A set that the plan does not have, whatever it is called, is one set more of the exercise that is named."""
    reading = _read(told.format(set=set_told), HIPS, *DONE)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows("Hip Thrust#4 70x12")


HIP_ROWS = [
    *(f"Hip Thrust#{n + 1} 90x{reps}" for n, reps in enumerate((10, 10, 9))),
    *(f"Romanian Deadlift#{n + 1} 60x{reps}" for n, reps in enumerate((9, 9, 8))),
    *(f"Leg Curl#{n + 1} 35x{reps}" for n, reps in enumerate((12, 11, 10))),
]
FORMS = [
    "{0} {1} {2} {3}",
    "{0}: {1} {2} {3}",
    "{0}x{1},{2},{3}",
    "{0}x{1} {0}x{2} {0}x{3}",
    "{0} for {1}, {2} and {3}",
]
LINES = [("90", "10", "10", "9"), ("60", "9", "9", "8"), ("35", "12", "11", "10")]


@pytest.mark.parametrize(("form", "between", "first"), list(product(FORMS, ("\n", "\n\n"), (0, 1))))
def test_lines_under_their_loads(form: str, between: str, first: int) -> None:
    """A session told line by line without names, each line under the planned load of the next exercise."""
    text = between.join(form.format(*line) for line in LINES[first:])
    reading = _read(text, HIPS, *(DONE if first else ()))
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*HIP_ROWS[3 * first :])


@pytest.mark.parametrize("text", ["90 10 10 9\n62.5 9 9 8\n35 12 11 10", "90 10 10 9\n35 12 11 10"])
def test_lines_under_other_loads(text: str) -> None:
    """Where a load is not the planned one of the next exercise, whose sets they are is asked about."""
    reading = _read(text, HIPS)
    assert reading.ask is not None
    assert not reading.performed


COUNTING = [
    "80x5 and that was number three",
    "80x5, that was number 3",
    "80x5 number three done",
    "80x5 which makes three",
    "80x5 thats 3 done",
    "80x5 (#3)",
    "80x5 and thats all three",
]


@pytest.mark.parametrize(("text", "done"), list(product(COUNTING, (2, 1))))
def test_counts_to(text: str, done: int) -> None:
    """The number of the set just told tells no set of its own; where it is another set's number, it is asked about."""
    reading = _read(text, BARBELL, *(f"Bench Press#{n + 1} 80x5" for n in range(done)))
    if done == 1:
        assert reading.ask is not None
        return
    assert reading.ask is None, reading.ask
    assert reading.performed == rows("Bench Press#3 80x5")


NAMED = [
    (BEGUN, "floor pr 60x8 60x7", ("Floor Press#1 60x8", "Floor Press#2 60x7")),
    (BEGUN, "floor p 60x8", ("Floor Press#1 60x8",)),
    (BEGUN, "rear d 6x15 6x14", ("Rear Delt Raise#1 6x15", "Rear Delt Raise#2 6x14")),
    (BEGUN, "conc 10x12", ("Concentration Curl#1 10x12",)),
    (BEGUN, "skull, 20x12", ("Skull Crusher#1 20x12",)),
    (
        SHOULDERS,
        "dumbell shoulder i make 10 9 with the 16, after that the machine shoulder, 35 for 12 and 10",
        (
            "Dumbbell Shoulder Press#1 16x10",
            "Dumbbell Shoulder Press#2 16x9",
            "Machine Shoulder Press#1 35x12",
            "Machine Shoulder Press#2 35x10",
        ),
    ),
    (PUSHES, "feet up press ups, i mean the decline ones, 15", ("Decline Push-Up#1 0x15",)),
    (PUSHES, "the decline ones, 15", ("Decline Push-Up#1 0x15",)),
    (
        PUSHES,
        "band pull aparts were 20 and 18, then 12 and 14 pushing on the wall",
        ("Band Pull-Apart#1 -x20", "Band Pull-Apart#2 -x18", "Wall Push-Up#1 0x12", "Wall Push-Up#2 0x14"),
    ),
    (
        PUSHES,
        "band pull aparts 20 18, wall pushes 12 14",
        ("Band Pull-Apart#1 -x20", "Band Pull-Apart#2 -x18", "Wall Push-Up#1 0x12", "Wall Push-Up#2 0x14"),
    ),
    ((STEP,), "step up, each leg 10, with two dumbbell from 12 kilo", ("Step-Up#1 12x10",)),
    ((STEP,), "step ups with two 12 kilo dumbbells, 10 each leg", ("Step-Up#1 12x10",)),
    ((STEP,), "10 each leg on the step ups holding two 12s", ("Step-Up#1 12x10",)),
    ((BUG,), "dead bug 8 for side, two times the same", ("Dead Bug#1 -x8", "Dead Bug#2 -x8")),
    (BARBELL, "rows 60 kg x 10, 9", ("Barbell Row#1 60x10", "Barbell Row#2 60x9")),
]


@pytest.mark.parametrize(("session", "text", "wanted"), NAMED)
def test_named(session: tuple[PlannedExercise, ...], text: str, wanted: tuple[str, ...]) -> None:
    """Names begun with a few letters, told by what tells them apart, or by what is done; a pair by one dumbbell."""
    reading = _read(text, session)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows(*wanted)


@pytest.mark.parametrize(
    "text",
    ["flubbers: 10 9", "mirror selfie count: 7", "i did the sit to stands off the chair twelve of them",
     "did twelve sit to stands", "twelve of the wall slides"],
)  # fmt: skip
def test_not_in_the_session(text: str) -> None:
    """What the session does not have, or nobody knows, is no set of the exercise under way."""
    reading = _read(text, BARBELL)
    assert reading.ask is not None
    assert not reading.performed


@pytest.mark.parametrize("text", ["mood: 7", "energy: 6", "stress: 4", "sleep: 7", "steps: 9000"])
def test_measures_of_the_day(text: str) -> None:
    """What is measured of the day is no set, and nothing to ask about."""
    reading = _read(text, BARBELL)
    assert reading.ask is None, reading.ask
    assert not reading.performed


@pytest.mark.parametrize("head", ["results", "reps", "today", "numbers", "so far", "update", "final", "workout", "log"])
def test_headings_of_reports(head: str) -> None:
    """A heading of reports heads the sets of the exercise under way."""
    assert _read(f"{head}: 80x5, 80x5", BARBELL).performed == rows("Bench Press#1 80x5", "Bench Press#2 80x5")


@pytest.mark.parametrize(
    ("ask", "sign"),
    list(product(("how long should i rest?", "is my grip ok?", "what's next?"), ("👍 {}", "✅ {}", "{} - 👍"))),
)
def test_thumb_beside_a_question(ask: str, sign: str) -> None:
    """A thumb or `done` is the set, whatever is asked beside it."""
    reading = _read(sign.format(ask), BARBELL, "Bench Press#1 80x5")
    assert reading.question
    assert reading.performed == rows("Bench Press#2 80x5")


@pytest.mark.parametrize(
    "text",
    ["t bar is that with the chest pad or without", "t bar: chest pad or no chest pad", "csr with the elbows in or out",
     "do the planks come before or after the rows", "overhand or underhand on the t bar?", "all done?"],
)  # fmt: skip
def test_asked_of_what_is_named(text: str) -> None:
    """A question without its mark, of the exercise that it names: nothing is stored, skipped or ended by it."""
    reading = _read(text, TBAR)
    assert reading.question
    assert reading.ask is None, reading.ask
    assert not [*reading.performed, *reading.skipped]
    assert not reading.finished


def test_sides_of_several_hurts() -> None:
    """The side of all hurts counts no sets."""
    reading = _read("elbow 2/10 and shoulder 4/10 today, both the left side. t bar 60x8", TBAR)
    assert reading.ask is None, reading.ask
    assert reading.performed == rows("T-Bar Row#1 60x8")
    assert reading.pain is not None
    assert (reading.pain.where, reading.pain.score) == ("shoulder", 4)


@pytest.mark.parametrize("hand", ["shared", "hand_a", "hand_l"])
def test_steps_left_out_change_nothing(hand: str) -> None:
    """A step through the marks that is left out because nothing it needs is said would have changed nothing."""
    index = session_index(BARBELL)
    idle = 0
    for one in rows_of(hand):
        marks = read_kinds(read_marks(read_script(one["request"]["text"]).text), index)
        for step in (*SAID_PLAINLY, *EFFORTS, *STEPS, *HOW_MANY, *TOLD_COUNTS, *GROUPS):
            after = list(step.put(list(marks)))
            if is_idle(step, said_in(marks)) and any(m.kind is Kind.NUM for m in marks):
                assert after == marks, (one["request"]["text"], step.put.__name__)
                idle += 1
            marks = after
    assert idle > len(STEPS)
