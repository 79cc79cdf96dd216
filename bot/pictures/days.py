"""A programme on two to five days a week, side by side: minutes day by day, then sets and rest of each muscle.

Every bar has its number beside it, and a target that is missed a sign, so that nothing hangs on colour.
"""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from bot.pictures.lettering import fit, write
from bot.pictures.paper import EDGE, GAP, QUIET, WIDTH, box, sheet, stroke
from bot.pictures.words import OTHER_DAYS, OtherDaysWords
from bot.saying import DaysChart, DaysMuscle, DaysWeek

if TYPE_CHECKING:
    from matplotlib.figure import Figure

MOST_ROWS = 14
"""More muscles than this make the picture too long for a phone: the rest is told in words. Ours."""
MOST_WEEKS = 4
"""Columns that there is room for."""
LETTERS = 34.0
"""Pixels: the size of all but the titles."""
LARGEST = Decimal(999)
"""A number beyond it is shown as it: no week holds so many sets, and no day so many minutes."""

_HEAD, _WEEK, _BETWEEN, _ROW, _FOOT = 190.0, 132.0, 186.0, 92.0, 84.0
_TALLEST = 62.0
"""Pixels of the longest day's bar."""
_NAMES = 300.0
"""Pixels for a muscle's name, and for a week's."""


def days_figure(chart: DaysChart, words: OtherDaysWords = OTHER_DAYS) -> Figure:
    """The picture before it becomes bytes."""
    weeks, rows = chart.weeks[:MOST_WEEKS], chart.muscles[:MOST_ROWS]
    more = len(chart.muscles) - len(rows)
    height = round(_HEAD + len(weeks) * _WEEK + _BETWEEN + max(len(rows), 1) * _ROW + _FOOT)
    figure = sheet(height)
    said = words.title.format(title=chart.title, most=chart.most)
    fit(write(figure, (EDGE, height - 74), said, size=46, weight="bold"), WIDTH - 2 * EDGE)
    _weeks(figure, weeks, height - _HEAD, words)
    top = height - _HEAD - len(weeks) * _WEEK
    write(figure, (EDGE, top - 60), words.muscles, size=LETTERS, color=QUIET)
    for n, week in enumerate(weeks):
        write(figure, (_column(n), top - 136), words.week.format(days=week.days), size=LETTERS, weight="bold")
    longest = max((_within(sets) for row in rows for sets in row.sets), default=Decimal(1)) or Decimal(1)
    for n, row in enumerate(rows):
        y = top - _BETWEEN - (n + 0.5) * _ROW
        fit(write(figure, (EDGE, y), row.muscle, size=38, weight="bold"), _NAMES - GAP)
        for at in range(len(weeks)):
            _muscle(figure, row, at, (_column(at), y), longest=longest, words=words)
    if not rows:
        write(figure, (WIDTH / 2, top - _BETWEEN - 20), words.nothing, size=40, ha="center", color=QUIET)
    foot = [words.others.format(more=more)] if more else []
    foot += [words.key] if any(row.low is not None for row in rows) else []
    fit(write(figure, (EDGE, 44), "; ".join(foot), size=LETTERS, color=QUIET), WIDTH - 2 * EDGE)
    return figure


def _column(n: int) -> float:
    """Where a week's column begins."""
    return EDGE + _NAMES + n * (WIDTH - 2 * EDGE - _NAMES) / MOST_WEEKS


def _weeks(figure: Figure, weeks: tuple[DaysWeek, ...], top: float, words: OtherDaysWords) -> None:
    """A row a week, a place a weekday: a bar as tall as the day is long, its minutes above."""
    step = (WIDTH - 2 * EDGE - _NAMES) / 7
    fit(write(figure, (EDGE, top + 44), words.minutes, size=LETTERS, color=QUIET), _NAMES - GAP)
    middles = [EDGE + _NAMES + step * (n + 0.5) for n in range(7)]
    for x, name in zip(middles, words.days.weekdays.split(), strict=True):
        write(figure, (x, top + 44), name, size=LETTERS, ha="center", color=QUIET)
    longest = max((_within(m) for week in weeks for m in week.minutes if m is not None), default=Decimal(1)) or 1
    for n, week in enumerate(weeks):
        base = top - (n + 1) * _WEEK + 14
        write(figure, (EDGE, base + 60), words.week.format(days=week.days), size=38, weight="bold")
        if week.is_now:
            write(figure, (EDGE, base + 14), words.now, size=LETTERS, color=QUIET)
        stroke(figure, [(middles[0] - step / 2 + 6, base), (middles[-1] + step / 2 - 6, base)], wide=2.4)
        for x, minutes in zip(middles, week.minutes, strict=True):
            if minutes is not None:
                tall = float(_within(minutes) / longest) * _TALLEST
                box(figure, (x - 34, base), (68, tall))
                write(figure, (x, base + tall + 22), _number(minutes), size=LETTERS, ha="center")


def _muscle(
    figure: Figure, row: DaysMuscle, week: int, at: tuple[float, float], *, longest: Decimal, words: OtherDaysWords
) -> None:
    """A week of a muscle: a bar as long as the sets are many, and beneath it sets and hours."""
    (x, y), sets, hours = at, row.sets[week], row.rest_h[week]
    room = _column(1) - _column(0) - GAP
    long = float(_within(sets) / longest) * room
    if long > 0:
        box(figure, (x, y + 16), (long, 20))
    rest = words.never if hours is None else words.hours.format(hours=min(hours, int(LARGEST)))
    fit(write(figure, (x, y - 18), f"{_number(sets)}{_mark(row, sets, words)} | {rest}", size=LETTERS), room)


def _mark(row: DaysMuscle, sets: Decimal, words: OtherDaysWords) -> str:
    if row.low is not None and sets < row.low:
        return words.low
    return words.high if row.high is not None and sets > row.high else ""


def _within(number: Decimal | int) -> Decimal:
    return min(max(Decimal(number), Decimal(0)), LARGEST)


def _number(number: Decimal | int) -> str:
    return f"{_within(number):.1f}".removesuffix(".0")
