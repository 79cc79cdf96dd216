"""A session under way: the state carried to a day, and what each set of that day teaches."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import exp, log, log1p

from bot.training.answered import ending_of, plan_for
from bot.training.belief import FORM, SLOPE, STRENGTH, TIRING, Belief
from bot.training.exposure import LiftedSet
from bot.training.layoff import GRACE_WEEKS, loss_of, won_back
from bot.training.lifter import EPLEY_REPS, FIRST_SD
from bot.training.plan import PlannedSet
from bot.training.report import Stage
from bot.training.sets import ASSUMED_TARGET, Ending
from bot.training.state import LIGHTEST_KG, Doubt, State
from bot.training.tiring import tired_by
from bot.training.watch import endurance, see


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


def today(state: State, day: date, done: Sequence[LiftedSet] = (), prescribed: Sequence[PlannedSet] = ()) -> Today:
    """The state carried to `day`, with the sets done so far that day."""
    now = _begin_day(state, day)
    order = 0
    for lifted in done:
        plan = plan_for(lifted, order, prescribed)
        now = _with_set(now, lifted, plan, order)
        order += lifted.stage is Stage.WORK
    return now


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
    loss = loss_of(off)
    back = won_back(state.lost, weeks)
    belief = belief.shifted(back - loss, 0.5 * (back + loss))
    moved = replace(state, day=day, lost=state.lost - back + loss, off_weeks=state.off_weeks + off)
    return Today(moved, belief.new_day(level), doubt=state.doubt, layoff_weeks=weeks if off > 0 else 0.0)


def _with_set(now: Today, lifted: LiftedSet, plan: PlannedSet | None, order: int) -> Today:
    done = (*now.done, lifted)
    if lifted.stage is Stage.WARMUP or lifted.load_kg is None:
        return replace(now, done=done)
    if lifted.stage is not Stage.WORK:
        return replace(now, done=done, tired=now.tired + 0.5 * tired_by(plan, left=0.5))
    state = now.state
    whole = state.whole_kg(lifted.load_kg)
    ending = ending_of(lifted, plan, order)
    belief = now.belief or _first_belief(state, whole, ending)
    seen = see(belief, whole, ending, state.feel, tired=now.tired)
    if not seen.believed:
        return _set_aside(now, replace(now, done=done, belief=seen.belief), belief, whole, ending)
    doubt = replace(now.doubt, open=False) if now.doubt is not None else None
    left = _left_after(seen.belief, whole, ending, now.tired)
    return replace(now, done=done, belief=seen.belief, tired=now.tired + tired_by(plan, left=left), doubt=doubt)


def _left_after(belief: Belief, whole_kg: float, ending: Ending, tired: float) -> float:
    """About how many repetitions were left after the set."""
    half = float(endurance(belief.mean[SLOPE], belief.mean[TIRING], tired))
    could = half * (exp(float(belief.mean[STRENGTH] + belief.mean[FORM])) / whole_kg - 1)
    return max(0.0, could - ending.reps)


def _first_belief(state: State, whole_kg: float, ending: Ending) -> Belief:
    """A belief around the first set itself, or around what a similar lift suggests."""
    level, region = state.facts
    if state.guess is not None:
        mean = max(state.guess.mean_kg + state.body_kg, LIGHTEST_KG)
        return Belief.first(level, region, log(mean), max(0.1, min(0.5, state.guess.sd_kg / mean)))
    left = ending.rir if ending.rir is not None else (ending.target or ASSUMED_TARGET)
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
    half = float(endurance(belief.mean[SLOPE], belief.mean[TIRING], now.tired))
    says = log(whole_kg) + log1p((ending.reps + (ending.rir or 0.0)) / half)
    jump = says - float(belief.mean[STRENGTH] + belief.mean[FORM])
    if now.doubt is not None and _second_time(now.doubt, says, jump, now.state.day):
        nearer = min(jump, jump + now.doubt.strength - says, key=abs)
        moved = belief.shifted(nearer, 0.10 if ending.reps else 0.30)
        seen = see(moved, whole_kg, ending, now.state.feel, tired=now.tired)
        return replace(noted, belief=seen.belief, doubt=None)
    doubt = Doubt(says, now.state.day or date.min, whole_kg - now.state.body_kg, ending.reps)
    return replace(noted, aside=(*now.aside, len(now.done)), doubt=doubt)
