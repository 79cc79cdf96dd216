"""A greeting that is the name of an exercise, too: `good morning coach! 315 moved well, 3 reps`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_GREETINGS = frozenset(["good morning", "gm", "good mornin", "gd morning"])
_WHOM = frozenset(["coach", "all", "team", "sir", "miss", "boss", "mate", "everyone", "there", "chief", "hi", "hello"])
_ENDS = (Kind.STOP, Kind.COMMA, Kind.LINE)


def without_greeting(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words at the start of a message, to somebody or with an end behind them, as fillers."""
    out = list(marks)
    at = 0
    while kind_at(out, at) is Kind.FILL and text_at(out, at) in _WHOM:
        at += 1
    if kind_at(out, at) is not Kind.NAME or text_at(out, at) not in _GREETINGS:
        return out
    greets = text_at(out, at + 1) in _WHOM or (kind_at(out, at + 1) is Kind.STOP and text_at(out, at + 1) == "!")
    greets = greets or (at > 0 and kind_at(out, at + 1) in _ENDS)
    if greets and any(m.kind is Kind.NUM for m in out):
        out[at] = replace(out[at], kind=Kind.FILL, names=())
    return out
