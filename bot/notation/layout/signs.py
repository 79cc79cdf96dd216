"""Signs before a number that says which of its kind a thing is: `failed #7`, `seat at no. 4` as `number 7`, `number 4`.

`60# x5` are pounds; `#1 60x5`, `set #2` and a column headed `#` number sets, and are read as such elsewhere.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_POINTED = ("no", "nr", "num")
_OF_SETS = ("set", "sets", "round", "rd", "x", "kg", "lb", "lbs", "reps", "rep")


def with_number_signs(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such signs as the word."""
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        mark, pointed = marks[place], _is_pointed(marks, place)
        if pointed or _is_sign(marks, place):
            end = place + 1 + pointed
            out.append(replace(mark, kind=Kind.WORD, text="number", end=marks[end - 1].end, tight=False))
            place = end
            continue
        out.append(mark)
        place += 1
    return out


def _is_sign(marks: Sequence[Mark], place: int) -> bool:
    """The `#` of `failed #7`, `#7 didn't go`."""
    numbered = kind_at(marks, place + 1) is Kind.NUM and marks[place].text == "#" and marks[place + 1].tight
    if not numbered or (marks[place].tight and kind_at(marks, place - 1) is Kind.NUM):
        return False
    before, behind = kind_at(marks, place - 1), kind_at(marks, place + 2)
    led = before is Kind.WORD and text_at(marks, place - 1) not in _OF_SETS
    return led or (behind is Kind.WORD and text_at(marks, place + 2) not in _OF_SETS)


def _is_pointed(marks: Sequence[Mark], place: int) -> bool:
    """The `no.` of `seat at no. 4`; not that of `no. 8 reps`, which begins what is told."""
    if marks[place].text not in _POINTED or kind_at(marks, place - 1) is not Kind.WORD:
        return False
    point = kind_at(marks, place + 1) is Kind.STOP and marks[place + 1].tight
    free = kind_at(marks, place + 3) not in (Kind.X, Kind.WORD) or text_at(marks, place + 3) not in _OF_SETS
    return point and kind_at(marks, place + 2) is Kind.NUM and free and text_at(marks, place - 1) not in ("said", "oh")
