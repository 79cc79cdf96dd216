"""A workbook (.xlsx, ECMA-376 part 1, chapter 18) as plain sheets: texts, numbers, days, percentages, formulas.

Read by ourselves, a bite at a time, since a general library builds up what it reads before one can refuse it, and
gives a formula's kept value for a value. `tests/sheets` compares what is read with what such a library reads.
"""

import posixpath
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from bot.sheets.bounds import MOST_SHEETS
from bot.sheets.problems import Fault, Refused
from bot.sheets.styles import read_styles
from bot.sheets.table import Book, Kind, Table
from bot.sheets.worksheet import Allowance, Texts, read_rows, read_texts
from bot.sheets.xml import Counter, attribute, read_xml
from bot.sheets.zipped import Archive

Pick = Callable[[Sequence[str]], Sequence[str]]
"""Which of the sheets' names are to be read."""


@dataclass(frozen=True, slots=True)
class _Sheet:
    name: str
    relation: str


def read_workbook(data: bytes, pick: Pick) -> Book:
    """The sheets that `pick` names, in order; `Refused` where the file is none that we take."""
    archive, counter = Archive(data), Counter()
    main = _main_part(archive, counter)
    sheets, from_1904 = _sheets(archive, main, counter)
    targets = _relations(archive, main, counter)
    picked = pick([sheet.name for sheet in sheets])
    texts: Texts = ()
    kinds: tuple[Kind, ...] = ()
    allowance = Allowance()
    for target, kind in targets.values():
        if kind == "sharedStrings":
            texts = read_texts(archive.bites(target), counter, allowance)
        elif kind == "styles":
            kinds = read_styles(archive.bites(target), counter)
    tables = []
    for sheet in sheets:
        target, kind = targets.get(sheet.relation, ("", ""))
        if sheet.name in picked and kind == "worksheet":
            rows = read_rows(archive.bites(target), counter, allowance, texts, kinds, from_1904=from_1904)
            tables.append(Table(sheet.name, rows, target))
    if not tables:
        raise Refused(Fault.NO_SHEET)
    return Book(tuple(tables), tuple(sheet.name for sheet in sheets if sheet.name not in picked))


def _main_part(archive: Archive, counter: Counter) -> str:
    """The workbook's own part, by the package's relations; refused where its content type says macros."""
    _refuse_macros(archive, counter)
    found = [target for target, kind in _relations(archive, "", counter).values() if kind == "officeDocument"]
    if not found or not archive.has(found[0]):
        raise Refused(Fault.NO_SHEET)
    return found[0]


def _refuse_macros(archive: Archive, counter: Counter) -> None:
    kinds: list[str] = []
    if not archive.has("[Content_Types].xml"):
        raise Refused(Fault.NO_SHEET)
    read_xml(archive.bites("[Content_Types].xml"), counter, lambda _, a: kinds.append(a.get("ContentType", "")))
    if any("macroenabled" in kind.lower() or "vbaproject" in kind.lower() for kind in kinds):
        raise Refused(Fault.MACROS)


def _relations(archive: Archive, part: str, counter: Counter) -> dict[str, tuple[str, str]]:
    """By id: the part that is meant, and the last word of the relation's type."""
    folder, name = posixpath.split(part)
    path = posixpath.join(folder, "_rels", f"{name}.rels")
    found: dict[str, tuple[str, str]] = {}

    def start(element: str, attributes: Mapping[str, str]) -> None:
        if element == "Relationship" and attributes.get("TargetMode", "") != "External":
            target = posixpath.normpath(posixpath.join("/", folder, attributes.get("Target", ""))).lstrip("/")
            found[attributes.get("Id", "")] = (target, attributes.get("Type", "").rpartition("/")[2])

    if archive.has(path):
        read_xml(archive.bites(path), counter, start)
    return found


def _sheets(archive: Archive, main: str, counter: Counter) -> tuple[list[_Sheet], bool]:
    sheets: list[_Sheet] = []
    from_1904 = False

    def start(element: str, attributes: Mapping[str, str]) -> None:
        nonlocal from_1904
        if element == "sheet":
            sheets.append(_Sheet(attributes.get("name", ""), attribute(attributes, "id")))
            if len(sheets) > MOST_SHEETS:
                raise Refused(Fault.SWOLLEN)
        elif element == "workbookPr":
            from_1904 = attributes.get("date1904", "") in ("1", "true")

    read_xml(archive.bites(main), counter, start)
    return sheets, from_1904
