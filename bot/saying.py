"""What goes out: messages as values. Keys and arguments, never words; words are put to them when a turn is kept."""

from dataclasses import dataclass
from datetime import date, datetime, time
from decimal import Decimal
from enum import IntEnum, StrEnum

from bot.training.attendance import DayMark
from bot.training.plan import LoadStyle
from bot.training.units import Load, Unit

Value = str | int | Decimal | date | datetime | time | Load
"""What a line's arguments may be: text is escaped, numbers, dates and loads are written as the reader's language does.
A `datetime` is shown in its own zone: turn it to the reader's local time first."""


@dataclass(frozen=True, slots=True)
class Line:
    """A line of words: a key of `bot/wording/en/*.ftl` and its arguments. Never words themselves."""

    key: str
    args: tuple[tuple[str, "Value | Line"], ...] = ()


def line(key: str, **args: "Value | Line") -> Line:
    """A line; an argument may itself be a line (its words are put in place)."""
    return Line(key, tuple(args.items()))


BLANK = Line("")
"""An empty line between paragraphs."""


@dataclass(frozen=True, slots=True)
class Button:
    """A button under a message: exactly one of `data` (comes back as `Tapped.data`), `url` or `copy` is set."""

    label: Line
    data: str = ""
    url: str = ""
    copy: str = ""


Rows = tuple[tuple[Button, ...], ...]


class Urgency(IntEnum):
    """What goes first when much waits; lower goes first. Within one chat the order of writing is kept."""

    URGENT = 0
    """Pain, urgent signs."""
    REPLY = 1
    """An answer to what somebody just did."""
    REFRESH = 2
    """A message brought up to date in place."""
    NOTICE = 3
    """Something that the clock started: sessions, reminders, digests."""


class Repeat(StrEnum):
    """What to do where it is not known whether a message arrived."""

    RESEND = "resend"
    """Send again: twice is better than never."""
    AGAIN = "again"
    """Send again, marked as a repetition (alerts)."""
    DROP = "drop"
    """Leave it: never is better than twice."""


@dataclass(frozen=True, slots=True)
class WeekChart:
    """The weekly picture: hard sets by muscle (direct 1, indirect 0.5), largest first, and sessions done of planned.

    `title` is drawn as it is, or, where it is a Monday in ISO form, as that week's words.
    `wanted` is the same of what was planned; where it is empty only what was done is shown.
    """

    title: str
    muscles: tuple[tuple[str, Decimal], ...]
    done: int
    planned: int
    wanted: tuple[tuple[str, Decimal], ...] = ()


@dataclass(frozen=True, slots=True)
class StrengthPoint:
    """What was known of a one-repetition maximum on a day: the estimate, and between what it lies 19 times in 20."""

    day: date
    mean: Decimal
    least: Decimal
    most: Decimal


@dataclass(frozen=True, slots=True)
class LiftedPoint:
    """Like sets of a day: the load, the repetitions, and how many such sets there were."""

    day: date
    load: Decimal
    reps: int
    sets: int = 1


@dataclass(frozen=True, slots=True)
class StrengthChart:
    """The estimated one-repetition maximum of an exercise over time, with the sets that it was seen in, in order of
    days. All numbers are in `unit`; `style` says what a load means. `whose` is a client's name in a coach's chat."""

    exercise: str
    unit: Unit
    points: tuple[StrengthPoint, ...]
    sets: tuple[LiftedPoint, ...]
    style: LoadStyle = LoadStyle.TOTAL
    whose: str = ""


@dataclass(frozen=True, slots=True)
class MuscleWeeks:
    """A muscle's hard sets, week by week, done and planned; `low` to `high` is the coach's target, if there is one."""

    muscle: str
    done: tuple[Decimal, ...]
    planned: tuple[Decimal, ...]
    low: int | None = None
    high: int | None = None


@dataclass(frozen=True, slots=True)
class MusclesChart:
    """Hard sets by muscle in the weeks of these Mondays; the last week is still under way."""

    mondays: tuple[date, ...]
    muscles: tuple[MuscleWeeks, ...]
    whose: str = ""


@dataclass(frozen=True, slots=True)
class AttendanceChart:
    """What became of each day, from the Monday `first` on, in whole weeks; `today` is marked."""

    first: date
    marks: tuple[DayMark, ...]
    today: date
    whose: str = ""


@dataclass(frozen=True, slots=True)
class DaysWeek:
    """A programme's week on a number of days: minutes of each day, Monday first (`None`: no session). `is_now` where
    that is how it stands."""

    minutes: tuple[int | None, ...]
    is_now: bool = False

    @property
    def days(self) -> int:
        """How many days have a session."""
        return sum(minutes is not None for minutes in self.minutes)


