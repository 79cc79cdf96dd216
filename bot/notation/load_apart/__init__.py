"""One set whose load and count stand apart: `Only 95 because it slips. Ten times`, `got four, legs like sand. At 92.5`.

Where a message tells one load and one count, each in a part of its own, and all its other parts tell no set, the two
are one set: nothing else fits. They are put side by side, with the set's number and effort if one is told. Several
counts in a row behind one load are its sets.
"""

from collections.abc import Sequence

from bot.notation.answer import Request
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.load_apart.amounts import Amount
from bot.notation.load_apart.cutting import is_apart, parts_of
from bot.notation.load_apart.parts import Part, Tells, read_part
from bot.notation.quick import replace
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise

_LONGEST = 60
"""Marks of a message that tells one set and talk: a longer one tells more."""
_MOST_NUMBERS = 6
_UNFIT = frozenset(
    (Kind.MEANT, Kind.SCRAP, Kind.SETS, Kind.SAMELOAD, Kind.SAMEREPS,
     Kind.MINI, Kind.WARMUP, Kind.THEREST, Kind.EXCEPT, Kind.BAD, Kind.CLOCK, Kind.ARROW, Kind.SLASH,
     Kind.L, Kind.R, Kind.ANOTHER, Kind.BAND, Kind.ASSIST,
     Kind.MINUS, Kind.OR, Kind.DROPPED, Kind.UNITALL, Kind.PLANNED, Kind.HAND)
)  # fmt: skip
"""Kinds of a message that tells more than one set, or changes what was told."""


