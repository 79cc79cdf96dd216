"""Why a load was chosen: a closed value of key and arguments. The words are in the wording files."""

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from bot.training.units import Load


class Why(StrEnum):
    """The reasons there are; each value is the key of its words."""

    FIND = "loads-find"
    """Nothing known: find a load."""
    FIND_NEAR = "loads-find-near"
    """Nothing known here, but a similar lift says where to begin."""
    FIND_NEXT = "loads-find-next"
    """Finding, one set further."""
    PLANNED = "loads-planned"
    """First time, at the coach's planned load."""
    UP = "loads-up"
    SAME = "loads-same"
    DOWN = "loads-down"
    REPS_FIRST = "loads-reps-first"
    """The next step is too far: repetitions first."""
    HELD = "loads-held"
    """The coach holds it, or its load is fixed."""
    PAIN = "loads-pain"
    """Not up, because it hurt."""
    BACK = "loads-back"
    """After time off."""
    ASIDE = "loads-aside"
    """The last report was not taken at its word."""
    TODAY = "loads-today"
    """From today's sets, for those that remain."""
    TOP_SHARE = "loads-top-share"
    """A share of the top set."""
    DONE = "loads-done"
    """No set remains."""
    NO_LOAD = "loads-none"
    """Nothing to load."""
    NO_LADDER = "loads-no-ladder"
    """No load is known that the equipment could make."""


Argument = int | str | Decimal | Load


@dataclass(frozen=True, slots=True)
class Reason:
    """A key and what its words may name: the set that decided, and the load now.

    `load` and `reps` are of the set that decided (`left` its reserve as said), `next` is the load now, `low` and `high`
    the repetitions now, `share` whole percent of the top set's `load`, `weeks` time off in whole weeks.
    """

    why: Why
    next: Load | None = None
    load: Load | None = None
    reps: int | None = None
    left: float | None = None
    low: int | None = None
    high: int | None = None
    share: int | None = None
    weeks: int | None = None

    @property
    def key(self) -> str:
        """The words' key: the reason's own, with `-after` where a set decided, `-left` where its effort is too."""
        if self.why not in AFTER_A_SET or self.load is None or self.reps is None or self.next is None:
            return self.why.value
        return f"{self.why.value}-after" if self.left is None else f"{self.why.value}-left"

    @property
    def args(self) -> tuple[tuple[str, Argument], ...]:
        """The arguments that are known, by name; `range` is `8` or `8-10`."""
        span = None if self.low is None or self.high is None else _span(self.low, self.high)
        left = None if self.left is None else Decimal(repr(round(self.left, 2)))
        every: tuple[tuple[str, Argument | None], ...] = (
            ("next", self.next),
            ("load", self.load),
            ("reps", self.reps),
            ("left", left),
            ("range", span),
            ("high", self.high),
            ("share", self.share),
            ("weeks", self.weeks),
        )
        return tuple((name, value) for name, value in every if value is not None)


AFTER_A_SET = (Why.UP, Why.SAME, Why.DOWN, Why.REPS_FIRST, Why.HELD, Why.PAIN, Why.FIND_NEXT, Why.TODAY)
"""Reasons that name the set that decided."""


def _span(low: int, high: int) -> str:
    return str(low) if low == high else f"{low}-{high}"
