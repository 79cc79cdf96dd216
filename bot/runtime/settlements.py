"""What became of a parcel that was carried."""

from dataclasses import dataclass

from bot.dialogue.incoming import FileTrouble
from bot.runtime.files import Brought
from bot.runtime.ports import Gone, Later, NotSent, Outcome, Refused, Sent, Unknown
from bot.saying import Repeat, Wanted
from storage.outbox import Parcel
from storage.slots import SlotRow


@dataclass(frozen=True, slots=True)
class Claimed:
    """A parcel in hand, with the message that its slot holds. `maybe_sent`: an earlier try may have arrived."""

    parcel: Parcel
    slot: SlotRow | None
    maybe_sent: bool


@dataclass(frozen=True, slots=True)
class Delivered:
    """It is there. `message`: its number; `shown`: the hash of what stands there; `strip`: an older message whose
    buttons are to go; `following`: the part of a file that comes after it."""

    message: int | None = None
    shown: str = ""
    strip: int | None = None
    skipped: bool = False
    following: Wanted | None = None


@dataclass(frozen=True, slots=True)
class Postponed:
    """Try again; `after_s` where the platform or our pace says when. `maybe_sent` as in `Claimed`."""

    error: str
    after_s: float | None = None
    maybe_sent: bool = False


@dataclass(frozen=True, slots=True)
class Given:
    """Given up: refused for good, or never is better than twice."""

    error: str


@dataclass(frozen=True, slots=True)
class Unreachable:
    """The chat takes nothing from us any more."""

    error: str


@dataclass(frozen=True, slots=True)
class Fetched:
    """A file's content was brought, or it is known that it can't be."""

    brought: Brought

    @property
    def error(self) -> str | None:
        """Why it did not come."""
        return self.brought.value if isinstance(self.brought, FileTrouble) else None


Settlement = Delivered | Fetched | Postponed | Given | Unreachable


def settle_common(parcel: Parcel, outcome: Outcome) -> Settlement:
    """What an outcome means where nothing special applies."""
    match outcome:
        case Sent(message):
            return Delivered(message)
        case Later(after_s):
            return Postponed("asked to wait", after_s=after_s)
        case Gone(error):
            return Unreachable(error)
        case Refused(_, error):
            return Given(error)
        case NotSent(error):
            return Postponed(error)
        case Unknown(error, answered):
            if parcel.repeat == Repeat.DROP:
                return Postponed(error) if answered else Given(f"may have arrived: {error}")
            return Postponed(error, maybe_sent=True)
