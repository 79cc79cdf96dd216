"""Whether days can be found that together hold what is asked: a search through all patterns of a day that waste little.

It is small where the spare is (`week_asked`), that is, near what can't be beaten, and so it proves there what the rows
of `week_model` prove badly.
"""

from collections.abc import Callable
from dataclasses import replace
from itertools import count

import numpy as np

from bot.training.week_asked import COUNT_BITS, Asked
from bot.training.week_grid import Lay
from bot.training.week_patterns import Half, Patterns, halves, patterns_of
from bot.training.week_solver import Impossible, Unknown
from bot.training.week_together import Laid, LateError, OpenDay, among

_MOST_GROUPS = 62
"""Bits of a whole number."""
_EVERY = 16
"""Patterns tried between two looks at the clock: two or three thousandths of a second."""


def lay_exactly(asked: Asked, *, goes_on: Callable[[], bool]) -> Lay | Impossible | Unknown:
    """A way to lay what is asked; `Impossible` where it is proven that there is none. `Unknown` where it is too much to
    search through, or `goes_on` says no more."""
    grid = asked.grid
    if asked.spare < 0:
        return Impossible()
    if sum(grid.sets) >> COUNT_BITS or len(grid.members) > _MOST_GROUPS or not goes_on():
        return Unknown()
    listed = halves(asked)
    days = None if listed is None else _days(asked, listed)
    if listed is None or days is None:
        return Unknown()
    base = sum((grid.worked[a] & grid.worked[b]).bit_count() for a, b in grid.near if min(a, b) >= len(days))
    tried = count()
    try:
        found = among(asked, days, Laid((), 0, 0, base, 0), lambda: next(tried) % _EVERY != 0 or goes_on())
    except LateError:
        return Unknown()
    return Impossible() if found is None else _lay(asked, listed, found)


def _days(asked: Asked, listed: tuple[Half, Half]) -> list[OpenDay] | None:
    """Each day with its patterns; `None` where they are too many."""
    by_room: dict[int, Patterns | None] = {}
    days = []
    for place, room in enumerate(asked.rooms):
        if room not in by_room:
            one, other = (half.patterns for half in listed)
            by_muscles = asked.clashes is not None
            by_room[room] = patterns_of(one, other, room=room, spare=asked.spare, by_muscles=by_muscles)
        patterns = by_room[room]
        if patterns is None:
            return None
        days.append(_start(asked, place, patterns))
    return days


def _start(asked: Asked, place: int, patterns: Patterns) -> OpenDay:
    """A day beside what is behind us."""
    worked = asked.grid.worked
    patterns = replace(patterns, muscles=patterns.muscles | worked[place])
    clashes = np.zeros(len(patterns.groups), dtype=np.int64)
    for a, b in asked.grid.near:
        if place in (a, b) and max(a, b) >= len(asked.rooms):
            clashes += np.bitwise_count(patterns.muscles & worked[max(a, b)])
    return OpenDay(place, patterns, clashes)


def _lay(asked: Asked, listed: tuple[Half, Half], laid: Laid) -> Lay:
    """The way that the patterns tell; what stands nowhere keeps nothing."""
    places, kept = [0] * len(asked.grid.members), [0] * len(asked.grid.sets)
    for place, one, other in laid.days:
        for group, choice in (listed[0].chosen(one) | listed[1].chosen(other)).items():
            places[group] = place
            for k, sets in zip(asked.grid.members[group], choice.kept, strict=True):
                kept[k] = sets
    return Lay(tuple(places), tuple(kept))
