"""What the platform's errors mean for a message: the one place where its texts are matched, loosely.

| the platform | the library raises | outcome |
|---|---|---|
| 429 with retry_after | `WaitError` | `Later` |
| 403 blocked, deactivated, never begun; 400 chat not found | `Forbidden`, `BadRequest` | `Gone` |
| 400 anything else | `BadRequest` (a subclass of `NetworkError`: first) | `Refused` |
| no connection | `NotSentError` | `NotSent` |
| connection broke, no answer in time | `BrokenError`, `SlowError` | `Unknown` |
| 5xx | `NetworkError` | `Unknown`, answered |
| 401, 404 | `InvalidToken` | `ChatFault`: the process ends |
"""

from telegram.error import BadRequest, ChatMigrated, Conflict, Forbidden, InvalidToken, TelegramError

from bot.faults import ChatFault
from bot.gateway.transport import BrokenError, NotSentError, SlowError, TooBigError, WaitError
from bot.runtime.ports import Bringing, Gone, Later, NotSent, Outcome, Refusal, Refused, Sent, TooBig, Unknown

_GONE = (
    "chat not found",
    "user is deactivated",
    "bot was blocked",
    "can't initiate",
    "user not found",
    "peer_id_invalid",
)
_NO_SUCH_MESSAGE = (
    "message to edit not found",
    "message can't be edited",
    "message_id_invalid",
    "there is no text in the message to edit",
    "there is no caption in the message to edit",
    "message is not found",
)
_BAD_MARKUP = ("can't parse entities", "can't find end", "unsupported start tag", "entity_")
_TAP_TOO_OLD = ("query is too old", "query id is invalid")

REFUSED_TOKEN = "The chat platform refuses the bot's token. Set CHALKPOST_TOKEN to the one that the platform gave you."


def read_error(error: TelegramError) -> Outcome:
    """The outcome of a call that raised. `ChatFault` where the token is refused."""
    match error:
        case WaitError():
            return Later(error.after_s)
        case Forbidden():
            return Gone(str(error))
        case BadRequest():
            return _read_refusal(str(error))
        case ChatMigrated():
            return Gone("the chat has become another one")
        case InvalidToken():
            raise ChatFault(REFUSED_TOKEN) from error
        case NotSentError():
            return NotSent(str(error))
        case BrokenError() | SlowError():
            return Unknown(str(error))
        case Conflict():
            return NotSent(str(error))
        case _:
            return Unknown(str(error)[:200], answered=True)


def read_bringing_error(error: TelegramError) -> Bringing:
    """The outcome of a file asked for. The platform says of some files that they are "temporarily unavailable": asked
    again. `ChatFault` where the token is refused."""
    if isinstance(error, TooBigError):
        return TooBig()
    outcome = read_error(error)
    match outcome:
        case Refused(_, text) if "file is too big" in text.lower():
            return TooBig()
        case Refused(_, text) if "temporarily unavailable" in text.lower():
            return NotSent(text)
        case Sent():
            raise TypeError("an error is no success")
        case _:
            return outcome


def _read_refusal(text: str) -> Outcome:
    low = text.lower()
    if any(mark in low for mark in _GONE):
        return Gone(text)
    if "message is not modified" in low:
        return Refused(Refusal.UNCHANGED, text)
    if any(mark in low for mark in _NO_SUCH_MESSAGE):
        return Refused(Refusal.NO_SUCH_MESSAGE, text)
    if any(mark in low for mark in _BAD_MARKUP):
        return Refused(Refusal.BAD_MARKUP, text)
    if any(mark in low for mark in _TAP_TOO_OLD):
        return Refused(Refusal.TAP_TOO_OLD, text)
    return Refused(Refusal.OTHER, text)
