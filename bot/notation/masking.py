"""Marks that have no bearing on the sets: they keep their place in the message, and nothing is made of them."""

from collections.abc import Collection, Sequence

from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.tokens import Mark


def masked(marks: Sequence[Mark], places: Collection[int]) -> list[Mark]:
    """The marks with those at these places without bearing on the sets. Lines stay: they part what they part."""
    out = list(marks)
    for place in places:
        if 0 <= place < len(out) and out[place].kind is not Kind.LINE:
            out[place] = replace(out[place], kind=Kind.GAP, value=None, parts=())
    return out


def unsaid(marks: Sequence[Mark], places: Collection[int]) -> list[Mark]:
    """The marks with those at these places without bearing, and without their words: nothing is told by them."""
    gone = frozenset(places)
    return [replace(m, text="?", names=()) if i in gone else m for i, m in enumerate(masked(marks, gone))]
