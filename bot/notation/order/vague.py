"""Numbers of which one is meant, not known which: `60x10 or was it 9`, `between 8 and 10`, `60x8-9`: asked about."""

from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.order.near import kind_at
from bot.notation.tokens import Mark

_WIDEST = 2
"""A range of repetitions is no wider; a list falls or holds, or goes on."""


def vague(marks: list[Mark]) -> list[Mark]:
    """The marks with what joins two such numbers as a slip."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if kind_at(marks, place - 1) is not Kind.NUM:
            continue
        at = place + 1
        while kind_at(marks, at) in (Kind.WAS, Kind.FILL):
            at += 1
        numbered = kind_at(marks, at) is Kind.NUM
        told = kind_at(marks, at + 1) not in (Kind.X, Kind.FOR, Kind.KG, Kind.LB)
        doubted = mark.kind is Kind.OR and at > place + 1 and any(m.kind is Kind.WAS for m in marks[place:at])
        between = mark.kind is Kind.AND and place > 1 and marks[place - 2].text.split()[-1:] == ["between"]
        if numbered and told and (doubted or between or _is_range(marks, place) or _is_was(marks, place)):
            out[place] = replace(mark, kind=Kind.SLIP)
    return out


def _is_was(marks: list[Mark], place: int) -> bool:
    """`10 was 9`, and nothing else: what is stored and what it was, or two sets."""
    whole = [m.kind for m in marks if m.kind not in (Kind.FILL, Kind.STOP, Kind.LINE, Kind.COMMA)]
    return marks[place].kind is Kind.WAS and whole == [Kind.NUM, Kind.WAS, Kind.NUM]


def _is_range(marks: list[Mark], place: int) -> bool:
    """`60x8-9`: two numbers with a dash, the second a little greater, behind a load."""
    if marks[place].kind is not Kind.DASH or kind_at(marks, place - 2) not in (Kind.X, Kind.FOR):
        return False
    low, high = marks[place - 1].value, marks[place + 1].value if place + 1 < len(marks) else None
    alone = kind_at(marks, place + 2) not in (Kind.DASH, Kind.X, Kind.NUM)
    tight = marks[place].tight and place + 1 < len(marks) and marks[place + 1].tight
    return tight and alone and low is not None and high is not None and low < high <= low + _WIDEST
