"""What goes out: claimed from the outbox, carried side by side (one at a time in each chat), and settled.

Settling what came back and claiming what goes next is one transaction. A parcel is marked as being sent before its
call; what was in hand when a process died is known to be uncertain (`recover`).
"""

import asyncio
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime

import structlog

from bot.faults import ChatFault
from bot.runtime.clock import Clock
from bot.runtime.delivery import deliver
from bot.runtime.inbox import place_of
from bot.runtime.pacing import Pacer
from bot.runtime.ports import Draw, Make, Sender
from bot.runtime.settlements import Claimed, Delivered, Given, Postponed, Settlement
from bot.runtime.settling import Carried, claim, settle
from bot.runtime.trouble import Trouble
from bot.runtime.waiting import wait_for
from bot.runtime.writer import Writer
from storage.outbox import Parcel, ParcelKind
from storage.work import Work

log = structlog.get_logger("send")

PACED = frozenset({ParcelKind.SEND, ParcelKind.RELAY, ParcelKind.FILE})
"""What counts as a message: new ones, edits and copies. Reactions and lost buttons don't."""

PAUSE_ALL_AFTER = 3
"""So many chats asked to wait within a minute: everything waits."""


class Outbox:
    """The loop that empties the outbox, with at most `senders` calls at once."""

    def __init__(
        self,
        *,
        writer: Writer,
        sender: Sender,
        draw: Draw,
        make: Make,
        clock: Clock,
        pacer: Pacer,
        senders: int,
        worker: str,
    ) -> None:
        self._writer, self._sender, self._draw, self._make, self._clock = writer, sender, draw, make, clock
        self._pacer, self._senders, self._worker = pacer, senders, worker
        self._in_flight: set[asyncio.Task[None]] = set()
        self._carried: list[Carried] = []
        self._waits: dict[int, float] = {}
        self._fault: ChatFault | None = None
        self._reserved = 0
        self._turned_away = False
        self._trouble = Trouble()
        self._is_open = False
        self.wake = asyncio.Event()
        """Set by whoever puts parcels; also when a call comes back."""
        self.came_in: Callable[[], None] = lambda: None
        """Called where a file was brought and stands in the inbox."""
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
            if any(one.claimed.parcel.kind is ParcelKind.FETCH for one in carried):
                self.came_in()
            self.take_up(claimed)
        return len(claimed)

    @contextmanager
    def room(self, *, wanted: bool = True) -> Iterator[int]:
        """How many parcels may be claimed and taken up while the block runs; nobody else gets this room meanwhile, and
        whoever was turned away for it is woken when it is free again."""
        free = self._senders - len(self._in_flight) - self._reserved
        room = max(0, min(free, self._pacer.room() - self._reserved)) if wanted and self._is_open else 0
        self._turned_away |= wanted and not room and self._reserved > 0
        self._reserved += room
        try:
            yield room
        finally:
            self._reserved -= room
            if room and self._turned_away:
                self._turned_away = False
                self.wake.set()

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
                settlement = await deliver(claimed, sender=self._sender, draw=self._draw, make=self._make)
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
        error = None if isinstance(settlement, Delivered) else settlement.error
        if isinstance(settlement, Delivered):
            self.sent += 1
        elif error is not None:
            say = log.warning
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

    async def run(self, stop: asyncio.Event, *, poll_s: float) -> None:
        """Until `stop`: then what is in hand comes back and is settled."""
        self._is_open = True
        while not stop.is_set():
            try:
                await self.step()
            except ChatFault:
                raise
            except Exception as error:  # the database's trouble: again after a while
                await wait_for(stop, self._trouble.note(error))
                continue
            self._trouble.over()
            room_after_s = self._pacer.room_after_s()
            await wait_for(self.wake, min(poll_s, room_after_s) if room_after_s > 0 else poll_s)
        self._is_open = False
        while self._in_flight:
            await asyncio.wait(self._in_flight)
        await self.step(may_claim=False)
