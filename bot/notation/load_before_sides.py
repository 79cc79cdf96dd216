"""A load as planned before the repetitions of each side, though it might be repetitions too: `step-ups 12 L10 R11`.

The number that stands straight behind the name, is the planned load, and is followed by as many counts as the exercise
has sets left is the load of them all.
"""

from collections.abc import Sequence

from bot.notation.answer import Request
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import Side

_SIDES = (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R)
_OF_SETS = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.THEN, Kind.SLASH, Kind.EACH, Kind.FILL, *_SIDES)


def with_loads_before_sides(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with a colon behind each such load."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        out.append(mark)
        named = marks[place - 1] if place else None
        if mark.kind is not Kind.NUM or named is None or named.kind is not Kind.NAME or len(named.names) != 1:
            continue
        exercise = request.exercises[named.names[0]]
        done = {p.set for p in request.done if p.exercise == exercise.name and p.set is not None}
        if _is_planned(mark, exercise) and _counts(marks, place + 1) == len(exercise.sets) - len(done):
            out.append(Mark(Kind.COLON, ":", mark.end, mark.end))
    return out


def _is_planned(mark: Mark, exercise: PlannedExercise) -> bool:
    """Whether a number is the load that is planned for every set of an exercise of two sides."""
    loads = {s.load.amount for s in exercise.sets if s.load is not None}
    weighed = exercise.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND) and exercise.sides == len(Side)
    return weighed and loads == {mark.value}


def _counts(marks: Sequence[Mark], at: int) -> int:
    """How many sets are told from a place on, each with both sides or a word that says so; 0 where one has neither."""
    end = at
    while kind_at(marks, end) in _OF_SETS:
        end += 1
    while end > at and marks[end - 1].kind is not Kind.EACH and marks[end - 1].kind not in (Kind.NUM, *_SIDES):
        end -= 1
    part = marks[at:end]
    numbers = sum(m.kind is Kind.NUM and not m.parts for m in part)
    sided = sum(m.kind in _SIDES for m in part)
    if sided:
        return sided // len(Side) if sided == numbers else 0
    return numbers if part and part[-1].kind is Kind.EACH else 0
