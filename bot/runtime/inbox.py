"""What came in: kept raw before it is acknowledged, then worked through: each chat in order, many side by side."""

import secrets
import traceback
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import assert_never

import structlog

import storage.desk
import storage.inbox
from bot.dialogue.desk import Desk, House
from bot.dialogue.incoming import (
    BotBlocked,
    Due,
    Edited,
    FileFailed,
    FileFetched,
    Incoming,
    MediaSent,
    SheetRead,
    Tapped,
    Typed,
)
from bot.dialogue.turn import NOTHING, Turn
from bot.runtime.files import read_own
from bot.runtime.ports import AnswerTap, Arrived, UpdateReader
from bot.runtime.programmes import read_sheet
from bot.runtime.turns import Committed, commit
from bot.saying import Leave, Say, Toast, line
from storage.engine import is_retryable
from storage.facts import Origin
from storage.inbox import InboxRow, RawUpdate
from storage.work import Overtaken, Work

Answer = Callable[[Desk, Incoming], Turn]
"""`bot.dialogue.router.answer`, or a test's own."""

TRIES = 3
"""A turn that failed so often is set aside."""

PASS = 32
"""At most so many turns share a transaction."""

TOKENS = 4
"""Fresh random texts on a desk."""

log = structlog.get_logger("turn")


@dataclass(frozen=True, slots=True)
class Desks:
    """What a turn needs beside the database."""

    reader: UpdateReader
    answer: Answer
    house: House
    worker: str


@dataclass(slots=True)
class Worked:
    """What a pass did: `more` where chats still wait."""

    turns: int = 0
    parcels: int = 0
    taps: list[AnswerTap] = field(default_factory=list)
    more: bool = False


def receive(work: Work, arrived: Sequence[Arrived], *, bot: int, now: datetime) -> int:
    """Keeps raw updates; one that came before is left alone. How many chats have something new."""
    rows = [RawUpdate(bot=bot, update=a.update, chat=a.chat, raw=a.raw) for a in arrived if a.chat is not None]
    return len(storage.inbox.receive(work, rows, now=now)) if rows else 0


def work_some(work: Work, desks: Desks, *, now: datetime, limit: int = PASS) -> Worked:
    """The oldest turn of each waiting chat, up to `limit` chats, each under a savepoint of its own."""
    worked = Worked()
    chats = storage.inbox.chats_waiting(work, limit=limit)
    for chat in chats:
        row = storage.inbox.claim(work, chat, worker=desks.worker, now=now)
        if row is not None:
            _work_row(work, row, desks, now=now, worked=worked)
    worked.more = worked.turns > 0
    return worked


def _work_row(work: Work, row: InboxRow, desks: Desks, *, now: datetime, worked: Worked) -> None:
    worked.turns += 1
    incoming: Incoming | Leave | None = None
    try:
        incoming = _read(row, desks)
        turn, done = _answered(work, row, incoming, desks, now=now)
    except Exception as error:
        if is_retryable(error):
            raise  # the database's trouble (a lock, a lost connection): nobody's try is counted
        _fail(work, row, incoming, error, now=now, worked=worked)
        return
    worked.parcels += done.parcels
    worked.taps += done.taps or _bare_taps(incoming, turn)
    log.info(
        "turn",
        update=row.update,
        what=type(incoming).__name__,
        facts=len(turn.facts),
        says=len(turn.says),
        skipped=turn.skipped or None,
        waited_ms=int((now - row.received_at).total_seconds() * 1000),
    )


def _read(row: InboxRow, desks: Desks) -> Incoming | Leave | None:
    """A row below zero is our own: a file that we fetched, here read. No update of the platform's has such a number."""
    if row.update < 0:
        own = read_own(row.raw, chat=row.chat, received_at=row.received_at)
        return read_sheet(own) if isinstance(own, FileFetched) else own
    return desks.reader.read(row.raw, received_at=row.received_at)


