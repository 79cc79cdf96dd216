"""Loads told in turn, their repetitions once: `70, 72.5, 75, all triples`, `5s at 90, 95, 100`, `70/72.5/75 x 3`.

Each load gets the repetitions behind it, as if it had been told by itself; of as many repetitions in turn,
`70 70 70 for 10 9 8`, each load its own.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS, past, past_fill, whole_number
from bot.notation.tagging.plurals import PLURALS
from bot.notation.tokens import Mark

_JOINS = (Kind.COMMA, Kind.SLASH, Kind.AND, Kind.THEN, Kind.DASH)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.OPEN, Kind.RPE, Kind.RIR, Kind.AND)
_OPENS = (None, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.NAME, Kind.COLON, Kind.FILL, Kind.COMMA, Kind.ALL, Kind.WAS)
_CLOSING = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.NAME)
_TAILS = (Kind.REPS, Kind.EACH, Kind.METRES, Kind.M, Kind.SECONDS)
_MOST_REPS = 12
"""Repetitions beside a load of the same size at the most: in `17.5 10` the greater number is the load."""
_MOST_COUNTED = 60
"""Repetitions, metres or seconds of one set at most, where each load has its own."""
_FAR = 12
"""Marks of a list of repetitions at most, before the loads that are of them."""
_LISTED = (Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.AND)
_NO_LOAD_BEHIND = (Kind.X, Kind.FOR, Kind.RIR, Kind.RPE)
_SURE = 3
"""So many loads behind each other are no repetitions: with fewer, a word must say that the count is of all."""


@dataclass(frozen=True, slots=True)
class _Each:
    """Loads with a count each, as sets: where their words start and end."""

    start: int
    end: int
    sets: list[Mark]


def in_turn(marks: list[Mark]) -> list[Mark]:
    """The marks with such loads as sets of their own."""
    out = list(marks)
    at = 0
    while at < len(out):
        loads, end = _loads(out, at)
        if len(loads) < SEVERAL or kind_at(out, at - 1) in _NO_LOAD_BEHIND or _is_each_side(out, loads, end):
            at = max(end, at + 1)
            continue
        each = _one_each(out, loads, at, end)
        if each is not None:
            out[each.start : each.end] = each.sets
            at = each.start + len(each.sets)
            continue
        if any(run[-1].kind is Kind.S for run in loads):
            at += 1
            continue
        start, stop, found = at, end, _counted_behind(out, end, len(loads))
        if found is not None:
            stop = found[1]
        elif kind_at(out, end) not in (Kind.X, Kind.FOR):
            found = _counted_before(out, at)
            start = at if found is None else found[1]
        linked = kind_at(out, end) in (Kind.X, Kind.FOR)
        if found is None or not _are_loads(loads, found[0]) or not (linked or _may_be_loads(loads)):
            at = end
            continue
        sets = _as_sets(loads, found[0])
        out[start:stop] = sets
        at = start + len(sets)
    return out


def _one_each(marks: Sequence[Mark], loads: Sequence[list[Mark]], at: int, end: int) -> _Each | None:
    """The sets of `70 70 70 for 10 9 8`, `60, 65: 12, 10 each side`, `10 9 8 at 70 70 70`: each load its own count."""
    link = end + (kind_at(marks, end) is Kind.COMMA)
    linked = kind_at(marks, link) in (Kind.X, Kind.FOR, Kind.COLON)
    counts, stop = _counts(marks, past_fill(marks, link + linked), len(loads))
    start = at
    if not counts and kind_at(marks, at - 1) in (Kind.AT, Kind.WITH) and text_at(marks, at - 1) != "@":
        start = next((i for i in range(at - 2, max(-1, at - _FAR), -1) if kind_at(marks, i) not in _LISTED), -1) + 1
        counts, stop = _counts(marks, start, len(loads))
        linked, stop = stop == at - 1 and kind_at(marks, start - 1) in _OPENS, end
    pairs = [(run[0].value or 0, one.value or 0) for run, one in zip(loads, counts, strict=False)]
    alike = len({load for load, _ in pairs}) == 1
    heavy = all(load >= 2 * count for load, count in pairs)
    sure = heavy and alike and all(load > _MOST_REPS for load, _ in pairs)
    if not pairs or not (sure if not linked else heavy or alike or len(pairs) >= _SURE):
        return None
    tail = past(marks, stop, *_TAILS)
    return _Each(start, tail, [m for run, one in zip(loads, counts, strict=True) for m in (
        *_as_sets([run], one), *marks[stop:tail], _sign(Kind.COMMA, ",", one.end))][:-1])  # fmt: skip


def _counts(marks: Sequence[Mark], at: int, count: int) -> tuple[list[Mark], int]:
    """So many repetitions in turn from a place on, and where they end; none where there are fewer, or more."""
    listed = marks[at] if kind_at(marks, at) is Kind.NUM else None
    if listed is not None and listed.value is None and len(listed.parts) == count:
        return [replace(listed, value=value, text=str(value), parts=()) for value in listed.parts], at + 1
    counts, stop = list[Mark](), at
    while len(counts) < count and whole_number(marks, at, 1, _MOST_COUNTED) is not None:
        counts.append(marks[at])
        at, stop = past(marks, at + 1, *_JOINS), at + 1
    more = kind_at(marks, at) is Kind.NUM and (at == stop or kind_at(marks, at + 1) in (None, *_JOINS, *_CLOSING))
    return ([], at) if len(counts) < count or more or kind_at(marks, stop) in (Kind.X, Kind.FOR) else (counts, stop)


def _is_each_side(marks: Sequence[Mark], loads: Sequence[list[Mark]], end: int) -> bool:
    """The load and the repetitions of `17.5 10 each x3`, `10 kg 10 each x3`: three sets."""
    reps = loads[-1][0].value or 0
    pair = len(loads) == SEVERAL and len(loads[-1]) == 1 and reps <= _MOST_REPS
    falls = pair and (len(loads[0]) > 1 or (loads[0][0].value or 0) >= reps)
    return falls and kind_at(marks, end) is Kind.EACH and kind_at(marks, end + 1) is Kind.X


def _are_loads(loads: Sequence[list[Mark]], count: Mark) -> bool:
    """Whether all of them are too many for repetitions of so many sets or each."""
    return all((run[0].value or 0) >= 2 * (count.value or 0) for run in loads)


def _may_be_loads(loads: Sequence[list[Mark]]) -> bool:
    """Whether a list is not one of repetitions, like that of `then 4 4 2 each`: bare counts that never rise."""
    values = [run[0].value or Decimal(0) for run in loads]
    bare = all(len(run) == 1 and run[0].value == int(run[0].value or 0) for run in loads)
    return not bare or values[0] > _MOST_REPS or values != sorted(values, reverse=True)


def _loads(marks: Sequence[Mark], at: int) -> tuple[list[list[Mark]], int]:
    """The loads listed from here on, each with its unit, and where the list ends."""
    loads: list[list[Mark]] = []
    end = at
    while kind_at(marks, at) is Kind.NUM and (value := marks[at].value) is not None:
        stop = at + 1 + (kind_at(marks, at + 1) in (*UNITS, Kind.S))
        if kind_at(marks, stop) in (Kind.X, Kind.FOR) and len(loads) + 1 < SEVERAL:
            break
        if loads and 2 * value <= (loads[-1][0].value or 0):
            break
        loads.append(list(marks[at:stop]))
        end = stop
        at = stop
        while kind_at(marks, at) in _JOINS:
            at += 1
    return loads, end


def _counted_behind(marks: Sequence[Mark], end: int, count: int) -> tuple[Mark, int] | None:
    """The repetitions of all of them behind the list, and where their words end."""
    at = end + (kind_at(marks, end) is Kind.COMMA)
    sets = past(marks, at, Kind.EACH)
    if count < _SURE and kind_at(marks, sets) is Kind.ALL and text_at(marks, sets).split()[-1] not in PLURALS:
        return None  # `10 14 all three`, `10 14 each side all three`: three sets
    every = kind_at(marks, at) in (Kind.ALL, Kind.EACH)
    held = _count_of(marks, at) if kind_at(marks, at) is Kind.ALL else None
    if held is not None:
        sides = count < _SURE and kind_at(marks, end - 2) is Kind.SLASH
        return None if sides else _closed(marks, held, at + 1)
    at = past_fill(marks, at + every)
    linked = kind_at(marks, at) in (Kind.X, Kind.FOR)
    at = past_fill(marks, at + linked)
    reps = _count_of(marks, at)
    named = kind_at(marks, at + 1) is Kind.REPS
    ended = kind_at(marks, at + 1 + named) in (Kind.ALL, Kind.EACH)
    sure = (
        every or ended or (named and count >= _SURE) or (linked and (count >= _SURE or text_at(marks, at) in PLURALS))
    )
    return _closed(marks, reps, at + 1 + named) if reps is not None and sure else None


def _closed(marks: Sequence[Mark], reps: Mark, at: int) -> tuple[Mark, int] | None:
    """The repetitions, where nothing that they may count follows."""
    at += kind_at(marks, at) is Kind.S
    at += kind_at(marks, at) in (Kind.ALL, Kind.EACH)
    return (reps, at) if kind_at(marks, past_fill(marks, at)) in _ENDS else None


def _counted_before(marks: Sequence[Mark], at: int) -> tuple[Mark, int] | None:
    """The repetitions of all of them before the list, and where their words start: `5s at`, `all triples:`."""
    link = at - 1
    while kind_at(marks, link) is Kind.FILL:
        link -= 1
    if kind_at(marks, link) not in (Kind.AT, Kind.WITH, Kind.COLON):
        return None
    place = link - 1 - (kind_at(marks, link - 1) is Kind.EACH)
    place -= kind_at(marks, place) in (Kind.S, Kind.REPS)
    worded = place < link - 1 or text_at(marks, place) in PLURALS or kind_at(marks, place) is Kind.ALL
    reps = _count_of(marks, place)
    start = place - (kind_at(marks, place - 1) is Kind.ALL)
    told = reps is not None and (worded or kind_at(marks, link) is not Kind.COLON)
    return (reps, start) if reps is not None and told and kind_at(marks, start - 1) in _OPENS else None


def _count_of(marks: Sequence[Mark], place: int) -> Mark | None:
    """A number of repetitions at a place, in digits or in words: `5`, `triples`, the one in `all five`."""
    if whole_number(marks, place, 1, _MOST_REPS) is not None:
        return marks[place]
    word = text_at(marks, place).split()[-1:]
    if not word or kind_at(marks, place) not in (Kind.WORD, Kind.FILL, Kind.ALL):
        return None
    value = PLURALS.get(word[0]) or PLURALS.get(word[0] + "s") or (Decimal(word[0]) if word[0].isdecimal() else None)
    return None if value is None or value > _MOST_REPS else replace(marks[place], kind=Kind.NUM, value=value)


def _as_sets(loads: Sequence[list[Mark]], reps: Mark) -> list[Mark]:
    """Each load for so many."""
    out: list[Mark] = []
    for run in loads:
        if out:
            out.append(_sign(Kind.COMMA, ",", run[0].start))
        out += [*run, _sign(Kind.X, "x", run[-1].end), replace(reps, tight=False)]
    return out


def _sign(kind: Kind, text: str, at: int) -> Mark:
    return Mark(kind, text, at, at)
