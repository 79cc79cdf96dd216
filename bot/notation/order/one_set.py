"""One set told field by field in any order: `rpe 8. 90 kg. 10 reps`, `2 rir - 10 reps - 90 kg`.

Where a message holds one load, one count and one effort and nothing else that counts, they become `90 kg x 10 rpe 8`.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB)
_TALK = (Kind.FILL, Kind.WORD, Kind.GAP, Kind.STOP, Kind.COMMA, Kind.LINE, Kind.BREAK, Kind.DASH, Kind.NAME, Kind.WAS,
         Kind.COLON, Kind.OPEN, Kind.CLOSE)  # fmt: skip
"""Kinds that may stand between the fields."""
_WEIGHTS = ("weight", "load", "weights", "loaded")


@dataclass
class _Fields:
    """The marks of each field, and those that are of none."""

    load: list[Mark]
    reps: Mark | None
    bare: list[Mark]
    effort: list[Mark]
    rest: list[Mark]


def one_set(marks: list[Mark]) -> list[Mark]:
    """The marks with such a set in the grammar's order."""
    numbers = sum(m.kind is Kind.NUM for m in marks)
    names = [m for m in marks if m.kind is Kind.NAME]
    if numbers != 3 or len(names) > 1:
        return marks
    told = _read(marks)
    if told is None or not told.effort or not _is_scattered(marks):
        return marks
    load, reps = told.load, told.reps
    if len(told.bare) == 1 and (load or reps is not None):
        load, reps = (load or told.bare), (reps or told.bare[0])
    elif told.bare:
        return marks
    if not load or reps is None or load[0] is reps:
        return marks
    link = replace(reps, kind=Kind.X, text="x", value=None, parts=(), end=reps.start)
    return [*names, *load, link, reps, *told.effort, *(m for m in told.rest if m.kind is not Kind.NAME)]


def _is_scattered(marks: Sequence[Mark]) -> bool:
    """Whether the order is not the common one, of a load, its repetitions and then the effort in one breath."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM), 0)
    linked = [kind_at(marks, i) for i in range(place, place + 4)]
    return Kind.X not in linked and Kind.FOR not in linked[:3]


def _read(marks: Sequence[Mark]) -> _Fields | None:
    """The fields; `None` where anything else that counts stands among them."""
    told = _Fields([], None, [], [], [])
    at = 0
    while at < len(marks):
        step = _effort(marks, at, told) or _load(marks, at, told) or _reps(marks, at, told)
        if step:
            at += step
            continue
        if marks[at].kind not in _TALK:
            return None
        told.rest.append(marks[at])
        at += 1
    return told


def _effort(marks: Sequence[Mark], at: int, told: _Fields) -> int:
    """How many marks an effort takes from here."""
    kinds = [kind_at(marks, at + n) for n in range(3)]
    if kinds[:2] == [Kind.RPE, Kind.RPE]:
        inner = _effort(marks, at + 1, told)
        return inner + 1 if inner else 0
    number = marks[at] if kinds[0] is Kind.NUM else marks[at + 1] if kinds[1] is Kind.NUM else None
    if told.effort or number is None or number.value is None:
        return 0
    if number.value <= MOST_LEFT and (taken := _left(kinds)):
        told.effort += [replace(number, kind=Kind.RIR, text="rir", value=None, parts=(), end=number.start), number]
        return taken
    at_sign = kinds[0] is Kind.AT and marks[at].text == "@"
    if EASIEST <= number.value <= HARDEST and (taken := _rated(kinds, at_sign=at_sign)):
        told.effort += [replace(number, kind=Kind.RPE, text="rpe", value=None, parts=(), end=number.start), number]
        return taken
    return 0


def _left(kinds: Sequence[Kind | None]) -> int:
    """How many marks say repetitions in reserve: `2 in the tank`, `rir 2`, `could have done 2 more`."""
    if kinds[0] is Kind.NUM and kinds[1] in (Kind.TANK, Kind.RIRPOST, Kind.RIR):
        return 2
    if kinds == [Kind.COULD, Kind.NUM, Kind.MORE]:
        return 3
    return 2 if kinds[0] is Kind.RIR and kinds[2] not in _COUNTED else 0


def _rated(kinds: Sequence[Kind | None], *, at_sign: bool) -> int:
    """How many marks say a perceived exertion: `rpe 8`, `@8`, `8 rpe`."""
    if (kinds[0] is Kind.RPE or at_sign) and kinds[2] not in _COUNTED:
        return 2
    return 2 if kinds[0] is Kind.NUM and kinds[1] is Kind.RPEPOST else 0


_COUNTED = (*_UNITS, Kind.X, Kind.REPS)


def _load(marks: Sequence[Mark], at: int, told: _Fields) -> int:
    """How many marks a load with a word for it takes from here."""
    led = (marks[at].kind in (Kind.AT, Kind.WITH) and marks[at].text != "@") or marks[at].text in _WEIGHTS
    number = at + led
    unit = kind_at(marks, number + 1) in _UNITS
    if told.load or kind_at(marks, number) is not Kind.NUM or not (led or unit):
        return 0
    if kind_at(marks, number + 1) is Kind.REPS:
        return 0
    told.load += marks[number : number + 1 + unit]
    return 1 + led + unit


def _reps(marks: Sequence[Mark], at: int, told: _Fields) -> int:
    """How many marks a count takes from here: with its word, behind `for`, or bare."""
    led = marks[at].kind is Kind.FOR
    number = at + led
    if kind_at(marks, number) is not Kind.NUM:
        return 0
    worded = kind_at(marks, number + 1) is Kind.REPS
    if led or worded:
        if told.reps is not None:
            return 0
        told.reps = marks[number]
        return 1 + led + worded
    told.bare.append(marks[number])
    return 1
