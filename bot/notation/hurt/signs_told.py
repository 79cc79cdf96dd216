"""Urgent signs told in any order, by the rows of `bot.notation.hurt.phrases_told`."""

from collections.abc import Iterator
from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.figures import is_spilt, likens_a_drink
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated, negated_word
from bot.notation.hurt.of_things import is_of_a_thing, is_of_kit
from bot.notation.hurt.over import long_ago
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.people import LAUGHING, laughed
from bot.notation.hurt.phrases_told import TOLD
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sign import Sign, bounds, stands, tears_skin
from bot.notation.hurt.tokens import Gap, Kind
from bot.notation.hurt.told import Told

_DIGITS = "0123456789., "
_LONG = 7
"""Letters from which a slip is forgiven."""
_OF_PEOPLE = frozenset({"fainting", "stroke", "breath", "heart", "control"})
"""The signs that a thing may be said to show: `the laptop lost consciousness`."""
_OF_PLACES = frozenset({"headache", "no feeling", "no strength", "pop", "chest", "cord", "clot"})
"""The signs that name a place."""


def _rows_by_word() -> dict[str, list[int]]:
    """Which rows each word of a first idea begins."""
    out: dict[str, list[int]] = {}
    for row, told in enumerate(TOLD):
        for word in told.ideas[0]:
            out.setdefault(word, []).append(row)
    return out


_BY_WORD = _rows_by_word()


_TELLING = frozenset(w for told in TOLD for idea in told.ideas for w in idea if len(w) >= _LONG)
"""The words of the rows that are long enough to be known with a slip in them."""


@lru_cache(maxsize=8192)
def _heard(word: str) -> str:
    """The word of the rows that a typed one, no word by itself, is one slip from: `consience`, `breathh`."""
    if len(word) < _LONG or word in _TELLING or SPELLER.is_known(word):
        return word
    near = [t for t in _TELLING if abs(len(t) - len(word)) <= 1 and OSA.distance(word, t, score_cutoff=1) <= 1]
    return min(near) if near else word


def told_signs(scene: Passage) -> Iterator[Sign]:
    """The signs of the rows above that stand."""
    heard = [_heard(t.word.lstrip(_DIGITS) if t.kind is Kind.TIME else t.word) for t in scene.tokens]
    here = frozenset(heard)
    begun = {row for word in here if word in _BY_WORD for row in _BY_WORD[word]}
    for told in (TOLD[row] for row in sorted(begun)):
        if any(here.isdisjoint(idea) for idea in told.ideas):
            continue
        for index, word in enumerate(heard):
            if word in told.ideas[0]:
                yield from _around(scene, heard, told, index)


def _around(scene: Passage, heard: list[str], told: Told, index: int) -> Iterator[Sign]:
    """The sign about one word of its first idea: the other ideas nearest to it."""
    found = [index]
    for idea in told.ideas[1:]:
        apart = int(told.across and idea is told.ideas[-1])
        beside = [
            i
            for i in range(max(0, index - told.within), min(len(scene.tokens), index + told.within + 1))
            if heard[i] in idea
            and i not in found
            and abs(scene.sentence[i] - scene.sentence[index]) <= apart
            and not _sets_between(scene, index, i)
        ]
        if not beside:
            return
        low, high = min(found), max(found)
        found.append(min(beside, key=lambda i: (max(high, i) - min(low, i), abs(i - index))))
    first, end = min(found), max(found) + 1
    around = _words_around(scene, first, end, index)
    if end - first > told.within + 1 or around & told.unless:
        return
    if any(heard[i] in _SWELLING and scene.word(i - 1) in ("no", "without", "zero") for i in found):
        return
    refuses = any(heard[i] in _NOT for i in found)
    if told.name == "clot" and not refuses and any(negated_word(scene, i) for i in found):
        return  # `cramp in my calf, not hot, not swollen`
    if any(heard[i] in _AT_ONCE and scene.word(i - 1) in _NO for i in found):
        return
    if any(heard[i] == "accident" and (scene.word(i - 1) == "by" or is_spilt(scene, i)) for i in found):
        return  # `dropped it by accident, did not notice`
    if told.name in ("chest", "headache") and any(_is_no_place(scene, i, heard[i]) for i in found):
        return
    if told.name == "urine" and any(likens_a_drink(scene, i) for i in found):
        return
    if told.name == "breath" and scene.words(end, end + 3) & LAUGHING:
        return
    mark = Mark(first, end, Cue.FAINT)
    if told.name in _OF_PEOPLE and (
        is_of_a_thing(scene, mark) or (heard[first].startswith("collaps") and is_of_kit(scene, mark))
    ):
        return
    if told.name == "pop" and any(tears_skin(scene, at) for at in found):
        return
    masked = any(n.cue is Cue.NEUTRAL and n.first <= index < n.end for n in scene.found)
    is_mine = _is_mine(scene, mark) if told.posed else stands(scene, mark)
    if not masked and is_mine and not (laughed(scene, mark) and not told.sober and told.name != "control"):
        near = [s for s in scene.spots if scene.same_sentence(s.first, index) and abs(s.first - index) <= told.within]
        near = [s for s in near if not bounds(scene, s)] or near
        near = [s for s in scene.spots if s.first in found] or near
        spot = min(near, key=lambda s: abs(s.first - index)) if near and told.name in _OF_PLACES else None
        if spot is not None or told.name not in ("no feeling", "no strength"):
            yield Sign(told.name, tuple(sorted(found)), spot)


