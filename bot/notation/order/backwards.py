"""Sets told from the last one back: `last one 8, the one before 9, first 10`, `8 just now, 9 before that`.

They are put in the order in which they were done. Where two sets stand behind one `before that`, which of them was
first is not said, and the message is asked about.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_PARTS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK)
_PASSED = (Kind.FILL, Kind.WAS, Kind.AND, Kind.THEN, Kind.SET, Kind.AT, Kind.WITH, Kind.COLON, Kind.FOR, Kind.LASTSET,
           Kind.LASTREP, Kind.ORD)  # fmt: skip
_ENTRY = (Kind.NUM, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.S, Kind.EACH)
_BEFORE = frozenset(["before", "previous"])
_THEM = frozenset(["that", "it", "this", "one", "set", "ones", "the", "was", "were"])
_LAST = frozenset(["last", "final", "latest"])


@dataclass(frozen=True, slots=True)
class _Part:
    """A part of the message: its marks, which of them tell the set, and what it says of its place."""

    marks: list[Mark]
    entry: list[Mark]
    is_last: bool
    is_before: bool
    is_first: bool
    entries: int


def backwards(marks: list[Mark]) -> list[Mark]:
    """The marks with such sets in order."""
    start = 1 if kind_at(marks, 0) in (Kind.NAME, Kind.WEAK) else 0
    start += start == 1 and kind_at(marks, 1) in (Kind.COLON, Kind.COMMA)
    parts, end = _parts(marks, start)
    if len(parts) < SEVERAL or not parts[0].is_last or not any(p.is_before for p in parts[1:]):
        return marks
    if any(p.entries > 1 for p in parts):
        at = next(i for i, m in enumerate(marks) if _is_before(marks, i))
        return [*marks[:at], replace(marks[at], kind=Kind.SLIP), *marks[at + 1 :]]
    stop = replace(marks[start], kind=Kind.COMMA, text=",", value=None, parts=(), end=marks[start].start)
    told: list[Mark] = []
    for part in reversed(parts):
        told += [*([stop] if told else []), *part.entry]
    return [*marks[:start], *told, *marks[end:]]


def _parts(marks: Sequence[Mark], start: int) -> tuple[list[_Part], int]:
    """The parts from a place on that tell a set each and where it stands, and where they end."""
    parts: list[_Part] = []
    at = start
    while at < len(marks):
        end = at
        while end < len(marks) and marks[end].kind not in _PARTS and not _opens_next(marks, end, at):
            end += 1
        part = _read_part(marks[at:end])
        if part is None or (parts and not (part.is_before or part.is_first)) or (parts and parts[-1].is_first):
            return parts, at
        parts.append(part)
        if kind_at(marks, end) not in (*_PARTS, Kind.AND):
            return parts, end
        at = end + 1
    return parts, len(marks)


def _opens_next(marks: Sequence[Mark], at: int, start: int) -> bool:
    """Whether an `and` leads to the next part: `the one before 9 and the first 10`."""
    rest = marks[at + 1 : at + 4]
    opens = any(m.kind is Kind.ORD or _is_before(rest, i) for i, m in enumerate(rest))
    return marks[at].kind is Kind.AND and at > start and opens


def _is_before(marks: Sequence[Mark], at: int) -> bool:
    """The `before` of another set: not that of `before work`."""
    if not set(text_at(marks, at).split()) & _BEFORE:
        return False
    after = at + 1
    while text_at(marks, after) in _THEM:
        after += 1
    return kind_at(marks, after) in (None, *_PARTS, Kind.NUM, Kind.WAS, Kind.COLON, Kind.AND, Kind.AT)


def _read_part(marks: Sequence[Mark]) -> _Part | None:
    """What a part tells; `None` where it tells more than one set or holds other words."""
    entry = [m for m in marks if m.kind in _ENTRY and (m.kind is not Kind.FOR or _links(marks, m))]
    others = [m for m in marks if m not in entry]
    numbers = sum(m.kind is Kind.NUM for m in entry) - sum(m.kind in (Kind.X, Kind.FOR) for m in entry)
    if not numbers or any(m.kind not in _PASSED for m in others):
        return None
    before = any(_is_before(marks, i) for i in range(len(marks)))
    named = any(m.kind in (Kind.LASTSET, Kind.LASTREP) and set(m.text.split()) & _LAST for m in others)
    now = any(text_at(others, i) == "just" and text_at(others, i + 1) == "now" for i in range(len(others)))
    first = any(m.kind is Kind.ORD and m.value == 1 for m in others)
    if not (before or named or now or first) or any(m.kind is Kind.ORD and m.value != 1 for m in others):
        return None
    return _Part(list(marks), entry, (named or now) and not before, before, first, numbers)


def _links(marks: Sequence[Mark], mark: Mark) -> bool:
    """Whether a `for` stands between two numbers."""
    at = list(marks).index(mark)
    return kind_at(marks, at - 1) in (Kind.NUM, Kind.KG, Kind.LB) and kind_at(marks, at + 1) is Kind.NUM
