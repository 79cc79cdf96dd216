"""Changes to a bot's own messages. Source: "Updating messages" of the public Bot API documentation."""

from dataclasses import replace

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.files import FileKind
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.methods.asked import (
    caption_asked,
    inline_asked,
    media_asked,
    message_asked,
    open_chat,
    text_asked,
)
from bot.tryout.standin.model import Chat, Message, message_api
from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.values import JsonValue

NOT_MODIFIED = (
    "message is not modified: specified new message content and reply markup are exactly the same as a current "
    "content and reply markup of the message"
)
MEDIA_KINDS: dict[str, FileKind] = {"photo": "photo", "document": "document"}


def edit_message_text(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Other words in a text message; its buttons go unless given again."""
    words = text_asked(house, ask)
    chat, message = _editable(house, bot, ask)
    if message.media is not None:
        raise bad_request("there is no text in the message to edit")
    return _keep(house, bot, chat, message, replace(message, words=words, markup=inline_asked(house, ask)))


def edit_message_caption(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Other words under a picture or file."""
    words = caption_asked(house, ask)
    chat, message = _editable(house, bot, ask)
    if message.media is None:
        raise bad_request("there is no caption in the message to edit")
    return _keep(house, bot, chat, message, replace(message, words=words, markup=inline_asked(house, ask)))


def edit_message_media(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Another picture or file in place of the one shown (or of a text), with its caption."""
    given = ask.object("media")
    kind = MEDIA_KINDS.get(str(given.get("type")))
    if kind is None:
        raise bad_request("can't parse InputMedia: media type is unsupported")
    missing = "can't parse InputMedia: media not found"
    media = media_asked(house, bot, ask, kind, str(given.get("media") or ""), missing=missing)
    words = caption_asked(house, given)
    chat, message = _editable(house, bot, ask)
    changed = replace(message, words=words, media=media, markup=inline_asked(house, ask))
    return _keep(house, bot, chat, message, changed)


def edit_message_reply_markup(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Other buttons, or none."""
    chat, message = _editable(house, bot, ask)
    return _keep(house, bot, chat, message, replace(message, markup=inline_asked(house, ask)))


def _editable(house: House, bot: Bot, ask: Ask) -> tuple[Chat, Message]:
    chat = open_chat(house, bot, ask)
    message = message_asked(chat, ask, "message to edit")
    if not message.can_be_edited:
        raise bad_request("message can't be edited")
    return chat, message


def _keep(house: House, bot: Bot, chat: Chat, before: Message, after: Message) -> JsonValue:
    if after == before:
        raise bad_request(NOT_MODIFIED)
    if bot.pace is not None:
        bot.pace.take(chat.id)
    only_buttons = (after.words, after.media) == (before.words, before.media)
    edited = replace(after, edited=before.edited if only_buttons else house.clock.now())
    house.keep(bot, chat, edited)
    return message_api(chat, edited)
