"""How many sets the client left it at, and why: `75x6 75x6, left it at two because my wrist hurt`.

As many as were told of the exercise, and too few to be the repetitions of a set that was broken off: what is left of
it is given up.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LEAVING = frozenset(words("left leaving kept keeping capped capping limited limiting held"))
_IT = frozenset(words("it them that things"))
_LED = frozenset(words("so i and but then just only had to decided id i've ive"))
_TO = frozenset(words("at to with"))
_BECAUSE = frozenset(words("because cause cos cuz coz bc since as so for due thanks given in to with after the my "
                           "and then this today now"))  # fmt: skip
_LINKS = (Kind.X, Kind.FOR)
_LEAST, _MOST = 3, 6
"""Words that lead to the number at least, and marks at most."""
NEEDS = _LEAVING


def with_left_at_sets(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as those that give up what is left of the exercise."""
    out = list(marks)
    for place in range(len(marks) - 1, 1, -1):
        mark = marks[place]
        start = _start(marks, place)
        if start is None or mark.value is None or not 0 < mark.value <= FEW_SETS:
            continue
        end = place + 1 + (kind_at(marks, place + 1) is Kind.SETS)
        closed = kind_at(marks, end) in (None, *EDGES) or bool(set(text_at(marks, end).split()[:1]) & _BECAUSE)
        reps = _told(marks, start)
        if not closed or kind_at(marks, end) is Kind.QUERY or len(reps) != mark.value:
            continue
        if end == place + 1 and mark.value * 2 > min(reps):
            continue
        stop = replace(marks[start], kind=Kind.SKIP, text="stopping", value=None)
        rest = replace(marks[place], kind=Kind.THEREST, text="of it", value=None, end=marks[end - 1].end)
        reason = kind_at(marks, end) not in (None, *EDGES)
        behind = [replace(rest, kind=Kind.COMMA, text=",", start=rest.end)] if reason else []
        ahead = start and kind_at(marks, start - 1) not in EDGES
        before = [replace(stop, kind=Kind.COMMA, text=",", end=stop.start)] if ahead else []
        out[start:end] = [*before, stop, rest, *behind]
    return out


def _start(marks: Sequence[Mark], place: int) -> int | None:
    """Where `so I left it at` starts before a number; `None` where it does not stand there."""
    if kind_at(marks, place) is not Kind.NUM or marks[place].parts:
        return None
    said = [w for m in marks[max(0, place - 5) : place] for w in m.text.split()]
    if len(said) < _LEAST or said[-1] not in _TO or said[-2] not in _IT or said[-3] not in _LEAVING:
        return None
    at = place
    while at > 0 and set(text_at(marks, at - 1).split()) <= _LEAVING | _IT | _LED | _TO and place - at < _MOST:
        at -= 1
    return at


def _told(marks: Sequence[Mark], end: int) -> list[Decimal]:
    """The repetitions of each set told since the last name before a place; none where it is not plain."""
    name = next((i for i in range(end - 1, -1, -1) if marks[i].kind is Kind.NAME), None)
    if name is None:
        return []
    said = [m for m in marks[name + 1 : end] if m.kind in (Kind.NUM, *_LINKS, Kind.RPE, Kind.RIR, Kind.SLASH, Kind.AT)]
    if any(m.kind not in (Kind.NUM, *_LINKS) or m.parts for m in said):
        return []
    links = [i for i, m in enumerate(said) if m.kind in _LINKS]
    values = [m.value or Decimal(0) for m in said if m.kind is Kind.NUM]
    if not links:
        return values[1:]
    kinds = [m.kind in _LINKS for m in said]
    if kinds == [False, True, False, True, False]:
        return [values[1]] * int(values[2])
    if kinds == [False, True, *[False] * (len(kinds) - 2)]:
        return values[1:]
    pairs = len(kinds) % 3 == 0 and kinds == [False, True, False] * (len(kinds) // 3)
    return values[1::2] if pairs else []
