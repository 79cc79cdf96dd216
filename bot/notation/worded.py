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

_SENTENCE = frozenset((Kind.STOP, Kind.LINE, Kind.QUERY))
_EDGES = frozenset(
    (*_SENTENCE, Kind.COMMA, Kind.BREAK, Kind.OPEN, Kind.CLOSE, Kind.DASH, Kind.ARROW, Kind.SLASH, Kind.AND, Kind.THEN,
     Kind.PLUS)
)  # fmt: skip
_TOLD = frozenset((Kind.NUM, Kind.REPS, Kind.KG, Kind.LB))
_JOINS = frozenset(words("but and then so cause because cos since though although as while with after beyond"))
_FAR = 40
"""Marks that a clause reaches from where it starts."""


@dataclass(frozen=True, slots=True)
class Clause:
    """A clause found: the places where its marks start and end, and those of its numbers and ordinals."""

    start: int
    end: int
    numbers: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Line:
    """The words of a place's sentence from its `start` on, to look up several grammars in."""

    start: int
    said: str
    ends: dict[int, int]
    """Which place each mark's end in the words leads to."""


def clause_at(marks: Sequence[Mark], start: int, grammar: re.Pattern[str]) -> Clause | None:
    """The clause from a place on that is all in the grammar, up to where it ends."""
    return clause_in(line_at(marks, start), marks, grammar)


def clause_in(line: Line, marks: Sequence[Mark], grammar: re.Pattern[str]) -> Clause | None:
    """The clause from a line's start on that is all in the grammar, up to where it ends."""
    found = grammar.match(line.said)
    end = None if found is None else line.ends.get(found.end())
    if end is None or not ends_clause(marks, end):
        return None
    start = line.start
    numbered = (i for i in range(start, end) if marks[i].kind in (Kind.NUM, Kind.ORD) and not _is_nought(marks[i]))
    return Clause(start, end, tuple(numbered))


def opens_clause(marks: Sequence[Mark], at: int) -> bool:
    """Whether a clause may start here: behind an edge, a joining word, or what was lifted."""
    if at == 0 or kind_at(marks, at - 1) in _TOLD or _is_edge(marks, at - 1):
        return True
    last = text_at(marks, at - 1).split()[-1:]
    return bool(last) and last[0] in _JOINS


def ends_clause(marks: Sequence[Mark], at: int) -> bool:
    """Whether a clause may end before this place."""
    if at >= len(marks) or _is_edge(marks, at):
        return True
    first = text_at(marks, at).split(maxsplit=1)
    return bool(first) and first[0] in _JOINS


def _is_edge(marks: Sequence[Mark], at: int) -> bool:
    """Whether clauses part here: not at the `next` of `next to me`."""
    if kind_at(marks, at) not in _EDGES:
        return False
    return marks[at].text != "next" or kind_at(marks, at + 1) is not Kind.TO


def sentence_of(marks: Sequence[Mark], at: int) -> tuple[int, int]:
    """Where the sentence of a place starts and ends."""
    start, end = at, at
    while start > 0 and marks[start - 1].kind not in _SENTENCE:
        start -= 1
    while end < len(marks) and marks[end].kind not in _SENTENCE:
        end += 1
    return start, end


def line_at(marks: Sequence[Mark], start: int) -> Line:
    """The words of a place's sentence from there on."""
    said: list[str] = []
    ends: dict[int, int] = {}
    length = -1
    for at in range(start, min(len(marks), start + _FAR)):
        if marks[at].kind in _SENTENCE:
            break
        said.append(_word(marks[at]))
        length += 1 + len(said[-1])
        ends[length] = at + 1
    return Line(start, " ".join(said), ends)


def _word(mark: Mark) -> str:
    if mark.kind is Kind.NUM:
        return "zero" if mark.value == 0 else "#"
    return "#th" if mark.kind is Kind.ORD else mark.text


def _is_nought(mark: Mark) -> bool:
    return mark.kind is Kind.NUM and mark.value == 0
