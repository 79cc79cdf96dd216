"""Time zones on a journey: said in words or set in `/settings`, everything comes by the new clock, once, and what the
new clock has already passed is not lost."""

from dataclasses import replace
from datetime import date, time, timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import RuleKind, Tapped, Typed
from bot.dialogue.missing import MORNING, late_ref
from bot.dialogue.placewords import read_place
from bot.dialogue.rules import training_rules
from bot.dialogue.turn import RuleSet, Talk, TalkSet, Turn
from bot.saying import Button, Rows, Say, Toast, line
from bot.training.calendar import Place, cutoff_of, instant, is_zone, local_day, local_time
from bot.training.coming import is_training_day
from bot.training.facts import ProfileChanged
from bot.training.people import Client, Standing

SLOT = "clock"
HERE = "here"
"""What a rule is about that brings the session whose hour the new clock has passed."""
ASKED_FOR = timedelta(minutes=30)


def place_said(desk: Desk, client: ClientDesk, typed: Typed) -> Turn | None:
    """Where they say that they are, if that is another clock: offered with the time there; `None` for other words."""
    me, zone = client.profile, read_place(typed.text)
    if zone is None or me.standing not in (Standing.ACTIVE, Standing.PAUSED):
        return None
    if not zone:
        talk = Talk("settings", "clock", expires_at=desk.now + ASKED_FOR)
        asked = Say(typed.chat, (line("enrol-clock"),), slot="question", fresh=True)
        return Turn(says=(asked,), keeps=(TalkSet(typed.chat, talk),))
    here, there = local_time(desk.now, me.zone), local_time(desk.now, zone)
    if here.utcoffset() == there.utcoffset():
        return None
    city = Place(zone).city
    yes = Button(line("clock-by", city=city), show_press("clockto", "", zone))
    no = Button(line("clock-stay", city=Place(me.zone).city), show_press("clockto", "", me.zone))
    rows: Rows = ((yes,), (no,))
    return Turn(says=(Say(typed.chat, (line("clock-ask", city=city, time=there),), rows, slot=SLOT, fresh=True),))


def by_button(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """By that place's clock from now on."""
    me, zone = client.profile, press.args[0] if press.args else ""
    if "/" not in zone or not is_zone(zone) or me.standing not in (Standing.ACTIVE, Standing.PAUSED):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    told = Say(me.chat, (line("clock-set", city=Place(zone).city, time=local_time(desk.now, zone)),), slot=SLOT)
    if zone == me.zone:
        return Turn(says=(Toast(tap.query), told))
    return Turn((ProfileChanged(me.id, zone=zone),), (Toast(tap.query), told)) + moved_to(desk, client, zone)


def moved_to(desk: Desk, client: ClientDesk, zone: str) -> Turn:
    """What follows from another zone, beside the fact: rules by the new clock; today's session, where its hour has
    passed there but not yet come; and an open session of a day that is over there, which is asked about."""
    me = client.profile
    if me.standing is not Standing.ACTIVE:
        return Turn()
    keeps = [*training_rules(replace(me, zone=zone))]
    today = local_day(desk.now, zone)
    if is_training_day(client.life, me.trains, today) and _passed_by(desk, me, zone, today, me.trains.at):
        keeps.append(RuleSet(me.id, RuleKind.SESSION, zone, once_at=desk.now, ref=f"{HERE}:{today.isoformat()}"))
    session = client.session
    if session is not None and session.ended is None and _passed_by(desk, me, zone, session.day, cutoff_of(me.trains)):
        at = instant(max(today, session.day + timedelta(days=1)), MORNING, zone)
        once_at = at if at > desk.now else desk.now + timedelta(hours=1)
        keeps.append(RuleSet(me.id, RuleKind.CUTOFF, zone, once_at=once_at, ref=late_ref(session)))
    return Turn(keeps=tuple(keeps))


def _passed_by(desk: Desk, me: Client, zone: str, day: date, at: time) -> bool:
    """Whether the new clock has passed this hour of the day, and the old one had not come to it."""
    return instant(day, at, zone) <= desk.now < instant(day, at, me.zone)
