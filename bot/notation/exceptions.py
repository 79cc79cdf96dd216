"""Sets told alike but for one: `all 10s, 8 on the last`, `3x10 at 90 but the second was 9`.

The one that differs is put right behind the others, in the words of a correction: `last was 8`. Where the sets that are
alike leave one open, a last one told behind a plain comma is that one, and nothing is changed.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

_LAST = frozenset(["last", "final"])
_BOUNDS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.OPEN, Kind.AND, Kind.EXCEPT)
_BUT = frozenset(["but", "except", "apart from", "bar", "besides", "excepting", "although", "though"])
_LINKS = (Kind.AT, Kind.WITH, Kind.FOR)
_UNITS = (Kind.KG, Kind.LB, Kind.REPS)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE, Kind.AT, Kind.RPE, Kind.RIR, Kind.TANK)
_MOST = 10


@dataclass(frozen=True, slots=True)
class _Alike:
    """Sets told alike: the place behind them, and how many (`None`: all that are open)."""

    end: int
    count: int | None


@dataclass(frozen=True, slots=True)
class _One:
    """One set told apart: where its words start and end, the words that name it, and what it was."""

    start: int
    end: int
    name: list[Mark]
    value: list[Mark]
    ordinal: int | None


def with_exceptions(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with a set that differs from those told alike before it as a correction of its own."""
    out = list(marks)
    if any(m.kind in (Kind.MEANT, Kind.SORRY, Kind.WROTE, Kind.SCRAP) for m in out):
        return out
    at = 0
    while at < len(out):
        alike = _alike_at(out, at)
        if alike is None:
            at += 1
            continue
        bound = _bound_behind(out, alike.end)
        one = None if bound is None else _one_at(out, bound + 1)
        count = _open(out, at, record, under)
        if bound is None or one is None or not _differs(out, bound, one, alike.count, count):
            at = alike.end
            continue
        said = [*one.name, _was(one.value[0]), *one.value]
        stop = replace(out[bound], kind=Kind.STOP, text=".", value=None, parts=())
        if kind_at(out, one.end) in (Kind.COMMA, Kind.BREAK):
            out[one.end] = replace(out[one.end], kind=Kind.STOP, text=".")
        total = _told_as(out[at : alike.end], alike, count)
        out[at : one.end] = [*total, *out[alike.end : bound], stop, *said]
        at += len(total) + len(said)
    return out


