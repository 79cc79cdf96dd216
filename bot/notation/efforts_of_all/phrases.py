"""The words of an effort of every set, in either order: `all at rpe 8`, `2-3 in the tank on all`, `rpe 8-9 each`."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT, SEVERAL
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.efforts_named.effort import effort_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

EVERYTHING = frozenset(("everything", "it all", "lot"))
_OF_EACH = frozenset(("each", "ea", "each one"))
_BOTH = frozenset(("both", "both were", "both of them"))
_LITTLE = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.COLON, Kind.SET, Kind.SETS)
_OF_THEM = frozenset(words("of it them these those the set sets one ones single last"))
_ARTICLES = ("a", "an")
_RANGED = (Kind.DASH, Kind.TO, Kind.OR)
ENDS = (None, *EDGES, Kind.AND, Kind.THEN, Kind.DASH, Kind.COLON, Kind.NAME, Kind.SORRY)
APART = (*EDGES, Kind.AND, Kind.DASH, Kind.THEN)
_BUT = frozenset(words("but bar until till apart minus besides not"))
_HALF = Decimal("0.5")
"""The step that a range of efforts is rounded to, up."""


@dataclass(frozen=True, slots=True)
class Phrase:
    """The words of an effort of all."""

    left: Decimal
    every: Mark
    end: int
    widest: bool
    """Of `everything`: no single list."""
    names: tuple[int, ...] = ()
    """The exercises of `2 rir on all the curls and rows`."""


def says_every(mark: Mark) -> bool:
    return (
        mark.kind is Kind.ALL or (mark.kind is Kind.EACH and mark.text in _OF_EACH | _BOTH) or mark.text == "all felt"
    )


def phrase_at(marks: Sequence[Mark], at: int) -> Phrase | None:
    """An effort of all that starts here, in either order."""
    first = marks[at]
    if says_every(first) or first.text in EVERYTHING:
        start = at + 1
        while set(text_at(marks, start).split()) <= _OF_THEM and start < len(marks):
            start += 1
        felt = first.text == "all felt"
        while kind_at(marks, start) in (*_LITTLE, Kind.SKIP) or text_at(marks, start) in ("had", "with"):
            start += 1
        effort = _effort(marks, start, felt=felt)
        return None if effort is None else _closed(marks, first, *effort)
    if not (effort := _effort(marks, at, felt=False)):
        return None
    left, end = effort
    every = past(marks, end, Kind.AT, Kind.FOR, Kind.WITH, Kind.FILL)
    while every > end and text_at(marks, every - 1) in EVERYTHING:
        every -= 1
    if every >= len(marks) or not (says_every(marks[every]) or marks[every].text in EVERYTHING):
        return None
    end = every + 1
    while end < len(marks) and set(text_at(marks, end).split()) <= _OF_THEM:
        end += 1
    return _closed(marks, marks[every], left, end)


def _closed(marks: Sequence[Mark], every: Mark, left: Decimal, end: int) -> Phrase | None:
    """The phrase, where nothing but little words follows it in its part."""
    close = end
    while kind_at(marks, close) is Kind.FILL and text_at(marks, close) not in _BUT:
        close += 1
    if kind_at(marks, close) not in ENDS:
        return None
    names, named = _names_at(marks, close)
    behind = [kind_at(marks, named + 1), kind_at(marks, named + 2)]
    comma = kind_at(marks, named) is Kind.COMMA and Kind.NUM not in behind
    ends = comma or kind_at(marks, named) in (None, Kind.STOP, Kind.LINE, Kind.CLOSE)
    if names and every.kind is Kind.ALL and ends:
        return Phrase(left, every, named, False, names)
    return Phrase(left, every, end, every.text in EVERYTHING)


def _names_at(marks: Sequence[Mark], at: int) -> tuple[tuple[int, ...], int]:
    """The exercises that are named one by one from a place on, and where they end."""
    names: list[int] = []
    while kind_at(marks, at) is Kind.NAME and len(marks[at].names) == 1:
        names.append(marks[at].names[0])
        further = past(marks, at + 1, Kind.AND, Kind.COMMA, Kind.FILL)
        joined = any(m.kind is Kind.AND for m in marks[at:further])
        listed = joined or kind_at(marks, further + 1) in (None, Kind.AND, Kind.COMMA, Kind.STOP, Kind.LINE)
        at = further if kind_at(marks, further) is Kind.NAME and listed else at + 1
    return tuple(names), at


def _effort(marks: Sequence[Mark], at: int, *, felt: bool) -> tuple[Decimal, int] | None:
    """Repetitions in reserve that are told from here on, and where their words end; a range is its middle."""
    if kind_at(marks, at) is Kind.COULD and kind_at(marks, at + 2) in (Kind.MORE, Kind.LEFT, Kind.TANK):
        value = marks[at + 1].value if kind_at(marks, at + 1) is Kind.NUM else None
        return None if value is None or value > MOST_LEFT else (value, at + 3)
    number = at + (kind_at(marks, at) is Kind.FEELS)
    scored = felt or number > at or text_at(marks, at - 1) in _ARTICLES
    value = marks[number].value if kind_at(marks, number) is Kind.NUM else None
    plain = value is not None and EASIEST <= value <= HARDEST and kind_at(marks, number + 1) in ENDS
    if scored and plain and value is not None:
        return HARDEST - value, number + 1
    if kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in _RANGED:
        led = kind_at(marks, at - 1) is Kind.AT and kind_at(marks, at + 3) in ENDS
        scale = led and value is not None and EASIEST <= value <= HARDEST and kind_at(marks, at + 2) is Kind.NUM
        return (
            _middle(HARDEST - (value or Decimal(0)), marks, at + 2, Kind.RPE) if scale else _between(marks, at, at + 2)
        )
    one = effort_at(marks, at, None)
    if one is None:
        return None
    if kind_at(marks, one.end) in _RANGED and kind_at(marks, one.end + 1) is Kind.NUM:
        return _middle(one.left, marks, one.end + 1, one.word)
    return one.left, one.end + (one.word is Kind.RPE and kind_at(marks, one.end) is Kind.S)


def _between(marks: Sequence[Mark], low: int, high: int) -> tuple[Decimal, int] | None:
    """The `2-3 in the tank` of two numbers before their word."""
    one = effort_at(marks, high, None)
    value = marks[low].value
    if one is None or value is None or kind_at(marks, high) is not Kind.NUM:
        return None
    first = value if one.word is Kind.RIR else HARDEST - value
    return (_halved(first, one.left), one.end) if abs(first - one.left) <= SEVERAL else None


def _middle(first: Decimal, marks: Sequence[Mark], at: int, word: Kind) -> tuple[Decimal, int] | None:
    """The `rpe 8-9` of two numbers behind their word."""
    value = marks[at].value
    if value is None:
        return None
    second = value if word is Kind.RIR else HARDEST - value
    return (_halved(first, second), at + 1) if abs(first - second) <= SEVERAL else None


def _halved(one: Decimal, two: Decimal) -> Decimal:
    return ((one + two) / 2 / _HALF).quantize(Decimal(1), ROUND_HALF_UP) * _HALF
