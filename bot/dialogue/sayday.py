"""A day to come, as people type it: `3 May`, `May 3rd`, `the 3rd`, `2027-05-03`, `3.5.`, `Monday`, `2 weeks`."""

import re
from datetime import date, timedelta

FARTHEST = timedelta(days=366)
_JANUARY_TO_JUNE = ("january", "february", "march", "april", "may", "june")
_MONTHS = (*_JANUARY_TO_JUNE, "july", "august", "september", "october", "november", "december")
_DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_BEFORE = r"(?:until |till |to |from |on |the |next )*"
_ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})")
_DOTS = re.compile(r"(\d{1,2})\.\s?(\d{1,2})\.?(?:\s?(\d{4}))?")
_WORDS = re.compile(_BEFORE + r"(\d{1,2})(?:st|nd|rd|th)?\.?(?: of)? ([a-z]{3,9})\.?(?:,? (\d{4}))?")
_TURNED = re.compile(_BEFORE + r"([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?")
_DAY_ONLY = re.compile(_BEFORE + r"(\d{1,2})(?:st|nd|rd|th)")
_SPAN = re.compile(r"(?:in |for )?(\d{1,2}|a|one|two|three|four) (day|week|month)s?")
_NUMBERS = {"a": 1, "one": 1, "two": 2, "three": 3, "four": 4}
_UNIT_DAYS = {"day": 1, "week": 7, "month": 30}


def read_day(text: str, today: date) -> date | None:
    """The day, after today and within a year; `None` where the words are none, or could be two (`3/5`)."""
    plain = " ".join(text.casefold().split()).rstrip("!")
    found = _read(plain, today)
    return found if found is not None and today < found <= today + FARTHEST else None


def _read(plain: str, today: date) -> date | None:
    if plain == "tomorrow":
        return today + timedelta(days=1)
    if match := _SPAN.fullmatch(plain):
        count = _NUMBERS.get(match[1]) or int(match[1])
        return today + timedelta(days=count * _UNIT_DAYS[match[2]])
    if match := _ISO.fullmatch(plain):
        return _date(int(match[1]), int(match[2]), int(match[3]))
    if match := _DOTS.fullmatch(plain):
        return _next(int(match[1]), int(match[2]), match[3], today)
    if match := _WORDS.fullmatch(plain):
        return _next(int(match[1]), _month(match[2]), match[3], today)
    if (match := _TURNED.fullmatch(plain)) and _month(match[1]):
        return _next(int(match[2]), _month(match[1]), match[3], today)
    if match := _DAY_ONLY.fullmatch(plain):
        return _next_of_month(int(match[1]), today)
    named = re.fullmatch(_BEFORE + r"([a-z]{3,9})", plain)
    place = _place(_DAYS, named[1]) if named else 0
    return today + timedelta(days=(place - today.weekday() - 2) % 7 + 1) if place else None


def _month(name: str) -> int:
    return _place(_MONTHS, name)


def _place(names: tuple[str, ...], said: str) -> int:
    """From 1, by the name or its beginning; 0 where it is none of them."""
    return next((n for n, name in enumerate(names, 1) if name.startswith(said)), 0)


def _next(day: int, month: int, year: str | None, today: date) -> date | None:
    """The next such day of a year, where none is named."""
    if year is not None:
        return _date(int(year), month, day)
    this = _date(today.year, month, day)
    return this if this is None or this > today else _date(today.year + 1, month, day)


def _next_of_month(day: int, today: date) -> date | None:
    """The next such day: of this month or the ones after, where they have it."""
    months = ((today.year + (today.month - 1 + n) // 12, (today.month - 1 + n) % 12 + 1) for n in range(3))
    found = (_date(year, month, day) for year, month in months)
    return next((d for d in found if d is not None and d > today), None)


def _date(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None
