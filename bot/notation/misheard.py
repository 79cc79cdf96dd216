"""Words before a number that sound like another exercise of the session than the one that its sets were given to."""

from collections.abc import Sequence

from rapidfuzz.fuzz import ratio

from bot.notation.answer import Source
from bot.notation.clauses import EDGES
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise

_LIKE = 65.0
"""Of a hundred: as near as `dead bucks` is to `dead bug`."""
_NEARER = 15.0
"""By how much another exercise's name must be nearer than that of the one under way."""


def sounds_like_another(
    marks: Sequence[Mark], told: Sequence[Told], exercises: Sequence[PlannedExercise]
) -> Mark | None:
    """The first such word, where the message names no exercise."""
    if not told or any(m.kind is Kind.NAME for m in marks):
        return None
    if any(one.grounds.exercise.source is not Source.UNDER_WAY for one in told):
        return None
    names = {e.name: tuple(n.lower() for n in (e.name, *e.aliases)) for e in exercises}
    for place, mark in enumerate(marks):
        said = _before(marks, place) if mark.kind is Kind.NUM else []
        if not any(m.kind is Kind.WORD for m in said):
            continue
        text = " ".join(m.text for m in said)
        likeness = {name: max(ratio(text, n) for n in called) for name, called in names.items()}
        best = max(likeness, key=lambda name: likeness[name])
        here = max(likeness[one.row.exercise] for one in told)
        if likeness[best] >= _LIKE and likeness[best] > here + _NEARER:
            return said[0]
    return None


def _before(marks: Sequence[Mark], place: int) -> list[Mark]:
    """The words straight before a number, where they open its part."""
    start = place
    while start > 0 and marks[start - 1].kind in (Kind.WORD, Kind.FILL, Kind.WEAK) and marks[start - 1].text.isalpha():
        start -= 1
    opens = start == 0 or marks[start - 1].kind in (*EDGES, Kind.THEN)
    return list(marks[start:place]) if opens else []
