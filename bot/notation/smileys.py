"""Faces and hearts typed with digits, which are no numbers: `60x10 8)`, `60x10 <3`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_EYES = 8
"""The eyes of `8)`."""
_HEART = 3
"""The digit of `<3`."""


def without_smileys(marks: Sequence[Mark]) -> list[Mark]:
    """The marks as typed, with the digits of such signs as words that change nothing."""
    out = list(marks)
    for place in range(1, len(marks)):
        before, mark = marks[place - 1], marks[place]
        heart = before.text == "<" and mark.kind is Kind.NUM and mark.value == _HEART and mark.tight
        ends = place + 1 == len(marks) or marks[place + 1].kind is Kind.LINE
        face = mark.kind is Kind.CLOSE and mark.tight and before.value == _EYES and ends
        face = face and place > 1 and not before.tight and not any(m.kind is Kind.OPEN for m in marks[:place])
        if heart:
            out[place] = replace(mark, kind=Kind.FILL, value=None, parts=())
        elif face and marks[place - 2].kind is not Kind.LINE:
            out[place - 1 : place + 1] = [replace(m, kind=Kind.FILL, value=None) for m in (before, mark)]
    return out
