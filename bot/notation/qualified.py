"""Words of another kind of lift than the one that sets were given to: `incline 50x8` where the bench is flat."""

from collections.abc import Sequence

from bot.notation.answer import Source
from bot.notation.clauses import EDGES
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import PlannedExercise

_KINDS = frozenset(words("incline decline sumo deficit goblet zercher hex landmine smith conventional stiff"))
_GRIPS = (("close", "grip"), ("wide", "grip"), ("narrow", "grip"), ("reverse", "grip"), ("single", "arm"),
          ("one", "arm"), ("single", "leg"), ("trap", "bar"))  # fmt: skip


def of_another_kind(marks: Sequence[Mark], told: Sequence[Told], exercises: Sequence[PlannedExercise]) -> Mark | None:
    """The first such word straight before a kept set's numbers, where no word names the exercise."""
    if any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks):
        return None
    if not told or any(one.grounds.exercise.source is not Source.UNDER_WAY for one in told):
        return None
    here = {one.row.exercise for one in told}
    known = {
        w
        for e in exercises
        if e.name in here
        for name in (e.name, *e.aliases)
        for w in name.lower().replace("-", " ").split()
    }
    for place, mark in enumerate(marks):
        pair = tuple(m.text for m in marks[place : place + 2])
        size = 1 if mark.text in _KINDS else 2 if pair in _GRIPS else 0
        if size and not set(mark.text.split()) <= known and _leads(marks, place, size):
            return mark
    return None


def _leads(marks: Sequence[Mark], place: int, size: int) -> bool:
    """Whether it opens its part, and a number follows."""
    after = marks[place + size] if place + size < len(marks) else None
    opens = place == 0 or marks[place - 1].kind in (*EDGES, Kind.FILL)
    if place and marks[place - 1].text.split()[-1:] in ([w] for w in _FELT):
        return False
    return opens and after is not None and after.kind in (Kind.NUM, Kind.COLON, Kind.COMMA)


_FELT = words("bit little so very really still quite rather pretty felt feel feeling feels slightly im too kinda well")
"""Before `stiff` these tell how the client is: `back a bit stiff, 75x5`."""
