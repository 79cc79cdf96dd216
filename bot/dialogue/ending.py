"""The end of a session: minutes, best sets, what was left out, and how hard it felt."""

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.card import card
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.doubt import ask_again
from bot.dialogue.incoming import Tapped
from bot.dialogue.nexttime import ask_for_yes
from bot.dialogue.pacing import paced
from bot.dialogue.phrases import done_line, names_line
from bot.dialogue.sayrating import read_rating
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.saying import Button, Line, Rows, Say, Toast, Urgency, line
from bot.training.facts import EffortRated, Ending, SessionEnded
from bot.training.session import Session
from bot.training.volume import Done, best_of, tonnage

FELT_ASKED_FOR = timedelta(hours=3)
"""So long a typed number alone is the answer to how hard the session felt."""
LONGEST_MINUTES = 240
"""A session that seems to have taken longer was reported after the fact: no minutes are said."""
SHORTEST_MINUTES = 5


def end_slot(session: str) -> str:
    """The slot of the message that closes a session."""
    return f"end:{session}"


def finish(desk: Desk, at: UnderWay, *, urgency: Urgency = Urgency.REPLY) -> Turn:
    """The session is over: the summary, the one question of effort unless it was answered before, and readings still
    in doubt once more."""
    minutes = minutes_of(at.session)
    ended = _ended(at.session)
    lines = summary_lines(UnderWay(at.client, ended), minutes)
    effort = at.session.effort
    ask = Say(
        at.client.profile.chat,
        (*lines, line("felt-ask") if effort is None else line("felt-said", rating=effort)),
        felt_rows(at.session) if effort is None else (),
        slot=end_slot(at.session.id),
        fresh=True,
        urgency=urgency,
    )
    fact = SessionEnded(at.session.id, Ending.FINISHED, minutes)
    talk = Talk("felt", at.session.id, expires_at=desk.now + FELT_ASKED_FOR)
    keeps = (TalkSet(at.client.profile.chat, talk),) if effort is None else ()
    says = (card(UnderWay(at.client, ended)), ask, *_doubts(desk, at), *ask_for_yes(at))
    return Turn((fact,), says, (*keeps, *paced(desk, at.client, at.session)))


def summary_lines(at: UnderWay, minutes: int | None) -> tuple[Line, ...]:
    """What was done, in words."""
    session = at.session
    unit = at.client.profile.unit
    done = tuple(Done(session.exercise(p.exercise), p) for p in session.done)
    lines: list[Line] = [line("end-title", title=session.plan.title)]
    sets = sum(session.sets_reported(e) for e in session.plan.exercises)
    if minutes is not None:
        lines.append(line("end-minutes", minutes=minutes, planned=session.plan.minutes))
    lines.append(
        line("end-sets", sets=sets, planned=session.plan.set_count, tonnage=tonnage(done, unit), unit=unit.value)
    )
    lines += [line("end-best", name=d.exercise.name, set=done_line(d.exercise, d.performed)) for d in best_of(done)]
    left_out = tuple(e.name for e in session.plan.exercises if not session.work_done(e.name))
    short = tuple(
        e.name
        for e in session.plan.exercises
        if session.work_done(e.name) and len({p.set for p in session.work_done(e.name)}) < len(e.sets)
    )
    if left_out:
        lines.append(line("end-left-out", names=names_line(left_out)))
    if short:
        lines.append(line("end-short", names=names_line(short)))
    return tuple(lines)


def felt_rows(session: Session) -> Rows:
    """The eleven answers, 0 to 10, four in a row."""
    chips = [Button(line("felt-chip", rating=n), show_press("felt", session.token, n)) for n in range(11)]
    return (tuple(chips[:4]), tuple(chips[4:8]), tuple(chips[8:]))


def felt(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """How hard the session felt, 0 to 10; asked once, may be changed while the buttons stand."""
    del desk
    rating, session = press.number(0), pressed_session(client, press)
    if session is None or rating is None or not 0 <= rating <= 10:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return Turn(says=(Toast(tap.query, line("toast-felt", rating=rating)),)) + _rated(client, session, rating)


def felt_typed(desk: Desk, client: ClientDesk, text: str) -> Turn | None:
    """The same, typed; `None` where the words are something else, or nothing waits for them."""
    rating, session = read_rating(text), client.session
    if rating is None or session is None or desk.talk is None or session.id != desk.talk.step or session.ended is None:
        return None
    return _rated(client, session, rating)


def _rated(client: ClientDesk, session: Session, rating: int) -> Turn:
    chat = client.profile.chat
    lines = (*summary_lines(UnderWay(client, session), minutes_of(session)), line("felt-said", rating=rating))
    said = Say(chat, lines, slot=end_slot(session.id))
    return Turn((EffortRated(session.id, rating),), (said,), (TalkSet(chat, None),))


def minutes_of(session: Session) -> int | None:
    """From first to last report in whole minutes, with a first set before it; `None` where all came at once."""
    if session.first_at is None or session.last_at is None:
        return None
    minutes = round((session.last_at - session.first_at).total_seconds() / 60) + 2
    return minutes if SHORTEST_MINUTES <= minutes <= LONGEST_MINUTES else None


def _ended(session: Session) -> Session:
    return replace(session, ended=Ending.FINISHED)


def _doubts(desk: Desk, at: UnderWay) -> tuple[Say, ...]:
    return tuple(ask_again(desk, at, doubt) for doubt in at.client.doubts if doubt.session == at.session.id)
