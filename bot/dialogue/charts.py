"""Pictures as values, from what lies behind a client: strength over time, hard sets by muscle, attendance."""

from collections import Counter
from datetime import datetime
from decimal import Decimal

from bot.dialogue.desk import ClientDesk
from bot.saying import AttendanceChart, LiftedPoint, MusclesChart, MuscleWeeks, StrengthChart, StrengthPoint
from bot.training.calendar import local_day
from bot.training.explain import BAND
from bot.training.past import LiftDay
from bot.training.people import MuscleTarget
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.units import Load, Unit

NONE = Decimal(0)


def strength_chart(about: ClientDesk, exercise: PlannedExercise, *, whose: str = "") -> StrengthChart:
    """The exercise's year, as `about.past.lift` has it; like sets of a day are one mark."""
    unit, style = about.profile.unit, exercise.load_style
    lifted: Counter[LiftedPoint] = Counter(
        LiftedPoint(day.day, _amount(one.load_kg, unit, "0.01"), one.reps)
        for day in about.past.lift
        for one in day.sets
        if one.load_kg is not None
    )
    sets = tuple(LiftedPoint(p.day, p.load, p.reps, count) for p, count in lifted.items())
    points = tuple(_point(day, unit, style) for day in about.past.lift if day.estimate is not None)
    return StrengthChart(exercise.name, unit, points, sets, style, whose)


def _point(day: LiftDay, unit: Unit, style: LoadStyle) -> StrengthPoint:
    known = day.estimate
    assert known is not None
    least, most = known.mean_kg - BAND * known.sd_kg, known.mean_kg + BAND * known.sd_kg
    if style is not LoadStyle.BODYWEIGHT:  # less than nothing is assistance there
        least = max(0.0, least)
    mean, least_, most_ = (_amount(kg, unit, "0.1") for kg in (known.mean_kg, least, most))
    return StrengthPoint(day.day, mean, least_, most_)


def _amount(kg: float, unit: Unit, to: str) -> Decimal:
    return Load.of(repr(kg), Unit.KG).amount_in(unit).quantize(Decimal(to))


def muscles_chart(about: ClientDesk, *, whose: str = "") -> MusclesChart:
    """The weeks in `about.past.weeks`: muscles with a target first, as the coach has them, then by most work."""
    weeks = about.past.weeks
    targets = about.programme.targets if about.programme is not None else ()
    worked: dict[str, Decimal] = {}
    for week in weeks:
        for muscle in (*week.planned, *week.done):
            worked[muscle] = worked.get(muscle, NONE) + week.planned.get(muscle, NONE) + week.done.get(muscle, NONE)
    others = sorted(worked.keys() - {t.muscle for t in targets}, key=lambda m: (-worked[m], m))
    aims: list[tuple[str, MuscleTarget | None]] = [*((t.muscle, t) for t in targets), *((m, None) for m in others)]
    rows = tuple(
        MuscleWeeks(
            muscle,
            tuple(week.done.get(muscle, NONE) for week in weeks),
            tuple(week.planned.get(muscle, NONE) for week in weeks),
            None if aim is None else aim.low,
            None if aim is None else aim.high,
        )
        for muscle, aim in aims
    )
    return MusclesChart(tuple(week.monday for week in weeks), rows, whose)


def attendance_chart(about: ClientDesk, now: datetime, *, whose: str = "") -> AttendanceChart:
    """The days in `about.past.marks`."""
    today = local_day(now, about.profile.zone)
    return AttendanceChart(about.past.since or today, about.past.marks, today, whose)
