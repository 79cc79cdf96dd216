"""Numbers that are told beside another, or judged: what they count is asked about, or is an effort.

`same minus 1` and `one rep less` say a difference; `60x7 (8)` may be an effort or a set; `that was a 9` is an effort.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LESS = frozenset(words("less fewer lighter heavier"))
_FELT = frozenset(words("felt feels"))
_JUDGES = _FELT | {"so"}
_ABOUT = frozenset(words("about around roughly maybe probably like more only just easily at"))
_COUNTED = (Kind.REPS, Kind.KG, Kind.LB, Kind.FILL, Kind.SECONDS)
_OF_A_SET = (Kind.REPS, Kind.X, Kind.KG, Kind.LB, Kind.SETS, Kind.FOR, Kind.AT, Kind.NOT, Kind.SECONDS, Kind.SLASH)


def with_differences(marks: Sequence[Mark], *, hurts: bool) -> list[Mark]:
    """The marks with differences as slips, which are asked about, and `was a 9` as an effort; of a hurt, as none."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if _is_difference(marks, place) or _is_bracketed(marks, place) or _is_but_side(marks, place):
            out[place] = replace(mark, kind=Kind.SLIP)
        elif mark.kind is Kind.FEELS and _is_likened(marks, place):
            out[place + 1] = replace(marks[place + 1], kind=Kind.TALKNUM)
            starts = place == 1 or (place > 1 and marks[place - 2].kind in EDGES)
            if starts and kind_at(marks, place - 1) is Kind.NUM:
                out[place - 1] = replace(marks[place - 1], kind=Kind.GAP, value=None, parts=())
        elif mark.kind is Kind.FEELS and _is_called_warmup(marks, place):
            out[place - 1] = replace(marks[place - 1], kind=Kind.GAP, value=None, parts=())
            out[place + 1] = replace(marks[place + 1], kind=Kind.GAP)
        elif (judged := _judged(marks, place)) is not None:
            out[place] = replace(mark, kind=Kind.GAP if hurts else Kind.FEELS)
            if hurts:
                out[judged] = replace(marks[judged], kind=Kind.GAP, value=None, parts=())
    return out


def _is_called_warmup(marks: Sequence[Mark], place: int) -> bool:
    """`180 felt like a warm up. put it to 200`: a load that is only spoken of, in a sentence of its own."""
    opens = kind_at(marks, place - 1) is Kind.NUM and (place == 1 or marks[place - 2].kind in (Kind.STOP, Kind.LINE))
    return opens and kind_at(marks, place + 1) is Kind.WARMUP and any(m.kind is Kind.NUM for m in marks[place + 2 :])


def _is_difference(marks: Sequence[Mark], place: int) -> bool:
    """The word of a difference: `less` of `one rep less`, the sign of `same minus 1`."""
    mark = marks[place]
    if mark.text in _LESS and kind_at(marks, place - 1) is not Kind.SLIP:
        at = place - 1
        while kind_at(marks, at) in _COUNTED and place - at < 4:
            at -= 1
        counted = kind_at(marks, at) is Kind.NUM or (at + 1 < place and marks[at + 1].text == "one")
        than = place + 1 < len(marks) and marks[place + 1].text.split()[:1] == ["than"]
        whole = at == place - 1 and kind_at(marks, at - 1) in (Kind.X, Kind.FOR)
        judged = mark.text == "less" and text_at(marks, place + 1).split()[:1] in _MANNERS
        return counted and not than and not whole and not judged
    if mark.kind is Kind.EXCEPT or (mark.kind is Kind.GAP and mark.text.startswith(("except", "apart from"))):
        planned = any(m.kind is Kind.PLANNED for m in marks[:place])
        return planned and any(m.kind is Kind.NUM for m in marks[place:])
    signed = mark.kind in (Kind.MINUS, Kind.PLUS, Kind.DASH) and kind_at(marks, place - 1) is Kind.SAME
    return signed and kind_at(marks, place + 1) is Kind.NUM


_MANNERS = [[w] for w in words("easy peasy hard fun pretty clean smooth tidy happy fresh nice good great fast snappy")]
"""What a set was less of, by which nothing is counted: `@9.5, less easy`."""


def _is_bracketed(marks: Sequence[Mark], place: int) -> bool:
    """The bracket of one bare number after a whole set: `60x7 (8)`."""
    if marks[place].kind is not Kind.OPEN:
        return False
    after = [kind_at(marks, place + n) for n in (0, 1, 2)]
    before = [kind_at(marks, place - n) for n in (2, 1)]
    return after == [Kind.OPEN, Kind.NUM, Kind.CLOSE] and before == [Kind.X, Kind.NUM]


def _is_but_side(marks: Sequence[Mark], place: int) -> bool:
    """The `but` of `10 each but 8 on the left`: which set it is of is not said."""
    if marks[place].text != "but":
        return False
    before = [m.kind for m in marks[max(0, place - 3) : place]]
    after = [m.kind for m in marks[place + 1 : place + 6]]
    return Kind.EACH in before and bool({Kind.LEFT, Kind.RIGHT} & set(after))


def _is_likened(marks: Sequence[Mark], place: int) -> bool:
    """`felt like 12 reps`, `felt like 100kg`: what it was not."""
    if not _likens(marks[place]) or kind_at(marks, place + 1) is not Kind.NUM:
        return False
    value = marks[place + 1].value
    return kind_at(marks, place + 2) in (Kind.REPS, Kind.KG, Kind.LB) or (value is not None and value > 10)


def _likens(mark: Mark) -> bool:
    """Whether the phrase of a mark likens: `felt like`, `feels like a`."""
    return "like" in mark.text.split()


def _judged(marks: Sequence[Mark], place: int) -> int | None:
    """The number of `was a 9`, `thats about an eight`, `felt roughly 8`, `so an 8`: on the effort scale, with
    nothing that makes it repetitions."""
    if not (marks[place].kind in (Kind.WAS, Kind.LASTSET) or marks[place].text in _JUDGES):
        return None
    at = place + 1
    while at < min(len(marks), place + 4) and marks[at].kind is Kind.FILL and marks[at].text in _ABOUT:
        at += 1
    article = kind_at(marks, at) is Kind.FILL and marks[at].text in ("a", "an")
    last = marks[place].kind is Kind.LASTSET and any(m.kind in (Kind.X, Kind.FOR) for m in marks[:place])
    if last and not (article and kind_at(marks, at + 1) is Kind.NUM and (marks[at + 1].value or 0) % 1):
        return None
    bare = at == place + 1 and kind_at(marks, at + 1) not in (None, *EDGES)
    if (not article and (marks[place].text not in _FELT or bare)) or _counts_off(marks, place):
        return None
    at += article
    value = marks[at].value if kind_at(marks, at) is Kind.NUM else None
    if value is None or not Decimal(6) <= value <= Decimal(10):
        return None
    mine = [m.text for m in marks[at + 1 : at + 3]] == ["for", "me"]
    return at if mine or kind_at(marks, at + 1) not in _OF_A_SET else None


def _counts_off(marks: Sequence[Mark], place: int) -> bool:
    """`first was a 10, second was about a 9`: which set it was, told in a row or before any whole set."""
    near = max(0, place - 2)
    ordinals = [i for i, m in enumerate(marks[:place]) if m.kind is Kind.ORD]
    if not ordinals or ordinals[-1] < near:
        return False
    return ordinals[0] < near or sum(m.kind is Kind.NUM for m in marks[:place]) < 2
