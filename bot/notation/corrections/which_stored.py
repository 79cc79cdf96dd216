"""Words that name stored sets: `the last two`, `both press sets`, `sets 2 and 3`, `the first and last`, `all dips`.

A small grammar: it knows which sets of the exercise are stored, and names none where the words do not fit them.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_SETS = (Kind.SET, Kind.SETS)
_JOINS = (Kind.AND, Kind.COMMA, Kind.PLUS)
_RUNS = (Kind.DASH, Kind.TO, Kind.COLON)
_LASTS = frozenset(["last", "final", "previous", "latest", "prior"])
_FIRSTS = frozenset(["first", "opening"])
_NAMED = {"opener": 1, "opening": 1, "starter": 1, "middle": 2}
"""Words for one set, the middle one of three."""
NAMING = _LASTS | _FIRSTS | _NAMED.keys() | frozenset(("both", "every", "each", "couple", "#"))
"""Words that name stored sets, beside the kinds of a set, of its place among the others, and of all."""
_COUNTS = {"both": 2, "two": 2, "three": 3, "four": 4, "five": 5, "2": 2, "3": 3, "4": 4, "5": 5}


@dataclass(frozen=True, slots=True)
class Which:
    """The stored sets that words name, and the place behind these words."""

    sets: tuple[int, ...]
    end: int
    lasts: bool = False
    """Whether they are named as the last ones, which sets that are told now may be as well."""


def which_at(marks: Sequence[Mark], at: int, stored: Sequence[int]) -> Which | None:
    """The stored sets that the words from here name; `None` where none are named, or not so that they are known."""
    which = _every(marks, at, stored) or _so_many(marks, at, stored) or _listed(marks, at, stored)
    return None if which is None else replace(which, end=_past_sets(marks, which.end))


def _past_sets(marks: Sequence[Mark], at: int) -> int:
    """Behind `sets`, `ones`, `of them`."""
    while kind_at(marks, at) in _SETS or text_at(marks, at) in ("one", "ones", "of", "them", "of them", "of those"):
        at += 1
    return at


def _every(marks: Sequence[Mark], at: int, stored: Sequence[int]) -> Which | None:
    """`all`, `all three sets`, `both`, `both sets`, `the two sets`, `every leg press set`."""
    said = text_at(marks, at).split()
    counted = [_COUNTS[w] for w in said if w in _COUNTS]
    if (kind_at(marks, at) is Kind.ALL and said[:1] != ["a"]) or said[:1] == ["both"]:
        count, end = (counted[0], at + 1) if counted else _count(marks, at + 1)
        count = count if not counted or "both" not in said or not _count(marks, at + 1)[0] else 0
        return Which(tuple(stored), end if count else at + 1) if count in (0, len(stored)) else None
    named = kind_at(marks, at + 1) is Kind.NAME and kind_at(marks, at + 2) in _SETS
    if said in (["every"], ["each"]) and (kind_at(marks, at + 1) in _SETS or named):
        return Which(tuple(stored), at + 1)
    count, end = _count(marks, at)
    if count == len(stored) > 1 and kind_at(marks, end) in _SETS:
        led = next((m for m in reversed(marks[:at]) if m.text not in ("the", "my", "those", "these", "all")), None)
        return Which(tuple(stored), end) if led is None or led.kind not in (Kind.NUM, *_SETS) else None
    return None


def _so_many(marks: Sequence[Mark], at: int, stored: Sequence[int]) -> Which | None:
    """`the last two`, `final 2 sets`, `first two`, `last couple of sets`: the first or last ones."""
    said = set(text_at(marks, at).split())
    first, last = bool(said & _FIRSTS) or _is_first(marks, at), bool(said & _LASTS)
    if first == last or "rep" in said:
        return None
    count, end = (2, at + 1) if "couple" in said else _count(marks, at + 1)
    if not 1 < count <= len(stored):
        return None
    return Which(tuple(stored[:count] if first else stored[-count:]), end, lasts=last)


def _is_first(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.ORD and marks[at].value == 1


def _count(marks: Sequence[Mark], at: int) -> tuple[int, int]:
    """A small count here and the place behind it; 0 where there is none, or where it is a number of something else."""
    mark = marks[at] if at < len(marks) else None
    if mark is not None and mark.text == "couple":
        return 2, at + 1
    small = mark is not None and mark.kind is Kind.NUM and mark.value is not None and mark.value <= FEW_SETS
    if mark is None or not small or mark.value is None or mark.value != int(mark.value):
        return 0, at
    measured = kind_at(marks, at + 1) in (Kind.X, Kind.REPS, Kind.KG, Kind.LB, Kind.S)
    return (0, at) if measured else (int(mark.value), at + 1)


def _listed(marks: Sequence[Mark], at: int, stored: Sequence[int]) -> Which | None:
    """`set 2`, `sets 2 and 3`, `sets 1-3`, `the second and third`, `the first and last`, `the last one`."""
    sets: list[int] = []
    end = at
    while True:
        one = _single(marks, end, stored, numbered=bool(sets) and _numbers(marks, at))
        if one is None:
            break
        run = bool(sets) and kind_at(marks, end - 1) in _RUNS
        sets += range(sets[-1] + 1, one[0] + 1) if run else [one[0]]
        end = one[1]
        joined = kind_at(marks, end) in _JOINS or (kind_at(marks, end) in _RUNS and _numbers(marks, at))
        following = end + 1 + (text_at(marks, end + 1) in ("the", "my"))
        if not joined or _single(marks, following, stored, numbered=_numbers(marks, at)) is None:
            break
        end = following
    ordered = sets == sorted(set(sets)) and set(sets) <= set(stored)
    lasts = len(sets) == 1 and kind_at(marks, at) in (Kind.LASTSET, Kind.LASTREP)
    return Which(tuple(sets), end, lasts) if sets and ordered else None


def _numbers(marks: Sequence[Mark], at: int) -> bool:
    """Whether a list of sets is one of bare numbers: `sets 2 and 3`."""
    return kind_at(marks, at) in _SETS


def _single(marks: Sequence[Mark], at: int, stored: Sequence[int], *, numbered: bool) -> tuple[int, int] | None:
    """One set here and the place behind its words."""
    mark = marks[at] if at < len(marks) else None
    if mark is None:
        return None
    said = set(mark.text.split())
    if mark.kind in (Kind.LASTSET, Kind.LASTREP) and said & _LASTS and not said & {"rep", "before"}:
        return stored[-1], _past_sets(marks, at + 1)
    if mark.kind is Kind.ORD and mark.value is not None:
        return (int(mark.value), _past_sets(marks, at + 1)) if int(mark.value) in stored else None
    if mark.kind in _SETS or mark.text == "#":
        behind = at + 1 + (text_at(marks, at + 1) in ("number", "no", "#"))
        number, end = _count(marks, behind) if kind_at(marks, behind) is Kind.NUM else (0, at)
        return (number, end) if number in stored else None
    if said & _NAMED.keys() and mark.kind in (Kind.WORD, Kind.FILL):
        number = _NAMED.get(mark.text, 0)
        middle = number == 1 or len(stored) == number + 1
        return (number, _past_sets(marks, at + 1)) if number in stored and middle else None
    number, end = _count(marks, at) if numbered else (0, at)
    return (number, end) if number in stored else None
