"""A whole sheet: what rows mean together, every problem at once, and the file back with remarks."""

import csv
import io

import pytest
from openpyxl import load_workbook

from bot.sheets.opening import open_book
from bot.sheets.problems import Fault, Problem
from bot.sheets.reading import read_programme, title_of
from bot.sheets.remarks import with_remarks
from bot.sheets.writing import template
from bot.training.people import MuscleTarget, Programme, WeekChange
from bot.training.plan import LoadRule, LoadStyle, Measure
from bot.training.units import Load, Unit
from bot.wording.bundle import show_plain
from tests.sheets.books import HEADINGS, ROW, csv_of, raw_xlsx, row_xml, saved, sheet_xml, xlsx_of

Found = list[tuple[Fault, int | None, str]]


def problems_of(data: bytes, name: str = "a.csv") -> Found:
    """What is wrong, and where."""
    return [(p.fault, p.row, p.column) for p in read_programme(data, name)[1]]


def programme_of(data: bytes, name: str = "a.csv") -> Programme:
    """The programme; fails where there is none."""
    programme, problems = read_programme(data, name)
    assert programme is not None, problems
    return programme


@pytest.mark.parametrize(
    ("rows", "expected"),
    [
        ([("", "Back squat", 3, "5")], [(Fault.NO_WORKOUT_YET, 2, "Workout")]),
        ([("A", "", 3, "5")], [(Fault.NO_EXERCISE_YET, 2, "Exercise")]),
        ([("A", "Back squat", "", "5")], [(Fault.BLANK, 2, "Sets")]),
        ([("A", "Back squat", 3, "")], [(Fault.BLANK, 2, "Repetitions")]),
        ([("A", "Bakk squad", 3, "5")], [(Fault.EXERCISE_UNKNOWN, 2, "Exercise")]),
        ([("A", "zzzzqqqq", 3, "5")], [(Fault.EXERCISE_STRANGE, 2, "Exercise")]),
        (
            [("A", "Back squat", 1, "5"), ("", "Plank", 1, "30 s"), ("", "Back squat", 1, "8")],
            [(Fault.EXERCISE_APART, 4, "Exercise")],
        ),
        (
            [("A", "Back squat", 1, "5"), ("B", "Plank", 1, "30 s"), ("A", "Leg press", 1, "8")],
            [(Fault.WORKOUT_APART, 4, "Workout")],
        ),
        ([("A", "Back squat", 1, "5"), ("", "", 1, "30 s")], [(Fault.MEASURES_DIFFER, 3, "Repetitions")]),
        ([("A", "Plank", 1, "30 s", "", "20 kg")], [(Fault.NOTHING_TO_LOAD, 2, "Load")]),
        ([("A", "Back squat", 1, "5", "", "assist 20 kg")], [(Fault.NOT_A_LOAD, 2, "Load")]),
        ([("A" * 101, "Back squat", 1, "5")], [(Fault.TOO_LONG, 2, "Workout")]),
    ],
)
def test_what_rows_mean_together(rows: list[tuple[object, ...]], expected: Found) -> None:
    """One thing wrong each; the same in a workbook."""
    assert problems_of(csv_of(*rows)) == expected
    assert problems_of(xlsx_of(*rows), "a.xlsx") == problems_of(csv_of(*rows))


MORE = ("Exercise", "Sets", "Reps", "Drops", "Drop by", "Mini sets of", "Mini rest", "Priority", "Note", "Link")


@pytest.mark.parametrize(
    ("row", "expected"),
    [
        (("Plank", 1, 30, 2), [(Fault.HALF_A_DROP, 2, "Drop by")]),
        (("Plank", 1, 30, "", "20 %"), [(Fault.HALF_A_DROP, 2, "Drops")]),
        (("Plank", 1, 30, "", "", 4), [(Fault.HALF_MINIS, 2, "Mini rest")]),
        (("Plank", 1, 30, "", "", "", 5), [(Fault.HALF_MINIS, 2, "Mini sets of")]),
        (("Plank", 1, 30, 1, "20 %", 4, 5), [(Fault.BOTH_FINISHES, 2, "Drops")]),
        (("Plank", 1, 30, "", "", "", "", 4), [(Fault.OUT_OF_RANGE, 2, "Priority")]),
        (("Plank", 1, 30, "", "", "", "", "", "", "a page"), [(Fault.NOT_A_LINK, 2, "Link")]),
    ],
)
def test_what_cells_mean_together(row: tuple[object, ...], expected: Found) -> None:
    """A half of something is told by what lacks."""
    assert problems_of(csv_of(row, headings=MORE)) == expected


