"""What the grammar found, as a row of atoms: amounts with what was said of them, efforts, and marks that steer.

An amount knows how it is joined to what stands before it; which role it plays is decided in `roles`.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import Enum, auto

from bot.notation.answer import Span
from bot.notation.grammar import Node
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
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


@dataclass(frozen=True, slots=True)
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


@dataclass(frozen=True, slots=True)
class Effort:
    """An effort as repetitions in reserve; `failed` is the repetition that failed, -1 for the last one."""

    start: int
    end: int
    rir: Decimal
    failed: int | None = None
    beyond: bool = False
    """Whether the number is off the scale."""


@dataclass(frozen=True, slots=True)
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
_STRONG = (
    Join.BREAK,
    Join.THEN,
    Join.ARROW,
    Join.PLUS,
    Join.SLASH,
    Join.COLON,
    Join.AND,
    Join.COMMA,
    Join.DASH,
    Join.SPACE,
)
"""Of several separators between two amounts, the first of these counts."""


def read_atoms(items: Sequence[Node | Mark]) -> tuple[Atom, ...]:
    """The atoms of the grammar's items. Separators become the join of what follows them (and stay as marks)."""
    atoms: list[Atom] = []
    joins: list[tuple[Join, Span]] = []
    started = False
    for item in items:
        if isinstance(item, Mark):
            started = started or item.kind is Kind.SAME
            if item.kind in JOINS:
                joins.append((JOINS[item.kind], (item.start, item.end)))
            if item.kind not in (Kind.COMMA, Kind.SLASH, Kind.DASH, Kind.GAP, Kind.OPEN, Kind.CLOSE):
                atoms.append(Sign(item.start, item.end, item.kind, item.text, item.value, item.names))
            elif item.kind is Kind.COMMA:
                atoms.append(Sign(item.start, item.end, item.kind))
            continue
        join, join_at = _strongest(joins) if started else (Join.START, None)
        joins = []
        started = True
        if item.rule == "effort":
            atoms.append(_effort(item))
        else:
            entry = _entry(item, join)
            entry[0] = replace(entry[0], join_at=join_at)
            alone = entry[0] if len(entry) == 1 else None
            if alone is not None and alone.lead and alone.join is Join.AT and _is_scale(alone):
                assert alone.value is not None
                atoms.append(_scaled(alone.start, alone.end, 10 - alone.value))
            else:
                atoms.extend(entry)
    return tuple(atoms)


def _strongest(joins: list[tuple[Join, Span]]) -> tuple[Join, Span | None]:
    """The join that counts of several, and where it stands."""
    for join in _STRONG:
        for found, at in joins:
            if found is join:
                return join, at
    return Join.SPACE, None


def _entry(entry: Node, join: Join) -> list[Amount]:
    amounts: list[Amount] = []
    worded = False
    join_at: Span | None = None
    for part in entry.parts:
        if isinstance(part, Mark):
            join, join_at = JOINS[part.kind], (part.start, part.end)
            worded = part.kind is Kind.AT and not part.text.startswith("@")
        elif part.rule == "lead":
            amounts.append(_lead(part, join))
        else:
            amounts.append(replace(_amount(part.parts), join=join, worded=worded, join_at=join_at))
            join = Join.SPACE
    return amounts


def _lead(lead: Node, join: Join) -> Amount:
    first = lead.parts[0]
    amount = _amount(lead.parts[1:])
    if isinstance(first, Mark) and first.kind is Kind.LEADAT:
        return replace(amount, join=Join.AT, lead=True, start=first.start)
    return replace(amount, join=join, lead=True)


def _amount(parts: Sequence[Node | Mark]) -> Amount:
    marks = [m for part in parts for m in (part.parts if isinstance(part, Node) else (part,)) if isinstance(m, Mark)]
    amount = Amount(marks[0].start, marks[-1].end)
    for mark in marks:
        amount = _said(amount, mark)
    return amount


