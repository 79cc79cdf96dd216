"""The tracked style: of the loads that can be made, the one that most likely lands, an overshoot costing extra."""

from dataclasses import dataclass
from decimal import Decimal
from math import log

import numpy as np

from bot.training.asked import Asked, Chosen, SetChosen
from bot.training.choice import Aim, Chances, chances, fits_about
from bot.training.exposure import LiftedSet
from bot.training.plan import PlannedSet, RepRange
from bot.training.reason import Reason, Why
from bot.training.report import Stage
from bot.training.rules import bridge
from bot.training.tiring import tired_by
from bot.training.units import Load, Unit

OVER_COST = 0.1
"""What a set that is too heavy costs beyond not landing, as a share of what a landed one is worth. Chosen on simulated
lifters: more costs landed sets and spares few overshoots."""
OFF_COST = 0.02
"""A repetition off the target costs this much: it leads out of where everything is too easy."""
STICK = 0.02
"""Changing last time's load must promise at least this much more; it calms the swings."""
MOST_CANDIDATES = 15
WINDOW = 0.25
"""Loads within this ln share of the one that fits are weighed."""
TOO_FAR = 0.15
"""A next step beyond this share is bridged by repetitions first where the set would be too hard at it."""


@dataclass(frozen=True, slots=True)
class Weighed:
    """A load with its chances and worth."""

    load: Load
    chances: Chances
    worth: float


def tracked(asked: Asked) -> Chosen:
    """Load for each set that remains."""
    sets = [_one(asked, place, plan, aim) for (place, plan), aim in zip(asked.remaining, aims(asked), strict=True)]
    return Chosen(tuple(sets), _why(asked, sets))


def aims(asked: Asked) -> tuple[Aim, ...]:
    """What each set that remains is to be, with the fatigue that those before it will leave."""
    found: list[Aim] = []
    tired, order = asked.now.tired, len(asked.work_done)
    for _, plan in asked.remaining:
        found.append(Aim(plan.reps.low, plan.reps.high, _target(plan), order, tired, asked.now.state.stops_short))
        tired += tired_by(plan, left=_target(plan) or 2.0)
        order += 1
    return tuple(found)


def weigh(asked: Asked, place: int, aim: Aim) -> tuple[Weighed, ...]:
    """The candidate loads with their worth, rising."""
    belief = asked.now.belief
    if belief is None:
        return ()
    loads = _candidates(asked, place, fits_about(belief, aim))
    whole = np.array([asked.now.state.whole_kg(float(load.kg)) for load in loads])
    found = chances(belief, whole, aim, asked.now.state.feel)
    before = _stick_to(asked, place)
    return tuple(
        Weighed(load, chance, _worth(chance) + (STICK if load == before else 0.0))
        for load, chance in zip(loads, found, strict=True)
    )


def _worth(chance: Chances) -> float:
    return chance.lands - OVER_COST * chance.over - OFF_COST * chance.off


def _one(asked: Asked, place: int, plan: PlannedSet, aim: Aim) -> SetChosen:
    weighed = weigh(asked, place, aim)
    if not weighed:
        return None, plan.reps
    cap = asked.limits.cap_kg(place)
    allowed = [w for w in weighed if float(w.load.kg) <= cap + 1e-6]
    best = max(allowed, key=lambda w: (w.worth, -w.load.thousandths)) if allowed else None
    if best is None:
        return asked.capped(weighed[0].load, place), plan.reps
    return _step_too_far(asked, place, plan, best, weighed)


def _step_too_far(asked: Asked, place: int, plan: PlannedSet, best: Weighed, weighed: tuple[Weighed, ...]) -> SetChosen:
    """Repetitions first where the next load is beyond the bound; the load itself once repetitions have earned it."""
    before = asked.limits.before_kg(place)
    cap = asked.limits.cap_kg(place)
    above = asked.loadable.above(best.load)
    if before is None or above is None or asked.limits.never_up or float(above.kg) <= cap + 1e-6:
        return best.load, plan.reps
    if best.load != asked.loadable.at_most(Load.of(repr(cap + 1e-6), Unit.KG)):
        return best.load, plan.reps
    if asked.loadable.at_most(Load.of(repr(before + 1e-6), Unit.KG)) != best.load:
        return best.load, plan.reps
    next_one = next((w for w in weighed if w.load == above), None)
    jump = asked.now.state.whole_kg(float(above.kg)) / asked.now.state.whole_kg(float(best.load.kg)) - 1
    if next_one is not None and next_one.worth > best.worth and _earned(asked, before, plan, jump):
        return above, plan.reps
    if best.chances.easy < 0.5:
        return best.load, plan.reps
    return best.load, RepRange(plan.reps.low, max(plan.reps.high, bridge(plan.reps.low, jump)))


