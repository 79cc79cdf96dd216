"""`python -m tests.bench pace`: how well a session's minutes are foretold, before and after five sessions.

python -m tests.bench pace [--clients 400] [--sessions 6] [--seed 1]

Simulated clients (`tests.training.pace_worlds`) with a pace of their own, pauses, late typing and batches train the
sample programme's workouts in turn. Printed by the number of sessions behind them: the mean error of the minutes
foretold, in percent of those trained (pauses left out; with pauses in the last column), for three ways: no learning,
the last session's ratio (from first to last report, beside the prescription), and ours; `at the pace` knows the
client's true factors and shows what nobody can foretell.
"""

import argparse
import sys
import time
from collections import defaultdict
from collections.abc import Sequence
from datetime import timedelta
from statistics import fmean

import numpy as np

from bot.training.pace import Pace, Told, Trait, pace_after
from bot.training.samples import sample_programme
from bot.training.timing import SessionTime, session_time
from tests.training.pace_worlds import START, some_habits, train

WAYS = ("no learning", "last session", "ours", "at the pace")


def last_ratio(time_: SessionTime, told: Sequence[Told]) -> float | None:
    """From the first report to the last, as a share of what the prescription takes between those sets."""
    keys = [(step.exercise, step.set) for step in time_.steps]
    if len(told) < 2 or told[0].sets[-1] == told[-1].sets[-1]:
        return None
    first, last = keys.index(told[0].sets[-1]), keys.index(told[-1].sets[-1])
    if last <= first:
        return None
    planned = sum(step.seconds for step in time_.steps[first + 1 : last + 1])
    return (told[-1].at - told[0].at).total_seconds() / planned


def run(clients: int, sessions: int, seed: int) -> tuple[dict[tuple[int, str], list[tuple[float, float]]], float]:
    """Errors by sessions behind them and way: without and with pauses, as shares. And the seconds an update takes."""
    workouts = [w.exercises for w in sample_programme().workouts]
    errors: dict[tuple[int, str], list[tuple[float, float]]] = defaultdict(list)
    took: list[float] = []
    for client in range(clients):
        chance = np.random.default_rng([seed, client])
        habits = some_habits(chance)
        true = Pace(Trait(float(np.log(habits.within)), 0.01), Trait(float(np.log(habits.between)), 0.01), 1)
        pace, ratio = Pace(), 1.0
        for n in range(sessions):
            exercises = workouts[n % len(workouts)]
            plan = session_time(exercises)
            trained = train(habits, exercises, chance, at=START + timedelta(days=3 * n))
            foretold = {
                "no learning": float(plan.seconds),
                "last session": plan.general_s + ratio * (plan.seconds - plan.general_s),
                "ours": plan.general_s + pace.seconds(plan.steps),
                "at the pace": plan.general_s + true.seconds(plan.steps),
            }
            whole = trained.seconds + trained.paused_s
            for way, seconds in foretold.items():
                errors[n, way].append((abs(seconds / trained.seconds - 1), abs(seconds / whole - 1)))
            ratio = last_ratio(plan, trained.told) or ratio
            begun = time.perf_counter()
            pace = pace_after(pace, exercises, trained.told)
            took.append(time.perf_counter() - begun)
    return errors, fmean(took)


def main(argv: Sequence[str]) -> int:
    """Prints the table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench pace")
    parser.add_argument("--clients", type=int, default=400)
    parser.add_argument("--sessions", type=int, default=6)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args(argv)
    errors, took = run(chosen.clients, chosen.sessions, chosen.seed)
    out = sys.stdout
    out.write("error of the minutes foretold, without pauses (with pauses)\nsessions behind  ")
    out.write("".join(f"{way:>22}" for way in WAYS) + "\n")
    for n in range(chosen.sessions):
        row = [errors[n, way] for way in WAYS]
        cells = [f"{fmean(a for a, _ in r):.1%} ({fmean(b for _, b in r):.1%})" for r in row]
        out.write(f"{n:15}  " + "".join(f"{cell:>22}" for cell in cells) + "\n")
    last = chosen.sessions - 1
    ours, plain = (fmean(a for a, _ in errors[last, way]) for way in ("ours", "no learning"))
    naive = fmean(a for a, _ in errors[last, "last session"])
    out.write(f"after {last}: ours beside no learning {ours / plain:.2f}, beside the last session {ours / naive:.2f}\n")
    out.write(f"an update takes {took * 1e3:.2f} ms\n")
    return 0
