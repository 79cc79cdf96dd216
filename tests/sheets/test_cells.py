"""What a cell says: tables of values and of what is wrong, with what to write instead."""

from collections.abc import Callable
from decimal import Decimal

import pytest

from bot.sheets.cells import read_percent, read_percents, read_whole
from bot.sheets.prescriptions import (
    Counted,
    read_effort,
    read_link,
    read_load,
    read_reps,
    read_seconds,
    read_seconds_span,
    read_tempo,
    read_weeks,
)
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Kind
from bot.training.plan import Measure, RepRange, Tempo
from bot.training.units import Load, Unit


def text(shown: str) -> Cell:
    return Cell(shown)


def number(shown: str) -> Cell:
    return Cell(shown, Kind.NUMBER)


def percent(shown: str) -> Cell:
    return Cell(shown, Kind.PERCENT)


def wrong(value: object) -> tuple[Fault, str]:
    """The problem's kind and what to write."""
    assert isinstance(value, Problem), value
    return value.fault, value.write


@pytest.mark.parametrize(
    ("cell", "low", "high", "measure"),
    [
        (text("8-10"), 8, 10, None),
        (text("8 – 10"), 8, 10, None),
        (text("8 to 10"), 8, 10, None),
        (text("8\u221210"), 8, 10, None),
        (number("5"), 5, 5, None),
        (text("5"), 5, 5, None),
        (text("8-10 reps"), 8, 10, Measure.REPS),
        (text("8-10 each side"), 8, 10, None),
        (text("8 reps per leg"), 8, 8, Measure.REPS),
        (text("30-60 s"), 30, 60, Measure.SECONDS),
        (text("30-60 sec."), 30, 60, Measure.SECONDS),
        (text("45s"), 45, 45, Measure.SECONDS),
        (text("1-2 min"), 60, 120, Measure.SECONDS),
        (text("1.5 min"), 90, 90, Measure.SECONDS),
        (text("1,5 min"), 90, 90, Measure.SECONDS),
        (text("40 m"), 40, 40, Measure.METRES),
        (text("20-40 metres"), 20, 40, Measure.METRES),
    ],
)
def test_repetitions(cell: Cell, low: int, high: int, measure: Measure | None) -> None:
    assert read_reps(cell) == Counted(RepRange(low, high), measure)


@pytest.mark.parametrize(
    ("cell", "fault", "write"),
    [
        (text("8-"), Fault.NOT_A_RANGE, "8-10"),
        (text("8/10"), Fault.NOT_A_RANGE, "8-10"),
        (text("8, 10"), Fault.NOT_A_RANGE, "8-10"),
        (text("10-8"), Fault.BACKWARDS, "8-10"),
        (text("many"), Fault.NOT_A_RANGE, "8-10"),
        (text("8-10-12"), Fault.NOT_A_RANGE, "8-10"),
        (text("8.5"), Fault.NOT_A_RANGE, "5-8"),
        (text("0"), Fault.OUT_OF_RANGE, "1-20000"),
        (text("8-10 kg"), Fault.NOT_A_RANGE, "8-10"),
        (text("3 hours"), Fault.NOT_A_RANGE, "3-5"),
        (percent("8"), Fault.NOT_A_RANGE, "8-10"),
        (text("8-Oct"), Fault.DATE, "8-10"),
        (text("08. Okt"), Fault.DATE, "8-10"),
        (text("Oct-45"), Fault.DATE, "10-45"),
        (text("10/8/2026"), Fault.DATE, "8-10"),
        (text("8.10."), Fault.DATE, "8-10"),
        (text("12-Aug"), Fault.DATE, "8-12"),
        (Cell("2026-10-08", Kind.DATE), Fault.DATE, "8-10"),
        (Cell("", Kind.FORMULA), Fault.FORMULA, ""),
        (Cell("#REF!", Kind.FAULT), Fault.ERROR_VALUE, ""),
        (Cell("01:30", Kind.CLOCK), Fault.CLOCK, "90 s"),
    ],
)
def test_repetitions_that_are_none(cell: Cell, fault: Fault, write: str) -> None:
    """A range that a spreadsheet program made a day of is named as that, and never taken for what it may have been."""
    assert wrong(read_reps(cell)) == (fault, write)


