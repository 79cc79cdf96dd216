"""What is told beside the numbers of a set and is none of them: its plan, what it felt like, or the same once more.

`press was supposed to be 20 but i grabbed the 18s, so 18 10 9 8`, `80x10. felt heavy for an 80`, `no, 9. yes 9`,
`number 2 should read 95`.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO)
_UNITS = (Kind.S, Kind.KG, Kind.LB)
_MOST = 6
"""Marks between a number and where it is said again, or between a plan and what was taken."""
_AFFIRMING = frozenset(words("yes yeah yea ya ye aye yep yup definitely sure answer certain positive deffo"))
_PLANNED = frozenset(words("supposed meant should plan down"))
_TAKING = frozenset(words("only grabbed used use took picked loaded put went had got did"))
_WEIGHTY = frozenset(words("heavy light easy hard tough rough grim"))
NEEDS = frozenset(("number", "num", "nr", "no", *_PLANNED, *_WEIGHTY, *_CUES))
"""Kinds and words of which one stands wherever a number is so told."""
_OTHER_NUMBERS = frozenset(words("exercise lift movement day week session workout phone"))


def with_own_numbers(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as talk, and `number 2` of a set as `set 2`."""
    return _affirmed(_felt_for(_planned(_by_number(list(marks)))))


def _silent(marks: list[Mark], start: int, end: int) -> None:
    for at in range(start, end):
        if marks[at].kind is not Kind.NAME:
            marks[at] = replace(marks[at], kind=Kind.GAP, value=None, parts=())


def _by_number(marks: list[Mark]) -> list[Mark]:
    """`sled, number 2 should read`, `number 2 on the sled was`, `sled no. 2 was`: a set by its number."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        number = at + 1
        is_number = marks[at].text in ("number", "num", "nr") and text_at(marks, at - 1) not in _OTHER_NUMBERS
        if marks[at].kind is Kind.NO and marks[at].text == "no":
            number += kind_at(marks, number) is Kind.STOP
            is_number = True
        if is_number and _is_set_number(marks, number):
            out.append(replace(marks[at], kind=Kind.SET, text="set"))
            at = number
        else:
            out.append(marks[at])
            at += 1
    return out


def _is_set_number(marks: Sequence[Mark], at: int) -> bool:
    """Whether a small number stands here, with what it was behind it: `2 should read`, `2 of the sled was`."""
    if kind_at(marks, at) is not Kind.NUM or marks[at].value not in range(1, FEW_SETS + 1):
        return False
    end = at + 1
    while kind_at(marks, end) in (Kind.FILL, Kind.NAME, Kind.AT, Kind.WITH) and end < at + _MOST:
        end += 1
    if kind_at(marks, end) not in (Kind.WAS, Kind.MEANT):
        return False
    end += 1
    while kind_at(marks, end) is Kind.FILL:
        end += 1
    return kind_at(marks, end) in (Kind.NUM, Kind.BODY)


def _planned(marks: list[Mark]) -> list[Mark]:
    """`supposed to be 20 but i grabbed 18s, so 18 10 9 8`: the plan's number, and the one that was taken told once."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or kind_at(marks, place + 1 + (kind_at(marks, place + 1) in _UNITS)) is None:
            continue
        start = place - 1
        while start >= 0 and place - start < _MOST and not set(marks[start].text.split()) & _PLANNED:
            if marks[start].kind not in (Kind.TO, Kind.FILL, Kind.AT, Kind.WITH, Kind.WAS):
                start = -1
            start -= 1
        new = _taken(marks, place) if start >= 0 and place - start < _MOST else None
        if new is None:
            continue
        start -= kind_at(marks, start - 1) is Kind.WAS
        again = _told_behind(marks, new)
        before = next((m for m in reversed(marks[:start]) if m.kind is Kind.NUM), None)
        if again is not None:
            _silent(out, start, again)
        elif before is not None and before.value == marks[new].value:
            _silent(out, start, new + 1)
        elif _is_of_last(marks, start):
            gone = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[start : new - 1]]
            out[start:new] = [*gone, replace(marks[new - 1], kind=Kind.WAS, text="that was")]
    return out


