"""Workbooks and text files made by code: ordinary ones, and those that nobody should send."""

import csv
import io
import zlib
from collections.abc import Mapping, Sequence
from functools import cache
from struct import pack
from zipfile import ZIP_DEFLATED, ZipFile

from openpyxl import Workbook

HEADINGS = ("Workout", "Exercise", "Sets", "Repetitions", "Effort", "Load", "Rest")
ROW = ("A", "Back squat", 3, "5-8", "RIR 2", "60 kg", "120 s")

_MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
_REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_PACKAGE = "http://schemas.openxmlformats.org/package/2006"
_SHEET_KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml"


def csv_of(*rows: Sequence[object], delimiter: str = ",", headings: Sequence[str] = HEADINGS) -> bytes:
    """A text file of these rows, quoted where need be."""

    out = io.StringIO()
    csv.writer(out, delimiter=delimiter).writerows([headings, *rows])
    return out.getvalue().encode()


def xlsx_of(*rows: Sequence[object], headings: Sequence[str] = HEADINGS) -> bytes:
    """A workbook as a library writes it."""
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.title = "Programme"
    for row in (headings, *rows):
        sheet.append(list(row))
    return saved(book)


def saved(book: Workbook) -> bytes:
    """The workbook's bytes."""
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def raw_xlsx(
    sheet: bytes | str,
    *,
    texts: bytes | str | None = None,
    styles: bytes | str | None = None,
    more: Mapping[str, bytes] | None = None,
    kind: str = f"{_SHEET_KIND}.sheet.main+xml",
) -> bytes:
    """A workbook put together by hand, around this worksheet's XML."""
    related = [("worksheet", "worksheets/sheet1.xml"), ("sharedStrings", "sharedStrings.xml"), ("styles", "styles.xml")]
    parts: dict[str, bytes | str] = {
        "[Content_Types].xml": f'<Types xmlns="{_PACKAGE}/content-types"><Override PartName="/xl/workbook.xml" '
        f'ContentType="{kind}"/></Types>',
        "_rels/.rels": f'<Relationships xmlns="{_PACKAGE}/relationships"><Relationship Id="r" '
        f'Type="{_REL}/officeDocument" Target="xl/workbook.xml"/></Relationships>',
        "xl/workbook.xml": f'<workbook xmlns="{_MAIN}" xmlns:r="{_REL}"><sheets>'
        '<sheet name="Programme" sheetId="1" r:id="r0"/></sheets></workbook>',
        "xl/_rels/workbook.xml.rels": f'<Relationships xmlns="{_PACKAGE}/relationships">'
        + "".join(f'<Relationship Id="r{n}" Type="{_REL}/{k}" Target="{t}"/>' for n, (k, t) in enumerate(related))
        + "</Relationships>",
        "xl/worksheets/sheet1.xml": sheet,
        "xl/sharedStrings.xml": texts or f'<sst xmlns="{_MAIN}"/>',
        "xl/styles.xml": styles or f'<styleSheet xmlns="{_MAIN}"/>',
        **(more or {}),
    }
    out = io.BytesIO()
    with ZipFile(out, "w", ZIP_DEFLATED) as archive:
        for name, body in parts.items():
            archive.writestr(name, body)
    return out.getvalue()


def sheet_xml(rows: str) -> str:
    """A worksheet of these rows' XML."""
    return f'<worksheet xmlns="{_MAIN}"><sheetData>{rows}</sheetData></worksheet>'


def inline(reference: str, text: str) -> str:
    """A cell with its own text."""
    return f'<c r="{reference}" t="inlineStr"><is><t>{text}</t></is></c>'


def row_xml(number: int, *cells: str) -> str:
    """A row of texts."""
    made = "".join(inline(f"{chr(65 + place)}{number}", text) for place, text in enumerate(cells))
    return f'<row r="{number}">{made}</row>'


@cache
def _gigabyte() -> bytes:
    """A gigabyte of spaces in a tag, packed."""
    packer = zlib.compressobj(9, zlib.DEFLATED, -15)
    chunk = b" " * 1_000_000
    return b"".join([packer.compress(b"<worksheet>"), *(packer.compress(chunk) for _ in range(1000)), packer.flush()])


def swollen_zip(claimed: int) -> bytes:
    """A zip whose worksheet is a megabyte that unpacks to a gigabyte, and whose directory claims another size."""
    good, body = raw_xlsx(sheet_xml("")), _gigabyte()
    with ZipFile(io.BytesIO(good)) as archive:
        others = {p.filename: archive.read(p) for p in archive.infolist() if "sheet1" not in p.filename}
    out = io.BytesIO()
    with ZipFile(out, "w", ZIP_DEFLATED) as archive:
        for name, text in others.items():
            archive.writestr(name, text)
    return _with_entry(out.getvalue(), b"xl/worksheets/sheet1.xml", body, claimed)


def _with_entry(data: bytes, name: bytes, body: bytes, claimed: int) -> bytes:
    """A zip with one more entry, packed by hand, whose size is as claimed."""
    end = data.rindex(b"PK\x05\x06")
    count, size, start = int.from_bytes(data[end + 10 : end + 12], "little"), *_two(data, end + 12)
    common = pack("<HHHHHLLLHH", 20, 0, 8, 0, 0, 0, len(body), claimed, len(name), 0)
    local = b"PK\x03\x04" + common + name + body
    central = b"PK\x01\x02" + pack("<H", 20) + common + pack("<HHHLL", 0, 0, 0, 0, start) + name
    directory = data[start : start + size] + central
    place = start + len(local)
    tail = b"PK\x05\x06" + pack("<HHHHLLH", 0, 0, count + 1, count + 1, len(directory), place, 0)
    return data[:start] + local + directory + tail


def _two(data: bytes, place: int) -> tuple[int, int]:
    return int.from_bytes(data[place : place + 4], "little"), int.from_bytes(data[place + 4 : place + 8], "little")


def crowded_zip(entries: int) -> bytes:
    """A zip whose directory names very many empty files."""
    central = b"".join(
        b"PK\x01\x02" + pack("<HHHHHHLLLHHHHHLL", 20, 20, 0, 0, 0, 0, 0, 0, 0, 7, 0, 0, 0, 0, 0, 0) + b"%07d" % n
        for n in range(entries)
    )
    head = b"PK\x03\x04" + b"\0" * 26
    tail = b"PK\x05\x06" + pack("<HHHHLLH", 0, 0, entries & 0xFFFF, entries & 0xFFFF, len(central), len(head), 0)
    return head + central + tail
