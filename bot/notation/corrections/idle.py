"""Words that correct elsewhere and here do not: `not my day, 100x4`, `i mean come on, 100x6`, `95x5 not 100`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_VALUES = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.EMPTY, Kind.KG, Kind.LB, Kind.REPS, Kind.SET, Kind.SETS, Kind.ORD,
           Kind.LASTSET, Kind.LASTREP, Kind.LABEL, Kind.NAME, Kind.WEAK, Kind.LEFT, Kind.RIGHT, Kind.DROP, Kind.MINI,
           Kind.RPE, Kind.RIR, Kind.ALL, Kind.EACH, Kind.SAME, Kind.PLANNED, Kind.SORRY, Kind.SCRAP, Kind.WAS,
           Kind.SKIP, Kind.SKIPPED, Kind.NO, Kind.OTHERTIME, Kind.DONE, Kind.WARMUP)  # fmt: skip
_AIMING = (Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.WROTE, Kind.LASTSET, Kind.LABEL, Kind.SET, Kind.ORD, Kind.SCRAP,
           Kind.DROP, Kind.MINI, Kind.INSTEAD)  # fmt: skip
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S)
_ENTRY = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])


def without_idle(sentence: list[Mark]) -> list[Mark]:
    """The sentence with talk that opens it and denies no number as talk: `not my day`, before a whole set."""
    start = next((i for i, m in enumerate(sentence) if m.kind is not Kind.FILL), len(sentence))
    opens = kind_at(sentence, start) is Kind.NOT or (start < len(sentence) and sentence[start].text == "i mean")
    end = next((i for i in range(start, len(sentence)) if sentence[i].kind in EDGES or sentence[i].text == "but"), None)
    if not opens or end is None or end < start + 2:
        return sentence
    said = sentence[start + 1 : end]
    talk = not any(m.kind in _VALUES for m in said) and _entries(sentence[end:])
    gone = [replace(m, kind=Kind.FILL) for m in sentence[start:end]]
    return [*sentence[:start], *gone, *sentence[end:]] if talk else sentence


def without_remarks(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a remark that opens with `actually` as talk: `50x10, actually felt easy, 9, 8`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SORRY or mark.text.split()[-1] != "actually":
            continue
        end = next((i for i in range(place, min(len(marks), place + _FAR)) if marks[i].kind in EDGES), None)
        said = marks[place + 1 : end]
        aims = [m for m in said if m.kind is not Kind.WAS]
        if end is not None and aims and all(m.kind in (Kind.FILL, Kind.WORD, Kind.FEELS) for m in aims):
            out[place] = replace(mark, kind=Kind.FILL)
    return out


_FAR = 10
"""Marks of a remark."""


def denied_behind(piece: Sequence[Mark]) -> set[int]:
    """The places of `not 100` behind a whole set: what it was not, of the set that is told and no other."""
    place = next((i for i, m in enumerate(piece) if m.kind is Kind.NOT), None)
    if place is None or kind_at(piece, place + 1) is not Kind.NUM or any(m.kind in _AIMING for m in piece):
        return set()
    end = place + 2 + (kind_at(piece, place + 2) in _UNITS)
    ends = kind_at(piece, end) in (None, *EDGES, Kind.FILL, Kind.WORD)
    between = [m.kind for m in piece[max(0, place - 2) : place] if m.kind not in (Kind.FILL, Kind.COMMA, Kind.OPEN)]
    told = _entries(piece[:place]) and between[-1:] in ([Kind.NUM], [Kind.REPS], [])
    return set(range(place, end)) if told and ends else set()


def _entries(marks: Sequence[Mark]) -> bool:
    """Whether a load with its repetitions is told."""
    kinds = [m.kind for m in marks if m.kind not in (Kind.KG, Kind.LB)]
    return any(kinds[i : i + 3] in _ENTRY for i in range(len(kinds)))
