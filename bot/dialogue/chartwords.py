"""The words beside a picture: all that it shows, for who can't see it, in a caption's room."""

from datetime import date, timedelta
from decimal import Decimal
from itertools import pairwise

from bot.dialogue.phrases import joined
from bot.saying import AttendanceChart, Line, MusclesChart, MuscleWeeks, StrengthChart, line
from bot.training.attendance import DayMark, counted
from bot.training.plan import LoadStyle
from bot.training.units import Load

BREAK = timedelta(days=21)
"""As `bot.pictures.strength` has it: more days than this without a set are a break."""
MOST_BREAKS, MOST_DAYS = 3, 6


def strength_words(chart: StrengthChart) -> tuple[Line, ...]:
    """From what to what, how sure, the heaviest set, breaks."""
    days = sorted({p.day for p in chart.points} | {s.day for s in chart.sets})
    lines = [_title(chart, days)]
    if chart.points:
        first, last = chart.points[0], chart.points[-1]
        lines.append(
            line(
                "picture-strength-now",
                day=last.day,
                mean=half(last.mean),
                unit=chart.unit.value,
                least=half(last.least),
                most=half(last.most),
            )
        )
        if first.day != last.day:
            lines.append(line("picture-strength-then", day=first.day, mean=half(first.mean), unit=chart.unit.value))
    if chart.style in (LoadStyle.PER_HAND, LoadStyle.BODYWEIGHT):
        lines.append(line(f"picture-strength-{chart.style.value.replace('_', '-')}"))
    if chart.sets:
        top = max(chart.sets, key=lambda s: (s.load, s.reps))
        count = sum(s.sets for s in chart.sets)
        load = Load.of(top.load, chart.unit)
        lines.append(line("picture-strength-sets", sets=count, load=load, reps=top.reps, day=top.day))
    breaks = [(a, b) for a, b in pairwise(days) if b - a > BREAK]
    lines += [line("picture-strength-break", first=a, last=b) for a, b in breaks[-MOST_BREAKS:]]
    return tuple(lines)


def _title(chart: StrengthChart, days: list[date]) -> Line:
    first, last = days[0], days[-1]
    if chart.whose:
        return line("picture-strength-of", exercise=chart.exercise, name=chart.whose, first=first, last=last)
    return line("picture-strength", exercise=chart.exercise, first=first, last=last)


def half(value: Decimal) -> Decimal:
    """To the nearest half: an estimate is not known better."""
    return Decimal(round(value * 2)) / 2


def muscles_words(chart: MusclesChart) -> tuple[Line, ...]:
    """A line a muscle: its weeks, the last one under way, and the target."""
    key = "picture-muscles-of" if chart.whose else "picture-muscles"
    title = line(key, name=chart.whose, first=chart.mondays[0], weeks=len(chart.mondays))
    return (title, *(_muscle(row) for row in chart.muscles))


def _muscle(row: MuscleWeeks) -> Line:
    weeks = joined([line("picture-count", sets=sets) for sets in row.done[:-1]] or [line("picture-count", sets=0)])
    if row.low is None or row.high is None:
        return line("picture-muscle", muscle=row.muscle, weeks=weeks, now=row.done[-1], planned=row.planned[-1])
    target = target_line(row.low, row.high)
    return line("picture-muscle-target", muscle=row.muscle, weeks=weeks, now=row.done[-1], target=target)


def target_line(low: int, high: int) -> Line:
    """`10–14`, or `8`."""
    return line("picture-count", sets=low) if low == high else line("picture-span", low=low, high=high)


def attendance_words(chart: AttendanceChart) -> tuple[Line, ...]:
    """How many of how many, and which days went otherwise."""
    done, partly, due = counted(chart.marks)
    key = "picture-days-of" if chart.whose else "picture-days"
    lines = [line(key, name=chart.whose, weeks=len(chart.marks) // 7, first=chart.first)]
    lines.append(line("picture-days-done", done=done, due=due))
    if partly:
        lines.append(line("picture-days-partly", partly=partly))
    for mark in (DayMark.MISSED, DayMark.SKIPPED, DayMark.MOVED, DayMark.PLANNED):
        days = [chart.first + timedelta(days=n) for n, m in enumerate(chart.marks) if m is mark]
        if days:
            shown = joined([line("picture-day", day=day) for day in days[-MOST_DAYS:]])
            lines.append(line(f"picture-days-{mark.value}", count=len(days), days=shown))
    return tuple(lines)
