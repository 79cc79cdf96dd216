"""Efforts in other words: `tenth rep failed`, `the fifth rep not come up`, `effort eight of ten`."""

from dataclasses import replace

from bot.notation.bounds import EARLIEST_FAILED
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NEGATED = frozenset(words("not didnt wouldnt never no couldnt"))
_RISING = frozenset(words("come came go went move moved up happen possible rise lock budge"))
_STILL = frozenset(words("any more anymore again either"))
_OF = (["of"], ["from"], ["out", "of"])
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.AND, Kind.THEN, Kind.QUERY, Kind.BREAK)
_LEAST = 5
"""A lesser number out of ten is no effort of a set that was worked."""


def did_not_come(marks: list[Mark]) -> list[Mark]:
    """`the fifth rep not come up`, `the tenth did not go`: failed the fifth, the tenth."""
    out = list(marks)
    for place, mark in enumerate(marks):
        failed = mark.kind is Kind.ORD and kind_at(marks, place - 1) is Kind.FAILED
        if mark.kind is not Kind.ORD or failed or mark.value is None or mark.value < EARLIEST_FAILED:
            continue
        said = [w for m in marks[place + 1 : place + 6] for w in m.text.split()][:6]
        counted = any(m.kind is Kind.NUM for m in marks[place + 1 : place + 6])
        if set(said) & _NEGATED and set(said) & _RISING and not counted:
            at = place + 1
            while at < len(marks) and not set(marks[at].text.split()) & _RISING:
                at += 1
            while at + 1 < len(marks) and marks[at + 1].text in _STILL | _RISING:
                at += 1
            gone = [replace(m, kind=Kind.GAP) for m in marks[place + 1 : at + 1]]
            out[place : at + 1] = [replace(mark, kind=Kind.FAILED, text="failed", end=mark.start), mark, *gone]
            return out
    return out


def _is_called(marks: list[Mark], at: int) -> bool:
    """Whether what was done is called so many out of ten, behind a number of it: `60x6, would say a 7 out of 10`."""
    before = marks[at - 1].text.split()[-1:] if at else []
    value = marks[at].value
    told = any(m.kind is Kind.NUM for m in marks[:at])
    effort = kind_at(marks, at + 1) is Kind.SLASH and kind_at(marks, at + 3) is Kind.RPE
    if (effort or _is_behind_set(marks, at)) and value is not None and value >= _LEAST:
        return True
    return told and before in (["a"], ["an"], ["say"], ["like"], ["about"]) and value is not None and value >= _LEAST


def _is_behind_set(marks: list[Mark], at: int) -> bool:
    """Whether a whole set stands straight before: `72,5x5 8/10`, `100 for 8, 9 out of 10`."""
    before = at - 1 - (kind_at(marks, at - 1) is Kind.COMMA)
    before -= kind_at(marks, before) is Kind.REPS
    kinds = [kind_at(marks, before - n) for n in (2, 1, 0)]
    return before > 1 and kinds[0] is Kind.NUM and kinds[1] in (Kind.X, Kind.FOR) and kinds[2] is Kind.NUM


def out_of_ten(marks: list[Mark]) -> list[Mark]:
    """`effort eight of ten`: eight."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        rated = bool(out) and out[-1].kind is Kind.RPE and mark.kind is Kind.NUM
        called = mark.kind is Kind.NUM and not rated and _is_called(marks, at)
        rated = rated or called
        span = next((n for n in (1, 2) if [m.text for m in marks[at + 1 : at + 1 + n]] in _OF), 0) if rated else 0
        slashed = called and kind_at(marks, at + 1) is Kind.SLASH
        span = 1 if slashed else span
        ten = marks[at + 1 + span] if at + 1 + span < len(marks) else None
        named = kind_at(marks, at + 2 + span) is Kind.RPE and slashed
        if span and ten is not None and ten.value == 10 and (named or kind_at(marks, at + 2 + span) in _ENDS):
            if called:
                out.append(Mark(Kind.RPE, "rpe", mark.start, mark.start))
            out.append(replace(mark, end=ten.end))
            at += 2 + span + named
            continue
        out.append(mark)
        at += 1
    return out
