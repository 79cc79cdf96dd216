"""What one part of a message tells of a set: its load, its count, which set it was, its effort, or nothing of it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.notation.clauses import kind_at, text_at
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.load_apart.amounts import NOTHING, Amount, read_count, read_load, read_whole
from bot.notation.load_apart.beside import effort_alone, failed_rep, remark, told_beside
from bot.notation.order.near import past
from bot.notation.tokens import Mark

_TOLD = (Kind.NUM, Kind.BODY, Kind.EMPTY, Kind.FAILED)
_LEADS = (Kind.WITH, Kind.FOR, Kind.AT)
_COUNTS = (Kind.REPS, Kind.TIMES, Kind.SECONDS, Kind.METRES, Kind.TANK, Kind.MORE)


class Tells(Enum):
    """What a part tells; `WHOLE`: load and count at once, `FAILED`: the repetition that was not made."""

    LOAD = auto()
    COUNT = auto()
    WHOLE = auto()
    WHICH = auto()
    EFFORT = auto()
    FAILED = auto()
    REMARK = auto()


@dataclass(frozen=True, slots=True)
class Part:
    """A part of a message: what it `tells`, with its amount; the marks that name its set (`which`) or exercise."""

    tells: Tells
    amount: Amount = NOTHING
    which: tuple[Mark, ...] = ()
    name: Mark | None = None


def read_part(part: Sequence[Mark], context: Context) -> Part | None:
    """What a part tells of a set of the exercise; `None` where it is not clear."""
    part = [_as_meant(part, i, context) for i in range(len(part))]
    marks, name = _without_name(part)
    failed = failed_rep(marks)
    if failed:
        return Part(Tells.FAILED, Amount(failed), name=name)
    effort = effort_alone(marks)
    if effort:
        return Part(Tells.EFFORT, Amount((), effort), name=name)
    marks, which = _without_which(marks)
    if which is None:
        return None
    if not any(m.kind in _TOLD for m in marks):
        return _without_numbers(part, marks, which, name)
    beside = told_beside(marks, context)
    if beside is not None:
        return Part(Tells.REMARK, Amount((), remark=beside))
    for tells, found in (
        (Tells.LOAD, read_load(marks, context)),
        (Tells.COUNT, read_count(marks, context)),
        (Tells.WHOLE, read_whole(marks)),
    ):
        if found is not None:
            return Part(tells, found, which, name)
    return None


def _without_numbers(
    part: Sequence[Mark], marks: Sequence[Mark], which: tuple[Mark, ...], name: Mark | None
) -> Part | None:
    """A heading, a remark, or both: `set two`, `legs like jelly`, `set two: bar felt glued to the floor`."""
    if (which or name) and all(m.kind in (Kind.FILL, Kind.COLON, Kind.SET, Kind.DONE) for m in marks):
        return Part(Tells.WHICH, which=which, name=name)
    told = remark(marks if which else part)
    if told is None or [m.kind for m in which] == [Kind.ORD]:  # `5th died halfway` is of a repetition
        return None
    amount = Amount((), remark=told)
    return Part(Tells.WHICH, amount, which, name) if which else Part(Tells.REMARK, amount)


def _as_meant(part: Sequence[Mark], place: int, context: Context) -> Mark:
    """The `one` of `the older one by the window` as a word; the `left` of `8, 2 left`, no side, as in reserve."""
    mark = part[place]
    if mark.text == "one" and place > 0 and kind_at(part, place + 1) not in _COUNTS:
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.LEFT and kind_at(part, place - 1) is Kind.NUM and context.exercise.sides == 1:
        return replace(mark, kind=Kind.TANK)
    return mark


def _without_name(part: Sequence[Mark]) -> tuple[list[Mark], Mark | None]:
    """A part without the exercise that it names: `thrusts at 95`, `95 on thrusts today`, `6 chins`."""
    at = past(part, 0, Kind.FILL)
    if kind_at(part, at) is Kind.NAME and len(part[at].names) == 1:
        return [*part[:at], *part[at + 1 :]], part[at]
    inside = next((i for i, m in enumerate(part) if m.kind is Kind.NAME and len(m.names) == 1), 0)
    linked = inside > 0 and part[inside - 1].kind in (*_LEADS, Kind.FILL)
    if linked and (inside == len(part) - 1 or part[inside - 1].text == "on"):
        return [*part[: inside - 1], *part[inside + 1 :]], part[inside]
    counted = len(part) > 1 and part[-1].kind is Kind.NAME and part[-2].kind is Kind.NUM and len(part[-1].names) == 1
    return (list(part[:-1]), part[-1]) if counted else (list(part), None)


def _without_which(part: Sequence[Mark]) -> tuple[list[Mark], tuple[Mark, ...] | None]:
    """A part without the words that say which set it was: `92.5 on the third`, `set two: got 4`; `None` for two."""
    found: list[tuple[int, int]] = []
    for place, mark in enumerate(part):
        numbered = mark.kind is Kind.SET and mark.text == "set" and kind_at(part, place + 1) is Kind.NUM
        if numbered and (place == 0 or kind_at(part, place + 2) in (Kind.COLON, None)):
            found.append((place, place + 2))
        elif mark.kind in (Kind.ORD, Kind.LASTSET):
            found.append((place, place + 1 + (kind_at(part, place + 1) is Kind.SET)))
    if len(found) != 1:
        return list(part), None if found else ()
    start, end = found[0]
    which = tuple(part[start:end])
    end += text_at(part, end) in ("one", "go", "time")
    end += kind_at(part, end) is Kind.COLON
    while start > 0 and (part[start - 1].kind in _LEADS or text_at(part, start - 1) == "the"):
        start -= 1
    return [*part[:start], *part[end:]], which
