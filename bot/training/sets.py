"""How a set ends, and what its ending says about the repetitions that could have been made.

A lifter goes on to the top of the range, or stops where the effort *feels* like the target, or fails before the
bottom of the range. Each says something else about what was left, whether effort was reported or not.
"""

from dataclasses import dataclass

import numpy as np

from bot.training.belief import Floats
from bot.training.lifter import LevelFacts, RegionFacts


def normal_share(z: Floats) -> Floats:
    """The share of a standard normal below z, right to 0.0002 (the tanh form of Page 1977, Appl Stat 26:75-76)."""
    share: Floats = 0.5 * (1 + np.tanh(0.7978846 * z * (1 + 0.044715 * z * z)))
    return share


@dataclass(frozen=True, slots=True)
class Ending:
    """A set as it ended: repetitions done and reserve said, with the range and target it was done under, and its order
    in the session (0 is the first work set)."""

    reps: int
    rir: float | None
    low: int
    high: int
    target: float | None
    order: int


@dataclass(frozen=True, slots=True)
class Feel:
    """How a lifter feels what is left: `feel_fall` and `short` as in the tables of levels and regions."""

    fall: float
    short: float
    noise: float

    @classmethod
    def of(cls, level: LevelFacts, region: RegionFacts) -> "Feel":
        return cls(region.feel_fall, level.feel_short, level.feel_noise)

    def share(self, total: Floats, bias: Floats) -> Floats:
        """The share of what is left that is felt, for sets of `total` repetitions to failure: people underestimate,
        more so the longer the set (Halperin et al. 2022, Sports Med 52:377-390)."""
        share: Floats = np.clip(1 - self.fall * np.maximum(0, total - 8) - self.short + bias, 0.45, 1.2)
        return share

    def spread(self, left: Floats, order: int) -> Floats:
        """Standard deviation of what is felt with `left` repetitions left; it shrinks from set to set (Hackett et al.
        2018, J Strength Cond Res; Remmert et al. 2023)."""
        spread: Floats = (0.5 + 0.06 * left) * self.noise * (1.0, 0.9, 0.8)[min(order, 2)]
        return spread


ROUNDING = 0.25
"""Reserve is reported in halves near failure."""
MOST_TOLD = 8.0
"""From here on a reserve only says "many"."""
FLOOR = 1e-60
ASSUMED_TARGET = 2.0
"""Reserve that is taken as meant where none is asked for: 1 to 3 is common practice, no source."""


USUAL_SHARE = 0.85
"""The share of what is left that is usually felt: how far from failure a report is taken to be for its noise."""


def likelihood(ending: Ending, could: Floats, bias: Floats, feel: Feel) -> Floats:
    """How likely the set ends so, given the repetitions `could` that could be made in all and the bias of feel."""
    left = could - 0.25 - ending.reps
    felt = feel.share(np.maximum(could, ending.reps), bias) * left
    about = ending.rir if ending.rir is not None else ASSUMED_TARGET if ending.target is None else ending.target
    spread = float(np.hypot(feel.spread(np.array(about / USUAL_SHARE), ending.order), 0.2))
    possible = normal_share((left + 0.35) / 0.5)
    told = _silent(ending, left, felt, spread) if ending.rir is None else _reported(ending.rir, felt, spread)
    return (possible if ending.reps > 0 else 1.0) * told + FLOOR


def _reported(rir: float, felt: Floats, spread: float) -> Floats:
    if rir <= 0:
        return normal_share((ROUNDING - felt) / spread)
    if rir >= MOST_TOLD:
        return normal_share((felt - rir + 0.5) / np.hypot(spread, 1.0))
    wide = np.hypot(spread, 0.15 if rir <= 3 else 0.3 + 0.1 * (rir - 3))
    told: Floats = np.exp(-0.5 * np.square((felt - rir) / wide))
    return told


def _silent(ending: Ending, left: Floats, felt: Floats, spread: float) -> Floats:
    """Nothing was said of effort: why the set ended must tell."""
    target = ASSUMED_TARGET if ending.target is None else ending.target
    if ending.reps < ending.low:
        failed: Floats = np.exp(-0.5 * np.square((left - 0.25) / 0.6))
        stopped: Floats = np.exp(-0.5 * np.square((felt - target + 0.25) / np.hypot(spread, 0.5)))
        return 0.8 * failed + 0.2 * stopped
    if ending.reps >= ending.high:
        if ending.high == ending.low:
            return np.ones_like(felt)
        return normal_share((felt + 0.5 - target) / np.hypot(spread, 0.5))
    if ending.reps == ending.low:
        return normal_share((target + 0.25 - felt) / np.hypot(spread, 0.5))
    wide = np.hypot(spread, 0.4)
    told: Floats = np.exp(-0.5 * np.square((felt - target + 0.25) / wide))
    return told
