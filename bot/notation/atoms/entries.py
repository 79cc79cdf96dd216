"""The atoms of the grammar's items: amounts with how each is joined, efforts, marks that steer."""

from collections.abc import Sequence

from bot.notation.answer import Span
from bot.notation.atoms import JOINS, Amount, Atom, Counts, Join, Sign
from bot.notation.atoms.amounts import read_amount, read_effort, scaled_effort
from bot.notation.grammar import Node
from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.tokens import Mark

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
    for place, item in enumerate(items):
        if isinstance(item, Mark):
            started = started or item.kind is Kind.SAME
            joins = [] if item.kind is Kind.SAME else joins
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
            atoms.append(read_effort(item))
        else:
            entry = _entry(item, join)
            entry[0] = replace(entry[0], join_at=join_at, bracketed=len(entry) == 1 and _is_bracketed(items, place))
            alone = entry[0] if len(entry) == 1 else None
            if alone is not None and alone.lead and alone.join is Join.AT and _is_scale(alone):
                assert alone.value is not None
                atoms.append(scaled_effort(alone.start, alone.end, 10 - alone.value))
            else:
                atoms.extend(entry)
    return tuple(atoms)


def _is_bracketed(items: Sequence[Node | Mark], place: int) -> bool:
    beside = [items[i] for i in (place - 1, place + 1) if 0 <= i < len(items)]
    return [b.kind for b in beside if isinstance(b, Mark)] == [Kind.OPEN, Kind.CLOSE]


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
            if amounts and join in (Join.X, Join.FOR):
                amounts[-1] = replace(amounts[-1], leads=True)
            worded = part.kind is Kind.AT and not part.text.startswith("@")
        elif part.rule == "lead":
            amounts.append(_lead(part, join))
        else:
            amounts.append(replace(read_amount(part.parts), join=join, worded=worded, join_at=join_at))
            join = Join.SPACE
    if len(amounts) > _WITH_LOAD and amounts[0].counts is Counts.SETS and amounts[1].join is Join.AT:
        amounts[0] = replace(amounts[0], group=True)
    return amounts


_WITH_LOAD = 2
"""Sets with a load and nothing more may be of what was told before: `10 reps, 3 sets at 60`."""


def _lead(lead: Node, join: Join) -> Amount:
    first = lead.parts[0]
    amount = read_amount(lead.parts[1:])
    if isinstance(first, Mark) and first.kind is Kind.LEADAT:
        return replace(amount, join=Join.AT, lead=True, start=first.start)
    return replace(amount, join=join, lead=True)


def _is_scale(amount: Amount) -> bool:
    """Whether an `@` number alone is an effort: at most ten, and nothing said of what it counts."""
    plain = amount.counts is Counts.UNSAID and not amount.sign and not amount.hand and not amount.each
    return plain and amount.value is not None and amount.value <= 10
