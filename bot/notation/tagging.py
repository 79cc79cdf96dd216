"""Marks given their kinds: names first, then spoken numbers, then the longest phrases of the lexicon.

A word outside the lexicon that is a slip away from one word of it is taken for that word; short words never are.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.abbreviations import singular
from bot.notation.kinds import Kind
from bot.notation.lexicon import Node, fillers, phrase_tree
from bot.notation.names import Index, read_names
from bot.notation.spelling import mended_word, near_numbers, near_words, split_joined
from bot.notation.spoken import NUMBER_WORDS, TENS, UNITS, read_spoken
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

ORDINALS = {
    word: place
    for place, word in enumerate(
        words(
            "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth",
            "fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth",
        ),
        1,
    )
} | {"2nd": 2}
SLIPS = {
    "teh": "the",
    "fro": "for",
    "adn": "and",
    "nad": "and",
    "wiht": "with",
    "wth": "with",
    "taht": "that",
    "thsi": "this",
    "jsut": "just",
    "tehn": "then",
    "thn": "then",
    "an": "an",
    "eacg": "each",
    "eahc": "each",
    "lfet": "left",
    "frm": "from",
    "foor": "for",
    "forr": "for",
    "tank.": "tank",
    "fore": "for",
    "thats": "thats",
    "tht": "that",
    "wqs": "was",
    "wsa": "was",
    "waz": "was",
    "cant": "cant",
    "nto": "not",
    "dont": "dont",
    "don": "done",
    "skp": "skip",
}
LONGEST = 9


def read_kinds(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with kinds; a phrase of several words is one mark over all of them."""
    corrected = _with_names(_mended(marks, index), index)
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
    if marks[place].kind is not Kind.NUM or marks[place].text not in ("one", "zero", "nil", "nought"):
        return False
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    before = marks[place - 1].kind if place else None
    return after not in _COUNTABLE and before not in _COUNTING


