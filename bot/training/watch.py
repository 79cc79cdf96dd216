"""What one set teaches: the belief after it, by an exact small grid along the one direction that a set speaks about.

A set speaks of what could be lifted today: ln of the load that fits about its repetitions, in which strength, form,
slope and tiring meet. Along it the posterior is computed on a grid, however crooked the likelihood; the traits follow
by the joint normal distribution. The lifter's lasting bias of feel is averaged over and never learned: who stops where
it feels like the target always reports the target, so what sets seem to say of it comes from how they were stopped.
"""

from dataclasses import dataclass
from math import copysign, exp, log, log1p

import numpy as np

from bot.training.belief import FORM, SLOPE, STRENGTH, TIRING, Belief, Floats
from bot.training.lifter import EPLEY_REPS, FEEL_SD
from bot.training.sets import ASSUMED_TARGET, Ending, Feel, likelihood

GRID = np.linspace(-8.0, 8.0, 161)
GRID_SHARE = np.exp(-0.5 * np.square(GRID))
GRID_SHARE = GRID_SHARE / GRID_SHARE.sum()
FEEL_GRID = FEEL_SD * np.linspace(-2.0, 2.0, 7)
FEEL_SHARE = np.exp(-0.5 * np.square(np.linspace(-2.0, 2.0, 7)))
FEEL_SHARE = FEEL_SHARE / FEEL_SHARE.sum()

IMPOSSIBLE = 4.0
"""Standard deviations beyond which a set is set aside: a typing error, a wrong unit."""
ODD_BELOW, ODD_ABOVE = 0.18, 0.30
"""Unless it is within this ln share of what was expected: then it may well be true. Above it is wider, since what comes
as a wrong number there is far above (a lost point, pounds), and so a set done heavier still raises the estimate."""


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
    """The direction of what a load that fits `reps` to failure depends on.

    The slope's part is that of a fresh set, so that tired sets teach tiring and strength but nothing of the slope.
    """
    half = EPLEY_REPS * exp(belief.mean[SLOPE])
    slowed = exp(belief.mean[TIRING]) * tired
    way = np.zeros_like(belief.mean)
    way[STRENGTH] = way[FORM] = 1.0
    way[SLOPE] = reps / (half + reps)
    way[TIRING] = -slowed * reps / (half * exp(-slowed) + reps)
    return way


def meant(ending: Ending) -> float:
    """The repetitions to failure that the set was meant for.

    A set is read along what was meant, not what came of it: else good days would always teach more of the slope than
    bad ones, and it would drift; nor by its load, or a heavier set could speak for a flatter slope instead of strength.
    """
    target = ASSUMED_TARGET if ending.target is None else ending.target
    return max(1.0, (ending.low + ending.high) / 2 + target)


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
    way = direction(belief, reps=meant(ending), tired=tired)
    sd = float(np.sqrt(way @ belief.cov @ way))
    log_load = log(load_kg)
    could = Ridge.along(belief, way, GRID, tired).could(log_load)
    chance = GRID_SHARE * (likelihood(ending, could[:, None], FEEL_GRID[None, :], feel) @ FEEL_SHARE)
    total = float(chance.sum())
    surprise = _surprise(belief, ending, feel, log_load, total, sd=sd, tired=tired)
    if abs(surprise) > IMPOSSIBLE:
        return Seen(belief, surprise)
    along = float(chance @ GRID) / total
    spread = float(chance @ np.square(GRID - along)) / total
    return Seen(belief.learned(way, shift=sd * along, var=sd**2 * spread), surprise)


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
    off = fits - float(belief.mean[STRENGTH] + belief.mean[FORM])
    size = float(np.sqrt(2 * max(short - usual, 0.0)))
    return copysign(min(size, IMPOSSIBLE) if -ODD_BELOW < off < ODD_ABOVE else size, off)
