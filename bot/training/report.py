"""What was done: a set as performed, and what a session holds so far."""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from bot.training.units import Load


class Stage(StrEnum):
    """What a performed set is in relation to the prescription."""

    WORK = "work"
    DROP = "drop"
    """A lighter continuation without rest."""
    MINI = "mini"
    """A short-rest continuation at the same load."""
    WARMUP = "warmup"


class Side(StrEnum):
    """The side that worked, where each is worked by itself."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, slots=True)
class Performed:
    """A set as done.

    `set` is the prescribed set that it answers, from 1; sets beyond the prescription count on; `None` for a warm-up;
    a drop or mini carries that of its work set. `reps` are seconds or metres where the exercise measures those.
    `rir` (repetitions in reserve, 0 to 10) is `None` where nothing was said about effort: effort is never filled in.
    `side` is `None` on a two-sided exercise for each side alike.
    """

    exercise: str
    set: int | None
    stage: Stage
    load: Load | None
    reps: int
    rir: Decimal | None = None
    side: Side | None = None


SetKey = tuple[str, int]
"""An exercise's name and the number of one of its sets: what a correction replaces whole."""


def without(done: Iterable[Performed], replaced: Iterable[SetKey]) -> tuple[Performed, ...]:
    """The sets that stay when those named are replaced, continuations and both sides with them."""
    gone = set(replaced)
    return tuple(p for p in done if p.set is None or (p.exercise, p.set) not in gone)
