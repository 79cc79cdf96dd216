"""Raw updates read: what a person did, in private chats only. Any shape is survived; what is not understood is `None`.

The library's own parsing is not used here: one malformed update makes it refuse the whole batch.
"""

import json
from datetime import UTC, datetime, timedelta
from typing import Any

from bot.dialogue.incoming import BotBlocked, Edited, Incoming, MediaKind, MediaSent, Tapped, Typed
from bot.saying import Leave

Shape = dict[str, Any]  # Any: JSON of unknown shape; every access below checks what it finds

LONGEST_TEXT = 8_192
"""Characters; twice what the platform lets through. The rest is cut off."""

_MEDIA: tuple[tuple[str, MediaKind], ...] = (
    ("animation", MediaKind.VIDEO),  # before "document": an animation carries both
    ("photo", MediaKind.PHOTO),
    ("live_photo", MediaKind.VIDEO),
    ("video", MediaKind.VIDEO),
    ("video_note", MediaKind.VIDEO),
    ("voice", MediaKind.VOICE),
    ("audio", MediaKind.VOICE),
    ("document", MediaKind.DOCUMENT),
    ("sticker", MediaKind.STICKER),
    *((name, MediaKind.OTHER) for name in ("location", "venue", "contact", "dice", "poll", "game", "story")),
    *((name, MediaKind.OTHER) for name in ("paid_media", "checklist", "invoice", "giveaway")),
)

_INSIDE = frozenset({"member", "administrator", "creator", "restricted"})
"""Standings of our own in a chat that we can leave (Bot API, ChatMember)."""

ASKED_FOR = ("message", "edited_message", "callback_query", "my_chat_member")
"""What we ask the platform for; anything else is none of ours."""


def read_raw(raw: str) -> Shape:
    """The update's fields; empty where it is not an object."""
    try:
        data = json.loads(raw)
    except (ValueError, RecursionError):
        return {}
    return data if isinstance(data, dict) else {}


def chat_of(update: object) -> int | None:
    """The chat that an update concerns, whatever it is; `None` where there is none."""
    shape = _shape(update)
    for name in ASKED_FOR:
        if name not in shape:
            continue
        part = _shape(shape[name])
        holder = _shape(part.get("message")) if name == "callback_query" else part
        chat = _id(_shape(holder.get("chat")).get("id"))
        if chat is None and name == "callback_query":
            chat = _id(_shape(part.get("from")).get("id"))
        return chat
    return None


def update_id_of(update: object) -> int | None:
    """The update's number; `None` where it has none."""
    number = _shape(update).get("update_id")
    if isinstance(number, int) and not isinstance(number, bool) and 0 <= number < 2**63:
        return number
    return None


class RawReader:
    """The runtime's `UpdateReader`."""

    def read(self, raw: str, *, received_at: datetime) -> Incoming | Leave | None:
        """What a person did; `Leave` for a chat that is no private one; `None` for what concerns us not."""
        update = read_raw(raw)
        if "message" in update:
            return _read_message(_shape(update["message"]), received_at)
        if "edited_message" in update:
            return _read_edit(_shape(update["edited_message"]), received_at)
        if "callback_query" in update:
            number = update_id_of(update)
            return None if number is None else _read_tap(_shape(update["callback_query"]), number, received_at)
        if "my_chat_member" in update:
            return _read_standing(_shape(update["my_chat_member"]), received_at)
        return None


def _read_message(message: Shape, received_at: datetime) -> Incoming | Leave | None:
    chat = _shape(message.get("chat"))
    chat_id, number = _id(chat.get("id")), _id(message.get("message_id"))
    if chat_id is None or number is None:
        return None
    if chat.get("type") != "private":
        return None if "left_chat_member" in message else Leave(chat_id)
    if _is_machine(message):
        return None
    at = _moment(message.get("date"), received_at)
    reply_to = _id(_shape(message.get("reply_to_message")).get("message_id"))
    text = message.get("text")
    if isinstance(text, str):
        author = _shape(message.get("from"))
        return Typed(
            chat=chat_id,
            message=number,
            at=at,
            text=_text(text),
            first_name=_text(author.get("first_name"))[:64],
            language=_text(author.get("language_code"))[:35],
            reply_to=reply_to,
            forwarded=_is_forwarded(message),
        )
    return _read_media(message, chat_id=chat_id, number=number, at=at, reply_to=reply_to)


