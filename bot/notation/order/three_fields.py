"""Sets, repetitions and load told in any order, each by its word: `10 reps, 3 sets, 90 kg`, `load 90, sets 3, reps 10`.

They become `3 sets 10 reps at 90 kg`, which the grammar knows.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from bot.notation.bounds import MOST_SETS
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB)
_LEADS = (Kind.AT, Kind.WITH, Kind.FOR)
_BETWEEN = (Kind.COMMA, Kind.FILL, Kind.COLON, Kind.AND)
_ENDS = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY, Kind.NAME, Kind.OPEN, Kind.CLOSE, Kind.THEN, Kind.RPE, Kind.RIR,
         Kind.FEELS, Kind.EMPTY, Kind.WORD, Kind.GAP, Kind.DONE, Kind.FINISH)  # fmt: skip
_RATED = (Kind.TANK, Kind.RPEPOST, Kind.RIRPOST, Kind.MORE, Kind.LEFT, Kind.COULD)
_ALIKE = ("fold", "group", "last group")
"""Sets that are counted with their repetitions already: `two tens and an eight`."""
_FIELDS = 3
"""Sets, repetitions and a load."""


@dataclass
class _Told:
    """What a stretch tells: the number of each field, and those that no word says."""

    sets: list[Mark] = field(default_factory=list)
    reps: list[Mark] = field(default_factory=list)
    load: list[Mark] = field(default_factory=list)
    bare: list[Mark] = field(default_factory=list)
    unit: Mark | None = None

    def whole(self) -> tuple[Mark, Mark, Mark] | None:
        """Sets, repetitions and load, where each is told once and one of them at most by its place alone."""
        if len(self.sets) != 1 or len(self.reps) > 1 or len(self.load) > 1 or len(self.bare) > 1:
            return None
        if len(self.reps) + len(self.load) + len(self.bare) != _FIELDS - 1:
            return None
        reps = self.reps[0] if self.reps else self.bare[0]
        load = self.load[0] if self.load else self.bare[0]
        return (self.sets[0], reps, load) if self.reps or self.load else None


def three_fields(marks: list[Mark]) -> list[Mark]:
    """The marks with such fields in the grammar's order."""
    marks = _for_sets(marks)
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        end = _stretch(marks, at)
        told = _read(marks[at:end]) if end is not None else None
        whole = None if told is None else told.whole()
        if end is None or told is None or whole is None:
            out.append(marks[at])
            at += 1
            continue
        out += _put(*whole, told.unit)
        at = end
    return out


