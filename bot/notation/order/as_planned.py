"""Which sets went as planned, or were like the one before: `first one done`, `two as planned`, `same but 82.5`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

LIGHTER = ("back", "down", "drop down", "lighter", "volume")
"""Words that the names of the sets behind the heaviest one begin with."""
_LINKS = ("but", "at", "with", "with a", "with the", "only", "just", "now", "the")


def as_planned(marks: list[Mark]) -> list[Mark]:
    """The marks with such sets numbered and counted."""
    return _other_load(_numbered(_counted(_lighter(marks))))


def _lighter(marks: list[Mark]) -> list[Mark]:
    """`hit all the back offs on squat`, `3x5 backoffs done`, `back offs done`: all the lighter sets, as planned."""
    place = next((i for i, m in enumerate(marks) if is_lighter(m) and m.kind is Kind.SETS), None)
    if place is None:
        return marks
    start, end = place, place + 1
    while kind_at(marks, start - 1) in (Kind.FILL, Kind.ALL, Kind.DONE):
        start -= 1
    counted = [m.kind for m in marks[max(0, start - 3) : start]] == [Kind.NUM, Kind.X, Kind.NUM]
    entry = marks[start - 3 : start] if counted else []
    start -= len(entry)
    while kind_at(marks, start - 1) in (Kind.FILL, Kind.ALL, Kind.DONE):
        start -= 1
    while kind_at(marks, end) in (Kind.FILL, Kind.ALL, Kind.WAS, Kind.DONE, Kind.FINISH) and not _begins(marks, end):
        end += 1
    said = {w for m in (*marks[start:place], *marks[place + 1 : end]) for w in m.text.split()}
    name = end + 1 if kind_at(marks, end) in (Kind.AT, Kind.WITH, Kind.FOR) else end
    named = name > end and kind_at(marks, name) is Kind.NAME
    behind = name + 1 if named else end
    over = kind_at(marks, behind) in (None, Kind.STOP, Kind.LINE, Kind.COMMA, Kind.QUERY)
    if (
        not said & _DOING
        or said & _UNDONE
        or not over
        or kind_at(marks, start - 1) not in (None, *EDGES, Kind.NAME, Kind.THEN)
    ):
        return marks
    told = [
        replace(marks[place], kind=Kind.ALL, text="all"),
        replace(marks[place], kind=Kind.PLANNED, text="as planned"),
    ]
    if entry:
        told = [replace(marks[place], kind=Kind.SETS), *entry, replace(marks[place], kind=Kind.DONE, text="done")]
    return [*marks[:start], *(marks[name:behind] if named else []), *told, *marks[behind:]]


_DOING = frozenset(["hit", "did", "done", "got", "smashed", "finished", "completed", "nailed", "made", "through"])
_UNDONE = frozenset(["not", "no", "half", "almost", "nearly", "most", "some", "one", "two", "before", "if"])


def _begins(marks: Sequence[Mark], place: int) -> bool:
    """Whether a link that starts something else stands there: `back offs done then curls 12`."""
    return text_at(marks, place) in ("then", "but", "so", "at", "with")


def _opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing but an exercise stands before a place in its part."""
    before = kind_at(marks, place - 1)
    return before in (None, *EDGES, Kind.NAME, Kind.FILL, Kind.AND, Kind.THEN, Kind.COLON)


def _numbered(marks: list[Mark]) -> list[Mark]:
    """`first one done`, `second set as planned`: the set by its number."""
    out = list(marks)
    for place, mark in enumerate(marks):
        at = place + 1 + (kind_at(marks, place + 1) is Kind.SET or text_at(marks, place + 1) == "one")
        done = kind_at(marks, at) in (Kind.DONE, Kind.PLANNED)
        if mark.kind is Kind.ORD and mark.value is not None and done and _opens(marks, place):
            out[place] = replace(mark, kind=Kind.LABEL)
            for between in range(place + 1, at):
                out[between] = replace(marks[between], kind=Kind.FILL)
    return out


