"""What goes out: claimed from the outbox, carried side by side (one at a time in each chat), and settled.

Settling what came back and claiming what goes next is one transaction. A parcel is marked as being sent before its
call; what was in hand when a process died is known to be uncertain (`recover`).
"""

import asyncio
import random
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta

import structlog

import storage.outbox
import storage.people
import storage.relays
import storage.slots
from bot.faults import ChatFault
from bot.runtime.bodies import StripBody, read_relay, show_body
from bot.runtime.clock import Clock
from bot.runtime.delivery import (
    Claimed,
    Delivered,
    Given,
    Postponed,
    Settlement,
    Unreachable,
    deliver,
)
from bot.runtime.inbox import place_of
from bot.runtime.pacing import Pacer
from bot.runtime.ports import Draw, Sender
from bot.runtime.waiting import wait_for
from bot.runtime.writer import Writer
from bot.saying import Repeat, Urgency
from bot.training.facts import ReachChanged
from storage.facts import Origin
from storage.outbox import NewParcel, Parcel, ParcelKind
from storage.work import Work

log = structlog.get_logger("send")

LONGEST_WAIT_S = 300.0
"""The longest pause between two tries."""

PACED = frozenset({ParcelKind.SEND, ParcelKind.RELAY})
"""What counts as a message: new ones, edits and copies. Reactions and lost buttons don't."""

PAUSE_ALL_AFTER = 3
"""So many chats asked to wait within a minute: everything waits."""


@dataclass(frozen=True, slots=True)
class Carried:
    """A parcel that came back."""

    claimed: Claimed
    settlement: Settlement


def backoff_s(tries: int, *, chance: float) -> float:
    """Seconds to the next try after so many (from 1): 1, 2, 4 ... 300, moved by up to an eighth (`chance` 0 to 1)."""
    return float(min(LONGEST_WAIT_S, 2.0 ** min(tries - 1, 10)) * (0.875 + 0.25 * chance))


def claim(work: Work, *, worker: str, now: datetime, limit: int) -> tuple[Claimed, ...]:
    """What may go out now, marked as being sent, each with what its slot shows."""
    if limit <= 0:
        return ()
    parcels = storage.outbox.claim_due(work, worker=worker, now=now, limit=limit)
    return tuple(_in_hand(work, parcel) for parcel in parcels)


def _in_hand(work: Work, parcel: Parcel) -> Claimed:
    slot = storage.slots.slot_of(work, parcel.chat, parcel.slot) if parcel.slot else None
    return Claimed(parcel, slot, parcel.maybe_sent)


def settle(work: Work, carried: Carried, *, now: datetime) -> None:
    """Writes down what became of a parcel."""
    parcel, settlement = carried.claimed.parcel, carried.settlement
    match settlement:
        case Delivered():
            _keep_delivered(work, parcel, settlement, now)
        case Postponed(error, after_s, maybe_sent):
            wait_s = backoff_s(parcel.tries, chance=random.random()) if after_s is None else after_s
            until = now + timedelta(seconds=wait_s)
            if maybe_sent:
                storage.outbox.keep_unknown(work, parcel, until=until, error=error, now=now)
            else:
                storage.outbox.keep_later(work, parcel, until=until, error=error, counts=after_s is None)
        case Given(error):
            storage.outbox.keep_dead(work, parcel, error=error, now=now)
        case Unreachable(error):
            storage.outbox.keep_dead(work, parcel, error=error, now=now)
            storage.outbox.drop_chat(work, parcel.chat, error=error, now=now)
            _keep_unreachable(work, parcel.chat, now)


def _keep_delivered(work: Work, parcel: Parcel, done: Delivered, now: datetime) -> None:
    storage.outbox.keep_sent(work, parcel, message=done.message, body_hash=done.shown, now=now)
    if parcel.kind is ParcelKind.STRIP and parcel.slot:
        storage.slots.drop_slot(work, parcel.chat, parcel.slot)
    if parcel.kind is ParcelKind.SEND and parcel.slot and done.message is not None:
        storage.slots.keep_slot(work, parcel.chat, parcel.slot, message=done.message, body_hash=done.shown, now=now)
    if parcel.about and done.message is not None:
        other = read_relay(parcel.body).source_message if parcel.kind is ParcelKind.RELAY else None
        storage.relays.keep_about(
            work, chat=parcel.chat, message=done.message, about=parcel.about, other_message=other, now=now
        )
    if done.strip is not None and done.strip != done.message:
        storage.outbox.put(work, (_strip(parcel, done.strip),), now=now)


def _strip(parcel: Parcel, message: int) -> NewParcel:
    """The older message of a slot loses its buttons once the new one stands."""
    return NewParcel(
        key=f"strip:{parcel.key}",
        chat=parcel.chat,
        kind=ParcelKind.STRIP,
        body=show_body(StripBody(message)),
        urgency=int(Urgency.REFRESH),
        repeat=Repeat.RESEND.value,
    )


def _keep_unreachable(work: Work, chat: int, now: datetime) -> None:
    """The client of this chat can't be reached: a fact that the coach hears of."""
    client = storage.people.client_at(work, chat)
    if client is not None and client.reachable:
        origin = Origin(by="platform", at=now, source=f"c{chat}")
        storage.facts.keep(work, ReachChanged(client.id, reachable=False), origin)


