"""Which exercise a name means: shortened, misspelt, by alias or by a gym's abbreviation.

Every word of a said name must be explained by the exercise: by a word of its name or of one alias, by an expansion, by
a synonym, by a near spelling (for words that are no word of the trade), or by what goes without saying (`barbell` on a
bar). A name that fits several is returned with all of them; one that fits none, with none.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from rapidfuzz.distance import OSA

from bot.notation.abbreviations import ABBREVIATIONS, EVERYDAY, HEADS, QUALIFIERS, SYNONYMS, singular, vocabulary
from bot.notation.lexicon import lexicon_words
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, Measure, PlannedExercise

LONGEST = 6
"""Words of the longest name looked for."""
_JOINED = frozenset(
    words(
        "pullup pushup pressup chinup situp stepup pulldown pushdown pressdown deadlift kickback pullover",
        "facepull getup woodchop rollout deadbug birddog wallball curlup muscleup crossover",
    )
)
_EQUIPMENT = frozenset(["barbell", "dumbbell", "kettlebell", "cable", "machine", "smith", "band", "landmine"])
_TELLING = QUALIFIERS - frozenset(
    words(
        "good dead half high low power straight double wall box pause tempo block rack belt bar toe floor step",
        "walking mountain assault cross country over weighted bodyweight push pull dip chin sit jump side v",
    )
)
"""Words which before a name make it another exercise."""
_POSTURE = frozenset(["standing", "seated", "lying", "kneeling"])


@dataclass(frozen=True, slots=True)
class Hit:
    """A name at words `start` to `end`: the exercises it fits by place (none: the session lacks it).

    `weak` marks words of everyday talk: a name only where numbers or a skip stand beside it.
    """

    start: int
    end: int
    exercises: tuple[int, ...]
    weak: bool = False


@dataclass(frozen=True, slots=True)
class Variant:
    """One way to call an exercise, as plain words; `rank` 0 is its name or an alias, 1 a synonym of one."""

    exercise: int
    words: frozenset[str]
    rank: int


@dataclass(frozen=True, slots=True)
class Index:
    """The names of a session, ready for matching."""

    variants: tuple[Variant, ...]
    extras: tuple[frozenset[str], ...]
    words: frozenset[str]
    spellings: tuple[str, ...]


def _plain(words: Sequence[str]) -> tuple[str, ...]:
    """Words without plurals, joined where gyms write one word: `pull ups` and `pullups` are the same."""
    out: list[str] = []
    for word in words:
        single = singular(word)
        if out and out[-1] + single in _JOINED:
            out[-1] = out[-1] + single
        else:
            out.append(single)
    return tuple(out)


def _split_name(name: str) -> tuple[str, ...]:
    cleaned = "".join(c if c.isalnum() else " " for c in name.lower().replace("'", ""))
    return _plain([w for w in cleaned.split() if w not in ("the", "a", "of", "with", "and", "on")])


def _expanded(word: str) -> tuple[tuple[str, ...], ...]:
    """The word itself and what it may be short for, as plain words."""
    ways: list[tuple[str, ...]] = [(word,)]
    for key in (word, word + "s"):
        ways += [_split_name(long) for long in ABBREVIATIONS.get(key, ())]
    return tuple(dict.fromkeys(ways))


@lru_cache(maxsize=256)
def index_of(session: tuple[tuple[str, tuple[str, ...], LoadStyle, int, Measure], ...]) -> Index:
    """The index of a session's names (with aliases, style, sides and measure of each)."""
    variants: list[Variant] = []
    extras: list[frozenset[str]] = []
    for place, (name, aliases, style, sides, measure) in enumerate(session):
        own = frozenset(w for text in (name, *aliases) for w in _split_name(text))
        for text in (name, *aliases):
            words = _split_name(text)
            forms = {frozenset(words)}
            for index, word in enumerate(words):
                for way in _expanded(word)[1:]:
                    forms.add(frozenset((*words[:index], *way, *words[index + 1 :])))
            for form in forms:
                variants.append(Variant(place, form, 0))
                variants.extend(Variant(place, other, 1) for other in _synonyms(form))
        extras.append(_extras(own, style, sides, measure))
    words_all = frozenset(w for v in variants for w in v.words)
    spellings = tuple(sorted(w for w in words_all if len(w) >= 4 and w.isalpha()))
    return Index(tuple(dict.fromkeys(variants)), tuple(extras), words_all, spellings)


def _synonyms(form: frozenset[str]) -> list[frozenset[str]]:
    found = []
    for one, two in SYNONYMS:
        first, second = frozenset(_split_name(one)), frozenset(_split_name(two))
        for a, b in ((first, second), (second, first)):
            if a <= form and not b <= form:
                found.append((form - a) | b)
    return found


