"""Hours and weekdays as people type them in a talk: `18:30`, `6.30 pm`, `mon wed fri`. Text to value; never raises."""

import re
from datetime import time

from bot.training.calendar import DAY_NAMES

_CLOCK = re.compile(
    r"(?<![\d.:])(\d{1,2})(?:[:.h ]?(\d{2}))?\s*([ap])?\.?\s*(?:m\.?)?(?![\d:])", re.IGNORECASE | re.ASCII
)
_WORD = re.compile(r"[a-z]+")
_SPANS = {"daily": range(7), "everyday": range(7), "weekdays": range(5), "weekend": range(5, 7)}


def read_time(text: str) -> time | None:
    """The first time of day in the text; a bare number is an hour; `None` where there is none.

    >>> read_time("6.30 pm")
    datetime.time(18, 30)
    >>> read_time("1840")
    datetime.time(18, 40)
    """
    for found in _CLOCK.finditer(text):
        hour, minute = int(found[1]), int(found[2] or 0)
        half = (found[3] or _part_of_day(text)).lower()
        if half and 1 <= hour <= 12:
            hour = hour % 12 + (12 if half == "p" else 0)
        if hour < 24 and minute < 60:
            return time(hour, minute)
    return None


def _part_of_day(text: str) -> str:
    """`p` where the words say afternoon, evening or night, `a` for the morning."""
    low = text.lower()
    if any(word in low for word in ("evening", "afternoon", "tonight", "at night")):
        return "p"
    return "a" if "morning" in low else ""


def read_days(text: str) -> tuple[int, ...] | None:
    """The weekdays named, Monday 0; `None` where there is none.

    >>> read_days("Monday, wed + Fri")
    (0, 2, 4)
    """
    days: set[int] = set()
    for word in _WORD.findall(text.lower()):
        days.update(_SPANS.get(word, ()))
        if len(word) >= 2 and word not in ("we", "so", "sa", "su", "to", "th", "mo"):
            days.update(
                n for n, name in enumerate(DAY_NAMES) if word[:3] == name or (len(word) == 2 and word == name[:2])
            )
    return tuple(sorted(days)) or None
