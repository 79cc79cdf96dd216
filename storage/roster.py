"""The coach's people in a line each: from kept columns and the last four weeks of sessions, by index."""

from datetime import date, datetime, timedelta

import sqlalchemy as sa

from bot.dialogue.desk import RosterLine
from bot.training.calendar import local_day
from bot.training.coming import next_day
from bot.training.people import Coach, Standing, TrainingTime
from storage import life
from storage.columns import fixed
from storage.ready import Row, ready
from storage.tables import clients, sessions
from storage.work import Work

WEEKS = timedelta(weeks=4)

_c, _s = clients.c, sessions.c
_CLIENTS = ready(
    sa.select(
        *(_c[f] for f in ("id", "name", "zone", "days", "hour", "standing", "unreachable_at", "last_day")),
        *(_c[f] for f in ("programme", "chat", "life")),
    )
    .where(_c.coach == sa.bindparam("of"), _c.standing != fixed("withdrawn"))
    .order_by(_c.joined_at, _c.id)
)
_SESSIONS = ready(
    sa.select(_s.client, _s.day, _s.ended, _s.first_at).where(
        _s.coach == sa.bindparam("of"), _s.day >= sa.bindparam("since")
    )
)


def roster(work: Work, coach: Coach, now: datetime) -> tuple[RosterLine, ...]:
    """Everyone who has not withdrawn, the longest known first."""
    recent: dict[str, list[Row]] = {}
    for session in work.all(_SESSIONS, {"of": coach.id, "since": local_day(now, coach.zone) - WEEKS}):
        recent.setdefault(session.client, []).append(session)
    rows = work.all(_CLIENTS, {"of": coach.id})
    return tuple(_line(work, row, recent.get(row.id, []), local_day(now, row.zone)) for row in rows)


def recent_counts(work: Work, coach: Coach, now: datetime) -> dict[str, tuple[int, int]]:
    """Sessions done and due in four weeks, by client."""
    counts: dict[str, tuple[int, int]] = {}
    today = local_day(now, coach.zone)
    for row in work.all(_SESSIONS, {"of": coach.id, "since": today - WEEKS}):
        if row.day < today or row.ended is not None or row.first_at is not None:
            done, due = counts.get(row.client, (0, 0))
            counts[row.client] = (done + (row.first_at is not None), due + 1)
    return counts


def _line(work: Work, row: Row, recent: list[Row], today: date) -> RosterLine:
    due = [s for s in recent if s.day < today or s.ended is not None or s.first_at is not None]
    is_over = any(s.day == today and (s.ended is not None or s.first_at is not None) for s in recent)
    return RosterLine(
        client=row.id,
        name=work.unseal(row.name),
        standing=row.standing,
        reachable=row.unreachable_at is None,
        last_day=row.last_day,
        sessions_done=sum(1 for s in due if s.first_at is not None),
        sessions_due=len(due),
        programme=row.programme,
        chat=row.chat,
        next_day=_next_day(work, row, recent, today, is_over=is_over) if row.standing == Standing.ACTIVE else None,
    )


def _next_day(work: Work, row: Row, recent: list[Row], today: date, *, is_over: bool) -> date | None:
    """The next training day, as weeks were laid, or an earlier one to which an open session was moved."""
    start = today + timedelta(days=1) if is_over else today
    ahead = next_day(life.read(work, row.life), TrainingTime(row.days, row.hour), start - timedelta(days=1))
    moved = [s.day for s in recent if s.ended is None and s.day >= start]
    return min((*(() if ahead is None else (ahead,)), *moved), default=None)
