"""What comes in: something a person did in the chat, or a time that has come."""

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from bot.saying import Line
from bot.training.people import Programme


@dataclass(frozen=True, slots=True)
class Typed:
    """A text message. `reply_to` is the message that it answers; `forwarded` ones are somebody else's words."""

    chat: int
    message: int
    at: datetime
    text: str
    first_name: str = ""
    language: str = ""
    reply_to: int | None = None
    forwarded: bool = False


@dataclass(frozen=True, slots=True)
class Edited:
    """The author changed a text message that they had sent."""

    chat: int
    message: int
    at: datetime
    text: str


@dataclass(frozen=True, slots=True)
class Tapped:
    """A button under one of our messages. `query` must be acknowledged; `update` tells two taps apart."""

    chat: int
    query: str
    at: datetime
    data: str
    update: int
    message: int | None = None


class MediaKind(StrEnum):
    """What kind of thing was sent in place of words."""

    PHOTO = "photo"
    VIDEO = "video"
    VOICE = "voice"
    DOCUMENT = "document"
    STICKER = "sticker"
    OTHER = "other"


@dataclass(frozen=True, slots=True)
class MediaSent:
    """Something else than text. `caption` are the words beside it; `album` groups several sent together."""

    chat: int
    message: int
    at: datetime
    kind: MediaKind
    caption: str = ""
    file: str = ""
    file_name: str = ""
    reply_to: int | None = None
    album: str = ""
    forwarded: bool = False
    size: int | None = None
    """Bytes, where the platform says so."""


@dataclass(frozen=True, slots=True)
class FileFetched:
    """The content of a file that a turn asked for (`bot.saying.Fetch`); `message` is the one that it came in."""

    chat: int
    message: int
    at: datetime
    name: str
    purpose: str
    content: bytes


@dataclass(frozen=True, slots=True)
class SheetRead:
    """A coach's sheet, fetched and read: the programme (`None` where `stops` problems are in the way), what is wrong or
    worth a remark, and the file with a column of remarks, where it can have one."""

    chat: int
    message: int
    at: datetime
    name: str
    programme: Programme | None
    problems: tuple[Line, ...] = ()
    stops: int = 0
    remarks: bytes | None = None


class FileTrouble(StrEnum):
    """Why a file's content can't be had."""

    TOO_BIG = "too_big"
    """More bytes than were asked for, or than the platform gives out."""
    GONE = "gone"
    """The platform doesn't have it any more, or won't give it."""
    FAILED = "failed"
    """It could not be reached, however often it was tried."""


@dataclass(frozen=True, slots=True)
class FileFailed:
    """A file that a turn asked for did not come."""

    chat: int
    message: int
    at: datetime
    name: str
    purpose: str
    why: FileTrouble


@dataclass(frozen=True, slots=True)
class BotBlocked:
    """The person blocked us (`blocked`) or let us in again."""

    chat: int
    at: datetime
    blocked: bool


class RuleKind(StrEnum):
    """What may come due by the clock. Each is a row with its next time; see `storage.schedule`."""

    SESSION = "session"
    """The day's session, at the client's hour on a training day."""
    CUTOFF = "cutoff"
    """The end of the client's day: is the session still unreported?"""
    WEEK = "week"
    """The weekly summary, on the client's last training day."""
    PAIN_CHECK = "pain_check"
    """The morning after pain."""
    NUDGE = "nudge"
    """The one reminder of an unfinished enrolment."""
    DIGEST = "digest"
    """The coach's daily digest."""
    RESUME = "resume"
    """The end of a time away: sessions come again. With a `ref`, the beginning of one that was told before."""
    REST = "rest"
    """A rest between sets is over."""


@dataclass(frozen=True, slots=True)
class Due:
    """A rule's time has come. `whose` is a client's or coach's id, `ref` what it is about (a pain's id, say)."""

    rule: int
    kind: RuleKind
    whose: str
    ref: str
    due_at: datetime


Incoming = Typed | Edited | Tapped | MediaSent | SheetRead | FileFailed | BotBlocked | Due
