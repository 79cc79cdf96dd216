"""Simulated lifters: people who live 16 weeks of training, lift, tire, have days, and misjudge what they have left.

Parameters are from published work where there is any; the worlds differ in what nobody has measured, so that a way of
choosing loads is not fitted to one simulator:

- strength S0·(1 + a·ln(1 + weeks)), a about 0.085 with a CV of a half: Steele et al. 2022 (Res Q Exerc Sport 93),
  Ahtiainen et al. 2016 (Age 38:10);
- the day's form: SD 2 % trained, 3 %, 4 % novice (Banyard et al. 2017, JSCR 31:1897-1904; Grgic et al. 2020, Sports Med
  Open 6:31), 0.3 of it carried to the next session (ours);
- repetitions 30·(1/p - 1)·m·u with m 1 upper body, 1.3 to 1.5 lower (Hoeger et al. 1990; Shimano et al. 2006; Richens &
  Cleather 2014), u lognormal 0.15 to 0.25;
- effort felt: shares and spreads fitted to Zourdos et al. 2021, Hackett et al. 2017, Refalo et al. 2023, Halperin et
  al. 2022 (the fit is ours);
- fatigue from set to set 5 to 25 % of repetitions by rest (ours, after trials that keep repetitions by cutting load).
"""

from dataclasses import dataclass
from math import exp, floor, log

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class World:
    """What nobody has measured, one way or another.

    `pushes`: a lifter goes on to the bottom of the range even where it feels too hard; else stops there and then.
    `whole`: what is left is counted in whole repetitions. `each_rep`: feel is new at every repetition, not one error a
    set. `law`: how repetitions fall with load. `growth`: along the logarithm or straight.
    """

    name: str
    pushes: bool = True
    whole: bool = False
    each_rep: bool = False
    law: str = "epley"
    growth: str = "log"
    form_tails: bool = False
    wander: float = 0.0
    feel_shift: float = 0.0
    set_luck: float = 0.0


WORLDS = (
    World("published"),
    World("whole", whole=True, pushes=False),
    World("restless", each_rep=True, growth="straight", wander=0.006, set_luck=0.02),
    World("curved", law="wathen", whole=True, form_tails=True),
    World("modest", law="brzycki", feel_shift=-0.08, set_luck=0.02, growth="straight"),
)


@dataclass(frozen=True, slots=True)
class Lifter:
    """One lifter on one exercise; the numbers that a way of choosing must find out."""

    level: str
    region: str
    start_kg: float
    growth: float
    weeks_before: float
    endurance: float
    tires: float
    feel_bias: float
    form_sd: float
    feel_fall: float
    feel_short: float
    feel_noise: float
    attends: float


@dataclass(frozen=True, slots=True)
class Plan:
    """What is prescribed: `sets` sets of low to high repetitions with `target` left, `rest_s` between."""

    low: int
    high: int
    target: float
    sets: int
    rest_s: int


PLANS = (
    Plan(5, 5, 2.0, 3, 180),
    Plan(4, 6, 1.0, 3, 180),
    Plan(6, 8, 2.0, 3, 150),
    Plan(8, 10, 2.0, 3, 120),
    Plan(8, 12, 2.0, 3, 120),
    Plan(8, 12, 1.0, 2, 90),
    Plan(10, 15, 2.0, 3, 90),
    Plan(6, 10, 3.0, 4, 150),
)

LEVELS = {"novice": (0.0, 0.04, 0.08, 1.3), "intermediate": (52.0, 0.03, 0.0, 1.0), "trained": (156.0, 0.02, 0.0, 1.0)}
"""Weeks trained before, form SD, feel short, feel noise."""


def some_lifter(chance: np.random.Generator) -> Lifter:
    """A lifter at random."""
    level = str(chance.choice(list(LEVELS)))
    weeks, form, short, noise = LEVELS[level]
    region = str(chance.choice(["upper", "lower"]))
    spread = float(chance.choice([0.15, 0.25]))
    middle = 1.0 if region == "upper" else float(chance.uniform(1.2, 1.5))
    return Lifter(
        level=level,
        region=region,
        start_kg=float(np.exp(chance.normal(log(70 if region == "upper" else 110), 0.3))),
        growth=float(np.exp(chance.normal(log(0.085), 0.47))),
        weeks_before=weeks,
        endurance=middle * float(np.exp(chance.normal(0, spread))),
        tires=float(np.exp(chance.normal(0, 0.35))),
        feel_bias=float(chance.normal(0, 0.06)),
        form_sd=form,
        feel_fall=0.02 if region == "upper" else 0.07,
        feel_short=short,
        feel_noise=noise,
        attends=float(np.clip(chance.beta(8.1, 2.0), 0.4, 1.0)),
    )


