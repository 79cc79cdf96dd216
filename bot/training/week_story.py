"""A laid week told: what each day is called, what was cut and why, and what each muscle gets. Keys, never words."""

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from bot.training.plan import Region
from bot.training.volume import INDIRECT
from bot.training.week_values import Laying, Week, Weekday, WorkItem, hours_between

_ASIDE = Fraction(1, 5)
"""A part of a day's sets smaller than this doesn't change its name: calves after the upper body leave it an upper day.
Ours, no source."""
_PUSH = ("chest", "pec", "tricep", "front delt", "front shoulder", "side delt", "side shoulder", "shoulder", "delt")
_PULL = (
    "lat",
    "upper back",
    "back",
    "trap",
    "rhomboid",
    "rear delt",
    "rear shoulder",
    "bicep",
    "forearm",
    "brachialis",
)


class DayName(StrEnum):
    """What a day is called by what it holds."""

    WHOLE_BODY = "whole-body"
    UPPER = "upper"
    LOWER = "lower"
    PUSH = "push"
    PULL = "pull"
    LEGS = "legs"
    """A lower day of a week that has push or pull days."""
    TRUNK = "trunk"
    FREE = "free"


class Why(StrEnum):
    """Why sets were cut."""

    NO_DAYS = "no-days"
    TOO_LONG = "too-long"
    """One set takes more than the longest day has."""
    LOWER_FIRST = "lower-first"
    """Something of a higher priority is kept."""
    SHORT = "short"
    """The days hold less than the work takes."""
    PARTNER = "partner"
    """Another day has the room, but an item done in turn with it stands elsewhere."""
    SEAMS = "seams"
    """The days hold enough together, but none has that much left."""


@dataclass(frozen=True, slots=True)
class Cut:
    """Sets of an item that are left out."""

    item: WorkItem
    sets: int
    why: Why


@dataclass(frozen=True, slots=True)
class MuscleWeek:
    """A muscle's sets of the week (direct 1, indirect a half), with what is behind us, and the least hours between two
    days that work it directly; `None` where there are no two."""

    wanted: Decimal
    planned: Decimal
    gap_h: int | None


def minutes_of(week: Week, laying: Laying) -> tuple[Fraction, ...]:
    """Minutes of each day."""
    minutes = [Fraction(0)] * len(week.days)
    for share, kept, place in zip(week.minutes_a_set(), laying.sets, laying.places, strict=True):
        if place is not None:
            minutes[place] += share * kept
    return tuple(minutes)


def name_days(week: Week, laying: Laying) -> tuple[DayName, ...]:
    """What each day is called."""
    names = [_name(_held(week, laying, place)) for place in range(len(week.days))]
    if DayName.PUSH in names or DayName.PULL in names:
        names = [DayName.LEGS if name is DayName.LOWER else name for name in names]
    return tuple(names)


def tell_cuts(week: Week, laying: Laying) -> tuple[Cut, ...]:
    """What is left out, in the week's order."""
    highest_kept = min((i.priority for i, kept in zip(week.items, laying.sets, strict=True) if kept), default=4)
    room = sum((Fraction(day.minutes) for day in week.days), Fraction(0))
    longest = max((Fraction(day.minutes) for day in week.days), default=Fraction(0))
    left = week.sets_left()
    work = [share * n for share, n in zip(week.minutes_a_set(), left, strict=True)]
    cuts: list[Cut] = []
    bound = {item.partner for item in week.items} - {None}
    most_left = max(
        (Fraction(d.minutes) - m for d, m in zip(week.days, minutes_of(week, laying), strict=True)), default=Fraction(0)
    )
    for item, share, n, kept in zip(week.items, week.minutes_a_set(), left, laying.sets, strict=True):
        if kept == n:
            continue
        if not week.days:
            why = Why.NO_DAYS
        elif share > longest:
            why = Why.TOO_LONG
        elif laying.proven and (item.partner or item.name in bound) and share <= most_left:
            why = Why.PARTNER
        elif item.priority > highest_kept:
            why = Why.LOWER_FIRST
        else:
            needed = sum(w for w, other in zip(work, week.items, strict=True) if other.priority <= item.priority)
            why = Why.SHORT if needed > room else Why.SEAMS
        cuts.append(Cut(item, n - kept, why))
    return tuple(cuts)


def muscle_weeks(week: Week, laying: Laying) -> dict[str, MuscleWeek]:
    """What each muscle gets, in the order in which the items name them; an item counts a muscle once, as direct where
    it names it both ways."""
    wanted: dict[str, Decimal] = {}
    planned: dict[str, Decimal] = {}
    days: dict[str, set[Weekday]] = {}
    behind = {work.name: sum(w.sets for w in week.done if w.name == work.name) for work in week.done}
    for item, kept, place in zip(week.items, laying.sets, laying.places, strict=True):
        sets = kept + behind.pop(item.name, 0)
        for muscle, weight in _weights(item):
            wanted[muscle] = wanted.get(muscle, Decimal(0)) + weight * item.sets
            planned[muscle] = planned.get(muscle, Decimal(0)) + weight * sets
            worked = days.setdefault(muscle, set())
            if weight == 1:
                worked |= {work.day for work in week.done if work.name == item.name and work.sets}
                worked |= {week.days[place].day} if place is not None and kept else set()
    return {muscle: MuscleWeek(wanted[muscle], planned[muscle], _gap(days[muscle])) for muscle in wanted}


def _weights(item: WorkItem) -> tuple[tuple[str, Decimal], ...]:
    indirect = [muscle for muscle in item.indirect if muscle not in item.direct]
    return tuple((dict.fromkeys(item.direct, Decimal(1)) | dict.fromkeys(indirect, INDIRECT)).items())


def _gap(days: set[Weekday]) -> int | None:
    return min((hours_between(a, b) for a in days for b in days if a < b), default=None)


def _held(week: Week, laying: Laying, place: int) -> list[tuple[WorkItem, int]]:
    kept = zip(week.items, laying.sets, laying.places, strict=True)
    return [(item, sets) for item, sets, at in kept if at == place and sets]


def _name(held: list[tuple[WorkItem, int]]) -> DayName:
    upper = sum(sets for item, sets in held if item.region is Region.UPPER)
    lower = sum(sets for item, sets in held if item.region is Region.LOWER)
    if not held:
        return DayName.FREE
    if not upper + lower:
        return DayName.TRUNK
    if min(upper, lower) >= _ASIDE * (upper + lower):
        return DayName.WHOLE_BODY
    if lower > upper:
        return DayName.LOWER
    uppers = [(item, sets) for item, sets in held if item.region is Region.UPPER]
    push = sum(sets for item, sets in uppers if _is_all(item, _PUSH, _PULL))
    pull = sum(sets for item, sets in uppers if _is_all(item, _PULL, _PUSH))
    if upper - push < _ASIDE * upper:
        return DayName.PUSH
    return DayName.PULL if upper - pull < _ASIDE * upper else DayName.UPPER


def _is_all(item: WorkItem, kind: tuple[str, ...], other: tuple[str, ...]) -> bool:
    """Whether all that an item works directly is of this kind: the kind with the longest word found in the name."""
    return bool(item.direct) and all(_longest(m, kind) > _longest(m, other) for m in item.direct)


def _longest(muscle: str, words: tuple[str, ...]) -> int:
    named = f" {muscle.casefold().replace('_', ' ').replace('-', ' ')}"
    return max((len(word) for word in words if f" {word}" in named), default=0)