def _answered(
    work: Work, row: InboxRow, incoming: Incoming | Leave | None, desks: Desks, *, now: datetime
) -> tuple[Turn, Committed]:
    """The turn, kept; where another process came in between, once more from a new desk."""
    for _ in range(TRIES):
        try:
            with work.savepoint():
                turn = _turn_of(work, incoming, desks, now=now)
                origin = _origin(row, incoming)
                done = commit(work, turn, origin=origin, key=f"reply:{row.update}", now=now)
                if not storage.inbox.keep_done(work, row, now=now):
                    raise Overtaken  # its lease ran out, and another process has done it
                return turn, done
        except Overtaken:
            log.info("overtaken", update=row.update)
    raise Overtaken


def _turn_of(work: Work, incoming: Incoming | Leave | None, desks: Desks, *, now: datetime) -> Turn:
    if incoming is None:
        return NOTHING
    if isinstance(incoming, Leave):
        return Turn(says=(incoming,))
    return turn_for(work, incoming, desks, now=now)


def turn_for(work: Work, incoming: Incoming, desks: Desks, *, now: datetime) -> Turn:
    """The desk as of now, and what is answered from it."""
    chance = secrets.token_urlsafe(18 * TOKENS)
    tokens = tuple(chance[24 * n : 24 * (n + 1)] for n in range(TOKENS))
    desk = storage.desk.build(work, incoming, now=now, house=desks.house, tokens=tokens)
    return desks.answer(desk, incoming)


def _fail(
    work: Work, row: InboxRow, incoming: Incoming | Leave | None, error: Exception, *, now: datetime, worked: Worked
) -> None:
    """Counts the try; the last one sets the turn aside, and the person hears that it went wrong."""
    place = place_of(error)
    is_aside = storage.inbox.keep_failed(work, row, place, now=now, limit=TRIES)
    log.error("turn failed", update=row.update, tries=row.attempts + 1, error=place, set_aside=is_aside)
    if not is_aside:
        return
    if isinstance(incoming, Tapped):
        worked.taps.append(AnswerTap(incoming.query))
    if not isinstance(incoming, Leave | BotBlocked):
        sorry = Turn(says=(Say(row.chat, (line("turn-went-wrong"),)),))
        origin = _origin(row, incoming)
        worked.parcels += commit(work, sorry, origin=origin, key=f"aside:{row.update}", now=now).parcels


def _bare_taps(incoming: Incoming | Leave | None, turn: Turn) -> list[AnswerTap]:
    """Every tap is acknowledged, also where the turn has nothing to show for it."""
    if isinstance(incoming, Tapped) and not any(isinstance(s, Toast) for s in turn.says):
        return [AnswerTap(incoming.query)]
    return []


def _origin(row: InboxRow, incoming: Incoming | Leave | None) -> Origin:
    """Who said it, when, and in which message."""
    by = f"chat:{row.chat}"
    match incoming:
        case Typed() | Edited() | MediaSent() | SheetRead() | FileFailed():
            return Origin(by=by, at=incoming.at, source=f"m{incoming.chat}:{incoming.message}")
        case Tapped() | BotBlocked() | Leave() | None:
            return Origin(by=by, at=row.received_at, source=f"t{row.update}")
        case Due():  # never in the inbox
            return Origin(by="clock", at=incoming.due_at, source=f"t{row.update}")
        case _:
            assert_never(incoming)


def place_of(error: BaseException) -> str:
    """An error by its kind and place: never its text, which may hold people's words."""
    frames = traceback.extract_tb(error.__traceback__)
    where = f"{frames[-1].filename.rsplit('/', 1)[-1]}:{frames[-1].lineno}" if frames else "?"
    ours = [f for f in frames if "/bot/" in f.filename or "/storage/" in f.filename]
    first = f" from {ours[-1].filename.rsplit('/', 1)[-1]}:{ours[-1].lineno}" if ours else ""
    return f"{type(error).__name__} at {where}{first}"
