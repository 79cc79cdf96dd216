"""What ends a sentence in brackets and has no number is told as behind a comma: `scrap that (the bar was loaded)`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE)
_COUNTS = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.OPEN, *_ENDS)

_WORDS = 2
"""Fewer are a note to the number before them: `60x5 (f)`, `8 (left)`."""


def without_last_brackets(marks: Sequence[Mark]) -> list[Mark]:
    """The marks as typed, with a comma where such a bracket opens."""
    out: list[Mark] = []
    opened: int | None = None
    for place, mark in enumerate(marks):
        ends = place + 1 == len(marks) or marks[place + 1].kind in _ENDS
        if mark.kind is Kind.CLOSE and opened is not None and ends and len(out) - opened > _WORDS:
            out[opened] = replace(out[opened], kind=Kind.COMMA, text=",")
        else:
            out.append(mark)
        if mark.kind is Kind.OPEN and out[:-1] and out[-2].kind not in _ENDS:
            opened = len(out) - 1
        elif mark.kind in _COUNTS or mark.kind is Kind.CLOSE:
            opened = None
    return out
