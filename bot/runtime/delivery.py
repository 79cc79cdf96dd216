"""One parcel carried: which call it becomes, and what the platform's answer means for it."""

import asyncio

import structlog

from bot.dialogue.incoming import FileTrouble
from bot.runtime.bodies import (
    body_hash,
    read_fetch,
    read_file,
    read_menu,
    read_react,
    read_relay,
    read_send,
    read_strip,
)
from bot.runtime.files import call_of, read_bringing, whole
from bot.runtime.ports import (
    Call,
    CopyOver,
    Draw,
    EditPicture,
    EditWords,
    Later,
    LeaveChat,
    Make,
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
from bot.runtime.programmes import read
from bot.runtime.settlements import (
    Claimed,
    Delivered,
    Fetched,
    Given,
    Postponed,
    Settlement,
    settle_common,
)
from bot.saying import Repeat, line
from bot.wording.bundle import show_html, show_plain
from storage.outbox import Parcel, ParcelKind

log = structlog.get_logger("send")


async def deliver(claimed: Claimed, *, sender: Sender, draw: Draw, make: Make) -> Settlement:
    """Carries a parcel: at most three calls (an edit, a new message in its place, plain words where markup fails)."""
    parcel = claimed.parcel
    match parcel.kind:
        case ParcelKind.SEND:
            return await _Message(claimed, sender, draw).deliver()
        case ParcelKind.FILE:
            return await _deliver_file(claimed, sender, make)
        case ParcelKind.FETCH:
            return await _bring(parcel, sender)
        case _:
            return await _deliver_bare(claimed, sender)


async def _deliver_file(claimed: Claimed, sender: Sender, make: Make) -> Settlement:
    """A file and the words beside it; where their markup is refused, once more in plain words."""
    parcel, body = claimed.parcel, read_file(claimed.parcel.body)
    made = await whole(body, make)
    if made is None:
        return Given("nobody to make it of")
    call = call_of(parcel, body, made, is_html=True, again=claimed.maybe_sent)
    outcome = await sender.send(call)
    if isinstance(outcome, Refused) and outcome.why is Refusal.BAD_MARKUP:
        log.error("markup refused", key=parcel.key, error=outcome.error)
        outcome = await sender.send(call_of(parcel, body, made, is_html=False, again=claimed.maybe_sent))
    if isinstance(outcome, Sent):
        return Delivered(outcome.message, following=made.following)
    return settle_common(parcel, outcome)


async def _bring(parcel: Parcel, sender: Sender) -> Settlement:
    """The content of a file, or after some tries that it can't be had."""
    asked = read_fetch(parcel.body)
    brought = read_bringing(parcel, await sender.bring(asked.file, most=asked.most))
    match brought:
        case Later(after_s):
            return Postponed("asked to wait", after_s=after_s)
        case FileTrouble():
            return Fetched(brought)
        case bytes():
            await asyncio.to_thread(read, brought, asked.name)  # so that its turn, on the writer thread, need not
            return Fetched(brought)
        case str():
            return Postponed(brought)


async def _deliver_bare(claimed: Claimed, sender: Sender) -> Settlement:
    parcel = claimed.parcel
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
            return CopyOver(parcel.chat, relay.source_chat, relay.source_message, relay.reply_to, parcel.silent)
        case ParcelKind.MENU:
            return ShowMenu(parcel.chat, read_menu(parcel.body).role)
        case ParcelKind.LEAVE:
            return LeaveChat(parcel.chat)
        case ParcelKind.SEND | ParcelKind.FILE | ParcelKind.FETCH:
            raise ValueError("it has its own way")


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
