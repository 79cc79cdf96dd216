"""Which day a report is for, where the message names another than today. Always past, in `now`'s own offset.

`monday` said on a Monday is seven days ago. A weekday of a plan, of a workout's name, or to come is no day. What may be
several days (`the weekend`, `3/4`) is asked about.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime

from bot.notation.days.dates import DaySaid, dated
from bot.notation.days.either import either_day, is_unsure
from bot.notation.days.talk import is_talk
from bot.notation.days.weekdays import day_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

__all__ = ["DaySaid", "is_unsure", "read_day"]


def read_day(marks: Sequence[Mark], now: datetime) -> DaySaid | None:
    """The day that the message names for its report, if any."""
    today = now.date()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.GAP:
            continue
        either = either_day(marks, place, today)
        if either is not None:
            return either
        named = day_at(marks, place, today)
        said = None if named is None else _with_date(marks, named, today)
        if said is not None and not is_talk(marks, said.places):
            return said
    return None


def _with_date(marks: Sequence[Mark], said: DaySaid, today: date) -> DaySaid:
    """`thu 5 mar`: the date behind a weekday says which one."""
    behind = said.places[-1] + 1
    behind += behind < len(marks) and marks[behind].kind is Kind.COMMA
    exact = dated(marks, behind, today) if behind < len(marks) else None
    return said if exact is None else replace(exact, places=(*said.places, *exact.places))
