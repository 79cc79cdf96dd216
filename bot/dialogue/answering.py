"""A typed answer to the question about a doubtful message: `15`, `the cable one`, `no, 60` complete that message.

Only the question asked straight before is answered so, and for some minutes (`ASKED_FOR`): behind anything else short
words are of that.
"""

from dataclasses import replace

from bot.dialogue.desk import ClientDesk, Desk, OpenDoubt
from bot.dialogue.doubt import TALK, asked_now, choice_line, question_about, request_then
from bot.dialogue.incoming import Typed
from bot.dialogue.picking import dropped, keep_as, kept_line
from bot.dialogue.reporting import KEPT
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay
from bot.notation.answer import Ask, Reading
from bot.notation.printer import show_sets
from bot.notation.reading import read_message
from bot.notation.replies import Unsettled, read_reply
from bot.saying import Line, React, Say, line
from bot.training.facts import Reported
from bot.training.session import Session


def answered(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn | None:
    """What follows where the words answer the question asked last; `None` where they are a message of their own."""
    session = client.session
    doubt = None if session is None or incoming.reply_to is not None else _asked(desk, client, session)
    if session is None or doubt is None:
        return None
    at = UnderWay(client, session)
    request = request_then(desk, at, doubt)
    ask = read_message(request).ask
    reply = None if ask is None else read_reply(request, ask, incoming.text)
    if ask is None or reply is None:
        return None
    if reply is Unsettled.REFUSED:
        return dropped(client, doubt)
    if reply is Unsettled.OPEN:
        return Turn(says=(_again(at, doubt, ask),), keeps=(asked_now(desk, client.profile.chat, doubt.key),))
    turn = keep_as(desk, at, doubt, reply, kept_line(doubt, _label(at, ask, reply)))
    kept = any(isinstance(fact, Reported) for fact in turn.facts)
    return turn + Turn(says=(React(incoming.chat, incoming.message, KEPT),) if kept else ())


def _asked(desk: Desk, client: ClientDesk, session: Session) -> OpenDoubt | None:
    """The doubt that was asked about straight before, where nothing was reported behind it."""
    if desk.talk is None or desk.talk.name != TALK:
        return None
    reported = tuple(r.key for r in session.reports)
    key = desk.talk.step
    return next((d for d in client.doubts if d.key == key and d.session == session.id and d.stood == reported), None)


def _again(at: UnderWay, doubt: OpenDoubt, ask: Ask) -> Say:
    """The question once more, with why."""
    question = question_about(at, doubt.key, doubt.words, ask)
    return replace(question, lines=(line("doubt-still"), *question.lines))


def _label(at: UnderWay, ask: Ask, reading: Reading) -> Line:
    """What the message is kept as: the words of its button, or its sets."""
    chosen = next((c for c in ask.choices if c.reading == reading), None)
    if chosen is not None:
        return choice_line(chosen)
    exercises = at.session.plan.exercises
    return line("doubt-choice", label=show_sets(reading.performed, exercises) or ", ".join(reading.skipped))
