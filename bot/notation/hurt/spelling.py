"""From a typed word to the words it may stand for: exact, near (a slip of the thumb), or doubtful (another real word).

Distance is optimal string alignment (one slip is one letter more, less, other, or two swapped; rapidfuzz). One slip is
forgiven from four letters, two from eight; a real English word is taken at its word, except where an urgent sign would
stand but for it (`doubtful`).
"""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.hurt.everyday import EVERYDAY

LONG = 8
"""Letters from which two slips are forgiven."""
SHORT = 4
"""Letters from which one slip is forgiven; under it only two letters swapped."""


@dataclass(frozen=True, slots=True)
class Readings:
    """What a word may stand for: `sure` as typed or by an evident slip, `doubtful` only beside an urgent sign."""

    sure: tuple[str, ...]
    doubtful: tuple[str, ...] = ()
    slip: bool = False
    """The sure readings are not what was typed."""


NEVER_DOUBTED = frozenset("gain gains main mains plain pin pins pair pairs plan plans paid part gym".split())
"""Gym words that are never read as a slip for a sign's word."""


class Speller:
    """Finds the words of a vocabulary that a typed word may stand for."""

    def __init__(self, known: Iterable[str], targets: Iterable[str]) -> None:
        """`known` is taken at its word; `targets` are what a slip may stand for."""
        self._known = frozenset(known)
        self._targets = frozenset(targets)
        self._shorter: dict[str, list[str]] = {}
        for word in sorted(self._targets):
            for key in _one_less(word):
                self._shorter.setdefault(key, []).append(word)
            if len(word) >= LONG:
                for key in _one_less(word):
                    for less in _one_less(key):
                        self._shorter.setdefault(less, []).append(word)
        self.read = lru_cache(maxsize=8192)(self._read)

    def _read(self, word: str) -> Readings:
        near = self._near(word)
        if word in self._known or word in EVERYDAY:
            if word in self._known or word in NEVER_DOUBTED:
                return Readings((word,) if word in self._known else ())
            return Readings((), tuple(n for n in near if len(n) >= SHORT and OSA.distance(word, n) == 1))
        squeezed = _squeezed(word)
        for other in squeezed:
            if other in self._known:
                return Readings((other,), (), slip=True)
        return Readings(near, (), slip=True)

    def _near(self, word: str) -> tuple[str, ...]:
        if len(word) < 3 or len(word) > 24:
            return ()
        keys = {word, *_one_less(word)}
        if len(word) >= LONG - 1:
            keys |= {less for key in tuple(keys) for less in _one_less(key)}
        found = {target for key in keys for target in self._shorter.get(key, ())} | (keys & self._targets)
        found.discard(word)
        ranked = sorted((OSA.distance(word, target), target) for target in found if _forgiven(word, target))
        best = ranked[0][0] if ranked else 0
        return tuple(target for distance, target in ranked if distance == best)


def _forgiven(word: str, target: str) -> bool:
    distance = OSA.distance(word, target)
    if len(target) >= LONG and len(word) >= LONG - 2:
        return distance <= 2
    if len(target) < SHORT:
        return distance == 1 and len(word) == len(target) and sorted(word) == sorted(target)
    return distance <= 1


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
