"""A set that tells only how hard it was, behind one that is rated: `90x4 @7, next one @8 same weight`.

It repeats the set before it. Where the set before has no effort yet, the effort may be of that one: nothing is changed.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_WORDS = (Kind.RPE, Kind.RIR, Kind.FEELS)
_BEHIND = (Kind.RPE, Kind.RIR, Kind.TANK)
_LITTLE = (Kind.FILL, Kind.WAS, Kind.AND, Kind.THEN, Kind.SET)
_ONE_MORE = (Kind.ANOTHER, Kind.AGAIN, Kind.SAMELOAD, Kind.SAMEREPS)
_NEXT = ("next", "next one", "the next", "next set", "then another", "and another", "and then another")
_COUNTED = (Kind.SETS, Kind.TIMES, Kind.ALL, Kind.SAME, Kind.LASTSET)
_ENTRY = (Kind.NUM, Kind.BODY)


def rated_again(marks: list[Mark]) -> list[Mark]:
    """The marks with `same` before each such effort, in place of the words that lead it."""
    out: list[Mark] = []
    told, rated = 0, False
    for start, end in _parts(marks):
        part = marks[start:end]
        at = _effort_at(part)
        asked = kind_at(marks, end) is Kind.QUERY
        if at is not None and rated and not asked and _leads(part, at, told + 1):
            effort = part[at[0] : at[1]]
            same = replace(effort[0], kind=Kind.SAME, text="same", value=None, parts=(), end=effort[0].start)
            part = [same, *effort]
            told += 1
        elif any(m.kind in _ENTRY for m in part):
            told = 1 if any(m.kind is Kind.NAME for m in part) else told + 1
            rated = _is_rated_set(part, at, told)
        out += [*part, *marks[end : end + 1]]
    return out


def _parts(marks: Sequence[Mark]) -> Iterator[tuple[int, int]]:
    """Where each part starts and ends."""
    start = 0
    for place, mark in enumerate(marks):
        if mark.kind in EDGES:
            yield start, place
            start = place + 1
    yield start, len(marks)


def _effort_at(part: Sequence[Mark]) -> tuple[int, int] | None:
    """Where the only effort of a part stands: `@8`, `rpe 8`, `2 rir`."""
    found = []
    for place, mark in enumerate(part):
        if mark.kind is not Kind.NUM or mark.value is None or mark.value > 10:
            continue
        before, after = kind_at(part, place - 1), kind_at(part, place + 1)
        if before in _WORDS or (before is Kind.AT and part[place - 1].text == "@"):
            found.append((place - 1, place + 1))
        elif after in _BEHIND and before not in (Kind.X, Kind.FOR):
            found.append((place, place + 2))
    return found[0] if len(found) == 1 else None


def _leads(part: Sequence[Mark], effort: tuple[int, int], number: int) -> bool:
    """Whether nothing but words of a set more stands beside an effort: `next one`, `second` of one, `same weight`."""
    rest = [*part[: effort[0]], *part[effort[1] :]]
    more = [m for m in rest if m.kind in _ONE_MORE or m.text in _NEXT or (m.kind is Kind.ORD and m.value == number)]
    return bool(more) and all(m in more or m.kind in _LITTLE for m in rest)


def _is_rated_set(part: Sequence[Mark], effort: tuple[int, int] | None, number: int) -> bool:
    """Whether a part tells one set and its effort; `number`: which one it is."""
    if effort is None or any(m.kind in _COUNTED or (m.kind is Kind.ORD and m.value != number) for m in part):
        return False
    rest = [*part[: effort[0]], *part[effort[1] :]]
    return any(m.kind in _ENTRY for m in rest) and sum(m.kind is Kind.X for m in rest) <= 1
