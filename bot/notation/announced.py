"""Sets announced before they are told one by one: `three sets of thrusts all at 90, first 10, second 9, third 8`.

How many they are says nothing that the list does not say: the name and the load stay, then the list. Only where as many
are told as were announced, or where each names its number.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past, past_fill, whole_number
from bot.notation.tokens import Mark

_NUMBERS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5, "six": 6, "6": 6, "both": 2}
_EDGES = (Kind.COMMA, Kind.COLON, Kind.STOP, Kind.DASH, Kind.LINE)
_BREAKS = (None, Kind.STOP, Kind.LINE, Kind.BREAK)
_HEADING = (*_EDGES, Kind.NAME, Kind.FILL, Kind.WORD, Kind.DONE, Kind.WAS, Kind.ALL, Kind.NUM, Kind.SETS, Kind.AT,
            Kind.WITH, Kind.KG, Kind.LB, Kind.S, Kind.AND, Kind.THEN)  # fmt: skip
_JOINS = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.SLASH, Kind.FILL)
_LAST = (Kind.LASTSET, Kind.LASTREP)
_NAMING = (Kind.ORD, Kind.SET, *_LAST)
_LINKED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB, Kind.S, Kind.SETS, Kind.SET, Kind.ORD,
           Kind.RPE, Kind.RIR, Kind.TANK, Kind.LEFT, Kind.MORE)  # fmt: skip
_MOST_REPS, _LONGEST = 60, 24
"""Repetitions or seconds of a list that a heading announces, and marks of such a heading, at the most."""


@dataclass(frozen=True, slots=True)
class _List:
    """Repetitions told one by one: how many, whether each one names its set, and where they end."""

    count: int
    named: bool
    end: int


def without_announced(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a heading as its name and its load before the list."""
    marks = _without_next(_without_count(list(marks)))
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        opens = kind_at(marks, at - 1) in _BREAKS
        recited = _recited(marks, at) if opens else None
        if recited is not None:
            head, at = recited
            out += head
            continue
        heading = _heading(marks, at) if opens else None
        if heading is None:
            out.append(marks[at])
            at += 1
            continue
        head, end, stop = heading
        out += [*head, *marks[end:stop]]
        at = stop
    return out


def _without_count(marks: list[Mark]) -> list[Mark]:
    """`so only two: 20s 8 and 7`: how many there were, where the list tells as many."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or text_at(marks, place - 1) not in _SO_MANY:
            continue
        colon = past_fill(marks, place + 1)
        count = whole_number(marks, place, 2, 6) if kind_at(marks, colon) is Kind.COLON else None
        if count is None:
            continue
        loaded = colon + 3 if kind_at(marks, colon + 2) in (Kind.KG, Kind.LB, Kind.S) else colon + 1
        lists = (_list(marks, at) for at in (past(marks, loaded, *_EDGES), colon + 1, colon + 2))
        if any(told is not None and told.count == count for told in lists):
            marks[place : colon + 1] = [
                _gap(m) if m.kind is not Kind.COLON else replace(_gap(m), kind=Kind.COMMA, text=",")
                for m in marks[place : colon + 1]
            ]
    return marks


def _without_next(marks: list[Mark]) -> list[Mark]:
    """`seated row next two, 45 kg 10 and 40 kg 12`: how many there were, where as many loads with counts are told."""
    for place in range(len(marks) - 1):
        count = whole_number(marks, place + 1, 2, 6)
        led = text_at(marks, place).split()[-1:] in (["next"], ["last"], ["remaining"], ["other"])
        end = place + 2 + (kind_at(marks, place + 2) in (Kind.SETS, Kind.SET) or text_at(marks, place + 2) == "ones")
        if not led or count is None or kind_at(marks, end) not in (Kind.COMMA, Kind.COLON, Kind.DASH):
            continue
        stop = next((i for i in range(end, len(marks)) if marks[i].kind in _BREAKS), len(marks))
        units = (Kind.KG, Kind.LB, Kind.S, Kind.X, Kind.FOR)
        loads = sum(m.kind is Kind.NUM and kind_at(marks, end + i + 1) in units for i, m in enumerate(marks[end:stop]))
        numbers = sum(m.kind is Kind.NUM and not m.parts for m in marks[end:stop])
        if loads == count and numbers == 2 * count:
            comma = replace(_gap(marks[end]), kind=Kind.COMMA, text=",")
            return [*marks[:place], *(_gap(m) for m in marks[place:end]), comma, *marks[end + 1 :]]
    return marks


_SO_MANY = frozenset(["only", "just", "did", "managed", "got"])


def _recited(marks: Sequence[Mark], start: int) -> tuple[list[Mark], int] | None:
    """The name and load of `rdl 3 x 8 to 10 at 60, got 10 9 8`, and where its list starts: the rest is the plan's."""
    name = past(marks, start, Kind.NAME, Kind.FILL, Kind.COLON)
    kinds = [kind_at(marks, name + n) for n in range(5)]
    if kinds[:3] != [Kind.NUM, Kind.X, Kind.NUM] or kinds[3] not in (Kind.TO, Kind.DASH) or kinds[4] is not Kind.NUM:
        return None
    link = past(marks, name + 5, Kind.REPS, Kind.FILL)
    end = link
    if kind_at(marks, link) in (Kind.AT, Kind.WITH) and kind_at(marks, link + 1) is Kind.NUM:
        end = link + 2 + (kind_at(marks, link + 2) in (Kind.KG, Kind.LB, Kind.S))
    at = past(marks, end, *_EDGES)
    did = text_at(marks, at) in _DID and at > end
    if not did or _list(marks, past_fill(marks, at)) is None:
        return None
    load = list(marks[link + 1 : end])
    comma = replace(_gap(marks[at]), kind=Kind.COMMA, text=",", end=marks[at].start)
    return [*marks[start:name], *load, *([comma] if load else [])], past_fill(marks, at)