def _is_no_place(scene: Passage, at: int, word: str) -> bool:
    """The chest of `the chest press`, the head of `head down`: no part of the body that something is said of."""
    if word in _NAMING:
        return scene.word(at + 1) in _NAMING[word]
    return word == "head" and (scene.word(at + 1) == "coach" or all(not s.first <= at < s.end for s in scene.spots))


_NAMING = {
    "chest": word_set("press machine fly flys flyes flies supported pass day work pad up out high proud open tall"),
    "hammer": word_set("curl curls strength grip press row rows"),
}
"""Behind these words the names of an exercise, a thing, a posture."""


_SWELLING = word_set("swelling heat redness bulge lump hole dent gap bruise bruising leak leaks")
"""What is felt for, and may be said not to be there: `calf checked, no swelling`."""


_NOT = word_set("doesn't don't won't can't not isn't")
"""Where a row itself asks for one of these, it denies nothing of it: `my calf doesn't fit the sock, warm`."""
_AT_ONCE = word_set("sudden suddenly abrupt abruptly instant instantly")
_NO = word_set("no not nothing isn't wasn't without")
"""Before `sudden` these say that it came slowly."""


def _is_mine(scene: Passage, mark: Mark) -> bool:
    """Whether a sign that is put as what could be done stands: neither denied, nor of a limb that is another's."""
    others = any(s.mine is False for s in scene.spots if mark.first <= s.first < mark.end)
    return not (others or negated(scene, mark) or long_ago(scene, mark))


def _words_around(scene: Passage, first: int, end: int, index: int) -> frozenset[str]:
    """The words of a sign's sentence, from the last `but` before it on: `sore on the press, but my chest feels ...`."""
    start = index
    while start > 0 and scene.sentence[start - 1] == scene.sentence[index]:
        start -= 1
    turn = next((i for i in range(first - 1, start, -1) if scene.word(i) == "but"), None)
    words = scene.sentence_words(index) - _said_of_sets(scene, first, end, index)
    return words if turn is None else words - {scene.word(i) for i in range(start, turn)}


def _said_of_sets(scene: Passage, first: int, end: int, index: int) -> frozenset[str]:
    """The words that stand only beside a set, apart from the sign: the `bench` of `bench 70x6, a rhino on my chest`."""
    here = [i for i in range(len(scene.tokens)) if scene.same_sentence(i, index)]
    apart: set[str] = set()
    kept: set[str] = set()
    clause: list[int] = []
    for i in [*here, len(scene.tokens)]:
        if clause and (i == len(scene.tokens) or scene.tokens[i].gap is not Gap.NONE):
            of_a_set = any(scene.tokens[j].kind is Kind.SET for j in clause)
            by_itself = clause[-1] < first or clause[0] >= end
            words = {scene.word(j) for j in clause}
            if of_a_set and by_itself and not words & LAUGHING:
                apart |= words
            else:
                kept |= words
            clause = []
        clause.append(i)
    return frozenset(apart - kept)


def _sets_between(scene: Passage, one: int, other: int) -> bool:
    """Whether a set is reported between two words: the `at` of `short of breath sitting still, 8 reps at 60`."""
    low, high = sorted((one, other))
    loaded = scene.word(low) == "at" and scene.tokens[low + 1].kind is Kind.NUMBER  # `8 reps at 60, short of breath`
    return loaded or any(t.kind is Kind.SET for t in scene.tokens[low:high])
