"""What facts about sessions change: planned, reported, ended, moved, missed; and what each does to the client's row."""

from dataclasses import replace
from datetime import date, datetime

import sqlalchemy as sa

from bot.training.facts import (
    EffortRated,
    Ending,
    MissNoted,
    PlanChanged,
    Reported,
    ReportTakenBack,
    SessionEnded,
    SessionMoved,
    SessionPlanned,
    SessionReopened,
)
from bot.training.people import SessionId
from bot.training.session import Session, with_plan
from storage import sessions
from storage.plans import PLAN
from storage.ready import ready
from storage.record import About, Origin
from storage.sessions import Kept, Made
from storage.tables import clients, programmes
from storage.tables import sessions as table
from storage.work import Overtaken, Work

SessionFact = PlanChanged | SessionEnded | SessionReopened | SessionMoved | MissNoted | EffortRated

_LOCK = ready(
    sa.select(clients.c.coach, clients.c.snapshot)
    .where(clients.c.id == sa.bindparam("client"))
    .with_for_update(key_share=True)
)
_HAS_OPEN = ready(
    sa.select(table.c.id).where(
        table.c.client == sa.bindparam("of"), table.c.day == sa.bindparam("on"), table.c.ended.is_(None)
    )
)
_PLAN = ready(sa.insert(table))
_LAST_DAY = ready(
    sa.update(clients).where(clients.c.id == sa.bindparam("client")).values(last_day=sa.bindparam("as_day"))
)
_REPORTED_ON = ready(
    sa.update(clients)
    .where(
        clients.c.id == sa.bindparam("client"),
        sa.or_(clients.c.last_day.is_(None), clients.c.last_day < sa.bindparam("as_day")),
    )
    .values(last_day=sa.bindparam("as_day"))
)
_LATEST_REPORTED = ready(
    sa.select(table.c.day)
    .where(table.c.client == sa.bindparam("of"), table.c.first_at.is_not(None))
    .order_by(table.c.day.desc())
    .limit(1)
)
_WORKOUTS = ready(sa.select(programmes.c.workouts).where(programmes.c.snapshot == sa.bindparam("of_snapshot")))
_ADVANCE = ready(
    sa.update(clients)
    .where(
        clients.c.id == sa.bindparam("client"),
        clients.c.snapshot == sa.bindparam("of_snapshot"),
        sa.or_(clients.c.workout_since.is_(None), clients.c.workout_since <= sa.bindparam("since")),
    )
    .values(workout=sa.bindparam("next"), workout_since=sa.bindparam("since"))
)
_HANDLED = ready(
    sa.update(table)
    .where(table.c.coach == sa.bindparam("of_coach"), table.c.id.in_((sa.bindparam("named"), sa.bindparam("session"))))
    .values(handled_at=sa.bindparam("now"))
    .returning(table.c.client)
)


def plan(work: Work, fact: SessionPlanned, origin: Origin) -> About:
    """A session is planned: one open one a client and day; `Overtaken` where the day has one."""
    client = work.first(_LOCK, {"client": fact.client})
    if client is None:
        raise LookupError("no such client")
    if work.first(_HAS_OPEN, {"of": fact.client, "on": fact.day}) is not None:
        raise Overtaken
    session = Session(fact.session, fact.client, fact.day, fact.workout, fact.plan, fact.token)
    revision = sessions.revision()
    work.run(
        _PLAN,
        {
            "id": fact.session,
            "client": fact.client,
            "coach": client.coach,
            "day": fact.day,
            "workout": fact.workout,
            "snapshot": client.snapshot,
            "token": fact.token,
            "planned_at": origin.at,
            "plan": work.seal(PLAN.show_kept(fact.plan)),
            "reports": work.seal(""),
            "revision": revision,
            "touched_at": origin.at,
        },
    )
    kept = Kept(session, (), client.coach, origin.at, client.snapshot, revision)
    work.memory.sessions.put((fact.session, revision), kept)
    return About(fact.client, client.coach, fact.session)


def report(work: Work, fact: Reported | ReportTakenBack, origin: Origin) -> About:
    """A report counts (in place of the one of the same key), or counts no more."""
    kept = _session(work, fact.session)
    made = kept.reports
    if isinstance(fact, ReportTakenBack):
        after = tuple(m for m in made if m.report.key != fact.key)
    elif any(m.report.key == fact.key for m in made):
        after = tuple(Made.of(fact, m.at) if m.report.key == fact.key else m for m in made)
    else:
        after = (*made, Made.of(fact, origin.at))
    session = sessions.change_reports(work, kept, after, at=origin.at).session
    if session.first_at is not None and kept.session.first_at is None:
        work.run(_REPORTED_ON, {"client": session.client, "as_day": session.day})
    if session.first_at is None and kept.session.first_at is not None:
        _find_last_day(work, session.client)
    return About(session.client, kept.coach, fact.session, fact.key)


def change_session(work: Work, fact: SessionFact, origin: Origin) -> About:
    """Anything else that befalls a session."""
    kept = _session(work, fact.session)
    session = kept.session
    match fact:
        case SessionEnded(_, how, minutes):
            ended = replace(session, ended=how)
            sessions.change(work, kept, ended, at=origin.at, ended=how.value, minutes=minutes)
            if how is not Ending.MISSED:
                _advance(work, kept)
        case PlanChanged():
            after = with_plan(session, fact)
            plan, changes = work.seal(PLAN.show_kept(after.plan)), work.seal(sessions.show_changes(after.changes))
            sessions.change(work, kept, after, at=origin.at, plan=plan, changes=changes)
        case SessionReopened():
            sessions.change(work, kept, replace(session, ended=None), at=origin.at, ended=None, minutes=None)
        case SessionMoved(_, to):
            sessions.move(work, kept, to, at=origin.at)
            if session.first_at is not None:
                _find_last_day(work, session.client)
        case MissNoted():
            noted = replace(session, miss_noted=True)
            sessions.change(work, kept, noted, at=origin.at, miss_at=origin.at, handled_at=None)
        case EffortRated(_, rating):
            sessions.change(work, kept, replace(session, effort=rating), at=origin.at, effort=rating)
    return About(session.client, kept.coach, fact.session)


def _session(work: Work, session: SessionId) -> Kept:
    kept = sessions.session_of(work, session)
    if kept is None:
        raise LookupError("no such session")
    return kept


def _advance(work: Work, kept: Kept) -> None:
    """The workout after this one comes next, unless the programme is another by now or a later session said so."""
    count = work.first(_WORKOUTS, {"of_snapshot": kept.snapshot})
    if count is None:
        return
    following = (kept.session.workout + 1) % count.workouts
    params = {"client": kept.session.client, "of_snapshot": kept.snapshot, "since": kept.planned_at, "next": following}
    work.run(_ADVANCE, params)


def _find_last_day(work: Work, client: str) -> None:
    row = work.first(_LATEST_REPORTED, {"of": client})
    day: date | None = None if row is None else row.day
    work.run(_LAST_DAY, {"client": client, "as_day": day})


def handled(work: Work, coach: str, alert: str, *, at: datetime) -> str | None:
    """The coach has seen to a missed session, named by its id or as `s<id>`; gives whose it is, `None` where no client
    of theirs has it."""
    row = work.first(_HANDLED, {"of_coach": coach, "named": alert, "session": alert[1:], "now": at})
    return None if row is None else row.client
