"""A question that the message answers itself: `curls? nope`, `planks? not today`. Its mark is read as a colon."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_NAMES = (Kind.NAME, Kind.WEAK, Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.ORD)
_DENIED = frozenset(
    [
        "nope",
        "nah",
        "naw",
        "no",
        "none",
        "never",
        "nada",
        "zero",
        "not today",
        "not tonight",
        "zero interest",
        "zero energy",
        "not a chance",
        "no chance",
        "also not",
        "also no",
        "as if",
        "yeah no",
        "yeah nah",
    ]
)
_LITTLE = frozenset(["ha", "haha", "lol", "also", "too", "as", "well", "again", "today", "tonight", "em", "them",
                     "those", "it", "i", "the", "sorry", "either", "my", "friend", "mate", "coach",
                     "boss", "my friend", "im", "afraid", "unfortunately"])  # fmt: skip
_MOST = 5
"""Words of such an answer."""


def with_self_asked(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a question's mark as a colon; what denies it behind as the word that skips."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.QUERY or kind_at(marks, place - 1) not in _NAMES or not _opens(marks, place):
            continue
        last = place
        while kind_at(marks, last + 1) is Kind.QUERY or text_at(marks, last + 1) == "!":
            last += 1
        cue = _answer(marks, last)
        if cue is None:
            continue
        out[place] = replace(mark, kind=Kind.COLON, text=":")
        out[cue] = replace(marks[cue], kind=Kind.SKIPPED)
        for at in range(place + 1, cue):
            out[at] = replace(marks[at], kind=Kind.FILL)
    return out


def _opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether the question is of names alone, in a part of its own."""
    at = place - 1
    while kind_at(marks, at) in (*_NAMES, Kind.FILL, Kind.AND):
        at -= 1
    return at < 0 or marks[at].kind in EDGES


def _answer(marks: Sequence[Mark], place: int) -> int | None:
    """The word behind that denies, in a part that says nothing else; none where there is none."""
    end = place + 1
    while end < min(len(marks), place + 1 + _MOST) and marks[end].kind not in EDGES:
        end += 1
    if kind_at(marks, end) not in (None, *EDGES) or kind_at(marks, end) is Kind.QUERY:
        return None
    cues = [i for i in range(place + 1, end) if marks[i].kind in (Kind.SKIP, Kind.SKIPPED) or marks[i].text in _DENIED]
    rest = [m for i, m in enumerate(marks[place + 1 : end], place + 1) if i not in cues]
    return cues[0] if len(cues) == 1 and all(set(m.text.split()) <= _LITTLE for m in rest) else None
