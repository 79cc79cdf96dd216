"""`python -m tests.bench week`: weeks of 6 to 40 items over 2 to 6 days, laid by the engine and by a plain greedy way.

python -m tests.bench week [--weeks 8] [--limit 1.4] [--seed 1]

For each size, half the weeks have less room than work (0.8 of it) and half have more (1.2); minutes are whole in half
of them and in tenths in the other half. Printed: the share proven best, the middle and the longest time, and how often
the engine's week is better than the greedy one's, with the place that decides it first (sets lost by priority,
clashes, the longest day). The greedy way takes the items by priority, the longest first, each to the day that keeps
most of it.
"""

import argparse
import sys
import time
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median

from bot.training.week import lay_week
from bot.training.week_grid import grid_of
from bot.training.week_relay import first_lay
from bot.training.week_values import TIME_LIMIT_S, Laying, Week
from tests.training.week_worlds import Measure, measure, measure_of, week_of

SIZES = ((6, 2), (8, 2), (12, 3), (16, 4), (24, 4), (24, 6), (32, 5), (40, 6))
PLACES = ("priority 1", "priority 2", "priority 3", "clashes", "longest day")


@dataclass(frozen=True, slots=True)
class Trial:
    """A week laid: how long it took, whether it is proven, and where the greedy way is worse (`None`: nowhere)."""

    seconds: float
    proven: bool
    worse: str | None


def greedy(week: Week) -> Measure:
    """The worth of the plain way."""
    grid = grid_of(week)
    plain = first_lay(grid)
    places = tuple(plain.places[grid.group[k]] if kept else None for k, kept in enumerate(plain.kept))
    found = measure(week, plain.kept, places)
    if found is None:
        raise AssertionError(f"the greedy way is not allowed: {plain}")
    return found


def trial(week: Week, limit_s: float) -> Trial:
    """Lay a week in both ways."""
    start = time.perf_counter()
    laying: Laying = lay_week(week, clock=time.monotonic, time_limit_s=limit_s)
    seconds = time.perf_counter() - start
    ours, plain = measure_of(week, laying), greedy(week)
    if ours > plain:
        raise AssertionError(f"worse than greedy: {ours} {plain}")
    worse = next((place for at, place in enumerate(PLACES) if ours[at] != plain[at]), None)
    return Trial(seconds, laying.proven, worse)


def weeks(count: int, on: int, *, many: int, seed: int) -> list[tuple[str, Week]]:
    """Weeks of a size, each with its kind."""
    kinds = [(tenths, room) for tenths in (False, True) for room in (0.8, 1.2)]
    return [
        (f"{'tenths' if tenths else 'whole'}", week_of(count, on, seed=seed * 1000 + n, room=room, tenths=tenths))
        for n in range(-(-many // len(kinds)))
        for tenths, room in kinds
    ]


def main(argv: Sequence[str]) -> int:
    """Runs the measurement."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench week")
    parser.add_argument("--weeks", type=int, default=8)
    parser.add_argument("--limit", type=float, default=TIME_LIMIT_S)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args(argv)
    lay_week(week_of(4, 2, seed=0, room=0.8), clock=time.monotonic)
    out = sys.stdout
    out.write("items days  proven (whole / tenths)  middle s  longest s  better than greedy, by\n")
    for count, on in SIZES:
        trials = [
            (kind, trial(week, chosen.limit)) for kind, week in weeks(count, on, many=chosen.weeks, seed=chosen.seed)
        ]
        shares = [
            sum(t.proven for k, t in trials if k == kind) / sum(k == kind for k, _ in trials)
            for kind in ("whole", "tenths")
        ]
        times = [t.seconds for _, t in trials]
        better = Counter(t.worse for _, t in trials if t.worse is not None)
        told = ", ".join(f"{place} {better[place]}" for place in PLACES if better[place])
        out.write(
            f"{count:5} {on:4}  {shares[0]:12.0%} / {shares[1]:6.0%}  {median(times):8.2f}  {max(times):9.2f}"
            f"  {sum(better.values())} of {len(trials)}: {told}\n"
        )
        out.flush()
    return 0
