"""Files that nobody should send, by name: the file's name, its bytes, and what is wrong with it."""

from collections.abc import Callable

from bot.sheets.problems import Fault
from tests.sheets.books import (
    HEADINGS,
    ROW,
    crowded_zip,
    csv_of,
    inline,
    raw_xlsx,
    row_xml,
    sheet_xml,
    swollen_zip,
    xlsx_of,
)

_HEAD = row_xml(1, *HEADINGS)
_OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_PNG = b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 40


def _bomb_entities() -> bytes:
    """The billion laughs."""
    lines = "".join(f'<!ENTITY l{n} "{f"&l{n - 1};" * 10}">' for n in range(1, 10))
    return raw_xlsx(f'<!DOCTYPE x [<!ENTITY l0 "ha">{lines}]>' + sheet_xml(row_xml(1, "&l9;")))


def _hundred_thousand_rows() -> bytes:
    return raw_xlsx(sheet_xml(_HEAD + "".join(row_xml(n, "A", "Squat", "3") for n in range(2, 60_000))))


def _rows_without_values() -> bytes:
    return raw_xlsx(sheet_xml("".join(f'<row r="{n}"><c r="A{n}" s="1"/></row>' for n in range(1, 100_001))))


def _many_texts() -> bytes:
    return raw_xlsx(sheet_xml(_HEAD), texts="<sst>" + "<si><t>text</t></si>" * 380_000 + "</sst>")


def _long_texts() -> bytes:
    return raw_xlsx(sheet_xml(_HEAD), texts="<sst>" + f"<si><t>{'a' * 30_000}</t></si>" * 200 + "</sst>")


def _deep() -> bytes:
    return raw_xlsx("<a>" * 100_000 + "</a>" * 100_000)


def _many_cells() -> bytes:
    cells = [inline(f"{chr(65 + n // 26 - 1) if n > 25 else ''}{chr(65 + n % 26)}{{0}}", "x") for n in range(60)]
    row = "".join(cells)
    return raw_xlsx(sheet_xml(_HEAD + "".join(f'<row r="{n}">{row.format(n)}</row>' for n in range(2, 1_400))))


def _many_attributes() -> bytes:
    attributes = " ".join(f'a{n}="1"' for n in range(500_000))
    return raw_xlsx(sheet_xml(f'<row r="1" {attributes}/>'))


