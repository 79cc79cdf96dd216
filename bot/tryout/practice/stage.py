"""The stage of the demo week: moves the clock, lets people act, waits until the bot is quiet, shows what passed.

Everything goes through the stand-in of the Bot API over HTTP, as it would with the platform: the bot doesn't know.
"""

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Protocol
from zoneinfo import ZoneInfo

from bot.tryout.practice.people import Player
from bot.tryout.standin import Message, Seat, StandIn

PATIENCE_S = 120
"""Seconds for the bot to fetch what waits for it."""


class WentWrong(Exception):
    """The week did not go as it should; the words say where."""


class Stageable(Protocol):
    """What the stage needs of the bot under it."""

    async def tick(self) -> int:
        """Take up what is due by the clock."""
        ...

    async def quiet(self) -> None:
        """Return when nothing waits any more."""
        ...


class Settable(Protocol):
    """A clock that the stage sets."""

    def now(self) -> datetime:
        """The present moment."""
        ...

    def set(self, at: datetime) -> None:
        """It is this moment from now on."""
        ...


NextDue = Callable[[], Awaitable[datetime | None]]
Show = Callable[[str], None]


@dataclass(slots=True)
class Stage:
    """One run of the week. `show` gets each line as it passes; `heard` counts the messages."""

    standin: StandIn
    bot: Stageable
    clock: Settable
    next_due: NextDue
    show: Show
    everyone: tuple[Player, ...]
    heard: int = 0
    _seen: int = 0
    _shown: dict[tuple[int, int], str] = field(default_factory=dict)

    def seat(self, who: Player) -> Seat:
        """Their place at the chat."""
        return self.standin.seat(who.id)

    # --- time

    async def until(self, who: Player, wall: str) -> None:
        """Lets time pass until their clock shows `wall` (`2027-01-11 18:00`), stopping at everything that falls due."""
        target = datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(who.zone)).astimezone(UTC)
        while (due := await self.next_due()) is not None and due <= target:
            self.clock.set(max(due, self.clock.now()))
            await self.settle()
        self.clock.set(max(target, self.clock.now()))
        await self.settle()

    async def wait(self, minutes: float) -> None:
        """A pause, as between sets."""
        target = self.clock.now() + timedelta(minutes=minutes)
        while (due := await self.next_due()) is not None and due <= target:
            self.clock.set(max(due, self.clock.now()))
            await self.settle()
        self.clock.set(target)

    async def settle(self) -> None:
        """Until the bot has done all that there is to do now; shows what passed."""
        await self._fetched()
        await self.bot.tick()
        await self.bot.quiet()
        self._report()

    async def _fetched(self) -> None:
        """Until the bot has confirmed every update that waits for it."""
        updates = self.standin.house.bot(0).updates
        try:
            async with asyncio.timeout(PATIENCE_S):
                while len(updates):
                    await asyncio.sleep(0.002)
        except TimeoutError:
            raise WentWrong(f"the bot has not fetched {len(updates)} updates within {PATIENCE_S} s") from None

    # --- what people do

    async def start(self, who: Player, payload: str = "") -> None:
        """Opens the bot, by a link's payload."""
        self.seat(who).start(payload)
        await self.settle()

    async def say(self, who: Player, text: str, *, after_min: float = 0, reply_to: int = 0) -> int:
        """Types a message; its number."""
        if after_min:
            await self.wait(after_min)
        sent = self.seat(who).say(text, reply_to=reply_to)
        await self.settle()
        return sent

    async def send(self, who: Player, name: str, content: bytes, *, caption: str = "", reply_to: int = 0) -> int:
        """Sends a file; its message's number."""
        sent = self.seat(who).send("document", content, name=name, caption=caption, reply_to=reply_to)
        await self.settle()
        return sent

    def file(self, who: Player) -> tuple[str, bytes]:
        """The newest file that the bot sent them: its name and content."""
        for message in reversed(self.seat(who).messages()):
            if message.by_bot and message.media is not None and message.media.kind == "document":
                return message.media.name, message.media.data
        raise WentWrong(f"{who.name} has no file; the chat:\n{self.seat(who).transcript()}")

    async def edit(self, who: Player, message: int, text: str) -> None:
        """Changes what they had typed."""
        self.seat(who).edit(message, text)
        await self.settle()

    async def tap(self, who: Player, label: str, *, after_min: float = 0) -> None:
        """Taps the newest button whose label is, or begins with, these words."""
        if after_min:
            await self.wait(after_min)
        seat = self.seat(who)
        for message in reversed(seat.messages()):
            rows = message.inline.rows if message.inline and message.by_bot else ()
            labels = [button.label for row in rows for button in row]
            exact = next((x for x in labels if x == label), None)
            found = exact or next((x for x in labels if x.startswith(f"{label.rstrip()} ")), None)
            if found is not None:
                self.show(f"{self._time(who)}  {who.name} taps [{found}]")
                query = seat.tap(message.id, found)
                await self.settle()
                answer = seat.answer_to(query)
                if answer:
                    self.show(f"{self._time(who)}      bot, for a moment: {answer}")
                return
        raise WentWrong(f"{who.name} finds no button «{label}»; the chat:\n{seat.transcript()}")

    # --- what must be there

    def expect(self, who: Player, words: str, *, within: int = 6) -> Message:
        """One of the last messages to them holds these words; `WentWrong` with the chat where none does."""
        recent = [m for m in self.seat(who).messages() if m.by_bot][-within:]
        for message in reversed(recent):
            if words in message.words.text:
                return message
        raise WentWrong(f"{who.name} was to read «{words}»; the chat:\n{self.seat(who).transcript()[-3000:]}")

    def link_payload(self, who: Player) -> str:
        """The payload of the newest invitation link that they were shown."""
        for message in reversed(self.seat(who).messages()):
            _, found, rest = message.words.text.partition("?start=")
            if found and message.by_bot:
                return rest.split()[0]
        raise WentWrong(f"{who.name} has no invitation link; the chat:\n{self.seat(who).transcript()}")

    # --- what is shown

    def _report(self) -> None:
        for notice in self.standin.news.since(self._seen):
            self._seen = notice.number
            if notice.kind != "message":
                continue
            who = next((p for p in self.everyone if p.id == notice.chat_id), None)
            message = None if who is None else self._message(who, notice.message_id)
            if who is None or message is None:
                continue
            self.heard += 1
            self._show_message(who, message)

    def _message(self, who: Player, number: int) -> Message | None:
        return next((m for m in self.seat(who).messages() if m.id == number), None)

    def _show_message(self, who: Player, message: Message) -> None:
        words = message.words.text
        rows = message.inline.rows if message.inline else ()
        buttons = " ".join(f"[{button.label}]" for row in rows for button in row)
        marks = " ".join(message.reactions)
        picture = f"<{message.media.kind}> " if message.media else ""
        body = f"{picture}{words}"
        whole = f"{body}\n{buttons}\n{marks}"
        before = self._shown.get((who.id, message.id))
        if before == whole:
            return
        self._shown[who.id, message.id] = whole
        direction = f"bot to {who.name}" if message.by_bot else f"{who.name} to bot"
        if before is not None and marks and before.rpartition("\n")[0] == whole.rpartition("\n")[0]:
            self.show(f"{self._time(who)}  bot reacts to {who.name}'s message: {marks}")
            return
        changed = " (brought up to date)" if before is not None and message.by_bot else ""
        changed = " (edited)" if before is not None and not message.by_bot else changed
        lines = body.splitlines() or [""]
        self.show(f"{self._time(who)}  {direction}{changed}: {lines[0]}")
        for text in lines[1:]:
            self.show(f"{'':11}  {'':4}{text}" if text else "")
        if buttons:
            self.show(f"{'':11}  {'':4}{buttons}")

    def _time(self, who: Player) -> str:
        return who.wall(self.clock.now()).strftime("%a %H:%M  ")
