"""`python -m tests.bench loads`: many simulated lifters live 16 weeks under each way of choosing loads.

python -m tests.bench loads [--lifters 40] [--seed 11] [--worlds published,whole] [--case plain]
"""

import argparse
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from itertools import pairwise
from math import exp, log
from zlib import crc32

import numpy as np

from bot.training.progress import next_loads
from bot.training.state import State
from tests.bench.lifters import (
    PLANS,
    WORLDS,
    Lifter,
    Plan,
    World,
    could_lift,
    judged,
    perform,
    rest_cost,
    said,
    some_lifter,
    strength_at,
)
from tests.bench.ways import Banded, Bound, Chart, Done, Double, Fixed, LastSession, Moment, Ours, Scalar, Setting, Way

WEEKS, A_WEEK = 16, 2
CASES = ("plain", "typing", "silent", "away", "coarse")


@dataclass
class Tally:
    """What is counted over all sets of a way."""

    landed: list[float] = field(default_factory=list)
    over: list[float] = field(default_factory=list)
    easy: list[float] = field(default_factory=list)
    effort: list[float] = field(default_factory=list)
    swings: list[float] = field(default_factory=list)
    held: list[float] = field(default_factory=list)
    width: list[float] = field(default_factory=list)
    seconds: float = 0.0
    asked: int = 0


@dataclass(frozen=True)
class Life:
    """A lifter, a world, a plan and the chance that befalls them, the same under every way."""

    world: World
    lifter: Lifter
    plan: Plan
    loads: np.ndarray
    seed: int
    case: str


def a_life(world: World, case: str, seed: int) -> Life:
    """The life of this seed."""
    chance = np.random.default_rng([seed, crc32(world.name.encode())])
    lifter = some_lifter(chance)
    plan = PLANS[int(chance.integers(len(PLANS)))]
    step = float(chance.choice([5.0, 7.0, 10.0])) if case == "coarse" else float(chance.choice([1.0, 2.5, 2.5]))
    return Life(world, lifter, plan, np.arange(step, 400.0, step), seed, case)


