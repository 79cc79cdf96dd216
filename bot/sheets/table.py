"""Sheets as values: what stands in each cell, and what kind of cell it is; nothing of how it looks."""

from dataclasses import dataclass
from enum import StrEnum


class Kind(StrEnum):
    """What kind of cell it is; a text file has texts only."""

    TEXT = "text"
    NUMBER = "number"
    PERCENT = "percent"
    """A number shown as percent; its text is the number of percent."""
    DATE = "date"
    """A day (`text` in ISO form): often a range that the spreadsheet program took for one."""
    CLOCK = "clock"
    """A time of day."""
    FORMULA = "formula"
    """Never worked out, and what the file says of its value is not believed."""
    FAULT = "fault"
    """An error value of the spreadsheet program."""


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell: its text without spaces around it, and its kind."""

    text: str
    kind: Kind = Kind.TEXT


NO_CELL = Cell("")


@dataclass(frozen=True, slots=True)
class Row:
    """A row that holds something; `number` is the one that a spreadsheet program shows, `cells` from the first on."""

    number: int
    cells: tuple[Cell, ...]
    hidden: bool = False

    def cell(self, column: int) -> Cell:
        """The cell of this column (from 0); an empty one where the row ends before it."""
        return self.cells[column] if column < len(self.cells) else NO_CELL


@dataclass(frozen=True, slots=True)
class Table:
    """A sheet, or a part of a text file: its rows that hold something, in order. `part`: where it lies in the file."""

    name: str
    rows: tuple[Row, ...]
    part: str = ""


@dataclass(frozen=True, slots=True)
class Book:
    """A file that was read; `unread` names sheets that are none of ours."""

    tables: tuple[Table, ...]
    unread: tuple[str, ...] = ()
