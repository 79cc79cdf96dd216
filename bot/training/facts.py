"""Facts: what happened, kept for good. Added, never edited; a correction is another fact.

Who said it, when, and in which message stands beside each fact in the record (`storage.facts`).
A report has a `key`, the message or tap that it came from: a later report with the same key takes its place
(an edited message), `ReportTakenBack` removes it. `session.sets_done` folds them.
"""

from dataclasses import dataclass
from datetime import date, datetime, time
from enum import StrEnum

from bot.training.life import Absence, DayChange, LaidWeek, WasLaid
from bot.training.pain import PainSaid
from bot.training.people import ClientId, CoachId, Gym, Programme, SessionId, Standing, TrainingTime
from bot.training.plan import PlannedExercise, PlannedSession
from bot.training.replanned import Why
from bot.training.report import Performed, SetKey
from bot.training.units import Load, Unit


class Ending(StrEnum):
    """How a session ended."""

    FINISHED = "finished"
    SKIPPED = "skipped"
    """The client gave it up."""
    MISSED = "missed"
    """Nobody said anything, and the week is over."""


# --- people


@dataclass(frozen=True, slots=True)
class InviteMade:
    """A coach made a single-use link; only the token's hash is kept."""

    coach: CoachId
    token_hash: str
    expires_at: datetime


@dataclass(frozen=True, slots=True)
class CoachJoined:
    """Somebody used the operator's link and is a coach now."""

    coach: CoachId
    chat: int
    name: str
    zone: str
    digest_at: time
    token_hash: str


@dataclass(frozen=True, slots=True)
class CoachChanged:
    """A coach's settings; `None` leaves one as it is."""

    coach: CoachId
    name: str | None = None
    zone: str | None = None
    digest_at: time | None = None


@dataclass(frozen=True, slots=True)
class ClientJoined:
    """Somebody used a coach's link; the enrolment talk begins."""

    client: ClientId
    coach: CoachId
    chat: int
    name: str
    token_hash: str


@dataclass(frozen=True, slots=True)
class ConsentGiven:
    """Explicit consent to a version of the privacy notice."""

    client: ClientId
    version: str


@dataclass(frozen=True, slots=True)
class ConsentWithdrawn:
    """Consent taken back: nothing is sent or kept from now on."""

    client: ClientId


@dataclass(frozen=True, slots=True)
class ProfileChanged:
    """What a client said of themselves; `None` leaves one as it is."""

    client: ClientId
    name: str | None = None
    unit: Unit | None = None
    zone: str | None = None
    trains: TrainingTime | None = None
    gym: Gym | None = None
    confirm_in_words: bool | None = None
    standing: Standing | None = None


@dataclass(frozen=True, slots=True)
class ReadinessAnswered:
    """The readiness question: `flagged` where something speaks for asking a doctor first; `words` as typed."""

    client: ClientId
    flagged: bool
    words: str = ""


@dataclass(frozen=True, slots=True)
class ReachChanged:
    """The chat refuses our messages (blocked, gone), or takes them again."""

    client: ClientId
    reachable: bool


# --- sessions


@dataclass(frozen=True, slots=True)
class ProgrammeAssigned:
    """A coach gave a client this programme, as it stands now."""

    client: ClientId
    programme: Programme


@dataclass(frozen=True, slots=True)
class ProgrammeShelved:
    """A coach's programme as a sheet says it: it stands on their shelf, and nobody has it by that."""

    coach: CoachId
    programme: Programme


@dataclass(frozen=True, slots=True)
class SessionPlanned:
    """What the client is asked to do on `day`: a snapshot that never changes but by `PlanChanged`.

    `workout` is its index in the programme.
    """

    session: SessionId
    client: ClientId
    day: date
    workout: int
    plan: PlannedSession
    token: str
    """Random; it stands in the card's buttons, so that old or forged ones are told apart."""


