"""What stands beside the load and the count of a set: efforts, remarks, things weighed, the repetition not made."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.load_apart.words import (
    GONE,
    HAD,
    OF_IT,
    OF_SETS,
    REASONS,
    REMARKS,
    TAKING_BACK,
    TELLING,
    UNREAL,
    VAGUE,
)
from bot.notation.masking import masked
from bot.notation.order.near import UNITS, past
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle
from bot.training.units import Load, Unit

_IDLE = (Kind.ALL, Kind.NOT, Kind.SORRY, Kind.WROTE, Kind.X, Kind.MORE, Kind.REPS, Kind.TANK, *UNITS)
"""Kinds that say nothing of a set in a remark without numbers: `not my day`, `felt ok actually`, `i put a towel`."""
_THINGS = frozenset(("one", "ones", "bar", "bars", "barbell", "plates", "trainer"))
_NUMBERED = (Kind.NUM, Kind.S, Kind.EACH, *UNITS)


def words_of(marks: Sequence[Mark]) -> Iterator[str]:
    """The words beside the numbers of marks."""
    return (word for m in marks if m.kind is not Kind.NUM for word in m.text.split() if word.isalpha())


def unit_of(mark: Mark, context: Context) -> Unit:
    """The unit that a mark names, or that of the client."""
    return {Kind.KG: Unit.KG, Kind.LB: Unit.LB}.get(mark.kind, context.unit)


def remark(part: Sequence[Mark]) -> tuple[Mark, ...] | None:
    """The part as a remark; `None` where a word of it tells more of the set beside it, or takes it back."""
    told = set(words_of(part))
    linked = any(m.kind is Kind.X and m.text != "by" for m in part)
    if linked or not all(m.kind in TELLING for m in part) or told <= OF_SETS or told & TAKING_BACK:
        return None
    return tuple(replace(m, kind=Kind.FILL) if m.kind in _IDLE else m for m in part)


def remark_behind(marks: Sequence[Mark], at: int, known: frozenset[str], kinds: Sequence[Kind]) -> int | None:
    """Where a remark begins behind known words, or the end; `None` where something else stands there."""
    while at < len(marks):
        first = text_at(marks, at).split()[:1]
        if first and first[0] in REMARKS and marks[at].kind in TELLING:
            rest = marks[at:]
            plain = remark(rest) is not None and not any(m.kind in (Kind.NUM, Kind.NAME) for m in rest)
            if plain and not set(words_of(rest)) - set(first) & UNREAL:
                return at
        if not are_known(marks[at : at + 1], known, kinds):
            return None
        at += 1
    return at


def are_known(marks: Sequence[Mark], known: frozenset[str], kinds: Sequence[Kind]) -> bool:
    """Whether the marks are of these kinds, and their words known, or without bearing."""
    for mark in marks:
        told = set(words_of([mark]))
        if mark.kind not in kinds or not (told <= known or (mark.kind is Kind.FILL and not told & VAGUE)):
            return False
    return True


def told_beside(marks: Sequence[Mark], context: Context) -> tuple[Mark, ...] | None:
    """A part whose numbers are told by their words to be no set's, as a remark; `None` where it may tell one.

    `rested 3 min`, `bc 60 was a joke`, `had the 15kg bar instead`, `someone nicked the 60s`, `thats 1.25 each side`.
    """
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    if not numbers or any(m.kind is Kind.BODY for m in marks):
        return None
    if all(kind_at(marks, i + 1) in (Kind.MINUTES, Kind.HOURS) for i in numbers):
        return remark(marks)
    if len(numbers) > 1:
        return None
    behind = marks[numbers[0] + 1 :]
    reason = text_at(marks, past(marks, 0, Kind.GAP)) in REASONS
    judged = reason and any(m.kind is Kind.WAS or m.text in REMARKS for m in behind)
    by_others = any(m.kind is Kind.OTHERPERSON for m in marks[: numbers[0]]) and bool(HAD & set(words_of(marks)))
    taken = by_others or (any(m.kind is Kind.WAS for m in behind) and bool(GONE & set(words_of(behind))))
    sided = kind_at(behind, 0) is Kind.EACH and marks[0].kind is Kind.WAS and numbers == [1]
    sided = sided and context.exercise.load_style is LoadStyle.TOTAL and context.exercise.sides == 1
    meant = any(m.kind is Kind.OTHERTIME and m.text != "back to" for m in marks[: numbers[0]])
    compared = kind_at(behind, 0) is Kind.MORE and "than" in words_of(behind)
    if judged or taken or sided or compared or meant or _is_of_kit(marks, numbers[0], context):
        return remark(masked(marks, [i for i, m in enumerate(marks) if m.kind in _NUMBERED]))
    return None


def _is_of_kit(marks: Sequence[Mark], at: int, context: Context) -> bool:
    """Whether a number weighs a thing, and is out of reason as a load: `i had the 15kg bar instead`."""
    if kind_at(marks, at + 1) not in UNITS or text_at(marks, at + 2) not in _THINGS or context.is_bodyweight:
        return False
    value = marks[at].value
    before = [p.load for p in context.worked]
    return value is not None and not context.is_load_in_reason(
        Load.of(value, unit_of(marks[at + 1], context)), None, before, signed=False
    )


def effort_alone(marks: Sequence[Mark]) -> tuple[Mark, ...]:
    """The effort that is all of a part: `rir 1`, `could have had two more on that triple`."""
    start = past(marks, 0, Kind.FILL, Kind.WITH, Kind.AND)
    end = effort_end(marks, start)
    numbered = any(m.kind is Kind.NUM for m in marks[end:])
    alone = end > start and not numbered and set(words_of(marks[end:])) <= OF_IT
    if alone and marks[start].kind is Kind.FAILED:  # `missed the last one`: then none was left
        return (replace(marks[start], kind=Kind.EMPTY, text="to failure"),)
    return tuple(marks[:end]) if alone else ()


def effort_end(marks: Sequence[Mark], at: int) -> int:
    """Where an effort that starts at a place ends; the place itself where none does."""
    value = next((m.value for m in marks[at : at + 2] if m.kind is Kind.NUM), None)
    rated = value is not None and EASIEST <= value <= HARDEST
    spare = value is not None and value <= MOST_LEFT
    match [m.kind for m in marks[at : at + 3]]:
        case [Kind.RPE | Kind.FEELS, Kind.NUM, *_] if rated:
            return at + 2
        case [Kind.AT, Kind.NUM, *_] if rated and text_at(marks, at) == "@":
            return at + 2
        case [Kind.NUM, Kind.RPEPOST, *_] if rated:
            return at + 2
        case [Kind.RIR, Kind.NUM, *_] | [Kind.NUM, Kind.TANK | Kind.RIRPOST, *_] if spare:
            return at + 2
        case [Kind.COULD, Kind.NUM, Kind.MORE, *_] if spare:
            return at + 3
        case [Kind.EMPTY, *_]:
            return at + 1
        case [Kind.FAILED, Kind.LASTREP, *_]:
            return at + 2
        case _:
            return at


def failed_rep(marks: Sequence[Mark]) -> tuple[Mark, ...]:
    """`missed rep 3`, `failed the third`: the repetition that was not made, with its number."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    kinds = [m.kind for m in said]
    plain = kinds[:1] == [Kind.FAILED] and kinds[1:2] in ([Kind.NUM], [Kind.ORD]) and kinds[2:] in ([], [Kind.REPS])
    return tuple(said) if plain else ()
