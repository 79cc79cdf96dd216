"""The words of the trade in what was said: known, short for others, or misspelt."""

from collections.abc import Sequence
from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.abbreviations import ABBREVIATIONS, EVERYDAY, HEADS, QUALIFIERS, singular, vocabulary
from bot.notation.lexicon import fillers, lexicon_words
from bot.notation.names.index import JOINED, Index, expanded
from bot.notation.quick import quick
from bot.notation.wordlist import words

TELLING = QUALIFIERS - frozenset(
    words(
        "good dead half high low power straight double wall box pause tempo block rack belt bar toe floor step",
        "walking mountain cross country over weighted bodyweight push pull dip chin sit jump side v",
    )
)
"""Words which before a name make it another exercise."""
_REAL = frozenset(
    words(
        "invented process progress depress express impress compress stress dress fresh bunch beach reach teach",
        "leach lunch punch inches patch hurl girl pearl early leap leg's grows throws shows crow brow grow know",
        "slow now cow row's raid praise rinse rise rises raised braise ruse house horse hose close chose clause",
        "glue blue clue flue plan plans plant plank's blank flank thank drank swung swinging sling bring wing",
        "wings king strong string stretch squash squad squirt quart quarts tire tired thirst trust crust bust",
        "burst bridges fridge ridge bride pride side hide tide quads curly carrying carried marry carriage cherry",
        "berry jumping jumbled bump pump dump crouch couch cough hang hangs hanged hands handed land band sand",
        "lounge lounges",
        "chess chase cheese guest crest best nest rest roast toast coast boast pushing pulling bulled fuller",
        "pullover sitter clear cleaner learn lean cream steam team dead head heads deal death breath bread bench's",
        "wrench trench french thrush crush brush shrub shrugged rope hope ropes ripe stop shop chop top drop crop",
    )
)
"""Everyday words a slip away from an exercise's: they name none."""
_SHORT = frozenset(("row", "dip", "fly"))


@quick
class Word:
    """A said word, plain, over the raw words `first` to `last`; what it may stand for, and how well it is known."""

    text: str
    first: int
    last: int
    ways: tuple[tuple[str, ...], ...]
    known: bool
    """In the session's names or the vocabulary; a guess by spelling otherwise."""
    guess: bool
    plural: bool = False
    """Said as its plural, which is short for an exercise: `hammers`."""


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


def _near_plural(raw: str, after: str, index: Index) -> tuple[str, ...]:
    """The short name whose plural is a slip away from a word that no other follows: the dips of `dibs +15 10`."""
    if after or len(raw) != _SHORTEST_HALF + 1 or is_plain(raw):
        return ()
    near = (w for w in _SHORT & index.words if raw[0] == w[0] and OSA.distance(raw, w + "s", score_cutoff=1) <= 1)
    return tuple(sorted(near))


def is_plain(word: str) -> bool:
    """Whether a word is of the lexicon or of talk."""
    return word in lexicon_words() or word in fillers()


def _is_trade(word: str) -> bool:
    return word in vocabulary() or word in HEADS


def read_words(words: Sequence[str], index: Index) -> list[Word | None]:
    """Each said word of the trade, or `None` for other talk (and the word that was joined to the one before)."""
    out: list[Word | None] = []
    for place, raw in enumerate([_meant(words, i, index) for i in range(len(words))]):
        single = singular(raw)
        before = out[-1] if out else None
        if before is not None and before.text + single in JOINED and before.last == place - 1:
            joined = before.text + single
            out[-1] = Word(joined, before.first, place, expanded(joined), True, False)
            out.append(None)
            continue
        if before is not None and before.last == place - 1 and _is_turned(before.text, single, index):
            out[-1] = Word(single + before.text, before.first, place, expanded(single + before.text), True, False)
            out.append(None)
            continue
        ways = _as_written(single, index)
        if raw in ABBREVIATIONS:
            ways = tuple(dict.fromkeys((*ways, *expanded(raw))))
        if any(index.words.issuperset(way) for way in ways) or _is_trade(single) or raw in ABBREVIATIONS:
            plural = raw != single and any(len(way.split()) > 1 for way in ABBREVIATIONS.get(raw, ()))
            out.append(Word(single, place, place, ways, True, False, plural))
        elif raw in lexicon_words() or raw in _HALVES:
            pairs = place + 1 < len(words) and single + singular(words[place + 1]) in JOINED
            out.append(Word(single, place, place, ways, True, False) if pairs else None)
        else:
            after = singular(words[place + 1]) if place + 1 < len(words) else ""
            out.append(_guess(raw, single, place, index, after))
    return out


