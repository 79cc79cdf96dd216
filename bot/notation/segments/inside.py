"""Whether a name stands inside its set, and not before or behind it: `5 on bench at 60`, `16s splits 9, 9, 8`."""

from collections.abc import Sequence
from itertools import pairwise

from bot.notation.halves import is_only_timed
from bot.notation.kinds import Kind
from bot.notation.segments.edges import EDGES, NUMBERS
from bot.notation.tokens import Mark


def is_whole(piece: Sequence[Mark], place: int, before: Sequence[Mark]) -> bool:
    """Whether what stands before a name is all that is told of it in its part."""
    alone = not _numbers_in_part(piece, place + 1)
    return alone or is_only_timed(before, piece[place + 1 :])


def is_between(piece: Sequence[Mark], place: int, before: Sequence[Mark]) -> bool:
    """Whether a name stands inside its set: `5 on bench at 60`, `115 on press got 3 and 2`, `3,2 press 115lb`."""
    if is_inside(piece, place):
        return True
    numbers = [m for m in before if m.kind in NUMBERS]
    rest = _own(piece, place)
    if any(m.kind in (Kind.X, Kind.AT) for m in rest):
        return False
    if _is_load_ahead(before, rest):
        return True
    last = next((m for m in reversed(before) if m.kind is not Kind.FILL), None)
    led = last is not None and last.text.split()[:1] in (["on"], ["for"])
    bare = not any(m.kind in (Kind.X, Kind.FOR) for m in before if m is not last)
    if len(numbers) == 1 and led and bare and any(m.kind is Kind.NUM for m in rest):
        return True
    return bool(numbers) and is_bare_list(before) and is_load_behind(piece, place)


def _is_load_ahead(before: Sequence[Mark], rest: Sequence[Mark]) -> bool:
    """Whether a load alone stands before a name and its counts behind: `16s splits 9, 9, 8`, `14kg hammers 12 reps`."""
    load = [m.kind for m in before if m.kind is not Kind.FILL]
    counts = [m.kind for m in rest if m.kind is not Kind.FILL]
    loaded = len(load) > 1 and load[0] is Kind.NUM and all(k in _LOADED for k in load[1:])
    weighed = any(a is Kind.NUM and b in _LOADED for a, b in pairwise(counts))
    return loaded and counts[:1] == [Kind.NUM] and not weighed and Kind.FOR not in counts


def _own(piece: Sequence[Mark], place: int) -> Sequence[Mark]:
    """What follows a name up to the end of its sentence, or to the part of the next name."""
    end = place + 1
    while end < len(piece) and piece[end].kind not in (*_STOPS, Kind.NAME):
        end += 1
    if end < len(piece) and piece[end].kind is Kind.NAME:
        edges = [i for i in range(place + 1, end) if piece[i].kind in EDGES]
        end = edges[-1] if edges else place + 1
    return piece[place + 1 : end]


_STOPS = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)


def is_bare_list(marks: Sequence[Mark]) -> bool:
    """Whether marks are numbers and what parts them: `10 and 12`."""
    plain = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.FILL, Kind.SLASH, Kind.REPS, Kind.AT, Kind.WITH, Kind.FOR)
    led = [m for m in marks if m.kind in (Kind.AT, Kind.WITH, Kind.FOR) and m.text not in ("on", "on the", "for")]
    return any(m.kind is Kind.NUM for m in marks) and all(m.kind in plain for m in marks) and not led


def is_load_behind(piece: Sequence[Mark], place: int) -> bool:
    """Whether a load with its unit and nothing else follows a name: `3,2 push press 115lb`."""
    rest = [m.kind for m in piece[place + 1 : place + 7] if m.kind not in (Kind.FILL, Kind.OPEN, Kind.CLOSE)]
    rest = rest[1:] if rest[:1] == [Kind.COMMA] and len(rest) > 2 and rest[2] in (Kind.HAND, Kind.S) else rest
    loaded = rest[:1] == [Kind.NUM] and len(rest) > 1 and rest[1] in _LOADED
    return loaded and rest[2:3] in ([], [Kind.STOP], [Kind.LINE], [Kind.COMMA])


_LOADED = (Kind.KG, Kind.LB, Kind.HAND, Kind.S)


def is_inside(piece: Sequence[Mark], place: int) -> bool:
    """Whether a name stands inside its set: `5 on bench at 60`."""
    following = [m for m in piece[place + 1 : place + 4] if m.kind is not Kind.FILL]
    return (
        len(following) > 1 and following[0].kind in (Kind.AT, Kind.WITH) and following[1].kind in (*NUMBERS, Kind.PLUS)
    )


def _numbers_in_part(piece: Sequence[Mark], at: int) -> bool:
    start = at
    while at < len(piece) and piece[at].kind not in EDGES:
        at += 1
    told = [m.kind for m in piece[start:at] if m.kind in NUMBERS]
    return bool(told) and told != [Kind.BODY]
