"""A programme looked over before anybody gets it: minutes of every session, hard sets by muscle a week, cautions."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import ROUND_HALF_EVEN, Decimal

from bot.training.cautions import LEAST_SETS, MOST_SETS, Caution, Cautioned, cautions_in
from bot.training.people import MuscleTarget, Programme
from bot.training.shown import show_amount, show_span
from bot.training.timing import session_minutes
from bot.training.volume import planned_sets
from bot.training.weeks import workout_in_week

USUAL_DAYS = (2, 3, 4, 5)
"""Training days a week for which the weekly work is counted."""


@dataclass(frozen=True, slots=True)
class SessionLength:
    """Minutes of a workout, warm-ups included, beside those that the coach wrote (`None`: none)."""

    workout: str
    minutes: int
    wanted: int | None


@dataclass(frozen=True, slots=True)
class MuscleWeek:
    """Hard sets a week of a muscle by training days a week, to a tenth: workouts rotate, so this is the average.

    `direct` is whether any exercise works it directly; `target` is the coach's own.
    """

    muscle: str
    sets: tuple[tuple[int, Decimal], ...]
    direct: bool
    target: MuscleTarget | None


@dataclass(frozen=True, slots=True)
class Review:
    """What can be told of a programme before it is given."""

    lengths: tuple[SessionLength, ...]
    muscles: tuple[MuscleWeek, ...]
    cautions: tuple[Cautioned, ...]


def review(programme: Programme, days: Sequence[int] = USUAL_DAYS, week: int | None = None) -> Review:
    """The programme looked over, for so many training days a week; in an ordinary week, or in this one of it."""
    workouts = programme.workouts
    if week is not None:
        workouts = tuple(workout_in_week(programme, place, week) for place in range(len(workouts)))
    lengths = tuple(SessionLength(w.title, session_minutes(w.exercises), w.minutes) for w in workouts)
    muscles = muscle_weeks(replace(programme, workouts=workouts), days)
    found = (*_long(lengths), *_volume(muscles), *cautions_in(programme))
    return Review(lengths, muscles, found)


def muscle_weeks(programme: Programme, days: Sequence[int]) -> tuple[MuscleWeek, ...]:
    """Every muscle that is worked or has a target, the most worked first.

    Two workouts with 6 and 2 sets for the back give 8 a week on two days, 12 on three.
    """
    total: dict[str, Decimal] = defaultdict(Decimal)
    direct: set[str] = set()
    for workout in programme.workouts:
        for muscle, sets in planned_sets(workout.exercises).items():
            total[muscle] += sets
        direct |= {muscle for exercise in workout.exercises for muscle in exercise.muscles}
    targets = {target.muscle: target for target in programme.targets}
    rounds = len(programme.workouts) or 1
    return tuple(
        MuscleWeek(
            muscle,
            tuple((n, _tenths(total[muscle] * n / rounds)) for n in days),
            muscle in direct,
            targets.get(muscle),
        )
        for muscle in sorted({*total, *targets}, key=lambda m: (-total[m], m))
    )


def _tenths(sets: Decimal) -> Decimal:
    return sets.quantize(Decimal("0.1"), ROUND_HALF_EVEN)


def _long(lengths: Sequence[SessionLength]) -> Iterator[Cautioned]:
    for one in lengths:
        if one.wanted is not None and one.minutes > one.wanted:
            yield Cautioned(Caution.OVER_MINUTES, one.workout, found=str(one.minutes), wanted=str(one.wanted))


def _volume(muscles: Sequence[MuscleWeek]) -> Iterator[Cautioned]:
    """The coach's own target where there is one, else the published bounds, for muscles that are worked directly."""
    for one in muscles:
        low, high = (LEAST_SETS, MOST_SETS) if one.target is None else (one.target.low, one.target.high)
        own = one.target is not None
        if not own and not one.direct:
            continue
        under = [(n, sets) for n, sets in one.sets if sets < low]
        over = [(n, sets) for n, sets in one.sets if sets > high]
        wanted = show_span(low, high)
        if under:
            yield _told(Caution.UNDER_TARGET if own else Caution.FEW_SETS, one.muscle, under, wanted)
        if over:
            yield _told(Caution.OVER_TARGET if own else Caution.MANY_SETS, one.muscle, over, wanted)


def _told(what: Caution, muscle: str, found: Sequence[tuple[int, Decimal]], wanted: str) -> Cautioned:
    shown = ", ".join(show_amount(sets) for _, sets in found)
    return Cautioned(what, muscle=muscle, found=shown, wanted=wanted, days=tuple(n for n, _ in found))
