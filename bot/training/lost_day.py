"""A day is given up: the rest of the week laid anew, so that what it held comes on the days that are left, where they
have room, the most important work first (`week.lay_week`). It is a proposal; nothing changes by it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from itertools import count

from bot.training.coming import ComingDay
from bot.training.days import within_room
from bot.training.days_items import Piece, exercises_of, pieces_of, week_of
from bot.training.life import LaidDay
from bot.training.people import Programme
from bot.training.plan import PlannedExercise, Region
from bot.training.timing import session_minutes
from bot.training.week import lay_week
from bot.training.week_values import REST_HOURS, DayRoom, Laying, Week, Weekday, WorkDone, WorkItem

TIME_LIMIT_S = 0.6
STEP_S = 0.002
"""What a step of thinking counts as: the same week gives the same answer on every machine."""


@dataclass(frozen=True, slots=True)
class Behind:
    """A day of the week that is over, or has its session: its exercises count for rest, and stay as they are."""

    day: date
    exercises: tuple[PlannedExercise, ...]


@dataclass(frozen=True, slots=True)
class Relaid:
    """The days that are left, what each holds, and the sets that found no room, by exercise."""

    days: tuple[LaidDay, ...]
    cut: tuple[tuple[str, int], ...]


def room_of(programme: Programme) -> int:
    """Minutes of a day: those of the programme's longest workout, or that the coach gave it."""
    return max(w.minutes or session_minutes(w.exercises) for w in programme.workouts)


def lay_rest(
    coming: Sequence[ComingDay],
    lost: ComingDay,
    *,
    minutes: int,
    workouts: int,
    behind: Sequence[Behind] = (),
    rest_hours: Decimal = REST_HOURS,
) -> Relaid:
    """The work of `coming` and of `lost`, over the days of `coming`, each with so many minutes; `workouts` has the
    programme.

    The turn stays in order: the last day stands for the last workout, so that the next week goes on after it.
    """
    sources = sorted((*(d for d in coming if d.day != lost.day), lost), key=lambda d: d.day)
    left = [d for d in sources if d.day != lost.day]
    pieces = pieces_of(Programme("", "", tuple(d.workout for d in sources)))
    if not left or not pieces:
        return Relaid((), ())
    rooms = [DayRoom(Weekday(d.day.weekday()), Decimal(minutes)) for d in left]
    laying = lay_week(_week(pieces, rooms, behind, rest_hours), clock=Thinking(), time_limit_s=TIME_LIMIT_S)
    held = [within_room(exercises_of(pieces, _ours(laying, pieces), n), room) for n, room in enumerate(rooms)]
    days = [
        _laid(left[n].day, _place(sources, n, len(left)), exercises, _titles(sources, pieces, laying, n))
        for n, exercises in enumerate(held)
        if exercises
    ]
    return Relaid(_plain_where_as_ever(days, sources, workouts), _cut(pieces, held))


class Thinking:
    """A clock that tells how much was thought, not how long it took."""

    def __init__(self) -> None:
        self._count = count()

    def __call__(self) -> float:
        return next(self._count) * STEP_S


def _week(pieces: Sequence[Piece], rooms: Sequence[DayRoom], behind: Sequence[Behind], rest_hours: Decimal) -> Week:
    """The week to lay, with what is behind as work done that nobody plans any more."""
    week = week_of(pieces, rooms, rest_hours)
    items: list[WorkItem] = []
    done: list[WorkDone] = []
    on = {room.day for room in rooms}
    for n, day in enumerate(behind):
        for k, exercise in enumerate(day.exercises):
            if exercise.muscles and exercise.sets and day.day.weekday() not in on:
                name, sets = f"b{n}.{k}", len(exercise.sets)
                items.append(WorkItem(name, sets, Decimal(sets), exercise.muscles, 3, exercise.region or Region.TRUNK))
                done.append(WorkDone(name, sets, Weekday(day.day.weekday())))
    return replace(week, items=(*week.items, *items), done=tuple(done))


def _ours(laying: Laying, pieces: Sequence[Piece]) -> Laying:
    return replace(laying, sets=laying.sets[: len(pieces)], places=laying.places[: len(pieces)])


def _place(sources: Sequence[ComingDay], n: int, days: int) -> int:
    return sources[-1].place if n == days - 1 else sources[n].place


def _laid(day: date, place: int, exercises: tuple[PlannedExercise, ...], title: str) -> LaidDay:
    return LaidDay(day, place, title, exercises)


def _titles(sources: Sequence[ComingDay], pieces: Sequence[Piece], laying: Laying, n: int) -> str:
    """What the day holds: the workouts of which it has something."""
    places = zip(pieces, laying.places, laying.sets, strict=False)
    from_there = sorted({piece.workout for piece, at, sets in places if at == n and sets})
    return " + ".join(dict.fromkeys(sources[w].workout.title for w in from_there))


def _plain_where_as_ever(days: Sequence[LaidDay], sources: Sequence[ComingDay], count: int) -> tuple[LaidDay, ...]:
    """Days that hold the whole of the workout whose turn it is are as ever."""
    found: list[LaidDay] = []
    turn = sources[0].place
    for day in days:
        whole = any(
            s.place == day.workout and s.laid.is_plain and s.workout.exercises == day.exercises for s in sources
        )
        found.append(LaidDay(day.day) if whole and turn == day.workout else day)
        turn = (day.workout + 1) % count
    return tuple(found)


def _cut(pieces: Sequence[Piece], held: Sequence[tuple[PlannedExercise, ...]]) -> tuple[tuple[str, int], ...]:
    wanted: dict[str, int] = {}
    for piece in pieces:
        wanted[piece.exercise.name] = wanted.get(piece.exercise.name, 0) + len(piece.exercise.sets)
    kept = {name: sum(len(e.sets) for exercises in held for e in exercises if e.name == name) for name in wanted}
    return tuple((name, sets - kept[name]) for name, sets in wanted.items() if sets > kept[name])