def _extras(own: frozenset[str], style: LoadStyle, sides: int, measure: Measure) -> frozenset[str]:
    """Words that go without saying for the exercise."""
    extra = {"flat", "regular", "normal", "conventional", "olympic", "strict"}
    if not own & _POSTURE:
        extra |= {"standing"}
    if not own & _EQUIPMENT:
        if style is LoadStyle.TOTAL:
            extra |= {"barbell", "bar"}
        if style is LoadStyle.PER_HAND:
            extra |= {"dumbbell"}
    if style is LoadStyle.BODYWEIGHT:
        extra |= {"weighted", "bodyweight", "assisted", "banded"}
    if sides == 2:
        extra |= {"single", "arm", "leg"}
    if measure is Measure.SECONDS:
        extra |= {"hold"}
    if measure is Measure.METRES:
        extra |= {"walk", "carry"}
    return frozenset(extra - own)


def session_index(exercises: tuple[PlannedExercise, ...]) -> Index:
    """The index of these exercises, kept for the sessions read last."""
    return index_of(tuple((e.name, e.aliases, e.load_style, e.sides, e.measure) for e in exercises))


@dataclass(frozen=True, slots=True)
class _Word:
    """A said word, plain, over the raw words `first` to `last`; what it may stand for, and how well it is known."""

    text: str
    first: int
    last: int
    ways: tuple[tuple[str, ...], ...]
    known: bool
    """In the session's names or the vocabulary; a guess by spelling otherwise."""
    guess: bool


_NEVER_ALONE = NUMBER_WORDS | {"assisted", "weighted", "bodyweight", "banded", "band"}
"""Words of names that mean something else when they stand alone."""
_REAL = frozenset(
    words(
        "invented process progress depress express impress compress stress dress fresh bunch beach reach teach",
        "leach lunch punch inches patch hurl girl pearl early leap leg's grows throws shows crow brow grow know",
        "slow now cow row's raid praise rinse rise rises raised braise ruse house horse hose close chose clause",
        "glue blue clue flue plan plans plant plank's blank flank thank drank swung swinging sling bring wing",
        "wings king strong string stretch squash squad squirt quart quarts tire tired thirst trust crust bust",
        "burst bridges fridge ridge bride pride side hide tide quads curly carrying carried marry carriage cherry",
        "berry jumping jumbled bump pump dump crouch couch cough hang hangs hanged hands handed land band sand",
        "chess chase cheese guest crest best nest rest roast toast coast boast pushing pulling bulled fuller",
        "pullover sitter clear cleaner learn lean cream steam team dead head deal death breath bread bench's",
        "wrench trench french thrush crush brush shrub shrugged rope hope ropes ripe stop shop chop top drop crop",
    )
)
"""Everyday words a slip away from an exercise's: they name none."""
_SHORT = frozenset(("row", "dip", "fly"))


@lru_cache(maxsize=4096)
def _near(word: str, spellings: tuple[str, ...]) -> tuple[str, ...]:
    """The names' words that this is a near spelling of: one slip up to six letters, two from seven on."""
    if len(word) < 4:
        return tuple(o for o in ("row", "dip", "fly") if sorted(o) == sorted(word) and o in _SHORT and o != word)
    best: list[tuple[int, str]] = []
    for other in spellings:
        slips = 1 if max(len(word), len(other)) < 7 else 2
        if abs(len(word) - len(other)) > slips:
            continue
        distance = OSA.distance(word, other, score_cutoff=slips)
        if distance <= slips and (word[0] == other[0] or distance == 1):
            best.append((distance, other))
    if not best:
        return ()
    least = min(best)[0]
    return tuple(other for distance, other in best if distance == least)


def _is_trade(word: str) -> bool:
    return word in vocabulary() or word in HEADS


def _read_words(words: Sequence[str], index: Index) -> list[_Word | None]:
    """Each said word of the trade, or `None` for other talk (and the word that was joined to the one before)."""
    out: list[_Word | None] = []
    for place, raw in enumerate(words):
        single = singular(raw)
        before = out[-1] if out else None
        if before is not None and before.text + single in _JOINED and before.last == place - 1:
            joined = before.text + single
            out[-1] = _Word(joined, before.first, place, _expanded(joined), True, False)
            out.append(None)
            continue
        ways = _expanded(single)
        if raw in ABBREVIATIONS:
            ways = tuple(dict.fromkeys((*ways, *_expanded(raw))))
        if any(all(w in index.words for w in way) for way in ways) or _is_trade(single) or raw in ABBREVIATIONS:
            out.append(_Word(single, place, place, ways, True, False))
        elif raw in lexicon_words():
            pairs = place + 1 < len(words) and single + singular(words[place + 1]) in _JOINED
            out.append(_Word(single, place, place, ways, True, False) if pairs else None)
        else:
            out.append(_guess(raw, single, place, index))
    return out


