"""Efforts worded the other way round: `reserve two`, `in reserve 1`, `two more were possible`, `failed ten`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import LINKS, SEPARATORS, is_number, kind_at, mark_at
from bot.notation.tokens import Mark

_MOST = 5
"""Repetitions in reserve that people tell (common practice, no source)."""
_OF = (["of"], ["from"], ["out", "of"])
_COUNTING = (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.AT, Kind.WITH)


def reserved(marks: list[Mark]) -> list[Mark]:
    """The marks with such efforts as the grammar knows them."""
    out = list(marks)
    for place, mark in enumerate(marks):
        after = mark_at(marks, place + 1)
        counted = after is not None and after.kind is Kind.NUM and kind_at(marks, place + 2) not in _COUNTING
        small = counted and after is not None and after.value is not None and after.value <= _MOST
        if mark.kind is Kind.TANK and small and _is_free(marks, place):
            out[place] = replace(mark, kind=Kind.RIR)
        elif mark.kind is Kind.EMPTY and mark.text.endswith("failed") and counted and _is_next(marks, place):
            out[place] = replace(mark, kind=Kind.FAILED)
    return _out_of_ten(out)


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


def _out_of_ten(marks: list[Mark]) -> list[Mark]:
    """`effort eight of ten`: eight."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        rated = bool(out) and out[-1].kind is Kind.RPE and mark.kind is Kind.NUM
        span = next((n for n in (1, 2) if [m.text for m in marks[at + 1 : at + 1 + n]] in _OF), 0) if rated else 0
        ten = mark_at(marks, at + 1 + span)
        if span and ten is not None and ten.value == 10 and kind_at(marks, at + 2 + span) in (None, *SEPARATORS):
            out.append(replace(mark, end=ten.end))
            at += 2 + span
            continue
        out.append(mark)
        at += 1
    return out
