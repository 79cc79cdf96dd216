"""What is prescribed, as short text: in a sheet's cells and in a list of changes. `bot.sheets` reads each back."""

from decimal import Decimal
from itertools import groupby

from bot.training.people import WeekChange
from bot.training.plan import Drop, LoadRule, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet, RepRange, Tempo
from bot.training.units import Load

RULES = {
    LoadRule.TRACKED: "engine",
    LoadRule.DOUBLE: "double progression",
    LoadRule.FIXED: "fixed step",
    LoadRule.PERCENT: "percent of top set",
    LoadRule.HELD: "fixed load",
}
STYLES = {
    LoadStyle.TOTAL: "total",
    LoadStyle.PER_HAND: "per hand",
    LoadStyle.BODYWEIGHT: "body weight",
    LoadStyle.NONE: "none",
}
MEASURES = {Measure.REPS: "repetitions", Measure.SECONDS: "seconds", Measure.METRES: "metres"}
_UNITS = {Measure.REPS: "", Measure.SECONDS: " s", Measure.METRES: " m"}


def show_span(low: int, high: int) -> str:
    """`8-10`, or `5` where both are the same."""
    return str(low) if low == high else f"{low}-{high}"


def show_reps(reps: RepRange, measure: Measure) -> str:
    """`8-10`, `30-60 s`, `40 m`."""
    return show_span(reps.low, reps.high) + _UNITS[measure]


def show_amount(amount: Decimal) -> str:
    """A number without zeros that say nothing."""
    whole = amount.to_integral_value()
    return str(int(whole)) if amount == whole else f"{amount.normalize():f}"


def show_effort(rir: Decimal) -> str:
    """`RIR 1.5`."""
    return f"RIR {show_amount(rir)}"


def show_load(load: Load, style: LoadStyle) -> str:
    """`60 kg`; at body weight `add 10 kg`; below zero `assist 20 kg` (a minus would look like a formula)."""
    amount = f"{show_amount(abs(load.amount))} {load.unit.value}"
    if load.thousandths < 0:
        return f"assist {amount}"
    return f"add {amount}" if style is LoadStyle.BODYWEIGHT else amount


def show_percent(percent: Decimal | int) -> str:
    """`87.5 %`."""
    return f"{show_amount(Decimal(percent))} %"


def show_tempo(tempo: Tempo) -> str:
    """`3-1-X-0`."""
    lift = "X" if tempo.lift_s is None else str(tempo.lift_s)
    return f"{tempo.lower_s}-{tempo.stretched_s}-{lift}-{tempo.top_s}"


def show_set(planned: PlannedSet, measure: Measure, style: LoadStyle) -> str:
    """A set in a line: `8-10, RIR 2, 60 kg, rest 90 s, drop 2 x 20-30 %`."""
    parts = [show_reps(planned.reps, measure)]
    if planned.rir is not None:
        parts.append(show_effort(planned.rir))
    if planned.load is not None:
        parts.append(show_load(planned.load, style))
    if planned.percent is not None:
        parts.append(f"{show_percent(planned.percent)} of the top set")
    if planned.rest_s is not None:
        parts.append(f"rest {planned.rest_s} s")
    parts += show_finish(planned)
    if planned.tempo is not None:
        parts.append(f"tempo {show_tempo(planned.tempo)}")
    return ", ".join([*parts, planned.cue] if planned.cue else parts)


def show_finish(planned: PlannedSet) -> list[str]:
    """`drop 2 x 20-30 %`, `mini sets of 4, rest 3-5 s`, or nothing."""
    match planned.finish:
        case None:
            return []
        case Drop(times=times, percent=(low, high)):
            return [f"drop {times} x {show_span(low, high)} %"]
        case Mini(reps=reps, rest_s=(low, high)):
            return [f"mini sets of {reps}, rest {show_span(low, high)} s"]


def show_sets(exercise: PlannedExercise) -> str:
    """All sets in a line, like ones together: `1 x 4-6, RIR 1; 2 x 8-10, RIR 2, 85 % of the top set`."""
    blocks = [(planned, len(list(same))) for planned, same in groupby(exercise.sets)]
    return "; ".join(f"{times} x {show_set(p, exercise.measure, exercise.load_style)}" for p, times in blocks)


def show_change(change: WeekChange) -> str:
    """A change of weeks in a line: `weeks 4, 8: 1 set fewer, 90 % of the load, RIR 4`."""
    parts = [
        f"{change.fewer_sets} fewer sets" if change.fewer_sets else "",
        "" if change.sets_percent is None else f"{show_percent(change.sets_percent)} of the sets",
        "" if change.load_percent is None else f"{show_percent(change.load_percent)} of the load",
        "" if change.rir is None else show_effort(change.rir),
    ]
    where = [f"weeks {', '.join(str(week) for week in change.weeks)}", change.workout, change.exercise]
    return f"{', '.join(w for w in where if w)}: {', '.join(part for part in parts if part)}"
