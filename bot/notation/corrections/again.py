"""What a message itself tells again, put in the first one's place: `100x5x2. no, x3`, `two sets sorry three sets of 5`,
`100x5 @8, make it @9`, `100 times 4 pardon times 5`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO)
_BETWEEN = (Kind.COMMA, Kind.STOP, Kind.FILL, Kind.DASH)
_COUNTED = (Kind.SETS, Kind.SET)
_FAR = 12
"""Marks between a count and where it is told again."""


def told_again(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with each such value where the first one stood, and nothing where it was told again."""
    out = list(marks)
    for place in range(1, len(marks)):
        if marks[place].kind not in _CUES or any(m.kind in _CUES for m in marks[place + 1 : place + 2]):
            continue
        at = _past(marks, place + 1, 1)
        before = _past(marks, place - 1, -1)
        old = _old(marks, before, at)
        if old is not None:
            _put_again(out, old[0], range(before + 1, old[2]), old[1])
        elif kind_at(marks, at) is Kind.TIMES and kind_at(marks, at + 1) is Kind.NUM and _times(marks, before):
            out[at] = replace(marks[at], kind=Kind.X)
        elif [kind_at(marks, i) in _COUNTED for i in (before, at + 1)] == [True, True] and _is_count(marks, before, at):
            out[before - 1 : at] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[before - 1 : at]]
    return out


def _past(marks: Sequence[Mark], at: int, step: int) -> int:
    """The first place from here on, in a direction, that is more than a pause or another word that corrects."""
    while kind_at(marks, at) in (*_BETWEEN, *_CUES):
        at += step
    return at


def _put_again(out: list[Mark], old: int, gone: range, new: int) -> None:
    said = out[new]
    for at in gone:
        out[at] = replace(out[at], kind=Kind.FILL, value=None, parts=())
    out[old] = said


def _ends(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) in (None, *EDGES)


def _old(marks: Sequence[Mark], before: int, at: int) -> tuple[int, int, int] | None:
    """The place of the number that is told again, that of the new one, and where its words end."""
    linked = kind_at(marks, at) is Kind.X and kind_at(marks, at + 1) is Kind.NUM and _ends(marks, at + 2)
    kinds = [m.kind for m in marks[max(0, before - 4) : before + 1]]
    if linked and kinds == [Kind.NUM, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return before, at + 1, at + 2
    rated = kind_at(marks, before) is Kind.NUM and text_at(marks, before - 1) == "@" and text_at(marks, at) == "@"
    if rated and kind_at(marks, at + 1) is Kind.NUM and _ends(marks, at + 2):
        return before, at + 1, at + 2
    counts = kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in _COUNTED and _ends(marks, at + 2)
    if counts and kind_at(marks, before) is Kind.NUM:
        for place in range(before - 1, max(-1, before - _FAR), -1):
            if marks[place].kind in EDGES or marks[place].kind is Kind.NAME:
                break
            if kind_at(marks, place) is Kind.NUM and kind_at(marks, place + 1) in _COUNTED:
                return place, at, at + 2
    return None


def _times(marks: Sequence[Mark], before: int) -> bool:
    """Whether repetitions are told before as `100 times 4`."""
    middle = kind_at(marks, before - 1) in (Kind.TIMES, Kind.X)
    return middle and kind_at(marks, before) is Kind.NUM and kind_at(marks, before - 2) is Kind.NUM


def _is_count(marks: Sequence[Mark], before: int, at: int) -> bool:
    """Whether two counts of sets stand one straight behind the other: `two sets sorry three sets`."""
    return kind_at(marks, before - 1) is Kind.NUM and kind_at(marks, at) is Kind.NUM and before > 0
