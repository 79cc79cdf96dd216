"""A session that stands otherwise from now on: what is kept, what is drawn anew, and the way back."""

from dataclasses import replace

from bot.dialogue.buttons import Press, print_of
from bot.dialogue.card import card
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.turn import Keeping, StrengthStale, Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.saying import Line, Say, Toast, line
from bot.training.calendar import local_day
from bot.training.facts import Ending, Fact, PlanChanged, SessionReopened
from bot.training.replanned import AsBefore, Instead, SetMore, Shorter
from bot.training.session import Session, with_plan


def keep_plan(at: UnderWay, *changes: PlanChanged) -> tuple[UnderWay, Turn]:
    """The session with its plan changed, one change after the other, and what follows.

    What was learnt from sets of exercises that are prescribed otherwise now is worked out anew.
    """
    session, facts = at.session, list[Fact](changes)
    for changed in changes:
        session = with_plan(session, changed)
    if session.ended is Ending.FINISHED and not session.is_all_done:
        facts.append(SessionReopened(session.id))
        session = replace(session, ended=None)
    after = UnderWay(at.client, session)
    return after, Turn(tuple(facts), (card(after),), _strengths(at.session, after))


def _strengths(before: Session, after: UnderWay) -> tuple[Keeping, ...]:
    done = {p.exercise for p in after.session.done}
    old = {e.name: e.sets for e in before.plan.exercises}
    new = {e.name: e.sets for e in after.session.plan.exercises}
    changed = [name for name in dict.fromkeys((*old, *new)) if name in done and old.get(name) != new.get(name)]
    gone = tuple(StrengthStale(after.client.profile.id, name) for name in changed if name not in new)
    return (*after.strengths(name for name in changed if name in new), *gone)


def back(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The plan before, once: a second tap of the same button takes nothing more back."""
    session = pressed_session(client, press)
    if session is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    at = UnderWay(client, session)
    number = press.number(0) or 0
    if number != len(session.changes):
        key = "toast-back-later" if 0 < number < len(session.changes) else "toast-undone-already"
        return Turn(says=(Toast(tap.query, line(key)), card(at)))
    if not may_change(desk, at):
        return Turn(says=(Toast(tap.query, line("toast-ended")),))
    if not session.may_go_back:
        return Turn(says=(Toast(tap.query, line("toast-back-late")), card(at)))
    words, turn = taken_back(at)
    return Turn(says=(Toast(tap.query, words),)) + turn


def taken_back(at: UnderWay) -> tuple[Line, Turn]:
    """The last change taken back, and what it was, in words. To be asked only where `may_go_back`."""
    session, change = at.session, at.session.changes[-1]
    _, turn = keep_plan(at, PlanChanged(session.id, change.before, AsBefore()))
    match change.why:
        case Instead(exercise):
            words, slot = line("back-from-swap", name=exercise), swap_slot(session, exercise)
        case Shorter():
            words, slot = line("back-from-shorter", about=change.before.minutes), time_slot(session)
        case SetMore(exercise):
            words, slot = line("back-from-more", name=exercise), more_slot(session)
    return words, turn + Turn(says=(Say(at.client.profile.chat, (words,), slot=slot, silent=True),))


def may_change(desk: Desk, at: UnderWay) -> bool:
    """Whether the plan may still be changed: the session is not over, or ended today."""
    return at.session.ended is None or (
        at.session.ended is Ending.FINISHED and at.session.day == local_day(desk.now, at.client.profile.zone)
    )


def undoes_change(session: Session) -> bool:
    """Whether the plan was changed after the last report that counts: then an undo means that."""
    if not session.may_go_back:
        return False
    return not session.reports or session.reports[-1].key in session.changes[-1].stood


def swap_slot(session: Session, exercise: str) -> str:
    """The slot of what is offered in place of an exercise."""
    return f"swap:{session.id}:{print_of(exercise)}"


def more_slot(session: Session) -> str:
    """The slot of what may be done more than planned."""
    return f"more:{session.id}"


def time_slot(session: Session) -> str:
    """The slot of the talk about minutes."""
    return f"time:{session.id}"
