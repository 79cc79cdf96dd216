"""What is believed of a lifter on one exercise: five traits as a joint normal distribution, and its exact bookkeeping.

A belief is changed in three ways only: time passes (`later`), a day begins (`new_day`), and something was learned
along one of its directions (`learned`), from which all that moves with it follows by the rules of the joint normal
distribution. There is no chance in any of it.
"""

from dataclasses import dataclass
from math import exp, log

import numpy as np
from numpy.typing import NDArray

from bot.training.lifter import (
    FIRST_SD,
    FORM_CARRY,
    GROWTH,
    GROWTH_SD,
    TIRING_SD,
    LevelFacts,
    RegionFacts,
)

Floats = NDArray[np.float64]

STRENGTH, GROW, SLOPE, TIRING, FORM = range(5)
"""The traits: ln of the mean 1RM in kg; ln of the growth's a; ln slope; ln of tiring beside the usual; ln of
the day's form."""
TRAITS = 5

PULL = 0.3
"""How much of the way back to the usual slope such a loosening goes, where all of the doubt comes back."""
KEPT_DOUBT = 0.8
"""Share of the first doubt about the slope (as a standard deviation) that no amount of sets takes away."""


@dataclass(frozen=True, slots=True)
class Belief:
    """Mean and covariance of the traits."""

    mean: Floats
    cov: Floats

    @classmethod
    def first(cls, level: LevelFacts, region: RegionFacts, strength: float, strength_sd: float = FIRST_SD) -> "Belief":
        """The belief before any set, around a strength (ln kg)."""
        mean = np.array([strength, GROWTH, region.slope, 0.0, 0.0])
        spread = (strength_sd, GROWTH_SD, region.slope_sd, TIRING_SD, level.form)
        return cls(mean, np.diag(np.square(np.array(spread))))

    def learned(self, way: Floats, *, shift: float, var: float) -> "Belief":
        """The belief when the combination `way` of the traits moves by `shift` and then has the variance `var`."""
        cross = self.cov @ way
        before = float(way @ cross)
        gain = cross / before
        cov = self.cov - np.outer(gain, gain) * max(before - var, 0.0)
        return Belief(self.mean + gain * shift, (cov + cov.T) / 2)

    def doubting_slope(self, region: RegionFacts, share: float) -> "Belief":
        """The belief with the slope held doubtful: sets at much the same repetitions can't tell a stronger lifter
        from one whose repetitions fall more slowly; what they seem to say of it comes from the model's own shape.

        Slope and strength are loosened along the line on which the load that fits those repetitions stays the same;
        `share` is how much that load moves with ln slope.
        """
        floor = (KEPT_DOUBT * region.slope_sd) ** 2
        short = floor - float(self.cov[SLOPE, SLOPE])
        if short <= 0:
            return self
        unseen = np.zeros(TRAITS)
        unseen[SLOPE], unseen[STRENGTH] = 1.0, -share
        back = (region.slope - float(self.mean[SLOPE])) * short / floor * PULL
        return Belief(self.mean + back * unseen, self.cov + short * np.outer(unseen, unseen))

    def new_day(self, level: LevelFacts) -> "Belief":
        """A new day: a share of the last form stays, the rest is the day's own."""
        step = np.ones(TRAITS)
        step[FORM] = FORM_CARRY
        cov = self.cov * np.outer(step, step)
        cov[FORM, FORM] += (1 - FORM_CARRY**2) * level.form**2
        return Belief(self.mean * step, cov)

    def later(self, level: LevelFacts, *, trained_weeks: float, weeks: float) -> "Belief":
        """After `weeks` of training on top of `trained_weeks`: growth by the log law, with wandering."""
        span = log((1 + trained_weeks + weeks) / (1 + trained_weeks))
        rate = exp(self.mean[GROW])
        share = rate * span / (1 + rate * log(1 + trained_weeks))
        step = np.eye(TRAITS)
        step[STRENGTH, GROW] = share / (1 + rate * log(1 + trained_weeks))
        mean = self.mean.copy()
        mean[STRENGTH] += share
        cov = step @ self.cov @ step.T
        cov[STRENGTH, STRENGTH] += level.wander**2 * weeks
        return Belief(mean, cov)

    def shifted(self, strength: float, sd: float) -> "Belief":
        """The belief with its strength moved by `strength` and made less sure by `sd`."""
        mean, cov = self.mean.copy(), self.cov.copy()
        mean[STRENGTH] += strength
        cov[STRENGTH, STRENGTH] += sd**2
        return Belief(mean, cov)
