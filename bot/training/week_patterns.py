"""What a single day of a week can hold so that no more is wasted than may be (`week_asked`).

Near what can't be beaten few patterns of a day waste so little. They are listed by halves that are put together:
Horowitz and Sahni 1974, Computing partitions with applications to the knapsack problem, J. ACM 21:277-292.
"""

from collections.abc import Sequence
from dataclasses import dataclass, fields
from math import prod

import numpy as np
from numpy.typing import NDArray

from bot.training.week_asked import Asked, Choice, choices_of

Whole = NDArray[np.int64]

MOST_PATTERNS = 250_000
"""Of a day, and of half of its groups: more are not listed. Listing so many takes some hundredths of a second."""
_MOST_CODE = 1 << 62


@dataclass(frozen=True, slots=True)
class Patterns:
    """What a day can hold: bits of its groups and of the muscles worked, units kept and wasted, sets by priority
    (packed), and which choice of each group it is, in two codes (`Listing.kept`)."""

    groups: Whole
    muscles: Whole
    units: Whole
    waste: Whole
    counts: Whole
    one: Whole
    other: Whole

    def only(self, these: NDArray[np.bool_] | Whole) -> "Patterns":
        """Some of them."""
        return Patterns(*(getattr(self, field.name)[these] for field in fields(self)))


@dataclass(frozen=True, slots=True)
class Half:
    """Half of the groups with the choices of each, and all that a day can hold of them."""

    groups: tuple[int, ...]
    choices: tuple[tuple[Choice, ...], ...]
    patterns: Patterns

    def chosen(self, code: int) -> dict[int, Choice]:
        """The choice of each group that is laid."""
        found = {}
        for group, choices in zip(self.groups, self.choices, strict=True):
            code, at = divmod(code, len(choices) + 1)
            if at:
                found[group] = choices[at - 1]
        return found


def halves(asked: Asked) -> tuple[Half, Half] | None:
    """What the widest day can hold of each half of the groups; `None` where that is too many."""
    choices = {g: tuple(choices_of(asked, members)) for g, members in enumerate(asked.grid.members)}
    laid = sorted((g for g in choices if choices[g]), key=lambda g: (-max(c.units for c in choices[g]), g))
    most = max(asked.rooms, default=0)
    found = []
    for groups in (laid[::2], laid[1::2]):
        of = tuple(choices[g] for g in groups)
        patterns = _half(groups, of, most=most, spare=asked.spare)
        if patterns is None:
            return None
        found.append(Half(tuple(groups), of, patterns))
    return found[0], found[1]


def _half(groups: Sequence[int], of: Sequence[tuple[Choice, ...]], *, most: int, spare: int) -> Patterns | None:
    """All that these groups give within a day's units and the spare."""
    if prod(len(choices) + 1 for choices in of) >= _MOST_CODE:
        return None
    nothing = np.zeros(1, dtype=np.int64)
    now, step = Patterns(*(nothing for _ in fields(Patterns))), 1
    for group, choices in zip(groups, of, strict=True):
        parts = [now]
        for at, choice in enumerate(choices, start=1):
            fit = now.only((now.units + choice.units <= most) & (now.waste + choice.waste <= spare))
            parts.append(
                Patterns(
                    fit.groups | (1 << group),
                    fit.muscles | choice.muscles,
                    fit.units + choice.units,
                    fit.waste + choice.waste,
                    fit.counts + choice.counts,
                    fit.one + at * step,
                    fit.other,
                )
            )
        step *= len(choices) + 1
        if sum(len(part.units) for part in parts) > MOST_PATTERNS:
            return None
        now = _joined(parts)
    return now


def _joined(parts: Sequence[Patterns]) -> Patterns:
    return Patterns(*(np.concatenate([getattr(part, field.name) for part in parts]) for field in fields(Patterns)))


def patterns_of(one: Patterns, other: Patterns, *, room: int, spare: int, by_muscles: bool) -> Patterns | None:
    """What a day of these units can hold and waste no more than the spare; of those with the same groups, sets kept
    and, where asked, muscles only one. `None` where that is too many. A pattern's waste counts the empty units too."""
    other = other.only(np.argsort(other.units - other.waste, kind="stable"))
    worth = other.units - other.waste
    first = np.searchsorted(worth, room - spare - (one.units - one.waste), "left")
    counts = np.maximum(0, np.searchsorted(worth, room - one.units, "right") - first)
    total = int(counts.sum())
    if total > MOST_PATTERNS:
        return None
    a = np.repeat(np.arange(len(counts)), counts)
    b = np.arange(total) - np.repeat(np.cumsum(counts) - counts, counts) + np.repeat(first, counts)
    units = one.units[a] + other.units[b]
    waste = room - units + one.waste[a] + other.waste[b]
    fit = (units <= room) & (waste <= spare)
    a, b, units, waste = a[fit], b[fit], units[fit], waste[fit]
    return _unlike(
        Patterns(
            one.groups[a] | other.groups[b],
            one.muscles[a] | other.muscles[b] if by_muscles else np.zeros(len(a), dtype=np.int64),
            units,
            waste,
            one.counts[a] + other.counts[b],
            one.one[a],
            other.one[b],
        )
    )


def _unlike(patterns: Patterns) -> Patterns:
    """One of those with the same groups, muscles and sets kept: which, is all the same."""
    order = np.lexsort((patterns.units, patterns.counts, patterns.muscles, patterns.groups))
    patterns = patterns.only(order)
    new = np.ones(len(order), dtype=np.bool_)
    if len(order):
        new[1:] = (np.diff(patterns.groups) != 0) | (np.diff(patterns.muscles) != 0) | (np.diff(patterns.counts) != 0)
    return patterns.only(new)
