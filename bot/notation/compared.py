"""Numbers that tell how far a set is from another time's: `2 more reps than last week`, `up 2.5kg on last week`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_UNITS = ("rep", "reps", "kg", "kgs", "kilo", "kilos", "lb", "lbs", "pounds")


def is_compared(marks: Sequence[Mark], place: int) -> bool:
    """`2 more reps than last week`, `2.5kg more than before`, `1 rep pb`."""
    if _is_step(marks, place):
        return True
    following = [m.text for m in marks[place + 1 : place + 4]]
    if following[:1] == ["more reps"] and following[1:2] in (["than"], ["on"]):
        return True
    beside = [w for text in following for w in text.split()]
    by = beside[beside[:1] in ([unit] for unit in _UNITS) :]
    if by[:1] in (["fewer"], ["less"], ["lighter"], ["heavier"]) and "than" in by:
        return True
    if following[1:3] == ["more", "than"] or following[1:2] == ["more than"]:
        return True
    return len(following) > 1 and following[0] in _UNITS and following[1] in ("pb", "pr", "up", "heavier", "lighter")


def _is_step(marks: Sequence[Mark], place: int) -> bool:
    """`up 2.5kg on last week: 62.5x6`, `2.5 more than last week`: how far from another time's load, not a load."""
    at = place + 1
    while at < len(marks) and at < place + 4 and marks[at].kind in _STEPS:
        at += 1
    told = at < len(marks) and at > place + 1 and marks[at].text.startswith(("last ", "than", "before"))
    led = place > 0 and marks[place - 1].text in _FARTHER
    value = marks[place].value
    small = (
        value is not None and value <= _STEP and _ends_its_part(marks, place) and any(m.kind is Kind.X for m in marks)
    )
    return (told and (led or any(m.text in _FARTHER for m in marks[place:at]))) or (led and small)


_STEPS = (Kind.KG, Kind.LB, Kind.AT, Kind.FILL, Kind.MORE, Kind.WORD)
_FARTHER = ("up", "down", "more", "less", "heavier", "lighter")
_STEP = 10
"""A greater number after `up` is what was lifted (common practice, no source)."""


def _ends_its_part(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number ends its part with its unit."""
    has_unit = place + 1 < len(marks) and marks[place + 1].kind in (Kind.KG, Kind.LB)
    return has_unit and (place + 2 >= len(marks) or marks[place + 2].kind in EDGES)
