"""A file as it comes, to sheets: what it is by its first bytes, whether its name agrees, and what we don't take."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.sheets.bounds import MOST_FILE_BYTES
from bot.sheets.headings import weigh
from bot.sheets.layout import EXPLANATIONS, LISTS, PROGRAMME, sheet_of
from bot.sheets.plaintext import Form, read_plaintext
from bot.sheets.problems import Fault, Problem, Refused
from bot.sheets.table import Book
from bot.sheets.workbook import read_workbook

_ZIP = b"PK\x03\x04"
_EMPTY_ZIP = b"PK\x05\x06"
_OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_LOCKED = "EncryptedPackage".encode("utf-16-le")
"""The stream in which a workbook with a password lies (MS-OFFCRYPTO 2.1)."""
_PICTURE_MARKS = (b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"II*\0", b"MM\0*")
_TEXT_NAMES = (".csv", ".txt", ".tsv")


@dataclass(frozen=True, slots=True)
class Opened:
    """The sheets of a file; `form` is how a text file is written, `None` for a workbook."""

    book: Book
    form: Form | None


def open_book(data: bytes, name: str) -> Opened | Problem:
    """The sheets in a file of this name, or why it is not taken: one plain sentence."""
    try:
        return _opened(data, name.strip().lower())
    except Refused as refused:
        return refused.problem


def _opened(data: bytes, name: str) -> Opened:
    if not data.strip(b"\0 \r\n\t\xef\xbb\xbf\xff\xfe"):
        raise Refused(Fault.EMPTY)
    if len(data) > MOST_FILE_BYTES:
        raise Refused(Fault.TOO_LARGE, "", str(MOST_FILE_BYTES // 1_000_000))
    _check_name(name)
    if data.startswith(_OLE):
        raise Refused(Fault.LOCKED if _LOCKED in data else Fault.OLD_FORM)
    if data.startswith(_PICTURE_MARKS):
        raise Refused(Fault.NO_SHEET)
    is_zip = data.startswith((_ZIP, _EMPTY_ZIP))
    if is_zip != name.endswith(".xlsx"):
        raise Refused(Fault.NOT_AS_NAMED, name.rpartition(".")[2])
    if is_zip:
        return Opened(read_workbook(data, _picked), None)
    book, form = read_plaintext(data, weigh, PROGRAMME)
    known = tuple(table for table in book.tables if sheet_of(table.name))
    return Opened(Book(known, tuple(table.name for table in book.tables if not sheet_of(table.name))), form)


def _check_name(name: str) -> None:
    if name.endswith((".xlsm", ".xltm", ".xlsb")):
        raise Refused(Fault.MACROS)
    if name.endswith((".xls", ".xlt")):
        raise Refused(Fault.OLD_FORM)
    if not name.endswith((".xlsx", *_TEXT_NAMES)):
        raise Refused(Fault.WRONG_NAME if "." not in name else Fault.OTHER_FORM, name.rpartition(".")[2])


def _picked(names: Sequence[str]) -> list[str]:
    """The sheets with our names; where none is the programme, the first of the others is taken for it."""
    ours = [name for name in names if sheet_of(name) not in ("", EXPLANATIONS, LISTS)]
    if any(sheet_of(name) == PROGRAMME for name in ours):
        return ours
    others = [name for name in names if not sheet_of(name)]
    return [*others[:1], *ours]
