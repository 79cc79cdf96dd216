"""The end of the client's day: an unreported session is asked about once, and the coach is told."""

from datetime import timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.card import card, card_slot
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.ending import finish
from bot.dialogue.incoming import Due, RuleKind, Tapped
from bot.dialogue.turn import RuleSet, Turn
from bot.dialogue.underway import UnderWay
from bot.saying import Button, Rows, Say, Strip, Toast, Urgency, line
from bot.training.calendar import instant, local_day
from bot.training.facts import Ending, MissNoted, SessionEnded, SessionMoved
from bot.training.people import Standing
from bot.training.session import Session

MOVE_DAYS = (1, 2, 3)


def cutoff(desk: Desk, client: ClientDesk, due: Due) -> Turn:
    """The cut-off: a session with reports is closed, one without is asked about; both only once."""
    me, session = client.profile, client.session
    day = local_day(due.due_at, me.zone)
    if me.standing is not Standing.ACTIVE:
        return Turn(skipped=f"client is {me.standing.value}")
    if session is None or session.day != day:
        return Turn(skipped="no session today")
    if session.ended is not None:
        return Turn(skipped="already ended")
    if session.reports:
        return finish(desk, UnderWay(client, session), urgency=Urgency.NOTICE)
    if session.miss_noted:
        return Turn(skipped="already asked")
    return _missed(client, session)


def _missed(client: ClientDesk, session: Session) -> Turn:
    me, coach = client.profile, client.coach
    rows: Rows = (
        (Button(line("missed-did"), show_press("did", session.token)),),
        tuple(
            Button(line("missed-move", day=session.day + timedelta(days=n)), show_press("move", session.token, n))
            for n in MOVE_DAYS[:2]
        ),
        (Button(line("missed-skip"), show_press("skipday", session.token)),),
    )
    ask = Say(
        me.chat,
        (line("missed-ask", title=session.plan.title),),
        rows,
        slot=f"missed:{session.id}",
        urgency=Urgency.NOTICE,
    )
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
    )
    return Turn((MissNoted(session.id),), (ask, tell))


def did(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """They trained after all: the card again, reports may still come."""
    del desk, press
    session = client.session
    if session is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    said = Say(tap.chat, (line("missed-tell-me"),), slot=f"missed:{session.id}")
    again = card(UnderWay(client, session), fresh=True, urgency=Urgency.REPLY)
    return Turn(says=(Toast(tap.query), said, again))


def move(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """To another day: the session comes again then, at the client's hour; the coach sees where it went."""
    me, session, days = client.profile, client.session, press.number(0)
    if session is None or session.ended or session.reports or days not in MOVE_DAYS:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    to = max(session.day, local_day(desk.now, me.zone) - timedelta(days=1)) + timedelta(days=days)
    comes = RuleSet(
        me.id, RuleKind.SESSION, me.zone, once_at=instant(to, me.trains.at, me.zone), ref=f"moved:{session.id}"
    )
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
        (comes,),
    )


def skip_day(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Given up: the programme goes on with the next workout."""
    del desk, press
    session = client.session
    if session is None or session.ended:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
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
