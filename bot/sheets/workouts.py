"""The sheet Programme: rows gathered to exercises, exercises to workouts."""

from dataclasses import dataclass, field, replace
from functools import partial
from typing import TypeVar

from bot.sheets.blocks import Block, read_block
from bot.sheets.cells import YES_NO_WORDS, read_choice, read_name, read_text, read_text_or_none, read_whole
from bot.sheets.headings import Headed
from bot.sheets.known import Known
from bot.sheets.own import LONGEST_CUE, LONGEST_NAME
from bot.sheets.prescriptions import read_link, read_load, unit_of
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Row
from bot.sheets.taking import Taking
from bot.training.people import Workout
from bot.training.plan import LoadRule, LoadStyle, PlannedExercise
from bot.training.shown import MEASURES, RULES
from bot.training.units import Load, Unit

NEEDED = ("exercise", "sets", "reps")
"""Columns without which there is no programme. A file without a workout column is one workout."""
MOST_WORKOUTS = 20
MOST_EXERCISES = 60
"""Exercises of one workout."""
MOST_EXERCISE_SETS = 60
MOST_MINUTES = 600
LONGEST_PAIR = 10
LONGEST_NOTE = 1_000
RULE_WORDS = {shown: rule for rule, shown in RULES.items()}
V = TypeVar("V")


@dataclass(slots=True)
class _Exercise:
    """An exercise under way: its definition (`None`: unknown), first row, what is said of the whole."""

    name: str
    known: PlannedExercise | None
    first: Row
    blocks: list[tuple[Row, Block]] = field(default_factory=list)
    whole: dict[str, object] = field(default_factory=dict)


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

    def add(self, row: Row) -> None:
        """One more row."""
        taking = self.taking
        title = taking.take(row, "workout", partial(read_name, most=LONGEST_NAME))
        self._to_workout(row, title)
        minutes = taking.take(row, "minutes", partial(read_whole, low=1, high=MOST_MINUTES, example="45"))
        if self.workouts and minutes is not None:
            self._minutes(row, minutes)
        name = taking.take(row, "exercise", partial(read_name, most=LONGEST_NAME))
        self._to_exercise(row, name)
        block = read_block(taking, row, self.unit)
        exercise = self._current
        whole = self._said_of_the_whole(row)
        if exercise is None:
            return
        if block is not None:
            exercise.blocks.append((row, block))
        self._keep_whole(row, exercise, whole)

    @property
    def _current(self) -> _Exercise | None:
        return self.workouts[-1].exercises[-1] if self.workouts and self.workouts[-1].exercises else None

    def _to_workout(self, row: Row, title: str | None) -> None:
        if title is None:
            if not self.workouts:
                if "workout" in self.taking.headed.places and self.taking.is_blank(row, "workout"):
                    self.taking.wrong(Problem(Fault.NO_WORKOUT_YET, "", "Workout A"), row, "workout")
                self.workouts.append(_Workout(self.untitled, row))
            return
        if self.workouts and self.workouts[-1].title == title:
            return
        if any(workout.title == title for workout in self.workouts):
            self.taking.wrong(Problem(Fault.WORKOUT_APART, title), row, "workout")
        self.workouts.append(_Workout(title, row))
        if len(self.workouts) == MOST_WORKOUTS + 1:
            self.taking.wrong(Problem(Fault.TOO_MANY, str(len(self.workouts)), str(MOST_WORKOUTS)), row, "workout")

    def _minutes(self, row: Row, minutes: int) -> None:
        workout = self.workouts[-1]
        if row is workout.first:
            workout.minutes = minutes
        elif workout.minutes != minutes:
            self.taking.wrong(_differs(str(minutes), workout.minutes, workout.first), row, "minutes")

    def _to_exercise(self, row: Row, name: str | None) -> None:
        workout, current = self.workouts[-1], self._current
        if name is None:
            if current is None and self.taking.is_blank(row, "exercise"):
                self.taking.wrong(Problem(Fault.NO_EXERCISE_YET, "", "Back squat"), row, "exercise")
            return
        known = self.known.find(name)
        proper = name if known is None else known.name
        if current is not None and current.name == proper:
            return
        if any(exercise.name == proper for exercise in workout.exercises):
            self.taking.wrong(Problem(Fault.EXERCISE_APART, name), row, "exercise")
        if known is None:
            near = ", ".join(self.known.similar(name))
            self.taking.wrong(
                Problem(Fault.EXERCISE_UNKNOWN if near else Fault.EXERCISE_STRANGE, name, near), row, "exercise"
            )
        workout.exercises.append(_Exercise(proper, known, row))
        if len(workout.exercises) == MOST_EXERCISES + 1:
            self.taking.wrong(Problem(Fault.TOO_MANY, "", str(MOST_EXERCISES)), row, "exercise")

    def _said_of_the_whole(self, row: Row) -> dict[str, object]:
        """What this row says of the whole exercise."""
        take, heading = self.taking.take, self.taking.headed.heading
        said: dict[str, object] = {
            "pair": take(row, "pair", partial(read_name, most=LONGEST_PAIR)),
            "sides": take(row, "sides", partial(read_choice, choices=YES_NO_WORDS)),
            "rule": take(row, "rule", _read_rule),
            "step": take(row, "step", partial(read_load, unit=unit_of(heading("step")) or self.unit)),
            "priority": take(row, "priority", partial(read_whole, low=1, high=3, example="2")),
            "cue": take(row, "cue", partial(read_text_or_none, most=LONGEST_CUE)),
            "note": take(row, "note", partial(read_text, most=LONGEST_NOTE)),
            "link": take(row, "link", read_link),
        }
        return {key: value for key, value in said.items() if value is not None}

    def _keep_whole(self, row: Row, exercise: _Exercise, said: dict[str, object]) -> None:
        if row is exercise.first:
            exercise.whole = said
            return
        for key, value in said.items():
            if exercise.whole.get(key) != value:
                first = self.taking.headed.cell(exercise.first, key).text
                found = self.taking.headed.cell(row, key).text
                self.taking.wrong(_differs(found, first or None, exercise.first), row, key)


