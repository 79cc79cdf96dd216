"""The clock's loop: ticks in memory, and now and then the house-keeping. What is due lives in rows, never in here."""

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, field

import structlog
from apscheduler.schedulers.asyncio import AsyncIOScheduler

import storage.inbox
import storage.outbox
from bot.runtime.clock import Clock
from bot.runtime.health import Pulse
from bot.runtime.inbox import Desks
from bot.runtime.schedule import Failures, Ticked, tick
from bot.runtime.tidy import tidy
from bot.runtime.trouble import Trouble
from bot.runtime.writer import Writer
from storage.work import Work

log = structlog.get_logger("loops")

TIDIED_EACH_H = 6
RECOVERED_EACH_S = 30


@dataclass(slots=True)
class Ticker:
    """Takes up what comes due. `wake` is called where it put something for others to do."""

    writer: Writer
    clock: Clock
    desks: Callable[[], Desks]
    wake: Callable[[], None]
    pulse: Pulse
    trouble: Trouble = field(default_factory=Trouble)
    failures: Failures = field(default_factory=Failures)
    _alone: asyncio.Lock = field(default_factory=asyncio.Lock)
    _scheduler: AsyncIOScheduler | None = None

    @property
    def is_idle(self) -> bool:
        """Whether no tick is under way."""
        return not self._alone.locked()

    def start(self, *, tick_s: float, recovers: bool) -> None:
        """Ticks from now on; with `recovers`, what dead processes left is looked for, too."""
        self._scheduler = AsyncIOScheduler(timezone="UTC")
        self._each(self.tick, seconds=tick_s)
        self._each(self.tidy, seconds=TIDIED_EACH_H * 3_600)
        if recovers:
            self._each(self.recover, seconds=RECOVERED_EACH_S)
        self._scheduler.start()

    async def stop(self) -> None:
        """No more ticks; one under way ends first."""
        if self._scheduler is not None:
            self._scheduler.pause()
            async with self._alone:
                self._scheduler.shutdown(wait=False)
                self._scheduler = None

    async def tick(self) -> int:
        """Takes up all that is due now, one tick at a time; how many rules that were."""
        taken = 0
        async with self._alone:
            while (done := await self.writer.run(self._tick_job)).rules:
                taken += done.rules
                if done.parcels:
                    self.wake()
        self.pulse.last_tick_at = self.clock.now()
        return taken

    async def tidy(self) -> None:
        """Forgets what need not be kept."""
        now = self.clock.now()
        forgotten = await self.writer.run(lambda work: tidy(work, now=now))
        await asyncio.to_thread(self.writer.store.scrub)
        log.info("tidied", rows=forgotten)

    async def recover(self, *, own: str = "") -> None:
        """Takes up what dead processes left: `own` is the name under which this one worked before it died."""
        now = self.clock.now()
        await self.writer.run(storage.inbox.recover)
        uncertain = await self.writer.run(lambda work: storage.outbox.recover(work, now=now, own=own))
        if uncertain:
            log.warning("uncertain sends", parcels=uncertain)
        self.wake()

    def _tick_job(self, work: Work) -> Ticked:
        return tick(work, self.desks(), self.failures, now=self.clock.now())

    def _each(self, job: Callable[[], Awaitable[object]], *, seconds: float) -> None:
        async def safely() -> None:
            try:
                await job()
            except Exception as error:  # the database's trouble: the next time tries again
                self.trouble.note(error)
            else:
                self.trouble.over()

        assert self._scheduler is not None
        self._scheduler.add_job(
            safely, "interval", seconds=seconds, max_instances=1, coalesce=True, misfire_grace_time=None
        )
