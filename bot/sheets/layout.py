"""The sheets and columns that we read and write, from `layout.toml`: keys for the code, headings for people."""

import re
import tomllib
import unicodedata
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

_BRACKETED = re.compile(r"\([^()]*\)|\[[^\[\]]*\]")


@dataclass(frozen=True, slots=True)
class Column:
    """A column (or a row of About): `key` for the code, `heading` for people, `about` for the explanations."""

    key: str
    heading: str
    others: tuple[str, ...]
    width: int
    about: str
    example: str


@dataclass(frozen=True, slots=True)
class SheetLayout:
    """A sheet: its columns, or for About its rows."""

    key: str
    name: str
    others: tuple[str, ...]
    about: str
    columns: tuple[Column, ...]
    rows: tuple[Column, ...] = ()

    def column(self, key: str) -> Column:
        """The column, or row, of this key; `KeyError` where there is none: a defect of ours."""
        for column in (*self.columns, *self.rows):
            if column.key == key:
                return column
        raise KeyError(key)


@cache
def layouts() -> dict[str, SheetLayout]:
    """All sheets by their key, in the order of the file."""
    text = files("bot.sheets").joinpath("layout.toml").read_text(encoding="utf-8")
    return {
        key: SheetLayout(
            key,
            data["name"],
            tuple(data["others"]),
            data["about"],
            tuple(_column(c) for c in data["columns"]),
            tuple(_column(c) for c in data.get("rows", [])),
        )
        for key, data in tomllib.loads(text).items()
    }


def _column(data: dict[str, object]) -> Column:
    others, width = data["others"], data.get("width", 20)
    return Column(
        key=str(data["key"]),
        heading=str(data["heading"]),
        others=tuple(str(other) for other in others) if isinstance(others, list) else (),
        width=width if isinstance(width, int) else 20,
        about=str(data["about"]),
        example=str(data.get("example", "")),
    )


PROGRAMME, WEEKS, TARGETS, EXERCISES, ABOUT = "programme", "weeks", "targets", "exercises", "about"
EXPLANATIONS, LISTS = "explanations", "lists"
"""Keys of the sheets; the last two are written, and passed over when read."""


def plain_name(text: str) -> str:
    """A heading or name without case, accents, brackets and anything but letters, digits and `%`."""
    bare = _BRACKETED.sub("", text[:200]) or text[:200]
    apart = unicodedata.normalize("NFKD", bare.replace("&", " and ")).lower()
    return "".join(c for c in apart if c.isalnum() or c == "%")


@cache
def _sheet_names() -> dict[str, str]:
    return {plain_name(name): s.key for s in layouts().values() for name in (s.name, *s.others)}


def sheet_of(name: str) -> str:
    """The key of the sheet of this name; empty where it is none of ours."""
    return _sheet_names().get(plain_name(name), "")


@cache
def headings_of(sheet: str) -> dict[str, str]:
    """Plain heading to key, for a sheet's columns (for About: its rows)."""
    layout = layouts()[sheet]
    return {plain_name(h): c.key for c in (layout.rows or layout.columns) for h in (c.heading, *c.others)}