@dataclass(frozen=True, slots=True)
class DaysMuscle:
    """A muscle's hard sets, and the least hours between two days that work it (`None`: there are no two), for each of
    the weeks; `low` to `high` is the coach's target, if there is one."""

    muscle: str
    sets: tuple[Decimal, ...]
    rest_h: tuple[int | None, ...]
    low: int | None = None
    high: int | None = None


@dataclass(frozen=True, slots=True)
class DaysChart:
    """A programme on several numbers of days a week, side by side; `most` are the minutes that a day has."""

    title: str
    most: int
    weeks: tuple[DaysWeek, ...]
    muscles: tuple[DaysMuscle, ...]


Chart = WeekChart | StrengthChart | MusclesChart | AttendanceChart | DaysChart
"""A picture as a value: it is drawn when it is sent."""


@dataclass(frozen=True, slots=True)
class Say:
    """A message to a chat.

    `slot` names a message that keeps itself up to date: where one was sent in this slot before, it is edited in place
    (unless `fresh`, which sends a new one and strips the old one's buttons). `about` marks whom a reply to this message
    goes to (a client's id in a coach's chat, the coach's id in a client's). `key` makes a message unique for good
    (a reminder for one due time); left empty, it is made from what came in. After `expires_at` it is not sent any more.
    `picture` is drawn when it is sent; the lines are then its caption.
    """

    to: int
    lines: tuple[Line, ...]
    buttons: Rows = ()
    slot: str = ""
    fresh: bool = False
    urgency: Urgency = Urgency.REPLY
    repeat: Repeat = Repeat.RESEND
    silent: bool = False
    reply_to: int | None = None
    about: str = ""
    key: str = ""
    expires_at: datetime | None = None
    picture: Chart | None = None


LARGEST_MADE = 4_000_000
"""Bytes of a file that a talk makes: it waits, sealed, in the outbox."""


class Copy(StrEnum):
    """Which copy of what is kept is wanted."""

    OWN = "own"
    """A client's: all that is kept of them."""
    PRACTICE = "practice"
    """A coach's: the coach's own, and all of their clients."""
    TEMPLATE = "template"
    """The empty programme sheet, with its explanations."""
    SHEET = "sheet"
    """A programme on a coach's shelf as a sheet; `after` names it."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """A file that is made from the store at the moment of sending. `whose` is a client's or coach's id. One that grows
    too large comes in parts, each after the other: `after` is where this one begins (empty: with the first)."""

    copy: Copy
    whose: str
    after: str = ""
    part: int = 1


@dataclass(frozen=True, slots=True)
class SayFile:
    """A file to a chat, with words beside it: either bytes that the talk made (at most `LARGEST_MADE`), or a wanted one
    that is made as it is sent. It is always a new message; `name` is what the reader's device calls it. The rest as in
    `Say`, the words at most 1,000 characters, the rest clipped.
    """

    to: int
    name: str
    file: bytes | Wanted
    lines: tuple[Line, ...] = ()
    buttons: Rows = ()
    urgency: Urgency = Urgency.REPLY
    repeat: Repeat = Repeat.RESEND
    silent: bool = False
    reply_to: int | None = None
    about: str = ""
    key: str = ""
    expires_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Fetch:
    """Bring the content of a file that somebody sent: it comes back to the chat's talk as `FileFetched`, or, where that
    can't be, as `FileFailed`; once, in the chat's order, whatever happens meanwhile.

    `file` and `message` are those of `MediaSent`, `name` the file's; `purpose` tells the talk what it wanted it for.
    `most` is how many bytes it may have.
    """

    chat: int
    file: str
    message: int
    name: str
    purpose: str
    most: int


@dataclass(frozen=True, slots=True)
class React:
    """The quiet acknowledgement: a reaction to somebody's message. `emoji` is one of the platform's fixed list."""

    to: int
    message: int
    emoji: str


@dataclass(frozen=True, slots=True)
class Toast:
    """The short answer to a tap, shown for a moment. Best effort: it dies after some seconds, and is not kept."""

    query: str
    line: Line | None = None


@dataclass(frozen=True, slots=True)
class Strip:
    """Take the buttons from a message of ours (a step that was answered, a card of yesterday)."""

    to: int
    message: int | None = None
    slot: str = ""


@dataclass(frozen=True, slots=True)
class Relay:
    """Copy somebody's message, media and all, into another chat. `about` as in `Say`."""

    to: int
    source_chat: int
    source_message: int
    about: str = ""
    reply_to: int | None = None
    urgency: Urgency = Urgency.REPLY
    silent: bool = False


@dataclass(frozen=True, slots=True)
class Menu:
    """Show the commands of a role in this chat: `client`, `coach` or `stranger`."""

    to: int
    role: str


@dataclass(frozen=True, slots=True)
class Leave:
    """Leave a chat that is not a private one."""

    to: int


Saying = Say | SayFile | Fetch | React | Toast | Strip | Relay | Menu | Leave