@pytest.mark.parametrize(
    ("cell", "heading", "rir"),
    [
        (text("RIR 2"), "Effort", "2"),
        (text("rir 1.5"), "Effort", "1.5"),
        (text("1,5 RIR"), "Effort", "1.5"),
        (text("RPE 8"), "Effort", "2"),
        (text("@8.5"), "Effort", "1.5"),
        (text("9 rpe"), "Effort", "1"),
        (text("2 left"), "Effort", "2"),
        (text("2 reps in reserve"), "Effort", "2"),
        (text("to failure"), "Effort", "0"),
        (number("8"), "RPE", "2"),
        (number("8"), "Effort (RPE)", "2"),
        (text("2"), "RIR", "2"),
        (number("3"), "Reps in reserve", "3"),
        (text("RIR 2"), "RPE", "2"),
    ],
)
def test_effort(cell: Cell, heading: str, rir: str) -> None:
    """RPE on the scale of repetitions in reserve is 10 less these (Zourdos et al. 2016, J Strength Cond Res 30:267)."""
    assert read_effort(cell, heading) == Decimal(rir)


@pytest.mark.parametrize(
    ("cell", "fault"),
    [
        (number("8"), Fault.BARE_EFFORT),
        (text("2"), Fault.BARE_EFFORT),
        (text("RPE 7-8"), Fault.NOT_EFFORT),
        (text("RPE 11"), Fault.NOT_EFFORT),
        (text("RPE 0"), Fault.NOT_EFFORT),
        (text("RIR 2.3"), Fault.NOT_EFFORT),
        (text("hard"), Fault.NOT_EFFORT),
        (percent("80"), Fault.NOT_EFFORT),
    ],
)
def test_effort_that_is_none(cell: Cell, fault: Fault) -> None:
    assert wrong(read_effort(cell, "Effort"))[0] is fault


@pytest.mark.parametrize(
    ("cell", "unit", "load"),
    [
        (text("60 kg"), None, Load(60_000, Unit.KG)),
        (text("22,5kg"), None, Load(22_500, Unit.KG)),
        (text("45 LBS"), None, Load(45_000, Unit.LB)),
        (number("60"), Unit.KG, Load(60_000, Unit.KG)),
        (text("60 lb"), Unit.KG, Load(60_000, Unit.LB)),
        (text("add 10 kg"), None, Load(10_000, Unit.KG)),
        (text("+10"), Unit.KG, Load(10_000, Unit.KG)),
        (text("10 kg added"), None, Load(10_000, Unit.KG)),
        (text("assist 20 kg"), None, Load(-20_000, Unit.KG)),
        (text("20 kg assistance"), None, Load(-20_000, Unit.KG)),
        (text("-20 kg"), None, Load(-20_000, Unit.KG)),
        (text("body weight"), None, Load(0, Unit.KG)),
        (text("BW"), Unit.LB, Load(0, Unit.LB)),
    ],
)
def test_loads(cell: Cell, unit: Unit | None, load: Load) -> None:
    assert read_load(cell, unit) == load


@pytest.mark.parametrize(
    ("cell", "fault"),
    [
        (number("60"), Fault.NO_UNIT),
        (text("60-65 kg"), Fault.NOT_A_LOAD),
        (text("1,000 kg"), Fault.NOT_A_LOAD),
        (text("heavy"), Fault.NOT_A_LOAD),
        (text("assist 20 kg added"), Fault.NOT_A_LOAD),
        (text("3000 kg"), Fault.OUT_OF_RANGE),
        (percent("80"), Fault.NOT_A_LOAD),
    ],
)
def test_loads_that_are_none(cell: Cell, fault: Fault) -> None:
    assert wrong(read_load(cell, None))[0] is fault


@pytest.mark.parametrize(
    ("cell", "heading", "seconds"),
    [
        (text("90 s"), "Rest", 90),
        (text("90 sec"), "Rest", 90),
        (number("90"), "Rest", 90),
        (text("2 min"), "Rest", 120),
        (text("1.5 min"), "Rest", 90),
        (text("2'"), "Rest", 120),
        (number("2"), "Rest (min)", 120),
        (number("10"), "Rest (s)", 10),
        (text("0 s"), "Rest", 0),
    ],
)
def test_rests(cell: Cell, heading: str, seconds: int) -> None:
    assert read_seconds(cell, heading) == seconds


@pytest.mark.parametrize(
    ("cell", "fault", "write"),
    [
        (number("2"), Fault.BARE_REST, "2 min or 2 s"),
        (text("1:30"), Fault.CLOCK, "90 s"),
        (text("60-90 s"), Fault.NOT_A_REST, "90 s"),
        (text("long"), Fault.NOT_A_REST, "90 s or 2 min"),
        (text("2 h"), Fault.NOT_A_REST, "90 s or 2 min"),
        (text("31 min"), Fault.NOT_A_REST, "90 s or 2 min"),
    ],
)
def test_rests_that_are_none(cell: Cell, fault: Fault, write: str) -> None:
    assert wrong(read_seconds(cell, "Rest")) == (fault, write)


def test_rests_between_mini_sets() -> None:
    assert read_seconds_span(text("3-5 s"), "s", 1) == (3, 5)
    assert read_seconds_span(number("4"), "s", 1) == (4, 4)