def _is_of_last(marks: Sequence[Mark], start: int) -> bool:
    """`that was supposed to be`, `last one was meant to be`: the set that was told."""
    one = kind_at(marks, start - 1) is Kind.LASTSET or text_at(marks, start - 1) in ("that", "it")
    return one or text_at(marks, start).split()[:1] == ["that"]


def _taken(marks: Sequence[Mark], place: int) -> int | None:
    """Where the number of `but i grabbed 18s` stands, behind that of the plan."""
    at = place + 1
    while at < min(len(marks), place + 2 * _MOST) and kind_at(marks, at) is not Kind.NUM:
        if marks[at].kind not in (Kind.FILL, Kind.COMMA, Kind.WITH, Kind.WORD, Kind.COULD, *_UNITS, Kind.AT, Kind.WROTE,
                                  Kind.DROP, Kind.TO):  # fmt: skip
            return None
        at += 1
    said = [w for m in marks[place + 1 : at] for w in m.text.split()]
    turns = "but" in said or Kind.COMMA in [m.kind for m in marks[place + 1 : at]]
    return at if turns and set(said) & _TAKING and kind_at(marks, at) is Kind.NUM else None


def _told_behind(marks: Sequence[Mark], new: int) -> int | None:
    """Where the sets start behind what was taken: its number told again, or itself where repetitions follow it."""
    at = new + 1
    named = kind_at(marks, at + 1) is Kind.NAME or kind_at(marks, at + 2) is Kind.NAME
    at += named and kind_at(marks, at) is Kind.FOR
    while kind_at(marks, at) in (*_UNITS, Kind.AT, Kind.COMMA, Kind.FILL, Kind.STOP, Kind.NAME, Kind.LEFT):
        at += 1
        at += kind_at(marks, at) is Kind.FOR and kind_at(marks, at + 1) is Kind.NAME
    if kind_at(marks, at) is not Kind.NUM:
        return new if kind_at(marks, at) in (Kind.X, Kind.FOR) else None
    return at if marks[at].value == marks[new].value else new


def _felt_for(marks: list[Mark]) -> list[Mark]:
    """`felt heavy for an 80`: what the load that was told felt like."""
    out = list(marks)
    for place in range(2, len(marks)):
        link = marks[place - 1].text in ("for a", "for an")
        weighty = link and bool(set(marks[place - 2].text.split()) & _WEIGHTY)
        if not weighty or marks[place].kind is not Kind.NUM:
            continue
        if any(m.kind is Kind.NUM and m.value == marks[place].value for m in marks[:place]):
            _silent(out, place - 1, place + 1)
    return out


def _affirmed(marks: list[Mark]) -> list[Mark]:
    """`80x10. no hang on, 9. yes 9`: a number that was put right, said again to be sure."""
    out = list(marks)
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    for one, two in pairwise(numbers):
        if marks[one].value != marks[two].value or two - one > _MOST:
            continue
        before = one - 1
        while before >= 0 and kind_at(marks, before) in (Kind.FILL, Kind.COMMA):
            before -= 1
        end = two + 1
        while kind_at(marks, end) in (Kind.FILL, Kind.WORD, Kind.FOR, Kind.WAS):
            end += 1
        said = {w for m in (*marks[one + 1 : two], *marks[two + 1 : end]) for w in m.text.split()}
        between = all(m.kind in (*EDGES, Kind.FILL, Kind.WORD) for m in marks[one + 1 : two])
        ends = kind_at(marks, end) in (None, *EDGES)
        if kind_at(marks, before) in _CUES and between and ends and (said & _AFFIRMING or {"it", "was"} <= said):
            out[one + 1 : end] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[one + 1 : end]]
    return out
