"""A load alone in a sentence of talk, kept with the plan's repetitions, beside sets that are told whole: asked about.

`tried 110 for a laugh and racked it straight away. 100x5 though`.
"""

from collections.abc import Sequence

from bot.notation.answer import Source
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.COMMA, Kind.BREAK)
_MANY = 3
"""Words beside a number that tell something of it."""


def lone_load(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """The number of the first such load; `None` where there is none."""
    if not any(one.grounds.reps.source is Source.SAID for one in told):
        return None
    for one in told:
        at = one.grounds.load.at if one.grounds.load.source is Source.SAID else None
        if one.grounds.reps.source is not Source.PLAN or at is None:
            continue
        place = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM and at[0] <= m.start < at[1]), None)
        if place is not None and _is_talked_of(marks, place):
            return marks[place]
    return None


def _is_talked_of(marks: Sequence[Mark], place: int) -> bool:
    start = end = place
    while start > 0 and marks[start - 1].kind not in _ENDS:
        start -= 1
    while end < len(marks) and marks[end].kind not in _ENDS:
        end += 1
    part = [m for i, m in enumerate(marks[start:end], start) if i != place]
    talked = sum(m.kind in (Kind.WORD, Kind.FILL, Kind.GAP) for m in part) >= _MANY
    return talked and any(m.kind is Kind.WORD for m in part)
