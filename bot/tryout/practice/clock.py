"""The demo's clock: set while the week plays, running while somebody tries the page, and able to stand."""

import time
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from bot.tryout.practice.people import COACH

MORNING_HOUR = 6
Settle = Callable[[], Awaitable[None]]
NextDue = Callable[[], Awaitable[datetime | None]]


class DemoClock:
    """A clock that stands until it is let run."""

    def __init__(self, at: datetime) -> None:
        self._at = at
        self._since = time.monotonic()
        self.paused = True

    def now(self) -> datetime:
        """The present moment of the demo."""
        if self.paused:
            return self._at
        return self._at + timedelta(seconds=time.monotonic() - self._since)

    def set(self, at: datetime) -> None:
        """It is this moment from now on."""
        self._at, self._since = at, time.monotonic()

    def stand(self, paused: bool) -> None:
        """Stops the clock, or lets it run."""
        self._at, self._since, self.paused = self.now(), time.monotonic(), paused


@dataclass(slots=True)
class Steps:
    """The page's steps: moves the clock, halting at everything that falls due on the way."""

    clock: DemoClock
    due: NextDue
    settle: Settle

    @property
    def paused(self) -> bool:
        """Whether the clock stands."""
        return self.clock.paused

    def now(self) -> datetime:
        """The time shown."""
        return self.clock.now()

    async def next_due(self) -> datetime | None:
        """When the bot has something to do next."""
        return await self.due()

    async def go_to(self, when: datetime) -> None:
        """Moves to that time; each thing that falls due before happens at its own time."""
        target = when.astimezone(UTC)
        while (due := await self.due()) is not None and due <= target:
            self.clock.set(max(due, self.clock.now()))
            await self.settle()
        self.clock.set(max(target, self.clock.now()))
        await self.settle()

    async def add(self, delta: timedelta) -> None:
        """Moves on by so much."""
        await self.go_to(self.clock.now() + delta)

    async def tomorrow(self) -> None:
        """Moves to the next morning where the coach lives."""
        zone = ZoneInfo(COACH.zone)
        local = self.clock.now().astimezone(zone)
        morning = (local + timedelta(days=1)).replace(hour=MORNING_HOUR, minute=0, second=0, microsecond=0)
        await self.go_to(morning)

    async def pause(self, paused: bool) -> None:
        """Stops the clock, or lets it go on."""
        self.clock.stand(paused)
