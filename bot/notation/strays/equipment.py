"""Loads that stood about and were not lifted: `there was 180 on the rack`, `60 was still on the bar`, `had 200 on it`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_THERE = frozenset(words("there theres thered"))
_PLACES = frozenset(words("bar rack machine stack pin sled it floor bench hooks there smith platform"))
_STANDING = frozenset(words("left still already sitting loaded standing stacked lying"))
_UNITS = (Kind.KG, Kind.LB)


def left_standing(marks: Sequence[Mark]) -> set[int]:
    """The places of such loads, and of what they stood on."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and _stands(marks, place):
            out |= set(range(place, _end(marks, place)))
    return out


def _end(marks: Sequence[Mark], place: int) -> int:
    at = place + 1
    while at < len(marks) and marks[at].kind not in EDGES and marks[at].text not in ("so", "but", "anyway", "lol"):
        at += 1
    return at


def _stands(marks: Sequence[Mark], place: int) -> bool:
    """`there was 180 on the rack`; `180 left on the bar`."""
    start = place
    while start > 0 and marks[start - 1].kind not in EDGES:
        start -= 1
    before = [w for m in marks[start:place] for w in m.text.split()]
    at = place + 1
    while at < len(marks) and marks[at].kind in _UNITS:
        at += 1
    after = [w for m in marks[at:_end(marks, place)] for w in m.text.split()]
    on = after[:1] == ["on"] or after[1:2] == ["on"]
    placed = on and bool(set(after[1:5]) & _PLACES)
    there = bool(set(before) & _THERE) and bool(set(before) & {"was", "were", "is", "theres", "thered"})
    return placed and (there or bool(set(after[:1]) & _STANDING) or after[:1] == ["was"])
