"""The end of the client's day: an unreported session is asked about once, and the coach is told."""

from dataclasses import replace
from datetime import date, datetime, time, timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.card import card, card_slot
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.ending import finish
from bot.dialogue.incoming import Due, RuleKind, Tapped
from bot.dialogue.turn import RuleSet, Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.saying import Button, Rows, Say, Strip, Toast, Urgency, line
from bot.training.calendar import instant, is_night, local_day, local_time
from bot.training.facts import Ending, MissNoted, SessionEnded, SessionMoved
from bot.training.people import Standing
from bot.training.session import Session

MOVE_DAYS = 2
"""So many days are offered to move a session to."""
FARTHEST_MOVE = timedelta(days=7)
STILL_AT_IT = timedelta(minutes=30)
"""Who reported so recently at the cut-off is not done yet."""
LOOK_AGAIN = timedelta(hours=1)
MAY_TRAIN = timedelta(minutes=75)
"""So long after the training hour nobody is asked where the session is; ours, for those who train near midnight."""
LATE = "late:"
"""What a rule is about that looks at a session again: with the session's id after it."""
MORNING = time(9, 0)
"""When a session of late at night is asked about instead."""


def cutoff(desk: Desk, client: ClientDesk, due: Due) -> Turn:
    """The cut-off: a session with reports is closed, one without is asked about; both only once.

    Whoever still reports, or trains late, is left in peace: it is looked at again later. A session of the day before
    that is still open (a late report took it up again, or we were down) is closed or asked about, too.
    """
    me, session = client.profile, client.session
    day = local_day(due.due_at, me.zone)
    if me.standing is not Standing.ACTIVE:
        return Turn(skipped=f"client is {me.standing.value}")
    if session is None or session.day > day:
        return Turn(skipped="no session today")
    if session.ended is not None:
        return Turn(skipped="already ended")
    if session.reports:
        again = desk.now + LOOK_AGAIN
        if session.last_at is not None and desk.now - session.last_at < STILL_AT_IT:
            return Turn(keeps=(_look_again(client, session, again),), skipped="still reporting")
        return finish(desk, UnderWay(client, session), urgency=Urgency.NOTICE)
    if session.miss_noted:
        return Turn(skipped="already asked")
    if desk.now - instant(session.day, me.trains.at, me.zone) < MAY_TRAIN:
        morning = instant(session.day + timedelta(days=1), MORNING, me.zone)
        return Turn(keeps=(_look_again(client, session, morning),), skipped="may still train")
    return _missed(desk, client, session)


def may_still_train(desk: Desk, client: ClientDesk) -> bool:
    """Whether a session is open whose hour was a short while ago, or of which sets have just come."""
    session, me = client.session, client.profile
    if session is None or session.ended is not None:
        return False
    if session.last_at is not None:
        return desk.now - session.last_at < STILL_AT_IT
    return timedelta() <= desk.now - instant(session.day, me.trains.at, me.zone) < MAY_TRAIN


def _look_again(client: ClientDesk, session: Session, at: datetime) -> RuleSet:
    me = client.profile
    return RuleSet(me.id, RuleKind.CUTOFF, me.zone, once_at=at, ref=late_ref(session))


def late_ref(session: Session) -> str:
    """What a second look at this session is about."""
    return f"{LATE}{session.id}"


def _missed(desk: Desk, client: ClientDesk, session: Session) -> Turn:
    me, coach = client.profile, client.coach
    coach_rows: Rows = (
        (Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),
        (Button(line("open-client", name=me.name), show_press("c.open", me.id)),),
        (Button(line("handled-missed", name=me.name), show_press("c.handled", me.id, f"s{session.id}")),),
    )
    tell = Say(
        coach.chat,
        (line("alert-missed", name=me.name, title=session.plan.title, day=session.day),),
        coach_rows,
        slot=f"alert:s{session.id}",
        about=me.id,
        urgency=Urgency.NOTICE,
        silent=is_night(local_time(desk.now, coach.zone)),
    )
    return Turn((MissNoted(session.id),), (_ask(desk, client, session), tell))


