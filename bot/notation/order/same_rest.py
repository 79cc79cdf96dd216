"""A set repeated in what is left, or on the other side: `the rest the same`, `same on the right`."""

from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark


def same_rest(marks: list[Mark]) -> list[Mark]:
    """The marks with what is repeated as the sets that it is."""
    return _of_rest(_of_side(marks))


def _of_side(marks: list[Mark]) -> list[Mark]:
    """`10 on the left, same on the right`, `left 20x9, right the same`, `20x9 left then right`: both sides alike."""
    sides: set[Kind] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SAME and mark.kind not in _SIDES:
            continue
        told = set(sides)
        if mark.kind in _SIDES:
            sides.add(mark.kind)
        if len(told) != 1:
            continue
        end = _behind_other(marks, place, told)
        ends = end is not None and kind_at(marks, past(marks, end, Kind.FILL)) in (None, *EDGES, Kind.AND, Kind.THEN)
        if end is not None and ends and any(m.kind is Kind.NUM for m in marks[:place]):
            gone = {i for i in range(place) if marks[i].kind in told} | set(range(place, end))
            gone |= {place - 1} if kind_at(marks, place - 1) in (Kind.AND, Kind.THEN) else set()
            return [replace(m, kind=Kind.FILL) if i in gone else m for i, m in enumerate(marks)]
    return marks


_SIDES = (Kind.LEFT, Kind.RIGHT)


def _behind_other(marks: list[Mark], place: int, told: set[Kind]) -> int | None:
    """Where words end that say of the other side that it was the same; `None` where they do not."""
    if marks[place].kind is Kind.SAME:
        side = past(marks, place + 1, Kind.FILL, Kind.AT, Kind.FOR, Kind.WITH, Kind.AGAIN)
        return side + 1 if kind_at(marks, side) in _SIDES and kind_at(marks, side) not in told else None
    if marks[place].kind in told:
        return None
    same = past(marks, place + 1, Kind.FILL, Kind.WAS, Kind.COLON)
    if kind_at(marks, same) is Kind.SAME:
        return same + 1
    return place + 1 if kind_at(marks, place - 1) in (Kind.AND, Kind.THEN) else None


def _of_rest(marks: list[Mark]) -> list[Mark]:
    """`60x10, the rest the same`, `60x10 and the other two also`: the set before, in all that are left or so many."""
    out: list[Mark] = []
    at = 0
    told = False
    while at < len(marks):
        mark = marks[at]
        told = told or any(m.kind is Kind.NUM for m in out[-4:])
        others = mark.kind is Kind.THEREST or mark.text in ("others", "the others")
        other = mark.text in ("other", "the other") and kind_at(marks, at + 1) is Kind.NUM
        end = at + 1 + other
        counted = marks[at + 1] if other else _count_of(mark)
        while end < len(marks) and (marks[end].kind in (Kind.SETS, Kind.SET, Kind.WAS) or marks[end].text in _OF_THEM):
            end += 1
        also = end < len(marks) and (marks[end].kind is Kind.SAME or marks[end].text in _ALSO)
        for_rest = mark.kind is Kind.SAME
        if told and (others or other) and also:
            if counted is not None:
                out += [counted, replace(mark, kind=Kind.SETS, text="group", value=None)]
            out.append(replace(marks[end], kind=Kind.SAME, text="same" if counted is not None else "rest the same"))
            at = end + 1 + (marks[end].text == "as")
            continue
        rest = past(marks, at + 1, Kind.FILL, Kind.FOR, Kind.WITH, Kind.AT)
        if for_rest and kind_at(marks, rest) is Kind.THEREST and _count_of(marks[rest]) is None:
            out.append(replace(mark, text="rest the same"))
            at = rest + 1
            continue
        out.append(mark)
        at += 1
    return out


_OF_THEM = ("of", "the", "them", "ones", "those")
_ALSO = ("also", "too", "likewise", "as")
_NUMBERS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4}


def _count_of(mark: Mark) -> Mark | None:
    """The number in `the other two`."""
    count = next((_NUMBERS[w] for w in mark.text.split() if w in _NUMBERS), None)
    return None if count is None else replace(mark, kind=Kind.NUM, value=Decimal(count), text=str(count))
