"""Which prescribed set a lifted one answers, and how it ended under it."""

from collections.abc import Sequence

from bot.training.exposure import LiftedSet
from bot.training.plan import PlannedSet
from bot.training.sets import Ending

MOST_REPS = 60
"""Sets beyond this say no more than this: no equation reaches so far."""


def ending_of(lifted: LiftedSet, plan: PlannedSet | None, order: int) -> Ending:
    """How the set ended; without a plan it is its own range."""
    reps = min(lifted.reps, MOST_REPS)
    if plan is None:
        return Ending(reps, lifted.rir, reps, reps, None, order)
    target = None if plan.rir is None else float(plan.rir)
    return Ending(reps, lifted.rir, plan.reps.low, plan.reps.high, target, order)


def plan_for(lifted: LiftedSet, order: int, prescribed: Sequence[PlannedSet]) -> PlannedSet | None:
    """The prescribed set that it answers: the one it names, else the next in order; beyond the last, the last."""
    if not prescribed:
        return None
    place = (lifted.set - 1) if lifted.set is not None else order
    return prescribed[min(max(place, 0), len(prescribed) - 1)]
