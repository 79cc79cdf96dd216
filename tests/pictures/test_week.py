"""The weekly picture: what a client sees of a week, whatever the week was."""

from concurrent.futures import ThreadPoolExecutor
from decimal import Decimal
from io import BytesIO
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.text import Text
from matplotlib.transforms import Bbox
from PIL import Image

from bot.pictures import draw_week
from bot.pictures.rows import chart_rows
from bot.pictures.week import HEIGHT, SMALLEST, WIDTH, week_figure
from bot.pictures.words import ENGLISH, WeekWords
from bot.saying import WeekChart

MUSCLES = [
    *("chest", "upper back", "lats", "quadriceps", "hamstrings", "glutes", "front shoulder", "side shoulder"),
    *("rear shoulder", "triceps", "biceps", "calves", "lower back", "abdominals", "forearms", "neck"),
    *("adductors", "hip flexors"),
]


def sets(*counts: str) -> tuple[tuple[str, Decimal], ...]:
    return tuple((name, Decimal(count)) for name, count in zip(MUSCLES, counts, strict=False))


USUAL = WeekChart("Your week, 2 to 8 March", sets("9", "8", "6.5", "6"), 3, 4, sets("8", "10", "8", "6"))
CHARTS = {
    "usual": USUAL,
    "nothing planned by muscle": WeekChart("Your week", sets("9", "8"), 3, 3),
    "sixteen": WeekChart("Your week", sets(*["20"] * 16), 2, 5, sets(*["17.5"] * 16)),
    "eighteen": WeekChart("Your week", sets(*["20"] * 18), 2, 5, sets(*["17.5"] * 18)),
    "long names": WeekChart(
        "Week of the very long name " * 6, tuple((m + " of the longer kind" * 4, n) for m, n in sets("9", "8")), 3, 40
    ),
    "huge": WeekChart("Week", sets("1e30", "12"), 2**40, 2**41, sets("1e400", "123456.5")),
    "huge and long": WeekChart(
        "Week", tuple(("left and right " + m, Decimal("1e30")) for m in MUSCLES[:16]), 1, 1, sets("1e30")
    ),
    "none": WeekChart("Your week", (), 0, 3),
    "no sets": WeekChart("Your week", sets("0", "0"), 0, 0),
    "only planned": WeekChart("Your week", (), 0, 3, sets("8", "6")),
    "not drawable": WeekChart(
        "Неделя 🏋 $x_1$\n", (("🏋", Decimal(2)), ("\u202eab", Decimal(1)), ("", Decimal(1))), 1, 1
    ),
}
charts = pytest.mark.parametrize("chart", CHARTS.values(), ids=CHARTS.keys())


def boxes_of(figure: Figure) -> list[tuple[Text, Bbox]]:
    return [(text, text.get_window_extent()) for text in figure.texts if text.get_text()]


def bars_of(figure: Figure) -> list[Rectangle]:
    bars = [artist for artist in figure.artists if isinstance(artist, Rectangle)]
    assert len(bars) == len(figure.artists)
    return bars


def is_within(box: Bbox) -> bool:
    return bool(0 <= box.x0 <= box.x1 <= WIDTH and 0 <= box.y0 <= box.y1 <= HEIGHT)


def check_layout(chart: WeekChart) -> None:
    figure = week_figure(chart)
    boxes = boxes_of(figure)
    for text, box in boxes:
        assert is_within(box), text
        assert float(text.get_fontsize()) * figure.dpi / 72 >= SMALLEST - 0.01, text
    for (one, first), (other, second) in combinations(boxes, 2):
        assert not first.overlaps(second), (one, other)
    for bar in bars_of(figure):
        box = bar.get_window_extent()
        assert is_within(box), bar
        assert not any(box.overlaps(of_text) for _, of_text in boxes), bar


@charts
def test_nothing_is_clipped_or_covered(chart: WeekChart) -> None:
    """Every text stands whole within the picture, big enough for a phone, and neither text nor bar covers it."""
    check_layout(chart)


names = st.text(min_size=0, max_size=60)
counts = st.decimals(min_value=0, max_value=10**7, places=1)
muscles = st.lists(st.tuples(names, counts), max_size=24, unique_by=lambda m: m[0]).map(tuple)


