"""The chance of landing in the range at the target effort, for each load that the equipment can make."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from bot.training.belief import Belief, Floats
from bot.training.lifter import FEEL_SD
from bot.training.sets import ASSUMED_TARGET, USUAL_SHARE, Feel
from bot.training.watch import Ridge, direction

POINTS = np.linspace(-2.6, 2.6, 27)
POINT_SHARE = np.exp(-0.5 * np.square(POINTS))
POINT_SHARE = POINT_SHARE / POINT_SHARE.sum()
FEEL_POINTS = FEEL_SD * np.array([-1.2, 0.0, 1.2])
FEEL_POINT_SHARE = np.array([0.3, 0.4, 0.3])
NOISE = np.linspace(-2.0, 2.0, 7)
NOISE_SHARE = np.exp(-0.5 * np.square(NOISE)) / np.exp(-0.5 * np.square(NOISE)).sum()

SHARES = POINT_SHARE[:, None, None] * FEEL_POINT_SHARE[None, :, None] * NOISE_SHARE[None, None, :]

MOST_OFF = 30.0
"""Beyond this a miss is no worse."""
TOLERANCE = 1.0
"""Repetitions in reserve that a set may miss its target by and still count as landed."""


@dataclass(frozen=True, slots=True)
class Aim:
    """What a set is to be: range, target effort, its order among the day's work sets, the fatigue before it, and the
    chance that it is stopped below its range where it feels hard enough there."""

    low: int
    high: int
    target: float | None
    order: int
    tired: float
    stops_short: float = 0.5


@dataclass(frozen=True, slots=True)
class Chances:
    """For a load: the chances to land (in range, within one of the target), to be too heavy, to be too easy.

    `off` is the mean distance from the target effort in repetitions (at most thirty).
    """

    load_kg: float
    lands: float
    over: float
    easy: float
    off: float


def chances(belief: Belief, loads_kg: Floats, aim: Aim, feel: Feel) -> tuple[Chances, ...]:
    """The chances at each load, with the day's form, the bias of feel and the feel's noise all unsure."""
    target = ASSUMED_TARGET if aim.target is None else aim.target
    way = direction(belief, reps=(aim.low + aim.high) / 2 + target, tired=aim.tired)
    ridge = Ridge.along(belief, way, POINTS, aim.tired)
    could = ridge.half[None, :] * np.expm1(ridge.strength[None, :] - np.log(loads_kg)[:, None])
    could = could[:, :, None, None]
    share = feel.share(could, FEEL_POINTS[None, None, :, None])
    noise = feel.spread(np.array(target / USUAL_SHARE), aim.order) * NOISE
    stops_left = np.maximum((target - noise) / share, 0.0)
    most = np.maximum(np.floor(could), 0)
    wanted = np.ceil(could - 0.25 - stops_left - 0.25)
    reps = np.minimum(np.clip(wanted, aim.low, aim.high), most)
    miss = could - 0.25 - reps - target
    tolerance = TOLERANCE if aim.target is not None else 2.0
    hard = (reps < aim.low) | (miss < -tolerance)
    easy = ~hard & (miss > tolerance)
    over = np.where(hard, 1.0, np.where(wanted < aim.low, aim.stops_short, 0.0))
    off = np.minimum(np.abs(miss), MOST_OFF)
    rows = zip(loads_kg, _mean(over), _mean(easy), _mean(off), strict=True)
    return tuple(Chances(float(kg), 1.0 - o - e, o, e, far) for kg, o, e, far in rows)


def _mean(what: Floats | NDArray[np.bool_]) -> list[float]:
    return [float(v) for v in np.einsum("lpfn,pfn->l", what, SHARES)]


def fits_about(belief: Belief, aim: Aim) -> float:
    """The load (kg) that today's mean belief would choose if any load could be made."""
    target = ASSUMED_TARGET if aim.target is None else aim.target
    way_reps = (aim.low + aim.high) / 2 + target
    ridge = Ridge.along(belief, direction(belief, reps=way_reps, tired=aim.tired), np.zeros(1), aim.tired)
    return float(np.exp(ridge.strength[0]) / (1 + way_reps / ridge.half[0]))
