"""Which stored set an ordinal names beside words that correct: `the second one`, `first squat`, `first set of rows`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_OF_OTHERS = (Kind.REPS, Kind.EACH, Kind.LEFT, Kind.RIGHT, Kind.NUM, Kind.ORD, Kind.WARMUP, Kind.DROP, Kind.MINI,
              Kind.SECONDS, Kind.MINUTES, Kind.PLATES, Kind.WORKSET)  # fmt: skip
"""Kinds behind an ordinal that it counts, or beside which it may name no set: `the second rep`, `first drop`."""
_COMPARING = frozenset(["like", "than", "as"])
"""Words before an ordinal that is no more than compared with: `not 6 like the first`."""
_SETS = (Kind.SET, Kind.SETS)


def ordinal_set(piece: Sequence[Mark], at: int, stored: Sequence[int]) -> tuple[int, int] | None:
    """The stored set that the ordinal here names, and the place behind its words; `None` where it names none."""
    mark = piece[at]
    if mark.kind is not Kind.ORD or mark.value is None or int(mark.value) not in stored:
        return None
    if {w for m in piece[max(0, at - 2) : at] for w in m.text.split()} & _COMPARING:
        return None
    end = at + 1
    if kind_at(piece, end) in _OF_OTHERS or (end < len(piece) and piece[end].kind is Kind.WORD):
        return None
    if kind_at(piece, end) in _SETS or text_at(piece, end) in ("one", "ones"):
        end += 1
    if kind_at(piece, end) in (Kind.LASTSET, Kind.LASTREP):
        return None
    return int(mark.value), end


_ENTRIES = (Kind.X, Kind.FOR)
_TELLING = (Kind.SKIP, Kind.SKIPPED, Kind.FINISH, Kind.QUERY, Kind.LINE, Kind.RPE, Kind.TANK, Kind.LEFT, Kind.RIGHT)
_FAR = 12
"""Marks of talk between the word that corrects and the set that it corrects."""


def with_told_numbered(marks: Sequence[Mark]) -> list[Mark]:
    """`25 x 10, 25 x 9, wait no, the second one was 30 x 9` with `set 2 was 30 x 9`: a set told just before."""
    out = list(marks)
    sorry = next((i for i, m in enumerate(marks) if m.kind is Kind.SORRY), None)
    entries = 0 if sorry is None else sum(_is_entry(marks, i) for i in range(sorry))
    if sorry is None or entries < 1:
        return out
    at = next((i for i in range(sorry, min(len(marks), sorry + _FAR)) if marks[i].kind is Kind.ORD), None)
    if at is None or any(m.kind in (Kind.NUM, Kind.NAME) for m in marks[sorry:at]):
        return out
    end = at + 1 + (kind_at(marks, at + 1) is Kind.SET or text_at(marks, at + 1) in ("one", "1"))
    told = kind_at(marks, end) in (Kind.WAS, Kind.MEANT) and _is_entry(marks, end + 2)
    number = marks[at].value
    if told and number is not None and number <= entries:
        set_, first = replace(marks[at], kind=Kind.SET, text="set", value=None, end=marks[at].start), marks[at]
        talk = {m.kind for m in marks[sorry + 1 : at]}.isdisjoint(_TELLING)
        out[sorry + 1 if talk else at : end] = [
            set_,
            replace(first, kind=Kind.NUM, text=str(number), parts=(), end=marks[end - 1].end),
        ]
    return out


def _is_entry(marks: Sequence[Mark], at: int) -> bool:
    """Whether a load and its repetitions stand around a place."""
    return kind_at(marks, at) in _ENTRIES and kind_at(marks, at - 1) is kind_at(marks, at + 1) is Kind.NUM
