"""From a workout to the session of a day: loads put in, warm-ups, minutes; and the same again while it is under way."""

from collections.abc import Container, Mapping
from dataclasses import replace
from datetime import date
from decimal import Decimal

from bot.training.after_break import FULL, Ease, eased
from bot.training.catalogue_session import with_known_aliases
from bot.training.exposure import lifted_sets
from bot.training.gym import loadable
from bot.training.orders import NO_ORDERS, Orders, ordered
from bot.training.people import Gym, Workout
from bot.training.plan import PlannedExercise, PlannedSession
from bot.training.progress import NextLoads, next_loads
from bot.training.report import Performed
from bot.training.session import Session
from bot.training.strength import Estimate, State, after_session, begin
from bot.training.swap_start import guess_for
from bot.training.timing import session_minutes
from bot.training.units import Load, Unit
from bot.training.warmup import warm_already


def fresh_state(exercise: PlannedExercise) -> State:
    """Nothing known yet, but what a similar lift says where it took another's place."""
    guess = exercise.guess
    like = None if guess is None else Estimate(float(guess.mean_kg), float(guess.sd_kg))
    return begin(level=None, region=exercise.region, load_style=exercise.load_style, like=like)


def plan_session(
    workout: Workout,
    gym: Gym,
    *,
    strengths: Mapping[str, State],
    held: Container[str],
    day: date,
    orders: Orders = NO_ORDERS,
    ease: Ease = FULL,
) -> PlannedSession:
    """The session that somebody is asked to do on this day: loads from what is known, on their own equipment, as far
    as the coach's orders let them go. `held` are the exercises whose loads must not go up; `ease` makes it easier.

    Each exercise goes by the catalogue's names for it too, where they are clear within the session.
    """
    exercises = warm_already(
        replace(
            with_loads(e, gym, next_for(e, gym, strengths.get(e.name), held=e.name in held, day=day, orders=orders)),
            reason=_after(strengths.get(e.name), gym),
        )
        for e in _begun(with_known_aliases(eased(ordered(workout, orders, day=day), ease).exercises), strengths, day)
    )
    return PlannedSession(workout.title, exercises, session_minutes(exercises))


def _begun(
    exercises: tuple[PlannedExercise, ...], strengths: Mapping[str, State], day: date
) -> tuple[PlannedExercise, ...]:
    """The exercises, those never done before with what a lift like them says."""
    return tuple(
        e if e.name in strengths or e.guess is not None else replace(e, guess=guess_for(e, strengths, day))
        for e in exercises
    )


def next_for(
    exercise: PlannedExercise,
    gym: Gym,
    state: State | None,
    *,
    held: bool,
    day: date,
    done: tuple[Performed, ...] = (),
    pain: int | None = None,
    orders: Orders = NO_ORDERS,
) -> NextLoads:
    """The loads of the sets that remain after `done`; of all sets where nothing is done yet."""
    return next_loads(
        state or fresh_state(exercise),
        exercise,
        loadable(gym, exercise.equipment),
        today=day,
        done=lifted_sets(done),
        hold=held,
        pain=pain,
        bound=orders.bound,
        coach_load=orders.load_for(exercise.name, last_done=None if state is None else state.day),
    )


def under_way(
    session: Session,
    exercise: PlannedExercise,
    gym: Gym,
    before: State | None,
    *,
    held: bool,
    orders: Orders = NO_ORDERS,
) -> PlannedExercise:
    """The exercise with the loads of its remaining sets as today's sets suggest; as planned where none is done."""
    done = tuple(p for p in session.done if p.exercise == exercise.name)
    reported = {p.set for p in session.work_done(exercise.name)}
    still_open = [n for n in range(len(exercise.sets)) if n + 1 not in reported]
    if not reported or not still_open:
        return exercise
    coming = next_for(exercise, gym, before, held=held, day=session.day, done=done, orders=orders)
    sets = list(exercise.sets)
    for place, after in zip(reversed(still_open), reversed(coming.sets), strict=False):
        sets[place] = replace(sets[place], load=_this_week(exercise, gym, after.load) or sets[place].load)
    return replace(exercise, sets=tuple(sets))


def strength_after(session: Session, exercise: PlannedExercise, before: State | None, pain: int | None) -> State:
    """The state after this session's sets of the exercise, from the state before it.

    A week of other loads leaves it as it was, unless it hurt: such sets end far from failure and tell little, and the
    next ordinary session goes on from the last ordinary one.
    """
    if exercise.load_percent is not None and not pain:
        return before or fresh_state(exercise)
    done = tuple(p for p in session.done if p.exercise == exercise.name)
    start = before or fresh_state(exercise)
    return after_session(start, day=session.day, sets=lifted_sets(done), prescribed=exercise.sets, pain=pain)


def _after(state: State | None, gym: Gym) -> str:
    """Which set the loads follow from, in notation: `60 kg x 8, 2 left, 2027-01-11`; empty where there is none."""
    mark = state.marks[-1] if state is not None and state.marks else None
    if mark is None:
        return ""
    amount = (Load.of(repr(mark.load_kg), Unit.KG).amount_in(gym.unit) * 4).to_integral_value() / 4
    left = "" if mark.rir is None else f", {mark.rir:g} left"
    load = Load.of(amount, gym.unit)
    return f"{load.amount} {load.unit.value} x {mark.reps}{left}, {mark.day.isoformat()}"


def with_loads(exercise: PlannedExercise, gym: Gym, coming: NextLoads) -> PlannedExercise:
    """The exercise with the loads, repetitions and warm-up that come next."""
    sets = tuple(
        replace(planned, load=_this_week(exercise, gym, after.load or planned.load), reps=after.reps)
        for planned, after in zip(exercise.sets, coming.sets, strict=True)
    )
    first = next((s.load for s in sets if s.load is not None), None)
    warmup = tuple(w for w in coming.warmup if first is None or w.load.kg < first.kg)
    return replace(exercise, sets=sets, warmup=warmup)


def _this_week(exercise: PlannedExercise, gym: Gym, load: Load | None) -> Load | None:
    """The load as a lighter week makes it: the heaviest that the equipment has within the share.

    Assistance (below zero) stays: a share of it would be harder.
    """
    if load is None or exercise.load_percent is None or load.thousandths <= 0:
        return load
    wanted = Load.of(load.amount * min(exercise.load_percent, Decimal(100)) / 100, load.unit)
    there = loadable(gym, exercise.equipment)
    return there.at_most(wanted) or (there.all()[0] if there else wanted)
