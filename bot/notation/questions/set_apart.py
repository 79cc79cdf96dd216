"""A question behind a comma is a sentence of its own: `set 2 was 6 reps actually, is that ok?`.

Rules that put right what is done look at the whole sentence; what only asks is none of it.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.questions import opens_question
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_COUNTS = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.ORD)


def with_questions_apart(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a stop before the last part of a sentence that asks, if it tells no number."""
    out = list(marks)
    comma: int | None = None
    for place, mark in enumerate(marks):
        if mark.kind is Kind.COMMA:
            comma = place
        elif mark.kind is Kind.QUERY and comma is not None:
            part = marks[comma + 1 : place]
            if opens_question(part) and not any(m.kind in _COUNTS for m in part):
                out[comma] = replace(marks[comma], kind=Kind.STOP, text=".")
        if mark.kind in _ENDS:
            comma = None
    return out
