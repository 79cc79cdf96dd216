"""Where a value or a day lies on a picture, and which of them get a tick."""

from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil, floor, log10

NICE = (1.0, 2.0, 2.5, 5.0, 10.0)
MONTH_DAYS = 62
"""A longer time is ticked by months, a shorter one by weeks or days. Ours."""


@dataclass(frozen=True, slots=True)
class Scale:
    """Values from `low` to `high` on pixels from `start` to `end`."""

    low: float
    high: float
    start: float
    end: float

    def at(self, value: float) -> float:
        """The pixel of a value; one outside lies on the edge."""
        share = (min(max(value, self.low), self.high) - self.low) / (self.high - self.low)
        return self.start + share * (self.end - self.start)


def rounds(low: float, high: float, *, most: int) -> tuple[float, ...]:
    """Round numbers within these, evenly apart, at most so many (two or more)."""
    if high <= low:
        return (low,)
    rough = (high - low) / most
    power = 10.0 ** floor(log10(rough))
    step = next((n * power for n in NICE if n * power >= rough), 10 * power)
    first = ceil(low / step - 1e-9)
    return tuple(round(n * step, 9) for n in range(first, floor(high / step + 1e-9) + 1))


def days_between(first: date, last: date, *, most: int) -> tuple[date, ...]:
    """Days for ticks: first days of months, else Mondays, else each day; at most so many."""
    span = (last - first).days
    if span > MONTH_DAYS:
        months = _months(first, last)
        every = next(n for n in (1, 2, 3, 4, 6, 12, 24, 60, 1200) if -(-len(months) // n) <= most)
        return tuple(day for day in months if (day.year * 12 + day.month - 1) % every == 0)
    if span >= 2 * 7:
        mondays = _days(first + timedelta(days=-first.weekday() % 7), last, 7)
        every = -(-len(mondays) // most)
        return mondays[::every]
    return _days(first, last, max(1, -(-(span + 1) // most)))


def _months(first: date, last: date) -> tuple[date, ...]:
    start = first.year * 12 + first.month - (first.day == 1)
    end = last.year * 12 + last.month - 1
    return tuple(date(n // 12, n % 12 + 1, 1) for n in range(start, end + 1))


def _days(first: date, last: date, apart: int) -> tuple[date, ...]:
    return tuple(first + timedelta(days=n) for n in range(0, (last - first).days + 1, apart))