@settings(max_examples=25, deadline=None)
@given(
    st.builds(
        WeekChart,
        title=st.text(max_size=100),
        muscles=muscles,
        done=st.integers(0, 30),
        planned=st.integers(0, 30),
        wanted=muscles,
    )
)
def test_any_week_can_be_drawn(chart: WeekChart) -> None:
    """Whatever people call their muscles and however much they do, the layout holds."""
    check_layout(chart)


@charts
def test_the_file_is_a_png_of_the_size_that_phones_show(chart: WeekChart) -> None:
    drawn = draw_week(chart)
    image = Image.open(BytesIO(drawn))
    assert (image.format, image.size) == ("PNG", (1280, 960))
    assert len(drawn) < 120_000
    assert not image.info.keys() & {"Software", "Creation Time", "date"}


@charts
def test_the_same_week_gives_the_same_bytes(chart: WeekChart) -> None:
    """The platform's file id is kept by what was drawn: a picture that differs by itself would be sent twice."""
    assert draw_week(chart) == draw_week(chart)


def test_threads_draw_the_same_as_one() -> None:
    alone = [draw_week(chart) for chart in CHARTS.values()]
    with ThreadPoolExecutor(4) as pool:
        assert list(pool.map(draw_week, CHARTS.values())) == alone


def test_the_numbers_stand_beside_the_names() -> None:
    """All that the picture says is said in words and numbers too: title, sessions, each muscle, done and planned."""
    said = [text.get_text() for text in week_figure(USUAL).texts]
    assert said[:3] == ["Your week, 2 to 8 March", "Sessions: 3 of 4 done", "Hard sets by muscle"]
    assert {"chest", "9 of 8", "upper back", "8 of 10", "lats", "6.5 of 8", "quadriceps", "6 of 6"} <= set(said)


def test_what_was_planned_is_told_by_its_hatch() -> None:
    """Not by colour alone: planned is hatched within an outline, done is solid."""
    bars = bars_of(week_figure(USUAL))
    hatched = [bar for bar in bars if bar.get_hatch()]
    solid = [bar for bar in bars if not bar.get_hatch()]
    assert len(hatched) == 1 + 1 + 4  # a session, the key, the muscles
    assert len(solid) == 3 + 1 + 4 + 1  # three sessions, the key, the muscles, the line that the bars start from
    assert all(a.get_linewidth() > 0 for a in hatched)


def test_bars_are_as_long_as_the_sets() -> None:
    figure = week_figure(WeekChart("", sets("10", "5", "2.5"), 0, 0))
    bars = sorted(bar.get_width() for bar in bars_of(figure))[-3:]
    assert bars[2] / bars[1] == pytest.approx(2)
    assert bars[1] / bars[0] == pytest.approx(2)


@pytest.mark.parametrize(
    ("done", "planned", "labels"),
    [
        ((), (), []),
        (("3.50",), (), ["3.5"]),
        (("3",), ("4",), ["3 of 4"]),
        (("3", "1"), ("4",), ["3 of 4", "1, none planned"]),
        (("0",), ("0",), ["0 of 0"]),
        ((), ("4", "6"), ["0 of 6", "0 of 4"]),
        (("1240",), (), ["1,240"]),
        (("1e9",), (), ["over 999,999"]),
    ],
)
def test_labels(done: tuple[str, ...], planned: tuple[str, ...], labels: list[str]) -> None:
    rows = chart_rows(WeekChart("", sets(*done), 0, 0, sets(*planned)), ENGLISH)
    assert [row.label for row in rows] == labels


def test_more_muscles_than_fit_are_added_up() -> None:
    rows = chart_rows(CHARTS["eighteen"], ENGLISH)
    assert len(rows) == 16
    assert (rows[-1].name, rows[-1].label) == ("3 others", "60 of 52.5")


def test_another_language_brings_its_words() -> None:
    words = WeekWords(sessions="Einheiten: {done} von {planned}", heading="Harte Sätze", of="{done} von {planned}")
    said = [text.get_text() for text in week_figure(USUAL, words).texts]
    assert {"Einheiten: 3 von 4", "Harte Sätze", "9 von 8"} <= set(said)
