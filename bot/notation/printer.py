"""Sets as notation, which the reader reads back to the same sets.

>>> from bot.training.units import Load, Unit
>>> show_set(Performed("Bench Press", 1, Stage.WORK, Load.of("62.5", Unit.KG), 5, Decimal(1)))
'62.5 kg x 5 rir 1'
"""

from collections.abc import Sequence

from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load

_COUNTED = {Measure.REPS: "", Measure.SECONDS: " sec", Measure.METRES: " metres"}


def show_load(load: Load, style: LoadStyle = LoadStyle.TOTAL) -> str:
    """A load: `60 kg`, on body weight `bw`, `+10 kg`, `-20 kg`."""
    if style is LoadStyle.BODYWEIGHT:
        if load.thousandths == 0:
            return "bw"
        return f"{load.amount:+f} {load.unit.value}"
    return f"{load.amount:f} {load.unit.value}"


def show_count(count: int, measure: Measure = Measure.REPS) -> str:
    """Repetitions, seconds or metres: `5`, `65 sec`, `30 metres`."""
    return f"{count}{_COUNTED[measure]}"


def show_set(performed: Performed, measure: Measure = Measure.REPS, style: LoadStyle = LoadStyle.TOTAL) -> str:
    """One set: stage, side, load, count and effort; without its exercise and number."""
    counted = _COUNTED[measure]
    reps = show_count(performed.reps, measure)
    if performed.load is None:
        body = reps if counted else f"{performed.reps} reps"
    else:
        body = f"{show_load(performed.load, style)} x {reps}"
    match performed.stage:
        case Stage.WARMUP:
            body = f"warm-up {body}"
        case Stage.DROP:
            body = f"drop {body}"
        case Stage.MINI:
            body = f"mini {reps}"
        case Stage.WORK:
            pass
    if performed.side is not None:
        body = f"{'left' if performed.side is Side.LEFT else 'right'} {body}"
    if performed.rir is not None:
        body = f"{body} rir {performed.rir.normalize():f}"
    return body


def show_sets(performed: Sequence[Performed], exercises: Sequence[PlannedExercise]) -> str:
    """A report: each exercise by name with its sets in order, exercises apart by semicolons."""
    by_name = {exercise.name: exercise for exercise in exercises}
    parts: list[str] = []
    before: str | None = None
    for row in performed:
        exercise = by_name.get(row.exercise)
        measure = exercise.measure if exercise is not None else Measure.REPS
        style = exercise.load_style if exercise is not None else LoadStyle.TOTAL
        shown = show_set(row, measure, style)
        if row.exercise != before:
            parts.append(f"{row.exercise}: {shown}")
        else:
            parts[-1] = f"{parts[-1]}, {shown}"
        before = row.exercise
    return "; ".join(parts)
