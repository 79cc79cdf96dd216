"""Warm-up steps to the first work set: as few as it needs, on the loads that there are.

How many: by how heavy the set is for who lifts it; by the equipment, since a machine guides the load and a pin is moved
in a second, while a heavy barbell is come up to from the empty bar; and by what was trained before, since muscles that
are warm need no beginning from cold. Common practice, no source, but for the ramps.
"""

from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal

from bot.training.gym import BAR
from bot.training.loads import Loadable
from bot.training.plan import LoadStyle, PlannedExercise, Region, WarmupStep
from bot.training.units import Load

RAMP = ((Decimal("0.50"), 5), (Decimal("0.70"), 3), (Decimal("0.85"), 2))
"""Shares of the work load and repetitions, for heavy work; our own ramp, near the two steps (40 and 80 %) that served
best in the bench press in Ribeiro et al. 2020 (Int J Environ Res Public Health, PMC7558980)."""
LIGHT = ((Decimal("0.60"), 6),)
"""For light or long sets: one step. One of 6 at 80 % was enough for the squat in Ribeiro et al. 2020."""
MEDIUM = ((Decimal("0.50"), 6), (Decimal("0.80"), 3))

HEAVY_SHARE, MEDIUM_SHARE = 0.78, 0.60
"""Shares of the 1RM from which the long and the middle ramp are used; ours (the ramp is meant from 60 %)."""


EMPTY_BAR_REPS = 8
FAR_FROM_EMPTY = 3
"""A first step of so many empty bars is come up to from the empty one."""


def warmup_steps(
    load: Load | None,
    *,
    share: float | None,
    loadable: Loadable,
    load_style: LoadStyle,
    region: Region | None,
    equipment: str = "",
) -> tuple[WarmupStep, ...]:
    """The steps before a first work set at `load`, which is `share` of the 1RM (`None`: not known), on this kind of
    equipment (a key of the client's `Gym`; empty: not known).

    Four at most, for a heavy barbell; two at most on machines and with dumbbells. None for body weight, unloaded work,
    or where the work load is within a step of the lightest that there is; fewer where steps fall together or the work
    load is under twice the lightest (the empty bar).
    """
    if load is None or load.thousandths <= 0 or load_style in (LoadStyle.BODYWEIGHT, LoadStyle.NONE) or not loadable:
        return ()
    ramp = _ramp(share, region)
    if equipment not in (BAR, "") and len(ramp) > len(MEDIUM):
        ramp = MEDIUM
    lightest = loadable.all()[0]
    if load.amount_in(loadable.unit) < 2 * lightest.amount:
        ramp = ramp[-1:] if len(ramp) > 1 else ramp
    steps: list[WarmupStep] = []
    for part, reps in ramp:
        step = loadable.nearest(Load.of(load.amount_in(loadable.unit) * part, loadable.unit))
        if step is None or step.kg >= load.kg * Decimal("0.95") or step.thousandths <= 0:
            continue
        if steps and step.kg <= steps[-1].load.kg:
            continue
        steps.append(WarmupStep(step, reps))
    if equipment == BAR and len(steps) == len(RAMP) and steps[0].load.kg > FAR_FROM_EMPTY * lightest.kg:
        steps.insert(0, WarmupStep(lightest, EMPTY_BAR_REPS))
    return tuple(steps)


def warm_already(exercises: Iterable[PlannedExercise]) -> tuple[PlannedExercise, ...]:
    """The exercises of a session in order, without the first of several steps where all of an exercise's muscles have
    been worked directly before it."""
    warm: set[str] = set()
    found: list[PlannedExercise] = []
    for exercise in exercises:
        is_warm = bool(exercise.muscles) and warm.issuperset(exercise.muscles) and len(exercise.warmup) > 1
        found.append(replace(exercise, warmup=exercise.warmup[1:]) if is_warm else exercise)
        warm.update(exercise.muscles)
    return tuple(found)


def _ramp(share: float | None, region: Region | None) -> tuple[tuple[Decimal, int], ...]:
    if share is None or share < MEDIUM_SHARE:
        return LIGHT
    if share >= HEAVY_SHARE and region is not Region.TRUNK:
        return RAMP
    return MEDIUM
