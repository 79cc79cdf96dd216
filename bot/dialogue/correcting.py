"""An edited message corrects what it had reported; what can't be read leaves the record as it was."""

from dataclasses import replace

from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.doubt import ask_which, read_words, request_of, settle
from bot.dialogue.hurting import told_of_pain
from bot.dialogue.incoming import Edited
from bot.dialogue.keeping import keep_report
from bot.dialogue.reporting import CHANGED, read_back
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay
from bot.notation.replies.told import read_told
from bot.saying import React, Say, line
from bot.training.facts import Reported, ReportTakenBack
from bot.training.session import Session


def edited(desk: Desk, client: ClientDesk, incoming: Edited) -> Turn:
    """Reads the message anew beside the session as it was without it."""
    session = client.session
    if session is None:
        return Turn()
    key = f"m{incoming.message}"
    at = UnderWay(client, session)
    earlier = next((r for r in session.reports if r.key == key), None)
    waiting = any(d.key == key for d in client.doubts)
    if earlier is None and not waiting:
        return _news(desk, at, incoming)
    blank = UnderWay(client, replace(before_report(session, key), ended=None))
    reading = read_words(desk, blank, incoming.text)
    turn = Turn()
    if reading.pain is not None and not any(p.words == incoming.text for p in client.pains):
        turn += told_of_pain(desk, client, reading.pain, words=incoming.text)
    if reading.ask is not None:
        if waiting and earlier is None:
            return turn + ask_which(desk, at, key, incoming.text, reading.ask)
        return turn + _unclear(incoming)
    if not (reading.performed or reading.skipped or reading.replaces):
        return turn if turn != Turn() else _unclear(incoming)
    report = Reported(session.id, key, reading.performed, reading.replaces, reading.skipped)
    if report == earlier:
        return turn
    said = Say(incoming.chat, (line("corrected"), *read_back(at, reading)), reply_to=incoming.message, silent=True)
    says = (React(incoming.chat, incoming.message, CHANGED), said)
    overtaken = _overtaken(session, report)
    at = UnderWay(client, without_reports(session, overtaken))
    taken = Turn(tuple(ReportTakenBack(session.id, k) for k in overtaken))
    return turn + settle(at, key) + taken + keep_report(desk, at, report) + Turn(says=says)


def before_report(session: Session, key: str) -> Session:
    """The session as it was when this message was first reported; as it is where it never was."""
    keys = [r.key for r in session.reports]
    return replace(session, reports=session.reports[: keys.index(key)]) if key in keys else session


def _overtaken(session: Session, report: Reported) -> tuple[str, ...]:
    """Later corrections of just the sets that the edited message reports: its own last word counts instead."""
    keys = [r.key for r in session.reports]
    later = session.reports[keys.index(report.key) + 1 :] if report.key in keys else ()
    mine = {(p.exercise, p.set) for p in report.sets}
    return tuple(r.key for r in later if r.replaces and set(r.replaces) <= mine and not r.skipped)


def without_reports(session: Session, keys: tuple[str, ...]) -> Session:
    """The session without these reports."""
    return replace(session, reports=tuple(r for r in session.reports if r.key not in keys))


def _news(desk: Desk, at: UnderWay, incoming: Edited) -> Turn:
    """An edit of a message that had reported nothing: a set in it counts now, pain in it always. Short words may have
    answered a question, so that a bare number in them is no set."""
    told = read_told(request_of(desk, at, incoming.text), incoming.text)
    if told is not None and told.numbers:
        return _unclear(incoming)
    reading = read_words(desk, at, incoming.text)
    turn = Turn()
    if reading.pain is not None and not any(p.words == incoming.text for p in at.client.pains):
        turn += told_of_pain(desk, at.client, reading.pain, words=incoming.text)
    if reading.ask is None and reading.performed and not reading.replaces:
        key = f"m{incoming.message}"
        report = Reported(at.session.id, key, reading.performed, (), reading.skipped)
        said = Say(incoming.chat, read_back(at, reading), reply_to=incoming.message, silent=True)
        turn += keep_report(desk, at, report) + Turn(says=(said,))
    return turn


def _unclear(incoming: Edited) -> Turn:
    return Turn(says=(Say(incoming.chat, (line("edit-unclear"),), reply_to=incoming.message),))
