"""`60x8 same same`, `60x8, ditto ditto`: two sets more, where the plan has as many open; else one."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

_MORE = 2
_LINKS = (Kind.X, Kind.FOR)


def with_same_twice(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with `same` said twice behind one set as two sets of it; `under`: the exercise under way."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if _is_doubled(marks, place) and _one_told(marks, place) and _opens(marks, place, record, under) > _MORE:
            if mark.text != "same same":
                out.pop()
            number = replace(mark, kind=Kind.NUM, text="2", value=Decimal(2), end=mark.start)
            out += [number, replace(number, kind=Kind.SETS, text="group", value=None)]
        out.append(mark)
    return out


def _is_doubled(marks: Sequence[Mark], place: int) -> bool:
    """Whether the word is said for the second time, with nothing between."""
    mark, before = marks[place], marks[place - 1] if place else None
    if mark.kind is not Kind.SAME or mark.text == "same same" or before is None:
        return mark.kind is Kind.SAME and mark.text == "same same"
    again = before.kind is Kind.AGAIN and mark.text == "and again"
    return again or (before.kind is Kind.SAME and before.text == mark.text)


def _one_told(marks: Sequence[Mark], place: int) -> bool:
    """Whether a set is told before, and no more than one."""
    before = marks[:place]
    return any(m.kind is Kind.NUM for m in before) and sum(m.kind in _LINKS for m in before) <= 1


def _opens(marks: Sequence[Mark], place: int, record: Record, under: int | None) -> int:
    """How many sets of the exercise that is spoken of at a place were open before the message."""
    named = [m.names[0] for m in marks[:place] if m.kind is Kind.NAME and len(m.names) == 1]
    exercise = named[-1] if named else under
    return 0 if exercise is None else len(record.context(exercise).open_sets)
