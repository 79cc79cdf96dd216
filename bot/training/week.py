"""A week's work laid over the days that there are, as well as can be, with proof where there is time for it.

Each of these goes before the next: what is allowed (an item on one day, partners on the same, nothing over the day's
minutes, sets cut but never added); the most sets of priority 1 kept, then of 2, then of 3; the fewest clashes (a muscle
worked directly on two days nearer than the rest asked for, the week repeating); the shortest longest day.

A search finds a good week (`week_relay`); where it doesn't reach what can't be beaten anyway (`week_grid`), a better
one is looked for, place by place, until it is proven that there is none (`week_better`).
"""

from collections.abc import Callable

from bot.training.week_better import LEVELS, Quest
from bot.training.week_grid import Grid, grid_of
from bot.training.week_relay import search
from bot.training.week_values import TIME_LIMIT_S, Laying, Week, check_week

_SEARCH_SHARE = 0.25
"""The part of the time that the search may take."""


def lay_week(week: Week, *, clock: Callable[[], float], time_limit_s: float = TIME_LIMIT_S) -> Laying:
    """The best way to lay the week; `proven` where none is better. `clock` tells seconds, and only differences count.

    The same week gives the same answer, unless the time runs out: how far it got then depends on the machine.
    `ValueError` where the week has problems (`check_week`).
    """
    if problems := check_week(week):
        raise ValueError(f"the week has problems: {problems}")
    start = clock()
    grid = grid_of(week)
    if not grid.room or not grid.sets:
        return _nothing(grid)

    def left_s(share: float = 1.0) -> float:
        return time_limit_s * share - (clock() - start)

    lay = search(grid, grid.unbeatable, goes_on=lambda: left_s(_SEARCH_SHARE) > 0)
    proven = True
    for level in LEVELS:
        until = clock() + (left_s() if level == LEVELS[-1] else left_s() * 0.6)
        lay, surely = Quest(grid, until, clock).best_at(lay, level)
        proven = proven and surely
    places = tuple(lay.places[grid.group[k]] if kept else None for k, kept in enumerate(lay.kept))
    return Laying(lay.kept, places, grid.worth(lay).clashes, proven)


def _nothing(grid: Grid) -> Laying:
    """No days or no work: nothing is laid, and nothing could be."""
    return Laying(tuple(0 for _ in grid.sets), tuple(None for _ in grid.sets), grid.behind, proven=True)
