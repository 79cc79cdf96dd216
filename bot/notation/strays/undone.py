"""Numbers of what a message says was not done: `didn't fancy 105 so stuck at 100`, `couldn't get 6, got 5`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NEVER = frozenset(words("didnt dont couldnt wouldnt wasnt cant wont never not didn havent"))
_VERBS = frozenset(words("fancy want feel dare risk try face manage get go do reach hit touch attempt make like ready"))
_BETWEEN = frozenset(words("to for the quite even at on like up doing going a any"))
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.REPS)
_MOST = 5
"""Words between a denial and its number."""


def undone(marks: Sequence[Mark]) -> set[int]:
    """The places of such numbers, where a number follows that says what was done."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or not _is_denied(marks, place):
            continue
        end = place + 1
        while end < len(marks) and marks[end].kind in _UNITS:
            end += 1
        ends = end < len(marks) and (marks[end].kind in EDGES or marks[end].text in ("so", "but", "just", "only"))
        if ends and any(m.kind is Kind.NUM for m in marks[end:]):
            out |= set(range(place, end))
    return out


def _is_denied(marks: Sequence[Mark], place: int) -> bool:
    verb = False
    at, seen = place - 1, 0
    while at >= 0 and seen < _MOST and marks[at].kind not in EDGES:
        said = marks[at].text.split()
        for word in reversed(said):
            seen += 1
            if word in _NEVER:
                return verb and marks[at].kind not in (Kind.EMPTY, Kind.FAILED)
            if word not in _VERBS and word not in _BETWEEN:
                return False
            verb = verb or word in _VERBS
        at -= 1
    return False
