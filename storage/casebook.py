"""A client's desk: the present session and week, what waits, what they can lift. Never more than that, however long the
history is, and only what the matter at hand may need:

- the session: of every turn of a client who has joined;
- strengths: where sets may be reported or a session planned; of the session's exercises, and of the next workout's
  where no session is open;
- the week, and the one before: for a weekly summary, a coach's look, and words that name another day.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

import sqlalchemy as sa

from bot.dialogue.desk import ClientDesk, StrengthRow
from bot.training.calendar import local_day, monday_of
from bot.training.orders import Orders, ordered
from bot.training.people import Programme, Standing, Workout
from bot.training.session import Session
from storage.lately import lately
from storage.matters import NOTHING_OPEN, open_of
from storage.orders import preferred_by
from storage.people import ClientRow
from storage.plans import programme_of
from storage.ready import Row, ready
from storage.record import session_of_key
from storage.sessions import LIGHT, by_token, rows_to_sessions
from storage.strengths import every_strength, strengths_of
from storage.tables import sessions
from storage.work import Work

_c = sessions.c
LATELY = timedelta(weeks=4)
"""So far back the last sessions are looked at: as long as sessions are eased after the longest break."""
UNFINISHED_FOR = timedelta(days=2)
"""So long after its day a session without an end may still be the one that is meant."""

_WINDOW = ready(
    sa.select(*LIGHT)
    .where(_c.client == sa.bindparam("of"), _c.day >= sa.bindparam("since"), _c.day <= sa.bindparam("to"))
    .order_by(_c.day, _c.planned_at)
)
_BY_ID = ready(sa.select(*LIGHT).where(_c.id == sa.bindparam("session"), _c.client == sa.bindparam("of")))
_LAST_REPORTED = ready(
    sa.select(*LIGHT)
    .where(_c.client == sa.bindparam("of"), _c.day <= sa.bindparam("to"), _c.first_at.is_not(None))
    .order_by(_c.day.desc(), _c.planned_at.desc())
    .limit(1)
)
_OF_DAY = ready(sa.select(*LIGHT).where(_c.client == sa.bindparam("of"), _c.day == sa.bindparam("on")))


@dataclass(frozen=True, slots=True)
class Wanted:
    """What the matter at hand is about, and what it may need.

    `token` is a button's, `session` a rule's, `message_key` an edited message's; `day` stands for today where the clock
    speaks of another day; `last_done` asks for the session last reported rather than the open one; `lifts` for the
    strengths of the whole programme; `lately` for the last sessions in a line each; `before` for the programme before
    this one; `swaps` for what another exercise is chosen from.
    """

    token: str = ""
    session: str = ""
    message_key: str = ""
    day: date | None = None
    last_done: bool = False
    strengths: bool = False
    weeks: bool = False
    lifts: bool = False
    lately: bool = False
    before: bool = False
    swaps: bool = False


def client_desk(work: Work, row: ClientRow, wanted: Wanted, *, now: datetime) -> ClientDesk:
    """The client's desk as of now."""
    me = row.profile
    programme = programme_of(work, row.snapshot)
    if me.standing in (Standing.JOINING, Standing.WITHDRAWN):
        return ClientDesk(me, row.coach, programme)
    today = local_day(now, me.zone)
    monday = monday_of(today)
    since = monday - timedelta(days=7) if wanted.weeks else today - UNFINISHED_FOR
    since = min(since, wanted.day - UNFINISHED_FOR) if wanted.day is not None else since
    window = work.all(_WINDOW, {"of": me.id, "since": since, "to": monday + timedelta(days=6)})
    chosen = _chosen(work, row, wanted, window, wanted.day or today)
    picked = [r for r in window if wanted.weeks or (chosen is not None and r.id == chosen.id)]
    if chosen is not None and all(r.id != chosen.id for r in picked):
        picked.append(chosen)
    read = {kept.session.id: kept for kept in rows_to_sessions(work, picked)}
    whole = {name: kept.session for name, kept in read.items()}
    session = None if chosen is None else whole[chosen.id]
    weeks = [whole[r.id] for r in window] if wanted.weeks else []
    waiting = open_of(work, me.id, me.zone) if row.matters_open else NOTHING_OPEN
    names = _exercises(session, _coming(programme, row, today)) if wanted.strengths else ()
    names = (*names, *_laid(row, today)) if names else names
    names = (*names, *_all_of(programme, row, today)) if wanted.lifts else names
    names = tuple(dict.fromkeys((*names, *(e.name for s in weeks for e in s.plan.exercises)))) if names else names
    return ClientDesk(
        profile=me,
        coach=row.coach,
        programme=programme,
        session=session,
        session_is_latest=chosen is None or _is_latest(work, row, chosen, window),
        week=tuple(s for s in weeks if monday <= s.day),
        last_week=tuple(s for s in weeks if monday - timedelta(days=7) <= s.day < monday),
        strengths=_strengths(work, me.id, names, _coming(programme, row, today), wanted),
        pains=waiting.pains,
        doubts=waiting.doubts,
        questions=waiting.questions,
        held=_held(waiting.held, row.orders),
        orders=row.orders,
        preferred=preferred_by(work, me.coach) if wanted.swaps else (),
        begun=row.begun,
        programme_before=programme_of(work, row.snapshot_before) if wanted.before else None,
        life=row.life,
        pace=row.pace,
        reported_at=() if chosen is None else tuple(made.at for made in read[chosen.id].reports),
        last_day=row.last_day,
        lately=lately(work, me.id, today - LATELY) if wanted.lately else (),
    )


