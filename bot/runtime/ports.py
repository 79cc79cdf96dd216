"""What the runtime asks of the chat: calls as values, their outcomes as values, and a reader of raw updates.

`bot.gateway` fulfils these; nothing here knows how.
"""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Protocol

from bot.dialogue.incoming import Incoming
from bot.saying import Chart, Leave, Wanted

Keyboard = tuple[tuple[dict[str, object], ...], ...]
"""Rows of the platform's inline button objects; empty is no keyboard."""


# --- calls


@dataclass(frozen=True, slots=True)
class SendWords:
    """A new text message; `is_html` false sends the words as they stand."""

    chat: int
    words: str
    keyboard: Keyboard = ()
    is_html: bool = True
    silent: bool = False
    reply_to: int | None = None


@dataclass(frozen=True, slots=True)
class SendPicture:
    """A new picture (PNG) with its caption."""

    chat: int
    png: bytes
    words: str
    keyboard: Keyboard = ()
    is_html: bool = True
    silent: bool = False
    reply_to: int | None = None


@dataclass(frozen=True, slots=True)
class SendFile:
    """A new file with its caption; `name` is what the reader's device calls it."""

    chat: int
    name: str
    content: bytes
    words: str
    keyboard: Keyboard = ()
    is_html: bool = True
    silent: bool = False
    reply_to: int | None = None


@dataclass(frozen=True, slots=True)
class EditWords:
    """A text message of ours takes these words and buttons instead."""

    chat: int
    message: int
    words: str
    keyboard: Keyboard = ()
    is_html: bool = True


@dataclass(frozen=True, slots=True)
class EditPicture:
    """A picture message of ours takes this picture, caption and buttons instead."""

    chat: int
    message: int
    png: bytes
    words: str
    keyboard: Keyboard = ()
    is_html: bool = True


@dataclass(frozen=True, slots=True)
class StripButtons:
    """A message of ours loses its buttons."""

    chat: int
    message: int


@dataclass(frozen=True, slots=True)
class CopyOver:
    """Somebody's message, media and all, copied into another chat."""

    chat: int
    source_chat: int
    source_message: int
    reply_to: int | None = None
    silent: bool = False


@dataclass(frozen=True, slots=True)
class SetReaction:
    """Our reaction to somebody's message."""

    chat: int
    message: int
    emoji: str


@dataclass(frozen=True, slots=True)
class ShowMenu:
    """The commands of a role in this chat."""

    chat: int
    role: str


@dataclass(frozen=True, slots=True)
class LeaveChat:
    """Leave a chat that is not a private one."""

    chat: int


@dataclass(frozen=True, slots=True)
class AnswerTap:
    """The acknowledgement of a tap, with a short text or none."""

    query: str
    words: str = ""


Call = (
    SendWords
    | SendPicture
    | SendFile
    | EditWords
    | EditPicture
    | StripButtons
    | CopyOver
    | SetReaction
    | ShowMenu
    | LeaveChat
    | AnswerTap
)


# --- outcomes


class Refusal(StrEnum):
    """Why the platform says no for good."""

    UNCHANGED = "unchanged"
    """The message is already what it should become."""
    NO_SUCH_MESSAGE = "no_such_message"
    """The message to edit is gone, or can't be edited."""
    BAD_MARKUP = "bad_markup"
    """The markup was not understood."""
    TAP_TOO_OLD = "tap_too_old"
    """The tap can't be acknowledged any more."""
    OTHER = "other"


@dataclass(frozen=True, slots=True)
class Sent:
    """It arrived; `message` is the new message's number where there is one."""

    message: int | None = None


@dataclass(frozen=True, slots=True)
class Later:
    """Not sent: too many at once; ask again after so many seconds."""

    after_s: float


@dataclass(frozen=True, slots=True)
class Gone:
    """Not sent: the person blocked us, left, or never began."""

    error: str


@dataclass(frozen=True, slots=True)
class Refused:
    """Not sent, and never will be as it stands."""

    why: Refusal
    error: str


@dataclass(frozen=True, slots=True)
class NotSent:
    """Surely not sent: no connection came about."""

    error: str


@dataclass(frozen=True, slots=True)
class Unknown:
    """It may have arrived: the connection broke or timed out after the request went out.

    `answered`: the platform did answer, with a fault of its own (5xx).
    """

    error: str
    answered: bool = False


Outcome = Sent | Later | Gone | Refused | NotSent | Unknown


@dataclass(frozen=True, slots=True)
class Got:
    """A file's content."""

    content: bytes


@dataclass(frozen=True, slots=True)
class TooBig:
    """The file has more bytes than were asked for, or than the platform gives out."""


Bringing = Got | TooBig | Later | Gone | Refused | NotSent | Unknown


class Sender(Protocol):
    """Whoever carries a call to the platform. Raises nothing but `ChatFault` (the token is refused)."""

    async def send(self, call: Call) -> Outcome:
        """Carry it, once."""
        ...

    async def bring(self, file: str, *, most: int) -> Bringing:
        """The content of a file that somebody sent, by the platform's name for it; `TooBig` above `most` bytes."""
        ...


@dataclass(frozen=True, slots=True)
class Arrived:
    """A raw update as it came: `chat` is `None` where it concerns none."""

    update: int
    chat: int | None
    raw: str


class UpdateReader(Protocol):
    """Raw updates to what they mean. Never raises, whatever the text is."""

    def read(self, raw: str, *, received_at: datetime) -> Incoming | Leave | None:
        """What a person did; `Leave` for a chat that is no private one; `None` for what concerns us not."""
        ...


Draw = Callable[[Chart], bytes]
"""Draws a picture (PNG). Slow: called off the event loop."""


@dataclass(frozen=True, slots=True)
class Made:
    """A wanted file, made; `following` is the part that comes after it, where one does."""

    content: bytes
    following: Wanted | None = None


Make = Callable[[Wanted], Made | None]
"""Makes a wanted file; `None` where nobody of that id is kept any more. Slow: called off the event loop, and it holds
up nobody who writes."""
