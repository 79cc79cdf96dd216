"""Sessions as they stand: read in one row each, written whole at each change.

A session's reports are bounded by the session, so they stand in its row; `sets` has the sets that count once more, one
a row, for what looks across sessions.
"""

import os
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from functools import lru_cache

import sqlalchemy as sa

from bot.training.facts import Ending, Reported
from bot.training.people import ClientId, CoachId, SessionId
from bot.training.report import Performed
from bot.training.session import Change, Session
from storage.codec import codec
from storage.plans import PLAN
from storage.ready import Ready, Row, ready
from storage.tables import sessions, sets
from storage.work import Work

_c = sessions.c


@dataclass(frozen=True, slots=True)
class ReportAt:
    """A report, and when it was first made."""

    report: Reported
    at: datetime


REPORT = codec(ReportAt)
CHANGE = codec(Change)


@dataclass(frozen=True, slots=True)
class Made:
    """The same with its text, so that a session's other reports need not be written out again for a new one."""

    report: Reported
    at: datetime
    text: str

    @classmethod
    def of(cls, report: Reported, at: datetime) -> "Made":
        """A report made at this time."""
        return cls(report, at, REPORT.show_kept(ReportAt(report, at)))


def show_reports(reports: Iterable[Made]) -> str:
    """The text of a session's reports: one a line."""
    return "\n".join(made.text for made in reports)


def read_reports(text: str) -> tuple[Made, ...]:
    """The reports again."""
    read = ((REPORT.read_kept(line), line) for line in text.split("\n") if line)
    return tuple(Made(made.report, made.at, line) for made, line in read)


def show_changes(changes: Iterable[Change]) -> str:
    """The text of what changed a session's plan: one a line."""
    return "\n".join(CHANGE.show_kept(change) for change in changes)


def read_changes(text: str) -> tuple[Change, ...]:
    """The changes again."""
    return tuple(CHANGE.read_kept(line) for line in text.split("\n") if line)


@dataclass(frozen=True, slots=True)
class Kept:
    """A session with what stands beside it in its row."""

    session: Session
    reports: tuple[Made, ...]
    coach: CoachId
    planned_at: datetime
    snapshot: str | None
    revision: int


LIGHT = tuple(c for c in _c if c.name not in ("plan", "reports", "changes"))
_HEAVY = (_c.id, _c.plan, _c.reports, _c.changes)


def revision() -> int:
    """A new random one; the same never comes twice."""
    return int.from_bytes(os.urandom(8)) >> 1


@lru_cache(64)
def _heavy_of(count: int) -> Ready:
    return ready(sa.select(*_HEAVY).where(_c.id.in_([sa.bindparam(f"id{n}") for n in range(count)])))


_ONE = ready(sa.select(*LIGHT).where(_c.id == sa.bindparam("session")))
_BY_TOKEN = ready(sa.select(*LIGHT).where(_c.token == sa.bindparam("by_token"), _c.client == sa.bindparam("of")))


def rows_to_sessions(work: Work, rows: Sequence[Row], *, remember: bool = True) -> tuple[Kept, ...]:
    """The whole sessions of these light rows; those that this process has seen in this revision are not read again.

    Who reads far back lets them go at once (`remember` false), so that those of today stay in memory.
    """
    known: dict[SessionId, Kept] = {}
    for row in rows:
        if (kept := work.memory.sessions.get((row.id, row.revision))) is not None:
            known[row.id] = kept
    missing = [row for row in rows if row.id not in known]
    if missing:
        heavy = work.all(_heavy_of(len(missing)), {f"id{n}": row.id for n, row in enumerate(missing)})
        bodies = {row.id: row for row in heavy}
        for row in missing:
            known[row.id] = _whole(work, row, bodies[row.id])
            if remember:
                work.memory.sessions.put((row.id, row.revision), known[row.id])
    return tuple(known[row.id] for row in rows)


def session_of(work: Work, session: SessionId) -> Kept | None:
    """The session of this id; `None` where there is none."""
    row = work.first(_ONE, {"session": session})
    return None if row is None else rows_to_sessions(work, (row,))[0]


def by_token(work: Work, client: ClientId, token: str) -> Row | None:
    """The light row of the client's session with this token; `None` for anybody else's."""
    return work.first(_BY_TOKEN, {"by_token": token, "of": client})


