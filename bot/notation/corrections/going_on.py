"""A correction that goes on with the next sets: `no 9, 8` in a list, `make that 5, 100x4`, `no 50x10 then 50x8`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO)
_LITTLE = (*_CUES, Kind.FILL, Kind.COMMA, Kind.STOP, Kind.WAS, Kind.CLOSE, Kind.GAP)
_LISTED = (Kind.NO, Kind.NUM, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.FILL, Kind.AND)
_PAIRS = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])


def with_next(piece: list[Mark]) -> tuple[list[Mark], list[Mark]]:
    """What the set before really was, and what is told of the next ones; the piece and nothing where it tells none."""
    if not piece or piece[0].kind not in _CUES:
        return piece, []
    comma = next((i for i in range(1, len(piece)) if piece[i].kind is Kind.COMMA and piece[i - 1].kind is Kind.NUM), 0)
    if comma and _told(piece[:comma]) == [Kind.NUM] and [m.kind for m in piece[comma + 1 : comma + 4]] in _PAIRS:
        return piece[:comma], piece[comma + 1 :]
    name = next((i for i, m in enumerate(piece) if m.kind is Kind.NAME), 0)
    joined = name > 1 and piece[name - 1].kind in (Kind.AND, Kind.THEN, Kind.PLUS, Kind.COMMA)
    if joined and _told(piece[: name - 1]) == [Kind.NUM] and Kind.NUM in _told(piece[name:]):
        return piece[: name - 1], piece[name:]
    then = next((i for i, m in enumerate(piece) if m.kind is Kind.THEN), len(piece))
    if _told(piece[:then]) in _PAIRS and _told(piece[then + 1 :]) in _PAIRS:
        return piece[:then], piece[then + 1 :]
    comma = next((i for i, m in enumerate(piece) if m.kind is Kind.COMMA and i > 1), 0)
    if piece[0].kind is Kind.NO and comma and all(m.kind in _LISTED for m in piece):
        return piece[:comma], piece[comma + 1 :]
    return piece, []


def _told(marks: Sequence[Mark]) -> list[Kind]:
    """The kinds of what is told, without the little words beside it."""
    return [m.kind for m in marks if m.kind not in _LITTLE]
