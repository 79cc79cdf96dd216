"""The picture of weekly hard sets: a row a muscle, a bar a week with its number beneath, the target as a strip behind.

What lies below or above the target carries a mark beside its number; the week under way is hatched, and not judged.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import TYPE_CHECKING

from bot.pictures.lettering import INK, fit, width, write
from bot.pictures.paper import EDGE, FAINT, GAP, OUTLINE, QUIET, WIDTH, area, box, frame, sheet, stroke
from bot.pictures.words import MUSCLES, MusclesWords
from bot.saying import MusclesChart, MuscleWeeks

if TYPE_CHECKING:
    from matplotlib.figure import Figure

MOST_ROWS = 12
"""More muscles than this make the picture too long for a phone: the rest is told in words. Ours."""
LETTERS = 34.0
"""Pixels: the size of all but the title."""
LARGEST = Decimal(999)
"""A number beyond it is shown as it: no week holds so many sets."""

_ROW, _BARS = 132.0, 74.0
"""Pixels of a row, and of those the tallest bar; the number stands beneath."""
_HEAD, _FOOT = 250.0, 48.0
_NAMES = 380.0
"""Pixels for the muscle's name and target."""


@dataclass(frozen=True, slots=True)
class _Cell:
    """A week's place in a row: where its middle is, how wide a bar, where the bars stand."""

    x: float
    wide: float
    base: float


def muscles_figure(chart: MusclesChart, words: MusclesWords = MUSCLES) -> Figure:
    """The picture before it becomes bytes."""
    rows = chart.muscles[:MOST_ROWS]
    more = len(chart.muscles) - len(rows)
    height = round(_HEAD + max(len(rows), 2) * _ROW + _FOOT + (64 if more else 0))
    figure = sheet(height)
    room = WIDTH - 2 * EDGE
    said = words.of.format(whose=chart.whose, heading=words.heading) if chart.whose else words.heading
    fit(write(figure, (EDGE, height - 74), said, size=50, weight="bold"), room)
    if not rows:
        write(figure, (WIDTH / 2, height / 2), words.nothing, size=40, ha="center", color=QUIET)
        return figure
    _legend(figure, height - 146.0, words, has_targets=any(r.low is not None for r in rows))
    columns = _columns(chart)
    for n, monday in enumerate(chart.mondays):
        text = words.now if n == len(chart.mondays) - 1 else words.days.day(monday)
        write(figure, (columns[n], height - 212), text, size=LETTERS, ha="center", color=QUIET)
    top = max((max(_shown(r)) for r in rows), default=Decimal(1)) or Decimal(1)
    for n, row in enumerate(rows):
        base = height - _HEAD - (n + 1) * _ROW + 48
        _row(figure, row, columns, base, scale=_BARS / float(top), words=words)
    if more:
        said = words.others.format(more=more)
        write(figure, (EDGE, 52), said, size=LETTERS, color=QUIET)
    return figure


def _columns(chart: MusclesChart) -> tuple[float, ...]:
    """The middles of the weeks' columns."""
    left = EDGE + _NAMES
    step = (WIDTH - EDGE - left) / max(len(chart.mondays), 1)
    return tuple(left + step * (n + 0.5) for n in range(len(chart.mondays)))


def _shown(row: MuscleWeeks) -> tuple[Decimal, ...]:
    """All that a row has to have room for."""
    planned = row.planned if row.low is None else ()
    edges = [Decimal(edge) for edge in (row.low, row.high) if edge is not None]
    return tuple(min(max(n, Decimal(0)), LARGEST) for n in (*row.done, *planned, *edges))


def _row(
    figure: Figure, row: MuscleWeeks, columns: tuple[float, ...], base: float, *, scale: float, words: MusclesWords
) -> None:
    fit(write(figure, (EDGE, base + 40), row.muscle, size=38, weight="bold"), _NAMES - GAP)
    target = words.planned
    if row.low is not None and row.high is not None:
        one = words.target_one if row.low == row.high else words.target
        target = one.format(low=row.low, high=row.high)
    fit(write(figure, (EDGE, base - 12), target, size=LETTERS, color=QUIET), _NAMES - GAP)
    step = columns[1] - columns[0] if len(columns) > 1 else WIDTH - EDGE - EDGE - _NAMES
    wide = min(step * 0.46, 64.0)
    left, right = columns[0] - step / 2 + 8, columns[-1] + step / 2 - 4
    if row.low is not None and row.high is not None:
        _strip(figure, (left, right), base + _upto(row.low, scale), base + _upto(row.high, scale))
    for n, x in enumerate(columns):
        cell = _Cell(x, wide, base)
        _week(figure, row, n, cell, scale=scale, words=words, is_now=n == len(columns) - 1)
    stroke(figure, [(left, base), (right, base)], wide=2.4)


def _upto(sets: Decimal | int, scale: float) -> float:
    return float(min(max(Decimal(sets), Decimal(0)), LARGEST)) * scale


def _strip(figure: Figure, across: tuple[float, float], low: float, high: float) -> None:
    """The target: from its lower to its upper edge, both drawn."""
    (left, right), high = across, max(high, low + 3)
    area(figure, [(left, low), (right, low), (right, high), (left, high)], color=FAINT)
    for y in (low, high):
        stroke(figure, [(left, y), (right, y)], color=OUTLINE, wide=2.0, dashes=(5, 3))


def _week(
    figure: Figure, row: MuscleWeeks, n: int, cell: _Cell, *, scale: float, words: MusclesWords, is_now: bool
) -> None:
    done = row.done[n]
    left = cell.x - cell.wide / 2
    if row.low is None and row.planned[n] > 0:
        frame(figure, (left - 7, cell.base), (cell.wide + 14, _upto(row.planned[n], scale)), wide=2.0, dashed=True)
    if done > 0:
        size = (cell.wide, _upto(done, scale))
        box(figure, (left, cell.base), size, planned=is_now)
    mark = "" if is_now or row.low is None or row.high is None else _mark(done, row.low, row.high, words)
    number = f"{min(max(done, Decimal(0)), LARGEST):,.1f}".removesuffix(".0")
    style = QUIET if done <= 0 else INK
    write(figure, (cell.x, cell.base - 30), number + mark, size=LETTERS, ha="center", color=style)


def _mark(done: Decimal, low: int, high: int, words: MusclesWords) -> str:
    if done < low:
        return words.low
    return words.high if done > high else ""


def _legend(figure: Figure, y: float, words: MusclesWords, *, has_targets: bool) -> None:
    left = EDGE
    box(figure, (left, y - 12), (34, 32))
    left += _key(figure, (left + 34, y), words.key_done)
    box(figure, (left, y - 12), (34, 32), planned=True)
    left += _key(figure, (left + 34, y), words.key_now)
    if not has_targets:
        frame(figure, (left, y - 12), (34, 32), wide=2.0, dashed=True)
        _key(figure, (left + 34, y), words.key_planned)
        return
    _strip(figure, (left, left + 44), y - 12, y + 20)
    left += 10 + _key(figure, (left + 44, y), words.key_target)
    text = write(figure, (left, y), words.key_low, size=LETTERS, color=QUIET)
    left += width(text) + 1.6 * GAP
    write(figure, (left, y), words.key_high, size=LETTERS, color=QUIET)


def _key(figure: Figure, at: tuple[float, float], word: str) -> float:
    text = write(figure, (at[0] + GAP * 0.7, at[1]), word, size=LETTERS, color=QUIET)
    return 34 + GAP * 0.7 + width(text) + 1.6 * GAP
