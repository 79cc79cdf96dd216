"""Slips of the thumb in words: two words typed as one, and a letter too many, too few, wrong or swapped.

Only words that nobody knows are mended: those of the lexicon, of talk, of the trade and of the session stay as they
are. A word typed as one of two must be two known ones; a slip is mended where the mended word completes a phrase, or
stands beside a number.
"""

from functools import lru_cache

from rapidfuzz.distance import OSA
from rapidfuzz.process import extract

from bot.notation.abbreviations import singular, vocabulary
from bot.notation.hurt.everyday import EVERYDAY
from bot.notation.lexicon import fillers, lexicon_words
from bot.notation.names import Index, is_near_name
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.wordlist import words

_OTHER = frozenset(
    words(
        "monday tuesday wednesday thursday friday saturday sunday mondays tuesdays wednesdays thursdays fridays",
        "saturdays sundays mon tue tues wed weds thu thur thurs fri sat sun yesterday yesterdays ago night nights",
        "pm am forever inside outside someone everyone anyone nobody everybody into onto upon cannot offset reset",
        "onset asset upset sunset beside besides indoor outdoor outdoors indoors income become becomes forearm",
        "forearms together without within alone along notice noticed nowhere somewhere anywhere everywhere",
        "herself himself myself itself yourself handle handles another hurts hurt hurting knee knees back backs",
        "shoulder elbow wrist ankle hip neck chest pain pains painful sore soreness sharp pinch pinches pinching",
        "tight stiff pulled strained strain tweak tweaked injury injured doctor physio numb tingling dizzy faint",
        "fainted headache swollen cramp cramped cramping calf thigh groin hamstring quad glute bicep tricep",
        "january february march april may june july august september october november december tonight upstairs",
        "downstairs half quarter past slipped shipped shipping snipping planted filed failing falling sounds",
        "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth",
        "fifteenth twentieth tipped tripped stripped dripped gripped flipped swapped invented grabbed",
        "whoever whatever whichever whenever wherever however height heights weight weights freight sight thirsty",
        "dirty nifty sever severe elven line lines wine wines live",
        "lives lived gives given dive hive pine vine vines fire fired firing file files hour hours your yours tour",
        "pour",
        "sour foul fort fork force threw thee breakfast airport homework football basketball headphones earphones",
        "footy",
        "backpack bathroom bedroom downtown birthday sunshine boyfriend girlfriend granddaughter grandson housework",
        "password notebook overtime overnight playlist sweatshirt toothpaste understand underneath update upgrade",
        "picking picked picks",
        "wardrobe warehouse waterproof workplace makeup lineup setup startup pickup checkup breakup buildup cleanup",
        "grownup hangover leftover leftovers takeover layover hangout layout turnout burnout blackout checkout",
        "knockout",
        "lookout timeout lockdown breakdown countdown meltdown shutdown sundown touchdown offline online newspaper",
        "grandma grandpa grandad grandmother grandfather godson stepson daylight midnight sometimes somebody",
        "grapefruit",
        "message messages",
        "weather whether brother mother father sister sitter laundry parking shopping cooking baking cleaning",
        "driving",
        "miles mile inches inch kilometres kilometers kms trips laps holes goals points pints games matches tickets",
        "kettle nursery teacher toddler toddlers babies buggy washing ironing hoover hoovering gardening allotment",
        "found sound round ground",
        "kills kilts kilns silos hounds mounds wounds bounds founds worry lorry cession minds mines sinus",
        "mould heave",
        "weave cleave hailed mailed sailed tailed wailed foiled railed jailed scrape scraps strap scram",
        "leaver fright",
        "wright ditty skipper planner finisher sundae",
        "crap crappy shit shite shitty damn damned bloody bollocks arse shame shameful lame tame dame fame sage sane",
        "slipping sipping sipped skimped skimping flailed panned leaves lease mints menus cleaner longer shorter",
        "reading readings boiling limber springy crisp crisper crispy",
        "smoother counter outer inner tighter looser lighter heavier stronger weaker impressed impressive",
        "stage stages",
        "temple tendon tendons touches throw throws north honor honour phones cossack bites stand stands standing",
        "depressed pressure ours hers stir star start stars stone stones tenant tender forgotten footplate",
        "sate snipped amendment minuses jam jammed snagged wedged",
    )
)
"""Known words that no table of ours needs to hold."""


