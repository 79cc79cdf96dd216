"""Stretches of a message's text, asked many times whether a mark lies in one of them."""

from bisect import bisect_left
from collections.abc import Iterable
from itertools import accumulate

from bot.notation.answer import Span
from bot.notation.tokens import Mark


class Spans:
    """Some stretches, in any order; they may overlap."""

    def __init__(self, spans: Iterable[Span]) -> None:
        ordered = sorted(spans)
        self._starts = [start for start, _ in ordered]
        self._ends = list(accumulate((end for _, end in ordered), max))
        """How far those up to each reach."""

    def touch(self, mark: Mark) -> bool:
        """Whether any of them shares a character with a mark."""
        before = bisect_left(self._starts, mark.end)
        return before > 0 and mark.start < self._ends[before - 1]
