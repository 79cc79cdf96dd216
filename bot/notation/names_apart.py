"""Where the sets of one exercise end and those of the next begin, whatever parts a piece has.

`24x15, 24x14 swings, 12x10, 12x9 curls` names each exercise straight behind its sets; `10 times i did bench with 80`
begins the next one without a comma.
"""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_NAMES = (Kind.NAME, Kind.WEAK)
_BETWEEN = (Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.AND, Kind.THEN, Kind.SLASH, Kind.FILL)
_ENDS_SET = (Kind.NUM, Kind.KG, Kind.LB, Kind.REPS, Kind.EACH, Kind.TIMES, Kind.SETS, Kind.S, Kind.HAND)
_OF_SETS = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.BAD, Kind.SAMELOAD)


def sets_before_names(piece: Sequence[Mark]) -> list[tuple[Mark, tuple[Mark, ...]]]:
    """Each name with the sets before it, each straight behind its own, two at least; else nothing."""
    names = [i for i, m in enumerate(piece) if m.kind in _NAMES]
    if len(names) <= 1 or any(m.kind in _OF_SETS for m in piece[names[-1] + 1 :]):
        return []
    out: list[tuple[Mark, tuple[Mark, ...]]] = []
    start = 0
    for place in names:
        told = list(piece[start:place])
        while told and told[0].kind in _BETWEEN:
            told.pop(0)
        while told and told[-1].text in ("the", "my", "of"):
            told.pop()
        whole = any(m.kind in (Kind.X, Kind.FOR) for m in told) and told[-1].kind in _ENDS_SET
        ends = place + 1 >= len(piece) or piece[place + 1].kind in (*_BETWEEN, Kind.NUM)
        if not (whole and ends and piece[place].names):
            return []
        out.append((piece[place], tuple(told)))
        start = place + 1
    return out


def begun_parts(piece: Sequence[Mark]) -> list[Sequence[Mark]]:
    """The piece cut before each `i did` that a name and its numbers follow."""
    out: list[Sequence[Mark]] = []
    start = 0
    for place, mark in enumerate(piece):
        if mark.kind in _NAMES and _is_begun(piece, place) and any(m.kind in _OF_SETS for m in piece[start:place]):
            out.append(piece[start:place])
            start = place
    return [*out, piece[start:]]


def _is_begun(piece: Sequence[Mark], place: int) -> bool:
    at = place - 1
    while at >= 0 and piece[at].text in ("the", "my", "some"):
        at -= 1
    did = at >= 0 and piece[at].text.split()[-1:] in (["did"], ["doing"])
    mine = at > 0 and (piece[at].text.split()[:1] in (["i"], ["then"]) or piece[at - 1].text in ("i", "then", "and"))
    return did and mine and any(m.kind is Kind.NUM for m in piece[place + 1 : place + 4])
