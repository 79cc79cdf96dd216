"""Drops in many words: which load is one is settled by the plan, and by its being lighter than the set before.

A drop is gone on with at a lighter load, without rest. The wordings are common practice; no source.
"""

from collections.abc import Callable
from dataclasses import replace
from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import Drop, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import DROP, NOW, read, row, rows, sets

ONE = PlannedExercise("Leg Extension", sets("42.5", 12, 15, 3, DROP))
TWO = PlannedExercise("Leg Extension", sets("42.5", 12, 15, 3, Drop(2, (20, 30))))
EACH = PlannedExercise("Leg Extension", tuple(replace(s, finish=DROP) for s in sets("42.5", 12, 15, 2)))
NONE = PlannedExercise("Leg Extension", sets("42.5", 8, 15))
BEFORE = tuple(row(f"Leg Extension#{n} 42.5x13") for n in (1, 2))
Written = Callable[[str, int], str]
ENTRIES: tuple[Written, ...] = (
    "{}x{}".format,
    "{} for {}".format,
    "{} {}".format,
    "{}kg x {}".format,
    "{} kilos for {} reps".format,
)
LINKS = (
    " drop ", ", dropped to ", " then ", ", then drop to ", ", down to ", ", down again to ", " > ", " -> ",
    " straight into ", ", straight to ", ", then dropped it to ", ", no rest, ", ", dropset ", ", stripped it to ",
    ", took it down to ", ", went down to ", " and went down to ", ", and then down to ", " then immediately ",
    ", quick change to ", ", pin up to ", ", lightened it to ", ", dropping to ", " with a drop to ", " + drop ",
    ", ds ", ", after that ", ", followed by a drop at ", " & drop ", ", finished it off with ", ", burned out with ",
    "; drop ", ", strip a plate, ",
)  # fmt: skip
PLAINLY = tuple(product(LINKS, ENTRIES))


def _read(exercise: PlannedExercise, text: str, *, begun: bool) -> list[tuple[str, int | None, object, int]]:
    done = BEFORE if begun else ()
    reading = read_message(Request(text, Unit.KG, NOW, (exercise,), done, "Leg Extension"))
    assert reading.ask is None, (text, reading.ask)
    return [(p.stage.value, p.set, p.load and p.load.amount, p.reps) for p in reading.performed]


def _told(*sets_told: str) -> list[tuple[str, int | None, object, int]]:
    return [(p.stage.value, p.set, p.load and p.load.amount, p.reps) for p in rows(*sets_told)]


@pytest.mark.parametrize(("link", "entry"), PLAINLY)
def test_the_planned_drop_of_the_last_set(link: str, entry: Written) -> None:
    want = _told("Leg Extension#3 42.5x12", "Leg Extension#3 30x9 drop")
    assert _read(ONE, entry("42.5", 12) + link + entry("30", 9), begun=True) == want


@pytest.mark.parametrize(("link", "entry"), PLAINLY)
def test_two_drops_in_turn(link: str, entry: Written) -> None:
    want = _told("Leg Extension#3 42.5x12", "Leg Extension#3 32.5x9 drop", "Leg Extension#3 22.5x7 drop")
    assert _read(TWO, link.join([entry("42.5", 12), entry("32.5", 9), entry("22.5", 7)]), begun=True) == want


@pytest.mark.parametrize("apart", [", ", "; ", " and ", "\n"])
@pytest.mark.parametrize("link", LINKS)
def test_a_load_above_that_of_the_drop_is_the_next_set(link: str, apart: str) -> None:
    text = f"42.5x14{link}30x9{apart}42.5x12{link}30x8"
    want = _told("Leg Extension#1 42.5x14", "Leg Extension#1 30x9 drop", "Leg Extension#2 42.5x12",
                 "Leg Extension#2 30x8 drop")  # fmt: skip
    assert _read(EACH, text, begun=False) == want


@pytest.mark.parametrize(
    "link", [", down to ", ", went down to ", " then ", ", then back down to ", " and down again to "]
)
def test_a_lighter_load_where_no_drop_is_planned_is_the_next_set(link: str) -> None:
    assert _read(NONE, f"42.5x10{link}37.5x9", begun=False) == _told(
        "Leg Extension#1 42.5x10", "Leg Extension#2 37.5x9"
    )


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("barbell row 50 9 all three", [("50", 9)] * 3),
        ("fly 10 kilos 11 all 3", [("10", 11)] * 3),
        ("split squat 16 9 a side all three", [("16", 9)] * 3),
        ("bench 55, 57.5, 60 all fives", [("55", 5), ("57.5", 5), ("60", 5)]),
        ("plank fifty seconds a side times two", [(None, 50)] * 2),
        ("plank 50 sec each times 2", [(None, 50)] * 2),
    ],
)
def test_all_three_are_sets_and_no_repetitions(text: str, told: list[tuple[str | None, int]]) -> None:
    reading = read(text)
    assert reading.ask is None
    assert [(None if p.load is None else f"{p.load.amount:f}", p.reps) for p in reading.performed] == told


def test_a_table_whose_columns_are_numbered_sets() -> None:
    reading = read("exercise | set 1 | set 2 | set 3\nbench | 60x5 | 60x5 | 60x4\nbarbell row | 50x10 | 50x9 | 50x8")
    assert reading.ask is None
    assert [p.reps for p in reading.performed] == [5, 5, 4, 10, 9, 8]


@pytest.mark.parametrize(
    ("text", "reps"), [("fly 10 for 12 11 and ate", [12, 11, 8]), ("fly 10x12 and ate a banana", [12])]
)
def test_ate_is_eight_at_the_end_of_a_list(text: str, reps: list[int]) -> None:
    assert [p.reps for p in read(text).performed] == reps
