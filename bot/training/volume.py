"""A week's work in numbers: hard sets by muscle, tonnage, best sets.

A hard set counts 1 for the muscles that it works directly and 0.5 for those that it works indirectly: the "fractional"
count that a meta-regression of 67 studies found to fit best (Pelland et al. 2024, preprint, SportRxiv). A drop or a
block of mini sets belongs to its work set: extended by them it still counts as one; there is no published rule (our
choice, the cautious one).
"""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import Performed, Side, Stage
from bot.training.units import Unit

INDIRECT = Decimal("0.5")


@dataclass(frozen=True, slots=True)
class Done:
    """A set with the exercise as it was prescribed."""

    exercise: PlannedExercise
    performed: Performed


def hard_sets(done: Iterable[Done]) -> dict[str, Decimal]:
    """Hard sets by muscle. One side of a two-sided exercise counts a half: left and right are one set."""
    total: dict[str, Decimal] = defaultdict(Decimal)
    for item in done:
        if item.performed.stage is not Stage.WORK:
            continue
        share = Decimal(1) if item.performed.side is None else INDIRECT
        for muscle in item.exercise.muscles:
            total[muscle] += share
        for muscle in item.exercise.muscles_indirect:
            total[muscle] += share * INDIRECT
    return dict(total)


def planned_sets(exercises: Iterable[PlannedExercise]) -> dict[str, Decimal]:
    """Hard sets by muscle as prescribed."""
    total: dict[str, Decimal] = defaultdict(Decimal)
    for exercise in exercises:
        for muscle in exercise.muscles:
            total[muscle] += len(exercise.sets)
        for muscle in exercise.muscles_indirect:
            total[muscle] += len(exercise.sets) * INDIRECT
    return dict(total)


def tonnage(done: Iterable[Done], unit: Unit) -> Decimal:
    """Loads times repetitions, warm-ups left out, in `unit`, to the nearest whole one.

    Two dumbbells count twice; each side of a two-sided set counts; body weight itself does not (it is not known).
    """
    total = Decimal(0)
    for item in done:
        p = item.performed
        if p.load is None or p.stage is Stage.WARMUP or p.load.thousandths < 0:
            continue
        hands = 2 if item.exercise.load_style is LoadStyle.PER_HAND else 1
        sides = item.exercise.sides if p.side is None else 1
        total += p.load.amount_in(unit) * p.reps * hands * sides
    return total.quantize(Decimal(1))


def best_of(done: Iterable[Done]) -> tuple[Done, ...]:
    """The heaviest work set of each loaded exercise, repetitions deciding between equal loads, in the order met."""
    best: dict[str, Done] = {}
    for item in done:
        p = item.performed
        if p.stage is not Stage.WORK or p.load is None or p.side is Side.RIGHT:
            continue
        kept = best.get(p.exercise)
        if kept is None or _weight(item) > _weight(kept):
            best[p.exercise] = item
    return tuple(best.values())


def _weight(item: Done) -> tuple[Decimal, int]:
    load = item.performed.load
    return (load.kg if load else Decimal(0), item.performed.reps)
