"""The sheet Programme: rows gathered to exercises, exercises to workouts."""

from dataclasses import dataclass, field, replace
from functools import partial

from bot.sheets.blocks import Block, read_block
from bot.sheets.cells import read_name, read_whole
from bot.sheets.headings import Headed
from bot.sheets.known import Known
from bot.sheets.overall import Overall, read_overall
from bot.sheets.own import LONGEST_NAME
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Row
from bot.sheets.taking import Taking
from bot.training.people import Workout
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.shown import MEASURES
from bot.training.units import Unit

NEEDED = ("exercise", "sets", "reps")
"""Columns without which there is no programme. A file without a workout column is one workout."""
MOST_BLOCKS = 1_000
"""Rows of a programme."""
MOST_WORKOUTS = 14
MOST_EXERCISES = 30
"""Exercises of one workout."""
MOST_EXERCISE_SETS = 40
MOST_MINUTES = 600
MOST_SEARCHES = 40
"""Unknown names for which the nearest are looked up: each takes some milliseconds."""


@dataclass(slots=True)
class _Exercise:
    """An exercise under way: its definition (`None`: unknown), first row, what is said of the whole, blocks so far."""

    name: str
    known: PlannedExercise | None
    first: Row
    overall: Overall | None = None
    blocks: list[tuple[Row, Block]] = field(default_factory=list)


@dataclass(slots=True)
class _Workout:
    title: str
    first: Row
    minutes: int | None = None
    exercises: list[_Exercise] = field(default_factory=list)


class _Gathering:
    """The rows so far."""

    def __init__(self, taking: Taking, known: Known, unit: Unit | None, untitled: str) -> None:
        self.taking, self.known, self.unit, self.untitled = taking, known, unit, untitled
        self.workouts: list[_Workout] = []
        self._searches = 0

    def add(self, row: Row) -> None:
        """One more row: every cell is looked at, whatever is wrong with the others."""
        taking = self.taking
        workout = self._workout(row, taking.take(row, "workout", partial(read_name, most=LONGEST_NAME)))
        minutes = taking.take(row, "minutes", partial(read_whole, low=1, high=MOST_MINUTES, example="45"))
        if row is workout.first:
            workout.minutes = minutes
        elif minutes is not None and workout.minutes != minutes:
            self._differs(row, "minutes", workout.first)
        name = taking.take(row, "exercise", partial(read_name, most=LONGEST_NAME))
        exercise = self._exercise(row, workout, name)
        block, overall = read_block(taking, row, self.unit), read_overall(taking, row, self.unit)
        if exercise is None:
            return
        if block is not None:
            exercise.blocks.append((row, block))
        if exercise.overall is None:
            exercise.overall = overall
        for key in overall.against(exercise.overall):
            self._differs(row, key, exercise.first)

    def _workout(self, row: Row, title: str | None) -> _Workout:
        if self.workouts and title in (None, self.workouts[-1].title):
            return self.workouts[-1]
        if title is None and "workout" in self.taking.headed.places and self.taking.is_blank(row, "workout"):
            self.taking.wrong(Problem(Fault.NO_WORKOUT_YET, "", "Workout A"), row, "workout")
        if any(workout.title == title for workout in self.workouts):
            self.taking.wrong(Problem(Fault.WORKOUT_APART, title or ""), row, "workout")
        self.workouts.append(_Workout(title or self.untitled, row))
        if len(self.workouts) == MOST_WORKOUTS + 1:
            self.taking.wrong(Problem(Fault.TOO_MANY, str(len(self.workouts)), str(MOST_WORKOUTS)), row, "workout")
        return self.workouts[-1]

    def _exercise(self, row: Row, workout: _Workout, name: str | None) -> _Exercise | None:
        current = workout.exercises[-1] if workout.exercises else None
        if name is None:
            if current is None and self.taking.is_blank(row, "exercise"):
                self.taking.wrong(Problem(Fault.NO_EXERCISE_YET, "", "Back squat"), row, "exercise")
            return current
        known = self.known.find(name)
        proper = name if known is None else known.name
        if current is not None and current.name == proper:
            return current
        if any(exercise.name == proper for exercise in workout.exercises):
            self.taking.wrong(Problem(Fault.EXERCISE_APART, name), row, "exercise")
        if known is None:
            self.taking.wrong(self._unknown(name), row, "exercise")
        workout.exercises.append(_Exercise(proper, known, row))
        if len(workout.exercises) == MOST_EXERCISES + 1:
            self.taking.wrong(Problem(Fault.TOO_MANY, str(MOST_EXERCISES + 1), str(MOST_EXERCISES)), row, "exercise")
        return workout.exercises[-1]

    def _unknown(self, name: str) -> Problem:
        self._searches += 1
        if self._searches > MOST_SEARCHES:
            return Problem(Fault.EXERCISE_MISSING, name)
        near = ", ".join(self.known.similar(name))
        return Problem(Fault.EXERCISE_UNKNOWN if near else Fault.EXERCISE_STRANGE, name, near)

    def _differs(self, row: Row, key: str, first: Row) -> None:
        said = self.taking.headed.cell(first, key).text
        write = f"{first.number} ({said})" if said else str(first.number)
        self.taking.wrong(Problem(Fault.DIFFERS, self.taking.headed.cell(row, key).text, write), row, key)


