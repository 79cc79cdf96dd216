"""The last set told before the others: `last: 60x8. first: 60x10`, `7 on the last, the first two were 10 and 9`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_LAST = ("last", "final", "set", "one")
_PARTS = (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.BREAK)
_OTHERS = frozenset(["others", "rest", "other"])


def last_first(marks: list[Mark]) -> list[Mark]:
    """`last: 60x8. first: 60x10`, `7 on the last, the first two were 10 and 9`: the last set behind the others."""
    end = next((i for i, m in enumerate(marks) if m.kind in _PARTS), len(marks))
    heads = [m for m in marks[:end] if m.kind is not Kind.FILL]
    corrects = any(m.kind in (Kind.MEANT, Kind.SORRY, Kind.NOT, Kind.WROTE) for m in heads)
    if corrects or not any(m.kind is Kind.NUM for m in heads) or not _tells_last(heads):
        return marks
    starts = [i + 1 for i, m in enumerate(marks) if m.kind in _PARTS and i >= end]
    if not any(_tells_others(marks, i) for i in starts):
        return marks
    tail = marks[end + 1 :]
    while tail and tail[-1].kind in _PARTS:
        tail = tail[:-1]
    return [*tail, replace(marks[end], kind=Kind.STOP), *marks[:end]]


def _tells_last(heads: Sequence[Mark]) -> bool:
    """Whether a part is of the last set: it opens with it, or ends with it behind one number."""
    if heads[0].kind in (Kind.LASTREP, Kind.LASTSET):
        return heads[0].text.split(" ")[-1] in _LAST
    at = next((i for i, m in enumerate(heads) if m.kind in (Kind.LASTREP, Kind.LASTSET)), None)
    if at is None or at < 2 or heads[at - 1].kind not in (Kind.AT, Kind.WITH, Kind.FOR):
        return False
    behind = [m.kind for m in heads[at + 1 :]]
    numbers = [m for m in heads[:at] if m.kind is Kind.NUM]
    return behind in ([], [Kind.NAME], [Kind.SET]) and len(numbers) == 1 and heads[at].text.split(" ")[-1] in _LAST


def _tells_others(marks: Sequence[Mark], at: int) -> bool:
    """Whether a part opens with other sets: `first: 60x10`, `the first two were 10 and 9`, `the others 10`."""
    while kind_at(marks, at) is Kind.FILL or kind_at(marks, at) in (Kind.AND, Kind.SET):
        at += 1
    after = kind_at(marks, at + 1)
    if kind_at(marks, at) is Kind.ORD:
        return after not in (Kind.REPS, None)
    others = kind_at(marks, at) is Kind.THEREST or bool(set(text_at(marks, at).split()) & _OTHERS)
    return others and after in (Kind.NUM, Kind.WAS, Kind.FOR, Kind.AT, Kind.ALL, Kind.COLON, Kind.WORKSET)
