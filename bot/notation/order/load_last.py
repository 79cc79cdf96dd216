"""The one load of a message behind all its repetitions: `first two 3, other two 2, at 70`, `10 then 9 then 8, 80kg`.

Without a comma too: `8 on the first two and 7 on the last at 65`.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD
from bot.notation.tokens import Mark

_LOADS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.BODY, Kind.DROP, Kind.MINI, Kind.ARROW, Kind.SAMELOAD, Kind.SAME,
          Kind.PLANNED, Kind.WARMUP, Kind.RPE, Kind.RIR, Kind.TANK, *OF_LOAD)  # fmt: skip
_LASTS = (Kind.LASTSET, Kind.LASTREP)
_NAMING = ("on", "on the", "for", "for the", "s")
"""Links to the words that name a set, and the plural of repetitions."""
_LEAST = 15
"""The lightest load that a sentence ends with without its unit: a lower number counts."""


def load_last(marks: list[Mark]) -> list[Mark]:
    """The marks with such a load before all, where groups or numbers of sets are told."""
    end = len(marks)
    while end and marks[end - 1].kind in (Kind.STOP, Kind.LINE, Kind.FILL):
        end -= 1
    number = end - 1 - (kind_at(marks, end - 1) in OF_LOAD)
    link = number - (kind_at(marks, number - 1) in (Kind.AT, Kind.WITH))
    comma = link - (kind_at(marks, link - 1) is Kind.ALL)
    told = number < end - 1 or link < number
    parted = kind_at(marks, comma - 1) is Kind.COMMA
    named = kind_at(marks, comma - 1) in _LASTS and link < number
    if number < 1 or kind_at(marks, number) is not Kind.NUM or not (parted or named) or not told:
        return marks
    before = marks[: comma - parted]
    value = marks[number].value
    if value is None or value < _LEAST or not _are_groups(before):
        return marks
    start = next(i for i, m in enumerate(before) if m.kind in (Kind.NUM, Kind.LABEL, Kind.ORD))
    first = marks[start].start
    comma_mark = replace(marks[number], kind=Kind.COMMA, text=",", value=None, parts=(), start=first, end=first)
    return [*before[:start], *marks[number:end], comma_mark, *before[start:], *marks[end:]]


def load_of_all(marks: list[Mark]) -> list[Mark]:
    """`8 @8 and 7 @9.5, both with +10`, `8, 7, +10 on both`: the load before the list that it is said of."""
    out = list(marks)
    for place in range(len(marks) - 1, 0, -1):
        if marks[place].kind is not Kind.NUM or kind_at(marks, place - 1) in (Kind.RPE, Kind.RIR, Kind.X, Kind.FOR):
            continue
        load = _of_all(marks, place)
        first = None if load is None else _list_before(marks, load)
        if load is None or first is None:
            continue
        at = marks[first].start
        comma = replace(marks[place], kind=Kind.COMMA, text=",", value=None, parts=(), start=at, end=at)
        said = list(marks[load.first : load.last])
        return [*out[:first], *said, comma, *out[first : load.start], *out[load.end :]]
    return out


@dataclass(frozen=True, slots=True)
class _LoadOfAll:
    """Where the words start and end that tell a load of all sets, and where in them the load does; how many sets."""

    start: int
    end: int
    first: int
    last: int
    count: int | None


def _of_all(marks: Sequence[Mark], place: int) -> _LoadOfAll | None:
    """The load of all sets whose number stands at a place."""
    last = place + 1 + (kind_at(marks, place + 1) in (Kind.KG, Kind.LB))
    first = place - (kind_at(marks, place - 1) in _SIGNS)
    linked = kind_at(marks, first - 1) in (Kind.AT, Kind.WITH) and marks[first - 1].text != "@"
    start, end = first - linked, last
    if _counted(marks, start - 1) is not None:
        who, start = start - 1, start - 1
    else:
        end += kind_at(marks, end) in (Kind.AT, Kind.FOR) and marks[end].text != "@"
        who, end = end, end + 1
    surely = first < place or last > place + 1 or (linked and marks[first - 1].kind is Kind.WITH)
    told = who >= 0 and _counted(marks, who) is not None
    ends = kind_at(marks, end) in (None, Kind.STOP, Kind.LINE, Kind.FILL)
    if not told or not ends or not (surely or (marks[place].value or 0) >= _LEAST):
        return None
    start -= kind_at(marks, start - 1) in (Kind.COMMA, Kind.AND)
    return _LoadOfAll(start, end, first, last, _counted(marks, who))


def _counted(marks: Sequence[Mark], place: int) -> int | None:
    """How many sets a word of all means (0: as many as there are); `None` where it is no such word."""
    if kind_at(marks, place) is Kind.EACH and marks[place].text in ("both", "each"):
        return 2 if marks[place].text == "both" else 0
    if kind_at(marks, place) is not Kind.ALL:
        return None
    said = set(marks[place].text.split())
    return next((n for n, all_said in _COUNTS.items() if said & all_said), 0)


_COUNTS = {2: {"both", "two", "2"}, 3: {"three", "3"}, 4: {"four", "4"}, 5: {"five", "5"}}
_SIGNS = (Kind.PLUS, Kind.MINUS, Kind.SIGN)
_RATING = (Kind.AT, Kind.RPE, Kind.RIR)


def _list_before(marks: Sequence[Mark], load: _LoadOfAll) -> int | None:
    """Where the list of repetitions starts that stands before; `None` where none does that could be so many sets."""
    at, counts = load.start, 0
    while at > 0:
        mark, before = marks[at - 1], kind_at(marks, at - 2)
        if mark.kind is Kind.NUM and before in _RATING:
            at -= 2
        elif mark.kind is Kind.NUM:
            at, counts = at - 1, counts + max(1, len(mark.parts) if mark.value is None else 1)
        elif mark.kind in (Kind.COMMA, Kind.AND, Kind.THEN, Kind.REPS, Kind.FILL):
            at -= 1
        else:
            break
    while at < load.start and marks[at].kind is not Kind.NUM:
        at += 1
    named = kind_at(marks, at - 1) is Kind.COMMA and kind_at(marks, at - 2) is Kind.NAME
    opens = named or kind_at(marks, at - 1) in (None, Kind.NAME, Kind.STOP, Kind.LINE, Kind.COLON)
    told = counts == load.count if load.count else counts >= SEVERAL
    return at if opens and told and counts >= SEVERAL else None


def _are_groups(marks: Sequence[Mark]) -> bool:
    """Whether sets are told by their numbers, none with a load, of one exercise."""
    labels = sum(m.kind in (Kind.LABEL, Kind.SETS, Kind.ORD, *_LASTS) for m in marks)
    names = len({m.names for m in marks if m.kind is Kind.NAME})
    plain = not any(
        (m.kind in _LOADS and m.text not in _NAMING) or m.kind in (Kind.STOP, Kind.LINE, Kind.QUERY) for m in marks
    )
    return labels >= SEVERAL and names <= 1 and plain
