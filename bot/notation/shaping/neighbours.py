"""What may stand beside what: a mark's neighbours, and the kinds that join, follow or part numbers."""

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

TAILS = frozenset(
    (Kind.KG, Kind.LB, Kind.REPS, Kind.SECONDS, Kind.MINUTES, Kind.METRES, Kind.SETS, Kind.TIMES, Kind.S, Kind.M,
     Kind.HAND, Kind.TOTAL, Kind.EACH, Kind.ASSIST, Kind.ADDED, Kind.PLATES, Kind.LEFTPOST, Kind.RIGHTPOST, Kind.BODY)
)  # fmt: skip
"""What may stand after a number and say what it counts."""
LINKS = frozenset((Kind.X, Kind.FOR, Kind.AT, Kind.WITH))
PREFIXES = frozenset((Kind.SIGN, Kind.BODY, Kind.ADDED, Kind.ASSIST, Kind.PAIR))
SEPARATORS = frozenset(
    (Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.AND, Kind.THEN, Kind.COLON, Kind.OPEN, Kind.CLOSE,
     Kind.ARROW, Kind.PART)
)  # fmt: skip


def is_number(mark: Mark | None) -> bool:
    """Whether a mark is a number."""
    return mark is not None and mark.kind in (Kind.NUM, Kind.CLOCK)
