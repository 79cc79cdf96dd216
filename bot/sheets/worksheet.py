"""The cells of one worksheet, and the texts that cells share (ECMA-376 part 1, 18.3 and 18.4)."""

import itertools
import re
from collections.abc import Iterable, Mapping
from datetime import date, timedelta
from decimal import Decimal, InvalidOperation

from bot.sheets.bounds import LONGEST_CELL, MOST_CELLS, MOST_COLUMNS, MOST_ROWS, MOST_TEXT
from bot.sheets.problems import Fault, Refused
from bot.sheets.table import NO_CELL, Cell, Kind, Row
from bot.sheets.xml import Counter, read_xml

Texts = tuple[str, ...]
_ESCAPED = re.compile("_x([0-9A-Fa-f]{4})_")
_UNSEEN = re.compile("[\x00-\x08\x0b-\x1f\x7f\ud800-\udfff\ufffe\uffff]")
"""What XML can't hold or nobody sees: controls, halves of surrogate pairs, non-characters."""
_LAST_DAY = 2_958_465
"""31 December 9999."""


class Allowance:
    """Cells and characters that may still come, over all sheets of a file."""

    def __init__(self) -> None:
        self.cells = MOST_CELLS
        self.text = MOST_TEXT

    def take_cell(self, row: int, column: int) -> None:
        """One more cell, there."""
        self.cells -= 1
        if row > MOST_ROWS:
            raise Refused(Fault.TOO_MANY_ROWS, str(row), str(MOST_ROWS))
        if column >= MOST_COLUMNS:
            raise Refused(Fault.TOO_MANY_COLUMNS, "", str(MOST_COLUMNS))
        if self.cells < 0:
            raise Refused(Fault.TOO_MANY_CELLS, "", str(MOST_CELLS))

    def take_text(self, characters: int) -> None:
        """So many more characters."""
        self.text -= characters
        if self.text < 0:
            raise Refused(Fault.TOO_MUCH_TEXT)


class _Collector:
    """Text of the element under way, bounded."""

    def __init__(self, allowance: Allowance) -> None:
        self._allowance = allowance
        self._pieces: list[str] = []
        self._length = 0

    def add(self, text: str) -> None:
        self._length += len(text)
        self._allowance.take_text(len(text))
        if self._length > LONGEST_CELL:
            raise Refused(Fault.CELL_TOO_LONG, "".join(self._pieces), str(LONGEST_CELL))
        self._pieces.append(text)

    def take(self) -> str:
        text = "".join(self._pieces)
        self._pieces.clear()
        self._length = 0
        return text


def read_texts(bites: Iterable[bytes], counter: Counter, allowance: Allowance) -> Texts:
    """The texts that cells name by number; readings beside them (as in Japanese) are no part of them."""
    texts: list[str] = []
    collected = _Collector(allowance)
    in_text = in_reading = False

    def start(name: str, _: Mapping[str, str]) -> None:
        nonlocal in_text, in_reading
        in_text = name == "t" and not in_reading
        in_reading = in_reading or name == "rPh"

    def end(name: str) -> None:
        nonlocal in_text, in_reading
        in_text = False
        in_reading = in_reading and name != "rPh"
        if name == "si":
            texts.append(_unescaped(collected.take()))

    def text(piece: str) -> None:
        if in_text:
            collected.add(piece)

    read_xml(bites, counter, start, end, text)
    return tuple(texts)


