"""A set asked about and told again in the same breath: `100x8 (last one 105? no, 100)` is 100x8.

That the plan was kept says nothing beside sets of every exercise: `stuck to the plan for once. bench 65x7, rows 50x9`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.order.near import past
from bot.notation.tokens import Mark

_LEADS = (Kind.LASTSET, Kind.FILL, Kind.WAS, Kind.OR, Kind.COMMA)
_NO = frozenset(("no", "nope", "nah"))
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S)
_LINKS = (Kind.X, Kind.FOR)
_KEPT = frozenset(
    ("stuck to the plan", "stuck to plan", "sticking to the plan", "kept to the plan", "followed the plan")
)
_TALK = (Kind.FILL, Kind.FOR, Kind.DONE, Kind.WAS)


def with_told_again(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks without such questions whose answer is the set that stands before them."""
    gone: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.QUERY or text_at(marks, place + 1) not in _NO:
            continue
        asked = place - 1 - (kind_at(marks, place - 1) in _UNITS)
        start = asked
        while start > 0 and marks[start - 1].kind in _LEADS and kind_at(marks, start) is not Kind.COMMA:
            start -= 1
        start -= kind_at(marks, start - 1) is Kind.OPEN
        answer = past(marks, place + 2, Kind.COMMA, Kind.FILL, Kind.STOP)
        end = answer + 1 + (kind_at(marks, answer + 1) in _UNITS)
        numbers = kind_at(marks, asked) is kind_at(marks, answer) is Kind.NUM
        if not numbers or kind_at(marks, start) not in (Kind.OPEN, Kind.COMMA):
            continue
        count = start - 1 - (kind_at(marks, start - 1) in _UNITS)
        load = count - 2 - (kind_at(marks, count - 2) in _UNITS)
        told = kind_at(marks, count) is kind_at(marks, load) is Kind.NUM and kind_at(marks, count - 1) in _LINKS
        if told and marks[answer].value in (marks[count].value, marks[load].value):
            closed = kind_at(marks, start) is Kind.OPEN and kind_at(marks, end) is Kind.CLOSE
            ends = kind_at(marks, start) is Kind.COMMA and kind_at(marks, end) in (None, *EDGES)
            gone |= set(range(start, end + closed)) if closed or ends else set()
    return masked(marks, gone) if gone else marks


def without_plan_kept(marks: Sequence[Mark], request: Request) -> Sequence[Mark]:
    """The marks with `stuck to the plan` as talk, where it opens a part and sets of every exercise follow it."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.PLANNED and m.text in _KEPT), None)
    if place is None or any(m.kind in (Kind.NUM, Kind.NAME, Kind.EXCEPT) for m in marks[:place]):
        return marks
    end = place + 1
    while kind_at(marks, end) in _TALK:
        end += 1
    if kind_at(marks, end) not in (*EDGES, Kind.COLON, Kind.NAME):
        return marks
    names = [(i, m.names[0]) for i, m in enumerate(marks) if m.kind is Kind.NAME and len(m.names) == 1]
    told = {name for i, name in names if any(kind_at(marks, i + n) in (Kind.NUM, Kind.BODY) for n in (1, 2))}
    if told != set(range(len(request.exercises))):
        return marks
    out = list(marks)
    out[place:end] = [replace(m, kind=Kind.FILL) for m in marks[place:end]]
    if kind_at(marks, end) is Kind.NAME:
        out.insert(end, Mark(Kind.STOP, ".", marks[end].start, marks[end].start))
    return out


NEEDS = (Kind.QUERY,)
