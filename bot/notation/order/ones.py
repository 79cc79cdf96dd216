"""A set of one repetition, and the `one` before a set: `two two two and then one`, `two tens, one nine`, `a single`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark

LOWS = {"single": 1, "double": 2, "triple": 3}
_JOINS = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.PLUS)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AT, Kind.WITH, Kind.AND, Kind.THEN, Kind.CLOSE,
         Kind.RPE, Kind.RIR)  # fmt: skip
_REASONS = frozenset(["because", "cos", "cause", "since", "as", "before", "but", "only", "today", "lol", "haha"])
_LED = frozenset(["a", "an", "one", "another", "just", "only"])
_WORKED = frozenset(["worked", "working", "work"])
"""Verbs of a `double` that is two shifts."""
_MOST = 3
"""Beside sets of more repetitions a lone `one` is rather a word of talk."""


def ones(marks: list[Mark]) -> list[Mark]:
    """The marks with such a set as a number of repetitions."""
    out = list(marks)
    folds = any(m.kind is Kind.SETS and m.text == "fold" for m in marks)
    for place, mark in enumerate(marks):
        joined = kind_at(marks, place - 1) in _JOINS
        if _is_first_of(marks, place):
            out[place] = replace(mark, kind=Kind.NUM, value=Decimal(1))
        elif mark.kind is Kind.FILL and mark.text == "one" and joined:
            if folds and kind_at(marks, place + 1) is Kind.NUM and _ends(marks, place + 2):
                out[place] = replace(mark, kind=Kind.GAP)
            elif _ends(marks, place + 1) and _follows_lows(marks, place):
                out[place] = replace(mark, kind=Kind.NUM, value=Decimal(1))
        elif mark.text in LOWS and mark.kind in (Kind.WORD, Kind.FILL) and _heads_load(marks, place):
            unit = kind_at(marks, place + 2) in UNITS
            by = replace(mark, kind=Kind.X, text="x", end=mark.start)
            low = replace(mark, kind=Kind.NUM, value=Decimal(LOWS[mark.text]))
            out[place : place + 2 + unit] = [*marks[place + 1 : place + 2 + unit], by, low]
            return ones(out)
        elif mark.text in LOWS and mark.kind in (Kind.WORD, Kind.FILL) and _ends(marks, place + 1):
            led = kind_at(marks, place - 1) in (None, *_JOINS, Kind.LINE, Kind.STOP, Kind.NAME, Kind.COLON, Kind.WAS)
            shift = text_at(marks, place - 2) in _WORKED and mark.text == "double"
            led = led or (kind_at(marks, place - 1) in (Kind.FILL, Kind.ANOTHER) and text_at(marks, place - 1) in _LED)
            if led and not shift:
                out[place] = replace(mark, kind=Kind.NUM, value=Decimal(LOWS[mark.text]))
                if text_at(marks, place - 1) in ("one", "another"):
                    out[place - 1] = replace(marks[place - 1], kind=Kind.GAP)
                if kind_at(marks, place + 1) is Kind.COMMA and _is_load(marks, place + 2):
                    out[place + 1] = replace(marks[place + 1], kind=Kind.AT)
    return out


def _is_first_of(marks: Sequence[Mark], place: int) -> bool:
    """The first of `sets one and two`."""
    led = marks[place].text == "one" and marks[place].kind is Kind.FILL and kind_at(marks, place - 1) is Kind.SETS
    two = kind_at(marks, place + 1) is Kind.AND and kind_at(marks, place + 2) is Kind.NUM
    return led and two and marks[place + 2].value == SEVERAL


def _heads_load(marks: Sequence[Mark], place: int) -> bool:
    """Whether the load of a set called by its name follows it: `trap bar triple 275`."""
    value = marks[place + 1].value if kind_at(marks, place + 1) is Kind.NUM else None
    led = kind_at(marks, place - 1) in (None, *_JOINS, Kind.LINE, Kind.STOP, Kind.NAME, Kind.COLON, Kind.WARMUP)
    led = led or text_at(marks, place - 1) in ("top", "heavy")
    end = place + 2 + (kind_at(marks, place + 2) in UNITS)
    return led and value is not None and value >= _LEAST_LOAD and (_ends(marks, end) or kind_at(marks, end) in _RATES)


_RATES = (Kind.RPE, Kind.RIR, Kind.OPEN)
_LEAST_LOAD = 15
"""A smaller number may be repetitions. Ours."""


def _ends(marks: Sequence[Mark], at: int) -> bool:
    """Whether a set's words end there."""
    return kind_at(marks, at) in _ENDS or text_at(marks, at) in _REASONS


def _is_load(marks: Sequence[Mark], at: int) -> bool:
    """Whether a number stands alone behind a set called by its name: the load of `a triple, 70`."""
    alone = kind_at(marks, at) is Kind.NUM and _ends(marks, at + 1 + (kind_at(marks, at + 1) in UNITS))
    return (alone and kind_at(marks, at + 1) is not Kind.COMMA) or (alone and kind_at(marks, at + 2) is not Kind.NUM)


def _follows_lows(marks: Sequence[Mark], place: int) -> bool:
    """Whether a list of numbers as low stands before the word that joins the `one` to it."""
    at = place - 1
    while kind_at(marks, at) in _JOINS:
        at -= 1
    told: list[Decimal] = []
    while kind_at(marks, at) in (Kind.NUM, *_JOINS):
        told += [marks[at].value or Decimal(0)] if marks[at].kind is Kind.NUM else []
        at -= 1
    listed = len(told) >= SEVERAL and all(0 < value <= _MOST for value in told)
    return listed and kind_at(marks, at) not in (Kind.RIR, Kind.RPE, Kind.COULD)
