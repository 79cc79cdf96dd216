"""The one load of a message behind all its repetitions: `first two 3, other two 2, at 70`, `10 then 9 then 8, 80kg`.

Without a comma too: `8 on the first two and 7 on the last at 65`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD
from bot.notation.tokens import Mark

_LOADS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.BODY, Kind.DROP, Kind.MINI, Kind.ARROW, Kind.SAMELOAD, Kind.SAME,
          Kind.PLANNED, Kind.WARMUP, Kind.RPE, Kind.RIR, Kind.TANK, *OF_LOAD)  # fmt: skip
_LASTS = (Kind.LASTSET, Kind.LASTREP)
_NAMING = ("on", "on the", "for", "for the", "s")
"""Links to the words that name a set, and the plural of repetitions."""
_LEAST = 15
"""The lightest load that a sentence ends with without its unit: a lower number counts."""


def load_last(marks: list[Mark]) -> list[Mark]:
    """The marks with such a load before all, where groups or numbers of sets are told."""
    end = len(marks)
    while end and marks[end - 1].kind in (Kind.STOP, Kind.LINE, Kind.FILL):
        end -= 1
    number = end - 1 - (kind_at(marks, end - 1) in OF_LOAD)
    link = number - (kind_at(marks, number - 1) in (Kind.AT, Kind.WITH))
    comma = link - (kind_at(marks, link - 1) is Kind.ALL)
    told = number < end - 1 or link < number
    parted = kind_at(marks, comma - 1) is Kind.COMMA
    named = kind_at(marks, comma - 1) in _LASTS and link < number
    if number < 1 or kind_at(marks, number) is not Kind.NUM or not (parted or named) or not told:
        return marks
    before = marks[: comma - parted]
    value = marks[number].value
    if value is None or value < _LEAST or not _are_groups(before):
        return marks
    start = next(i for i, m in enumerate(before) if m.kind in (Kind.NUM, Kind.LABEL, Kind.ORD))
    first = marks[start].start
    comma_mark = replace(marks[number], kind=Kind.COMMA, text=",", value=None, parts=(), start=first, end=first)
    return [*before[:start], *marks[number:end], comma_mark, *before[start:], *marks[end:]]


def _are_groups(marks: Sequence[Mark]) -> bool:
    """Whether sets are told by their numbers, none with a load, of one exercise."""
    labels = sum(m.kind in (Kind.LABEL, Kind.SETS, Kind.ORD, *_LASTS) for m in marks)
    names = len({m.names for m in marks if m.kind is Kind.NAME})
    plain = not any(
        (m.kind in _LOADS and m.text not in _NAMING) or m.kind in (Kind.STOP, Kind.LINE, Kind.QUERY) for m in marks
    )
    return labels >= SEVERAL and names <= 1 and plain
