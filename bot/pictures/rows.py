"""What a weekly chart shows, line by line: a muscle, its sets done and planned, and the words beside the bar."""

from dataclasses import dataclass
from decimal import Decimal

from bot.pictures.words import LARGEST, WeekWords
from bot.saying import WeekChart

MOST_ROWS = 16
"""More muscles than this don't fit at a readable size: the last ones are added up in a row of words without a bar,
since a bar of many would dwarf those of one."""


@dataclass(frozen=True, slots=True)
class Row:
    """A bar: hard sets done, and planned where that is known."""

    name: str
    done: Decimal
    planned: Decimal | None
    label: str


def chart_rows(chart: WeekChart, words: WeekWords) -> tuple[Row, ...]:
    """The rows in the chart's order, then what was planned only, largest first; at most `MOST_ROWS`."""
    done = dict(chart.muscles)
    wanted = dict(chart.wanted)
    left = sorted((name for name in wanted if name not in done), key=lambda name: (-wanted[name], name))
    names = [*done, *left]
    sets = [(name, done.get(name, Decimal(0)), wanted.get(name, Decimal(0)) if wanted else None) for name in names]
    if len(sets) <= MOST_ROWS:
        return tuple(_row(name, d, p, words) for name, d, p in sets)
    kept, rest = sets[: MOST_ROWS - 1], sets[MOST_ROWS - 1 :]
    planned = sum((p for _, _, p in rest if p is not None), Decimal(0)) if wanted else None
    label = _label(sum((d for _, d, _ in rest), Decimal(0)), planned, words)
    others = Row(words.others.format(more=len(rest)), Decimal(0), None, label)
    return (*(_row(name, d, p, words) for name, d, p in kept), others)


def _row(name: str, done: Decimal, planned: Decimal | None, words: WeekWords) -> Row:
    """A row whose bar is never shorter than nought nor longer than the largest number that is shown."""
    return Row(name, _within(done), None if planned is None else _within(planned), _label(done, planned, words))


def _within(sets: Decimal) -> Decimal:
    return min(max(sets, Decimal(0)), LARGEST)


def _label(done: Decimal, planned: Decimal | None, words: WeekWords) -> str:
    if planned is None:
        return words.count(done)
    if done > 0 >= planned:
        return words.unplanned.format(done=words.count(done))
    return words.of.format(done=words.count(done), planned=words.count(planned))
