"""Slips in the small words that change a report: `2 lft in the tank`, `wam up 60x5`, `5 res`, `srcond set`.

Words of three to five letters have too many neighbours to be mended wherever they stand: here each is looked for only
where its own neighbours call for it, and only one slip away (optimal string alignment).
"""

from collections.abc import Callable, Sequence
from dataclasses import replace

from rapidfuzz.distance import OSA

from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.colours import BESIDE_COLOURS, COLOURED
from bot.notation.kinds import Kind
from bot.notation.names import Index
from bot.notation.spelling import is_known
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SHORTEST = 2
"""Letters of a small word that may be mistyped."""
_REAL = frozenset(
    words("lest deft lift rest rest let lets leg legs rep set core mire wore some time sale game came name")
)
"""Words of their own that stand a slip away, where no slot says that they are meant otherwise."""
_TALLIED = words("left reps more sets")
_ORDINALS = words("first second third fourth fifth last")
_AGAIN = frozenset(words("again as weight load reps rep thing here for with before too set"))
_THREE = frozenset(words("thee there their thre tree free threee"))
_LEFT = frozenset(words("let lift lft lef lest"))
_HEARD = _THREE | _LEFT | {"ten"}


def small_words(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with such words as what was meant."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.WORD or len(mark.text) < _SHORTEST:
            continue
        meant = _by_neighbours(out, place)
        if meant is None and (mark.text in _LOOSE or not is_known(mark.text, index)):
            meant = next((said for slot in _SLOTS if (said := slot(out, place)) is not None), None)
        if meant is not None and meant != mark.text:
            out[place] = replace(mark, text=meant)
    return out


_LOOSE = frozenset(words("lft sme lef smae saem"))
"""Short forms of other words, which are slips too."""


def _near(word: str, meant: Sequence[str]) -> str | None:
    """The one of some words that a word is a slip for."""
    if word in meant or word in _REAL:
        return None
    near = [w for w in meant if OSA.distance(word, w, score_cutoff=1) <= 1]
    return near[0] if len(near) == 1 else None


def _is_count(marks: Sequence[Mark], place: int) -> bool:
    return place >= 0 and (kind_at(marks, place) is Kind.NUM or text_at(marks, place) in NUMBER_WORDS)


def _ends(marks: Sequence[Mark], place: int) -> bool:
    return place >= len(marks) or kind_at(marks, place) in EDGES


def _opens(marks: Sequence[Mark], place: int) -> bool:
    return part_of(marks, place)[0] == place


def _by_neighbours(marks: Sequence[Mark], place: int) -> str | None:
    """Words that are known ones elsewhere: `all thee sets`, `2 let in the tank`, `let 10 right 9`, `60x5 ten 60x5`."""
    word = marks[place].text
    if word not in _HEARD:
        return None
    before, after = text_at(marks, place - 1), text_at(marks, place + 1)
    if before == "all" and after == "sets" and word in _THREE:
        return "three"
    tanked = [m.text for m in marks[place + 1 : place + 4]] == ["in", "the", "tank"]
    if word in _LEFT and (
        (tanked and _is_count(marks, place - 1)) or (before == "nothing" and _ends(marks, place + 1))
    ):
        return "left"
    if (
        word in _LEFT
        and kind_at(marks, place + 1) is Kind.NUM
        and any(m.text == "right" for m in marks[place + 2 : place + 6])
    ):
        return "left"
    kinds = [m.kind for m in marks[max(0, place - 2) : place + 3]]
    between = len(kinds) == 5 and kinds[1] is Kind.NUM and kinds[3] is Kind.NUM and kinds[0] == kinds[4]
    if word == "ten" and between and (kinds[0] is Kind.X or text_at(marks, place - 2) == "x"):
        return "then"
    return None


def _tally(marks: Sequence[Mark], place: int) -> str | None:
    """`2 lft`, `5 res`, `3 ses of 5`, `2 moe`: behind a count."""
    if not _is_count(marks, place - 1) or _is_coloured(marks, place):
        return None
    meant = _near(marks[place].text, _TALLIED)
    after = text_at(marks, place + 1)
    if meant == "sets" and (after in ("of", "at", "x") or kind_at(marks, place + 1) is Kind.NUM):
        return meant
    return meant if _ends(marks, place + 1) or after in ("in", "at", "and", "then", "with", "@", "on", "each") else None


def _is_coloured(marks: Sequence[Mark], place: int) -> bool:
    """The `reds` of `2 reds and a green on each side`: plates by their colour."""
    if marks[place].text not in COLOURED:
        return False
    said = {w for i, m in enumerate(marks) if i != place for w in m.text.split()}
    return not said.isdisjoint(BESIDE_COLOURS) or not said.isdisjoint(COLOURED)


def _tank(marks: Sequence[Mark], place: int) -> str | None:
    """`2 in the tonk`."""
    led = [m.text for m in marks[max(0, place - 2) : place]] == ["in", "the"]
    counted = _is_count(marks, place - 3) or text_at(marks, place - 3) in ("left", "more", "reps", "rep", "nothing")
    return _near(marks[place].text, ["tank"]) if led and counted and _ends(marks, place + 1) else None


def _warm(marks: Sequence[Mark], place: int) -> str | None:
    """`wam up 60x5`."""
    return _near(marks[place].text, ["warm"]) if text_at(marks, place + 1) == "up" and _opens(marks, place) else None


def _time(marks: Sequence[Mark], place: int) -> str | None:
    """`no tme for rows`."""
    following = text_at(marks, place + 1)
    return (
        _near(marks[place].text, ["time"]) if text_at(marks, place - 1) == "no" and following in _AFTER_TIME else None
    )


_AFTER_TIME = ("for", "left", "today", "to")


def _same(marks: Sequence[Mark], place: int) -> str | None:
    """`sme again`, `saem weight`: at the start of a part, alone in it or before what repeats."""
    told = _ends(marks, place + 1) or text_at(marks, place + 1) in _AGAIN
    return _near(marks[place].text, ["same"]) if told and _opens(marks, place) else None


def _skip(marks: Sequence[Mark], place: int) -> str | None:
    """`skop the rdls`: at the start of a part, before what is left out."""
    told = text_at(marks, place + 1) in ("the", "my", "last", "all")
    return _near(marks[place].text, ["skip", "skipped"]) if told and _opens(marks, place) else None


def _side(marks: Sequence[Mark], place: int) -> str | None:
    """`legt 10 right 9`: before its number, beside the other side."""
    if kind_at(marks, place + 1) is not Kind.NUM:
        return None
    other = {m.text for m in marks[max(0, place - 8) : place + 9]} & {"left", "right"}
    if len(other) != 1:
        return None
    return _near(marks[place].text, ["left" if "right" in other else "right"])


def _ordinal(marks: Sequence[Mark], place: int) -> str | None:
    """`srcond set 4`, `ladt set`."""
    return _near(marks[place].text, _ORDINALS) if text_at(marks, place + 1) in ("set", "one", "round") else None


_SLOTS: tuple[Callable[[Sequence[Mark], int], str | None], ...] = (
    _tally,
    _tank,
    _warm,
    _time,
    _same,
    _skip,
    _side,
    _ordinal,
)
