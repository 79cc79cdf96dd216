"""A week in whole numbers, as the search and the solver take it: minutes as units without remainder, muscles as bits.

`Grid` is what is given, `Lay` a way to lay it, `Worth` how good a way is: smaller is better, place by place.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import floor, gcd, lcm
from typing import NamedTuple

from bot.training.week_values import Week, Weekday, hours_between

PRIORITIES = (1, 2, 3)
_FINEST = 10**9
"""Units a minute at most: minutes whose shares have no finer common unit are rounded down to a billionth."""


class Lay(NamedTuple):
    """The day's place for each group, and the sets kept of each item."""

    places: tuple[int, ...]
    kept: tuple[int, ...]


class Worth(NamedTuple):
    """Sets lost of priority 1, 2 and 3, clashes, and the longest day in units: what is compared, in this order."""

    lost_1: int
    lost_2: int
    lost_3: int
    clashes: int
    longest: int


@dataclass(frozen=True)
class Grid:
    """`sets`, `cost` (units of one set), `priority`, `muscles` (bits) and `group` stand item by item; items of a group
    share a day. `room` holds the units of the days to plan on; `worked` the muscles already worked on each weekday of
    `weekdays`, of which those to plan on come first."""

    scale: int
    sets: tuple[int, ...]
    cost: tuple[int, ...]
    priority: tuple[int, ...]
    muscles: tuple[int, ...]
    group: tuple[int, ...]
    room: tuple[int, ...]
    weekdays: tuple[Weekday, ...]
    worked: tuple[int, ...]
    near: tuple[tuple[int, int], ...]
    muscle_count: int

    @cached_property
    def members(self) -> tuple[tuple[int, ...], ...]:
        """The items of each group."""
        count = max(self.group, default=-1) + 1
        return tuple(tuple(k for k, g in enumerate(self.group) if g == group) for group in range(count))

    @cached_property
    def behind(self) -> int:
        """Clashes of what is behind us: they stay."""
        return sum((self.worked[a] & self.worked[b]).bit_count() for a, b in self.near)

    @cached_property
    def filling(self) -> tuple[int, ...]:
        """Items in the order in which a day is filled best: by priority, then the shortest sets first.

        For a given set of items this order is optimal: of one priority the most sets fit when the shortest go first,
        and they then leave the most room for the next priority.
        """
        return tuple(sorted(range(len(self.sets)), key=lambda k: (self.priority[k], self.cost[k], k)))

    def wanted(self, priority: int) -> int:
        """Sets of a priority that the week asks for."""
        return sum(n for n, p in zip(self.sets, self.priority, strict=True) if p == priority)

    def loads(self, lay: Lay) -> list[int]:
        """Units of each day."""
        loads = [0] * len(self.room)
        for kept, cost, group in zip(lay.kept, self.cost, self.group, strict=True):
            loads[lay.places[group]] += kept * cost
        return loads

    def masks(self, lay: Lay) -> list[int]:
        """Muscles worked directly on each weekday, with what is behind us."""
        masks = list(self.worked)
        for kept, muscles, group in zip(lay.kept, self.muscles, self.group, strict=True):
            if kept:
                masks[lay.places[group]] |= muscles
        return masks

    def worth(self, lay: Lay) -> Worth:
        """How good a way to lay the week is."""
        lost = [0, 0, 0]
        for kept, wanted, priority in zip(lay.kept, self.sets, self.priority, strict=True):
            lost[priority - 1] += wanted - kept
        masks = self.masks(lay)
        clashes = sum((masks[a] & masks[b]).bit_count() for a, b in self.near)
        return Worth(lost[0], lost[1], lost[2], clashes, max(self.loads(lay), default=0))

    def is_allowed(self, lay: Lay) -> bool:
        """Whether nothing goes over a day's minutes and no set is added."""
        fits = all(load <= room for load, room in zip(self.loads(lay), self.room, strict=True))
        return fits and all(0 <= kept <= n for kept, n in zip(lay.kept, self.sets, strict=True))

    def fill(self, places: Sequence[int]) -> Lay:
        """The most that fits, priority by priority, where each group's day is given."""
        left = list(self.room)
        kept = [0] * len(self.sets)
        for k in self.filling:
            place = places[self.group[k]]
            kept[k] = _fits(self.sets[k], self.cost[k], left[place])
            left[place] -= kept[k] * self.cost[k]
        return Lay(tuple(places), tuple(kept))

    def unit(self, lost: Sequence[int]) -> int:
        """What every day's units are a multiple of, where these are the sets lost by priority."""
        unit = 0
        for n, cost, priority in zip(self.sets, self.cost, self.priority, strict=True):
            if lost[priority - 1] < self.wanted(priority):
                unit = gcd(unit, cost if lost[priority - 1] else n * cost)
        return unit or 1

    def least_lost(self, priority: int, lost: Sequence[int]) -> int:
        """Sets of a priority that are lost at least, where `lost` tells those of the priorities before it: as if all
        days were one without a seam, and no item over the widest day."""
        left = sum(self.room) - self.least_work(lost[: priority - 1])
        widest = max(self.room, default=0)
        kept = 0
        for k in self.filling:
            if self.priority[k] == priority:
                more = _fits(self.sets[k], self.cost[k], min(left, widest))
                kept += more
                left -= more * self.cost[k]
        return self.wanted(priority) - kept

    def shortest(self, lost: Sequence[int]) -> int:
        """Units that the longest day takes at least, where these are the sets lost by priority: the shortest sets
        kept, spread like water over the days."""
        work = self.least_work(lost)
        unit = self.unit(lost)
        low, high = 0, max(self.room, default=0) // unit + 1
        while low < high:
            middle = (low + high) // 2
            holds = sum(min(room // unit, middle) * unit for room in self.room) >= work
            low, high = (low, middle) if holds else (middle + 1, high)
        return low * unit

    @cached_property
    def unbeatable(self) -> Worth:
        """A worth that no way to lay the week can beat."""
        lost: list[int] = []
        for priority in PRIORITIES:
            lost.append(self.least_lost(priority, lost))
        return Worth(lost[0], lost[1], lost[2], self.behind, self.shortest(lost))

    def least_work(self, lost: Sequence[int]) -> int:
        """Units that the sets kept take at least, where these are the sets lost by priority."""
        work = 0
        for priority, gone in zip(PRIORITIES, lost, strict=False):
            keep = self.wanted(priority) - gone
            for k in self.filling:
                if self.priority[k] == priority:
                    kept = min(self.sets[k], keep)
                    keep -= kept
                    work += kept * self.cost[k]
        return work


def _fits(sets: int, cost: int, left: int) -> int:
    return sets if cost == 0 else min(sets, max(0, left) // cost)


def grid_of(week: Week) -> Grid:
    """The week in whole numbers."""
    shares = week.minutes_a_set()
    scale = 1
    for share in shares:
        scale = min(lcm(scale, share.denominator), _FINEST + 1)
    scale = min(scale, _FINEST)
    names = sorted({muscle for item in week.items for muscle in item.direct})
    bits = [sum(1 << names.index(muscle) for muscle in set(item.direct)) for item in week.items]
    days = [room.day for room in week.days]
    weekdays = (*days, *sorted({work.day for work in week.done if work.sets} - set(days)))
    worked = [0] * len(weekdays)
    for work in week.done:
        if work.sets:
            worked[weekdays.index(work.day)] |= next(
                b for b, i in zip(bits, week.items, strict=True) if i.name == work.name
            )
    return Grid(
        scale=scale,
        sets=week.sets_left(),
        cost=tuple(floor(share * scale) for share in shares),
        priority=tuple(item.priority for item in week.items),
        muscles=tuple(bits),
        group=_groups(week),
        room=tuple(floor(room.minutes * scale) for room in week.days),
        weekdays=weekdays,
        worked=tuple(worked),
        near=tuple(
            (a, b)
            for b in range(len(weekdays))
            for a in range(b)
            if hours_between(weekdays[a], weekdays[b]) < week.rest_hours
        ),
        muscle_count=len(names),
    )


def _groups(week: Week) -> tuple[int, ...]:
    """The group of each item: partners of partners belong together."""
    group = list(range(len(week.items)))
    names = [item.name for item in week.items]
    for k, item in enumerate(week.items):
        if item.partner is not None:
            one, other = group[k], group[names.index(item.partner)]
            group = [min(one, other) if g in (one, other) else g for g in group]
    numbers = sorted(set(group))
    return tuple(numbers.index(g) for g in group)
