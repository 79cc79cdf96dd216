"""A copy of somebody's data, opened with other people's tools: the standard library's zip and JSON, and openpyxl."""

import io
import json
import zipfile
from dataclasses import dataclass
from typing import Any

from openpyxl import load_workbook

Json = Any
"""What `json` gives."""


@dataclass(frozen=True, slots=True)
class Opened:
    """A copy's zip."""

    content: bytes

    def names(self) -> list[str]:
        """The files in it."""
        with zipfile.ZipFile(io.BytesIO(self.content)) as packed:
            assert packed.testzip() is None
            return packed.namelist()

    def read(self, name: str) -> bytes:
        """One of them."""
        with zipfile.ZipFile(io.BytesIO(self.content)) as packed:
            return packed.read(name)

    def json(self, name: str) -> Json:
        """One of the JSON files."""
        return json.loads(self.read(f"json/{name}.json"))

    def clients(self) -> list[Json]:
        """Every client's JSON."""
        return [json.loads(self.read(name)) for name in self.names() if name.startswith("json/client-")]

    def sheet(self, name: str) -> list[dict[str, Json]]:
        """A sheet's rows by their headings."""
        book = load_workbook(io.BytesIO(self.read("record.xlsx")), read_only=True)
        heading, *rows = book[name].iter_rows(values_only=True)
        return [dict(zip(map(str, heading), row, strict=True)) for row in rows]

    def everything(self) -> str:
        """All words in it, those of the workbook's parts too."""
        parts = [self.read(name).decode() for name in self.names() if not name.endswith(".xlsx")]
        with zipfile.ZipFile(io.BytesIO(self.read("record.xlsx"))) as book:
            parts += [book.read(name).decode() for name in book.namelist()]
        return "\n".join(parts)
