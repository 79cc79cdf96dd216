"""Programmes by spreadsheet: the coach sends a sheet, reads what it would do, and gives it to whom it is meant for.

A sheet that was read stands on the coach's shelf; nobody has it before the coach gives it. Every button that gives
checks that the programme, and what the client had, are still those that were looked at.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.desk import CoachDesk, Desk, RosterLine
from bot.dialogue.incoming import FileFailed, FileTrouble, MediaKind, MediaSent, SheetRead, Tapped
from bot.dialogue.lookover import few, review_lines
from bot.dialogue.turn import Turn
from bot.saying import BLANK, Button, Copy, Fetch, Line, Rows, Say, SayFile, Toast, Wanted, line
from bot.training.facts import ProgrammeShelved
from bot.training.people import Programme, Standing
from bot.training.samples import SAMPLE_ID, sample_programme

SHEETS = (".xlsx", ".csv")
LARGEST = 2_000_000
"""Bytes of a sheet. A year of programmes for forty clients is well below it."""
PURPOSE = "programme"
MOST_PROBLEMS = 12
MOST_SHOWN = 8
MOST_CLIENTS = 24


# --- the shelf


def shelf(coach: CoachDesk) -> Turn:
    """`/programme`: the coach's programmes, the sample, and the template to write one's own."""
    me = coach.profile
    mine = [p for p in coach.programmes if p.id != SAMPLE_ID][:MOST_SHOWN]
    lines = [line("shelf-title"), *(line("shelf-entry", title=p.title) for p in mine)]
    lines.append(line("shelf-how" if mine else "shelf-empty"))
    rows: Rows = (
        *((Button(line("shelf-open", title=p.title), show_press("c.prog", "", p.id)),) for p in mine),
        (Button(line("shelf-open", title=sample_programme().title), show_press("c.prog", "", SAMPLE_ID)),),
        (Button(line("shelf-template"), show_press("c.tmpl")),),
    )
    return Turn(says=(Say(me.chat, tuple(lines), rows, slot="shelf", fresh=True),))


def template(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The empty sheet with its explanations and a worked example."""
    del desk, press
    file = SayFile(
        coach.profile.chat, "programme.xlsx", Wanted(Copy.TEMPLATE, coach.profile.id), (line("shelf-template-how"),)
    )
    return Turn(says=(Toast(tap.query), file))


