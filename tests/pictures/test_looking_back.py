"""The pictures that look back: strength over time, hard sets by muscle, attendance; whatever there is to draw."""

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from io import BytesIO
from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from PIL import Image

from bot.pictures import draw
from bot.pictures.drawing import figure_of
from bot.pictures.paper import WIDTH
from bot.pictures.scales import days_between, rounds
from bot.saying import (
    AttendanceChart,
    Chart,
    DaysChart,
    DaysMuscle,
    DaysWeek,
    LiftedPoint,
    MusclesChart,
    MuscleWeeks,
    StrengthChart,
    StrengthPoint,
)
from bot.training.attendance import DayMark
from bot.training.plan import LoadStyle
from bot.training.units import Unit

FIRST = date(2026, 3, 2)
MONDAYS = tuple(date(2027, 2, 1) + timedelta(weeks=n) for n in range(6))
LONG = "Back squat from the safety bars with a pause, heels raised, and a name that never ends"
SMALLEST = 34.0
"""Pixels of 1280: 9.6 at a phone's 360."""


def point(on: date, mean: str, band: str = "8") -> StrengthPoint:
    middle, wide = Decimal(mean), Decimal(band)
    return StrengthPoint(on, middle, middle - wide, middle + wide)


def life(sessions: int, *, breaks: tuple[int, ...] = (), style: LoadStyle = LoadStyle.TOTAL) -> StrengthChart:
    """Two sessions a week, two kinds of sets each; before the sessions of these numbers six weeks were lost."""
    on, points, sets = FIRST, [], []
    for n in range(sessions):
        on += timedelta(days=42) if n in breaks else timedelta(days=3 + n % 2)
        points.append(point(on, str(80 + n / 4), str(max(3.0, 14 - n / 2))))
        sets += [LiftedPoint(on, Decimal(60 + n // 8), (2, 5, 8, 12)[n % 4]), LiftedPoint(on, Decimal(52), 9, 2)]
    return StrengthChart("Back squat", Unit.KG, tuple(points), tuple(sets), style, "Ada")


def muscle(name: str, *done: str, low: int | None = None, high: int | None = None) -> MuscleWeeks:
    counts = tuple(Decimal(n) for n in done)
    return MuscleWeeks(name, counts, tuple(Decimal(8) for _ in counts), low, high)


ROWS = (
    muscle("quadriceps", "8", "10.5", "12", "12", "15", "6", low=10, high=14),
    muscle("chest", "8", "8", "9", "0", "7", "3", low=8, high=8),
    muscle("front shoulder and all around it", "4", "4.5", "0", "6", "10", "0"),
)
WEEK = (DayMark.DONE, DayMark.REST, DayMark.MOVED, DayMark.PARTLY, DayMark.MISSED, DayMark.SKIPPED, DayMark.PLANNED)
WEEKS = (
    DaysWeek((31, None, None, 30, None, None, None), is_now=True),
    DaysWeek((22, None, 20, None, 21, None, None)),
    DaysWeek((16, 15, None, 17, 14, None, None)),
    DaysWeek((12, 11, 16, None, 11, 10, None)),
)
DAYS_ROWS = (
    DaysMuscle("quadriceps", tuple(map(Decimal, ("8", "8", "8", "9.5"))), (72, 48, 72, None), 8, 9),
    DaysMuscle("front shoulder and all around it", tuple(map(Decimal, ("4", "4", "2", "0"))), (72, 48, 24, None), 4, 8),
    DaysMuscle("lats", tuple(map(Decimal, ("6", "6", "6", "12"))), (None, None, None, 24)),
)
CHARTS: dict[str, Chart] = {
    "strength": life(60),
    "strength with breaks": life(40, breaks=(10, 25)),
    "strength, one break of many weeks": life(4, breaks=(2,)),
    "strength, two hundred": life(100),
    "strength, one session": life(1),
    "strength, two": life(2),
    "strength, nothing": StrengthChart("Back squat", Unit.KG, (), ()),
    "strength, long names": replace(life(12), exercise=LONG, whose="Maximiliane-Theodora " * 5, unit=Unit.LB),
    "strength, each hand": life(9, style=LoadStyle.PER_HAND),
    "strength, assistance": StrengthChart(
        "Pull-up", Unit.KG, (point(FIRST, "-12"), point(FIRST + timedelta(days=5), "-8")),
        (LiftedPoint(FIRST, Decimal(-25), 8),), LoadStyle.BODYWEIGHT,
    ),
    "strength, a slip of the thumb": replace(
        life(9), sets=(*life(9).sets, LiftedPoint(FIRST + timedelta(days=9), Decimal(600), 5))
    ),
    "strength, no estimate": StrengthChart("Row", Unit.KG, (), (LiftedPoint(FIRST, Decimal(40), 10),)),
    "muscles": MusclesChart(MONDAYS, ROWS, "Ada"),
    "muscles without targets": MusclesChart(MONDAYS, ROWS[2:]),
    "muscles, many": MusclesChart(MONDAYS, ROWS * 6, "Maximiliane-Theodora " * 5),
    "muscles, none": MusclesChart(MONDAYS, ()),
    "muscles, huge": MusclesChart(MONDAYS, (muscle("x", *["1e30"] * 6, low=0, high=10**9),)),
    "muscles, one week": MusclesChart(MONDAYS[:1], (muscle("lats", "4", low=2, high=6),)),
    "days": DaysChart("Two short days", 45, WEEKS, DAYS_ROWS),
    "days, many muscles": DaysChart(LONG, 240, WEEKS, DAYS_ROWS * 8),
    "days, no muscles": DaysChart("", 15, WEEKS, ()),
    "days, one week": DaysChart("x", 15, WEEKS[:1], tuple(replace(r, sets=r.sets[:1]) for r in DAYS_ROWS)),
    "days, huge": DaysChart(
        LONG * 3, 10**9, (DaysWeek((10**9,) * 7),) * 4, (DaysMuscle(LONG, (Decimal("1e30"),) * 4, (10**6,) * 4, 0, 5),)
    ),
    "attendance": AttendanceChart(MONDAYS[0], WEEK * 12, MONDAYS[0] + timedelta(days=80), "Ada"),
    "attendance, nothing": AttendanceChart(MONDAYS[0], (DayMark.REST,) * 84, MONDAYS[0]),
    "attendance, years": AttendanceChart(MONDAYS[0], WEEK * 100, MONDAYS[0], "Maximiliane-Theodora " * 5),
}  # fmt: skip
charts = pytest.mark.parametrize("chart", CHARTS.values(), ids=CHARTS.keys())


def said(figure: Figure) -> list[str]:
    return [text.get_text() for text in figure.texts if text.get_text()]


def points_of(drawn: Line2D) -> list[tuple[float, float]]:
    """The pixels that a line goes through, or where its marks stand."""
    return [(float(x), float(y)) for x, y in np.asarray(drawn.get_xydata(), dtype=float)]


def check_layout(chart: Chart) -> None:
    """Nothing outside the sheet, nothing too small, no text over another."""
    figure = figure_of(chart)
    height = figure.get_figheight() * figure.dpi
    boxes = [(text, text.get_window_extent()) for text in figure.texts if text.get_text()]
    for text, box in boxes:
        assert 0 <= box.x0 <= box.x1 <= WIDTH, text
        assert 0 <= box.y0 <= box.y1 <= height, text
        assert float(text.get_fontsize()) * figure.dpi / 72 >= SMALLEST - 0.01, text
    for (one, first), (other, second) in combinations(boxes, 2):
        assert not first.overlaps(second), (one, other)
    for artist in figure.artists:
        if isinstance(artist, Line2D):
            assert all(0 <= x <= WIDTH and 0 <= y <= height for x, y in points_of(artist)), artist
        elif isinstance(artist, Rectangle):
            box = artist.get_window_extent()
            assert (box.x0, box.y0) >= (0, 0), artist
            assert box.x1 <= WIDTH, artist
            assert box.y1 <= height, artist


@charts
def test_nothing_is_cut_off_or_covered(chart: Chart) -> None:
    check_layout(chart)


days = st.integers(0, 364).map(lambda n: FIRST + timedelta(days=n))
loads = st.decimals(min_value=-60, max_value=900, places=1)
estimates = st.builds(
    lambda on, mean, wide: StrengthPoint(on, mean, mean - wide, mean + wide),
    days,
    loads,
    st.decimals(min_value=0, max_value=200, places=1),
)
strengths = st.builds(
    lambda name, points, sets, whose: StrengthChart(
        name, Unit.KG, tuple(sorted(points, key=lambda p: p.day)), tuple(sets), LoadStyle.TOTAL, whose
    ),
    st.text(max_size=60),
    st.lists(estimates, max_size=30, unique_by=lambda p: p.day),
    st.lists(st.builds(LiftedPoint, days, loads, st.integers(1, 40)), max_size=40),
    st.text(max_size=40),
)
calendars = st.builds(
    lambda marks, today, whose: AttendanceChart(MONDAYS[0], tuple(marks) * 7, MONDAYS[0] + timedelta(today), whose),
    st.lists(st.sampled_from(DayMark), min_size=1, max_size=14),
    st.integers(-9, 99),
    st.text(max_size=40),
)
counts = st.decimals(min_value=0, max_value=60, places=1)
edges = st.one_of(st.none(), st.tuples(st.integers(0, 15), st.integers(15, 40)))
rows = st.builds(
    lambda name, done, planned, aim: MuscleWeeks(
        name, tuple(done), tuple(planned), None if aim is None else aim[0], None if aim is None else aim[1]
    ),
    st.text(max_size=50),
    st.lists(counts, min_size=6, max_size=6),
    st.lists(counts, min_size=6, max_size=6),
    edges,
)
muscles = st.builds(MusclesChart, st.just(MONDAYS), st.lists(rows, max_size=16).map(tuple), st.text(max_size=40))


@settings(max_examples=40, deadline=None)
@given(st.one_of(strengths, calendars, muscles))
def test_any_past_can_be_drawn(chart: Chart) -> None:
    """Whatever was lifted, worked or left out: the layout holds."""
    check_layout(chart)


@charts
def test_the_file_is_small_and_the_same_each_time(chart: Chart) -> None:
    drawn = draw(chart)
    image = Image.open(BytesIO(drawn))
    assert (image.format, image.width) == ("PNG", WIDTH)
    assert image.height <= 2.6 * WIDTH
    assert len(drawn) < 160_000
    assert draw(chart) == drawn


def test_threads_draw_the_same_as_one() -> None:
    some = list(CHARTS.values())[::4]
    alone = [draw(chart) for chart in some]
    with ThreadPoolExecutor(4) as pool:
        assert list(pool.map(draw, some)) == alone


def marks_of(figure: Figure, *, above: float) -> dict[str, int]:
    """How many marks of each shape lie above this pixel."""
    found: dict[str, int] = {}
    for artist in figure.artists:
        if isinstance(artist, Line2D) and artist.get_linestyle() == "None":
            ys = [y for _, y in points_of(artist) if y > above]
            if ys:
                shape = str(artist.get_marker())
                found[shape] = found.get(shape, 0) + len(ys)
    return found


def test_repetitions_are_told_by_the_marks_shape() -> None:
    """Four shapes, each with its word in the legend; one mark a kind of set."""
    chart = life(8)
    figure = figure_of(chart)
    assert marks_of(figure, above=300) == {"D": 2, "^": 2, "o": 2 + 8, "s": 2}
    assert {"1–3", "4–6", "7–10", "11+"} <= set(said(figure))


def test_the_last_estimate_and_its_band_are_said() -> None:
    words = said(figure_of(life(4)))
    assert "16 Mar 2026: about 81, 95 % between 68 and 93" in words
    assert "One-repetition maximum, kg: Ada" in words


def test_neither_line_nor_band_crosses_a_break() -> None:
    """Two breaks part the line in three, and each says how long it was."""
    whole, parted = figure_of(life(40)), figure_of(life(40, breaks=(10, 25)))

    def lines(figure: Figure) -> int:
        thick = [a for a in figure.artists if isinstance(a, Line2D) and a.get_linewidth() == pytest.approx(6 * 0.72)]
        return len(thick) - 1  # the legend's

    assert (lines(whole), lines(parted)) == (1, 3)
    assert said(parted).count("6 weeks without") == 2
    assert "no sets" in said(parted)
    assert "no sets" not in said(whole)


def test_a_load_beyond_all_reason_does_not_press_the_rest_flat() -> None:
    """It is said in words, and the scale stays."""
    words = said(figure_of(CHARTS["strength, a slip of the thumb"]))
    assert "↑ beyond the picture: 1, up to 600" in words
    assert "200" not in words


def test_below_and_above_the_target_are_marked_beside_the_number() -> None:
    """Not by colour; the week under way is not judged."""
    words = said(figure_of(MusclesChart(MONDAYS, ROWS[:1])))
    assert {"8▼", "10.5", "12", "15▲", "6", "10–14 a week", "so far", "22 Feb"} <= set(words)


def test_the_target_is_drawn_where_there_is_one_and_the_plan_where_there_is_none() -> None:
    assert "target" in said(figure_of(MusclesChart(MONDAYS, ROWS[:1])))
    assert "planned" in said(figure_of(MusclesChart(MONDAYS, ROWS[2:])))


def test_bars_are_as_long_as_the_sets() -> None:
    figure = figure_of(MusclesChart(MONDAYS, (muscle("lats", "10", "5", "2.5", "0", "0", "0", low=4, high=10),)))
    solid = [a for a in figure.artists if isinstance(a, Rectangle) and not a.get_hatch() and a.get_fill()]
    heights = sorted((a.get_height() for a in solid if a.get_width() > 40), reverse=True)[:3]
    assert heights[0] / heights[1] == pytest.approx(2)
    assert heights[1] / heights[2] == pytest.approx(2)


def test_each_mark_of_a_day_has_a_shape_of_its_own() -> None:
    """In grey and at a phone's width no two signs look alike."""
    seen = set()
    for mark in DayMark:
        drawn = Image.open(BytesIO(draw(AttendanceChart(MONDAYS[0], (mark,) * 7, date(2020, 1, 1)))))
        grey = drawn.convert("L").resize((360, round(drawn.height * 360 / WIDTH)), Image.Resampling.LANCZOS)
        seen.add(grey.crop((66, 74, 98, 98)).point(lambda v: 0 if v < 170 else 255).tobytes())
    assert len(seen) == len(DayMark)


def test_sessions_are_counted_in_words() -> None:
    """All that are over: done, in part, missed, given up; each week and the whole."""
    words = said(figure_of(AttendanceChart(MONDAYS[0], WEEK * 2, MONDAYS[0])))
    assert "4 of 8 sessions done, 2 of them in part" in words
    assert words.count("2 of 4") == 2


@pytest.mark.parametrize(
    ("low", "high", "ticks"),
    [(0, 10, (0, 2, 4, 6, 8, 10)), (47, 93, (50, 60, 70, 80, 90)), (-30, -8, (-30, -25, -20, -15, -10)), (5, 5, (5,))],
)
def test_ticks_are_round_numbers(low: float, high: float, ticks: tuple[float, ...]) -> None:
    assert rounds(low, high, most=6) == ticks


@pytest.mark.parametrize("span", [0, 1, 6, 13, 14, 40, 62, 63, 100, 364, 3000])
def test_days_get_few_ticks_within_the_time(span: int) -> None:
    last = FIRST + timedelta(days=span)
    ticks = days_between(FIRST, last, most=7)
    assert 1 <= len(ticks) <= 7
    assert all(FIRST <= tick <= last for tick in ticks)
    assert list(ticks) == sorted(set(ticks))


def test_weeks_of_other_days_stand_side_by_side_with_all_their_numbers() -> None:
    """Minutes on their weekdays, sets and rest of each muscle, a sign where a target is missed."""
    words = said(figure_of(CHARTS["days"]))
    assert {"2 days", "5 days", "as it is", "31", "22", "17", "16", "Mon", "Sun"} <= set(words)
    assert {"8 | 72 h", "9.5▲ | –", "2▼ | 24 h", "0▼ | –", "12 | 24 h"} <= set(words)
    assert "▼ below, ▲ above your target" in words
    assert not any("▼" in word for word in said(figure_of(DaysChart("x", 45, WEEKS, DAYS_ROWS[2:]))))


def test_a_day_twice_as_long_has_a_bar_twice_as_tall() -> None:
    """And stands under its weekday."""
    figure = figure_of(DaysChart("x", 45, (DaysWeek((40, None, None, 20, None, None, None)),), ()))
    bars = sorted((a.get_x(), a.get_height()) for a in figure.artists if isinstance(a, Rectangle))
    assert bars[0][1] == pytest.approx(2 * bars[1][1])
    names = {t.get_text(): float(t.get_position()[0]) for t in figure.texts}
    assert [x + 34 for x, _ in bars] == pytest.approx([names["Mon"], names["Thu"]])
