"""Weeks that are otherwise: the workouts of a programme as they are in a week of it."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

from bot.training.people import Programme, WeekChange, Workout
from bot.training.plan import PlannedExercise, PlannedSet


def week_number(begun: date, day: date) -> int:
    """The week of a programme begun on that day, from 1; weeks change on Mondays. Days before it count as week 1."""
    first = begun - timedelta(days=begun.weekday())
    return max(1, (day - first).days // 7 + 1)


def changes_in(programme: Programme, week: int) -> tuple[WeekChange, ...]:
    """What is otherwise in this week; after `block_weeks` the count begins again."""
    counted = week if programme.block_weeks is None else (week - 1) % programme.block_weeks + 1
    return tuple(change for change in programme.changes if counted in change.weeks)


def workout_in_week(programme: Programme, workout: int, week: int) -> Workout:
    """The workout of this index as it is in this week: the changes made to it one after the other.

    Four sets with `sets_percent` 50 are two, three are two as well (halves up), one stays one.
    """
    plain = programme.workouts[workout]
    exercises = plain.exercises
    for change in changes_in(programme, week):
        if change.workout in ("", plain.title):
            exercises = tuple(changed(e, change) if change.exercise in ("", e.name) else e for e in exercises)
    return replace(plain, exercises=exercises)


def changed(exercise: PlannedExercise, change: WeekChange) -> PlannedExercise:
    """The exercise with this change made to it, whichever weeks the change is for."""
    sets = exercise.sets[: _sets_left(len(exercise.sets), change)]
    return replace(
        exercise,
        sets=sets if change.rir is None else tuple(_with_reserve(planned, change.rir) for planned in sets),
        load_percent=_share_of(exercise.load_percent, change.load_percent),
    )


def _with_reserve(planned: PlannedSet, rir: Decimal) -> PlannedSet:
    return replace(planned, rir=rir)


def _sets_left(sets: int, change: WeekChange) -> int:
    left = sets - change.fewer_sets
    if change.sets_percent is not None:
        left = (left * change.sets_percent + 50) // 100
    return max(1, min(left, sets))


def _share_of(before: Decimal | None, change: Decimal | None) -> Decimal | None:
    if before is None or change is None:
        return change if before is None else before
    return before * change / 100
