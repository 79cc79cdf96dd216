"""Which picture a chart becomes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from bot.pictures.attendance import attendance_figure
from bot.pictures.days import days_figure
from bot.pictures.muscles import muscles_figure
from bot.pictures.paper import png_of
from bot.pictures.strength import strength_figure
from bot.pictures.week import week_figure
from bot.saying import AttendanceChart, Chart, DaysChart, MusclesChart, StrengthChart, WeekChart

if TYPE_CHECKING:
    from matplotlib.figure import Figure


def draw(chart: Chart) -> bytes:
    """The picture as a PNG, the same bytes for the same chart. May be called from any thread; one draws at a time."""
    return png_of(lambda: figure_of(chart))


def figure_of(chart: Chart) -> Figure:
    """The picture before it becomes bytes."""
    match chart:
        case WeekChart():
            return week_figure(chart)
        case StrengthChart():
            return strength_figure(chart)
        case MusclesChart():
            return muscles_figure(chart)
        case AttendanceChart():
            return attendance_figure(chart)
        case DaysChart():
            return days_figure(chart)