def test_what_is_said_of_the_whole_is_said_once() -> None:
    """Again the same is fine, otherwise it is a problem that names the first row."""
    head = ("Exercise", "Sets", "Reps", "Priority", "Cue")
    fine = csv_of(("Back squat", 1, 5, 1, "up"), ("", 2, 8, 1, "up"), ("Back squat", 1, 12, "", ""), headings=head)
    (squat,) = programme_of(fine).workouts[0].exercises
    assert (len(squat.sets), squat.priority, squat.cue) == (4, 1, "up")
    _, problems = read_programme(csv_of(("Back squat", 1, 5, 1), ("", 2, 8, 2), headings=head), "a.csv")
    assert [(p.fault, p.row, p.column, p.write) for p in problems] == [(Fault.DIFFERS, 3, "Priority", "2 (1)")]


def test_every_problem_at_once_in_the_order_of_rows() -> None:
    """Not the first only; rows that are fine say nothing."""
    rows: list[tuple[object, ...]] = [("A", "Back squat", "x", "8-", "hard", "60", "3")]
    rows += [("", "", 1, "5", "RIR 2", "60 kg", "120 s"), ("", "Bak squat", 1, "=1", "", "", "")]
    assert problems_of(csv_of(*rows)) == [
        (Fault.NOT_A_NUMBER, 2, "Sets"),
        (Fault.NOT_A_RANGE, 2, "Repetitions"),
        (Fault.NOT_EFFORT, 2, "Effort"),
        (Fault.NO_UNIT, 2, "Load"),
        (Fault.BARE_REST, 2, "Rest"),
        (Fault.EXERCISE_UNKNOWN, 4, "Exercise"),
        (Fault.FORMULA, 4, "Repetitions"),
    ]


def test_a_sheet_full_of_slips_ends_somewhere() -> None:
    """After 300 problems it is said that the rest was not looked at; so are more rows or exercises than can be."""
    _, problems = read_programme(csv_of(*[("A", "Back squat", "x", "5")] * 400), "a.csv")
    assert [p.fault for p in problems] == [Fault.NOT_A_NUMBER] * 300 + [Fault.AND_MORE]
    assert problems[-1].row == 302
    unknown = [("A", f"Unknown of kind {n}", 1, "5") for n in range(60)]
    _, problems = read_programme(csv_of(*unknown), "a.csv")
    faults = {p.fault for p in problems}
    assert Fault.EXERCISE_MISSING in faults
    assert Fault.TOO_MANY in faults
    rows = [("A" if n == 0 else "", "Back squat", 1, "5") for n in range(1_001)]
    assert problems_of(csv_of(*rows))[0] == (Fault.TOO_MANY, 2, "Sets")
    assert problems_of(csv_of(*rows))[-1] == (Fault.TOO_MANY, 1_002, "")


def test_a_problem_says_where_what_was_found_and_what_to_write() -> None:
    """Row, column, what was found, what to write."""
    rows = [("A", "Back squat", 3, "5")] + [("", "", 1, "5")] * 14 + [("", "", 1, "8-")]
    _, (problem,) = read_programme(csv_of(*rows), "a.csv")
    assert show_plain(problem.line()) == 'Row 17, Repetitions: "8-" is not a range; write 8-10.'


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        (csv_of(headings=("Exercise", "Repetitions")), [(Fault.NO_COLUMN, 1, "")]),
        (
            csv_of(headings=("Exercise", "Sets", "Sets", "Reps")),
            [(Fault.COLUMN_TWICE, 1, "Sets"), (Fault.NO_ROWS, 1, "")],
        ),
        (csv_of(headings=("a", "b")), [(Fault.NO_HEADINGS, None, "")]),
        (csv_of(ROW[:4], headings=("Workout", "Exercise", "Sets", "Reps", "Mood")), [(Fault.COLUMN_UNKNOWN, 1, "")]),
    ],
)
def test_headings(data: bytes, expected: Found) -> None:
    """What lacks, what stands twice, what is passed over."""
    assert problems_of(data) == expected


