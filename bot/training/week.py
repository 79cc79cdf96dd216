"""A week's work laid over the days that there are, as well as can be, with proof where there is time for it.

Each of these goes before the next: what is allowed (an item on one day, partners on the same, nothing over the day's
minutes, sets cut but never added); the most sets of priority 1 kept, then of 2, then of 3; the fewest clashes (a muscle
worked directly on two days nearer than the rest asked for, the week repeating); the shortest longest day.

A search finds a good week (`week_relay`); where it doesn't reach what can't be beaten anyway (`week_grid`), the solver
is asked, place by place, for a better one, until it proves that there is none (`week_model`).
"""

from collections.abc import Callable

from bot.training.week_grid import PRIORITIES, Grid, Lay, Worth, grid_of
from bot.training.week_model import LEVELS, ask_better
from bot.training.week_relay import search
from bot.training.week_solver import Impossible, Unknown
from bot.training.week_values import TIME_LIMIT_S, Laying, Week, check_week

_SEARCH_SHARE = 0.4
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

    lay = search(grid, _unbeatable(grid), goes_on=lambda: left_s(_SEARCH_SHARE) > 0)
    proven = True
    for level in LEVELS:
        limit_s = left_s() if level == LEVELS[-1] else left_s() * 0.6
        lay, surely = _best_at(grid, lay, level, until=clock() + limit_s, clock=clock)
        proven = proven and surely
    places = tuple(lay.places[grid.group[k]] if kept else None for k, kept in enumerate(lay.kept))
    return Laying(lay.kept, places, grid.worth(lay).clashes, proven)


def _best_at(grid: Grid, lay: Lay, level: int, *, until: float, clock: Callable[[], float]) -> tuple[Lay, bool]:
    """Make one place of the worth as small as can be, the places before it held; and whether that is proven."""
    while True:
        worth = grid.worth(lay)
        if worth[level] <= _bound(grid, level, worth):
            return lay, True
        limit_s = until - clock()
        if limit_s <= 0:
            return lay, False
        match ask_better(grid, worth, level, limit_s=limit_s):
            case Impossible():
                return lay, True
            case Unknown():
                return lay, False
            case found:
                lay = found


def _bound(grid: Grid, level: int, worth: Worth) -> int:
    """What a place of the worth can't go under, the places before it held."""
    lost = worth[: len(PRIORITIES)]
    if level < len(PRIORITIES):
        return grid.least_lost(PRIORITIES[level], lost)
    return grid.shortest(lost) if level == LEVELS[-1] else _behind(grid)


def _behind(grid: Grid) -> int:
    """Clashes of what is behind us: they stay."""
    return sum((grid.worked[a] & grid.worked[b]).bit_count() for a, b in grid.near)


def _unbeatable(grid: Grid) -> Worth:
    """A worth that no way to lay the week can beat."""
    lost: list[int] = []
    for priority in PRIORITIES:
        lost.append(grid.least_lost(priority, lost))
    return Worth(lost[0], lost[1], lost[2], _behind(grid), grid.shortest(lost))


def _nothing(grid: Grid) -> Laying:
    """No days or no work: nothing is laid, and nothing could be."""
    return Laying(tuple(0 for _ in grid.sets), tuple(None for _ in grid.sets), _behind(grid), proven=True)
