"""When the client is told that a rest is over: the optional notice, off by default.

One notice at most waits for a client: a new report puts another in the place of the one before. It is due when the
planned rest has passed since the set was reported, and never sent late: after `LATEST` it is dropped. None comes after
the next set was reported, after the session ended, after a report of several sets at once (typed later than they were
done), after a set without another one to come, between the halves of a pair (there is only the change of stations), or
for rests too short to be worth a message.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.training.facts import Reported
from bot.training.plan import PlannedExercise
from bot.training.report import SetKey, Stage
from bot.training.session import Session
from bot.training.timing import CHANGE_WITHIN_PAIR_S, rest_of

LATEST = timedelta(seconds=20)
"""After its time a notice is of no use: they are lifting. Ours."""
SHORTEST_S = 30
"""A rest that is shorter is over before a phone is looked at. Ours."""
LONGEST_S = 600
"""Nobody waits longer for a set; a longer rest in a plan is a slip. Ours."""
OLD = timedelta(seconds=60)
"""A report that reaches us this long after it was written comes from a phone without signal: its times say nothing."""


@dataclass(frozen=True, slots=True)
class RestDue:
    """A notice that waits: when it is due (aware UTC), after which set, before which."""

    due_at: datetime
    after: SetKey
    before: SetKey
    rest_s: int


def rest_after(
    session: Session, report: Reported, *, said_at: datetime, now: datetime, rest_s: int | None = None
) -> RestDue | None:
    """The notice to wait for after this report, which `session` already counts; `None` where none is due.

    `said_at` is when the report was written; `rest_s` is the client's own rest, in the place of the planned one.
    """
    if session.ended is not None or report.replaces or now - said_at > OLD:
        return None
    after = _only_set(session, report)
    coming = session.current
    if after is None or coming is None or (number := session.next_set(coming)) is None:
        return None
    name, done = after
    if name not in (coming.name, *_partners(session, coming)):
        return None
    seconds = _rest_s(session, session.plan.exercise(name), done - 1, coming, own_s=rest_s)
    if not SHORTEST_S <= seconds <= LONGEST_S:
        return None
    due_at = said_at + timedelta(seconds=seconds)
    return None if due_at <= now else RestDue(due_at, after, (coming.name, number), seconds)


def is_still_due(due: RestDue, session: Session, now: datetime) -> bool:
    """Whether the notice may be sent now: its time has come, not long ago, and the set is still to be done."""
    if session.ended is not None or not due.due_at <= now <= due.due_at + LATEST:
        return False
    coming = session.current
    return coming is not None and (coming.name, session.next_set(coming)) == due.before


def _only_set(session: Session, report: Reported) -> SetKey | None:
    """The one prescribed work set that the report is of; its sides, drops and mini sets belong to it."""
    keys = {(p.exercise, p.set) for p in report.sets if p.stage is Stage.WORK}
    if len(keys) != 1 or report.skipped:
        return None
    name, number = keys.pop()
    planned = next((e for e in session.plan.exercises if e.name == name), None)
    return (name, number) if planned is not None and number is not None and number <= len(planned.sets) else None


def _rest_s(
    session: Session, exercise: PlannedExercise, place: int, coming: PlannedExercise, *, own_s: int | None
) -> int:
    """Seconds of rest after the set at this place; between two halves of a pair only a shorter rest of its own."""
    rest_s = rest_of(exercise.sets[place]) if own_s is None else own_s
    if coming.name == exercise.name:
        return rest_s
    halves = [e for e in session.plan.exercises if e.pair == exercise.pair]
    is_last = halves[-1].name == exercise.name or halves.index(coming) < halves.index(exercise)
    rests = [rest_of(e.sets[place]) for e in halves if place < len(e.sets)]
    if is_last:
        return max(rests) if own_s is None else own_s
    return rest_s if own_s is None and CHANGE_WITHIN_PAIR_S < rest_s < max(rests) else 0


def _partners(session: Session, exercise: PlannedExercise) -> tuple[str, ...]:
    return tuple(e.name for e in session.plan.exercises if exercise.pair and e.pair == exercise.pair)
