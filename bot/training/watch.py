"""What one set teaches: the belief after it, by an exact small grid along the one direction that a set speaks about.

A set speaks of what could be lifted today: ln of the load that fits about its repetitions, in which strength, form,
slope and tiring meet. Along it the posterior is computed on a grid, however crooked the likelihood; the traits follow
by the joint normal distribution. The lifter's lasting bias of feel is averaged over and never learned: who stops where
it feels like the target always reports the target, so what sets seem to say of it comes from how they were stopped.
"""

from dataclasses import dataclass
from math import exp, hypot, log, log1p

import numpy as np

from bot.training.belief import FORM, SLOPE, STRENGTH, TIRING, Belief, Floats
from bot.training.lifter import EPLEY_REPS, FEEL_SD
from bot.training.sets import Ending, Feel, likelihood

GRID = np.linspace(-5.0, 5.0, 121)
GRID_SHARE = np.exp(-0.5 * np.square(GRID))
GRID_SHARE = GRID_SHARE / GRID_SHARE.sum()
FEEL_GRID = FEEL_SD * np.linspace(-2.0, 2.0, 7)
FEEL_SHARE = np.exp(-0.5 * np.square(np.linspace(-2.0, 2.0, 7)))
FEEL_SHARE = FEEL_SHARE / FEEL_SHARE.sum()

IMPOSSIBLE = 4.0
"""Standard deviations beyond which a set is set aside: a typing error, a wrong unit."""
LASTING_MOST = 1.8
"""Standard deviations of surprise up to which a single set moves the lasting traits; what is beyond moves no more (Huber
1964, Ann Math Stat 35:73-101)."""
USUAL_NOISE = 0.03
"""What a set's ending leaves open of ln load, as a standard deviation: about a repetition."""


@dataclass(frozen=True, slots=True)
class Seen:
    """A belief after a set, and how far the set was from what was expected, in standard deviations (0: as expected)."""

    belief: Belief
    surprise: float

    @property
    def believed(self) -> bool:
        """Whether the set was taken at its word."""
        return abs(self.surprise) <= IMPOSSIBLE


def endurance(belief_slope: Floats | float, tiring: Floats | float, tired: float) -> Floats:
    """Repetitions for which the load falls to half of the 1RM, with fatigue: 30 · slope · e^(-tiring·tired)."""
    reps: Floats = EPLEY_REPS * np.exp(belief_slope - np.exp(tiring) * tired)
    return reps


def direction(belief: Belief, *, reps: float, tired: float) -> Floats:
    """The direction of what a load that fits `reps` to failure depends on."""
    half = EPLEY_REPS * exp(belief.mean[SLOPE] - exp(belief.mean[TIRING]) * tired)
    share = (reps / half) / (1 + reps / half)
    way = np.zeros_like(belief.mean)
    way[STRENGTH] = way[FORM] = 1.0
    way[SLOPE] = share
    way[TIRING] = -share * exp(belief.mean[TIRING]) * tired
    return way


def expected(belief: Belief, load_kg: float, *, tired: float) -> float:
    """Repetitions to failure that are expected at a load, from 1 to 40.

    A set is read around what was expected, not around what it turned out to be: else good days would always teach more of
    the slope than bad ones, and it would drift.
    """
    half = EPLEY_REPS * exp(belief.mean[SLOPE] - exp(belief.mean[TIRING]) * tired)
    strength = float(belief.mean[STRENGTH] + belief.mean[FORM])
    return float(np.clip(half * np.expm1(min(strength - log(load_kg), 3.0)), 1.0, 40.0))


@dataclass(frozen=True, slots=True)
class Ridge:
    """The repetitions that could be made at a load, along a direction: `traits` at the grid's points."""

    strength: Floats
    half: Floats

    @classmethod
    def along(cls, belief: Belief, way: Floats, points: Floats, tired: float) -> "Ridge":
        """`points` in standard deviations of the direction."""
        cross = belief.cov @ way
        sd = float(np.sqrt(way @ cross))
        traits = belief.mean[:, None] + np.outer(cross / sd, points)
        return cls(traits[STRENGTH] + traits[FORM], endurance(traits[SLOPE], traits[TIRING], tired))

    def could(self, log_load: Floats | float) -> Floats:
        """Repetitions to failure at a load (ln kg); below zero where it can't be lifted."""
        could: Floats = self.half * np.expm1(self.strength - log_load)
        return could


def see(belief: Belief, load_kg: float, ending: Ending, feel: Feel, *, tired: float) -> Seen:
    """What is believed after a set of `load_kg` (above 0) that ended so, `tired` by the day's sets before it."""
    way = direction(belief, reps=expected(belief, load_kg, tired=tired), tired=tired)
    sd = float(np.sqrt(way @ belief.cov @ way))
    log_load = log(load_kg)
    could = Ridge.along(belief, way, GRID, tired).could(log_load)
    chance = GRID_SHARE * (likelihood(ending, could[:, None], FEEL_GRID[None, :], feel) @ FEEL_SHARE)
    total = float(chance.sum())
    surprise = _surprise(belief, ending, feel, log_load, total, sd=sd, tired=tired)
    most = LASTING_MOST * sd * sd / hypot(sd, USUAL_NOISE)
    if abs(surprise) > IMPOSSIBLE:
        return Seen(belief, surprise)
    along = float(chance @ GRID) / total
    spread = float(chance @ np.square(GRID - along)) / total
    lasting = max(-most, min(most, sd * along))
    return Seen(belief.learned(way, shift=sd * along, lasting=lasting, var=sd**2 * spread), surprise)


def _surprise(
    belief: Belief, ending: Ending, feel: Feel, log_load: float, total: float, *, sd: float, tired: float
) -> float:
    """How far the set lies from what was expected, signed: above 0 it was stronger."""
    most = ending.reps + np.linspace(0.0, 14.0, 57)
    best = likelihood(ending, most, np.zeros_like(most), feel)
    short = log(float(best.max()) / max(total, 1e-300))
    half = EPLEY_REPS * exp(belief.mean[SLOPE] - exp(belief.mean[TIRING]) * tired)
    fits = log_load + log1p(float(most[best.argmax()]) / half)
    usual = 0.5 * log1p((sd / 0.03) ** 2)
    size = float(np.sqrt(2 * max(short - usual, 0.0)))
    return size if fits > belief.mean[STRENGTH] + belief.mean[FORM] else -size
