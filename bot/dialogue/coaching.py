"""A coach arrives by the operator's link, sets their clock and the hour of the digest, and invites clients."""

from dataclasses import replace
from datetime import time, timedelta
from hashlib import sha256
from urllib.parse import quote

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import CoachDesk, Desk
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.naming import LONGEST_NAME, read_name
from bot.dialogue.rules import digest_rule
from bot.dialogue.saytime import read_time
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, Line, Menu, Rows, Say, Strip, Toast, line
from bot.training.calendar import is_zone, local_time, places_at
from bot.training.facts import CoachChanged, CoachJoined, InviteMade
from bot.training.people import Coach

DIGEST_HOURS = (time(6), time(7), time(8), time(9), time(18), time(20))
USUAL_DIGEST = time(7)
INVITE_LASTS = timedelta(days=7)
SLOT = "question"
ASKED_FOR = timedelta(minutes=30)


def joined(desk: Desk, typed: Typed) -> Turn:
    """The operator's link was followed: this chat is a coach's now."""
    invite = desk.invite
    if invite is None or not invite.is_open or invite.coach:
        return Turn(says=(Say(typed.chat, (line("invite-spent"),)),))
    name = read_name(typed.first_name) or "Coach"
    fact = CoachJoined(desk.tokens[0][:16], typed.chat, name, "UTC", USUAL_DIGEST, invite.token_hash)
    coach = Coach(fact.coach, fact.chat, fact.name, fact.zone, fact.digest_at)
    return Turn(
        (fact,),
        (Say(typed.chat, (line("coach-hello", name=name),)), Menu(typed.chat, "coach")),
        (digest_rule(coach),),
    ) + _ask_clock(desk, coach, ())


def settings(desk: Desk, coach: CoachDesk) -> Turn:
    """`/settings` of a coach: name, clock and the digest's hour."""
    me = coach.profile
    lines = (
        line("coach-settings-title"),
        line("settings-name", name=me.name),
        line("settings-zone", zone=_city(me.zone)),
        line("coach-settings-digest", time=me.digest_at),
        line("coach-settings-now", time=local_time(desk.now, me.zone)),
    )
    rows: Rows = (
        (Button(line("settings-change-name"), show_press("c.ask", "", "name")),),
        (Button(line("settings-change-clock"), show_press("c.ask", "", "clock")),),
        (Button(line("coach-change-digest"), show_press("c.ask", "", "hour")),),
    )
    return Turn(says=(Say(me.chat, lines, rows, slot="settings", fresh=True),), keeps=(TalkSet(me.chat, None),))


