"""Search: two or three days are laid anew in every possible way at once, and the best taken, until nothing gets better.

It finds good weeks fast and proves nothing; the solver starts from what is found here. There is no chance in it: the
kicks that start it again come from a fixed sequence, so that the same week is always laid in the same way.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import reduce
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from bot.training.week_grid import Grid, Lay, Worth

Whole = NDArray[np.int64]

_FREE_GROUPS = {2: 11, 3: 7}
"""How many groups move at a time where two or three days are laid anew: some two thousand ways each."""
_KICKS = 8


def search(grid: Grid, target: Worth, *, goes_on: Callable[[], bool]) -> Lay:
    """The best way found; stops as soon as `target`, that none can beat, is reached, or `goes_on` says so."""
    best = settle(grid, first_lay(grid), target, goes_on=goes_on)
    for places in _kicks(grid, best):
        if grid.worth(best) <= target or not goes_on():
            break
        best = min(best, settle(grid, grid.fill(places), target, goes_on=goes_on), key=grid.worth)
    return best


def first_lay(grid: Grid) -> Lay:
    """A plain start: the longest groups of the highest priority first, each to the day that keeps most of it, clashes
    least with what stands there and has most room."""
    places = [0] * len(grid.members)
    left, masks = list(grid.room), list(grid.worked)

    def length(group: int) -> tuple[int, int, int]:
        members = grid.members[group]
        work = sum(grid.sets[k] * grid.cost[k] for k in members)
        return (min(grid.priority[k] for k in members), -work, group)

    for group in sorted(range(len(places)), key=length):
        members = grid.members[group]
        work = sum(grid.sets[k] * grid.cost[k] for k in members)
        muscles = reduce(lambda bits, k: bits | grid.muscles[k], members, 0)
        place = min(
            range(len(left)),
            key=lambda d: (max(0, work - left[d]), _clashes_at(grid, masks, muscles, d), -left[d], d),
        )
        places[group] = place
        masks[place] |= muscles
        left[place] -= min(work, left[place])
    return grid.fill(places)


def _clashes_at(grid: Grid, masks: list[int], muscles: int, place: int) -> int:
    others = [b if a == place else a for a, b in grid.near if place in (a, b)]
    return sum((masks[d] & muscles).bit_count() for d in others)


def settle(grid: Grid, lay: Lay, target: Worth, *, goes_on: Callable[[], bool]) -> Lay:
    """Lay days anew, by twos and then by threes, until no two or three of them can be made better."""
    groups_of_days = [days for count in (2, 3) for days in combinations(range(len(grid.room)), count)]
    settled: dict[tuple[int, ...], tuple[int, ...]] = {}
    changed = [0] * len(grid.room)
    turn = 0
    while True:
        days = next((d for d in groups_of_days if settled.get(d) != tuple(changed[p] for p in d)), None)
        if days is None or grid.worth(lay) <= target or not goes_on():
            return lay
        for free in _windows(grid, lay, days):
            found = _relaid(grid, lay, days, free)
            if found is not None:
                turn += 1
                lay = found
                for place in days:
                    changed[place] = turn
        settled[days] = tuple(changed[p] for p in days)


def _windows(grid: Grid, lay: Lay, days: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """The groups on these days, and those without a set, as many at a time as can be laid anew at once."""
    groups = [
        g
        for g, members in enumerate(grid.members)
        if any(grid.sets[k] for k in members) and (lay.places[g] in days or not any(lay.kept[k] for k in members))
    ]
    most = _FREE_GROUPS[len(days)]
    if len(groups) <= most:
        yield tuple(groups)
        return
    for first in range(0, len(groups), most // 2):
        yield tuple(sorted({groups[(first + n) % len(groups)] for n in range(most)}))


@dataclass(frozen=True, slots=True)
class _Ways:
    """All ways to lay the free groups on the days: for each, the day of each group, and what comes of it."""

    digits: dict[int, Whole]
    lost: tuple[Whole, Whole, Whole]
    clashes: Whole
    longest: Whole
    spread: NDArray[np.float64]


def _relaid(grid: Grid, lay: Lay, days: tuple[int, ...], free: tuple[int, ...]) -> Lay | None:
    """The best way to lay these groups on these days; `None` where none is better than what is there."""
    if not free:
        return None
    ways = _ways(grid, lay, days, free)
    left = np.arange(len(ways.clashes))
    for measure in (*ways.lost, ways.clashes, ways.longest, ways.spread):
        here = measure[left]
        left = left[here == here.min()]
    places = list(lay.places)
    for group in free:
        places[group] = days[int(ways.digits[group][left[0]])]
    filled = grid.fill(places)
    kept = tuple(f if places[grid.group[k]] in days else lay.kept[k] for k, f in enumerate(filled.kept))
    found = Lay(tuple(places), kept)
    return found if _order(grid, found) < _order(grid, lay) else None


def _order(grid: Grid, lay: Lay) -> tuple[Worth, int]:
    """Worth, and where it is equal, how unevenly the days are filled: evening out leads on to shorter longest days."""
    return grid.worth(lay), sum(load * load for load in grid.loads(lay))


def _ways(grid: Grid, lay: Lay, days: tuple[int, ...], free: tuple[int, ...]) -> _Ways:
    """Lay the free groups in all ways and fill the days as `Grid.fill` does."""
    count = len(days) ** len(free)
    code = np.arange(count, dtype=np.int64)
    digits: dict[int, Whole] = {}
    for group in free:
        digits[group] = code % len(days)
        code = code // len(days)
    left = [np.full(count, grid.room[d], dtype=np.int64) for d in days]
    masks = [np.full(count, grid.worked[d], dtype=np.int64) for d in days]
    lost = (np.zeros(count, np.int64), np.zeros(count, np.int64), np.zeros(count, np.int64))
    for k in grid.filling:
        group, n, cost = grid.group[k], grid.sets[k], grid.cost[k]
        fixed = group not in digits
        if n == 0 or (fixed and lay.places[group] not in days):
            continue
        for at, day in enumerate(days):
            if fixed:
                if lay.places[group] != day:
                    continue
                here: Whole = np.full(count, n, dtype=np.int64)
            else:
                here = np.where(digits[group] == at, n, 0).astype(np.int64)
            kept = np.minimum(here, left[at] // cost) if cost else here
            left[at] -= kept * cost
            masks[at] |= np.where(kept > 0, grid.muscles[k], 0)
            lost[grid.priority[k] - 1].__iadd__(here - kept)
    used = [grid.room[d] - rest for d, rest in zip(days, left, strict=True)]
    return _Ways(
        digits,
        lost,
        _clashes(grid, lay, days, masks),
        reduce(np.maximum, used),
        reduce(np.add, [u.astype(np.float64) ** 2 for u in used]),
    )


def _clashes(grid: Grid, lay: Lay, days: tuple[int, ...], masks: list[Whole]) -> Whole:
    """Clashes that these days have a part in, for each way."""
    standing = grid.masks(lay)
    total: Whole = np.zeros(len(masks[0]), dtype=np.int64)
    for a, b in grid.near:
        if a not in days and b not in days:
            continue
        one = masks[days.index(a)] if a in days else standing[a]
        other = masks[days.index(b)] if b in days else standing[b]
        total += np.bitwise_count(one & other).astype(np.int64)
    return total


def _kicks(grid: Grid, lay: Lay) -> Iterator[list[int]]:
    """Starts at some distance from the best: about a third of the groups on other days, from a fixed sequence."""
    days, state = len(grid.room), 1
    for _ in range(_KICKS if days > 1 else 0):
        places = list(lay.places)
        for group in range(len(places)):
            state = (state * 48271) % (2**31 - 1)  # the multiplier and modulus of Park, Miller and Stockmeyer 1993
            if state % 3 == 0:
                places[group] = (places[group] + 1 + state // 3 % (days - 1)) % days
        yield places
