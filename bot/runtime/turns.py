"""A turn committed whole: its facts, what it keeps, and its words as parcels of the outbox, in one transaction."""

from dataclasses import dataclass
from datetime import datetime

import structlog

import storage.erasure
import storage.facts
import storage.outbox
import storage.paces
import storage.schedule
import storage.strengths
import storage.talks
from bot.dialogue.turn import (
    ClientForgotten,
    CoachForgotten,
    Keeping,
    PaceKept,
    RuleSet,
    StrengthKept,
    StrengthStale,
    TalkSet,
    Turn,
)
from bot.runtime.bodies import (
    FetchBody,
    FileBody,
    LeaveBody,
    MenuBody,
    ReactBody,
    RelayBody,
    SendBody,
    StripBody,
    show_body,
)
from bot.runtime.ports import AnswerTap
from bot.runtime.settling import LEAVING
from bot.saying import (
    LARGEST_MADE,
    Fetch,
    Leave,
    Menu,
    React,
    Relay,
    Repeat,
    Say,
    SayFile,
    Saying,
    Strip,
    Toast,
    Urgency,
)
from bot.wording.bundle import show_plain
from bot.wording.render import Rendered, render_caption, render_parts
from storage.facts import Origin
from storage.outbox import NewParcel, ParcelKind
from storage.work import Work

log = structlog.get_logger("turn")


@dataclass(frozen=True, slots=True)
class Committed:
    """What a committed turn leaves to do: taps to acknowledge (not kept), and how many parcels wait."""

    taps: tuple[AnswerTap, ...]
    parcels: int


def commit(work: Work, turn: Turn, *, origin: Origin, key: str, now: datetime) -> Committed:
    """Keeps all of a turn. `key` starts the keys of its parcels: the same turn again adds none."""
    for fact in turn.facts:
        storage.facts.keep(work, fact, origin)
    for keeping in turn.keeps:
        _keep(work, keeping, now)
    if any(isinstance(keeping, ClientForgotten | CoachForgotten) for keeping in turn.keeps):
        key = f"{LEAVING}{key}"
    parcels = tuple(p for n, saying in enumerate(turn.says) for p in parcels_of(saying, key=f"{key}:{n}"))
    if parcels:
        storage.outbox.put(work, parcels, now=now)
    return Committed(taps_of(turn), len(parcels))


def taps_of(turn: Turn) -> tuple[AnswerTap, ...]:
    """The acknowledgements of taps: best effort, right after the commit."""
    toasts = (saying for saying in turn.says if isinstance(saying, Toast))
    return tuple(AnswerTap(t.query, show_plain(t.line) if t.line else "") for t in toasts)


def parcels_of(saying: Saying, *, key: str) -> tuple[NewParcel, ...]:
    """What the outbox gets for it: nothing for a toast, several parts for a long message."""
    match saying:
        case Say():
            rendered = render_parts(saying)
            keys = _part_keys(saying.key or key, len(rendered))
            return tuple(_message(saying, part, key=k) for k, part in zip(keys, rendered, strict=True))
        case SayFile():
            return (_file(saying, key=saying.key or key),)
        case Fetch():
            fetched = FetchBody(saying.file, saying.message, saying.name, saying.purpose, saying.most)
            return (_bare(key, saying.chat, ParcelKind.FETCH, show_body(fetched)),)
        case React():
            body = show_body(ReactBody(saying.message, saying.emoji))
            return (_bare(key, saying.to, ParcelKind.REACT, body),)
        case Strip():
            body = show_body(StripBody(saying.message))
            return (_bare(key, saying.to, ParcelKind.STRIP, body, slot=saying.slot),)
        case Relay():
            body = show_body(RelayBody(saying.source_chat, saying.source_message, saying.reply_to))
            kind, urgency = ParcelKind.RELAY, saying.urgency
            about, silent = saying.about, saying.silent
            return (_bare(key, saying.to, kind, body, about=about, urgency=urgency, silent=silent),)
        case Menu():
            return (_bare(key, saying.to, ParcelKind.MENU, show_body(MenuBody(saying.role))),)
        case Leave():
            return (_bare(key, saying.to, ParcelKind.LEAVE, show_body(LeaveBody())),)
        case Toast():
            return ()


def _part_keys(key: str, parts: int) -> tuple[str, ...]:
    return (key,) if parts == 1 else tuple(f"{key}/{n}" for n in range(1, parts + 1))


def _message(say: Say, part: Rendered, *, key: str) -> NewParcel:
    body = SendBody(part.html, part.plain, part.keyboard or (), say.reply_to, say.picture)
    return NewParcel(
        key=key,
        chat=say.to,
        kind=ParcelKind.SEND,
        body=show_body(body),
        urgency=int(say.urgency),
        repeat=say.repeat.value,
        slot=say.slot,
        fresh=say.fresh,
        about=say.about,
        expires_at=say.expires_at,
        silent=say.silent,
    )


def _file(say: SayFile, *, key: str) -> NewParcel:
    """`ValueError` where the talk made more than may wait in the outbox."""
    if isinstance(say.file, bytes) and len(say.file) > LARGEST_MADE:
        raise ValueError(f"a file of {len(say.file)} bytes")
    words = render_caption(say.lines, say.buttons)
    body = FileBody(say.name, say.file, words.html, words.plain, words.keyboard or (), say.reply_to)
    return NewParcel(
        key=key,
        chat=say.to,
        kind=ParcelKind.FILE,
        body=show_body(body),
        urgency=int(say.urgency),
        repeat=say.repeat.value,
        about=say.about,
        expires_at=say.expires_at,
        silent=say.silent,
    )


def _bare(
    key: str,
    chat: int,
    kind: ParcelKind,
    body: str,
    *,
    slot: str = "",
    about: str = "",
    urgency: Urgency = Urgency.REPLY,
    silent: bool = False,
) -> NewParcel:
    return NewParcel(
        key=key,
        chat=chat,
        kind=kind,
        body=body,
        urgency=int(urgency),
        repeat=Repeat.RESEND.value,
        slot=slot,
        about=about,
        silent=silent,
    )


def _keep(work: Work, keeping: Keeping, now: datetime) -> None:
    match keeping:
        case StrengthKept():
            storage.strengths.keep(work, keeping)
        case StrengthStale():
            storage.strengths.rebuild(work, keeping.client, keeping.exercise)
        case PaceKept():
            storage.paces.keep(work, keeping)
        case RuleSet():
            storage.schedule.keep_rule(work, keeping, now=now)
        case TalkSet():
            storage.talks.keep_talk(work, keeping)
        case ClientForgotten(chat):
            log.info("forgotten", clients=storage.erasure.forget_at(work, chat))
        case CoachForgotten(coach):
            storage.erasure.forget_coach(work, coach)
            log.info("forgotten", coach=coach)
