"""The weekly picture: hard sets by muscle, what was done as a solid bar inside the hatched box of what was planned.

Each bar has its name and its numbers beside it, so that nothing hangs on colour, on an axis or on a legend.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from bot.pictures.lettering import INK, fit, width, write
from bot.pictures.paper import EDGE, GAP, HEIGHT, QUIET, WIDTH, box, png_of, sheet
from bot.pictures.rows import Row, chart_rows
from bot.pictures.words import ENGLISH, WeekWords
from bot.saying import WeekChart

if TYPE_CHECKING:
    from matplotlib.figure import Figure

__all__ = ["HEIGHT", "SMALLEST", "WIDTH", "draw_week", "week_figure"]

SMALLEST = 28.0
"""Pixels: no letters are smaller, so that the picture reads on a phone."""

_CHART_TOP, _CHART_BOTTOM = 700.0, 36.0
_TALLEST = 110.0
"""Pixels: a row is no taller, however few there are."""
_SHORTEST_BARS = 160.0
"""Pixels that the longest bar keeps; names are cut before it gets shorter."""
_MOST_POSTS = 10
"""More sessions than this are said in words only."""


def draw_week(chart: WeekChart, words: WeekWords = ENGLISH) -> bytes:
    """The picture as a PNG, the same bytes for the same chart."""
    return png_of(lambda: week_figure(chart, words))


def week_figure(chart: WeekChart, words: WeekWords = ENGLISH) -> Figure:
    """The picture before it becomes bytes. All artists lie on the figure in pixels from the bottom left."""
    figure = sheet()
    room = WIDTH - 2 * EDGE
    fit(write(figure, (EDGE, 892), words.title(chart.title), size=46, weight="bold"), room)
    _sessions(figure, chart, words)
    rows = chart_rows(chart, words)
    if rows:
        _heading(figure, words, planned=bool(chart.wanted))
        _bars(figure, rows)
    else:
        write(figure, (WIDTH / 2, 400), words.nothing, size=40, ha="center", color=QUIET)
    return figure


def _sessions(figure: Figure, chart: WeekChart, words: WeekWords) -> None:
    """How many sessions, in words, and as posts in a row: solid where done, hatched where only planned."""
    said = words.sessions.format(done=chart.done, planned=chart.planned)
    wide = fit(write(figure, (EDGE, 822), said, size=36), WIDTH - 2 * EDGE)
    posts = max(chart.done, chart.planned)
    if posts <= _MOST_POSTS:
        left = EDGE + wide + 2 * GAP
        for n in range(posts):
            box(figure, (left + 40 * n, 804), (26, 38), planned=n >= chart.done)


def _heading(figure: Figure, words: WeekWords, *, planned: bool) -> None:
    """What the bars are, and which is which."""
    heading = write(figure, (EDGE, 744), words.heading, size=32, color=QUIET)
    left = EDGE + width(heading) + 2.5 * GAP
    kinds = ((words.done, False), (words.planned, True)) if planned else ((words.done, False),)
    for word, is_planned in kinds:
        box(figure, (left, 733), (44, 26), planned=is_planned)
        text = write(figure, (left + 44 + GAP / 1.5, 744), word, size=32, color=QUIET)
        left += 44 + GAP / 1.5 + width(text) + 2 * GAP


def _bars(figure: Figure, rows: tuple[Row, ...]) -> None:
    step = min((_CHART_TOP - _CHART_BOTTOM) / len(rows), _TALLEST)
    size = max(SMALLEST, min(step * 0.5, 38.0))
    middles = [_CHART_TOP - step * (n + 0.5) for n in range(len(rows))]
    names = [write(figure, (EDGE, y), row.name, size=size) for row, y in zip(rows, middles, strict=True)]
    labels = [write(figure, (0, y), row.label, size=size, weight="bold") for row, y in zip(rows, middles, strict=True)]
    right = WIDTH - EDGE - max(map(width, labels)) - GAP
    for_names = min(WIDTH * 0.36, right - _SHORTEST_BARS - EDGE - GAP)
    left = EDGE + max(fit(name, for_names) for name in names) + GAP
    room = right - left
    longest = max(max(row.done, row.planned or 0) for row in rows)
    scale = room / float(longest) if longest else 0.0
    tall = step * 0.74
    for row, y, label in zip(rows, middles, labels, strict=True):
        done, planned = float(row.done) * scale, float(row.planned or 0) * scale
        if planned:
            box(figure, (left, y - tall / 2), (planned, tall), planned=True)
        if done:
            box(figure, (left, y - tall * 0.31), (done, tall * 0.62), planned=False)
        label.set_x(left + max(done, planned) + GAP)
    bottom = middles[-1] - step / 2
    box(figure, (left - 5, bottom), (5, _CHART_TOP - bottom), planned=False, color=INK)
