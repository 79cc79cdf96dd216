"""A set repeated so many times: `same twice more`, `and the same for the next two`, `next two also`.

Each becomes a number of sets before `same`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past, whole_number
from bot.notation.tokens import Mark

_ALSO = frozenset(["also", "too", "likewise"])
_SAYING = (Kind.SAME, Kind.AGAIN, Kind.FOR, Kind.AT, Kind.WITH, Kind.AND, Kind.THEN, Kind.MORE, Kind.TIMES, Kind.X,
           Kind.NUM, Kind.THEREST, Kind.LASTSET, Kind.LASTREP, Kind.SETS, Kind.SET, Kind.FILL, Kind.WAS, Kind.TO,
           Kind.DASH)  # fmt: skip
_COUNTING = (Kind.MORE, Kind.TIMES, Kind.X, Kind.LASTSET, Kind.LASTREP, Kind.SETS)
_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4}


def same_so_many(marks: list[Mark]) -> list[Mark]:
    """The marks with such a part as so many sets alike."""
    out: list[Mark] = []
    start = 0
    while start < len(marks):
        end = next((i for i in range(start, len(marks)) if marks[i].kind in EDGES), len(marks))
        for place in _starts(marks, start, end):
            count = None if _counts_once_more(marks, place) else _count(marks[place:end])
            if count is not None and any(m.kind is Kind.NUM for m in marks[:place]):
                out += [*marks[start:place], *_sets(marks[place], marks[end - 1], count)]
                break
        else:
            out += marks[start:end]
        out += marks[end : end + 1]
        start = end + 1
    return out


def _starts(marks: Sequence[Mark], start: int, end: int) -> list[int]:
    """Where words of repeating may start in a part: at its start, and at `same` behind the set that is repeated."""
    return [start, *(i for i in range(start + 1, end) if marks[i].kind is Kind.SAME and marks[i].text != "same same")]


def _counts_once_more(marks: Sequence[Mark], place: int) -> bool:
    """`6 times and again 6 times`: the repetitions of another set, told in the words of those before."""
    told = [kind_at(marks, place + n) for n in (-2, -1, 1, 2)]
    return told == [Kind.NUM, Kind.TIMES] * 2 and marks[place].text == "and again"


def _sets(first: Mark, last: Mark, count: int) -> list[Mark]:
    number = replace(first, kind=Kind.NUM, text=str(count), value=Decimal(count), parts=(), names=())
    sets = replace(number, kind=Kind.SETS, text="group", value=None, start=first.end)
    return [number, sets, replace(number, kind=Kind.SAME, text="same", value=None, start=first.end, end=last.end)]


def _count(part: Sequence[Mark]) -> int | None:
    """How many sets a part repeats that says nothing else; `None` where it is no such part."""
    same = any(m.kind is Kind.SAME or m.text in _ALSO for m in part)
    if not same or any(m.kind not in _SAYING for m in part):
        return None
    numbers = [i for i, m in enumerate(part) if m.kind is Kind.NUM]
    rest = [_COUNTS[w] for m in part if m.kind is Kind.THEREST for w in m.text.split() if w in _COUNTS]
    if rest and not numbers:
        return rest[0]
    if not numbers:
        return 2 if any(m.text == "twice" for m in part) else None
    if len(numbers) > 1:
        return _span(part, numbers)
    count = whole_number(part, numbers[0], 2, FEW_SETS)
    led = any(m.kind in _COUNTING or m.text in ("next", "the next") for m in part)
    numbered = kind_at(part, numbers[0] - 1) in (Kind.SET, Kind.SETS)
    return count if led and not numbered else None


def _span(part: Sequence[Mark], numbers: Sequence[int]) -> int | None:
    """How many sets `sets 2 and 3`, `set 2 to 4` names."""
    first, last = numbers[0], numbers[-1]
    between = past(part, first + 1, Kind.AND, Kind.TO, Kind.DASH, Kind.SET, Kind.SETS)
    low, high = whole_number(part, first, 1, FEW_SETS * 2), whole_number(part, last, 1, FEW_SETS * 2)
    named = kind_at(part, first - 1) in (Kind.SET, Kind.SETS)
    if len(numbers) != 2 or between != last or not named or low is None or high is None or not low < high:
        return None
    apart = any(m.kind is Kind.AND for m in part[first:last])
    return None if apart and high != low + 1 else high - low + 1
