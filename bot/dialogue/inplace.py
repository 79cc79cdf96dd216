"""`In place of …`, tapped: the exercise reported takes the place of the planned one, and its sets count. Or it was
planned before a change took it out, and was done after all.

Nothing was kept of them before. They were done: so what hurts or is on hold decides nothing here.
"""

from dataclasses import replace

from bot.dialogue.buttons import Press
from bot.dialogue.desk import ClientDesk, Desk, OpenDoubt
from bot.dialogue.doubt import question_about, quoted, read_then
from bot.dialogue.incoming import Tapped
from bot.dialogue.offering import asked_for
from bot.dialogue.picking import keep_as, open_doubt
from bot.dialogue.pointing import pointed
from bot.dialogue.replaced import AFTER_ALL, in_place_of, taken_out
from bot.dialogue.replanning import keep_plan
from bot.dialogue.swapping import left_of, swapped
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.notation.answer import AskKind, Reading
from bot.saying import Toast, line
from bot.training.facts import PlanChanged
from bot.training.plan import PlannedExercise
from bot.training.replanned import AsBefore
from bot.training.session import with_plan
from bot.training.swap import swaps


def instead(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The plan has it in that place from now on; the message is read beside that plan, and kept as it reads there."""
    session, doubt = pressed_session(client, press), open_doubt(client, press)
    if session is None or doubt is None:
        return Turn(says=(Toast(tap.query, line("toast-answered")),))
    at, old = UnderWay(client, session), pointed(session, press, 1)
    if press.args[1:] == (AFTER_ALL,):
        changed = _back(desk, at, doubt)
    else:
        changed = None if old is None else _changed(desk, at, doubt, old)
    if changed is None:
        ask = read_then(desk, at, doubt).ask
        return Turn(says=(Toast(tap.query, line("toast-read-anew")), question_about(at, doubt.key, doubt.words, ask)))
    after, turn = keep_plan(at, changed)
    reading = read_then(desk, after, doubt)
    if reading.ask is not None:
        again = question_about(after, doubt.key, doubt.words, reading.ask)
        return Turn(says=(Toast(tap.query),)) + turn + Turn(says=(again,))
    return turn + _kept(desk, after, doubt, reading, tap)


def _changed(desk: Desk, at: UnderWay, doubt: OpenDoubt, old: PlannedExercise) -> PlanChanged | None:
    """The change, where the message still reads as an exercise that may have taken this one's place."""
    one, places = in_place_of(at.session, doubt.words, read_then(desk, at, doubt).ask)
    if one is None or old.name not in places:
        return None
    bare = replace(at.client, pains=(), held=())
    asked = asked_for(bare, left_of(at.session, old), at.session.plan.exercises, at.session.day, wanted=(one.name,))
    swap = next((s for s in swaps(asked) if s.exercise == one), None)
    if swap is None:
        return None
    return _if_read(desk, at, doubt, swapped(at.session, old, swap))


def _back(desk: Desk, at: UnderWay, doubt: OpenDoubt) -> PlanChanged | None:
    """The plan before, where the message still reads as an exercise that the last change took out."""
    if not taken_out(at.session, doubt.words, read_then(desk, at, doubt).ask):
        return None
    before = PlanChanged(at.session.id, at.session.changes[-1].before, AsBefore())
    return _if_read(desk, at, doubt, before)


def _if_read(desk: Desk, at: UnderWay, doubt: OpenDoubt, changed: PlanChanged) -> PlanChanged | None:
    """The change, where beside it the message holds sets, or doubts of another kind."""
    reading = read_then(desk, UnderWay(at.client, with_plan(at.session, changed)), doubt)
    is_another = reading.ask is not None and reading.ask.kind is not AskKind.UNKNOWN_EXERCISE
    return changed if reading.performed or is_another else None


def _kept(desk: Desk, at: UnderWay, doubt: OpenDoubt, reading: Reading, tap: Tapped) -> Turn:
    name = reading.performed[0].exercise
    said = line("place-kept", words=quoted(doubt.words), exercise=name)
    toast = Toast(tap.query, line("toast-kept-as", label=name))
    return Turn(says=(toast,)) + keep_as(desk, at, doubt, reading, said)
