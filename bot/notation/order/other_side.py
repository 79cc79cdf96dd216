"""`other side 9`: the side that was not said last, in this message or before it; `6 on that leg, 9 on the right`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.report import Performed, Side

_LIMBS = ("side", "leg", "arm", "one")
_KINDS = {Kind.LEFT: Side.LEFT, Kind.RIGHT: Side.RIGHT}


def with_other_side(marks: Sequence[Mark], last: Performed | None) -> list[Mark]:
    """The marks with `other side` and `other leg` as the side that is meant, where one was said before.

    `last` is the set kept last. The words alone, with no side said, are left as they are.
    """
    side = None if last is None else last.side
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        limb = mark.text.endswith(_LIMBS) and mark.text.split(" ")[-1] in _LIMBS
        if limb and out and out[-1].text.endswith("other") and side is not None:
            side = Side.RIGHT if side is Side.LEFT else Side.LEFT
            kind = Kind.LEFT if side is Side.LEFT else Kind.RIGHT
            out[-1] = replace(mark, kind=kind, text=side.value, start=out[-1].start, names=())
            continue
        that = _that_side(marks, place) if limb and out and out[-1].text in _THAT else None
        if that is not None:
            on = len(out) > 1 and out[-2].kind is Kind.AT
            kind = Kind.LEFT if that is Side.LEFT else Kind.RIGHT
            start = out[-2 if on else -1].start
            out[-2 if on else -1 :] = [replace(mark, kind=kind, text=f"on the {that.value}", start=start, names=())]
            side = that
            continue
        side = _KINDS.get(mark.kind, side)
        out.append(mark)
    return out


_THAT = ("that", "this")


def _that_side(marks: Sequence[Mark], place: int) -> Side | None:
    """The side of `6 on that leg`: the one that was told to hurt before it, else not the one that is told behind."""
    if not any(m.kind is Kind.NUM for m in marks[max(0, place - 4) : place]):
        return None
    before = [m for m in marks[:place] if m.kind in _KINDS or (m.kind is Kind.GAP and m.text in _SIDES)]
    if before:
        return Side(before[-1].text.split(" ")[-1]) if before[-1].text.split(" ")[-1] in _SIDES else None
    behind = next((m for m in marks[place:] if m.kind in _KINDS), None)
    if behind is None:
        return None
    return Side.RIGHT if behind.kind is Kind.LEFT else Side.LEFT


_SIDES = ("left", "right")