def _for_sets(marks: list[Mark]) -> list[Mark]:
    """`60 for 3x5`, `80 @ 3x5` as `60 3x5`: a load for sets of so many."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind not in _LEADS:
            continue
        before = place - 1 - (kind_at(marks, place - 1) in _UNITS)
        kinds = [kind_at(marks, n) for n in (before, place + 1, place + 2, place + 3)]
        few = kinds == [Kind.NUM, Kind.NUM, Kind.X, Kind.NUM] and 1 < (marks[place + 1].value or 0) <= MOST_SETS
        if few and kind_at(marks, before - 1) not in (Kind.X, Kind.FOR):
            times = 1 if mark.kind is Kind.FOR else 2
            heavy = (marks[before].value or 0) > times * (marks[place + 3].value or 0)
            out[place] = replace(mark, kind=Kind.FILL) if heavy and kind_at(marks, place + 4) is not Kind.X else mark
    return out


def _stretch(marks: Sequence[Mark], at: int) -> int | None:
    """Where a stretch of fields that opens here ends; `None` where none opens."""
    opens = kind_at(marks, at - 1) in (None, *_ENDS, Kind.COLON, Kind.COMMA)
    if not opens or kind_at(marks, at) in (*_BETWEEN, *_ENDS):
        return None
    end = at
    while end < len(marks) and marks[end].kind not in _ENDS:
        if marks[end].kind is Kind.NUM and kind_at(marks, end + 1) in _RATED:
            break
        end += 1
    while end > at and marks[end - 1].kind in _BETWEEN:
        end -= 1
    return end if sum(m.kind is Kind.NUM for m in marks[at:end]) == _FIELDS else None


def _read(part: Sequence[Mark]) -> _Told | None:
    """The fields of a stretch; `None` where another word stands in it."""
    if any(m.kind is Kind.SETS and m.text in _ALIKE for m in part):
        return None
    told = _Told()
    at = 0
    free = True
    """Whether the number before, if there is one, has its word already."""
    while at < len(part):
        taken, free = _field(part, at, told, free=free)
        if not taken:
            return None
        at += taken
    sets = told.sets[0].value if told.sets else None
    return told if sets is not None and 1 < sets <= MOST_SETS else None


def _field(part: Sequence[Mark], at: int, told: _Told, *, free: bool) -> tuple[int, bool]:
    """How many marks a field takes from here (0: it is none), and whether its number has its word."""
    mark, after = part[at], kind_at(part, at + 1)
    kind = mark.kind
    number = at + 1 + (after is Kind.COLON)
    led = kind_at(part, number) is Kind.NUM
    lone = free or kind_at(part, at - 1) is not Kind.NUM
    if kind in (Kind.SETS, Kind.SET, Kind.REPS) and led and lone:
        (told.reps if kind is Kind.REPS else told.sets).append(part[number])
        return number + 1 - at, True
    of_load = kind_at(part, at - 1) in _UNITS and not told.reps
    if (
        kind is Kind.X
        and after is Kind.NUM
        and not of_load
        and (free or kind_at(part, at - 1) not in (Kind.NUM, *_UNITS))
    ):
        told.sets.append(part[at + 1])
        return 2, True
    if mark.text in _WEIGHTS and led:
        told.load.append(part[number])
        unit = kind_at(part, number + 1) in _UNITS
        told.unit = part[number + 1] if unit else told.unit
        return number + 1 + unit - at, True
    heads = after in (Kind.SETS, Kind.REPS) and [kind_at(part, at + n) for n in (2, 3)] == [Kind.COLON, Kind.NUM]
    worded = after in (Kind.SETS, Kind.REPS) or (after is Kind.R and part[at + 1].tight)
    if kind is Kind.NUM and worded and not heads:
        (told.sets if after is Kind.SETS else told.reps).append(mark)
        return 2, True
    if kind is Kind.NUM and after is Kind.X and kind_at(part, at + 2) in (Kind.COMMA, Kind.REPS):
        told.sets.append(mark)
        return 2, True
    if kind is Kind.NUM and after in _UNITS:
        told.load.append(mark)
        told.unit = part[at + 1]
        return 2, True
    if kind in (Kind.AT, Kind.WITH) and after is Kind.NUM and mark.text != "@":
        leads = kind_at(part, at + 2) is Kind.REPS and kind_at(part, at + 3) is Kind.NUM
        if kind_at(part, at + 2) in (*_UNITS, Kind.SETS, Kind.REPS) and not leads:
            return 1, True
        told.load.append(part[at + 1])
        return 2, True
    if kind is Kind.NUM and after is not Kind.X:
        told.bare.append(mark)
        return 1, False
    return int(kind in (*_BETWEEN, *_LEADS)), free


_WEIGHTS = ("weight", "load", "weights", "loaded")


def _put(sets: Mark, reps: Mark, load: Mark, unit: Mark | None) -> list[Mark]:
    """`3 sets 10 reps at 90 kg`."""
    words = [
        sets,
        replace(sets, kind=Kind.SETS, text="sets", value=None, parts=(), start=sets.end),
        reps,
        replace(reps, kind=Kind.REPS, text="reps", value=None, parts=(), start=reps.end),
        replace(load, kind=Kind.AT, text="at", value=None, parts=(), end=load.start),
        load,
    ]
    return words if unit is None else [*words, unit]
