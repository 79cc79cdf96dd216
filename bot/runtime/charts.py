"""A chart that waits in the outbox, as JSON and back. A weekly one has no name in it: so older parcels have it."""

from decimal import Decimal
from typing import Any

from bot.saying import AttendanceChart, Chart, DaysChart, MusclesChart, StrengthChart, WeekChart
from storage.codec import Codec, codec

Json = dict[str, Any]
"""What `json` gives."""

_STRENGTH: Codec[StrengthChart] = codec(StrengthChart)
_MUSCLES: Codec[MusclesChart] = codec(MusclesChart)
_ATTENDANCE: Codec[AttendanceChart] = codec(AttendanceChart)
_DAYS: Codec[DaysChart] = codec(DaysChart)


def show_chart(chart: Chart) -> Json:
    """The chart as JSON."""
    match chart:
        case WeekChart():
            return {
                "title": chart.title,
                "muscles": [[name, str(sets)] for name, sets in chart.muscles],
                "done": chart.done,
                "planned": chart.planned,
                "wanted": [[name, str(sets)] for name, sets in chart.wanted],
            }
        case StrengthChart():
            return {"is": "strength", "chart": _STRENGTH.encode(chart)}
        case MusclesChart():
            return {"is": "muscles", "chart": _MUSCLES.encode(chart)}
        case AttendanceChart():
            return {"is": "attendance", "chart": _ATTENDANCE.encode(chart)}
        case DaysChart():
            return {"is": "days", "chart": _DAYS.encode(chart)}


def read_chart(data: Json) -> Chart:
    """The chart again; `KeyError` where it is none that we know."""
    match data.get("is", "week"):
        case "week":
            return WeekChart(
                title=data["title"],
                muscles=tuple((name, Decimal(sets)) for name, sets in data["muscles"]),
                done=data["done"],
                planned=data["planned"],
                wanted=tuple((name, Decimal(sets)) for name, sets in data["wanted"]),
            )
        case "strength":
            return _STRENGTH.decode(data["chart"])
        case "muscles":
            return _MUSCLES.decode(data["chart"])
        case "attendance":
            return _ATTENDANCE.decode(data["chart"])
        case "days":
            return _DAYS.decode(data["chart"])
        case other:
            raise KeyError(other)
