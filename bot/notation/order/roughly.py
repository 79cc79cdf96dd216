"""Numbers told roughly and then for certain: `just under a minute, 57`, `40ish, say 40`; `both arms 12`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NEARLY = frozenset(words("under over nearly almost about around shy short past roughly quite below above"))
_CERTAIN = frozenset(words("say so call it lets probably actually exactly precisely maybe"))
_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_MINUTE, _SIXTY = 100, 60
"""`one fifty two` is heard as a number of three digits: the first is the minutes."""
_PARTS = (None, Kind.COMMA, Kind.AND, Kind.THEN, *_ENDS)


def roughly(marks: list[Mark]) -> list[Mark]:
    """The marks with what is told roughly without bearing where the number follows; limbs behind their number."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is Kind.MINUTES and mark.text in ("minute", "min") and _is_nearly(marks, place):
            out[place] = replace(mark, kind=Kind.GAP)
        elif mark.kind is Kind.NUM and _is_time(marks, place):
            assert mark.value is not None
            out[place] = replace(mark, kind=Kind.CLOCK, value=mark.value // 100, parts=divmod(mark.value, Decimal(100)))
        elif mark.kind is Kind.NUM and _is_turned_down(marks, place):
            out[place] = replace(mark, kind=Kind.GAP, value=None, parts=())
            if kind_at(marks, place + 1) in OF_LOAD:
                out[place + 1] = replace(marks[place + 1], kind=Kind.GAP)
        elif mark.kind is Kind.NUM and _is_repeated(marks, place):
            out[place] = replace(mark, kind=Kind.GAP, value=None, parts=())
    return _limbs_behind(out)


def _is_nearly(marks: Sequence[Mark], place: int) -> bool:
    """Whether a minute is only nearly told, and seconds follow it."""
    before = [m.text.split(" ")[-1] for m in marks[max(0, place - 3) : place] if m.text.split()]
    numbered = kind_at(marks, place - 1) is Kind.NUM
    rest = []
    for m in marks[place + 1 :]:
        if m.kind in _ENDS:
            break
        rest.append(m)
    told = next((m for m in rest if m.kind is Kind.NUM), None)
    return not numbered and bool(set(before) & _NEARLY) and told is not None


def _is_time(marks: Sequence[Mark], place: int) -> bool:
    """`500 in one fifty two`: minutes and seconds, of a distance."""
    if place <= 1 or marks[place - 1].text != "in":
        return False
    value = marks[place].value
    spoken = marks[place].text[:1].isalpha() and kind_at(marks, place + 1) in _PARTS
    far = kind_at(marks, place - 2) in (Kind.METRES, Kind.M) or _is_far(marks, place - 2)
    return far and spoken and value is not None and _MINUTE <= value < 10 * _MINUTE and value % _MINUTE < _SIXTY


def _is_far(marks: Sequence[Mark], place: int) -> bool:
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and value >= _MINUTE


def _is_turned_down(marks: Sequence[Mark], place: int) -> bool:
    """`62.5 was too heavy so 60 for 5`: a load that was not taken, before the one that was."""
    at = place + 1 + (kind_at(marks, place + 1) in OF_LOAD)
    said = [w for m in marks[at : at + 5] for w in m.text.split()]
    judged = said[:1] in (["was"], ["were"], ["felt"], ["is"], ["are"], ["looked"]) and "too" in said[1:4]
    if not judged:
        return False
    rest = next((i for i in range(at + 1, len(marks)) if marks[i].kind is Kind.NUM), None)
    linked = kind_at(marks, place - 1) in (Kind.X, Kind.FOR)
    so = rest is not None and bool({"so", "took", "used", "went", "dropped", "grabbed", "instead"} & set(said + _said(
        marks, at, rest)))  # fmt: skip
    return so and not linked


def _said(marks: Sequence[Mark], start: int, end: int) -> list[str]:
    return [w for m in marks[start:end] for w in m.text.split()]


def _is_repeated(marks: Sequence[Mark], place: int) -> bool:
    """Whether the same number follows for certain: `40ish, say 40`."""
    at = place + 1
    said: set[str] = set()
    while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.COMMA, Kind.GAP, Kind.FEELS):
        said |= set(marks[at].text.split())
        at += 1
    ends = kind_at(marks, at + 1) in (*_PARTS, Kind.SECONDS, Kind.REPS)
    same = kind_at(marks, at) is Kind.NUM and marks[at].value == marks[place].value and marks[at].value is not None
    rough = bool(said & {"ish", "roughly"}) or (bool(said & _CERTAIN) and bool(said & {"so", "ish", "or"}))
    return same and ends and rough and bool(said & _CERTAIN)


def _limbs_behind(marks: list[Mark]) -> list[Mark]:
    """`both arms 12, both arms 11`: each, behind its number."""
    out = list(marks)
    for place, mark in enumerate(marks):
        limbs = mark.kind is Kind.EACH and mark.text.startswith(("both ", "on both ", "for both "))
        free = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in _PARTS
        if limbs and free:
            out[place], out[place + 1] = marks[place + 1], mark
    return out
