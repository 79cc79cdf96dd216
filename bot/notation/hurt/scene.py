"""The scene of a message: its tokens with what they mean, everyday talk set aside, and the places named."""

from collections.abc import Callable
from itertools import accumulate
from typing import TypeVar

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark, find_marks
from bot.notation.hurt.phrases_hurt import HURTS
from bot.notation.hurt.phrases_urgent import SIGNS
from bot.notation.hurt.tokens import Gap, Token

HURTING = frozenset(HURTS) | frozenset(SIGNS) | {Cue.CONDITION}
"""The cues of hurt and of urgent signs."""
_UNMASKED = frozenset(
    {Cue.SELF, Cue.OTHER, Cue.LAUGH, Cue.NEUTRAL, Cue.CONTRAST, Cue.PAST, Cue.NOW, Cue.TRAINED, Cue.EFFORT}
)
_MEASURES = frozenset(
    {*(Cue.SEVERE, Cue.SUDDEN, Cue.SETTLE, Cue.LOOKS, Cue.DARK), *(Cue.PALE, Cue.LAID_DOWN, Cue.UNNOTICED, Cue.WET)}
)
Found = TypeVar("Found")


class Scene:
    """The tokens of a passage and the marks on them, with look-ups by token."""

    def __init__(self, tokens: tuple[Token, ...], *, doubtful: bool = False) -> None:
        """Mark the tokens; with `doubtful` also words that another real word may hide."""
        self.tokens = tokens
        self.found = find_marks(tokens, doubtful=doubtful)
        """Every phrase found, everyday talk included."""
        self._words = [t.word for t in tokens]
        self.marks = _unmasked(self.found, self._words)
        """The phrases that count."""
        self.sentence = _numbered(tokens)
        """For each token the number of its sentence."""
        self._gaps = list(accumulate((t.gap is not Gap.NONE for t in tokens), initial=0))
        self._by_cue: dict[Cue | None, list[Mark]] = {}
        for mark in self.marks:
            self._by_cue.setdefault(mark.cue, []).append(mark)
        self._of: dict[tuple[Cue, ...], list[Mark]] = {}
        self._sentence_words: dict[int, frozenset[str]] = {}
        self._remembered: dict[tuple[str, int], tuple[Mark, object]] = {}

    def of(self, *cues: Cue) -> list[Mark]:
        """The marks of these cues, cue by cue."""
        if cues not in self._of:
            self._of[cues] = [m for cue in cues for m in self._by_cue.get(cue, ())]
        return self._of[cues]

    @property
    def place_marks(self) -> list[Mark]:
        """The marks that may be places."""
        return self._by_cue.get(None, [])

    def word(self, index: int) -> str:
        """The word at an index, empty outside the passage."""
        return self._words[index] if 0 <= index < len(self._words) else ""

    def words(self, first: int, end: int) -> frozenset[str]:
        """The words of the tokens from `first` up to, not with, `end`, as far as there are any."""
        return frozenset(self._words[max(0, first) : max(0, end)])

    def clause_before(self, index: int, most: int) -> frozenset[str]:
        """The words before a token back to a pause, so many at most."""
        first = index
        while first > max(0, index - most) and self.tokens[first].gap is Gap.NONE:
            first -= 1
        return self.words(first, index)

    def sentence_words(self, index: int) -> frozenset[str]:
        """The words of the sentence that a token stands in."""
        number = self.sentence[index]
        if number not in self._sentence_words:
            first, last = self.sentence.index(number), len(self.sentence) - 1 - self.sentence[::-1].index(number)
            self._sentence_words[number] = self.words(first, last + 1)
        return self._sentence_words[number]

    def same_sentence(self, a: int, b: int) -> bool:
        """Whether no full stop or new line stands between two tokens."""
        return self.sentence[a] == self.sentence[b]

    def ends(self, index: int) -> bool:
        """Whether a pause or the end of the passage stands before the token at an index."""
        return index >= len(self.tokens) or self.tokens[index].gap is not Gap.NONE

    def soft_gaps(self, first: int, end: int) -> int:
        """Commas and their like before the tokens from `first` up to, not with, `end`."""
        return self._gaps[max(0, end)] - self._gaps[first] if end > first else 0

    def once(self, what: str, mark: Mark, find: Callable[[], Found]) -> Found:
        """What `find` gives for a mark of this scene, found but once.

        The mark is kept with it: else a new one could take the place in memory, and the answer, of one that is gone.
        """
        key = (what, id(mark))
        if key not in self._remembered:
            self._remembered[key] = (mark, find())
        return self._remembered[key][1]  # type: ignore[return-value]  # kept under its own name


def _numbered(tokens: tuple[Token, ...]) -> list[int]:
    out: list[int] = []
    number = 0
    for token in tokens:
        number += token.gap is Gap.HARD
        out.append(number)
    return out


