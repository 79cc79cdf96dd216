"""`8 each side, two times the same`: how many sets there were of what was told, where the plan leaves but one way.

Of as many sets as are left it is how many there were in all; of one more than that, how many there were besides.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

_SEVERAL = 2


def with_same_times(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such words as the number of sets of what was told before them."""
    out = list(marks)
    for place in range(2, len(marks) - 1):
        kinds = [kind_at(marks, place + n) for n in range(3)]
        if kinds != [Kind.NUM, Kind.TIMES, Kind.SAME] or marks[place].value is None:
            continue
        named = [m.names[0] for m in marks[:place] if m.kind is Kind.NAME and len(m.names) == 1]
        exercise = named[-1] if named else under
        ends = kind_at(marks, place + 3) in (None, *EDGES)
        opens = 0 if exercise is None else len(record.context(exercise).open_sets)
        count = int(marks[place].value or 0)
        if not ends or opens not in (count, count + 1) or count < _SEVERAL:
            continue
        out[place : place + 3] = [
            replace(marks[place], value=Decimal(opens)),
            replace(marks[place + 1], kind=Kind.SETS, text="of them", end=marks[place + 2].end),
        ]
        return out
    return out
