"""The loops of a process: intake (given by the gateway), work, clock and send; started together, stopped cleanly."""

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, field

import storage.health
from bot.faults import ChalkpostFault
from bot.runtime.clock import Clock
from bot.runtime.health import Pulse
from bot.runtime.inbox import Desks, Worked, receive, work_some
from bot.runtime.leases import Leases, Loop
from bot.runtime.outbox import Outbox
from bot.runtime.ports import Arrived
from bot.runtime.roles import ALL_ROLES, Role
from bot.runtime.settlements import Claimed
from bot.runtime.taps import Taps
from bot.runtime.ticking import Ticker
from bot.runtime.trouble import Trouble
from bot.runtime.waiting import wait_for
from bot.runtime.writer import Writer
from storage.work import Work


@dataclass(frozen=True, slots=True)
class Rhythm:
    """How often the loops look by themselves, in seconds; a message in the same process wakes them at once."""

    poll_s: float = 0.5
    tick_s: float = 1.0


Intake = Callable[["Service", asyncio.Event], Awaitable[None]]
"""Runs until the event is set, giving what arrives to `Service.receive`."""


@dataclass(slots=True)
class Service:
    """One process's loops over one database."""

    writer: Writer
    clock: Clock
    desks: Desks
    outbox: Outbox
    taps: Taps
    bot: int
    pulse: Pulse
    roles: frozenset[Role] = ALL_ROLES
    rhythm: Rhythm = field(default_factory=Rhythm)
    leases: Leases | None = None
    """Set where several processes share the database."""
    stopping: asyncio.Event = field(default_factory=asyncio.Event)
    ticker: Ticker = field(init=False)
    _work_wake: asyncio.Event = field(default_factory=asyncio.Event)
    _trouble: Trouble = field(default_factory=Trouble)
    _busy: int = 0

    def __post_init__(self) -> None:
        """The clock's loop wakes the others."""
        self.outbox.came_in = self._work_wake.set
        self.ticker = Ticker(self.writer, self.clock, lambda: self.desks, self._wake, self.pulse)

    @property
    def is_stopping(self) -> bool:
        """Whether the loops are to end."""
        return self.stopping.is_set()

    # --- what came in

    async def receive(self, arrived: tuple[Arrived, ...]) -> None:
        """Kept when this returns; only then may it be acknowledged. Raises what the database raises.

        Where this process also works and sends, the turns and the first claims are in the same transaction: a turn
        that fails is undone alone, what arrived is kept all the same.
        """
        await self._pass(arrived)
        self._work_wake.set()

    async def work_once(self) -> bool:
        """One pass over the waiting chats; whether there was something to do."""
        worked = await self._pass(())
        self._trouble.over()
        return worked.more

    async def _pass(self, arrived: tuple[Arrived, ...]) -> Worked:
        """Keeps what arrived, works on what waits, claims what goes out: one transaction."""
        self._busy += 1
        now = self.clock.now()

        def job(work: Work) -> tuple[Worked, tuple[Claimed, ...]]:
            if arrived:
                receive(work, arrived, bot=self.bot, now=now)
            worked = work_some(work, self.desks, now=now) if Role.WORK in self.roles else Worked()
            return worked, self.outbox.claim(work, room, now) if worked.parcels else ()

        try:
            with self.outbox.room(wanted=Role.SEND in self.roles) as room:
                worked, claimed = await self.writer.run(job)
                self.outbox.take_up(claimed)
            self._after(worked)
        finally:
            self._busy -= 1
        return worked

    def _after(self, worked: Worked) -> None:
        self.pulse.turns += worked.turns
        for tap in worked.taps:
            self.taps.acknowledge(tap)
        if worked.parcels:
            self.outbox.wake.set()

    # --- loops

    async def run(self, intake: Intake | None) -> None:
        """Until `stop`, or until a loop meets a fault that the operator must hear: that is raised."""
        await self.ticker.recover(own=self.desks.worker)
        try:
            async with asyncio.TaskGroup() as loops:
                if intake is not None and Role.INTAKE in self.roles:
                    taking = self._alone("poll", lambda stop: intake(self, stop))
                    loops.create_task(self._whole(taking), name="intake")
                if Role.WORK in self.roles:
                    loops.create_task(self._whole(self._work()), name="work")
                if Role.SEND in self.roles:
                    sending = self._alone("send", self._send)
                    loops.create_task(self._whole(sending), name="send")
                if Role.CLOCK in self.roles:
                    self.ticker.start(tick_s=self.rhythm.tick_s, recovers=self.leases is not None)
                loops.create_task(self.stopping.wait(), name="stop")
        except BaseExceptionGroup as group:  # not `except*`, which wraps what is raised in it before Python 3.11.4
            faults, others = group.split(ChalkpostFault)
            if faults is None or others is not None:
                raise
            raise _first(faults) from None
        finally:
            await self.ticker.stop()
            await self.taps.drain()

    def stop(self) -> None:
        """Ends the loops after what is in hand."""
        self.stopping.set()
        self._wake()

    def _wake(self) -> None:
        self._work_wake.set()
        self.outbox.wake.set()

    async def _alone(self, name: str, loop: Loop) -> None:
        """The loop, under its lease where several processes share the database."""
        if self.leases is None:
            await loop(self.stopping)
        else:
            await self.leases.run_holding(f"{name}:{self.bot}", loop, self.stopping)

    async def _send(self, stop: asyncio.Event) -> None:
        await self.outbox.run(stop, poll_s=self.rhythm.poll_s)

    async def _whole(self, loop: Awaitable[None]) -> None:
        """A loop that ends, ends all of them."""
        try:
            await loop
        finally:
            self.stop()

    async def _work(self) -> None:
        while not self.stopping.is_set():
            self._work_wake.clear()
            try:
                more = await self.work_once()
            except Exception as error:  # the database's trouble: again after a while
                await wait_for(self.stopping, self._trouble.note(error))
                continue
            if not more:
                await wait_for(self._work_wake, self.rhythm.poll_s)

    # --- for tests, the demo and status

    async def quiet(self) -> None:
        """Returns when nothing waits: inbox worked through, nothing due, outbox empty (also of what is tried again)."""
        while not await self._is_quiet():
            await asyncio.sleep(0.002)

    async def _is_quiet(self) -> bool:
        if not self._is_idle():
            return False
        now = self.clock.now()
        health = await self.writer.run(lambda work: storage.health.health(work, now))
        if health.inbox_waiting or health.outbox_waiting or health.sending or health.due:
            return False
        return self._is_idle()

    def _is_idle(self) -> bool:
        """Nothing under way in this process."""
        return not self._busy and self.taps.is_idle and self.ticker.is_idle and self.outbox.is_idle


def _first(group: BaseExceptionGroup[ChalkpostFault]) -> ChalkpostFault:
    fault: BaseException = group
    while isinstance(fault, BaseExceptionGroup):
        fault = fault.exceptions[0]
    assert isinstance(fault, ChalkpostFault)
    return fault
