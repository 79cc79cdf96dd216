"""How many there were of what was told before: `80 by 8, 3 of em`, `80x8, three sets of that`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.how_many.of_each import ENDS, is_few
from bot.notation.order.near import counted_sets
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_THEM = frozenset(words("them em those these"))
_OF = ("of", "sets of", "set of", "rounds of", "sets like", "like")
_LITTLE = frozenset(words("now today in total so far done haha lol yep yes ok nice phew please each"))


def of_them(marks: list[Mark]) -> list[Mark]:
    """`80 by 8, 3 of em`, `80x8, three sets of that`: how many of what was told before it."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        said = [m.text for m in marks[at + 1 : at + 3]]
        counted = len(said) > 1 and said[0] in _OF and (said[1] in _THEM or said[1] in ("that", "it"))
        end = at + 3 if counted else at
        while end < len(marks) and marks[end].text in _LITTLE:
            end += 1
        spoken = counted and kind_at(marks, at - 1) in (Kind.AT, Kind.WITH) and kind_at(marks, at) is Kind.NUM
        if spoken and any(m.kind in (Kind.X, Kind.FOR) for m in out):
            out += [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[at : at + 3]]
            at += 3
            continue
        told = counted and (any(m.kind is Kind.NUM for m in out) or kind_at(marks, end) in (Kind.AT, Kind.WITH))
        if told and kind_at(marks, at) is Kind.NUM and _lifts(out, may_be_sets=(marks[at].value or 0) <= FEW_SETS):
            out += [marks[at], Mark(Kind.REPS, "reps", marks[at].end, marks[at + 2].end)]
            at += 3
            continue
        if told and is_few(marks, at) and kind_at(marks, end) in ENDS:
            out += [marks[at], counted_sets(marks[at + 1], "of them")]
            at += 3
            continue
        out.append(marks[at])
        at += 1
    return out


def _lifts(before: Sequence[Mark], *, may_be_sets: bool) -> bool:
    """`70 on the bar and six of em`, `calves 90, eleven of them`: a load with no repetitions yet, which `of them` then
    tells; where it `may_be_sets` only of one that was put somewhere.
    """
    start = next((i + 1 for i in range(len(before) - 1, -1, -1) if before[i].kind in (Kind.STOP, Kind.LINE)), 0)
    kinds = [m.kind for m in before[start:]]
    said = [w for m in before[start:] for w in m.text.split()]
    loaded = bool(set(said) & _LOADING) or any(said[i : i + 2] == ["on", "it"] for i in range(len(said)))
    loaded = loaded or not may_be_sets
    return loaded and kinds.count(Kind.NUM) == 1 and not {Kind.X, Kind.FOR, Kind.REPS, Kind.SECONDS} & set(kinds)


_LOADING = frozenset(words("bar barbell loaded stack pin put"))