def _read_media(message: Shape, *, chat_id: int, number: int, at: datetime, reply_to: int | None) -> MediaSent | None:
    found = next(((name, kind) for name, kind in _MEDIA if name in message), None)
    if found is None:
        return None  # a service message: a pin, a new title
    name, kind = found
    file = _largest(message[name])
    if name == "document" and _text(file.get("mime_type")).startswith("video/"):
        kind = MediaKind.VIDEO
    return MediaSent(
        chat=chat_id,
        message=number,
        at=at,
        kind=kind,
        caption=_text(message.get("caption")),
        file=_text(file.get("file_id"))[:256],
        file_name=_text(file.get("file_name"))[:256],
        reply_to=reply_to,
        album=_text(message.get("media_group_id"))[:64],
        forwarded=_is_forwarded(message),
        size=_size(file.get("file_size")),
    )


def _read_edit(message: Shape, received_at: datetime) -> Edited | None:
    chat = _shape(message.get("chat"))
    chat_id, number = _id(chat.get("id")), _id(message.get("message_id"))
    text = message.get("text", message.get("caption"))
    if chat_id is None or number is None or not isinstance(text, str):
        return None
    if chat.get("type") != "private" or _is_machine(message) or _is_forwarded(message):
        return None
    return Edited(chat_id, number, _moment(message.get("edit_date"), received_at), _text(text))


def _read_tap(tap: Shape, update: int, received_at: datetime) -> Tapped | None:
    """A tap belongs to whoever tapped: in a private chat their number is the chat's."""
    message, query, data = _shape(tap.get("message")), tap.get("id"), tap.get("data")
    chat = _shape(message.get("chat"))
    person, chat_id = _id(_shape(tap.get("from")).get("id")), _id(chat.get("id"))
    if person is None or not isinstance(query, str) or not isinstance(data, str):
        return None
    if chat_id != person or chat.get("type") != "private":
        return None
    return Tapped(person, _text(query)[:64], received_at, _text(data)[:64], update, _id(message.get("message_id")))


def _read_standing(change: Shape, received_at: datetime) -> BotBlocked | Leave | None:
    chat = _shape(change.get("chat"))
    chat_id, status = _id(chat.get("id")), _shape(change.get("new_chat_member")).get("status")
    if chat_id is None or not isinstance(status, str):
        return None
    if chat.get("type") != "private":
        return Leave(chat_id) if status in _INSIDE else None
    return BotBlocked(chat_id, _moment(change.get("date"), received_at), blocked=status not in _INSIDE)


def _is_machine(message: Shape) -> bool:
    return _shape(message.get("from")).get("is_bot") is True or "via_bot" in message or "sender_chat" in message


def _is_forwarded(message: Shape) -> bool:
    return "forward_origin" in message or "forward_date" in message


def _largest(media: object) -> Shape:
    """The file itself; of a photo's sizes the last, which is the largest."""
    if isinstance(media, list):
        return _shape(media[-1]) if media else {}
    return _shape(media)


def _shape(value: object) -> Shape:
    return value if isinstance(value, dict) else {}


def _id(value: object) -> int | None:
    """A chat's, person's or message's number: at most 52 bits (Bot API)."""
    if isinstance(value, int) and not isinstance(value, bool) and -(2**52) <= value <= 2**52:
        return value
    return None


def _size(value: object) -> int | None:
    """Bytes of a file; `None` where the platform doesn't say."""
    return value if isinstance(value, int) and not isinstance(value, bool) and 0 <= value < 2**53 else None


def _text(value: object) -> str:
    """Text that any store can keep: no lone surrogates, no null characters, not endless."""
    if not isinstance(value, str):
        return ""
    return value[:LONGEST_TEXT].replace("\0", "").encode("utf-8", "replace").decode("utf-8")


def _moment(value: object, otherwise: datetime) -> datetime:
    """A moment in seconds since 1970; what is none, or lies ahead of when it was received, is taken as received."""
    if isinstance(value, int) and not isinstance(value, bool) and 0 < value < 2**33:
        at = datetime.fromtimestamp(value, UTC)
        return at if at <= otherwise + timedelta(minutes=5) else otherwise
    return otherwise
