"""The picture of a one-repetition maximum over time: the estimate as a line within its band, the sets as marks.

A mark's height is the load, its shape and size tell the repetitions; a time without sets is a hatched gap. An odd load
far above the rest would press all else flat: it is drawn at the top edge and said in words.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from typing import TYPE_CHECKING

from bot.pictures.lettering import INK, fit, width, write
from bot.pictures.paper import EDGE, FAINT, GAP, OUTLINE, PAPER, QUIET, SOLID, WIDTH, area, box, marks, sheet, stroke
from bot.pictures.scales import MONTH_DAYS, Scale, days_between, rounds
from bot.pictures.words import STRENGTH, DayWords, StrengthWords
from bot.saying import LiftedPoint, StrengthChart, StrengthPoint

if TYPE_CHECKING:
    from decimal import Decimal

    from matplotlib.figure import Figure

HEIGHT = 1160
BREAK = timedelta(days=21)
"""More days than this between two sessions are a break: neither line nor band goes across. Ours."""
LETTERS = 36.0
"""Pixels: the size of all but the title, and of the marks' legend."""

_TOP, _BOTTOM = 900.0, 310.0
_SHAPES = ((3, "D", 21.0), (6, "^", 25.0), (10, "o", 21.0), (10**9, "s", 15.0))
"""Up to so many repetitions: the mark, and its size in pixels."""
_SPREAD = 0.8
"""So much of what the loads and estimates span the band may stand out above and below."""
_ODD = 1.5
"""A load so many times the highest estimate is no height for the picture."""


@dataclass(frozen=True, slots=True)
class _Plot:
    figure: Figure
    x: Scale
    y: Scale

    def at(self, day: date, value: Decimal | float) -> tuple[float, float]:
        return self.x.at(day.toordinal()), self.y.at(float(value))


def strength_figure(chart: StrengthChart, words: StrengthWords = STRENGTH) -> Figure:
    """The picture before it becomes bytes."""
    figure = sheet(HEIGHT)
    room = WIDTH - 2 * EDGE
    fit(write(figure, (EDGE, HEIGHT - 74), chart.exercise, size=50, weight="bold"), room)
    heading = words.title(chart.style, chart.unit.value)
    said = words.of.format(whose=chart.whose, heading=heading) if chart.whose else heading
    fit(write(figure, (EDGE, HEIGHT - 138), said, size=LETTERS, color=QUIET), room)
    if not chart.points and not chart.sets:
        write(figure, (WIDTH / 2, HEIGHT / 2), words.nothing, size=40, ha="center", color=QUIET)
        return figure
    if chart.points:
        fit(write(figure, (EDGE, HEIGHT - 202), _known(chart.points[-1], words), size=LETTERS, weight="bold"), room)
    plot = _axes(figure, chart, words)
    runs = _runs(chart)
    for before, after in pairwise(runs):
        _gap(plot, before[-1].day, after[0].day, words)
    for run in runs:
        _band(plot, run)
    _sets(plot, chart.sets)
    for run in runs:
        _line(plot, run)
    _legend(figure, words, has_breaks=len(runs) > 1)
    return figure


def _known(point: StrengthPoint, words: StrengthWords) -> str:
    mean, least, most = (_half(value) for value in (point.mean, point.least, point.most))
    return words.known.format(day=words.days.dated(point.day), mean=mean, least=least, most=most)


def _half(value: Decimal) -> str:
    """`85`, `82.5`: to the nearest half, it is not known better."""
    return f"{round(value * 2) / 2:,.1f}".removesuffix(".0")


def _runs(chart: StrengthChart) -> list[list[StrengthPoint]]:
    """The estimates, parted at breaks."""
    runs: list[list[StrengthPoint]] = []
    for point in chart.points:
        if runs and point.day - runs[-1][-1].day <= BREAK:
            runs[-1].append(point)
        else:
            runs.append([point])
    return runs


