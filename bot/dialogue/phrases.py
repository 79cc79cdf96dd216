"""Training values as lines: loads, repetitions, efforts, sets. Keys and arguments only."""

from decimal import Decimal

from bot.saying import Line, Value, line
from bot.training.plan import LoadStyle, Measure, PlannedExercise, PlannedSet, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load


def load_line(exercise: PlannedExercise, load: Load) -> Line:
    """A load as this exercise means it: per hand, added to the body weight, assistance."""
    match exercise.load_style:
        case LoadStyle.PER_HAND:
            return line("load-per-hand", load=load)
        case LoadStyle.BODYWEIGHT:
            if load.thousandths == 0:
                return line("load-body")
            if load.thousandths < 0:
                return line("load-assist", load=Load(-load.thousandths, load.unit))
            return line("load-added", load=load)
        case LoadStyle.TOTAL | LoadStyle.NONE:
            return line("load-total", load=load)


def count_line(exercise: PlannedExercise, count: RepRange | int) -> Line:
    """Repetitions, seconds or metres: one number or a range; each side where sides are worked by themselves."""
    if isinstance(count, RepRange):
        span = str(count.low) if count.is_fixed else f"{count.low}–{count.high}"
    else:
        span = str(count)
    counted = line(f"count-{exercise.measure.value}", span=span)
    return line("count-each-side", count=counted) if exercise.sides == 2 and isinstance(count, RepRange) else counted


def planned_line(exercise: PlannedExercise, planned: PlannedSet) -> Line:
    """A set to do: load, count, effort and finish."""
    args: dict[str, Line | Value] = {"count": count_line(exercise, planned.reps)}
    key = "planned"
    if planned.load is not None:
        args["load"] = load_line(exercise, planned.load)
        key += "-load"
    if planned.rir is not None:
        args["left"] = line("reserve-none") if planned.rir == 0 else line("reserve", left=planned.rir)
        key += "-left"
    return line(key, **args)


def done_line(exercise: PlannedExercise, performed: Performed) -> Line:
    """A set as done."""
    args: dict[str, Line | Value] = {"count": count_line(exercise, performed.reps)}
    key = "done"
    if performed.load is not None and exercise.load_style is not LoadStyle.NONE:
        args["load"] = load_line(exercise, performed.load)
        key += "-load"
    if performed.rir is not None:
        args["left"] = left_line(performed.rir)
        key += "-left"
    shown = line(key, **args)
    match performed.stage:
        case Stage.DROP:
            shown = line("done-drop", set=shown)
        case Stage.MINI:
            shown = line("done-mini", count=count_line(exercise, performed.reps))
        case Stage.WARMUP:
            shown = line("done-warmup", set=shown)
        case Stage.WORK:
            pass
    match performed.side:
        case Side.LEFT:
            return line("done-side-left", set=shown)
        case Side.RIGHT:
            return line("done-side-right", set=shown)
        case None:
            return line("done-both", set=shown) if exercise.sides == 2 and performed.stage is Stage.WORK else shown


def left_line(rir: Decimal) -> Line:
    """Effort in words: repetitions left in reserve."""
    return line("left-none") if rir == 0 else line("left", left=rir)


def joined(items: list[Line] | tuple[Line, ...], join: str = "list-and-then") -> Line:
    """Several lines as one, joined by the words' own comma."""
    whole = items[0]
    for item in items[1:]:
        whole = line(join, first=whole, second=item)
    return whole


def names_line(names: list[str] | tuple[str, ...]) -> Line:
    """Several names as one line."""
    return joined([line("name", name=name) for name in names])


def shortened(words: str, most: int) -> str:
    """Somebody's words on one line of at most so many characters, the rest clipped."""
    flat = " ".join(words.split())
    return flat if len(flat) <= most else flat[: most - 1] + "…"


def is_counted_in_reps(exercise: PlannedExercise) -> bool:
    """Whether a set counts repetitions."""
    return exercise.measure is Measure.REPS
