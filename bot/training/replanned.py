"""Why the session of a day stands otherwise than it was sent: another exercise, less time, a set more, or back to
what it was."""

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum


class Trading(StrEnum):
    """What was given for time, in the order in which it goes."""

    OPTIONAL = "optional"
    """Sets of optional work are left out."""
    PAIRED = "paired"
    """Two exercises are done in turn; each muscle rests as long as planned."""
    TURNED = "turned"
    """A set is turned into a drop or mini sets of the one before."""
    LOWER = "lower"
    """Sets of a lower priority are left out."""
    SETS = "sets"
    """Sets of what matters most are left out, not the first ones."""
    TOP = "top"
    """An exercise of what matters most is left out, its first set with it."""


@dataclass(frozen=True, slots=True)
class Trade:
    """One thing given: the exercises that it is about (two for a pair) and how many sets."""

    kind: Trading
    exercises: tuple[str, ...]
    sets: int


@dataclass(frozen=True, slots=True)
class Instead:
    """`into` has taken the place of `exercise`, as far as no sets of it were reported."""

    exercise: str
    into: str


@dataclass(frozen=True, slots=True)
class Shorter:
    """What was left had to fit `minutes`; `given_up` are the hard sets by muscle that went."""

    minutes: int
    trades: tuple[Trade, ...]
    given_up: tuple[tuple[str, Decimal], ...] = ()


@dataclass(frozen=True, slots=True)
class SetMore:
    """A set more of `exercise`, for what was given for time earlier in the week."""

    exercise: str


@dataclass(frozen=True, slots=True)
class AsBefore:
    """The last change is taken back: the plan stands as it did before it."""


Otherwise = Instead | Shorter | SetMore
Why = Instead | Shorter | SetMore | AsBefore
