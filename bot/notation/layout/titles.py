"""Headings as they are typeset: `## Hack squat`, `**Hack squat**`, `Hack squat (3 sets)` above the rows of the sets."""

from collections.abc import Sequence
from itertools import pairwise

from bot.notation.kinds import Kind
from bot.notation.layout.lines import Line, has_number, with_marks
from bot.notation.tokens import Mark

_SIGNS = frozenset(("#", "*", "_", "~"))
_SETS = frozenset(("set", "sets"))
_FEWEST = 2
"""Rows below a title from which on it is one, and the words of `3 sets`."""
_NEAR = 10
"""Lines below a heading that are looked at."""


def with_plain_titles(lines: Sequence[Line]) -> list[Line]:
    """The lines with such headings as the words alone."""
    out = []
    for place, line in enumerate(lines):
        if not line.marks:
            out.append(line)
            continue
        marks = _without_signs(line.marks[_code_end(line.marks) :])
        rows = _rows_below(lines, place + 1)
        counted = _prescribed(marks) if rows >= _FEWEST else 0
        out.append(with_marks(line, marks[: len(marks) - counted] if counted else marks))
    return out


def _code_end(marks: Sequence[Mark]) -> int:
    """Where the code of a week and day ends before the rest of its line: `W1D2 hack squat`, `wk2 d1: bench`."""
    said = [m.text if m.kind is Kind.WORD else m.kind for m in marks[: len(_CODE)]]
    coded = len(said) == len(_CODE) and said[0] in _WEEK and said[2] in _DAY and said[1] == said[3] == Kind.NUM
    end = len(_CODE) + (len(marks) > len(_CODE) and marks[len(_CODE)].kind in (Kind.COLON, Kind.DASH, Kind.STOP))
    return end if coded and len(marks) > end and marks[end].kind is Kind.WORD else 0


_CODE = ("w", "1", "d", "2")
_WEEK = ("w", "wk", "week")
_DAY = ("d", "day")


def _without_signs(marks: Sequence[Mark]) -> list[Mark]:
    """A line without the signs that make it a heading: they stand before words, or on both ends."""
    start, end = 0, len(marks)
    while start < end and marks[start].text in _SIGNS:
        start += 1
    if start == end or (start and marks[start].kind is not Kind.WORD):
        return list(marks)
    signs = {m.text for m in marks[:start]}
    while start and end > start and marks[end - 1].text in signs:
        end -= 1
    if start == 1 and end == len(marks) and marks[0].text == "*":
        return list(marks)
    twice = {i for i, (a, b) in enumerate(pairwise(marks)) if start and a.text == b.text and a.text in _SIGNS}
    return [m for i, m in enumerate(marks[:end]) if i >= start and not {i, i - 1} & twice]


def _rows_below(lines: Sequence[Line], start: int) -> int:
    """How many lines with numbers follow before the next one without, as far as it matters."""
    count = 0
    for line in lines[start : start + _NEAR]:
        if count >= _FEWEST or (line.marks and not has_number(line)):
            break
        count += bool(line.marks)
    return count


def _prescribed(marks: Sequence[Mark]) -> int:
    """How many marks at a heading's end tell the sets that were planned: `(3 sets)`, `- 3 x 8-10`, `3 sets`."""
    start = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM), None)
    if not start:
        return 0
    told = [m for m in marks[start:] if m.kind not in (Kind.CLOSE, Kind.COLON, Kind.FILL)]
    bracketed = marks[start - 1].kind is Kind.OPEN
    words = [m.kind if m.kind is Kind.NUM else m.text for m in told]
    sets = len(words) == _FEWEST and words[1] in _SETS
    by = words[:3] in (["NUM", "x", "NUM"], ["NUM", "*", "NUM"]) and bracketed
    ranged = words in (["NUM", "x", "NUM", "-", "NUM"], ["NUM", "*", "NUM", "-", "NUM"])
    if not (sets or ranged or (by and len(words) <= len(("n", "x", "n", "-", "n")))):
        return 0
    lead = start
    while lead and marks[lead - 1].kind in (Kind.OPEN, Kind.DASH, Kind.COLON, Kind.COMMA):
        lead -= 1
    return len(marks) - lead if lead else 0
