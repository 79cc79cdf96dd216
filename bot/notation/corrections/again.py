"""What a message itself tells again, put in the first one's place: `100x5x2. no, x3`, `two sets sorry three sets of 5`,
`100x5 @8, make it @9`, `100 times 4 pardon times 5`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO)
_BETWEEN = (Kind.COMMA, Kind.STOP, Kind.FILL, Kind.DASH)
_COUNTED = (Kind.SETS, Kind.SET)
_FAR = 12
"""Marks between a count and where it is told again."""


def told_again(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with each such value where the first one stood, and nothing where it was told again."""
    marks = _rather(_told_whole(_not_loads(_one_before(_before_lists(marks)))))
    out = list(marks)
    for place in range(1, len(marks)):
        if marks[place].kind not in _CUES or any(m.kind in _CUES for m in marks[place + 1 : place + 2]):
            continue
        at = _past(marks, place + 1, 1)
        before = _past(marks, place - 1, -1)
        old = _old(marks, before, at)
        if old is not None and old[1] == old[2]:
            out[before:at] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[before:at]]
        elif old is not None:
            _put_again(out, old[0], range(before + 1, old[2]), old[1])
        elif kind_at(marks, at) is Kind.TIMES and kind_at(marks, at + 1) is Kind.NUM and _times(marks, before):
            out[at] = replace(marks[at], kind=Kind.X)
        elif [kind_at(marks, i) in _COUNTED for i in (before, at + 1)] == [True, True] and _is_count(marks, before, at):
            out[before - 1 : at] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[before - 1 : at]]
    return out


def _told_whole(marks: list[Mark]) -> list[Mark]:
    """`70 for 6 sorry 5 so 70 for 5`, `no sorry five seventy for five`: the number, then its whole set once more."""
    for place in range(3, len(marks) - 3):
        if marks[place].kind not in _CUES:
            continue
        load, count = marks[_past(marks, place - 1, -1) - 2], _past(marks, place + 1, 1)
        whole = count + 1
        while kind_at(marks, whole) in (Kind.COMMA, Kind.FILL) and whole < count + 4:
            whole += 1
        joined = _value_at(marks, count) == 100 * (_value_at(marks, count + 2) or 0) + (load.value or 0)
        whole = count if joined else whole
        told = kind_at(marks, whole + 1) in (Kind.X, Kind.FOR) and load.kind is Kind.NUM
        alike = _value_at(marks, whole) == load.value and _value_at(marks, whole + 2) == _value_at(marks, count)
        if told and (joined or alike) and not marks[count].parts:
            return [*marks[:count], replace(marks[whole], value=load.value), *marks[whole + 1 :]]
    return marks


def _value_at(marks: Sequence[Mark], place: int) -> Decimal | None:
    """The value of the number at a place; `None` where none stands there."""
    return marks[place].value if kind_at(marks, place) is Kind.NUM else None