_DONE_BY_A_PLACE = (Cue.MARK, Cue.SHARP, Cue.NO_FEELING)
"""What a place right before it does, in whatever phrase of talk it also stands: `hamstring cramped in the last`."""
_SUDDEN = (["of", "nowhere"], ["of", "the"])
"""Behind `out` these say how it came: `a jab in the chest out of nowhere` is no `chest out`."""
_STRUCK = (["with"], ["on"], ["by"], ["against"], ["getting"], ["standing"], ["hard"])
"""Behind `knocked it on the head` these tell of a blow."""
_MY_HANDS = frozenset({"hand", "hands"})
"""Behind `my` no turn of phrase such as `hands on`."""
_IT = frozenset({"it", "now", "and", "just", "still", "but", "that"})
"""Before `won't go any higher`, beside a pop, these say that it is a place that does not, and no bar."""
_WHEN = (["the"], ["that"], ["this"], ["my"], ["rep"])
"""Behind `went bang on` these say when it did."""
_ACHING = frozenset({"bad", "sore", "thick", "splitting", "pounding", "banging", "thumping"})
"""What a head is that aches: `a bad head in the middle of the set` is no `head in`."""
_IN = frozenset({"in", "inside", "behind", "of", "across", "through", "at", "on", "round", "around"})
"""Before `my head` these say where something is, and no turn of phrase such as `head in` starts there."""
_FELT = (Cue.PAIN, Cue.HURT, Cue.SHARP, Cue.PRESSURE, Cue.TIGHT, Cue.PAINFUL, Cue.BURN)


def _is_in_the(words: list[str], index: int) -> bool:
    """Whether `in my`, `behind the` stands before a place: `pain in my head in the middle of the set`."""
    return index > 1 and words[index - 1] in ("my", "the") and words[index - 2] in _IN


def _unmasked(found: list[Mark], words: list[str]) -> list[Mark]:
    """The marks that are not swallowed by everyday talk, by a longer `gone`, or (a negation) by a longer phrase."""
    neutral = [m for m in found if m.cue is Cue.NEUTRAL and not _pop_in(m, found, words)]
    felt = {m.end for m in found if m.cue in _FELT and not any(_inside(m, n) for n in neutral)}
    neutral = [n for n in neutral if n.first not in felt or words[n.first] != "to"]
    neutral = [n for n in neutral if words[n.first] != "head" or not _is_in_the(words, n.first)]
    neutral = [n for n in neutral if not (words[n.end - 1] == "to" and words[n.end : n.end + 1] in (["the"], ["my"]))]
    neutral = [n for n in neutral if words[n.end - 1] != "out" or words[n.end : n.end + 2] not in _SUDDEN]
    neutral = [n for n in neutral if words[n.first] != "dead" or _AT_ONCE.isdisjoint(words[n.end : n.end + 1])]
    neutral = [n for n in neutral if words[n.first] != "head" or words[n.first - 1] not in _ACHING]
    neutral = [
        n
        for n in neutral
        if words[n.first] != "bang" or words[n.first - 1] != "went" or words[n.end : n.end + 1] not in _WHEN
    ]
    neutral = [n for n in neutral if words[n.end - 1] != "head" or words[n.end : n.end + 1] not in _STRUCK]
    marked = {m.first for m in found if m.cue in _DONE_BY_A_PLACE}
    placed = {m.end for m in found if m.cue is None}
    neutral = [n for n in neutral if n.first not in placed or words[n.first : n.end] != ["went", "heavy"]]
    neutral = [n for n in neutral if not (n.first in placed and n.first in marked)]
    neutral = [n for n in neutral if not (words[n.first] in _MY_HANDS and words[n.first - 1] in ("my", "both"))]
    hurt = {m.end + 1 for m in found if m.cue in _FELT} & {m.first for m in found if m.cue is None}
    neutral = [n for n in neutral if n.first not in hurt or words[n.first - 1] not in ("my", "the", "both")]
    found = [m for m in found if m.cue is not Cue.GONE or _UNTIL.isdisjoint(words[m.end : m.end + 4])]
    gone = [m for m in found if m.cue is Cue.GONE]
    longer = [m for m in found if m.end - m.first > 1 and (m.cue in HURTING - _MEASURES or m.cue is Cue.GONE)]
    popped = any(m.cue is Cue.POP for m in found) and bool(placed)
    kept: list[Mark] = []
    for m in found:
        if (
            m.cue not in _UNMASKED
            and not (popped and m.cue is Cue.NO_FUNCTION and (m.first in placed or words[m.first - 1] in _IT))
            and any(_inside(m, n) for n in neutral)
        ):
            continue
        if m.cue in HURTING and any(_inside(m, g) and m.end - m.first < g.end - g.first for g in gone):
            continue
        if m.cue is Cue.WHISPER and any(g.first < m.first == g.end - 1 for g in gone):
            continue  # `not a murmur from my knee`
        if m.cue is Cue.NOT and words[m.first - 1 : m.first] == ["from"] and words[m.end : m.end + 1] == ["to"]:
            continue  # `from nothing to agony`
        if m.cue is Cue.NOT and any(_inside(m, x) and x.end - x.first > m.end - m.first for x in longer):
            continue
        kept.append(m)
    return kept


_AT_ONCE = frozenset({"now", "away", "after", "afterwards", "here"})
"""Behind `dead right`, `dead straight` these say when: `my foot went dead straight after`."""
_UNTIL = frozenset({"till", "until", "til", "untill", "unti"})
"""What ends a silence: `didn't make a peep till rep 8`."""
_TO_A_PLACE = frozenset({"in", "the", "my", "left", "right", "lower", "upper"})


def _pop_in(neutral: Mark, found: list[Mark], words: list[str]) -> bool:
    """`pop in the right knee`, which is no visit."""
    if not words[neutral.first].startswith("pop"):
        return False
    end = neutral.end
    while end < len(words) and words[end] in _TO_A_PLACE:
        end += 1
    return any(m.cue is None and m.first == end for m in found)


def _inside(inner: Mark, outer: Mark) -> bool:
    return outer.first <= inner.first and inner.end <= outer.end
