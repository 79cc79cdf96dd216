"""Which stored set an ordinal names beside words that correct: `the second one`, `first squat`, `first set of rows`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_OF_OTHERS = (Kind.REPS, Kind.EACH, Kind.LEFT, Kind.RIGHT, Kind.NUM, Kind.ORD, Kind.WARMUP, Kind.DROP, Kind.MINI,
              Kind.SECONDS, Kind.MINUTES, Kind.PLATES, Kind.WORKSET)  # fmt: skip
"""Kinds behind an ordinal that it counts, or beside which it may name no set: `the second rep`, `first drop`."""
_COMPARING = frozenset(["like", "than", "as"])
"""Words before an ordinal that is no more than compared with: `not 6 like the first`."""
_SETS = (Kind.SET, Kind.SETS)


def ordinal_set(piece: Sequence[Mark], at: int, stored: Sequence[int]) -> tuple[int, int] | None:
    """The stored set that the ordinal here names, and the place behind its words; `None` where it names none."""
    mark = piece[at]
    if mark.kind is not Kind.ORD or mark.value is None or int(mark.value) not in stored:
        return None
    if {w for m in piece[max(0, at - 2) : at] for w in m.text.split()} & _COMPARING:
        return None
    end = at + 1
    if kind_at(piece, end) in _OF_OTHERS or (end < len(piece) and piece[end].kind is Kind.WORD):
        return None
    if kind_at(piece, end) in _SETS or text_at(piece, end) in ("one", "ones"):
        end += 1
    if kind_at(piece, end) in (Kind.LASTSET, Kind.LASTREP):
        return None
    return int(mark.value), end
