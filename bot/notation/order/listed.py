"""Lists whose numbers each have their own link: `45s x10 x9 x8`, `26s for 10 for 9 and for 8`, `10 times, 9 times`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_SURE = 3
"""So many numbers with a link each are a list; the last of two may be how many sets, where it is no more than this:"""
_COUNTED = (Kind.SETS, Kind.TIMES, Kind.SET)
_OF_SETS = ("twice", "times over")
"""Words that count sets, whatever stands before them."""
_BETWEEN = (Kind.AND, Kind.COMMA, Kind.THEN, Kind.FILL)


def linked_lists(marks: list[Mark]) -> list[Mark]:
    """The marks with all links of such lists but the first as commas; all alike where one of them is sure."""
    runs = [run for run in _runs(marks) if len(run) > 1]
    if not any(_is_list(marks, run) for run in runs):
        return marks
    out = list(marks)
    for place in (p for run in runs for p in run[1:]):
        parted = kind_at(marks, place - 1) in (Kind.AND, Kind.COMMA, Kind.THEN)
        if kind_at(marks, place - 1) is Kind.COMMA:
            out[place - 1] = replace(marks[place - 1], kind=Kind.FILL)
            parted = False
        out[place] = replace(marks[place], kind=Kind.FILL if parted else Kind.COMMA, text=",")
    return out


def _runs(marks: Sequence[Mark]) -> list[list[int]]:
    """The places of links that follow each other with a number each."""
    runs: list[list[int]] = []
    ended = -1
    for place, mark in enumerate(marks):
        opens = mark.kind is Kind.X and _is_pair(marks, place)
        if mark.kind not in (Kind.X, Kind.FOR) or not (_leads(marks, place) or opens):
            continue
        joined = ended >= 0 and all(m.kind in _BETWEEN for m in marks[ended:place])
        number = _number(marks, place)
        if joined and runs and marks[runs[-1][0]].kind is mark.kind:
            runs[-1].append(place)
        else:
            runs.append([place])
        ended = number + 1
    return runs


def _number(marks: Sequence[Mark], place: int) -> int:
    """Where the number of a link stands."""
    at = place + 1
    while kind_at(marks, at) is Kind.FILL:
        at += 1
    return at


def _leads(marks: Sequence[Mark], place: int) -> bool:
    """Whether a link stands apart from what is before it and leads a number that counts no sets."""
    at = _number(marks, place)
    apart = place > 0 and marks[place].start > marks[place - 1].end
    if kind_at(marks, at) is not Kind.NUM or kind_at(marks, at + 1) in _COUNTED or not apart:
        return False
    many = (marks[at].value or 0) > FEW_SETS
    parted = kind_at(marks, place - 1) is Kind.COMMA
    return marks[place].kind is Kind.FOR or marks[at].start == marks[place].end or many or parted


def _is_pair(marks: Sequence[Mark], place: int) -> bool:
    """Whether the `x` of `110x5, x5, x4` starts there: a set told whole, with another link behind a comma."""
    kinds = [kind_at(marks, place + n) for n in (-1, 1, 2, 3, 4)]
    counted = kind_at(marks, place + 5) in _COUNTED
    return kinds == [Kind.NUM, Kind.NUM, Kind.COMMA, Kind.X, Kind.NUM] and not counted


def _is_list(marks: Sequence[Mark], run: Sequence[int]) -> bool:
    last = marks[_number(marks, run[-1])].value
    return len(run) >= _SURE or (last is not None and last > FEW_SETS)


def same_but(marks: list[Mark]) -> list[Mark]:
    """`same again, but only 8`: one set, whose repetitions are others; `same again at 65`: one of another load."""
    marks = _same_at(marks)
    return [
        replace(m, kind=Kind.FILL)
        if m.kind is Kind.COMMA
        and kind_at(marks, i - 1) in (Kind.SAME, Kind.AGAIN)
        and [x.text for x in marks[i + 1 : i + 2]] in (["but"], ["only"], ["just"])
        else m
        for i, m in enumerate(marks)
    ]


def _same_at(marks: list[Mark]) -> list[Mark]:
    """`same but with 65`: 65 for the same repetitions, where no others are told."""
    for place, mark in enumerate(marks):
        at = place + 1
        while kind_at(marks, at) is Kind.FILL:
            at += 1
        end = at + 2 + (kind_at(marks, at + 2) in (Kind.KG, Kind.LB, Kind.S))
        linked = kind_at(marks, at) in (Kind.AT, Kind.WITH) and marks[at].text != "@"
        ends = kind_at(marks, end) in (None, Kind.STOP, Kind.LINE)
        if mark.kind is Kind.SAME and linked and kind_at(marks, at + 1) is Kind.NUM and ends:
            counted = any(m.kind is Kind.NUM for m in marks[end:]) and kind_at(marks, end) is not Kind.LINE
            reps = replace(mark, kind=Kind.SAMEREPS, start=marks[end - 1].end, end=marks[end - 1].end)
            return marks if counted else [*marks[:place], *marks[at + 1 : end], reps, *marks[end:]]
    return marks


def times_lists(marks: list[Mark]) -> list[Mark]:
    """`50 kg, 10 times, 10 times, 8 times`, `9, 9, 8 times`: repetitions; `this time` counts nothing."""
    out = [
        replace(m, kind=Kind.FILL) if m.kind is Kind.TIMES and m.text == "time" and _points(marks, i) else m
        for i, m in enumerate(marks)
    ]
    counted = [
        i
        for i, m in enumerate(out)
        if m.kind is Kind.TIMES
        and m.text not in _OF_SETS
        and kind_at(out, i - 1) is Kind.NUM
        and kind_at(out, i + 1) is not Kind.NUM
        and not _counts_sets(out, i)
    ]
    if len(counted) < _SURE - 1 and not (counted and _ends_list(out, counted[0])):
        return out
    return [replace(m, kind=Kind.REPS) if i in counted else m for i, m in enumerate(out)]


def _ends_list(marks: Sequence[Mark], place: int) -> bool:
    """Whether `times` stands behind a row of counts that are near to each other: `9, 9, 8 times`, `11 and 10 times`."""
    at = place - 1
    row = [marks[at].value or Decimal(0)]
    while kind_at(marks, at - 1) in (Kind.COMMA, Kind.AND, Kind.FILL, Kind.NUM):
        at -= 1
        if marks[at].kind is Kind.NUM:
            row.append(marks[at].value or Decimal(0))
    near = [n for n in row if 2 * row[0] >= n >= row[0] - 1]
    many = row[0] > FEW_SETS or (len(near) >= _SURE and row[0] >= _SURE)
    return many and len(near) > 1 and near == row[: len(near)]


_BEFORE_COUNTS = (Kind.X, Kind.FOR, Kind.AT, Kind.NAME)


def _counts_sets(marks: Sequence[Mark], place: int) -> bool:
    """The `three times` of `80x5 three times`, of `rows ten reps three times`: a set is told whole before it."""
    reps = place - 2 - (kind_at(marks, place - 2) in (Kind.REPS, Kind.METRES, Kind.SECONDS))
    whole = kind_at(marks, reps) is Kind.NUM and kind_at(marks, reps - 1) in _BEFORE_COUNTS
    added = kind_at(marks, reps - 2) in (Kind.PLUS, Kind.SIGN, Kind.MINUS) and kind_at(marks, reps - 1) is Kind.NUM
    whole = whole or (kind_at(marks, reps) is Kind.NUM and added)
    return whole and (marks[place - 1].value or 0) <= FEW_SETS


def _points(marks: Sequence[Mark], place: int) -> bool:
    return place > 0 and marks[place - 1].text in ("this", "that", "each", "every")
