"""New messages from a bot. Source: "sendMessage", "sendPhoto", "sendDocument", "copyMessage" of the docs."""

from dataclasses import dataclass

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.entities import Words
from bot.tryout.standin.files import FileKind, Media
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.methods.asked import (
    Around,
    around_asked,
    caption_asked,
    chat_asked,
    lay_keyboard,
    media_asked,
    message_asked,
    open_chat,
    text_asked,
)
from bot.tryout.standin.model import Chat, Message, message_api
from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.values import JsonValue


@dataclass(frozen=True, slots=True)
class Content:
    """What a message holds."""

    words: Words
    media: Media | None = None


def send_message(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """A text."""
    chat = open_chat(house, bot, ask)
    words = text_asked(house, ask)
    return message_api(chat, deliver(house, bot, chat, Content(words), around_asked(house, chat, ask)))


def send_photo(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """A picture with a caption."""
    return _send_file(house, bot, ask, "photo", "there is no photo in the request")


def send_document(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """A file with a caption."""
    return _send_file(house, bot, ask, "document", "there is no document in the request")


def _send_file(house: House, bot: Bot, ask: Ask, kind: FileKind, missing: str) -> JsonValue:
    chat = open_chat(house, bot, ask)
    media = media_asked(house, bot, ask, kind, ask.text(kind), missing=missing)
    words = caption_asked(house, ask)
    return message_api(chat, deliver(house, bot, chat, Content(words, media), around_asked(house, chat, ask)))


def copy_message(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """A message again, in another chat, with no link to where it came from; its caption may be replaced."""
    chat = open_chat(house, bot, ask)
    source = message_asked(chat_asked(house, bot, ask, "from_chat_id"), ask, "message to copy")
    if "pinned_message" in source.more:
        raise bad_request("message can't be copied")
    words = source.words
    if source.media is not None and ask.has("caption"):
        words = caption_asked(house, ask)
    sent = deliver(house, bot, chat, Content(words, source.media), around_asked(house, chat, ask))
    return {"message_id": sent.id}


def deliver(house: House, bot: Bot, chat: Chat, content: Content, around: Around) -> Message:
    """Puts a bot's new message in the chat, at the pace allowed."""
    if bot.pace is not None:
        bot.pace.take(chat.id)
    message = Message(
        id=bot.next_message_id(),
        chat_id=chat.id,
        sender=bot.user,
        date=house.clock.now(),
        words=content.words,
        media=content.media,
        markup=around.markup,
        reply_to=around.reply_to,
        silent=around.silent,
    )
    lay_keyboard(house, bot, chat, around.markup)
    house.keep(bot, chat, message)
    return message
