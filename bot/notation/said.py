"""Sets as they were said, before the plan completes them."""

from dataclasses import dataclass, field
from decimal import Decimal

from bot.notation.answer import AskKind, Span
from bot.notation.quick import quick
from bot.training.report import Side, Stage
from bot.training.units import Load


@quick
class SaidLoad:
    """A load as said: where, and whether its sign or its being one dumbbell was said. `None` repeats the set before."""

    load: Load | None
    start: int
    end: int
    signed: bool = False
    hand: bool = False
    number_at: Span | None = field(default=None, compare=False)
    """Where its number stands in a list typed as one."""
    unit_at: Span | None = field(default=None, compare=False)
    """Where its unit was said, with it or once for the message."""
    unit_said: bool = False
    halved: bool = False


@quick
class Words:
    """Where the words of a set's values stand (folded text); `None` where no words say them."""

    reps: Span | None = None
    sets: Span | None = None
    effort: Span | None = None
    side: Span | None = None
    number: Span | None = None
    stage: Span | None = None
    count: int = 1
    """How many sets alike the words of `sets` said."""
    spaced: bool = False
    """Whether only a space stands before its repetitions."""


@quick
class SaidSet:
    """One set (or `count` alike) as said. `reps` is `None` where they repeat the set before or are the plan's."""

    stage: Stage
    start: int
    end: int
    load: SaidLoad | None = None
    reps: int | None = None
    count: int = 1
    side: Side | None = None
    rir: Decimal | None = None
    label: int | None = None
    same: bool = False
    """All of the set before, repeated."""
    like: int | None = None
    """The number of the set that is repeated, where it is said: `same as set 1`."""
    planned: bool = False
    """As the plan has it: `count` 0 is all that is open."""
    rates_all: bool = False
    """Of sets as planned: whether the effort is of each, not of the last one."""
    from_plan: bool = False
    """Repetitions that the plan fixes."""
    entry: int = 0
    """Which entry of the message it came from."""
    words: Words = field(default=Words(), compare=False)

    def __hash__(self) -> int:
        """By a few of its values: each reading in the making is looked up with all its sets."""
        return hash((self.start, self.end, self.reps, self.count))


@quick
class Doubt:
    """Why a reading cannot be stored as it is, and where its words stand (folded text)."""

    kind: AskKind
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Candidate:
    """One way to read a stretch of a message, and what speaks against it (0: nothing; lower is likelier)."""

    cost: float
    sets: tuple[SaidSet, ...]
    doubts: tuple[Doubt, ...] = ()
    all_effort: bool = False
    sets_only: int | None = None
    """A number of sets with nothing said of them."""
