"""Programme sheets at the door: what a coach sent is read before its turn; templates and programmes are written as they
are sent."""

from bot.dialogue.incoming import FileFetched, SheetRead
from bot.runtime.ports import Made, Make
from bot.saying import Copy, Wanted
from bot.sheets.reading import read_programme
from bot.sheets.remarks import with_remarks
from bot.sheets.writing import template, write_programme
from bot.wording.bundle import show_plain
from storage.engine import Store
from storage.plans import shelved


def read_sheet(fetched: FileFetched) -> SheetRead:
    """The sheet, read; whatever is wrong with it is told and never raised."""
    programme, problems = read_programme(fetched.content, fetched.name)
    remarks = (
        with_remarks(fetched.content, fetched.name, [(p, show_plain(p.what)) for p in problems]) if problems else None
    )
    return SheetRead(
        fetched.chat,
        fetched.message,
        fetched.at,
        fetched.name,
        programme,
        tuple(p.line() for p in problems),
        sum(p.stops for p in problems),
        remarks,
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
