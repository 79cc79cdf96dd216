"""The scene of a message: its tokens with what they mean, everyday talk set aside, each place with its owner and side."""

from dataclasses import dataclass, replace
from functools import cached_property

from rapidfuzz.distance import OSA

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import SPELLER, Mark, find_marks
from bot.notation.hurt.phrases_hurt import HURTS
from bot.notation.hurt.phrases_urgent import SIGNS
from bot.notation.hurt.places import BACK_BEFORE, EXERCISE_TAILS, NOT_MY_BACK, Place
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap, Kind, Token, read_tokens
from bot.training.report import Side

_PEOPLE = frozenset(
    {Cue.SELF, Cue.OTHER, Cue.LAUGH, Cue.NEUTRAL, Cue.CONTRAST, Cue.PAST, Cue.NOW, Cue.TRAINED, Cue.EFFORT}
)
_HURTING = frozenset(HURTS) | frozenset(SIGNS) | {Cue.CONDITION}
_MEASURES = frozenset({Cue.SEVERE, Cue.SUDDEN, Cue.SETTLE, Cue.LOOKS, Cue.DARK})
_COPULA = frozenset(
    "is was 's felt feels feeling has really still so pretty bit slightly started starts been got gets a did does do".split()
)
SIDES = {"left": Side.LEFT, "l": Side.LEFT, "lh": Side.LEFT, "lhs": Side.LEFT, "lefthand": Side.LEFT} | {
    "right": Side.RIGHT,
    "r": Side.RIGHT,
    "rh": Side.RIGHT,
    "rhs": Side.RIGHT,
    "righthand": Side.RIGHT,
}
_BETWEEN_SIDE = word_set(
    """
    lower upper inner outer front back rear of my the side hand inside outside mid sided big medial lateral poor old
    bad dodgy sore hamstring quad bottom top hand-side part
    """
)
_RETURNED = word_set(
    """
    is 's was come came comes coming go went get got be been i'm going breath are it right pain i
    """
)
"""Words before `back` that make it `again`."""
_NOT_A_SIDE_AFTER = word_set(
    """
    now after in it at before away where the to for me you there here well and so as i we my about when then work
    home right
    """
)


@dataclass(frozen=True, slots=True)
class Spot:
    """A place named in the message."""

    first: int
    end: int
    place: Place
    side: Side | None
    mine: bool | None
    """Whose it is: the client's, another's (False), or not said."""
    doubts: int
    solid: bool
    typed: bool
    """Whether every word of it stands as typed."""

    @property
    def sure(self) -> bool:
        """Whether no word of it is doubted."""
        return self.doubts == 0


