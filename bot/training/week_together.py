"""Patterns of single days put together: day by day, or group by group, whichever leaves less to try.

What is laid already is laid no more; what is wasted adds up to no more than the spare, clashes to no more than asked;
all that has to be laid still can be. The last two days are found at once: of what has to be laid, the one holds what
the other doesn't.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from bot.training.week_asked import COUNT_BITS, Asked
from bot.training.week_grid import PRIORITIES
from bot.training.week_patterns import Patterns

Whole = NDArray[np.int64]
_AT_ONCE = 250_000
"""Pairs of patterns that are looked at before the clock is."""


class LateError(Exception):
    """The time is over."""


@dataclass(frozen=True, slots=True)
class OpenDay:
    """A day that is still open, its patterns, and the clashes that each has with the days that are not."""

    place: int
    patterns: Patterns
    clashes: Whole

    def only(self, these: NDArray[np.bool_]) -> "OpenDay":
        return OpenDay(self.place, self.patterns.only(these), self.clashes[these])


@dataclass(frozen=True, slots=True)
class Laid:
    """The days that are laid: of each the place, and the codes of its pattern; what they come to together."""

    days: tuple[tuple[int, int, int], ...]
    used: int
    waste: int
    clashes: int
    counts: int


@dataclass(frozen=True, slots=True)
class _Branch:
    """Patterns of a day that are tried. `ordered`: days alike are looked at in one order only."""

    day: OpenDay
    patterns: Whole
    ordered: bool


def among(asked: Asked, days: Sequence[OpenDay], laid: Laid, goes_on: Callable[[], bool]) -> Laid | None:
    """The days that are open laid beside those that are; `None` where there is no way."""
    if not days:
        return laid if _is_whole(asked, laid) else None
    if len(days) == 2:
        return _last_two(asked, days[0], days[1], laid, goes_on)
    for branch in _branches(asked, days, laid):
        others = [day for day in days if day is not branch.day]
        for n in branch.patterns:
            if not goes_on():
                raise LateError
            after = _with(laid, branch.day, int(n))
            left = _left(asked, others, branch, int(n), after)
            if left is not None and (found := among(asked, left, after, goes_on)) is not None:
                return found
    return None


def _branches(asked: Asked, days: Sequence[OpenDay], laid: Laid) -> list[_Branch]:
    """All that is to be tried: the patterns of one day, or those of all days that hold one needed group, whichever are
    fewer."""
    day = min(days, key=lambda day: (len(day.clashes), day.place))
    bits = _bits(_needed(asked, laid))
    if not len(bits):
        return [_Branch(day, np.arange(len(day.clashes)), True)]
    alike = list({asked.rooms[day.place]: day for day in days}.values()) if asked.clashes is None else list(days)
    holds = [day.patterns.groups[:, None] >> bits & 1 for day in alike]
    counts = np.sum([held.sum(axis=0) for held in holds], axis=0)
    rare = int(np.argmin(counts))
    if counts[rare] >= len(day.clashes):
        return [_Branch(day, np.arange(len(day.clashes)), True)]
    return [_Branch(day, np.flatnonzero(held[:, rare]), False) for day, held in zip(alike, holds, strict=True)]


def _needed(asked: Asked, laid: Laid) -> int:
    """Bits of the groups that are not laid and have to be."""
    return asked.needed(asked.spare - laid.waste) & ~laid.used


def _bits(groups: int) -> Whole:
    return np.array([g for g in range(groups.bit_length()) if groups >> g & 1], dtype=np.int64)


def _with(laid: Laid, day: OpenDay, n: int) -> Laid:
    """With this pattern on a day."""
    patterns = day.patterns
    return Laid(
        (*laid.days, (day.place, int(patterns.one[n]), int(patterns.other[n]))),
        laid.used | int(patterns.groups[n]),
        laid.waste + int(patterns.waste[n]),
        laid.clashes + int(day.clashes[n]),
        laid.counts + int(patterns.counts[n]),
    )


def _left(asked: Asked, days: Sequence[OpenDay], branch: _Branch, n: int, laid: Laid) -> list[OpenDay] | None:
    """What the other days can hold beside it; `None` where one can hold nothing, or something needed has no day."""
    now = branch.day
    muscles, groups = int(now.patterns.muscles[n]), int(now.patterns.groups[n])
    spare = asked.spare - laid.waste
    left, can = [], laid.used
    for day in days:
        fit = ((day.patterns.groups & laid.used) == 0) & (day.patterns.waste <= spare)
        clashes = day.clashes
        if asked.clashes is None:
            if branch.ordered and asked.rooms[day.place] == asked.rooms[now.place]:  # days alike
                fit &= day.patterns.groups >= groups
        elif _are_near(asked, day, now):
            clashes = clashes + np.bitwise_count(day.patterns.muscles & muscles)
        if asked.clashes is not None:
            fit &= clashes <= asked.clashes - laid.clashes
        if not fit.any():
            return None
        left.append(OpenDay(day.place, day.patterns.only(fit), clashes[fit]))
        can |= int(np.bitwise_or.reduce(left[-1].patterns.groups))
    if _needed(asked, laid) & ~can:
        return None
    least = sum(int(day.patterns.waste.min()) for day in left)
    return left if least <= spare else None


def _last_two(asked: Asked, one: OpenDay, other: OpenDay, laid: Laid, goes_on: Callable[[], bool]) -> Laid | None:
    """The last two days: of what is needed, the one holds what the other doesn't."""
    needed = _needed(asked, laid)
    key = other.patterns.groups & needed
    order = np.argsort(key, kind="stable")
    key, wanted = key[order], needed & ~one.patterns.groups
    first = np.searchsorted(key, wanted, "left")
    counts = np.searchsorted(key, wanted, "right") - first
    after = np.cumsum(counts)
    for until in range(_AT_ONCE, int(counts.sum()) + _AT_ONCE, _AT_ONCE):
        if until > _AT_ONCE and not goes_on():
            raise LateError
        rows = np.flatnonzero((after > until - _AT_ONCE) & (after <= until) & (counts > 0))
        a = np.repeat(rows, counts[rows])
        b = np.arange(len(a)) - np.repeat(np.cumsum(counts[rows]) - counts[rows], counts[rows])
        b = order[b + np.repeat(first[rows], counts[rows])]
        fit = np.flatnonzero(_fit(asked, (one, other), laid, a, b))
        if len(fit):
            return _with(_with(laid, one, int(a[fit[0]])), other, int(b[fit[0]]))
    return None


