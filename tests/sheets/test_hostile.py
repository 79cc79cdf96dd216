"""Files that nobody should send get one plain sentence, soon, and in little memory."""

import mmap
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.sheets.problems import Fault
from bot.sheets.reading import read_programme
from bot.sheets.remarks import with_remarks
from bot.sheets.writing import template
from bot.wording.bundle import show_plain
from tests.sheets.books import csv_of, raw_xlsx, row_xml, sheet_xml, xlsx_of
from tests.sheets.hostile import FILES
from tests.sheets.peak import forget_peak, peak_kb

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize("what", FILES)
def test_it_is_refused_in_one_plain_sentence(what: str) -> None:
    """What is wrong is named; nothing of the file becomes a programme, and no file comes back."""
    name, make, fault = FILES[what]
    data = make()
    programme, problems = read_programme(data, name)
    assert programme is None
    assert [problem.fault for problem in problems] == [fault]
    assert show_plain(problems[0].line()).endswith(".")
    if fault is not Fault.NO_HEADINGS:
        assert with_remarks(data, name, [(problems[0], "x")]) is None


PROBE = """
import sys
from tests.sheets.peak import forget_peak, peak_kb
from bot.sheets.reading import read_programme
from tests.sheets.hostile import FILES
from tests.sheets.books import csv_of, ROW
read_programme(csv_of(ROW), "a.csv")
data = open(sys.argv[2], "rb").read()
before = forget_peak()
read_programme(data, sys.argv[1])
print(peak_kb() - before)
"""


@pytest.mark.parametrize(
    "what",
    [
        "a zip that unpacks to a gigabyte, and says twenty megabytes",
        "a zip of a hundred thousand files",
        "an entity bomb",
        "nested a hundred thousand deep",
        "a hundred thousand rows without a value",
        "four hundred thousand shared texts",
        "eighty thousand cells",
        "half a million attributes",
        "six megabytes",
    ],
)
def test_it_costs_little(what: str, tmp_path: Path) -> None:
    """At most a hundred megabytes beside the file itself, in a process of its own (the highest memory that it held).
    Time is the bench's business; the work is bounded by counts, which the table above meets."""
    name, make, _ = FILES[what]
    file = tmp_path / "file"
    file.write_bytes(make())
    command = [sys.executable, "-c", PROBE, name, str(file)]
    ran = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True, timeout=60)
    assert int(ran.stdout) < 100_000


def test_a_formula_is_never_worked_out_nor_its_kept_value_believed() -> None:
    """The cell is named, and the rest of the row is still read."""
    _, problems = read_programme(xlsx_of(("A", "Back squat", "=1+2", "5-8")), "a.xlsx")
    assert [(p.fault, p.row, p.column) for p in problems] == [(Fault.FORMULA, 2, "Sets")]
    kept = '<row r="2"><c r="B2" t="str"><f>"Back"</f><v>Back squat</v></c></row>'
    _, problems = read_programme(
        raw_xlsx(sheet_xml(row_xml(1, "Workout", "Exercise", "Sets", "Reps") + kept)), "a.xlsx"
    )
    assert (Fault.FORMULA, 2, "Exercise") in [(p.fault, p.row, p.column) for p in problems]
    _, problems = read_programme(csv_of(("A", "=cmd|' /C calc'!A0", 3, "5-8")), "a.csv")
    assert [(p.fault, p.row, p.column) for p in problems] == [(Fault.FORMULA, 2, "Exercise")]


@settings(max_examples=100, deadline=None)
@given(st.data())
def test_a_damaged_file_is_an_answer_and_never_a_crash(data: st.DataObject) -> None:
    """The template with any bytes changed, taken out or put in: read, or refused."""
    body = bytearray(template())
    for _ in range(data.draw(st.integers(1, 4))):
        place = data.draw(st.integers(0, len(body) - 1))
        match data.draw(st.sampled_from(("change", "cut", "put"))):
            case "change":
                body[place] = data.draw(st.integers(0, 255))
            case "cut":
                del body[place : place + data.draw(st.integers(1, 500))]
            case _:
                body[place:place] = data.draw(st.binary(max_size=20))
        body = body or bytearray(b"x")
    programme, problems = read_programme(bytes(body), "a.xlsx")
    assert programme is not None or problems


@settings(max_examples=100, deadline=None)
@given(st.binary(max_size=400) | st.text(max_size=300).map(str.encode), st.sampled_from(("a.xlsx", "a.csv")))
def test_any_bytes_are_an_answer(body: bytes, name: str) -> None:
    """Whatever is sent, as whatever it is named."""
    programme, problems = read_programme(body, name)
    assert programme is None
    assert problems


XML = st.recursive(
    st.sampled_from(("1", "x", "")),
    lambda inner: st.builds(
        lambda tag, attribute, bodies: f"<{tag} {attribute}>{''.join(bodies)}</{tag}>",
        st.sampled_from(("row", "c", "v", "f", "is", "t", "rPh", "sheetData", "r")),
        st.sampled_from(("", 'r="A1"', 'r="2"', 'r="ZZZZ9"', 't="s"', 't="d"', 't="b"', 's="9"', 'r="-1"', 't="e"')),
        st.lists(inner, max_size=4),
    ),
    max_leaves=20,
)


@settings(max_examples=120, deadline=None)
@given(XML)
def test_any_worksheet_is_an_answer(xml: str) -> None:
    """XML that is well formed and means nothing."""
    programme, problems = read_programme(raw_xlsx(sheet_xml(xml)), "a.xlsx")
    assert programme is None
    assert problems


def test_memory_is_measured_at_all() -> None:
    """The probe sees a hundred megabytes that come and go: fresh pages, none of what this process freed before."""
    before = forget_peak()
    with mmap.mmap(-1, 100_000_000) as pages:
        pages.write(b"x" * len(pages))
    assert peak_kb() - before > 50_000
