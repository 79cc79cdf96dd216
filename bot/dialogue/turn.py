"""What a turn gives back: facts to keep, words to send, and where the talk stands. A value; committed whole, once."""

from dataclasses import dataclass
from datetime import date, datetime, time

from bot.dialogue.incoming import RuleKind
from bot.saying import Saying
from bot.training.facts import Fact
from bot.training.people import ClientId, CoachId, SessionId


@dataclass(frozen=True, slots=True)
class Talk:
    """Where a talk with a chat stands: which one, at which step, with what has been said in it (by name)."""

    name: str
    step: str
    data: tuple[tuple[str, str], ...] = ()
    expires_at: datetime | None = None

    def get(self, name: str) -> str:
        """What was said under this name; empty where nothing was."""
        return dict(self.data).get(name, "")


@dataclass(frozen=True, slots=True)
class TalkSet:
    """The talk with a chat stands here from now on; `None` ends it."""

    chat: int
    talk: Talk | None


@dataclass(frozen=True, slots=True)
class StrengthKept:
    """A client's strength in an exercise, brought up to date by a session.

    `before` and `after` are `training.strength.State.to_json()`: before this session and after it, so that a
    correction within the session starts from `before` again.
    """

    client: ClientId
    exercise: str
    session: SessionId
    day: date
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class StrengthStale:
    """A set of an older session changed: the state is to be built anew from the facts."""

    client: ClientId
    exercise: str


@dataclass(frozen=True, slots=True)
class PaceKept:
    """A client's pace, brought up to date by a session: before it and after it, as `training.pace.Pace.to_json()`."""

    client: ClientId
    session: SessionId
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class RuleSet:
    """A time that shall come: daily or weekly at a local hour on `days`, or once at `once_at`.

    Setting the same (whose, kind, ref) again replaces it; the earliest due time that is still to come is computed by
    storage from the zone. `days` empty and `once_at` None removes the rule.
    """

    whose: str
    kind: RuleKind
    zone: str
    at: time | None = None
    days: tuple[int, ...] = ()
    once_at: datetime | None = None
    ref: str = ""


@dataclass(frozen=True, slots=True)
class ClientForgotten:
    """All that is kept of whoever trains from this chat is deleted, earlier times with the practice too; the turn's
    own messages leave nothing behind either once they are sent."""

    chat: int


@dataclass(frozen=True, slots=True)
class CoachForgotten:
    """All that is kept of this coach is deleted, with the records of clients who had withdrawn."""

    coach: CoachId


Keeping = StrengthKept | StrengthStale | PaceKept | RuleSet | TalkSet | ClientForgotten | CoachForgotten


@dataclass(frozen=True, slots=True)
class Turn:
    """All that follows from one incoming thing: committed in one transaction, then sent.

    `skipped` says why a due rule gave nothing (already reported, paused, too late); it goes to the log.
    """

    facts: tuple[Fact, ...] = ()
    says: tuple[Saying, ...] = ()
    keeps: tuple[Keeping, ...] = ()
    skipped: str = ""

    def __add__(self, other: "Turn") -> "Turn":
        return Turn(
            self.facts + other.facts, self.says + other.says, self.keeps + other.keeps, self.skipped or other.skipped
        )


NOTHING: Turn = Turn()
"""Nothing to keep and nothing to say."""
