"""A programme's exercises as the items of a week, and back: the days' exercises from where the items stand."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import ROUND_CEILING, Decimal

from bot.training.people import Programme
from bot.training.plan import PlannedExercise, Region
from bot.training.timing import GENERAL_WARMUP_S, groups, session_time
from bot.training.week_values import DayRoom, Laying, Week, WorkItem

_TENTH = Decimal("0.1")


@dataclass(frozen=True, slots=True)
class Piece:
    """An exercise of a workout: `minutes` are its share of the session, `partner` the place among the pieces of the one
    that it is done in turn with."""

    workout: int
    exercise: PlannedExercise
    minutes: Decimal
    partner: int | None


def pieces_of(programme: Programme) -> tuple[Piece, ...]:
    """Every exercise of every workout, in order; those without sets are left out."""
    pieces: list[Piece] = []
    for n, workout in enumerate(programme.workouts):
        wanted = [exercise for exercise in workout.exercises if exercise.sets]
        taken = {time.name: time.seconds for group in groups(wanted) for time in session_time(group).exercises}
        first: dict[str, int] = {}
        for exercise in wanted:
            partner = first.get(exercise.pair) if exercise.pair else None
            first.setdefault(exercise.pair, len(pieces))
            minutes = (Decimal(taken[exercise.name]) / 60).quantize(_TENTH, ROUND_CEILING)
            pieces.append(Piece(n, exercise, minutes, partner))
    return tuple(pieces)


def week_of(pieces: Sequence[Piece], rooms: Sequence[DayRoom], rest_hours: Decimal) -> Week:
    """The week to lay: the general warm-up is taken off each day's minutes."""
    items = tuple(
        WorkItem(
            name=str(place),
            sets=len(piece.exercise.sets),
            minutes=piece.minutes,
            direct=piece.exercise.muscles,
            priority=min(max(piece.exercise.priority, 1), 3),
            region=piece.exercise.region or Region.TRUNK,
            indirect=piece.exercise.muscles_indirect,
            partner=None if piece.partner is None else str(piece.partner),
        )
        for place, piece in enumerate(pieces)
    )
    warmup = Decimal(GENERAL_WARMUP_S) / 60
    days = tuple(replace(room, minutes=max(Decimal(0), room.minutes - warmup)) for room in rooms)
    return Week(items, days, rest_hours)


def exercises_of(pieces: Sequence[Piece], laying: Laying, place: int) -> tuple[PlannedExercise, ...]:
    """The exercises of a day: the most important first, then as in the programme, pairs together; what opens a workout
    comes before what follows in another, so that a heavy first lift is not done tired.

    The same exercise of two workouts on one day is one with the sets of both.
    """
    here = {
        (piece.exercise.pair, piece.workout) for piece, at in zip(pieces, laying.places, strict=True) if at == place
    }
    labels = [pair for pair, _ in here]
    opens = {piece.workout: n for n, piece in reversed(tuple(enumerate(pieces)))}
    found: list[tuple[tuple[int, int, int], PlannedExercise]] = []
    for n, (piece, sets, at) in enumerate(zip(pieces, laying.sets, laying.places, strict=True)):
        if at != place or not sets:
            continue
        pair = piece.exercise.pair
        label = f"{pair}{piece.workout + 1}" if pair and labels.count(pair) > 1 else pair
        exercise = replace(piece.exercise, sets=piece.exercise.sets[:sets], pair=label)
        head = n if piece.partner is None else piece.partner
        priority = min(p.exercise.priority for k, p in enumerate(pieces) if head in (k, p.partner))
        found.append(((priority, head - opens[piece.workout], head), exercise))
    merged: dict[str, PlannedExercise] = {}
    for _, exercise in sorted(found, key=lambda item: item[0]):
        before = merged.get(exercise.name)
        merged[exercise.name] = exercise if before is None else replace(before, sets=(*before.sets, *exercise.sets))
    return _alone_unpaired(tuple(merged.values()))


def _alone_unpaired(exercises: tuple[PlannedExercise, ...]) -> tuple[PlannedExercise, ...]:
    """A half whose partner is gone is in no pair."""
    pairs = [exercise.pair for exercise in exercises]
    return tuple(e if pairs.count(e.pair) > 1 else replace(e, pair="") for e in exercises)
