"""Whether a name is one of sets, and no mention or everyday talk: `harder than bench`, `35 for 12 on the machine`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.segments.edges import EDGES
from bot.notation.tokens import Mark

_MENTION = frozenset(["after", "before", "since", "than", "like", "from", "between", "until", "versus", "vs"])
_OPENS_AFTER = (Kind.LINE, Kind.STOP)
"""What ends before a bare `after`, which means `after that`: `cleans all done. After squat 95 kg 6, 5`."""
_NEXT_TO = frozenset((Kind.NUM, Kind.COLON, Kind.CLOCK, Kind.DASH, Kind.BODY, Kind.SIGN, Kind.PLANNED, Kind.SAME))


def names_sets(piece: Sequence[Mark], place: int) -> bool:
    """Whether a name is one of sets, not a mention (`harder than bench`) or everyday talk."""
    mark = piece[place]
    following = piece[place + 1].kind if place + 1 < len(piece) else None
    before = piece[place - 1] if place else None
    if before is not None and before.text.split()[-1:] and before.text.split(" ")[-1] in _MENTION:
        if before.text == "after" and following is Kind.NUM and (place == 1 or piece[place - 2].kind in _OPENS_AFTER):
            return True
        return following in (Kind.NUM, Kind.COLON) and before.text.split(" ")[-1] in ("from", "like")
    if mark.kind is Kind.WEAK:
        after = piece[place + 2].kind if place + 2 < len(piece) else None
        told = following is Kind.WAS and after in (Kind.NUM, Kind.CLOCK)
        linked = following in (Kind.WITH, Kind.AT) and after in (Kind.NUM, Kind.BODY)
        linked = linked and len(mark.names) == 1 and (before is None or before.kind in (*EDGES, Kind.FILL))
        told = told or (following is Kind.DONE and after is Kind.NUM and len(mark.names) == 1)
        several = len(mark.names) > 1 and _is_told_of(piece, place)
        headed = several or _heads_next(piece, place)
        return following in _NEXT_TO or told or linked or headed
    return True


def _is_told_of(piece: Sequence[Mark], place: int) -> bool:
    """`did one set of calves, 15 reps`: everyday words that may be two exercises, straight before their count."""
    told = [m.kind for m in piece[place + 1 : place + 4]]
    return told[:2] == [Kind.COMMA, Kind.NUM] and told[2:] in ([Kind.REPS], [Kind.FOR], [Kind.X])


def _heads_next(piece: Sequence[Mark], place: int) -> bool:
    """`after that the machine shoulder, 35 for 12`: a name of two everyday words that opens its part, and its set."""
    if len(piece[place].names) != 1 or len(piece[place].text.split()) == 1:
        return False
    before = place - 1
    while before >= 0 and piece[before].kind is Kind.FILL:
        before -= 1
    opens = before < 0 or piece[before].kind in EDGES
    told = [m.kind for m in piece[place + 1 : place + 4]]
    return opens and told in ([Kind.COMMA, Kind.NUM, Kind.FOR], [Kind.COMMA, Kind.NUM, Kind.X])