def _rather(marks: list[Mark]) -> list[Mark]:
    """`90x10, rather 90x9`: between two whole sets, the second is what was meant."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text not in _RATHER:
            continue
        entry = [kind_at(marks, i) for i in range(place + 1, place + 4)]
        before = _past(marks, place - 1, -1)
        told = [kind_at(marks, i) for i in range(before - 2, before + 1)]
        if {(*entry[::2], *told[::2])} == {(Kind.NUM,) * 4} and {entry[1], told[1]} <= {Kind.X, Kind.FOR}:
            out[place] = replace(mark, kind=Kind.MEANT, text="or rather")
    return out


_RATHER = ("rather", "id rather say", "i rather say", "better say")


def _not_loads(marks: list[Mark]) -> list[Mark]:
    """`100 not 95 x5`: what the load was not, between it and its repetitions."""
    out = list(marks)
    for place in range(len(marks) - 4):
        kinds = [m.kind for m in marks[place : place + 5]]
        if kinds == [Kind.NUM, Kind.NOT, Kind.NUM, Kind.X, Kind.NUM] and kind_at(marks, place - 1) is not Kind.X:
            out[place + 1 : place + 3] = [
                replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[place + 1 : place + 3]
            ]
    return out


def _one_before(marks: list[Mark]) -> list[Mark]:
    """`the one before that was 4`: the words of one set, where they say what it was."""
    out = list(marks)
    for place in range(len(marks) - 2):
        named = marks[place].text in ("one", "the one") and text_at(marks, place + 1) == "before"
        if named and kind_at(marks, place + 2) in (Kind.WAS, Kind.MEANT):
            out[place] = replace(marks[place], kind=Kind.LASTSET, text="one before")
    return out


def _before_lists(marks: Sequence[Mark]) -> list[Mark]:
    """`wait no.. my notes say 6 6 5`: no sentence ends between the word that corrects and a list of numbers."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SORRY:
            continue
        end = place + 1
        while kind_at(marks, end) in (Kind.STOP, Kind.FILL):
            end += 1
        numbers = end
        while kind_at(marks, numbers) in (Kind.NUM, Kind.COMMA, Kind.SLASH):
            numbers += 1
        if numbers - end > 1 and _ends(marks, numbers) and kind_at(marks, numbers - 1) is Kind.NUM:
            for at in range(place + 1, end):
                out[at] = replace(marks[at], kind=Kind.FILL)
    return out


def _past(marks: Sequence[Mark], at: int, step: int) -> int:
    """The first place from here on, in a direction, that is more than a pause or another word that corrects."""
    while kind_at(marks, at) in (*_BETWEEN, *_CUES):
        at += step
    return at


def _put_again(out: list[Mark], old: int, gone: range, new: int) -> None:
    said = out[new]
    for at in gone:
        out[at] = replace(out[at], kind=Kind.FILL, value=None, parts=())
    out[old] = said


def _ends(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) in (None, *EDGES)


