"""Who is there and what was said: people, bots, chats, messages."""

from dataclasses import dataclass, field
from datetime import datetime
from typing import Literal, TypeAlias

from bot.tryout.standin.entities import Words
from bot.tryout.standin.files import Media
from bot.tryout.standin.keyboards import Inline, Markup, ReplyKeyboard
from bot.tryout.standin.values import JsonObject


@dataclass(frozen=True, slots=True)
class Person:
    """Someone with the chat app. `zone` (IANA name) is for the chat page only: the platform tells bots no zone."""

    id: int
    first_name: str
    language: str = "en"
    last_name: str = ""
    username: str = ""
    zone: str = ""
    is_bot: bool = False

    def api(self) -> JsonObject:
        """As the platform shows a user to a bot."""
        shown: JsonObject = {"id": self.id, "is_bot": self.is_bot, "first_name": self.first_name}
        if self.last_name:
            shown["last_name"] = self.last_name
        if self.username:
            shown["username"] = self.username
        if self.language:
            shown["language_code"] = self.language
        return shown


@dataclass(frozen=True, slots=True)
class Message:
    """One message as it stands now; an edit puts a new value in its place."""

    id: int
    chat_id: int
    sender: Person
    date: datetime
    words: Words = field(default_factory=Words)
    media: Media | None = None
    markup: Markup | None = None
    reply_to: int = 0
    edited: datetime | None = None
    reactions: tuple[str, ...] = ()
    silent: bool = False
    more: JsonObject = field(default_factory=dict)
    """Further fields as the platform writes them: where it was forwarded from, its album, a service notice."""

    @property
    def by_bot(self) -> bool:
        """Whether a bot sent it."""
        return self.sender.is_bot

    @property
    def inline(self) -> Inline | None:
        """The buttons under it."""
        return self.markup if isinstance(self.markup, Inline) else None

    @property
    def can_be_edited(self) -> bool:
        """By its bot: only without markup, or with an inline keyboard."""
        return self.by_bot and not self.more.get("pinned_message") and (self.markup is None or self.inline is not None)


ChatKind: TypeAlias = Literal["private", "group"]


@dataclass(slots=True)
class Chat:
    """A bot's conversation with one person, or a group it is in."""

    id: int
    kind: ChatKind
    title: str
    person: Person | None = None
    started: bool = False
    """Whether the person ever spoke to the bot; it may not write first."""
    shut: Literal["", "blocked", "kicked", "left"] = ""
    messages: dict[int, Message] = field(default_factory=dict)
    keyboard: ReplyKeyboard | None = None
    pinned: int = 0

    def api(self) -> JsonObject:
        """As the platform writes it."""
        if self.person is None:
            return {"id": self.id, "type": self.kind, "title": self.title}
        named: JsonObject = {"id": self.id, "type": "private", "first_name": self.person.first_name}
        if self.person.username:
            named["username"] = self.person.username
        return named


def message_api(chat: Chat, message: Message, *, nested: bool = False) -> JsonObject:
    """A message as the platform writes it; a message replied to is shown one level deep."""
    shown: JsonObject = {
        "message_id": message.id,
        "from": message.sender.api(),
        "chat": chat.api(),
        "date": int(message.date.timestamp()),
    }
    if message.edited is not None:
        shown["edit_date"] = int(message.edited.timestamp())
    if message.media is not None:
        shown |= message.media.message_fields()
    text, entities = ("text", "entities") if message.media is None else ("caption", "caption_entities")
    if message.words.text:
        shown[text] = message.words.text
    if message.words.entities:
        shown[entities] = [entity.api() for entity in message.words.entities]
    if message.inline is not None:
        shown["reply_markup"] = message.inline.api()
    if message.reply_to and not nested:
        answered = chat.messages.get(message.reply_to)
        if answered is not None:
            shown["reply_to_message"] = message_api(chat, answered, nested=True)
    return shown | message.more