def _mended(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with the commonest slips put right, and words typed as one taken apart."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.WORD:
            out.append(mark)
            continue
        word = SLIPS.get(mark.text, mark.text)
        if word not in index.words and singular(word) not in index.words:
            word = mended_word(word, _beside_numbers(marks, place))
        cut = len(word) - 1 if word in ("kgx", "kgsx", "lbx", "lbsx", "kilosx") else split_joined(word, index)
        if cut is None:
            out.append(mark if word == mark.text else replace(mark, text=word))
        else:
            middle = min(mark.start + cut, mark.end)
            out.append(replace(mark, text=word[:cut], end=middle))
            out.append(replace(mark, text=word[cut:], start=middle, tight=False))
    return out


def _beside_numbers(marks: Sequence[Mark], place: int) -> bool:
    """Whether a word stands where a number may: beside a number, or beside a word that stands beside numbers."""
    said = [
        i for i, m in enumerate(marks[max(0, place - 2) : place + 3], max(0, place - 2)) if m.kind is not Kind.COMMA
    ]
    here = said.index(place)
    beside = [marks[i] for i in (*said[max(0, here - 1) : here], *said[here + 1 : here + 2])]
    return any(m.kind is Kind.NUM or m.text in _COUNTED_WORDS or m.text in NUMBER_WORDS for m in beside)


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
        return replace(mark, kind=_choose(mark, kinds, before), text=text, end=marks[end - 1].end), end
    if mark.kind is Kind.WORD and mark.text in fillers():
        return replace(mark, kind=Kind.FILL), at + 1
    if mark.kind is Kind.WORD and _is_slip(marks, at):
        return replace(mark, kind=Kind.SLIP), at + 1
    return mark, at + 1


_MATTERS = frozenset(
    (Kind.KG, Kind.LB, Kind.LEFT, Kind.RIGHT, Kind.ASSIST, Kind.BODY, Kind.MINUS, Kind.DROP, Kind.MINI, Kind.WARMUP,
     Kind.SORRY, Kind.EACH, Kind.TOTAL, Kind.SETS, Kind.REPS)
)  # fmt: skip
"""Kinds without which a number beside them would be read as something else."""


def _is_slip(marks: Sequence[Mark], at: int) -> bool:
    """Whether an unknown word beside a number may be one that changes it, and it is not clear which."""
    following = marks[at + 1] if at + 1 < len(marks) else None
    if len(marks[at].text) <= 2 and following is not None and following.kind is Kind.NUM and following.tight:
        return True
    if near_numbers(marks[at].text) and _beside_numbers(marks, at):
        return True
    if not any(m.kind is Kind.NUM for m in (*marks[max(0, at - 1) : at], *marks[at + 1 : at + 2])):
        return False
    tree = phrase_tree()
    near = [w for w in near_words(marks[at].text) if w in tree.next and max(len(w), len(marks[at].text)) >= 5]
    return any(set(tree.next[w].kind) & _MATTERS for w in near)


def _longest(marks: list[Mark], at: int) -> tuple[tuple[Kind, ...], int] | None:
    """The longest phrase from here: its kinds, and where it ends. A symbol or number alone is no phrase."""
    node: Node = phrase_tree()
    best: tuple[tuple[Kind, ...], int] | None = None
    place = at
    mended = False
    while place < len(marks) and place < at + LONGEST:
        mark = marks[place]
        if mark.kind is Kind.DASH and place > at and mark.tight and place + 1 < len(marks) and marks[place + 1].tight:
            place += 1
            continue
        if mark.kind in (Kind.NAME, Kind.LINE):
            break
        following = node.next.get(mark.text)
        if following is None and mark.kind is Kind.WORD and not mended:
            following = _mended_step(node, marks, at, place)
            mended = following is not None
        if following is None:
            break
        node = following
        place += 1
        alone = place == at + 1
        if (
            node.kind
            and (not alone or mark.kind in (Kind.WORD, Kind.AT))
            and not (alone and mended and not _stands_out(marks, at))
        ):
            best = (node.kind, place)
    return best


def _mended_step(node: Node, marks: Sequence[Mark], at: int, place: int) -> Node | None:
    """The step that a word one slip away from it would take, where only one does."""
    steps = [node.next[near] for near in near_words(marks[place].text) if near in node.next]
    kinds = {step.kind for step in steps}
    if len(kinds) == 1 or (steps and place > at):
        return steps[0]
    swapped = [w for w in near_words(marks[place].text) if w in node.next and sorted(w) == sorted(marks[place].text)]
    return node.next[swapped[0]] if len(swapped) == 1 else None


def _stands_out(marks: Sequence[Mark], at: int) -> bool:
    """Whether a slip in a word alone is worth mending: beside a number, or in a message of a word or two."""
    beside = (*marks[max(0, at - 1) : at], *marks[at + 1 : at + 2])
    words = sum(m.kind is Kind.WORD for m in marks)
    return words <= 2 or any(
        m.kind in (Kind.NUM, Kind.CLOCK, Kind.NAME) or m.text in UNITS or m.text in TENS for m in beside
    )


_COUNTED_WORDS = frozenset(
    words(
        "reps rep for x kg kilos lb lbs pounds sets set at by rpe rir left in and then each minute minutes second",
        "seconds",
    )
)
"""Words beside which numbers stand."""


def _choose(mark: Mark, kinds: tuple[Kind, ...], before: list[Mark]) -> Kind:
    """The kind of a phrase that has several, by what stands before it."""
    if len(kinds) > 1 and before and before[-1].kind is Kind.FAILED and Kind.LASTREP in kinds:
        return Kind.LASTREP
    if kinds[0] is Kind.KG and mark.text in ("k", "keys") and not (before and before[-1].kind is Kind.NUM):
        return Kind.FILL
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
        follows = at + 1 < len(marks) and (
            marks[at + 1].kind in (Kind.NUM, Kind.COLON) or marks[at + 1].text in ("set", "one", "round")
        )
        if mark.text == "second" and before and before[-1].kind is Kind.NUM and not follows:
            return None
        return replace(mark, kind=Kind.ORD, value=_decimal(ORDINALS[mark.text])), at + 1
    return None


def _decimal(whole: int) -> Decimal:
    return Decimal(whole)
