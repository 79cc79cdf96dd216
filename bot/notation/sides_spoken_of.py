"""A side of which something is said that is no number: `left only, right still to come`, `lefty is a princess`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

SIDES = (Kind.LEFT, Kind.RIGHT)
_TO_COME = frozenset(words("still to come coming next follow go later now is after up yet"))
_LITTLE = frozenset(words("to is now after up"))
"""Words of those above that alone do not say that a side is to come."""
_TALKING = (Kind.WAS, Kind.FILL, Kind.WORD)


def without_sides_spoken_of(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks without such parts of a message that names sides more than once."""
    sides = [i for i, m in enumerate(marks) if m.kind in SIDES]
    if len(sides) < SEVERAL:
        return marks
    out = list(marks)
    for place in sides:
        end = place + 1
        while end < len(marks) and marks[end].kind not in EDGES:
            end += 1
        opens = place == 0 or marks[place - 1].kind in EDGES or marks[place - 1].kind is Kind.AND
        rest = marks[place + 1 : end]
        if opens and (_is_to_come(rest) or _is_talk(rest)):
            out[place:end] = [replace(m, kind=Kind.GAP, value=None) for m in marks[place:end]]
    return out


def _is_to_come(rest: Sequence[Mark]) -> bool:
    """`right still to come`, `left next`: that side has not been done."""
    said = {w for m in rest for w in m.text.split()}
    return bool(said) and said <= _TO_COME and not said <= _LITTLE


def _is_talk(rest: Sequence[Mark]) -> bool:
    """`lefty is a princess`: what the side is, in a word that tells nothing of sets."""
    return kind_at(rest, 0) is Kind.WAS and rest[-1].kind is Kind.WORD and all(m.kind in _TALKING for m in rest)
