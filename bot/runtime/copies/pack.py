"""The copy itself: a zip of a text that explains it, the workbook, and JSON with every row as it is kept."""

import io
import json
import zipfile
from collections.abc import Callable, Iterable
from datetime import datetime

from bot.runtime.copies.book import write_book
from bot.runtime.copies.tables import sheets_of
from bot.runtime.ports import Made, Make
from bot.saying import Wanted
from bot.wording import show
from storage.codec import VERSION
from storage.copies import FACTS_A_PART, Scope, scope_of
from storage.engine import Store
from storage.openrows import client_json, coach_json
from storage.work import Work


def copier(store: Store, now: Callable[[], datetime], *, facts_a_part: int = FACTS_A_PART) -> Make:
    """Makes the wanted copies of this database. Each from one snapshot of it, apart from whoever writes."""

    def make(wanted: Wanted) -> Made | None:
        with store.reading() as work:
            scope = scope_of(work, wanted, facts_a_part=facts_a_part)
            if scope is None:
                return None
            following = Wanted(wanted.copy, wanted.whose, scope.after, wanted.part + 1) if scope.after else None
            return Made(pack(work, scope, part=wanted.part, now=now()), following)

    return make


def pack(work: Work, scope: Scope, *, part: int, now: datetime) -> bytes:
    """The zip. In memory only: what is sealed in the database is open in it."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as packed:
        with packed.open("record.xlsx", "w", force_zip64=True) as file:
            book = io.BytesIO()
            write_book(book, sheets_of(work, scope))
            file.write(book.getbuffer())
        if scope.owner is not None and part == 1:
            _write(packed, "json/coach.json", coach_json(work, scope.owner))
        for n, subject in enumerate(scope.subjects, 1):
            name = f"json/client-{n if scope.owner is None else subject.id}.json"
            _write(packed, name, client_json(work, subject, own=scope.owner is None))
        packed.writestr("json/about.json", _about(scope, part, now))
        packed.writestr("README.txt", _readme(scope, part, now))
    return out.getvalue()


def _write(packed: zipfile.ZipFile, name: str, pieces: Iterable[str]) -> None:
    with packed.open(name, "w", force_zip64=True) as file:
        for piece in pieces:
            file.write(piece.encode())


def _about(scope: Scope, part: int, now: datetime) -> str:
    told = {"made_at": now.isoformat(timespec="seconds"), "form": VERSION, "part": part, "is_last": not scope.after}
    return json.dumps({**told, "clients": len(scope.subjects)}, indent=1) + "\n"


def _readme(scope: Scope, part: int, now: datetime) -> str:
    """What is in it and how to read it, in words."""
    at = now.isoformat(timespec="seconds")
    keys = ["what", "book", "units", "times", "formulas", "json", "facts", "not", "care"]
    lines = [show("copy-readme-own" if scope.owner is None else "copy-readme-practice", at=at)]
    if part > 1 or scope.after:
        lines.append(show("copy-readme-part" if scope.after else "copy-readme-last", part=part))
    if scope.left_out:
        lines.append(show("copy-readme-left-out", count=scope.left_out))
    return "\n\n".join([*lines, *(show(f"copy-readme-{key}") for key in keys)]) + "\n"