FILES: dict[str, tuple[str, Callable[[], bytes], Fault]] = {
    "nothing at all": ("a.xlsx", lambda: b"", Fault.EMPTY),
    "only spaces": ("a.csv", lambda: b"\xef\xbb\xbf \r\n\r\n", Fault.EMPTY),
    "six megabytes": ("a.csv", lambda: csv_of(*[ROW] * 150_000), Fault.TOO_LARGE),
    "a zip that unpacks to a gigabyte, and says so": ("a.xlsx", lambda: swollen_zip(1_000_000_011), Fault.SWOLLEN),
    "a zip that unpacks to a gigabyte, and says a kilobyte": ("a.xlsx", lambda: swollen_zip(1_000), Fault.DAMAGED),
    "a zip that unpacks to a gigabyte, and says twenty megabytes": (
        "a.xlsx",
        lambda: swollen_zip(20_000_000),
        Fault.SWOLLEN,
    ),
    "a zip of a hundred thousand files": ("a.xlsx", lambda: crowded_zip(90_000), Fault.SWOLLEN),
    "an entity bomb": ("a.xlsx", _bomb_entities, Fault.ENTITIES),
    "an outside entity": (
        "a.xlsx",
        lambda: raw_xlsx('<!DOCTYPE x SYSTEM "file:///etc/hostname">' + sheet_xml(_HEAD)),
        Fault.ENTITIES,
    ),
    "nested a hundred thousand deep": ("a.xlsx", _deep, Fault.TOO_DEEP),
    "half a million attributes": ("a.xlsx", _many_attributes, Fault.SWOLLEN),
    "sixty thousand rows": ("a.xlsx", _hundred_thousand_rows, Fault.TOO_MANY_ROWS),
    "a hundred thousand rows of a text file": (
        "a.csv",
        lambda: csv_of(*[("A", "Squat", 3, "5-8")] * 100_000),
        Fault.TOO_MANY_ROWS,
    ),
    "a hundred thousand rows without a value": ("a.xlsx", _rows_without_values, Fault.NO_HEADINGS),
    "a value in the last row there is": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml(_HEAD + row_xml(1_048_576, "A"))),
        Fault.TOO_MANY_ROWS,
    ),
    "a value in the last column there is": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml(_HEAD + f'<row r="2">{inline("XFD2", "x")}</row>')),
        Fault.TOO_MANY_COLUMNS,
    ),
    "eighty thousand cells": ("a.xlsx", _many_cells, Fault.TOO_MANY_CELLS),
    "four hundred thousand shared texts": ("a.xlsx", _many_texts, Fault.SWOLLEN),
    "six megabytes of shared texts": ("a.xlsx", _long_texts, Fault.TOO_MUCH_TEXT),
    "one cell of a million letters": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml(_HEAD + row_xml(2, "a" * 1_000_000))),
        Fault.CELL_TOO_LONG,
    ),
    "one cell of a million letters in a text file": ("a.csv", lambda: csv_of(("a" * 100_000,)), Fault.CELL_TOO_LONG),
    "a shared text that is not there": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml('<row r="1"><c r="A1" t="s"><v>7</v></c></row>')),
        Fault.DAMAGED,
    ),
    "a row that comes twice": ("a.xlsx", lambda: raw_xlsx(sheet_xml(_HEAD + _HEAD)), Fault.DAMAGED),
    "macros by name": ("a.xlsm", lambda: xlsx_of(ROW), Fault.MACROS),
    "macros within": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml(_HEAD), more={"xl/vbaProject.bin": _OLE}),
        Fault.MACROS,
    ),
    "macros by kind": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml(_HEAD), kind="application/vnd.ms-excel.sheet.macroEnabled.main+xml"),
        Fault.MACROS,
    ),
    "a picture within": ("a.xlsx", lambda: raw_xlsx(sheet_xml(_HEAD), more={"xl/media/i.png": _PNG}), Fault.PICTURES),
    "an object within": (
        "a.xlsx",
        lambda: raw_xlsx(sheet_xml(_HEAD), more={"xl/embeddings/o.bin": _OLE}),
        Fault.OBJECTS,
    ),
    "a picture by a sheet's name": ("a.xlsx", lambda: _PNG, Fault.NO_SHEET),
    "a picture by a text's name": ("a.csv", lambda: _PNG, Fault.NO_SHEET),
    "a password": ("a.xlsx", lambda: _OLE + b"\0" * 1000 + "EncryptedPackage".encode("utf-16-le"), Fault.LOCKED),
    "the old form": ("a.xlsx", lambda: _OLE + b"\0" * 1000, Fault.OLD_FORM),
    "the old form by name": ("a.xls", lambda: _OLE + b"\0" * 1000, Fault.OLD_FORM),
    "another form": ("a.ods", lambda: xlsx_of(ROW), Fault.OTHER_FORM),
    "no ending": ("programme", lambda: xlsx_of(ROW), Fault.WRONG_NAME),
    "a workbook by a text's name": ("a.csv", lambda: xlsx_of(ROW), Fault.NOT_AS_NAMED),
    "a text by a workbook's name": ("a.xlsx", lambda: csv_of(ROW), Fault.NOT_AS_NAMED),
    "cut in the middle": ("a.xlsx", lambda: xlsx_of(ROW)[:3000], Fault.DAMAGED),
    "cut in the middle, with its end": ("a.xlsx", lambda: xlsx_of(ROW)[:2000] + xlsx_of(ROW)[-500:], Fault.DAMAGED),
    "a zip of something else": ("a.xlsx", lambda: crowded_zip(3), Fault.NO_SHEET),
    "a web page": ("a.csv", lambda: b"<!doctype html><table><tr><td>Exercise</td></tr></table>", Fault.NO_SHEET),
    "a prose text": ("a.csv", lambda: b"Dear coach,\nhere is my week.\n", Fault.NO_HEADINGS),
    "a program": ("a.csv", lambda: b"MZ\x90\0\x03\0\0\0\x04\0\0\0" * 100, Fault.NO_SHEET),
    "an old page of letters": ("a.csv", lambda: "Übung,Sets\nKniebeuge,3".encode("cp1252"), Fault.ENCODING),
    "an open quotation mark": ("a.csv", lambda: csv_of(ROW) + b'A,"Back squat,3,5\n' * 3, Fault.QUOTES),
}
