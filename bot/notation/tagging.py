"""Marks given their kinds: names first, then spoken numbers, then the longest phrases of the lexicon.

A word outside the lexicon that is a slip away from one word of it is taken for that word; short words never are.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.kinds import Kind
from bot.notation.lexicon import Node, fillers, lexicon_words, phrase_tree
from bot.notation.names import Index, read_names
from bot.notation.spoken import NUMBER_WORDS, read_spoken
from bot.notation.tokens import Mark

ORDINALS = {
    word: place
    for place, word in enumerate(
        "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth "
        "fifteenth sixteenth seventeenth eighteenth nineteenth twentieth".split(),
        1,
    )
} | {"2nd": 2}
SLIPS = {
    "teh": "the", "fro": "for", "adn": "and", "nad": "and", "wiht": "with", "wth": "with", "taht": "that", "thsi": "this",
    "jsut": "just", "tehn": "then", "thn": "then", "an": "an", "eacg": "each", "eahc": "each", "lfet": "left",
    "frm": "from", "foor": "for", "forr": "for", "tank.": "tank", "fore": "for", "thats": "thats", "tht": "that",
    "wqs": "was", "wsa": "was", "waz": "was", "cant": "cant", "nto": "not", "dont": "dont", "don": "done", "skp": "skip",
}  # fmt: skip
LONGEST = 9


def read_kinds(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with kinds; a phrase of several words is one mark over all of them."""
    named = _with_names(marks, index)
    corrected = [replace(m, text=near_word(m.text)) if m.kind is Kind.WORD else m for m in named]
    out: list[Mark] = []
    at = 0
    while at < len(corrected):
        mark, at = _next(corrected, at, out)
        out.append(mark)
    return [replace(m, kind=Kind.FILL, value=None) if _is_pronoun(out, i) else m for i, m in enumerate(out)]


_COUNTABLE = (Kind.REPS, Kind.SETS, Kind.SET, Kind.TANK, Kind.LEFT, Kind.RIR, Kind.MORE, Kind.X, Kind.KG, Kind.LB,
              Kind.MINUTES, Kind.HOURS, Kind.SECONDS, Kind.RPE, Kind.EACH)  # fmt: skip
_COUNTING = (Kind.X, Kind.AT, Kind.RIR, Kind.RPE, Kind.COULD, Kind.NUM, Kind.FOR, Kind.LEFT, Kind.RIGHT)


def _is_pronoun(marks: Sequence[Mark], place: int) -> bool:
    """Whether a `one` counts nothing: `an easy one`, `one exercise to go`."""
    if marks[place].kind is not Kind.NUM or marks[place].text != "one":
        return False
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    before = marks[place - 1].kind if place else None
    return after not in _COUNTABLE and before not in _COUNTING


@lru_cache(maxsize=8192)
def near_word(word: str) -> str:
    """The word of the lexicon that this one is a slip away from; otherwise the word itself."""
    if word in SLIPS:
        return SLIPS[word]
    if len(word) < 5 or len(word) > 14 or word in _REAL or word in lexicon_words() or word in NUMBER_WORDS or word in ORDINALS:
        return word
    best, least = word, 2
    for other in _targets():
        if other[0] != word[0] or abs(len(other) - len(word)) > 1:
            continue
        if min(len(word), len(other)) < 5:
            continue
        distance = OSA.distance(word, other, score_cutoff=1)
        if distance < least:
            best, least = other, distance
    return best


_REAL = frozenset("slipped shipped shipping snipping planted planed filed failing falling sounds rounds".split())
"""Real words that a slip would take for one of these; they stay themselves."""
_SPELT = (
    "kilos kilograms pounds seconds minutes metres assist assisted assistance bodyweight right total failure failed skipped "
    "skipping finished planned prescribed warmup correction sorry reserve nothing another"
).split()
"""Words of the lexicon that are worth a slip: long, common in reports, and near to few others."""


@lru_cache(maxsize=1)
def _targets() -> tuple[str, ...]:
    return (*_SPELT, *sorted(w for w in NUMBER_WORDS if len(w) >= 5))


