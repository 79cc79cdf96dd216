"""What the sets of an exercise come to: the 45 of `45 pushups as 3x15`, the 24 of `24 chins, 8 8 8`."""

from collections.abc import Sequence
from decimal import Decimal
from math import prod

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle, PlannedExercise

_ENDS = (Kind.STOP, Kind.LINE, Kind.NAME)
_OF_LIST = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.PLUS, Kind.FILL, Kind.COLON, Kind.OPEN, Kind.CLOSE,
            Kind.REPS)  # fmt: skip
_BARE = (LoadStyle.BODYWEIGHT, LoadStyle.NONE)


def without_totals(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with such numbers without bearing, where the exercise is done with the body alone."""
    return masked(marks, {place for place in range(len(marks)) if _is_total(marks, place, exercises)})


def _is_total(marks: Sequence[Mark], place: int, exercises: Sequence[PlannedExercise]) -> bool:
    value, name = marks[place].value, place + 1
    if marks[place].kind is not Kind.NUM or value is None or kind_at(marks, name) is not Kind.NAME:
        return False
    if len(marks[name].names) != 1 or exercises[marks[name].names[0]].load_style not in _BARE:
        return False
    end = next((i for i in range(name + 1, len(marks)) if marks[i].kind in _ENDS), len(marks))
    told = [m for m in marks[name + 1 : end] if m.kind is not Kind.FILL]
    if [m.kind for m in told[:3]] == [Kind.NUM, Kind.X, Kind.NUM]:
        return prod(m.value or Decimal(0) for m in told[:3:2]) == value
    numbers: list[Decimal] = []
    for mark in told:
        if mark.kind not in _OF_LIST:
            break
        numbers += mark.parts or ((mark.value,) if mark.value is not None else ())
    return len(numbers) > 1 and sum(numbers) == value
