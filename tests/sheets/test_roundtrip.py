"""What is written reads back as the same, whatever a coach wrote; the template is its own example."""

import csv
import io

import pytest
from hypothesis import HealthCheck, given, settings
from openpyxl import load_workbook

from bot.sheets.cells import shielded
from bot.sheets.reading import read_programme
from bot.sheets.writing import example, template, write_programme, write_programme_csv
from bot.training.people import Programme
from bot.training.samples import sample_programme
from storage.codec import codec
from tests.sheets.programmes import NASTY, programmes

MANY = settings(
    max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large]
)


def stops(data: bytes, name: str) -> tuple[Programme | None, list[object]]:
    """The programme, and the problems that stop it."""
    programme, problems = read_programme(data, name)
    return programme, [problem for problem in problems if problem.stops]


@MANY
@given(programmes())
def test_a_workbook_reads_back_as_the_programme(programme: Programme) -> None:
    """Lossless, every field, formulas and quotes among the texts included."""
    assert stops(write_programme(programme), "p.xlsx") == (programme, [])


@MANY
@given(programmes())
def test_a_text_file_reads_back_as_the_programme(programme: Programme) -> None:
    """The same through .csv."""
    assert stops(write_programme_csv(programme), "p.csv") == (programme, [])


@settings(MANY, max_examples=25)
@given(programmes())
def test_nothing_that_we_write_is_a_formula(programme: Programme) -> None:
    """In a workbook, to an independent reader, no cell is one; in a text file no cell begins as one (OWASP, CSV
    injection: `=`, `+`, `-`, `@`, tab, carriage return), numbers apart."""
    book = load_workbook(io.BytesIO(write_programme(programme)))
    assert not [c for sheet in book for row in sheet for c in row if c.data_type == "f"]
    text = write_programme_csv(programme).decode("utf-8-sig")
    cells = [cell for row in csv.reader(io.StringIO(text, newline="")) for cell in row]
    assert not [cell for cell in cells if cell[:1] in ("=", "+", "-", "@", "\t", "\r")]


@pytest.mark.parametrize("text", NASTY)
def test_texts_that_look_like_something_else_are_shielded(text: str) -> None:
    """One apostrophe is put before them, and one is taken off."""
    written = shielded(text, in_text_file=True)
    assert written.removeprefix("'") == text


def test_the_template_reads_as_its_example() -> None:
    """Without a single problem or remark, and with every column in use."""
    programme, problems = read_programme(template(), "programme.xlsx")
    assert programme == example()
    assert problems == ()
    sheet = load_workbook(io.BytesIO(template()))["Programme"]
    filled = {c.column for row in sheet.iter_rows(min_row=2) for c in row if c.value}
    assert filled == set(range(1, 24))


def test_the_template_is_fit_to_work_and_print() -> None:
    """Frozen headings, drop-down lists that point at cells with something in them, text columns, a page across."""
    book = load_workbook(io.BytesIO(template()))
    assert book.sheetnames == ["Programme", "Weeks", "Targets", "Exercises", "About", "Explanations", "Lists"]
    sheet = book["Programme"]
    assert sheet.freeze_panes == "D2"
    assert (sheet.page_setup.orientation, sheet.page_setup.fitToWidth, sheet.print_title_rows) == (
        "landscape",
        1,
        "$1:$1",
    )
    assert {column.number_format for column in sheet.column_dimensions.values()} == {"@"}
    rules = [rule for one in book for rule in one.data_validations.dataValidation]
    assert len(rules) == 11
    for rule in rules:
        first, last = rule.formula1.replace("$", "").partition("!")[2].split(":")
        assert all(c.value for row in book["Lists"][f"{first}:{last}"] for c in row)
    explained = [row[1].value for row in book["Explanations"] if row[1].value]
    assert {cell.value for cell in sheet[1]} <= set(explained)


@MANY
@given(programmes())
def test_what_a_coach_prescribes_is_kept_whole(programme: Programme) -> None:
    """Every field survives the database's own form."""
    kept = codec(Programme)
    assert kept.read_kept(kept.show_kept(programme)) == programme


def test_the_sample_programme_goes_out_and_comes_back() -> None:
    """What clients have today was not made by a sheet, and is none the worse for it."""
    sample = sample_programme()
    assert stops(write_programme(sample), "s.xlsx") == (sample, [])
    assert stops(write_programme_csv(sample), "s.csv") == (sample, [])
