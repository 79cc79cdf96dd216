"""What somebody can lift on one exercise, tracked: a small state, brought up to date by each session.

    state = begin(level=Level.NOVICE, region=Region.LOWER)
    state = after_session(state, day=day, sets=lifted, prescribed=exercise.sets, pain=None)
    estimate(state, today)

The state's size does not grow with the history. A correction of an old set rebuilds it from the facts.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from math import exp, sqrt

import numpy as np

from bot.training.answered import ending_of, plan_for
from bot.training.belief import SLOPE, STRENGTH, Belief
from bot.training.equations import EPLEY
from bot.training.exposure import Exposure, LiftedSet, Mark
from bot.training.lifter import Level
from bot.training.plan import LoadStyle, PlannedSet, Region
from bot.training.report import Stage
from bot.training.state import PUSHED, SHORT, Estimate, State
from bot.training.underway import Today, today
from bot.training.watch import direction, meant

__all__ = ["Estimate", "LiftedSet", "State", "Today", "after_session", "begin", "estimate", "estimate_of", "today"]


def begin(
    *,
    level: Level | None = None,
    region: Region | None = None,
    load_style: LoadStyle = LoadStyle.TOTAL,
    like: Estimate | None = None,
) -> State:
    """Nothing known yet. `like` is what a similar lift of the same client suggests for the 1RM, where there is one."""
    return State(level, region, load_style, guess=like)


def after_session(
    state: State,
    *,
    day: date,
    sets: Sequence[LiftedSet],
    prescribed: Sequence[PlannedSet] = (),
    pain: int | None = None,
) -> State:
    """The state after a session of `day`. A day before the state's last one counts as that last day."""
    now = today(state, day, sets, prescribed)
    work = tuple(s for n, s in enumerate(sets) if s.stage is Stage.WORK and n not in now.aside)
    short, pushed = _ends(work, prescribed)
    exposure = Exposure(max(day, state.day or day), work[: Exposure.MOST_SETS], pain)
    return replace(
        now.state,
        belief=None if now.belief is None else _loosened(now.belief, now.state, work, prescribed),
        exposures=state.exposures + bool(work),
        last=(*state.last, exposure)[-2:] if sets or pain is not None else state.last,
        doubt=now.doubt,
        marks=_marked(now.state, exposure),
        short=SHORT + FADES * (state.short - SHORT) + short,
        pushed=PUSHED + FADES * (state.pushed - PUSHED) + pushed,
    )


def _marked(state: State, exposure: Exposure) -> tuple[Mark, ...]:
    """The marks with this session's; a day has one."""
    loaded = [(s.load_kg, s) for s in exposure.sets if s.load_kg is not None]
    if not loaded:
        return state.marks
    kg, best = max(loaded, key=lambda one: shown_kg(state.whole_kg(one[0]), one[1].reps, one[1].rir))
    before = tuple(mark for mark in state.marks if mark.day != exposure.day)
    return (*before, Mark(exposure.day, kg, best.reps, best.rir))[-Mark.MOST :]


def shown_kg(whole_kg: float, reps: int, rir: float | None) -> float:
    """The one-repetition maximum that a set by itself shows, by Epley; effort unsaid counts as none left."""
    return EPLEY.one_rep_max(whole_kg, reps + (rir or 0.0))


FADES = 0.98
"""What a session leaves of the counts of how sets end, so that a changed habit is learned."""


def _ends(work: Sequence[LiftedSet], prescribed: Sequence[PlannedSet]) -> tuple[int, int]:
    """How many sets were stopped below their range with something left, and how many were pushed on to its bottom with
    less left than asked for."""
    short = pushed = 0
    for order, lifted in enumerate(work):
        plan = plan_for(lifted, order, prescribed)
        if plan is None or plan.rir is None or lifted.rir is None:
            continue
        short += lifted.reps < plan.reps.low and lifted.rir >= max(0.5, float(plan.rir) - 1)
        pushed += lifted.reps == plan.reps.low and lifted.rir <= float(plan.rir) - 1
    return short, pushed


def _loosened(belief: Belief, state: State, work: Sequence[LiftedSet], prescribed: Sequence[PlannedSet]) -> Belief:
    """The belief with the slope held doubtful along what the session's sets were meant for."""
    if not work:
        return belief
    reps = [meant(ending_of(s, plan_for(s, n, prescribed), n)) for n, s in enumerate(work)]
    share = float(direction(belief, reps=sum(reps) / len(reps), tired=0.0)[SLOPE])
    return belief.doubting_slope(state.facts[1], share)


def estimate(state: State, day: date) -> Estimate | None:
    """The 1RM of that day's mean strength; `None` before the first set. With body weight in it, that is taken off."""
    return estimate_of(today(state, day))


def estimate_of(now: Today) -> Estimate | None:
    """The estimate within a session under way."""
    if now.belief is None:
        return None
    ln, var = float(now.belief.mean[STRENGTH]), float(now.belief.cov[STRENGTH, STRENGTH])
    mean = exp(min(ln, 20.0))
    spread = STATED * sqrt(max(np.expm1(min(var, 4.0)), 0.0))
    return Estimate(mean - now.state.body_kg, mean * spread)


STATED = 1.1
"""The stated standard deviation is so much wider than the filter's own: what the model leaves out (traits that are
averaged over, sets that end for other reasons) made bands of 95 % hold 89 to 93 in simulated lives; this mends it."""