def parts(*tables: tuple[str, list[tuple[object, ...]]]) -> bytes:
    """A text file of a programme and further tables."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerows([HEADINGS, ROW])
    for name, rows in tables:
        writer.writerows([[], ["Sheet", name], *rows])
    return out.getvalue().encode()


def test_weeks_targets_and_own_exercises() -> None:
    """What the other sheets say, and what is wrong there by the sheet's name."""
    programme = programme_of(
        parts(
            ("Weeks", [("Weeks", "Workout", "Fewer sets", "RPE"), ("4, 8", "a", 1, 6)]),
            ("Targets", [("Muscle", "Sets a week"), ("Quadriceps", "4-8")]),
            ("About", [("Title", "Spring"), ("Weeks in a block", 8), ("Unit", "lb")]),
        )
    )
    assert (programme.title, programme.block_weeks) == ("Spring", 8)
    assert programme.changes == (WeekChange((4, 8), "A", fewer_sets=1, rir=programme.changes[0].rir),)
    assert str(programme.changes[0].rir) == "4"
    assert programme.targets == (MuscleTarget("quadriceps", 4, 8),)
    wrong = parts(
        ("Weeks", [("Weeks", "Workout", "Exercise", "Effort"), ("4", "Z", "Plank", "RIR 4"), ("5", "", "", "")]),
        (
            "Targets",
            [("Muscle", "Sets a week"), ("quadricep", "4"), ("chest", "2"), ("quadriceps", "2"), ("quadriceps", "3")],
        ),
        ("Exercises", [("Exercise", "Equipment"), ("Sled", "rope"), ("Sled", "")]),
        ("About", [("Unit", "stone")]),
    )
    _, problems = read_programme(wrong, "a.csv")
    assert {(p.fault, p.sheet, p.stops) for p in problems} == {
        (Fault.WORKOUT_NOT_HERE, "Weeks", True),
        (Fault.EXERCISE_NOT_HERE, "Weeks", True),
        (Fault.NO_CHANGE, "Weeks", False),
        (Fault.MUSCLE_UNKNOWN, "Targets", False),
        (Fault.MUSCLE_IDLE, "Targets", False),
        (Fault.NAMED_TWICE, "Targets", True),
        (Fault.NOT_A_CHOICE, "Exercises", True),
        (Fault.NAMED_TWICE, "Exercises", True),
        (Fault.NOT_A_CHOICE, "About", True),
    }
    assert show_plain(next(p for p in problems if p.fault is Fault.WORKOUT_NOT_HERE).line()).startswith(
        'Sheet Weeks, row 6, Workout: "Z" is no workout'
    )


def test_an_own_exercise_is_used_by_its_names() -> None:
    """It goes before the catalogue's, and what the programme says goes before what it says."""
    head = (
        "Exercise",
        "Also called",
        "Works directly",
        "Load means",
        "Each side",
        "Counted in",
        "Setting up",
        "Equipment",
    )
    own: list[tuple[object, ...]] = [
        head,
        ("Sled push", "sled; loaded sled", "glutes; Quadriceps", "per hand", "yes", "metres", "2 min", "bar"),
    ]
    data = parts(("Exercises", own)).replace(b"Back squat,3,5-8,RIR 2,60 kg", b"Loaded sled,3,20,RIR 2,60 kg")
    (sled,) = programme_of(data).workouts[0].exercises
    assert (sled.name, sled.aliases, sled.muscles) == ("Sled push", ("sled", "loaded sled"), ("glutes", "quadriceps"))
    assert (sled.load_style, sled.sides, sled.measure, sled.setup_s) == (LoadStyle.PER_HAND, 2, Measure.METRES, 120)


def test_a_unit_of_the_heading_or_of_the_programme() -> None:
    """A bare number takes the heading's unit, then the one of About; a percent makes the rule."""
    head = ("Exercise", "Sets", "Reps", "Load (lb)", "% of top set")
    (squat,) = (
        programme_of(csv_of(("Back squat", 1, 5, 135, ""), ("", 2, 8, "", "85%"), headings=head)).workouts[0].exercises
    )
    assert squat.sets[0].load == Load.of(135, Unit.LB)
    assert squat.load_rule is LoadRule.PERCENT
    data = parts(("About", [("Unit", "kg")])).replace(b"60 kg", b"60")
    assert programme_of(data).workouts[0].exercises[0].sets[0].load == Load.of(60, Unit.KG)


def test_other_names_of_the_catalogue_give_the_proper_one() -> None:
    """So that what somebody can lift is kept under one name."""
    data = csv_of(("A", "RDL", 3, "8"), ("", "romanian deadlifts", 1, "12"))
    (exercise,) = programme_of(data).workouts[0].exercises
    assert (exercise.name, len(exercise.sets)) == ("Romanian deadlift", 4)


@pytest.mark.parametrize(
    ("name", "title"),
    [("spring_block.xlsx", "spring block"), ("a/b/c.csv", "c"), (".csv", ".csv"), ("x" * 300 + ".csv", "x" * 100)],
)
def test_a_file_without_a_title_has_its_name(name: str, title: str) -> None:
    assert title_of(name) == title


