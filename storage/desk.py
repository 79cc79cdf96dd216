"""The desk of a turn, in a handful of statements of which none grows with history. What each incoming thing needs:

- a client's words, edits, taps: who they are (with coach and talk, one statement), the days' sessions, the one that is
  meant, what waits (where anything does), strengths; see `storage.casebook`;
- a coach's words and taps: who they are, the talk, and by the one door the client whom a button, a reply, or the reply
  mode is about; the roster for `/clients`, `/programme`, `/digest` and words of which nobody knows for whom they are;
- `/start` with a payload, and a talk that remembers an `invite`: the invitation by its hash;
- a due rule: its client or coach; the digest for the digest's.
"""

import re
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from hashlib import sha256
from typing import assert_never

from bot.dialogue.buttons import Press, read_press
from bot.dialogue.copying import copy_key
from bot.dialogue.desk import CoachDesk, Desk, House
from bot.dialogue.incoming import (
    BotBlocked,
    Due,
    Edited,
    FileFailed,
    Incoming,
    MediaSent,
    RuleKind,
    SheetRead,
    Tapped,
    Typed,
)
from bot.dialogue.menuwords import asked_page
from bot.dialogue.missing import LATE
from bot.dialogue.turn import Talk
from bot.dialogue.wishes import may_wish
from bot.saying import Copy
from bot.training.calendar import local_day
from bot.training.people import Coach
from storage import outbox, people
from storage.casebook import Wanted, client_desk
from storage.changes import changes_of
from storage.digest import digest, waiting
from storage.holdings import holdings
from storage.looking import LOOK_LIFT_OPS, LOOK_OPS, look_back
from storage.people import ClientRow
from storage.plans import shelf_of
from storage.relays import about_of
from storage.roster import roster
from storage.talks import read_talk, talk_of
from storage.work import Work

Chatted = Typed | Edited | Tapped | MediaSent | SheetRead | FileFailed | BotBlocked
"""What comes from a chat."""

COACH_OPS = "c."
"""Buttons whose `ref` is a client's id, for coaches only."""

LIFT_OPS = LOOK_LIFT_OPS | frozenset(
    {"c.lifts", "c.lift1", "c.load", "c.loadask", "c.noload", "c.hold", "c.lift", "c.other", "c.swapin", "c.unswap"}
)
"""Buttons for which every exercise of the programme is looked at."""

SWAP_OPS = frozenset({"other", "swapin", "instead", "c.other", "c.swapin"})
"""Buttons for which another exercise is chosen."""

SHELF_OPS = frozenset({"c.prog", "c.sheet", "c.gives", "c.giveit", "c.giveall", "c.ungive", "c.lay", "c.layit"})
"""Buttons that name a programme of the coach's."""

WEEK_OPS = frozenset({"wk", "wkday", "wkgo", "wklose", "wklay", "wkback", "start", "more", "pick", "instead"})
"""Buttons for which the client's week is looked at."""

LATELY_OPS = frozenset({"c.sload"})
"""Buttons for which a client's last sessions are looked at."""

MANY_OPS = frozenset({"c.several", "c.switch", "c.tothese", "c.toall"})
"""Buttons about everybody."""

ABOUT_SOMEBODY = frozenset({"reply", "note", "order-load", "handover", "c-away"})
"""A coach's talks whose step is the client they are about."""

_NAMES_A_DAY = re.compile(
    r"\b(yesterday|last|ago|mon|tue|wed|thu|fri|sat|sun|tomorrow|before|earlier)|\d[./-]\d", re.IGNORECASE
)
"""Words that may speak of another day's session."""


@dataclass(frozen=True, slots=True)
class Caller:
    """Who stands behind a chat."""

    client: ClientRow | None = None
    coach: Coach | None = None
    talk: Talk | None = None


def build(work: Work, incoming: Incoming, *, now: datetime, house: House, tokens: tuple[str, ...]) -> Desk:
    """The desk for this incoming thing."""
    bare = Desk(now, house, tokens)
    match incoming:
        case Due():
            return _for_the_clock(work, incoming, bare)
        case Typed() | Edited() | Tapped() | MediaSent() | SheetRead() | FileFailed() | BotBlocked():
            return _for_a_chat(work, incoming, bare)
        case _:
            assert_never(incoming)


