"""Plates called by their colour: `2 reds and a green on each side`. What each weighs only the gym knows."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_COLOURS = words("red blue green yellow white black grey gray orange purple pink silver")
COLOURED = frozenset([*_COLOURS, *(colour + "s" for colour in _COLOURS)])
BESIDE_COLOURS = frozenset(words("side sides plates plate bumpers discs colour colours color colors end ends"))
"""Words that tell beside a colour that plates are meant."""
_LINKS = (Kind.X, Kind.FOR, Kind.REPS)


def coloured_plates(marks: Sequence[Mark]) -> set[int]:
    """The places of how many plates of a colour there are, with the side that they are on.

    None where repetitions stand straight behind them (`2 reds a side x 5`): the load of that set is asked about.
    """
    counted = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and text_at(marks, i + 1) in COLOURED]
    if not counted:
        return set()
    said = [w for m in marks for w in m.text.split()]
    if BESIDE_COLOURS.isdisjoint(said) and sum(word in COLOURED for word in said) <= 1:
        return set()
    out: set[int] = set()
    for place in counted:
        end = place + 2
        while text_at(marks, end) in (*COLOURED, "and", "a", "one", "plates", "bumpers", "discs", "on", "per"):
            end += 1
        end += kind_at(marks, end) is Kind.EACH
        if kind_at(marks, end) not in _LINKS:
            out |= set(range(place, end))
    return out
