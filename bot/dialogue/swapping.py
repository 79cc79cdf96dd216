"""Another exercise today: offered where it is wished for in words or by the card's button, and put in the plan by a
tap. Nothing is changed before that; sets already reported stay."""

from dataclasses import replace

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.card import card
from bot.dialogue.cardkeys import back_button
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.offering import NOTHING_MISSING, asked_for, choice_line, read_choice, show_choice
from bot.dialogue.pointing import point_at, pointed
from bot.dialogue.replanning import keep_plan, may_change, swap_slot
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.dialogue.wishes import Wish, read_wish
from bot.notation.answer import AskKind, Reading
from bot.saying import Button, Rows, Say, Toast, line
from bot.training.catalogue_terms import Equipment
from bot.training.facts import PlanChanged, QuestionAsked
from bot.training.pain import PainSaid
from bot.training.people import Standing
from bot.training.plan import PlannedExercise
from bot.training.replanned import Instead
from bot.training.session import Session
from bot.training.swap import Swap, put_in, swaps

MOST_AT_ONCE = 3
"""Exercises of a session for which something else is offered at once."""


# --- in words


def wish_of(at: UnderWay, text: str, reading: Reading) -> Wish | None:
    """What a message without sets wants otherwise; `None` where it reports, ends, speaks of minutes, or of a sign that
    can't wait: then nothing is offered."""
    says_more = reading.performed or reading.replaces or reading.finished or reading.minutes is not None
    urgent = reading.pain is not None and reading.pain.urgent
    unclear = reading.ask is not None and (
        reading.ask.choices
        if reading.ask.kind is AskKind.UNKNOWN_EXERCISE
        else reading.ask.kind is not AskKind.WHICH_SKIP
    )
    if says_more or urgent or unclear or at.session.ended is not None or not may_swap(at.client):
        return None
    return read_wish(text, tuple(e for e in at.session.plan.exercises if not at.session.is_complete(e)))


def may_swap(client: ClientDesk) -> bool:
    """Not while they are paused, nor while something urgent waits for the coach."""
    return client.profile.standing is Standing.ACTIVE and not any(p.said.urgent for p in client.pains)


def wished(at: UnderWay, incoming: Typed, wish: Wish, pain: PainSaid | None = None) -> Turn:
    """A message for each exercise that is concerned, with what may take its place."""
    if not wish.exercises:
        return Turn(says=(Say(incoming.chat, (line("swap-none-needs"),), reply_to=incoming.message, silent=True),))
    exercises = [at.session.plan.exercise(name) for name in wish.exercises]
    wanted = (wish.into,) if wish.into else ()
    more = exercises[MOST_AT_ONCE:]
    says = [offer(at, e, missing=wish.missing, wanted=wanted, pain=pain) for e in exercises[:MOST_AT_ONCE]]
    if more:
        says.append(Say(incoming.chat, (line("swap-and-more", count=len(more)),), silent=True))
    return Turn(says=tuple(says))


# --- by buttons


