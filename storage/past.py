"""What lies behind a client, read when somebody asks for it: by index, twelve months back at most, never for a reply.

Sessions read for it are not kept in memory, so that those of today stay there.
"""

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

import sqlalchemy as sa

from bot.dialogue.desk import ClientDesk
from bot.training.attendance import SentSession, day_marks
from bot.training.calendar import local_day, monday_of
from bot.training.past import Past, PastPain, lift_days, sets_weeks
from bot.training.people import Client, Standing
from storage.matters import HURT, pain_scores
from storage.ready import Row, ready
from storage.sessions import LIGHT, Kept, rows_to_sessions
from storage.tables import matters, sessions, sets
from storage.work import Work

LONGEST = timedelta(days=365)
"""So far back a strength picture goes."""
CALENDAR_WEEKS, SETS_WEEKS, RECENT_WEEKS = 12, 6, 4
MOST_PAINS, MOST_DAYS = 5, 3
_AT_ONCE = 50
"""Sessions read in one statement."""

_c = sessions.c
_RECENT = ready(
    sa.select(_c.day, _c.ended, _c.first_at)
    .where(_c.client == sa.bindparam("of"), _c.day >= sa.bindparam("since"), _c.day <= sa.bindparam("to"))
    .order_by(_c.day.desc())
)
_TRAINED = ready(
    sa.select(_c.day)
    .where(_c.client == sa.bindparam("of"), _c.day <= sa.bindparam("to"), _c.first_at.is_not(None))
    .order_by(_c.day.desc())
    .limit(sa.bindparam("most"))
)
_PAINS = ready(
    sa.select(matters.c.id, matters.c.body, matters.c.at, matters.c.closed_at)
    .where(matters.c.client == sa.bindparam("of"), matters.c.kind == "pain")
    .order_by(matters.c.id.desc())
    .limit(sa.bindparam("most"))
)
_WINDOW = ready(
    sa.select(*LIGHT)
    .where(_c.client == sa.bindparam("of"), _c.day >= sa.bindparam("since"), _c.day <= sa.bindparam("to"))
    .order_by(_c.day, _c.planned_at)
)
_WITH = ready(
    sa.select(*LIGHT)
    .where(
        _c.id.in_(
            sa.select(sets.c.session).where(
                sets.c.client == sa.bindparam("of"),
                sets.c.exercise == sa.bindparam("lift"),
                sets.c.day >= sa.bindparam("since"),
            )
        )
    )
    .order_by(_c.day, _c.planned_at)
)


def page(work: Work, about: ClientDesk, now: datetime) -> Past:
    """What a client's page looks back on: four weeks' sessions, the last pains, the last days with sets."""
    me, today = about.profile, local_day(now, about.profile.zone)
    rows = work.all(_RECENT, {"of": me.id, "since": today - timedelta(weeks=RECENT_WEEKS), "to": today})
    over = [r for r in rows if r.day < today or r.ended is not None or r.first_at is not None]
    trained = tuple(dict.fromkeys(r.day for r in over if r.first_at is not None))[:MOST_DAYS]
    if len(trained) < MOST_DAYS:
        far = work.all(_TRAINED, {"of": me.id, "to": today, "most": MOST_DAYS})
        trained = tuple(dict.fromkeys(r.day for r in far))
    pains = tuple(_pain(work, r, me) for r in work.all(_PAINS, {"of": me.id, "most": MOST_PAINS}))
    done = sum(1 for r in over if r.first_at is not None)
    return Past(done=done, due=len(over), pains=pains, trained=trained)


def lift(work: Work, about: ClientDesk, exercise: str, now: datetime) -> Past:
    """The days on which an exercise was done, each with its estimate, worked out from the sessions as its state was."""
    me = about.profile
    since = local_day(now, me.zone) - LONGEST
    rows = work.all(_WITH, {"of": me.id, "lift": exercise, "since": since})
    scores = pain_scores(work, me.id) if rows else {}
    of_lift = {session: score for (session, name), score in scores.items() if name == exercise}
    return Past(lift=lift_days((kept.session for kept in _whole(work, rows)), exercise, of_lift))


def weeks(work: Work, about: ClientDesk, now: datetime) -> Past:
    """The hard sets of the last weeks, this one last."""
    this = monday_of(local_day(now, about.profile.zone))
    mondays = tuple(this - timedelta(weeks=n) for n in range(SETS_WEEKS - 1, -1, -1))
    kept = _window(work, about, mondays[0], this + timedelta(days=6))
    return Past(weeks=sets_weeks([k.session for k in kept], mondays))


def calendar(work: Work, about: ClientDesk, now: datetime) -> Past:
    """What became of each day of the last weeks, this one last."""
    me, today = about.profile, local_day(now, about.profile.zone)
    first = monday_of(today) - timedelta(weeks=CALENDAR_WEEKS - 1)
    last = monday_of(today) + timedelta(days=6)
    sent = [
        SentSession(k.session, local_day(k.planned_at, me.zone))
        for k in _window(work, about, first, last + timedelta(days=7))  # one moved on to next week left this one
    ]
    marks = day_marks(
        sent, first=first, last=last, today=today, training_days=_coming(about, today), changes=about.life.changes
    )
    return Past(marks=marks, since=first)


def _coming(about: ClientDesk, today: date) -> tuple[int, ...]:
    """The weekdays on which a session is still to come this week, as it was laid."""
    if about.profile.standing is not Standing.ACTIVE or about.programme is None:
        return ()
    laid = about.life.week(monday_of(today))
    return about.profile.trains.days if laid is None else tuple(d.day.weekday() for d in laid.days)


def on_day(work: Work, about: ClientDesk, day: date) -> Past:
    """The sessions of a day."""
    return Past(sessions=tuple(k.session for k in _window(work, about, day, day)))


def _window(work: Work, about: ClientDesk, since: date, to: date) -> list[Kept]:
    return _whole(work, work.all(_WINDOW, {"of": about.profile.id, "since": since, "to": to}))


def _whole(work: Work, rows: Sequence[Row]) -> list[Kept]:
    return [
        kept
        for start in range(0, len(rows), _AT_ONCE)
        for kept in rows_to_sessions(work, rows[start : start + _AT_ONCE], remember=False)
    ]


def _pain(work: Work, row: Row, me: Client) -> PastPain:
    hurt = HURT.read_kept(work.unseal(row.body))
    zone = ZoneInfo(me.zone)
    closed = None if row.closed_at is None else row.closed_at.astimezone(zone).date()
    return PastPain(row.at.astimezone(zone).date(), hurt.exercise, hurt.said, closed, hurt.ended)
