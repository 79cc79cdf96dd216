"""What stands at a place, and the kinds of mark that say what a number is."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

UNITS = (Kind.KG, Kind.LB)
OF_LOAD = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
LOADED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB)


def kind_at(marks: Sequence[Mark], place: int) -> Kind | None:
    """The kind of mark at a place; `None` beyond either end."""
    return marks[place].kind if 0 <= place < len(marks) else None