class Outbox:
    """The loop that empties the outbox, with at most `senders` calls at once."""

    def __init__(
        self, *, writer: Writer, sender: Sender, draw: Draw, clock: Clock, pacer: Pacer, senders: int, worker: str
    ) -> None:
        self._writer, self._sender, self._draw, self._clock = writer, sender, draw, clock
        self._pacer, self._senders, self._worker = pacer, senders, worker
        self._in_flight: set[asyncio.Task[None]] = set()
        self._carried: list[Carried] = []
        self._waits: dict[int, float] = {}
        self._fault: ChatFault | None = None
        self._reserved = 0
        self._is_open = False
        self.wake = asyncio.Event()
        """Set by whoever puts parcels; also when a call comes back."""
        self.sent = 0
        """Parcels delivered since the start."""

    @property
    def is_idle(self) -> bool:
        """Nothing in hand and nothing to settle."""
        return not self._in_flight and not self._carried

    async def step(self, *, may_claim: bool = True) -> int:
        """Settles what came back and takes up what may go; how many were taken up. `ChatFault`: the token is void."""
        self.wake.clear()
        if self._fault is not None:
            raise self._fault
        carried = tuple(self._carried)
        with self.room(wanted=may_claim) as room:
            if room <= 0 and not carried:
                return 0
            now = self._clock.now()
            claimed = await self._writer.run(lambda work: self._turn_over(work, carried, room, now))
            del self._carried[: len(carried)]
            self.take_up(claimed)
        return len(claimed)

    @contextmanager
    def room(self, *, wanted: bool = True) -> Iterator[int]:
        """How many parcels may be claimed and taken up while the block runs; nobody else gets this room meanwhile."""
        free = self._senders - len(self._in_flight) - self._reserved
        room = max(0, min(free, self._pacer.room() - self._reserved)) if wanted and self._is_open else 0
        self._reserved += room
        try:
            yield room
        finally:
            self._reserved -= room

    def claim(self, work: Work, room: int, now: datetime) -> tuple[Claimed, ...]:
        """Claims in the transaction that put the parcels; `take_up` what it gives once that is committed."""
        return claim(work, worker=self._worker, now=now, limit=room)

    def take_up(self, claimed: tuple[Claimed, ...]) -> None:
        """Carries what was claimed."""
        for one in claimed:
            self._take_up(one)

    def _turn_over(self, work: Work, carried: tuple[Carried, ...], room: int, now: datetime) -> tuple[Claimed, ...]:
        for one in carried:
            settle(work, one, now=now)
        return claim(work, worker=self._worker, now=now, limit=room)

    def _take_up(self, claimed: Claimed) -> None:
        if claimed.parcel.kind in PACED:
            wait_s = self._pacer.chat_wait_s(claimed.parcel.chat)
            if wait_s > 0:
                self._come_back(Carried(claimed, Postponed("pace", after_s=wait_s)))
                return
            self._pacer.take(claimed.parcel.chat)
        task = asyncio.create_task(self._carry(claimed), name=f"send {claimed.parcel.id}")
        self._in_flight.add(task)
        task.add_done_callback(self._in_flight.discard)

    async def _carry(self, claimed: Claimed) -> None:
        parcel = claimed.parcel
        begun = self._clock.now()
        settlement: Settlement
        try:
            if parcel.expires_at is not None and parcel.expires_at <= begun:
                settlement = Given("expired")
            else:
                settlement = await deliver(claimed, sender=self._sender, draw=self._draw)
        except ChatFault as fault:
            self._fault = fault
            settlement = Postponed("the token is refused")
        except Exception as error:  # a defect of ours: this parcel only
            settlement = Given(place_of(error))
        self._note(parcel, settlement, ms=int((self._clock.now() - begun).total_seconds() * 1000))
        self._come_back(Carried(claimed, settlement))

    def _come_back(self, carried: Carried) -> None:
        self._carried.append(carried)
        self.wake.set()

    def _note(self, parcel: Parcel, settlement: Settlement, *, ms: int) -> None:
        """One line a send; and a pause for all where several chats were told to wait."""
        what = type(settlement).__name__.lower()
        say = log.info
        if isinstance(settlement, Delivered):
            self.sent += 1
        else:
            say = log.warning
        error = None if isinstance(settlement, Delivered) else settlement.error
        say("send", key=parcel.key, kind=parcel.kind.value, result=what, tries=parcel.tries, error=error, ms=ms)
        if isinstance(settlement, Postponed) and settlement.after_s is not None:
            self._asked_to_wait(parcel.chat, settlement.after_s)

    def _asked_to_wait(self, chat: int, after_s: float) -> None:
        now_s = self._clock.now().timestamp()
        self._waits = {c: at for c, at in self._waits.items() if abs(now_s - at) < 60}
        self._waits[chat] = now_s
        if len(self._waits) >= PAUSE_ALL_AFTER:
            self._waits.clear()
            self._pacer.pause(after_s)
            log.warning("all wait", seconds=after_s)

    async def run(self, stop: asyncio.Event, *, poll_s: float, on_error: Callable[[Exception], float]) -> None:
        """Until `stop`: then what is in hand comes back and is settled."""
        self._is_open = True
        while not stop.is_set():
            try:
                await self.step()
            except ChatFault:
                raise
            except Exception as error:  # the database's trouble: again after a while
                await wait_for(stop, on_error(error))
                continue
            room_after_s = self._pacer.room_after_s()
            await wait_for(self.wake, min(poll_s, room_after_s) if room_after_s > 0 else poll_s)
        self._is_open = False
        while self._in_flight:
            await asyncio.wait(self._in_flight)
        await self.step(may_claim=False)
