"""What follows when a report is kept, changed or taken back: the record, the card, the strength, next-time loads."""

from dataclasses import replace

from bot.dialogue.card import card
from bot.dialogue.desk import Desk
from bot.dialogue.ending import finish
from bot.dialogue.nexttime import next_time_line
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay
from bot.saying import Line, Say
from bot.training.facts import Ending, Fact, Reported, ReportTakenBack, SessionEnded, SessionReopened
from bot.training.report import Performed
from bot.training.session import Session, with_report, without_report


def keep_report(desk: Desk, at: UnderWay, report: Reported) -> Turn:
    """A report is added, or takes the place of the one of the same key."""
    return _kept(desk, at, with_report(at.session, report), report)


def ends(turn: Turn, at: UnderWay) -> bool:
    """Whether the session is over, or this turn has ended it."""
    return any(isinstance(f, SessionEnded) for f in turn.facts) or at.session.ended is not None


def after(at: UnderWay, turn: Turn) -> UnderWay:
    """The session with what this turn reported, for its summary."""
    session = at.session
    for fact in turn.facts:
        if isinstance(fact, Reported):
            session = with_report(session, fact)
    return UnderWay(at.client, session)


def keep_taken_back(desk: Desk, at: UnderWay, taken: ReportTakenBack) -> Turn:
    """A report counts no more."""
    return _kept(desk, at, without_report(at.session, taken), taken)


def _kept(desk: Desk, at: UnderWay, session: Session, fact: Reported | ReportTakenBack) -> Turn:
    now = _during(desk, at, session)
    reopened = at.session.ended is not None and (not session.is_all_done or at.session.ended is not Ending.FINISHED)
    facts: tuple[Fact, ...] = (fact,)
    if reopened:
        facts += (SessionReopened(session.id),)
        session = replace(session, ended=None)
    then = UnderWay(at.client, replace(session, first_at=now.first_at, last_at=now.last_at))
    touched = _touched(at.session, then.session)
    turn = Turn(facts, (card(then),), then.strengths(touched))
    turn += _next_times(at, then, touched)
    if then.session.is_all_done and then.session.ended is None:
        turn += finish(desk, then)
    return turn


def _during(desk: Desk, at: UnderWay, session: Session) -> Session:
    """The times between which sets were reported, for the minutes it took."""
    return replace(session, first_at=at.session.first_at or desk.now, last_at=desk.now)


def _touched(before: Session, after: Session) -> tuple[str, ...]:
    """The exercises whose sets are not the same any more."""
    names = [e.name for e in after.plan.exercises]
    return tuple(n for n in names if _of(before, n) != _of(after, n))


def _of(session: Session, exercise: str) -> tuple[Performed, ...]:
    return tuple(p for p in session.done if p.exercise == exercise)


def _next_times(before: UnderWay, after: UnderWay, touched: tuple[str, ...]) -> Turn:
    """One message for the exercises that this report finished, or whose finished sets it changed; nothing where a
    later session has been reported, or is under way: its loads don't follow from this one any more."""
    told: list[Line] = []
    if not after.client.session_is_latest or after.waits_for_yes:
        return Turn()
    for exercise in after.session.plan.exercises:
        if exercise.name not in touched or not after.session.is_complete(exercise):
            continue
        if not after.session.work_done(exercise.name):
            continue
        said = next_time_line(after, exercise)
        was_told = before.session.is_complete(exercise) and before.session.work_done(exercise.name)
        if said is not None and not (was_told and said == next_time_line(before, exercise)):
            told.append(said)
    if not told:
        return Turn()
    return Turn(says=(Say(after.client.profile.chat, tuple(told)),))
