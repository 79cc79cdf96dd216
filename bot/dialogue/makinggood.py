"""What was given for time earlier in the week may come back: a later session offers a set more, where it has room.

Which sets, and whether there is room for them, `training.put_right` says; nothing is added without a tap.
"""

from collections.abc import Collection, Mapping
from dataclasses import replace
from datetime import date
from decimal import Decimal

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.cardkeys import back_button
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.phrases import joined
from bot.dialogue.pointing import point_at, pointed
from bot.dialogue.replanning import keep_plan, more_slot
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.saying import Button, Rows, Say, Toast, line
from bot.training.calendar import monday_of
from bot.training.facts import PlanChanged
from bot.training.people import Standing
from bot.training.plan import PlannedExercise
from bot.training.put_right import LaterDay, put_right, with_one_more
from bot.training.replanned import SetMore, Shorter
from bot.training.session import Session
from bot.training.timing import session_minutes

MOST = 2
"""Sets that are offered. Ours."""
LONGER_BY = 5
"""Minutes that a session may get longer where its workout has no minutes of its own. Ours."""


def given_up(sessions: Collection[Session]) -> dict[str, Decimal]:
    """Hard sets by muscle that went for time in these sessions, and have not been put in again."""
    total: dict[str, Decimal] = {}
    for session in sessions:
        for why in (change.why for change in session.changes):
            if isinstance(why, Shorter):
                for muscle, sets in why.given_up:
                    total[muscle] = total.get(muscle, Decimal(0)) + sets
            elif isinstance(why, SetMore):
                for muscle in session.exercise(why.exercise).muscles:
                    total[muscle] = total.get(muscle, Decimal(0)) - 1
    return {muscle: sets for muscle, sets in sorted(total.items()) if sets > 0}


def offer(at: UnderWay) -> tuple[Say, ...]:
    """Beside the card of a session, where something may come back today; nothing where nothing may."""
    session, lost = at.session, _lost(at)
    names = _room_for(at, lost)[:MOST]
    if not names:
        return ()
    what = joined([line("week-given-muscle", muscle=muscle, sets=sets) for muscle, sets in lost.items()])
    rows: Rows = tuple(
        (Button(line("more-one", name=n), show_press("more", session.token, point_at(session, n))),) for n in names
    )
    return (Say(at.client.profile.chat, (line("more-ask", what=what),), rows, slot=more_slot(session), silent=True),)


def more(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The set more, where there is still room for it."""
    del desk
    session = pressed_session(client, press)
    exercise = None if session is None else pointed(session, press)
    if session is None or exercise is None or client.profile.standing is not Standing.ACTIVE:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    at = UnderWay(client, session)
    if session.ended is not None or exercise.name not in _room_for(at, _lost(at)):
        return Turn(
            says=(Toast(tap.query, line("more-none")), Say(tap.chat, (line("more-none"),), slot=more_slot(session)))
        )
    after, turn = keep_plan(at, _grown(session, exercise))
    button = back_button(after.session)
    rows: Rows = () if button is None else ((button,),)
    said = Say(tap.chat, (line("more-done", name=exercise.name),), rows, slot=more_slot(session))
    return Turn(says=(Toast(tap.query),)) + turn + Turn(says=(said,))


def _grown(session: Session, exercise: PlannedExercise) -> PlanChanged:
    grown = tuple(with_one_more(e) if e is exercise else e for e in session.plan.exercises)
    plan = replace(session.plan, exercises=grown, minutes=session_minutes(grown))
    return PlanChanged(session.id, plan, SetMore(exercise.name))


def _lost(at: UnderWay) -> dict[str, Decimal]:
    return given_up(_of_week(at)) if not any(isinstance(c.why, SetMore) for c in at.session.changes) else {}


def _of_week(at: UnderWay) -> list[Session]:
    """The sessions of the same week before this one."""
    day = at.session.day
    return [s for s in at.client.week if monday_of(s.day) == monday_of(day) and s.day < day]


def _room_for(at: UnderWay, lost: Mapping[str, Decimal]) -> tuple[str, ...]:
    """The exercises of which one set more brings something back, by the room and the rest that there is."""
    session, programme = at.session, at.client.programme
    if not lost:
        return ()
    workout = None if programme is None else programme.workouts[session.workout % len(programme.workouts)]
    own = None if workout is None else workout.minutes
    minutes = max(own, session.plan.minutes) if own is not None else session.plan.minutes + LONGER_BY
    still_open = tuple(e for e in session.plan.exercises if not session.is_complete(e))
    held = {name for name, _ in at.client.held} | {e.name for e in session.plan.exercises if e not in still_open}
    later = LaterDay(session.day, session.plan.exercises, Decimal(minutes))
    found = put_right(lost, (later,), worked=_worked(at), held=held)
    return tuple(item.exercise for item in found.more)


def _worked(at: UnderWay) -> dict[str, set[date]]:
    """The days on which each muscle was worked directly, this week and the one before."""
    days: dict[str, set[date]] = {}
    for session in (*at.client.last_week, *at.client.week):
        if session.id != at.session.id:
            for muscle in {m for p in session.done for m in session.exercise(p.exercise).muscles}:
                days.setdefault(muscle, set()).add(session.day)
    return days
