"""An effort that is told twice, on both scales: `60x4 @9, reckon i had one more`, `two in the tank so rpe 8`.

The second telling goes where both say the same; where they differ it stays, and is asked about.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.in_reserve import past_most
from bot.notation.tokens import Mark

TELLING = (Kind.TANK, Kind.LEFT, Kind.COULD, Kind.RIR, Kind.EMPTY)
_BETWEEN = (Kind.FILL, Kind.COMMA, Kind.AND, Kind.WAS, Kind.DASH)
_LEFT_OF = (Kind.TANK, Kind.LEFT, Kind.MORE, Kind.RIR)


def rated_twice(marks: list[Mark]) -> list[Mark]:
    """The marks without the second telling of an effort that was told on the other scale right before."""
    for place in range(1, len(marks) - 1):
        for first, second in ((_on_scale, _in_reserve), (_in_reserve, _on_scale)):
            told = first(marks, place)
            if told is None or kind_at(marks, place - 1) in (Kind.SLASH, Kind.DASH):
                continue
            start = told[1]
            while kind_at(marks, start) in _BETWEEN:
                start += 1
            again = second(marks, start) if start < len(marks) and start > told[1] else None
            if again is not None and again[0] == told[0] and _ends(marks, again[1]):
                gone = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[told[1] : again[1]]]
                return [*marks[: told[1]], *gone, *marks[again[1] :]]
    return marks


def _on_scale(marks: Sequence[Mark], at: int) -> tuple[Decimal, int] | None:
    """What is left by the `rpe 8`, `@8` that starts here, and where it ends."""
    led = kind_at(marks, at) is Kind.RPE or (kind_at(marks, at) is Kind.AT and text_at(marks, at) == "@")
    number = at + 1 + (kind_at(marks, at + 1) in (Kind.WAS, Kind.COLON))
    value = marks[number].value if led and kind_at(marks, number) is Kind.NUM else None
    return (HARDEST - value, number + 1) if value is not None and EASIEST <= value <= HARDEST else None


def _in_reserve(marks: Sequence[Mark], at: int) -> tuple[Decimal, int] | None:
    """How many are left by the `had one more in me`, `2 left`, `nothing left` that starts here, and where it ends."""
    if kind_at(marks, at) is Kind.EMPTY:
        return Decimal(0), at + 1
    could = kind_at(marks, at) in (Kind.COULD, Kind.RIR, Kind.LEFT)
    at += could
    while could and kind_at(marks, at) is Kind.FILL:
        at += 1
    another = kind_at(marks, at) is Kind.ANOTHER
    value = Decimal(1) if another else marks[at].value if kind_at(marks, at) is Kind.NUM else None
    if value is None or value > MOST_LEFT or (another and not could and kind_at(marks, at + 1) not in _LEFT_OF):
        return None
    end = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
    left = kind_at(marks, end) in _LEFT_OF
    while kind_at(marks, end) in _LEFT_OF:
        end += 1
    return (value, past_most(marks, end)) if left or could else None


def _ends(marks: Sequence[Mark], at: int) -> bool:
    ends = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE, Kind.FILL, Kind.AND, Kind.THEN, Kind.NAME)
    return kind_at(marks, at) in ends
