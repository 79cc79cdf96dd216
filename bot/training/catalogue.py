"""The catalogue of exercises: found by what people call them, a coach's own laid over it. Data: `catalogue.toml`."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from types import MappingProxyType

from rapidfuzz import fuzz, process

from bot.training.catalogue_exercise import Exercise, is_said, name_key, name_words
from bot.training.catalogue_file import read_exercises

__all__ = ["Catalogue", "Exercise", "aliases_of", "catalogue", "name_key"]

ALIKE_FROM = 60
"""Of 100: names less alike than this are no help to whoever slipped. Ours, looked at on a list of slips."""
SHORTEST_ASKED = 3
"""Letters: less is like everything."""


@dataclass(frozen=True, slots=True)
class Catalogue:
    """Exercises with their names. `of` and `with_own` build it; every name and alias means one exercise."""

    exercises: tuple[Exercise, ...]
    by_key: Mapping[str, Exercise]

    @classmethod
    def of(cls, exercises: Iterable[Exercise]) -> "Catalogue":
        """From exercises in the order of their right to a name: names before aliases, earlier before later.

        An alias that means another exercise already is taken off; of two exercises of one name the first stays.
        """
        named: dict[str, Exercise] = {}
        for one in exercises:
            named.setdefault(name_key(one.name), one)
        taken = set(named)
        kept: list[Exercise] = []
        by_key: dict[str, Exercise] = {}
        for key, one in named.items():
            free = tuple(a for a in one.aliases if name_key(a) and name_key(a) not in taken)
            mended = one if free == one.aliases else replace(one, aliases=free)
            taken.update(name_key(alias) for alias in free)
            kept.append(mended)
            by_key |= {key: mended} | {name_key(alias): mended for alias in free}
        return cls(tuple(kept), MappingProxyType(by_key))

    def find(self, name: str) -> Exercise | None:
        """The exercise of that name or alias, whatever its case, spaces, hyphens or plural; `None` where unknown.

        >>> found = catalogue().find("RDLs")
        >>> found.name if found else None
        'Romanian deadlift'
        """
        return self.by_key.get(name_key(name))

    def similar(self, text: str, limit: int = 3) -> tuple[Exercise, ...]:
        """Whose names or aliases are most like the text, each exercise once, the most alike first: "did you mean".

        Empty where nothing is alike.
        """
        asked = _spelt(text)
        if len(asked) < SHORTEST_ASKED:
            return ()
        spelt = [(_spelt(name), one) for one in self.exercises for name in (one.name, *one.aliases)]
        scored = process.extract(asked, [name for name, _ in spelt], scorer=_alike, score_cutoff=ALIKE_FROM, limit=None)
        best: dict[str, tuple[float, int, Exercise]] = {}
        for _, score, place in scored:
            one = spelt[place][1]
            if one.name not in best or score > best[one.name][0]:
                best[one.name] = (score, place, one)
        return tuple(one for _, _, one in sorted(best.values(), key=lambda b: (-b[0], b[1]))[: max(limit, 0)])

    def with_own(self, own: Iterable[Exercise]) -> "Catalogue":
        """With a coach's own exercises laid over it: theirs take the place of those of the same name, the later of two
        of their own counts, and their aliases go before the catalogue's, though no alias goes before a name."""
        theirs = {name_key(one.name): one for one in own}
        return Catalogue.of((*theirs.values(), *self.exercises))


@cache
def catalogue() -> Catalogue:
    """The catalogue as it comes, read once."""
    return Catalogue.of(read_exercises())


@lru_cache(maxsize=2048)
def aliases_of(name: str) -> tuple[str, ...]:
    """What else clients call an exercise, fit to be listened for; none where the catalogue doesn't know it.

    An alias that holds another exercise's name is left out: who says that one doesn't mean this.
    """
    found = catalogue().find(name)
    if found is None:
        return ()
    own, key = name_words(name), name_key(name)
    others = [name_words(e.name) for e in catalogue().exercises if e != found]
    strange = [words for words in others if not words <= own]
    return tuple(
        alias
        for alias in (found.name, *found.aliases)
        if name_key(alias) != key and is_said(alias, name) and not any(words <= name_words(alias) for words in strange)
    )


def _spelt(text: str) -> str:
    return " ".join("".join(c if c.isalnum() else " " for c in text.casefold()).split())


def _alike(one: str, other: str, *, processor: object = None, score_cutoff: float | None = None) -> float:  # noqa: ARG001
    """Likeness of 100, the order of the words weighing a little."""
    likeness = 0.7 * fuzz.token_sort_ratio(one, other) + 0.3 * fuzz.ratio(one, other)
    return likeness if score_cutoff is None or likeness >= score_cutoff else 0.0
