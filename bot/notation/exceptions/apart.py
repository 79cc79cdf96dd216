"""The set that differs from those told alike, and what it was: `8 on the last`, `the second was 9`, `last two 85x8`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.all_but import past_there
from bot.notation.clauses import kind_at, text_at
from bot.notation.exceptions.alike import BUT, LINKS, UNTIL
from bot.notation.kinds import Kind
from bot.notation.order.near import past_fill, whole_number
from bot.notation.tagging.plurals import PLURALS
from bot.notation.tokens import Mark

_LAST = frozenset(["last", "final"])
_PASSED = BUT | UNTIL | {"cut", "stopped", "ended", "died"}
_ENDS = (
    None,
    Kind.COMMA,
    Kind.STOP,
    Kind.LINE,
    Kind.BREAK,
    Kind.OPEN,
    Kind.CLOSE,
    Kind.AT,
    Kind.RPE,
    Kind.RIR,
    Kind.TANK,
)
_LITTLE = (Kind.FILL, Kind.WAS, Kind.COLON, Kind.COMMA, Kind.EXCEPT, Kind.AND, Kind.OPEN)
MOST_APART = 4
"""So many sets at most are told apart at once: `last two 9`."""


NAMING = (Kind.LASTREP, Kind.LASTSET, Kind.ORD, Kind.SET)
"""What names the set that is told apart."""


@dataclass(frozen=True, slots=True)
class _Name:
    """The words that name one set or several: where they end, and which (`number`: of the first one)."""

    marks: list[Mark]
    end: int
    number: int
    last: bool
    count: int = 1


@dataclass(frozen=True, slots=True)
class One:
    """Sets told apart: where their words start and end, the words that name them, and what they were."""

    start: int
    end: int
    name: _Name
    value: list[Mark]


def one_at(marks: Sequence[Mark], at: int) -> One | None:
    """One set and what it was: `8 on the last`, `last one only 8`, `the second was 9`, `last two 85x8`."""
    start = at
    at = _past_little(marks, at)
    name = name_at(marks, at)
    if name is not None:
        at = _past_little(marks, name.end)
        at += kind_at(marks, at) in (Kind.AT, Kind.WITH) and marks[at].text != "@"
        value = value_at(marks, at)
        end = None if value is None else past_there(marks, value)
        if value is None or end is None or kind_at(marks, end) not in _ENDS:
            return None
        return One(start, end, name, _value_of(marks, at, value))
    at += kind_at(marks, at) is Kind.DROP and marks[at].text.endswith("to")
    value = value_at(marks, at)
    linked = value is not None and (kind_at(marks, value) in LINKS or text_at(marks, value) == "in")
    if value is None or not linked or marks[value].text == "@":
        return None
    name = name_at(marks, past_fill(marks, value + 1))
    ends = None if name is None else kind_at(marks, name.end)
    if name is None or (ends not in _ENDS and not (ends is Kind.WITH and _rates(marks, name.end + 1))):
        return None
    return One(start, name.end, name, _value_of(marks, at, value))


def _rates(marks: Sequence[Mark], at: int) -> bool:
    """`8 on the last with 1 left`: an effort behind it."""
    behind = kind_at(marks, at + 1) in (Kind.LEFT, Kind.TANK, Kind.RIR)
    return kind_at(marks, at) is Kind.NUM and behind


def _past_little(marks: Sequence[Mark], at: int) -> int:
    """Behind words that tell nothing: `but`, `the`, `was`, `only`, `which was`, a colon."""
    while kind_at(marks, at) in _LITTLE or (at < len(marks) and (marks[at].text in _PASSED or _goes_to(marks[at]))):
        at += 1
    return at


def _goes_to(mark: Mark) -> bool:
    """`dropped to 90 for the last`: the load that was gone to."""
    return mark.kind is Kind.DROP and mark.text.endswith("to")


def name_at(marks: Sequence[Mark], at: int) -> _Name | None:
    """The words that name one set, or so many of the first or the last ones."""
    kind = kind_at(marks, at)
    last = kind in (Kind.LASTREP, Kind.LASTSET) and bool(set(marks[at].text.split()) & _LAST)
    if last and "rep" not in marks[at].text:
        several = _several(marks, at + 1)
        if several is not None:
            return _Name(list(marks[at : several[1]]), several[1], 1, True, several[0])
        end = at + 1
        while kind_at(marks, end) in (Kind.SET, Kind.NAME, Kind.WORKSET) or text_at(marks, end) == "one":
            end += 1
        return _Name(list(marks[at:end]), end, 1, True)
    if kind is Kind.ORD and marks[at].value is not None:
        several = _several(marks, at + 1) if marks[at].value == 1 else None
        if several is not None:
            return _Name(list(marks[at : several[1]]), several[1], 1, False, several[0])
        end = at + 1
        if kind_at(marks, end) is Kind.SET or (end < len(marks) and marks[end].text == "one"):
            end += 1
        return _Name(list(marks[at:end]), end, int(marks[at].value or 0), False)
    if kind is Kind.SET and kind_at(marks, at + 1) is Kind.NUM and marks[at + 1].value is not None:
        return _Name(list(marks[at : at + 2]), at + 2, int(marks[at + 1].value or 0), False)
    return None


def _several(marks: Sequence[Mark], at: int) -> tuple[int, int] | None:
    """How many sets behind `last` or `first`, and where their words end: `two`, `2 sets`; not the `8` of `last 8`."""
    count = whole_number(marks, at, 2, MOST_APART)
    if count is None:
        return None
    if kind_at(marks, at + 1) in (Kind.SETS, Kind.SET):
        return count, at + 2
    following = kind_at(marks, past_fill(marks, at + 1))
    counts = following in (Kind.NUM, Kind.WAS) or (marks[at].text.isalpha() and following in _ENDS)
    led = at > 1 and marks[at - 2].kind in LINKS and following in _ENDS
    return (count, at + 1) if counts or led or (following is Kind.COMMA and marks[at].text.isalpha()) else None


def _value_of(marks: Sequence[Mark], at: int, end: int) -> list[Mark]:
    """The words of what a set was, a plural as its number: `doubles`."""
    plural = PLURALS.get(marks[at].text) or PLURALS.get(marks[at].text + "s")
    return list(marks[at:end]) if plural is None else [replace(marks[at], kind=Kind.NUM, value=plural)]


def value_at(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of what a set was end: a count, or a load with one."""
    if kind_at(marks, at) is Kind.WORD and (marks[at].text in PLURALS or marks[at].text + "s" in PLURALS):
        return at + 1
    if kind_at(marks, at) is not Kind.NUM:
        return None
    end = at + 1
    if kind_at(marks, end) is Kind.S or (
        kind_at(marks, end) in (Kind.KG, Kind.LB) and kind_at(marks, end + 1) not in (Kind.X, Kind.FOR)
    ):
        return end + 1
    if kind_at(marks, end) in (Kind.KG, Kind.LB) and kind_at(marks, end + 1) in (Kind.X, Kind.FOR):
        end += 1
    if kind_at(marks, end) in (Kind.X, Kind.FOR) and kind_at(marks, end + 1) is Kind.NUM:
        end += 2
    end += kind_at(marks, end) is Kind.REPS
    return end + (kind_at(marks, end) is Kind.EACH)


def was_before(before: Mark) -> Mark:
    return replace(before, kind=Kind.WAS, text="was", value=None, parts=(), end=before.start)
