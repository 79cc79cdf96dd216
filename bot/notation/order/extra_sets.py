"""Sets that the plan does not have: `one extra hip thrust set, 90x10`, `a cheeky bonus set of thrusts 60 for 15`,
`and one extra 90x18`.

That a set is an extra one changes nothing in how it is told: the exercise that is named, or told of, gets one set more.
"""

from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

EXTRA = frozenset(["extra", "bonus", "additional"])
_ONE = frozenset(["set", "round", "set of", "round of"])
_BETWEEN = (Kind.NAME, Kind.WEAK, Kind.WORD, Kind.FILL, Kind.MORE)
_UNDONE = (Kind.COULD, Kind.NO, Kind.NOT, Kind.SKIP, Kind.SKIPPED)
_BACK = 3
"""Marks before `extra` in which a word says that the set was not done."""
_FAR = 4
"""Marks between the words of one set more and its numbers."""


def extra_sets(marks: list[Mark]) -> list[Mark]:
    """The marks with the words of such a set without bearing, where it is one."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text not in EXTRA or mark.kind not in (Kind.MORE, Kind.FILL, Kind.WORD):
            continue
        at = place + 1
        while at < place + _FAR and kind_at(marks, at) in _BETWEEN:
            at += 1
        called = kind_at(marks, at) in (Kind.SET, Kind.SETS) and marks[at].text in _ONE
        if _only_says_so(marks, place):
            out[place - 1 : place + 1] = [replace(m, kind=Kind.GAP, value=None) for m in marks[place - 1 : place + 1]]
            continue
        named = any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks[place + 1 : at + 2])
        before = place - 1
        while before >= 0 and marks[before].kind is Kind.WORD:
            before -= 1
        counted = kind_at(marks, before) is Kind.NUM
        entry = at + called
        told = kind_at(marks, entry) is Kind.NUM and kind_at(marks, entry + 1) is Kind.X
        told = told and not any(kind_at(marks, before - n) in _UNDONE for n in range(_BACK))
        if not (named or told) or (counted and marks[before].value != 1):
            continue
        if counted:
            out[before] = replace(marks[before], kind=Kind.FILL, value=None, parts=())
        out[place] = replace(mark, kind=Kind.FILL)
        if called:
            out[at] = replace(marks[at], kind=Kind.FILL)
    return out


def _only_says_so(marks: list[Mark], place: int) -> bool:
    """`60x8 (one extra)`: that the last of the sets told is an extra one."""
    one = kind_at(marks, place - 1) is Kind.NUM and marks[place - 1].value == 1
    ends = kind_at(marks, place + 1) in (None, *EDGES)
    opens = kind_at(marks, place - 2) in EDGES
    return one and ends and opens and any(m.kind in (Kind.X, Kind.FOR) for m in marks[: place - 1])
