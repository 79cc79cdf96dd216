"""The load of the set before, told behind a count: `a final set of ten at the same weight`, `10 same weight`."""

from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BETWEEN = (Kind.FILL, Kind.REPS, Kind.AT, Kind.WITH, Kind.EACH)


def same_load(marks: list[Mark]) -> list[Mark]:
    """The marks with such words before their count, where they end their part and the count has no load of its own."""
    marks = _compared(marks)
    out = list(marks)
    for place, mark in enumerate(marks):
        ends = place + 1 >= len(marks) or marks[place + 1].kind in (*EDGES, Kind.AND, Kind.THEN)
        if mark.kind is not Kind.SAMELOAD or not ends:
            continue
        at = place - 1
        while kind_at(out, at) in _BETWEEN:
            at -= 1
        if kind_at(out, at) is Kind.NUM and kind_at(out, at - 1) not in (
            Kind.X,
            Kind.FOR,
            Kind.NUM,
            Kind.SET,
            Kind.SLASH,
            Kind.DASH,
        ):
            out.insert(at, out.pop(place))
    return out


def _compared(marks: list[Mark]) -> list[Mark]:
    """`same weight as before but 12 this time`: what the load is like, and no set told once more."""
    out = list(marks)
    for place in range(1, len(marks)):
        like = marks[place].kind is Kind.SAME and marks[place].text.split(" ")[0] in ("as", "like")
        if like and marks[place - 1].kind is Kind.SAMELOAD and any(m.kind is Kind.NUM for m in marks[place:]):
            out[place] = replace(marks[place], kind=Kind.FILL)
    return out
