"""A stretch of a message that is read at once, with its places; long messages are read in overlapping stretches."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.mending import mended
from bot.notation.hurt.scene import Scene
from bot.notation.hurt.spots import Spot, find_spots
from bot.notation.hurt.tokens import Kind, Token
from bot.notation.spoken import NUMBER_WORDS

CORE = 160
"""Tokens that one stretch is asked about."""
MARGIN = 16
"""Tokens around them that are read along, so that nothing is cut from what it belongs to."""


_HURTS = (Cue.PAIN, Cue.HURT, Cue.SORE, Cue.SHARP, Cue.WHISPER, Cue.PAINFUL)


class Passage(Scene):
    """A scene with its places."""

    def __init__(self, tokens: tuple[Token, ...], *, doubtful: bool = False) -> None:
        """Read the tokens; with `doubtful` also words that another real word may hide."""
        super().__init__(tokens if doubtful else mended(tokens), doubtful=doubtful)
        self.spots: tuple[Spot, ...] = find_spots(self)
        self.hurting = frozenset(
            {i for m in self.of(*_HURTS) for i in range(m.first, m.end)}
            | {i for s in self.spots for i in range(s.first, s.end)}
        )
        """The tokens of hurts and places."""
        self.begins = frozenset(s.first for s in self.spots if s.place.name != "side")
        """The tokens where a place begins."""
        self.years = tuple(i for i in range(1, len(self.tokens)) if self._is_year(i))
        """The tokens that are years, or ages, of long ago: `slipped a disc in 2018`, `in 09`, `when i was 20`."""
        self.of_late = tuple(
            i for i, t in enumerate(self.tokens) if t.kind is Kind.NUMBER and _RECENT.fullmatch(t.word)
        )
        """The tokens that are years which may be of late, `in 2024`."""
        self.lasts_weeks = any(t.kind is Kind.TIME and ("week" in t.word or "month" in t.word) for t in tokens)
        """Whether a time of weeks or months is said: no soreness of training lasts so long."""

    def _is_year(self, index: int) -> bool:
        token = self.tokens[index]
        if token.kind is Kind.SET and _DECADE.fullmatch(token.word):
            told = [self.word(i) for i in (index - 2, index - 1)] == ["in", "the"] and _LAST_CENTURY.match(token.word)
            return bool(self.words(index - 2, index) & {"my", "mid", "early", "late"} or told)
        if token.word in NUMBER_WORDS:
            return [self.word(i) for i in range(index - 3, index)] == ["when", "i", "was"]
        if token.kind is not Kind.NUMBER:
            return False
        if _LAST_CENTURY.fullmatch(token.word) and self.word(index - 1) == "in" and self.ends(index + 1):
            return True
        if _LONG_PAST.fullmatch(token.word):
            return self.word(index - 1) in ("in", "since", "back", "from", "of", "around")
        if self.word(index - 1) == "in":
            return _SHORT_YEAR.fullmatch(token.word) is not None and (
                token.word < "10" or self.word(index - 2) == "back"
            )
        young = self.words(index - 2, index) == {"was", "i"} or self.words(index - 2, index) == {"at", "age"}
        return young and _SHORT_YEAR.fullmatch(token.word) is not None


_LAST_CENTURY = re.compile(r"[6-9]\d")
"""Years of it with two digits, where a pause follows: `blew out my knee in '98, fine since`."""
_LONG_PAST = re.compile(r"(?:19\d|20[01])\d")
_DECADE = re.compile(r"[1-9]0s")
_RECENT = re.compile(r"202\d")
_SHORT_YEAR = re.compile(r"\d\d?")


@dataclass(frozen=True, slots=True)
class Stretch:
    """Tokens to read, and those among them (`first` up to, not with, `end`) that are this stretch's own to report."""

    tokens: tuple[Token, ...]
    first: int
    end: int


def stretches(tokens: tuple[Token, ...]) -> Iterator[Stretch]:
    """The whole where it is short; else stretches whose own tokens tile it."""
    if len(tokens) <= CORE + 2 * MARGIN:
        yield Stretch(tokens, 0, len(tokens))
        return
    for start in range(0, len(tokens), CORE):
        low, high = max(0, start - MARGIN), min(len(tokens), start + CORE + MARGIN)
        yield Stretch(tokens[low:high], start - low, min(start + CORE, len(tokens)) - low)
