"""A message that could be read in two ways: one short question with the readings as buttons, kept until answered."""

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.buttons import check_of, show_press
from bot.dialogue.desk import Desk, OpenDoubt
from bot.dialogue.pointing import point_at
from bot.dialogue.replaced import AFTER_ALL, in_place_of, taken_out
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.dialogue.underway import UnderWay
from bot.notation.answer import Ask, Choice, Reading, Request
from bot.notation.reading import read_message
from bot.saying import Button, Line, Rows, Say, Strip, line
from bot.training.calendar import local_time
from bot.training.facts import DoubtKept, DoubtSettled

LONGEST_QUOTE = 200
LONGEST_LABEL = 38
"""Characters of a reading that a button can show whole; longer ones stand in the message, numbered by the buttons."""


TALK = "doubt"
"""The talk in which short words answer the question."""
ASKED_FOR = timedelta(minutes=5)
"""So long they do: between sets. Ours."""


def doubt_slot(key: str) -> str:
    """The slot of the question about a message."""
    return f"ask:{key}"


def read_words(desk: Desk, at: UnderWay, text: str) -> Reading:
    """The reading of a message beside this session: the one function that chat and terminal share."""
    return read_message(request_of(desk, at, text))


def request_of(desk: Desk, at: UnderWay, text: str) -> Request:
    """A message with what it is read beside."""
    session, me = at.session, at.client.profile
    current = session.current.name if session.current and not session.ended else None
    now = local_time(desk.now, me.zone)
    planned = {exercise.name for exercise in session.plan.exercises}
    done = tuple(p for p in session.done if p.exercise in planned)
    return Request(text, me.unit, now, at.live_exercises(), done, current)


def asked_now(desk: Desk, chat: int, key: str) -> TalkSet:
    """From now on short words answer the question about this message."""
    return TalkSet(chat, Talk(TALK, key, expires_at=desk.now + ASKED_FOR))


def ask_which(desk: Desk, at: UnderWay, key: str, text: str, ask: Ask) -> Turn:
    """Keeps the doubt and asks; another talk that waits for words goes on waiting."""
    stood = tuple(report.key for report in at.session.reports)
    fact = DoubtKept(at.client.profile.id, at.session.id, key, text, stood)
    waits = desk.talk is not None and desk.talk.name != TALK
    keeps = () if waits else (asked_now(desk, at.client.profile.chat, key),)
    return Turn((fact,), (question_about(at, key, text, ask),), keeps)


def ask_again(desk: Desk, at: UnderWay, doubt: OpenDoubt) -> Say:
    """The same question once more, at the session's end."""
    return question_about(at, doubt.key, doubt.words, read_then(desk, at, doubt).ask)


def read_then(desk: Desk, at: UnderWay, doubt: OpenDoubt) -> Reading:
    """The reading beside the session as it stood when the message came: what was reported since changes no meaning."""
    return read_message(request_then(desk, at, doubt))


def request_then(desk: Desk, at: UnderWay, doubt: OpenDoubt) -> Request:
    """The message that is asked about, beside the session as it stood."""
    if doubt.stood is None:
        return request_of(desk, at, doubt.words)
    then = tuple(report for report in at.session.reports if report.key in doubt.stood)
    return request_of(desk, UnderWay(at.client, replace(at.session, reports=then, ended=None)), doubt.words)


def settle(at: UnderWay, key: str) -> Turn:
    """The doubt about this message is over, since the message was written anew."""
    doubt = next((d for d in at.client.doubts if d.key == key), None)
    if doubt is None:
        return Turn()
    fact = DoubtSettled(at.client.profile.id, doubt.session, key)
    return Turn((fact,), (Strip(at.client.profile.chat, slot=doubt_slot(key)),))


def question_about(at: UnderWay, key: str, text: str, ask: Ask | None) -> Say:
    """The question with its readings as buttons."""
    token = at.session.token
    choices = ask.choices if ask else ()
    told = any(len(choice.label) > LONGEST_LABEL for choice in choices)
    alone = told and len(choices) == 1
    buttons = [
        Button(
            _on_button(n, c, told=told, alone=alone),
            show_press("pick", token, key, n - 1, check_of(c.label)),
        )
        for n, c in enumerate(choices, 1)
    ]
    none = Button(line("doubt-none"), show_press("nopick", token, key))
    if out := taken_out(at.session, text, ask):
        buttons.append(Button(line("place-after-all", name=out), show_press("instead", token, key, AFTER_ALL)))
    one, places = in_place_of(at.session, text, ask)
    buttons += [
        Button(line("place-of", name=name), show_press("instead", token, key, point_at(at.session, name)))
        for name in places
    ]
    rows: Rows = (*((b,) for b in buttons), (none,))
    numbered = [line("doubt-reading", number=n, label=choice_line(c)) for n, c in enumerate(choices, 1)]
    readings = [choice_line(choices[0])] if alone else numbered if told else []
    if one is not None and places:
        readings.append(line("place-ask", exercise=one.name))
    lines = (question_line(text, ask), *readings, line(_way_to_answer(ask, has_choices=bool(buttons))))
    return Say(at.client.profile.chat, lines, rows, slot=doubt_slot(key), fresh=True)


def _way_to_answer(ask: Ask | None, *, has_choices: bool) -> str:
    """How the question can be answered, in words."""
    if ask is not None and ask.unfinished is not None:
        return "doubt-type-load"
    return "doubt-or-type" if has_choices else "doubt-type"


def _on_button(number: int, choice: Choice, *, told: bool, alone: bool) -> Line:
    """What a reading's button says: the reading, or which of those it is that stand in the message."""
    if alone:
        return line("doubt-yes")
    return line("doubt-number", number=number) if told else choice_line(choice)


def choice_line(choice: Choice) -> Line:
    """A reading in words: its sets, its exercise, or its day."""
    day = choice.reading.day
    if day is not None and choice.label == day.isoformat():
        return line("doubt-day", day=day)
    return line("doubt-choice", label=choice.label)


def question_line(text: str, ask: Ask | None) -> Line:
    """The one short question, with the doubtful words in it."""
    if ask is None:
        return line("ask-unsure", words=quoted(text))
    first, last = ask.span
    words = text[first:last].strip() or text
    return line(f"ask-{ask.question}", words=quoted(words))


def quoted(words: str) -> str:
    """Somebody's words on one line, not too long."""
    flat = " ".join(words.split())
    return flat if len(flat) <= LONGEST_QUOTE else flat[: LONGEST_QUOTE - 1] + "…"
