"""The sets that an effort names: `first`, `first two`, `second set`, `the other two`, `all but the last`."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.efforts_named.effort import ENDS, LITTLE, OTHERS, WORDS, effort_at, past_kinds
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.tokens import Mark

BUT = (Kind.EXCEPT, Kind.PLATES)
_NAMING = (Kind.NUM, Kind.ALL, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.THEREST)
"""What the name of some sets begins with."""


@dataclass(frozen=True, slots=True)
class Sets:
    """Which sets: the first of them by its number (`None`: the last ones, or those that are left), and how many."""

    first: int | None
    count: int
    rest: bool
    end: int
    but_last: bool = False
    """Of `all but the last`: what the last one was may follow."""
    reps: Decimal | None = None
    """The repetitions that name one set of those told: `the 8`."""


def sets_at(piece: Sequence[Mark], at: int) -> Sets | None:
    """The sets that words name here: `first`, `first two`, `second set`, `the other two`, `all but the last`."""
    kind, text = kind_at(piece, at), text_at(piece, at)
    if kind not in _NAMING and text not in OTHERS:
        return None
    if kind is Kind.NUM and (
        text_at(piece, at - 1).split()[-1:] in (["the"], ["that"]) or text_at(piece, at - 1) == "after"
    ):
        before = {value for m in piece[:at] for value in (m.parts or (m.value,)) if m.kind is Kind.NUM}
        end = at + 1 + (kind_at(piece, at + 1) is Kind.REPS)
        named = piece[at].value in before and kind_at(piece, end) in (*ENDS, *LITTLE, Kind.EMPTY)
        return Sets(None, 1, False, end, reps=piece[at].value) if named else None
    if kind is Kind.ALL and _all_but(piece, at):
        return Sets(None, 1, True, at + 1)
    if kind is Kind.ALL and (kind_at(piece, at + 1) is Kind.EXCEPT or text_at(piece, at + 1) in ("but", "bar")):
        last = past_kinds(piece, at + 2, (Kind.FILL,))
        named = kind_at(piece, last) in (Kind.LASTSET, Kind.LASTREP)
        return Sets(None, 1, True, last + 1, but_last=True) if named else None
    count = whole_number(piece, at + 1, 2, 4) if kind_at(piece, at + 2) not in (Kind.KG, Kind.LB, Kind.S) else None
    counted = count is not None and kind_at(piece, at + 2) in (*WORDS, *LITTLE, *ENDS, Kind.SETS)
    end = at + 1 + counted
    while kind_at(piece, end) in (Kind.SET, Kind.SETS) or text_at(piece, end) in ("one", "ones"):
        end += 1
    many = count if counted and count is not None else 1
    if kind is Kind.ORD and piece[at].value is not None:
        number = int(piece[at].value or 0)
        return Sets(number, many if number == 1 else 1, False, end) if number == 1 or not counted else None
    if kind in (Kind.LASTSET, Kind.LASTREP) and "last" in text.split():
        return Sets(None, many, False, end)
    if kind is Kind.THEREST or text in OTHERS:
        return Sets(None, many, True, end)
    return None


def _all_but(piece: Sequence[Mark], at: int) -> bool:
    """The `all` of `all @7 except the last @8`: all sets, of which some are told apart behind it."""
    effort = effort_at(piece, past_kinds(piece, at + 1, LITTLE), None)
    return effort is not None and excepts(piece, effort.end)


def excepts(piece: Sequence[Mark], at: int) -> bool:
    """Whether some sets are told apart here: `except the last`."""
    excepted = kind_at(piece, at) in BUT or text_at(piece, at) == "but"
    return excepted and sets_at(piece, past_kinds(piece, at + 1, (Kind.FILL,))) is not None
