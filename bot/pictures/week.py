"""The weekly picture: hard sets by muscle, what was done as a solid bar inside the hatched box of what was planned.

Each bar has its name and its numbers beside it, so that nothing hangs on colour, on an axis or on a legend.
"""

from __future__ import annotations

from io import BytesIO
from threading import Lock
from typing import TYPE_CHECKING

from bot.pictures.lettering import DPI, INK, fit, width, write
from bot.pictures.rows import Row, chart_rows
from bot.pictures.words import ENGLISH, WeekWords
from bot.saying import WeekChart

if TYPE_CHECKING:
    from matplotlib.figure import Figure

WIDTH, HEIGHT = 1280, 960
"""Pixels: what a phone shows without scaling up."""
SMALLEST = 28.0
"""Pixels: no letters are smaller, so that the picture reads on a phone."""

_PAPER, _DONE, _PLANNED, _QUIET = "#FBF8F1", "#1F5A70", "#8A6A33", "#52616A"
_EDGE = 48.0
_CHART_TOP, _CHART_BOTTOM = 700.0, 36.0
_GAP = 18.0
_TALLEST = 110.0
"""Pixels: a row is no taller, however few there are."""
_SHORTEST_BARS = 160.0
"""Pixels that the longest bar keeps; names are cut before it gets shorter."""
_MOST_POSTS = 10
"""More sessions than this are said in words only."""
_COLOURS = 64
"""Enough for a few plain colours and the soft edges of letters; a third of the bytes on a client's mobile plan."""
_drawing = Lock()


def draw_week(chart: WeekChart, words: WeekWords = ENGLISH) -> bytes:
    """The picture as a PNG, the same bytes for the same chart. May be called from any thread; one draws at a time."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg  # noqa: PLC0415 a picture is rare: loads when drawn
    from PIL import Image  # noqa: PLC0415 as above

    with _drawing:
        figure = week_figure(chart, words)
        canvas = figure.canvas
        assert isinstance(canvas, FigureCanvasAgg)
        canvas.draw()  # type: ignore[no-untyped-call]  # the library leaves it untyped
        pixels = canvas.buffer_rgba()  # type: ignore[no-untyped-call]  # as above
        drawn = Image.frombuffer("RGBA", (WIDTH, HEIGHT), pixels, "raw", "RGBA", 0, 1)
        out = BytesIO()
        drawn.convert("RGB").quantize(_COLOURS, method=Image.Quantize.FASTOCTREE).save(out, "PNG", compress_level=6)
        return out.getvalue()


def week_figure(chart: WeekChart, words: WeekWords = ENGLISH) -> Figure:
    """The picture before it becomes bytes. All artists lie on the figure in pixels from the bottom left."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.figure import Figure  # noqa: PLC0415 as above

    figure = Figure(figsize=(WIDTH / DPI, HEIGHT / DPI), dpi=DPI, facecolor=_PAPER)
    FigureCanvasAgg(figure)
    room = WIDTH - 2 * _EDGE
    fit(write(figure, (_EDGE, 892), words.title(chart.title), size=46, weight="bold"), room)
    _sessions(figure, chart, words)
    rows = chart_rows(chart, words)
    if rows:
        _heading(figure, words, planned=bool(chart.wanted))
        _bars(figure, rows)
    else:
        write(figure, (WIDTH / 2, 400), words.nothing, size=40, ha="center", color=_QUIET)
    return figure


def _sessions(figure: Figure, chart: WeekChart, words: WeekWords) -> None:
    """How many sessions, in words, and as posts in a row: solid where done, hatched where only planned."""
    said = words.sessions.format(done=chart.done, planned=chart.planned)
    wide = fit(write(figure, (_EDGE, 822), said, size=36), WIDTH - 2 * _EDGE)
    posts = max(chart.done, chart.planned)
    if posts <= _MOST_POSTS:
        left = _EDGE + wide + 2 * _GAP
        for n in range(posts):
            _box(figure, (left + 40 * n, 804), (26, 38), planned=n >= chart.done)


def _heading(figure: Figure, words: WeekWords, *, planned: bool) -> None:
    """What the bars are, and which is which."""
    heading = write(figure, (_EDGE, 744), words.heading, size=32, color=_QUIET)
    left = _EDGE + width(heading) + 2.5 * _GAP
    kinds = ((words.done, False), (words.planned, True)) if planned else ((words.done, False),)
    for word, is_planned in kinds:
        _box(figure, (left, 733), (44, 26), planned=is_planned)
        text = write(figure, (left + 44 + _GAP / 1.5, 744), word, size=32, color=_QUIET)
        left += 44 + _GAP / 1.5 + width(text) + 2 * _GAP


def _bars(figure: Figure, rows: tuple[Row, ...]) -> None:
    step = min((_CHART_TOP - _CHART_BOTTOM) / len(rows), _TALLEST)
    size = max(SMALLEST, min(step * 0.5, 38.0))
    middles = [_CHART_TOP - step * (n + 0.5) for n in range(len(rows))]
    names = [write(figure, (_EDGE, y), row.name, size=size) for row, y in zip(rows, middles, strict=True)]
    labels = [write(figure, (0, y), row.label, size=size, weight="bold") for row, y in zip(rows, middles, strict=True)]
    right = WIDTH - _EDGE - max(map(width, labels)) - _GAP
    for_names = min(WIDTH * 0.36, right - _SHORTEST_BARS - _EDGE - _GAP)
    left = _EDGE + max(fit(name, for_names) for name in names) + _GAP
    room = right - left
    longest = max(max(row.done, row.planned or 0) for row in rows)
    scale = room / float(longest) if longest else 0.0
    tall = step * 0.74
    for row, y, label in zip(rows, middles, labels, strict=True):
        done, planned = float(row.done) * scale, float(row.planned or 0) * scale
        if planned:
            _box(figure, (left, y - tall / 2), (planned, tall), planned=True)
        if done:
            _box(figure, (left, y - tall * 0.31), (done, tall * 0.62), planned=False)
        label.set_x(left + max(done, planned) + _GAP)
    bottom = middles[-1] - step / 2
    _box(figure, (left - 5, bottom), (5, _CHART_TOP - bottom), planned=False, color=INK)


def _box(
    figure: Figure, at: tuple[float, float], size: tuple[float, float], *, planned: bool, color: str = _DONE
) -> None:
    """A bar with its lower left corner at `at`: solid, or hatched within an outline where only planned."""
    from matplotlib.patches import Rectangle  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    box = Rectangle(at, *size, transform=IdentityTransform(), linewidth=0 if not planned else 1.6)
    if planned:
        box.set(facecolor="#F6EBD6", edgecolor=_PLANNED, hatch="//")
        box.set_hatch_linewidth(1.6)
    else:
        box.set(facecolor=color, edgecolor="none")
    figure.add_artist(box)
