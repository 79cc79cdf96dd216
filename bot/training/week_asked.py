"""What is asked of a week, and how little may be wasted where it is asked for nearly as much as can be.

The argument. Asked is a way to lay the week that keeps so many sets of each priority. The days hold so many units
together; the sets that are to be kept take at least so many (the shortest of each priority). What is between is the
`spare`: all that may be wasted, by a day that is not full, or by a set kept in place of a shorter one. The latter is
reckoned by a rate for each priority, the units of the longest of its shortest sets: a set kept wastes what it takes
more than that, a set lost what it takes less. So the waste of all days and of the items left out adds up to the spare,
exactly, for every way that keeps what is asked, and no day alone wastes more.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import product

from bot.training.week_grid import PRIORITIES, Grid

COUNT_BITS = 20
"""Bits for the sets of a priority, three of them in one whole number."""


@dataclass(frozen=True)
class Asked:
    """At most so many sets `lost` of priority 1, 2 ... (of as many as are named; what comes after is left out), no more
    `clashes` (`None`: they don't matter), no day with more units than `longest`."""

    grid: Grid
    lost: tuple[int, ...]
    longest: int
    clashes: int | None = None

    @cached_property
    def keep(self) -> tuple[int, ...]:
        """Sets to keep, by priority."""
        kept = [self.grid.wanted(p) - gone for p, gone in enumerate(self.lost, start=1)]
        return (*kept, *(0 for _ in PRIORITIES[len(kept) :]))

    @cached_property
    def rates(self) -> tuple[int, ...]:
        """Units of the longest set that is kept, by priority, where the shortest are kept."""
        return tuple(self._rate(priority, keep) for priority, keep in zip(PRIORITIES, self.keep, strict=True))

    def _rate(self, priority: int, keep: int) -> int:
        rate = 0
        for k in self.grid.filling:
            if self.grid.priority[k] == priority and self.grid.sets[k] and keep > 0:
                rate = self.grid.cost[k]
                keep -= self.grid.sets[k]
        return rate

    @cached_property
    def rooms(self) -> tuple[int, ...]:
        """Units that each day can be filled with."""
        unit = self.grid.unit([self.grid.wanted(p) - keep for p, keep in zip(PRIORITIES, self.keep, strict=True)])
        return tuple(min(room, self.longest) // unit * unit for room in self.grid.room)

    @cached_property
    def spare(self) -> int:
        """Units that may be wasted; below nought there is no way."""
        return sum(self.rooms) - self.grid.least_work(self.lost)

    def waste(self, item: int, sets: int) -> int:
        """Units that an item wastes where so many of its sets are kept."""
        over = self.grid.cost[item] - self.rates[self.grid.priority[item] - 1]
        return max(0, over) * sets + max(0, -over) * (self.grid.sets[item] - sets)

    def ways(self, item: int) -> Sequence[int]:
        """How many of an item's sets may be kept."""
        priority, sets = self.grid.priority[item], self.grid.sets[item]
        if not self.keep[priority - 1]:
            return (0,)
        least = 0 if self.lost[priority - 1] else sets
        return [n for n in range(least, sets + 1) if self.waste(item, n) <= self.spare]

    @cached_property
    def _left_out(self) -> tuple[tuple[int, int], ...]:
        """Units that each group wastes where nothing of it is kept, and its bit; the most first. More than the spare
        where it has to be laid."""
        found = []
        for group, members in enumerate(self.grid.members):
            may = all(0 in self.ways(k) for k in members)
            waste = sum(self.waste(k, 0) for k in members) if may else self.spare + 1
            found.append((waste, 1 << group))
        return tuple(sorted(found, reverse=True))

    def needed(self, spare: int) -> int:
        """Bits of the groups of which something has to be kept where only so much may still be wasted."""
        bits = 0
        for waste, bit in self._left_out:
            if waste <= spare:
                break
            bits |= bit
        return bits


@dataclass(frozen=True, slots=True)
class Choice:
    """What is kept of a group, item by item: its units, their waste, muscles worked, and sets by priority (packed)."""

    kept: tuple[int, ...]
    units: int
    waste: int
    muscles: int
    counts: int


def choices_of(asked: Asked, members: tuple[int, ...]) -> Iterator[Choice]:
    """What may be kept of a group that is laid."""
    grid = asked.grid
    for kept in product(*(asked.ways(k) for k in members)):
        waste = sum(asked.waste(k, n) for k, n in zip(members, kept, strict=True))
        if not any(kept) or waste > asked.spare:
            continue
        muscles = counts = 0
        for k, n in zip(members, kept, strict=True):
            muscles |= grid.muscles[k] if n else 0
            counts += n << (COUNT_BITS * (grid.priority[k] - 1))
        yield Choice(kept, sum(grid.cost[k] * n for k, n in zip(members, kept, strict=True)), waste, muscles, counts)
