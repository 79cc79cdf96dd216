"""The optional notice that a rest is over: one at most waits for a client, as a rule of the schedule, so that a crash
loses none and a new set puts its own in the place of the one before. Off unless the client wants it.

Whether it is still wanted is asked anew when its time comes: never late, never once the set has been reported.
"""

from dataclasses import replace

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.cardkeys import set_rows
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Due, Incoming, RuleKind, Tapped, Typed
from bot.dialogue.phrases import planned_line
from bot.dialogue.restwords import RestWish, read_rest_wish
from bot.dialogue.turn import RuleSet, Turn
from bot.dialogue.underway import UnderWay
from bot.saying import Button, Line, Repeat, Rows, Say, Toast, Urgency, line
from bot.training.facts import PlanChanged, Reported, ReportTakenBack, RestNoticeSet, SessionEnded, SessionReopened
from bot.training.people import Standing
from bot.training.report import SetKey, Stage
from bot.training.rest_notice import LATEST, LONGEST_S, SHORTEST_S, RestDue, is_still_due, rest_after
from bot.training.session import Session, with_plan, with_report, without_report

SLOT = "rest"
OFFERED_S = (60, 90, 120, 180)
"""Seconds on the buttons; any other number is typed."""


def choose(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A button of `/settings` asks; the buttons under the question set it: off, as planned, or so many seconds."""
    del desk
    said, seconds = press.args[:1], press.number(0)
    if not said:
        chips = [Button(line("rest-chip", seconds=s), show_press("restset", "", s)) for s in OFFERED_S]
        plan = Button(line("rest-as-planned"), show_press("restset", "", "plan"))
        off = Button(line("rest-off"), show_press("restset", "", "off"))
        rows: Rows = ((plan, off), tuple(chips))
        return Turn(says=(Toast(tap.query), Say(tap.chat, (line("rest-ask"),), rows, slot="restset", fresh=True)))
    is_named = said[0] in ("plan", "off")
    if not is_named and (seconds is None or not SHORTEST_S <= seconds <= LONGEST_S):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    wish = RestWish(said[0] != "off", None if is_named else seconds)
    toast = Toast(tap.query, line("toast-rest-on" if wish.on else "toast-rest-off"))
    return Turn(says=(toast,)) + _set(client, wish, fresh=False)


def wished(client: ClientDesk, typed: Typed) -> Turn | None:
    """The same in words, at any time; `None` where they say something else."""
    wish = read_rest_wish(typed.text)
    if wish is None or client.profile.standing not in (Standing.ACTIVE, Standing.PAUSED):
        return None
    if wish.seconds is not None and not SHORTEST_S <= wish.seconds <= LONGEST_S:
        bounds = line("rest-bounds", least=SHORTEST_S, most=LONGEST_S // 60)
        return Turn(says=(Say(typed.chat, (bounds,)),))
    return _set(client, wish, fresh=True)


def _set(client: ClientDesk, wish: RestWish, *, fresh: bool) -> Turn:
    """Kept, where it is not so already; what waits is of the old choice, and is taken away."""
    me, life = client.profile, client.life
    told = Say(me.chat, (rest_line(wish.on, wish.seconds),), slot="restset", fresh=fresh)
    if (life.rest_notice, life.rest_notice_s) == (wish.on, wish.seconds):
        return Turn(says=(told,))
    return Turn((RestNoticeSet(me.id, wish.on, wish.seconds),), (told,), (RuleSet(me.id, RuleKind.REST, me.zone),))


def rest_line(on: bool, seconds: int | None) -> Line:
    """What is set."""
    return line("rest-set", on="no" if not on else "plan" if seconds is None else "own", seconds=seconds or 0)


def with_notice(desk: Desk, incoming: Incoming, turn: Turn) -> Turn:
    """The turn with the notice that follows from it, where the client wants one and the sets done are others now."""
    client = desk.client
    if client is None or client.session is None or not client.life.rest_notice:
        return turn
    if not isinstance(incoming, Typed | Tapped) or client.profile.standing is not Standing.ACTIVE:
        return turn
    before, after = client.session, _after(client.session, turn)
    if _work(before) == _work(after) and after.ended is None:
        return turn
    me, made = client.profile, [f for f in turn.facts if isinstance(f, Reported) and f.session == before.id]
    own_s = client.life.rest_notice_s
    due = rest_after(after, made[0], said_at=incoming.at, now=desk.now, rest_s=own_s) if len(made) == 1 else None
    rule = RuleSet(me.id, RuleKind.REST, me.zone, once_at=None if due is None else due.due_at)
    return turn + Turn(keeps=(rule,))


def due(desk: Desk, client: ClientDesk, incoming: Due) -> Turn:
    """The rest is over, if the set that it was before still is the next one."""
    session, me = client.session, client.profile
    if session is None or me.standing is not Standing.ACTIVE or not client.life.rest_notice:
        return Turn(skipped="not wanted")
    waits = _waiting(client, session, incoming)
    if waits is None or not is_still_due(waits, session, desk.now):
        return Turn(skipped="too late, or reported")
    at = UnderWay(client, session)
    exercise = at.live(session.plan.exercise(waits.before[0]))
    number = waits.before[1] or 1
    shown = planned_line(exercise, exercise.sets[number - 1])
    said = Say(
        me.chat,
        (line("rest-over", name=exercise.name, number=number, set=shown),),
        set_rows(at, exercise, number),
        slot=SLOT,
        fresh=True,
        urgency=Urgency.NOTICE,
        repeat=Repeat.DROP,
        expires_at=waits.due_at + LATEST,
    )
    return Turn(says=(said,))


def _waiting(client: ClientDesk, session: Session, incoming: Due) -> RestDue | None:
    """The notice as it was made: from the last report of a set."""
    made = zip(session.reports, client.reported_at, strict=False)
    last = next(((r, at) for r, at in reversed(tuple(made)) if any(p.stage is Stage.WORK for p in r.sets)), None)
    if last is None:
        return None
    report, at = last
    found = rest_after(session, report, said_at=at, now=at, rest_s=client.life.rest_notice_s)
    if found is None:
        return None
    return RestDue(incoming.due_at, found.after, found.before, found.rest_s)


def _after(session: Session, turn: Turn) -> Session:
    """The session as the turn leaves it."""
    for fact in turn.facts:
        match fact:
            case Reported() if fact.session == session.id:
                session = with_report(session, fact)
            case ReportTakenBack() if fact.session == session.id:
                session = without_report(session, fact)
            case PlanChanged() if fact.session == session.id:
                session = with_plan(session, fact)
            case SessionEnded(name, how) if name == session.id:
                session = replace(session, ended=how)
            case SessionReopened(name) if name == session.id:
                session = replace(session, ended=None)
            case _:
                pass
    return session


def _work(session: Session) -> tuple[SetKey, ...]:
    """The work sets that count, in order."""
    return tuple((p.exercise, p.set) for p in session.done if p.stage is Stage.WORK and p.set is not None)