def _as_written(single: str, index: Index) -> tuple[tuple[str, ...], ...]:
    """What a word may stand for; where this session writes in two what was written in one, that: `skullcrusher`."""
    ways = expanded(single)
    if single in index.words or not _is_trade(single):
        return ways
    for cut in range(_SHORTEST_HALF, len(single) - 2):
        halves = single[:cut], single[cut:]
        if halves in index.neighbours or (halves[0], singular(halves[1])) in index.neighbours:
            return (*ways, halves)
    return ways


_HALVES = frozenset(["dumb", "kick", "skull", "dum"])
"""First halves of names that are no words of the trade alone."""


def _is_turned(one: str, two: str, index: Index) -> bool:
    """`pull face`: a name that is one word here, told the other way round."""
    return one in ("pull", "bug", "dog", "ball") and two + one in index.words and two + one in JOINED


HEARD = {
    "squad": "squat", "squads": "squat", "rose": "row", "roes": "row", "roles": "row", "pool": "pull", "pools": "pull",
    "poll": "pull", "polls": "pull",
    "bull": "pull", "bulls": "pull", "girl": "curl", "girls": "curl", "pearls": "curl", "coral": "curl",
    "lounge": "lunge", "lounges": "lunge", "race": "raise", "races": "raise", "rays": "raise", "rises": "raise",
    "cough": "calf", "carve": "calf", "carves": "calf", "cavs": "calf", "trust": "thrust", "trusts": "thrust",
    "school": "skull", "scull": "skull", "crashers": "crusher", "crashes": "crusher", "prayer": "press",
    "hacks": "hack", "bucks": "bug", "books": "bug", "pack": "pec", "extinction": "extension", "bucked": "bug",
    "benched": "bench", "squatted": "squat", "deadlifted": "deadlift", "planked": "plank", "swung": "swing",
    "bent": "bench", "branch": "bench", "planck": "plank", "blank": "plank", "tips": "dip",
    "flight": "fly", "flights": "fly", "flice": "fly", "real": "rear", "rare": "rear", "dell": "delt", "delts": "delt",
    "rise": "raise", "rase": "raise",
    "pushes": "pushup", "pushing": "pushup", "pushed": "pushup",
    "sitting": "seated", "sitted": "seated", "sat": "seated", "stood": "standing", "stand": "standing",
    "laying": "lying", "lay": "lying", "laid": "lying", "backward": "reverse", "backwards": "reverse",
    "lat's": "lat", "let": "lat", "lap": "lat", "shrubs": "shrug", "trap's": "trap", "suits": "suitcase",
}  # fmt: skip
"""What dictation hears where an exercise is named, or how else its posture is told (`row sitting`); taken so beside
another word of the session's names."""


_HEARD_BESIDE = {"pendulum": "pendlay", "group": "grip", "grab": "grip", "gripped": "grip"}
"""Those that are words of other exercises or of talk: taken where they stand as in a name, `pendulum rows`."""
_HEARD_ALONE = frozenset(words("lounge lounges squad squads shrubs cavs carves planck pearls roes"))
"""Those of them that are taken without such a word, before what is no word: `lounges 14s 12 each`."""


def _meant(said: Sequence[str], place: int, index: Index) -> str:
    """A word that dictation took for another, beside a word of the same session's names: what was meant."""
    if said[place] in ("dec", "dek") and said[place - 1 : place] in (["pec"], ["pecs"]) and "deck" in index.words:
        return "deck"
    begun = _begun(said, place, index)
    if begun is not None:
        return begun
    beside = _HEARD_BESIDE.get(said[place])
    if beside is not None and said[place] not in index.words:
        pairs = {(beside, singular(w)) for w in said[place + 1 : place + 2]}
        pairs |= {(w, beside) for w in said[max(0, place - 1) : place]}
        if pairs & index.neighbours:
            return beside
    meant = HEARD.get(said[place])
    if meant is None or (said[place] in index.words and said[place + 1 : place + 2] == ["over"]):
        return _half_meant(said, place, index)
    before = singular(said[place - 1]) if place else ""
    after = singular(said[place + 1]) if place + 1 < len(said) else ""
    joined = {before + meant, meant + after} - {meant}
    if joined & index.words:
        return meant
    if said[place] in _HEARD_ALONE and place == len(said) - 1 and meant in index.words:
        return meant
    ways = [x for w in (before, after) if w for way in expanded(w) for x in way]
    return meant if meant in index.words and any(w in index.words for w in ways) else said[place]


