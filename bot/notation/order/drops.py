"""A drop in other words, straight before its numbers: `ds 25x8`, `the drop after that was 25 for 8`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_SHORT = frozenset(["ds", "dset"])
_NAMED = frozenset(["drop", "dropset", "drops", "set"])
_LAST = ("last", "final", "set", "one")
_MOST = 7
"""Words between a drop and its numbers."""


def drops(marks: list[Mark]) -> list[Mark]:
    """The marks with such words as the drop alone."""
    out = [_spelled(marks, place) for place in range(len(marks))]
    at = 0
    while at < len(out):
        if out[at].kind is Kind.DROP and set(out[at].text.split()) & _NAMED and "to" not in out[at].text.split():
            end = _told_behind(out, at + 1)
            out[at + 1 : end] = [replace(m, kind=Kind.FILL) for m in out[at + 1 : end]]
        at += 1
    return out


def _spelled(marks: Sequence[Mark], place: int) -> Mark:
    """`ds`, `d/s` before a number as a drop."""
    mark = marks[place]
    if mark.kind is not Kind.WORD or mark.text not in _SHORT:
        return mark
    at = place + 1
    while kind_at(marks, at) in (Kind.COLON, Kind.AT, Kind.FILL, Kind.WAS):
        at += 1
    return replace(mark, kind=Kind.DROP, text="drop") if kind_at(marks, at) in (Kind.NUM, Kind.BODY) else mark


def _told_behind(marks: Sequence[Mark], at: int) -> int:
    """Where the numbers of a drop start, behind words that only say after which set it came: `after that was`."""
    end, told = at, False
    while end < len(marks) and end - at < _MOST:
        kind = marks[end].kind
        if kind is Kind.NUM:
            return end if told else at
        last = kind in (Kind.LASTSET, Kind.LASTREP) and text_at(marks, end).split()[-1] in _LAST
        if not (last or kind in (Kind.FILL, Kind.THEN, Kind.WAS, Kind.WITH, Kind.AT, Kind.FOR, Kind.NAME)):
            return at
        told = told or last or kind in (Kind.WAS, Kind.THEN)
        end += 1
    return at
