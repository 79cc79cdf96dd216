"""What alone is done, so that all else is given up: `only the bench and the row today`, `just squats tonight`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ONLY = frozenset(["only", "just"])
_TODAY = frozenset(["today", "tonight"])
_LITTLE = frozenset(["the", "my", "doing", "do", "did", "for", "me", "im", "i", "some", "ill", "this", "time", "so",
                     "session", "and", "got", "had", "it", "in", "energy", "today", "tonight", "plus",
                     "gonna", "coach", "boss", "mate"])  # fmt: skip
_LISTED = (Kind.NAME, Kind.WEAK, Kind.AND, Kind.PLUS, Kind.SLASH)
_FAR = 30
"""Marks that are looked at on either side."""


def only_done(marks: Sequence[Mark]) -> tuple[int, ...]:
    """The places of names that alone are to be done, where the message says that of the session; else none."""
    for place, mark in enumerate(marks):
        if mark.text == "nothing" and text_at(marks, place + 1) in ("more", "else"):
            alone = _before_nothing(marks, place)
            if alone:
                return alone
        if mark.text not in _ONLY:
            continue
        start, end = part_of(marks, place, _FAR)
        end = next((i for i in range(place, end) if marks[i].kind is Kind.COLON), end)
        ahead = [i for i in range(start, place) if marks[i].kind is Kind.NAME]
        led = all(m.kind in _LISTED or m.text in _LITTLE for m in marks[start:place])
        ends = {w for m in marks[place + 1 : end] for w in m.text.split()}
        heads = kind_at(marks, end) is Kind.COLON
        if ahead and led and (ends or heads) and ends <= _LITTLE and (ends & _TODAY or heads):
            return tuple(ahead)
        said = marks[place + 1 : end]
        plain = all(m.kind in _LISTED or set(m.text.split()) <= _LITTLE for m in said)
        names = tuple(i for i in range(place + 1, end) if marks[i].kind is Kind.NAME)
        today = any(set(m.text.split()) & _TODAY for m in (*said, *marks[max(0, place - 4) : place]))
        if (
            names
            and plain
            and (today or heads or _is_done_only(marks, place))
            and kind_at(marks, end) is not Kind.QUERY
        ):
            return names
    return ()


def _before_nothing(marks: Sequence[Mark], place: int) -> tuple[int, ...]:
    """The names of `so thrusts and nothing more`, in a part of its own; none where there are none."""
    at = place - 1
    while kind_at(marks, at) in _LISTED:
        at -= 1
    start, end = part_of(marks, place, _FAR)
    plain = all(set(m.text.split()) <= _LITTLE for m in (*marks[max(start, at - 2) : at + 1], *marks[place + 2 : end]))
    return tuple(i for i in range(at + 1, place) if marks[i].kind is Kind.NAME) if plain else ()


def _is_done_only(marks: Sequence[Mark], place: int) -> bool:
    """`only doing rows`: what is done is said beside it."""
    return any("doing" in m.text.split() for m in marks[max(0, place - 1) : place + 2])
