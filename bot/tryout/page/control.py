"""What the page asks of whoever holds the clock."""

from datetime import datetime, timedelta
from typing import Protocol


class ClockControl(Protocol):
    """A clock that can be moved. Times are aware. A step returns when the bot has done what fell due by then."""

    @property
    def paused(self) -> bool:
        """Whether the clock stands."""
        ...

    def now(self) -> datetime:
        """The time shown."""
        ...

    async def next_due(self) -> datetime | None:
        """When the bot has something to do next; None when nothing is planned."""
        ...

    async def go_to(self, when: datetime) -> None:
        """Moves to that time."""
        ...

    async def add(self, delta: timedelta) -> None:
        """Moves on by so much."""
        ...

    async def tomorrow(self) -> None:
        """Moves to the next morning."""
        ...

    async def pause(self, paused: bool) -> None:
        """Stops the clock, or lets it go on."""
        ...
