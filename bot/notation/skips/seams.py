"""Where what is left out ends and sets begin: a comma or dash beside a skip parts it from them as a full stop does."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_SEAMS = (Kind.COMMA, Kind.DASH)


def with_skip_seams(marks: Sequence[Mark], places: frozenset[int], kept: set[int]) -> list[Mark]:
    """The marks with a stop in place of such a sign. `places`: of the skip; `kept`: names in it that have sets."""
    out = list(marks)
    if kept:
        return out
    for place in places:
        for step in (-1, 1):
            at = place + step
            while 0 <= at < len(marks) and at not in places and marks[at].kind is Kind.FILL:
                at += step
            if 0 <= at < len(marks) and at not in places and marks[at].kind in _SEAMS:
                out[at] = replace(marks[at], kind=Kind.STOP, text=".")
    return out
