"""The day's session: planned at the client's hour, or when they ask for it."""

from dataclasses import replace
from datetime import date, timedelta

from bot.dialogue.awaying import stop_quietly
from bot.dialogue.buttons import Press, show_press
from bot.dialogue.card import card
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Due, RuleKind, Tapped
from bot.dialogue.journey import HERE
from bot.dialogue.makinggood import offer
from bot.dialogue.missing import LATE, MORNING
from bot.dialogue.returning import back_line, ease_on, fewer_days, is_quiet
from bot.dialogue.turn import RuleSet, Turn
from bot.dialogue.underway import UnderWay
from bot.saying import Button, Say, Toast, Urgency, line
from bot.training.assemble import plan_session
from bot.training.calendar import cutoff_of, instant, is_small_hours, local_day, local_time, monday_of
from bot.training.coming import Trainee, is_training_day, laid_days, next_day, workout_on
from bot.training.facts import SessionPlanned
from bot.training.life import LaidDay
from bot.training.people import Client, Programme, Standing
from bot.training.session import Session
from bot.training.strength import State

LATEST_AFTER = timedelta(hours=5)
"""A session that could not be sent for so long (we were down) is not sent any more: the cut-off asks instead."""
LATEST_ASKED = timedelta(hours=24)
"""After so long nothing is said of it at all."""


def due(desk: Desk, client: ClientDesk, incoming: Due) -> Turn:
    """The client's hour: the session as one card, once; everything is checked again now."""
    me = client.profile
    day = local_day(incoming.due_at, me.zone)
    if me.standing is not Standing.ACTIVE:
        return Turn(skipped=f"client is {me.standing.value}")
    if client.programme is None:
        return Turn(skipped="no programme")
    existing = client.session if client.session and client.session.day == day else None
    if existing is not None and (existing.reports or existing.ended):
        return Turn(skipped="already reported")
    is_here = incoming.ref.startswith(f"{HERE}:")
    if incoming.ref and not is_here and day.weekday() in me.trains.days:
        return Turn(skipped="comes with the day's own session")
    if existing is None and (incoming.ref.startswith("moved:") or not is_training_day(client.life, me.trains, day)):
        return Turn(skipped="moved, or given up")
    late = desk.now - incoming.due_at
    if late > LATEST_AFTER:
        if late > LATEST_ASKED or existing is not None:
            return Turn(skipped="too late")
        return replace(_planned(desk, client, client.programme, None, day=day, is_shown=False), skipped="late")
    if is_here and existing is None and local_time(desk.now, me.zone).time() >= cutoff_of(me.trains):
        return _asked_about_tomorrow(desk, client, client.programme, day)
    if existing is None and is_quiet(client, day):
        return stop_quietly(desk, client)
    hello = Say(me.chat, (line("session-hello", name=me.name),), urgency=Urgency.NOTICE)
    urgency = Urgency.NOTICE
    return Turn(says=(hello,)) + _planned(desk, client, client.programme, existing, day=day, urgency=urgency)


def _asked_about_tomorrow(desk: Desk, client: ClientDesk, programme: Programme, day: date) -> Turn:
    """A session whose day the new clock ends before it could come: planned, and asked about in the morning."""
    planned = _planned(desk, client, programme, None, day=day, is_shown=False)
    zone = client.profile.zone
    ids = [f.session for f in planned.facts if isinstance(f, SessionPlanned)]
    at = instant(day + timedelta(days=1), MORNING, zone)
    keeps = tuple(RuleSet(client.profile.id, RuleKind.CUTOFF, zone, once_at=at, ref=f"{LATE}{name}") for name in ids)
    return replace(planned, keeps=keeps, skipped="too late today")


def on_request(desk: Desk, client: ClientDesk) -> Turn:
    """`/today`: the session of today, made if there is none; with nothing to train, the next day that has something."""
    me = client.profile
    if me.standing is not Standing.ACTIVE:
        return waits(client)
    if client.programme is None:
        return Turn(says=(Say(me.chat, (line("no-programme", coach=client.coach.name),)),))
    today = local_day(desk.now, me.zone)
    session = client.session
    is_meant = session is not None and (
        session.day == today or session.reports or _is_of_the_evening(desk, me, session)
    )
    if session is not None and session.ended is None and is_meant:
        return Turn(says=(card(UnderWay(client, session), fresh=True, urgency=Urgency.REPLY),))
    done_today = session is not None and session.day == today and session.ended is not None
    if done_today or not is_training_day(client.life, me.trains, today):
        following = next_day(client.life, me.trains, today)
        key = "today-done" if done_today else "today-rest"
        start = Button(line("button-start-today"), show_press("start"))
        day = following if following is not None else line("not-yet")
        return Turn(says=(Say(me.chat, (line(key, day=day),), ((start,),)),))
    return _planned(desk, client, client.programme, None, day=today)


