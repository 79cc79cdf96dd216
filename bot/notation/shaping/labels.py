"""Which set a number names: `set 2`, `2nd set`, and the numbers of a list."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import SEPARATORS, is_number
from bot.notation.tokens import Mark

_OF_LABEL = (Kind.COLON, Kind.WAS, Kind.MEANT, Kind.SAME, Kind.SAMELOAD)
"""Kinds before which `first` names a set."""
_BULLETS = frozenset((Kind.STOP, Kind.COLON, Kind.DASH, Kind.CLOSE, Kind.BREAK))


def labels(marks: list[Mark]) -> list[Mark]:
    """`set 2`, `2nd set`, `first` before numbers, `1)` and `1.` at a line's start: which set it is."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, after = marks[at], mark_at(marks, at + 1)
        starts = not out or out[-1].kind in (Kind.LINE, Kind.PART)
        if mark.kind is Kind.SET and is_number(after) and after is not None and _is_count(after):
            out.append(replace(after, kind=Kind.LABEL, start=mark.start))
            at += 2
        elif mark.kind is Kind.ORD and (
            kind_at(marks, at + 1) in (Kind.SET, Kind.LASTSET, Kind.WORKSET)
            or (after is not None and after.text == "set of")
        ):
            if kind_at(marks, at + 1) is Kind.WORKSET:
                out.append(marks[at + 1])
            out.append(replace(mark, kind=Kind.LABEL, end=marks[at + 1].end))
            at += 2
        elif (
            mark.kind is Kind.ORD
            and (starts or out[-1].kind in SEPARATORS or mark.text.isalpha())
            and (is_number(after) or kind_at(marks, at + 1) in _OF_LABEL or _is_side(marks, at + 1))
        ):
            out.append(replace(mark, kind=Kind.LABEL))
            at += 1
        else:
            out.append(mark)
            at += 1
    return out


def _is_side(marks: Sequence[Mark], at: int) -> bool:
    """The `left 11` of `third one left 11 right 9`."""
    sided = kind_at(marks, at) in (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R)
    return sided and is_number(mark_at(marks, at + 1))


def _is_count(mark: Mark) -> bool:
    return mark.value is not None and mark.value == int(mark.value) and 1 <= mark.value <= 12


def number_lines(marks: Sequence[Mark]) -> list[Mark]:
    """The message with the numbers of its list taken as labels: `1) 60x10 2) 60x9`, or lines numbered from 1 on.

    Before a name they number the exercises and have no bearing.
    """
    starts = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and (i == 0 or marks[i - 1].kind is Kind.LINE)]
    firsts = [i for i in starts if kind_at(marks, i + 1) in _BULLETS]
    listed = len(firsts) >= 2 and [marks[i].value for i in firsts] == [Decimal(n) for n in range(1, len(firsts) + 1)]
    out: list[Mark] = []
    at = 0
    opened = 0
    while at < len(marks):
        mark = marks[at]
        opened += {Kind.OPEN: 1, Kind.CLOSE: -1}.get(mark.kind, 0) if opened or mark.kind is Kind.OPEN else 0
        closed = not opened and mark.kind is Kind.NUM and _is_count(mark) and kind_at(marks, at + 1) is Kind.CLOSE
        named = _next_said(marks, at + 2) if closed or (listed and at in firsts) else None
        names = named is not None and named.kind in (Kind.NAME, Kind.WEAK)
        if (listed and at in firsts) or (
            closed and (is_number(named) or names or (named is not None and named.kind is Kind.BODY))
        ):
            out.append(replace(mark, kind=Kind.GAP if names else Kind.LABEL))
            at += 2
            continue
        out.append(mark)
        at += 1
    return out


def _next_said(marks: Sequence[Mark], place: int) -> Mark | None:
    while place < len(marks) and marks[place].kind in (Kind.FILL, Kind.GAP):
        place += 1
    return mark_at(marks, place)
