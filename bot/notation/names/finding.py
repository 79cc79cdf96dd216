"""The names in a stretch of words: the longest first, left to right."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from bot.notation.abbreviations import EVERYDAY, HEADS, singular
from bot.notation.names.fitting import fits_of, is_whole
from bot.notation.names.index import Index
from bot.notation.names.said import TELLING, Word, read_words
from bot.notation.spoken import NUMBER_WORDS

LONGEST = 6
"""Words of the longest name looked for."""
_BEHIND = frozenset(["machine", "station", "bench"])
"""Words for what an exercise is done on, which add nothing behind its name."""
_NEVER_ALONE = NUMBER_WORDS | {
    "seat",
    "includes",
    "include",
    "included",
    "including",
    "assisted",
    "weighted",
    "bodyweight",
    "banded",
    "band",
    "to",
    "on",
    "in",
    "at",
    "of",
    "the",
    "and",
    "with",
    "for",
    "from",
    "a",
    "up",
    "over",
}
"""Words of names that mean something else when they stand alone."""


@dataclass(frozen=True, slots=True)
class Hit:
    """A name at words `start` to `end`: the exercises it fits by place (none: the session lacks it).

    `weak` marks words of everyday talk: a name only where numbers or a skip stand beside it.
    """

    start: int
    end: int
    exercises: tuple[int, ...]
    weak: bool = False


def read_names(words: Sequence[str], index: Index) -> tuple[Hit, ...]:
    """The names in a stretch of words that stand side by side."""
    lacked = _lacked(words, index)
    sided = next((i for i in range(1, len(words)) if _is_of_sides(words, i)), None)
    if lacked is not None:
        return (*read_names(words[: lacked.start], index), lacked, *_behind(words, lacked.end, index))
    if sided is not None:
        return (*read_names(words[:sided], index), *_behind(words, sided + 1, index))
    read = read_words(words, index)
    hits: list[Hit] = []
    run: list[Word] = []
    joined_until = -1
    for place, word in enumerate([*read, None]):
        if word is not None:
            run.append(word)
            joined_until = word.last
        elif place > joined_until:
            if run:
                hits.extend(_read_run(run, index))
            run = []
    return tuple(_with_way(h, words) for h in hits if tuple(words[h.start : h.end]) not in _POSTURES | _LIGHTER)


_LIMBS = frozenset(["sides", "legs", "arms", "hands"])
_MEASURES = frozenset(["secs", "sec", "seconds", "reps", "rep", "meters", "metres", "kg", "kilos", "lbs", "pounds"])
_OF_LIMBS = frozenset(["both", "each"])
"""Words that make sides of them: `both sides bear crawl` names the crawl alone."""


def _is_of_sides(words: Sequence[str], place: int) -> bool:
    """The `sides` of `both sides bear crawl`, the `side` of `forty secs a side dumbbell press`."""
    many = words[place] in _LIMBS and words[place - 1] in _OF_LIMBS
    counted = place > 1 and (words[place - 2] in NUMBER_WORDS or words[place - 2] in _MEASURES)
    return many or (words[place] in ("side", "leg", "arm") and words[place - 1] in ("a", "per", "each") and counted)


def _behind(words: Sequence[str], start: int, index: Index) -> tuple[Hit, ...]:
    """The names from a word on."""
    return tuple(replace(hit, start=hit.start + start, end=hit.end + start) for hit in read_names(words[start:], index))


def _with_way(hit: Hit, words: Sequence[str]) -> Hit:
    """The name with the rest of its posture: the `up` of `calves stood up`."""
    posed = hit.end - hit.start > 1 and tuple(words[hit.end - 1 : hit.end + 1]) in _POSTURES
    return replace(hit, end=hit.end + 1) if posed else hit


_OTHERS = {
    first: tuple((first, *rest.split()) for rest in others)
    for first, others in {
        "sit": ("to stand", "and stand"), "chair": ("stand",), "wall": ("slide", "angel"), "heel": ("slide",),
        "bear": ("crawl",), "star": ("jump",), "jumping": ("jack",), "flutter": ("kick",), "scissor": ("kick",),
        "floor": ("slide",), "leg": ("lower",), "crab": ("walk",),
    }.items()
}  # fmt: skip
"""Exercises whose words are everyday talk apart from each other, by their first word."""


def _lacked(words: Sequence[str], index: Index) -> Hit | None:
    """The first of these that the session does not have."""
    for place in range(len(words) - 1):
        for phrase in _OTHERS.get(words[place], ()):
            said = tuple(singular(w) for w in words[place : place + len(phrase)])
            if said == phrase and not {w for w in phrase if w not in ("to", "and")} <= index.words:
                return Hit(place, place + len(phrase), ())
    return None


_POSTURES = frozenset(
    (verb, way)
    for verb, way in (
        *((v, "down") for v in ("lie", "lying", "lay", "laying", "laid", "sit", "sat", "sitting")),
        *((v, "up") for v in ("stand", "stood", "standing", "sat")),
    )
)
"""What a client does who rests or is not well, and no exercise."""


_LIGHTER = frozenset([("back", "downs"), ("back", "down"), ("back", "offs"), ("back", "off")])
"""The lighter sets behind the heaviest one."""
_LONG_RUN = 3
"""Words with `one` or `ones` behind them: the `decline` of `the decline ones`."""


def _read_run(run: list[Word], index: Index) -> list[Hit]:
    """The names in a run of words of the trade: the longest first, left to right."""
    if len(run) > 1 and run[-1].text == "one" and len(run) < _LONG_RUN:
        run = run[:-1]
    hits: list[Hit] = []
    at = 0
    loose: list[Word] = []
    while at < len(run):
        for size in range(min(LONGEST, len(run) - at), 0, -1):
            window = run[at : at + size]
            alone = all(w.text in _NEVER_ALONE or len(w.text) == 1 for w in window)
            alone = alone and (size == 1 or (window[0].text, window[-1].text) not in index.neighbours)
            alone = alone or (
                size == 1 and bool(hits) and hits[-1].end == window[0].first and window[0].text in _BEHIND
            )
            fits = () if alone else fits_of(window, index)
            if fits:
                weak = all(w.text in EVERYDAY and not w.plural for w in window) and not is_whole(window, fits, index)
                hits.append(Hit(window[0].first, window[-1].last + 1, fits, weak))
                at += size
                break
        else:
            if hits and hits[-1].end == run[at].first and run[at].text in _BEHIND:
                hits[-1] = replace(hits[-1], end=run[at].last + 1)
            else:
                loose.append(run[at])
            at += 1
    tbar = any(one.text == "t" and two.text == "bar" and one in loose for one, two in pairwise(run))
    if tbar or _clash(hits, loose, run) or _is_compound(hits, loose, run):
        return [Hit(run[0].first, run[-1].last + 1, ())]
    telling = [
        w for w in loose if len(w.text) > 1 and w.text not in EVERYDAY and (not w.guess or w.ways[0][0] in HEADS)
    ]
    if telling and (hits or any(w.text in HEADS or any(x in HEADS for way in w.ways for x in way) for w in run)):
        strong = not hits or any(_touches(w, hits) for w in telling)
        if strong:
            return [Hit(run[0].first, run[-1].last + 1, ())]
    if not hits and len(run) >= 2 and any(w.text in HEADS for w in run):
        return [Hit(run[0].first, run[-1].last + 1, (), weak=True)]
    return hits


_COMPOUNDS = frozenset(
    (
        ("floor", "press"), ("box", "squat"), ("belt", "squat"), ("pin", "press"), ("pin", "squat"), ("rack", "pull"),
        ("block", "pull"), ("push", "press"), ("power", "clean"), ("hang", "clean"), ("power", "snatch"),
        ("jump", "squat"), ("high", "row"), ("low", "row"), ("high", "pull"), ("drag", "curl"), ("front", "raise"),
        ("side", "bend"), ("straight", "arm"), ("wall", "sit"), ("t", "bar"), ("v", "squat"), ("bear", "crawl"),
        ("step", "up"), ("good", "morning"), ("leg", "raise"), ("leg", "lift"),
        *((way, lift) for way in ("pause", "paused", "tempo") for lift in ("bench", "squat", "deadlift")),
    )
)  # fmt: skip
"""Words of talk which before these make another exercise of them."""


def _is_compound(hits: list[Hit], loose: list[Word], run: list[Word]) -> bool:
    """Whether a name is the second half of another exercise's: the `press` of `floor press`."""
    starts = {hit.start for hit in hits}
    return any(
        one in loose and two.first in starts and any((one.text, way[0]) in _COMPOUNDS for way in two.ways)
        for one, two in pairwise(run)
    )


def _clash(hits: list[Hit], loose: list[Word], run: list[Word]) -> bool:
    """Whether a word that tells exercises apart stands before a name that lacks it: `hack squat`, `incline row`."""
    starts = {hit.start for hit in hits}
    before = False
    for word in run:
        if before and word.first in starts:
            return True
        before = len(word.text) > 1 and word in loose and (before or any(way[0] in TELLING for way in word.ways))
    for one, two in pairwise(hits):
        words = [w for w in run if one.start <= w.first < one.end]
        heads = any(x in HEADS for w in words for way in w.ways for x in way)
        if one.end == two.start and not heads and not set(one.exercises) & set(two.exercises):
            return True
    return False


def _touches(word: Word, hits: list[Hit]) -> bool:
    return any(word.last + 1 == hit.start or word.first == hit.end for hit in hits)
