"""Whether a part of a message tells sets and nothing else, and a set by itself."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.REPS)
OF_SETS = frozenset(
    (Kind.NUM, Kind.CLOCK, *_LINKS, *_UNITS, Kind.SECONDS, Kind.METRES, Kind.M, Kind.SETS, Kind.SET, Kind.TIMES, Kind.L,
     Kind.R, Kind.LEFT, Kind.RIGHT, Kind.EACH, Kind.BODY, Kind.MINUS, Kind.PLUS, Kind.SLASH, Kind.RPE, Kind.RIR,
     Kind.TANK, Kind.COULD, Kind.MORE, Kind.EMPTY, Kind.FAILED, Kind.ORD, Kind.LASTSET, Kind.ALL, Kind.SAME, Kind.AGAIN,
     Kind.NAME, Kind.TOTAL, Kind.AND, Kind.THEN, Kind.ARROW, Kind.DROP, Kind.MINI, Kind.COLON, Kind.WARMUP,
     Kind.WORKSET, Kind.PLANNED, Kind.FILL, Kind.DASH, Kind.SAMELOAD, Kind.SAMEREPS, Kind.FEELS, Kind.ANOTHER,
     Kind.ASSIST, Kind.ADDED,
        Kind.DONE, Kind.LASTREP)
)  # fmt: skip
"""Kinds of a part that tells sets and nothing else."""
_TOLD = frozenset((Kind.NUM, Kind.SAME, Kind.AGAIN, Kind.PLANNED, Kind.FAILED, Kind.DONE))
_ALONE = ([Kind.SAME], [Kind.SAME, Kind.AGAIN], [Kind.NUM], [Kind.DONE])
_MOST = 4
"""Little words of a part that tells sets."""


def tells_sets(part: Sequence[Mark]) -> bool:
    """Whether a part tells sets and nothing else: `90x10`, `10 reps`, `same again`, `rdl 60`."""
    kinds = {m.kind for m in part}
    if kinds.isdisjoint(_TOLD) or not kinds <= OF_SETS:
        return False
    return sum(m.kind is Kind.FILL and m.text.isalpha() for m in part) <= _MOST


def is_whole(part: Sequence[Mark]) -> bool:
    """Whether it tells a set by itself: a load with repetitions, repetitions with their word, a name with numbers."""
    kinds = [m.kind for m in part if m.kind not in (Kind.FILL, Kind.KG, Kind.LB, Kind.S, Kind.HAND)]
    linked = any(kinds[i : i + 3] == [Kind.NUM, k, Kind.NUM] for i in range(len(kinds)) for k in _LINKS)
    named = any(kinds[i : i + 2] == [Kind.NAME, Kind.NUM] for i in range(len(kinds)))
    counted = any(kinds[i : i + 2] == [Kind.NUM, Kind.REPS] for i in range(len(kinds)))
    listed = kinds.count(Kind.NUM) > 1 and kinds[0] is Kind.NUM
    failed = kinds[:1] == [Kind.FAILED] and len(kinds) > 1
    return linked or named or counted or listed or failed or kinds in _ALONE


def has_entry(part: Sequence[Mark]) -> bool:
    """Whether a load with its repetitions is told anywhere: `60x5`."""
    return any(
        mark.kind is Kind.X and part[i].kind is Kind.NUM and part[i + 2].kind is Kind.NUM
        for i, mark in enumerate(part[1:-1])
    )
