"""A person at a bot, with the chat app in hand: says, edits, taps, sends files, blocks, reads what the bot wrote."""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, replace
from itertools import takewhile

from bot.tryout.standin.entities import Words, find_entities
from bot.tryout.standin.files import FileKind, Media
from bot.tryout.standin.house import Bot, House, Query
from bot.tryout.standin.membership import tell_membership
from bot.tryout.standin.model import Chat, Message, Person, message_api
from bot.tryout.standin.pictures import picture_size
from bot.tryout.standin.sight import CantDo, Place, find_button, show_line
from bot.tryout.standin.units import utf16_length, whole_characters
from bot.tryout.standin.values import JsonObject


@dataclass(frozen=True, slots=True)
class Seat:
    """One person's conversation with one bot. All methods act at once; only the `wait` ones wait."""

    house: House
    bot: Bot
    person: Person

    @property
    def chat(self) -> Chat:
        """The conversation."""
        return self.house.chat(self.bot, self.person)

    def messages(self) -> tuple[Message, ...]:
        """Everything in the chat now, oldest first."""
        return tuple(self.chat.messages.values())

    def since(self, after: int) -> tuple[Message, ...]:
        """The messages with an id above that, oldest first; costs no more than there are of them."""
        newest = takewhile(lambda message: message.id > after, reversed(self.chat.messages.values()))
        return tuple(newest)[::-1]

    def message(self, message_id: int) -> Message:
        """One message of the chat."""
        message = self.chat.messages.get(message_id)
        if message is None:
            raise CantDo(f"there is no message {message_id} in this chat")
        return message

    def last(self) -> Message:
        """The bot's newest message."""
        for message in reversed(self.chat.messages.values()):
            if message.by_bot:
                return message
        raise CantDo("the bot has not written yet")

    def start(self, payload: str = "") -> int:
        """Presses Start, or opens a link with a payload."""
        return self.say(f"/start {payload}".strip())

    def say(self, text: str, *, reply_to: int = 0) -> int:
        """Types a message; its id."""
        words = self._words(text)
        return self._put(Message(0, 0, self.person, self.house.clock.now(), words, reply_to=reply_to))

    def send(
        self, kind: FileKind, data: bytes, *, name: str = "", mime: str = "", caption: str = "", seconds: int = 0,
        reply_to: int = 0, album: str = "",
    ) -> int:  # fmt: skip
        """Sends a file: a document, a photo, a voice note, a video. `album` groups several as one."""
        media = self._media(kind, data, name=name, mime=mime, seconds=seconds)
        words = self._words(caption) if caption else Words()
        more: JsonObject = {"media_group_id": album} if album else {}
        now = self.house.clock.now()
        return self._put(Message(0, 0, self.person, now, words, media, reply_to=reply_to, more=more))

    def sticker(self, emoji: str = "👍") -> int:
        """Sends a sticker."""
        media = self.bot.shelf.put("sticker", emoji.encode(), name="sticker.webp", emoji=emoji)
        return self._put(Message(0, 0, self.person, self.house.clock.now(), media=media))

    def forward(self, text: str, *, sender_name: str = "Someone") -> int:
        """Forwards a text that someone with a hidden account wrote."""
        now = self.house.clock.now()
        origin: JsonObject = {"type": "hidden_user", "sender_user_name": sender_name, "date": int(now.timestamp())}
        return self._put(Message(0, 0, self.person, now, self._words(text), more={"forward_origin": origin}))

    def edit(self, message_id: int, text: str) -> None:
        """Changes an own message, or the caption of an own file."""
        message = self.message(message_id)
        if message.sender != self.person or "forward_origin" in message.more:
            raise CantDo("only one's own messages can be edited")
        self._check_open()
        words = self._words(text)
        if words == message.words:
            raise CantDo("the message says that already")
        edited = replace(message, words=words, edited=self.house.clock.now())
        self.house.keep(self.bot, self.chat, edited)
        self.bot.updates.push("edited_message", message_api(self.chat, edited), chat_id=self.chat.id)

    def delete(self, message_id: int) -> None:
        """Deletes a message for both. The platform tells bots nothing of it."""
        self.message(message_id)
        del self.chat.messages[message_id]
        self.house.news.tell(self.bot.id, self.chat.id, "removed", message_id)

    def tap(self, message_id: int, place: Place) -> str:
        """Taps an inline button that calls the bot; the query's id (see `answer_to`)."""
        button = find_button(self.message(message_id), place)
        if button.action != "callback_data":
            raise CantDo(f"the button «{button.label}» does not call the bot")
        return self.tap_data(message_id, button.detail)

    def tap_data(self, message_id: int, data: str) -> str:
        """What a tap sends, with any data: a button that has gone meanwhile, or a forged one."""
        self._check_open()
        self.bot.last_query += 1
        query_id = str(4_000_000_000_000 + self.bot.last_query)
        now_s = self.house.seconds()
        self.bot.queries[query_id] = Query(query_id, self.person, self.chat.id, message_id, data, now_s)
        message = self.chat.messages.get(message_id)
        gone: JsonObject = {"chat": self.chat.api(), "message_id": message_id, "date": 0}
        body: JsonObject = {
            "id": query_id,
            "from": self.person.api(),
            "message": message_api(self.chat, message) if message else gone,
            "chat_instance": str(7_000_000_000 + self.chat.id),
            "data": data,
        }
        self.bot.updates.push("callback_query", body, chat_id=self.chat.id)
        return query_id

    def answer_to(self, query_id: str) -> str | None:
        """What the bot answered to a tap: words, "" for a bare answer, None for none yet."""
        return self.bot.queries[query_id].text

    def block(self) -> None:
        """Blocks the bot; it is told so."""
        self._membership("blocked")

    def unblock(self) -> None:
        """Lets it write again; it is told so."""
        self._membership("")

    async def wait_for(
        self, wanted: Callable[[Message], bool] | str, *, after: int = 0, timeout_s: float = 5.0
    ) -> Message:
        """The first of the bot's messages with an id above `after` that is wanted: by a test, or by words in its text.

        Looks at what is there first, then waits, edits included. TimeoutError shows the chat as it stands.
        """
        test = wanted if callable(wanted) else lambda message: wanted in message.words.text
        async with _patience(self, timeout_s):
            while True:
                seen = self.house.news.last
                for message in self.since(after):
                    if message.by_bot and test(message):
                        return message
                await self.house.news.wait(seen, timeout_s)

    async def wait_answer(self, query_id: str, *, timeout_s: float = 5.0) -> str:
        """Waits for the bot's answer to a tap."""
        async with _patience(self, timeout_s):
            while (answer := self.answer_to(query_id)) is None:
                await self.house.news.wait(self.house.news.last, timeout_s)
            return answer

    def transcript(self) -> str:
        """The chat in plain lines, for the message of a failed test."""
        return "\n".join(show_line(message) for message in self.messages())

    def _membership(self, shut: str) -> None:
        chat = self.chat
        if chat.shut == shut:
            raise CantDo("that is so already")
        chat.shut = "blocked" if shut else ""
        statuses = ("member", "kicked") if shut else ("kicked", "member")
        tell_membership(self.house, self.bot, chat, self.person, statuses)

    def _words(self, text: str) -> Words:
        tidied = whole_characters(text).strip()
        if not tidied:
            raise CantDo("there is nothing to send")
        if utf16_length(tidied) > self.house.limits.text_units:
            raise CantDo(f"a message holds {self.house.limits.text_units} characters at most")
        return find_entities(Words(tidied))

    def _media(self, kind: FileKind, data: bytes, *, name: str, mime: str, seconds: int) -> Media:
        size = picture_size(data) if kind == "photo" else None
        if kind == "photo" and size is None:
            raise CantDo("that is not a picture")
        return self.bot.shelf.put(kind, data, name=name, mime=mime, size=size, seconds=seconds)

    def _check_open(self) -> None:
        if self.chat.shut:
            raise CantDo("the bot is blocked; unblock it first")

    def _put(self, message: Message) -> int:
        self._check_open()
        chat = self.chat
        if message.reply_to:
            self.message(message.reply_to)
        chat.started = True
        kept = replace(message, id=self.bot.next_message_id(), chat_id=chat.id)
        self.house.keep(self.bot, chat, kept)
        self.bot.updates.push("message", message_api(chat, kept), chat_id=chat.id)
        return kept.id


@asynccontextmanager
async def _patience(seat: Seat, timeout_s: float) -> AsyncIterator[None]:
    """A time limit whose error shows the chat."""
    try:
        async with asyncio.timeout(timeout_s):
            yield
    except TimeoutError as error:
        raise TimeoutError(f"nothing of the kind within {timeout_s} s; the chat:\n{seat.transcript()}") from error
