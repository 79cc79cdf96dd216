"""One of two days, where the client does not know which: `thursday or friday, can't remember which, squats 3x5`."""

from collections.abc import Sequence
from datetime import date, timedelta

from bot.notation.clauses import text_at
from bot.notation.days.dates import DaySaid
from bot.notation.days.weekdays import WEEKDAYS, YESTERDAY
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_BETWEEN = (Kind.OR, Kind.SLASH, Kind.COMMA, Kind.FILL, Kind.WAS)
_FAR = 5
"""Marks between the two days."""
_UNSURE = frozenset(words("remember forget forgot sure think thought recall unsure either was idea clue dunno idk"))
_TO_COME = frozenset(
    words(
        "next can will could would free fine works available train see coming back move ok okay good should closed",
        "open shut",
    )
)


def either_day(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    """The two days, both past, of a report for one of them; none where two are to come, or one is named."""
    first = _days_at(marks, place, today)
    if first is None:
        return None
    other = first[1]
    while other < min(len(marks), place + _FAR) and marks[other].kind in _BETWEEN:
        if marks[other].kind is Kind.FILL and _days_at(marks, other, today) is not None:
            break
        other += 1
    between = marks[first[1] : other]
    second = _days_at(marks, other, today)
    if second is None or not any(m.kind in (Kind.OR, Kind.SLASH) for m in between):
        return None
    start = max((i + 1 for i in range(place) if marks[i].kind in _ENDS), default=0)
    end = next((i for i in range(other, len(marks)) if marks[i].kind in _ENDS), len(marks))
    said = {w for m in marks[start:end] for w in m.text.split()}
    opens = start == 0 and all(m.kind in (Kind.FILL, Kind.WAS) or m.text == "either" for m in marks[:place])
    unsure = bool(said & _UNSURE) or text_at(marks, place - 1).split()[-1:] == ["from"]
    sure_of_name = any(m.kind is Kind.SLASH for m in between) and not said & _UNSURE
    if said & _TO_COME or sure_of_name or not (opens or unsure):
        return None
    days = sorted({*first[0], *second[0]})
    places = tuple(range(place, max(second[1], other + 1)))
    return DaySaid(None, places, tuple(days)) if len(days) > 1 else None


def _days_at(marks: Sequence[Mark], place: int, today: date) -> tuple[tuple[date, ...], int] | None:
    """The days that a word may be, and the place behind it: `friday`, `yesterday`, `the day before`, `the weekend`."""
    text = text_at(marks, place)
    if text in WEEKDAYS:
        return (_past(marks, place, today),), place + 1
    if text in YESTERDAY:
        return (today - timedelta(days=1),), place + 1
    if text.startswith(("the", "day")):
        said = " ".join(text_at(marks, i) for i in range(max(0, place), place + 3))
        if said.startswith(("the day before", "day before")):
            return (today - timedelta(days=2),), place + 2 + said.startswith("the")
    if text == "weekend":
        return tuple(today - timedelta(days=(today.weekday() - d) % 7 or 7) for d in (5, 6)), place + 1
    return None


def _past(marks: Sequence[Mark], place: int, today: date) -> date:
    return today - timedelta(days=(today.weekday() - WEEKDAYS[text_at(marks, place)]) % 7 or 7)


def is_unsure(marks: Sequence[Mark], day: DaySaid) -> bool:
    """`not sure if it was monday or tuesday`: which of two days is the client's doubt, and asks the coach nothing."""
    before = [m.text for m in marks[max(0, day.places[0] - _FAR) : day.places[0]]]
    return len(day.candidates) == len(day.places) > 1 and any(t.startswith(_DOUBTING) for t in before)


_DOUBTING = ("not sure", "unsure", "dont know", "cant remember", "idk")