def _fit(asked: Asked, days: tuple[OpenDay, OpenDay], laid: Laid, a: Whole, b: Whole) -> NDArray[np.bool_]:
    """Which of these pairs of patterns go together and make the week whole."""
    one, other = days
    fit: NDArray[np.bool_] = (one.patterns.groups[a] & other.patterns.groups[b]) == 0
    fit &= one.patterns.waste[a] + other.patterns.waste[b] <= asked.spare - laid.waste
    if asked.clashes is not None:
        clashes = one.clashes[a] + other.clashes[b]
        if _are_near(asked, one, other):
            clashes = clashes + np.bitwise_count(one.patterns.muscles[a] & other.patterns.muscles[b])
        fit &= clashes <= asked.clashes - laid.clashes
    kept = one.patterns.counts[a] + other.patterns.counts[b] + laid.counts
    for n in range(len(PRIORITIES)):
        fit &= (kept >> (COUNT_BITS * n) & ((1 << COUNT_BITS) - 1)) >= asked.keep[n]
    return fit


def _are_near(asked: Asked, one: OpenDay, other: OpenDay) -> bool:
    return (min(one.place, other.place), max(one.place, other.place)) in asked.grid.near


def _is_whole(asked: Asked, laid: Laid) -> bool:
    """Whether all is there that was asked."""
    kept = (laid.counts >> (COUNT_BITS * n) & ((1 << COUNT_BITS) - 1) for n in range(len(PRIORITIES)))
    if asked.clashes is not None and laid.clashes > asked.clashes:
        return False
    return not _needed(asked, laid) and all(n >= keep for n, keep in zip(kept, asked.keep, strict=True))
