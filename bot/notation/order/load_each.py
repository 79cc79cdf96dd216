"""Loads told set by set, their repetitions once: `first set 60, other two 65, all 9s`, `9 each, 60 for the first`.

Each load gets the repetitions, as if it had been told with them.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import FEW_SETS, MOST_REPS, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.by_number import group_marks
from bot.notation.order.near import UNITS, counted_sets, past, whole_number
from bot.notation.tokens import Mark

_PARTS = (Kind.COMMA, Kind.AND, Kind.THEN)
_ENDS = (None, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.RPE, Kind.RIR)
_NAMED = (Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.THEREST)
_PASSED = (*_NAMED, *UNITS, Kind.NUM, Kind.S, Kind.FILL, Kind.SET, Kind.SETS, Kind.AT, Kind.WITH, Kind.FOR, Kind.WAS,
           Kind.COLON, Kind.AND)  # fmt: skip
_EVERY = (Kind.ALL, Kind.EACH)
_OTHERS = frozenset(["other", "others", "rest"])
_BEHIND = (
    None,
    Kind.COMMA,
    Kind.AND,
    Kind.THEN,
    Kind.SET,
    Kind.SETS,
    Kind.AT,
    Kind.WITH,
    Kind.WAS,
    Kind.NUM,
    Kind.FILL,
)


@dataclass(frozen=True, slots=True)
class _Part:
    """A part: the words that name its sets, its load with the unit, and where it ends."""

    name: list[Mark]
    load: list[Mark]
    end: int


def load_each(marks: list[Mark]) -> list[Mark]:
    """The marks with such repetitions behind each load."""
    start = 0
    while kind_at(marks, start) in (Kind.NAME, Kind.WEAK, Kind.COLON, Kind.FILL):
        start += 1
    before = _common(marks, start)
    at = start if before is None else before[1] + (kind_at(marks, before[1]) in (Kind.COMMA, Kind.COLON))
    parts: list[_Part] = []
    while (part := _part(marks, at)) is not None:
        parts.append(part)
        at = part.end
        if kind_at(marks, at) not in _PARTS:
            break
        at = past(marks, at, *_PARTS)
    behind = None if before is not None else _common(marks, at)
    common = before or behind
    end = at if behind is None else behind[1]
    if common is None or len(parts) < SEVERAL or kind_at(marks, end) not in _ENDS:
        return marks
    reps = common[0]
    by = replace(reps, kind=Kind.X, text="x", value=None, parts=(), end=reps.start)
    comma = replace(by, kind=Kind.COMMA, text=",")
    told = [m for part in parts for m in (comma, *part.name, *part.load, by, reps)]
    return [*marks[:start], *told[1:], *marks[end:]]


def _common(marks: Sequence[Mark], at: int) -> tuple[Mark, int] | None:
    """Repetitions of every set that start here, `all for 9`, `9 reps each`, and where their words end."""
    place = past(marks, at, Kind.FILL)
    led = kind_at(marks, place) in _EVERY
    place = past(marks, place + led, Kind.FILL, Kind.FOR)
    if whole_number(marks, place, 1, MOST_REPS) is None:
        return None
    end = place + 1
    while kind_at(marks, end) in (Kind.REPS, Kind.S, Kind.METRES, Kind.M, Kind.SECONDS):
        end += 1
    link = past(marks, end, Kind.FILL, Kind.AT, Kind.WITH, Kind.FOR)
    if kind_at(marks, link) in _EVERY:
        led, end = True, link + 1
    return (marks[place], end) if led else None


def _numbered(marks: Sequence[Mark], at: int) -> list[int]:
    """The numbers in `set 3`, `sets 1 and 2`, next to each other; none where no load follows them."""
    numbers: list[int] = []
    place = at + 1
    while kind_at(marks, at) in (Kind.SET, Kind.SETS) and (
        (number := whole_number(marks, place, 1, FEW_SETS)) is not None
        and number == (numbers[-1] + 1 if numbers else number)
    ):
        numbers.append(number)
        place += 1
        if kind_at(marks, place) is not Kind.AND:
            break
        place += 1
    linked = past(marks, place, Kind.AT, Kind.WITH, Kind.WAS, Kind.COLON)
    return numbers if numbers and linked > place and kind_at(marks, linked) is Kind.NUM else []


def _part(marks: Sequence[Mark], at: int) -> _Part | None:
    """A part from here on that names its sets, tells their load and nothing else."""
    end, name, load, named = at, list[Mark](), list[Mark](), False
    while kind_at(marks, end) in _PASSED or text_at(marks, end) in _OTHERS:
        mark = marks[end]
        counted = whole_number(marks, end + 1, 2, FEW_SETS) is not None and kind_at(marks, end + 2) in _BEHIND
        if (numbers := _numbered(marks, end)) and not load:
            name += group_marks(marks[end + 1], numbers[0], len(numbers), marks[end + 1].end)
            named, end = True, end + 2 * len(numbers)
            continue
        if mark.kind in _NAMED or text_at(marks, end) in _OTHERS:
            named = True
            if mark.kind not in _NAMED:
                others = replace(mark, kind=Kind.THEREST, text="the others")
                name += [marks[end + 1], counted_sets(marks[end + 1], "group")] if counted else [others]
            else:
                name += [mark, marks[end + 1]] if counted else [mark]
            end += counted
        elif mark.kind is Kind.FOR and load and not named and counted:
            named = True
            name += [marks[end + 1], counted_sets(marks[end + 1], "group")]
            end += 1
        elif mark.kind is Kind.NUM:
            if load:
                return None
            load = [mark]
        elif mark.kind in (*UNITS, Kind.S):
            load.append(mark)
        elif mark.kind in (Kind.SET, Kind.SETS):
            name.append(mark)
        elif mark.kind is Kind.AND and not (named and kind_at(marks, end + 1) is Kind.ORD and not load):
            break
        elif mark.kind is Kind.AND:
            name.append(mark)
        end += 1
    return _Part(name, load, end) if load and load[0].kind is Kind.NUM and named else None
