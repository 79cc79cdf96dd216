"""What a new programme changes against the one that somebody has: plain values, in the order of the new one."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from bot.training.people import MuscleTarget, Programme, Workout
from bot.training.plan import PlannedExercise
from bot.training.shown import MEASURES, RULES, STYLES, show_change, show_load, show_sets, show_span


class Changed(StrEnum):
    """What is otherwise. The words of each are `change-<its value>` with `workout`, `exercise`, `before`, `after`."""

    FIRST = "first"
    """There was no programme before."""
    TITLE = "title"
    NOTE = "note"
    WORKOUT_ADDED = "workout-added"
    WORKOUT_GONE = "workout-gone"
    WORKOUT_RENAMED = "workout-renamed"
    WORKOUT_ORDER = "workout-order"
    MINUTES = "minutes"
    EXERCISE_ADDED = "exercise-added"
    EXERCISE_GONE = "exercise-gone"
    EXERCISE_ORDER = "exercise-order"
    SETS_ADDED = "sets-added"
    SETS_GONE = "sets-gone"
    SETS = "sets"
    PAIR = "pair"
    RULE = "rule"
    STEP = "step"
    PRIORITY = "priority"
    SIDES = "sides"
    CUE = "cue"
    EXERCISE_NOTE = "exercise-note"
    LINK = "link"
    KIND = "kind"
    """The exercise itself: its equipment, muscles, what its load means or what it counts."""
    WEEKS = "weeks"
    BLOCK = "block"
    TARGETS = "targets"


@dataclass(frozen=True, slots=True)
class Change:
    """One change; `before` and `after` as short text, empty where there is none."""

    what: Changed
    workout: str = ""
    exercise: str = ""
    before: str = ""
    after: str = ""


def changes_between(before: Programme | None, after: Programme) -> tuple[Change, ...]:
    """All that is otherwise; nothing where both are the same. The `id` doesn't count."""
    if before is None:
        titles = ", ".join(workout.title for workout in after.workouts)
        return (Change(Changed.FIRST, before="", after=titles),)
    return (*_whole(before, after), *_workouts(before, after), *_around(before, after))


def _text(what: Changed, before: str, after: str, workout: str = "", exercise: str = "") -> Iterator[Change]:
    if before != after:
        yield Change(what, workout, exercise, before, after)


def _whole(before: Programme, after: Programme) -> Iterator[Change]:
    yield from _text(Changed.TITLE, before.title, after.title)
    yield from _text(Changed.NOTE, before.note, after.note)


def _around(before: Programme, after: Programme) -> Iterator[Change]:
    yield from _text(Changed.WEEKS, _weeks(before), _weeks(after))
    yield from _text(Changed.BLOCK, str(before.block_weeks or ""), str(after.block_weeks or ""))
    yield from _text(Changed.TARGETS, _targets(before.targets), _targets(after.targets))


def _weeks(programme: Programme) -> str:
    return "; ".join(show_change(change) for change in programme.changes)


def _targets(targets: tuple[MuscleTarget, ...]) -> str:
    return ", ".join(f"{target.muscle} {show_span(target.low, target.high)}" for target in targets)


def _workouts(before: Programme, after: Programme) -> Iterator[Change]:
    old = {workout.title: workout for workout in before.workouts}
    new = {workout.title: workout for workout in after.workouts}
    renamed = _renamed([w for t, w in old.items() if t not in new], [w for t, w in new.items() if t not in old])
    for title, workout in new.items():
        if title in old:
            yield from _workout(old[title], workout)
        elif title in renamed:
            yield Change(Changed.WORKOUT_RENAMED, title, before=renamed[title].title, after=title)
            yield from _workout(renamed[title], workout)
        else:
            yield Change(Changed.WORKOUT_ADDED, title, after=", ".join(e.name for e in workout.exercises))
    kept = {workout.title for workout in renamed.values()}
    for title, workout in old.items():
        if title not in new and title not in kept:
            yield Change(Changed.WORKOUT_GONE, title, before=", ".join(e.name for e in workout.exercises))
    yield from _order(Changed.WORKOUT_ORDER, [t for t in old if t in new], [t for t in new if t in old])


def _renamed(gone: list[Workout], added: list[Workout]) -> dict[str, Workout]:
    """New title to the workout that it names anew: the same exercises, in order."""
    found: dict[str, Workout] = {}
    for workout in added:
        names = [e.name for e in workout.exercises]
        same = next((g for g in gone if [e.name for e in g.exercises] == names and g not in found.values()), None)
        if same is not None and names:
            found[workout.title] = same
    return found


def _order(what: Changed, before: list[str], after: list[str], workout: str = "") -> Iterator[Change]:
    if before != after:
        yield Change(what, workout, before=", ".join(before), after=", ".join(after))


def _workout(before: Workout, after: Workout) -> Iterator[Change]:
    title = after.title
    yield from _text(Changed.MINUTES, str(before.minutes or ""), str(after.minutes or ""), title)
    old = {exercise.name: exercise for exercise in before.exercises}
    new = {exercise.name: exercise for exercise in after.exercises}
    for name, exercise in new.items():
        if name in old:
            yield from _exercise(title, old[name], exercise)
        else:
            yield Change(Changed.EXERCISE_ADDED, title, name, after=show_sets(exercise))
    for name, exercise in old.items():
        if name not in new:
            yield Change(Changed.EXERCISE_GONE, title, name, before=show_sets(exercise))
    yield from _order(Changed.EXERCISE_ORDER, [n for n in old if n in new], [n for n in new if n in old], title)


def _exercise(workout: str, before: PlannedExercise, after: PlannedExercise) -> Iterator[Change]:
    name = after.name
    if len(before.sets) != len(after.sets):
        what = Changed.SETS_ADDED if len(after.sets) > len(before.sets) else Changed.SETS_GONE
    else:
        what = Changed.SETS
    yield from _text(what, show_sets(before), show_sets(after), workout, name)
    for field, one, other in (
        (Changed.PAIR, before.pair, after.pair),
        (Changed.RULE, RULES[before.load_rule], RULES[after.load_rule]),
        (Changed.STEP, _step(before), _step(after)),
        (Changed.PRIORITY, str(before.priority), str(after.priority)),
        (Changed.SIDES, str(before.sides), str(after.sides)),
        (Changed.CUE, before.cue, after.cue),
        (Changed.EXERCISE_NOTE, before.note, after.note),
        (Changed.LINK, before.link, after.link),
    ):
        yield from _text(field, one, other, workout, name)
    if _kind(before) != _kind(after):
        yield Change(Changed.KIND, workout, name, _show_kind(before), _show_kind(after))


def _step(exercise: PlannedExercise) -> str:
    return "" if exercise.step is None else show_load(exercise.step, exercise.load_style)


def _kind(exercise: PlannedExercise) -> PlannedExercise:
    """What is left of an exercise without all that is told by itself; what clients call it is no change for them."""
    bare = replace(exercise, sets=(), sides=1, cue="", pair="", priority=2, step=None, note="", link="", aliases=())
    return replace(bare, load_rule=PlannedExercise("", ()).load_rule, warmup=(), reason="", load_percent=None)


def _show_kind(exercise: PlannedExercise) -> str:
    parts = [
        exercise.equipment,
        STYLES[exercise.load_style],
        MEASURES[exercise.measure],
        "" if exercise.region is None else exercise.region.value,
        " + ".join(exercise.muscles),
        " + ".join(exercise.muscles_indirect),
        f"{exercise.setup_s} s",
    ]
    return ", ".join(part for part in parts if part)
