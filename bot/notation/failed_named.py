"""A repetition that failed, told with its exercise or its kit: `failed the 6th chin`, `the 9th with the dumbbells`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def with_failed_named(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the exercise before what failed, and without the kit behind it: nothing is skipped by them."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.FAILED or kind_at(marks, place + 1) is not Kind.ORD:
            continue
        if kind_at(marks, place + 2) is Kind.NAME and _ends(marks, place + 3):
            out[place : place + 3] = [marks[place + 2], mark, marks[place + 1]]
        elif kind_at(marks, place + 2) is Kind.WITH:
            at = place + 3
            while kind_at(marks, at) is Kind.FILL:
                at += 1
            if kind_at(marks, at) is Kind.WEAK:
                out[place + 2 : at + 1] = [replace(m, kind=Kind.FILL) for m in marks[place + 2 : at + 1]]
    return out


def _ends(marks: Sequence[Mark], place: int) -> bool:
    """Whether the part ends here, or goes on with talk."""
    return place >= len(marks) or marks[place].kind in (*EDGES, Kind.FILL, Kind.WORD)
