"""The desk: a frozen snapshot of all that a turn may look at. Built by `storage.desk` in a handful of queries."""

from dataclasses import dataclass
from datetime import date, datetime

from bot.dialogue.turn import Talk
from bot.training.facts import Fact
from bot.training.life import PLAIN_LIFE, DayChange, Life
from bot.training.light_weeks import Sign
from bot.training.orders import NO_ORDERS, Orders
from bot.training.pain import PainSaid
from bot.training.past import NO_PAST, Past
from bot.training.people import Client, ClientId, Coach, CoachId, Programme
from bot.training.report import Performed
from bot.training.session import Session
from bot.training.stalls import Drift
from bot.training.units import Unit


@dataclass(frozen=True, slots=True)
class House:
    """What the operator set: how to call for help here, where the privacy notice is, the bot's own name."""

    bot_name: str
    emergency_number: str
    operator_contact: str
    consent_version: str


@dataclass(frozen=True, slots=True)
class Invite:
    """An invitation that somebody shows: for a client of `coach`, or (coach empty) the operator's for a coach."""

    token_hash: str
    coach: CoachId
    coach_name: str
    is_open: bool
    """Neither used nor expired."""
    coach_chat: int = 0


@dataclass(frozen=True, slots=True)
class StrengthRow:
    """A kept strength state: before and after the session in which the exercise was last done."""

    exercise: str
    session: str
    day: date
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class PaceRow:
    """A kept pace: before and after the session that showed it last (`training.pace.Pace.to_json`)."""

    session: str
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class Lately:
    """A session of the last weeks in a line: whether anything was `reported` of it, how hard it felt (0 to 10) and how
    many minutes it took, where that is known; whether something hurt in it; whether the client gave it up."""

    day: date
    reported: bool
    effort: int | None = None
    minutes: int | None = None
    hurt: bool = False
    given_up: bool = False


@dataclass(frozen=True, slots=True)
class OpenPain:
    """Pain that is not settled yet: its exercise is held."""

    id: str
    exercise: str | None
    said: PainSaid
    words: str
    at: datetime


@dataclass(frozen=True, slots=True)
class OpenDoubt:
    """A report that waits for the answer which reading was meant; `stood` as in `DoubtKept`."""

    session: str
    key: str
    words: str
    stood: tuple[str, ...] | None = None


@dataclass(frozen=True, slots=True)
class OpenQuestion:
    """A client's question that the coach has not answered."""

    key: str
    words: str
    at: datetime


@dataclass(frozen=True, slots=True)
class DoneSet:
    """A set of this week, with the day and what its exercise works."""

    day: date
    performed: Performed


@dataclass(frozen=True, slots=True)
class Holdings:
    """How much is kept of somebody: sets, sessions with sets, notes of pain, questions and doubts."""

    sets: int = 0
    sessions: int = 0
    pains: int = 0
    words: int = 0


@dataclass(frozen=True, slots=True)
class ClientDesk:
    """All that may matter of one client: never more than the present session and the present week.

    `session` is the one that words and taps are about: the session of the card tapped or the message edited, else
    today's, else the latest unfinished one of the last two days. `week` are the sessions from Monday to Sunday of the
    local week of `now` with their reports. `message_report` tells which session a message (edited) had reported to.
    """

    profile: Client
    coach: Coach
    programme: Programme | None = None
    programme_before: Programme | None = None
    """What they had before it, for an undo."""
    session: Session | None = None
    session_is_latest: bool = True
    """No later session of this client has reports: strength states may be taken from `StrengthRow.before`."""
    week: tuple[Session, ...] = ()
    last_week: tuple[Session, ...] = ()
    strengths: tuple[StrengthRow, ...] = ()
    """Of the exercises in `session` and in the programme."""
    pains: tuple[OpenPain, ...] = ()
    doubts: tuple[OpenDoubt, ...] = ()
    questions: tuple[OpenQuestion, ...] = ()
    held: tuple[tuple[str, date], ...] = ()
    """Exercises on hold, since when: for pain, or by the coach's word."""
    orders: Orders = NO_ORDERS
    preferred: tuple[tuple[str, str], ...] = ()
    """What the coach has put in an exercise's place with any client (the exercise, what took its place), what is chosen
    most often first. Filled, with the strengths of everything ever done, where another exercise may be chosen."""
    begun: date | None = None
    """The day on which the programme was given."""
    past: Past = NO_PAST
    """Filled, as far as it is asked for, for a client's page and for pictures."""
    life: Life = PLAIN_LIFE
    pace: PaceRow | None = None
    reported_at: tuple[datetime, ...] = ()
    """When each report of `session` was first made."""
    last_day: date | None = None
    """The last day with a reported set."""
    lately: tuple[Lately, ...] = ()
    """Filled where a session may be planned, and for the pages about load and light weeks; the oldest first."""

    holdings: Holdings | None = None
    """Filled for /delete_me."""

    def strength(self, exercise: str) -> StrengthRow | None:
        """The kept state of an exercise, or `None` where it was never done."""
        return next((row for row in self.strengths if row.exercise == exercise), None)


