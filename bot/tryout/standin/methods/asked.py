"""What several methods ask for: a chat one may write in, a message, words, a reply, a file."""

from dataclasses import dataclass

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.entities import Words, find_entities, read_entities, tidy
from bot.tryout.standin.files import FileKind, Media
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.hypertext import read_html
from bot.tryout.standin.keyboards import Inline, Markup, RemoveKeyboard, ReplyKeyboard, read_markup
from bot.tryout.standin.model import Chat, Message
from bot.tryout.standin.pictures import Size, picture_size
from bot.tryout.standin.refusals import TOO_LARGE, bad_request, forbidden
from bot.tryout.standin.units import utf16_length
from bot.tryout.standin.values import JsonObject

SHUT = {
    "blocked": "bot was blocked by the user",
    "kicked": "bot was kicked from the group chat",
    "left": "bot is not a member of the group chat",
}


def chat_asked(house: House, bot: Bot, ask: Ask, name: str = "chat_id") -> Chat:
    """The chat named in a call, whether or not the bot may write there; 400 when there is none."""
    if not ask.text(name):
        raise bad_request(f"{name} is empty")
    number = ask.whole(name)
    chat = bot.chats.get(number)
    if chat is None and number in house.people:
        return house.chat(bot, house.people[number])
    if chat is None:
        raise bad_request("chat not found")
    return chat


def open_chat(house: House, bot: Bot, ask: Ask) -> Chat:
    """The chat named in a call, where the bot may write; 403 where it may not."""
    chat = chat_asked(house, bot, ask)
    if chat.shut:
        raise forbidden(SHUT[chat.shut])
    if not chat.started:
        raise forbidden("bot can't initiate conversation with a user")
    return chat


def message_asked(chat: Chat, ask: Ask, what: str, name: str = "message_id") -> Message:
    """The message named in a call; `what` is how the platform names it when there is none."""
    number = ask.whole(name)
    if number <= 0:
        raise bad_request("message identifier is not specified")
    message = chat.messages.get(number)
    if message is None:
        raise bad_request(f"{what} not found")
    return message


def formatted(house: House, text: str, parse_mode: str, ask: JsonObject | Ask, entities: str) -> Words:
    """Words by parse mode (HTML or none), or by a list of entities; trimmed and ordered."""
    given = ask.json(entities) if isinstance(ask, Ask) else ask.get(entities)
    match parse_mode.strip().lower():
        case "" | "none":
            words = Words(text, read_entities(given) if given else ())
        case "html":
            words = read_html(text)
        case _:
            # The platform has two Markdown modes as well; this stand-in takes HTML only.
            raise bad_request("unsupported parse_mode")
    return find_entities(tidy(words, most=house.limits.entities))


def text_asked(house: House, ask: Ask) -> Words:
    """The words of a text message: not empty, not too long."""
    text = ask.text("text")
    if not text:
        raise bad_request("message text is empty")
    words = formatted(house, text, ask.text("parse_mode"), ask, "entities")
    if not words.text:
        raise bad_request("text must be non-empty")
    if utf16_length(words.text) > house.limits.text_units:
        raise bad_request("message is too long")
    return words


def caption_asked(house: House, ask: Ask | JsonObject) -> Words:
    """The words under a picture or file; may be empty."""
    if isinstance(ask, Ask):
        text, mode = ask.text("caption"), ask.text("parse_mode")
    else:
        text, mode = str(ask.get("caption") or ""), str(ask.get("parse_mode") or "")
    words = formatted(house, text, mode, ask, "caption_entities")
    if utf16_length(words.text) > house.limits.caption_units:
        raise bad_request("message caption is too long")
    return words


def media_asked(house: House, bot: Bot, ask: Ask, kind: FileKind, given: str, *, missing: str) -> Media:
    """The file of a call: uploaded beside it, or named by the id of one this bot had before."""
    if not given and kind not in ask.uploads:
        raise bad_request(missing)
    name = given.removeprefix("attach://") if given.startswith("attach://") else kind
    upload = ask.uploads.get(name)
    if upload is None:
        media = bot.shelf.take(given)
        if media.kind != kind:
            raise bad_request(f"can't use file of type {media.kind.title()} as {kind.title()}")
        return media
    if len(upload.data) > house.limits.upload_bytes:
        raise TOO_LARGE
    if not upload.data:
        raise bad_request("file must be non-empty")
    size = _photo_size(house, upload.data) if kind == "photo" else None
    return bot.shelf.put(kind, upload.data, name=upload.name, mime=upload.mime, size=size)


def _photo_size(house: House, data: bytes) -> Size:
    limits = house.limits
    if len(data) > limits.photo_bytes:
        raise bad_request(
            f"file of size {len(data)} bytes is too big for a photo; the maximum size is {limits.photo_bytes} bytes"
        )
    size = picture_size(data)
    if size is None:
        raise bad_request("IMAGE_PROCESS_FAILED")
    long, short = max(size), max(1, min(size))
    if sum(size) > limits.photo_sides or long / short > limits.photo_ratio or min(size) == 0:
        raise bad_request("PHOTO_INVALID_DIMENSIONS")
    return size


@dataclass(frozen=True, slots=True)
class Around:
    """What goes with a new message besides its content."""

    markup: Markup | None
    reply_to: int
    silent: bool


def around_asked(house: House, chat: Chat, ask: Ask) -> Around:
    """Markup, the message replied to, and whether it arrives without a sound."""
    reply = ask.object("reply_parameters")
    number = Ask(reply).whole("message_id") or ask.whole("reply_to_message_id")
    answered = chat.messages.get(number)
    if number and answered is None:
        if not (reply.get("allow_sending_without_reply") or ask.flag("allow_sending_without_reply")):
            raise bad_request("message to be replied not found")
        number = 0
    quote = reply.get("quote")
    if answered is not None and isinstance(quote, str) and quote and quote not in answered.words.text:
        raise bad_request("QUOTE_TEXT_INVALID")
    markup = read_markup(ask.json("reply_markup"), house.limits)
    return Around(markup, number, ask.flag("disable_notification"))


def inline_asked(house: House, ask: Ask) -> Inline | None:
    """Markup of an edit: inline buttons or none."""
    markup = read_markup(ask.json("reply_markup"), house.limits)
    if markup is not None and not isinstance(markup, Inline):
        raise bad_request("object expected as reply markup")
    return markup


def lay_keyboard(house: House, bot: Bot, chat: Chat, markup: Markup | None) -> None:
    """A reply keyboard stays with the chat until another one, or its removal."""
    match markup:
        case ReplyKeyboard():
            chat.keyboard = markup
        case RemoveKeyboard():
            chat.keyboard = None
        case _:
            return
    house.news.tell(bot.id, chat.id, "keyboard")
