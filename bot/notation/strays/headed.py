"""The plan written out before what was done: `plan: 100x5. actual: 97.5x5`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_PLAN = frozenset(words("plan planned target prescribed goal prescription programmed aim sheet"))
_DONE = frozenset(words("actual actually did done got real reality result managed today me"))
_ENDS = (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.BREAK, Kind.QUERY)
_SEPARATORS = (Kind.COLON, Kind.DASH)


def headed(marks: Sequence[Mark]) -> set[int]:
    """The places of what the plan was, where what was done is told behind it."""
    out: set[int] = set()
    for place, mark in enumerate(marks[:-1]):
        if not set(mark.text.split()) & _PLAN or marks[place + 1].kind not in _SEPARATORS:
            continue
        end = place + 1
        while end < len(marks) and marks[end].kind not in _ENDS and not set(marks[end].text.split()) & _DONE:
            end += 1
        done = {w for m in marks[end : end + 3] for w in m.text.split()} & _DONE
        if done and any(m.kind is Kind.NUM for m in marks[end:]):
            out |= set(range(place, end))
    return out
