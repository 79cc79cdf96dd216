"""A count mistyped and put right in the same breath: `70x31, sorry, 13` is `70x13` where the plan allows no 31."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import EDGES, kind_at
from bot.notation.context import LEAST, MOST
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise

_CUES = (Kind.SORRY, Kind.MEANT)
_LINKS = (Kind.X, Kind.FOR)
_FAR = 2
"""So many times the top of the planned range is out of reason."""


def with_sorry_at_once(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with the count that was meant in the place of the one that was mistyped."""
    out = list(marks)
    for place in range(len(marks) - 1, 2, -1):
        if marks[place].kind not in _CUES:
            continue
        wrong = place - 1
        while kind_at(marks, wrong) in (Kind.COMMA, Kind.STOP, Kind.FILL, Kind.DASH, Kind.REPS):
            wrong -= 1
        right = past(marks, place + 1, Kind.COMMA, Kind.FILL, Kind.MEANT)
        end = right + 1 + (kind_at(marks, right + 1) is Kind.REPS)
        counted = kind_at(marks, wrong) is kind_at(marks, right) is Kind.NUM and kind_at(marks, wrong - 1) in _LINKS
        if not counted or kind_at(marks, end) not in (None, *EDGES) or marks[wrong].parts or marks[right].parts:
            continue
        exercise = _exercise(marks, wrong, request)
        if exercise is not None and _is_mistyped(marks[wrong], marks[right], exercise, request):
            talk = [replace(m, kind=Kind.FILL, text="that", value=None) for m in marks[wrong:right]]
            out[wrong:right] = talk
            out[wrong], out[right] = out[right], replace(talk[0])
    return out


def _exercise(marks: Sequence[Mark], place: int, request: Request) -> PlannedExercise | None:
    """The exercise that was named last before a place, else the one that the chat is on."""
    name = next((m for m in reversed(marks[:place]) if m.kind is Kind.NAME), None)
    if name is not None:
        return request.exercises[name.names[0]] if len(name.names) == 1 else None
    return next((e for e in request.exercises if e.name == request.current), None)


def _is_mistyped(wrong: Mark, right: Mark, exercise: PlannedExercise, request: Request) -> bool:
    """Whether the plan allows the first count not at all, and the second in its range, where that is no load."""
    most = max(s.reps.high for s in exercise.sets)
    least = min(s.reps.low for s in exercise.sets)
    loads = [s.load.amount_in(request.unit) for s in exercise.sets if s.load is not None]
    first, second = wrong.value or 0, right.value or 0
    fits = LEAST * least <= second <= MOST * most and second == int(second)
    return first > _FAR * most and fits and not any(LEAST * one <= second <= MOST * one for one in loads)
