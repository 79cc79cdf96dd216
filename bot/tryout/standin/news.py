"""What happened, in order, for whoever watches: the chat page, tests, the player of the demo week."""

import asyncio
from dataclasses import dataclass
from typing import Literal, TypeAlias

NoticeKind: TypeAlias = Literal["message", "removed", "answer", "action", "person", "keyboard"]


@dataclass(frozen=True, slots=True)
class Notice:
    """Something to show again. `number` counts from 1 without gaps; `message_id` is 0 where none is meant."""

    number: int
    bot_id: int
    chat_id: int
    kind: NoticeKind
    message_id: int = 0
    text: str = ""
    alert: bool = False


class News:
    """All notices, and a wait for the next one."""

    def __init__(self) -> None:
        self._all: list[Notice] = []
        self._waiting: list[asyncio.Future[None]] = []

    @property
    def last(self) -> int:
        """The newest notice's number; 0 when nothing happened yet."""
        return len(self._all)

    def tell(
        self, bot_id: int, chat_id: int, kind: NoticeKind, message_id: int = 0, text: str = "", *, alert: bool = False
    ) -> None:
        """Adds a notice and wakes who waits."""
        self._all.append(Notice(len(self._all) + 1, bot_id, chat_id, kind, message_id, text, alert))
        self.wake()

    def wake(self) -> None:
        """Lets everyone who waits look again."""
        waiting, self._waiting = self._waiting, []
        for future in waiting:
            if not future.done():
                future.set_result(None)

    def since(self, number: int) -> tuple[Notice, ...]:
        """Everything after that notice."""
        return tuple(self._all[max(number, 0) :])

    async def wait(self, number: int, timeout_s: float) -> tuple[Notice, ...]:
        """Everything after that notice, waiting for one if there is none; empty when the time runs out, and at once
        when the number is not of these news (they began anew)."""
        if self.last == number:
            future: asyncio.Future[None] = asyncio.get_running_loop().create_future()
            self._waiting.append(future)
            try:
                await asyncio.wait_for(future, timeout_s)
            except TimeoutError:
                return ()
        return self.since(number) if number <= self.last else ()
