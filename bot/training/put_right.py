"""The week's volume put right: sets that were cut or missed come back on later days, where there is room for them.

What is allowed: at most one set more for an exercise that is planned anyway, a copy of its last set; the day stays
within its minutes; no day within the rest hours of another one that works the same muscle directly; nothing heavy,
nothing that is on hold, nothing in a week of other loads; no muscle that lost sets gets more direct ones than it lost
(a half counts as one). Of all that is allowed: the most lost sets come back (direct ones count 1, indirect ones a
half), then with the fewest additions, then on the earliest days. Found and proven by a solver (`week_solver`).

It is a proposal: it applies to nothing by itself. Weekly volume matters more than on which day it is done (Iversen et
al. 2021, Sports Med 51:2079-2095); the bounds are ours, no source.
"""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from math import ceil

from bot.training.antagonists import HEAVY_REST_S
from bot.training.plan import PlannedExercise
from bot.training.timing import rest_of, session_time
from bot.training.volume import INDIRECT
from bot.training.week_solver import Impossible, Programme, Term, Unknown, least
from bot.training.week_values import REST_HOURS

TIME_LIMIT_S = 1.0


@dataclass(frozen=True, slots=True)
class LaterDay:
    """A day of this week that is still to come: what is planned, and the minutes that it has."""

    day: date
    exercises: tuple[PlannedExercise, ...]
    minutes: Decimal


@dataclass(frozen=True, slots=True)
class OneMore:
    """A set more for an exercise on a day."""

    day: date
    exercise: str


@dataclass(frozen=True, slots=True)
class PutRight:
    """The proposal: the sets to add, what comes back of what was lost by muscle, and what stays lost."""

    more: tuple[OneMore, ...]
    back: Mapping[str, Decimal]
    lost: Mapping[str, Decimal]


def put_right(
    lost: Mapping[str, Decimal],
    later: Sequence[LaterDay],
    *,
    worked: Mapping[str, Collection[date]],
    held: Collection[str] = (),
    rest_hours: Decimal = REST_HOURS,
) -> PutRight:
    """Which small additions bring back the most of `lost` (hard sets by muscle).

    `worked` are the days on which each muscle was worked directly, this week and just before; `held` the exercises that
    must not be pushed.
    """
    days = sorted(later, key=lambda d: d.day)
    worked_on = {(m, d.day) for d in days for e in d.exercises for m in e.muscles}
    worked_on |= {(muscle, day) for muscle, on in worked.items() for day in on}
    ways = [
        (d, e)
        for d in days
        for e in d.exercises
        if e.name not in held and may_grow(e) and _is_rested(e, d.day, worked_on, rest_hours)
    ]
    taken = _best(lost, days, ways)
    back = {muscle: min(sets, sum((_weight(e, muscle) for _, e in taken), Decimal(0))) for muscle, sets in lost.items()}
    return PutRight(
        tuple(OneMore(d.day, e.name) for d, e in taken),
        {muscle: sets for muscle, sets in back.items() if sets},
        {muscle: rest for muscle, sets in lost.items() if (rest := sets - back[muscle])},
    )


def with_one_more(exercise: PlannedExercise) -> PlannedExercise:
    """The exercise with its last set once more; a drop or mini sets stay with the last."""
    last = exercise.sets[-1]
    return replace(exercise, sets=(*exercise.sets[:-1], replace(last, finish=None), last))


def may_grow(exercise: PlannedExercise) -> bool:
    """Whether a set more of it is a small addition."""
    return bool(exercise.sets) and exercise.load_percent is None and rest_of(exercise.sets[-1]) < HEAVY_REST_S


def _is_rested(
    exercise: PlannedExercise, day: date, worked_on: Collection[tuple[str, date]], rest_hours: Decimal
) -> bool:
    return not any(
        muscle in exercise.muscles and other != day and abs((other - day).days) * 24 < rest_hours
        for muscle, other in worked_on
    )


def _best(
    lost: Mapping[str, Decimal], days: Sequence[LaterDay], ways: Sequence[tuple[LaterDay, PlannedExercise]]
) -> list[tuple[LaterDay, PlannedExercise]]:
    programme = Programme()
    columns = [programme.column(0, 1) for _ in ways]
    halves = [programme.column(0, float(2 * sets)) for sets in lost.values()]
    for muscle, column in zip(lost, halves, strict=True):
        given = [(c, float(2 * _weight(e, muscle))) for c, (_, e) in zip(columns, ways, strict=True)]
        programme.row([(column, 1.0), *((c, -sets) for c, sets in given if sets)], most=0)
        direct = [(c, 1.0) for c, (_, e) in zip(columns, ways, strict=True) if muscle in e.muscles]
        if direct:
            programme.row(direct, most=ceil(lost[muscle]))
    for day in days:
        room_s = int(day.minutes * 60) - session_time(day.exercises).seconds
        extra = [(c, _more_s(day, e)) for c, (d, e) in zip(columns, ways, strict=True) if d is day]
        if extra:
            programme.row([(c, float(s)) for c, s in extra], most=max(0, room_s))
    early = [(c, 1.0 + len(columns) ** 2 + n) for n, c in enumerate(columns)]
    weight = 1 + sum(factor for _, factor in early)
    cost: list[Term] = [(column, -weight) for column in halves] + early
    values = least(programme, cost, limit_s=TIME_LIMIT_S)
    if isinstance(values, Impossible | Unknown):
        return []
    return [way for way, column in zip(ways, columns, strict=True) if values[column] > 0.5]


def _more_s(day: LaterDay, exercise: PlannedExercise) -> int:
    """Seconds that one more set takes: as if it stood alone, where the time that a pair shares would be less."""
    grown = tuple(with_one_more(e) if e is exercise else e for e in day.exercises)
    own_s = rest_of(exercise.sets[-1]) + session_time((with_one_more(exercise),)).seconds
    alone_s = own_s - session_time((exercise,)).seconds if exercise.pair else 0
    return max(session_time(grown).seconds - session_time(day.exercises).seconds, alone_s)


def _weight(exercise: PlannedExercise, muscle: str) -> Decimal:
    if muscle in exercise.muscles:
        return Decimal(1)
    return INDIRECT if muscle in exercise.muscles_indirect else Decimal(0)
