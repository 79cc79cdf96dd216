"""Sets as lifted, in the engine's own small shape, and what is kept of a past session."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from typing import ClassVar

from bot.training.report import Performed, Stage


@dataclass(frozen=True, slots=True)
class LiftedSet:
    """A set as lifted: load in kg (`None` where none was said), repetitions, reserve (`None` where nothing was said).

    `set` is the prescribed set that it answers, from 1; `None` takes the next in order.
    """

    load_kg: float | None
    reps: int
    rir: float | None = None
    stage: Stage = Stage.WORK
    set: int | None = None

    @classmethod
    def of(cls, performed: Performed) -> "LiftedSet":
        """From the record."""
        return cls(
            None if performed.load is None else float(performed.load.kg),
            performed.reps,
            None if performed.rir is None else float(performed.rir),
            performed.stage,
            performed.set,
        )


def lifted_sets(performed: Iterable[Performed]) -> tuple[LiftedSet, ...]:
    """One exercise's sets, in order; of a set done by both sides the weaker one counts (fewer repetitions left)."""
    merged: list[tuple[Performed, LiftedSet]] = []
    for one in performed:
        lifted = LiftedSet.of(one)
        place = next((n for n, (other, _) in enumerate(merged) if _other_side(one, other)), None)
        if place is None:
            merged.append((one, lifted))
        else:
            merged[place] = (one, min(merged[place][1], lifted, key=_strength))
    return tuple(lifted for _, lifted in merged)


def _other_side(one: Performed, other: Performed) -> bool:
    return (
        one.set is not None
        and (one.set, one.stage) == (other.set, other.stage)
        and one.side is not None
        and other.side is not None
        and one.side is not other.side
    )


def _strength(lifted: LiftedSet) -> tuple[float, float]:
    return (lifted.reps + (lifted.rir or 0.0), lifted.load_kg or 0.0)


@dataclass(frozen=True, slots=True)
class Mark:
    """The best work set of a session: what is left of it when the session itself is no longer looked at."""

    MOST: ClassVar[int] = 6

    day: date
    load_kg: float
    reps: int
    rir: float | None = None


@dataclass(frozen=True, slots=True)
class Exposure:
    """A past session of one exercise: its work sets that were believed (at most twelve), and the pain said with it."""

    MOST_SETS: ClassVar[int] = 12

    day: date
    sets: tuple[LiftedSet, ...]
    pain: int | None = None

    @property
    def heaviest_kg(self) -> float | None:
        """The heaviest work load."""
        return max((s.load_kg for s in self.sets if s.load_kg is not None), default=None)