# --- remarks


def said(data: bytes, name: str) -> list[tuple[Problem, str]]:
    """The problems with their words."""
    return [(problem, show_plain(problem.what)) for problem in read_programme(data, name)[1]]


ROWS = (("A", "Back squat", 3, "8-"), ("", "", 1, "5"), ("", "Plank", "x", "30"))


def test_remarks_in_a_workbook() -> None:
    """In the first free column, at their rows; every other cell, width and list is as it was; and it reads again."""
    book = load_workbook(io.BytesIO(xlsx_of(*ROWS)))
    book.worksheets[0].column_dimensions["B"].width = 44
    data = saved(book)
    back = with_remarks(data, "a.xlsx", said(data, "a.xlsx"))
    assert back is not None
    sheet = load_workbook(io.BytesIO(back)).worksheets[0]
    assert [sheet.cell(row, 8).value for row in range(1, 5)] == [
        "Remarks",
        'Repetitions: "8-" is not a range; write 8-10.',
        None,
        'Sets: "x" is not a whole number; write for example 3.',
    ]
    assert [[c.value for c in row[:7]] for row in sheet] == [[c.value for c in row] for row in book.worksheets[0]]
    assert sheet.column_dimensions["B"].width == 44
    assert problems_of(back, "a.xlsx") == problems_of(data, "a.xlsx")


def test_remarks_in_the_template_keep_the_rest() -> None:
    """Lists, frozen headings and the other sheets stay; a remark on a sheet goes to that sheet."""
    data = template()
    note = [
        (Problem(Fault.NO_CHANGE).at("Weeks", 2), "look & <see>"),
        (Problem(Fault.HIDDEN).at("", 3), "=1+1"),
        (Problem(Fault.NO_ROWS), "of the whole"),
    ]
    back = with_remarks(data, "a.xlsx", note)
    assert back is not None
    book, before = load_workbook(io.BytesIO(back)), load_workbook(io.BytesIO(data))
    assert book.sheetnames == before.sheetnames
    assert book["Weeks"]["I2"].value == "look & <see>"
    assert (book["Programme"]["X3"].value, book["Programme"]["X3"].data_type) == ("=1+1", "s")
    assert book["Programme"]["X1"].value == "Remarks (of the whole)"
    assert book["Programme"].freeze_panes == "D2"
    assert len(book["Programme"].data_validations.dataValidation) == len(
        before["Programme"].data_validations.dataValidation
    )
    assert read_programme(back, "a.xlsx") == read_programme(data, "a.xlsx")


def test_remarks_in_other_programs_workbooks() -> None:
    """Prefixes, rows without a number."""
    sheet = sheet_xml(row_xml(1, *HEADINGS[:4]) + row_xml(2, "A", "Back squat", "3", "8-"))
    for tag in ("worksheet", "sheetData", "row", "c", "is", "t"):
        sheet = (
            sheet.replace(f"<{tag} ", f"<x:{tag} ")
            .replace(f"<{tag}>", f"<x:{tag}>")
            .replace(f"</{tag}>", f"</x:{tag}>")
        )
    sheet = sheet.replace("xmlns=", "xmlns:x=").replace(' r="2"', "").replace(' r="1"', "")
    data = raw_xlsx(sheet)
    back = with_remarks(data, "a.xlsx", said(data, "a.xlsx"))
    assert back is not None
    opened = open_book(back, "a.xlsx")
    assert not isinstance(opened, Problem)
    assert opened.book.tables[0].rows[1].cell(4).text == 'Repetitions: "8-" is not a range; write 8-10.'


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le"])
@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
def test_remarks_in_a_text_file(encoding: str, delimiter: str) -> None:
    """In the same encoding with the same delimiter; formulas among the cells are texts now, numbers stay."""
    rows = (("A", "Back squat", 3, "8-", "", "+10 kg"), ("", '=HYPERLINK("x")', "-1", "5"))
    data = csv_of(*rows, delimiter=delimiter).decode().encode(encoding)
    back = with_remarks(data, "a.csv", said(data, "a.csv"))
    assert back is not None
    read = list(csv.reader(io.StringIO(back.decode(encoding), newline=""), delimiter=delimiter))
    assert read[0] == [*HEADINGS, "Remarks"]
    assert read[1][5:] == ["'+10 kg", "", 'Repetitions: "8-" is not a range; write 8-10.']
    assert read[2][:3] == ["", '\'=HYPERLINK("x")', "-1"]
