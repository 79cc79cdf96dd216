"""What `all` is said of where it is not the sets: `proper squeeze at the top each time`, `142.5 kilos all told`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_OF_EACH_REP = frozenset((
    "each time", "every time", "all the way", "the whole way", "the whole way through", "whole way through",
    "all the way through", "throughout", "the whole thing", "all of them", "for all of them", "all of em",
    "for all of em",
))  # fmt: skip
"""Behind words on how it was lifted these are said of each repetition."""
_HOW = (Kind.WORD, Kind.WEAK, Kind.PLATES)
_ALTOGETHER = frozenset(("told", "in", "up", "together"))
_HANDS = frozenset(("both hands", "both arms", "the pair", "the two"))
_LEADS = (Kind.FOR, Kind.X)


def manner(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as what they are: nothing of all sets, or that the load is all there was."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ALL:
            continue
        following = text_at(marks, place + 1)
        if (mark.text in _OF_EACH_REP and _tells_how(marks, place)) or (mark.text == "across" and following in _HANDS):
            out[place] = replace(mark, kind=Kind.FILL)
        elif mark.text == "all" and following in _ALTOGETHER and _is_said_again(marks, place):
            for at in (place, place + 1, place + 2):
                out[at] = replace(marks[at], kind=Kind.FILL)
        elif mark.text == "all" and following in _ALTOGETHER and _is_of_load(marks, place):
            out[place] = replace(mark, kind=Kind.TOTAL)
            out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    return out


def _is_said_again(marks: Sequence[Mark], place: int) -> bool:
    """`28 all in, both dumbbells together`: behind a load, and told once more."""
    again = kind_at(marks, place + 2) is Kind.COMMA and kind_at(marks, place + 3) is Kind.TOTAL
    return again and kind_at(marks, place - 1) in (Kind.NUM, Kind.KG, Kind.LB)


def _tells_how(marks: Sequence[Mark], place: int) -> bool:
    """Whether words of its part stand between it and the numbers: `elbows under the bar the whole way`."""
    at = place - 1
    while at >= 0 and marks[at].kind not in EDGES and marks[at].kind is not Kind.NUM:
        if marks[at].kind in _HOW:
            return True
        at -= 1
    return False


def _is_of_load(marks: Sequence[Mark], place: int) -> bool:
    """`125kg all in`, `100 all in for 9`: right behind a load."""
    if kind_at(marks, place - 1) in (Kind.KG, Kind.LB):
        return kind_at(marks, place - 2) is Kind.NUM
    return kind_at(marks, place - 1) is Kind.NUM and kind_at(marks, place + 2) in _LEADS
