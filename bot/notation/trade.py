"""Words of the trade that name an exercise by themselves where they stand beside its sets: `calves 50x15`, `sled 80`.

Where the session has them they are read as its exercise's name before this; here they are what the session lacks.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.abbreviations import singular
from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LONE = frozenset(
    words(
        "calf ham hamstring quad glute bicep biceps tricep triceps bi tri ab core forearm trap delt lat pec chest",
        "shoulder leg arm adductor abductor oblique neck tib shin zercher yoke sled prowler pallof landmine copenhagen",
        "nordic farmer jefferson cardio ski erg ohp rdl dl",
    )
)
_NUMBERS = (Kind.NUM, Kind.CLOCK, Kind.BODY)
_OPENS = (*EDGES, Kind.FILL, Kind.AND, Kind.THEN, Kind.COLON, Kind.GAP)
_ENDS_SET = (Kind.NUM, Kind.KG, Kind.LB, Kind.REPS, Kind.EACH)


def with_lone_names(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as names that fit no exercise of the session."""
    return [
        replace(mark, kind=Kind.WEAK if _leads(marks, place) else Kind.NAME, names=())
        if mark.kind in (Kind.WORD, Kind.WEAK)
        and not mark.names
        and singular(mark.text) in _LONE
        and (_leads(marks, place) or _trails(marks, place))
        else mark
        for place, mark in enumerate(marks)
    ]


def _leads(marks: Sequence[Mark], place: int) -> bool:
    """`calves 50x15`, `calves: 50x15`: at the start of its part, before its sets."""
    if place and marks[place - 1].kind not in _OPENS:
        return False
    following = [m.kind for m in marks[place + 1 : place + 3] if m.kind is not Kind.FILL]
    if following[:1] and following[0] in (Kind.COLON, Kind.DASH):
        following = following[1:]
    return following[:1] != [] and following[0] in _NUMBERS


def _trails(marks: Sequence[Mark], place: int) -> bool:
    """`50x15 calves`: at the end of its part, after its sets."""
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
    before = [m.kind for m in marks[max(0, place - 3) : place]]
    return (
        ends
        and before[-1:] != []
        and before[-1] in _ENDS_SET
        and bool({Kind.X, Kind.FOR, Kind.KG, Kind.LB} & set(before))
    )
