"""Efforts worded the other way round: `reserve two`, `in reserve 1`, `two more were possible`, `failed ten`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import MOST_LEFT
from bot.notation.clauses import kind_at, mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import LINKS, is_number
from bot.notation.tokens import Mark

_COUNTING = (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.AT, Kind.WITH)


def reserved(marks: list[Mark]) -> list[Mark]:
    """The marks with such efforts as the grammar knows them."""
    out = list(marks)
    for place, mark in enumerate(marks):
        after = mark_at(marks, place + 1)
        counted = after is not None and after.kind is Kind.NUM and kind_at(marks, place + 2) not in _COUNTING
        small = counted and after is not None and after.value is not None and after.value <= MOST_LEFT
        if mark.kind is Kind.TANK and small and _is_free(marks, place):
            out[place] = replace(mark, kind=Kind.RIR)
        elif mark.kind is Kind.EMPTY and mark.text.endswith("failed") and counted and _is_next(marks, place):
            out[place] = replace(mark, kind=Kind.FAILED)
    return out


def _is_free(marks: Sequence[Mark], place: int) -> bool:
    """Whether the number before `in reserve`, if any, is that of a set."""
    if not is_number(mark_at(marks, place - 1)):
        return True
    return kind_at(marks, place - 2) in LINKS


def _is_next(marks: Sequence[Mark], place: int) -> bool:
    """Whether the number after `failed` is the repetition after those that were done: `70 for 9 failed ten`."""
    before = next((m for m in reversed(marks[:place]) if m.kind is Kind.NUM), None)
    value = marks[place + 1].value
    return before is not None and before.value is not None and value == before.value + 1
