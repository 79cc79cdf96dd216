"""A message waiting in the outbox, as JSON and back. Storage seals it; it holds people's words."""

import base64
import hashlib
import json
from dataclasses import dataclass
from typing import Any

from bot.runtime.charts import read_chart, show_chart
from bot.runtime.ports import Keyboard
from bot.saying import Chart, Copy, Wanted


@dataclass(frozen=True, slots=True)
class SendBody:
    """A message with words. `plain` goes out where the markup is refused."""

    html: str
    plain: str
    keyboard: Keyboard = ()
    reply_to: int | None = None
    picture: Chart | None = None


@dataclass(frozen=True, slots=True)
class StripBody:
    """Which message loses its buttons: this one, or (`None`) the one in the parcel's slot."""

    message: int | None


@dataclass(frozen=True, slots=True)
class RelayBody:
    """Which message is copied."""

    source_chat: int
    source_message: int
    reply_to: int | None = None


@dataclass(frozen=True, slots=True)
class ReactBody:
    """Which message gets which reaction."""

    message: int
    emoji: str


@dataclass(frozen=True, slots=True)
class MenuBody:
    """Whose commands are shown."""

    role: str


@dataclass(frozen=True, slots=True)
class LeaveBody:
    """Nothing more to say."""


@dataclass(frozen=True, slots=True)
class FileBody:
    """A file with the words beside it: the words as in `SendBody`, the file made or wanted."""

    name: str
    file: bytes | Wanted
    html: str
    plain: str
    keyboard: Keyboard = ()
    reply_to: int | None = None


@dataclass(frozen=True, slots=True)
class FetchBody:
    """Which file's content is to be brought, and what for: see `bot.saying.Fetch`."""

    file: str
    message: int
    name: str
    purpose: str
    most: int


Body = SendBody | FileBody | FetchBody | StripBody | RelayBody | ReactBody | MenuBody | LeaveBody


def show_body(body: Body) -> str:
    """The body as JSON."""
    return json.dumps(_fields(body), ensure_ascii=False, separators=(",", ":"), sort_keys=True)


def body_hash(body: SendBody) -> str:
    """Twenty-four hexadecimal digits that change when what the reader sees changes (words, buttons, picture)."""
    seen = {k: v for k, v in _fields(body).items() if k != "reply_to"}
    text = json.dumps(seen, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()[:24]


def read_send(text: str) -> SendBody:
    """The body of a message with words."""
    data = json.loads(text)
    return SendBody(
        html=data["html"],
        plain=data["plain"],
        keyboard=tuple(tuple(row) for row in data["keyboard"]),
        reply_to=data["reply_to"],
        picture=None if data["picture"] is None else read_chart(data["picture"]),
    )


def read_file(text: str) -> FileBody:
    """The body of a file."""
    data = json.loads(text)
    made, wanted = data["made"], data["wanted"]
    file = base64.b64decode(made) if wanted is None else _read_wanted(wanted)
    keyboard = tuple(tuple(row) for row in data["keyboard"])
    return FileBody(data["name"], file, data["html"], data["plain"], keyboard, data["reply_to"])


def read_fetch(text: str) -> FetchBody:
    """The body of a fetch."""
    data = json.loads(text)
    return FetchBody(data["file"], data["message"], data["name"], data["purpose"], data["most"])


def read_strip(text: str) -> StripBody:
    """The body of a strip."""
    return StripBody(json.loads(text)["message"])


def read_relay(text: str) -> RelayBody:
    """The body of a copy."""
    data = json.loads(text)
    return RelayBody(data["source_chat"], data["source_message"], data["reply_to"])


def read_react(text: str) -> ReactBody:
    """The body of a reaction."""
    data = json.loads(text)
    return ReactBody(data["message"], data["emoji"])


def read_menu(text: str) -> MenuBody:
    """The body of a menu."""
    return MenuBody(json.loads(text)["role"])


def _fields(body: Body) -> dict[str, Any]:  # Any: JSON
    match body:
        case SendBody():
            return {
                "html": body.html,
                "plain": body.plain,
                "keyboard": body.keyboard,
                "reply_to": body.reply_to,
                "picture": None if body.picture is None else show_chart(body.picture),
            }
        case FileBody():
            return _file_fields(body)
        case FetchBody():
            return {
                "file": body.file,
                "message": body.message,
                "name": body.name,
                "purpose": body.purpose,
                "most": body.most,
            }
        case StripBody():
            return {"message": body.message}
        case RelayBody():
            return {
                "source_chat": body.source_chat,
                "source_message": body.source_message,
                "reply_to": body.reply_to,
            }
        case ReactBody():
            return {"message": body.message, "emoji": body.emoji}
        case MenuBody():
            return {"role": body.role}
        case LeaveBody():
            return {}


def _file_fields(body: FileBody) -> dict[str, Any]:  # Any: JSON
    wanted = body.file if isinstance(body.file, Wanted) else None
    return {
        "name": body.name,
        "made": base64.b64encode(body.file).decode() if isinstance(body.file, bytes) else None,
        "wanted": None if wanted is None else [wanted.copy.value, wanted.whose, wanted.after, wanted.part],
        "html": body.html,
        "plain": body.plain,
        "keyboard": body.keyboard,
        "reply_to": body.reply_to,
    }


def _read_wanted(data: list[Any]) -> Wanted:  # Any: JSON
    copy, whose, after, part = data
    return Wanted(Copy(copy), whose, after, part)
