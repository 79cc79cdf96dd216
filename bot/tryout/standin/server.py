"""The stand-in itself: see the package's docstring for how to start and drive it."""

from collections.abc import Callable, Sequence
from time import monotonic
from typing import TypeAlias

from aiohttp import web

from bot.tryout.standin import groups
from bot.tryout.standin.clock import Clock, Seconds
from bot.tryout.standin.control import Control
from bot.tryout.standin.door import Door
from bot.tryout.standin.faults import Faults
from bot.tryout.standin.guard import LOOPBACK, guard
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.limits import Limits
from bot.tryout.standin.model import Chat, Person
from bot.tryout.standin.news import News
from bot.tryout.standin.poster import Poster
from bot.tryout.standin.reading import body_limit
from bot.tryout.standin.record import Record
from bot.tryout.standin.seat import Seat

Wing: TypeAlias = Callable[[web.Application], None]
"""Adds routes to the same server, as the chat page does."""


class StandIn:
    """The Bot API on loopback, with everyone who talks to the bots. State is in memory and lives as long as this."""

    def __init__(
        self, clock: Clock, limits: Limits | None = None, *, seconds: Seconds = monotonic, seed: int = 0,
        polls: bool = False,
    ) -> None:  # fmt: skip
        """`clock` stamps messages and ages updates; `seconds` (monotonic) measures pace and the life of taps;
        `polls` writes down getUpdates calls too."""
        self.house = House(clock, seconds, limits or Limits(), Faults(seed), seed, Record(polls=polls))
        self._door = Door(self.house)
        self._poster = Poster(self.house, self._door.perform_posted)
        self.house.hook_changed = self._poster.changed
        self._runner: web.AppRunner | None = None
        self.url = ""

    @property
    def faults(self) -> Faults:
        """Trouble on request."""
        return self.house.faults

    @property
    def record(self) -> Record:
        """Every call made."""
        return self.house.record

    @property
    def news(self) -> News:
        """What happened, to be waited for."""
        return self.house.news

    @property
    def base_url(self) -> str:
        """What a client library takes as `base_url`."""
        return f"{self.url}/bot"

    @property
    def base_file_url(self) -> str:
        """What a client library takes as `base_file_url`."""
        return f"{self.url}/file/bot"

    def add_bot(self, token: str, username: str = "chalk_bot", name: str = "Chalk") -> Bot:
        """Registers a bot."""
        return self.house.add_bot(token, username, name)

    def add_person(
        self, number: int, first_name: str, language: str = "en", *, last_name: str = "", username: str = "",
        zone: str = "",
    ) -> Person:  # fmt: skip
        """Registers someone who may talk to the bots. An id again replaces what was known of the person."""
        person = Person(number, first_name, language, last_name, username, zone)
        self.house.people[number] = person
        for bot in self.house.bots.values():
            chat = bot.chats.get(number)
            if chat is not None:
                chat.person, chat.title = person, first_name
        self.news.tell(0, number, "person")
        return person

    def seat(self, person_id: int, bot_id: int = 0) -> Seat:
        """A person at a bot; the first bot when none is named."""
        return Seat(self.house, self.house.bot(bot_id), self.house.people[person_id])

    def invite_to_group(self, by: int, group_id: int, title: str, bot_id: int = 0) -> Chat:
        """Someone puts the bot into a group."""
        return groups.invite(self.house, self.house.bot(bot_id), self.house.people[by], group_id, title)

    def kick_from_group(self, by: int, group: Chat, bot_id: int = 0) -> None:
        """Someone throws it out."""
        groups.kick(self.house, self.house.bot(bot_id), self.house.people[by], group)

    def say_in_group(self, by: int, group: Chat, text: str, bot_id: int = 0) -> int:
        """Someone says something there."""
        return groups.say_in_group(self.house, self.house.bot(bot_id), self.house.people[by], group, text)

    async def start(self, host: str = "127.0.0.1", port: int = 0, *, wings: Sequence[Wing] = ()) -> str:
        """Serves; port 0 takes a free one. Returns the address, as does `url`. OSError when the port is taken."""
        limit = body_limit(self.house.limits)
        app = web.Application(client_max_size=limit, middlewares=[guard(loopback=host in LOOPBACK)])
        self._door.lay(app)
        Control(self.house, self.seat, self.add_person).lay(app)
        for wing in wings:
            wing(app)
        runner = web.AppRunner(app, access_log=None, handler_cancellation=True, shutdown_timeout=0.2)
        await runner.setup()
        try:
            await web.TCPSite(runner, host, port).start()
        except OSError:
            await runner.cleanup()
            raise
        self._runner = runner
        shown = f"[{host}]" if ":" in host else host
        self.url = f"http://{shown}:{runner.addresses[0][1]}"
        return self.url

    async def stop(self) -> None:
        """Ends everything; waiting calls are let go."""
        await self._poster.stop()
        self.news.wake()
        for bot in self.house.bots.values():
            bot.updates.wake()
        if self._runner is not None:
            await self._runner.cleanup()
            self._runner = None
