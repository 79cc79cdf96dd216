"""Finding the phrases of the cue tables in a message's tokens.

The tables' small language: `;` parts phrases, a blank parts words, `a/b` are alternatives for one word, `word?` may be
left out, `word*` stands for none to three, `@name` is a class of words. Words that change nothing (`FILLERS`) are stepped
over inside a phrase; a phrase never crosses a full stop.
"""

import re
from dataclasses import dataclass

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.phrases_hurt import CONDITIONS, HURTS
from bot.notation.hurt.phrases_scope import SCOPES
from bot.notation.hurt.phrases_talk import NEUTRAL
from bot.notation.hurt.phrases_urgent import SIGNS
from bot.notation.hurt.places import PLACES, Place
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spelling import SHORT, Readings, Speller
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

    @property
    def sure(self) -> bool:
        """Whether no word of it is doubted."""
        return self.doubts == 0


PLACE_WORDS = frozenset(phrase for phrase in PLACES if " " not in phrase)
CLASSES = {
    "@bit": "a/bit/little/touch/slightly/kinda/kind/of/sort/somewhat/quite/very/really/so/super/pretty/rather/too/well/at/all/that/feeling/feel/exactly/entirely/totally/completely/overly/particularly",
    "@any": "any/enough/the/my/a/some/full/proper/no",
}


@dataclass(frozen=True, slots=True)
class _Element:
    words: frozenset[str]
    least: int
    most: int


@dataclass(frozen=True, slots=True)
class _Pattern:
    elements: tuple[_Element, ...]
    cue: Cue | None
    place: Place | None


def _elements(phrase: str) -> tuple[_Element, ...]:
    out: list[_Element] = []
    for part in phrase.split():
        body = part.rstrip("?*")
        words: set[str] = set()
        for word in body.split("/"):
            words |= (
                PLACE_WORDS if word == "@place" else set(CLASSES[word].split("/")) if word.startswith("@") else {word}
            )
        out.append(_Element(frozenset(words), 0 if part != body else 1, 3 if part.endswith("*") else 1))
    return tuple(out)


def _split(table: str) -> list[str]:
    """The phrases of a row; a line may end after a stroke."""
    return [p for p in re.sub(r"/\s+", "/", table).split(";") if p.strip()]


def _patterns() -> list[_Pattern]:
    out = [_Pattern(_elements(phrase), None, place) for phrase, place in PLACES.items()]
    for table in (HURTS, SIGNS, SCOPES, {Cue.NEUTRAL: NEUTRAL}):
        for cue, phrases in table.items():
            place = PLACES["head"] if cue is Cue.HEADACHE else None
            out += [_Pattern(_elements(p), cue, place) for p in _split(phrases)]
    for row in CONDITIONS.strip().splitlines():
        name, phrases = row.split(":", 1)
        place = PLACES.get(name)
        out += [_Pattern(_elements(p), Cue.CONDITION, place) for p in _split(phrases)]
    return out


def _starts(elements: tuple[_Element, ...]) -> set[str]:
    words: set[str] = set()
    for element in elements:
        words |= element.words
        if element.least:
            break
    return words


_ALL = _patterns()
_BY_FIRST: dict[str, list[_Pattern]] = {}
for _pattern in _ALL:
    for _word in _starts(_pattern.elements):
        _BY_FIRST.setdefault(_word, []).append(_pattern)