def read_workouts(
    headed: Headed, known: Known, unit: Unit | None, untitled: str
) -> tuple[tuple[Workout, ...], list[Problem]]:
    """The workouts as far as they are sound, and what is wrong. `untitled`: the title where there is no such column."""
    gathering = _Gathering(Taking(headed), known, unit, untitled)
    for row in gathering.taking.rows(MOST_BLOCKS):
        gathering.add(row)
        if row.hidden:
            gathering.taking.wrong(Problem(Fault.HIDDEN, stops=False), row)
    workouts = tuple(_workout(gathering.taking, workout) for workout in gathering.workouts)
    problems = gathering.taking.problems
    if not workouts:
        problems.append(Problem(Fault.NO_ROWS).at(headed.name, headed.head.number))
    return workouts, sorted(problems, key=lambda problem: problem.row or 0)


def _workout(taking: Taking, workout: _Workout) -> Workout:
    exercises = (_exercise(taking, exercise) for exercise in workout.exercises)
    return Workout(workout.title, tuple(e for e in exercises if e is not None), workout.minutes)


def _exercise(taking: Taking, said: _Exercise) -> PlannedExercise | None:
    """The exercise as prescribed; `None` where its name or all of its rows are wrong."""
    if said.known is None or said.overall is None or not said.blocks:
        return None
    sets = tuple(block.planned for _, block in said.blocks for _ in range(block.times))
    if len(sets) > MOST_EXERCISE_SETS:
        taking.wrong(Problem(Fault.TOO_MANY, str(len(sets)), str(MOST_EXERCISE_SETS)), said.first, "sets")
    _check_loads(taking, said, said.known.load_style)
    return said.overall.onto(_counted(taking, said, said.known), sets)


def _counted(taking: Taking, said: _Exercise, known: PlannedExercise) -> PlannedExercise:
    """The definition with the measure that the rows say; all rows of an exercise count the same."""
    measure = said.blocks[0][1].measure or known.measure
    for row, block in said.blocks[1:]:
        if (block.measure or known.measure) is not measure:
            problem = Problem(Fault.MEASURES_DIFFER, taking.headed.cell(row, "reps").text, MEASURES[measure])
            taking.wrong(problem, row, "reps")
    return replace(known, measure=measure)


def _check_loads(taking: Taking, said: _Exercise, style: LoadStyle) -> None:
    for row, block in said.blocks:
        load, shown = block.planned.load, taking.headed.cell(row, "load").text
        if load is None:
            continue
        if style is LoadStyle.NONE:
            taking.wrong(Problem(Fault.NOTHING_TO_LOAD, shown), row, "load")
        elif load.thousandths < 0 and style is not LoadStyle.BODYWEIGHT:
            taking.wrong(Problem(Fault.NOT_A_LOAD, shown, "60 kg"), row, "load")
