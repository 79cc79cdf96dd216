"""A duration that stands by itself: `lunch break only, 30 mins`, `my boss kept me. 35 min`, `an hour for once!`."""

from collections.abc import Collection, Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.minutes.clock import words_of
from bot.notation.minutes.elapsed import TOOK
from bot.notation.minutes.parts import HAVING, is_edge, part_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LEAST = 10
"""Minutes: what stands by itself and is less is a rest or a hold (common practice, no source)."""
_COMING = frozenset(words("late delayed traffic parking parked omw stuck way nearly almost"))
"""Words of one who is not there yet: `running late, ten min`."""
_SETS = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.NAME, Kind.FINISH, Kind.DONE)


def is_told_alone(marks: Sequence[Mark], place: int, end: int, *, timed: bool, away: Collection[str]) -> bool:
    """Whether a duration alone in its part is the time that there is, by the part beside it. `away`: words of what
    takes time instead.
    """
    start, stop = part_of(marks, place)
    around = [m for i, m in enumerate(marks[start:stop], start) if not place <= i < end]
    if timed and kind_at(marks, end - 1) is not Kind.HOURS:
        return False
    if any(m.kind not in (Kind.FILL, Kind.AT, Kind.FOR, Kind.SORRY) for m in around):
        return False
    if {w for m in around for w in words_of(m)} & {"now", "already", "since"}:
        return False
    if not any(m.kind in _SETS for i, m in enumerate(marks) if not place <= i < end):
        return not {w for m in _neighbour(marks, start - 1, -1) for w in words_of(m)} & (TOOK | _COMING)
    beside = [_neighbour(marks, start - 1, -1), _neighbour(marks, stop, 1)]
    said = [set() if _tells(part) else {w for m in part for w in words_of(m)} for part in beside]
    if any(m.kind is Kind.FINISH for m in marks) or any(
        words_here & set(away) - {"break", "in", "be"} for words_here in said
    ):
        return False
    if {w for m in around for w in words_of(m)} & {"once", "max", "tops", "only", "today", "tonight"}:
        return True
    if {"minute", "more"} <= said[1] | said[0]:
        return True
    value = marks[place].value
    long = kind_at(marks, end - 1) is Kind.HOURS or (value is not None and value >= _LEAST)
    talks = [bool(part) and _talks(part, words_here) for part, words_here in zip(beside, said, strict=True)]
    return long and talks[0]


def _tells(part: Sequence[Mark]) -> bool:
    """Whether a part tells sets."""
    return any(m.kind in (Kind.X, Kind.NUM) for m in part)


def _talks(part: Sequence[Mark], said: set[str]) -> bool:
    """Whether a part is talk, with no set in it: `my boss kept me`, `pushed for time`."""
    told = any(m.kind in (Kind.WORD, Kind.OTHERPERSON, Kind.OTHERTIME) for m in part) or bool(said & HAVING)
    return told and not any(m.kind in (*_SETS, Kind.X, Kind.SKIP) for m in part)


def _neighbour(marks: Sequence[Mark], edge: int, step: int) -> list[Mark]:
    """The part on the other side of an edge."""
    at = edge
    while 0 <= at < len(marks) and is_edge(marks, at):
        at += step
    if not 0 <= at < len(marks):
        return []
    start, end = part_of(marks, at)
    return list(marks[start:end])
