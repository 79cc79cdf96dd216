"""Programme sheets at the door: what a coach sent is read before its turn; templates and programmes are written as they
are sent."""

from dataclasses import dataclass
from functools import lru_cache

from bot.dialogue.incoming import FileFetched, SheetRead
from bot.runtime.ports import Made, Make
from bot.saying import Copy, Line, Wanted
from bot.sheets.reading import read_programme
from bot.sheets.remarks import with_remarks
from bot.sheets.writing import template, write_programme
from bot.training.people import Programme
from bot.wording.bundle import show_plain
from storage.engine import Store
from storage.plans import shelved

KEPT_READ = 4
"""So many sheets are kept read between their fetching and their turn."""


@dataclass(frozen=True, slots=True)
class Read:
    """What stands in a sheet, as in `SheetRead`."""

    programme: Programme | None
    problems: tuple[Line, ...]
    stops: int
    remarks: bytes | None


@lru_cache(KEPT_READ)
def read(content: bytes, name: str) -> Read:
    """A sheet's content; whatever is wrong with it is told and never raised. It may take seconds: whoever fetched the
    file reads it at once, off the event loop and off the writer thread, and the turn finds it read. Only a turn in
    another process, or after a crash in between, reads it anew."""
    programme, problems = read_programme(content, name)
    remarks = with_remarks(content, name, [(p, show_plain(p.what)) for p in problems]) if problems else None
    return Read(programme, tuple(p.line() for p in problems), sum(p.stops for p in problems), remarks)


def read_sheet(fetched: FileFetched) -> SheetRead:
    """The sheet that was fetched, read."""
    found = read(fetched.content, fetched.name)
    return SheetRead(
        fetched.chat,
        fetched.message,
        fetched.at,
        fetched.name,
        found.programme,
        found.problems,
        found.stops,
        found.remarks,
    )


def making(store: Store, copies: Make) -> Make:
    """Makes what is wanted: sheets here, copies of what is kept by `copies`."""

    def make(wanted: Wanted) -> Made | None:
        match wanted.copy:
            case Copy.TEMPLATE:
                return Made(template())
            case Copy.SHEET:
                with store.begin() as work:
                    programme = shelved(work, wanted.whose, wanted.after)
                return None if programme is None else Made(write_programme(programme))
            case Copy.OWN | Copy.PRACTICE:
                return copies(wanted)

    return make
