"""What the grammar found, as a row of atoms: amounts with what was said of them, efforts, and marks that steer.

An amount knows how it is joined to what stands before it; which role it plays is decided in `roles`.
"""

from decimal import Decimal
from enum import Enum, auto

from bot.notation.answer import Span
from bot.notation.kinds import Kind
from bot.notation.quick import quick
from bot.training.report import Side
from bot.training.units import Unit


class Join(Enum):
    """How an amount is joined to the one before."""

    START = auto()
    SPACE = auto()
    X = auto()
    FOR = auto()
    AT = auto()
    WITH = auto()
    COMMA = auto()
    SLASH = auto()
    PLUS = auto()
    ARROW = auto()
    DASH = auto()
    COLON = auto()
    AND = auto()
    THEN = auto()
    BREAK = auto()


class Counts(Enum):
    """What a number was said to count."""

    UNSAID = auto()
    LOAD = auto()
    REPS = auto()
    SECONDS = auto()
    MINUTES = auto()
    METRES = auto()
    SETS = auto()
    TIMES = auto()
    """`5 times`: repetitions or sets."""
    S = auto()
    M = auto()


@quick
class Amount:
    """A number (or body weight, or `same weight`) with all that was said of it; `start`, `end` in the folded text."""

    start: int
    end: int
    join: Join = Join.START
    value: Decimal | None = None
    parts: tuple[Decimal, ...] = ()
    counts: Counts = Counts.UNSAID
    clock: bool = False
    spoken: bool = False
    unit: Unit | None = None
    each: bool = False
    limb: bool = False
    """Whether it is said to be of each leg, arm or side."""
    hand: bool = False
    total: bool = False
    pair: bool = False
    sign: int = 0
    """1 for `+` or `added`, -1 for `-` or assistance."""
    body: bool = False
    plates: bool = False
    same_load: bool = False
    same_reps: bool = False
    side: Side | None = None
    worded: bool = False
    """Joined by the word `at`, not its sign."""
    lead: bool = False
    """Led by an `x` or `@` with nothing before it."""
    leads: bool = False
    """Whether an `x` or `for` follows it, so that a decimal comma is likely: `7,5 x 10`."""
    bracketed: bool = False
    """Whether it stands alone in brackets: `(2 sets)`."""
    both: bool = False
    """Whether `both` was said of it: both sets, where no side is worked by itself."""
    group: bool = False
    """Whether it counts sets from one that was named: the `two` of `first two 140x12`."""
    final: bool = False
    """Whether it counts the last sets, which no others follow: the `two` of `last two 9 then 8`."""
    fold: bool = False
    """Whether all that it counts are alike: the `two` of `two tens`."""
    after: bool = False
    """Whether its words say that it counts what was told before it: `twice`, `3 of them`."""
    join_at: Span | None = None
    """Where the join stands that a word or sign makes."""
    unit_at: Span | None = None
    side_at: Span | None = None
    body_at: Span | None = None
    parts_at: tuple[Span, ...] = ()
    """Where each of `parts` stands, where each is in digits."""

    @property
    def at(self) -> Span:
        """Where it stands, with all that was said of it."""
        return self.start, self.end

    @property
    def number_at(self) -> Span:
        """Where it stands; of one number of a list, where that does."""
        return self.parts_at[0] if not self.parts and self.parts_at else self.at


@quick
class Effort:
    """An effort as repetitions in reserve; `failed` is the repetition that failed, -1 for the last one."""

    start: int
    end: int
    rir: Decimal
    failed: int | None = None
    beyond: bool = False
    """Whether the number is off the scale."""


@quick
class Sign:
    """A mark that steers: a side, a stage, a label, a separator, a name."""

    start: int
    end: int
    kind: Kind
    text: str = ""
    value: Decimal | None = None
    names: tuple[int, ...] = ()


Atom = Amount | Effort | Sign
JOINS = {
    Kind.COMMA: Join.COMMA, Kind.SLASH: Join.SLASH, Kind.PLUS: Join.PLUS, Kind.ARROW: Join.ARROW, Kind.DASH: Join.DASH,
    Kind.COLON: Join.COLON, Kind.AND: Join.AND, Kind.THEN: Join.THEN, Kind.BREAK: Join.BREAK, Kind.LINE: Join.BREAK,
    Kind.STOP: Join.BREAK, Kind.QUERY: Join.BREAK, Kind.X: Join.X, Kind.FOR: Join.FOR, Kind.AT: Join.AT,
    Kind.WITH: Join.WITH, Kind.PART: Join.BREAK,
}  # fmt: skip
