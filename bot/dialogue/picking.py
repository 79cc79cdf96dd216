"""The answer to a question about a doubtful message: the message counts as if it had said so, or not at all."""

from dataclasses import replace
from datetime import date
from itertools import count

from bot.dialogue.buttons import Press, check_of
from bot.dialogue.desk import ClientDesk, Desk, OpenDoubt
from bot.dialogue.doubt import choice_line, doubt_slot, question_about, quoted, read_then, read_words
from bot.dialogue.ending import finish
from bot.dialogue.incoming import Tapped
from bot.dialogue.keeping import after, ends, keep_report
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, on_another_day, pressed_session, session_on
from bot.notation.answer import Reading
from bot.saying import Line, Say, Toast, line
from bot.training.facts import DoubtSettled, Reported
from bot.training.report import Performed
from bot.training.session import Session


def pick(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A reading is chosen: the original message counts as if it had said so."""
    key, check = press.args[0] if press.args else "", press.args[-1] if press.args else ""
    doubt, session = open_doubt(client, press), pressed_session(client, press)
    if doubt is None or session is None:
        return Turn(says=(Toast(tap.query, line("toast-answered")),))
    at = UnderWay(client, session)
    ask = read_then(desk, at, doubt).ask
    number = press.number(1)
    choices = ask.choices if ask is not None else ()
    if number is None or not 0 <= number < len(choices) or check_of(choices[number].label) != check:
        return Turn(says=(Toast(tap.query, line("toast-read-anew")), question_about(at, key, doubt.words, ask)))
    label = choice_line(choices[number])
    kept = keep_as(desk, at, doubt, choices[number].reading, kept_line(doubt, label))
    return Turn(says=(Toast(tap.query, line("toast-kept-as", label=label)),)) + kept


def keep_as(desk: Desk, at: UnderWay, doubt: OpenDoubt, reading: Reading, said: Line) -> Turn:
    """The doubtful message counts as this reading of it, in the session of its day; the question turns into `said`."""
    me, session = at.client.profile, at.session
    settled = DoubtSettled(me.id, session.id, doubt.key)
    at = UnderWay(replace(at.client, doubts=tuple(d for d in at.client.doubts if d != doubt)), session)
    if reading.day is not None and reading.day != session.day:
        return Turn((settled,)) + _keep_on_day(desk, at, doubt, reading.day, said)
    performed = after_the_rest(session, doubt, reading)
    report = Reported(session.id, doubt.key, performed, reading.replaces, reading.skipped)
    turn = Turn((settled,), (_in_place_of_question(at, doubt, said),)) + keep_report(desk, at, report)
    return turn + finish(desk, after(at, turn)) if reading.finished and not ends(turn, at) else turn


def _keep_on_day(desk: Desk, at: UnderWay, doubt: OpenDoubt, day: date, said: Line) -> Turn:
    """The same for a day that is not this session's: as it reads beside the session of that day, if it does."""
    session = session_on(at.client, day)
    if session is None:
        return Turn(says=(_in_place_of_question(at, doubt, line("no-session-that-day", day=day)),))
    there = on_another_day(at.client, session)
    read = read_words(desk, there, doubt.words)
    readings = (read,) if read.ask is None else tuple(choice.reading for choice in read.ask.choices)
    beside = next((r for r in readings if r.day == day), None)
    if beside is None:
        unread = line("doubt-unread-there", words=quoted(doubt.words), day=day)
        return Turn(says=(_in_place_of_question(at, doubt, unread),))
    report = Reported(session.id, doubt.key, beside.performed, beside.replaces, beside.skipped)
    return Turn(says=(_in_place_of_question(at, doubt, said),)) + keep_report(desk, there, report)


def kept_line(doubt: OpenDoubt, label: Line) -> Line:
    """What a message is kept as, in words."""
    return line("doubt-settled", words=quoted(doubt.words), label=label)


def _in_place_of_question(at: UnderWay, doubt: OpenDoubt, said: Line) -> Say:
    return Say(at.client.profile.chat, (said,), slot=doubt_slot(doubt.key))


def drop(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """None of the readings: nothing of the message is kept."""
    del desk
    doubt = open_doubt(client, press)
    if doubt is None:
        return Turn(says=(Toast(tap.query, line("toast-answered")),))
    return Turn(says=(Toast(tap.query),)) + dropped(client, doubt)


def dropped(client: ClientDesk, doubt: OpenDoubt) -> Turn:
    """Nothing of a doubtful message is kept, and the question says so."""
    said = Say(client.profile.chat, (line("doubt-dropped", words=quoted(doubt.words)),), slot=doubt_slot(doubt.key))
    return Turn((DoubtSettled(client.profile.id, doubt.session, doubt.key),), (said,))


def open_doubt(client: ClientDesk, press: Press) -> OpenDoubt | None:
    """The open doubt that a button is about, in the session that the button names."""
    session, key = pressed_session(client, press), press.args[0] if press.args else ""
    if session is None:
        return None
    return next((d for d in client.doubts if d.key == key and d.session == session.id), None)


def after_the_rest(session: Session, doubt: OpenDoubt, reading: Reading) -> tuple[Performed, ...]:
    """The sets of a message that is answered only now: where sets reported since have taken their numbers, they come
    after those, each with its continuations."""
    if doubt.stood is None:
        return reading.performed
    taken = {(p.exercise, p.set) for p in session.done}
    since = {(p.exercise, p.set) for r in session.reports if r.key not in doubt.stood for p in r.sets}
    moved: dict[tuple[str, int | None], int] = {}
    for key in dict.fromkeys((p.exercise, p.set) for p in reading.performed if p.set is not None):
        if key in since and key not in reading.replaces:
            moved[key] = next(n for n in count(1) if (key[0], n) not in taken)
            taken.add((key[0], moved[key]))
    return tuple(replace(p, set=moved.get((p.exercise, p.set), p.set)) for p in reading.performed)
