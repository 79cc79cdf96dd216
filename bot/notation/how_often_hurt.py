"""How often and how fast a hurt came, `two times already`, `in one second`, and a set that is told behind it.

The numbers in these are no sets: they stand in the part of a hurt, or behind it in one that tells of no exercise.
"""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SO_FAR = frozenset(words("already today now since tonight so this in"))
_LED = frozenset(words("in within after"))
_OWN = frozenset(words("my those these them"))
_TRAINED = frozenset(words("set sets rep reps round rounds lift lifts exercise exercises best"))


def told_how_often(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """The places of all of these."""
    out: set[int] = set()
    for place, mark in enumerate(marks) if hurt else ():
        if mark.kind in (Kind.NUM, Kind.ORD) and kind_at(marks, place + 1) is Kind.TIMES:
            told = bool(_SO_FAR & set(text_at(marks, place + 2).split()[:1])) and _is_behind(marks, place)
        elif mark.kind is Kind.NUM and mark.value == 1:
            told = _in_a_second(marks, place) or _is_one_of(marks, place)
        else:
            continue
        if told and _is_hurt_near(marks, place, hurt):
            out |= {place} if text_at(marks, place + 1) == "of" else {place, place + 1}
    return out


def _is_behind(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing is counted before it in its part: `60 x two times today` is of a set."""
    start, _ = part_of(marks, place)
    return not any(m.kind in (Kind.NUM, Kind.NAME, Kind.X) for m in marks[start:place])


def _in_a_second(marks: Sequence[Mark], place: int) -> bool:
    led = text_at(marks, place - 1).split()[-1:]
    return kind_at(marks, place + 1) is Kind.SECONDS and bool(_LED & set(led))


def _is_one_of(marks: Sequence[Mark], place: int) -> bool:
    said = " ".join(m.text for m in marks[place + 1 : place + 6]).split()
    return said[:1] == ["of"] and bool(_OWN & set(said[1:2])) and not _TRAINED & set(said)


def _is_hurt_near(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    """Whether a hurt is told in its part, or in the one before."""
    start, end = part_of(marks, place)
    first = part_of(marks, start - 2)[0] if start > 1 else start
    return any(p in hurt for p in range(first, end))


_COUNTED = (Kind.X, Kind.FOR, Kind.AT, Kind.KG, Kind.LB, Kind.REPS)
_RIGHTED = (Kind.SORRY, Kind.MEANT, Kind.WROTE)
_WRONG = frozenset(words("actually wrong instead mistake typo oops should meant no sorry correction"))


def set_that_was(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """The `that was` of `nearly went down. that was 60 for 10`: behind a hurt alone it tells a set and rights none."""
    first = next((p for p, m in enumerate(marks) if m.kind is Kind.WAS and m.text in ("that was", "it was")), 0)
    if not first or not hurt or kind_at(marks, first + 1) is not Kind.NUM or min(hurt) > first:
        return set()
    before = marks[:first]
    told = any(m.kind is Kind.NUM and kind_at(marks, p + 1) in _COUNTED for p, m in enumerate(before) if p not in hurt)
    starts = part_of(marks, first)[0] == first or kind_at(marks, first - 1) in (Kind.STOP, Kind.LINE)
    righted = any(m.kind in _RIGHTED for m in before)
    righted |= any(m.kind in (*_RIGHTED, Kind.NOT) or _WRONG & set(m.text.split()) for m in marks[first:])
    return set() if told or righted or not starts else {first}
