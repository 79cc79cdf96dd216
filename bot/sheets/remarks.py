"""The coach's own file back, with a column of remarks at the right of each sheet; everything else stays as it was.

In a workbook the remarks are put into the sheet's XML where its rows end, so that looks, lists and other sheets stay.
"""

import io
from collections.abc import Iterable, Mapping, Sequence
from html import escape
from xml.parsers import expat
from zipfile import ZIP_DEFLATED, ZipFile

from bot.sheets.cells import shielded
from bot.sheets.csvout import encode
from bot.sheets.headings import REMARKS
from bot.sheets.layout import PROGRAMME, sheet_of
from bot.sheets.opening import open_book
from bot.sheets.plaintext import Form, records_of
from bot.sheets.problems import Fault, Problem, Refused
from bot.sheets.table import Table
from bot.sheets.worksheet import column_of, tidy
from bot.sheets.zipped import Archive

Said = Sequence[tuple[Problem, str]]
"""Problems with their words (without the place)."""
Notes = Mapping[int, str]
"""Remarks by row."""


def with_remarks(data: bytes, name: str, said: Said) -> bytes | None:
    """The file with its remarks; `None` where it was refused as a whole, so that there is nothing to give back."""
    opened = open_book(data, name)
    if isinstance(opened, Problem):
        return None
    if opened.form is not None:
        return _text_file(data, _all_notes(opened.book.tables, said), opened.form)
    try:
        parts = {table.part: notes for table in opened.book.tables if (notes := _notes(table, said))}
        return _workbook(Archive(data), parts)
    except Refused:
        return None


def _notes(table: Table, said: Said) -> Notes:
    """The remarks of one sheet. What has no row, or a row without anything in it, goes to the sheet's first row."""
    name = "" if (sheet_of(table.name) or PROGRAMME) == PROGRAMME else table.name
    numbers = {row.number for row in table.rows}
    first = min(numbers, default=1)
    notes: dict[int, list[str]] = {}
    for problem, words in said:
        if problem.sheet == name:
            row = problem.row if problem.row in numbers else first
            notes.setdefault(row, []).append(f"{problem.column}: {words}" if problem.column else words)
    if notes:
        notes.setdefault(first, []).insert(0, REMARKS)
    return {row: " ".join(texts) if row != first else _headed(texts) for row, texts in notes.items()}


def _headed(texts: Sequence[str]) -> str:
    return texts[0] if len(texts) == 1 else f"{texts[0]} ({' '.join(texts[1:])})"


def _all_notes(tables: Iterable[Table], said: Said) -> Notes:
    """Of a text file, in which rows are numbered through."""
    return {row: text for table in tables for row, text in _notes(table, said).items()}


def _text_file(data: bytes, notes: Notes, form: Form) -> bytes:
    records = records_of(data, form)
    last = max((len(record) for record in records), default=0)
    rows = []
    for number, record in enumerate(records, start=1):
        cells = [_kept(text) for text in record]
        if number in notes:
            cells += [""] * (last - len(cells)) + [shielded(notes[number], in_text_file=True)]
        rows.append(cells)
    return encode(rows, form)


def _kept(text: str) -> str:
    """A cell of theirs as it was, but that a formula becomes a text; numbers and our own marks stay."""
    plain = tidy(text)
    if plain[:1] == "'" or plain.lower() in ("none", "sheet", "sheet:"):
        return text
    return text if _is_number(plain) else shielded(text, in_text_file=True)


def _is_number(text: str) -> bool:
    return text.lstrip("+-").replace(".", "").replace(",", "").isdigit()


def _workbook(archive: Archive, notes: Mapping[str, Notes]) -> bytes:
    out = io.BytesIO()
    wanted = {part.lower(): rows for part, rows in notes.items()}
    with ZipFile(out, "w", ZIP_DEFLATED) as target:
        for part in archive.all_parts():
            body = archive.whole(part)
            rows = wanted.get(part.filename.lower())
            target.writestr(part.filename, body if rows is None else _sheet(body, rows))
    return out.getvalue()


def _sheet(body: bytes, notes: Notes) -> bytes:
    """A worksheet's XML with the remarks as texts in the first column beyond all."""
    rows = _Rows()
    rows.read(body)
    letter = _letters(rows.last_column + 1)
    pieces: list[bytes] = []
    done = 0
    for number, (start, end, tag) in sorted(rows.places.items(), key=lambda item: item[1][0]):
        if number not in notes:
            continue
        cell = _cell(tag.rpartition(":")[0], f"{letter}{number}", notes[number]).encode(rows.encoding)
        if start == end:
            continue
        pieces += [body[done:end], cell]
        done = end
    return b"".join((*pieces, body[done:]))


def _cell(prefix: str, reference: str, text: str) -> str:
    mark = f"{prefix}:" if prefix else ""
    shown = escape(tidy(text), quote=False)
    text_element = f'<{mark}t xml:space="preserve">{shown}</{mark}t>'
    return f'<{mark}c r="{reference}" t="inlineStr"><{mark}is>{text_element}</{mark}is></{mark}c>'


class _Rows:
    """Where each row of a worksheet begins and ends in its XML, and the last column that any cell names."""

    def __init__(self) -> None:
        self.places: dict[int, tuple[int, int, str]] = {}
        self.last_column = 0
        self.encoding = "utf-8"
        self._row = self._start = 0
        self._column = -1

    def read(self, body: bytes) -> None:
        """Fill it from the part; `Refused` where it is not in UTF-8, in which case the bytes can't be put in."""
        parser = expat.ParserCreate()
        parser.XmlDeclHandler = self._declared

        def start(name: str, attributes: dict[str, str]) -> None:
            match name.rpartition(":")[2]:
                case "row":
                    text = attributes.get("r", "")
                    self._row = int(text) if text.isdigit() else self._row + 1
                    self._column, self._start = -1, parser.CurrentByteIndex
                case "c":
                    self._column = column_of(attributes.get("r", ""), self._column + 1)
                    self.last_column = max(self.last_column, self._column)
                case _:
                    pass

        def end(name: str) -> None:
            if name.rpartition(":")[2] == "row":
                self.places[self._row] = (self._start, parser.CurrentByteIndex, name)

        parser.StartElementHandler, parser.EndElementHandler = start, end
        try:
            parser.Parse(body, True)
        except expat.ExpatError as error:
            raise Refused(Fault.DAMAGED) from error

    def _declared(self, _version: str, encoding: str | None, _standalone: int) -> None:
        if (encoding or "utf-8").lower() not in ("utf-8", "us-ascii"):
            raise Refused(Fault.DAMAGED)


def _letters(column: int) -> str:
    text = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        text = chr(65 + rest) + text
    return text