@pytest.mark.parametrize(
    ("cell", "value"),
    [
        (percent("85"), "85"),
        (text("85 %"), "85"),
        (text("85%"), "85"),
        (text("87,5 percent"), "87.5"),
        (number("85"), "85"),
        (percent("1"), "1"),
    ],
)
def test_percentages(cell: Cell, value: str) -> None:
    assert read_percent(cell, 1, 100, "85 %") == Decimal(value)


@pytest.mark.parametrize(
    ("cell", "fault", "write"),
    [
        (number("0.85"), Fault.BARE_SHARE, "85 %"),
        (text("0,85"), Fault.BARE_SHARE, "85 %"),
        (text("20-30 %"), Fault.NOT_A_PERCENT, "85 %"),
        (text("most"), Fault.NOT_A_PERCENT, "85 %"),
        (number("120"), Fault.OUT_OF_RANGE, "1-100 %"),
    ],
)
def test_percentages_that_are_none(cell: Cell, fault: Fault, write: str) -> None:
    """0.85 in a plain cell could be a share or a slip: it is asked about; in a percent cell it is 85 %."""
    assert wrong(read_percent(cell, 1, 100, "85 %")) == (fault, write)


def test_ranges_of_percentages() -> None:
    assert read_percents(text("20-30 %"), 1, 90, "20-30 %") == (Decimal(20), Decimal(30))
    assert read_percents(text("20 % - 30 %"), 1, 90, "20-30 %") == (Decimal(20), Decimal(30))
    assert wrong(read_percents(text("30-20 %"), 1, 90, "20-30 %")) == (Fault.BACKWARDS, "20-30 %")
    assert wrong(read_percents(text("8-Oct"), 1, 90, "20-30 %")) == (Fault.DATE, "8-10 %")


@pytest.mark.parametrize("shown", ["3-1-X-0", "3 1 x 0", "31X0", "3/1/x/0", "3–1–X–0"])
def test_tempo(shown: str) -> None:
    assert read_tempo(text(shown)) == Tempo(3, 1, None, 0)


@pytest.mark.parametrize("shown", ["3-1-0", "X-1-3-0", "slow", "310", "3-1-1-0-2", "3-1-1-100"])
def test_tempo_that_is_none(shown: str) -> None:
    assert wrong(read_tempo(text(shown))) == (Fault.NOT_A_TEMPO, "3-1-X-0")


@pytest.mark.parametrize(
    ("shown", "weeks"),
    [("4", (4,)), ("4, 8", (4, 8)), ("week 4 and 8", (4, 8)), ("10-12; 4", (4, 10, 11, 12)), ("4,4", (4,))],
)
def test_weeks(shown: str, weeks: tuple[int, ...]) -> None:
    assert read_weeks(text(shown)) == weeks


def test_weeks_that_are_none() -> None:
    assert wrong(read_weeks(text("every fourth"))) == (Fault.NOT_WEEKS, "4, 8")
    assert wrong(read_weeks(text("0"))) == (Fault.OUT_OF_RANGE, "1-104")
    assert wrong(read_weeks(text("8-4"))) == (Fault.BACKWARDS, "4-8")


def test_links() -> None:
    assert read_link(text("https://example.org/a?b#c")) == "https://example.org/a?b#c"
    for shown in ("example.org", "javascript:alert(1)", "https://a b", "ftp://example.org", 'https://x"y'):
        assert wrong(read_link(text(shown)))[0] is Fault.NOT_A_LINK


def test_whole_numbers() -> None:
    assert read_whole(number("3"), 1, 20, "3") == 3
    assert read_whole(text("3"), 1, 20, "3") == 3
    assert wrong(read_whole(text("3.5"), 1, 20, "3")) == (Fault.NOT_A_NUMBER, "3")
    assert wrong(read_whole(percent("3"), 1, 20, "3")) == (Fault.NOT_A_NUMBER, "3")
    assert wrong(read_whole(text("21"), 1, 20, "3")) == (Fault.OUT_OF_RANGE, "1-20")


READERS: tuple[Callable[[Cell], object], ...] = (
    read_reps,
    read_tempo,
    read_link,
    read_weeks,
    lambda cell: read_effort(cell, ""),
    lambda cell: read_load(cell, None),
    lambda cell: read_seconds(cell, ""),
    lambda cell: read_percent(cell, 1, 100, ""),
    lambda cell: read_whole(cell, 1, 2, ""),
)


@pytest.mark.parametrize("read", READERS)
def test_a_blank_cell_says_nothing_and_a_formula_is_never_read(read: Callable[[Cell], object]) -> None:
    """The same in every reader."""
    assert read(text("")) is None
    assert wrong(read(Cell("", Kind.FORMULA)))[0] is Fault.FORMULA
