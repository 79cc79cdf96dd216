"""Typed reports: read as a coach who knows the plan would, kept, and answered as quietly as will do."""

import re
from dataclasses import replace
from decimal import Decimal

from bot.dialogue import enrol, journey, lesstime, missing, resting
from bot.dialogue.awaysaid import away_said, ill_said, said_beside
from bot.dialogue.buttons import show_press
from bot.dialogue.daymoves import given_up
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.doubt import ask_which, read_words
from bot.dialogue.ending import finish
from bot.dialogue.hurting import exercise_of, told_of_pain, with_hold
from bot.dialogue.incoming import Typed
from bot.dialogue.keeping import after, ends, keep_report
from bot.dialogue.lesstime import fit_into, which_minutes
from bot.dialogue.phrases import done_line
from bot.dialogue.relay import question
from bot.dialogue.swapping import wish_of, wished
from bot.dialogue.timewords import named_later
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, on_another_day, session_on
from bot.notation.answer import Reading, Request
from bot.notation.names import read_names, session_index
from bot.notation.pain import told_pain
from bot.notation.reading import read_message
from bot.saying import Button, Line, React, Say, line
from bot.training.calendar import local_time
from bot.training.facts import Reported
from bot.training.report import Performed, Stage
from bot.training.session import Session

KEPT, CHANGED, HEARD = "👍", "✍", "👌"
"""Reactions of the platform's fixed list."""
_GREETINGS = (
    "hi hello hey hiya morning good evening afternoon night thanks thank you ty thx cheers ta ok okay k cool great",
    "nice perfect lovely super sure yes yep yeah yay will do got it bye see ya coach there all day have a",
)
_PLEASANT = frozenset(word for words in _GREETINGS for word in words.split())
_GIVES_UP = re.compile(
    r"\b(?:can'?t|cannot|won'?t|not going to|unable to)\b.{0,24}\b(?:train|make it|today|session|gym)\b"
    r"|\b(?:skip|skipping|move|moving|reschedule|postpone|swap)\b.{0,24}\b(?:it|today|session|tomorrow|workout|\w+day)\b"
)
"""Words that give today's session up, or want it on another day: answered with the days as buttons."""
_WORDS = re.compile(r"[a-z]+")
FAR_OFF = Decimal("0.2")
"""A load further than this from the plan is read back in words. Ours."""


