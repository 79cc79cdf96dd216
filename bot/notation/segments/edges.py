"""What parts the parts of a piece (`60x5, rows 40x8`), and which marks are what a set is told by."""

from bot.notation.kinds import Kind

EDGES = frozenset((Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.AND, Kind.THEN))
NUMBERS = frozenset((Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.BAD, Kind.SAMELOAD))
