"""What one side did, as it is told: `left 10 reps`, `10 (L)`, `only 6 on the right`, `right failed the 9th`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Side

LEFT, RIGHT = (Kind.LEFT, Kind.L), (Kind.RIGHT, Kind.R)
_BETWEEN = (Kind.FILL, Kind.COLON, Kind.OPEN, Kind.CLOSE, Kind.REPS, Kind.WITH, Kind.FOR, Kind.WAS, Kind.AND, Kind.DASH)
PARTS = (Kind.STOP, Kind.LINE, Kind.BREAK)
_LIMBS = frozenset(words("leg legs arm arms side hand foot limb one only just but"))
ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.THEN, Kind.CLOSE, Kind.QUERY, Kind.AND, Kind.NAME,
         Kind.ORD, Kind.LASTSET, Kind.FILL, Kind.DASH)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Told:
    """What one side did: the mark that says it, the place behind its words."""

    side: Side
    count: Mark
    side_mark: Mark
    failed: bool = False
    """Whether the repetition behind these failed."""


@dataclass(frozen=True, slots=True)
class Pair:
    """Both sides, in the order told, and where their words start and end."""

    one: Told
    two: Told
    start: int
    end: int


def side_at(marks: Sequence[Mark], at: int) -> Side | None:
    """The side that a mark names; `reps left` names one where a right one is told too, as the pair sees to."""
    kind = kind_at(marks, at)
    over = kind is Kind.TANK and text_at(marks, at).split()[-1:] == ["left"]
    return Side.LEFT if kind in LEFT or over else Side.RIGHT if kind in RIGHT else None


def count_at(marks: Sequence[Mark], at: int) -> Mark | None:
    """The whole number, or the `same`, at a place."""
    mark = marks[at] if 0 <= at < len(marks) else None
    if mark is None or mark.kind not in (Kind.NUM, Kind.SAME):
        return None
    whole = mark.kind is Kind.SAME or (mark.value is not None and mark.value == int(mark.value) and not mark.parts)
    return (
        mark
        if whole and kind_at(marks, at + 1) not in (Kind.X, Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.TOTAL)
        else None
    )


def past_little(marks: Sequence[Mark], at: int, *more: Kind) -> int:
    while kind_at(marks, at) in (*_BETWEEN, *more) or text_at(marks, at) in _LIMBS or is_on(marks, at):
        if kind_at(marks, at) is Kind.NUM:
            break
        at += 1
    return at


def is_on(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.AT and text_at(marks, at).split()[:1] in (["on"], ["in"])


def one_at(marks: Sequence[Mark], at: int, *, side_first: bool) -> tuple[Told, int] | None:
    """What one side did, from here on, and the place behind it."""
    link = past_little(marks, at + 1) if not side_first or kind_at(marks, at + 1) is not Kind.AND else at + 1
    first, second = (at, link) if side_first else (link, at)
    side, count = side_at(marks, first), count_at(marks, second)
    failed = side_first and kind_at(marks, link) is Kind.FAILED and kind_at(marks, link + 1) is Kind.ORD
    if failed:
        done = (marks[link + 1].value or Decimal(1)) - 1
        count, link = replace(marks[link + 1], kind=Kind.NUM, text=str(done), value=done), link + 1
    if side is None or count is None or any(m.kind is Kind.AND for m in marks[at:link]):
        return None
    end = link + 1
    while text_at(marks, end) in _LIMBS - {"but", "only", "just"} or kind_at(marks, end) in (Kind.REPS, Kind.CLOSE):
        end += 1
    return Told(side, count, marks[first], failed), end
