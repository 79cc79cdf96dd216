"""A band whose help is told in units is assistance: `15kg band`, `the band takes off 15 kg`."""

from dataclasses import replace

from bot.notation.clauses import kind_at, mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import is_number
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB)


def bands(marks: list[Mark]) -> list[Mark]:
    """The marks with such a band as assistance, or without bearing where another word says so."""
    marks = [replace(m, kind=Kind.GAP) if _is_of_list(marks, i) else m for i, m in enumerate(marks)]
    if not any(m.kind is Kind.BAND for m in marks):
        return marks
    told = any((m.kind is Kind.ASSIST and _helps(marks, i)) or _takes_off(marks, i) for i, m in enumerate(marks))
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.BAND:
            out.append(mark)
        elif told:
            out.append(replace(mark, kind=Kind.GAP))
        elif _is_told(marks, place):
            out.append(replace(mark, kind=Kind.ASSIST))
        else:
            out.append(mark)
    return [m for i, m in enumerate(out) if not _is_bracket(out, i)]


def _is_of_list(marks: list[Mark], place: int) -> bool:
    """The `assisted` of `7 7 6 assisted`, which says no number of its own."""
    if marks[place].text not in ("assisted", "assist", "with assistance") or not is_number(mark_at(marks, place - 1)):
        return False
    before = kind_at(marks, place - 2)
    at = place - 3 if before in (Kind.COMMA, Kind.SLASH, Kind.AND) else place - 2
    ends = kind_at(marks, place + 1) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.AND)
    return ends and is_number(mark_at(marks, at)) and before is not Kind.X


def _is_told(marks: list[Mark], place: int) -> bool:
    """Whether the help of a band stands beside it."""
    before = kind_at(marks, place - 1) in _UNITS and is_number(mark_at(marks, place - 2))
    bracketed = kind_at(marks, place + 1) is Kind.OPEN and _weighs(marks, place + 2)
    return before or bracketed or _weighs(marks, place + 1)


def _helps(marks: list[Mark], place: int) -> bool:
    """Whether assistance has its number beside it."""
    before = kind_at(marks, place - 1) in _UNITS or is_number(mark_at(marks, place - 1))
    return before or is_number(mark_at(marks, place + 1))


def _takes_off(marks: list[Mark], place: int) -> bool:
    """The sign of `band on, -10 x 8`: what the band takes off stands as a number of its own, and it is the only one."""
    signed = kind_at(marks, place) in (Kind.DASH, Kind.MINUS) and is_number(mark_at(marks, place + 1))
    opens = kind_at(marks, place - 1) in (None, Kind.COMMA, Kind.MEANT, Kind.AT, Kind.COLON, Kind.WAS, Kind.BAND)
    return signed and opens and sum(m.kind in (Kind.DASH, Kind.MINUS) for m in marks) == 1


def _weighs(marks: list[Mark], place: int) -> bool:
    return is_number(mark_at(marks, place)) and kind_at(marks, place + 1) in _UNITS


def _is_bracket(marks: list[Mark], place: int) -> bool:
    """The brackets of `band (15 kg)`."""
    opens = marks[place].kind is Kind.OPEN and kind_at(marks, place - 1) is Kind.ASSIST
    closes = marks[place].kind is Kind.CLOSE and kind_at(marks, place - 4) is Kind.ASSIST
    return opens or (closes and kind_at(marks, place - 3) is Kind.OPEN)
