"""One load told in both units: `80kg (176lb) x5`. It is one load where both say the same, else asked about."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.units import Load, Unit

NEAR = Decimal("0.02")
"""Of the load: people round when they convert."""
_UNITS = {Kind.KG: Unit.KG, Kind.LB: Unit.LB}
_JOINTS = (Kind.OPEN, Kind.SLASH, Kind.OR)
_OF_ITS_SET = (Kind.X, Kind.FOR, Kind.NUM, Kind.REPS)
_BETWEEN = (Kind.OPEN, Kind.SLASH, Kind.OR, Kind.FILL, Kind.DASH, Kind.WAS)


@dataclass(frozen=True, slots=True)
class TwiceTold:
    """The marks with the second telling of each load without bearing; the first load whose two tellings differ."""

    marks: tuple[Mark, ...]
    differs: tuple[Mark, Mark] | None


def told_twice(marks: Sequence[Mark]) -> TwiceTold:
    """Loads said in kilograms and pounds with nothing but a bracket or a slash between."""
    gone: set[int] = set()
    differs = None
    for first, second, end in _pairs(marks):
        one, two = _load(marks, first), _load(marks, second)
        if abs(one.kg - two.kg) <= NEAR * max(one.kg, two.kg):
            joint = max((i for i in range(first + 2, second) if marks[i].kind in _JOINTS), default=second)
            gone.update(range(joint, end))
        else:
            differs = differs or (marks[first], marks[second + 1])
    kept = (replace(m, kind=Kind.GAP, value=None, parts=()) if i in gone else m for i, m in enumerate(marks))
    return TwiceTold(tuple(kept), differs)


def _pairs(marks: Sequence[Mark]) -> Iterator[tuple[int, int, int]]:
    """Where both numbers of such a load stand, and where it ends."""
    for first in range(len(marks) - 3):
        if not _is_load(marks, first):
            continue
        second = first + 2
        while second < len(marks) and second - first < 8 and marks[second].kind in (*_BETWEEN, *_OF_ITS_SET):
            if _is_load(marks, second):
                break
            second += 1
        between = [m.kind for m in marks[first + 2 : second]]
        joined = any(k in _JOINTS for k in between)
        if any(k in _OF_ITS_SET for k in between):
            joined = between[-1] is Kind.OPEN
        if joined and _is_load(marks, second) and marks[first + 1].kind is not marks[second + 1].kind:
            closes = second + 2 < len(marks) and marks[second + 2].kind is Kind.CLOSE
            yield first, second, second + 2 + closes


def _is_load(marks: Sequence[Mark], place: int) -> bool:
    number = marks[place] if place + 1 < len(marks) else None
    return (
        number is not None
        and number.kind is Kind.NUM
        and number.value is not None
        and (marks[place + 1].kind in _UNITS and number.value <= 5000)
    )


def _load(marks: Sequence[Mark], place: int) -> Load:
    value = marks[place].value
    assert value is not None
    return Load.of(value, _UNITS[marks[place + 1].kind])