def _is_of_the_evening(desk: Desk, me: Client, session: Session) -> bool:
    """After midnight: yesterday's session, as long as today's hour has not come."""
    now, today = local_time(desk.now, me.zone), local_day(desk.now, me.zone)
    is_before = desk.now < instant(today, me.trains.at, me.zone)
    return is_small_hours(now) and is_before and session.day == today - timedelta(days=1)


def start(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Train now, whatever the day: the next workout, or the card again where one is open."""
    del press
    toast = Turn(says=(Toast(tap.query),))
    if client.profile.standing is not Standing.ACTIVE:
        return toast + waits(client)
    session = client.session
    if session is not None and session.ended is None:
        return toast + Turn(says=(card(UnderWay(client, session), fresh=True, urgency=Urgency.REPLY),))
    if client.programme is None:
        return toast + Turn(says=(Say(tap.chat, (line("no-programme", coach=client.coach.name),)),))
    return toast + _planned(desk, client, client.programme, None, day=local_day(desk.now, client.profile.zone))


def waits(client: ClientDesk) -> Turn:
    """Paused: nothing is planned until they go on, or, after a readiness answer, until the coach says so."""
    me = client.profile
    if me.readiness_flagged:
        return Turn(says=(Say(me.chat, (line("go-on-waits", coach=client.coach.name),)),))
    go_on = Button(line("settings-go-on"), show_press("go-on"))
    return Turn(says=(Say(me.chat, (line("today-paused"),), ((go_on,),)),))


def _planned(
    desk: Desk,
    client: ClientDesk,
    programme: Programme,
    existing: Session | None,
    *,
    day: date,
    urgency: Urgency = Urgency.REPLY,
    is_shown: bool = True,
) -> Turn:
    """The session of the day with its card; a new one where there is none yet."""
    if existing is not None:
        return Turn(says=(card(UnderWay(client, existing), fresh=True, urgency=urgency),))
    session = planned_session(desk, client, programme, day)
    fact = SessionPlanned(session.id, session.client, session.day, session.workout, session.plan, session.token)
    at = UnderWay(client, session)
    if not is_shown:
        return Turn((fact,))
    eased = back_line(client, day)
    weeks, days = fewer_days(client, day)
    lines = (*(() if eased is None else (eased,)), *days)
    told = (Say(client.profile.chat, lines, urgency=urgency),) if lines else ()
    return Turn((fact, *weeks), (*told, card(at, fresh=True, urgency=urgency), *offer(at)))


def planned_session(desk: Desk, client: ClientDesk, programme: Programme, day: date) -> Session:
    """The next workout with the day's loads: a snapshot that never changes."""
    me, orders = client.profile, client.orders
    of = Trainee(me.trains, programme, client.begun, me.workout, client.life)
    laid = next((d for d in laid_days(of, day, monday_of(day)) if d.day == day), LaidDay(day))
    place = me.workout % len(programme.workouts) if laid.is_plain else laid.workout % len(programme.workouts)
    workout = workout_on(of, laid, place)
    strengths = {row.exercise: State.from_json(row.after) for row in client.strengths}
    held = {name for name, _ in client.held} | _waiting(client)
    ease = ease_on(client, day)
    plan = plan_session(workout, me.gym, strengths=strengths, held=held, day=day, orders=orders, ease=ease)
    return Session(desk.tokens[0][:16], me.id, day, place, plan, desk.tokens[1][:12])


def _waiting(client: ClientDesk) -> set[str]:
    """Exercises that may not go up yet: the coach wants to say yes first, and has not to the session last done."""
    if not client.orders.asks_first:
        return set()
    return {row.exercise for row in client.strengths if row.session not in client.orders.approved}