def _alike_at(marks: Sequence[Mark], at: int) -> _Alike | None:
    """Sets told alike that start here: `3x10`, `3 sets of 10`, `90x10x3`, `all 10s`, `10s across the board`."""
    kinds = [m.kind for m in marks[at : at + 5]]
    if kinds[:5] == [Kind.NUM, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return _counted(marks, at + 4, at + 5)
    if kinds[:3] == [Kind.NUM, Kind.X, Kind.NUM] and kind_at(marks, at - 1) is not Kind.X:
        value = marks[at].value
        return _counted(marks, at, at + 3) if value is not None and value <= _MOST // 2 else None
    if kinds[:2] == [Kind.NUM, Kind.SETS]:
        return _counted(marks, at, _past_numbers(marks, at + 2))
    if kinds[:1] == [Kind.ALL] and kinds[1:2] == [Kind.NUM]:
        return _Alike(_past_numbers(marks, at + 1), None)
    if kinds[:1] == [Kind.NUM] and Kind.ALL in kinds:
        end = at + kinds.index(Kind.ALL)
        between = marks[at:end]
        if all(m.kind in (Kind.NUM, Kind.S, Kind.X, Kind.FOR, Kind.FILL, *_UNITS) for m in between):
            return _Alike(end + 1, None)
    return None


def _counted(marks: Sequence[Mark], count: int, end: int) -> _Alike | None:
    value = marks[count].value
    if value is None or value != int(value) or not 1 < value <= _MOST:
        return None
    return _Alike(_past_numbers(marks, end), int(value))


def _past_numbers(marks: Sequence[Mark], at: int) -> int:
    """Behind what still tells of the same sets: their load, their repetitions."""
    while kind_at(marks, at) in (Kind.NUM, Kind.S, *_LINKS, *_UNITS) or (
        kind_at(marks, at) in (Kind.FILL, Kind.COMMA)
        and kind_at(marks, at + 1) is Kind.NUM
        and kind_at(marks, at + 2) in (Kind.S, Kind.KG, Kind.LB)
    ):
        at += 1
    return at


def _bound_behind(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of the other sets end: at a comma, a stop, `but`."""
    for place in range(at, min(at + 4, len(marks))):
        if marks[place].kind in _BOUNDS or marks[place].text in _BUT:
            return place
        if marks[place].kind not in (Kind.FILL, Kind.WORD):
            return None
    return None


def _one_at(marks: Sequence[Mark], at: int) -> _One | None:
    """One set and what it was: `8 on the last`, `last one only 8`, `the second was 9`, `last one 85x8`."""
    start = at
    at = _past_little(marks, at)
    name = _name_at(marks, at)
    if name is not None:
        at = _past_little(marks, name[1])
        value = _value_at(marks, at)
        if value is None or kind_at(marks, value) not in _ENDS:
            return None
        return _One(start, value, name[0], list(marks[at:value]), name[2])
    value = _value_at(marks, at)
    if value is None or kind_at(marks, value) not in _LINKS or marks[value].text == "@":
        return None
    name = _name_at(marks, _past_fill(marks, value + 1))
    if name is None or kind_at(marks, name[1]) not in _ENDS:
        return None
    return _One(start, name[1], name[0], list(marks[at:value]), name[2])


def _past_fill(marks: Sequence[Mark], at: int) -> int:
    while kind_at(marks, at) is Kind.FILL:
        at += 1
    return at


def _past_little(marks: Sequence[Mark], at: int) -> int:
    """Behind words that tell nothing: `but`, `the`, `was`, `only`, `which was`, a colon."""
    while kind_at(marks, at) in (Kind.FILL, Kind.WAS, Kind.COLON, Kind.COMMA, Kind.EXCEPT, Kind.AND) or (
        at < len(marks) and marks[at].text in _BUT
    ):
        at += 1
    return at


def _name_at(marks: Sequence[Mark], at: int) -> tuple[list[Mark], int, int | None] | None:
    """The words that name one set, where they end, and its number (`None`: the last)."""
    kind = kind_at(marks, at)
    if kind in (Kind.LASTREP, Kind.LASTSET) and set(marks[at].text.split()) & _LAST and "rep" not in marks[at].text:
        end = at + 1
        while kind_at(marks, end) in (Kind.SET, Kind.NAME) or (end < len(marks) and marks[end].text == "one"):
            end += 1
        return list(marks[at:end]), end, None
    if kind is Kind.ORD and marks[at].value is not None:
        end = at + 1
        if kind_at(marks, end) is Kind.SET or (end < len(marks) and marks[end].text == "one"):
            end += 1
        return list(marks[at:end]), end, int(marks[at].value or 0)
    if kind is Kind.SET and kind_at(marks, at + 1) is Kind.NUM and marks[at + 1].value is not None:
        return list(marks[at : at + 2]), at + 2, int(marks[at + 1].value or 0)
    return None


def _value_at(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of what a set was end: a count, or a load with one."""
    if kind_at(marks, at) is not Kind.NUM:
        return None
    end = at + 1
    if kind_at(marks, end) in (Kind.KG, Kind.LB) and kind_at(marks, end + 1) in (Kind.X, Kind.FOR):
        end += 1
    if kind_at(marks, end) in (Kind.X, Kind.FOR) and kind_at(marks, end + 1) is Kind.NUM:
        end += 2
    if kind_at(marks, end) is Kind.REPS:
        end += 1
    return end


def _open(marks: Sequence[Mark], at: int, record: Record, under: int | None) -> int:
    """How many sets are open of the exercise that is spoken of here; 0 where none is known."""
    named = [m.names[0] for m in marks[:at] if m.kind is Kind.NAME and len(m.names) == 1]
    place = named[-1] if named else under
    return 0 if place is None else len(record.context(place).open_sets)


def _differs(marks: Sequence[Mark], bound: int, one: _One, told: int | None, count: int) -> bool:
    """Whether the set is one of those told alike, and not the one that they leave."""
    but = any(m.text in _BUT or m.kind is Kind.EXCEPT for m in marks[bound : one.end])
    if told is None:
        return count > 1
    if one.ordinal is not None:
        return one.ordinal <= told
    return told > 1 and (but or told >= count)


def _was(before: Mark) -> Mark:
    return replace(before, kind=Kind.WAS, text="was", value=None, parts=(), end=before.start)


def _told_as(said: Sequence[Mark], alike: _Alike, count: int) -> list[Mark]:
    """The sets told alike, all of them as so many as are open."""
    if alike.count is not None:
        return list(said)
    every = next(m for m in said if m.kind is Kind.ALL)
    number = replace(every, kind=Kind.NUM, text=str(count), value=Decimal(count), parts=())
    sets = replace(every, kind=Kind.SETS, text="sets", start=every.end)
    return [number, sets, *(m for m in said if m is not every)]
