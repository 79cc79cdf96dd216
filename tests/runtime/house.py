"""A whole bot in the test's own process, on real parts, with a turn function that does as it is told."""

import asyncio
import base64
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path

from pydantic import SecretStr

from bot.app import Running, running
from bot.dialogue import router
from bot.dialogue.desk import Desk
from bot.dialogue.incoming import BotBlocked, Due, Incoming, Tapped, Typed
from bot.dialogue.turn import NOTHING, Turn
from bot.runtime.clock import SetClock
from bot.saying import Button, Say, Toast, line
from bot.settings import Settings
from bot.tryout.standin import StandIn
from tests.runtime.known import TOKEN
from tests.store.conftest import KEY


class Broken(Exception):
    """A defect in a turn."""


@dataclass(slots=True)
class Script:
    """Turns for tests: `turns` by the words typed, else the words are said back."""

    turns: dict[str, Turn] = field(default_factory=dict)
    due: Turn = NOTHING
    talk: Callable[[Incoming], Turn] | None = None
    """In place of the rest, where it is set."""
    seen: list[Incoming] = field(default_factory=list)
    desks: list[Desk] = field(default_factory=list)

    def answer(self, desk: Desk, incoming: Incoming) -> Turn:
        """The turn for it."""
        self.seen.append(incoming)
        self.desks.append(desk)
        if self.talk is not None:
            return self.talk(incoming)
        match incoming:
            case Typed() if incoming.text.startswith("break"):
                raise Broken(incoming.text)
            case Typed() if incoming.text in self.turns:
                return self.turns[incoming.text]
            case Typed():
                return Turn(says=(echo(incoming.chat, incoming.text),))
            case Tapped() if incoming.data == "1:toast:":
                return Turn(says=(Toast(incoming.query, line("sent-again")),))
            case Tapped() if incoming.data == "1:break:":
                raise Broken(incoming.data)
            case Due():
                return self.due
            case BotBlocked():
                return NOTHING
            case _:
                return NOTHING


def echo(chat: int, text: str, **more: object) -> Say:
    """Says these words."""
    return Say(chat, (line("invite-link", link=text),), **more)  # type: ignore[arg-type]  # a test's shorthand


def buttons(*data: str) -> tuple[tuple[Button, ...], ...]:
    """A row of buttons labelled with their data."""
    return (tuple(Button(line("invite-link", link=d), d) for d in data),)


def settings_for(standin: StandIn, url: str, folder: Path, **more: object) -> Settings:
    """The bot's settings: the stand-in for the platform, this database, the tests' key."""
    key = folder / "test.key"
    if not key.exists():
        key.write_bytes(base64.b64encode(KEY) + b"\n")
        key.chmod(0o600)
    given: dict[str, object] = {
        "token": SecretStr(TOKEN),
        "api_url": standin.url,
        "database_url": url,
        "data_dir": folder,
        "key_file": key,
        "pace_per_s": 1_000_000.0,
        "pace_per_chat_s": 1_000_000.0,
        "pace_burst": 1_000_000,
        "tick_s": 0.02,
        "wake_s": 0.02,
        **more,
    }
    return Settings(**given)  # type: ignore[arg-type]  # a test's shorthand


@dataclass(slots=True)
class Here:
    """Where a test's bots run: the platform, the clock, the database, and the turns."""

    standin: StandIn
    clock: SetClock
    url: str
    folder: Path
    script: Script = field(default_factory=Script)

    @asynccontextmanager
    async def bot(self, *, real: bool = False, **more: object) -> AsyncIterator[Running]:
        """A bot, while the block runs; `more` are settings; `real`: with the real talks."""
        settings = settings_for(self.standin, self.url, self.folder, **more)
        answer = router.answer if real else self.script.answer
        async with asyncio.timeout(120), running(settings, clock=self.clock, answer=answer) as bot:
            yield bot

    async def settled(self, bot: Running, *, moving: bool = False) -> None:
        """Until the platform has nothing more for the bot and nothing waits in it. With `moving`, the clock goes on
        by a second a look, so that what is to be tried again comes due."""
        while True:
            quiet = asyncio.create_task(bot.quiet())
            while not quiet.done():
                await asyncio.wait({quiet}, timeout=0.02 if moving else None)
                if moving and not quiet.done():
                    self.clock.advance(timedelta(seconds=1))
                    bot.service.outbox.wake.set()
            await quiet
            if not len(self.standin.house.bot(0).updates):
                return
            await asyncio.sleep(0)
