"""Whether all that stands behind a place in its part is how hard it was: `… but rpe 9 this time`, `… 2 left`."""

from collections.abc import Sequence

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_RATES = (Kind.RPE, Kind.RIR)
_RATED = (Kind.RIR, Kind.RPE, Kind.RIRPOST, Kind.RPEPOST, Kind.TANK, Kind.LEFT)
_LINKS = (Kind.WITH, Kind.AT)
_MOST = 10
"""The highest effort; a number over it behind `@` is a load."""


def is_effort(marks: Sequence[Mark], start: int) -> bool:
    """Whether the part holds an effort from `start` on, and nothing else but little words."""
    _, end = part_of(marks, start)
    said = [m for m in marks[start:end] if m.kind not in (Kind.FILL, Kind.TIMES, Kind.FEELS)]
    if said and said[0].kind in _LINKS and len(said) > 1 and said[1].kind in _RATES:
        said = said[1:]
    kinds = [m.kind for m in said]
    if kinds == [Kind.EMPTY]:
        return True
    if len(kinds) != 2:
        return False
    at = said[0].text == "@" and kinds == [Kind.AT, Kind.NUM] and (said[1].value or 0) <= _MOST
    return at or (kinds[0] in _RATES and kinds[1] is Kind.NUM) or (kinds[0] is Kind.NUM and kinds[1] in _RATED)
