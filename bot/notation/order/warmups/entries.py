"""The sets that a warm-up may be of, one by one: the `20x8` of `20x8 30x5 all warmups`."""

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)


def entry_end(marks: list[Mark], at: int) -> int | None:
    """Where a load with its repetitions ends that starts here; `None` where none does."""
    link = at + 1 + (kind_at(marks, at + 1) in (Kind.KG, Kind.LB, Kind.S))
    linked = kind_at(marks, at) is Kind.NUM and kind_at(marks, link) in (Kind.X, Kind.FOR)
    if not linked or kind_at(marks, link + 1) is not Kind.NUM:
        return None
    return link + 2 + (kind_at(marks, link + 2) is Kind.REPS)


def counts_sets(marks: list[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.NUM


OF_ONE_SET = 2
"""A set told loosely has two numbers: `140 for the feeling, 2 reps`."""