def _heights(chart: StrengthChart) -> tuple[float, float]:
    """From what to what the picture reaches."""
    means = [float(p.mean) for p in chart.points]
    loads = [float(s.load) for s in chart.sets]
    high_mean = max(means, default=0.0)
    usual = [v for v in loads if not means or v <= max(_ODD * high_mean, high_mean + 20)] or loads
    low, high = min(usual + means), max(usual + means)
    spread = _SPREAD * max(high - low, 0.2 * abs(high), 5.0)
    band = [max(float(p.least), low - spread) for p in chart.points]
    band += [min(float(p.most), high + spread) for p in chart.points]
    low, high = min([low, *band]), max([high, *band])
    pad = 0.05 * max(high - low, 4.0)
    return low - pad, high + pad


def _odd(figure: Figure, chart: StrengthChart, high: float, words: StrengthWords) -> float:
    """Says which loads lie above the picture; where it ends, with room for these words."""
    odd = [s for s in chart.sets if float(s.load) > high]
    if not odd:
        return _TOP
    said = words.above.format(count=len(odd), highest=f"{max(s.load for s in odd):,.10g}")
    fit(write(figure, (WIDTH - EDGE, _TOP - 20), said, size=LETTERS, ha="right", color=QUIET), WIDTH - 2 * EDGE)
    return _TOP - 76


def _axes(figure: Figure, chart: StrengthChart, words: StrengthWords) -> _Plot:
    low, high = _heights(chart)
    top = _odd(figure, chart, high, words)
    ticks = rounds(low, high, most=7)
    labels = [write(figure, (0, 0), f"{tick:,.10g}", size=LETTERS, ha="right", color=QUIET) for tick in ticks]
    left = EDGE + max(map(width, labels), default=0.0) + GAP
    days = [p.day for p in chart.points] + [s.day for s in chart.sets]
    first, last = min(days), max(days)
    around = max(2.0, (last - first).days * 0.02) if last > first else 7.0
    x = Scale(first.toordinal() - around, last.toordinal() + around, left, WIDTH - EDGE)
    plot = _Plot(figure, x, Scale(low, high, _BOTTOM, top))
    for tick, label in zip(ticks, labels, strict=True):
        y = plot.y.at(tick)
        label.set_position((left - GAP, y))
        stroke(figure, [(left, y), (WIDTH - EDGE, y)], color=QUIET, wide=1.2, dashes=(1, 6))
    stroke(figure, [(left, _BOTTOM), (WIDTH - EDGE, _BOTTOM)], wide=3)
    _days(plot, first, last, words.days)
    return plot


def _days(plot: _Plot, first: date, last: date, words: DayWords) -> None:
    """Ticks and their days; months have their year beneath the first of them, and beneath each January."""
    by_month = (last - first).days > MONTH_DAYS
    year, free = 0, 0.0
    for tick in days_between(first, last, most=9 if by_month else 6):
        x = plot.x.at(tick.toordinal())
        text = words.month(tick) if by_month else words.day(tick)
        label = write(plot.figure, (x, _BOTTOM - 40), text, size=LETTERS, ha="center", color=QUIET)
        half = width(label) / 2
        label.set_x(min(max(x, EDGE / 2 + half), WIDTH - EDGE / 2 - half))
        if label.get_position()[0] - half < free:
            label.set_text("")
            continue
        free = label.get_position()[0] + half + GAP / 2
        stroke(plot.figure, [(x, _BOTTOM), (x, _BOTTOM - 12)], wide=3)
        if tick.year != year:
            year = tick.year
            under = write(plot.figure, (x, _BOTTOM - 84), str(year), size=LETTERS, ha="center", color=QUIET)
            half = width(under) / 2
            under.set_x(min(max(x, EDGE / 2 + half), WIDTH - EDGE / 2 - half))


