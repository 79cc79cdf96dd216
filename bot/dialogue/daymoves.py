"""A day of the week moved, or given up and its work laid over the others; the last change taken back.

A day that has its session already moves by its card's own button; given up, it is laid anew like the others. Nothing is
kept before the button that says so.
"""

from dataclasses import replace
from datetime import date, timedelta

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.card import card_slot
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.givingup import also_given_up, read_given_up
from bot.dialogue.incoming import RuleKind, Tapped, Typed
from bot.dialogue.missing import ask_where_to
from bot.dialogue.phrases import joined
from bot.dialogue.thisweek import SLOT, ahead, coming_line, is_near, old_button, page, read_day, trainee_of
from bot.dialogue.turn import RuleSet, Turn
from bot.notation.pain import told_pain
from bot.saying import BLANK, Button, Line, Say, Saying, Strip, Toast, line
from bot.training.calendar import instant, local_day, monday_of
from bot.training.coming import ComingDay, Trainee, free_days, moved, week_of, workout_on
from bot.training.facts import Ending, Fact, SessionEnded, SessionReopened, WeekLaid
from bot.training.life import DayChange, LaidDay, LaidWeek, WasLaid, with_week
from bot.training.lost_day import Behind, Relaid, lay_rest, room_of
from bot.training.people import Standing
from bot.training.session import Session


