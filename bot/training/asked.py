"""What a style of choosing may look at, and what it answers."""

from dataclasses import dataclass

from bot.training.exposure import Exposure, LiftedSet
from bot.training.limits import Limits
from bot.training.loads import Loadable
from bot.training.plan import PlannedExercise, PlannedSet, RepRange
from bot.training.reason import Reason, Why
from bot.training.report import Stage
from bot.training.strength import Today
from bot.training.units import Load, Unit

SetChosen = tuple[Load | None, RepRange]


@dataclass(frozen=True, slots=True)
class Chosen:
    """Load and repetitions for each set that remains, and why."""

    sets: tuple[SetChosen, ...]
    reason: Reason
    find: bool = False


@dataclass(frozen=True, slots=True)
class Asked:
    """All that a style may look at."""

    now: Today
    exercise: PlannedExercise
    loadable: Loadable
    limits: Limits
    coach_load: Load | None

    @property
    def work_done(self) -> tuple[LiftedSet, ...]:
        """Today's work sets."""
        return tuple(s for s in self.now.done if s.stage is Stage.WORK)

    @property
    def remaining(self) -> tuple[tuple[int, PlannedSet], ...]:
        """Place (from 0) and plan of the sets that remain."""
        answered = {s.set for s in self.work_done if s.set is not None}
        loose = sum(s.set is None for s in self.work_done)
        left = [(n, plan) for n, plan in enumerate(self.exercise.sets) if n + 1 not in answered]
        return tuple(left[loose:])

    @property
    def with_finish(self) -> tuple[tuple[int, PlannedSet], ...]:
        """Number (from 1) and plan of the sets whose continuations are still to come: those that remain, and the set
        just done where it has none yet."""
        rest = [(n + 1, plan) for n, plan in self.remaining if plan.finish is not None]
        just = self._just_done()
        return tuple(([just] if just is not None else []) + rest)

    def _just_done(self) -> tuple[int, PlannedSet] | None:
        if not self.now.done or self.now.done[-1].stage is not Stage.WORK:
            return None
        number = self.now.done[-1].set or len(self.work_done)
        if not 1 <= number <= len(self.exercise.sets) or self.exercise.sets[number - 1].finish is None:
            return None
        return number, self.exercise.sets[number - 1]

    def finish_loads(self, chosen: Chosen) -> tuple[SetChosen, ...]:
        """The loads that the continuations of `with_finish` follow."""
        by_number = {n + 1: one for (n, _), one in zip(self.remaining, chosen.sets, strict=True)}
        last = self.work_done[-1] if self.work_done else None
        return tuple(
            by_number[n] if n in by_number else (self.load_of(None if last is None else last.load_kg), plan.reps)
            for n, plan in self.with_finish
        )

    @property
    def nothing_known(self) -> bool:
        """No load was ever lifted here."""
        return self.now.belief is None and self.last is None

    @property
    def last(self) -> Exposure | None:
        """The last session that had a load."""
        return next((e for e in reversed(self.now.state.last) if e.heaviest_kg is not None), None)

    def load_of(self, kg: float | None) -> Load | None:
        """A load lifted, as the nearest that the equipment can make."""
        return None if kg is None else self.loadable.nearest(Load.of(repr(kg), Unit.KG))

    def same_for_all(self, load: Load | None, reason: Reason, *, find: bool = False) -> Chosen:
        """The same load for every set that remains, repetitions as planned."""
        return Chosen(tuple((load, plan.reps) for _, plan in self.remaining), reason, find)

    def capped(self, load: Load, place: int) -> Load:
        """At most what the limits allow there; the lightest where even that is more."""
        cap = self.limits.cap_kg(place)
        if float(load.kg) <= cap + 1e-6:
            return load
        return self.loadable.at_most(Load.of(repr(cap + 1e-6), Unit.KG)) or self.loadable.all()[0]

    @property
    def stopped(self) -> Why | None:
        """What forbids a rise, if anything."""
        return Why.HELD if self.limits.held else Why.PAIN if self.limits.hurts else None
