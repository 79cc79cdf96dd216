"""Repetitions that failed, in other words: `tenth rep failed`, `the fifth rep not come up`."""

from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NEGATED = frozenset(words("not didnt wouldnt never no couldnt"))
_RISING = frozenset(words("come came go went move moved up happen possible rise"))
_EARLIEST = 3


def failed_last(marks: list[Mark]) -> list[Mark]:
    """`tenth rep failed`: failed the tenth."""
    out = list(marks)
    for place in range(len(out) - 2):
        failed = out[place + 2].kind in (Kind.EMPTY, Kind.FAILED) and "fail" in out[place + 2].text
        if out[place].kind is Kind.ORD and out[place + 1].kind is Kind.REPS and failed:
            out[place : place + 3] = [replace(out[place + 2], kind=Kind.FAILED), *out[place : place + 2]]
    return out


def did_not_come(marks: list[Mark]) -> list[Mark]:
    """`the fifth rep not come up`, `the tenth did not go`: failed the fifth, the tenth."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ORD or mark.value is None or mark.value < _EARLIEST:
            continue
        said = [w for m in marks[place + 1 : place + 6] for w in m.text.split()][:6]
        counted = any(m.kind is Kind.NUM for m in marks[place + 1 : place + 6])
        if set(said) & _NEGATED and set(said) & _RISING and not counted:
            at = place + 1
            while at < len(marks) and not set(marks[at].text.split()) & _RISING:
                at += 1
            gone = [replace(m, kind=Kind.GAP) for m in marks[place + 1 : at + 1]]
            out[place : at + 1] = [replace(mark, kind=Kind.FAILED, text="failed", end=mark.start), mark, *gone]
            return out
    return out