_DID = frozenset(["got", "did", "managed", "made", "hit"])


def _heading(marks: Sequence[Mark], start: int) -> tuple[list[Mark], int, int] | None:
    """A heading that starts here, as it is to stand; where its list starts, and where that ends."""
    for end in range(start + 1, min(len(marks), start + _LONGEST)):
        if marks[end - 1].kind not in _HEADING:
            return None
        linked = marks[end - 1].kind in (Kind.AT, Kind.WITH)
        if linked or (marks[end - 1].kind not in _EDGES and marks[end].kind not in _NAMING):
            continue
        head = marks[start:end]
        count, loads = _announcement(head)
        if len(loads) > 1 or sum(m.kind is Kind.NAME for m in head) > 1:
            return None
        told = _list(marks, end)
        every = told is not None and (told.named or any(m.kind is Kind.ALL for m in head))
        if told is None or (count is None and not (every and loads)):
            continue
        if count not in (None, told.count):
            if loads and not told.named and all(m.kind is not Kind.ALL for m in head):
                return [_slip(m) if m.kind is Kind.SETS else m for m in head], end, told.end
            continue
        return _as_told(head, loads), end, told.end
    return None


def _announcement(head: Sequence[Mark]) -> tuple[int | None, list[int]]:
    """How many sets a heading announces, and the places of its other numbers."""
    count: int | None = None
    loads = []
    for place, mark in enumerate(head):
        if mark.kind is Kind.ALL:
            count = next((_NUMBERS[w] for w in mark.text.split() if w in _NUMBERS), count)
        elif mark.kind is Kind.NUM and kind_at(head, past_fill(head, place + 1)) is Kind.SETS:
            count = whole_number(head, place, 2, 9)
        elif mark.kind is Kind.NUM:
            loads.append(place)
    return count, loads


def _as_told(head: Sequence[Mark], loads: Sequence[int]) -> list[Mark]:
    """The name and the load of a heading, all else in it without bearing."""
    at = loads[0] if loads else len(head)
    end = at + 1 + (kind_at(head, at + 1) in (Kind.KG, Kind.LB, Kind.S))
    load = list(head[at:end])
    gone = [
        m if m.kind in (Kind.NAME, Kind.FILL, Kind.WORD, Kind.WAS, Kind.DONE) else _gap(m)
        for m in (*head[:at], *head[end:])
    ]
    last = head[-1]
    return [*gone, *load, replace(_gap(last), kind=Kind.COMMA, text=",", start=last.end)]


def _slip(mark: Mark) -> Mark:
    """`3 sets at 90, 10, 9`: another number of sets than is told, which is asked about."""
    return replace(mark, kind=Kind.SLIP)


def _gap(mark: Mark) -> Mark:
    return replace(mark, kind=Kind.GAP, value=None, parts=())


def _list(marks: Sequence[Mark], at: int) -> _List | None:
    """The repetitions that are told from here on, of one set each; `None` where it is no such list."""
    count, named, end = 0, 0, at
    while (item := _item(marks, past(marks, at, *_JOINS))) is not None:
        told, at, names = item
        count, named, end = count + told, named + names, at
    if count < SEVERAL or kind_at(marks, end) in _LINKED:
        return None
    return _List(count, named >= SEVERAL, end)


def _item(marks: Sequence[Mark], at: int) -> tuple[int, int, bool] | None:
    """How many sets an item of the list tells, where it ends, and whether it names its set: `second one was 9`."""
    place, named = at, kind_at(marks, at) in _NAMING
    if named:
        place += 1 + (marks[at].kind is Kind.SET and kind_at(marks, at + 1) is Kind.NUM)
        place = past(marks, place, Kind.SET, Kind.LASTSET, Kind.FILL, Kind.WAS, Kind.COLON, Kind.DASH)
    if kind_at(marks, place) is not Kind.NUM:
        return None
    number = marks[place]
    values = number.parts if number.value is None else (number.value,)
    if any(v != int(v) or not 1 <= v <= _MOST_REPS for v in values):
        return None
    end = past(marks, place + 1, Kind.REPS, Kind.EACH)
    which = past_fill(marks, end + 1)
    if not named and kind_at(marks, end) in (Kind.AT, Kind.FOR, Kind.WITH) and kind_at(marks, which) in _NAMING:
        end, named = which + 1 + (kind_at(marks, which) is Kind.SET), True
        while kind_at(marks, end) is Kind.SET or text_at(marks, end) in ("one", "set"):
            end += 1
    linked = kind_at(marks, end) in _LINKED and not (named and kind_at(marks, end) in _NAMING)
    return None if linked else (len(values), end, named)
