"""Programmes by spreadsheet: the coach sends a sheet, its content is fetched, and it is answered what it would change."""

from bot.dialogue.desk import CoachDesk, Desk
from bot.dialogue.incoming import FileFailed, FileFetched, FileTrouble, MediaKind, MediaSent
from bot.dialogue.turn import Turn
from bot.saying import Fetch, Say, line

SHEETS = (".xlsx", ".csv")
LARGEST = 2_000_000
"""Bytes of a sheet. A year of programmes for forty clients is well below it."""
PURPOSE = "programme"


def is_sheet(media: MediaSent) -> bool:
    """Whether it is a spreadsheet, by its name: what it truly is, its content shows."""
    return media.kind is MediaKind.DOCUMENT and media.file_name.lower().endswith(SHEETS)


def sent(coach: CoachDesk, media: MediaSent) -> Turn:
    """The coach has sent a sheet: its content is fetched, unless it is too large to be one."""
    chat = coach.profile.chat
    if media.size is not None and media.size > LARGEST:
        return Turn(says=(_too_big(chat, media.message, media.file_name),))
    return Turn(says=(Fetch(chat, media.file, media.message, media.file_name, PURPOSE, LARGEST),))


def received(desk: Desk, coach: CoachDesk, fetched: FileFetched) -> Turn:
    """The sheet's content is there."""
    del desk
    words = line("sheet-received", name=fetched.name, bytes=len(fetched.content))
    return Turn(says=(Say(coach.profile.chat, (words,), reply_to=fetched.message),))


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


def _too_big(chat: int, message: int, name: str) -> Say:
    return Say(chat, (line("sheet-too-big", name=name, megabytes=LARGEST // 1_000_000),), reply_to=message)