def as_sheet(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """A programme of the coach's as a sheet, to change and send back."""
    del desk
    found = named(coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    wanted = Wanted(Copy.SHEET, coach.profile.id, found.id)
    return Turn(
        says=(
            Toast(tap.query),
            SayFile(coach.profile.chat, f"{_file_name(found)}.xlsx", wanted, (line("shelf-sheet-how"),)),
        )
    )


def look(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """A programme from the shelf, looked over, with whom to give it to."""
    del desk
    found = named(coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    return Turn(says=(Toast(tap.query), page(coach, found, ())))


# --- a sheet comes in


def is_sheet(media: MediaSent) -> bool:
    """Whether it is a spreadsheet, by its name: what it truly is, its content shows."""
    return media.kind is MediaKind.DOCUMENT and media.file_name.lower().endswith(SHEETS)


def sent(coach: CoachDesk, media: MediaSent) -> Turn:
    """The coach has sent a sheet: its content is fetched, unless it is too large to be one."""
    chat = coach.profile.chat
    if media.size is not None and media.size > LARGEST:
        return Turn(says=(_too_big(chat, media.message, media.file_name),))
    return Turn(says=(Fetch(chat, media.file, media.message, media.file_name, PURPOSE, LARGEST),))


def received(desk: Desk, coach: CoachDesk, sheet: SheetRead) -> Turn:
    """What the sheet says, and what it would do; with what is wrong in it nothing changes, and the file comes back with
    a column of remarks."""
    chat = coach.profile.chat
    remarks = _remarks(chat, sheet)
    if sheet.programme is None:
        lines = [line("sheet-stops", name=sheet.name, count=sheet.stops), *few(list(sheet.problems), MOST_PROBLEMS)]
        lines.append(line("sheet-nothing-changed"))
        return Turn(says=(Say(chat, tuple(lines), reply_to=sheet.message), *remarks))
    known = any(p.id == sheet.programme.id for p in coach.programmes)
    found = sheet.programme if known else _with_id(sheet.programme, desk.tokens[0][:10])
    shown = page(coach, found, few(list(sheet.problems), MOST_PROBLEMS))
    return Turn((ProgrammeShelved(coach.profile.id, found),), (shown, *remarks))


def failed(coach: CoachDesk, failure: FileFailed) -> Turn:
    """The sheet's content can't be had: said plainly, with what to do."""
    chat = coach.profile.chat
    match failure.why:
        case FileTrouble.TOO_BIG:
            return Turn(says=(_too_big(chat, failure.message, failure.name),))
        case FileTrouble.GONE:
            words = line("sheet-gone", name=failure.name)
        case FileTrouble.FAILED:
            words = line("sheet-failed", name=failure.name)
    return Turn(says=(Say(chat, (words,), reply_to=failure.message),))


def _remarks(chat: int, sheet: SheetRead) -> tuple[SayFile, ...]:
    if sheet.remarks is None or not sheet.problems:
        return ()
    stem, dot, ending = sheet.name.rpartition(".")
    return (SayFile(chat, f"{stem} with remarks{dot}{ending}", sheet.remarks, (line("sheet-remarks"),)),)


def _too_big(chat: int, message: int, name: str) -> Say:
    return Say(chat, (line("sheet-too-big", name=name, megabytes=LARGEST // 1_000_000),), reply_to=message)


# --- looked over


def page(coach: CoachDesk, found: Programme, problems: Sequence[Line]) -> Say:
    """The programme looked over, and whom to give it to: nobody has it yet by looking."""
    lines = [*review_lines(found), *([BLANK, *problems] if problems else []), BLANK, line("programme-for-whom")]
    check = check_of(repr(found))
    people = [e for e in coach.roster if e.standing != Standing.WITHDRAWN][:MOST_CLIENTS]
    buttons = [
        Button(line("programme-look-for", name=e.name), show_press("c.gives", e.client, found.id, check))
        for e in people
    ]
    pairs: Rows = tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))
    those = have(coach, found)
    all_of_them: Rows = (
        ((Button(line("programme-for-all", count=len(those)), show_press("c.giveall", "", found.id, check)),),)
        if len(those) > 1
        else ()
    )
    sheet = Button(line("shelf-as-sheet"), show_press("c.sheet", "", found.id))
    days = Button(line("otherdays-open"), show_press("c.lay", "", found.id))
    return Say(coach.profile.chat, tuple(lines), (*pairs, *all_of_them, (sheet, days)), slot="shelf", fresh=True)


def have(coach: CoachDesk, found: Programme) -> list[RosterLine]:
    """Who has this programme now, in whatever version."""
    return [e for e in coach.roster if e.programme == found.id and e.standing != Standing.WITHDRAWN]


def named(coach: CoachDesk, press: Press, *, place: int = 0) -> Programme | None:
    """The programme on a button: from the coach's own shelf, or the sample; `None` for anything else."""
    wanted = press.args[place] if len(press.args) > place else ""
    if wanted == SAMPLE_ID:
        return sample_programme()
    return next((p for p in coach.programmes if p.id == wanted), None)


def _with_id(programme: Programme, new: str) -> Programme:
    """The file's own reference counts only where the coach has that programme; else it is a new one."""
    return replace(programme, id=new)


def _file_name(programme: Programme) -> str:
    kept = "".join(c if c.isalnum() or c in " -_" else "" for c in programme.title).strip()
    return kept[:60] or "programme"