def _guess(raw: str, single: str, place: int, index: Index) -> _Word | None:
    if raw in _REAL:
        return None
    near = _near(single, index.spellings) or _near(raw, index.spellings)
    if near:
        return _Word(single, place, place, tuple((n,) for n in near), True, True)
    for cut in range(3, len(raw) - 2):
        first, second = singular(raw[:cut]), singular(raw[cut:])
        if first in index.words and second in index.words:
            return _Word(single, place, place, ((first, second),), True, False)
    near = tuple(n for n in _near(single, _TRADE_SPELLINGS) if n not in lexicon_words())
    if near and (len(single) >= 6 or any(n in _TELLING for n in near)):
        return _Word(single, place, place, tuple((n,) for n in near), True, True)
    return None


_TRADE_SPELLINGS = tuple(
    sorted({w for w in vocabulary() if len(w) >= 5 and w not in EVERYDAY} | {"hack", "front", "smith", "seal"})
)


def _fits(window: Sequence[_Word], index: Index) -> tuple[int, ...]:
    """The exercises that explain every word of the window, the best fits only."""
    best: dict[int, tuple[int, int, int]] = {}
    for variant in index.variants:
        extras = index.extras[variant.exercise]
        used: set[str] = set()
        spare = 0
        for word in window:
            for way in word.ways:
                if all(w in variant.words for w in way):
                    used.update(way)
                    break
            else:
                if not all(w in extras for way in word.ways[:1] for w in way):
                    break
                spare += 1
        else:
            if used:
                missing = len(variant.words - used)
                quality = (0 if missing == 0 else 1, variant.rank, spare)
                if variant.exercise not in best or quality < best[variant.exercise]:
                    best[variant.exercise] = quality
    if not best:
        return ()
    least = min(best.values())[:2]
    return tuple(sorted(e for e, quality in best.items() if quality[:2] == least))


def looser_fits(words: Sequence[str], index: Index) -> tuple[int, ...]:
    """All exercises that a name may mean, those too that another fits better: `curls` where one is called so."""
    window = [w for w in _read_words(words, index) if w is not None]
    if not window:
        return ()
    found = {
        variant.exercise
        for variant in index.variants
        if variant.rank == 0 and all(any(all(x in variant.words for x in way) for way in w.ways) for w in window)
    }
    return tuple(sorted(found))


def read_names(words: Sequence[str], index: Index) -> tuple[Hit, ...]:
    """The names in a stretch of words that stand side by side."""
    read = _read_words(words, index)
    hits: list[Hit] = []
    run: list[_Word] = []
    joined_until = -1
    for place, word in enumerate([*read, None]):
        if word is not None:
            run.append(word)
            joined_until = word.last
        elif place > joined_until:
            if run:
                hits.extend(_read_run(run, index))
            run = []
    return tuple(hits)


def _read_run(run: list[_Word], index: Index) -> list[Hit]:
    """The names in a run of words of the trade: the longest first, left to right."""
    hits: list[Hit] = []
    at = 0
    loose: list[_Word] = []
    while at < len(run):
        for size in range(min(LONGEST, len(run) - at), 0, -1):
            window = run[at : at + size]
            fits = () if all(w.text in _NEVER_ALONE for w in window) else _fits(window, index)
            if fits:
                weak = all(w.text in EVERYDAY for w in window) and not _is_whole(window, fits, index)
                hits.append(Hit(window[0].first, window[-1].last + 1, fits, weak))
                at += size
                break
        else:
            loose.append(run[at])
            at += 1
    if _clash(hits, loose, run):
        return [Hit(run[0].first, run[-1].last + 1, ())]
    telling = [w for w in loose if w.text not in EVERYDAY and (not w.guess or w.ways[0][0] in HEADS)]
    if telling and (hits or any(w.text in HEADS or any(x in HEADS for way in w.ways for x in way) for w in run)):
        strong = not hits or any(_touches(w, hits) for w in telling)
        if strong:
            return [Hit(run[0].first, run[-1].last + 1, ())]
    if not hits and len(run) >= 2 and any(w.text in HEADS for w in run):
        return [Hit(run[0].first, run[-1].last + 1, (), weak=True)]
    return hits


def _clash(hits: list[Hit], loose: list[_Word], run: list[_Word]) -> bool:
    """Whether a word that tells exercises apart stands before a name that lacks it: `hack squat`, `incline row`."""
    starts = {hit.start for hit in hits}
    before = False
    for word in run:
        if before and word.first in starts:
            return True
        before = word in loose and (before or any(way[0] in _TELLING for way in word.ways))
    for one, two in pairwise(hits):
        words = [w for w in run if one.start <= w.first < one.end]
        heads = any(x in HEADS for w in words for way in w.ways for x in way)
        if one.end == two.start and not heads and not set(one.exercises) & set(two.exercises):
            return True
    return False


def _touches(word: _Word, hits: list[Hit]) -> bool:
    return any(word.last + 1 == hit.start or word.first == hit.end for hit in hits)


def _is_whole(window: Sequence[_Word], fits: tuple[int, ...], index: Index) -> bool:
    """Whether the words are all of a name or alias of one of the exercises."""
    said = {w for word in window for w in word.ways[0]}
    return any(v.exercise in fits and v.rank == 0 and v.words == said for v in index.variants)