@dataclass(frozen=True, slots=True)
class PlanChanged:
    """The session stands otherwise from now on; what it was before stays in the record, and so do the sets reported.

    An exercise with reported sets keeps them in `plan`.
    """

    session: SessionId
    plan: PlannedSession
    why: Why


@dataclass(frozen=True, slots=True)
class Reported:
    """What a message or a tap said of a session: sets, sets replaced, exercises given up.

    `key` is `m<message id>` or `t<tap>`; the same key again takes the earlier one's place.
    """

    session: SessionId
    key: str
    sets: tuple[Performed, ...]
    replaces: tuple[SetKey, ...] = ()
    skipped: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class ReportTakenBack:
    """An undo: the report of this key counts no more."""

    session: SessionId
    key: str


@dataclass(frozen=True, slots=True)
class SessionEnded:
    """The session is over: `how` it ended."""

    session: SessionId
    how: Ending
    minutes: int | None = None
    """From the first to the last report, where both were made during the session."""


@dataclass(frozen=True, slots=True)
class SessionReopened:
    """A late report or a correction took an ended session up again."""

    session: SessionId


@dataclass(frozen=True, slots=True)
class SessionMoved:
    """The client moved a session to another day."""

    session: SessionId
    to: date


@dataclass(frozen=True, slots=True)
class MissNoted:
    """The day's cut-off passed without a report; client asked, coach told."""

    session: SessionId


@dataclass(frozen=True, slots=True)
class EffortRated:
    """How hard the whole session felt, 0 to 10 (category-ratio scale of session effort; Foster et al. 2001)."""

    session: SessionId
    rating: int


# --- the coach's orders for one client (`training.orders` folds them)


@dataclass(frozen=True, slots=True)
class ExerciseHeld:
    """The coach lets an exercise go up no more, until it is lifted (`HoldLifted`). `why` in the coach's words."""

    client: ClientId
    exercise: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class LoadOrdered:
    """The coach's own load for the next session of an exercise; `None` takes it back. `before` is what stood there."""

    client: ClientId
    exercise: str
    load: Load | None
    before: Load | None = None
    why: str = ""


@dataclass(frozen=True, slots=True)
class LoadsApproved:
    """The coach agrees to the loads that this session suggests for the next one."""

    client: ClientId
    session: SessionId


@dataclass(frozen=True, slots=True)
class LightWeekOrdered:
    """The week from this Monday is a light one, or (`on` false) is none any more."""

    client: ClientId
    monday: date
    on: bool = True
    why: str = ""


@dataclass(frozen=True, slots=True)
class ExerciseSwapped:
    """Another exercise comes in place of one of the programme's; `None` brings the programme's own back."""

    client: ClientId
    exercise: str
    into: PlannedExercise | None
    why: str = ""


@dataclass(frozen=True, slots=True)
class AutonomySet:
    """How freely loads rise: by themselves within `bound_percent` a step, or only after the coach's yes."""

    client: ClientId
    asks_first: bool
    bound_percent: int = 10


@dataclass(frozen=True, slots=True)
class NoteKept:
    """The coach's note on a client, for the coach only."""

    client: ClientId
    words: str


# --- another coach


@dataclass(frozen=True, slots=True)
class HandoverOffered:
    """The coach asks whether the client would go to a colleague, who had made the invitation of this hash for it."""

    client: ClientId
    to: CoachId
    to_name: str
    to_chat: int
    token_hash: str


@dataclass(frozen=True, slots=True)
class HandoverAnswered:
    """The client's answer. With a yes they and their record are the colleague's (`to`), and the coach's no more."""

    client: ClientId
    to: CoachId
    yes: bool


# --- what befalls a client's weeks (`training.living` folds them)


@dataclass(frozen=True, slots=True)
class WeekLaid:
    """The rest of the week from `monday` is laid so (`None`: as every week). `before` is for an undo, which has none
    itself; `change` says what became of which day. `eases`: a day fell out since they come back from a break."""

    client: ClientId
    monday: date
    week: LaidWeek | None
    before: WasLaid | None = None
    change: DayChange | None = None
    eases: bool = False


