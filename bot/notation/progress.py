"""How far a client is, beside what is stored: what is said to be done, less that, is what the message tells."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import SEVERAL
from bot.notation.how_far import HowFar, Session, how_far
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark
from bot.training.report import Stage


@dataclass(frozen=True, slots=True)
class Progress:
    """The marks without it; how many sets are said to be done, and the mark that says so (`None`: not said)."""

    marks: list[Mark]
    done: int | None = None
    at: Mark | None = None
    goes_on: bool = False
    """Whether a set that is told behind it is named: `2 down both 155 for 5, third one 4`."""


def read_progress(marks: Sequence[Mark], record: Record, under: int | None) -> Progress:
    """How far the client says to be. Before sets that follow, it becomes how many they are."""
    out = list(marks)
    exercise = _place_of(out, under)
    if sum(m.kind in NUMBERS or m.kind is Kind.ORD for m in out) < SEVERAL:
        return Progress(out)
    stored = 0 if exercise is None else _stored(record, exercise)
    planned = 0 if exercise is None else len(record.exercises[exercise].sets)
    beside = Session(0 if exercise is None else _told_apart(record, exercise), stored + 1)
    done: int | None = None
    at: Mark | None = None
    place = 0
    while place < len(out):
        found = how_far(out, place, beside)
        if found is None:
            place += 1
            continue
        if found.done is not None:
            done, at = found.done, out[place]
        elif found.left is not None and planned - found.left == stored + 1:
            out = [replace(m, kind=Kind.FILL) if m.kind is Kind.WAS else m for m in out]
        new = 0 if exercise is None else _new(out, place, found, stored)
        place = _take(out, place, found.end, new)
    named = (Kind.ORD, Kind.LASTSET)
    goes_on = at is not None and any(m.kind in named and m.start > at.end for m in out)
    return Progress(out, done, at, goes_on)


def _take(out: list[Mark], place: int, end: int, new: int) -> int:
    """Takes the words out, puts how many sets are `new` (1 or fewer: nothing) in their place; where to go on."""
    before = place - 1
    while before >= 0 and out[before].kind is Kind.FILL and place - before < _NEAR:
        before -= 1
    if before >= 0 and out[before].kind is Kind.WAS:
        out[before] = replace(out[before], kind=Kind.GAP)
    gone = [
        m if m.kind is Kind.NAME else replace(m, kind=Kind.GAP, value=None, parts=(), names=()) for m in out[place:end]
    ]
    if new > 1 and end < len(out) and out[end].kind is Kind.STOP:
        out[end] = replace(out[end], kind=Kind.COLON)
    names = [m for m in gone if m.kind is Kind.NAME]
    rest = [m for m in gone if m.kind is not Kind.NAME]
    said = [*names, *(_counted(out[place], new) if new > 1 else []), *rest]
    out[place:end] = said
    return place + len(said)


_NEAR = 3
"""Little words before a count of sets that are looked past for the `was` that leads it."""


def _counted(mark: Mark, count: int) -> list[Mark]:
    number = replace(mark, kind=Kind.NUM, value=Decimal(count), text=str(count), parts=())
    return [number, replace(mark, kind=Kind.SETS, text="sets", value=None, parts=(), start=mark.end)]


def _told_apart(record: Record, place: int) -> int:
    """How many sets the plan has, where so many repetitions are none that it asks for: `4 of 5` may be either."""
    context = record.context(place)
    count = len(record.exercises[place].sets)
    return 0 if any(context.range_of(n).high == count for n in context.open_sets) else count


def _place_of(marks: Sequence[Mark], under: int | None) -> int | None:
    named = [m.names[0] for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
    if len(set(named)) > 1:
        return under if under in named else None
    return named[0] if named else under


def _stored(record: Record, place: int) -> int:
    return len({p.set for p in record.context(place).worked})


def _new(marks: Sequence[Mark], place: int, found: HowFar, stored: int) -> int:
    """How many sets the message tells behind its progress; 0 where that is not said, or none are told there."""
    if found.done is None or any(m.kind in NUMBERS for m in marks[:place]):
        return 0
    return found.done - stored if any(m.kind in NUMBERS for m in marks[found.end :]) else 0


def contradicted(progress: Progress, record: Record) -> Mark | None:
    """The mark that says how many sets are done, where the sets that are kept are another number."""
    names = {one.row.exercise for one in record.told if one.row.stage is Stage.WORK}
    if progress.done is None or len(names) != 1:
        return None
    place = record.place_of(next(iter(names)))
    if place is None or (progress.goes_on and _stored(record, place) > progress.done):
        return None
    return progress.at if _stored(record, place) != progress.done else None
