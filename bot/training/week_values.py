"""A week's work and the days that there are, as values; `bot.training.week` lays the one over the other.

Each of these goes before the next: what is allowed (an item on one day, partners on the same, nothing over the day's
minutes, sets cut but never added); the most sets of priority 1 kept, then of 2, then of 3; the fewest clashes (a muscle
worked directly on two days nearer than the rest asked for, the week repeating); the shortest longest day.
"""

from dataclasses import dataclass
from decimal import Decimal
from enum import IntEnum, StrEnum
from fractions import Fraction

from bot.training.plan import Region

REST_HOURS = Decimal(48)
"""Between two days that work the same muscle directly. Common practice, no source; the coach may set another."""
MOST_MUSCLES = 60
"""Different muscles in a week: more than any list of them has."""
TIME_LIMIT_S = 1.2
"""Seconds to think: an answer takes at most two, with reading and writing, and with the start of the command line."""


class Weekday(IntEnum):
    """Days of the week, Monday first (ISO 8601 counts from 1, Python's `date.weekday` as here)."""

    MON = 0
    TUE = 1
    WED = 2
    THU = 3
    FRI = 4
    SAT = 5
    SUN = 6


def hours_between(one: Weekday, other: Weekday) -> int:
    """Hours between two days of a week that repeats: Sunday and Monday are 24 apart."""
    apart = abs(one - other)
    return 24 * min(apart, 7 - apart)


@dataclass(frozen=True, slots=True)
class WorkItem:
    """Work that the week asks for. `minutes` are for all its sets; `partner` names the item that it is done together
    with (partners of partners are partners); `priority` 1 is kept at all cost, 3 goes first."""

    name: str
    sets: int
    minutes: Decimal
    direct: tuple[str, ...]
    priority: int
    region: Region
    indirect: tuple[str, ...] = ()
    partner: str | None = None


@dataclass(frozen=True, slots=True)
class DayRoom:
    """A day to train on and the minutes that it has."""

    day: Weekday
    minutes: Decimal


@dataclass(frozen=True, slots=True)
class WorkDone:
    """Sets of an item that are behind us this week: planned no more, but their day counts for rest."""

    name: str
    sets: int
    day: Weekday


@dataclass(frozen=True, slots=True)
class Week:
    """What is to be laid. Days are different days; partners and work done name items of the week (`check_week`)."""

    items: tuple[WorkItem, ...]
    days: tuple[DayRoom, ...]
    rest_hours: Decimal = REST_HOURS
    done: tuple[WorkDone, ...] = ()

    def sets_left(self) -> tuple[int, ...]:
        """Sets still to plan, item by item: what was done is taken off the items of that name in their order."""
        done: dict[str, int] = {}
        for work in self.done:
            done[work.name] = done.get(work.name, 0) + work.sets
        left = []
        for item in self.items:
            off = min(item.sets, done.get(item.name, 0))
            done[item.name] = done.get(item.name, 0) - off
            left.append(item.sets - off)
        return tuple(left)

    def minutes_a_set(self) -> tuple[Fraction, ...]:
        """Minutes of one set, item by item; an item takes its share of them where sets are cut."""
        return tuple(Fraction(item.minutes) / item.sets for item in self.items)


@dataclass(frozen=True, slots=True)
class Laying:
    """Sets kept and the place among the days, item by item; an item without sets stands nowhere. `proven` says that
    no allowed week is better."""

    sets: tuple[int, ...]
    places: tuple[int | None, ...]
    clashes: int
    proven: bool


class Fault(StrEnum):
    """What can be wrong with a week."""

    DAY_TWICE = "day-twice"
    PARTNER_UNKNOWN = "partner-unknown"
    PARTNER_ITSELF = "partner-itself"
    PARTNER_SEVERAL = "partner-several"
    DONE_UNKNOWN = "done-unknown"
    MUSCLES_MANY = "muscles-many"


@dataclass(frozen=True, slots=True)
class WeekProblem:
    """A fault, the place in its list (of the days, the items or the work done) and the name that it is about."""

    fault: Fault
    place: int
    name: str


def check_week(week: Week) -> tuple[WeekProblem, ...]:
    """What is wrong with a week; `lay_week` takes only a week without problems."""
    names = [item.name for item in week.items]
    problems = []
    for place, room in enumerate(week.days):
        if room.day in [other.day for other in week.days[:place]]:
            problems.append(WeekProblem(Fault.DAY_TWICE, place, room.day.name))
    for place, item in enumerate(week.items):
        if item.partner is None:
            continue
        if item.partner == item.name:
            problems.append(WeekProblem(Fault.PARTNER_ITSELF, place, item.partner))
        elif item.partner not in names:
            problems.append(WeekProblem(Fault.PARTNER_UNKNOWN, place, item.partner))
        elif names.count(item.partner) > 1:
            problems.append(WeekProblem(Fault.PARTNER_SEVERAL, place, item.partner))
    problems += [
        WeekProblem(Fault.DONE_UNKNOWN, place, work.name)
        for place, work in enumerate(week.done)
        if work.name not in names
    ]
    muscles = sorted({muscle for item in week.items for muscle in item.direct})
    if len(muscles) > MOST_MUSCLES:
        problems.append(WeekProblem(Fault.MUSCLES_MANY, 0, str(len(muscles))))
    return tuple(problems)
