"""A client's own pace: brought up to date when a session ends, shown as minutes on its card once it is known."""

from collections.abc import Sequence
from datetime import datetime

from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.turn import PaceKept
from bot.training.pace import Pace, Told, pace_after
from bot.training.plan import PlannedExercise
from bot.training.session import Session
from bot.training.timing import session_time


def paced(desk: Desk, client: ClientDesk, session: Session) -> tuple[PaceKept, ...]:
    """The pace with this session's reports; nothing where they say nothing. Ended again, it counts once."""
    row = client.pace
    before = Pace() if row is None else Pace.from_json(row.before if row.session == session.id else row.after)
    after = pace_after(before, session.plan.exercises, _told(desk, client, session))
    if after == before and (row is None or row.session != session.id):
        return ()
    return (PaceKept(client.profile.id, session.id, before.to_json(), after.to_json()),)


def minutes_at_pace(client: ClientDesk, exercises: Sequence[PlannedExercise]) -> int | None:
    """Minutes of these at the client's pace; `None` where it is not known yet."""
    if client.pace is None:
        return None
    pace = Pace.from_json(client.pace.after)
    return pace.minutes(session_time(exercises)) if pace.is_known else None


def _told(desk: Desk, client: ClientDesk, session: Session) -> list[Told]:
    """When each report was first made: those of this turn now."""
    at: dict[str, datetime] = {}
    if client.session is not None and client.session.id == session.id:
        at = {r.key: when for r, when in zip(client.session.reports, client.reported_at, strict=False)}
    return [Told.of(report, at.get(report.key, desk.now)) for report in session.reports]