def strength_at(lifter: Lifter, world: World, weeks: float) -> float:
    """Mean 1RM (kg) after `weeks` of the 16, without wandering and time off."""
    a, before = lifter.growth, lifter.weeks_before
    if world.growth == "straight":
        rate = a / ((1 + before + 4) * (1 + a * log(1 + before + 4)))
        return lifter.start_kg * (1 + rate * weeks)
    return lifter.start_kg * (1 + a * log(1 + before + weeks)) / (1 + a * log(1 + before))


def could_lift(world: World, lifter: Lifter, strength_kg: Floats | float, load_kg: float, tired: float) -> Floats:
    """Repetitions to failure (real-valued, 0 where it can't be lifted once) at a load with a day's strength."""
    ratio = np.asarray(strength_kg, dtype=np.float64) / load_kg
    match world.law:
        case "wathen":
            share = np.clip((100 / ratio - 48.8) / 53.8, 1e-3, None)
            reps = np.maximum(-np.log(share) / 0.075, 0.0)
        case "brzycki":
            reps = np.maximum(37 - 36 / ratio, 0.0)
        case _:
            reps = np.where(ratio < 1, 0.0, np.maximum(30 * (ratio - 1), 1.0 / max(lifter.endurance, 0.1)))
    fresh: Floats = reps * lifter.endurance * exp(-lifter.tires * tired)
    return np.where(ratio >= 1, np.maximum(fresh, 1.0), fresh * (ratio > 1)) if world.law == "epley" else fresh


def felt_share(world: World, lifter: Lifter, total: Floats) -> Floats:
    """The share of what is left that is felt, in sets of `total` to failure."""
    share = 1 - lifter.feel_fall * np.maximum(0, total - 8) - lifter.feel_short + lifter.feel_bias + world.feel_shift
    return np.clip(share, 0.45, 1.2)


@dataclass(frozen=True, slots=True)
class Outcome:
    """Sets as they ended (arrays): repetitions, what was truly left, what was felt to be left at the end."""

    reps: Floats
    left: Floats
    felt: Floats


def perform(world: World, lifter: Lifter, plan: Plan, *, could: Floats, order: int, noise: Floats) -> Outcome:
    """How sets end. `noise` has a row for each set and a column for each repetition (one column is used throughout
    where feel is one error a set)."""
    most = np.floor(could)
    share = felt_share(world, lifter, could)
    reps = np.full_like(could, -1.0)
    felt_end = np.zeros_like(could)
    first = plan.low if world.pushes else 1
    for n in range(first, plan.high + 1):
        left = np.maximum((most if world.whole else could) - n, 0.0)
        error = noise[:, min(n, noise.shape[1] - 1)] if world.each_rep else noise[:, 0]
        spread = (0.5 + 0.06 * left) * lifter.feel_noise * (1.0, 0.9, 0.8)[min(order, 2)]
        felt = share * left + spread * error
        stops = (reps < 0) & ((felt <= plan.target + 0.25) | (n == plan.high)) & (most >= n)
        reps = np.where(stops, float(n), reps)
        felt_end = np.where(stops, felt, felt_end)
    failed = reps < 0
    reps = np.where(failed, np.minimum(most, plan.high), reps)
    left = np.maximum((most if world.whole else could) - reps, 0.0)
    return Outcome(
        reps, np.where(failed, np.minimum(left, 0.99), left), np.where(failed, 0.0, np.maximum(felt_end, 0.0))
    )


def said(felt: float) -> float:
    """What is felt, as said: halves up to three, whole beyond, ten at most."""
    return min(10.0, round(felt * 2) / 2 if felt <= 3 else float(floor(felt + 0.5)))


def rest_cost(rest_s: int) -> float:
    """Share of repetitions that a set to failure costs the next."""
    return float(np.interp(rest_s, [60, 120, 180, 300], [0.25, 0.125, 0.065, 0.03]))


def judged(plan: Plan, reps: Floats, left: Floats) -> tuple[Floats, Floats, Floats]:
    """Landed (in range and within one of the target), overshot, too easy: ones and zeros."""
    over = (reps < plan.low) | (left < plan.target - 1 - 1e-9)
    easy = ~over & (left > plan.target + 1 + 1e-9)
    landed = ~over & ~easy
    return landed.astype(float), over.astype(float), easy.astype(float)
