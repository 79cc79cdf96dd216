"""An invented practice to fill a store with: a coach, clients, a programme, sessions, reports."""

from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from hashlib import sha256
from itertools import count

from bot.dialogue.desk import Desk, House
from bot.dialogue.incoming import Incoming
from bot.training.facts import (
    ClientJoined,
    CoachJoined,
    ConsentGiven,
    Ending,
    Fact,
    InviteMade,
    ProfileChanged,
    ProgrammeAssigned,
    Reported,
    SessionEnded,
    SessionPlanned,
)
from bot.training.people import Programme, Standing, TrainingTime, Workout
from bot.training.plan import PlannedExercise, PlannedSession, PlannedSet, RepRange
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit
from storage import desk, facts, people
from storage.engine import Store
from storage.facts import Origin
from storage.work import Work

NOW = datetime(2027, 3, 3, 9, 0, tzinfo=UTC)
"""A Wednesday."""
TODAY = NOW.date()
ZONE = "Europe/Berlin"
COACH_CHAT = 9_000_000_001
HOUSE = House("chalkpost_bot", "112", "the operator", "1")
TOKENS = tuple(f"token{n:019d}" for n in range(4))


def hash_of(token: str) -> str:
    """What is kept of an invitation."""
    return sha256(token.encode()).hexdigest()


def origin(at: datetime = NOW, source: str = "m1:1") -> Origin:
    """Somebody said it at this time."""
    return Origin("chat:1", at, source)


def keep(work: Work, *kept: Fact, at: datetime = NOW) -> None:
    """Keeps the facts."""
    for fact in kept:
        facts.keep(work, fact, origin(at))


def coach(work: Work, *, id: str = "coach-one", chat: int = COACH_CHAT, name: str = "Coach Ondrej") -> str:
    """A coach who has joined by the operator's link."""
    people.new_coach_invite(work, hash_of(id), NOW + timedelta(days=3), NOW - timedelta(days=30))
    keep(work, CoachJoined(id, chat, name, ZONE, time(7), hash_of(id)), at=NOW - timedelta(days=30))
    return id


def client(
    work: Work,
    *,
    id: str = "client-one",
    chat: int = 101,
    name: str = "Tamsin",
    of: str = "coach-one",
    standing: Standing = Standing.ACTIVE,
    given: Programme | None = None,
    at: datetime = NOW - timedelta(days=20),
) -> str:
    """A client who trains on Mondays, Wednesdays and Fridays at six in the evening."""
    keep(
        work, InviteMade(of, hash_of(id), at + timedelta(days=7)), ClientJoined(id, of, chat, name, hash_of(id)), at=at
    )
    trains = TrainingTime((0, 2, 4), time(18))
    keep(work, ConsentGiven(id, "1"), ProfileChanged(id, trains=trains, standing=standing), at=at)
    keep(work, ProgrammeAssigned(id, given or programme()), at=at)
    return id


def exercise(name: str = "Back squat", *, sets: int = 3, load: str = "100") -> PlannedExercise:
    """Some sets of five at one load."""
    one = PlannedSet(RepRange(5, 5), Decimal(2), Load.of(load, Unit.KG), 180)
    return PlannedExercise(name, (one,) * sets, muscles=("quads",), equipment="bar", cue="brace before you move")


def workout(*names: str, title: str = "Lower") -> Workout:
    """A workout of these exercises."""
    return Workout(title, tuple(exercise(name) for name in names))


def programme() -> Programme:
    """Two workouts in turn."""
    return Programme(
        "sample",
        "Two days in turn",
        (workout("Back squat", "Bench press", title="One"), workout("Deadlift", "Overhead press", title="Two")),
        note="for the first weeks",
    )


def planned(*names: str, title: str = "One") -> PlannedSession:
    """A session of these exercises."""
    return PlannedSession(title, tuple(exercise(name) for name in names or ("Back squat", "Bench press")), 45)


_numbers = count(1)


def session(
    work: Work,
    *,
    of: str = "client-one",
    day: date = TODAY,
    at: datetime | None = None,
    workout: int = 0,
    plan: PlannedSession | None = None,
) -> str:
    """A planned session; gives its id (its token is `t-<id>`)."""
    id = f"session-{next(_numbers)}"
    when = at or datetime.combine(day, time(17), UTC)
    keep(work, SessionPlanned(id, of, day, workout, plan or planned(), f"t-{id}"), at=when)
    return id


def done(exercise: str = "Back squat", number: int = 1, *, reps: int = 5, load: str = "100") -> Performed:
    """A work set."""
    return Performed(exercise, number, Stage.WORK, Load.of(load, Unit.KG), reps, Decimal(2))


def report(work: Work, session: str, key: str, *sets: Performed, at: datetime = NOW) -> None:
    """A report of these sets (one set of squats where none are named)."""
    keep(work, Reported(session, key, sets or (done(),)), at=at)


def trained(work: Work, *, of: str, day: date, workout: int = 0, names: tuple[str, ...] = ()) -> str:
    """A whole session on that day, as planned, finished."""
    plan = planned(*names)
    id = session(work, of=of, day=day, workout=workout, plan=plan)
    start = datetime.combine(day, time(17), UTC)
    for n, one in enumerate(plan.exercises):
        sets = tuple(done(one.name, number) for number in range(1, len(one.sets) + 1))
        keep(work, Reported(id, f"m{id}{n}", sets), at=start + timedelta(minutes=10 * n))
    keep(work, SessionEnded(id, Ending.FINISHED, 40), at=start + timedelta(minutes=45))
    return id


def build(work: Work, incoming: Incoming, *, now: datetime = NOW) -> Desk:
    """The desk for this incoming thing."""
    return desk.build(work, incoming, now=now, house=HOUSE, tokens=TOKENS)


@dataclass(frozen=True)
class Practice:
    """A coach with one client and a programme."""

    coach: str
    client: str


def practice(work: Work) -> Practice:
    """The smallest one that can train."""
    return Practice(coach(work), client(work))


class _Undone(Exception):
    """Ends a transaction without a trace."""


@contextmanager
def undone(store: Store) -> Iterator[Work]:
    """A transaction of which nothing stays: for properties, which run many times on one store."""
    with suppress(_Undone), store.begin() as work:
        yield work
        raise _Undone


def renamed(plan: PlannedSession, title: str) -> PlannedSession:
    """The same under another title."""
    return replace(plan, title=title)
