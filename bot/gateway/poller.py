"""Long polling: an update is acknowledged (by the next poll's offset) only after it is kept."""

import asyncio
import json
import random
from collections.abc import Awaitable, Callable, Sequence

import structlog
from telegram.error import Conflict, InvalidToken, TelegramError

from bot.faults import ChatFault
from bot.gateway.library import RawBot
from bot.gateway.outcomes import REFUSED_TOKEN
from bot.gateway.reader import ASKED_FOR, chat_of, update_id_of
from bot.gateway.transport import WaitError
from bot.runtime.clock import Clock
from bot.runtime.health import Pulse
from bot.runtime.ports import Arrived

log = structlog.get_logger("poll")

Receive = Callable[[tuple[Arrived, ...]], Awaitable[None]]
"""Keeps what arrived; kept when it returns, raises where it could not be."""

LONGEST_WAIT_S = 30.0
LONGEST_RAW = 200_000
"""Characters of an update that is kept; the platform's own are far below. A longer one is let go, and logged."""


class Poller:
    """The loop. One a bot: the platform refuses a second one (409), which is told and waited out."""

    def __init__(self, bot: RawBot, *, receive: Receive, clock: Clock, pulse: Pulse, timeout_s: int = 25) -> None:
        self._bot, self._receive, self._clock, self._pulse = bot, receive, clock, pulse
        self._timeout_s = timeout_s
        self._offset: int | None = None
        self._troubles = 0

    async def run(self, stop: asyncio.Event) -> None:
        """Until `stop`. What is kept by then is acknowledged with a last short poll. `ChatFault`: the token is void."""
        stopping = asyncio.create_task(stop.wait())
        try:
            while not stop.is_set():
                step = asyncio.create_task(self.step())
                await asyncio.wait({step, stopping}, return_when=asyncio.FIRST_COMPLETED)
                if not step.done():
                    step.cancel()
                    await asyncio.wait({step})
                if not step.cancelled() and (wait_s := step.result()) > 0:
                    await asyncio.wait({stopping}, timeout=wait_s)
        finally:
            stopping.cancel()
        await self._acknowledge()

    async def step(self) -> float:
        """One poll, kept; seconds to wait before the next."""
        try:
            updates = await self._bot.raw_updates(offset=self._offset, timeout_s=self._timeout_s, allowed=ASKED_FOR)
        except TelegramError as error:
            return self._trouble(error)
        self._offset = None  # acknowledged; the next poll names an offset only for what it acknowledges
        self._pulse.polled(self._clock.now(), len(updates))
        try:
            await self._keep(updates)
        except Exception as error:  # nothing was kept, nothing is acknowledged: asked again after a while
            return self._wait_s(type(error).__name__, "not kept")
        self._troubles = 0
        return 0.0

    async def _keep(self, updates: Sequence[object]) -> None:
        if not updates:
            return
        arrived = tuple(a for a in map(arrived_of, updates) if a is not None)
        if arrived:
            await self._receive(arrived)
        numbers = [n for n in map(update_id_of, updates) if n is not None]
        if numbers:
            # Their order is the platform's; after a week's silence the numbers start anew anywhere, so the last counts.
            self._offset = numbers[-1] + 1
        else:
            raise ValueError("updates without numbers")

    async def _acknowledge(self) -> None:
        """Tells the platform what was kept, so that it need not come again."""
        if self._offset is None:
            return
        try:
            async with asyncio.timeout(5):
                await self._bot.raw_updates(offset=self._offset, timeout_s=0, allowed=ASKED_FOR)
        except (TelegramError, TimeoutError):
            return  # it comes again, and is known

    def _trouble(self, error: TelegramError) -> float:
        if isinstance(error, InvalidToken):
            raise ChatFault(REFUSED_TOKEN) from error
        if isinstance(error, WaitError):
            return error.after_s
        if isinstance(error, Conflict):
            self._pulse.poll_trouble = "another process polls with this token"
            return self._wait_s("Conflict", "another process polls with this token: stop one of them")
        return self._wait_s(type(error).__name__, "no updates")

    def _wait_s(self, kind: str, what: str) -> float:
        """1, 2, 4 ... 30 seconds, moved by up to a quarter."""
        self._troubles += 1
        wait_s = min(LONGEST_WAIT_S, 2.0 ** min(self._troubles - 1, 5)) * (0.875 + 0.25 * random.random())
        log.warning(what, error=kind, wait_s=round(wait_s, 1))
        return wait_s


def arrived_of(update: object) -> Arrived | None:
    """The update as it is kept; `None` where it has no number, or is beyond all measure."""
    number = update_id_of(update)
    if number is None:
        log.warning("an update without a number")
        return None
    raw = json.dumps(update)
    if len(raw) > LONGEST_RAW:
        log.warning("an update too long to keep", update=number, characters=len(raw))
        return None
    chat = chat_of(update)
    if chat is None:
        log.info("an update of no chat", update=number)
    return Arrived(number, chat, raw)