def _for_the_clock(work: Work, incoming: Due, bare: Desk) -> Desk:
    if incoming.kind is RuleKind.DIGEST:
        coach = people.coach_by_id(work, incoming.whose)
        if coach is None:
            return bare
        talk = talk_of(work, coach.chat, now=bare.now)
        return replace(bare, talk=talk, coach=CoachDesk(coach, digest=digest(work, coach, now=bare.now)))
    row = people.client_by_id(work, incoming.whose)
    if row is None:
        return bare
    wanted = Wanted(
        session=incoming.ref.removeprefix(LATE) if incoming.ref.startswith(LATE) else "",
        day=local_day(incoming.due_at, row.profile.zone),
        strengths=incoming.kind in (RuleKind.SESSION, RuleKind.CUTOFF, RuleKind.WEEK, RuleKind.REST),
        weeks=incoming.kind in (RuleKind.WEEK, RuleKind.SESSION),
        lately=incoming.kind is RuleKind.SESSION,
    )
    talk = talk_of(work, row.profile.chat, now=bare.now)
    return replace(bare, talk=talk, client=client_desk(work, row, wanted, now=bare.now))


def _for_a_chat(work: Work, incoming: Chatted, bare: Desk) -> Desk:
    who = _caller(work, incoming.chat, bare.now)
    press = read_press(incoming.data) if isinstance(incoming, Tapped) else None
    desk = replace(bare, talk=who.talk)
    if isinstance(incoming, Typed | MediaSent) and incoming.reply_to is not None:
        found = about_of(work, incoming.chat, incoming.reply_to)
        if found is not None:
            desk = replace(desk, reply_about=found[0], reply_message=found[1])
    if who.client is not None:
        wanted = _wanted(incoming, press)
        desk = replace(desk, client=client_desk(work, who.client, wanted, now=bare.now))
    if desk.client is not None and press is not None and press.op in LOOK_OPS and not press.op.startswith(COACH_OPS):
        desk = replace(desk, client=replace(desk.client, past=look_back(work, desk.client, desk, press)))
    if who.coach is not None:
        desk = replace(desk, coach=_coach_desk(work, who, incoming, press, desk))
    command = _command(incoming) or _page(incoming)
    if command == "/delete_me" and desk.client is not None:
        desk = replace(desk, client=replace(desk.client, holdings=holdings(work, incoming.chat)))
    if command == "/export":
        desk = replace(desk, copied_at=_copied_at(work, desk))
    token_hash = _invite_shown(incoming, who.talk)
    return replace(desk, invite=people.invite_of(work, token_hash, now=bare.now)) if token_hash else desk


def _copied_at(work: Work, desk: Desk) -> datetime | None:
    """When the chat's last copy was asked for: in this hour of the clock, or the one before."""
    mine = [(Copy.OWN, desk.client.profile.id)] if desk.client is not None else []
    mine += [(Copy.PRACTICE, desk.coach.profile.id)] if desk.coach is not None else []
    hours = (desk.now, desk.now - timedelta(hours=1))
    found = (outbox.put_at(work, copy_key(copy, whose, at)) for copy, whose in mine for at in hours)
    return max((at for at in found if at is not None), default=None)


def _caller(work: Work, chat: int, now: datetime) -> Caller:
    """One statement for a client, two for a coach, three for a stranger."""
    row = people.at_chat(work, chat)
    if row is not None:
        client = people.read_client(work, row)
        coach = None if row.own_coach is None else people.coach_by_id(work, row.own_coach)
        return Caller(client, coach, read_talk(work, row.talk_data, row.talk_expires_at, now=now))
    return Caller(None, people.coach_at(work, chat), talk_of(work, chat, now=now))


