"""What somebody can lift on one exercise, tracked: a small state, brought up to date by each session.

    state = begin(level=Level.NOVICE, region=Region.LOWER)
    state = after_session(state, day=day, sets=lifted, prescribed=exercise.sets, pain=None)
    estimate(state, today)

The state's size does not grow with the history. A correction of an old set rebuilds it from the facts.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import exp, log, log1p, sqrt

import numpy as np

from bot.training.belief import FORM, SLOPE, STRENGTH, TIRING, Belief
from bot.training.exposure import Exposure, LiftedSet
from bot.training.lifter import EPLEY_REPS, FIRST_SD, Level
from bot.training.plan import LoadStyle, PlannedSet, Region
from bot.training.report import Stage
from bot.training.sets import Ending
from bot.training.state import LIGHTEST_KG, Doubt, Estimate, State
from bot.training.tiring import tired_by
from bot.training.watch import direction, meant, see

__all__ = ["Estimate", "LiftedSet", "State", "after_session", "begin", "estimate", "today"]


@dataclass(frozen=True, slots=True)
class Today:
    """A session under way: the state with the day begun, today's belief after the sets done, and how tired they made.

    `aside` holds the places (from 0) of today's sets that were not taken at their word.
    """

    state: State
    belief: Belief | None
    tired: float = 0.0
    done: tuple[LiftedSet, ...] = ()
    aside: tuple[int, ...] = ()
    doubt: Doubt | None = None
    layoff_weeks: float = 0.0


def begin(
    *,
    level: Level | None = None,
    region: Region | None = None,
    load_style: LoadStyle = LoadStyle.TOTAL,
    like: Estimate | None = None,
) -> State:
    """Nothing known yet. `like` is what a similar lift of the same client suggests for the 1RM, where there is one."""
    return State(level, region, load_style, guess=like)


def today(state: State, day: date, done: Sequence[LiftedSet] = (), prescribed: Sequence[PlannedSet] = ()) -> Today:
    """The state carried to `day`, with the sets done so far that day."""
    now = _begin_day(state, day)
    order = 0
    for lifted in done:
        plan = _plan_for(lifted, order, prescribed)
        now = _with_set(now, lifted, plan, order)
        order += lifted.stage is Stage.WORK
    return now


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
        short=FADES * state.short + short,
        pushed=FADES * state.pushed + pushed,
    )


FADES = 0.98
"""What a session leaves of the counts of how sets end, so that a changed habit is learned."""


def _ends(work: Sequence[LiftedSet], prescribed: Sequence[PlannedSet]) -> tuple[int, int]:
    """How many sets were stopped below their range with something left, and how many were pushed on to its bottom with
    less left than asked for."""
    short = pushed = 0
    for order, lifted in enumerate(work):
        plan = _plan_for(lifted, order, prescribed)
        if plan is None or plan.rir is None or lifted.rir is None:
            continue
        short += lifted.reps < plan.reps.low and lifted.rir >= max(0.5, float(plan.rir) - 1)
        pushed += lifted.reps == plan.reps.low and lifted.rir <= float(plan.rir) - 1
    return short, pushed


def _loosened(belief: Belief, state: State, work: Sequence[LiftedSet], prescribed: Sequence[PlannedSet]) -> Belief:
    """The belief with the slope held doubtful along what the session's sets were meant for."""
    if not work:
        return belief
    reps = [meant(_ending(s, _plan_for(s, n, prescribed), n)) for n, s in enumerate(work)]
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
    return Estimate(mean - now.state.body_kg, mean * sqrt(max(np.expm1(min(var, 4.0)), 0.0)))


def _begin_day(state: State, day: date) -> Today:
    level, _ = state.facts
    if state.day is None or state.since is None or state.belief is None:
        return Today(replace(state, since=state.since or day, day=day), state.belief, doubt=state.doubt)
    if day <= state.day:
        return Today(state, state.belief, doubt=state.doubt)
    weeks = (day - state.day).days / 7
    off = max(0.0, weeks - GRACE_WEEKS)
    trained = max(0.0, (state.day - state.since).days / 7 - state.off_weeks) + level.weeks_trained
    belief = state.belief.later(level, trained_weeks=trained, weeks=min(weeks, GRACE_WEEKS))
    loss = _loss(off)
    back = min(state.lost, 2 * LOSS_A_WEEK * min(weeks, GRACE_WEEKS))
    belief = belief.shifted(back - loss, 0.5 * (back + loss))
    moved = replace(state, day=day, lost=state.lost - back + loss, off_weeks=state.off_weeks + off)
    return Today(moved, belief.new_day(level), doubt=state.doubt, layoff_weeks=weeks if off > 0 else 0.0)


GRACE_WEEKS = 2.0
"""Weeks off without loss: McMaster et al. 2013 (Sports Med 43:367-384), Bosquet et al. 2013 (Scand J Med Sci Sports
23:e140-e149): clear from about the third week."""
LOSS_A_WEEK = 0.0075
"""Share of strength lost a week from then to the eighth, half of it later, won back twice as fast: our reading of the
same two reviews, no published rate."""


