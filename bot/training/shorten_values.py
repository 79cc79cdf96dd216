"""Less time today, as values: what remains of a session, what was traded to make it fit, and what that cost."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.training.antagonists import HEAVY_REST_S
from bot.training.gym import BAR, DUMBBELLS, STACK
from bot.training.plan import Drop, Finish, Measure, Mini, PlannedExercise, PlannedSession
from bot.training.replanned import Trade
from bot.training.session import Session
from bot.training.timing import rest_of

OPTIONAL = 3
"""The priority of optional work."""
TURNED_FROM_REPS = 6
"""Sets of fewer repetitions are not turned into a drop or mini sets. Common practice, no source."""
DROP, MINI = Drop(1, (20, 30)), Mini(4, (3, 5))
"""What a second set is turned into. Drops of 20 to 40 %, minis of four repetitions 3 to 5 s apart: common practice."""


@dataclass(frozen=True, slots=True)
class Allowed:
    """What the coach allows, and the exercises that are to be spared both (somebody reported pain)."""

    pairs: bool = True
    finishes: bool = True
    spared: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Shortened:
    """A session cut to fit. `plan` is the whole new plan, the sets behind us in it at their numbers.

    `seconds` is what remains of it. `fits` is false where not even the first top set does: then that one set stays.
    `given_up` are the hard sets by muscle that go (a set turned into a drop counts as one less). `proven`: nothing
    better in the coach's order fits.
    """

    plan: PlannedSession
    seconds: int
    fits: bool
    trades: tuple[Trade, ...]
    given_up: Mapping[str, Decimal]
    proven: bool = True

    @property
    def minutes(self) -> int:
        """What remains, in minutes, rounded up."""
        return -(-self.seconds // 60)


@dataclass(frozen=True, slots=True)
class Rest:
    """What remains of an exercise: `exercise` with its open sets only, its `place` in the plan, the `behind` sets."""

    exercise: PlannedExercise
    place: int
    behind: int

    @property
    def is_heavy(self) -> bool:
        """Whether its next set is a heavy one."""
        return rest_of(self.exercise.sets[0]) >= HEAVY_REST_S


def what_remains(session: Session) -> tuple[Rest, ...]:
    """The exercises with sets still to do. A set before one that was reported is behind us, reported or not."""
    found = []
    for place, exercise in enumerate(session.plan.exercises):
        reported = [p.set for p in session.work_done(exercise.name) if p.set is not None]
        behind = min(max(reported, default=0), len(exercise.sets))
        if exercise.name not in session.skipped and behind < len(exercise.sets):
            found.append(Rest(_with_sets(exercise, behind), place, behind))
    return tuple(found)


def finish_for(exercise: PlannedExercise, allowed: Allowed) -> Finish | None:
    """What a set of it may be turned into: a drop where the load changes fast, minis where there is none to change.

    Nothing for the bar, for few repetitions, for what is timed or carried, or where the coach says no.
    """
    is_counted = exercise.measure is Measure.REPS and all(s.reps.low >= TURNED_FROM_REPS for s in exercise.sets[-2:])
    if not allowed.finishes or exercise.name in allowed.spared or not is_counted or exercise.equipment == BAR:
        return None
    return DROP if exercise.equipment in (STACK, DUMBBELLS) else MINI


def _with_sets(exercise: PlannedExercise, behind: int) -> PlannedExercise:
    return replace(exercise, sets=exercise.sets[behind:])
