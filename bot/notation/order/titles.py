"""Names of everyday words on a line of their own above their sets: `calves`, `shoulders:`, `bp`."""

from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BETWEEN = (Kind.LINE, Kind.COLON, Kind.DASH, Kind.STOP)
_NUMBERS = (Kind.NUM, Kind.BODY, Kind.SET)


def titles(marks: list[Mark]) -> list[Mark]:
    """The marks with such a word as a name, where it fits one exercise of the session and numbers stand below it."""
    out = [
        replace(mark, kind=Kind.NAME) if mark.kind is Kind.WEAK and _is_title(marks, place) else mark
        for place, mark in enumerate(marks)
    ]
    for place, mark in enumerate(out):
        parts = _parting(out, place) if mark.kind is Kind.LINE and place else None
        if parts is not None:
            out[parts] = replace(out[parts], kind=Kind.LINE, text="\n")
    return out


def _parting(marks: list[Mark], line: int) -> int | None:
    """What parts a name at a line's end from the sets before it, where its own stand below: `70x8; hang / 37 sec`."""
    name = line - 1
    while kind_at(marks, name) in (Kind.FILL, Kind.COLON, Kind.DASH) and name:
        name -= 1
    if kind_at(marks, name) is not Kind.NAME or kind_at(marks, line + 1) not in _NUMBERS:
        return None
    parts = name - 1
    while kind_at(marks, parts) is Kind.FILL and parts:
        parts -= 1
    told = kind_at(marks, parts - 1) in _TOLD or kind_at(marks, parts - 2) in _TOLD
    return parts if kind_at(marks, parts) in _PARTS and told and parts > 1 else None


_PARTS = (Kind.THEN, Kind.BREAK, Kind.STOP, Kind.AND, Kind.COMMA)
_TOLD = (Kind.NUM, Kind.REPS, Kind.EACH, Kind.SECONDS, Kind.METRES, Kind.M, Kind.SETS)


def _is_title(marks: list[Mark], place: int) -> bool:
    first = place
    while first and marks[first - 1].kind in (Kind.FILL, Kind.COMMA, Kind.COLON):
        first -= 1
    if len(marks[place].names) != 1 or (first and marks[first - 1].kind is not Kind.LINE):
        return False
    at = place + 1
    while kind_at(marks, at) in _BETWEEN:
        at += 1
    return any(m.kind is Kind.LINE for m in marks[place + 1 : at]) and kind_at(marks, at) in _NUMBERS
