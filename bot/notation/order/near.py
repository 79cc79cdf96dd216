"""What stands at a place, and the kinds of mark that say what a number is."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

UNITS = (Kind.KG, Kind.LB)
OF_LOAD = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
LOADED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB)


def past(marks: Sequence[Mark], at: int, *kinds: Kind) -> int:
    """The first place from `at` on that is none of these kinds'."""
    while kind_at(marks, at) in kinds:
        at += 1
    return at


def past_fill(marks: Sequence[Mark], at: int) -> int:
    """The first place from `at` on that is no filler's."""
    return past(marks, at, Kind.FILL)


def whole_number(marks: Sequence[Mark], place: int, least: int, most: int) -> int | None:
    """The whole number at a place, within these bounds."""
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return int(value) if value is not None and value == int(value) and least <= value <= most else None


def counted_sets(beside: Mark, text: str = "sets") -> Mark:
    """The word `sets` behind a number; `group` counts what follows only, `of them` what was told before it."""
    return replace(beside, kind=Kind.SETS, text=text, value=None, parts=(), names=(), start=beside.end)
