"""`chalkpost programme`: a coach's spreadsheet checked in the terminal, and the template to begin with."""

from pathlib import Path

import click

from bot.dialogue.lookover import caution_line, change_line, length_line, muscle_line
from bot.sheets.reading import read_programme
from bot.sheets.remarks import with_remarks
from bot.sheets.writing import template as sheet_template
from bot.training.changes import changes_between
from bot.training.people import Programme
from bot.training.review import review
from bot.wording import show
from bot.wording.bundle import show_plain

SHEET = click.Path(exists=True, dir_okay=False, path_type=Path)


@click.group("programme")
def programme() -> None:
    """Programmes as spreadsheets (.xlsx or .csv)."""


@programme.command("check")
@click.argument("file", type=SHEET)
@click.option("--against", type=SHEET, help="The sheet of the programme before: what changes is told.")
@click.option("--remarks", type=click.Path(dir_okay=False, path_type=Path), help="Write the file with remarks to here.")
def check(file: Path, against: Path | None, remarks: Path | None) -> None:
    """Say what is wrong with a sheet, row by row; else its minutes, hard sets by muscle, and what to look at again.

    Exit status 1 where a problem stops it.
    """
    data = file.read_bytes()
    found, problems = read_programme(data, file.name)
    for problem in problems:
        click.echo(show_plain(problem.line()))
    if remarks is not None:
        _write_remarks(remarks, with_remarks(data, file.name, [(p, show_plain(p.what)) for p in problems]))
    if found is None:
        stopping = sum(problem.stops for problem in problems)
        click.echo(show("cli-programme-stops", count=stopping), err=True)
        raise click.exceptions.Exit(1)
    _tell(found)
    if against is not None:
        _tell_changes(against, found)


@programme.command("template")
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
def template(out: Path) -> None:
    """Write the template: a worked example, explanations, drop-down lists."""
    if out.suffix.lower() != ".xlsx":
        raise click.UsageError("the template is a workbook: give a name that ends in .xlsx")
    out.write_bytes(sheet_template())


def _write_remarks(to: Path, data: bytes | None) -> None:
    if data is None:
        click.echo(show("cli-programme-no-remarks"), err=True)
    else:
        to.write_bytes(data)


def _tell(found: Programme) -> None:
    looked = review(found)
    click.echo(found.title)
    for one in looked.lengths:
        click.echo(f"  {show_plain(length_line(one))}")
    days = tuple(n for n, _ in looked.muscles[0].sets) if looked.muscles else ()
    click.echo(show("review-muscles", days=", ".join(str(n) for n in days)))
    width = max((len(muscle.muscle) for muscle in looked.muscles), default=0)
    for muscle in looked.muscles:
        click.echo(f"  {show_plain(muscle_line(muscle, width))}")
    for caution in looked.cautions:
        click.echo(show_plain(caution_line(caution)))


def _tell_changes(against: Path, found: Programme) -> None:
    before, problems = read_programme(against.read_bytes(), against.name)
    if before is None:
        click.echo(show("cli-programme-before", file=against.name, problem=problems[0].line()), err=True)
        raise click.exceptions.Exit(1)
    changes = changes_between(before, found)
    for change in changes:
        click.echo(show_plain(change_line(change)))
    if not changes:
        click.echo(show("change-none"))
