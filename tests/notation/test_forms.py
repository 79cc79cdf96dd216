"""Kinds of sets in the forms in which people tell them: hands, body weight, drops, minis, time, units, warm-ups.

Every form of a row means the same. The wanted readings are those of a coach who knows the plan; common practice, no
source.
"""

from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit
from tests.notation.plans import DROP, MINI, NOW, sets

HANDS = PlannedExercise("Dumbbell Bench Press", sets("24", 8, 10), aliases=("db bench",), load_style=LoadStyle.PER_HAND)
CHIN = PlannedExercise("Chin-Up", sets("5", 5, 8), aliases=("chins",), load_style=LoadStyle.BODYWEIGHT)
ASSISTED = PlannedExercise(
    "Assisted Pull-Up", sets("-20", 6, 8), aliases=("assisted pullups",), load_style=LoadStyle.BODYWEIGHT
)
PULLDOWN = PlannedExercise("Lat Pulldown", sets("55", 10, 12, 1, DROP), aliases=("pulldowns",))
PUSHDOWN = PlannedExercise("Triceps Pushdown", sets("25", 12, 15, 1, MINI), aliases=("pushdowns",))
PLANK = PlannedExercise("Plank", sets(None, 30, 60), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
CARRY = PlannedExercise(
    "Farmer Carry", sets("24", 40, 40), aliases=("carries",), load_style=LoadStyle.PER_HAND, measure=Measure.METRES
)
BENCH = PlannedExercise("Bench Press", sets("60", 5, 8), aliases=("bench",))
POUNDS = PlannedExercise("Bench Press", sets("135lb", 5, 8), aliases=("bench",))

PAIRS = ("24s", "the 24s", "24kg dumbbells", "24kg each hand", "24/hand", "a pair of 24s", "24kg dbs", "48 total")
ADDED = ("+5", "5kg added", "5 kg on the belt", "with 5kg", "plus 5", "weighted 5kg", "bodyweight plus 5", "@ +5")
HELPED = ("-20", "20 assist", "20kg assistance", "20kg help", "with 20 assist", "minus 20", "on 20kg assist")
DROPPED = (
    "55x11 > 40x8", "55x11 then 40x8", "55x11/40x8", "11 at 55 then dropped to 40 for 8", "55 for 11, drop 40 for 8",
    "55x11 -> 40x8", "55x11, dropset 40x8", "55x11 straight into 40x8", "11 reps at 55, drop set 8 reps at 40",
    "55kg 11 reps, then stripped to 40kg for 8", "fifty five for eleven drop to forty for eight",
)  # fmt: skip
MINIS = (
    "25x13 +4+4+3", "25x13 4 4 3", "25 for 13 then minis 4 4 3", "25x13, minis: 4/4/3", "13 reps then 4+4+3",
    "25x13 mini sets 4,4,3", "25x13 (4,4,3)", "25x13 w minis 4-4-3", "13 + 4 + 4 + 3 at 25", "25x13, 3 minis: 4 4 3",
)  # fmt: skip
HELD = (
    "45s, 40s, 35s",
    "45, 40, 35 sec",
    "45 40 35",
    "45/40/35",
    "45 secs then 40 secs then 35 secs",
    "45, 40 and 35s",
)
CARRIED = ("24s 40m x3", "24kg 40m, 40m, 40m", "3x40m with 24s", "40m x 3 @24", "40 metres with the 24s, 3 times")
KILOS = (
    "60kg x 7", "60 kilos for 7", "7 at 60kg", "60 kg, 7 reps", "7 reps, 60kg", "60x7 (kg)", "60x7 kilos not pounds",
    "all in kg: 60x7", "sixty kilos seven reps",
)  # fmt: skip
IN_POUNDS = (
    "135lb x 7",
    "135 lbs for 7",
    "7 at 135lb",
    "135x7 lbs",
    "135x7 in pounds",
    "135 pounds 7 reps",
    "135# x 7",
)
WARMED = (
    "warm up 40x8, then 60x7", "40x8 warmup, 60x7", "40x8 (wu), 60x7", "60x7 after a warm up of 40x8",
    "40x8 was just warm up. 60x7", "60x7. warm up was 40x8", "warm up 40 for 8, first work set 60 for 7",
)  # fmt: skip

Row = tuple[int | None, Stage, str | None, int]
W, D, M = Stage.WORK, Stage.DROP, Stage.MINI
CASES: list[tuple[PlannedExercise, str, tuple[Row, ...]]] = [
    *(
        (HANDS, text, ((1, W, "24", 10), (2, W, "24", 9), (3, W, "24", 8)))
        for name, pair in product(("", "db bench "), PAIRS)
        for text in (f"{name}{pair} x 10, 9, 8", f"{name}10/9/8 with {pair}", f"{name}{pair}: 10 9 8")
    ),
    *((HANDS, f"{pair} x 10, 9", ((1, W, "24", 10), (2, W, "24", 9))) for pair in PAIRS),
    *(
        (CHIN, text, ((1, W, "5", 7), (2, W, "5", 6), (3, W, "5", 5)))
        for added in ADDED
        for text in (f"chins 7 6 5 {added}", f"{added}: 7 6 5", f"7, 6 and 5 {added}")
    ),
    *((CHIN, f"chins 7 reps {added}", ((1, W, "5", 7),)) for added in ADDED),
    *(
        (ASSISTED, f"assisted pullups {text}", ((1, W, "-20", 8), (2, W, "-20", 7)))
        for helped in HELPED
        for text in (f"{helped} x 8, 7", f"8 7 {helped}", f"{helped}: 8 7")
    ),
    *((PULLDOWN, text, ((1, W, "55", 11), (1, D, "40", 8))) for text in DROPPED),
    *((PUSHDOWN, text, ((1, W, "25", 13), (1, M, "25", 4), (1, M, "25", 4), (1, M, "25", 3))) for text in MINIS),
    *((PLANK, f"plank {held}", ((1, W, None, 45), (2, W, None, 40), (3, W, None, 35))) for held in HELD),
    *((CARRY, f"carries {text}", tuple((n, W, "24", 40) for n in (1, 2, 3))) for text in CARRIED),
    *((POUNDS, name + text, ((1, W, "60kg", 7),)) for name, text in product(("", "bench "), KILOS)),
    *((BENCH, name + text, ((1, W, "135lb", 7),)) for name, text in product(("", "bench "), IN_POUNDS)),
    *(
        (BENCH, name + text, ((None, Stage.WARMUP, "40", 8), (1, W, "60", 7)))
        for name, text in product(("", "bench "), WARMED)
    ),
]


def _row(exercise: PlannedExercise, number: int | None, stage: Stage, load: str | None, reps: int) -> Performed:
    unit = Unit.LB if load is not None and load.endswith("lb") else Unit.KG
    told = None if load is None else Load.of(load.removesuffix("lb").removesuffix("kg"), unit)
    return Performed(exercise.name, number, stage, told, reps)


@pytest.mark.parametrize(("exercise", "text", "wanted"), CASES, ids=[text for _, text, _ in CASES])
def test_the_form_does_not_matter(exercise: PlannedExercise, text: str, wanted: tuple[Row, ...]) -> None:
    """All forms of a row store the same sets and ask nothing."""
    unit = Unit.LB if exercise is POUNDS else Unit.KG
    reading = read_message(Request(text, unit, NOW, (exercise,)))
    assert reading.ask is None
    told = sorted(reading.performed, key=lambda p: p.stage is not Stage.WARMUP)
    assert told == [_row(exercise, *row) for row in wanted]
