"""What the plan and the session so far say about one exercise: which sets are open, what is planned, what is plausible.

The bounds are those of the reading rules: a load is in reason within 0.6 to 1.6 times the planned load or the last one;
repetitions up to twice the top of the range.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from functools import cached_property

from bot.training.plan import LoadStyle, Measure, PlannedExercise, PlannedSet, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit

LEAST, MOST = Decimal("0.6"), Decimal("1.6")
"""Of the planned load or the last one: outside both, a load is out of reason."""
ALIKE_LEAST, ALIKE_MOST = Decimal("0.75"), Decimal("1.34")
"""Of the planned load or another set's: within, a load is likely of the same exercise (common practice, no source)."""
NEAR_IN_OTHER_UNIT = Decimal("0.025")
"""Of the planned load: what a load told in the other unit may differ from it and be the planned one (common practice,
no source)."""
REPS_MOST = 2
"""Times the top of the range: more is out of reason."""
LITTLE_KG = Decimal(5)
"""Added to a body or taken off it, what is in reason beside whatever the plan adds (common practice, no source)."""
ADDED_KG = Decimal(30)
"""On body weight, what is no further than this from the plan is in reason (common practice, no source)."""
HEAVIEST_KG = Decimal(1000)
"""Without plan or history: more than any gym's bar or stack holds."""
_BOTH = (Side.LEFT, Side.RIGHT)


@dataclass(frozen=True)
class Context:
    """One exercise beside its plan. `done` holds the sets of this exercise only, in the order that they were said."""

    exercise: PlannedExercise
    unit: Unit
    done: tuple[Performed, ...]

    @cached_property
    def worked(self) -> tuple[Performed, ...]:
        """The work sets done."""
        return tuple(p for p in self.done if p.stage is Stage.WORK and p.set is not None)

    @cached_property
    def filled(self) -> frozenset[tuple[int, Side]]:
        """Which sets are done, side by side (a set of both sides fills both)."""
        out = set()
        for p in self.worked:
            assert p.set is not None
            for side in _BOTH if p.side is None else (p.side,):
                out.add((p.set, side))
        return frozenset(out)

    def is_open(self, number: int, side: Side | None = None) -> bool:
        """Whether a set waits: on this side, or (without one) on any."""
        if side is not None:
            return (number, side) not in self.filled
        return (number, Side.LEFT) not in self.filled or (number, Side.RIGHT) not in self.filled

    @cached_property
    def open_sets(self) -> tuple[int, ...]:
        """The prescribed sets not yet done, from 1."""
        return tuple(n for n in range(1, len(self.exercise.sets) + 1) if self.is_open(n))

    @cached_property
    def last_number(self) -> int | None:
        """The set that was said last, by the order of saying."""
        return self.worked[-1].set if self.worked else None

    def planned(self, number: int | None) -> PlannedSet | None:
        """The prescription of a set; of one beyond it, the last."""
        sets = self.exercise.sets
        if not sets:
            return None
        if number is None:
            number = self.open_sets[0] if self.open_sets else len(sets)
        return sets[min(max(number, 1), len(sets)) - 1]

    def planned_load(self, number: int | None) -> Load | None:
        """The planned load of a set."""
        planned = self.planned(number)
        if planned is not None and planned.load is not None:
            return planned.load
        return None

    def range_of(self, number: int | None) -> RepRange:
        """The repetitions asked for; without a prescription any number up to 100."""
        planned = self.planned(number)
        return planned.reps if planned is not None else RepRange(1, 50)

    @property
    def is_timed(self) -> bool:
        """Whether it counts seconds."""
        return self.exercise.measure is Measure.SECONDS

    @property
    def is_per_hand(self) -> bool:
        """Whether its number is that of one dumbbell."""
        return self.exercise.load_style is LoadStyle.PER_HAND

    @property
    def is_bodyweight(self) -> bool:
        """Whether its load is what is added to the body."""
        return self.exercise.load_style is LoadStyle.BODYWEIGHT

    @property
    def takes_load(self) -> bool:
        """Whether a load is kept at all."""
        return self.exercise.load_style is not LoadStyle.NONE

    def is_load_in_reason(self, load: Load, number: int | None, before: Iterable[Load | None], signed: bool) -> bool:
        """Whether a load is in reason beside the plan of the set and the loads before it (last one last).

        `signed`: it was said with its sign, or as assistance or added weight.
        """
        last = next((x for x in reversed(tuple(before)) if x is not None), None)
        beside = [x for x in (self.planned_load(number), last) if x is not None]
        if self.is_bodyweight:
            if not beside:
                return abs(load.kg) <= ADDED_KG * 2
            return any(_is_near_body(load, x, signed) for x in beside)
        if load.thousandths < 0 or (load.thousandths == 0 and any(x.thousandths for x in beside)):
            return False
        beside = [x for x in beside if x.thousandths > 0]
        if not beside:
            return load.kg <= HEAVIEST_KG
        return any(LEAST * x.kg <= load.kg <= MOST * x.kg for x in beside)

    def are_reps_in_reason(self, reps: int, number: int | None) -> bool:
        """Whether repetitions (seconds, metres) are in reason for a set."""
        return 0 < reps <= REPS_MOST * self.range_of(number).high

    def is_likely(self, value: Decimal | None, unit: Unit) -> bool:
        """Whether a bare number may be a load or a count of it."""
        if value is None:
            return True
        if value == int(value) and self.are_reps_in_reason(int(value), None):
            return True
        before = [p.load for p in self.worked]
        return self.takes_load and self.is_load_in_reason(Load.of(value, unit), None, before, signed=False)

    def is_planned(self, load: Load, number: int | None) -> bool:
        """Whether a load is the planned one of a set (of any open set where no number is given).

        Exactly in its unit; in the other unit as near as whole plates and stacks come.
        """
        planned = self.planned_load(number)
        if planned is None or planned.unit is load.unit:
            return planned is not None and planned.kg == load.kg
        return abs(planned.kg - load.kg) <= NEAR_IN_OTHER_UNIT * abs(planned.kg)


def _is_near_body(load: Load, other: Load, signed: bool) -> bool:
    """On body weight: in proportion where both add or both take off; within a bound where one is the bare body."""
    if load.thousandths == 0 or other.thousandths == 0 or (load.thousandths > 0) != (other.thousandths > 0):
        return abs(load.kg - other.kg) <= ADDED_KG and (signed or load.thousandths == 0 or other.thousandths == 0)
    near = signed and abs(load.kg - other.kg) <= LITTLE_KG  # what the body weighs beside it is most of what is lifted
    return near or LEAST * abs(other.kg) <= abs(load.kg) <= MOST * abs(other.kg)
