"""Programmes and planned sessions as text to keep: snapshots, read back equal to the last digit."""

import hashlib
from datetime import datetime

import sqlalchemy as sa

from bot.training.people import Gym, Programme
from bot.training.plan import PlannedSession
from storage.codec import codec
from storage.ready import ready
from storage.tables import programmes, shelves
from storage.work import Work, insert_new, insert_or_replace

PLAN = codec(PlannedSession)
PROGRAMME = codec(Programme)
GYM = codec(Gym)

_KEEP = insert_new(programmes, "snapshot")
_SHELVE = insert_or_replace(shelves, "coach", "programme", columns=("snapshot", "at"))
_ONE = ready(sa.select(programmes.c.body).where(programmes.c.snapshot == sa.bindparam("snapshot")))
_SHELVED = ready(
    sa.select(shelves.c.snapshot).where(
        shelves.c.coach == sa.bindparam("coach"), shelves.c.programme == sa.bindparam("programme")
    )
)
_SHELF = ready(
    sa.select(shelves.c.snapshot)
    .where(shelves.c.coach == sa.bindparam("coach"))
    .order_by(shelves.c.at.desc())
    .limit(20)
)


def keep(work: Work, programme: Programme, *, coach: str, at: datetime) -> str:
    """Keeps the programme as it stands, on the coach's shelf; gives the name of the snapshot."""
    text = PROGRAMME.show_kept(programme)
    snapshot = hashlib.sha256(text.encode()).hexdigest()
    row = {"snapshot": snapshot, "id": programme.id, "workouts": len(programme.workouts), "body": work.seal(text)}
    work.run(_KEEP, row)
    work.run(_SHELVE, {"coach": coach, "programme": programme.id, "snapshot": snapshot, "at": at})
    return snapshot


def programme_of(work: Work, snapshot: str | None) -> Programme | None:
    """The programme of this snapshot; `None` for none."""
    if snapshot is None:
        return None
    programme = work.memory.programmes.get(snapshot)
    if programme is None:
        row = work.first(_ONE, {"snapshot": snapshot})
        if row is None:
            return None
        programme = PROGRAMME.read_kept(work.unseal(row.body))
        work.memory.programmes.put(snapshot, programme)
    return programme


def shelved(work: Work, coach: str, programme: str) -> Programme | None:
    """A programme on this coach's shelf, as it stands last; `None` where it holds none of that id."""
    row = work.first(_SHELVED, {"coach": coach, "programme": programme})
    return None if row is None else programme_of(work, row.snapshot)


def shelf_of(work: Work, coach: str) -> tuple[Programme, ...]:
    """The programmes that a coach has assigned, the latest first, at most twenty."""
    found = (programme_of(work, row.snapshot) for row in work.all(_SHELF, {"coach": coach}))
    return tuple(p for p in found if p is not None)
