"""Which exercises of the session explain the words of a name."""

from collections.abc import Iterator, Sequence

from bot.notation.abbreviations import HEADS, singular
from bot.notation.names.index import Index
from bot.notation.names.said import HEARD, Word, read_words


def fits_of(window: Sequence[Word], index: Index) -> tuple[int, ...]:
    """The exercises that explain every word of the window, the best fits only."""
    best: dict[int, tuple[int, int, int]] = {}
    for variant in index.variants:
        extras = index.extras[variant.exercise]
        used: set[str] = set()
        spare = 0
        for word in window:
            for way in word.ways:
                if variant.words.issuperset(way):
                    used.update(way)
                    break
            else:
                if not any(extras.issuperset(way) for way in word.ways):
                    break
                spare += 1
        else:
            if used and variant.needs <= used:
                missing = len(variant.words - used)
                quality = (0 if missing == 0 else 1, variant.rank, spare)
                if variant.exercise not in best or quality < best[variant.exercise]:
                    best[variant.exercise] = quality
    if not best:
        return ()
    least = min(best.values())
    own = least[0] == 1 and least[2] == 0  # `ez curl` is the one that says `ez`, not all that an ez bar is used for
    return tuple(sorted(e for e, quality in best.items() if quality[:2] == least[:2] and (not own or quality[2] == 0)))


def looser_fits(words: Sequence[str], index: Index) -> tuple[int, ...]:
    """All exercises that a name may mean, those too that another fits better: `curls` where one is called so."""
    window = [w for w in read_words(words, index) if w is not None]
    if not window:
        return ()
    found = {
        variant.exercise
        for variant in index.variants
        if variant.rank == 0 and all(any(variant.words.issuperset(way) for way in w.ways) for w in window)
    }
    return tuple(sorted(found))


def is_misspelt(words: Sequence[str], index: Index) -> bool:
    """Whether a word of a name is a guess by its spelling: `aductor`, near to two names' words."""
    return any(word is not None and word.guess for word in read_words(words, index))


def links(one: str, two: str, index: Index) -> bool:
    """Whether an `and` between two words is one inside a name: that of `clean and press`."""
    if not index.around_and:
        return False
    said = read_words([one, two], index)
    if len(said) < 2 or said[0] is None or said[1] is None:
        return False
    return any((a[0], b[0]) in index.around_and for a in said[0].ways for b in said[1].ways)


def turned(one: str, two: str, index: Index) -> bool:
    """Whether an `of` between two words is one inside a name told the other way round: that of `curl of leg`."""
    if singular(HEARD.get(one, one)) not in HEADS:
        return False
    said = read_words([two, one], index)
    if not said or said[0] is None:
        return False
    return bool(fits_of([w for w in said if w is not None], index)) and (
        len(said) < 2 or said[-1] is not None or said[0].last == 1
    )


def is_whole(window: Sequence[Word], fits: tuple[int, ...], index: Index) -> bool:
    """Whether the words are all of a name or alias of one of the exercises."""
    whole = [{w for word, way in zip(window, ways, strict=True) for w in way} for ways in _meanings(window)]
    return any(v.exercise in fits and v.rank == 0 and v.words in whole for v in index.variants)


def _meanings(window: Sequence[Word]) -> Iterator[tuple[tuple[str, ...], ...]]:
    """What the words may stand for: as they are, or each as what it is short for."""
    yield tuple(word.ways[0] for word in window)
    if len(window) > 1:
        yield tuple(word.ways[-1] for word in window)
