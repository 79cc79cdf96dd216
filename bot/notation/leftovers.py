"""Numbers that nothing was made of: beside sets that are kept, such a number may be one of them, and is asked about."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.talk import is_named_so
from bot.notation.tokens import Mark

_TELLING = (Kind.OTHERPERSON, Kind.OTHERTIME, Kind.TALKNUM, Kind.ASKING, Kind.HOURS, Kind.MINUTES, Kind.LASTREP)


def unread_number(marks: Sequence[Mark], taken_for_talk: set[int]) -> Mark | None:
    """The first bare number taken for talk that ends its part, where no word says what it counts: `then one more, 5`.

    `7` of `gym at 7`, `5` of `5 hours sleep` and `3` of `on rep 3` are told by their words.
    """
    for place in sorted(taken_for_talk):
        mark = marks[place]
        if mark.kind is not Kind.NUM or mark.value is None or mark.text.isalpha():
            continue
        ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
        before = marks[place - 1] if place else None
        told = before is not None and (
            before.kind in (Kind.AT, Kind.FOR, Kind.WORD, Kind.BODY) or before.text in ("rep", "by")
        )
        told = told or is_named_so(marks, place)
        start = place
        while start > 0 and marks[start - 1].kind not in EDGES:
            start -= 1
        part = marks[start:place]
        if ends and part and not told and not any(m.kind in _TELLING for m in part):
            return mark
    return None
