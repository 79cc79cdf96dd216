"""A load alone in a sentence of talk, kept with the plan's repetitions, beside sets that are told whole: asked about.

`tried 110 for a laugh and racked it straight away. 100x5 though`.
"""

from collections.abc import Sequence
from itertools import pairwise

from bot.notation.answer import Source
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.COMMA, Kind.BREAK)
_TALK = (Kind.WORD, Kind.FILL, Kind.GAP, Kind.WAS, Kind.OTHERTIME, Kind.COULD)
_OF_SETS = (Kind.SET, Kind.SETS, Kind.LASTSET, Kind.ORD, Kind.ANOTHER, Kind.ALL, Kind.LABEL, Kind.NUM, Kind.EACH,
            Kind.EMPTY, Kind.FAILED, Kind.RPE, Kind.RIR, Kind.PLANNED, Kind.SAME)  # fmt: skip
_LITTLE = (["did"], ["got"], ["the"], ["i"], ["then"], ["and"], ["a"], ["so"], ["for"], ["lol"], ["now"])
_MISSED = frozenset(["miss", "missed", "failed", "fail", "fails", "failing", "stapled", "luck"])
_NOPE = (["nope"], ["nah"], ["nada"], ["failed"], ["missed"], ["fail"])
"""What stands alone behind a load that did not go: `went to 77.5, nope`."""
_DENIED = frozenset(["not", "didnt", "wouldnt", "couldnt", "never", "no"])
_MOVED = frozenset(["move", "moved", "moving", "budge", "budged", "lift", "shift", "go", "rise"])
_MANY = 2
"""Words beside a number that tell something of it."""


def lone_load(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """The number of the first such load; `None` where there is none."""
    if not any(one.grounds.reps.source is Source.SAID for one in told):
        return None
    for one in told:
        at = one.grounds.load.at if one.grounds.load.source is Source.SAID else None
        if one.grounds.reps.source is not Source.PLAN or at is None:
            continue
        place = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM and at[0] <= m.start < at[1]), None)
        if place is not None and _is_talked_of(marks, place):
            return marks[place]
    return None


def missed_load(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """A load alone that is said to have been missed: `60x5, then missed 62.5`; how many were done is not said."""
    loads = [one.grounds.load for one in told if one.grounds.reps.source is Source.PLAN]
    spans = [load.at for load in loads if load.source is Source.SAID and load.at is not None]
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and any(start <= mark.start < end for start, end in spans):
            start, end = _part(marks, place)
            said = {word for m in marks[start:end] for word in m.text.split()}
            nope = [w for m in marks[end + 1 : end + 2] for w in m.text.split()][:1] in _NOPE
            if nope or said & _MISSED or (said & _DENIED and said & _MOVED):
                return mark
    return None


def failed_again(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """A set that was failed, and one just like it told whole behind it: `didn't get the 5th. 100x4`."""
    for one, two in pairwise(told):
        effort, reps = one.grounds.effort, one.grounds.reps
        failed = one.row.rir == 0 and effort is not None and effort.at is not None and effort.at == reps.at
        alike = (one.row.load, one.row.reps, one.row.exercise) == (two.row.load, two.row.reps, two.row.exercise)
        if failed and alike and two.row.rir is None and two.grounds.load.source is Source.SAID:
            at = two.grounds.load.at
            return next((m for m in marks if at is not None and m.start == at[0]), None)
    return None


def _part(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    """Where the part of a number starts and ends."""
    start = end = place
    while start > 0 and marks[start - 1].kind not in _ENDS and not _ends_entry(marks, start - 1):
        start -= 1
    while end < len(marks) and marks[end].kind not in _ENDS:
        end += 1
    return start, end


def _ends_entry(marks: Sequence[Mark], place: int) -> bool:
    """The repetitions of `75x5 leaving 80 for another day`, behind which talk begins."""
    return place > 0 and marks[place].kind is Kind.NUM and marks[place - 1].kind in (Kind.X, Kind.FOR)


def _is_talked_of(marks: Sequence[Mark], place: int) -> bool:
    start, end = _part(marks, place)
    part = [m for i, m in enumerate(marks[start:end], start) if i != place]
    talked = sum(m.kind in _TALK for m in part if m.text.split()[-1:] not in _LITTLE)
    return talked >= _MANY and not any(m.kind in _OF_SETS for m in part)