def _differs(found: str, first: object, row: Row) -> Problem:
    return Problem(Fault.DIFFERS, found, f"{row.number}" if first is None else f"{row.number} ({first})")


def _read_rule(cell: Cell) -> LoadRule | Problem | None:
    return read_choice(cell, RULE_WORDS)


def read_workouts(
    headed: Headed, known: Known, unit: Unit | None, untitled: str
) -> tuple[tuple[Workout, ...], list[Problem]]:
    """The workouts as far as they are sound, and what is wrong. `untitled`: the title where there is no such column."""
    gathering = _Gathering(Taking(headed), known, unit, untitled)
    for row in headed.rows:
        if gathering.taking.has_any(row):
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
    if said.known is None or not said.blocks:
        return None
    known, whole = _counted(taking, said, said.known), said.whole
    sets = tuple(block.planned for _, block in said.blocks for _ in range(block.times))
    if len(sets) > MOST_EXERCISE_SETS:
        taking.wrong(Problem(Fault.TOO_MANY, str(len(sets)), str(MOST_EXERCISE_SETS)), said.first, "sets")
    _check_loads(taking, said, known.load_style)
    has_percent = any(planned.percent is not None for planned in sets)
    return replace(
        known,
        sets=sets,
        sides=known.sides if "sides" not in whole else 2 if whole["sides"] else 1,
        cue=_of(whole, "cue", known.cue),
        pair=_of(whole, "pair", ""),
        load_rule=_of(whole, "rule", LoadRule.PERCENT if has_percent else LoadRule.TRACKED),
        priority=_of(whole, "priority", 2),
        step=_step(whole),
        note=_of(whole, "note", ""),
        link=_of(whole, "link", ""),
    )


def _of(whole: dict[str, object], key: str, otherwise: V) -> V:
    value = whole.get(key)
    return value if isinstance(value, type(otherwise)) else otherwise


def _step(whole: dict[str, object]) -> Load | None:
    value = whole.get("step")
    return value if isinstance(value, Load) else None


def _counted(taking: Taking, said: _Exercise, known: PlannedExercise) -> PlannedExercise:
    """The definition with the measure that the rows say; all rows of an exercise count the same."""
    first_row, first = said.blocks[0]
    measure = first.measure or known.measure
    for row, block in said.blocks[1:]:
        if (block.measure or known.measure) is not measure:
            problem = Problem(Fault.MEASURES_DIFFER, taking.headed.cell(row, "reps").text, MEASURES[measure])
            taking.wrong(problem, row, "reps")
    del first_row
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