def live(life: Life, make: Callable[[Setting], Way], tally: Tally) -> None:
    """Sixteen weeks of one life under one way."""
    chance = np.random.default_rng([life.seed, 7])
    errors = np.random.default_rng([life.seed, 8])
    given = Setting(life.loads, life.plan, life.lifter.level, life.lifter.region)
    way = make(given)
    form, wander, gone, firsts = 0.0, 0.0, 0.0, []
    start, trained, before = date(2026, 1, 5), 0.0, None
    for n in range(WEEKS * A_WEEK):
        day = start + timedelta(days=n // A_WEEK * 7 + (n % A_WEEK) * 3)
        comes = n < 1 or chance.random() < life.lifter.attends
        luck = chance.normal(0, 1, (8, life.plan.high + 4))
        shock = chance.standard_t(4) / 2**0.5 if life.world.form_tails else chance.normal()
        if life.case == "away" and 8 <= n // A_WEEK < 11:
            comes = False
        if not comes:
            continue
        weeks = 0.0 if before is None else (day - before).days / 7
        before = day
        trained += min(weeks, 2.0)
        off = max(0.0, weeks - 2.0)
        gone = max(0.0, gone + 0.0075 * off - (0.0 if off else 0.015 * weeks))
        wander += life.world.wander * weeks**0.5 * chance.normal()
        form = 0.3 * form + (1 - 0.3**2) ** 0.5 * life.lifter.form_sd * float(shock)
        strength = strength_at(life.lifter, life.world, trained) * exp(wander - gone)
        first = _session(
            life, way, tally, day=day, strength=strength, form=form, luck=luck, errors=errors, counts=n >= 1
        )
        firsts.append((n // A_WEEK, first))
    weekly: dict[int, float] = {}
    for week, load in firsts:
        weekly.setdefault(week, load)
    values = list(weekly.values())[1:]
    tally.swings += [abs(log(b / a)) for a, b in pairwise(values)]


def _session(
    life: Life,
    way: Way,
    tally: Tally,
    *,
    day: date,
    strength: float,
    form: float,
    luck: np.ndarray,
    errors: np.random.Generator,
    counts: bool,
) -> float:
    plan, tired, first = life.plan, 0.0, 0.0
    done: tuple[Done, ...] = ()
    if counts and isinstance(way, Banded) and (band := way.band(day)) is not None:
        tally.held.append(float(abs(band[0] - strength) <= 1.96 * band[1]))
        tally.width.append(band[1] / band[0])
    for place in range(plan.sets):
        if isinstance(way, Bound):
            way.strength_kg, way.tired = strength, tired
        begun = time.perf_counter()
        load = way.choose(Moment(day, place, done))
        tally.seconds += time.perf_counter() - begun
        tally.asked += 1
        if load is None:
            guess = strength / (1 + (plan.high + plan.target) / 28) * exp(-0.08 + 0.12 * luck[6, place])
            load = way.given.nearest(guess)
        could = could_lift(life.world, life.lifter, strength * exp(form), load, tired)
        could = could * exp(life.world.set_luck * luck[7, place])
        ended = perform(
            life.world, life.lifter, plan, could=could.reshape(1), order=place, noise=luck[place : place + 1, :]
        )
        reps, left, felt = int(ended.reps[0]), float(ended.left[0]), float(ended.felt[0])
        if counts:
            landed, over, easy = judged(plan, ended.reps, ended.left)
            tally.landed.append(float(landed[0]))
            tally.over.append(float(over[0]))
            tally.easy.append(float(easy[0]))
            tally.effort.append(abs(left - plan.target))
        done = (*done, _reported(life, load, reps, said(felt), errors))
        tired += rest_cost(plan.rest_s) * max(0.0, 1 - left / 4)
        first = first or load
    way.end(Moment(day, plan.sets, done))
    return first


def _reported(life: Life, load: float, reps: int, rir: float, errors: np.random.Generator) -> Done:
    kind, slip = errors.random(), int(errors.integers(4))
    if life.case == "silent":
        return Done(load, reps, None)
    if life.case == "typing" and kind < 0.05:
        match slip:
            case 0:
                return Done(load * 10, reps, rir)
            case 1:
                return Done(round(load * 2.2046, 1), reps, rir)
            case 2:
                return Done(round(load / 2.2046, 1), reps, rir)
            case _:
                return Done(load, reps * 11 if reps < 10 else 1, rir)
    return Done(load, reps, rir)


def ways(life: Life) -> dict[str, Callable[[Setting], Way]]:
    """Every way, made for a life; the bound is first."""
    return {
        "bound": lambda given: Bound(given, life.world, life.lifter, np.random.default_rng([life.seed, 9])),
        "adapting bound": lambda given: Bound(
            given, life.world, life.lifter, np.random.default_rng([life.seed, 9]), adapts=True
        ),
        "fixed step": Fixed,
        "double progression": Double,
        "percent chart": Chart,
        "last session": LastSession,
        "scalar filter": Scalar,
        "ours": Ours,
    }


def run(worlds: Sequence[World], case: str, seeds: range, only: Sequence[str] = ()) -> dict[str, Tally]:
    """All lives under all ways (or `only` some)."""
    tallies: dict[str, Tally] = {}
    for world in worlds:
        for seed in seeds:
            life = a_life(world, case, seed)
            for name, make in ways(life).items():
                if not only or name in only:
                    live(life, make, tallies.setdefault(name, Tally()))
    return tallies


def show(tallies: dict[str, Tally]) -> str:
    """The table."""
    names = ("landed", "share", "over", "x", "easy", "effort", "swing", "band", "width", "/s")
    head = f"{'way':20}" + "".join(f"{name:>8}" for name in names)
    lines = [head]
    best = tallies.get("adapting bound")
    for name, t in tallies.items():
        landed, over = float(np.mean(t.landed)), float(np.mean(t.over))
        share = landed / float(np.mean(best.landed)) if best else float("nan")
        times = over / max(float(np.mean(best.over)), 1e-9) if best else float("nan")
        held = (float(np.mean(t.held)), float(np.mean(t.width))) if t.held else (float("nan"), float("nan"))
        row = (landed, share, over, times, float(np.mean(t.easy)), float(np.mean(t.effort)), float(np.mean(t.swings)))
        numbers = "".join(f"{value:8.3f}" for value in (*row, *held))
        lines.append(f"{name:20}{numbers}{t.asked / max(t.seconds, 1e-9):8.0f}")
    return "\n".join(lines)


def speed(sessions: int, asked: int = 200) -> float:
    """The median of a decision from kept text (read, carried to the day, chosen), in ms, after so many sessions."""
    life = a_life(WORLDS[0], "plain", 1)
    way = Ours(Setting(life.loads, life.plan, life.lifter.level, life.lifter.region))
    day = date(2016, 1, 4)
    for n in range(sessions):
        day += timedelta(days=3 + n % 2)
        way.end(Moment(day, 0, (Done(60.0, life.plan.high, life.plan.target),) * life.plan.sets))
    text, took = way.state.to_json(), list[float]()
    for _ in range(asked):
        begun = time.perf_counter()
        next_loads(State.from_json(text), way.exercise, way.ladder, today=day + timedelta(days=3))
        took.append(1000 * (time.perf_counter() - begun))
    return float(np.median(took))


def main(argv: Sequence[str]) -> int:
    """Prints a table for each world and case asked for."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench loads")
    parser.add_argument("--lifters", type=int, default=40, help="lifters a world")
    parser.add_argument("--seed", type=int, default=11, help="the first lifter's seed")
    parser.add_argument("--worlds", default=",".join(w.name for w in WORLDS))
    parser.add_argument("--case", default="plain", help=f"one of {', '.join(CASES)}, or all")
    parser.add_argument("--only", default="", help="ways, by name")
    parser.add_argument("--together", action="store_true", help="one table over all worlds")
    args = parser.parse_args(argv)
    worlds = [w for w in WORLDS if w.name in args.worlds.split(",")]
    seeds = range(args.seed, args.seed + args.lifters)
    only = [n for n in args.only.split(",") if n]
    for case in CASES if args.case == "all" else (args.case,):
        for some in [worlds] if args.together else [[w] for w in worlds]:
            names = ", ".join(w.name for w in some)
            sys.stdout.write(f"\ncase {case}; worlds {names}; seeds {seeds.start} to {seeds.stop - 1}; {WEEKS} weeks\n")
            sys.stdout.write(show(run(some, case, seeds, only)) + "\n")
            sys.stdout.flush()
    short, long = speed(2), speed(1000)
    sys.stdout.write(f"\nmedian decision from kept text: {short:.2f} ms after a week, {long:.2f} ms after ten years\n")
    return 0
