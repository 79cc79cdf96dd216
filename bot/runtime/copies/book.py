"""A workbook written row by row, without ever holding its rows: plain tables, a fixed heading, nothing computed.

The format is Office Open XML (ECMA-376, part 1, SpreadsheetML). Written here and not by a library, since a practice's
years have a million rows and a library's writer takes minutes for them. Every text is a text: no cell is a formula,
and one that begins like a formula is also marked as quoted (`quotePrefix`), so that it stays one when it is edited.
"""

import zipfile
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import IO
from xml.sax.saxutils import escape

Cell = str | int | Decimal | None
LONGEST_CELL = 32_000
"""Characters; the format's readers take 32,767."""
MOST_ROWS = 1_000_000
"""Of a sheet; the format's readers take 1,048,576."""
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r")
TOGETHER = 500
"""Rows written at once."""

_MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
_REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
_PACKAGE = "http://schemas.openxmlformats.org/package/2006"
_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml"
_STYLES = (
    f'{_HEAD}<styleSheet xmlns="{_MAIN}"><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font>'
    '<font><b/><sz val="11"/><name val="Calibri"/></font></fonts>'
    '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>'
    '</fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>'
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>'
    '<cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>'
    '<xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/>'
    '<xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" quotePrefix="1" applyNumberFormat="1"/>'
    '</cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>'
)


@dataclass(frozen=True, slots=True)
class Sheet:
    """A table: its name, its headings, its rows. Rows beyond a sheet's most go on in a sheet of their own."""

    name: str
    headings: tuple[str, ...]
    rows: Iterable[tuple[Cell, ...]]


def write_book(out: IO[bytes], sheets: Iterable[Sheet], *, most_rows: int = MOST_ROWS) -> int:
    """Writes the workbook; how many rows it has, headings not counted."""
    names: list[str] = []
    count = 0
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as book:
        for sheet in sheets:
            rows, part, is_more = iter(sheet.rows), 1, True
            while is_more:
                names.append(sheet.name if part == 1 else f"{sheet.name} {part}")
                with book.open(f"xl/worksheets/sheet{len(names)}.xml", "w", force_zip64=True) as file:
                    written = _write_sheet(file, sheet.headings, rows, most_rows)
                count += written
                is_more, part = written == most_rows, part + 1
        for name, text in _frame(names):
            book.writestr(name, text)
    return count


def _write_sheet(file: IO[bytes], headings: tuple[str, ...], rows: Iterator[tuple[Cell, ...]], most_rows: int) -> int:
    columns = "".join(f'<col min="{n}" max="{n}" width="{width}"/>' for n, width in enumerate(_widths(headings), 1))
    heading = "".join(f'<c t="inlineStr" s="1"><is><t>{escape(text)}</t></is></c>' for text in headings)
    file.write(
        f'{_HEAD}<worksheet xmlns="{_MAIN}"><sheetViews><sheetView workbookViewId="0">'
        '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>'
        f"<cols>{columns}</cols><sheetData><row>{heading}</row>".encode()
    )
    count, lines = 0, []
    for row in rows:
        lines.append(f"<row>{''.join([_cell(value) for value in row])}</row>")
        count += 1
        if len(lines) == TOGETHER:
            file.write("".join(lines).encode())
            lines.clear()
        if count == most_rows:
            break
    file.write(f"{''.join(lines)}</sheetData></worksheet>".encode())
    return count


def _widths(headings: tuple[str, ...]) -> Iterator[int]:
    return (max(10, min(40, len(text) + 2)) for text in headings)


def _cell(value: Cell) -> str:
    if value is None or value == "":
        return "<c/>"
    if isinstance(value, str):
        return _short(value) if len(value) <= 64 else _text(value)
    return f"<c><v>{value}</v></c>"


def _text(text: str) -> str:
    style = ' s="2"' if text.startswith(FORMULA_SIGNS) else ""
    kept = text if len(text) <= LONGEST_CELL else f"{text[:LONGEST_CELL]}…"
    clean = kept if kept.isprintable() else "".join(c if _is_xml(c) else "\ufffd" for c in kept)
    return f'<c t="inlineStr"{style}><is><t xml:space="preserve">{escape(clean)}</t></is></c>'


_short = lru_cache(8192)(_text)
"""Exercises, days and units come again and again."""


def _is_xml(character: str) -> bool:
    """Whether XML 1.0 can hold it (section 2.2)."""
    code = ord(character)
    return character in "\t\n\r" or 0x20 <= code <= 0xD7FF or 0xE000 <= code <= 0xFFFD or code >= 0x10000


def _frame(names: list[str]) -> Iterator[tuple[str, str]]:
    """The parts around the sheets."""
    numbers = range(1, len(names) + 1)
    yield (
        "[Content_Types].xml",
        f'{_HEAD}<Types xmlns="{_PACKAGE}/content-types">'
        '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
        '<Default Extension="xml" ContentType="application/xml"/>'
        f'<Override PartName="/xl/workbook.xml" ContentType="{_TYPE}.sheet.main+xml"/>'
        f'<Override PartName="/xl/styles.xml" ContentType="{_TYPE}.styles+xml"/>'
        + "".join(
            f'<Override PartName="/xl/worksheets/sheet{n}.xml" ContentType="{_TYPE}.worksheet+xml"/>' for n in numbers
        )
        + "</Types>",
    )
    yield (
        "_rels/.rels",
        f'{_HEAD}<Relationships xmlns="{_PACKAGE}/relationships">'
        f'<Relationship Id="rId1" Type="{_REL}/officeDocument" Target="xl/workbook.xml"/></Relationships>',
    )
    shown = "".join(
        f'<sheet name="{escape(name, {chr(34): "&quot;"})}" sheetId="{n}" r:id="rId{n}"/>'
        for n, name in zip(numbers, names, strict=True)
    )
    yield (
        "xl/workbook.xml",
        f'{_HEAD}<workbook xmlns="{_MAIN}" xmlns:r="{_REL}"><sheets>{shown}</sheets></workbook>',
    )
    links = "".join(
        f'<Relationship Id="rId{n}" Type="{_REL}/worksheet" Target="worksheets/sheet{n}.xml"/>' for n in numbers
    )
    styles = f'<Relationship Id="rId{len(names) + 1}" Type="{_REL}/styles" Target="styles.xml"/>'
    yield (
        "xl/_rels/workbook.xml.rels",
        f'{_HEAD}<Relationships xmlns="{_PACKAGE}/relationships">{links}{styles}</Relationships>',
    )
    yield "xl/styles.xml", _STYLES
