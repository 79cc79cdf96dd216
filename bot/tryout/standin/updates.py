"""A bot's waiting updates: numbered, kept a day, confirmed by the next offset, asked for by one poller at a time.

Source: "Getting updates", "getUpdates" and "Update" of the public Bot API documentation.
"""

import asyncio
import random
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import islice

from bot.tryout.standin.clock import Clock
from bot.tryout.standin.faults import Faults, Shuffled, Twice
from bot.tryout.standin.refusals import Refusal, conflict
from bot.tryout.standin.values import JsonObject

NOT_BY_DEFAULT = frozenset({"chat_member", "message_reaction", "message_reaction_count"})
IDLE_WEEK = timedelta(days=7)
FAR_AHEAD = 10
OTHER_POLLER = "terminated by other getUpdates request; make sure that only one bot instance is running"
BY_WEBHOOK = "terminated by setWebhook request"


@dataclass(frozen=True, slots=True)
class Waiting:
    """An update not yet confirmed."""

    number: int
    at: datetime
    body: JsonObject


@dataclass(slots=True)
class _Poll:
    """A long poll under way; its future ends with None (look again) or the reason it was cut short."""

    ended: asyncio.Future[Refusal | None]


class Updates:
    """One bot's updates."""

    def __init__(self, clock: Clock, keep: timedelta, faults: Faults, *, seed: int) -> None:
        self._clock = clock
        self._keep = keep
        self._faults = faults
        self._chance = random.Random(seed)
        self._waiting: dict[int, Waiting] = {}
        self._again: list[Waiting] = []
        self._next = self._chance.randrange(100_000_000, 900_000_000)
        self._last_at: datetime | None = None
        self._poll: _Poll | None = None
        self._pushed = asyncio.Event()
        self.allowed: frozenset[str] | None = None

    def __len__(self) -> int:
        return len(self._waiting)

    @property
    def is_polled(self) -> bool:
        """Whether a long poll waits right now."""
        return self._poll is not None

    def allow(self, kinds: Iterable[str]) -> None:
        """Which kinds are created from now on; none named means all but those that must be asked for."""
        self.allowed = frozenset(kinds) or None

    def push(self, kind: str, body: JsonObject, *, chat_id: int = 0) -> int:
        """Creates an update; its id, or 0 when the bot did not ask for that kind."""
        if kind in NOT_BY_DEFAULT if self.allowed is None else kind not in self.allowed:
            return 0
        return self.push_raw({kind: body}, chat_id=chat_id)

    def push_raw(self, body: JsonObject, *, chat_id: int = 0) -> int:
        """Creates an update with that body whatever it holds (hostile ones too); returns its id."""
        now = self._clock.now()
        if self._last_at is not None and now - self._last_at >= IDLE_WEEK:
            self._next = self._chance.randrange(100_000_000, 900_000_000)
        self._last_at = now
        update = Waiting(self._next, now, {"update_id": self._next, **body})
        self._next += 1
        self._waiting[update.number] = update
        if self._faults.for_update(Twice, chat_id):
            self._again.append(update)
        self.wake()
        return update.number

    def wake(self) -> None:
        """Lets a poller or the webhook look again."""
        self._pushed.set()
        if self._poll is not None and not self._poll.ended.done():
            self._poll.ended.set_result(None)

    async def pushed(self) -> None:
        """Waits until something was pushed since the last wait."""
        await self._pushed.wait()
        self._pushed.clear()

    def confirm(self, offset: int) -> None:
        """Forgets what comes before that id; a negative one keeps so many from the end.

        An offset from a past numbering, well beyond the next id, counts as none: so the platform's own server does it.
        """
        if offset > self._next + FAR_AHEAD:
            return
        if offset < 0:
            forgotten = list(self._waiting)[:offset]
        else:
            forgotten = [number for number in self._waiting if number < offset]
        for number in forgotten:
            del self._waiting[number]

    def settle(self, number: int) -> None:
        """Forgets one update, as delivered by webhook."""
        self._waiting.pop(number, None)

    def drop(self) -> None:
        """Forgets everything."""
        self._waiting.clear()
        self._again.clear()

    def due(self, limit: int) -> list[Waiting]:
        """The next updates, without those older than a day. Repeats come once what they repeat was confirmed."""
        oldest = self._clock.now() - self._keep
        while self._waiting and (first := next(iter(self._waiting.values()))).at < oldest:
            del self._waiting[first.number]
        repeats = [one for one in self._again if one.number not in self._waiting]
        self._again = [one for one in self._again if one.number in self._waiting]
        batch = (repeats + list(islice(self._waiting.values(), limit)))[:limit]
        if len(batch) > 1 and self._faults.for_update(Shuffled, 0):
            order = self._faults.shuffle(list(range(len(batch))))
            batch = [batch[place] for place in order]
        return batch

    async def poll(self, offset: int, limit: int, timeout_s: float) -> list[JsonObject]:
        """getUpdates: confirms, then hands out what waits, or waits for it. A poll under way ends with 409."""
        self.end_poll(OTHER_POLLER)
        self.confirm(offset)
        batch = self.due(limit)
        if not batch and timeout_s > 0:
            await self._wait(timeout_s)
            batch = self.due(limit)
        return [one.body for one in batch]

    async def _wait(self, timeout_s: float) -> None:
        poll = _Poll(asyncio.get_running_loop().create_future())
        self._poll = poll
        try:
            reason = await asyncio.wait_for(poll.ended, timeout_s)
        except TimeoutError:
            return
        finally:
            if self._poll is poll:
                self._poll = None
        if reason is not None:
            raise reason

    def end_poll(self, why: str) -> None:
        """Cuts the poll under way short with 409."""
        if self._poll is not None and not self._poll.ended.done():
            self._poll.ended.set_result(conflict(why))
        self._poll = None
