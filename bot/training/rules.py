"""The styles that a coach may set beside the tracked one, each by its published rule."""

from collections.abc import Sequence
from math import ceil

from bot.training.asked import Asked, Chosen, SetChosen
from bot.training.equations import EPLEY
from bot.training.exposure import Exposure, LiftedSet
from bot.training.plan import PlannedSet, RepRange
from bot.training.reason import Reason, Why
from bot.training.units import Load, Unit


def bridge(low: int, jump: float) -> int:
    """The repetitions from which a rise of `jump` (a share) still leaves `low`, by Epley: 30((1 + j)(1 + low/30) - 1).

    8 after 10 % takes 12; 10 after 25 % takes 20.
    """
    return ceil(EPLEY.reps((1 + jump) * (1 + low / 30)) - 1e-9)


def held(asked: Asked) -> Chosen:
    """The load stays: the coach's, else the planned, else the last."""
    sets = []
    for place, plan in asked.remaining:
        wanted = asked.coach_load or plan.load or _last_load(asked, place)
        load = None if wanted is None else asked.loadable.nearest(wanted)
        if load is not None and asked.limits.never_up:
            load = asked.capped(load, place)
        sets.append((load, plan.reps))
    first = next((load for load, _ in sets if load is not None), None)
    return Chosen(tuple(sets), Reason(asked.stopped or Why.HELD, next=first))


def double(asked: Asked) -> Chosen:
    """Double progression: repetitions to the top of the range in every set, then one load up.

    The range is stretched upwards where the next load would be too far (`bridge`). After two sessions in a row with a
    set below the range, one load down (common practice, no source).
    """
    last = asked.last
    if last is None or asked.work_done:
        return _stay(asked)
    load = asked.load_of(last.heaviest_kg)
    if load is None:
        return _stay(asked)
    at_load = [s for s in last.sets if s.load_kg == last.heaviest_kg]
    highs = [p.reps.high for _, p in asked.remaining] or [0]
    low, high = min((p.reps.low for _, p in asked.remaining), default=0), max(highs)
    above = asked.loadable.above(load)
    needed = high if above is None else max(high, _bridge_to(asked, load, above, low))
    every = len(at_load) >= len(asked.exercise.sets) and len(at_load) == len(last.sets)
    if every and above is not None and all(s.reps >= needed for s in at_load):
        return _up(asked, above, last, load)
    if every and needed > high and all(s.reps >= high for s in at_load) and asked.stopped is None:
        return _reps_first(asked, load, needed, at_load)
    if _short_twice(asked, low):
        down = asked.loadable.below(load)
        if down is not None:
            return asked.same_for_all(down, _reason(Why.DOWN, asked, last, load, down))
    return asked.same_for_all(load, _reason(asked.stopped or Why.SAME, asked, last, load, load))


def fixed(asked: Asked) -> Chosen:
    """A fixed step after two sessions over target: at least two repetitions above the goal in the last set, twice in a
    row at the same load (the 2-for-2 rule: Baechle & Earle, Essentials of Strength Training and Conditioning).

    The goal is the top of the range; repetitions said to be left beyond the target count as made.
    """
    last = asked.last
    if last is None or asked.work_done:
        return _stay(asked)
    load = asked.load_of(last.heaviest_kg)
    plan = asked.exercise.sets[-1] if asked.exercise.sets else None
    if load is None or plan is None:
        return _stay(asked)
    two = asked.now.state.last[-2:]
    over = len(two) == 2 and all(_over(e, plan) for e in two) and two[0].heaviest_kg == two[1].heaviest_kg
    above = _a_step_up(asked, load)
    if over and above is not None:
        return _up(asked, above, last, load)
    return asked.same_for_all(load, _reason(asked.stopped or Why.SAME, asked, last, load, load))


def percent(asked: Asked, top: Chosen) -> Chosen:
    """The first set as tracked, the others a share of it: the coach's percent, else the planned loads' own shares, else
    Epley's for their repetitions with the reserve asked for."""
    plans = asked.exercise.sets
    if not plans or not asked.remaining:
        return top
    top_load = _top_load(asked, top)
    if top_load is None:
        return top
    sets: list[SetChosen] = []
    share = 1.0
    for place, plan in asked.remaining:
        share = 1.0 if place == 0 else _share(plans[0], plan)
        wanted = Load.of(repr(float(top_load.kg) * share), Unit.KG)
        load = asked.loadable.nearest(wanted) if place else top_load
        sets.append((None if load is None else asked.capped(load, place), plan.reps))
    first = sets[0][0]
    if len(sets) == 1 and asked.remaining[0][0] == 0:
        return top
    return Chosen(tuple(sets), Reason(Why.TOP_SHARE, next=first, load=top_load, share=round(100 * share)))