def _loss(off_weeks: float) -> float:
    first = min(off_weeks, 6.0)
    return LOSS_A_WEEK * (first + 0.5 * (min(off_weeks, 58.0) - first))


def _plan_for(lifted: LiftedSet, order: int, prescribed: Sequence[PlannedSet]) -> PlannedSet | None:
    if not prescribed:
        return None
    place = (lifted.set - 1) if lifted.set is not None else order
    return prescribed[min(max(place, 0), len(prescribed) - 1)]


def _with_set(now: Today, lifted: LiftedSet, plan: PlannedSet | None, order: int) -> Today:
    done = (*now.done, lifted)
    if lifted.stage is Stage.WARMUP or lifted.load_kg is None:
        return replace(now, done=done)
    if lifted.stage is not Stage.WORK:
        return replace(now, done=done, tired=now.tired + 0.5 * tired_by(plan, left=0.5))
    state = now.state
    whole = state.whole_kg(lifted.load_kg)
    ending = _ending(lifted, plan, order)
    belief = now.belief or _first_belief(state, whole, ending)
    seen = see(belief, whole, ending, state.feel, tired=now.tired)
    if not seen.believed:
        return _set_aside(now, replace(now, done=done, belief=seen.belief), belief, whole, ending)
    doubt = replace(now.doubt, open=False) if now.doubt is not None else None
    left = left_after(seen.belief, whole, ending, now.tired)
    return replace(now, done=done, belief=seen.belief, tired=now.tired + tired_by(plan, left=left), doubt=doubt)


def left_after(belief: Belief, whole_kg: float, ending: Ending, tired: float) -> float:
    """About how many repetitions were left after the set."""
    half = EPLEY_REPS * exp(float(belief.mean[SLOPE]) - exp(float(belief.mean[TIRING])) * tired)
    could = half * (exp(float(belief.mean[STRENGTH] + belief.mean[FORM])) / whole_kg - 1)
    return max(0.0, could - ending.reps)


MOST_REPS = 60
"""Sets beyond this say no more than this: no equation reaches so far."""


def _ending(lifted: LiftedSet, plan: PlannedSet | None, order: int) -> Ending:
    reps = min(lifted.reps, MOST_REPS)
    if plan is None:
        return Ending(reps, lifted.rir, reps, reps, None, order)
    target = None if plan.rir is None else float(plan.rir)
    return Ending(reps, lifted.rir, plan.reps.low, plan.reps.high, target, order)


def _first_belief(state: State, whole_kg: float, ending: Ending) -> Belief:
    """A belief around the first set itself, or around what a similar lift suggests."""
    level, region = state.facts
    if state.guess is not None:
        mean = max(state.guess.mean_kg + state.body_kg, LIGHTEST_KG)
        return Belief.first(level, region, log(mean), max(0.1, min(0.5, state.guess.sd_kg / mean)))
    left = ending.rir if ending.rir is not None else (ending.target or 2.0)
    fits = log(whole_kg) + log1p((ending.reps + left) / (EPLEY_REPS * exp(region.slope)))
    return Belief.first(level, region, fits, FIRST_SD)


SAME_DAY_RISE = 0.20
"""Up to this ln share a rise is believed on the second set of the same day."""
DOUBT_AGREES = 0.10
"""Two unbelievable sets within this share of each other are believed."""


def _second_time(doubt: Doubt, says: float, jump: float, day: date | None) -> bool:
    """Whether an unbelievable set is the second of its kind.

    A rise beyond any training must come again on another day: one mistake (a unit, a lost point) goes through a whole
    session, and too heavy a load hurts more than too light a one.
    """
    same_way = doubt.open and (doubt.strength - says + jump) * jump > 0
    near = abs(says - doubt.strength) < DOUBT_AGREES
    return same_way and (jump < SAME_DAY_RISE or (near and doubt.day != day))


def _set_aside(now: Today, noted: Today, belief: Belief, whole_kg: float, ending: Ending) -> Today:
    """Not believed the first time; where it agrees with the doubt kept before it, the belief moves there."""
    half = EPLEY_REPS * exp(float(belief.mean[SLOPE]) - exp(float(belief.mean[TIRING])) * now.tired)
    says = log(whole_kg) + log1p((ending.reps + (ending.rir or 0.0)) / half)
    jump = says - float(belief.mean[STRENGTH] + belief.mean[FORM])
    if now.doubt is not None and _second_time(now.doubt, says, jump, now.state.day):
        nearer = min(jump, jump + now.doubt.strength - says, key=abs)
        moved = belief.shifted(nearer, 0.10 if ending.reps else 0.30)
        seen = see(moved, whole_kg, ending, now.state.feel, tired=now.tired)
        return replace(noted, belief=seen.belief, doubt=None)
    doubt = Doubt(says, now.state.day or date.min, whole_kg - now.state.body_kg, ending.reps)
    return replace(noted, aside=(*now.aside, len(now.done)), doubt=doubt)
