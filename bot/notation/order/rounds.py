"""A circuit: `3 rounds of everything: 10 rows @50, 8 step ups each`; each of its exercises has as many sets."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.segments import NUMBERS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_WHOLE = frozenset(words("everything circuit each all it whole lot following"))
_PARTS = (Kind.COMMA, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.AND, Kind.THEN)
_NAMES = (Kind.NAME, Kind.WEAK)


def with_rounds(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the number of rounds before each exercise of the circuit."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.SETS and m.text.startswith("round")), None)
    if place is None or place == 0 or marks[place - 1].kind is not Kind.NUM:
        return list(marks)
    before = [m for m in marks[: place - 1] if m.kind in (*_NAMES, *NUMBERS)]
    colon = next(
        (i for i in range(place, min(place + 5, len(marks))) if marks[i].kind in (Kind.COLON, Kind.LINE)), None
    )
    named = sum(m.kind in _NAMES for m in marks[place:])
    if before or colon is None or named < 2:
        return list(marks)
    said = {w for m in marks[place + 1 : colon] for w in m.text.split()}
    if any(m.kind in NUMBERS for m in marks[place + 1 : colon]) or not (said & _WHOLE or colon == place + 1):
        return list(marks)
    return _counted(marks[colon + 1 :], marks[place - 1 : place + 1])


def _counted(marks: Sequence[Mark], count: Sequence[Mark]) -> list[Mark]:
    """The marks with the count before each part that names an exercise."""
    out: list[Mark] = []
    part: list[Mark] = []
    for mark in [*marks, None]:
        if mark is not None and mark.kind not in _PARTS:
            part.append(mark)
            continue
        if any(m.kind in _NAMES for m in part) and not any(m.kind in (Kind.SETS, Kind.X) for m in part):
            out += [count[0], replace(count[1], text="sets")]
        out += part
        part = []
        if mark is not None:
            out.append(mark)
    return out