def _a_step_up(asked: Asked, load: Load) -> Load | None:
    """The load after this one: the coach's step further, as near as the equipment comes without going beyond it, at
    least the next."""
    above, step = asked.loadable.above(load), asked.exercise.step
    if above is None or step is None:
        return above
    wanted = Load.of(load.amount_in(above.unit) + step.amount_in(above.unit), above.unit)
    reached = asked.loadable.at_most(wanted)
    return above if reached is None or reached.kg < above.kg else reached


def _top_load(asked: Asked, top: Chosen) -> Load | None:
    if asked.work_done:
        return asked.load_of(asked.work_done[0].load_kg)
    return top.sets[0][0]


def _share(top: PlannedSet, plan: PlannedSet) -> float:
    if plan.percent is not None:
        return float(plan.percent) / 100
    if top.load is not None and plan.load is not None and top.load.thousandths > 0:
        return min(1.0, max(0.0, float(plan.load.kg / top.load.kg)))
    return min(1.0, EPLEY.ratio(_reps_in_all(top)) / EPLEY.ratio(_reps_in_all(plan)))


def _reps_in_all(plan: PlannedSet) -> float:
    return (plan.reps.low + plan.reps.high) / 2 + (float(plan.rir) if plan.rir is not None else 0.0)


def _over(session: Exposure, plan: PlannedSet) -> bool:
    if not session.sets:
        return False
    final = session.sets[-1]
    spare = max(0.0, (final.rir or 0.0) - float(plan.rir)) if plan.rir is not None else 0.0
    return final.reps + spare >= plan.reps.high + 2


def _bridge_to(asked: Asked, load: Load, above: Load, low: int) -> int:
    whole = asked.now.state.whole_kg(float(load.kg))
    return bridge(low, asked.now.state.whole_kg(float(above.kg)) / whole - 1)


def _short_twice(asked: Asked, low: int) -> bool:
    two = asked.now.state.last[-2:]
    return (
        len(two) == 2
        and two[0].heaviest_kg == two[1].heaviest_kg
        and all(any(s.reps < low for s in e.sets) for e in two)
    )


def _up(asked: Asked, above: Load, last: Exposure, load: Load) -> Chosen:
    """One load up, unless something forbids it, or it is beyond the bound and the repetitions don't bridge it yet."""
    if asked.stopped is not None:
        return asked.same_for_all(load, _reason(asked.stopped, asked, last, load, load))
    place, plan = asked.remaining[0]
    if float(above.kg) > asked.limits.cap_kg(place) + 1e-6:
        needed = _bridge_to(asked, load, above, plan.reps.low)
        if any(s.reps < needed for s in last.sets):
            return _reps_first(asked, load, needed, last.sets)
    return asked.same_for_all(above, _reason(Why.UP, asked, last, load, above))


def _reps_first(asked: Asked, load: Load, needed: int, done: Sequence[LiftedSet]) -> Chosen:
    sets = tuple((load, RepRange(plan.reps.low, max(plan.reps.high, needed))) for _, plan in asked.remaining)
    reps = min(s.reps for s in done)
    return Chosen(sets, Reason(Why.REPS_FIRST, next=load, load=load, reps=reps, high=needed))


def _stay(asked: Asked) -> Chosen:
    """The load of today's last set, else of last time."""
    kg = asked.limits.today_kg
    load = asked.load_of(kg) if kg is not None else None
    sets = tuple((load or _last_load(asked, place), plan.reps) for place, plan in asked.remaining)
    first = next((one for one, _ in sets if one is not None), None)
    return Chosen(sets, Reason(asked.stopped or Why.SAME, next=first))


def _last_load(asked: Asked, place: int) -> Load | None:
    kg = asked.limits.before_kg(place)
    return asked.load_of(kg)


def _reason(why: Why, asked: Asked, last: Exposure, load: Load, chosen: Load) -> Reason:
    final = next((s for s in reversed(last.sets)), None)
    plan = asked.exercise.sets[0] if asked.exercise.sets else None
    return Reason(
        why,
        next=chosen,
        load=load,
        reps=None if final is None else final.reps,
        left=None if final is None else final.rir,
        low=None if plan is None else plan.reps.low,
        high=None if plan is None else plan.reps.high,
    )