def _with_names(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with each name as one mark."""
    out: list[Mark] = []
    run: list[Mark] = []

    def flush() -> None:
        hits = {hit.start: hit for hit in read_names([m.text for m in run], index)}
        at = 0
        while at < len(run):
            hit = hits.get(at)
            if hit is None:
                out.append(run[at])
                at += 1
                continue
            first, last = run[hit.start], run[hit.end - 1]
            text = " ".join(m.text for m in run[hit.start : hit.end])
            kind = Kind.NAME if not hit.weak else Kind.WEAK
            out.append(replace(first, kind=kind, text=text, end=last.end, names=hit.exercises))
            at = hit.end
        run.clear()

    for place, mark in enumerate(marks):
        hyphen = (
            mark.kind is Kind.DASH
            and bool(run)
            and mark.start == run[-1].end
            and place + 1 < len(marks)
            and marks[place + 1].kind is Kind.WORD
            and marks[place + 1].tight
        )
        if mark.kind is Kind.WORD and mark.text.isalpha():
            run.append(mark)
        elif not hyphen:
            flush()
            out.append(mark)
    flush()
    return out


def _next(marks: list[Mark], at: int, before: list[Mark]) -> tuple[Mark, int]:
    """The next mark with its kind, and where the one after it starts."""
    mark = marks[at]
    if mark.kind in (Kind.NAME, Kind.WEAK, Kind.LINE, Kind.BAD):
        return mark, at + 1
    phrase = _longest(marks, at)
    spoken = read_spoken(marks, at)
    if spoken is not None and (phrase is None or spoken[1] >= phrase[1]):
        return spoken
    ordinal = _ordinal(marks, at, before)
    if ordinal is not None and (phrase is None or ordinal[1] >= phrase[1]):
        return ordinal
    if phrase is not None:
        kinds, end = phrase
        text = " ".join(m.text for m in marks[at:end])
        return replace(mark, kind=_choose(kinds, before), text=text, end=marks[end - 1].end), end
    if mark.kind is Kind.WORD and mark.text in fillers():
        return replace(mark, kind=Kind.FILL), at + 1
    return mark, at + 1


def _longest(marks: list[Mark], at: int) -> tuple[tuple[Kind, ...], int] | None:
    """The longest phrase from here: its kinds, and where it ends. A symbol or number alone is no phrase."""
    node: Node = phrase_tree()
    best: tuple[tuple[Kind, ...], int] | None = None
    place = at
    while place < len(marks) and place < at + LONGEST:
        mark = marks[place]
        if mark.kind is Kind.DASH and place > at and mark.tight and place + 1 < len(marks) and marks[place + 1].tight:
            place += 1
            continue
        following = node.next.get(mark.text)
        if following is None or mark.kind in (Kind.NAME, Kind.LINE):
            break
        node = following
        place += 1
        if node.kind and (place > at + 1 or mark.kind in (Kind.WORD, Kind.AT)):
            best = (node.kind, place)
    return best


def _choose(kinds: tuple[Kind, ...], before: list[Mark]) -> Kind:
    """The kind of a phrase that has several, by what stands before it."""
    if len(kinds) > 1 and before and before[-1].kind is Kind.FAILED and Kind.LASTREP in kinds:
        return Kind.LASTREP
    if len(kinds) > 1 and before and before[-1].kind in (Kind.NAME, Kind.WEAK) and Kind.SKIPPED in kinds:
        return Kind.SKIPPED
    return kinds[0]


def _ordinal(marks: list[Mark], at: int, before: list[Mark]) -> tuple[Mark, int] | None:
    """`9th`, `first`, `second` (after a number that is seconds)."""
    mark = marks[at]
    if mark.kind is Kind.NUM and at + 1 < len(marks) and mark.value is not None:
        suffix = marks[at + 1]
        if suffix.tight and suffix.text in ("st", "nd", "rd", "th") and mark.value == int(mark.value):
            return replace(mark, kind=Kind.ORD, text=mark.text + suffix.text, end=suffix.end, parts=()), at + 2
    if mark.kind is Kind.WORD and mark.text in ORDINALS:
        if mark.text == "second" and before and before[-1].kind is Kind.NUM:
            return None
        return replace(mark, kind=Kind.ORD, value=_decimal(ORDINALS[mark.text])), at + 1
    return None


def _decimal(whole: int) -> Decimal:
    return Decimal(whole)
