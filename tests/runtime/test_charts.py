"""Charts that wait in the outbox come back equal; weekly ones of an older release too."""

import json
from datetime import date
from decimal import Decimal

import pytest

from bot.runtime.charts import read_chart, show_chart
from bot.saying import (
    AttendanceChart,
    Chart,
    DaysChart,
    DaysMuscle,
    DaysWeek,
    LiftedPoint,
    MusclesChart,
    MuscleWeeks,
    StrengthChart,
    StrengthPoint,
    WeekChart,
)
from bot.training.attendance import DayMark
from bot.training.plan import LoadStyle
from bot.training.units import Unit

DAY = date(2027, 1, 11)
CHARTS: tuple[Chart, ...] = (
    WeekChart("2027-01-11", (("quads", Decimal("7.5")),), 2, 3, (("quads", Decimal(9)),)),
    StrengthChart(
        "Pull-up",
        Unit.LB,
        (StrengthPoint(DAY, Decimal("-3.5"), Decimal("-10.0"), Decimal("4.0")),),
        (LiftedPoint(DAY, Decimal("-22.50"), 8, 3),),
        LoadStyle.BODYWEIGHT,
        "Ada",
    ),
    StrengthChart("Back squat", Unit.KG, (), ()),
    MusclesChart((DAY,), (MuscleWeeks("quads", (Decimal("0.5"),), (Decimal(6),), 4, 8),), "Ada"),
    AttendanceChart(DAY, tuple(DayMark), DAY, "Ada"),
    DaysChart(
        "Two days",
        45,
        (DaysWeek((31, None, None, 30, None, None, None), True), DaysWeek((22, None, 20, None, 21, None, None))),
        (DaysMuscle("quads", (Decimal(8), Decimal("8.5")), (72, None), 8, 12), DaysMuscle("lats", (), ())),
    ),
)


@pytest.mark.parametrize("chart", CHARTS, ids=lambda chart: type(chart).__name__)
def test_a_chart_comes_back_equal(chart: Chart) -> None:
    assert read_chart(json.loads(json.dumps(show_chart(chart)))) == chart


def test_a_weekly_chart_of_an_older_release_is_read() -> None:
    """What waited in the outbox while the bot was renewed."""
    old = {"title": "Week", "muscles": [["quads", "7.5"]], "done": 2, "planned": 3, "wanted": []}
    assert read_chart(old) == WeekChart("Week", (("quads", Decimal("7.5")),), 2, 3)


def test_a_chart_of_another_kind_is_refused() -> None:
    with pytest.raises(KeyError):
        read_chart({"is": "pie", "chart": {}})
