"""Names with digits in them, `t2b` for toes to bar: one word again, where the session has such a one."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.names import Index
from bot.notation.names.index import HEADED
from bot.notation.tokens import Mark

_LONGEST = 5
"""Marks that such a word falls into at the most."""


def with_coded(marks: Sequence[Mark], index: Index) -> Sequence[Mark]:
    """The marks with such names as words."""
    marks = _with_two_letters(marks, index) if index.pairs else marks
    if not index.coded:
        return marks
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        end = next(
            (end for end in range(min(at + _LONGEST, len(marks)), at + 1, -1) if _is_code(marks[at:end], index)), 0
        )
        if end:
            text = "".join(m.text for m in marks[at:end])
            out.append(Mark(Kind.WORD, text, marks[at].start, marks[end - 1].end, marks[at].tight))
        else:
            out.append(marks[at])
        at = end or at + 1
    return out


def _with_two_letters(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with two letters at the head of a set, `sp 30s/30s`, as the name that begins so."""
    out = list(marks)
    for place, mark in enumerate(marks):
        heads = kind_at(marks, place - 1) in (None, Kind.LINE, Kind.STOP, Kind.COMMA)
        number = place + 1 + (kind_at(marks, place + 1) in (Kind.COLON, Kind.DASH))
        if mark.kind is Kind.WORD and mark.text in index.pairs and heads and kind_at(marks, number) is Kind.NUM:
            out[place] = replace(mark, text=HEADED + mark.text)
    return out


def _is_code(part: Sequence[Mark], index: Index) -> bool:
    joined = all(m.tight for m in part[1:]) and not part[0].tight
    return joined and "".join(m.text for m in part) in index.coded
