"""Files as people save them: encodings, delimiters, headings, kinds of cells; checked against a library's reading."""

import io
from datetime import date, datetime, time
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import Workbook, load_workbook

from bot.sheets.opening import open_book
from bot.sheets.problems import Fault, Problem
from bot.sheets.reading import read_programme
from bot.sheets.styles import kind_of
from bot.sheets.table import Cell, Kind, Table
from bot.training.people import Programme
from bot.training.units import Load, Unit
from tests.sheets.books import HEADINGS, ROW, csv_of, raw_xlsx, row_xml, saved, sheet_xml, xlsx_of


def read(data: bytes, name: str = "a.csv") -> Programme:
    """The programme; fails where there is none."""
    programme, problems = read_programme(data, name)
    assert programme is not None, problems
    return programme


def table_of(data: bytes, name: str = "a.xlsx") -> Table:
    """The first sheet."""
    opened = open_book(data, name)
    assert not isinstance(opened, Problem), opened
    return opened.book.tables[0]


PLAIN = read(csv_of(ROW))
SEMI = csv_of(("A", "Back squat", 3, "5-8", "RIR 1,5", "62,5 kg", "120 s"), delimiter=";").decode()


@pytest.mark.parametrize(
    "data",
    [
        csv_of(ROW),
        b"\xef\xbb\xbf" + csv_of(ROW),
        csv_of(ROW).decode().encode("utf-16"),
        csv_of(ROW).decode().encode("utf-16-le"),
        csv_of(ROW).decode().encode("utf-16-be"),
        csv_of(ROW, delimiter=";"),
        csv_of(ROW, delimiter="\t"),
        csv_of(ROW, delimiter="|"),
        b"sep=;\r\n" + csv_of(ROW, delimiter=";"),
        csv_of(ROW).replace(b"\r\n", b"\n"),
        csv_of(ROW).replace(b"\r\n", b"\r"),
        csv_of(("",) * 7, ROW, ("", " ", ""), ()),
        csv_of(tuple(f" {value}  " for value in ROW)),
        csv_of(ROW, headings=[h.upper() for h in HEADINGS]),
        csv_of(
            ROW,
            headings=(
                "Session",
                "exercise name",
                "sets",
                "Rep range",
                "Effort",
                "Weight",
                "Rest (s)",
            ),
        ),
        csv_of(HEADINGS, ROW, headings=("My plan", "", "for spring")),
        csv_of((*ROW, "Back squat is fine"), headings=(*HEADINGS, "Remarks")),
    ],
)
def test_the_same_rows_however_they_are_saved(data: bytes) -> None:
    """Encodings, marks, delimiters, line ends, blank rows, spaces, other headings, a title above, our own remarks."""
    assert read(data) == PLAIN


def test_a_decimal_comma_beside_semicolons() -> None:
    """As programs of half of Europe save it."""
    planned = read(SEMI.encode()).workouts[0].exercises[0].sets[0]
    assert (planned.rir, planned.load) == (Decimal("1.5"), Load(62_500, Unit.KG))


def test_a_workbook_says_the_same_as_a_text_file() -> None:
    """Numbers as numbers or as texts."""
    assert read(xlsx_of(ROW), "a.xlsx") == PLAIN
    assert read(xlsx_of([str(value) for value in ROW]), "a.xlsx") == PLAIN


def test_a_day_that_was_a_range_is_explained() -> None:
    """Typed 8-10, kept as the eighth of October (or the tenth of August): both are told as 8-10 and never taken."""
    for day in (date(2026, 10, 8), datetime(2026, 8, 10)):
        _, problems = read_programme(xlsx_of(("A", "Back squat", 3, day)), "a.xlsx")
        assert [(p.fault, p.row, p.column, p.write) for p in problems] == [(Fault.DATE, 2, "Repetitions", "8-10")]
    _, problems = read_programme(xlsx_of(("A", "Back squat", 3, "8", "", "", time(1, 30))), "a.xlsx")
    assert [(p.fault, p.column) for p in problems] == [(Fault.CLOCK, "Rest")]


def test_a_percent_cell_is_a_percentage() -> None:
    """0.85 shown as 85 % is 85; shown as 0.85 it is asked about."""
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(["Exercise", "Sets", "Repetitions", "Percent of top set"])
    sheet.append(["Back squat", 1, 5, None])
    sheet.append([None, 2, 8, 0.85])
    sheet["D3"].number_format = "0%"
    assert read(saved(book), "a.xlsx").workouts[0].exercises[0].sets[1].percent == 85
    sheet["D3"].number_format = "0.00"
    _, problems = read_programme(saved(book), "a.xlsx")
    assert [(p.fault, p.write) for p in problems] == [(Fault.BARE_SHARE, "85 %")]


