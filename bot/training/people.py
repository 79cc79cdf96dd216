"""Who trains and who coaches, as far as the trade is concerned: days, hour, units, and what a gym can load."""

from dataclasses import dataclass, field
from datetime import date, time
from decimal import Decimal
from enum import StrEnum

from bot.training.plan import PlannedExercise
from bot.training.units import Unit

ClientId = str
CoachId = str
SessionId = str


class Standing(StrEnum):
    """Where a client stands with the practice."""

    JOINING = "joining"
    """Has followed an invitation; the enrolment talk is not finished."""
    ACTIVE = "active"
    PAUSED = "paused"
    """No sessions or reminders until they go on."""
    WITHDRAWN = "withdrawn"
    """Took the consent back: nothing is sent or kept any more."""


@dataclass(frozen=True, slots=True)
class Gym:
    """What loads a client's equipment can make, all in one `unit`.

    `bar` is the empty bar; `plate` the smallest plate (they go on in pairs, so a bar moves by twice this);
    `dumbbells` (lowest, highest, step) per hand; `stack` (lowest, highest, step) of a machine or cable.
    The defaults are common practice, no source.
    """

    unit: Unit
    bar: Decimal
    plate: Decimal
    dumbbells: tuple[Decimal, Decimal, Decimal]
    stack: tuple[Decimal, Decimal, Decimal]
    bar_highest: Decimal

    @classmethod
    def usual(cls, unit: Unit) -> "Gym":
        """An ordinary gym: the one-tap answer of the enrolment talk. Common practice, no source."""
        d = Decimal
        if unit is Unit.KG:
            return cls(unit, d(20), d("1.25"), (d(2), d(50), d(2)), (d(5), d(120), d(5)), d(300))
        return cls(unit, d(45), d("2.5"), (d(5), d(100), d(5)), (d(10), d(260), d(10)), d(655))


@dataclass(frozen=True, slots=True)
class TrainingTime:
    """On which weekdays (Monday is 0) and at what local hour somebody trains."""

    days: tuple[int, ...]
    at: time


@dataclass(frozen=True, slots=True)
class Client:
    """A client as the practice knows them.

    `consent` is the version of the privacy notice agreed to (empty: none, or withdrawn).
    `workout` is the index in the programme of the workout that comes next.
    `reachable` is false while the chat refuses our messages.
    """

    id: ClientId
    coach: CoachId
    chat: int
    name: str
    unit: Unit
    zone: str
    trains: TrainingTime
    gym: Gym
    standing: Standing
    consent: str = ""
    programme: str = ""
    workout: int = 0
    readiness_flagged: bool = False
    confirm_in_words: bool = False
    reachable: bool = True


@dataclass(frozen=True, slots=True)
class Coach:
    """A coach: `digest_at` is the local hour of the daily digest."""

    id: CoachId
    chat: int
    name: str
    zone: str
    digest_at: time


@dataclass(frozen=True, slots=True)
class Workout:
    """One workout of a programme; its exercises carry no loads until a session is planned from it, but for those that
    the coach fixed. `minutes` is how long the coach means it to take at most."""

    title: str
    exercises: tuple[PlannedExercise, ...]
    minutes: int | None = None


@dataclass(frozen=True, slots=True)
class WeekChange:
    """What is otherwise in some weeks, as in a lighter one. Empty `workout` or `exercise`: in all of them.

    `fewer_sets` are taken from the end of each exercise, then `sets_percent` of them stay, halves up; one set always
    stays. `load_percent` (up to 100) is of the load that it would be; `rir` takes the place of every set's target.
    """

    weeks: tuple[int, ...]
    workout: str = ""
    exercise: str = ""
    fewer_sets: int = 0
    sets_percent: int | None = None
    load_percent: Decimal | None = None
    rir: Decimal | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class MuscleTarget:
    """Hard sets a week that the coach wants for a muscle, from `low` to `high` (direct sets 1, indirect a half)."""

    muscle: str
    low: int
    high: int


@dataclass(frozen=True, slots=True)
class Programme:
    """A body of work that rotates: on each training day the next workout is done.

    `changes` are of named weeks, counted from 1; after `block_weeks` they begin again (`None`: they never do).
    """

    id: str
    title: str
    workouts: tuple[Workout, ...]
    note: str = ""
    changes: tuple[WeekChange, ...] = ()
    block_weeks: int | None = None
    targets: tuple[MuscleTarget, ...] = ()


@dataclass(frozen=True, slots=True)
class Holds:
    """Exercises that must not go up, with the day from which, since somebody reported pain or the coach said so."""

    by_exercise: tuple[tuple[str, date], ...] = field(default=())

    def __contains__(self, exercise: str) -> bool:
        return any(name == exercise for name, _ in self.by_exercise)
