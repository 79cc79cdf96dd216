"""`python -m tests.bench pictures`: what each picture takes and weighs, beside a bare figure of the drawing library.

python -m tests.bench pictures [--rounds 20] [--many 100]

The bare figure is an empty one of the same size with a line of words, drawn to a PNG by the library's own way. Then
`--many` pictures are drawn in one process, and its memory is read after the first ten and after the last.
Goals: 500 ms of work a picture (the processor's own time: what else runs here counts only by the clock), and less than
8 MB more memory over the hundred.
"""

import argparse
import resource
import sys
import time
from collections.abc import Callable, Sequence
from datetime import date, timedelta
from decimal import Decimal
from functools import partial
from io import BytesIO
from pathlib import Path
from statistics import median

from bot.pictures import draw
from bot.saying import (
    AttendanceChart,
    Chart,
    LiftedPoint,
    MusclesChart,
    MuscleWeeks,
    StrengthChart,
    StrengthPoint,
    WeekChart,
)
from bot.training.attendance import DayMark
from bot.training.units import Unit

GOAL_MS, GOAL_MB = 500.0, 8.0
FIRST = date(2026, 3, 2)
NAMES = ("quadriceps", "hamstrings", "glutes", "chest", "upper back", "lats", "triceps", "biceps", "calves", "trunk")


def strength(sessions: int) -> StrengthChart:
    """So many sessions of three kinds of sets each, with two breaks."""
    on, points, sets = FIRST, [], []
    for n in range(sessions):
        on += timedelta(days=30 if n in (20, 60) else 2)
        mean, wide = Decimal(80) + Decimal(n) / 8, Decimal(9)
        points.append(StrengthPoint(on, mean, mean - wide, mean + wide))
        sets += [LiftedPoint(on, Decimal(60 + n // 6 - 3 * m), 3 + 4 * m) for m in range(3)]
    return StrengthChart("Back squat", Unit.KG, tuple(points), tuple(sets), whose="Ada")


def charts(shift: int = 0) -> dict[str, Chart]:
    """One of each kind at its usual fullest; `shift` makes them others."""
    counts = tuple(Decimal(n + shift % 5) for n in (8, 9, 10, 12, 11, 4))
    mondays = tuple(FIRST + timedelta(weeks=n) for n in range(6))
    rows = tuple(MuscleWeeks(name, counts, counts, 8, 12) for name in NAMES)
    week = (DayMark.DONE, DayMark.REST, DayMark.PARTLY, DayMark.MISSED, DayMark.MOVED, DayMark.PLANNED, DayMark.REST)
    muscles = tuple((name, Decimal(9)) for name in NAMES)
    return {
        "week": WeekChart("2027-01-11", muscles, 3, 4, muscles),
        "strength": strength(150 - shift % 7),
        "muscles": MusclesChart(mondays, rows, "Ada"),
        "attendance": AttendanceChart(FIRST, week * 12, FIRST + timedelta(days=80 - shift % 3), "Ada"),
    }


def bare() -> bytes:
    """The library's own way to a PNG: an empty figure with a line of words."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg  # noqa: PLC0415 as the pictures load it
    from matplotlib.figure import Figure  # noqa: PLC0415 as above

    figure = Figure(figsize=(12.8, 11.6), dpi=100)
    FigureCanvasAgg(figure)
    figure.text(0.5, 0.5, "Back squat")
    out = BytesIO()
    figure.savefig(out, format="png")
    return out.getvalue()


def timed(job: Callable[[], bytes], rounds: int) -> tuple[float, float, int]:
    """The middle time in ms, of the processor and by the clock, and the bytes."""
    worked, took, size = [], [], 0
    for _ in range(rounds):
        begun, clock = time.process_time(), time.perf_counter()
        size = len(job())
        worked.append((time.process_time() - begun) * 1000)
        took.append((time.perf_counter() - clock) * 1000)
    return median(worked), median(took), size


def memory_mb() -> float:
    """What the process holds now; at most so far where the system tells no more."""
    statm = Path("/proc/self/statm")
    if statm.exists():
        return int(statm.read_text(encoding="ascii").split()[1]) * resource.getpagesize() / 1e6
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e3


def main(argv: Sequence[str]) -> int:
    """Measures and prints; 1 where a goal is missed."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench pictures")
    parser.add_argument("--rounds", type=int, default=20)
    parser.add_argument("--many", type=int, default=100)
    asked = parser.parse_args(argv)
    out = sys.stdout
    begun = time.perf_counter()
    bare()
    out.write(f"the library loads and draws its first in {(time.perf_counter() - begun) * 1000:.0f} ms\n")
    base, clock, size = timed(bare, asked.rounds)
    out.write(f"{'p50, ms':12}{'work':>8}{'clock':>8}{'kB':>6}{'of bare':>9}\n")
    out.write(f"{'bare':12}{base:8.0f}{clock:8.0f}{size / 1000:6.0f}{1:9.2f}\n")
    missed = False
    for name, chart in charts().items():
        middle, clock, size = timed(partial(draw, chart), asked.rounds)
        out.write(f"{name:12}{middle:8.0f}{clock:8.0f}{size / 1000:6.0f}{middle / base:9.2f}\n")
        missed |= middle > GOAL_MS
    return int(missed | (grown(asked.many) > GOAL_MB))


def grown(many: int) -> float:
    """MB that the process holds more after so many pictures than after ten."""
    early = 0.0
    for n in range(many):
        draw(list(charts(n).values())[n % 4])
        if n == 9:
            early = memory_mb()
    late = memory_mb()
    sys.stdout.write(f"memory: {early:.1f} MB after 10 pictures, {late:.1f} MB after {many}\n")
    return late - early