def _gap(plot: _Plot, before: date, after: date, words: StrengthWords) -> None:
    """A break: hatched, with how long it was where there is room to say it."""
    left, right = plot.x.at(before.toordinal()) + 22, plot.x.at(after.toordinal()) - 22
    if right - left < 12:
        return
    box(plot.figure, (left, _BOTTOM + 3), (right - left, plot.y.end - _BOTTOM - 3), planned=True, hatch="/")
    weeks = round((after - before).days / 7)
    label = write(plot.figure, (0, 0), words.weeks.format(weeks=weeks), size=LETTERS, ha="center")
    wide, upright = width(label), right - left < width(label) + 2 * GAP
    needed = (LETTERS * 1.6, wide + 2 * GAP) if upright else (wide + 2 * GAP, LETTERS * 1.6)
    if needed[0] > right - left:
        label.set_text("")
        return
    middle = ((left + right) / 2, (plot.y.end + _BOTTOM) / 2)
    box(plot.figure, (middle[0] - needed[0] / 2, middle[1] - needed[1] / 2), needed, color=PAPER)
    label.set_position(middle)
    label.set_verticalalignment("center")
    label.set_rotation(90 if upright else 0)


def _band(plot: _Plot, run: list[StrengthPoint]) -> None:
    upper = [plot.at(p.day, p.most) for p in run]
    lower = [plot.at(p.day, p.least) for p in run]
    if len(run) == 1:
        (x, top), (_, bottom) = upper[0], lower[0]
        area(plot.figure, [(x - 20, bottom), (x + 20, bottom), (x + 20, top), (x - 20, top)], color=FAINT)
        for y in (top, bottom):
            stroke(plot.figure, [(x - 20, y), (x + 20, y)], color=OUTLINE, wide=2.5)
        return
    area(plot.figure, upper + lower[::-1], color=FAINT)
    for edge in (upper, lower):
        stroke(plot.figure, edge, color=OUTLINE, wide=2.0)


def _line(plot: _Plot, run: list[StrengthPoint]) -> None:
    points = [plot.at(p.day, p.mean) for p in run]
    if len(points) == 1:
        points = [(points[0][0] - 20, points[0][1]), (points[0][0] + 20, points[0][1])]
    stroke(plot.figure, points, color=PAPER, wide=11)
    stroke(plot.figure, points, color=SOLID, wide=6)


def _sets(plot: _Plot, sets: tuple[LiftedPoint, ...]) -> None:
    least = 0
    for most, shape, size in _SHAPES:
        points = [plot.at(s.day, s.load) for s in sets if least < s.reps <= most]
        if points:
            marks(plot.figure, points, shape, size, color=INK)
        least = most


def _legend(figure: Figure, words: StrengthWords, *, has_breaks: bool) -> None:
    left, y = EDGE, 152.0
    stroke(figure, [(left, y + 11), (left + 56, y + 11)], color=SOLID, wide=6)
    left += _key(figure, (left + 56, y), words.estimate)
    area(figure, [(left, y - 4), (left + 56, y - 4), (left + 56, y + 28), (left, y + 28)], color=FAINT)
    for edge in (y - 4, y + 28):
        stroke(figure, [(left, edge), (left + 56, edge)], color=OUTLINE, wide=2)
    left += _key(figure, (left + 56, y), words.band)
    if has_breaks:
        box(figure, (left, y - 4), (56, 32), planned=True, hatch="/")
        _key(figure, (left + 56, y), words.rest)
    write(figure, (EDGE, 98), words.sets, size=34, va="baseline", color=QUIET)
    left, y = EDGE, 44.0
    least = 1
    for most, shape, size in _SHAPES:
        marks(figure, [(left + 14, y + 12)], shape, size, color=INK)
        span = f"{least}–{most}" if most < 10**9 else f"{least}+"
        left += _key(figure, (left + 28, y), span) - 28
        least = most + 1


def _key(figure: Figure, at: tuple[float, float], word: str) -> float:
    """A word of the legend right of its sign; how much room sign and word take."""
    text = write(figure, (at[0] + GAP * 0.7, at[1]), word, size=34, va="baseline", color=QUIET)
    return 56 + GAP * 0.7 + width(text) + 2 * GAP
