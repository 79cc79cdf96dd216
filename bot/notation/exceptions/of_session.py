"""As planned but for one set: `everything as planned except the last set of rows`, `sets 1 and 2 as planned`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.exceptions.alike import BOUNDS, bound_behind
from bot.notation.exceptions.apart import MOST_APART, name_at, value_at, was_before
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.tokens import Mark


def of_session(marks: list[Mark], under: int | None) -> list[Mark]:
    """`everything as planned except the last set of rows, only got 6`: all of the session, then the one put right."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.PLANNED), None)
    if place is None or any(m.kind in (Kind.NUM, Kind.NAME, Kind.WEAK) for m in marks[:place]):
        return marks
    bound = bound_behind(marks, place + 1)
    if bound is None:
        return marks
    end = next((i for i in range(bound + 1, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    names = [i for i in range(bound, end) if marks[i].kind is Kind.NAME]
    which = next((i for i in range(bound, end) if name_at(marks, i) is not None), None)
    one = None if which is None else name_at(marks, which)
    if which is None or one is None or one.count > 1 or len(names) != 1 or len(marks[names[0]].names) != 1:
        return marks
    said = {w for m in marks[:place] for w in m.text.split()}
    if not said & _WHOLE and marks[names[0]].names[0] == under:
        return marks
    rest = [i for i in range(bound + 1, end) if i not in names and not which <= i < one.end]
    value = next((i for i in rest if marks[i].kind is Kind.NUM), None)
    stop = None if value is None else value_at(marks, value)
    told = range(value, stop) if value is not None and stop is not None else range(0)
    if not told or any(marks[i].kind not in _BESIDE_ONE for i in rest if i not in told):
        return marks
    named = [m for m in one.marks if m.kind is not Kind.NAME]
    whole = replace(marks[place], text="everything as planned")
    line = replace(marks[bound], kind=Kind.LINE, text="\n", value=None, parts=())
    value_said = [marks[i] for i in told]
    return [*marks[:place], whole, line, marks[names[0]], *named, was_before(value_said[0]), *value_said, *marks[end:]]


_WHOLE = frozenset(["everything", "session", "workout", "whole", "all", "it"])
_BESIDE_ONE = (Kind.FILL, Kind.AT, Kind.WITH, Kind.FOR, Kind.WAS, Kind.COLON, Kind.COMMA, Kind.OPEN, Kind.CLOSE,
               Kind.SET, Kind.SETS, Kind.DASH, Kind.EXCEPT)  # fmt: skip


def each_planned(marks: list[Mark]) -> list[Mark]:
    """`sets 1 and 2 as planned`, `first two squats as planned`: each as planned, by its number."""
    if not any(m.kind is Kind.PLANNED for m in marks):
        return marks
    for place in range(len(marks) - 2):
        numbers, end = _numbers_at(marks, place)
        name = [marks[end]] if numbers and kind_at(marks, end) is Kind.NAME else []
        at = end + len(name)
        while kind_at(marks, at) in (Kind.FILL, Kind.WAS, Kind.DONE):
            at += 1
        if not numbers or kind_at(marks, at) is not Kind.PLANNED:
            continue
        first, told = marks[place], marks[at]
        out = list(name)
        for number in numbers:
            out += [*numbered(first, number), told, replace(told, kind=Kind.COMMA, text=",", start=told.end)]
        more = kind_at(marks, at + 1) in (None, *BOUNDS)
        return [*marks[:place], *(out[:-1] if more else out), *marks[at + 1 :]]
    return marks


def _numbers_at(marks: Sequence[Mark], place: int) -> tuple[range, int]:
    """The numbers of `sets 1 and 2`, `sets 1-3`, `first two (sets)`, and where these words end; none elsewhere."""
    led = marks[place - 1].kind if place else None
    one = whole_number(marks, place + 1, 1, MOST_APART)
    if one is None or led in (Kind.NUM, Kind.LASTSET, Kind.LASTREP, Kind.SET):
        return range(0), place
    end = place + 2
    if marks[place].kind is Kind.ORD and marks[place].value == 1 and one > 1:
        return range(1, one + 1), end + (kind_at(marks, end) in (Kind.SETS, Kind.SET))
    joined = kind_at(marks, end) in (Kind.AND, Kind.DASH, Kind.TO, Kind.PLUS)
    two = whole_number(marks, end + 1, one + 1, one + MOST_APART) if joined else None
    each = two is not None and (two == one + 1 or kind_at(marks, end) in (Kind.DASH, Kind.TO))
    if marks[place].kind in (Kind.SET, Kind.SETS) and two is not None and each:
        return range(one, two + 1), end + 2
    return range(0), place


def numbered(before: Mark, number: int) -> list[Mark]:
    """`set 2`, as it stands before a mark."""
    number_at = replace(before, kind=Kind.NUM, text=str(number), value=Decimal(number), parts=(), end=before.start)
    return [replace(before, kind=Kind.SET, text="set", value=None, parts=(), end=before.start), number_at]
