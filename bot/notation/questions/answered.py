"""Questions that the client answers in the same breath: `extras? nope, stuck to the plan`, `105? no, 100`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NO = frozenset(("no", "nope", "nah", "never", "none", "not today", "not really", "no way", "no chance", "nada"))
_ASKS = frozenset(words(
    "should shall can could may might would will is are was were do does did what whats when where which who why how "
    "ok okay right please maybe you your coach yes no next tomorrow it that this thoughts advice tips i we"
))  # fmt: skip
"""Words with which the coach is asked."""
_MOST = 4
"""Marks of a question that somebody puts to themselves."""


def answered(marks: Sequence[Mark]) -> set[int]:
    """The places of such questions, their question marks with them."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.QUERY or text_at(marks, place + 1) not in _NO:
            continue
        start = place
        while start > 0 and marks[start - 1].kind not in EDGES:
            start -= 1
        said = marks[start:place]
        asks = any(set(m.text.split()) & _ASKS for m in said)
        closed = kind_at(marks, place + 2) in (Kind.COMMA, Kind.STOP, Kind.LINE)
        if not said or len(said) > _MOST or asks or not closed:
            continue
        numbered = any(m.kind is Kind.NUM for m in said)
        if not numbered or kind_at(marks, place + 3) is Kind.NUM:
            out |= set(range(start, place + 1))
    return out
