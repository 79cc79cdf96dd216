"""How long a session takes, from its prescription.

Minutes = general warm-up + for each exercise: setting up, warm-up sets, work sets and the rests between them. The
seconds a repetition takes lie inside the range that the American College of Sports Medicine's position stand gives
(1-2 s up, 1-2 s down; Ratamess et al. 2009, Med Sci Sports Exerc 41:687-708). The other constants are common practice,
no source.
"""

from itertools import groupby

from bot.training.plan import Drop, Measure, Mini, PlannedExercise, PlannedSet

SECONDS_A_REP = 3
GENERAL_WARMUP_S = 180
WARMUP_SET_S = 45
"""A warm-up set with the pause after it."""
CHANGE_WITHIN_PAIR_S = 15
DROP_CHANGE_S = 10
METRES_A_SECOND = 1
"""A loaded carry, walked."""
USUAL_REST_S = 90


def session_minutes(exercises: tuple[PlannedExercise, ...]) -> int:
    """The whole session in minutes, rounded up; halves of a pair share their rests."""
    seconds = GENERAL_WARMUP_S if exercises else 0
    for _, group in groupby(enumerate(exercises), key=lambda item: item[1].pair or item[0]):
        seconds += _group_seconds(tuple(exercise for _, exercise in group))
    return -(-seconds // 60)


def exercise_seconds(exercise: PlannedExercise) -> int:
    """An exercise by itself: setting up, warming up, its sets and the rests between them."""
    return _group_seconds((exercise,))


def set_seconds(exercise: PlannedExercise, planned: PlannedSet) -> int:
    """A work set with its continuations, both sides, without the rest after it, at the middle of its range."""
    middle = (planned.reps.low + planned.reps.high) / 2
    return round(_bout_seconds(exercise, planned, middle) * exercise.sides) + _finish_seconds(exercise, planned, middle)


def _group_seconds(group: tuple[PlannedExercise, ...]) -> int:
    total = sum(e.setup_s + len(e.warmup) * WARMUP_SET_S for e in group)
    rounds = max(len(e.sets) for e in group)
    for n in range(rounds):
        present = [e for e in group if n < len(e.sets)]
        total += sum(set_seconds(e, e.sets[n]) for e in present) + CHANGE_WITHIN_PAIR_S * (len(present) - 1)
        if n < rounds - 1:
            total += max(e.sets[n].rest_s or USUAL_REST_S for e in present)
    return total


def _bout_seconds(exercise: PlannedExercise, planned: PlannedSet, count: float) -> float:
    match exercise.measure:
        case Measure.REPS:
            return count * (SECONDS_A_REP if planned.tempo is None else planned.tempo.seconds)
        case Measure.SECONDS:
            return count
        case Measure.METRES:
            return count / METRES_A_SECOND


def _finish_seconds(exercise: PlannedExercise, planned: PlannedSet, middle: float) -> int:
    match planned.finish:
        case Drop(times=times):
            return round(times * (DROP_CHANGE_S + _bout_seconds(exercise, planned, middle * 0.8)))
        case Mini(reps=reps, rest_s=(_, longest)):
            return round(3 * (longest + _bout_seconds(exercise, planned, reps)))
        case None:
            return 0
