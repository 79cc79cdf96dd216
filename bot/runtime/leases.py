"""What only one process may do at a time (poll the platform, keep the pace of sending) is done under a lease.

On SQLite one process does everything, and needs none.
"""

import asyncio
from collections.abc import Awaitable, Callable

import structlog

import storage.leases
from bot.runtime.clock import Clock
from bot.runtime.waiting import wait_for
from bot.runtime.writer import Writer

log = structlog.get_logger("lease")

LASTS_S = 30
RENEWED_EACH_S = 10.0
ASKED_EACH_S = 5.0

Loop = Callable[[asyncio.Event], Awaitable[None]]
"""Runs until the event is set."""


class Leases:
    """The leases of one process, `holder`."""

    def __init__(self, *, writer: Writer, clock: Clock, holder: str) -> None:
        self._writer, self._clock, self._holder = writer, clock, holder

    async def run_holding(self, name: str, loop: Loop, stop: asyncio.Event) -> None:
        """Runs the loop while this process holds the lease; waits for it while another does. Ends with `stop`."""
        while not stop.is_set():
            if not await self._take(name):
                await wait_for(stop, ASKED_EACH_S)
                continue
            log.info("lease taken", name=name)
            await self._run_once(name, loop, stop)

    async def _run_once(self, name: str, loop: Loop, stop: asyncio.Event) -> None:
        over = asyncio.Event()
        running = asyncio.ensure_future(loop(over))
        renewing = asyncio.create_task(self._renew(name, over, stop))
        try:
            await asyncio.wait({running, renewing}, return_when=asyncio.FIRST_COMPLETED)
            over.set()
            await running
        finally:
            running.cancel()
            renewing.cancel()
            await self._writer.run(lambda work: storage.leases.give(work, name, self._holder))

    async def _renew(self, name: str, over: asyncio.Event, stop: asyncio.Event) -> None:
        """Until the lease is lost, the loop ends or the process is to stop."""
        while not stop.is_set() and not over.is_set():
            await wait_for(stop, RENEWED_EACH_S)
            if not stop.is_set() and not await self._take(name):
                log.warning("lease lost", name=name)
                return

    async def _take(self, name: str) -> bool:
        now = self._clock.now()
        try:
            return await self._writer.run(lambda work: storage.leases.take(work, name, self._holder, now, LASTS_S))
        except Exception as error:  # the database's trouble: not held
            log.error("lease not known", name=name, error=type(error).__name__)
            return False
