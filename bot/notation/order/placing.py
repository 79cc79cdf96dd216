"""Words that say which set, or how many alike, put where their numbers are; words of when, put aside."""

from dataclasses import replace

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_FAR = 40
"""Marks that are looked at on either side."""
_WHEN = frozenset(words("since after before until till during between"))


def mentions(marks: list[Mark]) -> list[Mark]:
    """`since the second set`: when, not which."""
    out = list(marks)
    for place in range(1, len(marks) - 1):
        if marks[place].kind is not Kind.ORD:
            continue
        before = [m.text.split()[-1:] for m in marks[max(0, place - 2) : place]]
        when = any(word and word[0] in _WHEN for word in before) or _is_of_hurt(marks, place)
        if _is_of_hurt(marks, place) and [m.kind for m in marks[place : place + 3]] == [Kind.ORD, Kind.NAME, Kind.SET]:
            out[place] = replace(marks[place], kind=Kind.GAP, value=None)
            out[place + 2] = replace(marks[place + 2], kind=Kind.GAP)
        if when and marks[place].kind is Kind.ORD and marks[place + 1].kind in (Kind.SET, Kind.LASTSET, Kind.WORKSET):
            out[place] = replace(marks[place], kind=Kind.GAP, value=None)
            out[place + 1] = replace(marks[place + 1], kind=Kind.GAP)
    return out


def _is_of_hurt(marks: list[Mark], place: int) -> bool:
    """`thumb went numb in the second set, 65x8`: when it hurt, in a part without numbers."""
    start, end = part_of(marks, place, _FAR)
    hurt = any(m.kind is Kind.GAP for m in marks[start:place])
    return hurt and not any(m.kind is Kind.NUM for m in marks[start:end])


def likes(marks: list[Mark]) -> list[Mark]:
    """`another two like that`: so many sets alike; `the same for the other two`: all that are left."""
    out = list(marks)
    for place in range(len(marks)):
        said = [m.text for m in marks[place + 1 : place + 3]]
        if marks[place].kind is Kind.NUM and said in (["like", "that"], ["like", "those"], ["like", "it"]):
            out[place + 1] = replace(marks[place + 1], kind=Kind.SAME)
    kinds = {m.kind for m in marks}
    if Kind.SAME in kinds and Kind.NUM not in kinds:
        return [replace(m, kind=Kind.ALL) if _is_the_others(m) else m for m in out]
    return out


def _is_the_others(mark: Mark) -> bool:
    return mark.kind is Kind.THEREST or mark.text in ("others", "the others")


def another(marks: list[Mark]) -> list[Mark]:
    """`could have done another 2`: two more."""
    out = list(marks)
    for place in range(1, len(out) - 1):
        kinds = [out[place + n].kind for n in (-1, 0, 1)]
        if kinds == [Kind.COULD, Kind.ANOTHER, Kind.NUM]:
            out[place : place + 2] = [out[place + 1], replace(out[place], kind=Kind.MORE)]
    return out
