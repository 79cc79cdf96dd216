"""Everything the stand-in holds: people, bots, chats, and what they all share."""

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Literal

from bot.tryout.standin.clock import Clock, Seconds
from bot.tryout.standin.faults import Faults
from bot.tryout.standin.files import Shelf
from bot.tryout.standin.limits import Limits
from bot.tryout.standin.menu import Menu
from bot.tryout.standin.model import Chat, Message, Person
from bot.tryout.standin.news import News
from bot.tryout.standin.pace import Pace
from bot.tryout.standin.record import Record
from bot.tryout.standin.updates import Updates

TOKEN = re.compile(r"[1-9]\d{0,15}:[A-Za-z0-9_-]{1,64}")


@dataclass(slots=True)
class Query:
    """A tap that waits for its answer. `text` is what the person was shown; None until answered."""

    id: str
    person: Person
    chat_id: int
    message_id: int
    data: str
    at_s: float
    text: str | None = None
    alert: bool = False


@dataclass(slots=True)
class Hook:
    """Where updates are posted to."""

    url: str
    secret: str = ""
    connections: int = 40
    last_error: str = ""
    last_error_at: int = 0


@dataclass(slots=True)
class Bot:
    """One bot's side of the platform."""

    token: str
    user: Person
    updates: Updates
    shelf: Shelf
    pace: Pace | None
    chats: dict[int, Chat] = field(default_factory=dict)
    queries: dict[str, Query] = field(default_factory=dict)
    menu: Menu = field(default_factory=Menu)
    hook: Hook | None = None
    messages: int = 0
    last_query: int = 0

    @property
    def id(self) -> int:
        """The number before the colon of the token."""
        return self.user.id

    def next_message_id(self) -> int:
        """Ids count up over all of a bot's private chats."""
        self.messages += 1
        return self.messages


@dataclass(slots=True)
class House:
    """The whole of it. Nothing is kept on disk: it outlives the bot, which is another process, not itself."""

    clock: Clock
    seconds: Seconds
    limits: Limits
    faults: Faults
    seed: int = 0
    record: Record = field(default_factory=Record)
    news: News = field(default_factory=News)
    people: dict[int, Person] = field(default_factory=dict)
    bots: dict[str, Bot] = field(default_factory=dict)
    hook_changed: Callable[[Bot], None] = lambda _bot: None

    def add_bot(self, token: str, username: str, name: str) -> Bot:
        """Registers a bot; the token is `<digits>:<letters, digits, _ and ->`."""
        if not TOKEN.fullmatch(token):
            raise ValueError("a token is digits, a colon, and then letters, digits, _ or -")
        number = int(token.split(":", maxsplit=1)[0])
        pace = Pace(self.limits.pace, self.seconds) if self.limits.pace else None
        updates = Updates(self.clock, self.limits.keep_updates, self.faults, seed=self.seed + number)
        user = Person(number, name, language="", username=username, is_bot=True)
        bot = Bot(token, user, updates, Shelf(number), pace)
        self.bots[token] = bot
        return bot

    def bot(self, number: int) -> Bot:
        """A bot by its id; 0 means the first."""
        for bot in self.bots.values():
            if number in {0, bot.id}:
                return bot
        raise ValueError("there is no such bot")

    def chat(self, bot: Bot, person: Person) -> Chat:
        """The conversation of that bot and that person, made when there is none yet."""
        chat = bot.chats.get(person.id)
        if chat is None:
            chat = Chat(person.id, "private", person.first_name, person)
            bot.chats[person.id] = chat
        return chat

    def keep(self, bot: Bot, chat: Chat, message: Message, kind: Literal["message", "removed"] = "message") -> None:
        """Puts a message in its chat, in place of its former self, and tells the watchers."""
        chat.messages[message.id] = message
        self.news.tell(bot.id, chat.id, kind, message.id)