def _begun(said: Sequence[str], place: int, index: Index) -> str | None:
    """The word that a few letters behind the word before it begin: the `pr` of `floor pr`."""
    raw = said[place]
    if not place or len(raw) > _FEW_LETTERS or raw in index.words or raw in _LETTERS or raw in ABBREVIATIONS:
        return None
    before = singular(said[place - 1])
    stem = raw.removesuffix("s") if len(raw) > 1 else raw
    if place + 1 < len(said) and singular(raw) + singular(said[place + 1]) in JOINED:
        return None
    begun = [two for one, two in index.neighbours if one == before and two.startswith(stem) and len(two) > len(raw)]
    return begun[0] if len(set(begun)) == 1 else None


_FEW_LETTERS = 4
"""Letters of a word that is only begun: a longer one is a word of its own, or a slip."""
_LETTERS = frozenset(
    words("a i l r s x w k m u n for at to on in up and the was set so is it as my of or but rep reps")
)
"""Letters and little words of their own."""


def _half_meant(said: Sequence[str], place: int, index: Index) -> str:
    """A slip in one half of a name that is one word here: the `faec` of `faec pull`."""
    raw = said[place]
    if (
        len(raw) < _SHORTEST_HALF
        or raw in _REAL
        or not index.joined
        or _is_trade(raw)
        or _is_trade(singular(raw))
        or raw in index.words
        or raw in lexicon_words()
    ):
        return raw
    before = singular(said[place - 1]) if place else ""
    after = singular(said[place + 1]) if place + 1 < len(said) else ""
    halves = {w.removesuffix(after) for w in index.joined if after and w.endswith(after)}
    halves |= {w.removeprefix(before) for w in index.joined if before and w.startswith(before)}
    near = [h for h in halves if len(h) >= _SHORTEST_HALF and OSA.distance(raw, h, score_cutoff=1) <= 1]
    return near[0] if len(near) == 1 else raw


_SHORTEST_HALF = 3
"""Letters of a half that is taken for a slip of one: of fewer, any word is."""


def is_near_name(raw: str, index: Index) -> bool:
    """Whether an unknown word is one slip away from a word of the session's names: `pulldon`, `thurst`."""
    return any(
        len(other) >= len(raw) - 1 and OSA.distance(word, other, score_cutoff=1) <= 1
        for word in {raw, singular(raw)}
        for other in index.spellings
    )


def _guess(raw: str, single: str, place: int, index: Index, after: str) -> Word | None:
    if raw in _REAL:
        return None
    lettered = next((cut for cut in (1, 2) if {raw[:cut], singular(raw[cut:])} <= index.words), None)
    if lettered is not None:
        return Word(single, place, place, ((raw[:lettered], singular(raw[lettered:])),), True, False)
    near = _near(single, index.spellings) or _near(raw, index.spellings) or _near_plural(raw, after, index)
    if near:
        return Word(single, place, place, tuple((n,) for n in near), True, True)
    begun = [w for w in index.words if w.startswith(raw) and len(w) > len(raw) + 1]
    short = len(raw) == _LONG_ENOUGH - 1 and not place and not after and raw not in lexicon_words()
    if (len(raw) >= _LONG_ENOUGH or short) and len(begun) == 1 and not is_plain(raw):
        return Word(single, place, place, ((begun[0],),), True, True)
    for cut in range(3, len(raw) - 2):
        first, second = singular(raw[:cut]), singular(raw[cut:])
        if first in index.words and second in index.words:
            return Word(single, place, place, ((first, second),), True, False)
    if len(raw) >= _LONG_ENOUGH and after in HEADS and raw not in fillers():
        told = [n for n in _TELLING_SPELLINGS if OSA.distance(raw, n, score_cutoff=1) <= 1]
        if told:
            return Word(single, place, place, tuple((n,) for n in told), True, True)
    near = tuple(n for n in _near(single, _TRADE_SPELLINGS) if n not in lexicon_words())
    if near and (len(single) >= 6 or any(n in TELLING for n in near)):
        return Word(single, place, place, tuple(way for n in near for way in _as_written(n, index)), True, True)
    return None


_LONG_ENOUGH = 4
"""Letters from which on a beginning tells a word, and above which a slip of one is looked for."""
_TELLING_SPELLINGS = tuple(sorted(w for w in TELLING if len(w) > _LONG_ENOUGH))
"""Words that make another exercise of the name behind them: the `front` of `frnot squat`."""
_TRADE_SPELLINGS = tuple(
    sorted({w for w in vocabulary() if len(w) >= 5 and w not in EVERYDAY} | {"hack", "front", "smith", "seal"})
)
