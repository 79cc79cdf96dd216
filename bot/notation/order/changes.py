"""How much the load was changed, said beside the new load: `up 5, 115x5`, `five kilos more so 115 for 5`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_BEFORE = frozenset(
    words("up plus added add adding put took take down minus dropped reduced off went lowered increased")
)
_AFTER = frozenset(words("more extra heavier lighter less off additional"))
_EACH_TIME = ("each set", "every set", "a set", "per set", "each time", "every time")
"""A change from set to set: what each set was is reckoned by nobody but the client, and asked about."""
_MOST = 20
"""A change that is more is a load (common practice, no source)."""
_LEAST = 25
"""A new load that is less may be repetitions."""
_COUNTING = (Kind.X, Kind.FOR, Kind.REPS, Kind.SETS, Kind.SECONDS, Kind.METRES, Kind.MINUTES, Kind.ASSIST, Kind.EACH)


def changes(marks: list[Mark]) -> list[Mark]:
    """The marks with such changes without bearing, where the load itself is said after them."""
    out = list(marks)
    if not any(m.kind in (Kind.MORE, Kind.PLUS) or set(m.text.split()) & (_BEFORE | _AFTER) for m in marks):
        return out
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or mark.value is None or mark.value > _MOST or mark.text == "one":
            continue
        unit = kind_at(marks, place + 1) in UNITS
        end = place + 1 + unit
        led, told = _led(marks, place), _told(marks, end, unit=unit)
        if led is None and not told:
            continue
        if led is not None and "went" in marks[led].text.split() and _is_listed(marks, end):
            continue
        if led is not None and kind_at(marks, end) is Kind.ALL and marks[end].text in _EACH_TIME:
            out[place] = replace(mark, kind=Kind.SLIP)
            continue
        start = place if led is None else led
        while led is not None and start > 0 and marks[start - 1].text in _BEFORE:
            start -= 1
        counted = _count_behind(marks, end)
        before = None if counted is None else _load_before(marks, start)
        if counted is not None and before is not None and led is not None:
            down = {w for m in (*marks[start:place], *marks[end:counted]) for w in m.text.split()} & _LESS
            load = before - mark.value if down else before + mark.value
            new = replace(mark, text=str(load), value=load, parts=())
            link = Mark(Kind.FOR, "for", marks[counted].start, marks[counted].start)
            return changes([*marks[:start], new, *marks[place + 1 : place + 1 + unit], link, *marks[counted:]])
        ends = kind_at(marks, end) in (None, Kind.STOP, Kind.COMMA) and start < place
        if ((told and kind_at(marks, end) is Kind.FILL) or ends) and _is_told_before(marks, start):
            end -= ends
            out[start : end + 1] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[start : end + 1]]
            continue
        if kind_at(marks, end) in _COUNTING or not _is_load_later(marks, end):
            if told and marks[end].text.split(" ")[0] == "off" and _took(marks, place):
                out[place] = replace(mark, kind=Kind.SLIP)
            continue
        start = place if led is None else led
        while told and end < len(marks) and (set(marks[end].text.split()) & _AFTER or _is_more(marks, end)):
            end += 1
        out[start:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[start:end]]
    return out


_LESS = frozenset(words("down took take minus dropped reduced off lowered lighter less"))
_LINKS = (Kind.COMMA, Kind.AND, Kind.FILL, Kind.AT, Kind.THEN)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.REPS, Kind.AND, Kind.THEN)


def _count_behind(marks: Sequence[Mark], end: int) -> int | None:
    """Where the repetitions stand of `took 5 off, 9`, `added 5 and got 9`: behind a change, without a load."""
    at = end
    while kind_at(marks, at) in _LINKS and (kind_at(marks, at) is not Kind.AT or marks[at].text == "on"):
        at += 1
    linked = any(m.kind in (Kind.COMMA, Kind.AND) for m in marks[end:at])
    counts = kind_at(marks, at) is Kind.NUM and (marks[at].value or _LEAST) < _LEAST and not marks[at].parts
    return at if linked and counts and kind_at(marks, at + 1) in _ENDS else None


def _load_before(marks: Sequence[Mark], start: int) -> Decimal | None:
    """The load of the whole set straight before: 90 of `90x10, `."""
    at = start - 1
    while kind_at(marks, at) in (Kind.COMMA, Kind.THEN, Kind.AND, Kind.FILL):
        at -= 1
    at -= kind_at(marks, at) is Kind.REPS
    link = at - 1
    load = link - 1 - (kind_at(marks, link - 1) in UNITS)
    told = kind_at(marks, at) is Kind.NUM and kind_at(marks, link) in (Kind.X, Kind.FOR)
    return marks[load].value if told and load >= 0 and kind_at(marks, load) is Kind.NUM else None


def _is_told_before(marks: Sequence[Mark], start: int) -> bool:
    """`6 reps at 107.5, took 2.5 off`: a whole set, straight before a clause that only says by how much."""
    at = start - 1 - (kind_at(marks, start - 1) in (Kind.COMMA, Kind.STOP, Kind.DASH, Kind.OPEN))
    part = marks[max(0, at - _WHOLE) : at + 1]
    linked = any(m.kind in (Kind.X, Kind.FOR, Kind.AT, Kind.WITH) for m in part)
    return at < start - 1 and linked and sum(m.kind is Kind.NUM for m in part) > 1


_WHOLE = 5
"""Words of a whole set."""


def _is_listed(marks: Sequence[Mark], end: int) -> bool:
    """`went 5/5/4 with 80`: repetitions told one by one."""
    at = end + (kind_at(marks, end) in (Kind.SLASH, Kind.COMMA))
    number = kind_at(marks, at) is Kind.NUM
    return number and (marks[at].value or _LEAST) <= _MOST and kind_at(marks, at + 1) not in (Kind.X, Kind.FOR)


def _led(marks: Sequence[Mark], place: int) -> int | None:
    """Where the word before a number stands that says that it is a change."""
    for at in range(place - 1, max(place - 4, -1), -1):
        if marks[at].kind in (Kind.WARMUP, Kind.NAME, Kind.WEAK):
            return None
        listed = marks[at].tight or kind_at(marks, at - 2) is Kind.PLUS
        if marks[at].kind is Kind.PLUS and listed and kind_at(marks, at - 1) is Kind.NUM:
            return None
        if set(marks[at].text.split()) & _BEFORE or marks[at].kind is Kind.PLUS:
            return at
        if marks[at].kind not in (Kind.FILL, Kind.SIGN) or marks[at].text == "so":
            return None
    return None


def _told(marks: Sequence[Mark], end: int, *, unit: bool) -> bool:
    """Whether a word after a number, with its unit, says that it is a change: `5 kilos more`, `10 off`."""
    if end >= len(marks):
        return False
    off = marks[end].text == "off" or marks[end].text.startswith("off ")
    return off or (unit and (_is_more(marks, end) or bool(set(marks[end].text.split()) & _AFTER)))


def _took(marks: Sequence[Mark], place: int) -> bool:
    """`took 15 off`: by how much the load fell, where the new one is not said."""
    return any(m.text.split()[-1:] and m.text.split(" ")[-1] in _TAKING for m in marks[max(0, place - 2) : place])


_TAKING = frozenset(words("took take taken stripped knocked dropped pulled shed"))


def _is_more(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.MORE


def _is_load_later(marks: Sequence[Mark], end: int) -> bool:
    """Whether a greater number with repetitions of its own, or with a unit or a sign, follows in the sentence."""
    for at in range(end, len(marks)):
        counted = marks[at].kind is Kind.NAME and any(m.kind is Kind.NUM for m in marks[end:at])
        if marks[at].kind in (Kind.STOP, Kind.LINE) or counted:
            return False
        value = marks[at].value
        if marks[at].kind is Kind.NUM and value is not None and value >= _LEAST:
            return True
        if marks[at].kind in (Kind.PLUS, Kind.SIGN) and kind_at(marks, at + 2) in (Kind.X, Kind.FOR):
            return True
    return False


CHANGING = _BEFORE | _AFTER
"""Words beside a number that may say by how much the load was changed."""