def typed(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """What a client typed, whatever it is."""
    if desk.reply_about == client.coach.id:
        return _to_coach(desk, client, incoming)
    given = given_up(desk, client, incoming) or away_said(desk, client, incoming) or _wished(desk, client, incoming)
    if given is not None:
        return given
    if client.session is None:
        return _without_session(desk, client, incoming)
    at = UnderWay(client, client.session)
    reading = read_words(desk, at, incoming.text)
    turn = _beside(desk, at, incoming, reading)
    if reading.pain is not None and not reading.pain.urgent:
        held = named_exercise(at.session, incoming.text, reading) or exercise_of(at.session)
        at = UnderWay(with_hold(desk, client, held), at.session)
    if reading.day is not None and reading.day != at.session.day:
        other = session_on(client, reading.day)
        if other is None:
            return turn + Turn(says=(Say(incoming.chat, (line("no-session-that-day", day=reading.day),)),))
        return turn + _report_of_day(desk, at.client, incoming, other)
    turn += _report(desk, at, incoming, reading)
    turn += _minutes(at, incoming, turn, reading)
    return turn + _absent_beside(desk, client, incoming, (turn, reading))


def _absent_beside(desk: Desk, client: ClientDesk, incoming: Typed, kept: tuple[Turn, Reading]) -> Turn:
    """Away or ill in a message of which something else was kept; beside a sign that can't wait nothing is asked."""
    turn, reading = kept
    if not turn.facts or (reading.pain is not None and reading.pain.urgent):
        return Turn()
    return said_beside(desk, client, incoming)


def _wished(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn | None:
    """Words that set something: rest notices, the clock, training days, today's time."""
    return (
        resting.wished(client, incoming)
        or journey.place_said(desk, client, incoming)
        or enrol.days_wanted(desk, client, incoming)
        or lesstime.wished(client, incoming)
    )


def _minutes(at: UnderWay, incoming: Typed, turn: Turn, reading: Reading) -> Turn:
    """Less time: what is left after the sets of the same message is cut; while those are in doubt, only asked about."""
    minutes, pain = reading.minutes, reading.pain
    if minutes is None or (pain is not None and pain.urgent):
        return Turn()
    if (day := named_later(incoming.text, at.session.day)) is not None:
        return Turn(says=(Say(incoming.chat, (line("minutes-later", day=day),), silent=True),))
    if reading.ask is not None and at.session.ended is None:
        return Turn(says=(which_minutes(at, (max(1, int(minutes)),)),))
    return Turn() if ends(turn, at) else fit_into(after(at, turn), minutes)


def _report_of_day(desk: Desk, client: ClientDesk, incoming: Typed, session: Session) -> Turn:
    """A report of a day that the words name."""
    at = on_another_day(client, session)
    return _report(desk, at, incoming, read_words(desk, at, incoming.text))


def typed_beside_media(desk: Desk, client: ClientDesk, words: Typed) -> Turn:
    """The words under a picture or a video: sets and pain count, mere talk is left to the coach who gets it anyway."""
    turn = typed(desk, client, words)
    return turn if turn.facts else Turn()


def sets_beside_pain(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """The sets in the answer to the Pain button, of which `hurting` has kept the pain: nothing else is made of it."""
    session = client.session
    if session is None or session.ended is not None:
        return Turn()
    reading = read_words(desk, UnderWay(client, session), incoming.text)
    if not reading.performed or reading.replaces or reading.day is not None:
        return Turn()
    held = named_exercise(session, incoming.text, reading) or exercise_of(session)
    return _report(desk, UnderWay(with_hold(desk, client, held), session), incoming, reading)


def _report(desk: Desk, at: UnderWay, incoming: Typed, reading: Reading) -> Turn:
    """What is to be kept of it; where it only wants another exercise, that is offered and nothing is kept."""
    wish = wish_of(at, incoming.text, reading)
    if wish is None:
        return _kept(desk, at, incoming, reading)
    if reading.pain is None:
        return wished(at, incoming, wish)
    turn = _kept(desk, at, incoming, reading)
    return turn if reading.ask is not None or ends(turn, at) else turn + wished(at, incoming, wish, reading.pain)


def _kept(desk: Desk, at: UnderWay, incoming: Typed, reading: Reading) -> Turn:
    key = f"m{incoming.message}"
    if reading.ask is not None:
        again = _told_again(desk, at, incoming)
        return Turn(says=(again,)) if again is not None else ask_which(desk, at, key, incoming.text, reading.ask)
    turn = Turn()
    if reading.performed and (said := _not_again(at, incoming, reading)) is not None:
        return Turn(says=(said,))
    if reading.performed or reading.replaces or reading.skipped:
        report = Reported(at.session.id, key, reading.performed, reading.replaces, reading.skipped)
        turn = keep_report(desk, at, report) + _acknowledged(at, incoming, reading)
    if reading.finished and not ends(turn, at):
        return turn + finish(desk, after(at, turn))
    if turn == Turn() and not _says_anything(reading):
        return _talk(desk, at.client, incoming)
    return turn


def _beside(desk: Desk, at: UnderWay, incoming: Typed, reading: Reading) -> Turn:
    """What a message may say beside its sets, kept whatever else is wrong with it: pain, a question."""
    turn = Turn()
    if reading.pain is not None:
        named = named_exercise(at.session, incoming.text, reading)
        turn += told_of_pain(desk, at.client, reading.pain, words=incoming.text, exercise=named)
    elif reading.question:
        turn += question(at.client, incoming.message, incoming.text)
        turn += Turn(says=(Say(incoming.chat, (line("question-sent", coach=at.client.coach.name),), silent=True),))
    return turn


def _to_coach(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """A reply to the coach's own words goes to the coach, whatever is in it; pain in it counts."""
    pain = told_pain(incoming.text)
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
    if reading.day is not None and (session := session_on(client, reading.day)) is not None:
        return turn + _report_of_day(desk, client, incoming, session)
    reports = bool(reading.performed or reading.ask)
    if turn != Turn():
        if reports and not (reading.pain is not None and reading.pain.urgent):
            turn += Turn(says=(Say(me.chat, (line("no-session-beside"),), silent=True),))
        return turn + _absent_beside(desk, client, incoming, (turn, reading))
    if reports or reading.finished:
        start = Button(line("button-start-today"), show_press("start"))
        return Turn(says=(Say(me.chat, (line("no-session-now"),), ((start,),)),))
    return _talk(desk, client, incoming)


def is_small_talk(text: str) -> bool:
    """A greeting, thanks, a thumb: heard, and nothing more."""
    words = _WORDS.findall(text.lower())
    return len(words) <= 4 and all(w in _PLEASANT for w in words) and not any(c.isdigit() for c in text)


def _talk(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """No report, no pain, no question: nothing is kept, and the way to the coach is one tap."""
    if is_small_talk(incoming.text):
        return Turn(says=(React(incoming.chat, incoming.message, HEARD),))
    session = client.session
    if session is not None and not session.ended and not session.reports and _GIVES_UP.search(incoming.text.lower()):
        return Turn(says=(missing.ask_where_to(desk, client, session),))
    if (ill := ill_said(desk, client, incoming)) is not None:
        return ill
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
    exercise = at.session.exercise(performed.exercise)
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
        exercise = at.session.exercise(performed.exercise)
        if performed.set is None or performed.set > len(exercise.sets):
            return True
        planned = exercise.sets[performed.set - 1]
        if planned.load is None or performed.load is None or planned.load.thousandths <= 0:
            continue
        if abs(performed.load.kg / planned.load.kg - 1) > FAR_OFF:
            return True
    return False


def named_exercise(session: Session, text: str, reading: Reading) -> str | None:
    """The exercise that a message with pain speaks of: named in it, or reported by it."""
    names = read_names(_WORDS.findall(text.lower()), session_index(session.plan.exercises))
    single = [hit.exercises[0] for hit in names if len(hit.exercises) == 1]
    if single:
        return session.plan.exercises[single[0]].name
    return reading.performed[-1].exercise if reading.performed else None


def _not_again(at: UnderWay, incoming: Typed, reading: Reading) -> Say | None:
    """Sets beyond the plan are asked for by name once the session is over, and the same sets twice are kept once."""
    session = at.session
    beyond = [p for p in reading.performed if _is_beyond(session, p)]
    if not beyond or len(beyond) < len(reading.performed) or reading.replaces:
        return None
    kept = [(p.exercise, p.load, p.reps) for p in session.done if p.stage is Stage.WORK]
    if all((p.exercise, p.load, p.reps) in kept for p in beyond if p.stage is Stage.WORK) and len(beyond) > 1:
        return Say(incoming.chat, (line("kept-already", name=beyond[0].exercise),), reply_to=incoming.message)
    names = read_names(_WORDS.findall(incoming.text.lower()), session_index(session.plan.exercises))
    if session.is_all_done and not names:
        return Say(incoming.chat, (line("session-over", name=beyond[0].exercise),), reply_to=incoming.message)
    return None


def _told_again(desk: Desk, at: UnderWay, incoming: Typed) -> Say | None:
    """The same sets told once more: read as if nothing were kept yet, they are all there already."""
    blank = UnderWay(at.client, replace(at.session, reports=(), ended=None))
    sets = [p for p in read_words(desk, blank, incoming.text).performed if p.stage is Stage.WORK]
    kept = {(p.exercise, p.set, p.load, p.reps, p.side) for p in at.session.done}
    if len(sets) < 2 or any((p.exercise, p.set, p.load, p.reps, p.side) not in kept for p in sets):
        return None
    return Say(incoming.chat, (line("kept-already", name=sets[0].exercise),), reply_to=incoming.message)


def _is_beyond(session: Session, performed: Performed) -> bool:
    planned = len(session.exercise(performed.exercise).sets)
    return performed.set is not None and performed.set > planned and performed.stage is Stage.WORK


def _says_anything(reading: Reading) -> bool:
    return reading.pain is not None or reading.question or reading.minutes is not None
