"""A text file (.csv) as plain sheets: UTF-8 or UTF-16, separated by comma, semicolon, tab or bar.

A file may hold several tables: a row `Sheet` with a name begins the next, so that a text file can say all that a
workbook can. Rows are numbered as a spreadsheet program numbers them: a cell with line breaks is one row.
"""

import csv
import io
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from bot.sheets.bounds import LONGEST_CELL, MOST_LINES, MOST_ROWS
from bot.sheets.problems import Fault, Refused
from bot.sheets.table import NO_CELL, Book, Cell, Kind, Row, Table
from bot.sheets.worksheet import Allowance, tidy

DELIMITERS = (",", ";", "\t", "|")
SHEET_MARK = "sheet"
"""The first cell of a row that begins a table; the second is its name."""
_LOOKED_AT = 20
"""Rows in which the delimiter is looked for."""


@dataclass(frozen=True, slots=True)
class Form:
    """How a text file is written: its encoding (of Python's names, BOM included) and delimiter."""

    encoding: str
    delimiter: str


def read_plaintext(data: bytes, weigh: Callable[[Sequence[str]], int], main_name: str) -> tuple[Book, Form]:
    """The tables and the form they came in. `weigh` says how many headings a row holds: the best delimiter wins."""
    encoding = encoding_of(data)
    text = _decoded(data, encoding)
    if text.count("\n") + text.count("\r") > MOST_LINES:
        raise Refused(Fault.TOO_MANY_ROWS, "", str(MOST_ROWS))
    form = Form(encoding, _delimiter(text, weigh))
    return _tables(_records(text, form.delimiter), main_name), form


def records_of(data: bytes, form: Form) -> list[list[str]]:
    """All rows of a file of this form, blank ones too, as they are written in it."""
    return _records(_decoded(data, form.encoding), form.delimiter)


def encoding_of(data: bytes) -> str:
    """By its mark, else UTF-16 where every other byte of the beginning is zero, else UTF-8."""
    if data.startswith(b"\xef\xbb\xbf"):
        return "utf-8-sig"
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        return "utf-16"
    head = data[:200]
    if len(head) > 3 and head[1::2].count(0) * 3 > len(head):
        return "utf-16-le"
    if len(head) > 3 and head[::2].count(0) * 3 > len(head):
        return "utf-16-be"
    return "utf-8"


def _decoded(data: bytes, encoding: str) -> str:
    try:
        text = data.decode(encoding)
    except UnicodeDecodeError as error:
        if _looks_binary(data):
            raise Refused(Fault.NO_SHEET) from error
        raise Refused(Fault.ENCODING) from error
    if _looks_binary(text[:10_000].encode("utf-8", "replace")) or text.lstrip()[:1] == "<":
        raise Refused(Fault.NO_SHEET)
    return text


def _looks_binary(data: bytes) -> bool:
    return any(byte < 9 or 13 < byte < 32 for byte in data[:10_000])


def _delimiter(text: str, weigh: Callable[[Sequence[str]], int]) -> str:
    """What the line `sep=` says that some programs put first, else what makes the most headings."""
    lines = text[: _LOOKED_AT * LONGEST_CELL].splitlines()[:_LOOKED_AT]
    first = lines[0].strip().strip("\ufeff") if lines else ""
    if first.lower().startswith("sep=") and len(first) == 5:
        return first[4]
    weights = {d: max((weigh(_split(line, d)) for line in lines), default=0) for d in DELIMITERS}
    return max(DELIMITERS, key=lambda d: weights[d])


def _split(line: str, delimiter: str) -> list[str]:
    try:
        return next(csv.reader([line[:LONGEST_CELL]], delimiter=delimiter), [])
    except csv.Error:
        return []


def _records(text: str, delimiter: str) -> list[list[str]]:
    try:
        return list(csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True))
    except csv.Error as error:
        raise Refused(Fault.QUOTES) from error


def _tables(records: Sequence[Sequence[str]], main_name: str) -> Book:
    allowance = Allowance()
    tables: list[tuple[str, list[Row]]] = [(main_name, [])]
    for number, record in enumerate(records, start=1):
        cells = tuple(_cell(text, allowance) for text in record)
        filled = [place for place, cell in enumerate(cells) if cell != NO_CELL]
        if not filled:
            continue
        for place in filled:
            allowance.take_cell(number, place)
        if cells[0].text.lower().rstrip(":") == SHEET_MARK and filled == [0, 1]:
            tables.append((cells[1].text, []))
        else:
            tables[-1][1].append(Row(number, cells[: filled[-1] + 1]))
    return Book(tuple(Table(name, tuple(rows)) for name, rows in tables if rows or name != main_name))


def _cell(text: str, allowance: Allowance) -> Cell:
    allowance.take_text(len(text))
    if len(text) > LONGEST_CELL:
        raise Refused(Fault.CELL_TOO_LONG, text, str(LONGEST_CELL))
    shown = tidy(text)
    return Cell("", Kind.FORMULA) if shown.startswith("=") else Cell(shown)