def _counted(marks: list[Mark]) -> list[Mark]:
    """`two as planned`, `both as planned`: so many sets; `the rest as planned`, `160x1, back offs as planned`: all."""
    out: list[Mark] = []
    for place, said in enumerate(marks):
        mark = said
        at = place + 1
        while kind_at(marks, at) in _WENT:
            at += 1
        planned = kind_at(marks, at) is Kind.PLANNED and (_opens(marks, place) or is_lighter(mark))
        if planned and mark.kind is Kind.EACH and mark.text == "both":
            mark = replace(mark, kind=Kind.NUM, value=Decimal(2), parts=())
        lighter = planned and is_lighter(mark) and any(m.kind is Kind.NUM for m in marks[:place])
        if planned and (mark.kind is Kind.THEREST or lighter):
            mark = replace(mark, kind=Kind.ALL)
        out.append(mark)
        few = mark.kind is Kind.NUM and mark.value is not None and 1 < mark.value <= FEW_SETS
        if few and planned:
            out.append(replace(mark, kind=Kind.SETS, text="sets", value=None, parts=(), start=mark.end))
        counted = len(out) > 1 and out[-2].kind is Kind.SETS
        if mark.kind is Kind.MORE and kind_at(marks, place + 1) is Kind.PLANNED and counted:
            out.pop()
    return _times(out)


def _times(marks: list[Mark]) -> list[Mark]:
    """`as planned x2`, `as planned twice`: so many sets, as if the number stood before."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        crossed = [kind_at(marks, place + 1), kind_at(marks, place + 2)] in ([Kind.X, Kind.NUM], [Kind.LEADX, Kind.NUM])
        ends = kind_at(marks, place + 3) in (None, *EDGES)
        number = marks[place + 2] if crossed and ends else None
        if mark.kind is Kind.PLANNED and number is not None and 1 < (number.value or 0) <= FEW_SETS:
            sets = replace(number, kind=Kind.SETS, text="sets", value=None, parts=(), start=number.end)
            return [*marks[:place], number, sets, mark, *marks[place + 3 :]]
        out.append(mark)
    return out


_WENT = (Kind.FILL, Kind.WAS, Kind.MORE, Kind.DONE, Kind.WORKSET)
"""Kinds between sets and the words that they went as planned."""


def is_lighter(mark: Mark) -> bool:
    """`back offs`, `down sets`: the sets behind the heaviest one."""
    return mark.kind in (Kind.SETS, Kind.WORKSET) and mark.text.startswith(LIGHTER)


def _other_load(marks: list[Mark]) -> list[Mark]:
    """`same but 82.5`, `same at 82.5 kg`, `same reps, 82.5`: the load is another, the repetitions are the same."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, number = marks[at], at + 1
        while kind_at(marks, number) is Kind.COMMA or text_at(marks, number) in _LINKS:
            number += 1
        plate = text_at(marks, number + 1) in ("plate", "plate on")
        unit = kind_at(marks, number + 1) in (Kind.KG, Kind.LB) or plate
        end = number + 1 + unit
        ends = kind_at(marks, end) in (None, *EDGES)
        same = mark.kind in (Kind.SAME, Kind.SAMEREPS)
        if same and number > at + 1 and ends and _is_load(marks, number, unit=unit):
            said = [replace(m, kind=Kind.ADDED, text="added") if m.text == "plate" else m for m in marks[number:end]]
            out += [*said, replace(mark, kind=Kind.X, text="x", start=mark.end), replace(mark, kind=Kind.SAMEREPS)]
            at = end
            continue
        out.append(mark)
        at += 1
    return out


def _is_load(marks: Sequence[Mark], place: int, *, unit: bool) -> bool:
    """Whether a number can be no count: it has a unit, or a fraction."""
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and (unit or value != int(value))