def with_set_joined(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with such a set told at once."""
    numbers = sum(m.kind in (Kind.NUM, Kind.BODY) for m in marks)
    if not 1 < numbers <= _MOST_NUMBERS or len(marks) > _LONGEST or any(m.kind in _UNFIT for m in marks):
        return list(marks)
    cut = list(parts_of(marks))
    context = _context([m for part in cut if not is_apart(part) for m in part.marks], request)
    if context is None or (any(m.kind is Kind.DROP for m in marks) and any(s.finish for s in context.exercise.sets)):
        return list(marks)
    parts: list[Part] = []
    for part in cut:
        read = Part(Tells.REMARK, Amount((), remark=part.marks)) if is_apart(part) else read_part(part.marks, context)
        if read is None or (part.end is not None and read.tells is not Tells.REMARK):
            return list(marks)
        asked = () if part.end is None else (part.end,)
        parts.append(replace(read, amount=replace(read.amount, remark=(*read.amount.remark, *asked))))
    joined = _joined(parts, context)
    return list(marks) if joined is None else joined


def _context(marks: Sequence[Mark], request: Request) -> Context | None:
    """The exercise of the set: the one that is named, else the one under way; `None` where several are."""
    named = {place for m in marks if m.kind is Kind.NAME for place in m.names}
    if len(named) > 1:
        return None
    if named:
        return _of_exercise(request.exercises[named.pop()], request)
    current = next((e for e in request.exercises if e.name == request.current), None)
    if current is not None:
        return _of_exercise(current, request)
    contexts = (_of_exercise(e, request) for e in request.exercises)
    return next((c for c in contexts if c.open_sets), None)


def _of_exercise(exercise: PlannedExercise, request: Request) -> Context:
    """An exercise with its sets that are done."""
    return Context(exercise, request.unit, tuple(p for p in request.done if p.exercise == exercise.name))


def _joined(parts: Sequence[Part], context: Context) -> list[Mark] | None:
    """The marks of the parts with the set at once; `None` where there is not one load and one count."""
    loads, counts, wholes, failed = (
        [i for i, p in enumerate(parts) if p.tells is tells]
        for tells in (Tells.LOAD, Tells.COUNT, Tells.WHOLE, Tells.FAILED)
    )
    which = [p.which for p in parts if p.which]
    rated = [i for i, p in enumerate(parts) if p.amount.effort]
    named = [p.name for p in parts if p.name is not None]
    names = named[:1] if len({m.names for m in named}) == 1 else named
    if len(loads) == 1 and (len(counts) > 1 or wholes) and not (which or rated or failed) and len(names) <= 1:
        sets = _several(parts, loads[0], counts, wholes, context)
        return None if sets is None else _among_remarks(parts, max(loads + counts + wholes), [*names, *sets])
    if max(len(loads), len(counts), len(wholes), len(which), len(names)) > 1 or len(rated) + len(failed) > 1:
        return None
    early = bool(rated) and bool(context.worked) and rated[0] < min((*loads, *counts), default=0)
    if loads and counts and not wholes and not early:
        load, count = parts[loads[0]].amount, parts[counts[0]].amount
        undone = bool(failed) and not _is_made(parts[failed[0]], parts[counts[0]])
        if undone or (counts < loads and _are_two_sets(load, count, context)):
            return None
        said = [*load.said, Mark(Kind.X, "x", load.said[-1].end, load.said[-1].end), *count.said]
    elif len(loads) + len(counts) + len(wholes) == 1 and _is_rated_before(parts, context):
        said = [m for p in parts for m in p.amount.said if p.tells is not Tells.FAILED]
    else:
        return None
    effort = parts[rated[0]].amount.effort if rated else ()
    if failed:
        effort = (replace(parts[failed[0]].amount.said[0], kind=Kind.EMPTY, text="to failure"),)
    at, end = said[0].start, said[-1].end
    told = [*names, *(*which[0], Mark(Kind.COLON, ":", at, at))] if which else names
    told += [*said, *((Mark(Kind.COMMA, ",", end, end), *effort) if effort else ())]
    return _among_remarks(parts, max(loads + counts + wholes), told)


def _several(
    parts: Sequence[Part], load: int, counts: Sequence[int], wholes: Sequence[int], context: Context
) -> list[Mark] | None:
    """Sets whose load is told first: `belt with 7.5 on it today. 6, 6, 5`, `using 30 today. 30x12`."""
    told = counts or wholes
    listed = list(told) == list(range(told[0], told[-1] + 1)) and len(told) <= len(context.open_sets)
    if load > told[0] or (counts and wholes) or not listed:
        return None
    alike = {tuple(m.kind for m in parts[i].amount.said) for i in counts}
    if len(alike) > 1 or any(parts[i].amount.led for i in counts[1:]):  # `60, 20 m, three times`
        return None
    heading = [m for m in parts[load].amount.said if m.value is not None]
    again = [next((m.value for m in parts[i].amount.said if m.value is not None), None) for i in wholes]
    if any([m.value for m in heading] != [value] for value in again):
        return None
    out: list[Mark] = [] if wholes else [*parts[load].amount.said]
    out += [] if wholes else [Mark(Kind.X, "x", out[-1].end, out[-1].end)]
    for place in told:
        said = parts[place].amount.said
        out += [*([Mark(Kind.COMMA, ",", said[0].start, said[0].start)] if place > told[0] else ()), *said]
    return out


def _among_remarks(parts: Sequence[Part], at: int, told: Sequence[Mark]) -> list[Mark]:
    """The marks of the set where its last part stands, each remark a sentence of its own."""
    bare = any(m.kind is Kind.BODY for m in told)  # whose reason, `no belt here`, tells no load again
    out: list[Mark] = []
    for place, part in enumerate(parts):
        remark = [m for m in part.amount.remark if not (bare and m.kind is Kind.NO)]
        for marks in (told if place == at else (), remark):
            parted = out and marks and out[-1].kind is not Kind.QUERY and marks[0].kind is not Kind.QUERY
            out += [*([Mark(Kind.STOP, ".", marks[0].start, marks[0].start)] if parted else ()), *marks]
    return out


def _is_rated_before(parts: Sequence[Part], context: Context) -> bool:
    """Whether the effort of a set stands before it, and no other can be meant: `rpe 8. 150x3`, `missed rep 3. 70x2`."""
    at = next(i for i, p in enumerate(parts) if p.tells in (Tells.LOAD, Tells.COUNT, Tells.WHOLE))
    failed = next((p for p in parts[:at] if p.tells is Tells.FAILED), None)
    if failed is not None:
        last = context.worked[-1].reps if context.worked else None
        return _is_made(failed, parts[at]) and not any(m.value == last for m in parts[at].amount.said)
    return any(p.amount.effort for p in parts[:at]) and not context.worked


def _is_made(failed: Part, told: Part) -> bool:
    """Whether the repetition that failed is the one after those that are told."""
    after = [m.value - 1 for m in failed.amount.said if m.value is not None]
    return any(m.value in after for m in told.amount.said)


def _are_two_sets(load: Amount, count: Amount, context: Context) -> bool:
    """Whether a count and a load behind it may be two sets: `5. 82.5`, where the plan fixes what the load lacks; `9.
    Went up to 95`."""
    asked = context.range_of(None)
    return load.changes or (not (count.led or load.led) and asked.low == asked.high)
