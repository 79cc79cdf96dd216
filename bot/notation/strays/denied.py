"""Numbers that a message says it was not, then what it was: `not 105, just 100 for 5`, `wasn't 5 it was 4`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.REPS, Kind.HAND)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)


def denied(marks: Sequence[Mark], *, is_first: bool) -> set[int]:
    """The places of such numbers. `is_first`: nothing is stored that the message may correct."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NOT or place + 1 >= len(marks) or marks[place + 1].kind is not Kind.NUM:
            continue
        end = place + 2
        while end < len(marks) and marks[end].kind in _UNITS:
            end += 1
        was = end + 1 < len(marks) and marks[end].kind is Kind.WAS and marks[end + 1].kind is Kind.NUM
        if (was and is_first) or (
            _opens(marks, place) and _ends(marks, end) and _is_entry(marks, end, is_first=is_first)
        ):
            out |= set(range(place, end + was))
    return out


def _opens(marks: Sequence[Mark], place: int) -> bool:
    at = place - 1
    while at >= 0 and marks[at].kind is Kind.FILL:
        at -= 1
    return at < 0 or marks[at].kind in (Kind.STOP, Kind.LINE, Kind.NAME, Kind.NO)


def _ends(marks: Sequence[Mark], end: int) -> bool:
    entry = [m.kind for m in marks[end : end + 4] if m.kind is not Kind.FILL][:3]
    whole = entry in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
    return end < len(marks) and (marks[end].kind in EDGES or marks[end].text in ("but", "just", "only") or whole)


def _is_entry(marks: Sequence[Mark], start: int, *, is_first: bool) -> bool:
    """Whether a number follows with a link and another: a whole set, not what was stored; any number before any set."""
    numbers = [i for i in range(start, len(marks)) if marks[i].kind is Kind.NUM]
    return bool(numbers) and (is_first or any(i + 1 < len(marks) and marks[i + 1].kind in _LINKS for i in numbers[:1]))