@dataclass(frozen=True, slots=True)
class RosterLine:
    """One client in the coach's lists and digest, from kept columns: no history is read.

    `sessions_done` of `sessions_due` are of the last four weeks. `next_day` is the next training day.
    """

    client: ClientId
    name: str
    standing: str
    reachable: bool
    last_day: date | None
    sessions_done: int
    sessions_due: int
    next_day: date | None
    programme: str = ""
    chat: int = 0


@dataclass(frozen=True, slots=True)
class DigestEntry:
    """What happened with one client since the last digest, or still waits for the coach."""

    client: ClientId
    name: str
    pains: tuple[OpenPain, ...] = ()
    missed: tuple[date, ...] = ()
    questions: tuple[OpenQuestion, ...] = ()
    doubts: tuple[OpenDoubt, ...] = ()
    sessions: tuple[Session, ...] = ()
    """Reported since the last digest."""
    readiness_flagged: bool = False
    unreachable: bool = False
    drifts: tuple[tuple[str, Drift], ...] = ()
    """Exercises of these sessions that stall or drift."""
    slipping: tuple[int, int] | None = None
    """Sessions done of those due in four weeks, where that is few."""
    unit: Unit = Unit.KG
    days: tuple[DayChange, ...] = ()
    """Days moved or given up since the last digest."""
    signs: tuple[Sign, ...] = ()
    """What speaks for a light week, where it is to be offered."""
    next_monday: date | None = None
    """The client's next week, for that offer."""


@dataclass(frozen=True, slots=True)
class ChangeKept:
    """A change as it stands in the record: when, by whom (`chat:<number>` or `clock`), and what."""

    at: datetime
    by: str
    fact: Fact


@dataclass(frozen=True, slots=True)
class CoachDesk:
    """All that may matter of one coach. `about` is the client whom a tap, a reply or a command is about: only ever
    one of this coach's own; a stranger's id and an absent one both leave it `None`."""

    profile: Coach
    roster: tuple[RosterLine, ...] = ()
    """Filled for /clients, /digest and where a recipient is to be chosen."""
    digest: tuple[DigestEntry, ...] = ()
    """Filled where a digest is to be written."""
    waiting: tuple[DigestEntry, ...] = ()
    """Filled for `/inbox`: with what waits of each client, and nothing else."""
    changes: tuple[ChangeKept, ...] = ()
    """Filled for the record of changes of `about`, the latest first."""
    programmes: tuple[Programme, ...] = ()
    about: ClientDesk | None = None


@dataclass(frozen=True, slots=True)
class Desk:
    """What a turn may look at. `tokens` are fresh random texts (24 characters of `A-Za-z0-9_-`), to be used in order.

    A chat may be a client's and a coach's at once; both are then set.
    """

    now: datetime
    house: House
    tokens: tuple[str, ...]
    talk: Talk | None = None
    client: ClientDesk | None = None
    coach: CoachDesk | None = None
    invite: Invite | None = None
    copied_at: datetime | None = None
    """When this chat last asked for a copy of its data, within the last two hours; looked up for /export."""
    reply_about: str = ""
    """Whom the message is about that `reply_to` answers: the `about` of our own message (see `Say`)."""
    reply_message: int | None = None
    """The other side's message behind the one replied to, where it was relayed."""
