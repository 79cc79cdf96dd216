"""A repetition that failed, told with its exercise, its kit or its set: `failed the 6th chin`, `the 9th on set 3`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def with_failed_named(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the exercise before what failed, and without the kit behind it: nothing is skipped by them."""
    marks = _with_set_told(marks)
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.FAILED or kind_at(marks, place + 1) is not Kind.ORD:
            continue
        if kind_at(marks, place + 2) is Kind.NAME and _ends(marks, place + 3):
            out[place : place + 3] = [marks[place + 2], mark, marks[place + 1]]
        elif kind_at(marks, place + 2) is Kind.WITH:
            at = place + 3
            while kind_at(marks, at) is Kind.FILL:
                at += 1
            if kind_at(marks, at) is Kind.WEAK:
                out[place + 2 : at + 1] = [replace(m, kind=Kind.FILL) for m in marks[place + 2 : at + 1]]
    return out


def _with_set_told(marks: Sequence[Mark]) -> list[Mark]:
    """`10, 10, failed the 10th on the third so 9`: the set itself, then what failed in it."""
    for place in range(len(marks) - 3):
        if [m.kind for m in marks[place : place + 2]] != [Kind.FAILED, Kind.ORD]:
            continue
        of = _past(marks, place + 2, (Kind.REPS,))
        which = _past(marks, of, (Kind.AT, Kind.WITH, Kind.FILL))
        if which == of or kind_at(marks, which) not in (Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.SET):
            continue
        numbered = kind_at(marks, which) is Kind.SET and kind_at(marks, which + 1) is Kind.NUM
        behind = _past(marks, which + 1 + numbered, (Kind.SET,))
        at = _past(marks, behind, (Kind.COMMA, Kind.STOP, Kind.DASH, Kind.ARROW, Kind.FILL))
        entry = at + 2 if [kind_at(marks, at), kind_at(marks, at + 1)] == [Kind.NUM, Kind.X] else at
        got = marks[entry].value if kind_at(marks, entry) is Kind.NUM else None
        whole = kind_at(marks, entry + 1) in (None, *EDGES, Kind.NAME, Kind.DASH, Kind.SLASH)
        if got is not None and whole and got + 1 == marks[place + 1].value:
            before = list(marks[:place])
            comma = replace(marks[place], kind=Kind.COMMA, text=",")
            before += [] if kind_at(marks, place - 1) is Kind.COMMA else [comma]
            return [*before, *marks[at : entry + 1], *marks[place : place + 2], *marks[entry + 1 :]]
    return list(marks)


def _past(marks: Sequence[Mark], at: int, kinds: tuple[Kind, ...]) -> int:
    while kind_at(marks, at) in kinds:
        at += 1
    return at


def _ends(marks: Sequence[Mark], place: int) -> bool:
    """Whether the part ends here, or goes on with talk."""
    return place >= len(marks) or marks[place].kind in (*EDGES, Kind.FILL, Kind.WORD)
