"""Sets counted off before their loads: `set one 95x6, two 95x6, three 95x5`, `1 95x6, 2 95x6`.

The bare numbers that run on from the first are those of the sets.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_OPENS = (None, *EDGES, Kind.SET, Kind.NAME, Kind.FILL, Kind.AND, Kind.THEN)
_PARTS = (Kind.COLON, Kind.WAS, Kind.DASH)
_UNITS = (Kind.KG, Kind.LB, Kind.S)


def each_apart(marks: list[Mark]) -> list[Mark]:
    """`set 1 20 for 10 each set 2 20 for 9 each`: each side, and then the next set; not `each set`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        number = marks[place + 1].value if kind_at(marks, place + 1) is Kind.NUM else None
        next_one = number is not None and any(
            m.kind is Kind.SET and kind_at(marks, i + 1) is Kind.NUM and marks[i + 1].value == 1
            for i, m in enumerate(marks[:place])
        )
        if mark.kind is Kind.ALL and mark.text == "each set" and next_one and 1 < (number or 0) <= FEW_SETS:
            cut = mark.end - len("set")
            out += [replace(mark, kind=Kind.EACH, text="each", end=cut - 1),
                    replace(mark, kind=Kind.SET, text="set", start=cut, tight=False)]  # fmt: skip
        else:
            out.append(mark)
    return out


def counted_off(marks: list[Mark]) -> list[Mark]:
    """The marks with such numbers as labels, where at least two of them run on."""
    numbers = [place for place in range(len(marks)) if _heads_entry(marks, place)]
    if len(numbers) < SEVERAL:
        return marks
    first = int(marks[numbers[0]].value or 0)
    if [int(marks[n].value or 0) for n in numbers] != list(range(first, first + len(numbers))):
        return marks
    entries = sum(
        m.kind is Kind.NUM and kind_at(marks, i + 1) in (Kind.X, Kind.FOR, *_UNITS) for i, m in enumerate(marks)
    )
    if entries != len(numbers):
        return marks
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        label = place in numbers
        set_word = mark.kind is Kind.SET and place + 1 in numbers
        part = mark.kind in _PARTS and place - 1 in numbers
        if not set_word and not part:
            out.append(replace(mark, kind=Kind.LABEL) if label else mark)
    return out


def _heads_entry(marks: Sequence[Mark], place: int) -> bool:
    """Whether the number of a set stands here, and a load with its repetitions straight behind it."""
    mark, at = marks[place], place + 1 + (kind_at(marks, place + 1) in _PARTS)
    linked = at + 1 + (kind_at(marks, at + 1) in _UNITS)
    whole = kind_at(marks, at) is Kind.NUM and kind_at(marks, linked) in (Kind.X, Kind.FOR)
    counts = mark.kind is Kind.NUM and mark.value is not None and mark.value in range(1, 10) and not mark.parts
    return counts and whole and kind_at(marks, linked + 1) is Kind.NUM and kind_at(marks, place - 1) in _OPENS