def ask(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """A button of the coach's settings."""
    toast = Turn(says=(Toast(tap.query),))
    match press.args:
        case ("clock",):
            return _for_a_while(desk, toast + _ask_clock(desk, coach.profile, ()))
        case ("hour",):
            return _for_a_while(desk, toast + _ask_hour(coach.profile))
        case ("name",):
            chat = coach.profile.chat
            talk = TalkSet(chat, Talk("coach", "name"))
            return _for_a_while(desk, toast + Turn(says=(Say(chat, (line("coach-ask-name"),)),), keeps=(talk,)))
        case _:
            return Turn(says=(Toast(tap.query, line("toast-old")),))


def _for_a_while(desk: Desk, turn: Turn) -> Turn:
    """A question of the settings: what is typed much later is no answer to it, but a message again."""
    ends = desk.now + ASKED_FOR
    kept = tuple(
        replace(k, talk=replace(k.talk, expires_at=ends)) if isinstance(k, TalkSet) and k.talk is not None else k
        for k in turn.keeps
    )
    return replace(turn, keeps=kept)


def typed(desk: Desk, coach: CoachDesk, incoming: Typed) -> Turn:
    """A typed answer to the coach's own questions."""
    me = coach.profile
    step = desk.talk.step if desk.talk else ""
    if step == "name":
        name = read_name(incoming.text)
        if not any(c.isalpha() for c in name) or len(" ".join(incoming.text.split())) > LONGEST_NAME:
            return Turn(says=(Say(me.chat, (line("name-misread", longest=LONGEST_NAME),)),))
        return Turn((CoachChanged(me.id, name=name),), _saved(me), (TalkSet(me.chat, None),))
    if is_zone(incoming.text.strip()):
        return _for_a_while(desk, _zone_chosen(me, incoming.text.strip()))
    wall = read_time(incoming.text)
    if wall is None:
        return Turn(says=(Say(me.chat, (line("clock-misread"),)),))
    if step == "hour":
        return _hour_chosen(me, wall)
    places = places_at(desk.now, wall, first=(me.zone,))
    if not places:
        return Turn(says=(Say(me.chat, (line("clock-nowhere", time=wall),)),))
    return _ask_clock(desk, me, tuple(p.zone for p in places[:6]))


def tapped(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """A button under the coach's own questions: a zone, or an hour."""
    toast = Turn(says=(Toast(tap.query),))
    match press.args:
        case ("zone", zone) if is_zone(zone):
            return _for_a_while(desk, toast + _zone_chosen(coach.profile, zone))
        case ("hour", hour) if hour.isascii() and hour.isdigit() and int(hour) < 24:
            return toast + _hour_chosen(coach.profile, time(int(hour)))
        case _:
            return Turn(says=(Toast(tap.query, line("toast-old")),))


def invite(desk: Desk, coach: CoachDesk) -> Turn:
    """`/invite`: a link for one client, good for a week. Only its hash is kept."""
    token = f"c{desk.tokens[0]}"
    expires = desk.now + INVITE_LASTS
    link = f"https://t.me/{desk.house.bot_name}?start={token}"
    share = f"https://t.me/share/url?url={quote(link, safe='')}"
    me = coach.profile
    lines = (
        line("invite-made", day=local_time(expires, me.zone).date()),
        line("invite-link", link=link),
        line("invite-how"),
    )
    rows: Rows = ((Button(line("invite-share"), url=share), Button(line("invite-copy"), copy=link)),)
    fact = InviteMade(me.id, sha256(token.encode()).hexdigest(), expires)
    return Turn((fact,), (Say(me.chat, lines, rows),))


def _ask_clock(desk: Desk, coach: Coach, zones: tuple[str, ...]) -> Turn:
    if zones:
        buttons = [Button(line("clock-place", city=_city(z)), show_press("c.set", "", "zone", z)) for z in zones]
        rows: Rows = tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))
        say = Say(coach.chat, (line("coach-clock-place"),), rows, slot=SLOT, fresh=True)
    else:
        say = Say(coach.chat, (line("coach-clock", time=local_time(desk.now, coach.zone)),), slot=SLOT, fresh=True)
    return Turn(says=(say,), keeps=(TalkSet(coach.chat, Talk("coach", "clock")),))


def _ask_hour(coach: Coach) -> Turn:
    buttons = [Button(line("hour-off", time=h), show_press("c.set", "", "hour", h.hour)) for h in DIGEST_HOURS]
    rows: Rows = (tuple(buttons[:3]), tuple(buttons[3:]))
    say = Say(coach.chat, (line("coach-digest-hour"),), rows, slot=SLOT, fresh=True)
    return Turn(says=(say,), keeps=(TalkSet(coach.chat, Talk("coach", "hour")),))


def _zone_chosen(coach: Coach, zone: str) -> Turn:
    moved = Coach(coach.id, coach.chat, coach.name, zone, coach.digest_at)
    return Turn((CoachChanged(coach.id, zone=zone),), (), (digest_rule(moved),)) + _ask_hour(moved)


def _hour_chosen(coach: Coach, at: time) -> Turn:
    moved = Coach(coach.id, coach.chat, coach.name, coach.zone, at)
    lines: tuple[Line, ...] = (line("coach-ready", time=at), line("coach-ready-next"))
    return Turn(
        (CoachChanged(coach.id, digest_at=at),),
        (Strip(coach.chat, slot=SLOT), Say(coach.chat, lines)),
        (digest_rule(moved), TalkSet(coach.chat, None)),
    )


def _saved(coach: Coach) -> tuple[Say, ...]:
    return (Say(coach.chat, (line("settings-saved"),)),)


def _city(zone: str) -> str:
    return zone.rsplit("/", 1)[-1].replace("_", " ")