def _earned(asked: Asked, before_kg: float, plan: PlannedSet, jump: float) -> bool:
    """Whether a step beyond the bound was earned at the load before it, last time or today: the top of the range was
    reached, and with the reserve that was said so many repetitions that the range's bottom can still be made after it
    (`bridge`). Effort that was not said earns nothing beyond the repetitions themselves."""
    sets = asked.work_done or (asked.last.sets if asked.last is not None else ())
    at = [s for s in sets if s.load_kg is not None and abs(s.load_kg - before_kg) < 1e-6]
    enough = bridge(plan.reps.low, jump)
    return bool(at) and all(s.reps >= plan.reps.high and s.reps + (s.rir or 0) >= enough for s in at)


def _candidates(asked: Asked, place: int, fits_kg: float) -> list[Load]:
    """The loads near what fits, the cap's own neighbourhood included; never none."""
    state = asked.now.state
    cap = asked.limits.cap_kg(place)
    middle = min(fits_kg, state.whole_kg(cap)) if cap < 1e9 else fits_kg
    around = asked.loadable.nearest(Load.of(_decimal(middle - state.body_kg), Unit.KG))
    loads = asked.loadable.all()
    at = loads.index(around) if around is not None else 0
    first, last = max(0, at - MOST_CANDIDATES // 2), at + MOST_CANDIDATES // 2 + 1
    near = [load for load in loads[first:last] if abs(log(state.whole_kg(float(load.kg)) / middle)) <= WINDOW]
    return near or [loads[at]]


def _decimal(value: float) -> Decimal:
    return Decimal(repr(round(value, 6)))


def _stick_to(asked: Asked, place: int) -> Load | None:
    return None if asked.now.layoff_weeks else asked.load_of(asked.limits.before_kg(place))


def _target(plan: PlannedSet) -> float | None:
    return None if plan.rir is None else float(plan.rir)


def _why(asked: Asked, sets: list[SetChosen]) -> Reason:
    first = next((load for load, _ in sets if load is not None), None)
    reps = asked.remaining[0][1].reps if asked.remaining else None
    last = _last_set(asked)
    load = asked.load_of(last.load_kg) if last is not None else None
    why = _kind(asked, sets, load, first)
    return Reason(
        why,
        next=first,
        load=load,
        reps=None if last is None else last.reps,
        left=None if last is None else last.rir,
        low=None if reps is None else reps.low,
        high=None if not sets else sets[0][1].high,
        weeks=round(asked.now.layoff_weeks) if why is Why.BACK else None,
    )


def _kind(asked: Asked, sets: list[SetChosen], load: Load | None, first: Load | None) -> Why:
    if asked.limits.finding and asked.work_done:
        return Why.FIND_NEXT
    if asked.now.aside or (asked.now.doubt is not None and asked.now.doubt.open and not asked.work_done):
        return Why.ASIDE
    if asked.stopped is not None:
        return asked.stopped
    if asked.work_done:
        return Why.TODAY
    if asked.now.layoff_weeks:
        return Why.BACK
    if asked.remaining and sets[0][1] != asked.remaining[0][1].reps:
        return Why.REPS_FIRST
    if load is None or first is None or load == first:
        return Why.SAME
    return Why.UP if first.kg > load.kg else Why.DOWN


def _last_set(asked: Asked) -> LiftedSet | None:
    """The set that decided: today's last work set, else last time's set in the same place."""
    work = [s for s in asked.now.done if s.stage is Stage.WORK]
    if work:
        return work[-1]
    if asked.last is None or not asked.last.sets:
        return None
    place = asked.remaining[0][0] if asked.remaining else 0
    return next(
        (s for s in asked.last.sets if s.set == place + 1), asked.last.sets[min(place, len(asked.last.sets) - 1)]
    )
