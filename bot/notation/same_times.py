"""`8 each side, two times the same`, `3 of 7 chins`: how many sets there were, where the plan leaves but one way.

Of as many sets as are left it is how many there were in all; of one more than that, how many there were besides.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark


def with_same_times(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such words as the number of sets of what was told before them."""
    out = _with_counts_of(marks, record, under)
    marks = tuple(out)
    for place in range(2, len(marks) - 1):
        if marks[place + 1].kind is not Kind.TIMES:
            continue
        kinds = [kind_at(marks, place + n) for n in range(3)]
        if kinds != [Kind.NUM, Kind.TIMES, Kind.SAME] or marks[place].value is None:
            continue
        exercise = _spoken_of(marks, place, under)
        ends = kind_at(marks, place + 3) in (None, *EDGES)
        opens = 0 if exercise is None else len(record.context(exercise).open_sets)
        count = int(marks[place].value or 0)
        if not ends or opens not in (count, count + 1) or count < SEVERAL:
            continue
        out[place : place + 3] = [
            replace(marks[place], value=Decimal(opens)),
            replace(marks[place + 1], kind=Kind.SETS, text="of them", end=marks[place + 2].end),
        ]
        return out
    return out


def _with_counts_of(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """`4 of 6` as four sets of six, where all sets of the plan are four, and six are of its repetitions."""
    out = list(marks)
    for place in range(1, len(marks) - 1):
        if marks[place].text != "of":
            continue
        count, reps = marks[place - 1], marks[place + 1]
        free = kind_at(marks, place - 2) in (None, *EDGES, Kind.NAME, Kind.FILL, Kind.COLON)
        if not free or not count.kind is reps.kind is Kind.NUM:
            continue
        behind = [m.names[0] for m in marks[place + 2 : place + 4] if m.kind is Kind.NAME and len(m.names) == 1]
        exercise = behind[0] if behind else _spoken_of(marks, place, under)
        if exercise is None or count.value is None or reps.value is None:
            continue
        context = record.context(exercise)
        opens = context.open_sets
        if (
            count.value == len(opens) > 1
            and reps.value == int(reps.value)
            and int(reps.value) in context.range_of(opens[0])
        ):
            out[place] = replace(marks[place], kind=Kind.SETS, text="sets of")
    return out


def _spoken_of(marks: Sequence[Mark], place: int, under: int | None) -> int | None:
    """The exercise that is named last before a place, or the one under way."""
    named = [m.names[0] for m in marks[:place] if m.kind is Kind.NAME and len(m.names) == 1]
    return named[-1] if named else under
