"""Finding the phrases of the tables in a message's tokens.

Words that change nothing (`FILLERS`) are stepped over inside a phrase; a phrase never crosses a full stop.
"""

from dataclasses import dataclass

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.patterns import PATTERNS, SPELLER, Pattern
from bot.notation.hurt.places import Place
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spelling import Readings
from bot.notation.hurt.tokens import Gap, Kind, Token
from bot.notation.hurt.variants import CANON


@dataclass(frozen=True, slots=True)
class Mark:
    """A phrase found: tokens `first` up to, not with, `end`, and what it means."""

    first: int
    end: int
    cue: Cue | None
    """`None` for a place."""
    place: Place | None = None
    doubts: int = 0
    """How many of its words are another real word, read as a slip."""
    solid: bool = True
    """Whether a telling word of it stands as typed."""
    typed: bool = True
    """Whether every word of it stands as typed."""


FILLERS = word_set(
    """
    really properly even just actually fully completely totally quite literally bloody fucking fkn proper very so
    like kinda almost slightly a bit little now then suddenly always constantly also already all
    """
)
"""Words that change nothing inside a phrase."""
_TELLING = frozenset({"pee", "wee", "arm", "leg", "pop", "hot", "air", "red"})
"""Short words that tell as much as a longer one."""
_SOLID = 4
"""Letters of a telling word."""


def _by_first() -> dict[str, list[tuple[Pattern, bool, frozenset[str] | None]]]:
    """The patterns by the words that they may begin with, each with what lets it be passed over fast."""
    out: dict[str, list[tuple[Pattern, bool, frozenset[str] | None]]] = {}
    for pattern in PATTERNS:
        starts: set[str] = set()
        for element in pattern.elements:
            starts |= element.words
            if element.least:
                break
        for word in starts:
            out.setdefault(word, []).append((pattern, pattern.is_word, pattern.second))
    return out


_BY_FIRST = _by_first()


@dataclass(frozen=True, slots=True)
class _Typed:
    """A token as the finder sees it."""

    word: str
    sure: frozenset[str]
    doubtful: frozenset[str]
    filler: bool
    stops: bool
    """A full stop stands before it."""

    def fits(self, words: frozenset[str]) -> bool:
        """Whether any reading of it is among the words."""
        return not words.isdisjoint(self.sure) or not words.isdisjoint(self.doubtful)


@dataclass(frozen=True, slots=True)
class _Match:
    end: int
    doubts: int
    solid: bool
    typed: bool


def has_doubtful(tokens: tuple[Token, ...]) -> bool:
    """Whether any word might be a slip into another real word for a word of an urgent sign."""
    return any(t.kind is Kind.WORD and SPELLER.read(t.word).doubtful for t in tokens)


def find_marks(tokens: tuple[Token, ...], *, doubtful: bool = False) -> list[Mark]:
    """All phrases of the tables in the tokens; with `doubtful` also those hidden by a slip into another real word."""
    typed = [_typed(t, doubtful=doubtful) for t in tokens]
    marks: dict[tuple[int, Cue | None, str], Mark] = {}
    for first, here in enumerate(typed):
        then = typed[first + 1] if first + 1 < len(typed) and not typed[first + 1].stops else None
        for word in here.sure | here.doubtful:
            for pattern, is_word, second in _BY_FIRST.get(word, ()):
                if second is not None and (then is None or not (then.filler or then.fits(second))):
                    continue
                found = _word(here, word, first) if is_word else _longest(pattern, typed, first)
                if found is not None:
                    _keep(marks, first, pattern, found)
    return sorted(marks.values(), key=lambda m: (m.first, -m.end))


def _keep(marks: dict[tuple[int, Cue | None, str], Mark], first: int, pattern: Pattern, found: _Match) -> None:
    """The longest mark of a meaning at a token, the least doubted before that."""
    key = (first, pattern.cue, pattern.place.name if pattern.place else "")
    old = marks.get(key)
    if old is None or (-found.doubts, found.end) > (-old.doubts, old.end):
        marks[key] = Mark(
            first, found.end, pattern.cue, pattern.place, found.doubts, solid=found.solid, typed=found.typed
        )


def _typed(token: Token, *, doubtful: bool) -> _Typed:
    reading = SPELLER.read(token.word) if token.kind is Kind.WORD else Readings()
    maybe = frozenset(CANON.get(w, w) for w in reading.doubtful) if doubtful else frozenset[str]()
    sure = frozenset(reading.sure)
    return _Typed(token.word, sure, maybe - sure, token.word in FILLERS, token.gap is Gap.HARD)


def _tells(word: str) -> bool:
    return len(word) >= _SOLID or word in _TELLING


def _word(here: _Typed, word: str, first: int) -> _Match:
    if word in here.sure:
        return _Match(first + 1, 0, _tells(here.word), word == here.word)
    return _Match(first + 1, 1, solid=False, typed=False)


def _longest(pattern: Pattern, typed: list[_Typed], first: int) -> _Match | None:
    """The longest match from `first`, the least doubted before that."""
    best: _Match | None = None
    elements, fillers = pattern.elements, pattern.cue is not Cue.NEUTRAL
    stack = [(0, 0, first, _Match(first, 0, solid=False, typed=True))]
    seen: set[tuple[int, int, int, _Match]] = set()
    while stack:
        at, taken, index, so_far = here_now = stack.pop()
        if here_now in seen:
            continue
        seen.add(here_now)
        if at == len(elements):
            if so_far.end > first and (best is None or (-so_far.doubts, so_far.end) > (-best.doubts, best.end)):
                best = so_far
            continue
        element = elements[at]
        if taken >= element.least:
            stack.append((at + 1, 0, index, so_far))
        if index >= len(typed) or (index > first and typed[index].stops):
            continue
        here = typed[index]
        if taken < element.most and here.fits(element.words):
            sure = not element.words.isdisjoint(here.sure)
            solid = so_far.solid or (sure and _tells(here.word))
            as_typed = so_far.typed and here.word in element.words
            match = _Match(index + 1, so_far.doubts + (not sure), solid, as_typed)
            stack.append((at, taken + 1, index + 1, match))
        if fillers and index > first and here.filler:
            stack.append((at, taken, index + 1, so_far))
    return best