@pytest.mark.parametrize(
    ("number", "code", "kind"),
    [
        (0, "", Kind.NUMBER),
        (14, "", Kind.DATE),
        (16, "", Kind.DATE),
        (17, "", Kind.DATE),
        (20, "", Kind.CLOCK),
        (9, "", Kind.PERCENT),
        (10, "", Kind.PERCENT),
        (49, "", Kind.NUMBER),
        (164, "dd/mm/yyyy", Kind.DATE),
        (164, "[$-409]d-mmm;@", Kind.DATE),
        (164, "mmm-yy", Kind.DATE),
        (164, "h:mm", Kind.CLOCK),
        (164, "[h]:mm:ss", Kind.CLOCK),
        (164, "mm:ss", Kind.CLOCK),
        (164, "0.0%", Kind.PERCENT),
        (164, '0.0" kg"', Kind.NUMBER),
        (164, '0 "days"', Kind.NUMBER),
        (164, "#,##0.00", Kind.NUMBER),
        (164, "General", Kind.NUMBER),
        (164, "@", Kind.NUMBER),
        (164, "[Red]0.00", Kind.NUMBER),
    ],
)
def test_what_a_number_format_shows(number: int, code: str, kind: Kind) -> None:
    """ECMA-376 part 1, 18.8.30 (numbers with a meaning of their own) and 18.8.31 (codes)."""
    assert kind_of(number, code) is kind


Value = str | int | float | date | None
VALUES: st.SearchStrategy[Value] = (
    st.none()
    | st.integers(-(10**9), 10**9)
    | st.floats(-1e6, 1e6).map(lambda x: round(x, 3))
    | st.booleans()
    | st.text(st.characters(codec="utf-8", exclude_categories=("Cc", "Cs", "Cn", "Co")), max_size=20)
    | st.dates(date(1950, 1, 1), date(2090, 1, 1))
)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.lists(VALUES, min_size=1, max_size=6), min_size=1, max_size=8))
def test_cells_are_read_as_an_independent_library_reads_them(rows: list[list[Value]]) -> None:
    """openpyxl writes and reads back; our own reading of its bytes must say the same of every cell."""
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    for number, row in enumerate(rows, start=1):
        for place, value in enumerate(row, start=1):
            cell = sheet.cell(number, place)
            cell.value = value
            if isinstance(value, str):
                cell.data_type = "s"
    data = saved(book)
    again = load_workbook(io.BytesIO(data)).worksheets[0]
    ours = {(r.number, n): c for r in table_of(data).rows for n, c in enumerate(r.cells, 1) if c != Cell("")}
    theirs = {(c.row, c.column): _as_ours(c.value) for row in again for c in row}
    assert ours == {place: cell for place, cell in theirs.items() if cell != Cell("")}


def _as_ours(value: object) -> Cell:
    match value:
        case None:
            return Cell("")
        case bool():
            return Cell("yes" if value else "no")
        case datetime():
            return Cell(value.date().isoformat(), Kind.DATE)
        case int() | float():
            exact = Decimal(f"{Decimal(repr(value)):.12g}")
            return Cell(str(int(exact)) if exact == int(exact) else f"{exact.normalize():f}", Kind.NUMBER)
        case _:
            return Cell(str(value).replace("\u00a0", " ").strip(" \n\t\u200b\ufeff"))


def test_other_programs_workbooks() -> None:
    """A prefix for every element, cells without places, rich text, readings beside it, dates counted from 1904."""
    main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
    sheet = (
        f'<x:worksheet xmlns:x="{main}"><x:sheetData><x:row><x:c t="s"><x:v>0</x:v></x:c><x:c/>'
        '<x:c t="s"><x:v>1</x:v></x:c></x:row><x:row r="4"><x:c r="B4" t="d"><x:v>2026-10-08T00:00:00</x:v></x:c>'
        '<x:c t="e"><x:v>#N/A</x:v></x:c><x:c><x:v>1E1</x:v></x:c></x:row></x:sheetData></x:worksheet>'
    )
    texts = (
        f'<sst xmlns="{main}"><si><r><t>Ex</t></r><r><t xml:space="preserve">er </t></r></si>'
        "<si><t>Se_x0074_s</t><rPh><t>reading</t></rPh></si></sst>"
    )
    assert [(row.number, row.cells) for row in table_of(raw_xlsx(sheet, texts=texts)).rows] == [
        (1, (Cell("Exer"), Cell(""), Cell("Sets"))),
        (4, (Cell(""), Cell("2026-10-08", Kind.DATE), Cell("#N/A", Kind.FAULT), Cell("10", Kind.NUMBER))),
    ]


def test_a_sheet_by_another_name_is_found() -> None:
    """The first that is none of ours is the programme where no sheet is called so; others are told of."""
    book = load_workbook(io.BytesIO(xlsx_of(ROW)))
    book.worksheets[0].title = "Spring block"
    book.create_sheet("Diary").append(["private"])
    programme, problems = read_programme(saved(book), "a.xlsx")
    assert programme is not None
    assert programme.workouts == PLAIN.workouts
    assert [(p.fault, p.found, p.stops) for p in problems] == [(Fault.SHEET_UNKNOWN, "Diary", False)]


def test_a_hidden_row_is_told() -> None:
    rows = row_xml(1, *HEADINGS) + row_xml(2, *map(str, ROW)).replace("<row ", '<row hidden="1" ')
    programme, problems = read_programme(raw_xlsx(sheet_xml(rows)), "a.xlsx")
    assert programme is not None
    assert [(p.fault, p.row, p.stops) for p in problems] == [(Fault.HIDDEN, 2, False)]
