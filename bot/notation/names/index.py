"""The names of a session, each in all the ways that it may be called, ready for matching."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import pairwise
from operator import itemgetter

from bot.notation.abbreviations import ABBREVIATIONS, SYNONYMS, singular, vocabulary
from bot.notation.hurt.everyday import EVERYDAY
from bot.notation.lexicon import fillers, lexicon_words
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, Measure, PlannedExercise

JOINED = frozenset(
    words(
        "pullup pushup pressup chinup situp stepup pulldown pushdown pressdown deadlift kickback pullover",
        "facepull getup woodchop rollout deadbug birddog wallball curlup muscleup crossover",
        "kettlebell dumbbell barbell",
    )
)
_EQUIPMENT = frozenset(["ez", "barbell", "dumbbell", "kettlebell", "cable", "machine", "smith", "band", "landmine"])
_EZ = frozenset(["curl", "crusher", "extension", "triceps", "preacher"])
"""What an EZ bar is used for, though its name does not say so."""
_OF_MACHINES = tuple(
    frozenset(words(name))
    for name in (
        "deck", "pulldown", "abduction", "adduction", "leg press", "leg curl", "leg extension", "calf raise", "smith",
        "seated row", "cable row", "hamstring curl", "hack", "pec", "assisted", "supported row", "calf press",
    )
)  # fmt: skip
"""What is done on a machine, though its name does not say so."""
_MUSCLES = tuple(
    (frozenset(words(moves)), muscle)
    for moves, muscle in (
        ("overhead extension", "triceps"), ("skull crusher", "triceps"), ("pushdown", "triceps"),
        ("pressdown", "triceps"), ("hammer curl", "biceps"), ("preacher curl", "biceps"), ("cable curl", "biceps"),
        ("ez curl", "biceps"), ("dumbbell curl", "biceps"), ("barbell curl", "biceps"), ("incline curl", "biceps"),
        ("concentration curl", "biceps"), ("lateral raise", "shoulder"), ("lateral raise", "side"),
        ("leg extension", "quad"), ("leg curl", "hamstring"), ("hip thrust", "glute"), ("kickback", "glute"),
        ("glute bridge", "hip"), ("chest press", "chest"), ("bench press", "chest"), ("crunch", "ab"),
        ("hip abduction", "glute"), ("pulldown", "lat"), ("face pull", "rear"),
        ("adductor", "hip"), ("abductor", "hip"), ("goblet", "kettlebell"), ("goblet", "dumbbell"),
    )
)  # fmt: skip
"""What an exercise is for, or done with, which goes without saying beside its name."""
_OTHER_BARS = frozenset(["trap", "hex", "hexagonal"])
"""Bars of their own: the same lift with a straight one is another exercise."""
_POSTURE = frozenset(["standing", "seated", "lying", "kneeling"])


@dataclass(frozen=True, slots=True)
class Variant:
    """One way to call an exercise, as plain words; `rank` 0 is its name or an alias, 1 a synonym of one."""

    exercise: int
    words: frozenset[str]
    rank: int
    needs: frozenset[str] = frozenset()
    """Of a synonym: its own words, without which the rest names nothing."""


@dataclass(frozen=True, slots=True)
class Index:
    """The names of a session, ready for matching."""

    variants: tuple[Variant, ...]
    extras: tuple[frozenset[str], ...]
    words: frozenset[str]
    spellings: tuple[str, ...]
    around_and: frozenset[tuple[str, str]] = frozenset()
    """The words on both sides of an `and` in a name: those of `clean and press`."""
    joined: frozenset[str] = frozenset()
    """The words of the names that gyms write as one and people as two."""
    neighbours: frozenset[tuple[str, str]] = frozenset()
    """Words that stand side by side in a name."""
    on_body: bool = False
    """Whether an exercise is on body weight, which a band may help."""
    coded: frozenset[str] = frozenset()
    """Words of the names that have letters and digits: `t2b`."""
    pairs: frozenset[str] = frozenset()
    """The two letters that names of two words begin with, which are names only at the head of a set: `sp 30s`."""


def _plain(words: Sequence[str]) -> tuple[str, ...]:
    """Words without plurals, joined where gyms write one word: `pull ups` and `pullups` are the same."""
    out: list[str] = []
    for word in words:
        single = singular(word)
        if out and out[-1] + single in JOINED:
            out[-1] = out[-1] + single
        else:
            out.append(single)
    return tuple(out)


def _split_name(name: str) -> tuple[str, ...]:
    cleaned = "".join(c if c.isalnum() else " " for c in name.lower().replace("'", ""))
    return _plain([w for w in cleaned.split() if w not in ("the", "a", "of", "with", "and", "on")])


@lru_cache(maxsize=4096)
def expanded(word: str) -> tuple[tuple[str, ...], ...]:
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
                for way in expanded(word)[1:]:
                    forms.add(frozenset((*words[:index], *way, *words[index + 1 :])))
            for form in forms:
                variants.append(Variant(place, form, 0))
                variants.extend(Variant(place, other, 1, needs) for other, needs in _synonyms(form))
        extras.append(_extras(own, style, sides, measure))
    words_all = frozenset(w for v in variants for w in v.words)
    spellings = tuple(sorted(w for w in words_all if len(w) >= 4 and w.isalpha()))
    texts = [text for name, aliases, *_ in session for text in (name, *aliases)]
    around = frozenset(pair for text in texts for pair in _around_and(text))
    joined = words_all & JOINED
    letters = Counter(_initials(name) for name, *_ in session)
    for place, (name, *_) in enumerate(session):
        short = _initials(name)
        if short and letters[short] == 1 and short not in words_all:
            variants.append(Variant(place, frozenset([short]), 0))
            words_all |= {short}
    pairs = Counter(_first_letters(name) for name, *_ in session)
    two = frozenset(_two_letters(name, words_all) for name, *_ in session if pairs[_first_letters(name)] == 1) - {""}
    for place, (name, *_) in enumerate(session):
        if _first_letters(name) in two:
            variants.append(Variant(place, frozenset([HEADED + _first_letters(name)]), 0))
    words_all |= {HEADED + one for one in two}
    beside = frozenset(pair for text in texts for pair in pairwise(_split_name(text)))
    on_body = any(style is LoadStyle.BODYWEIGHT for _, _, style, _, _ in session)
    coded = frozenset(w for w in words_all if not w.isalpha() and not w.isdecimal())
    ways = tuple(dict.fromkeys(variants))
    return Index(ways, tuple(extras), words_all, spellings, around, joined, beside, on_body, coded, two)


HEADED = "initials"
"""What two letters at the head of a set are marked with."""
_OF_KIT = frozenset(words(
    "bb db kb sl rp ez ss wu ws dl oh bw pb pr sb tb fw ts bs vs hm mm am pm ok ie eg ps so to of on in at it is as by "
    "do go he if me my no or up us we be an ex hi ha ah la re id im lr rl"
))  # fmt: skip
"""Two letters that people type for kit, sides, bests and little words."""


def _first_letters(name: str) -> str:
    return "".join(word[0] for word in "".join(c if c.isalpha() else " " for c in name.lower()).split())


def _two_letters(name: str, known: frozenset[str]) -> str:
    """The `sp` of `Side Plank`; empty where a name has none that is no other word."""
    short = _first_letters(name)
    stands_for = expanded(short)[1:]
    taken = short in lexicon_words() or short in fillers() or short in _OF_KIT | known
    taken = taken or (short in vocabulary() and not stands_for) or any(known >= set(way) for way in stands_for)
    return "" if len(short) != _FEWEST_LETTERS - 1 or taken else short


def _initials(name: str) -> str:
    """The `llc` of `Lying Leg Curl`: three letters or more that are no word; empty where a name has none."""
    short = _first_letters(name)
    taken = short in lexicon_words() or short in fillers() or short in vocabulary() or short in EVERYDAY
    return "" if len(short) < _FEWEST_LETTERS or taken else short


_FEWEST_LETTERS = 3
"""Letters of a name's initials: two may be any word's."""


def _around_and(text: str) -> list[tuple[str, str]]:
    said = [singular(w) for w in text.lower().replace("&", " and ").replace("-", " ").split()]
    return [(said[i - 1], said[i + 1]) for i in range(1, len(said) - 1) if said[i] == "and"]


_SYNONYMS = tuple((frozenset(_split_name(one)), frozenset(_split_name(two))) for one, two in SYNONYMS)


@cache
def _synonyms_with() -> dict[str, list[tuple[int, frozenset[str], frozenset[str]]]]:
    """Each way from one name to another, by one of the words that it needs, with its place in the table."""
    ways = [way for one, two in _SYNONYMS for way in ((one, two), (two, one))]
    out: dict[str, list[tuple[int, frozenset[str], frozenset[str]]]] = {}
    for place, (said, meant) in enumerate(ways):
        out.setdefault(min(said), []).append((place, said, meant))
    return out


def _synonyms(form: frozenset[str]) -> list[tuple[frozenset[str], frozenset[str]]]:
    table = _synonyms_with()
    ways = sorted((way for word in form for way in table.get(word, ()) if way[1] <= form), key=itemgetter(0))
    return [((form - said) | meant, meant) for _, said, meant in ways if not meant <= form]


def _extras(own: frozenset[str], style: LoadStyle, sides: int, measure: Measure) -> frozenset[str]:
    """Words that go without saying for the exercise."""
    extra = {"flat", "regular", "normal", "conventional", "olympic", "strict"}
    if own & {"incline", "decline"}:
        extra -= {"flat"}
    if own & _OTHER_BARS:
        extra -= {"regular", "normal", "conventional", "olympic"}
    if not own & _POSTURE:
        extra |= {"standing"}
    if not own & _EQUIPMENT:
        if style is LoadStyle.TOTAL and not own & _OTHER_BARS:
            extra |= {"barbell", "bar"}
            extra |= {"ez"} if own & _EZ else set()
        if style is LoadStyle.PER_HAND:
            extra |= {"dumbbell"}
    extra |= {muscle for moves, muscle in _MUSCLES if moves <= own}
    if style is LoadStyle.TOTAL and any(of <= own for of in _OF_MACHINES):
        extra |= {"machine"}
    if "ez" in own:
        extra |= {"barbell", "bar"}
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
