"""Slips of the thumb put right before the kinds are given, and those that cannot be, seen."""

import re
from collections.abc import Sequence

from rapidfuzz.distance import OSA

from bot.notation.abbreviations import singular
from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.lexicon import phrase_tree
from bot.notation.names import Index
from bot.notation.quick import replace
from bot.notation.spelling import is_common, mended_word, near_numbers, near_words, split_joined
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

SLIPS = {
    "teh": "the",
    "fro": "for",
    "adn": "and",
    "nad": "and",
    "amd": "and",
    "anf": "and",
    "annd": "and",
    "snd": "and",
    "nite": "night",
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
    "faliure": "failure",
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
    "hav": "have",
    "tae": "to",
    "oot": "out",
    "wis": "was",
    "wuz": "was",
    "aboot": "about",
    "didnae": "didnt",
    "wasnae": "wasnt",
    "cannae": "cant",
    "canna": "cant",
    "feelin": "feeling",
    "feeled": "felt",
    "doin": "doing",
    "messin": "messing",
    "botherin": "bothering",
    "leavin": "leaving",
    "touchin": "touching",
    "nae": "no",
    "nay": "no",
    "dinnae": "dont",
    "gonnae": "gonna",
    "doon": "down",
    "hae": "have",
    "u": "you",
    "wats": "whats",
    "wots": "whats",
    "whts": "whats",
    "wat": "what",
    "wht": "what",
    "wut": "what",
    "wot": "what",
    "waht": "what",
    "wuts": "whats",
}
_BEFORE_EFFORT = frozenset(words("reps kg lb @ about like maybe around was at probably prob approx and easy hard"))
_COUNTED_WORDS = frozenset(
    words(
        "reps rep for x kg kilos lb lbs pounds sets set at by rpe rir left in and then each minute minutes second",
        "seconds",
    )
)
"""Words beside which numbers stand."""
_MATTERS = frozenset(
    (Kind.KG, Kind.LB, Kind.LEFT, Kind.RIGHT, Kind.ASSIST, Kind.BODY, Kind.MINUS, Kind.DROP, Kind.MINI, Kind.WARMUP,
     Kind.SORRY, Kind.EACH, Kind.TOTAL, Kind.SETS, Kind.REPS)
)  # fmt: skip
"""Kinds without which a number beside them would be read as something else."""


_COUNTS = {
    **{word + "s": word for word in ("three", "four", "five", "seven", "eight", "nine", "ten", "twelve", "fifteen")},
    **{word + "s": word for word in ("two", "eleven", "thirteen", "fourteen", "sixteen", "seventeen", "eighteen")},
    **{word[:-1] + "ies": word for word in ("thirty", "forty", "fifty", "sixty")},
    "sixes": "six",
    "twenties": "twenty",
}
"""`all eights`: a number and its `s`."""


_DRAWN = frozenset(words(
    "and done finished skip skipped same again over all finally that was easy hard good nice tough light heavy grindy",
    "solid smooth brutal slow fast so yes no oh hey phew reps sets each left right only just too pls please",
))  # fmt: skip
"""Words that are typed drawn out: `aaand done`, `doneee`."""


def _drawn_in(word: str) -> str:
    """A word that is typed drawn out as it is spelt; any other as it stands."""
    return _SPELT.get(_once(word), word) if _THRICE.search(word) else word


def _once(word: str) -> str:
    return "".join(c for c, before in zip(word, " " + word, strict=False) if c != before)


_SPELT = {_once(word): word for word in _DRAWN}
_THRICE = re.compile(r"(.)\1\1")


_PIECES = frozenset(words("pieces piece"))
_OF_SETS = frozenset(words("that those these them it this the each all work reps sets set every"))
"""Behind `pieces of` these leave it a count; `two pieces of concrete` counts no repetitions."""


def mended(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with the commonest slips put right, and words typed as one taken apart."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.WORD:
            out.append(mark)
            continue
        word = SLIPS.get(mark.text, mark.text)
        word = _drawn_in(_effort_meant(marks, place)) if word not in index.words else word
        if word in _PIECES and text_at(marks, place + 1) == "of" and text_at(marks, place + 2) not in _OF_SETS:
            word = "lumps"
        if word not in _COUNTS and word not in index.words and singular(word) not in index.words:
            word = mended_word(word, bool(near_numbers(word)) and _beside_numbers(marks, place))
        if word in _COUNTS:
            out.append(replace(mark, text=_COUNTS[word], end=mark.end - 1))
            out.append(replace(mark, text="s", start=mark.end - 1, tight=True))
            continue
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
    for step in (-1, 1):
        at = place + step + (step if kind_at(marks, place + step) is Kind.COMMA else 0)
        if kind_at(marks, at) is Kind.NUM or text_at(marks, at) in _COUNTED_WORDS or text_at(marks, at) in NUMBER_WORDS:
            return True
    return False


def _effort_meant(marks: Sequence[Mark], place: int) -> str:
    """`55x7 tpe 9`: a short word one slip from `rpe` or `rir`, behind a number and before one of its scale."""
    word = SLIPS.get(marks[place].text, marks[place].text)
    if not 3 <= len(word) <= 4:
        return word
    following = marks[place + 1] if place + 1 < len(marks) else None
    told = place > 0 and (
        marks[place - 1].kind in (Kind.NUM, Kind.COMMA, Kind.AT) or marks[place - 1].text in _BEFORE_EFFORT
    )
    if not told or following is None or following.kind is not Kind.NUM:
        return word
    if is_common(word) or word in phrase_tree().next or following.value is None:
        return word
    if following.value >= EASIEST and following.value <= HARDEST and OSA.distance(word, "rpe") == 1:
        return "rpe"
    return "rir" if following.value <= MOST_LEFT and OSA.distance(word, "rir") == 1 else word


def is_slip(marks: Sequence[Mark], at: int) -> bool:
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
