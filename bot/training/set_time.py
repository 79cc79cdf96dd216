"""How long a set takes, and a warm-up before it.

The seconds a repetition takes lie inside the range that the American College of Sports Medicine's position stand gives
(1-2 s up, 1-2 s down; Ratamess et al. 2009, Med Sci Sports Exerc 41:687-708). The other constants are common practice,
no source: no time-motion study of ordinary sessions was found.
"""

from bot.training.gym import BAR, BODY, DUMBBELLS, STACK
from bot.training.plan import Drop, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet

SECONDS_A_REP = 3
METRES_A_SECOND = 1
"""A loaded carry, walked."""
DROP_CHANGE_S = 10
"""Until the lighter load is in the hands."""
DROP_SHARE = 0.8
"""Repetitions of a drop, as a share of those of the set before it."""
MINIS = 3
"""Mini sets that last, of those that are tried until the repetitions can't be made."""

WARMUP_SET_S = {BAR: 75, DUMBBELLS: 45, STACK: 30, BODY: 45}
"""A warm-up set with the pause after it, by equipment: plates are changed, a pin is moved."""
USUAL_WARMUP_SET_S = 45
UNPLANNED_WARMUPS = {BAR: 3, DUMBBELLS: 2, STACK: 2}
"""Warm-up sets where no load is known yet, so that none are planned: a load is felt for in as many. Two or three quick
ones on a machine."""


def set_seconds(exercise: PlannedExercise, planned: PlannedSet) -> int:
    """A work set with its continuations, both sides, without the rest after it, at the middle of its range."""
    return work_seconds(exercise, planned) + finish_seconds(exercise, planned)


def work_seconds(exercise: PlannedExercise, planned: PlannedSet) -> int:
    """The set itself, both sides."""
    return round(_bout_seconds(exercise, planned, _middle(planned)) * exercise.sides)


def finish_seconds(exercise: PlannedExercise, planned: PlannedSet) -> int:
    """Its drops or mini sets, both sides, with the changes and short rests between them."""
    match planned.finish:
        case Drop(times=times):
            one = DROP_CHANGE_S + _bout_seconds(exercise, planned, _middle(planned) * DROP_SHARE)
            return round(times * one * exercise.sides)
        case Mini(reps=reps, rest_s=(_, longest)):
            return round(MINIS * (longest + _bout_seconds(exercise, planned, reps)) * exercise.sides)
        case None:
            return 0


def warmup_seconds(exercise: PlannedExercise) -> int:
    """Its warm-up sets: those planned, or as many as finding a load takes where none is known."""
    return warmups(exercise) * WARMUP_SET_S.get(exercise.equipment, USUAL_WARMUP_SET_S)


def warmups(exercise: PlannedExercise) -> int:
    """How many warm-up sets there are, or will be."""
    is_loaded = exercise.load_style not in (LoadStyle.NONE, LoadStyle.BODYWEIGHT)
    if exercise.warmup or not is_loaded or any(planned.load is not None for planned in exercise.sets):
        return len(exercise.warmup)
    return UNPLANNED_WARMUPS.get(exercise.equipment, 0)


def _middle(planned: PlannedSet) -> float:
    return (planned.reps.low + planned.reps.high) / 2


def _bout_seconds(exercise: PlannedExercise, planned: PlannedSet, count: float) -> float:
    match exercise.measure:
        case Measure.REPS:
            return count * (SECONDS_A_REP if planned.tempo is None else planned.tempo.seconds)
        case Measure.SECONDS:
            return count
        case Measure.METRES:
            return count / METRES_A_SECOND
