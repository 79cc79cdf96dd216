"""Less time today: what is left of the session cut to fit the minutes that there are, said in a line, with a way back.

The cut itself is `training.shorten`, at the client's own pace where it is known. A second number of minutes is cut from
what the session was before the first.
"""

from dataclasses import replace
from decimal import Decimal

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.cardkeys import back_button
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.replanning import keep_plan, time_slot
from bot.dialogue.saytrades import trades_line
from bot.dialogue.timewords import LEAST, read_time_wish
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.saying import Button, Line, Rows, Say, Toast, line
from bot.training.facts import PlanChanged
from bot.training.pace import Pace
from bot.training.people import Standing
from bot.training.plan import Measure, PlannedExercise
from bot.training.replanned import AsBefore, Shorter
from bot.training.session import Session
from bot.training.shorten import shorten
from bot.training.shorten_values import Allowed, Shortened, what_remains

OFFERED = (20, 30, 40)
"""Minutes on the buttons; any other number is typed."""
MOST = 300


def ask(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """`Less time`: how many minutes are there?"""
    del desk
    session = pressed_session(client, press)
    if session is None or not _may(client):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if session.ended is not None or session.is_all_done:
        return Turn(says=(Toast(tap.query, line("toast-ended")),))
    return Turn(says=(Toast(tap.query), which_minutes(UnderWay(client, session), OFFERED)))


def which_minutes(at: UnderWay, minutes: tuple[int, ...]) -> Say:
    """The numbers as buttons; nothing is cut before one of them is tapped."""
    token = at.session.token
    chips = tuple(Button(line("time-chip", minutes=n), show_press("cut", token, n)) for n in minutes)
    return Say(at.client.profile.chat, (line("time-ask"),), (chips,), slot=time_slot(at.session), fresh=True)


def wished(client: ClientDesk, typed: Typed) -> Turn | None:
    """Less time, in words that are no number of minutes alone: cut where the minutes are told, else they are asked for.

    `None` where the words say something else, and where an exercise is counted in such minutes.
    """
    session, wish = client.session, read_time_wish(typed.text)
    if session is None or wish is None or session.ended is not None or session.is_all_done or not _may(client):
        return None
    if wish.minutes is not None and any(_takes_minutes(e) for e in session.plan.exercises):
        return None
    at = UnderWay(client, session)
    if wish.minutes is None or wish.is_asked:
        return Turn(says=(which_minutes(at, OFFERED if wish.minutes is None else (wish.minutes,)),))
    return fit_into(at, Decimal(wish.minutes))


def _takes_minutes(exercise: PlannedExercise) -> bool:
    return exercise.measure is Measure.SECONDS and any(s.reps.high >= LEAST * 60 for s in exercise.sets)


def cut(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """So many minutes from now on, by a button."""
    del desk
    session, minutes = pressed_session(client, press), press.number(0)
    if session is None or minutes is None or not 0 < minutes <= MOST or not _may(client):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if session.ended is not None or session.is_all_done:
        return Turn(says=(Toast(tap.query, line("toast-ended")),))
    return Turn(says=(Toast(tap.query),)) + fit_into(UnderWay(client, session), Decimal(minutes), fresh=False)


def fit_into(at: UnderWay, minutes: Decimal, *, fresh: bool = True) -> Turn:
    """What is left, cut to these minutes; as it was before an earlier cut where that fits by now."""
    if at.session.ended is not None or at.session.is_all_done or minutes > MOST:
        return Turn()
    if not _may(at.client):
        return Turn(says=(Say(at.client.profile.chat, (line("today-paused"),)),))
    whole, undone = _uncut(at.session)
    kept = frozenset(name for name, _ in at.client.held)
    pace = None if at.client.pace is None else Pace.from_json(at.client.pace.after)
    found = shorten(whole, minutes, allowed=Allowed(spared=kept), pace=pace)
    if found.trades:
        rounded = max(1, int(minutes))
        why = Shorter(rounded, found.trades, tuple(sorted(found.given_up.items())))
        lines = _lines(at, found, whole, rounded)
        if undone and found.plan == at.session.plan:  # cut to this already
            return Turn(says=(_said(at, lines, fresh=fresh),))
        after, turn = keep_plan(at, *undone, PlanChanged(whole.id, found.plan, why))
        return turn + Turn(says=(_said(after, lines, fresh=fresh),))
    lines = (line("minutes-enough", minutes=minutes),)
    if not undone:
        return Turn(says=(_said(at, lines, fresh=fresh),))
    after, turn = keep_plan(at, *undone)
    return turn + Turn(says=(_said(after, lines, fresh=fresh),))


def _uncut(session: Session) -> tuple[Session, tuple[PlanChanged, ...]]:
    """The session as it was before the last cut, and the fact that takes the cut back."""
    last = session.changes[-1] if session.changes else None
    if last is None or not isinstance(last.why, Shorter):
        return session, ()
    whole = replace(session, plan=last.before, changes=session.changes[:-1])
    return whole, (PlanChanged(session.id, last.before, AsBefore()),)


def _lines(at: UnderWay, found: Shortened, whole: Session, minutes: int) -> tuple[Line, ...]:
    given = trades_line(found.trades, whole.plan)
    if not found.fits:
        first = what_remains(replace(at.session, plan=found.plan))
        name = first[0].exercise.name if first else found.plan.exercises[0].name
        return (line("time-too-few", minutes=minutes, name=name),)
    return (line("time-cut", minutes=minutes, about=found.minutes), line("time-given", given=given))


def _said(at: UnderWay, lines: tuple[Line, ...], *, fresh: bool) -> Say:
    is_cut = bool(at.session.changes) and isinstance(at.session.changes[-1].why, Shorter)
    button = back_button(at.session) if is_cut else None
    rows: Rows = () if button is None else ((button,),)
    return Say(at.client.profile.chat, lines, rows, slot=time_slot(at.session), fresh=fresh)


def _may(client: ClientDesk) -> bool:
    """Not while they are paused."""
    return client.profile.standing is Standing.ACTIVE
