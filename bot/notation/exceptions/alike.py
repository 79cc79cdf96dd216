"""The sets that are told alike, before one that differs: `3x10`, `3 sets of 10`, `all 10s`, `as planned`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

BOUNDS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.OPEN, Kind.AND, Kind.EXCEPT)
BUT = frozenset(["but", "except", "apart from", "bar", "besides", "excepting", "although", "though"])
UNTIL = frozenset(["until", "till", "til"])
LINKS = (Kind.AT, Kind.WITH, Kind.FOR)
_UNITS = (Kind.KG, Kind.LB, Kind.REPS)
_LOADS = (Kind.S, Kind.KG, Kind.LB)
MOST_ALIKE = 10
"""Sets told alike at the most: a greater number counts repetitions. Before a load and repetitions (`3x60x10`), half."""


@dataclass(frozen=True, slots=True)
class Alike:
    """Sets told alike: the place behind them, and how many (`None`: all that are open)."""

    end: int
    count: int | None


def alike_at(marks: Sequence[Mark], at: int) -> Alike | None:
    """Sets told alike that start here: `3x10`, `3 sets of 10`, `90x10x3`, `all 10s`, `as planned`."""
    if marks[at].kind not in (Kind.NUM, Kind.PLANNED, Kind.ALL):
        return None
    kinds = [m.kind for m in marks[at : at + 6]]
    if kinds == [Kind.NUM, Kind.S, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return _counted(marks, at + 5, at + 6)
    if kinds[:5] == [Kind.NUM, Kind.X, Kind.NUM, Kind.NUM, Kind.TIMES]:
        return _counted(marks, at + 3, at + 5)
    if kinds[:5] == [Kind.NUM, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return _counted(marks, at + 4, at + 5)
    if kinds[:3] == [Kind.NUM, Kind.X, Kind.NUM] and kind_at(marks, at - 1) is not Kind.X:
        value = marks[at].value
        return _counted(marks, at, at + 3) if value is not None and value <= MOST_ALIKE // 2 else None
    if kinds[:2] == [Kind.NUM, Kind.SETS]:
        return _counted(marks, at, _past_numbers(marks, at + 2))
    if kinds[:1] == [Kind.PLANNED] and kind_at(marks, at - 1) not in (Kind.NUM, Kind.ORD, Kind.LABEL, Kind.SET):
        return Alike(at + 1, None)
    if kinds[:4] == [Kind.ALL, Kind.NUM, Kind.X, Kind.NUM]:
        return Alike(_past_numbers(marks, at + 4), None)
    if kinds[:1] == [Kind.ALL] and kinds[1:2] == [Kind.NUM]:
        return Alike(_past_numbers(marks, at + 1), None)
    fives = kinds[:2] == [Kind.NUM, Kind.S] and at + 2 < len(marks)
    if kinds[:4] == [Kind.NUM, Kind.S, Kind.AT, Kind.NUM] or (fives and turns(marks[at + 2])):
        return Alike(_past_numbers(marks, at), None)
    if kinds[:1] == [Kind.ALL] and kinds[1:3] in ([Kind.WITH, Kind.NUM], [Kind.AT, Kind.NUM]):
        return Alike(_past_numbers(marks, at + 1), None)
    if kinds[:1] == [Kind.NUM] and Kind.ALL in kinds:
        end = at + kinds.index(Kind.ALL)
        between = marks[at:end]
        counted = kind_at(marks, end + 1) is Kind.NUM and kind_at(marks, end + 2) is Kind.EXCEPT
        if not counted and all(
            m.kind in (Kind.NUM, Kind.S, Kind.X, Kind.FOR, Kind.AT, Kind.FILL, *_UNITS) for m in between
        ):
            return Alike(end + 1, None)
    return None


def turns(mark: Mark) -> bool:
    """`8s but 7 on the last`, `8s until the last one`: a word that turns to what differs."""
    return mark.kind is Kind.EXCEPT or mark.text in BUT | UNTIL


def _counted(marks: Sequence[Mark], count: int, end: int) -> Alike | None:
    value = marks[count].value
    if value is None or value != int(value) or not 1 < value <= MOST_ALIKE:
        return None
    return Alike(_past_numbers(marks, end), int(value))


def _past_numbers(marks: Sequence[Mark], at: int) -> int:
    """Behind what still tells of the same sets: their load, their repetitions."""
    start = at
    while (
        (kind_at(marks, at) in (Kind.NUM, Kind.S, Kind.EACH, *LINKS, *_UNITS) and not leads_name(marks, at))
        or (kind_at(marks, at) is Kind.SLASH and kind_at(marks, at + 1) is Kind.EACH)
    ) or (
        kind_at(marks, at) in (Kind.FILL, Kind.COMMA)
        and kind_at(marks, at + 1) is Kind.NUM
        and kind_at(marks, at + 2) in _LOADS
        and not any(m.kind in _LOADS for m in marks[start:at])
    ):
        at += 1
    return at


def bound_behind(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of the other sets end: at a comma, a stop, `but`."""
    for place in range(at, min(at + 4, len(marks))):
        if marks[place].kind in BOUNDS or marks[place].text in BUT | UNTIL:
            return place
        if place == at and at and marks[at].kind is Kind.LASTSET and marks[at - 1].kind is Kind.PLANNED:
            return place - 1
        if kind_at(marks, place) is Kind.TO and place and marks[place - 1].text == "up":
            return place
        if marks[place].text == "only" and kind_at(marks, place + 1) in (Kind.LASTSET, Kind.ORD):
            return place
        named = marks[place].kind is Kind.NAME and place and marks[place - 1].kind is Kind.AT
        if not named and marks[place].kind not in (Kind.FILL, Kind.WORD, Kind.AT):
            return None
    return None


def leads_name(marks: Sequence[Mark], at: int) -> bool:
    """Whether a link leads no number of the same sets, but a name: `on rows`."""
    return kind_at(marks, at) in LINKS and kind_at(marks, at + 1) is Kind.NAME


def told_as(said: Sequence[Mark], alike: Alike, count: int) -> list[Mark]:
    """The sets told alike, all of them as so many as are open."""
    if alike.count is not None:
        return list(said)
    every = next((m for m in said if m.kind is Kind.ALL), replace(said[0], end=said[0].start))
    number = replace(every, kind=Kind.NUM, text=str(count), value=Decimal(count), parts=())
    sets = replace(every, kind=Kind.SETS, text="sets", value=None, parts=(), start=every.end)
    rest = [m for m in said if m is not every]
    plural = next((i for i, m in enumerate(rest) if m.kind is Kind.NUM), 0) + 1
    if kind_at(rest, plural) is Kind.S:
        del rest[plural]
    return [number, sets, *rest]
