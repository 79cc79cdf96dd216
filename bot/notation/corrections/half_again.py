"""What a message breaks off and tells again at once: `landmine 60.. no wait 65, 8 per arm`, `first try slipped, 60x4`.

A number alone, a word that takes it back, and a number like it: the first has no bearing. So have tries of one set that
are counted: `only count the second try: 62.5x4` tells one set. `no, the last one was 9` corrects as `sorry` does.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_UNITS = (Kind.KG, Kind.LB)
_LEADING = (Kind.NAME, Kind.FILL, Kind.DASH, Kind.COLON, Kind.AT, Kind.WITH, Kind.COMMA)
_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO, Kind.SCRAP)
_BETWEEN = (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.DASH)
_NAMING = (Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET)
_TRIES = frozenset(words("try tries attempt attempts go goes"))
_LED = frozenset(words("first second third next last other 2nd 1st 3rd two three 2 3 the a my"))
_FAR = 12
"""Marks between a number and where it is told again."""


def told_at_once(marks: Sequence[Mark]) -> list[Mark]:
    """The marks without what was broken off."""
    out = _without_tries(_no_named(_rather(marks)))
    start = 0
    for place, mark in enumerate(out):
        if mark.kind is Kind.NUM and place - start < _FAR and all(m.kind in _LEADING for m in out[start:place]):
            again = _again(out, place)
            for at in range(place, again):
                out[at] = replace(out[at], kind=Kind.FILL, value=None, parts=())
        if mark.kind in _ENDS:
            start = place + 1
    return out


def _again(marks: Sequence[Mark], place: int) -> int:
    """Where the number is told again that stands alone at a place; 0 where it is not."""
    at = place + 1 + (kind_at(marks, place + 1) in _UNITS)
    cued = False
    end = min(len(marks), place + _FAR)
    while at < end and (marks[at].kind in _BETWEEN or _takes_back(marks[at])):
        cued = cued or _takes_back(marks[at])
        at += 1
    old, new = marks[place].value, marks[at].value if kind_at(marks, at) is Kind.NUM else None
    if not cued or old is None or new is None or not old / 2 <= new <= old * 2:
        return 0
    behind = at + 1 + (kind_at(marks, at + 1) in _UNITS)
    following = behind + (kind_at(marks, behind) in (Kind.COMMA, Kind.X, Kind.FOR))
    return at if following > behind and kind_at(marks, following) is Kind.NUM else 0


def _takes_back(mark: Mark) -> bool:
    return mark.kind in _CUES and (mark.kind is not Kind.MEANT or "count" not in mark.text)


def _rather(marks: Sequence[Mark]) -> list[Mark]:
    """`70x14, rather 13`: the word that corrects, between two numbers."""
    out = list(marks)
    for place in range(1, len(marks) - 1):
        told = kind_at(marks, place - 1) in (Kind.NUM, Kind.COMMA, Kind.STOP, Kind.DASH, Kind.REPS)
        if marks[place].text == "rather" and told and any(m.kind is Kind.NUM for m in marks[place + 1 : place + 3]):
            out[place] = replace(marks[place], kind=Kind.MEANT, text="or rather")
    return out


def _no_named(marks: list[Mark]) -> list[Mark]:
    """`180x10, no the last one was 9`, `5.. no, sorry, 4 on the second`: the `no` leaves nothing out."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NO or not any(m.kind is Kind.NUM for m in marks[:place]):
            continue
        at = place + 1
        while kind_at(marks, at) in (Kind.FILL, Kind.COMMA):
            at += 1
        named = at
        while kind_at(marks, named) in (*_NAMING, Kind.FILL):
            named += 1 + (kind_at(marks, named) is Kind.SET and kind_at(marks, named + 1) is Kind.NUM)
        told = named > at and kind_at(marks, named) is Kind.WAS and kind_at(marks, named + 1) is Kind.NUM
        if told or kind_at(marks, at) is Kind.SORRY:
            marks[place] = replace(mark, kind=Kind.SORRY)
    return marks


def _without_tries(marks: list[Mark]) -> list[Mark]:
    """`only count the second try: 62.5x4`: which try of the set it was, and which one counts."""
    entries = sum(m.kind in (Kind.X, Kind.FOR) and kind_at(marks, i - 1) is Kind.NUM for i, m in enumerate(marks))
    if entries != 1 or not any(set(m.text.split()) & _TRIES for m in marks):
        return marks
    for place in range(1, len(marks)):
        led = marks[place - 1]
        tried = marks[place].text in _TRIES and (led.kind is Kind.ORD or set(led.text.split()) & _LED)
        if not tried or led.kind is Kind.NAME:
            continue
        start = place - 1
        while start and (marks[start - 1].kind in (Kind.FILL, Kind.AT, Kind.FOR) and text_at(marks, start - 1) != "@"):
            start -= 1
        start += start < place - 1 and marks[start].kind is Kind.FOR
        for at in range(start, place + 1):
            marks[at] = replace(marks[at], kind=Kind.FILL, value=None, parts=())
    return marks
