"""The loops of a process: intake (given by the gateway), work, clock and send; started together, stopped cleanly."""

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, field

import structlog
from apscheduler.schedulers.asyncio import AsyncIOScheduler

import storage.health
import storage.inbox
import storage.outbox
from bot.faults import ChatFault
from bot.runtime.clock import Clock
from bot.runtime.delivery import Claimed
from bot.runtime.health import Pulse
from bot.runtime.inbox import Desks, Worked, place_of, receive, work_some
from bot.runtime.leases import Leases, Loop
from bot.runtime.outbox import Outbox
from bot.runtime.ports import AnswerTap, Arrived, Sender
from bot.runtime.roles import ALL_ROLES, Role
from bot.runtime.schedule import Failures, Ticked, tick
from bot.runtime.tidy import tidy
from bot.runtime.waiting import wait_for
from bot.runtime.writer import Writer
from storage.work import Work

log = structlog.get_logger("loops")

TAPS_AT_ONCE = 16
"""Acknowledgements of taps in flight; more wait for a place."""


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
    sender: Sender
    clock: Clock
    desks: Desks
    outbox: Outbox
    bot: int
    pulse: Pulse
    roles: frozenset[Role] = ALL_ROLES
    rhythm: Rhythm = field(default_factory=Rhythm)
    leases: Leases | None = None
    """Set where several processes share the database."""
    failures: Failures = field(default_factory=Failures)
    _work_wake: asyncio.Event = field(default_factory=asyncio.Event)
    stopping: asyncio.Event = field(default_factory=asyncio.Event)
    _taps: set[asyncio.Task[None]] = field(default_factory=set)
    _tap_room: asyncio.Semaphore = field(default_factory=lambda: asyncio.Semaphore(TAPS_AT_ONCE))
    _ticking: asyncio.Lock = field(default_factory=asyncio.Lock)
    _trouble: int = 0
    _busy: int = 0

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

    # --- loops

    async def run(self, intake: Intake | None) -> None:
        """Until `stop`, or until a loop meets a fault that the operator must hear: that is raised."""
        await self._recover(own=self.desks.worker)
        scheduler = self._scheduler()
        try:
            async with asyncio.TaskGroup() as group:
                if intake is not None and Role.INTAKE in self.roles:
                    taking = self._alone("poll", lambda stop: intake(self, stop))
                    group.create_task(self._whole(taking), name="intake")
                if Role.WORK in self.roles:
                    group.create_task(self._whole(self._work()), name="work")
                if Role.SEND in self.roles:
                    sending = self._alone("send", self._send)
                    group.create_task(self._whole(sending), name="send")
                if scheduler is not None:
                    scheduler.start()
                group.create_task(self.stopping.wait(), name="stop")
        except* ChatFault as faults:
            raise _first(faults) from None
        finally:
            if scheduler is not None:
                scheduler.pause()
                async with self._ticking:  # the last tick ends first
                    scheduler.shutdown(wait=False)
            if self._taps:
                await asyncio.wait(self._taps, timeout=5)

    def stop(self) -> None:
        """Ends the loops after what is in hand."""
        self.stopping.set()
        self._work_wake.set()
        self.outbox.wake.set()

    async def _alone(self, name: str, loop: Loop) -> None:
        """The loop, under its lease where several processes share the database."""
        if self.leases is None:
            await loop(self.stopping)
        else:
            await self.leases.run_holding(f"{name}:{self.bot}", loop, self.stopping)

    async def _send(self, stop: asyncio.Event) -> None:
        await self.outbox.run(stop, poll_s=self.rhythm.poll_s, on_error=self.note_trouble)

    async def _whole(self, loop: Awaitable[None]) -> None:
        """A loop that ends, ends all of them."""
        try:
            await loop
        finally:
            self.stop()

    async def _recover(self, *, own: str = "") -> None:
        """At the start, and now and then where several processes share the database: what dead ones left."""
        now = self.clock.now()
        await self.writer.run(storage.inbox.recover)
        uncertain = await self.writer.run(lambda work: storage.outbox.recover(work, now=now, own=own))
        if uncertain:
            log.warning("uncertain sends", parcels=uncertain)
            self.outbox.wake.set()
        self._work_wake.set()

    def _scheduler(self) -> AsyncIOScheduler | None:
        """Ticks only; what is due lives in our rows."""
        if Role.CLOCK not in self.roles:
            return None
        scheduler = AsyncIOScheduler(timezone="UTC")
        scheduler.add_job(
            self._tick_safely,
            "interval",
            seconds=self.rhythm.tick_s,
            max_instances=1,
            coalesce=True,
            misfire_grace_time=None,
        )
        scheduler.add_job(self._tidy_safely, "interval", hours=6, misfire_grace_time=None)
        if self.leases is not None:
            scheduler.add_job(self._recover_safely, "interval", seconds=30, misfire_grace_time=None)
        return scheduler

    async def _work(self) -> None:
        while not self.stopping.is_set():
            self._work_wake.clear()
            try:
                more = await self.work_once()
            except Exception as error:  # the database's trouble: again after a while
                await self._sleep(self.note_trouble(error))
                continue
            if not more:
                await wait_for(self._work_wake, self.rhythm.poll_s)

    async def work_once(self) -> bool:
        """One pass over the waiting chats; whether there was something to do."""
        worked = await self._pass(())
        self._trouble = 0
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
            self._acknowledge(tap)
        if worked.parcels:
            self.outbox.wake.set()

    def _acknowledge(self, tap: AnswerTap) -> None:
        task = asyncio.create_task(self._carry_tap(tap), name="tap")
        self._taps.add(task)
        task.add_done_callback(self._taps.discard)

    async def _carry_tap(self, tap: AnswerTap) -> None:
        """Best effort: a tap that can't be acknowledged any more harms nobody."""
        async with self._tap_room:
            try:
                await self.sender.send(tap)
            except ChatFault:
                self.outbox.wake.set()  # the outbox meets the same refusal and ends the process

    async def _tick_safely(self) -> None:
        try:
            await self.tick()
        except Exception as error:  # the next tick tries again
            self.note_trouble(error)

    async def _tidy_safely(self) -> None:
        try:
            now = self.clock.now()
            forgotten = await self.writer.run(lambda work: tidy(work, now=now))
            log.info("tidied", rows=forgotten)
        except Exception as error:  # another time
            self.note_trouble(error)

    async def _recover_safely(self) -> None:
        try:
            await self._recover()
        except Exception as error:  # another time
            self.note_trouble(error)

    async def tick(self) -> int:
        """Takes up all that is due now, one tick at a time; how many rules that were."""
        taken, self._busy = 0, self._busy + 1
        try:
            async with self._ticking:
                while not self.stopping.is_set():
                    done = await self.writer.run(self._tick_job)
                    taken += done.rules
                    if done.parcels:
                        self.outbox.wake.set()
                    if not done.rules:
                        break
        finally:
            self._busy -= 1
        self.pulse.last_tick_at = self.clock.now()
        return taken

    def _tick_job(self, work: Work) -> Ticked:
        return tick(work, self.desks, self.failures, now=self.clock.now())

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
        return not self._busy and not self._taps and self.outbox.is_idle

    def note_trouble(self, error: Exception) -> float:
        """Logs the database's trouble; seconds to wait before the next try (1, 2, 4 ... 30)."""
        self._trouble += 1
        wait_s = min(30.0, 2.0 ** min(self._trouble - 1, 5))
        log.error("trouble", error=place_of(error), wait_s=wait_s)
        return wait_s

    async def _sleep(self, seconds: float) -> None:
        await wait_for(self.stopping, seconds)


def _first(group: BaseExceptionGroup[ChatFault]) -> ChatFault:
    fault: BaseException = group
    while isinstance(fault, BaseExceptionGroup):
        fault = fault.exceptions[0]
    assert isinstance(fault, ChatFault)
    return fault
