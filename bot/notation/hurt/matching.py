"""Finding the phrases of the tables in a message's tokens.

Words that change nothing (`FILLERS`) are stepped over inside a phrase; a phrase never crosses a full stop.
"""

from dataclasses import dataclass, field

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.patterns import PATTERNS, SPELLER, Pattern
from bot.notation.hurt.places import Place
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spelling import Readings
from bot.notation.hurt.tokens import Gap, Kind, Token
from bot.notation.hurt.variants import CANON
from bot.notation.quick import quick


@quick
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
    like kinda almost slightly a bit little now then still suddenly always constantly also already all longer anymore
    """
)
"""Words that change nothing inside a phrase."""
_TELLING = frozenset({"pee", "wee", "arm", "leg", "pop", "hot", "air", "red"})
"""Short words that tell as much as a longer one."""
_SOLID = 4
"""Letters of a telling word."""


@dataclass(slots=True)
class _Opening:
    """The patterns that may begin with a word."""

    words: list[Pattern] = field(default_factory=list)
    """Those of that one word."""
    phrases: list[Pattern] = field(default_factory=list)
    """Those whose second word may be left out or repeated."""
    seconds: dict[str, list[Pattern]] = field(default_factory=dict)
    """Those whose second word is fixed, by it."""
    fixed: list[Pattern] = field(default_factory=list)
    """All of these."""

    def add(self, pattern: Pattern) -> None:
        """Sort a pattern in."""
        if pattern.is_word:
            self.words.append(pattern)
        elif pattern.second is None:
            self.phrases.append(pattern)
        else:
            self.fixed.append(pattern)
            for word in pattern.second:
                self.seconds.setdefault(word, []).append(pattern)

    def before(self, then: "_Typed | None") -> list[Pattern]:
        """The phrases that the next word leaves possible."""
        if then is None:
            return self.phrases
        if then.filler:
            return self.phrases + self.fixed
        return self.phrases + [p for word in then.words for p in self.seconds.get(word, ())]


def _by_first() -> dict[str, _Opening]:
    """The patterns by the words that they may begin with."""
    out: dict[str, _Opening] = {}
    for pattern in PATTERNS:
        starts: set[str] = set()
        for element in pattern.elements:
            starts |= element.words
            if element.least:
                break
        for word in starts:
            out.setdefault(word, _Opening()).add(pattern)
    return out


_BY_FIRST = _by_first()
_NO_PATTERNS = _Opening()


@quick
class _Typed:
    """A token as the finder sees it."""

    word: str
    words: tuple[str, ...]
    """All that it may be, in the order of the speller: of two phrases alike the same is always found."""
    sure: frozenset[str]
    doubtful: frozenset[str]
    filler: bool
    stops: bool
    """A full stop stands before it."""

    def fits(self, words: frozenset[str]) -> bool:
        """Whether any reading of it is among the words."""
        return not words.isdisjoint(self.sure) or not words.isdisjoint(self.doubtful)


@quick
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
    possible = _Possible(typed)
    marks: dict[tuple[int, Cue | None, str], Mark] = {}
    for first, here in enumerate(typed):
        then = typed[first + 1] if first + 1 < len(typed) and not typed[first + 1].stops else None
        for word in here.words:
            opening = _BY_FIRST.get(word, _NO_PATTERNS)
            for pattern in opening.words:
                _keep(marks, first, pattern, _word(here, word, first))
            for pattern in opening.before(then):
                if possible[pattern]:
                    _keep(marks, first, pattern, _longest(pattern, typed, first))
    return sorted(marks.values(), key=lambda m: (m.first, -m.end))


class _Possible(dict[Pattern, bool]):
    """Whether all that a phrase must hold stands in the message; found out where it is first asked."""

    def __init__(self, typed: list[_Typed]) -> None:
        self._present = frozenset[str]().union(*(t.sure | t.doubtful for t in typed))

    def __missing__(self, pattern: Pattern) -> bool:
        self[pattern] = found = not any(words.isdisjoint(self._present) for words in pattern.needed)
        return found


def _keep(marks: dict[tuple[int, Cue | None, str], Mark], first: int, pattern: Pattern, found: _Match | None) -> None:
    """The longest mark of a meaning at a token, the least doubted before that."""
    if found is None:
        return
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
    words = (*reading.sure, *(w for w in dict.fromkeys(CANON.get(w, w) for w in reading.doubtful) if w in maybe - sure))
    return _Typed(token.word, words, sure, maybe - sure, token.word in FILLERS, token.gap is Gap.HARD)


def _tells(word: str) -> bool:
    return len(word) >= _SOLID or word in _TELLING


def _word(here: _Typed, word: str, first: int) -> _Match:
    if word in here.sure:
        return _Match(first + 1, 0, _tells(here.word), word == here.word)
    return _Match(first + 1, 1, solid=False, typed=False)


def _longest(pattern: Pattern, typed: list[_Typed], first: int) -> _Match | None:
    """The longest match from `first`, the least doubted before that."""
    best: tuple[int, int, bool, bool] | None = None
    elements, fillers, size = pattern.elements, pattern.cue is not Cue.NEUTRAL, len(typed)
    stack = [(0, 0, first, first, 0, False, True)]
    seen: set[tuple[int, int, int, int, int, bool, bool]] = set()
    while stack:
        at, taken, index, end, doubts, solid, as_typed = here_now = stack.pop()
        if here_now in seen:
            continue
        seen.add(here_now)
        if at == len(elements):
            if end > first and (best is None or (-doubts, end) > (-best[1], best[0])):
                best = (end, doubts, solid, as_typed)
            continue
        element = elements[at]
        if taken >= element.least:
            stack.append((at + 1, 0, index, end, doubts, solid, as_typed))
        if index >= size or (index > first and typed[index].stops):
            continue
        here = typed[index]
        if taken < element.most and here.fits(element.words):
            sure = not element.words.isdisjoint(here.sure)
            tells = solid or (sure and _tells(here.word))
            exact = as_typed and here.word in element.words
            stack.append((at, taken + 1, index + 1, index + 1, doubts + (not sure), tells, exact))
        if fillers and index > first and here.filler:
            stack.append((at, taken, index + 1, end, doubts, solid, as_typed))
    return _Match(best[0], best[1], best[2], best[3]) if best else None