def other(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """`Other exercise`: what may take the place of the one on the button."""
    del desk
    session = pressed_session(client, press)
    exercise = None if session is None else pointed(session, press)
    if session is None or exercise is None or not may_swap(client):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if session.ended is not None:
        return Turn(says=(Toast(tap.query, line("toast-ended")),))
    if session.is_complete(exercise):
        return Turn(says=(Toast(tap.query, line("toast-already-all")), card(UnderWay(client, session))))
    return Turn(says=(Toast(tap.query), offer(UnderWay(client, session), exercise)))


def offer(
    at: UnderWay,
    exercise: PlannedExercise,
    *,
    missing: frozenset[Equipment] = NOTHING_MISSING,
    wanted: tuple[str, ...] = (),
    pain: PainSaid | None = None,
) -> Say:
    """Three that may take its place, each with where to begin; or that nothing does. To skip it and to ask the coach
    are always there."""
    session, coach = at.session, at.client.coach.name
    left = left_of(session, exercise)
    asked = asked_for(at.client, left, session.plan.exercises, session.day, missing=missing, wanted=wanted, also=pain)
    found = swaps(asked)
    lines = [line("swap-title" if found else "swap-none", name=exercise.name)]
    lines += [choice_line(swap, coach) for swap in found]
    if asked.spared:
        lines.append(line("swap-spares"))
    if session.sets_reported(exercise):
        lines.append(line("swap-keeps", name=exercise.name))
    where = point_at(session, exercise.name)
    picks = [
        Button(
            line("swap-pick", exercise=s.planned.name),
            show_press("swapin", session.token, where, show_choice(s.exercise)),
        )
        for s in found
    ]
    skip = Button(line("button-skip", name=exercise.name), show_press("skip", session.token, where))
    ask = Button(line("swap-ask", coach=coach), show_press("askswap", session.token, where))
    rows: Rows = (*((pick,) for pick in picks), (skip,), (ask,))
    return Say(at.client.profile.chat, tuple(lines), rows, slot=swap_slot(session, exercise.name), fresh=True)


def chosen(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """It takes the place: the plan of today has it from now on, less the sets that are done."""
    session = pressed_session(client, press)
    exercise, one = (None, None) if session is None else (pointed(session, press), read_choice(press, 1))
    if session is None or exercise is None or one is None or not may_swap(client):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    at = UnderWay(client, session)
    if session.ended is not None or not may_change(desk, at):
        return Turn(says=(Toast(tap.query, line("toast-ended")),))
    if session.sets_reported(exercise) == len(exercise.sets):
        return Turn(says=(Toast(tap.query, line("toast-already-all")), card(at)))
    found = swaps(
        asked_for(client, left_of(session, exercise), session.plan.exercises, session.day, wanted=(one.name,))
    )
    swap = next((s for s in found if s.exercise == one), None)
    if swap is None:
        return Turn(says=(Toast(tap.query, line("toast-read-anew")), offer(at, exercise)))
    after, turn = keep_plan(at, swapped(session, exercise, swap))
    said = Say(
        tap.chat,
        (line("swap-done", name=exercise.name, into=swap.planned.name),),
        _back_rows(after.session),
        slot=swap_slot(session, exercise.name),
    )
    toast = Toast(tap.query, line("toast-swapped", into=swap.planned.name))
    return Turn(says=(toast,)) + turn + Turn(says=(said,))


def left_of(session: Session, exercise: PlannedExercise) -> PlannedExercise:
    """The exercise with the sets that another one would take the place of: those behind the last that was reported."""
    return replace(exercise, sets=exercise.sets[min(_behind(session, exercise), len(exercise.sets) - 1) :])


def swapped(session: Session, exercise: PlannedExercise, swap: Swap) -> PlanChanged:
    """The fact: the new one, chosen for what was left of the old one, behind the sets of it that are done."""
    behind, new = _behind(session, exercise), swap.planned
    whole = replace(new, sets=(*new.sets[:1] * behind, *new.sets))
    plan = put_in(session.plan, exercise.name, whole, kept_sets=behind)
    return PlanChanged(session.id, plan, Instead(exercise.name, new.name))


def _behind(session: Session, exercise: PlannedExercise) -> int:
    reported = (p.set for p in session.work_done(exercise.name) if p.set is not None)
    return min(max(reported, default=0), len(exercise.sets))


def ask_coach(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The coach is asked what to do instead; once for a session's exercise."""
    del desk
    session = pressed_session(client, press)
    exercise = None if session is None else pointed(session, press)
    if session is None or exercise is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    me, coach, words = client.profile, client.coach, f"{exercise.name}?"
    toast = Toast(tap.query, line("toast-sent-to-coach", coach=coach.name))
    if any(q.words == words for q in client.questions):
        return Turn(says=(toast,))
    rows: Rows = (
        (Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),
        (Button(line("handled-question", name=me.name), show_press("c.answered", me.id)),),
    )
    asked = Say(coach.chat, (line("swap-asked", name=me.name, exercise=exercise.name),), rows, about=me.id, silent=True)
    return Turn((QuestionAsked(me.id, f"t{tap.update}", words),), (toast, asked))


def _back_rows(session: Session) -> Rows:
    button = back_button(session)
    return () if button is None else ((button,),)
