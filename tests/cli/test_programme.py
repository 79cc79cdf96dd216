"""`chalkpost programme`: problems, minutes, hard sets and cautions in the terminal; the template."""

import re
from pathlib import Path
from textwrap import dedent

import pytest
from click.testing import CliRunner

from bot.cli import chalkpost
from bot.dialogue.lookover import caution_line, change_line
from bot.sheets.problems import Fault, Problem
from bot.sheets.reading import read_programme
from bot.sheets.writing import example, template
from bot.training.cautions import Caution, Cautioned
from bot.training.changes import Change, Changed
from bot.wording.bundle import show_plain
from tests.sheets.books import csv_of


def test_the_template_checks_well(tmp_path: Path) -> None:
    """Written, checked, and found without a problem; minutes and hard sets are told."""
    file = tmp_path / "mine.xlsx"
    assert CliRunner().invoke(chalkpost, ["programme", "template", str(file)]).exit_code == 0
    assert read_programme(file.read_bytes(), file.name) == (example(), ())
    checked = CliRunner().invoke(chalkpost, ["programme", "check", str(file)])
    assert checked.exit_code == 0, checked.output
    assert "Squat and press: " in checked.stdout
    assert "Hard sets a week by muscle, on 2, 3, 4, 5 training days" in checked.stdout
    assert "(your target 4-10)" in checked.stdout
    assert checked.stderr == ""


def test_problems_are_told_row_by_row_with_exit_status_1(tmp_path: Path) -> None:
    """All at once, in plain words, with what to write; the file comes back with remarks."""
    file, back = tmp_path / "mine.csv", tmp_path / "back.csv"
    rows = (("A", "Back squat", 3, "8-", "RIR 2"), ("", "Bak squat", 3, "8-10", "2"), ("", "", "x", "5", ""))
    file.write_bytes(csv_of(*rows))
    checked = CliRunner().invoke(chalkpost, ["programme", "check", str(file), "--remarks", str(back)])
    assert checked.exit_code == 1
    said = checked.stdout.splitlines()
    assert said[0] == 'Row 2, Repetitions: "8-" is not a range; write 8-10.'
    assert said[1].startswith('Row 3, Exercise: "Bak squat" is not in the catalogue. Nearest: Back squat, ')
    assert said[2].startswith('Row 3, Effort: "2" could be')
    assert said[3] == 'Row 4, Sets: "x" is not a whole number; write for example 3.'
    assert checked.stderr == "4 problems stop this programme.\n"
    assert 'Repetitions: ""8-"" is not a range; write 8-10.' in back.read_text(encoding="utf-8")


def test_what_changes_against_an_earlier_sheet(tmp_path: Path) -> None:
    """Told after the rest; the same sheet changes nothing."""
    before, after = tmp_path / "a.csv", tmp_path / "b.csv"
    before.write_bytes(csv_of(("A", "Back squat", 3, "5-8")))
    after.write_bytes(csv_of(("A", "Back squat", 4, "5-8")))
    ran = CliRunner().invoke(chalkpost, ["programme", "check", str(after), "--against", str(before)])
    assert "A, Back squat: more sets: 3 x 5-8 → 4 x 5-8" in ran.stdout
    ran = CliRunner().invoke(chalkpost, ["programme", "check", str(before), "--against", str(before)])
    assert ran.stdout.endswith("Nothing changes.\n")
    broken = tmp_path / "c.csv"
    broken.write_bytes(b"")
    ran = CliRunner().invoke(chalkpost, ["programme", "check", str(before), "--against", str(broken)])
    assert ran.exit_code == 1
    assert ran.stderr.startswith("c.csv can't be read: the file is empty.")


def test_a_refused_file_gives_no_remarks(tmp_path: Path) -> None:
    """There is nothing to put them into."""
    file = tmp_path / "a.xlsx"
    file.write_bytes(template()[:4000])
    ran = CliRunner().invoke(chalkpost, ["programme", "check", str(file), "--remarks", str(tmp_path / "b.xlsx")])
    assert (ran.exit_code, (tmp_path / "b.xlsx").exists()) == (1, False)
    assert "the file is damaged or cut short" in ran.stdout


def test_the_template_is_a_workbook(tmp_path: Path) -> None:
    assert CliRunner().invoke(chalkpost, ["programme", "template", str(tmp_path / "a.csv")]).exit_code == 2


def test_the_readme_shows_what_is_printed(tmp_path: Path) -> None:
    """The problems shown there are those of the file shown there."""
    readme = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    shown = re.search(r"\$ chalkpost programme check (\S+)\n((?:    .*\n)+)\nfor this file:\n\n((?:    .*\n)+)", readme)
    assert shown is not None
    file = tmp_path / shown[1]
    file.write_text(dedent(shown[3]), encoding="utf-8")
    assert CliRunner().invoke(chalkpost, ["programme", "check", str(file)]).stdout == dedent(shown[2])


def test_the_readmes_table_is_a_programme() -> None:
    """Its rows, as they stand there, with nothing wrong."""
    readme = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    rows = [line.strip("|") for line in readme.splitlines() if line.startswith("|") and line.count("|") == 10]
    assert len(rows) == 6
    programme, problems = read_programme("\n".join(rows[:1] + rows[2:]).encode(), "a.csv")
    assert programme is not None
    assert problems == ()
    assert [len(exercise.sets) for exercise in programme.workouts[0].exercises] == [3, 2, 2]


@pytest.mark.parametrize("fault", Fault)
def test_every_problem_has_its_words(fault: Fault) -> None:
    """At each kind of place; `KeyError` or `ValueError` would come where words or arguments were missing."""
    problem = Problem(fault, "8-", "8-10")
    for placed in (
        problem,
        problem.at("", 3),
        problem.at("", 3, "Sets"),
        problem.at("W"),
        problem.at("W", 3),
        problem.at("W", 3, "S"),
    ):
        assert show_plain(placed.line()).endswith(".")


@pytest.mark.parametrize("caution", Caution)
def test_every_caution_has_its_words(caution: Caution) -> None:
    assert show_plain(caution_line(Cautioned(caution, "A", "B", "C", "1", "2", (3,)))).endswith(".")


@pytest.mark.parametrize("changed", Changed)
def test_every_change_has_its_words(changed: Changed) -> None:
    assert show_plain(change_line(Change(changed, "A", "B", "C", "D")))