def _strengths(
    work: Work, client: str, names: Sequence[str], coming: Workout | None, wanted: Wanted
) -> tuple[StrengthRow, ...]:
    """Those asked for; all of them where an exercise is looked for, or one comes that was never done: a lift like it
    says where to begin."""
    if wanted.swaps:
        return every_strength(work, client)
    found = strengths_of(work, client, names)
    known = {row.exercise for row in found}
    is_new = coming is not None and any(e.name in names and e.name not in known for e in coming.exercises)
    return every_strength(work, client) if is_new else found


def _held(by_pain: tuple[tuple[str, date], ...], orders: Orders) -> tuple[tuple[str, date], ...]:
    """What must not go up: for pain, or by the coach's word."""
    hurting = {exercise for exercise, _ in by_pain}
    return (*by_pain, *(held for held in orders.held if held[0] not in hurting))


def _chosen(work: Work, row: ClientRow, wanted: Wanted, window: Sequence[Row], today: date) -> Row | None:
    """The session that is meant: the button's, the rule's or the edited message's; else today's, an open one first;
    else the latest unfinished one of the last two days."""
    me = row.profile.id
    if wanted.token:
        named = next((r for r in window if r.token == wanted.token), None) or by_token(work, me, wanted.token)
        if named is not None:
            return named
    if wanted.session:
        named = next((r for r in window if r.id == wanted.session), None)
        return named or work.first(_BY_ID, {"session": wanted.session, "of": me})
    if wanted.message_key and (reported := session_of_key(work, me, wanted.message_key)) is not None:
        return next((r for r in window if r.id == reported), None) or work.first(
            _BY_ID, {"session": reported, "of": me}
        )
    if wanted.last_done and row.last_day is not None:
        return work.first(_LAST_REPORTED, {"of": me, "to": row.last_day})
    of_today = [r for r in window if r.day == today]
    if of_today:
        return next((r for r in reversed(of_today) if r.ended is None), of_today[-1])
    unfinished = (r for r in reversed(window) if r.ended is None and today - UNFINISHED_FOR <= r.day < today)
    # Begun where it was tomorrow already, before a journey over the date line.
    ahead = (r for r in window if r.ended is None and r.first_at is not None and r.day == today + timedelta(days=1))
    return next(unfinished, None) or next(ahead, None)


def _is_latest(work: Work, row: ClientRow, chosen: Row, window: Sequence[Row]) -> bool:
    """Whether no later session has reports."""
    if row.last_day is None or row.last_day != chosen.day:
        return row.last_day is None or row.last_day < chosen.day
    is_near = any(r.id == chosen.id for r in window)
    same_day = window if is_near else work.all(_OF_DAY, {"of": row.profile.id, "on": chosen.day})
    return not any(
        r.day == chosen.day and r.first_at is not None and r.planned_at > chosen.planned_at for r in same_day
    )


def _exercises(session: Session | None, coming: Workout | None) -> tuple[str, ...]:
    """Those of the session, and of the workout that may be planned next."""
    names = () if session is None else tuple(e.name for e in session.plan.exercises)
    if coming is None or (session is not None and session.ended is None):
        return names
    return (*names, *(e.name for e in coming.exercises))


def _laid(row: ClientRow, today: date) -> tuple[str, ...]:
    """What a week that was laid anew has today, with the coach's swaps."""
    days = [d for week in row.life.laid for d in week.days if d.day == today and not d.is_plain]
    return tuple(e.name for d in days for e in ordered(Workout(d.title, d.exercises), row.orders, day=today).exercises)


def _all_of(programme: Programme | None, row: ClientRow, today: date) -> tuple[str, ...]:
    """Every exercise of the programme, with the coach's swaps."""
    workouts = programme.workouts if programme is not None else ()
    return tuple(e.name for w in workouts for e in ordered(w, row.orders, day=today).exercises)


def _coming(programme: Programme | None, row: ClientRow, today: date) -> Workout | None:
    """The workout that comes next, with the coach's swaps."""
    if programme is None or not programme.workouts:
        return None
    return ordered(programme.workouts[row.profile.workout % len(programme.workouts)], row.orders, day=today)