FILLERS = word_set(
    """
    really properly even just actually fully completely totally quite literally bloody fucking fkn proper very so
    like kinda almost slightly a bit little now then suddenly always constantly also already all
    """
)
"""Words that change nothing inside a phrase."""
TELLING = frozenset({"pee", "wee", "arm", "leg", "pop", "hot"})
"""Short words that tell as much as a longer one."""
SOLID = 4
"""Letters of a telling word."""
VOCABULARY = frozenset(word for p in _ALL for e in p.elements for word in e.words)
"""Every word of every table."""
_FORGIVEN_CUES = (frozenset(HURTS) | frozenset(SIGNS) | {Cue.NOT, Cue.GONE, Cue.CONDITION, None}) - {
    Cue.SETTLE,
    Cue.LOOKS,
    Cue.DARK,
    Cue.SEVERE,
    Cue.SWEAT,
}
TARGETS = frozenset(
    w
    for p in _ALL
    if p.cue in _FORGIVEN_CUES
    for e in p.elements
    for w in e.words
    if p.cue is not Cue.NOT or len(w) > SHORT
)
"""The words that a slip may stand for."""
URGENT = frozenset(w for p in _ALL if p.cue in SIGNS or p.cue is None for e in p.elements for w in e.words)
"""The words that a slip may stand for in doubt, beside the rest of an urgent sign."""
SPELLER = Speller(VOCABULARY, TARGETS, URGENT | {"cant", "can't", "wont", "doesnt", "dont"})


def has_doubtful(tokens: tuple[Token, ...]) -> bool:
    """Whether any word might be a slip into another real word for a word of an urgent sign."""
    return any(t.kind is Kind.WORD and SPELLER.read(t.word).doubtful for t in tokens)


def find_marks(tokens: tuple[Token, ...], *, doubtful: bool = False) -> list[Mark]:
    """All phrases of the tables in the tokens; with `doubtful` also those that only a slip into another real word hides."""
    readings = [SPELLER.read(t.word) if t.kind is Kind.WORD else Readings() for t in tokens]
    marks: dict[tuple[int, Cue | None, Place | None], Mark] = {}
    for first, reading in enumerate(readings):
        firsts = reading.sure + (tuple(CANON.get(w, w) for w in reading.doubtful) if doubtful else ())
        for word in firsts:
            for pattern in _BY_FIRST.get(word, ()):
                found = _longest(pattern.elements, tokens, readings, first, doubtful, pattern.cue is not Cue.NEUTRAL)
                if found is None:
                    continue
                mark = Mark(first, found.end, pattern.cue, pattern.place, found.doubts, found.solid, found.typed)
                key = (first, pattern.cue, pattern.place)
                old = marks.get(key)
                if old is None or (-mark.doubts, mark.end) > (-old.doubts, old.end):
                    marks[key] = mark
    return sorted(marks.values(), key=lambda m: (m.first, -m.end))


@dataclass(frozen=True, slots=True)
class _State:
    """A match under way: the element, how often it was taken, the next token, the end so far."""

    at: int
    taken: int
    index: int
    end: int
    doubts: int = 0
    solid: bool = False
    typed: bool = True


def _longest(
    elements: tuple[_Element, ...],
    tokens: tuple[Token, ...],
    readings: list[Readings],
    first: int,
    doubtful: bool,
    fillers: bool,
) -> _State | None:
    """The longest match from `first`, the least doubted first; fillers are stepped over."""
    best: _State | None = None
    stack = [_State(0, 0, first, first)]
    while stack:
        now = stack.pop()
        if now.at == len(elements):
            if now.end > first and (best is None or (-now.doubts, now.end) > (-best.doubts, best.end)):
                best = now
            continue
        element = elements[now.at]
        if now.taken >= element.least:
            stack.append(_State(now.at + 1, 0, now.index, now.end, now.doubts, now.solid, now.typed))
        if now.index >= len(tokens) or (now.index > first and tokens[now.index].gap is Gap.HARD):
            continue
        after, reading = now.index + 1, readings[now.index]
        if now.taken < element.most:
            word = tokens[now.index].word
            if any(w in element.words for w in reading.sure):
                solid, typed = now.solid or len(word) >= SOLID or word in TELLING, now.typed and word in element.words
                stack.append(_State(now.at, now.taken + 1, after, after, now.doubts, solid, typed))
            elif doubtful and any(CANON.get(w, w) in element.words for w in reading.doubtful):
                stack.append(_State(now.at, now.taken + 1, after, after, now.doubts + 1, now.solid, False))
        if fillers and now.index > first and tokens[now.index].word in FILLERS:
            stack.append(_State(now.at, now.taken, after, now.end, now.doubts, now.solid, now.typed))
    return best