_ENDINGS = frozenset(["er", "es", "or", "en", "al", "ed"])
"""Ends of one word, which are words by themselves too: `cleaner` is no `clean, er`."""
_ORDINAL_ENDINGS = frozenset(["st", "nd", "rd", "th", "ph", "ho"])
_BESIDE_A = frozenset(["and", "for", "half", "hundred", "quarter", "of", "with", "per", "in", "on", "at"])
"""Words that an `a` is glued to: `ahalf`, `fora`."""
ALWAYS = tuple(
    words(
        "kilos kilograms pounds seconds minutes assisted assistance assist bodyweight failure yesterday weekend",
        "warmup session finished skipped skipping planned sorry ditto scratch monday tuesday wednesday thursday",
        "friday saturday sunday instead right minus could leave again failed scrap",
    )
)
"""Words that are worth a slip wherever they stand: common in reports, and near to few others."""


@lru_cache(maxsize=16384)
def is_common(word: str) -> bool:
    """Whether a word is known without a session: lexicon, talk, trade, numbers, days."""
    return (
        word in lexicon_words()
        or word in fillers()
        or word in NUMBER_WORDS
        or word in _OTHER
        or word in vocabulary()
        or singular(word) in vocabulary()
    )


def is_known(word: str, index: Index) -> bool:
    """Whether a word is known beside this session."""
    return is_common(word) or word in index.words or singular(word) in index.words


def split_joined(word: str, index: Index) -> int | None:
    """Where an unknown word falls into two known ones; `None` where it does not."""
    if not 4 <= len(word) <= 24 or is_known(word, index) or word in EVERYDAY or is_near_name(word, index):
        return None
    if word[-1] == "d" and word[-2] not in "aeiouy" and (is_common(word[:-1] + "ed") or word[:-1] + "ed" in EVERYDAY):
        return None  # `stoppd`, `walkd`
    for cut in sorted(range(1, len(word)), key=lambda c: abs(2 * c - len(word))):
        first, second = word[:cut], word[cut:]
        if second in _ENDINGS or first in _ORDINAL_ENDINGS:
            continue
        if "a" in (first, second) and (first in _BESIDE_A or second in _BESIDE_A):
            return cut
        if max(len(first), len(second)) < 3 or min(len(first), len(second)) < 2:
            continue
        if is_known(first, index) and is_known(second, index):
            return cut
    return None


@lru_cache(maxsize=8192)
def mended_word(word: str, beside_numbers: bool) -> str:
    """An unknown word as the one that it must be: one of `ALWAYS`, or a number word beside numbers; else as it is."""
    if not 4 <= len(word) <= 14 or is_common(word):
        return word
    near = [w for w in ALWAYS if len(w) >= 5 and OSA.distance(word, w, score_cutoff=1) <= 1]
    if beside_numbers:
        near += [w for w in NUMBER_WORDS if len(w) >= 4 and OSA.distance(word, w, score_cutoff=1) <= 1]
    return near[0] if len(set(near)) == 1 else word


@lru_cache(maxsize=8192)
def near_numbers(word: str) -> tuple[str, ...]:
    """The number words that an unknown word is one slip away from."""
    if not 4 <= len(word) <= 14 or is_common(word):
        return ()
    return tuple(w for w in NUMBER_WORDS if len(w) >= 4 and OSA.distance(word, w, score_cutoff=1) <= 1)


@lru_cache(maxsize=8192)
def near_words(word: str) -> tuple[str, ...]:
    """The words of the lexicon that an unknown word is one slip away from."""
    if not 4 <= len(word) <= 16 or is_common(word):
        return ()
    near = extract(word, _mendable(len(word)), scorer=OSA.distance, score_cutoff=1, limit=None)
    found = (other for other, _, _ in near)
    return tuple(sorted(w for w in found if max(len(word), len(w)) > _SHORTEST or sorted(word) == sorted(w)))


_SHORTEST = 4
"""Letters of words of which only a slip that swaps two of them is mended."""


@lru_cache(maxsize=32)
def _mendable(length: int) -> tuple[str, ...]:
    """The words that one of so many letters may be a slip for."""
    known = (w for w in lexicon_words() | NUMBER_WORDS if len(w) >= _SHORTEST and w.isalpha())
    return tuple(sorted(w for w in known if abs(len(w) - length) <= 1))
