"""What a coach's digest is made of: what happened with each client since the last one, and what still waits."""

from collections import defaultdict
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import sqlalchemy as sa

from bot.dialogue.desk import DigestEntry
from bot.dialogue.incoming import RuleKind
from bot.training.calendar import local_day, monday_of
from bot.training.people import Coach
from bot.training.stalls import Drift, drift_of
from bot.training.state import State
from bot.training.units import Unit
from storage import life, orders
from storage.columns import fixed
from storage.lightsigns import Trained, light_signs
from storage.matters import COLUMNS, read_open
from storage.ready import Row, ready
from storage.roster import recent_counts
from storage.schedule import last_at
from storage.sessions import LIGHT, Kept, rows_to_sessions
from storage.strengths import strengths_of
from storage.tables import clients, matters, sessions
from storage.work import Work

FEW, LEAST_DUE = 0.75, 4
"""Adherence below three in four is told, once four sessions were due. Ours."""
FIRST_LOOKS_BACK = timedelta(days=1)
"""So far back goes a digest that has no other before it."""

_c, _s, _m = clients.c, sessions.c, matters.c
_CLIENTS = ready(
    sa.select(
        *(_c[f] for f in ("id", "name", "zone", "unit", "readiness_flagged", "standing", "unreachable_at", "life")),
        *(_c[f] for f in ("orders", "snapshot", "begun")),
    )
    .where(_c.coach == sa.bindparam("of"), _c.standing != fixed("withdrawn"))
    .order_by(_c.joined_at, _c.id)
)
_TOUCHED = ready(sa.select(*LIGHT).where(_s.coach == sa.bindparam("of"), _s.touched_at > sa.bindparam("since")))
_MISSING = ready(
    sa.select(*LIGHT).where(
        _s.coach == sa.bindparam("of"),
        _s.miss_at.is_not(None),
        _s.miss_at > sa.bindparam("ever"),
        _s.handled_at.is_(None),
        _s.ended.is_(None),
        _s.first_at.is_(None),
    )
)
_OPEN = ready(
    sa.select(*COLUMNS, _m.handled_at).where(_m.coach == sa.bindparam("of"), _m.closed_at.is_(None)).order_by(_m.id)
)


def digest(work: Work, coach: Coach, *, now: datetime) -> tuple[DigestEntry, ...]:
    """An entry for each client with anything to tell, the longest known first. Pain and missed sessions that the coach
    has marked as handled are only told where they happened since the last digest."""
    since = last_at(work, coach.id, RuleKind.DIGEST) or now - FIRST_LOOKS_BACK
    seen: dict[str, Row] = {r.id: r for r in work.all(_TOUCHED, {"of": coach.id, "since": since})}
    seen |= {r.id: r for r in work.all(_MISSING, {"of": coach.id, "ever": datetime.min.replace(tzinfo=UTC)})}
    told: dict[str, list[Kept]] = defaultdict(list)
    missed: dict[str, list[Row]] = defaultdict(list)
    reported = [r for r in seen.values() if r.last_at is not None and r.touched_at > since]
    for kept in rows_to_sessions(work, sorted(reported, key=lambda r: (r.day, r.planned_at))):
        told[kept.session.client].append(kept)
    for row in sorted(seen.values(), key=lambda r: (r.day, r.planned_at)):
        if row.miss_at is not None and row.first_at is None and (row.miss_at > since or row.handled_at is None):
            missed[row.client].append(row)
    waiting: dict[str, list[Row]] = defaultdict(list)
    for row in work.all(_OPEN, {"of": coach.id}):
        if row.handled_at is None or row.at > since:
            waiting[row.client].append(row)
    counts = recent_counts(work, coach, now)
    entries = []
    for row in work.all(_CLIENTS, {"of": coach.id}):
        entry = _entry(work, row, since, told=told[row.id], missed=missed[row.id], waiting=waiting[row.id])
        if entry != DigestEntry(row.id, entry.name, unit=entry.unit):
            just_missed = any(r.miss_at > since for r in missed[row.id])
            slipping = _slipping(counts.get(row.id)) if just_missed else None
            entry = replace(entry, drifts=_drifts(work, row.id, told[row.id]), slipping=slipping)
            entries.append(_with_signs(work, row, entry, now))
    return tuple(entries)


def waiting(work: Work, coach: Coach) -> tuple[DigestEntry, ...]:
    """What waits of each client, and nothing else: for `/inbox`."""
    rows: dict[str, list[Row]] = defaultdict(list)
    for row in work.all(_OPEN, {"of": coach.id}):
        rows[row.client].append(row)
    people = [row for row in work.all(_CLIENTS, {"of": coach.id}) if rows[row.id]] if rows else []
    found = ((row, read_open(work, rows[row.id], row.zone)) for row in people)
    return tuple(
        DigestEntry(row.id, work.unseal(row.name), questions=kept.questions, doubts=kept.doubts) for row, kept in found
    )


def _drifts(work: Work, client: str, told: list[Kept]) -> tuple[tuple[str, Drift], ...]:
    """Of the exercises done since the last digest, those that stall or drift."""
    names = {p.exercise for kept in told for p in kept.session.done}
    found = ((row.exercise, drift_of(State.from_json(row.after))) for row in strengths_of(work, client, names))
    return tuple((exercise, drift) for exercise, drift in found if drift is not None)


def _with_signs(work: Work, row: Row, entry: DigestEntry, now: datetime) -> DigestEntry:
    """Whether a light week is to be offered to somebody who trained since the last digest."""
    if not any(session.done for session in entry.sessions):
        return entry
    today = local_day(now, row.zone)
    of = Trained(row.id, orders.read(work, row.orders), life.read(work, row.life), row.snapshot, row.begun)
    signs = light_signs(work, of, today)
    monday = monday_of(today) + timedelta(weeks=1) if signs or entry.drifts else None
    return replace(entry, signs=signs, next_monday=monday)


def _slipping(counts: tuple[int, int] | None) -> tuple[int, int] | None:
    """Told where a session was missed just now and it is not the first: fewer than `FEW` of four weeks' sessions."""
    if counts is None:
        return None
    done, due = counts
    return (done, due) if due >= LEAST_DUE and done < FEW * due else None


def _entry(
    work: Work,
    row: Row,
    since: datetime,
    *,
    told: list[Kept],
    missed: list[Row],
    waiting: list[Row],
) -> DigestEntry:
    matters_open = read_open(work, waiting, row.zone)
    return DigestEntry(
        client=row.id,
        name=work.unseal(row.name),
        pains=matters_open.pains,
        missed=tuple(r.day for r in missed),
        questions=matters_open.questions,
        doubts=matters_open.doubts,
        sessions=tuple(kept.session for kept in told),
        readiness_flagged=row.readiness_flagged and row.standing == "paused",
        unreachable=row.unreachable_at is not None and row.unreachable_at > since,
        unit=Unit(row.unit),
        days=tuple(change for change in life.read(work, row.life).changes if change.at > since),
    )
