"""Warm-ups, drops and minis that were not done: `no warm up today`, `no minis, just 17.5x13`; the sets beside them are
work sets."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_DENYING = frozenset(words("without didnt forgot never havent hadnt zero dont didn no not skipped skip skipping"))
_BETWEEN = frozenset(words("a the my any to do did doing much real proper need needed time for"))


def without_denied_warmups(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with warm-ups that the client did without as words of no bearing."""
    return [
        replace(mark, kind=Kind.GAP)
        if mark.kind is Kind.WARMUP and (_is_denied(marks, place) or _is_told_of(marks, place))
        else mark
        for place, mark in enumerate(marks)
    ]


_CONTINUING = (Kind.DROP, Kind.MINI)
_DENIALS = (Kind.NO, Kind.SKIP, Kind.SKIPPED)
_TOLD_LATE = frozenset(words("forgot forgetting forgotten missed"))
"""What may be said of a drop that was done and is told only now: `forgot the drop, 40x8`."""


def without_denied_continuations(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with drops and minis that the client did without, and what denies them, as words of no bearing:
    `no energy for the drop so just 60x10`, `minis not happening, 17.5x13`, `left the minis out`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind in _CONTINUING:
            for at in _denial(marks, place):
                out[at] = replace(marks[at], kind=Kind.GAP)
    return out


def _denial(marks: Sequence[Mark], place: int) -> tuple[int, ...]:
    """The places of a drop or minis and of the words around it that deny it; none where it was done."""
    at = place - 1
    while at >= max(0, place - 4) and marks[at].kind is Kind.FILL and set(marks[at].text.split()) <= _BETWEEN:
        at -= 1
    cue = marks[at] if at >= 0 else None
    said = set(cue.text.split()) if cue is not None else set()
    if cue is not None and not said & _TOLD_LATE and kind_at(marks, place + 1) is not Kind.WAS:
        denied = cue.kind in (*_DENIALS, Kind.FILL, Kind.WORD) and (cue.kind in _DENIALS or bool(said & _WITHOUT))
        if denied:
            return (at, place)
        if said & _TAKING and text_at(marks, place + 1) in ("out", "off"):
            return (at, place, place + 1)
    behind = kind_at(marks, place + 1) in (Kind.SKIP, Kind.SKIPPED)
    return (place, place + 1) if behind and kind_at(marks, place + 2) in (None, *_CLOSING) else ()


_WITHOUT = frozenset(words("without didnt havent zero minus"))
_TAKING = frozenset(words("left leave leaving took taking cut"))
_CLOSING = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.FILL, Kind.AND, Kind.COLON, Kind.DASH)


def _is_denied(marks: Sequence[Mark], place: int) -> bool:
    said = marks[place].text.split()
    at = place - 1
    while at >= max(0, place - 4) and marks[at].kind is not Kind.NUM and set(marks[at].text.split()) <= _BETWEEN:
        at -= 1
    before = marks[at] if at >= 0 else None
    return bool(_DENYING & set(said)) or (
        before is not None
        and (
            before.kind in (Kind.NO, Kind.NOT, Kind.SKIP)
            or bool(before.text.split() and before.text.split(" ")[-1] in _DENYING)
        )
    )


_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_TOLD = 2
"""Words beside a warm-up that is told of."""
_TELLING = frozenset(
    (
        *(Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.COLON, Kind.SAME),
        *(Kind.NAME, Kind.WAS, Kind.ALL, Kind.MEANT, Kind.SORRY),
    )
)


def _is_told_of(marks: Sequence[Mark], place: int) -> bool:
    """`done with the warm up, starting now.`: in a sentence without a set, beside one that tells sets."""
    start, end = part_of(marks, place, ends=_ENDS)
    if kind_at(marks, end) is None and not any(m.kind is Kind.NUM for m in marks[:start]):
        return False
    said = {m.kind for m in marks[start:end]}
    spoken = Kind.WORD in said or Kind.DONE in said
    return spoken and end - start - 1 > _TOLD and said.isdisjoint(_TELLING)
