"""Arrows and slashes that lead from one set to the next, and to no drop: `95x5 → same → 95x4`, `60x8 / same / same`.

An arrow says a drop (rule 6); one that leads to a set alike, or to no lighter load, does not, nor do those beside it.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark

_ALIKE = (Kind.SAME, Kind.AGAIN, Kind.SAMELOAD, Kind.ORD, Kind.SET, Kind.LASTSET)
_ENDS = (Kind.STOP, Kind.LINE, Kind.NAME)
_LINKS = (Kind.X, Kind.FOR)
_LIGHTER = Decimal("0.9")
"""Of the load before: an arrow to less leads to a drop even beside those that do not (common practice, no source)."""


def arrows(marks: list[Mark]) -> list[Mark]:
    """The marks with commas for such arrows and slashes."""
    out = _slashes(marks)
    start = 0
    for place in range(len(marks) + 1):
        if place == len(marks) or marks[place].kind in _ENDS:
            _part(out, start, place)
            start = place + 1
    return out


def _part(out: list[Mark], start: int, end: int) -> None:
    """Puts commas in place of the arrows of one sentence, if one of them leads to a set alike."""
    leading, lighter, load, leads_on = [], set(), None, False
    for place in range(start, end):
        told = _load_told(out, place)
        load = told if told is not None else load
        if out[place].kind is not Kind.ARROW:
            continue
        after = _load_told(out, place + 2) or _load_told(out, past(out, place + 2, Kind.KG, Kind.LB))
        ratio = after / load if load and after is not None else None
        leads_on = leads_on or kind_at(out, past(out, place + 1, Kind.FILL)) in _ALIKE or (ratio or 0) >= 1
        leading.append(place)
        if ratio is not None and ratio < _LIGHTER:
            lighter.add(place)
    for place in leading if leads_on else ():
        if place in lighter:
            continue
        out[place] = replace(out[place], kind=Kind.COMMA, text=",")
        if place > start and out[place - 1].kind in (Kind.DASH, Kind.COLON) and out[place].tight:
            out[place - 1] = replace(out[place - 1], kind=Kind.GAP)


def _load_told(marks: Sequence[Mark], link: int) -> Decimal | None:
    """The load before a link to repetitions; `None` where no link stands there."""
    told = kind_at(marks, link) in (*_LINKS, Kind.KG, Kind.LB) and kind_at(marks, link + 1) is Kind.NUM
    if not told or not link:
        return None
    at = link - 1 - (marks[link - 1].kind in (Kind.KG, Kind.LB))
    return marks[at].value if kind_at(marks, at) is Kind.NUM else None


def _slashes(marks: list[Mark]) -> list[Mark]:
    """`60x8 / same / same`: slashes beside what repeats a set; of one alone, `10/same` may be of both sides."""
    out = list(marks)
    beside = [
        i
        for i, m in enumerate(marks)
        if m.kind is Kind.SLASH and Kind.SAME in (kind_at(marks, i - 1), kind_at(marks, i + 1))
    ]
    for place in beside if len(beside) > 1 else ():
        out[place] = replace(out[place], kind=Kind.COMMA, text=",")
    return out