def _ask(desk: Desk, client: ClientDesk, session: Session) -> Say:
    """What happened? With the next days to move it to, as from now."""
    me = client.profile
    today = local_day(desk.now, me.zone)
    first = max(session.day + timedelta(days=1), today)
    days = [first + timedelta(days=n) for n in range(MOVE_DAYS)]
    rows: Rows = (
        (Button(line("missed-did"), show_press("did", session.token)),),
        tuple(Button(line("missed-move", day=d), show_press("move", session.token, d.isoformat())) for d in days),
        (Button(line("missed-skip"), show_press("skipday", session.token)),),
    )
    asked = line("missed-ask", title=session.plan.title)
    if session.day != today:
        asked = line("missed-ask-day", title=session.plan.title, day=session.day)
    return Say(me.chat, (asked,), rows, slot=f"missed:{session.id}", fresh=True, urgency=Urgency.NOTICE)


def ask_where_to(desk: Desk, client: ClientDesk, session: Session) -> Say:
    """They give the day up in words: the same choice as at the cut-off, without waiting for it."""
    return replace(_ask(desk, client, session), fresh=True, urgency=Urgency.REPLY)


def did(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """They trained after all: the card again, reports may still come."""
    del desk
    session = pressed_session(client, press)
    if session is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    said = Say(tap.chat, (line("missed-tell-me"),), slot=f"missed:{session.id}")
    again = card(UnderWay(client, session), fresh=True, urgency=Urgency.REPLY)
    return Turn(says=(Toast(tap.query), said, again))


def move(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """To another day: the session comes again then, at the client's hour; the coach sees where it went."""
    me, session, to = client.profile, pressed_session(client, press), _day(press)
    if session is None or to is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if session.ended or session.reports:
        return Turn(says=(Toast(tap.query, line("toast-reported")),))
    today = local_day(desk.now, me.zone)
    if to == session.day:
        return Turn(says=(Toast(tap.query, line("toast-moved", day=to)),))
    if not today <= to <= today + FARTHEST_MOVE:
        return Turn(says=(Toast(tap.query, line("toast-read-anew")), _ask(desk, client, session)))
    at = instant(to, me.trains.at, me.zone)
    comes = RuleSet(me.id, RuleKind.SESSION, me.zone, once_at=at, ref=f"moved:{session.id}")
    if at <= desk.now:
        now = card(UnderWay(client, replace(session, day=to)), fresh=True, urgency=Urgency.REPLY)
        return _moved(client, session, tap, to) + Turn(says=(now,))
    return _moved(client, session, tap, to) + Turn(keeps=(comes,))


def _day(press: Press) -> date | None:
    try:
        return date.fromisoformat(press.args[0]) if press.args else None
    except ValueError:
        return None


def _moved(client: ClientDesk, session: Session, tap: Tapped, to: date) -> Turn:
    me = client.profile
    return Turn(
        (SessionMoved(session.id, to),),
        (
            Toast(tap.query),
            Strip(me.chat, slot=card_slot(session.id)),
            Say(me.chat, (line("missed-moved", title=session.plan.title, day=to),), slot=f"missed:{session.id}"),
            Say(
                client.coach.chat,
                (line("coach-moved", name=me.name, title=session.plan.title, day=to),),
                slot=f"alert:s{session.id}",
                about=me.id,
                urgency=Urgency.NOTICE,
                silent=True,
            ),
        ),
    )


def skip_day(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Given up: the programme goes on with the next workout. What has reports by now is not given up."""
    del desk
    session = pressed_session(client, press)
    if session is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if session.ended or session.reports:
        return Turn(says=(Toast(tap.query, line("toast-ended" if session.ended else "toast-reported")),))
    me = client.profile
    return Turn(
        (SessionEnded(session.id, Ending.SKIPPED),),
        (
            Toast(tap.query),
            Strip(me.chat, slot=card_slot(session.id)),
            Say(me.chat, (line("missed-skipped", title=session.plan.title),), slot=f"missed:{session.id}"),
            Say(
                client.coach.chat,
                (line("coach-skipped", name=me.name, title=session.plan.title),),
                slot=f"alert:s{session.id}",
                about=me.id,
                urgency=Urgency.NOTICE,
                silent=True,
            ),
        ),
    )
