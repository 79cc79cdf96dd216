"""One parcel carried: which call it becomes, and what the platform's answer means for it."""

import asyncio
from dataclasses import dataclass

import structlog

from bot.runtime.bodies import (
    body_hash,
    read_menu,
    read_react,
    read_relay,
    read_send,
    read_strip,
)
from bot.runtime.ports import (
    Call,
    CopyOver,
    Draw,
    EditPicture,
    EditWords,
    Gone,
    Later,
    LeaveChat,
    NotSent,
    Outcome,
    Refusal,
    Refused,
    Sender,
    SendPicture,
    SendWords,
    Sent,
    SetReaction,
    ShowMenu,
    StripButtons,
    Unknown,
)
from bot.saying import Repeat, line
from bot.wording.bundle import show_html, show_plain
from storage.outbox import Parcel, ParcelKind
from storage.slots import SlotRow

log = structlog.get_logger("send")


@dataclass(frozen=True, slots=True)
class Claimed:
    """A parcel in hand, with the message that its slot holds. `maybe_sent`: an earlier try may have arrived."""

    parcel: Parcel
    slot: SlotRow | None
    maybe_sent: bool


@dataclass(frozen=True, slots=True)
class Delivered:
    """It is there. `message`: its number; `shown`: the hash of what stands there; `strip`: an older message whose
    buttons are to go."""

    message: int | None = None
    shown: str = ""
    strip: int | None = None
    skipped: bool = False


@dataclass(frozen=True, slots=True)
class Postponed:
    """Try again; `after_s` where the platform or our pace says when. `maybe_sent` as in `Claimed`."""

    error: str
    after_s: float | None = None
    maybe_sent: bool = False


@dataclass(frozen=True, slots=True)
class Given:
    """Given up: refused for good, or never is better than twice."""

    error: str


@dataclass(frozen=True, slots=True)
class Unreachable:
    """The chat takes nothing from us any more."""

    error: str


Settlement = Delivered | Postponed | Given | Unreachable


async def deliver(claimed: Claimed, *, sender: Sender, draw: Draw) -> Settlement:
    """Carries a parcel: at most three calls (an edit, a new message in its place, plain words where markup fails)."""
    parcel = claimed.parcel
    if parcel.kind is ParcelKind.SEND:
        return await _Message(claimed, sender, draw).deliver()
    call = _bare_call(claimed)
    if call is None:
        return Delivered(skipped=True)
    return _settle_bare(parcel, call, await sender.send(call))


def _bare_call(claimed: Claimed) -> Call | None:
    """The call of a parcel without words; `None` where there is nothing to do."""
    parcel = claimed.parcel
    match parcel.kind:
        case ParcelKind.REACT:
            react = read_react(parcel.body)
            return SetReaction(parcel.chat, react.message, react.emoji)
        case ParcelKind.STRIP:
            message = read_strip(parcel.body).message
            if message is None and claimed.slot is not None:
                message = claimed.slot.message
            return None if message is None else StripButtons(parcel.chat, message)
        case ParcelKind.RELAY:
            relay = read_relay(parcel.body)
            return CopyOver(parcel.chat, relay.source_chat, relay.source_message, relay.reply_to)
        case ParcelKind.MENU:
            return ShowMenu(parcel.chat, read_menu(parcel.body).role)
        case ParcelKind.LEAVE:
            return LeaveChat(parcel.chat)
        case ParcelKind.SEND:
            raise ValueError("a message has its own way")


def _settle_bare(parcel: Parcel, call: Call, outcome: Outcome) -> Settlement:
    match outcome:
        case Sent(message):
            return Delivered(message)
        case Refused(why, error):
            harmless = isinstance(call, StripButtons) and why in (Refusal.UNCHANGED, Refusal.NO_SUCH_MESSAGE)
            return Delivered() if harmless else Given(error)
        case Unknown(error) if not isinstance(call, CopyOver):
            return Postponed(error)  # doing it twice changes nothing
        case _:
            return settle_common(parcel, outcome)


def settle_common(parcel: Parcel, outcome: Outcome) -> Settlement:
    """What an outcome means where nothing special applies."""
    match outcome:
        case Sent(message):
            return Delivered(message)
        case Later(after_s):
            return Postponed("asked to wait", after_s=after_s)
        case Gone(error):
            return Unreachable(error)
        case Refused(_, error):
            return Given(error)
        case NotSent(error):
            return Postponed(error)
        case Unknown(error, answered):
            if parcel.repeat == Repeat.DROP:
                return Postponed(error) if answered else Given(f"may have arrived: {error}")
            return Postponed(error, maybe_sent=True)


class _Message:
    """A parcel with words, on its way."""

    def __init__(self, claimed: Claimed, sender: Sender, draw: Draw) -> None:
        self._claimed, self._sender, self._draw = claimed, sender, draw
        self._parcel = claimed.parcel
        self._body = read_send(claimed.parcel.body)
        self._shown = body_hash(self._body)
        self._png: bytes | None = None

    async def deliver(self) -> Settlement:
        """Edits what its slot shows, else sends anew."""
        slot = self._claimed.slot
        if slot is None:
            return await self._send_new(strip=None)
        if self._parcel.fresh:
            return await self._send_new(strip=slot.message)
        if slot.body_hash == self._shown:
            return Delivered(slot.message, self._shown, skipped=True)
        return await self._edit(slot.message)

    async def _edit(self, message: int) -> Settlement:
        outcome = await self._carry(edit=message)
        match outcome:
            case Sent():
                return Delivered(message, self._shown)
            case Refused(Refusal.UNCHANGED):
                return Delivered(message, self._shown)
            case Refused(Refusal.NO_SUCH_MESSAGE):
                return await self._send_new(strip=None)
            case Unknown(error):
                return Postponed(error)  # an edit made twice is made once
            case _:
                return settle_common(self._parcel, outcome)

    async def _send_new(self, *, strip: int | None) -> Settlement:
        outcome = await self._carry(edit=None)
        if isinstance(outcome, Sent):
            return Delivered(outcome.message, self._shown, strip=strip)
        return settle_common(self._parcel, outcome)

    async def _carry(self, *, edit: int | None) -> Outcome:
        """The call with its markup; where that is refused, once more in plain words."""
        outcome = await self._sender.send(await self._call(edit=edit, is_html=True))
        if isinstance(outcome, Refused) and outcome.why is Refusal.BAD_MARKUP:
            log.error("markup refused", key=self._parcel.key, error=outcome.error)
            return await self._sender.send(await self._call(edit=edit, is_html=False))
        return outcome

    async def _call(self, *, edit: int | None, is_html: bool) -> Call:
        chat, words, keyboard = self._parcel.chat, self._words(is_html=is_html), self._body.keyboard
        if self._body.picture is None:
            if edit is not None:
                return EditWords(chat, edit, words, keyboard, is_html)
            silent, reply_to = self._parcel.silent, self._body.reply_to
            return SendWords(chat, words, keyboard, is_html, silent, reply_to)
        if self._png is None:
            self._png = await asyncio.to_thread(self._draw, self._body.picture)
        if edit is not None:
            return EditPicture(chat, edit, self._png, words, keyboard, is_html)
        return SendPicture(chat, self._png, words, keyboard, is_html, self._parcel.silent, self._body.reply_to)

    def _words(self, *, is_html: bool) -> str:
        words = self._body.html if is_html else self._body.plain
        if not self._claimed.maybe_sent or self._parcel.repeat != Repeat.AGAIN:
            return words
        mark = show_html(line("sent-again")) if is_html else show_plain(line("sent-again"))
        return f"{mark} {words}"
