"""A programme as the cells of our sheets, before it is known what kind of file they go to."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import groupby

from bot.sheets.cells import NONE_WORD, shielded
from bot.sheets.known import Known, alike, defined, with_own
from bot.sheets.layout import ABOUT, EXERCISES, PROGRAMME, TARGETS, WEEKS, layouts
from bot.training.people import Programme, WeekChange, Workout
from bot.training.plan import Drop, LoadRule, Measure, Mini, PlannedExercise, PlannedSet
from bot.training.shown import (
    MEASURES,
    RULES,
    STYLES,
    show_effort,
    show_load,
    show_percent,
    show_reps,
    show_span,
    show_tempo,
)

Value = str | int
Values = dict[str, Value]
"""By the column's key."""


@dataclass(frozen=True, slots=True)
class Grid:
    """A sheet's rows under its headings; `starts` are the places (from 0) of rows that begin a workout."""

    sheet: str
    rows: tuple[tuple[Value, ...], ...]
    starts: tuple[int, ...] = ()


def grids(programme: Programme, known: Known, *, in_text_file: bool) -> tuple[Grid, ...]:
    """All sheets, the programme's own first; those that would be empty have no rows."""
    own = own_exercises(programme, known)
    every = with_own(own, known)
    write = _Writing(in_text_file)
    rows: list[Values] = []
    starts: list[int] = []
    for workout in programme.workouts:
        starts.append(len(rows))
        rows += write.workout(workout, every)
    return (
        _grid(PROGRAMME, rows, tuple(starts)),
        _grid(WEEKS, [write.change(change) for change in programme.changes]),
        _grid(TARGETS, [{"muscle": write.text(t.muscle), "sets": show_span(t.low, t.high)} for t in programme.targets]),
        _grid(EXERCISES, [write.own(exercise) for exercise in own]),
        Grid(ABOUT, tuple(write.about(programme))),
    )


def own_exercises(programme: Programme, known: Known) -> tuple[PlannedExercise, ...]:
    """Definitions of exercises that are unknown by their name, or known otherwise; of two of one name the first."""
    own: dict[str, PlannedExercise] = {}
    for workout in programme.workouts:
        for exercise in workout.exercises:
            found = known.find(exercise.name)
            is_known = found is not None and found.name == exercise.name and alike(found, exercise)
            if not is_known:
                own.setdefault(exercise.name, replace(defined(exercise), cue=""))
    return tuple(own.values())


def _grid(sheet: str, rows: Iterable[Values], starts: tuple[int, ...] = ()) -> Grid:
    keys = [column.key for column in layouts()[sheet].columns]
    return Grid(sheet, tuple(tuple(row.get(key, "") for key in keys) for row in rows), starts)


@dataclass(frozen=True, slots=True)
class _Writing:
    in_text_file: bool

    def text(self, text: str) -> str:
        return shielded(text, in_text_file=self.in_text_file)

    def workout(self, workout: Workout, known: Known) -> list[Values]:
        rows = [row for exercise in workout.exercises for row in self.exercise(exercise, known.find(exercise.name))]
        if rows:
            rows[0] = {**rows[0], "workout": self.text(workout.title), "minutes": workout.minutes or ""}
        return rows

    def exercise(self, exercise: PlannedExercise, definition: PlannedExercise | None) -> list[Values]:
        blocks = [(planned, len(list(same))) for planned, same in groupby(exercise.sets)]
        rows = [self.block(exercise, planned, times, definition) for planned, times in blocks]
        return [{**rows[0], **self.whole(exercise, definition)}, *rows[1:]] if rows else []

    def block(
        self, exercise: PlannedExercise, planned: PlannedSet, times: int, definition: PlannedExercise | None
    ) -> Values:
        reps = show_reps(planned.reps, exercise.measure)
        if exercise.measure is Measure.REPS and definition is not None and definition.measure is not Measure.REPS:
            reps = f"{reps} reps"
        row: Values = {"sets": times, "reps": reps, "set_cue": self.text(planned.cue)}
        if planned.rir is not None:
            row["effort"] = show_effort(planned.rir)
        if planned.load is not None:
            row["load"] = show_load(planned.load, exercise.load_style)
        if planned.percent is not None:
            row["percent"] = show_percent(planned.percent)
        if planned.rest_s is not None:
            row["rest"] = f"{planned.rest_s} s"
        if planned.tempo is not None:
            row["tempo"] = show_tempo(planned.tempo)
        match planned.finish:
            case Drop(times=drops, percent=(low, high)):
                row |= {"drops": drops, "drop_by": f"{show_span(low, high)} %"}
            case Mini(reps=mini, rest_s=(low, high)):
                row |= {"mini_reps": mini, "mini_rest": f"{show_span(low, high)} s"}
            case None:
                pass
        return row

    def whole(self, exercise: PlannedExercise, definition: PlannedExercise | None) -> Values:
        """What is said of the whole exercise, in its first row: only what is not so anyway."""
        known = definition or PlannedExercise(exercise.name, ())
        row: Values = {
            "exercise": self.text(exercise.name),
            "pair": self.text(exercise.pair),
            "note": self.text(exercise.note),
            "link": exercise.link,
        }
        if exercise.sides != known.sides:
            row["sides"] = "yes" if exercise.sides == 2 else "no"
        if exercise.cue != known.cue:
            row["cue"] = self.text(exercise.cue) or NONE_WORD
        if exercise.load_rule is not LoadRule.TRACKED or any(s.percent is not None for s in exercise.sets):
            row["rule"] = RULES[exercise.load_rule]
        if exercise.step is not None:
            row["step"] = show_load(exercise.step, known.load_style)
        if exercise.priority != 2:
            row["priority"] = exercise.priority
        return row

    def change(self, change: WeekChange) -> Values:
        row: Values = {
            "weeks": ", ".join(str(week) for week in change.weeks),
            "workout": self.text(change.workout),
            "exercise": self.text(change.exercise),
            "fewer": change.fewer_sets or "",
            "note": self.text(change.note),
        }
        if change.sets_percent is not None:
            row["sets_percent"] = show_percent(change.sets_percent)
        if change.load_percent is not None:
            row["load_percent"] = show_percent(change.load_percent)
        if change.rir is not None:
            row["effort"] = show_effort(change.rir)
        return row

    def own(self, exercise: PlannedExercise) -> Values:
        return {
            "name": self.text(exercise.name),
            "aliases": self.names(exercise.aliases),
            "muscles": self.names(exercise.muscles),
            "indirect": self.names(exercise.muscles_indirect),
            "region": "" if exercise.region is None else exercise.region.value,
            "equipment": exercise.equipment,
            "style": STYLES[exercise.load_style],
            "sides": "yes" if exercise.sides == 2 else "no",
            "measure": MEASURES[exercise.measure],
            "setup": f"{exercise.setup_s} s",
            "cue": self.text(exercise.cue),
        }

    def names(self, names: tuple[str, ...]) -> str:
        """Names with semicolons; a single one with a comma in it gets its own, so that the comma separates nothing."""
        text = "; ".join(names)
        return self.text(f"{text};" if len(names) == 1 and "," in text else text)

    def about(self, programme: Programme) -> list[tuple[Value, ...]]:
        values: Values = {
            "title": self.text(programme.title),
            "note": self.text(programme.note),
            "block_weeks": programme.block_weeks or "",
            "reference": self.text(programme.id),
        }
        return [(row.heading, values.get(row.key, "")) for row in layouts()[ABOUT].rows]
