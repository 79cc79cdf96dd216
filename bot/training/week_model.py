"""The question whether a week can be laid better than this, as rows in whole numbers for the solver.

One place of the worth (sets lost by priority, clashes, longest day) is asked to be smaller, with the places before it
held where they are. A "no" is the proof that this place is as small as can be.

Columns: a group stands on a day (0 or 1); sets kept of an item on a day, where its priority loses sets; a muscle is
worked on a weekday; two weekdays clash.
"""

from dataclasses import dataclass

import numpy as np

from bot.training.week_grid import PRIORITIES, Grid, Lay, Worth
from bot.training.week_solver import Impossible, Programme, Term, Unknown, Values, satisfy

CLASHES, LONGEST = 3, 4
LEVELS = (0, 1, 2, CLASHES, LONGEST)
"""Places of `Worth`, in the order in which they are asked about."""


def ask_better(grid: Grid, worth: Worth, level: int, *, limit_s: float) -> Lay | Impossible | Unknown:
    """A way to lay the week whose worth is smaller at this place and no larger at those before it."""
    columns = _draft(grid, worth, level)
    match satisfy(columns.programme, limit_s=limit_s):
        case Impossible() as never:
            return never
        case Unknown() as unknown:
            return unknown
        case values:
            lay = columns.lay(grid, values)
            is_better = grid.is_allowed(lay) and grid.worth(lay)[: level + 1] < worth[: level + 1]
            return lay if is_better else Unknown()


@dataclass(frozen=True, slots=True)
class _Columns:
    """A programme, and where its columns stand: groups by day, and the sets of an item by day."""

    programme: Programme
    stands: tuple[tuple[int, ...], ...]
    kept: tuple[tuple[Term, ...], ...]

    def lay(self, grid: Grid, values: Values) -> Lay:
        """The way that the columns' values tell."""
        places = tuple(int(np.argmax(values[list(row)])) for row in self.stands)
        kept = []
        for k, row in enumerate(self.kept):
            column, sets = row[places[grid.group[k]]]
            kept.append(round(float(values[column]) * sets))
        return Lay(places, tuple(kept))


def _draft(grid: Grid, worth: Worth, level: int) -> _Columns:
    programme = Programme()
    days = range(len(grid.room))
    stands = tuple(tuple(programme.column(0, 1) for _ in days) for _ in grid.members)
    for row in stands:
        programme.row([(column, 1) for column in row], least=1, most=1)
    most_lost = [lost - (at == level) for at, lost in enumerate(worth[: len(PRIORITIES)])]
    known = min(level + 1, len(PRIORITIES))
    kept = tuple(
        _kept(grid, programme, stands[grid.group[k]], k, whole=p <= known and most_lost[p - 1] == 0)
        for k, p in enumerate(grid.priority)
    )
    for priority in PRIORITIES[:known]:
        if most_lost[priority - 1]:
            terms = [term for k, row in enumerate(kept) if grid.priority[k] == priority for term in row]
            programme.row(terms, least=grid.wanted(priority) - most_lost[priority - 1])
    longest = worth.longest - grid.unit(worth) if level == LONGEST else max(grid.room)
    for day in days:
        load = [(row[day][0], row[day][1] * grid.cost[k] / grid.scale) for k, row in enumerate(kept)]
        programme.row(load, most=min(grid.room[day], longest) / grid.scale)
    if level >= CLASHES:
        _clashes(grid, programme, kept, most=worth.clashes - (level == CLASHES))
    return _Columns(programme, stands, kept)


def _kept(grid: Grid, programme: Programme, stands: tuple[int, ...], item: int, *, whole: bool) -> tuple[Term, ...]:
    """The terms for an item's sets on each day: all of them where its group stands, or as many as are kept there."""
    sets = grid.sets[item]
    if whole or sets == 0:
        return tuple((column, sets) for column in stands)
    terms = []
    for column in stands:
        kept = programme.column(0, sets)
        programme.row([(kept, 1), (column, -sets)], most=0)
        terms.append((kept, 1.0))
    return tuple(terms)


def _clashes(grid: Grid, programme: Programme, kept: tuple[tuple[Term, ...], ...], *, most: int) -> None:
    """No more clashes than this. What is behind us stands; it can clash, but not be moved."""
    if not grid.near:
        return
    muscles = range(grid.muscle_count)
    worked = [[programme.column(mask >> m & 1, 1) for mask in grid.worked] for m in muscles]
    for k, row in enumerate(kept):
        for m in muscles:
            if grid.muscles[k] >> m & 1 and grid.sets[k]:
                for day, (column, sets) in enumerate(row):
                    programme.row([(column, sets), (worked[m][day], -grid.sets[k])], most=0)
    clash = []
    for m in muscles:
        for a, b in grid.near:
            clash.append(programme.column(0, 1, whole=False))
            programme.row([(clash[-1], 1), (worked[m][a], -1), (worked[m][b], -1)], least=-1)
    programme.row([(column, 1) for column in clash], most=most)
