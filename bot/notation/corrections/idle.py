"""Words that correct elsewhere and here do not: `not my day, 100x4`, `i mean come on, 100x6`, `95x5 not 100`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, parts_between
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_VALUES = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.EMPTY, Kind.KG, Kind.LB, Kind.REPS, Kind.SET, Kind.SETS, Kind.ORD,
           Kind.LASTSET, Kind.LASTREP, Kind.LABEL, Kind.NAME, Kind.WEAK, Kind.LEFT, Kind.RIGHT, Kind.DROP, Kind.MINI,
           Kind.RPE, Kind.RIR, Kind.ALL, Kind.EACH, Kind.SAME, Kind.PLANNED, Kind.SORRY, Kind.SCRAP, Kind.WAS,
           Kind.SKIP, Kind.SKIPPED, Kind.NO, Kind.OTHERTIME, Kind.DONE, Kind.WARMUP)  # fmt: skip
_AIMING = (Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.WROTE, Kind.LASTSET, Kind.LABEL, Kind.SET, Kind.ORD, Kind.SCRAP,
           Kind.DROP, Kind.MINI, Kind.INSTEAD)  # fmt: skip
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S)
_ENTRY = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])


def without_idle(sentence: list[Mark]) -> list[Mark]:
    """The sentence with talk that denies no number as talk: `not my day`, `not to worry you but`, before a set."""
    out = list(sentence)
    starts = [0, *(i + 1 for i, m in enumerate(sentence[:-1]) if m.kind in EDGES)]
    for first in starts if any(m.kind is Kind.NOT or m.text == "i mean" for m in sentence) else ():
        start = next((i for i in range(first, len(sentence)) if sentence[i].kind is not Kind.FILL), len(sentence))
        opens = kind_at(sentence, start) is Kind.NOT or (start < len(sentence) and sentence[start].text == "i mean")
        tail = range(start, len(sentence))
        end = next((i for i in tail if sentence[i].kind in EDGES or sentence[i].text == "but"), None)
        if not opens or end is None or end < start + 2:
            continue
        said = sentence[start + 1 : end]
        idle = _entries(sentence[end:]) and (first == 0 or not any(m.kind in _ANSWERED for m in sentence[:first]))
        if idle and not any(m.kind in _VALUES or (first and m.kind in _AIMING) for m in said):
            out[start:end] = [replace(m, kind=Kind.FILL) for m in sentence[start:end]]
    return out


_ANSWERED = (Kind.NUM, Kind.CLOCK, Kind.BODY)
"""What words behind a comma may deny: `80x5, not the plan, 82.5x5`."""


def without_remarks(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a remark that opens with `actually` as talk: `50x10, actually felt easy, 9, 8`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SORRY or mark.text.split(" ")[-1] != "actually":
            continue
        end = next((i for i in range(place, min(len(marks), place + _FAR)) if marks[i].kind in EDGES), None)
        said = marks[place + 1 : end]
        aims = [m for m in said if m.kind is not Kind.WAS]
        if end is not None and aims and all(m.kind in (Kind.FILL, Kind.WORD, Kind.FEELS) for m in aims):
            out[place] = replace(mark, kind=Kind.FILL)
    return out


_FAR = 10
"""Marks of a remark."""


def without_misloads(marks: Sequence[Mark]) -> list[Mark]:
    """`50x5, 55x3, 50x5. the 55 was a mistake with the plates`: of a set that was told, how its load came about."""
    out = list(marks)
    edges = [i for i, m in enumerate(marks) if m.kind in EDGES]
    starts = [0, *(i + 1 for i in edges)]
    ends = [*edges, len(marks)]
    for at, (start, end) in enumerate(zip(starts, ends, strict=True)):
        numbers = [m for m in marks[start:end] if m.kind is Kind.NUM]
        if len(numbers) != 1:
            continue
        behind = marks[end : ends[at + 1]] if at + 1 < len(ends) else []
        stop = end if any(m.kind in _VALUED for m in behind) else end + len(behind)
        part = marks[start:stop]
        said = {w for m in part for w in m.text.split()}
        if not said & LOADING or not said & WRONGLY:
            continue
        loads = {m.value for i, m in enumerate(marks[:start]) if m.kind is Kind.NUM and kind_at(marks, i + 1) in _LINKS}
        plain = not any(m.kind in (*_LINKS, Kind.NOT) or (m.kind is Kind.SORRY and m.text not in _OWNED) for m in part)
        if plain and numbers[0].value in loads:
            out[start:stop] = [m if m.kind in EDGES else replace(m, kind=Kind.FILL, value=None, parts=()) for m in part]
    return out


_VALUED = (Kind.NUM, Kind.CLOCK, Kind.NAME, Kind.SAME, Kind.PLANNED, Kind.BODY)
_OWNED = frozenset(["my mistake", "mistake", "my bad", "my fault", "my error"])


def without_kept_counts(marks: Sequence[Mark]) -> list[Mark]:
    """`that was 50 not 55, reps right`, `minis stay as they are`: in a correction, what of a set stays as it is."""
    named = any(m.kind is Kind.WAS for m in marks) and any(m.kind in _NAMED for m in marks)
    if not named and not any(m.kind in _CORRECTING for m in marks):
        return list(marks)
    out = list(marks)
    for start, end in parts_between(marks, EDGES):
        said = {w for m in marks[start:end] for w in m.text.split() if w.isalpha()}
        if said & _COUNTS and said & _KEPT and not said - _COUNTS - _KEPT - _LITTLE:
            out[start:end] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[start:end]]
    return out


_CORRECTING = (Kind.NOT, Kind.SORRY, Kind.MEANT, Kind.SCRAP)
_NAMED = (Kind.SET, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.ALL)
_COUNTS = frozenset(words("reps rep repetitions count counts number numbers minis mini drop drops"))
_KEPT = frozenset(words("right same stay stays stayed unchanged correct fine ok okay stand stands good keep kept"))
_LITTLE = frozenset(
    words(
        "the are were was is as all still and my those they that rest it them of both too sorry though but only btw",
        "on bad oops",
    )
)
_LINKS = (Kind.X, Kind.FOR, Kind.KG, Kind.LB)
LOADING = frozenset(words("plate plates loading loaded load misload misloaded misloading bar collar maths math"))
WRONGLY = frozenset(words(
    "mistake error accident wrong wrongly mistakenly misload misloaded misloading mix mixed mixup accidentally fault",
))  # fmt: skip


def without_side_talk(marks: Sequence[Mark]) -> list[Mark]:
    """`L2 R1, lost the line on the second right one`: behind both sides, words on a repetition that tell no number."""
    out = list(marks)
    for place in range(3, len(marks)):
        if marks[place].kind not in _OF_SIDES:
            continue
        near = [m.kind for m in marks[max(0, place - 4) : place + 1] if m.kind not in _BETWEEN][-4:]
        told = near[::2] == [Kind.NUM] * 2 or near[1::2] == [Kind.NUM] * 2
        if not told or not set(near) - {Kind.NUM} <= SIDES or len(set(near)) < len(_SIDE_COUNTS):
            continue
        start = place + 1 + (kind_at(marks, place + 1) in (Kind.COMMA, Kind.STOP))
        if kind_at(marks, start) in (None, Kind.NUM, *EDGES):
            continue
        end = next((i for i in range(start, len(marks)) if marks[i].kind in (*EDGES, Kind.THEN)), len(marks))
        said = marks[start:end]
        which = any(m.kind in (Kind.ORD, Kind.LASTREP, Kind.LASTSET) for m in said)
        sided = any(m.kind in SIDES or "one" in m.text.split() for m in said)
        if which and sided and all(m.kind in _TALKS for m in said):
            out[start:end] = [replace(m, kind=Kind.FILL, value=None) for m in said]
    return out


_BETWEEN = (Kind.COMMA, Kind.SLASH, Kind.AND)
_SIDE_COUNTS = ("left", "right", "count")
SIDES = frozenset((Kind.L, Kind.R, Kind.LEFT, Kind.RIGHT))
_OF_SIDES = SIDES | {Kind.NUM, *_BETWEEN}
_TALKS = (*SIDES, Kind.WORD, Kind.FILL, Kind.FAILED, Kind.SKIP, Kind.SKIPPED, Kind.ORD, Kind.LASTREP, Kind.LASTSET,
          Kind.WITH, Kind.AT, Kind.FOR, Kind.GAP, Kind.DROP)  # fmt: skip


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
