"""What happened twice beside a set, and is no second set: `35x7, dropped the bar twice`, `counted one twice`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_HAPPENED = frozenset(words(
    "counted miscounted dropped stopped paused rested slipped lost had missed re-racked racked rang sneezed tripped",
    "checked tried stumbled",
))  # fmt: skip
_TOLD = frozenset((Kind.NUM, Kind.SAME, Kind.SAMELOAD, Kind.AGAIN, Kind.X, Kind.REPS, Kind.SETS, Kind.ALL, Kind.DONE))
"""Kinds of what can be done twice over."""
_FAR = 5
"""Marks in which it is told what happened."""


def without_idle_times(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `twice` as a word that changes nothing, behind what happened to something."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.TIMES or mark.text != "twice":
            continue
        for before in reversed(marks[max(0, place - _FAR) : place]):
            if before.kind in _TOLD or before.kind in EDGES:
                break
            if before.kind is not Kind.DROP and _HAPPENED & set(before.text.split()):
                out[place] = replace(mark, kind=Kind.FILL)
    return out
