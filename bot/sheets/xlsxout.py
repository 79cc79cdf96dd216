"""Our sheets as a workbook that reads and prints well: frozen headings, widths, drop-down lists, text columns.

Columns are of the text kind, so that no spreadsheet program makes a day of `8-10`; texts are written as texts, never as
formulas.
"""

import io
import re
from collections.abc import Sequence

from openpyxl import Workbook
from openpyxl.cell.cell import Cell
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.properties import PageSetupProperties
from openpyxl.worksheet.worksheet import Worksheet

from bot.sheets.cells import YES_NO
from bot.sheets.grids import Grid, Value
from bot.sheets.known import EQUIPMENT, Known
from bot.sheets.layout import ABOUT, EXERCISES, EXPLANATIONS, LISTS, PROGRAMME, TARGETS, WEEKS, SheetLayout, layouts
from bot.training.plan import Region
from bot.training.shown import MEASURES, RULES, STYLES

INK, PAPER, BAND = "FF1F2A44", "FFFFFFFF", "FFEEF1F6"
LAST_LISTED_ROW = 500
"""Drop-down lists reach down to here."""
_LITERAL_ESCAPE = re.compile("_(?=x[0-9A-Fa-f]{4}_)")
_HEAD = Font(bold=True, color=PAPER)
_HEAD_FILL = PatternFill("solid", start_color=INK, end_color=INK)
_START_FILL = PatternFill("solid", start_color=BAND, end_color=BAND)
_RULE = Border(bottom=Side("thin", color="FFB9C0CE"))
_START_RULE = Border(top=Side("medium", color=INK), bottom=Side("thin", color="FFB9C0CE"))
_TOP = Alignment(vertical="top", wrap_text=True)


def show_xlsx(grids: Sequence[Grid], known: Known) -> bytes:
    """The file, with explanations and the lists that drop down."""
    book = Workbook()
    book.remove(book.worksheets[0])
    for grid in grids:
        _sheet(book, layouts()[grid.sheet], grid)
    _explain(book)
    lists = _lists(book, known)
    for sheet, columns in _CHOICES.items():
        for key, name in columns.items():
            _drop_down(book[layouts()[sheet].name], layouts()[sheet], key, lists[name])
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def put(cell: Cell, value: Value) -> None:
    """A text as a text, a number as a number. An underscore that would begin a character's number is written as one."""
    if isinstance(value, int):
        cell.value = value
    elif value:
        cell.value = _LITERAL_ESCAPE.sub("_x005F_", value)
        cell.data_type = "s"
        cell.number_format = "@"
        if value[0] in "=+-@'":
            cell.quotePrefix = True


def _sheet(book: Workbook, layout: SheetLayout, grid: Grid) -> None:
    sheet = book.create_sheet(layout.name)
    _head(sheet, [(column.heading, column.width) for column in layout.columns])
    for number, row in enumerate(grid.rows, start=2):
        begins = number - 2 in grid.starts
        for place, value in enumerate(row, start=1):
            cell = sheet.cell(number, place)
            put(cell, value)
            cell.alignment = _TOP
            cell.border = _START_RULE if begins else _RULE
            if begins:
                cell.fill = _START_FILL
    sheet.freeze_panes = "D2" if grid.sheet == PROGRAMME else "A2"


def _head(sheet: Worksheet, columns: Sequence[tuple[str, int]]) -> None:
    """Headings, widths, and how it prints: A4 across, as wide as the page, the headings on each."""
    for place, (heading, width) in enumerate(columns, start=1):
        cell = sheet.cell(1, place, heading)
        cell.font, cell.fill = _HEAD, _HEAD_FILL
        cell.alignment = Alignment(vertical="center", wrap_text=True)
        column = sheet.column_dimensions[get_column_letter(place)]
        column.width = width
        column.number_format = "@"
    sheet.row_dimensions[1].height = 32
    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.paperSize = 9
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)
    sheet.print_title_rows = "1:1"
    sheet.page_margins.left = sheet.page_margins.right = 0.4
    if sheet.oddFooter is not None:
        sheet.oddFooter.center.text = "&A, &P / &N"


def _explain(book: Workbook) -> None:
    sheet = book.create_sheet(layouts()[EXPLANATIONS].name)
    _head(sheet, [("Sheet", 14), ("Column", 20), ("What it means", 90), ("Such as", 34)])
    number = 2
    for key in (PROGRAMME, WEEKS, TARGETS, EXERCISES, ABOUT):
        layout = layouts()[key]
        rows = [(layout.name, "", layout.about, "")]
        rows += [("", column.heading, column.about, column.example) for column in layout.rows or layout.columns]
        for row in rows:
            for place, text in enumerate(row, start=1):
                cell = sheet.cell(number, place)
                put(cell, text)
                cell.alignment, cell.border = _TOP, _RULE
                cell.font = Font(bold=bool(row[0]) or place == 2)
            number += 1
    sheet.freeze_panes = "A2"


_CHOICES = {
    PROGRAMME: {"exercise": "exercise", "sides": "yes or no", "rule": "load rule", "priority": "priority"},
    WEEKS: {"exercise": "exercise"},
    TARGETS: {"muscle": "muscle"},
    EXERCISES: {
        "region": "region",
        "equipment": "equipment",
        "style": "load means",
        "sides": "yes or no",
        "measure": "counted in",
    },
}
"""Which list drops down in which column."""


def _lists(book: Workbook, known: Known) -> dict[str, str]:
    """The lists' own sheet; by name, the cells where each stands."""
    lists = {
        "exercise": known.names,
        "muscle": known.muscles,
        "load rule": tuple(RULES.values()),
        "priority": ("1", "2", "3"),
        "yes or no": tuple(YES_NO),
        "region": tuple(region.value for region in Region),
        "equipment": EQUIPMENT,
        "load means": tuple(STYLES.values()),
        "counted in": tuple(MEASURES.values()),
    }
    layout = layouts()[LISTS]
    sheet = book.create_sheet(layout.name)
    _head(sheet, [(name, 24) for name in lists])
    places: dict[str, str] = {}
    for place, (name, values) in enumerate(lists.items(), start=1):
        for number, value in enumerate(values, start=2):
            put(sheet.cell(number, place), value)
        letter = get_column_letter(place)
        places[name] = f"'{layout.name}'!${letter}$2:${letter}${len(values) + 1}"
    sheet.freeze_panes = "A2"
    return places


def _drop_down(sheet: Worksheet, layout: SheetLayout, key: str, cells: str) -> None:
    """A list that offers and does not insist: own exercises and muscles may be typed."""
    place = [column.key for column in layout.columns].index(key) + 1
    letter = get_column_letter(place)
    rule = DataValidation(type="list", formula1=cells, allow_blank=True, showErrorMessage=False)
    rule.promptTitle, rule.prompt, rule.showInputMessage = (
        layout.column(key).heading,
        layout.column(key).about[:250],
        True,
    )
    sheet.add_data_validation(rule)
    rule.add(f"{letter}2:{letter}{LAST_LISTED_ROW}")