def day_page(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A day's choices: the days to move it to, or to give it up."""
    day = read_day(press, 0)
    found = None if day is None else choices(desk, client, day)
    return old_button(tap) if found is None else Turn(says=(Toast(tap.query), found))


def choices(desk: Desk, client: ClientDesk, day: date, *, fresh: bool = False) -> Say | None:
    """What may become of this day; `None` where it holds nothing that can still move."""
    of = trainee_of(client)
    if of is None or not is_near(desk, client, day):
        return None
    monday, me = monday_of(day), client.profile
    coming, session = ahead(desk, client, of, monday), _card_on(client, day)
    held = coming.on(day)
    if held is None and session is None:
        return None
    today = local_day(desk.now, me.zone)
    is_over = instant(today, me.trains.at, me.zone) <= desk.now
    first = today + timedelta(days=1) if is_over else today
    sessions = client.week if monday == monday_of(today) else ()
    free = [d for d in free_days(coming, monday, first, sessions) if d != day]
    rows = [tuple(_move_button(session, day, d) for d in free[n : n + 3]) for n in range(0, len(free), 3)]
    rows.append((Button(line("days-lose"), show_press("wklose", "", day.isoformat())),))
    rows.append((Button(line("days-back"), show_press("wk", "", monday.isoformat())),))
    title = session.plan.title if session is not None else held.workout.title if held is not None else ""
    return Say(me.chat, (line("days-which", day=day, title=title),), tuple(rows), slot=SLOT, fresh=fresh)


def _move_button(session: Session | None, day: date, to: date) -> Button:
    label = line("missed-move", day=to)
    if session is not None:
        return Button(label, show_press("move", session.token, to.isoformat()))
    return Button(label, show_press("wkgo", "", day.isoformat(), to.isoformat()))


def move(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A day without a session yet comes on another one."""
    day, to, of = read_day(press, 0), read_day(press, 1), trainee_of(client)
    if day is None or to is None or of is None or not is_near(desk, client, day) or monday_of(to) != monday_of(day):
        return old_button(tap)
    me, monday = client.profile, monday_of(day)
    coming = ahead(desk, client, of, monday)
    today = local_day(desk.now, me.zone)
    sessions = client.week if monday == monday_of(today) else ()
    if coming.on(day) is None and coming.on(to) is not None:
        return Turn(says=(Toast(tap.query, line("toast-moved", day=to)),))
    if coming.on(day) is None or to not in free_days(coming, monday, today, sessions):
        return _again(desk, client, tap, monday)
    if instant(to, me.trains.at, me.zone) <= desk.now:
        return _again(desk, client, tap, monday)
    week = week_of(of, today, monday, moved(coming, day, to), sessions)
    return Turn(says=(Toast(tap.query),)) + _kept(desk, client, week, DayChange(desk.now, day, to))


# --- a day given up


def lose(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """How the rest of the week would be without this day: to be agreed to with one tap."""
    day, of = read_day(press, 0), trainee_of(client)
    lost = None if day is None or of is None else _lost(desk, client, of, day)
    if day is None or of is None or lost is None:
        return old_button(tap)
    return Turn(says=(Toast(tap.query), _asked(desk, client, of, lost, _proposal(desk, client, of, lost))))


def _asked(desk: Desk, client: ClientDesk, of: Trainee, lost: ComingDay, found: Relaid) -> Say:
    """The proposal in words, with the button that keeps it."""
    day = lost.day
    lines = [line("days-without", day=day, title=lost.workout.title)]
    if found.days:
        lines += [coming_line(d) for d in _days_after(desk, client, of, lost, found)]
        cut = joined([line("days-sets", name=name, sets=sets) for name, sets in found.cut]) if found.cut else None
        lines += [BLANK, line("days-cut", what=cut) if cut is not None else line("days-all-fits")]
    else:
        lines.append(line("days-waits", title=lost.workout.title))
    yes = Button(line("days-agree"), show_press("wklay", "", day.isoformat(), check_of(repr(found))))
    leave = Button(line("days-leave"), show_press("wk", "", monday_of(day).isoformat()))
    return Say(client.profile.chat, tuple(lines), ((yes,), (leave,)), slot=SLOT)


def _days_after(desk: Desk, client: ClientDesk, of: Trainee, lost: ComingDay, found: Relaid) -> tuple[ComingDay, ...]:
    """What the days that are left would hold."""
    monday, today = monday_of(lost.day), local_day(desk.now, client.profile.zone)
    sessions = client.week if monday == monday_of(today) else ()
    week = week_of(of, today, monday, found.days, sessions)
    life = with_week(of.life, monday, week, today=today)
    return ahead(desk, client, replace(of, life=life), monday).days


def settle(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The proposal is kept, if it still is the same."""
    day, of = read_day(press, 0), trainee_of(client)
    lost = None if day is None or of is None else _lost(desk, client, of, day)
    if day is None or of is None or lost is None:
        return old_button(tap)
    found = _proposal(desk, client, of, lost)
    if press.args[1:] != (check_of(repr(found)),):
        return Turn(says=(Toast(tap.query, line("toast-read-anew")), _asked(desk, client, of, lost, found)))
    monday, session = monday_of(day), _card_on(client, day)
    today = local_day(desk.now, client.profile.zone)
    sessions = client.week if monday == monday_of(today) else ()
    week = week_of(of, today, monday, found.days, sessions)
    change = DayChange(desk.now, day, cut=found.cut, waits=not found.days)
    turn = Turn(says=(Toast(tap.query),)) + _kept(desk, client, week, change, skipped=session)
    if session is None:
        return turn
    ended: tuple[Fact, ...] = (SessionEnded(session.id, Ending.SKIPPED),)
    gone: tuple[Saying, ...] = (Strip(tap.chat, slot=card_slot(session.id)),)
    return Turn(ended, gone) + turn


def _lost(desk: Desk, client: ClientDesk, of: Trainee, day: date) -> ComingDay | None:
    """The day as one to come, also where its card is there already."""
    if not is_near(desk, client, day):
        return None
    held = ahead(desk, client, of, monday_of(day)).on(day)
    session = _card_on(client, day)
    if held is not None or session is None:
        return held
    week = of.life.week(monday_of(day))
    laid = next((d for d in week.days if d.day == day), None) if week is not None and week.programme == of.tag else None
    laid = laid or LaidDay(day)
    place = session.workout % len(of.programme.workouts)
    return ComingDay(day, place, workout_on(of, laid, place), laid)


def _proposal(desk: Desk, client: ClientDesk, of: Trainee, lost: ComingDay) -> Relaid:
    monday = monday_of(lost.day)
    coming = ahead(desk, client, of, monday)
    is_this = monday == monday_of(local_day(desk.now, client.profile.zone))
    stays = [s for s in client.week if is_this and s.day != lost.day and (s.done or s.ended is None)]
    behind = [Behind(s.day, s.plan.exercises) for s in stays]
    count = len(of.programme.workouts)
    return lay_rest(coming.days, lost, minutes=room_of(of.programme), workouts=count, behind=behind)


# --- kept, and taken back


def _kept(
    desk: Desk, client: ClientDesk, week: LaidWeek | None, change: DayChange, *, skipped: Session | None = None
) -> Turn:
    """The week is so from now on, with what became of the day above it."""
    me, monday = client.profile, monday_of(change.day)
    before = WasLaid(monday, client.life.week(monday), skipped.id if skipped is not None else "")
    fact = WeekLaid(me.id, monday, week, before, change)
    rules = _rules(desk, client, client.life.week(monday), week)
    told = line("days-lost", day=change.day)
    if change.to is not None:
        told = line("days-moved", day=change.day, to=change.to)
    return Turn((fact,), _page_after(desk, client, fact, skipped, told), rules)


def _page_after(desk: Desk, client: ClientDesk, fact: WeekLaid, skipped: Session | None, told: Line) -> tuple[Say, ...]:
    """The week as it stands after the change, what was done above it."""
    others = tuple(w for w in client.life.laid if w.monday != fact.monday)
    life = replace(client.life, laid=others if fact.week is None else (*others, fact.week), before=fact.before)
    week = tuple(
        replace(s, ended=Ending.SKIPPED) if skipped is not None and s.id == skipped.id else s for s in client.week
    )
    turn = client.profile.workout
    if skipped is not None and client.programme is not None:
        turn = (skipped.workout + 1) % len(client.programme.workouts)
    after = replace(client, life=life, week=week, profile=replace(client.profile, workout=turn))
    shown = page(desk, after, fact.monday)
    return () if shown is None else (replace(shown, lines=(told, BLANK, *shown.lines)),)


def undo(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The week as it was before its last change, once."""
    before, me = client.life.before, client.profile
    if before is None or press.args != (check_of(repr(before)),):
        return Turn(says=(Toast(tap.query, line("toast-undone-already")),))
    skipped = next((s for s in client.week if s.id == before.skipped and s.ended is Ending.SKIPPED), None)
    fact = WeekLaid(me.id, before.monday, before.week)
    facts: tuple[Fact, ...] = (fact,)
    if skipped is not None:
        facts = (fact, SessionReopened(skipped.id))
        week = tuple(replace(s, ended=None) if s.id == skipped.id else s for s in client.week)
        client = replace(client, week=week)
    shown = _page_after(desk, client, fact, None, line("days-undone"))
    rules = _rules(desk, client, client.life.week(before.monday), before.week)
    return Turn(facts, (Toast(tap.query), *shown), rules)


def _rules(desk: Desk, client: ClientDesk, old: LaidWeek | None, new: LaidWeek | None) -> tuple[RuleSet, ...]:
    """Days that are none of every week need a time of their own."""
    me = client.profile
    was = {d.day for d in old.days} if old is not None else set()
    now = {d.day for d in new.days} if new is not None else set()
    extra = {d for d in now if d.weekday() not in me.trains.days and instant(d, me.trains.at, me.zone) > desk.now}
    gone = tuple(RuleSet(me.id, RuleKind.SESSION, me.zone, ref=laid_ref(d)) for d in sorted(was - now))
    comes = tuple(
        RuleSet(me.id, RuleKind.SESSION, me.zone, once_at=instant(d, me.trains.at, me.zone), ref=laid_ref(d))
        for d in sorted(extra)
    )
    return (*gone, *comes)


def laid_ref(day: date) -> str:
    """What the rule of a day that is none of every week is about."""
    return f"laid:{day.isoformat()}"


# --- small things


def _card_on(client: ClientDesk, day: date) -> Session | None:
    """The session of that day of which nothing is reported yet."""
    return next((s for s in client.week if s.day == day and s.ended is None and not s.reports), None)


def _again(desk: Desk, client: ClientDesk, tap: Tapped, monday: date) -> Turn:
    found = page(desk, client, monday)
    toast = Turn(says=(Toast(tap.query, line("toast-read-anew")),))
    return toast if found is None else toast + Turn(says=(found,))


def given_up(desk: Desk, client: ClientDesk, typed: Typed) -> Turn | None:
    """Words that give a day up: the day's choices, and beside pain nothing; `None` where they say something else."""
    day = read_given_up(typed.text, local_day(desk.now, client.profile.zone))
    if day is None or client.profile.standing is not Standing.ACTIVE or told_pain(typed.text) is not None:
        return None
    session = client.session
    begun = session is not None and session.day == day and not session.ended and not session.reports
    found = ask_where_to(desk, client, session) if session is not None and begun else None
    found = found or choices(desk, client, day, fresh=True)
    other = also_given_up(typed.text)
    if found is not None and other:
        found = replace(found, lines=(*found.lines, line("days-one-at-a-time", day=other)))
    return None if found is None else Turn(says=(found,))