def _old(marks: Sequence[Mark], before: int, at: int) -> tuple[int, int, int] | None:
    """The place of the number that is told again, that of the new one, and where its words end."""
    sided = _side_again(marks, before, at)
    if sided is not None:
        return sided
    linked = kind_at(marks, at) is Kind.X and kind_at(marks, at + 1) is Kind.NUM and _ends(marks, at + 2)
    kinds = [m.kind for m in marks[max(0, before - 4) : before + 1]]
    if linked and kinds == [Kind.NUM, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return before, at + 1, at + 2
    first = _first_count(marks, before)
    loads = (kind_at(marks, first + 3) if first is not None else None, kind_at(marks, at + 3))
    whole = first is not None and loads == (Kind.AT, Kind.AT)
    if first is not None and not whole and _counted(marks, first, at) and marks[at + 2].value == marks[first + 2].value:
        return first, at, at + 3
    rated = kind_at(marks, before) is Kind.NUM and text_at(marks, before - 1) == "@" and text_at(marks, at) == "@"
    if rated and kind_at(marks, at + 1) is Kind.NUM and _ends(marks, at + 2):
        return before, at + 1, at + 2
    left = kind_at(marks, before) is Kind.LEFT and not any(m.kind in (Kind.RIGHT, Kind.R) for m in marks)
    behind = left or kind_at(marks, before) in (Kind.TANK, Kind.RIRPOST, Kind.RPEPOST)
    rating = before - 1 if behind else before
    scored = kind_at(marks, rating) is Kind.NUM and (rating < before or kind_at(marks, before - 1) in _RATES)
    again = marks[at].value if kind_at(marks, at) is Kind.NUM and _ends(marks, at + 1) else None
    if scored and again is not None and abs(again - (marks[rating].value or 0)) <= _MOST_OFF and rating > 1:
        return rating, at, at + 1
    if _is_broken_off(marks, before, at):
        return before, at, at
    counts = kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in _COUNTED and _ends(marks, at + 2)
    if counts and kind_at(marks, before) is Kind.NUM:
        for place in range(before - 1, max(-1, before - _FAR), -1):
            if marks[place].kind in EDGES or marks[place].kind is Kind.NAME:
                break
            if kind_at(marks, place) is Kind.NUM and kind_at(marks, place + 1) in _COUNTED:
                return place, at, at + 2
    return None


_SIDES = {Kind.LEFT: Kind.LEFT, Kind.L: Kind.LEFT, Kind.RIGHT: Kind.RIGHT, Kind.R: Kind.RIGHT}


def _side_again(marks: Sequence[Mark], before: int, at: int) -> tuple[int, int, int] | None:
    """`left 15 right 14, no wait right was 13`: the side whose repetitions are told again."""
    side = _SIDES.get(marks[at].kind) if at < len(marks) else None
    new = at + 1
    while kind_at(marks, new) in (Kind.FILL, Kind.WAS):
        new += 1
    end = new + 1 + (kind_at(marks, new + 1) is Kind.REPS)
    ends = _ends(marks, end) or kind_at(marks, end) in (Kind.AT, Kind.WITH, Kind.FILL)
    if side is None or kind_at(marks, new) is not Kind.NUM or not ends:
        return None
    told = [p for p in range(max(0, before - _FAR), before + 1) if marks[p].kind in _SIDES]
    same = [p for p in told if _SIDES[marks[p].kind] is side]
    if len(told) != len(set(_SIDES.values())) or len(same) != 1:
        return None
    behind = kind_at(marks, min(told) - 1) is not Kind.NUM or kind_at(marks, max(told) + 1) is Kind.NUM
    old = same[0] + 1 if behind else same[0] - 1
    while kind_at(marks, old) in (Kind.FILL, Kind.WAS) and old < before:
        old += 1
    return (old, new, end) if kind_at(marks, old) is Kind.NUM else None


def _times(marks: Sequence[Mark], before: int) -> bool:
    """Whether repetitions are told before as `100 times 4`."""
    middle = kind_at(marks, before - 1) in (Kind.TIMES, Kind.X)
    return middle and kind_at(marks, before) is Kind.NUM and kind_at(marks, before - 2) is Kind.NUM


def _is_count(marks: Sequence[Mark], before: int, at: int) -> bool:
    """Whether two counts of sets stand one straight behind the other: `two sets sorry three sets`."""
    return kind_at(marks, before - 1) is Kind.NUM and kind_at(marks, at) is Kind.NUM and before > 0


def _is_broken_off(marks: Sequence[Mark], before: int, at: int) -> bool:
    """`ten... no five reps at 100`: a number alone, taken back before a whole set."""
    alone = kind_at(marks, before) is Kind.NUM and all(m.kind is Kind.FILL for m in marks[max(0, before - 2) : before])
    stops = alone and before < 3 and Kind.STOP in [m.kind for m in marks[before:at]]
    return stops and [m.kind for m in marks[at : at + 4]] == [Kind.NUM, Kind.REPS, Kind.AT, Kind.NUM]


def _first_count(marks: Sequence[Mark], before: int) -> int | None:
    """Where `2x5 at 100` starts, which ends here; none where it does not."""
    for start in (before - 2, before - 4):
        kinds = [m.kind for m in marks[max(0, start) : before + 1]]
        if start >= 0 and kinds in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.X, Kind.NUM, Kind.AT, Kind.NUM]):
            return start
    return None


def _counted(marks: Sequence[Mark], before: int, at: int) -> bool:
    """Whether sets are counted on both sides: `2x5 i mean 3x5`."""
    both = [[m.kind for m in marks[i : i + 3]] == [Kind.NUM, Kind.X, Kind.NUM] for i in (before, at)]
    few = [kind_at(marks, i) is Kind.NUM and 1 <= (marks[i].value or 0) <= FEW_SETS for i in (before, at)]
    return all(both) and all(few)


_RATES = (Kind.RPE, Kind.RIR)
_MOST_OFF = 2
"""A number that is farther from an effort puts right something else (common practice, no source)."""
