"""An exercise that did not come about, with its name first: `front squats didnt happen` is `skipped front squats`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

NEEDS = ("happen", "happened", "happening")
_UNHAPPENED = ("didnt happen", "never happened", "not happening", "wasnt happening", "did not happen")


def with_unhappened(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as a skip before the name."""
    out = list(marks)
    for place in range(len(marks) - 1):
        left_out = kind_at(out, place + 1) in (Kind.SKIPPED, Kind.SKIP) and text_at(out, place + 1) in _UNHAPPENED
        several = kind_at(out, place - 1) in (Kind.AND, Kind.COMMA) and kind_at(out, place - 2) is Kind.NAME
        if out[place].kind is Kind.NAME and left_out and not several and kind_at(out, place - 1) is not Kind.SKIP:
            skip = replace(out[place + 1], kind=Kind.SKIP, text="skipped")
            out[place : place + 2] = [skip, out[place]]
    return out
