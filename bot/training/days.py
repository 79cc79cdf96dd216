"""A programme's weekly work over another number of days: two long sessions become three, four or five short ones.

The week's work is every workout of the programme once. It is laid over the days by `week.lay_week` (as much as fits by
priority, the fewest muscles worked again too soon, the shortest longest day), pairs together; within a day the most
important exercises come first, then as in the programme. On as many days as there are workouts the programme stays as
it is.

Days that are added get shorter, and may take a little more work where the coach allows it: one set more an exercise at
most, weak points first (common practice, no source). How often a muscle is worked matters little where the weekly sets
are the same (Schoenfeld et al. 2019, J Sports Sci 37:1286-1295, from memory; Pelland et al. 2024, preprint).
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.training.days_items import Piece, exercises_of, pieces_of, week_of
from bot.training.days_more import Extra, with_extra
from bot.training.people import Programme, WeekChange, Workout
from bot.training.plan import PlannedExercise
from bot.training.timing import session_minutes, session_time
from bot.training.volume import planned_sets
from bot.training.week import lay_week
from bot.training.week_story import DayName, muscle_weeks, name_days
from bot.training.week_values import REST_HOURS, TIME_LIMIT_S, DayRoom, Laying, Week, Weekday, hours_between

SPREAD = {
    1: (Weekday.MON,),
    2: (Weekday.MON, Weekday.THU),
    3: (Weekday.MON, Weekday.WED, Weekday.FRI),
    4: (Weekday.MON, Weekday.TUE, Weekday.THU, Weekday.FRI),
    5: (Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.FRI, Weekday.SAT),
    6: (Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.THU, Weekday.FRI, Weekday.SAT),
    7: tuple(Weekday),
}
"""Days of a week for those who have named none. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class DayPlan:
    """A day of the week laid anew: what it is called by what it holds, its exercises, its minutes."""

    day: Weekday
    name: DayName
    exercises: tuple[PlannedExercise, ...]
    minutes: int


@dataclass(frozen=True, slots=True)
class DaysPlan:
    """The weekly work over these days.

    `sets` are hard sets by muscle, `gap_h` the least hours between two days that work a muscle directly (`None`: there
    are no two), `cut` and `more` the sets left out and added by exercise, `clashes` the muscles worked again too soon.
    """

    days: tuple[DayPlan, ...]
    sets: Mapping[str, Decimal]
    gap_h: Mapping[str, int | None]
    cut: tuple[tuple[str, int], ...]
    more: tuple[tuple[str, int], ...]
    clashes: int
    proven: bool

    @property
    def longest(self) -> int:
        """Minutes of the longest day."""
        return max((day.minutes for day in self.days), default=0)


def over_days(
    programme: Programme,
    rooms: Sequence[DayRoom],
    *,
    clock: Callable[[], float],
    extra: Extra | None = None,
    rest_hours: Decimal = REST_HOURS,
    time_limit_s: float = TIME_LIMIT_S,
) -> DaysPlan:
    """The programme's weekly work over these days, which are different ones, in the order of the week."""
    rooms = sorted(rooms, key=lambda room: room.day)
    pieces = pieces_of(programme)
    week = week_of(pieces, rooms, rest_hours)
    if len(rooms) == len(programme.workouts):
        laying = _as_it_is(pieces, week)
        held = [workout.exercises for workout in programme.workouts]
    else:
        laying = lay_week(week, clock=clock, time_limit_s=time_limit_s)
        held = [within_room(exercises_of(pieces, laying, place), room) for place, room in enumerate(rooms)]
    more: tuple[tuple[str, int], ...] = ()
    if extra is not None and len(rooms) > len(programme.workouts):
        held, more = with_extra(held, rooms, extra, programme.targets)
    names = name_days(week, laying)
    days = tuple(
        DayPlan(room.day, name, exercises, session_minutes(exercises))
        for room, name, exercises in zip(rooms, names, held, strict=True)
    )
    flat = [exercise for exercises in held for exercise in exercises]
    gaps = {muscle: found.gap_h for muscle, found in muscle_weeks(week, laying).items()}
    return DaysPlan(days, planned_sets(flat), gaps, _cut(programme, flat, more), more, laying.clashes, laying.proven)


def side_by_side(
    programme: Programme,
    counts: Sequence[int],
    minutes: Decimal,
    *,
    clock: Callable[[], float],
    extra: Extra | None = None,
    time_limit_s: float = TIME_LIMIT_S,
) -> tuple[DaysPlan, ...]:
    """The programme over each of these numbers of days a week, of so many minutes each, for a table and a picture."""
    return tuple(
        over_days(
            programme,
            [DayRoom(day, minutes) for day in SPREAD[count]],
            clock=clock,
            extra=extra,
            time_limit_s=time_limit_s,
        )
        for count in counts
    )


def as_programme(plan: DaysPlan, of: Programme, *, id: str, title: str, titles: Sequence[str]) -> Programme:
    """The plan as a programme that can be given; `titles` are the days' names in words, one for each day.

    What is otherwise in some weeks of a workout is so for its exercises, wherever they stand now.
    """
    if [day.exercises for day in plan.days] == [workout.exercises for workout in of.workouts]:
        return of
    workouts = tuple(Workout(name, day.exercises) for name, day in zip(titles, plan.days, strict=True) if day.exercises)
    changes = tuple(moved for change in of.changes for moved in _moved(change, of))
    return replace(of, id=id, title=title, workouts=workouts, changes=changes)


def _moved(change: WeekChange, of: Programme) -> list[WeekChange]:
    if not change.workout or change.exercise:
        return [replace(change, workout="")]
    names = [e.name for workout in of.workouts if workout.title == change.workout for e in workout.exercises]
    return [replace(change, workout="", exercise=name) for name in names]


def _as_it_is(pieces: Sequence[Piece], week: Week) -> Laying:
    """Every workout on its day."""
    places = tuple(piece.workout for piece in pieces)
    clashes = 0
    for muscle in {m for piece in pieces for m in piece.exercise.muscles}:
        on = sorted({week.days[p.workout].day for p in pieces if muscle in p.exercise.muscles})
        clashes += sum(hours_between(a, b) < week.rest_hours for n, b in enumerate(on) for a in on[:n])
    return Laying(tuple(item.sets for item in week.items), places, clashes, proven=True)


def within_room(exercises: tuple[PlannedExercise, ...], room: DayRoom) -> tuple[PlannedExercise, ...]:
    """The day within its minutes to the second: where sets were cut, what is set up takes its time all the same."""
    now = list(exercises)
    while now and session_time(now).seconds > room.minutes * 60:
        last = max(range(len(now)), key=lambda n: (now[n].priority, n))
        now[last] = replace(now[last], sets=now[last].sets[:-1])
        now = [exercise for exercise in now if exercise.sets]
    return tuple(now)


def _cut(
    programme: Programme, flat: Sequence[PlannedExercise], more: Sequence[tuple[str, int]]
) -> tuple[tuple[str, int], ...]:
    wanted: dict[str, int] = {}
    for workout in programme.workouts:
        for exercise in workout.exercises:
            wanted[exercise.name] = wanted.get(exercise.name, 0) + len(exercise.sets)
    kept = {name: sum(len(e.sets) for e in flat if e.name == name) for name in wanted}
    for name, sets in more:
        kept[name] -= sets
    return tuple((name, sets - kept[name]) for name, sets in wanted.items() if sets > kept[name])
