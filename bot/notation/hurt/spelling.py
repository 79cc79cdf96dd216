"""From a typed word to the words it may stand for: exact, near (a slip of the thumb), or doubtful (another real word).

Distance is optimal string alignment (one slip is one letter more, less, other, or two swapped; rapidfuzz). One
slip is
forgiven from four letters, two from eight; a real English word is taken at its word, except where an urgent sign
would
stand but for it (`doubtful`).
"""

from collections.abc import Iterable
from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.abbreviations import ABBREVIATIONS
from bot.notation.hurt.everyday import EVERYDAY
from bot.notation.hurt.rows import word_set
from bot.notation.quick import quick

LONG = 8
"""Letters from which two slips are forgiven."""
SHORT = 4
"""Letters from which one slip is forgiven; under it only two letters swapped."""
LONGEST = 24
"""Letters beyond which a word is taken as typed."""


@quick
class Readings:
    """What a word may stand for: `sure` as typed or by an evident slip, `doubtful` only beside an urgent sign."""

    sure: tuple[str, ...] = ()
    doubtful: tuple[str, ...] = ()


NEVER_DOUBTED = word_set(
    """
    gain gains main mains plain pin pins pair pairs plan plans paid part gym pump pumps bump dump jump pumping pumped
    sled rower ropes boxes bars racks bells machines chains mats slam slams bike ski walks chins cleans plank jumps
    pound pounds faster straps cool pole poles sticks bags timed fives fours threes clock beast test rested bent pace
    paced laps mile seats pads pegs hole holes strip strips hack sissy flip flips braced och ach hoch um umm ummm uhm
    erm errm hmm hmmm mmm ehm ehh uhh one two three four five six seven eight nine ten eleven twelve thirteen fourteen
    fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred tops ea
    speed speeds speedy seed feed grin grown jazz kiss pipe pets pigs sticker stickers ticket tickets kicker angle
    angles angled swaps wear slaps slap slabs claps tangled
    shouldve shoulda shouldof shouldnt shouldn shld shldnt
    dumb lad lads number numbers numbered footy footie fiddy gidday gday throwed grazie crampons oozy
    """
)
"""Gym words, greetings, number words and sounds of thinking that are never read as a slip for a sign's word."""


class Speller:
    """Finds the words of a vocabulary that a typed word may stand for."""

    def __init__(self, known: Iterable[str], targets: Iterable[str], urgent: Iterable[str]) -> None:
        """`known` is taken at its word; `targets` are what a slip may stand for, `urgent` what it may in doubt."""
        self._known = frozenset(known)
        self._targets = _Index(w for w in targets if len(w) >= 3)
        self._urgent = _Index(w for w in urgent if len(w) >= 3)
        self.read = lru_cache(maxsize=8192)(self._read)
        self.slips = lru_cache(maxsize=8192)(self._slips)

    def is_known(self, word: str) -> bool:
        """Whether a word is taken as typed."""
        return word in self._known or word in EVERYDAY

    def _read(self, word: str) -> Readings:
        if word in self._known:
            return Readings((word,))
        if word in NEVER_DOUBTED or word in ABBREVIATIONS:
            return Readings()
        if word in EVERYDAY:
            return Readings((), tuple(n for n in self._urgent.near(word) if len(n) >= SHORT))
        if word.endswith("in") and word + "g" in EVERYDAY:
            return Readings()
        for other in _squeezed(word):
            if other in self._known:
                return Readings((other,))
        sure = self.slips(word)
        return Readings(sure, tuple(n for n in self._urgent.near(word) if n not in sure))

    def in_doubt(self, word: str) -> tuple[str, ...]:
        """The words of urgent signs one slip away."""
        return self._urgent.near(word)

    def _slips(self, word: str) -> tuple[str, ...]:
        """The targets nearest to a word that a slip explains, the nearest only."""
        found = [(OSA.distance(word, t), t) for t in self._targets.near(word, two=len(word) >= LONG - 2)]
        forgiven = sorted((d, -len(t), t) for d, t in found if _forgiven(word, t, d))
        return tuple(t for d, _, t in forgiven if d == forgiven[0][0])


class _Index:
    """Words by what is left of them with one or two letters taken away, so that near words are found at once."""

    def __init__(self, words: Iterable[str]) -> None:
        self._words = frozenset(words)
        self._left: dict[str, set[str]] = {}
        for word in self._words:
            for key in (word, *_one_less(word)):
                self._left.setdefault(key, set()).add(word)
            if len(word) >= LONG:
                for key in (less for once in _one_less(word) for less in _one_less(once)):
                    self._left.setdefault(key, set()).add(word)

    def near(self, word: str, *, two: bool = False) -> tuple[str, ...]:
        """The words one slip from this one, or two where `two` and they are long; the word itself left out."""
        if not 2 <= len(word) <= LONGEST:
            return ()
        keys = {word, *_one_less(word)}
        if two:
            keys |= {less for key in tuple(keys) for less in _one_less(key)}
        found = {target for key in keys for target in self._left.get(key, ())} - {word}
        most = 2 if two else 1
        return tuple(sorted(t for t in found if OSA.distance(word, t, score_cutoff=most) <= most))


def _forgiven(word: str, target: str, distance: int) -> bool:
    if len(target) >= LONG:
        return distance <= 2
    if len(target) < SHORT:
        return distance == 1 and len(word) == len(target) and sorted(word) == sorted(target)
    return distance <= 1 and len(word) >= 3


def _one_less(word: str) -> list[str]:
    return [word[:i] + word[i + 1 :] for i in range(len(word))]


def _squeezed(word: str) -> tuple[str, ...]:
    """`ouuuuch` as `ouch` and `ouuch`; nothing where no letter stands three times in a row."""
    one, two, run = "", "", 0
    for i, letter in enumerate(word):
        run = run + 1 if i and word[i - 1] == letter else 1
        one += letter if run == 1 else ""
        two += letter if run <= 2 else ""
    return () if two == word else (one, two)
