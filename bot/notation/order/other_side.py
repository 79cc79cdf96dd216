"""`other side 9`: the side that was not said last, in this message or before it."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, Side

_LIMBS = frozenset(words("side leg arm one"))
_KINDS = {Kind.LEFT: Side.LEFT, Kind.RIGHT: Side.RIGHT}


def with_other_side(marks: Sequence[Mark], last: Performed | None) -> list[Mark]:
    """The marks with `other side` and `other leg` as the side that is meant, where one was said before.

    `last` is the set kept last. The words alone, with no side said, are left as they are.
    """
    side = None if last is None else last.side
    out: list[Mark] = []
    for mark in marks:
        limb = mark.text.split()[-1:] and mark.text.split()[-1] in _LIMBS
        if out and out[-1].text.endswith("other") and limb and side is not None:
            side = Side.RIGHT if side is Side.LEFT else Side.LEFT
            kind = Kind.LEFT if side is Side.LEFT else Kind.RIGHT
            out[-1] = replace(mark, kind=kind, text=side.value, start=out[-1].start, names=())
            continue
        side = _KINDS.get(mark.kind, side)
        out.append(mark)
    return out
