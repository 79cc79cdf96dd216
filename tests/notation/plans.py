"""Plans and sessions for the tables, and short ways to write a request and what it stores."""

from datetime import UTC, datetime
from decimal import Decimal

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import Drop, Finish, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit

NOW = datetime(2026, 3, 4, 18, 0, tzinfo=UTC)
"""A Wednesday evening."""
DROP = Drop(1, (20, 40))
MINI = Mini(4, (3, 5))


def sets(load: str | None, low: int, high: int, count: int = 3, finish: Finish | None = None) -> tuple[PlannedSet, ...]:
    """So many alike, the last with the finish; loads in kilograms, or pounds with `lb` behind them."""
    planned = None
    if load is not None:
        unit = Unit.LB if load.endswith("lb") else Unit.KG
        planned = Load.of(load.removesuffix("lb"), unit)
    return tuple(
        PlannedSet(RepRange(low, high), None, planned, None, finish if n == count - 1 else None) for n in range(count)
    )


BENCH = PlannedExercise("Bench Press", sets("60", 4, 6), aliases=("bench",))
ROW = PlannedExercise("Barbell Row", sets("50", 8, 10))
SPLIT = PlannedExercise("Split Squat", sets("16", 8, 10), load_style=LoadStyle.PER_HAND, sides=2)
PULLDOWN = PlannedExercise("Lat Pulldown", sets("55", 10, 12, 3, DROP))
PUSHDOWN = PlannedExercise("Triceps Pushdown", sets("25", 12, 15, 3, MINI))
PLANK = PlannedExercise("Plank", sets(None, 40, 60, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
FLY = PlannedExercise("Chest Fly", sets("10", 10, 12), load_style=LoadStyle.PER_HAND)
CHIN = PlannedExercise("Chin-Up", sets("0", 6, 10), load_style=LoadStyle.BODYWEIGHT)
DEADLIFT = PlannedExercise("Deadlift", (*sets("140", 5, 5, 1), *sets("115", 8, 8, 2)), aliases=("deads",))
CARRY = PlannedExercise("Farmer Carry", sets("32", 30, 40, 2), load_style=LoadStyle.PER_HAND, measure=Measure.METRES)
SESSION = (BENCH, ROW, SPLIT, PULLDOWN, PUSHDOWN, PLANK, FLY, CHIN, DEADLIFT, CARRY)


def row(written: str) -> Performed:
    """A performed set from `Bench Press#1 60x5`, with `drop`, `mini`, `warmup`, `left`, `right`, `rir N` behind it."""
    name, rest = written.split("#")
    number, body, *marks = rest.split()
    load, reps = body.split("x")
    unit = Unit.LB if load.endswith("lb") else Unit.KG
    stage = next((s for s in Stage if s.value in marks), Stage.WORK)
    side = next((s for s in Side if s.value in marks), None)
    rir = Decimal(marks[marks.index("rir") + 1]) if "rir" in marks else None
    kept = None if load == "-" else Load.of(load.removesuffix("lb"), unit)
    return Performed(name, None if number == "0" else int(number), stage, kept, int(reps), rir, side)


def request(text: str, *done: str, current: str | None = None, unit: Unit = Unit.KG) -> Request:
    """A message on the test session, with what is done so far."""
    return Request(text, unit, NOW, SESSION, tuple(row(d) for d in done), current)


def read(text: str, *done: str, current: str | None = None, unit: Unit = Unit.KG) -> Reading:
    """The reading of a message on the test session."""
    return read_message(request(text, *done, current=current, unit=unit))


def rows(*written: str) -> tuple[Performed, ...]:
    """What a reading should store."""
    return tuple(row(w) for w in written)
