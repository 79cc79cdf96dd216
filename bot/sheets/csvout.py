"""Our sheets as one text file: tables under each other, each begun by a row that names it."""

import csv
import io
from collections.abc import Iterable, Sequence

from bot.sheets.grids import Grid, Value
from bot.sheets.layout import PROGRAMME, layouts
from bot.sheets.plaintext import SHEET_MARK, Form

OURS = Form("utf-8-sig", ",")
"""With a mark at the beginning, so that spreadsheet programs take it for UTF-8."""


def show_csv(grids: Sequence[Grid], form: Form = OURS) -> bytes:
    """The file. The programme's table stands first and is not named; tables without rows are left out."""
    return encode(_rows(grids), form)


def encode(rows: Iterable[Sequence[Value]], form: Form) -> bytes:
    """Rows in this form."""
    out = io.StringIO()
    csv.writer(out, delimiter=form.delimiter, lineterminator="\r\n").writerows(rows)
    text, encoding = out.getvalue(), form.encoding
    if encoding in ("utf-16-le", "utf-16-be"):
        return text.encode(encoding)
    return text.encode("utf-16" if encoding == "utf-16" else encoding)


def _rows(grids: Sequence[Grid]) -> Iterable[Sequence[Value]]:
    for grid in grids:
        layout = layouts()[grid.sheet]
        if grid.sheet != PROGRAMME:
            if not grid.rows:
                continue
            yield ()
            yield (SHEET_MARK.title(), layout.name)
        yield tuple(column.heading for column in layout.columns)
        yield from grid.rows
