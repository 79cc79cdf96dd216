"""Takes values out of a sheet's rows, and gathers what is wrong with them, each with its place."""

from collections.abc import Callable, Iterator
from typing import TypeVar

from bot.sheets.headings import Headed
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Row

V = TypeVar("V")
MOST_PROBLEMS = 300
"""Of one sheet; a file with more is not a slip here and there."""


class Taking:
    """A sheet under way: its problems so far."""

    def __init__(self, headed: Headed) -> None:
        self.headed = headed
        self.problems: list[Problem] = []

    def take(self, row: Row, key: str, read: Callable[[Cell], V | Problem | None]) -> V | None:
        """The value of this row's cell; `None` where it is blank or wrong."""
        value = read(self.headed.cell(row, key))
        if isinstance(value, Problem):
            self.wrong(value, row, key)
            return None
        return value

    def need(self, row: Row, key: str, read: Callable[[Cell], V | Problem | None], example: str) -> V | None:
        """As `take`; a blank cell is wrong as well."""
        value = read(self.headed.cell(row, key))
        if value is None:
            value = Problem(Fault.BLANK, "", example)
        if isinstance(value, Problem):
            self.wrong(value, row, key)
            return None
        return value

    def wrong(self, problem: Problem, row: Row, key: str = "") -> None:
        """One more problem, there."""
        self.problems.append(problem.at(self.headed.name, row.number, self.headed.heading(key) if key else ""))

    def rows(self, most: int) -> Iterator[Row]:
        """The rows that say anything. It ends after so many, or so many problems, and says so: more helps nobody."""
        told = 0
        for row in self.headed.rows:
            if not self.has_any(row):
                continue
            told += 1
            if told > most:
                self.wrong(Problem(Fault.TOO_MANY, str(len(self.headed.rows)), str(most)), row)
                return
            if sum(problem.stops for problem in self.problems) >= MOST_PROBLEMS:
                self.wrong(Problem(Fault.AND_MORE, str(MOST_PROBLEMS)), row)
                return
            yield row

    def is_blank(self, row: Row, key: str) -> bool:
        """Whether nothing stands there."""
        cell = self.headed.cell(row, key)
        return cell == Cell("")

    def has_any(self, row: Row) -> bool:
        """Whether anything stands in a column that we know."""
        return any(not self.is_blank(row, key) for key in self.headed.places)
