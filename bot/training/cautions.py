"""What a coach may want to look at again in a programme: never wrong as such, each with its reason.

Where a published paper stands behind a caution it is named here and in its words; the rest is the coach's own figures,
or common practice without a source.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from bot.training.gym import BAR, BODY, DUMBBELLS, STACK
from bot.training.people import Programme, Workout
from bot.training.plan import Drop, LoadRule, LoadStyle, Measure, PlannedExercise, PlannedSet
from bot.training.shown import show_span

LEAST_SETS = 4
"""Hard sets a week for each muscle, at the least (Iversen et al. 2021, Sports Med 51:2079-2095)."""
MOST_SETS = 20
"""Beyond 20 sets a week quadriceps and biceps grew no more than from 12 to 20, in trained young men; triceps did
(Baz-Valle et al. 2022, J Hum Kinet 81:199-210)."""
HEAVY_REPS = 6
HEAVY_REST_S = 120
"""Two to three minutes for main lifts (ACSM position stand, Ratamess et al. 2009, Med Sci Sports Exerc 41:687-708)."""
SLOWEST_REP_S = 10
"""Repetitions of 0.5 to 8 s served growth alike, above 10 s less (Schoenfeld et al. 2015, Sports Med 45:577-585)."""
USUAL_DROP = (20, 40)
"""Percent a drop: common practice, no source."""


class Caution(StrEnum):
    """What to look at. The words of each are `caution-<its value>`, with the fields of `Cautioned` as arguments."""

    UNDER_TARGET = "under-target"
    OVER_TARGET = "over-target"
    FEW_SETS = "few-sets"
    MANY_SETS = "many-sets"
    OVER_MINUTES = "over-minutes"
    TOP_SET_LAST = "top-set-last"
    DROP_UNUSUAL = "drop-unusual"
    SHORT_REST = "short-rest"
    SLOW_TEMPO = "slow-tempo"
    PAIR_ALONE = "pair-alone"
    PERCENT_UNUSED = "percent-unused"
    PERCENT_OF_ITSELF = "percent-of-itself"
    STEP_UNUSED = "step-unused"
    NO_RANGE = "no-range"
    NO_FIXED_LOAD = "no-fixed-load"
    NO_EQUIPMENT = "no-equipment"
    WEEK_NEVER = "week-never"


@dataclass(frozen=True, slots=True)
class Cautioned:
    """A caution and where: `found` is what the programme has, `wanted` what it is measured by; empty where not apt.

    `days` are the training days a week for which it holds.
    """

    what: Caution
    workout: str = ""
    exercise: str = ""
    muscle: str = ""
    found: str = ""
    wanted: str = ""
    days: tuple[int, ...] = ()


def cautions_in(programme: Programme) -> Iterator[Cautioned]:
    """Of the prescriptions themselves, in the programme's order."""
    for workout in programme.workouts:
        yield from _of_pairs(workout)
        for exercise in workout.exercises:
            for what, found, wanted in _of_exercise(exercise):
                yield Cautioned(what, workout.title, exercise.name, found=found, wanted=wanted)
    for change in programme.changes:
        late = [week for week in change.weeks if programme.block_weeks is not None and week > programme.block_weeks]
        if late:
            weeks = ", ".join(str(week) for week in late)
            yield Cautioned(Caution.WEEK_NEVER, found=weeks, wanted=str(programme.block_weeks))


def _of_pairs(workout: Workout) -> Iterator[Cautioned]:
    pairs = [exercise.pair for exercise in workout.exercises if exercise.pair]
    for pair in dict.fromkeys(pairs):
        if pairs.count(pair) == 1:
            yield Cautioned(Caution.PAIR_ALONE, workout.title, found=pair)


def _of_exercise(exercise: PlannedExercise) -> Iterator[tuple[Caution, str, str]]:
    if exercise.priority == 3 and _has_top_set(exercise):
        yield Caution.TOP_SET_LAST, "3", "1"
    yield from _of_rule(exercise)
    for planned in dict.fromkeys(exercise.sets):
        yield from _of_set(exercise, planned)
    is_loaded = exercise.load_style is not LoadStyle.NONE and exercise.measure is Measure.REPS
    if is_loaded and exercise.equipment not in (BAR, DUMBBELLS, STACK, BODY):
        yield Caution.NO_EQUIPMENT, exercise.equipment, ", ".join((BAR, DUMBBELLS, STACK, BODY))


def _has_top_set(exercise: PlannedExercise) -> bool:
    """A first set for fewer repetitions than all that follow."""
    later = exercise.sets[1:]
    return bool(later) and all(planned.reps.low > exercise.sets[0].reps.high for planned in later)


def _of_rule(exercise: PlannedExercise) -> Iterator[tuple[Caution, str, str]]:
    rule, sets = exercise.load_rule, exercise.sets
    if rule is not LoadRule.PERCENT and any(planned.percent is not None for planned in sets):
        yield Caution.PERCENT_UNUSED, "", ""
    if rule is LoadRule.PERCENT and sets and sets[0].percent is not None:
        yield Caution.PERCENT_OF_ITSELF, "", ""
    if rule is not LoadRule.FIXED and exercise.step is not None:
        yield Caution.STEP_UNUSED, "", ""
    if rule is LoadRule.DOUBLE and sets and all(planned.reps.is_fixed for planned in sets):
        yield Caution.NO_RANGE, str(sets[0].reps.low), f"{sets[0].reps.low}-{sets[0].reps.low + 3}"
    if rule is LoadRule.HELD and all(planned.load is None for planned in sets):
        yield Caution.NO_FIXED_LOAD, "", ""


def _of_set(exercise: PlannedExercise, planned: PlannedSet) -> Iterator[tuple[Caution, str, str]]:
    match planned.finish:
        case Drop(percent=(low, high)) if low < USUAL_DROP[0] or high > USUAL_DROP[1]:
            yield Caution.DROP_UNUSUAL, show_span(low, high), show_span(*USUAL_DROP)
        case _:
            pass
    is_heavy = exercise.measure is Measure.REPS and planned.reps.high <= HEAVY_REPS and not exercise.pair
    if is_heavy and planned.rest_s is not None and planned.rest_s < HEAVY_REST_S and len(exercise.sets) > 1:
        yield Caution.SHORT_REST, str(planned.rest_s), str(HEAVY_REST_S)
    if planned.tempo is not None and planned.tempo.seconds > SLOWEST_REP_S:
        yield Caution.SLOW_TEMPO, str(planned.tempo.seconds), str(SLOWEST_REP_S)
