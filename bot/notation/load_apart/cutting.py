"""The parts of a message: what stands between its stops, commas, dashes and the words that join remarks."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.load_apart.words import REASONS
from bot.notation.tokens import Mark

_ENDS = (Kind.QUERY, Kind.STOP, Kind.LINE, Kind.COMMA, Kind.BREAK, Kind.OPEN, Kind.CLOSE)
_CUTS = frozenset(("which", "so", "but", "though", "holding", "wearing", "hugging", "gave", *REASONS))
_OWN = frozenset((Kind.SKIP, Kind.SKIPPED, Kind.FINISH, Kind.ASKING))
"""Kinds of a part that tells something of its own."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A part of a message, and the question mark behind it."""

    marks: tuple[Mark, ...]
    end: Mark | None = None


def is_apart(part: Cut) -> bool:
    """Whether a part tells of something else than its sets: a skip, the end, a question."""
    kinds = {m.kind for m in part.marks}
    done = Kind.DONE in kinds and kinds <= {Kind.DONE, Kind.FILL}
    return (part.end is not None or done or bool(kinds & _OWN)) and Kind.NUM not in kinds


def parts_of(marks: Sequence[Mark]) -> Iterator[Cut]:
    """The parts of a message, without what ends them."""
    part: list[Mark] = []
    for place, mark in enumerate(marks):
        loose = mark.kind is Kind.DASH and not mark.tight and place + 1 < len(marks) and not marks[place + 1].tight
        sign = mark.kind is Kind.FILL and not any(c.isalnum() for c in mark.text)
        if mark.kind in _ENDS or loose or sign:
            if part:
                yield Cut(tuple(part), mark if mark.kind is Kind.QUERY else None)
            part = []
            continue
        if (mark.text in _CUTS or mark.kind in (Kind.AND, Kind.THEN)) and part and kind_at(marks, place + 1):
            yield Cut(tuple(part))
            part = []
        part.append(mark)
    if part:
        yield Cut(tuple(part))
