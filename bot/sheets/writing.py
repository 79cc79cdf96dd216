"""A programme to a file that reads back as the same programme, and the template to begin with."""

from functools import cache
from importlib.resources import files

from bot.sheets.csvout import show_csv
from bot.sheets.grids import grids
from bot.sheets.known import Known, known_exercises
from bot.sheets.reading import read_programme
from bot.sheets.xlsxout import show_xlsx
from bot.training.people import Programme

TEMPLATE_NAME = "programme.xlsx"


def write_programme(programme: Programme, known: Known | None = None) -> bytes:
    """The programme as .xlsx, with explanations and lists. Exercises that the catalogue has otherwise are written out.

    Lossless where exercises of one name are defined alike, titles of workouts are different, and names are on one line:
    all that came from a sheet is.
    """
    every = known or known_exercises()
    return show_xlsx(grids(programme, every, in_text_file=False), every)


def write_programme_csv(programme: Programme, known: Known | None = None) -> bytes:
    """The same as one .csv: UTF-8 with a mark, commas, the sheets under each other."""
    return show_csv(grids(programme, known or known_exercises(), in_text_file=True))


@cache
def template() -> bytes:
    """The .xlsx to begin with: a worked example that uses every column, explanations, drop-down lists."""
    return write_programme(example())


@cache
def example() -> Programme:
    """The worked example; `ValueError` where it has a problem: a defect of ours."""
    data = files("bot.sheets").joinpath("example.csv").read_bytes()
    programme, problems = read_programme(data, "example.csv")
    if programme is None:
        raise ValueError(f"the example has problems: {problems}")
    return programme
