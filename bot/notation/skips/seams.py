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


def headed_by_kept(marks: Sequence[Mark], kept: Sequence[Mark]) -> list[Mark]:
    """`skipping everything but the ab wheel. 10 10 8`: the sets behind are of the one exercise that is kept."""
    out = list(marks)
    place = next((i for i, m in enumerate(marks) if len(kept) == 1 and m is kept[0]), None)
    if place is None:
        return out
    edge = place + 1
    while edge < len(marks) and marks[edge].kind is Kind.FILL:
        edge += 1
    told = edge + 1 < len(marks) and marks[edge + 1].kind in (Kind.NUM, Kind.BODY)
    if told and marks[edge].kind in (Kind.STOP, Kind.LINE):
        out[edge] = replace(marks[edge], kind=Kind.COMMA, text=",")
    return out
