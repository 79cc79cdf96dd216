"""Marks put in the order in which sets are written: a unit after its number, a load beside the sets it is of.

`kg 55 reps 12`, `53lb swings 15 15`, `180lb` on a line above its sets, `1. set 80x15`, `22 point 5`, `two times rows`.
"""

from collections.abc import Sequence

from bot.notation.order.figures import counts_by_name, numbered, with_decimals, with_hundreds
from bot.notation.order.headings import before_names, heading_loads
from bot.notation.order.meanings import by_neighbours
from bot.notation.order.placing import another, failed_last, labels_first, likes, mentions, numbered_all, the_others
from bot.notation.order.units import fields
from bot.notation.tokens import Mark

__all__ = ["ordered"]


def ordered(marks: Sequence[Mark]) -> list[Mark]:
    """The marks in that order."""
    said = counts_by_name(likes(with_decimals(with_hundreds(numbered(mentions(list(marks)))))))
    said = heading_loads(before_names(fields(another(failed_last(labels_first(the_others(numbered_all(said))))))))
    return [by_neighbours(said, place) for place in range(len(said))]
