"""Whole clauses looked up by a grammar of words: the marks from a place on as one line, a number in it as `#`.

`#` is any number but nought (`zero`), `#th` an ordinal. What a grammar finds ends where a mark ends.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SENTENCE = (Kind.STOP, Kind.LINE, Kind.QUERY)
_EDGES = (*_SENTENCE, Kind.COMMA, Kind.BREAK, Kind.OPEN, Kind.CLOSE, Kind.DASH, Kind.ARROW, Kind.SLASH, Kind.AND,
          Kind.THEN, Kind.PLUS)  # fmt: skip
_JOINS = frozenset(words("but and then so cause because cos since though although as while with after beyond"))
_FAR = 40
"""Marks that a clause reaches from where it starts."""


@dataclass(frozen=True, slots=True)
class Clause:
    """A clause found: the places where its marks start and end, and those of its numbers and ordinals."""

    start: int
    end: int
    numbers: tuple[int, ...]


def clause_at(marks: Sequence[Mark], start: int, grammar: re.Pattern[str]) -> Clause | None:
    """The clause from a place on that is all in the grammar, up to where it ends."""
    line, ends = _line(marks, start)
    found = grammar.match(line)
    end = None if found is None else ends.get(found.end())
    if end is None or not ends_clause(marks, end):
        return None
    numbered = (i for i in range(start, end) if marks[i].kind in (Kind.NUM, Kind.ORD) and not _is_nought(marks[i]))
    return Clause(start, end, tuple(numbered))


def opens_clause(marks: Sequence[Mark], at: int) -> bool:
    """Whether a clause may start here: behind an edge, a joining word, or what was lifted."""
    before = kind_at(marks, at - 1)
    told = before in (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB)
    return at == 0 or _is_edge(marks, at - 1) or told or bool(set(text_at(marks, at - 1).split()[-1:]) & _JOINS)


def ends_clause(marks: Sequence[Mark], at: int) -> bool:
    """Whether a clause may end before this place."""
    return at >= len(marks) or _is_edge(marks, at) or bool(set(text_at(marks, at).split()[:1]) & _JOINS)


def _is_edge(marks: Sequence[Mark], at: int) -> bool:
    """Whether clauses part here: not at the `next` of `next to me`."""
    beside = text_at(marks, at) == "next" and kind_at(marks, at + 1) is Kind.TO
    return kind_at(marks, at) in _EDGES and not beside


def sentence_of(marks: Sequence[Mark], at: int) -> tuple[int, int]:
    """Where the sentence of a place starts and ends."""
    start, end = at, at
    while start > 0 and marks[start - 1].kind not in _SENTENCE:
        start -= 1
    while end < len(marks) and marks[end].kind not in _SENTENCE:
        end += 1
    return start, end


def _line(marks: Sequence[Mark], start: int) -> tuple[str, dict[int, int]]:
    """The words of a place's sentence from there on, and which place each mark's end in them leads to."""
    said: list[str] = []
    ends: dict[int, int] = {}
    length = -1
    for at in range(start, min(len(marks), start + _FAR)):
        if marks[at].kind in _SENTENCE:
            break
        said.append(_word(marks[at]))
        length += 1 + len(said[-1])
        ends[length] = at + 1
    return " ".join(said), ends


def _word(mark: Mark) -> str:
    if _is_nought(mark):
        return "zero"
    return "#" if mark.kind is Kind.NUM else "#th" if mark.kind is Kind.ORD else mark.text


def _is_nought(mark: Mark) -> bool:
    return mark.kind is Kind.NUM and mark.value == 0
