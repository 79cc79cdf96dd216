"""The sheets around the programme: About, Weeks and Targets."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial

from bot.sheets.cells import read_choice, read_name, read_percent, read_text, read_whole, shown_text, whole_span
from bot.sheets.headings import Headed
from bot.sheets.known import Known
from bot.sheets.layout import ABOUT, headings_of, layouts, plain_name
from bot.sheets.own import LONGEST_NAME, known_muscle
from bot.sheets.prescriptions import MOST_WEEK, read_effort, read_weeks
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Row, Table
from bot.sheets.taking import Taking
from bot.training.people import MuscleTarget, WeekChange, Workout
from bot.training.units import Unit

LONGEST_NOTE = 2_000
MOST_CHANGES, MOST_TARGETS = 200, 100
MOST_HARD_SETS = 60
"""Hard sets a week of one muscle."""
UNIT_WORDS = {unit.value: unit for unit in Unit} | {"lbs": Unit.LB}


@dataclass(frozen=True, slots=True)
class About:
    """The programme as a whole; empty or `None` where the sheet doesn't say."""

    title: str = ""
    note: str = ""
    unit: Unit | None = None
    block_weeks: int | None = None
    reference: str = ""


def read_about(table: Table) -> tuple[About, list[Problem]]:
    """What stands beside each known name in the first column; other rows are passed over."""
    known, problems = headings_of(ABOUT), list[Problem]()
    cells: dict[str, tuple[Row, Cell]] = {}
    for row in table.rows:
        key = known.get(plain_name(row.cell(0).text))
        if key is not None and row.cell(1) != Cell(""):
            cells.setdefault(key, (row, row.cell(1)))
    values: dict[str, object] = {}
    readers: dict[str, Callable[[Cell], object]] = {
        "title": partial(read_name, most=LONGEST_NAME),
        "note": partial(read_text, most=LONGEST_NOTE),
        "unit": partial(read_choice, choices=UNIT_WORDS),
        "block_weeks": partial(read_whole, low=1, high=MOST_WEEK, example="4"),
        "reference": partial(read_name, most=LONGEST_NAME),
    }
    for key, read in readers.items():
        if key in cells:
            row, cell = cells[key]
            value = read(cell)
            if isinstance(value, Problem):
                problems.append(value.at(table.name, row.number, layouts()[ABOUT].column(key).heading))
            else:
                values[key] = value
    return _about(values), problems


def _about(values: dict[str, object]) -> About:
    unit, weeks = values.get("unit"), values.get("block_weeks")
    return About(
        title=str(values.get("title") or ""),
        note=str(values.get("note") or ""),
        unit=unit if isinstance(unit, Unit) else None,
        block_weeks=weeks if isinstance(weeks, int) else None,
        reference=str(values.get("reference") or ""),
    )


def read_weeks_sheet(
    headed: Headed, workouts: Sequence[Workout], known: Known
) -> tuple[tuple[WeekChange, ...], list[Problem]]:
    """What is otherwise in which weeks; workouts and exercises must be of this programme."""
    taking = Taking(headed)
    changes = []
    for row in taking.rows(MOST_CHANGES):
        weeks = taking.need(row, "weeks", read_weeks, "4, 8")
        effort = partial(read_effort, heading=headed.heading("effort"))
        change = WeekChange(
            weeks=weeks or (),
            workout=_workout(taking, row, workouts),
            exercise=_exercise(taking, row, workouts, known),
            fewer_sets=taking.take(row, "fewer", partial(read_whole, low=1, high=20, example="1")) or 0,
            sets_percent=_whole_percent(taking, row),
            load_percent=taking.take(row, "load_percent", partial(read_percent, low=10, high=100, example="90 %")),
            rir=taking.take(row, "effort", effort),
            note=taking.take(row, "note", partial(read_text, most=LONGEST_NOTE)) or "",
        )
        if all(taking.is_blank(row, key) for key in ("fewer", "sets_percent", "load_percent", "effort")):
            taking.wrong(Problem(Fault.NO_CHANGE, stops=False), row)
        changes.append(change)
    return tuple(changes), taking.problems


def _whole_percent(taking: Taking, row: Row) -> int | None:
    percent = taking.take(row, "sets_percent", partial(read_percent, low=1, high=100, example="50 %"))
    if percent is not None and percent != percent.to_integral_value():
        taking.wrong(Problem(Fault.NOT_A_PERCENT, f"{percent} %", "50 %"), row, "sets_percent")
        return None
    return None if percent is None else int(percent)


def _workout(taking: Taking, row: Row, workouts: Sequence[Workout]) -> str:
    name = taking.take(row, "workout", partial(read_name, most=LONGEST_NAME))
    titles = [workout.title for workout in workouts]
    if name is None or name in titles:
        return name or ""
    same = next((title for title in titles if plain_name(title) == plain_name(name)), None)
    if same is None:
        taking.wrong(Problem(Fault.WORKOUT_NOT_HERE, name, ", ".join(titles)), row, "workout")
    return same or ""


def _exercise(taking: Taking, row: Row, workouts: Sequence[Workout], known: Known) -> str:
    name = taking.take(row, "exercise", partial(read_name, most=LONGEST_NAME))
    if name is None:
        return ""
    found = known.find(name)
    names = {exercise.name for workout in workouts for exercise in workout.exercises}
    proper = name if name in names or found is None else found.name
    if proper not in names:
        taking.wrong(Problem(Fault.EXERCISE_NOT_HERE, name, ", ".join(sorted(names)[:3])), row, "exercise")
    return proper


def read_targets(
    headed: Headed, workouts: Sequence[Workout], known: Known
) -> tuple[tuple[MuscleTarget, ...], list[Problem]]:
    """Hard sets a week by muscle, as the coach wants them; a muscle that nothing works is remarked on."""
    taking = Taking(headed)
    worked = {m for w in workouts for e in w.exercises for m in (*e.muscles, *e.muscles_indirect)}
    targets: list[MuscleTarget] = []
    for row in taking.rows(MOST_TARGETS):
        said = taking.need(row, "muscle", partial(read_name, most=LONGEST_NAME), "quadriceps")
        sets = taking.need(row, "sets", _read_sets, "6-12")
        if said is None or sets is None:
            continue
        muscle, problem = known_muscle(said, known)
        if problem is not None:
            taking.wrong(problem, row, "muscle")
        elif muscle not in worked:
            taking.wrong(Problem(Fault.MUSCLE_IDLE, muscle, stops=False), row, "muscle")
        if any(target.muscle == muscle for target in targets):
            taking.wrong(Problem(Fault.NAMED_TWICE, muscle), row, "muscle")
        else:
            targets.append(MuscleTarget(muscle, *sets))
    return tuple(targets), taking.problems


def _read_sets(cell: Cell) -> tuple[int, int] | Problem | None:
    if (problem := read_text(cell, LONGEST_NAME)) is None or isinstance(problem, Problem):
        return problem
    return whole_span(cell.text, shown_text(cell), 0, MOST_HARD_SETS, "6-12")