class Scene:
    """A message's tokens and marks, with look-ups by token."""

    def __init__(self, text: str, *, doubtful: bool = False) -> None:
        """Read the text; with `doubtful` also words that another real word may hide."""
        self.tokens = read_tokens(text) if doubtful else tuple(_mended(t) for t in read_tokens(text))
        self.found = find_marks(self.tokens, doubtful=doubtful)
        self.marks = _unmasked(self.found)
        self.sentence = _numbered(self.tokens)
        self.spots = self._spots()

    def of(self, *cues: Cue) -> list[Mark]:
        """The marks of these cues, in order."""
        return [m for m in self.marks if m.cue in cues]

    @cached_property
    def _words(self) -> list[str]:
        return [t.word for t in self.tokens]

    def word(self, index: int) -> str:
        """The word at an index, empty outside the message."""
        return self._words[index] if 0 <= index < len(self._words) else ""

    def same_sentence(self, a: int, b: int) -> bool:
        """Whether no full stop or new line stands between two tokens."""
        return self.sentence[a] == self.sentence[b]

    def soft_gaps(self, first: int, end: int) -> int:
        """Commas and their like before the tokens from `first` up to, not with, `end`."""
        return sum(t.gap is not Gap.NONE for t in self.tokens[first:end])

    def _spots(self) -> list[Spot]:
        out: list[Spot] = []
        for m in self.marks:
            if m.place is None or m.cue is not None or (out and m.first < out[-1].end):
                continue
            if self._is_exercise(m) or (m.place.name == "back" and not self._is_my_back(m)):
                continue
            if m.place.name == "side" and self.word(m.end) == "of":
                continue
            out.append(Spot(m.first, m.end, m.place, self._side(m), self._mine(m.first), m.doubts, m.solid, m.typed))
        return out

    def _is_exercise(self, m: Mark) -> bool:
        if m.end >= len(self.tokens):
            return False
        tail = self.tokens[m.end]
        if tail.kind is not Kind.WORD or tail.gap is not Gap.NONE:
            return False
        return tail.word in EXERCISE_TAILS

    def _is_my_back(self, m: Mark) -> bool:
        before, after = self.word(m.first - 1), self.word(m.end)
        if (
            m.end - m.first > 1
            or (before in BACK_BEFORE and after not in ("to", "at"))
            or "my" in (before, self.word(m.first - 2))
        ):
            return True
        if before in _RETURNED:
            return False
        hurts = {i for x in self.marks if x.cue in _HURTING for i in (x.first,)}
        if m.end in hurts or (m.end + 1 in hurts and after in _COPULA):
            return after not in ("to", "at", "again")
        return after in (
            "'s",
            "is",
            "was",
            "felt",
            "feels",
            "feeling",
            "went",
            "has",
            "are",
            "doesn't",
            "didn't",
            "isn't",
            "wasn't",
        ) or (
            after not in NOT_MY_BACK
            and before in ("", "and", "or", "on", "with", "but", "through")
            and m.end < len(self.tokens)
        )

    def _mine(self, first: int) -> bool | None:
        for back in range(1, 6):
            index = first - back
            if index < 0 or self.tokens[index + 1].gap is Gap.HARD:
                return None
            word = self.word(index)
            if word in ("my", "me", "mine"):
                return True
            if word in ("his", "her", "their"):
                return False
            if word == "'s":
                return False if any(x.cue is Cue.OTHER and x.end == index for x in self.found) else None
            if word not in _BETWEEN_SIDE and word not in SIDES:
                return None
        return None

    def _side(self, m: Mark) -> Side | None:
        seen: set[Side] = set()
        for back in range(1, 6):
            index = m.first - back
            word = self.word(index)
            if word in SIDES and not (word == "right" and self.word(index - 1) in ("all", "not")):
                seen.add(SIDES[word])
            elif word not in _BETWEEN_SIDE and not (word == "and" and seen):
                break
            if self.tokens[index].gap is Gap.HARD:
                break
        if not seen:
            seen = self._side_after(m.end)
        return seen.pop() if len(seen) == 1 else None

    def _side_after(self, end: int) -> set[Side]:
        index = end
        while self.word(index) in ("on", "the", "my", "side"):
            index += 1
        word = self.word(index)
        if word not in SIDES or not self.same_sentence(end - 1, index):
            return set()
        if self.word(index + 1) in _NOT_A_SIDE_AFTER and self.tokens[index + 1].gap is Gap.NONE:
            return set()
        if index == end and self.tokens[index].gap is Gap.NONE and len(word) == 1:
            return set()
        begins_another = any(m.place is not None and m.first == index + 1 for m in self.marks)
        return set() if begins_another else {SIDES[word]}


_HELPING = word_set(
    """
    left right lower upper about around maybe like again still felt but and because until without when weeks that this
    with today level score after
    """
)
"""Words that a reading leans on and no table forgives a slip in."""


def _mended(token: Token) -> Token:
    """The token with a slip in a helping word put right, a misspelt side before any other reading of it."""
    if token.kind is not Kind.WORD or len(token.word) < 3 or SPELLER.is_known(token.word):
        return token
    slips = SPELLER.slips(token.word)
    for word in ("left", "right", *slips):
        if word in slips and word in _HELPING:
            return replace(token, word=word)
    if slips:
        return token
    near = [w for w in sorted(_HELPING) if abs(len(w) - len(token.word)) <= 1 and OSA.distance(w, token.word) == 1]
    return replace(token, word=near[0]) if near else token


def _numbered(tokens: tuple[Token, ...]) -> list[int]:
    out: list[int] = []
    number = 0
    for token in tokens:
        number += token.gap is Gap.HARD
        out.append(number)
    return out


def _unmasked(found: list[Mark]) -> list[Mark]:
    """The marks that are not swallowed by everyday talk, by a longer `gone`, or (a negation) by a longer phrase."""
    neutral = [m for m in found if m.cue is Cue.NEUTRAL]
    gone = [m for m in found if m.cue is Cue.GONE]
    longer = [m for m in found if (m.cue in _HURTING and m.cue not in _MEASURES) or m.cue is Cue.GONE]
    kept: list[Mark] = []
    for m in found:
        if m.cue not in _PEOPLE and any(_inside(m, n) for n in neutral):
            continue
        if m.cue in _HURTING and any(_inside(m, g) and m.end - m.first < g.end - g.first for g in gone):
            continue
        if m.cue is Cue.NOT and any(_inside(m, x) and x.end - x.first > m.end - m.first for x in longer):
            continue
        kept.append(m)
    return kept


def _inside(inner: Mark, outer: Mark) -> bool:
    return outer.first <= inner.first and inner.end <= outer.end
