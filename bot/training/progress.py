"""What comes next on one exercise: loads for the sets that remain, with a reason, from the kept state.

The chat and the line filter both call `next_loads`; each style that a coach may set is a function in `rules`.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from bot.training.asked import Asked, Chosen
from bot.training.equations import EPLEY
from bot.training.exposure import LiftedSet
from bot.training.limits import Limits
from bot.training.loads import Loadable, drop_loads
from bot.training.plan import Drop, LoadRule, LoadStyle, Measure, Mini, PlannedExercise, RepRange, WarmupStep
from bot.training.reason import Reason, Why
from bot.training.rules import double, fixed, held, percent
from bot.training.strength import Estimate, State, Today, estimate_of, today
from bot.training.tracked import tracked
from bot.training.units import Load, Unit
from bot.training.warmup import warmup_steps

USUAL_BOUND = Decimal("0.10")
"""The most that a load may rise in one step: the upper end of the 2 to 10 % of the ACSM position stand (Ratamess et al.
2009, Med Sci Sports Exerc 41:687-708)."""


@dataclass(frozen=True, slots=True)
class NextSet:
    """A set that remains: its load (`None`: find one, or nothing to load), repetitions and target reserve."""

    load: Load | None
    reps: RepRange
    rir: Decimal | None


@dataclass(frozen=True, slots=True)
class FinishLoads:
    """The loads of a set's continuations; `set` counts the prescribed sets from 1."""

    set: int
    loads: tuple[Load, ...]


@dataclass(frozen=True, slots=True)
class NextLoads:
    """The answer: `sets` and `finish` are of the sets that remain. `find`: the client must find a load first."""

    sets: tuple[NextSet, ...]
    finish: tuple[FinishLoads, ...]
    e1rm: Estimate | None
    warmup: tuple[WarmupStep, ...]
    reason: Reason
    find: bool


def next_loads(
    state: State,
    exercise: PlannedExercise,
    loadable: Loadable,
    *,
    today: date,
    done: Sequence[LiftedSet] = (),
    hold: bool = False,
    pain: int | None = None,
    bound: Decimal = USUAL_BOUND,
    coach_load: Load | None = None,
) -> NextLoads:
    """The loads of the sets that remain after `done` (today's sets of this exercise, in order).

    `hold`: never up. `pain`: today's score; the last session's counts too. `bound`: the most that a load may rise in
    one step, as a share. `coach_load`: what the coach set, before anything else.
    """
    now = _today(state, today, done, exercise)
    asked = Asked(
        now, exercise, loadable, Limits.of(now, exercise.sets, hold=hold, pain=pain, bound=float(bound)), coach_load
    )
    chosen = _choose(asked)
    sets = tuple(
        NextSet(load, reps, plan.rir) for (_, plan), (load, reps) in zip(asked.remaining, chosen.sets, strict=True)
    )
    estimate = estimate_of(now) if _has_strength(exercise) else None
    return NextLoads(
        sets,
        _finish(asked, chosen),
        estimate,
        () if asked.work_done else _warmup(asked, sets, estimate),
        chosen.reason,
        chosen.find,
    )


def _today(state: State, day: date, done: Sequence[LiftedSet], exercise: PlannedExercise) -> Today:
    return today(state, day, done, exercise.sets)


def _has_strength(exercise: PlannedExercise) -> bool:
    return exercise.measure is Measure.REPS and exercise.load_style is not LoadStyle.NONE


def _choose(asked: Asked) -> Chosen:
    if not asked.remaining:
        return Chosen((), Reason(Why.DONE))
    if asked.exercise.load_style is LoadStyle.NONE:
        return asked.same_for_all(None, Reason(Why.NO_LOAD))
    if not asked.loadable:
        return asked.same_for_all(None, Reason(Why.NO_LADDER))
    if asked.coach_load is not None:
        return held(asked)
    if asked.nothing_known:
        return _first(asked)
    match asked.exercise.load_rule:
        case LoadRule.TRACKED:
            return tracked(asked) if _has_strength(asked.exercise) else double(asked)
        case LoadRule.DOUBLE:
            return double(asked)
        case LoadRule.FIXED:
            return fixed(asked)
        case LoadRule.PERCENT:
            return percent(asked, tracked(asked))
        case LoadRule.HELD:
            return held(asked)


def _first(asked: Asked) -> Chosen:
    """Nothing known: the coach's planned load where there is one, else the client finds one."""
    if any(plan.load is not None for _, plan in asked.remaining):
        sets = tuple((None if p.load is None else asked.loadable.at_most(p.load), p.reps) for _, p in asked.remaining)
        first = next((load for load, _ in sets if load is not None), None)
        if first is not None:
            return Chosen(sets, Reason(Why.PLANNED, next=first), find=False)
    reps = asked.remaining[0][1].reps
    near = _near(asked)
    why = Why.FIND if near is None else Why.FIND_NEAR
    return asked.same_for_all(None, Reason(why, next=near, low=reps.low, high=reps.high), find=True)


def _near(asked: Asked) -> Load | None:
    """Where to begin to look, from a similar lift: a standard deviation below what it suggests, and never above it."""
    guess = asked.now.state.guess
    if guess is None or guess.mean_kg <= guess.sd_kg:
        return None
    plan = asked.remaining[0][1]
    in_all = plan.reps.high + (2.0 if plan.rir is None else float(plan.rir))
    cautious = EPLEY.load(guess.mean_kg - guess.sd_kg, in_all)
    return asked.loadable.at_most(Load.of(repr(cautious), Unit.KG))


def _finish(asked: Asked, chosen: Chosen) -> tuple[FinishLoads, ...]:
    found: list[FinishLoads] = []
    for (number, plan), (load, _) in zip(asked.with_finish, asked.finish_loads(chosen), strict=True):
        if load is None:
            continue
        match plan.finish:
            case Drop() as drop:
                found.append(FinishLoads(number, drop_loads(load, drop, asked.loadable)))
            case Mini():
                found.append(FinishLoads(number, (load,)))
            case None:
                pass
    return tuple(found)


def _warmup(asked: Asked, sets: Sequence[NextSet], estimate: Estimate | None) -> tuple[WarmupStep, ...]:
    first = next((s.load for s in sets if s.load is not None), None)
    share = None if first is None or estimate is None or estimate.mean_kg <= 0 else float(first.kg) / estimate.mean_kg
    return warmup_steps(
        first,
        share=share,
        loadable=asked.loadable,
        load_style=asked.exercise.load_style,
        region=asked.exercise.region,
        equipment=asked.exercise.equipment,
    )
