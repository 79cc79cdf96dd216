"""Sets told alike but for one: `all 10s, 8 on the last`, `3x10 at 90 but the second was 9`, `as planned, last one 6`.

The one that differs is put right behind the others, in the words of a correction: `last was 8`. Where the sets that are
alike leave one open, a last one told behind a plain comma is that one, and nothing is changed.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.all_but import with_all_but
from bot.notation.clauses import kind_at
from bot.notation.exceptions.alike import Alike, alike_at, bound_behind, told_as, turns
from bot.notation.exceptions.apart import NAMING, One, one_at, was_before
from bot.notation.exceptions.of_session import each_planned, numbered, of_session
from bot.notation.kinds import Kind
from bot.notation.order.rated import rated_last
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise

_REACH = 100
"""Words behind which a name is not spoken of any more."""


def with_exceptions(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with a set that differs from those told alike before it as a correction of its own."""
    out = list(marks)
    if any(m.kind in (Kind.MEANT, Kind.SORRY, Kind.WROTE, Kind.SCRAP) for m in out):
        return out
    out = of_session(each_planned(with_all_but(rated_last(out))), under)
    if not any(m.kind in NAMING for m in out):
        return out
    at = 0
    while at < len(out):
        alike = alike_at(out, at)
        if alike is None:
            at += 1
            continue
        bound = bound_behind(out, alike.end)
        one = None if bound is None else one_at(out, bound + 1)
        opens = () if one is None else _open(out, at, record, under)
        grouped = bound is not None and any(m.kind is Kind.NUM for m in out[alike.end : bound])
        if bound is None or one is None or grouped or not _differs(out, bound, one, alike, len(opens)):
            at = alike.end
            continue
        place = _exercise(out, at, under)
        apart = [] if place is None else _told_apart(out, at, one, opens, record.exercises[place])
        if apart:
            out[at : one.end] = apart
            at += len(apart)
            continue
        said = _corrections(one, opens[: alike.count or len(opens)])
        stop = replace(out[bound], kind=Kind.STOP, text=".", value=None, parts=())
        after = _close(out, one.end)
        total = told_as(out[at : alike.end], alike, len(opens))
        between = [m for m in out[alike.end : bound] if m.kind is not Kind.AT]
        out[at : one.end] = [*total, *between, stop, *said]
        at += len(total) + len(between) + 1 + len(said) + after
    return out


def _close(out: list[Mark], end: int) -> int:
    """Makes what stands behind the sets told apart the end of their sentence; 1 where it does."""
    if kind_at(out, end) is Kind.CLOSE and kind_at(out, end + 1) in (Kind.COMMA, Kind.BREAK, Kind.STOP):
        out[end] = replace(out[end], kind=Kind.FILL)
        end += 1
    if kind_at(out, end) in (Kind.COMMA, Kind.BREAK):
        out[end] = replace(out[end], kind=Kind.STOP, text=".")
        return 1
    return 0


def _corrections(one: One, numbers: Sequence[int]) -> list[Mark]:
    """`last was 8`; of several, `set 3 was 9. set 4 was 9`."""
    name = one.name
    if name.count == 1:
        return [*name.marks, was_before(one.value[0]), *one.value]
    chosen = numbers[-name.count :] if name.last else numbers[: name.count]
    out: list[Mark] = []
    for number in chosen:
        first = name.marks[0]
        if out:
            out.append(replace(first, kind=Kind.LINE, text="", value=None, end=first.start))
        out += [replace(first, kind=Kind.SET, text="set", value=None, end=first.start),
                replace(first, kind=Kind.NUM, text=str(number), value=Decimal(number), parts=()),
                was_before(one.value[0]), *one.value]  # fmt: skip
    return out


def _open(marks: Sequence[Mark], at: int, record: Record, under: int | None) -> tuple[int, ...]:
    """The open sets of the exercise that is spoken of here; none where none is known."""
    place = _exercise(marks, at, under)
    return () if place is None else record.context(place).open_sets


def _exercise(marks: Sequence[Mark], at: int, under: int | None) -> int | None:
    """The exercise that is spoken of here."""
    named = [m.names[0] for m in marks[max(0, at - _REACH) : at] if m.kind is Kind.NAME and len(m.names) == 1]
    behind = [m.names[0] for m in marks[at : at + 12] if m.kind is Kind.NAME and len(m.names) == 1]
    return named[-1] if named else behind[0] if behind and kind_at(marks, at - 1) is None else under


def _told_apart(
    marks: Sequence[Mark], at: int, one: One, opens: Sequence[int], exercise: PlannedExercise
) -> list[Mark]:
    """`as planned up to the last, that was 260x2` where the plan has a range for the last: `set 1 as planned, set 2 as
    planned, set 3 260x2`; nothing where the plan has one number for it, as then all are told first and it is put right.
    """
    planned = marks[at]
    chosen = opens[-one.name.count :] if one.name.last else [one.name.number + n for n in range(one.name.count)]
    sets = exercise.sets
    open_ended = any(0 < n <= len(sets) and sets[n - 1].reps.low != sets[n - 1].reps.high for n in chosen)
    others = [n for n in opens if n not in chosen]
    fixed = all(0 < n <= len(sets) and sets[n - 1].reps.low == sets[n - 1].reps.high for n in others)
    if planned.kind is not Kind.PLANNED or not (open_ended and fixed and others):
        return []
    out: list[Mark] = []
    for number in opens:
        first = planned if number in others else one.value[0]
        told = [planned] if number in others else one.value
        comma = replace(first, kind=Kind.COMMA, text=",", value=None, parts=(), start=told[-1].end)
        out += [*numbered(first, number), *told, comma]
    return out[:-1]


def _differs(marks: Sequence[Mark], bound: int, one: One, alike: Alike, count: int) -> bool:
    """Whether the sets are of those told alike, and not those that they leave."""
    but = any(turns(m) for m in marks[bound : one.end])
    if alike.count is None:
        return count > one.name.count
    if not one.name.last and one.name.count == 1:
        return one.name.number <= alike.count
    return alike.count > one.name.count and (but or alike.count >= count)
