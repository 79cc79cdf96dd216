"""Typed reports: read as a coach who knows the plan would, kept, and answered as quietly as will do."""

from dataclasses import replace
from decimal import Decimal

from bot.dialogue.buttons import show_press
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.doubt import ask_which, read_words
from bot.dialogue.ending import finish
from bot.dialogue.hurting import exercise_of, told_of_pain, with_hold
from bot.dialogue.incoming import Typed
from bot.dialogue.keeping import keep_report
from bot.dialogue.phrases import done_line
from bot.dialogue.relay import question
from bot.dialogue.shorter import fit_into
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay
from bot.notation.answer import Reading, Request
from bot.notation.pain import read_pain
from bot.notation.reading import read_message
from bot.saying import Button, Line, React, Say, line
from bot.training.calendar import local_time
from bot.training.facts import Reported, SessionEnded
from bot.training.report import Performed
from bot.training.session import Session, with_report

KEPT, CHANGED = "👍", "✍"
"""Reactions of the platform's fixed list."""
FAR_OFF = Decimal("0.2")
"""A load further than this from the plan is read back in words. Ours."""


def typed(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """What a client typed, whatever it is."""
    if desk.reply_about == client.coach.id:
        return _to_coach(desk, client, incoming)
    if client.session is None:
        return _without_session(desk, client, incoming)
    at = UnderWay(client, client.session)
    reading = read_words(desk, at, incoming.text)
    turn = _beside(desk, at, incoming, reading)
    if reading.pain is not None:
        held = _named(reading) or exercise_of(at.session)
        at = UnderWay(with_hold(desk, client, held), at.session)
    if reading.day is not None and reading.day != at.session.day:
        other = _session_on(client, reading)
        if other is None:
            return turn + Turn(says=(Say(incoming.chat, (line("no-session-that-day", day=reading.day),)),))
        return turn + _report_of_day(desk, at.client, incoming, other)
    return turn + _report(desk, at, incoming, reading)


def _report_of_day(desk: Desk, client: ClientDesk, incoming: Typed, session: Session) -> Turn:
    """A report of a day that the words name: strengths on the desk are another session's, so they are built anew."""
    at = UnderWay(replace(client, session=session, session_is_latest=False), session)
    return _report(desk, at, incoming, read_words(desk, at, incoming.text))


def typed_beside_media(desk: Desk, client: ClientDesk, words: Typed) -> Turn:
    """The words under a picture or a video: sets and pain count, mere talk is left to the coach who gets it anyway."""
    turn = typed(desk, client, words)
    return turn if turn.facts else Turn()


def _report(desk: Desk, at: UnderWay, incoming: Typed, reading: Reading) -> Turn:
    key = f"m{incoming.message}"
    if reading.ask is not None:
        return ask_which(at, key, incoming.text, reading.ask)
    turn = Turn()
    if reading.performed or reading.replaces or reading.skipped:
        report = Reported(at.session.id, key, reading.performed, reading.replaces, reading.skipped)
        turn = keep_report(desk, at, report) + _acknowledged(at, incoming, reading)
    if reading.finished and not _ends(turn, at):
        return turn + finish(desk, _after(at, turn))
    if turn == Turn() and not _says_anything(reading):
        return _talk(at.client, incoming)
    return turn


def _beside(desk: Desk, at: UnderWay, incoming: Typed, reading: Reading) -> Turn:
    """What a message may say beside its sets, kept whatever else is wrong with it: pain, minutes, a question."""
    turn = Turn()
    if reading.pain is not None:
        turn += told_of_pain(desk, at.client, reading.pain, words=incoming.text, exercise=_named(reading))
    elif reading.question:
        turn += question(at.client, incoming.message, incoming.text)
        turn += Turn(says=(Say(incoming.chat, (line("question-sent", coach=at.client.coach.name),), silent=True),))
    if reading.minutes is not None:
        turn += fit_into(at, reading.minutes)
    return turn


def _to_coach(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """A reply to the coach's own words goes to the coach, whatever is in it; pain in it counts."""
    pain = read_pain(incoming.text).pain
    turn = told_of_pain(desk, client, pain, words=incoming.text) if pain is not None else Turn()
    said = Say(incoming.chat, (line("sent-to-coach", coach=client.coach.name),), silent=True)
    return turn + question(client, incoming.message, incoming.text) + Turn(says=(said,))


def _without_session(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """Nothing is asked of them today: pain and questions still count, a set only where its day is named."""
    me = client.profile
    reading = read_message(Request(incoming.text, me.unit, local_time(desk.now, me.zone), ()))
    turn = Turn()
    if reading.pain is not None:
        turn += told_of_pain(desk, client, reading.pain, words=incoming.text)
    elif reading.question:
        turn += question(client, incoming.message, incoming.text)
        turn += Turn(says=(Say(incoming.chat, (line("question-sent", coach=client.coach.name),), silent=True),))
    if reading.day is not None and (session := _session_on(client, reading)) is not None:
        return turn + _report_of_day(desk, client, incoming, session)
    if turn != Turn():
        return turn
    if reading.performed or reading.ask or reading.finished:
        start = Button(line("button-start-today"), show_press("start"))
        return Turn(says=(Say(me.chat, (line("no-session-now"),), ((start,),)),))
    return _talk(client, incoming)


def _talk(client: ClientDesk, incoming: Typed) -> Turn:
    """No report, no pain, no question: nothing is kept, and the way to the coach is one tap."""
    to_coach = Button(line("send-to-coach", coach=client.coach.name), show_press("tocoach", "", incoming.message))
    slot = f"tocoach:{incoming.message}"
    return Turn(says=(Say(incoming.chat, (line("not-a-report"),), ((to_coach,),), slot=slot, silent=True),))


def _acknowledged(at: UnderWay, incoming: Typed, reading: Reading) -> Turn:
    """A reaction; and the reading in words where they would want to check it."""
    react = React(incoming.chat, incoming.message, CHANGED if reading.replaces else KEPT)
    if not (at.client.profile.confirm_in_words or reading.replaces or _is_surprising(at, reading)):
        return Turn(says=(react,))
    return Turn(says=(react, Say(incoming.chat, read_back(at, reading), reply_to=incoming.message, silent=True)))


def read_back(at: UnderWay, reading: Reading) -> tuple[Line, ...]:
    """What was understood, set by set."""
    lines = [_set_line(at, p) for p in reading.performed]
    lines += [line("kept-skipped", name=name) for name in reading.skipped]
    lines += [line("kept-removed", name=name, number=number) for name, number in _only_removed(reading)]
    return tuple(lines)


def _set_line(at: UnderWay, performed: Performed) -> Line:
    exercise = at.session.plan.exercise(performed.exercise)
    shown = done_line(exercise, performed)
    if performed.set is None:
        return line("kept-warmup", name=performed.exercise, set=shown)
    return line("kept-set", name=performed.exercise, number=performed.set, set=shown)


def _only_removed(reading: Reading) -> list[tuple[str, int]]:
    again = {(p.exercise, p.set) for p in reading.performed}
    return [key for key in reading.replaces if key not in again]


def _is_surprising(at: UnderWay, reading: Reading) -> bool:
    if len(reading.performed) > 2 or reading.skipped:
        return True
    for performed in reading.performed:
        exercise = at.session.plan.exercise(performed.exercise)
        if performed.set is None or performed.set > len(exercise.sets):
            return True
        planned = exercise.sets[performed.set - 1]
        if planned.load is None or performed.load is None or planned.load.thousandths <= 0:
            continue
        if abs(performed.load.kg / planned.load.kg - 1) > FAR_OFF:
            return True
    return False


def _named(reading: Reading) -> str | None:
    """The exercise that a message with pain speaks of, where it reports one."""
    return reading.performed[-1].exercise if reading.performed else None


def _session_on(client: ClientDesk, reading: Reading) -> Session | None:
    return next((s for s in (*client.week, *client.last_week) if s.day == reading.day), None)


def _says_anything(reading: Reading) -> bool:
    return reading.pain is not None or reading.question or reading.minutes is not None


def _ends(turn: Turn, at: UnderWay) -> bool:
    """Whether the report itself has already ended the session."""
    return any(isinstance(f, SessionEnded) for f in turn.facts) or at.session.ended is not None


def _after(at: UnderWay, turn: Turn) -> UnderWay:
    """The session with what this turn reported, for its summary."""
    session = at.session
    for fact in turn.facts:
        if isinstance(fact, Reported):
            session = with_report(session, fact)
    return UnderWay(at.client, session)
