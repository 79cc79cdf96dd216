"""The sides of a stored set told the wrong way round: `i mixed up L and R on that one`, `swap the sides of set 2`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, SetKey, Side

SWAPPED = frozenset(words(
    "swap swapped swaped switch switched flip flipped backwards reverse reversed mixed mix confused muddled versa",
))  # fmt: skip
_SIDES = frozenset(words("left right l r side sides leg legs arm arms hand hands lefts rights"))
_THAT = frozenset(words("that those them these it they"))
_COMING = frozenset(words("now next then going gonna about will should shall first each every between for"))
"""Words of sides that are changed while training: `then swap legs`."""
_VALUES = (Kind.NUM, Kind.X, Kind.CLOCK, Kind.BODY, Kind.RPE, Kind.RIR, Kind.SAME, Kind.SKIP, Kind.SKIPPED, Kind.QUERY,
           Kind.ASKING, Kind.PLANNED, Kind.DONE)  # fmt: skip
_OTHER = {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT}


def _swapped_set(piece: Sequence[Mark], record: Record, place: int | None) -> SetKey | None:
    """The set whose sides a piece says to be the wrong way round; none where it says no such thing, or has one side."""
    said = {w for m in piece for w in m.text.split()}
    turned = bool(said & SWAPPED) or ("way" in said and bool(said & {"wrong", "other"}))
    told = said & _SIDES or said & _THAT or len(said) <= _SHORT
    last = record.last(place)
    if not turned or not told or said & _COMING or last is None or last.set is None:
        return None
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], False)
    labels = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    if any(m.kind in _VALUES for m in shaped) or len(labels) > 1:
        return None
    key = (last.exercise, labels[0] if labels else last.set)
    return key if {r.side for r in record.rows(key)} >= set(_OTHER) else None


_SHORT = 4
"""Words of `other way round`, which speaks of the set before."""


def swap_sides(piece: Sequence[Mark], record: Record, place: int | None) -> bool:
    """Turns the sides of the set that a piece says to be the wrong way round; whether it says so."""
    key = _swapped_set(piece, record, place)
    if key is not None:
        record.change(key, _with_other_sides)
    return key is not None


def _with_other_sides(told: Sequence[Told]) -> list[Told]:
    """A set with left and right the other way round, the left first."""
    turned = [replace(one, row=_turned(one.row)) for one in told]
    return sorted(turned, key=lambda one: (one.row.stage.value, one.row.side is Side.RIGHT))


def _turned(row: Performed) -> Performed:
    return row if row.side is None else replace(row, side=_OTHER[row.side])
