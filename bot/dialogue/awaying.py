"""Away or ill: no sessions until a day, then they come again by themselves. Asked for by the client, or by the coach.

After an illness the first sessions are easier; when somebody is well enough to train is not ours to say."""

from datetime import date, datetime, time, timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.enrol import days_line
from bot.dialogue.incoming import Due, RuleKind, Tapped, Typed
from bot.dialogue.returning import ease_on
from bot.dialogue.rules import no_training_rules, training_rules
from bot.dialogue.sayday import read_day
from bot.dialogue.turn import RuleSet, Talk, TalkSet, Turn
from bot.saying import Button, Line, Rows, Say, Toast, Urgency, line
from bot.training.calendar import instant, is_night, local_day, local_time
from bot.training.facts import CameBack, Fact, ProfileChanged, WentAway
from bot.training.life import Absence
from bot.training.people import Client, Standing

WEEKS = (1, 2, 3)
TALK, COACHS_TALK = "away", "c-away"
LEAVE = "leave"
"""What a rule is about that begins a time away."""
ASKED_FOR = timedelta(minutes=30)
MORNING, BEFORE = time(8, 0), timedelta(minutes=30)
"""Sessions begin again in the morning, or half an hour before the training hour where that is earlier. Ours."""


# --- the client


def ask(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Away or ill, and how long?"""
    del desk, press
    if not may_go(client.profile):
        return _old(tap)
    rows = _rows("", "awayset", "awayask")
    return Turn(says=(Toast(tap.query), _asked(tap.chat, (line("away-ask"), line("away-ill-care")), rows)))


def _asked(chat: int, lines: tuple[Line, ...], rows: Rows) -> Say:
    return Say(chat, lines, rows, slot="away", fresh=True)


def by_button(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """So many weeks from today."""
    why, weeks = read_why(press), press.number(1)
    if why is None or weeks not in WEEKS or not may_go(client.profile):
        return _old(tap)
    until = local_day(desk.now, client.profile.zone) + timedelta(weeks=weeks)
    if stands(client, why, until):
        return Turn(says=(Toast(tap.query, line("toast-already-all")),))
    return Turn(says=(Toast(tap.query),)) + by_client(client, why, until)


def ask_date(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """`Until…`: the next message is a day."""
    why = read_why(press)
    if why is None or not may_go(client.profile):
        return _old(tap)
    since = read_since(press, 1) or local_day(desk.now, client.profile.zone)
    said = Say(tap.chat, (line("away-ask-date"),))
    return Turn(says=(Toast(tap.query), said), keeps=(date_talk(desk, client, why, since),))


def date_talk(desk: Desk, client: ClientDesk, why: Absence, since: date) -> TalkSet:
    """The next message may be the day on which sessions come again; away from `since` on."""
    talk = Talk(TALK, why.value, (("since", since.isoformat()),), desk.now + ASKED_FOR)
    return TalkSet(client.profile.chat, talk)


def read_since(press: Press, place: int) -> date | None:
    """A day among a button's arguments; `None` where there is none."""
    try:
        return date.fromisoformat(press.args[place]) if len(press.args) > place else None
    except ValueError:
        return None


def by_client(
    client: ClientDesk, why: Absence, until: date, *, fresh: bool = False, urgency: Urgency = Urgency.REPLY
) -> Turn:
    """Away from now on, by their own word: they and the coach read until when, and one tap goes on earlier."""
    me, coach = client.profile, client.coach
    coachs = Say(
        coach.chat,
        (line(f"coach-client-{why.value}", name=me.name, day=until),),
        about=me.id,
        urgency=Urgency.NOTICE,
        silent=True,
    )
    mine = Say(me.chat, told(why, until), go_on_row(), slot="away", fresh=fresh, urgency=urgency)
    return gone(me, why, until) + Turn(says=(mine, coachs))


# --- the coach


def coach_asks(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The same choice on the client's page."""
    del desk, press
    about = coach.about
    if about is None or not may_go(about.profile):
        return _absent(tap)
    to = about.profile
    back = Button(line("back-client", name=to.name), show_press("c.view", to.id, "clients"))
    rows = (*_rows(to.id, "c.awayset", "c.awayask"), (back,))
    say = Say(coach.profile.chat, (line("away-coach-ask", name=to.name),), rows, slot=DESK, about=to.id)
    return Turn(says=(Toast(tap.query), say))


def coach_sets(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """So many weeks from today."""
    about, why, weeks = coach.about, read_why(press), press.number(1)
    if about is None or not may_go(about.profile):
        return _absent(tap)
    if why is None or weeks not in WEEKS:
        return _old(tap)
    until = local_day(desk.now, about.profile.zone) + timedelta(weeks=weeks)
    if stands(about, why, until):
        return Turn(says=(Toast(tap.query, line("toast-already-all")),))
    return Turn(says=(Toast(tap.query),)) + _by_coach(coach, about, why, until)


def coach_asks_date(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """`Until…`: the coach's next message is a day."""
    about, why, chat = coach.about, read_why(press), coach.profile.chat
    if about is None or not may_go(about.profile):
        return _absent(tap)
    if why is None:
        return _old(tap)
    talk = Talk(COACHS_TALK, about.profile.id, (("why", why.value),), desk.now + ASKED_FOR)
    say = Say(chat, (line("away-ask-date"),), about=about.profile.id)
    return Turn(says=(Toast(tap.query), say), keeps=(TalkSet(chat, talk),))


def coach_types(desk: Desk, coach: CoachDesk, typed: Typed) -> Turn:
    """The day that was asked for; anything else is asked again."""
    about, chat = coach.about, coach.profile.chat
    if about is None or desk.talk is None or not may_go(about.profile):
        return Turn(says=(Say(chat, (line("not-available"),)),), keeps=(TalkSet(chat, None),))
    until = read_day(typed.text, local_day(desk.now, about.profile.zone))
    if until is None:
        return Turn(says=(Say(chat, (line("away-misread", words=typed.text[:40]),)),))
    why = Absence(desk.talk.get("why"))
    return _by_coach(coach, about, why, until) + Turn(keeps=(TalkSet(chat, None),))


def _by_coach(coach: CoachDesk, about: ClientDesk, why: Absence, until: date) -> Turn:
    to, me = about.profile, coach.profile
    mine = Say(me.chat, (line(f"coach-client-{why.value}", name=to.name, day=until),), about=to.id)
    theirs = (line("away-by-coach", coach=me.name), *told(why, until))
    return gone(to, why, until) + Turn(
        says=(mine, Say(to.chat, theirs, go_on_row(), slot="away", fresh=True, about=me.id))
    )


# --- gone, and back


def stands(client: ClientDesk, why: Absence, until: date) -> bool:
    """Whether it is so already: a second tap."""
    away = client.life.away
    return away is not None and (away.why, away.until) == (why, until)


def gone(me: Client, why: Absence, until: date) -> Turn:
    """Nothing comes from now on, until that day's morning."""
    facts: tuple[Fact, ...] = (WentAway(me.id, why, until), ProfileChanged(me.id, standing=Standing.PAUSED))
    resumes = RuleSet(me.id, RuleKind.RESUME, me.zone, once_at=begins_at(me, until))
    return Turn(facts, keeps=(*no_training_rules(me), resumes))


def begins_at(me: Client, day: date) -> datetime:
    """When a day begins or ends an absence: before a session of it could come."""
    earlier = datetime.combine(date(2000, 1, 2), me.trains.at) - BEFORE
    at = earlier.time() if earlier.date() == date(2000, 1, 2) else time(0, 0)
    return instant(day, min(MORNING, at), me.zone)


def resume(desk: Desk, client: ClientDesk, due: Due) -> Turn:
    """The day has come: sessions again, unless somebody went on before, or the coach's word is still awaited."""
    me, coach, away = client.profile, client.coach, client.life.away
    if due.ref:
        return leave(desk, client, due)
    if me.standing is not Standing.PAUSED or away is None or away.until is None:
        return Turn(skipped="not away")
    if me.readiness_flagged:
        return Turn(skipped="waits for the coach")
    if local_day(due.due_at, me.zone) < away.until:
        return Turn(skipped="away for longer")
    lines: list[Line] = [line("away-back", name=me.name, days=days_line(me.trains), time=me.trains.at)]
    if away.why is Absence.ILL:
        lines.append(line("away-back-ill"))
    elif not ease_on(client, local_day(desk.now, me.zone)).is_full:
        lines.append(line("away-back-easier"))
    more = Button(line("away-longer"), show_press("away"))
    told = Say(
        coach.chat,
        (line("coach-client-back", name=me.name),),
        about=me.id,
        urgency=Urgency.NOTICE,
        silent=True,
    )
    says = (Say(me.chat, tuple(lines), ((more,),), slot="away", fresh=True, urgency=Urgency.NOTICE), told)
    return Turn((ProfileChanged(me.id, standing=Standing.ACTIVE), CameBack(me.id)), says, training_rules(me))


def leave(desk: Desk, client: ClientDesk, due: Due) -> Turn:
    """The first day of a time away that was told before: nothing comes from now on."""
    me, told_before, away = client.profile, read_leave(due.ref), client.life.away
    if told_before is None or not may_go(me):
        return Turn(skipped="not training")
    why, until = told_before
    if me.standing is Standing.PAUSED and (away is None or away.until is None or until <= away.until):
        return Turn(skipped="away already")
    if until <= local_day(desk.now, me.zone):
        return Turn(skipped="over before it began")
    return by_client(client, why, until, fresh=True, urgency=Urgency.NOTICE)


def leave_rule(me: Client, why: Absence, since: date, until: date, *, off: bool = False) -> RuleSet:
    """What begins a time away on a day to come; `off` takes it back."""
    once_at = None if off else begins_at(me, since)
    return RuleSet(me.id, RuleKind.RESUME, me.zone, once_at=once_at, ref=f"{LEAVE}:{why.value}:{until.isoformat()}")


def read_leave(ref: str) -> tuple[Absence, date] | None:
    """Why and until when, as `leave_rule` has them in its `ref`."""
    parts = ref.split(":")
    if len(parts) != 3 or parts[0] != LEAVE:
        return None
    return Absence(parts[1]), date.fromisoformat(parts[2])


def stop_quietly(desk: Desk, client: ClientDesk) -> Turn:
    """Two weeks without a word: no more reminders; one tap goes on, and the coach is told once."""
    me, coach = client.profile, client.coach
    told = Say(
        coach.chat,
        (line("coach-client-quiet", name=me.name),),
        ((Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),),
        about=me.id,
        urgency=Urgency.NOTICE,
        silent=is_night(local_time(desk.now, coach.zone)),
    )
    mine = Say(
        me.chat, (line("quiet-stopped", name=me.name),), go_on_row(), slot="away", fresh=True, urgency=Urgency.NOTICE
    )
    facts = (WentAway(me.id, Absence.QUIET), ProfileChanged(me.id, standing=Standing.PAUSED))
    return Turn(facts, (mine, told), no_training_rules(me))


# --- words and buttons


def told(why: Absence, until: date) -> tuple[Line, ...]:
    """Until when nothing comes, in words."""
    if why is Absence.ILL:
        return line("ill-set", day=until), line("away-ill-care")
    return (line("away-set", day=until),)


def _rows(ref: str, sets: str, asks: str) -> Rows:
    away = tuple(Button(line("away-weeks", weeks=n), show_press(sets, ref, "away", n)) for n in WEEKS)
    ill = tuple(Button(line("ill-weeks", weeks=n), show_press(sets, ref, "ill", n)) for n in WEEKS)
    until = (
        Button(line("away-until"), show_press(asks, ref, "away")),
        Button(line("ill-until"), show_press(asks, ref, "ill")),
    )
    return away, ill, until


def go_on_row() -> Rows:
    """The tap that goes on."""
    return ((Button(line("settings-go-on"), show_press("go-on")),),)


def read_why(press: Press) -> Absence | None:
    """Away or ill, as a button says; `None` where it says neither."""
    said = press.args[0] if press.args else ""
    return Absence(said) if said in (Absence.AWAY, Absence.ILL) else None


def may_go(me: Client) -> bool:
    """Whether sessions of theirs may be stopped and begin again by themselves."""
    return me.standing in (Standing.ACTIVE, Standing.PAUSED) and not me.readiness_flagged


def _old(tap: Tapped) -> Turn:
    return Turn(says=(Toast(tap.query, line("toast-old")),))


def _absent(tap: Tapped) -> Turn:
    return Turn(says=(Toast(tap.query, line("not-available")),))
