"""Where both sides of a set are told, each with its number: `left 10 reps right 9`, `10/9`, `same left, 6 right`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past, whole_number
from bot.notation.record import Record
from bot.notation.side_pairs.sides import ENDS, LEFT, RIGHT, Pair, Told, count_at, one_at, past_little, side_at
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise
from bot.training.report import Side, Stage

_OPENS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.THEN, Kind.ORD, Kind.SET, Kind.LASTSET, Kind.COLON,
          Kind.WAS, Kind.FILL, Kind.AND, Kind.NAME, Kind.KG, Kind.LB, Kind.S)  # fmt: skip
_LOWEST, _HIGHEST = Decimal("0.4"), Decimal("1.3")
"""Two bare numbers are both sides' within these parts of the planned range."""


@dataclass(frozen=True, slots=True)
class SoFar:
    """What was told of an exercise so far: how many sets of both sides, and whether any with each by itself."""

    sets: int = 0
    paired: bool = False
    in_order: bool = False
    """Whether the left was told first, so that `9 and 8` behind it is left, then right."""


def named_pair(marks: Sequence[Mark], at: int) -> Pair | None:
    """Both sides from here on, each with its number before it or each behind it."""
    side_first = side_at(marks, at) is not None
    one = one_at(marks, at, side_first=side_first)
    if one is None or kind_at(marks, at - 1) in (Kind.X, Kind.FOR) or _is_rated(marks, at):
        return None
    link = past_little(marks, one[1], Kind.COMMA, Kind.SLASH, Kind.THEN)
    two = one_at(marks, link, side_first=side_first)
    if two is None and any(m.kind in (Kind.COMMA, Kind.AND) or m.text == "but" for m in marks[one[1] : link]):
        two = one_at(marks, link, side_first=not side_first)
        two = two if two is not None and kind_at(marks, two[1]) in ENDS else None
    if two is None or two[0].side is one[0].side:
        return None
    alike = one[0].count.value == two[0].count.value and counts_sets(marks, two[1])
    if _goes_on(marks, two[1]) and not alike:
        return None
    load_first = not side_first and count_at(marks, two[1]) is not None
    if load_first and named_pair(marks, _next_side(marks, at)) is not None:
        return None
    overs = [m for m in (one[0].side_mark, two[0].side_mark) if m.kind is Kind.TANK]
    if overs and any("was" in m.text.split() for m in overs) and not side_first:
        return None
    return Pair(one[0], two[0], at, two[1])


def counts_sets(marks: Sequence[Mark], at: int) -> bool:
    """Whether it is said here how many sets were alike: the `two sets` of `right 8 left 8, two sets`, the `x2`."""
    at = past(marks, at, Kind.COMMA, Kind.FILL, Kind.FOR)
    by = kind_at(marks, at) in (Kind.X, Kind.LEADX)
    few = whole_number(marks, at + by, SEVERAL, FEW_SETS) is not None
    return few and (by or kind_at(marks, at + 1) in (Kind.SETS, Kind.SET, Kind.TIMES))


def _is_rated(marks: Sequence[Mark], at: int) -> bool:
    """Whether a word of effort stands before: the `left 2 right 1` of `10/9 rir left 2 right 1`."""
    while kind_at(marks, at - 1) in (Kind.FILL, Kind.WAS, Kind.COLON, Kind.WITH):
        at -= 1
    return kind_at(marks, at - 1) in (Kind.RPE, Kind.RIR, Kind.FEELS) or text_at(marks, at - 1) == "@"


def _goes_on(marks: Sequence[Mark], at: int) -> bool:
    """Whether what follows both sides is of the last number, or counts sets alike: `all three`, `3 sets`."""
    link = at + (kind_at(marks, at) is Kind.COMMA)
    counted = kind_at(marks, link) is Kind.NUM and kind_at(marks, link + 1) in (Kind.SETS, Kind.TIMES)
    return counted or kind_at(marks, link) is Kind.ALL or kind_at(marks, at) in _OF_NUMBER


_OF_NUMBER = (Kind.X, Kind.KG, Kind.LB, Kind.TANK)


def _next_side(marks: Sequence[Mark], at: int) -> int:
    return next((i for i in range(at + 1, len(marks)) if side_at(marks, i) is not None), len(marks))


def bare_pair(marks: Sequence[Mark], at: int, exercise: PlannedExercise, so: SoFar) -> Pair | None:
    """`10/9`, `12 + 12`: left, then right; behind sides that were named, `9 and 9` too."""
    one, two = count_at(marks, at), count_at(marks, at + 2)
    alike = one is not None and two is not None and one.value == two.value
    joins = (Kind.SLASH, Kind.AND, Kind.PLUS) if so.in_order else (Kind.SLASH, *([Kind.PLUS] if alike else []))
    opens = (*_OPENS, Kind.WITH, Kind.FOR, Kind.X, Kind.NUM) if so.paired else _OPENS
    if one is None or two is None or kind_at(marks, at + 1) not in joins or kind_at(marks, at - 1) not in opens:
        return None
    if _has_columns(marks):
        return None
    end = at + 3 + (kind_at(marks, at + 3) is Kind.REPS)
    planned = [reps for one_set in exercise.sets for reps in (one_set.reps.low, one_set.reps.high)]
    likely = all(min(planned) * _LOWEST <= (m.value or 0) <= max(planned) * _HIGHEST for m in (one, two))
    finish = any(s.finish is not None for s in exercise.sets)
    if not likely or finish or kind_at(marks, end) not in ENDS or one.value is None or two.value is None:
        return None
    return Pair(Told(Side.LEFT, one, one), Told(Side.RIGHT, two, two), at, end)


def _has_columns(marks: Sequence[Mark]) -> bool:
    """Whether the message says once which side each of two numbers is of: `16 (R/L): 10/9, 9/8`."""
    sides = (*LEFT, *RIGHT)
    kinds = [m.kind for m in marks]
    return any(
        kinds[i] in sides and kinds[i + 1] is Kind.SLASH and kinds[i + 2] in sides for i in range(len(kinds) - 2)
    )


def without_same(pair: Pair, record: Record, place: int, *, first: bool) -> Pair | None:
    """The pair with the repetitions of the set before for `same`; `None` where there is no such set.

    Told second, `same` is what the first side did.
    """
    if Kind.SAME not in (pair.one.count.kind, pair.two.count.kind):
        return pair
    if pair.one.count.kind is not Kind.SAME:
        return None
    last = record.last(place) if first else None
    if last is None:
        return None
    rows = [p for p in record.rows((last.exercise, last.set or 0)) if p.stage is Stage.WORK]
    sides = []
    for one in (pair.one, pair.two):
        reps = next((p.reps for p in rows if p.side in (None, one.side)), None)
        if one.count.kind is Kind.SAME and reps is None:
            return None
        count = one.count
        if count.kind is Kind.SAME:
            count = replace(count, kind=Kind.NUM, text=str(reps), value=Decimal(reps or 0), parts=())
        sides.append(replace(one, count=count))
    return replace(pair, one=sides[0], two=sides[1])
