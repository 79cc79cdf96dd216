"""A little more work on days that got short: what the coach allows, weak points first."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.training.people import MuscleTarget
from bot.training.plan import PlannedExercise
from bot.training.put_right import may_grow, with_one_more
from bot.training.timing import session_time
from bot.training.volume import planned_sets
from bot.training.week_values import DayRoom

Held = list[tuple[PlannedExercise, ...]]


@dataclass(frozen=True, slots=True)
class Extra:
    """How many sets a week may be added, and the weak points in their order; after them come the muscles that are
    furthest under the programme's targets."""

    sets: int
    muscles: tuple[str, ...] = ()


def with_extra(
    held: Held, rooms: Sequence[DayRoom], extra: Extra, targets: Sequence[MuscleTarget]
) -> tuple[Held, tuple[tuple[str, int], ...]]:
    """The days with the sets that were added, and these by exercise: one more an exercise at most, none over a day's
    minutes, none for a muscle that has reached the top of its target."""
    days, grown = list(held), list[str]()
    while len(grown) < extra.sets:
        way = next(_ways(days, rooms, extra, targets, grown), None)
        if way is None:
            break
        place, exercise = way
        days[place] = _grown(days[place], exercise)
        grown.append(exercise.name)
    return days, tuple((name, 1) for name in grown)


def _ways(
    days: Held, rooms: Sequence[DayRoom], extra: Extra, targets: Sequence[MuscleTarget], grown: Sequence[str]
) -> Iterator[tuple[int, PlannedExercise]]:
    """Sets that may be added, the best first: the weak point that got the least so far, the day with most room."""
    now = planned_sets(e for exercises in days for e in exercises)
    given = [sum(muscle in e.muscles for d in days for e in d if e.name in grown) for muscle in extra.muscles]
    weak = [muscle for _, muscle in sorted(zip(given, extra.muscles, strict=True), key=lambda pair: pair[0])]
    short = sorted(
        (t for t in targets if now.get(t.muscle, Decimal(0)) < t.low and t.muscle not in weak),
        key=lambda t: now.get(t.muscle, Decimal(0)) - t.low,
    )
    full = {t.muscle for t in targets if now.get(t.muscle, Decimal(0)) + 1 > t.high}
    left = [room.minutes * 60 - session_time(d).seconds for d, room in zip(days, rooms, strict=True)]
    for muscle in [m for m in (*weak, *(t.muscle for t in short)) if m not in full]:
        for place in sorted(range(len(days)), key=lambda p: (-left[p], p)):
            for exercise in days[place]:
                is_new = exercise.name not in grown and muscle in exercise.muscles and may_grow(exercise)
                if is_new and session_time(_grown(days[place], exercise)).seconds <= rooms[place].minutes * 60:
                    yield place, exercise


def _grown(exercises: tuple[PlannedExercise, ...], one: PlannedExercise) -> tuple[PlannedExercise, ...]:
    return tuple(with_one_more(e) if e is one else e for e in exercises)
