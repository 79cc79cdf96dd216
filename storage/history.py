"""A client's history as it can be read through, session by session: for copies of it, never for an answer."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

import sqlalchemy as sa

from bot.training.facts import NoteKept, ProgrammeAssigned
from bot.training.people import Programme
from bot.training.plan import PlannedSession
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit
from storage.matters import HURT, WORDS, Hurt, Kind
from storage.plans import PLAN, PROGRAMME
from storage.ready import Row, ready
from storage.record import CODECS
from storage.tables import facts, matters, programmes, sessions, sets, shelves, strengths
from storage.work import Work


@dataclass(frozen=True, slots=True)
class SessionDone:
    """A session as planned and as done; `minutes` and `effort` (0 to 10) where they are known, `ended` how it ended."""

    id: str
    day: date
    plan: PlannedSession
    done: tuple[Performed, ...]
    ended: str
    minutes: int | None
    effort: int | None
    first_at: datetime | None
    last_at: datetime | None


@dataclass(frozen=True, slots=True)
class HurtOnce:
    """Pain as it was reported, with its score, and when it was settled."""

    at: datetime
    hurt: Hurt
    closed_at: datetime | None


@dataclass(frozen=True, slots=True)
class Said:
    """Words that waited for somebody: a question, or a report in doubt; `closed_at` when they had their answer."""

    at: datetime
    kind: str
    words: str
    closed_at: datetime | None


@dataclass(frozen=True, slots=True)
class Noted:
    """A coach's note on the client."""

    at: datetime
    words: str


@dataclass(frozen=True, slots=True)
class Given:
    """A programme, and when it was given (or, on a coach's shelf, last changed)."""

    at: datetime
    programme: Programme


UNITS: dict[str, Unit] = {unit.value: unit for unit in Unit}
STAGES: dict[str, Stage] = {stage.value: stage for stage in Stage}
"""By name: quicker than asking the kinds themselves, a million times."""

_SESSIONS = ready(
    sa.select(sessions).where(sessions.c.client == sa.bindparam("of")).order_by(sessions.c.day, sessions.c.planned_at)
)
_SETS = ready(sa.select(sets).where(sets.c.client == sa.bindparam("of")).order_by(sets.c.session, sets.c.place))
_MATTERS = ready(sa.select(matters).where(matters.c.client == sa.bindparam("of")).order_by(matters.c.id))
_OF_KIND = ready(
    sa.select(facts.c.at, facts.c.body)
    .where(facts.c.client == sa.bindparam("of"), facts.c.kind == sa.bindparam("what"))
    .order_by(facts.c.id)
)
_STRENGTHS = ready(
    sa.select(strengths.c.exercise, strengths.c.day, strengths.c.after)
    .where(strengths.c.client == sa.bindparam("of"))
    .order_by(strengths.c.exercise)
)
_SHELF = ready(
    sa.select(shelves.c.at, programmes.c.body)
    .join_from(shelves, programmes, programmes.c.snapshot == shelves.c.snapshot)
    .where(shelves.c.coach == sa.bindparam("of"))
    .order_by(shelves.c.at)
)


def sessions_of(work: Work, client: str) -> Iterator[SessionDone]:
    """All sessions in order of their days, each with the sets that count."""
    done: dict[str, list[Performed]] = {}
    for row in work.all(_SETS, {"of": client}):
        done.setdefault(row.session, []).append(_performed(row))
    for row in work.all(_SESSIONS, {"of": client}):
        yield SessionDone(
            id=row.id,
            day=row.day,
            plan=PLAN.read_kept(work.unseal(row.plan)),
            done=tuple(done.get(row.id, ())),
            ended=row.ended or "",
            minutes=row.minutes,
            effort=row.effort,
            first_at=row.first_at,
            last_at=row.last_at,
        )


def _performed(row: Row) -> Performed:
    load = None if row.thousandths is None else Load(row.thousandths, UNITS[row.unit])
    rir = None if row.rir is None else Decimal(row.rir)
    side = None if row.side is None else Side(row.side)
    return Performed(row.exercise, row.set_number, STAGES[row.stage], load, row.reps, rir, side)


def pains_of(work: Work, client: str) -> Iterator[HurtOnce]:
    """All pain that was reported, in order."""
    for row in work.all(_MATTERS, {"of": client}):
        if row.kind == Kind.PAIN:
            yield HurtOnce(row.at, HURT.read_kept(work.unseal(row.body)), row.closed_at)


def words_of(work: Work, client: str) -> Iterator[Said]:
    """All questions and doubts, in order."""
    for row in work.all(_MATTERS, {"of": client}):
        if row.kind != Kind.PAIN:
            yield Said(row.at, row.kind, WORDS.read_kept(work.unseal(row.body)).words, row.closed_at)


def notes_of(work: Work, client: str) -> Iterator[Noted]:
    """All notes of the coach's, in order."""
    for row in work.all(_OF_KIND, {"of": client, "what": NoteKept.__name__}):
        note = CODECS[NoteKept.__name__].read_kept(work.unseal(row.body))
        assert isinstance(note, NoteKept)
        yield Noted(row.at, note.words)


def given_to(work: Work, client: str) -> Iterator[Given]:
    """All programmes that they were given, in order."""
    for row in work.all(_OF_KIND, {"of": client, "what": ProgrammeAssigned.__name__}):
        fact = CODECS[ProgrammeAssigned.__name__].read_kept(work.unseal(row.body))
        assert isinstance(fact, ProgrammeAssigned)
        yield Given(row.at, fact.programme)


def shelf_whole(work: Work, coach: str) -> Iterator[Given]:
    """All programmes on a coach's shelf."""
    for row in work.all(_SHELF, {"of": coach}):
        yield Given(row.at, PROGRAMME.read_kept(work.unseal(row.body)))


def strengths_whole(work: Work, client: str) -> Iterator[tuple[str, date, str]]:
    """Each exercise's state: the day that it is of, and `State.to_json()`."""
    for row in work.all(_STRENGTHS, {"of": client}):
        yield row.exercise, row.day, row.after