@dataclass(frozen=True, slots=True)
class WentAway:
    """No sessions from now on, until that day (`None`: until they go on)."""

    client: ClientId
    why: Absence
    until: date | None = None


@dataclass(frozen=True, slots=True)
class CameBack:
    """Sessions again."""

    client: ClientId


@dataclass(frozen=True, slots=True)
class ReturnEased:
    """The coach's word whether sessions after a break are easier (`on`), or as published."""

    client: ClientId
    on: bool


@dataclass(frozen=True, slots=True)
class LightWeekDeclined:
    """A light week was offered to the coach, and is not wanted now."""

    client: ClientId


@dataclass(frozen=True, slots=True)
class RestNoticeSet:
    """Whether the client wants to be told when a rest is over, and after how many seconds (`None`: as planned)."""

    client: ClientId
    on: bool
    seconds: int | None = None


# --- pain and words


@dataclass(frozen=True, slots=True)
class PainReported:
    """Pain, as said. `words` are the client's own."""

    pain: str
    client: ClientId
    session: SessionId | None
    exercise: str | None
    said: PainSaid
    words: str


@dataclass(frozen=True, slots=True)
class PainScored:
    """The score (0 to 10) asked for afterwards."""

    pain: str
    client: ClientId
    score: int


@dataclass(frozen=True, slots=True)
class PainFollowedUp:
    """The next morning's answer: gone, better, the same or worse. `settled` lifts the hold."""

    pain: str
    client: ClientId
    answer: str
    settled: bool


@dataclass(frozen=True, slots=True)
class HoldLifted:
    """The coach lets an exercise progress again."""

    client: ClientId
    exercise: str


@dataclass(frozen=True, slots=True)
class QuestionAsked:
    """A message that wants the coach's answer. `key` as in `Reported`."""

    client: ClientId
    key: str
    words: str


@dataclass(frozen=True, slots=True)
class QuestionAnswered:
    """The coach answered, or marked as handled, all that the client had asked."""

    client: ClientId


@dataclass(frozen=True, slots=True)
class DoubtKept:
    """A report that could be read in two ways waits for its answer. `words` are the message as typed; `stood` the keys
    of the reports that counted then, beside which it is read, however much is reported since (`None`: not known)."""

    client: ClientId
    session: SessionId
    key: str
    words: str
    stood: tuple[str, ...] | None = None


@dataclass(frozen=True, slots=True)
class DoubtSettled:
    """The doubt of this key was answered or dropped by its author."""

    client: ClientId
    session: SessionId
    key: str


@dataclass(frozen=True, slots=True)
class AlertHandled:
    """The coach has seen to an alert (of pain, or of a missed session)."""

    coach: CoachId
    alert: str


Fact = (
    InviteMade
    | CoachJoined
    | CoachChanged
    | ClientJoined
    | ConsentGiven
    | ConsentWithdrawn
    | ProfileChanged
    | ReadinessAnswered
    | ReachChanged
    | ProgrammeAssigned
    | ProgrammeShelved
    | SessionPlanned
    | PlanChanged
    | Reported
    | ReportTakenBack
    | SessionEnded
    | SessionReopened
    | SessionMoved
    | MissNoted
    | EffortRated
    | ExerciseHeld
    | LoadOrdered
    | LoadsApproved
    | LightWeekOrdered
    | ExerciseSwapped
    | AutonomySet
    | NoteKept
    | HandoverOffered
    | HandoverAnswered
    | WeekLaid
    | WentAway
    | CameBack
    | ReturnEased
    | LightWeekDeclined
    | RestNoticeSet
    | PainReported
    | PainScored
    | PainFollowedUp
    | HoldLifted
    | QuestionAsked
    | QuestionAnswered
    | DoubtKept
    | DoubtSettled
    | AlertHandled
)