def _whole(work: Work, row: Row, heavy: Row) -> Kept:
    reports = read_reports(work.unseal(heavy.reports))
    session = Session(
        id=row.id,
        client=row.client,
        day=row.day,
        workout=row.workout,
        plan=PLAN.read_kept(work.unseal(heavy.plan)),
        token=row.token,
        reports=tuple(made.report for made in reports),
        ended=None if row.ended is None else Ending(row.ended),
        effort=row.effort,
        first_at=row.first_at,
        last_at=row.last_at,
        miss_noted=row.miss_at is not None,
        changes=read_changes(work.unseal(heavy.changes)) if heavy.changes else (),
    )
    return Kept(session, reports, row.coach, row.planned_at, row.snapshot, row.revision)


# --- changes

_CHANGE = {
    "revision": sa.bindparam("as_revision", type_=_c.revision.type),
    "touched_at": sa.bindparam("as_touched", type_=_c.touched_at.type),
}


@lru_cache(32)
def _change_of(names: tuple[str, ...]) -> Ready:
    values = {name: sa.bindparam(f"as_{name}", type_=_c[name].type) for name in names}
    return ready(sa.update(sessions).where(_c.id == sa.bindparam("session")).values({**_CHANGE, **values}))


def change(work: Work, kept: Kept, session: Session, *, at: datetime, **columns: object) -> Kept:
    """Writes these columns of a session that now is `session`; gives it as kept."""
    new = replace(kept, session=session, revision=revision())
    params = {f"as_{name}": value for name, value in columns.items()}
    work.run(
        _change_of(tuple(sorted(columns))),
        {"session": session.id, "as_revision": new.revision, "as_touched": at, **params},
    )
    work.memory.sessions.put((session.id, new.revision), new)
    return new


def change_reports(work: Work, kept: Kept, reports: tuple[Made, ...], *, at: datetime) -> Kept:
    """The session has these reports from now on; its rows in `sets` follow.

    A session of which every set was taken back again, by a report that replaces it, has no times either: nothing was
    trained, and the day may be missed.
    """
    session = replace(kept.session, reports=tuple(made.report for made in reports))
    with_sets = [made.at for made in reports if made.report.sets] if session.done else []
    session = replace(session, first_at=min(with_sets, default=None), last_at=max(with_sets, default=None))
    changed = change(
        work,
        replace(kept, reports=reports),
        session,
        at=at,
        reports=work.seal(show_reports(reports)),
        first_at=session.first_at,
        last_at=session.last_at,
    )
    _follow_sets(work, kept.session, session)
    return changed


_UNSET = ready(sa.delete(sets).where(sets.c.session == sa.bindparam("in_session")))
_SET = ready(sa.insert(sets))
_MOVE = ready(sa.update(sets).where(sets.c.session == sa.bindparam("in_session")).values(day=sa.bindparam("to_day")))
_APART = 1000
"""The place of a set is that of its report times this, and its own within the report."""


def _follow_sets(work: Work, before: Session, after: Session) -> None:
    """Writes only what is new where a report was only added."""
    count = len(before.reports)
    if after.reports[:count] == before.reports and not any(r.replaces for r in after.reports[count:]):
        placed = _placed(after.reports[count:], count)
    else:
        work.run(_UNSET, {"in_session": after.id})
        placed = _placed(after.reports, 0)
    if placed:
        work.run(_SET, [_set_row(after, place, done) for place, done in placed])


def _placed(reports: Sequence[Reported], start: int) -> list[tuple[int, Performed]]:
    """The sets that count, as by `bot.training.session.sets_done`, each with its place."""
    placed: list[tuple[int, Performed]] = []
    for n, report in enumerate(reports, start):
        if report.replaces:
            gone = set(report.replaces)
            placed = [(at, p) for at, p in placed if p.set is None or (p.exercise, p.set) not in gone]
        placed += [(n * _APART + m, p) for m, p in enumerate(report.sets)]
    return placed


def _set_row(session: Session, place: int, done: Performed) -> dict[str, object]:
    return {
        "session": session.id,
        "place": place,
        "client": session.client,
        "exercise": done.exercise,
        "day": session.day,
        "set_number": done.set,
        "stage": done.stage.value,
        "thousandths": None if done.load is None else done.load.thousandths,
        "unit": None if done.load is None else done.load.unit.value,
        "reps": done.reps,
        "rir": None if done.rir is None else str(done.rir),
        "side": None if done.side is None else done.side.value,
    }


def move(work: Work, kept: Kept, to: date, *, at: datetime) -> Kept:
    """The session stands on another day; whether it is missed is asked anew."""
    session = replace(kept.session, day=to, miss_noted=False)
    if kept.session.first_at is not None:
        work.run(_MOVE, {"in_session": session.id, "to_day": to})
    return change(work, kept, session, at=at, day=to, miss_at=None, handled_at=None)
