"""A better week than the one there is, place by place of its worth, until it is proven that there is none.

Two ways to look. All patterns of a day that waste little (`week_exact`): few near what can't be beaten, so what is
asked there is settled at once; the longest day is therefore asked about from below. Rows in whole numbers for the
solver (`week_model`) where the days have so much room, or the week so many items, that the patterns are too many.
"""

from collections.abc import Callable
from dataclasses import dataclass

from bot.training.week_asked import Asked
from bot.training.week_exact import lay_exactly
from bot.training.week_grid import PRIORITIES, Grid, Lay
from bot.training.week_model import CLASHES, LEVELS, LONGEST, ask_better
from bot.training.week_relay import settle
from bot.training.week_solver import Impossible, Unknown

__all__ = ["LEVELS", "Quest"]

_EXACT_SHARE = 0.75
"""The part of the time that is left which one search through the patterns may take."""


@dataclass(frozen=True, slots=True)
class Quest:
    """The week, and the time to be done (of `clock`, seconds)."""

    grid: Grid
    until: float
    clock: Callable[[], float]

    def best_at(self, lay: Lay, level: int) -> tuple[Lay, bool]:
        """Make one place of the worth as small as can be, the places before it held; and whether that is proven."""
        least = self._bound(lay, level)
        if level == LONGEST:
            lay, least = self._shortened(lay, least)
        while True:
            worth = self.grid.worth(lay)
            if worth[level] <= least:
                return lay, True
            found = Unknown() if level == LONGEST else self._exactly(lay, level)
            if isinstance(found, Unknown) and self._left_s() > 0:
                found = ask_better(self.grid, worth, level, limit_s=self._left_s())
            match found:
                case Impossible():
                    return lay, True
                case Unknown():
                    return lay, False
                case Lay():
                    lay = self._settled(found, lay)

    def _left_s(self) -> float:
        return self.until - self.clock()

    def _bound(self, lay: Lay, level: int) -> int:
        """What a place of the worth can't go under, the places before it held."""
        lost = self.grid.worth(lay)[: len(PRIORITIES)]
        if level < len(PRIORITIES):
            return self.grid.least_lost(PRIORITIES[level], lost)
        return self.grid.shortest(lost) if level == LONGEST else self.grid.behind

    def _exactly(self, lay: Lay, level: int) -> Lay | Impossible | Unknown:
        """One less at this place, through the patterns."""
        worth = self.grid.worth(lay)
        if level == CLASHES:
            return self._ask(Asked(self.grid, worth[: len(PRIORITIES)], max(self.grid.room), worth.clashes - 1))
        return self._ask(Asked(self.grid, (*worth[:level], worth[level] - 1), max(self.grid.room)))

    def _ask(self, asked: Asked) -> Lay | Impossible | Unknown:
        until = self.clock() + self._left_s() * _EXACT_SHARE
        return lay_exactly(asked, goes_on=lambda: self.clock() < until)

    def _shortened(self, lay: Lay, least: int) -> tuple[Lay, int]:
        """A shorter longest day, and the units that it is proven to take at least: asked about from there, in steps
        that double, and between what can't and what can be by halves."""
        worth = self.grid.worth(lay)
        unit, step = self.grid.unit(worth[: len(PRIORITIES)]), 0
        while least < worth.longest:
            longest = min(least + unit * step, worth.longest - unit)
            match self._ask(Asked(self.grid, worth[: len(PRIORITIES)], longest, worth.clashes)):
                case Unknown():
                    break
                case Impossible():
                    least, step = longest + unit, 2 * step + 1
                case found:
                    lay, worth = found, self.grid.worth(found)
                    step = (worth.longest - least) // unit // 2
        return lay, least

    def _settled(self, found: Lay, before: Lay) -> Lay:
        """What was found, with what was not asked about made good by the search."""

        def search(lay: Lay) -> Lay:
            until = self.clock() + self._left_s() * 0.2
            return settle(self.grid, lay, self.grid.unbeatable, goes_on=lambda: self.clock() < until)

        return min((search(found), search(self.grid.fill(found.places)), before), key=self.grid.worth)
