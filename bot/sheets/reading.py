"""A coach's file to a programme: every problem at once, each with its row and column."""

from collections.abc import Sequence
from dataclasses import replace

from bot.sheets.around import About, read_about, read_targets, read_weeks_sheet
from bot.sheets.headings import Headed, find_headings
from bot.sheets.known import Known, known_exercises, with_own
from bot.sheets.layout import ABOUT, EXERCISES, PROGRAMME, TARGETS, WEEKS, sheet_of
from bot.sheets.opening import open_book
from bot.sheets.own import LONGEST_NAME, read_own
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Book, Table
from bot.sheets.workouts import NEEDED, read_workouts
from bot.training.people import MuscleTarget, Programme, WeekChange, Workout
from bot.training.plan import PlannedExercise

_NEEDED = {EXERCISES: ("name",), WEEKS: ("weeks",), TARGETS: ("muscle", "sets")}


def read_programme(data: bytes, name: str, known: Known | None = None) -> tuple[Programme | None, tuple[Problem, ...]]:
    """The programme in a file of this name (.xlsx or .csv), and what is wrong or worth a remark.

    No programme where any problem stops it. Its `id` is the file's reference: empty in a new file; else it only says
    where the file came from, and whoever takes it checks that the coach may have that programme.
    """
    opened = open_book(data, name)
    if isinstance(opened, Problem):
        return None, (opened,)
    return read_book(opened.book, title_of(name), known or known_exercises())


def read_book(book: Book, untitled: str, known: Known) -> tuple[Programme | None, tuple[Problem, ...]]:
    """The programme in sheets that were opened; `untitled` is its title where the file says none."""
    tables, problems = _by_sheet(book.tables)
    problems += [Problem(Fault.SHEET_UNKNOWN, sheet, stops=False) for sheet in book.unread if not sheet_of(sheet)]
    about, found = read_about(tables[ABOUT]) if ABOUT in tables else (About(), [])
    problems += found
    own, found = _own(tables, known)
    problems += found
    every = with_own(own, known) if own else known
    if PROGRAMME not in tables:
        return None, (*problems, Problem(Fault.NO_HEADINGS, "", "Exercise, Sets, Repetitions"))
    headed, found = find_headings(tables[PROGRAMME], PROGRAMME, NEEDED)
    problems += found
    if headed is None:
        return None, tuple(problems)
    title = about.title or untitled
    workouts, found = read_workouts(headed, every, about.unit, title)
    problems += found
    changes, found = _weeks(tables, workouts, every)
    problems += found
    targets, found = _targets(tables, workouts, every)
    problems += found
    programme = Programme(about.reference, title, workouts, about.note, changes, about.block_weeks, targets)
    return (None if any(problem.stops for problem in problems) else programme), tuple(problems)


def title_of(name: str) -> str:
    """A file's name as a title: without its ending, one line."""
    stem = name.rpartition("/")[2].rpartition(".")[0] or name
    return " ".join(stem.replace("_", " ").split())[:LONGEST_NAME] or "Programme"


def _by_sheet(tables: Sequence[Table]) -> tuple[dict[str, Table], list[Problem]]:
    """Tables by what they are; the programme's own loses its name, so that problems there name no sheet."""
    found: dict[str, Table] = {}
    problems: list[Problem] = []
    for table in tables:
        key = sheet_of(table.name) or PROGRAMME
        if key in found:
            problems.append(Problem(Fault.SHEET_TWICE, table.name))
        else:
            found[key] = replace(table, name="") if key == PROGRAMME else table
    return found, problems


def _headed(tables: dict[str, Table], sheet: str) -> tuple[Headed | None, list[Problem]]:
    if sheet not in tables or not tables[sheet].rows:
        return None, []
    return find_headings(tables[sheet], sheet, _NEEDED[sheet])


def _own(tables: dict[str, Table], known: Known) -> tuple[tuple[PlannedExercise, ...], list[Problem]]:
    headed, problems = _headed(tables, EXERCISES)
    own, found = ((), []) if headed is None else read_own(headed, known)
    return own, [*problems, *found]


def _weeks(
    tables: dict[str, Table], workouts: Sequence[Workout], known: Known
) -> tuple[tuple[WeekChange, ...], list[Problem]]:
    headed, problems = _headed(tables, WEEKS)
    changes, found = ((), []) if headed is None else read_weeks_sheet(headed, workouts, known)
    return changes, [*problems, *found]


def _targets(
    tables: dict[str, Table], workouts: Sequence[Workout], known: Known
) -> tuple[tuple[MuscleTarget, ...], list[Problem]]:
    headed, problems = _headed(tables, TARGETS)
    targets, found = ((), []) if headed is None else read_targets(headed, workouts, known)
    return targets, [*problems, *found]
