"""Kinds given once to the same marks, for as long as one message is read."""

from collections.abc import Sequence

from bot.notation.names import Index
from bot.notation.tagging import read_kinds
from bot.notation.tokens import Mark


class Tagger:
    """Gives marks their kinds beside a session's names; of the marks it was asked about last it knows them."""

    def __init__(self, index: Index) -> None:
        self._index = index
        self._typed: Sequence[Mark] = ()
        self._kinds: tuple[Mark, ...] = ()

    def read(self, typed: Sequence[Mark]) -> list[Mark]:
        """The marks with kinds."""
        if not self._kinds or list(typed) != self._typed:
            self._typed, self._kinds = list(typed), tuple(read_kinds(typed, self._index))
        return list(self._kinds)