def _wanted(incoming: Chatted, press: Press | None) -> Wanted:
    match incoming:
        case Typed(text=text):
            command = _command(incoming) or _page(incoming)
            if command:
                today = command in ("/today", "/log")
                weeks = today or command.startswith("/week")
                return Wanted(strengths=True, weeks=weeks, lately=today)
            return Wanted(strengths=True, weeks=bool(_NAMES_A_DAY.search(text)), swaps=may_wish(text))
        case Edited(message=message, text=text):
            return Wanted(message_key=f"m{message}", strengths=True, weeks=bool(_NAMES_A_DAY.search(text)))
        case MediaSent(caption=caption):
            return Wanted(strengths=bool(caption), weeks=bool(_NAMES_A_DAY.search(caption)))
        case Tapped():
            if press is None or press.op.startswith(COACH_OPS):
                return Wanted()
            if press.op in LIFT_OPS:
                return Wanted(strengths=True, lifts=True)
            swaps, weeks = press.op in SWAP_OPS, press.op in WEEK_OPS
            return Wanted(token=press.ref, strengths=True, swaps=swaps, weeks=weeks, lately=press.op == "start")
        case SheetRead() | FileFailed() | BotBlocked():
            return Wanted()


def _coach_desk(work: Work, who: Caller, incoming: Chatted, press: Press | None, desk: Desk) -> CoachDesk:
    coach = who.coach
    assert coach is not None
    about = _about(incoming, press, desk)
    row = people.row_of(work, coach.id, about) if about else None
    mine = CoachDesk(coach)
    command = _command(incoming)
    shown = press.op if press is not None else ""
    if row is not None:
        looks_at_lifts = desk.talk is not None and desk.talk.name == "order-load" and press is None
        lifts = looks_at_lifts or (press is not None and press.op in LIFT_OPS)
        before, other = shown == "c.ungive", shown in SWAP_OPS
        lately = shown in LATELY_OPS
        wanted = Wanted(last_done=True, weeks=True, lifts=lifts, before=before, swaps=other, lately=lately)
        case = client_desk(work, row, wanted, now=desk.now)
        mine = replace(mine, about=case)
        if press is not None and shown in LOOK_OPS:
            mine = replace(mine, about=replace(case, past=look_back(work, case, desk, press)))
    if shown == "c.changes" and row is not None:
        mine = replace(mine, changes=changes_of(work, row.profile.id))
    if command == "/inbox":
        mine = replace(mine, waiting=waiting(work, coach))
    if command == "/digest" or shown == "c.digest":
        mine = replace(mine, digest=digest(work, coach, now=desk.now))
    is_sheet = isinstance(incoming, SheetRead)
    if command in ("/programme", "/plan", "/delete_me") or shown in SHELF_OPS or is_sheet:
        mine = replace(mine, programmes=shelf_of(work, coach.id))
    asks_for_whom = isinstance(incoming, Typed | MediaSent) and not command and row is None
    if (
        command in ("/clients", "/programme", "/plan", "/digest", "/delete_me")
        or asks_for_whom
        or shown in ("c.clients", "c.digest", "c.prog", "c.layit", "c.giveall", "c.erase", *MANY_OPS)
        or is_sheet
    ):
        mine = replace(mine, roster=roster(work, coach, desk.now))
    return mine


def _about(incoming: Chatted, press: Press | None, desk: Desk) -> str:
    """The id that a coach's button, reply or reply mode is about; `client_of` decides whether it is theirs."""
    if press is not None:
        return press.ref if press.op.startswith(COACH_OPS) else ""
    if not isinstance(incoming, Typed | MediaSent) or _command(incoming):
        return ""
    if desk.reply_about:
        return desk.reply_about
    return desk.talk.step if desk.talk is not None and desk.talk.name in ABOUT_SOMEBODY else ""


def _command(incoming: Incoming) -> str:
    """The command at the start of a typed message, without the bot's name; empty for other words."""
    if not isinstance(incoming, Typed) or not incoming.text.lstrip().startswith("/"):
        return ""
    return incoming.text.split(maxsplit=1)[0].partition("@")[0].lower()


def _page(incoming: Incoming) -> str:
    """The command that plain words stand for; empty for other words."""
    return (asked_page(incoming.text) if isinstance(incoming, Typed) else None) or ""


def _invite_shown(incoming: Incoming, talk: Talk | None) -> str:
    """The hash of the invitation that somebody shows, or that the talk with them remembers."""
    if _command(incoming) == "/start" and isinstance(incoming, Typed):
        payload = incoming.text.split(maxsplit=1)[1:]
        if payload:
            return sha256(payload[0].strip().encode()).hexdigest()
    if isinstance(incoming, Typed) and talk is not None and talk.name == "handover":
        return sha256(incoming.text.strip().rpartition("start=")[2].encode()).hexdigest()
    return talk.get("invite") if talk is not None else ""
