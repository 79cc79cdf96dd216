"""A weight that was let fall: `no grip, i just dropped the 16`, `dropped the 60s on the floor`; no set's load."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_DROPPED = frozenset(("dropped the", "dropping the", "drop the"))
_UNITS = (Kind.KG, Kind.LB, Kind.S)
_BEHIND = frozenset(words("on onto and when as so in right straight there today twice again mid"))
_SETS = (Kind.NUM, Kind.NAME, Kind.REPS, Kind.ORD, Kind.LASTREP)


def let_fall(marks: Sequence[Mark]) -> set[int]:
    """The places of such a weight and its verb, where the clause tells no repetition and no other load."""
    out: set[int] = set()
    for place in range(1, len(marks)):
        if marks[place].kind is not Kind.NUM or text_at(marks, place - 1) not in _DROPPED:
            continue
        end = place + 1
        while kind_at(marks, end) in _UNITS:
            end += 1
        ends = end >= len(marks) or marks[end].kind in EDGES or set(text_at(marks, end).split()[:1]) <= _BEHIND
        stop = end
        while stop < len(marks) and marks[stop].kind not in EDGES:
            stop += 1
        if ends and not any(m.kind in _SETS for m in marks[end:stop]):
            out |= set(range(place - 1, end))
    return out