class _Reader:
    """The handlers of a worksheet: rows and cells as they come."""

    def __init__(self, allowance: Allowance, texts: Texts, kinds: tuple[Kind, ...], *, from_1904: bool) -> None:
        self.rows: list[Row] = []
        self._allowance, self._texts, self._kinds, self._from_1904 = allowance, texts, kinds, from_1904
        self._collected = _Collector(allowance)
        self._row, self._hidden, self._cells = 0, False, dict[int, Cell]()
        self._column, self._type, self._style, self._value = -1, "", 0, ""
        self._is_formula = self._in_cell = self._in_value = self._in_reading = self._in_data = False

    def start(self, name: str, attributes: Mapping[str, str]) -> None:
        match name:
            case "c" if self._in_data:
                self._column = column_of(attributes.get("r", ""), self._column + 1)
                self._type, self._style = attributes.get("t", "n"), _whole(attributes.get("s", ""), 0)
                self._value, self._is_formula, self._in_cell = "", False, True
            case "v" | "t" if self._in_cell and not self._in_reading:
                self._in_value = True
            case "f" if self._in_cell:
                self._is_formula = True
            case "row" if self._in_data:
                self._row = _whole(attributes.get("r", ""), self._row + 1)
                self._hidden = attributes.get("hidden", "") in ("1", "true")
                self._column, self._cells = -1, {}
            case "rPh":
                self._in_reading = True
            case "sheetData":
                self._in_data = True
            case _:
                pass

    def end(self, name: str) -> None:
        match name:
            case "v" | "t" if self._in_value:
                self._value += self._collected.take()
                self._in_value = False
            case "c" if self._in_cell:
                self._in_cell = False
                self._keep()
            case "row" if self._cells:
                last = max(self._cells)
                cells = tuple(self._cells.get(n, NO_CELL) for n in range(last + 1))
                self.rows.append(Row(self._row, cells, self._hidden))
                self._cells = {}
            case "rPh":
                self._in_reading = False
            case "sheetData":
                self._in_data = False
            case _:
                pass

    def text(self, piece: str) -> None:
        if self._in_value:
            self._collected.add(piece)

    def _keep(self) -> None:
        cell = Cell("", Kind.FORMULA) if self._is_formula else self._cell()
        if cell != NO_CELL:
            self._allowance.take_cell(self._row, self._column)
            self._cells[self._column] = cell

    def _cell(self) -> Cell:
        match self._type:
            case "s":
                place = _whole(self._value, -1)
                if not 0 <= place < len(self._texts):
                    raise Refused(Fault.DAMAGED)
                return Cell(tidy(self._texts[place]))
            case "inlineStr" | "str":
                return Cell(tidy(_unescaped(self._value)))
            case "b":
                return Cell("yes" if self._value.strip() == "1" else "no")
            case "e":
                return Cell(self._value.strip()[:20], Kind.FAULT)
            case "d":
                return Cell(self._value.strip()[:10], Kind.DATE)
            case _:
                kind = self._kinds[self._style] if self._style < len(self._kinds) else Kind.NUMBER
                return number_cell(self._value.strip(), kind, from_1904=self._from_1904)


def read_rows(
    bites: Iterable[bytes],
    counter: Counter,
    allowance: Allowance,
    texts: Texts,
    kinds: tuple[Kind, ...],
    *,
    from_1904: bool,
) -> tuple[Row, ...]:
    """The rows that hold something; a row that stands twice makes the file a damaged one."""
    reader = _Reader(allowance, texts, kinds, from_1904=from_1904)
    read_xml(bites, counter, reader.start, reader.end, reader.text)
    numbers = [row.number for row in reader.rows]
    if any(after <= before for before, after in itertools.pairwise(numbers)):
        raise Refused(Fault.DAMAGED)
    return tuple(reader.rows)


def number_cell(text: str, kind: Kind, *, from_1904: bool = False) -> Cell:
    """A number as its style shows it. Binary fractions are rounded to twelve digits: 22.499999999999996 is 22.5."""
    if not text:
        return NO_CELL
    try:
        value = Decimal(text)
    except InvalidOperation:
        return Cell(text[:20], Kind.FAULT)
    if not value.is_finite() or abs(value) >= 10**12:
        return Cell(text[:20], Kind.FAULT)
    match kind:
        case Kind.PERCENT:
            return Cell(_plain(value * 100), kind)
        case Kind.DATE if 0 < value <= _LAST_DAY:
            first = date(1904, 1, 1) if from_1904 else date(1899, 12, 30)
            days = min(int(value), (date.max - first).days)
            return Cell((first + timedelta(days=days)).isoformat(), kind)
        case Kind.CLOCK if 0 <= value < 1:
            minutes = int(value * 1440 + Decimal("0.5"))
            return Cell(f"{minutes // 60:02}:{minutes % 60:02}", kind)
        case _:
            return Cell(_plain(value), Kind.NUMBER)


def _plain(value: Decimal) -> str:
    rounded = Decimal(f"{value:.12g}")
    whole = rounded.to_integral_value()
    return str(int(whole)) if rounded == whole else f"{rounded.normalize():f}"


def tidy(text: str) -> str:
    """Without spaces around it and characters that don't show; line breaks in one form."""
    text = text.replace("\r\n", "\n").replace("\r", "\n").replace("\u00a0", " ")
    if not text.isprintable():
        text = _UNSEEN.sub("", text)
    return text.strip(" \n\t\u200b\ufeff")


def _unescaped(text: str) -> str:
    """`_x000A_` stands for the character of that number (ECMA-376 part 1, 22.9.2.19)."""
    return _ESCAPED.sub(lambda m: chr(int(m[1], 16)), text) if "_x" in text else text


def column_of(reference: str, following: int) -> int:
    """The column, from 0, of a reference such as `AB17`."""
    letters = reference.rstrip("0123456789")
    if not letters:
        return following
    if len(letters) > 3 or not letters.isascii() or not letters.isalpha():
        raise Refused(Fault.DAMAGED)
    column = 0
    for letter in letters.upper():
        column = column * 26 + ord(letter) - 64
    return column - 1


def _whole(text: str, otherwise: int) -> int:
    text = text.strip()
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else otherwise
