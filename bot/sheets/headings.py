"""Which column is which: headings matched leniently, wherever the row of headings stands."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.sheets.layout import PROGRAMME, headings_of, layouts, plain_name
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import NO_CELL, Cell, Row, Table

LOOKED_AT = 20
"""Rows from the top in which the row of headings may stand."""
REMARKS = "Remarks"
"""Our own column in a file that goes back to its coach; read again, it is passed over."""


@dataclass(frozen=True, slots=True)
class Headed:
    """A sheet whose columns are known: `places` says in which column each key stands."""

    sheet: str
    name: str
    head: Row
    places: dict[str, int]
    rows: tuple[Row, ...]

    def cell(self, row: Row, key: str) -> Cell:
        """The cell of this row under this key's heading; an empty one where there is no such column."""
        place = self.places.get(key)
        return NO_CELL if place is None else row.cell(place)

    def heading(self, key: str) -> str:
        """The heading as it stands in the file; ours where the file has none."""
        place = self.places.get(key)
        return layouts()[self.sheet].column(key).heading if place is None else self.head.cell(place).text


def weigh(texts: Sequence[str]) -> int:
    """How many of these texts are headings of the programme, each once."""
    known = headings_of(PROGRAMME)
    return len({known[name] for text in texts if (name := plain_name(text)) in known})


def find_headings(table: Table, sheet: str, needed: Sequence[str]) -> tuple[Headed | None, list[Problem]]:
    """The sheet with its columns, and what is wrong with its headings; no sheet where needed ones are missing."""
    known, layout = headings_of(sheet), layouts()[sheet]
    head = max(table.rows[:LOOKED_AT], key=lambda row: _known(row, known), default=None)
    if head is None or _known(head, known) == 0:
        wanted = ", ".join(layout.column(key).heading for key in needed)
        return None, [Problem(Fault.NO_HEADINGS, "", wanted).at(table.name)]
    places: dict[str, int] = {}
    problems: list[Problem] = []
    for place, cell in enumerate(head.cells):
        key = known.get(plain_name(cell.text))
        if key is None:
            if cell.text and plain_name(cell.text) != plain_name(REMARKS):
                problems.append(Problem(Fault.COLUMN_UNKNOWN, cell.text, stops=False).at(table.name, head.number))
        elif key in places:
            problems.append(Problem(Fault.COLUMN_TWICE, cell.text).at(table.name, head.number, cell.text))
        else:
            places[key] = place
    missing = [layout.column(key).heading for key in needed if key not in places]
    problems += [Problem(Fault.NO_COLUMN, "", heading).at(table.name, head.number) for heading in missing]
    below = tuple(row for row in table.rows if row.number > head.number)
    return (None if missing else Headed(sheet, table.name, head, places, below)), problems


def _known(row: Row, known: dict[str, str]) -> int:
    return len({known[name] for cell in row.cells if (name := plain_name(cell.text)) in known})
