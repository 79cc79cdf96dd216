"""The coach's hand on a client's training: loads set, exercises held, light weeks, how freely loads rise, a pause with
an end, notes. Each is a fact with what stood before; the client is told what changes for them."""

from dataclasses import replace
from datetime import date, timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.lifts import coming_for, exercise_named, exercise_page, exercises_of, state_of
from bot.dialogue.nexttime import approval_slot
from bot.dialogue.phrases import load_line
from bot.dialogue.sayload import read_load
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, Line, Rows, Say, Toast, line
from bot.training.calendar import local_day, monday_of
from bot.training.facts import (
    AutonomySet,
    ExerciseHeld,
    LightWeekOrdered,
    LoadOrdered,
    LoadsApproved,
    ReturnEased,
)
from bot.training.orders import Order, follow
from bot.training.plan import PlannedExercise
from bot.training.units import Load, Unit

BOUNDS = (5, 10, 15)
"""Percent a step that a button offers."""
ASKED_FOR = timedelta(minutes=10)
LONGEST_NOTE = 500
FURTHEST = 2.0
"""A load that a coach types may be at most so many times what would come next: beyond it is a slip of the thumb."""


# --- loads and holds


def set_load(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """A load on a button: the next session of this exercise is done with it."""
    found = _exercise(desk, coach, press)
    thousandths, unit = press.number(2), press.args[3] if len(press.args) > 3 else ""
    if found is None or thousandths is None or unit not in (Unit.KG, Unit.LB):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    about, exercise = found
    return Turn(says=(Toast(tap.query, line("toast-set")),)) + _ordered_load(
        desk, coach, about, exercise, Load(thousandths, Unit(unit))
    )


def ask_load(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """`Another load`: the next message is one."""
    found = _exercise(desk, coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    about, exercise = found
    chat = coach.profile.chat
    talk = Talk("order-load", about.profile.id, (("exercise", exercise.name),), desk.now + ASKED_FOR)
    say = Say(
        chat, (line("order-ask-load", exercise=exercise.name, unit=about.profile.unit.value),), about=about.profile.id
    )
    return Turn(says=(Toast(tap.query), say), keeps=(TalkSet(chat, talk),))


def load_typed(desk: Desk, coach: CoachDesk, incoming: Typed) -> Turn:
    """The load that was asked for; anything else is asked again, and nothing is changed."""
    about, chat = coach.about, coach.profile.chat
    name = desk.talk.get("exercise") if desk.talk else ""
    exercise = next((e for e in exercises_of(about, desk) if e.name == name), None) if about else None
    if about is None or exercise is None:
        return Turn(says=(Say(chat, (line("not-available"),)),), keeps=(TalkSet(chat, None),))
    load = read_load(incoming.text, about.profile.unit)
    if load is None or _is_too_far(desk, about, exercise, load):
        key = "order-misread-load" if load is None else "order-load-far"
        return Turn(says=(Say(chat, (line(key, words=incoming.text[:40], unit=about.profile.unit.value),)),))
    turn = _ordered_load(desk, coach, about, exercise, load)
    says = tuple(replace(s, fresh=True) if isinstance(s, Say) and s.slot == DESK else s for s in turn.says)
    return replace(turn, says=says, keeps=(TalkSet(chat, None),))


def unset_load(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The engine decides again."""
    found = _exercise(desk, coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    about, exercise = found
    before = next((o.load for o in about.orders.loads if o.exercise == exercise.name), None)
    fact = LoadOrdered(about.profile.id, exercise.name, None, before)
    return Turn((fact,), (Toast(tap.query, line("toast-unset")),)) + _page_again(desk, coach, about, exercise, fact)


def hold(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """This exercise goes up no more until the coach lifts it."""
    found = _exercise(desk, coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    about, exercise = found
    fact = ExerciseHeld(about.profile.id, exercise.name)
    return Turn((fact,), (Toast(tap.query, line("toast-held", exercise=exercise.name)),)) + _page_again(
        desk, coach, about, exercise, fact
    )


def _ordered_load(desk: Desk, coach: CoachDesk, about: ClientDesk, exercise: PlannedExercise, load: Load) -> Turn:
    coming = coming_for(desk, about, exercise)
    before = next((s.load for s in coming.sets if s.load is not None), None)
    fact = LoadOrdered(about.profile.id, exercise.name, load, before)
    told = line("order-load-told", coach=coach.profile.name, exercise=exercise.name, load=load_line(exercise, load))
    return Turn((fact,), (to_client(coach, about, told),)) + _page_again(desk, coach, about, exercise, fact)


def _is_too_far(desk: Desk, about: ClientDesk, exercise: PlannedExercise, load: Load) -> bool:
    coming = coming_for(desk, about, exercise)
    first = next((s.load for s in coming.sets if s.load is not None), None)
    state = state_of(about, exercise)
    if first is None or state is None:
        return False
    return state.whole_kg(float(load.kg)) > FURTHEST * state.whole_kg(float(first.kg))


def _page_again(desk: Desk, coach: CoachDesk, about: ClientDesk, exercise: PlannedExercise, order: Order) -> Turn:
    """The exercise's page as it stands with the order."""
    return Turn(says=(exercise_page(desk, coach, with_order(desk, about, order), exercise),))


def with_order(desk: Desk, about: ClientDesk, order: Order) -> ClientDesk:
    """The client's desk as if the order had been given."""
    today = local_day(desk.now, about.profile.zone)
    orders = follow(about.orders, order, today=today)
    known = {name for name, _ in about.held}
    new = tuple(held for held in orders.held if held[0] not in known)
    return replace(about, orders=orders, held=(*about.held, *new))


# --- the week, and how freely loads rise


def plan_page(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Light weeks and how freely loads rise, with what stands now."""
    del press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    return Turn(says=(Toast(tap.query), _plan_page(desk, coach, coach.about)))


def _plan_page(desk: Desk, coach: CoachDesk, about: ClientDesk) -> Say:
    orders, me = about.orders, about.profile
    lines: list[Line] = [line("orders-title", name=me.name)]
    lines.append(line("orders-asks-first" if orders.asks_first else "orders-by-itself", percent=orders.bound_percent))
    lines.append(line("orders-eases" if about.life.eases else "orders-no-eases"))
    lines += [line("orders-light", monday=monday) for monday in orders.light]
    lines += [line("orders-load", exercise=o.exercise, load=o.load) for o in orders.loads]
    lines += [line("orders-swap", exercise=s.exercise, into=s.into.name) for s in orders.swaps]
    lines += [line("orders-held", exercise=name, day=day) for name, day in about.held]
    this = monday_of(local_day(desk.now, me.zone))
    light = tuple(_light_button(about, this + timedelta(weeks=n), n) for n in (0, 1))
    first = Button(
        line("orders-let-go" if orders.asks_first else "orders-ask-first"),
        show_press("c.auto", me.id, 0 if orders.asks_first else 1, orders.bound_percent),
    )
    bounds = tuple(
        Button(line("orders-bound", percent=p), show_press("c.auto", me.id, int(orders.asks_first), p))
        for p in BOUNDS
        if p != orders.bound_percent
    )
    ease = Button(
        line("orders-ease-off" if about.life.eases else "orders-ease-on"),
        show_press("c.ease", me.id, 0 if about.life.eases else 1),
    )
    back = Button(line("back-client", name=me.name), show_press("c.view", me.id, "clients"))
    rows: Rows = (*((b,) for b in light), (first,), bounds, (ease,), (back,))
    return Say(coach.profile.chat, tuple(lines), rows, slot=DESK, about=me.id)


def _light_button(about: ClientDesk, monday: date, weeks_on: int) -> Button:
    is_light = monday in about.orders.light
    key = f"orders-{'no-light' if is_light else 'make-light'}-{'this' if weeks_on == 0 else 'next'}"
    return Button(line(key), show_press("c.light", about.profile.id, monday.isoformat(), 0 if is_light else 1))


def light_week(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """A week is made a light one, or an ordinary one again. Sessions already sent stay as they are."""
    about, on = coach.about, press.number(1)
    monday = _read_monday(press.args[0]) if press.args else None
    if about is None or monday is None or on is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    fact = LightWeekOrdered(about.profile.id, monday, on=bool(on))
    key = "order-light-told" if on else "order-no-light-told"
    told = to_client(coach, about, line(key, coach=coach.profile.name, monday=monday))
    return Turn((fact,), (Toast(tap.query), told, _plan_page(desk, coach, with_order(desk, about, fact))))


def autonomy(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Loads rise by themselves within a bound, or only after the coach's yes."""
    about, asks, percent = coach.about, press.number(0), press.number(1)
    if about is None or asks is None or percent is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    fact = AutonomySet(about.profile.id, asks_first=bool(asks), bound_percent=percent)
    return Turn((fact,), (Toast(tap.query), _plan_page(desk, coach, with_order(desk, about, fact))))


def ease(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Sessions after a break come back in steps, or are as they were before it."""
    about, on = coach.about, press.number(0)
    if about is None or on not in (0, 1):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    after = replace(about, life=replace(about.life, eases=bool(on)))
    return Turn((ReturnEased(about.profile.id, bool(on)),), (Toast(tap.query), _plan_page(desk, coach, after)))


def approve(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach's yes to what a session suggests for the next one."""
    del desk
    about, session = coach.about, press.args[0] if press.args else ""
    if about is None or not session:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    said = Say(coach.profile.chat, (line("orders-approved", name=about.profile.name),), slot=approval_slot(session))
    return Turn((LoadsApproved(about.profile.id, session),), (Toast(tap.query), said))


def _exercise(desk: Desk, coach: CoachDesk, press: Press) -> tuple[ClientDesk, PlannedExercise] | None:
    """The client and the exercise that a button is about."""
    about = coach.about
    exercise = None if about is None else exercise_named(about, desk, press)
    return None if about is None or exercise is None else (about, exercise)


def to_client(coach: CoachDesk, about: ClientDesk, told: Line) -> Say:
    """What changes for them, without a sound."""
    return Say(about.profile.chat, (told,), silent=True, about=coach.profile.id)


def _read_monday(text: str) -> date | None:
    try:
        day = date.fromisoformat(text)
    except ValueError:
        return None
    return day if day.weekday() == 0 else None
