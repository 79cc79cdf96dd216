"""The lines of a message, and marks made for words that a layout leaves out."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


@dataclass(frozen=True, slots=True)
class Line:
    """The marks of one line, and the mark that ends it; none at the end of the message."""

    marks: tuple[Mark, ...]
    end: Mark | None


def lines_of(marks: Sequence[Mark]) -> list[Line]:
    """The lines of a message, empty ones too."""
    out: list[Line] = []
    start = 0
    for place, mark in enumerate(marks):
        if mark.kind is Kind.LINE:
            out.append(Line(tuple(marks[start:place]), mark))
            start = place + 1
    return [*out, Line(tuple(marks[start:]), None)]


def marks_of(lines: Sequence[Line]) -> list[Mark]:
    """The marks of all lines in order."""
    return [mark for line in lines for mark in (*line.marks, *(() if line.end is None else (line.end,)))]


def with_marks(line: Line, marks: Sequence[Mark]) -> Line:
    """The line with other marks on it."""
    return line if len(marks) == len(line.marks) == 0 else replace(line, marks=tuple(marks))


def word(text: str, near: Mark) -> Mark:
    """A word that is meant before a mark, and not written."""
    return Mark(Kind.WORD, text, near.start, near.start)


def has_number(line: Line) -> bool:
    """Whether a number is written on the line."""
    return any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.BAD) for m in line.marks)
