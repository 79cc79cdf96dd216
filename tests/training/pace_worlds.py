"""Simulated clients with a pace of their own: they train, pause, type late, and report several sets at once.

How wide people's paces lie, and how often they slip, is our choice, no source. The noise is not the engine's: seconds
of a set and its rest follow a gamma distribution, those between exercises a wider one.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

import numpy as np

from bot.training.pace import Told
from bot.training.plan import PlannedExercise
from bot.training.timing import session_time

START = datetime(2026, 1, 5, 18, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Habits:
    """How a client trains and reports: factors on the seconds prescribed, chances of a slip at each set (of a batch: at
    each exercise)."""

    within: float = 1.0
    between: float = 1.0
    noise: float = 0.25
    day_sd: float = 0.05
    pauses: float = 0.0
    late: float = 0.0
    batches: float = 0.0
    latency_s: float = 8.0


@dataclass(frozen=True, slots=True)
class Trained:
    """A session as it was: its reports, the seconds that it took with and without pauses."""

    told: tuple[Told, ...]
    seconds: float
    paused_s: float


def some_habits(chance: np.random.Generator) -> Habits:
    """A client of a wide crowd."""
    return Habits(
        within=float(np.exp(chance.normal(0.05, 0.22))),
        between=float(np.exp(chance.normal(0.15, 0.35))),
        noise=float(chance.uniform(0.15, 0.35)),
        pauses=float(chance.choice([0.0, 0.03, 0.08])),
        late=float(chance.choice([0.0, 0.05, 0.15])),
        batches=float(chance.choice([0.0, 0.1, 0.3, 1.0], p=[0.4, 0.3, 0.2, 0.1])),
        latency_s=float(chance.uniform(3, 20)),
    )


def train(
    habits: Habits, exercises: Sequence[PlannedExercise], chance: np.random.Generator, *, at: datetime = START
) -> Trained:
    """One session of these exercises."""
    time = session_time(exercises)
    day = float(np.exp(chance.normal(0, habits.day_sd)))
    now, paused, ends = float(time.general_s), 0.0, []
    for step in time.steps:
        between_s = step.setup_s + step.warmup_s
        within_s = step.seconds - between_s
        now += within_s * habits.within * day * _around_one(chance, habits.noise)
        now += between_s * habits.between * day * _around_one(chance, habits.noise * 1.5)
        if chance.random() < habits.pauses:
            pause = 60 + float(chance.exponential(180))
            now, paused = now + pause, paused + pause
        ends.append(now)
    told = _reports(habits, [(step.exercise, step.set) for step in time.steps], ends, chance, at)
    return Trained(told, now - paused, paused)


def _reports(
    habits: Habits, keys: list[tuple[str, int]], ends: list[float], chance: np.random.Generator, at: datetime
) -> tuple[Told, ...]:
    batched = {name for name in dict(keys) if chance.random() < habits.batches}
    last_of = {name: n for n, (name, _) in enumerate(keys)}
    typed: list[tuple[float, tuple[tuple[str, int], ...]]] = []
    for n, key in enumerate(keys):
        name = key[0]
        if name in batched:
            if n == last_of[name]:
                typed.append((ends[n], tuple(k for k in keys if k[0] == name)))
        elif n + 1 < len(ends) and chance.random() < habits.late:
            typed.append((ends[n + 1] - float(chance.uniform(1, 20)), (key,)))
        else:
            typed.append((ends[n], (key,)))
    said = [(when + float(chance.exponential(habits.latency_s)), sets) for when, sets in typed]
    return tuple(Told(at + timedelta(seconds=when), sets) for when, sets in sorted(said))


def _around_one(chance: np.random.Generator, spread: float) -> float:
    """A gamma factor of mean one and this standard deviation."""
    return float(chance.gamma(1 / spread**2, spread**2))