def _said(amount: Amount, mark: Mark) -> Amount:
    """The amount with one more mark's meaning."""
    match mark.kind:
        case Kind.NUM:
            spoken = mark.text[:1].isalpha()
            return replace(amount, value=mark.value, parts=mark.parts, spoken=spoken, parts_at=_parts_at(mark))
        case Kind.CLOCK:
            return replace(amount, value=mark.value, parts=mark.parts, clock=True)
        case Kind.SIGN:
            return replace(amount, sign=-1 if mark.text == "-" else 1, counts=_unless(amount, Counts.UNSAID))
        case Kind.KG | Kind.LB:
            unit = Unit.KG if mark.kind is Kind.KG else Unit.LB
            return replace(amount, unit=unit, counts=Counts.LOAD, unit_at=(mark.start, mark.end))
        case Kind.REPS:
            return replace(amount, counts=Counts.REPS)
        case Kind.SECONDS:
            return replace(amount, counts=Counts.SECONDS)
        case Kind.MINUTES:
            return replace(amount, counts=Counts.MINUTES)
        case Kind.METRES:
            return replace(amount, counts=Counts.METRES)
        case Kind.SETS | Kind.TIMES:
            if mark.kind is Kind.TIMES and mark.text == "twice" and amount.value is None:
                return replace(amount, counts=Counts.SETS, value=Decimal(2))
            return replace(amount, counts=Counts.SETS if mark.kind is Kind.SETS else Counts.TIMES)
        case Kind.S:
            return replace(amount, counts=_unless(amount, Counts.S))
        case Kind.M:
            return replace(amount, counts=_unless(amount, Counts.M))
        case Kind.HAND:
            return replace(amount, hand=True)
        case Kind.TOTAL:
            return replace(amount, total=True)
        case Kind.EACH:
            limbs = ("leg", "legs", "arm", "arms", "side", "sides", "foot", "limb")
            return replace(amount, each=True, limb=mark.text.split()[-1].removeprefix("each") in limbs)
        case Kind.PAIR:
            return replace(amount, pair=True, counts=Counts.LOAD)
        case Kind.ASSIST:
            return replace(amount, sign=-1, counts=Counts.LOAD)
        case Kind.ADDED:
            return replace(amount, sign=amount.sign or 1, counts=Counts.LOAD)
        case Kind.PLUS:
            return replace(amount, sign=1)
        case Kind.BODY:
            return replace(amount, body=True, body_at=(mark.start, mark.end))
        case Kind.PLATES:
            return replace(amount, plates=True)
        case Kind.SAMELOAD:
            return replace(amount, same_load=True)
        case Kind.SAMEREPS:
            return replace(amount, same_reps=True)
        case Kind.LEFTPOST:
            return replace(amount, side=Side.LEFT, side_at=(mark.start, mark.end))
        case Kind.RIGHTPOST:
            return replace(amount, side=Side.RIGHT, side_at=(mark.start, mark.end))
        case _:
            return amount


def _parts_at(mark: Mark) -> tuple[Span, ...]:
    """Where the numbers of a list typed as one stand: `10,9,8`."""
    pieces = mark.text.split(",")
    if len(pieces) != len(mark.parts) or len(mark.text) != mark.end - mark.start:
        return ()
    starts = [mark.start + sum(len(p) + 1 for p in pieces[:i]) for i in range(len(pieces))]
    return tuple((start, start + len(piece)) for start, piece in zip(starts, pieces, strict=True))


def _is_scale(amount: Amount) -> bool:
    """Whether an `@` number alone is an effort: at most ten, and nothing said of what it counts."""
    plain = amount.counts is Counts.UNSAID and not amount.sign and not amount.hand and not amount.each
    return plain and amount.value is not None and amount.value <= 10


def _scaled(start: int, end: int, rir: Decimal) -> Effort:
    beyond = not 0 <= rir <= 10
    half = (rir * 2).to_integral_value() / 2 if not beyond else Decimal(0)
    return Effort(start, end, half, beyond=beyond or half != rir)


def _unless(amount: Amount, counts: Counts) -> Counts:
    return counts if amount.counts is Counts.UNSAID else amount.counts


def _effort(effort: Node) -> Effort:
    marks = [m for m in effort.parts if isinstance(m, Mark)]
    start, end = marks[0].start, marks[-1].end
    kinds = {m.kind for m in marks}
    number = next((m for m in marks if m.kind in (Kind.NUM, Kind.ORD)), None)
    value = Decimal(1) if number is None or number.value is None else number.value
    if Kind.EMPTY in kinds:
        return Effort(start, end, Decimal(0))
    if Kind.FAILED in kinds:
        whole = -1 if Kind.LASTREP in kinds or value != int(value) else int(value)
        return Effort(start, end, Decimal(0), failed=whole)
    rir = 10 - value if kinds & {Kind.RPE, Kind.RPEPOST, Kind.FEELS} else value
    return _scaled(start, end, rir)
