"""Taps acknowledged right after their turn is kept: best effort, since the platform forgets a tap within seconds."""

import asyncio

from bot.faults import ChatFault
from bot.runtime.ports import AnswerTap, Sender

AT_ONCE = 16
"""Acknowledgements in flight; more wait for a place."""

PATIENCE_S = 5.0
"""How long the end of the process waits for them."""


class Taps:
    """Acknowledgements under way. One that fails harms nobody."""

    def __init__(self, sender: Sender) -> None:
        self._sender = sender
        self._under_way: set[asyncio.Task[None]] = set()
        self._room = asyncio.Semaphore(AT_ONCE)

    @property
    def is_idle(self) -> bool:
        """Whether none is under way."""
        return not self._under_way

    def acknowledge(self, tap: AnswerTap) -> None:
        """Sends it, without waiting for it."""
        task = asyncio.create_task(self._carry(tap), name="tap")
        self._under_way.add(task)
        task.add_done_callback(self._under_way.discard)

    async def drain(self) -> None:
        """Waits for those under way, a while."""
        if self._under_way:
            await asyncio.wait(self._under_way, timeout=PATIENCE_S)

    async def _carry(self, tap: AnswerTap) -> None:
        async with self._room:
            try:
                await self._sender.send(tap)
            except ChatFault:
                return  # polling and sending meet the same refusal, and end the process
