"""Names of everyday words on a line of their own above their sets: `calves`, `shoulders:`, `bp`."""

from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BETWEEN = (Kind.LINE, Kind.COLON, Kind.DASH, Kind.STOP)
_NUMBERS = (Kind.NUM, Kind.BODY, Kind.SET)


def titles(marks: list[Mark]) -> list[Mark]:
    """The marks with such a word as a name, where it fits one exercise of the session and numbers stand below it."""
    return [
        replace(mark, kind=Kind.NAME) if mark.kind is Kind.WEAK and _is_title(marks, place) else mark
        for place, mark in enumerate(marks)
    ]


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
