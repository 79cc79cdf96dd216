"""A session as it stands: the plan, the reports that count, and what follows from them."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, datetime

from bot.training.facts import Ending, PlanChanged, Reported, ReportTakenBack
from bot.training.people import ClientId, SessionId
from bot.training.plan import PlannedExercise, PlannedSession
from bot.training.replanned import AsBefore, Instead, Otherwise, SetMore, Shorter
from bot.training.report import Performed, Stage, without


@dataclass(frozen=True, slots=True)
class Change:
    """The plan was changed: why, what stood before, and the keys of the reports that counted then."""

    why: Otherwise
    before: PlannedSession
    stood: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Session:
    """A planned session with its reports, in the order in which they were first made.

    `day` is where it stands now (moves included). `first_at` and `last_at` are when sets were reported. `plan` is as it
    stands after `changes`, of which those that were taken back are gone.
    """

    id: SessionId
    client: ClientId
    day: date
    workout: int
    plan: PlannedSession
    token: str
    reports: tuple[Reported, ...] = ()
    ended: Ending | None = None
    effort: int | None = None
    first_at: datetime | None = None
    last_at: datetime | None = None
    miss_noted: bool = False
    changes: tuple[Change, ...] = ()

    @property
    def done(self) -> tuple[Performed, ...]:
        """The sets that count, in order."""
        return sets_done(self.reports)

    @property
    def skipped(self) -> tuple[str, ...]:
        """Exercises given up, each once."""
        return tuple(dict.fromkeys(name for report in self.reports for name in report.skipped))

    def exercise(self, name: str) -> PlannedExercise:
        """The exercise as it is planned, or was before a change took it out (a warm-up of it may have been reported);
        `KeyError` where the session never had it."""
        plans = (self.plan, *(change.before for change in reversed(self.changes)))
        found = (e for plan in plans for e in plan.exercises if e.name == name)
        exercise = next(found, None)
        if exercise is None:
            raise KeyError(name)
        return exercise

    @property
    def may_go_back(self) -> bool:
        """Whether the last change can be taken back: nothing was reported that the plan before it lacks."""
        if not self.changes:
            return False
        before = {e.name for e in self.changes[-1].before.exercises}
        now = {e.name for e in self.plan.exercises}
        return not any(p.exercise in now - before for p in self.done)

    def work_done(self, exercise: str) -> tuple[Performed, ...]:
        """The work sets done of an exercise (both sides of one set are two entries)."""
        return tuple(p for p in self.done if p.exercise == exercise and p.stage is Stage.WORK)

    def sets_reported(self, exercise: PlannedExercise) -> int:
        """How many of its prescribed sets have a work set; sets beyond the plan are not counted."""
        return len({p.set for p in self.work_done(exercise.name)} & set(range(1, len(exercise.sets) + 1)))

    def next_set(self, exercise: PlannedExercise) -> int | None:
        """The first prescribed set, from 1, without a work set; `None` where all are done or it was given up."""
        if exercise.name in self.skipped:
            return None
        reported = {p.set for p in self.work_done(exercise.name)}
        return next((n for n in range(1, len(exercise.sets) + 1) if n not in reported), None)

    def is_complete(self, exercise: PlannedExercise) -> bool:
        """Whether nothing of it is left to do."""
        return self.next_set(exercise) is None

    @property
    def current(self) -> PlannedExercise | None:
        """The exercise that the client is on: halves of a pair in turn, else in order; `None` where all is done."""
        open_ones = [e for e in self.plan.exercises if not self.is_complete(e)]
        if not open_ones:
            return None
        first = open_ones[0]
        if not first.pair:
            return first
        partners = [e for e in open_ones if e.pair == first.pair]
        return min(partners, key=lambda e: self.next_set(e) or 0)

    @property
    def is_all_done(self) -> bool:
        """Whether every prescribed set is reported or given up."""
        return self.current is None


def sets_done(reports: Iterable[Reported]) -> tuple[Performed, ...]:
    """What counts after all reports: each adds its sets after removing those that it replaces."""
    done: tuple[Performed, ...] = ()
    for report in reports:
        done = without(done, report.replaces) + report.sets
    return done


def with_report(session: Session, report: Reported) -> Session:
    """The session with one more report, or with the report of the same key replaced in its place."""
    if any(r.key == report.key for r in session.reports):
        return replace(session, reports=tuple(report if r.key == report.key else r for r in session.reports))
    return replace(session, reports=(*session.reports, report))


def without_report(session: Session, taken: ReportTakenBack) -> Session:
    """The session as if the report of that key had never been made."""
    return replace(session, reports=tuple(r for r in session.reports if r.key != taken.key))


def with_plan(session: Session, changed: PlanChanged) -> Session:
    """The session with the plan as it was changed; a change taken back is none any more."""
    match changed.why:
        case AsBefore():
            changes = session.changes[:-1]
        case Instead() | Shorter() | SetMore() as why:
            stood = tuple(report.key for report in session.reports)
            changes = (*session.changes, Change(why, session.plan, stood))
    return replace(session, plan=changed.plan, changes=changes)
