"""The attendance calendar: a row a week, a box a day; what became of it is told by shape and sign, not by colour."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from bot.pictures.lettering import INK, fit, width, write
from bot.pictures.paper import EDGE, GAP, OUTLINE, PAPER, QUIET, SOLID, WIDTH, area, box, frame, marks, sheet, stroke
from bot.pictures.words import ATTENDANCE, AttendanceWords
from bot.saying import AttendanceChart
from bot.training.attendance import DayMark, counted

if TYPE_CHECKING:
    from matplotlib.figure import Figure

LETTERS = 36.0
"""Pixels: the size of all but the title."""
MOST_WEEKS = 26
"""More weeks make the picture too long; the last ones are shown."""

_ROW, _BOX = 84.0, 60.0
_HEAD, _FOOT = 262.0, 226.0
_LEFT, _STEP = 236.0, 114.0


def attendance_figure(chart: AttendanceChart, words: AttendanceWords = ATTENDANCE) -> Figure:
    """The picture before it becomes bytes."""
    whole = [chart.marks[n : n + 7] for n in range(0, len(chart.marks), 7)]
    weeks = whole[-MOST_WEEKS:]
    first = chart.first + timedelta(weeks=len(whole) - len(weeks))
    height = round(_HEAD + len(weeks) * _ROW + _FOOT)
    figure = sheet(height)
    said = words.of.format(whose=chart.whose, heading=words.heading) if chart.whose else words.heading
    room = WIDTH - 2 * EDGE
    fit(write(figure, (EDGE, height - 74), said, size=50, weight="bold"), room)
    fit(write(figure, (EDGE, height - 142), _summary(chart.marks, words), size=LETTERS), room)
    for n, name in enumerate(words.days.weekdays.split()):
        write(figure, (_LEFT + _STEP * (n + 0.5), height - 218), name, size=LETTERS, ha="center", color=QUIET)
    for n, week in enumerate(weeks):
        _week(
            figure, week, height - _HEAD - (n + 0.5) * _ROW, first + timedelta(weeks=n), today=chart.today, words=words
        )
    _legend(figure, words)
    return figure


def _summary(marks_: tuple[DayMark, ...], words: AttendanceWords) -> str:
    done, partly, due = counted(marks_)
    said = words.summary_partly if partly else words.summary
    return said.format(done=done, due=due, partly=partly)


def _week(
    figure: Figure, week: tuple[DayMark, ...], y: float, monday: date, *, today: date, words: AttendanceWords
) -> None:
    write(figure, (EDGE, y), words.days.day(monday), size=LETTERS, color=QUIET)
    for n, mark in enumerate(week):
        x = _LEFT + _STEP * (n + 0.5)
        draw_mark(figure, (x, y), mark)
        if monday + timedelta(days=n) == today:
            half = _BOX / 2 + 9
            frame(figure, (x - half, y - half), (2 * half, 2 * half), color=INK, wide=2.4, dashed=True)
    done, _, due = counted(week)
    if due:
        text = words.week.format(done=done, due=due)
        write(figure, (WIDTH - EDGE, y), text, size=LETTERS, ha="right")


def draw_mark(figure: Figure, at: tuple[float, float], mark: DayMark) -> None:
    """A day's sign, with its middle at `at`."""
    (x, y), half = at, _BOX / 2
    corner, size = (x - half, y - half), (_BOX, _BOX)
    match mark:
        case DayMark.DONE:
            box(figure, corner, size)
            stroke(figure, [(x - 16, y), (x - 4, y - 13), (x + 17, y + 13)], color=PAPER, wide=7)
        case DayMark.PARTLY:
            area(figure, [corner, (x + half, y - half), (x - half, y + half)], color=SOLID)
            frame(figure, corner, size, color=SOLID)
        case DayMark.MISSED:
            frame(figure, corner, size, color=INK)
            stroke(figure, [(x - 14, y - 14), (x + 14, y + 14)], wide=6)
            stroke(figure, [(x - 14, y + 14), (x + 14, y - 14)], wide=6)
        case DayMark.SKIPPED:
            frame(figure, corner, size, color=INK)
            stroke(figure, [(x - 15, y), (x + 15, y)], wide=6)
        case DayMark.MOVED:
            stroke(figure, [(x - 22, y), (x + 18, y)], color=OUTLINE, wide=5)
            stroke(figure, [(x + 6, y + 13), (x + 20, y), (x + 6, y - 13)], color=OUTLINE, wide=5)
        case DayMark.PLANNED:
            marks(figure, [at], "o", 44.0, color=PAPER, edge=PAPER)
            marks(figure, [at], "o", 40.0, color=OUTLINE)
            marks(figure, [at], "o", 30.0, color=PAPER)
        case DayMark.REST:
            marks(figure, [at], "o", 9.0, color=QUIET)


def _legend(figure: Figure, words: AttendanceWords) -> None:
    """Each sign with its word, in two rows."""
    rows = (
        ((DayMark.DONE, words.done), (DayMark.PARTLY, words.partly), (DayMark.MISSED, words.missed),
         (DayMark.SKIPPED, words.skipped)),
        ((DayMark.MOVED, words.moved), (DayMark.PLANNED, words.planned), (DayMark.REST, words.rest)),
    )  # fmt: skip
    for n, row in enumerate(rows):
        left, y = EDGE, 150.0 - 88 * n
        for mark, word in row:
            draw_mark(figure, (left + _BOX / 2, y), mark)
            text = write(figure, (left + _BOX + GAP * 0.7, y), word, size=LETTERS, color=QUIET)
            left += _BOX + GAP * 0.7 + width(text) + 2 * GAP
