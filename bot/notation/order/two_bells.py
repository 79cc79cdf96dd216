"""Two dumbbells told with what one of them weighs: `with two dumbbells of 12 kilo`, `two twenty fours for twelve`,
`10 @ two 24s`, `10 @ 2x24`, `10 with both 24s`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

BELLS = frozenset(words("dumbbell dumbbells dumbell dumbells db dbs kettlebell kettlebells kb kbs bell bells"))
_LINKS = frozenset(words("of from with at"))
_TWO = 2
"""The bells of a pair, and the hundreds that dictation makes of them: `two twenty fours` as 224."""
_HALVES = ("halfs", "halves")
"""Plurals of `two twelve and a halfs`."""
_LOADING = (Kind.WITH, Kind.AT)
_HELD = frozenset(words("holding with held using carrying w and"))


def two_bells(marks: list[Mark]) -> list[Mark]:
    """The marks with the two of such words as a pair, whose number is that of one hand."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if _is_two_of(mark) and (kind_at(marks, place + 1) is Kind.S or mark.text.endswith(_HALVES)):
            weight = (mark.value or 0) - 100 * _TWO
            out[place] = replace(mark, text=mark.text.removeprefix("two "), value=Decimal(weight), parts=())
            continue
        if mark.text == "both" and [kind_at(marks, place + n) for n in (1, 2)] == [Kind.NUM, Kind.S]:
            out[place] = _pair(mark)
            continue
        if mark.kind is not Kind.NUM or mark.value != _TWO or kind_at(marks, place - 1) in (Kind.X, Kind.NUM):
            continue
        if text_at(marks, place + 1) in BELLS:
            number = place + 2 + (text_at(marks, place + 2) in _LINKS)
            if kind_at(marks, number) is Kind.NUM:
                out[place:number] = [_pair(mark), *(replace(m, kind=Kind.FILL) for m in marks[place + 1 : number])]
            continue
        unit = kind_at(marks, place + 2) in UNITS
        led = text_at(marks, place - 1) in _HELD or kind_at(marks, place - 1) in _LOADING or _heads_sides(marks, place)
        if _is_crossed(marks, place):
            out[place], out[place + 1] = _pair(mark), replace(marks[place + 1], kind=Kind.FILL)
            continue
        held = text_at(marks, place + 2 + unit) in BELLS or (led and kind_at(marks, place + 2) is Kind.S)
        if kind_at(marks, place + 1) is Kind.NUM and held:
            out[place] = _pair(mark)
    return out


def _is_crossed(marks: Sequence[Mark], place: int) -> bool:
    """The `2` of `10 @ 2x24`, `10 reps with 2 x 24kg`; not of `80 at 2x5`, whose load stands before."""
    count = place - 2 - (kind_at(marks, place - 2) is Kind.REPS)
    kinds = [kind_at(marks, n) for n in (count, place + 1, place + 2)]
    if kind_at(marks, place - 1) not in _LOADING or kinds != [Kind.NUM, Kind.X, Kind.NUM]:
        return False
    unit = kind_at(marks, place + 3) in UNITS
    heavier = (marks[count].value or 0) < (marks[place + 2].value or 0)
    return (heavier or unit) and kind_at(marks, place + 3 + unit) in (None, *EDGES)


def _heads_sides(marks: Sequence[Mark], place: int) -> bool:
    """The `two 14s` of `step ups, two 14s. 10 each leg, 9 each leg`: what is held, before what each side did."""
    parted = kind_at(marks, place - 1) in (None, Kind.NAME, Kind.COLON, *EDGES) and kind_at(marks, place + 3) in (
        *EDGES,
        Kind.COLON,
    )
    following = [m.kind for m in marks[place + 4 : place + 7]]
    return parted and following[:1] == [Kind.NUM] and Kind.EACH in [m.kind for m in marks[place + 4 :]]


def _is_two_of(mark: Mark) -> bool:
    """The `two twenty four` of `two twenty fours`: two of them, where their plural follows."""
    hundreds = mark.value is not None and 100 * _TWO < mark.value < 100 * (_TWO + 1)
    return mark.kind is Kind.NUM and hundreds and mark.text.startswith("two ")


def _pair(mark: Mark) -> Mark:
    return replace(mark, kind=Kind.PAIR, value=None, parts=())
