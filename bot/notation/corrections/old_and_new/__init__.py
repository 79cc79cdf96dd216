"""What stored sets were, in any order of words: `190 not 180 on the last two`, `i wrote 180 for set 1, it was 190`.

A small closed grammar: which stored sets, what they were, what not, and words that say no more. Only a clause whose
every word has its place is read so, and only where what it was not is what these sets are stored with; it is then put
as their numbers, and what they were. Everything else is left to the other rules of this room.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import parts_between
from bot.notation.corrections.old_and_new.clause import UNITS, Said, Value, new_and_old, read_clause
from bot.notation.corrections.old_and_new.stored import all_helped, exercise_of, is_told, what_changes, with_old
from bot.notation.corrections.which_stored import which_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.report import Stage

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_LINKS = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.BREAK, Kind.DASH)
_STRONG = (Kind.MEANT, Kind.SORRY, Kind.WROTE)


def old_and_new(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with each clause that puts stored sets right in plain wording: their labels, and what they were."""
    if not request.done or not any(m.kind in (Kind.NUM, Kind.BODY) for m in marks):
        return list(marks)
    out: list[Mark] = []
    for start, end in parts_between(marks, _ENDS):
        out += _sentence(list(marks[start:end]), request)
        out += marks[end : end + 1]
    return out


def _sentence(sentence: list[Mark], request: Request, *, goes_on: bool = False) -> list[Mark]:
    """The sentence, put plainly: the whole of it, or what stands before or behind one of its commas."""
    if not 1 < len(sentence) <= _LONGEST:
        return sentence
    whole = _plain(sentence, request, goes_on=goes_on)
    if whole is not None:
        return whole
    for place, mark in enumerate(sentence):
        if mark.kind not in _LINKS:
            continue
        left, right = sentence[:place], sentence[place + 1 :]
        stop = replace(mark, kind=Kind.STOP, text=".", value=None, parts=())
        ahead = _plain(left, request, goes_on=goes_on)
        following = right if ahead is None else _sentence(right, request, goes_on=True)
        if ahead is not None and (_tells_set(right) or following != right):
            return [*ahead, stop, *following]
        aims = any(which_at(right, i, (1,)) or right[i].kind in (Kind.ORD, Kind.SET) for i in range(len(right)))
        behind = _plain(right, request) if aims and _tells_set(left) else None
        if behind is not None and mark.kind is not Kind.AND:
            return [*left, stop, *behind]
    return sentence


_LONGEST = 40
"""Marks of a sentence that is read so: a longer one tells more than a correction."""


def _tells_set(marks: Sequence[Mark]) -> bool:
    """Whether a load with its repetitions is told, and nothing is put right."""
    kinds = [m.kind for m in marks if m.kind not in UNITS]
    entry = any(kinds[i : i + 3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
                for i in range(len(kinds)))  # fmt: skip
    return entry and not any(k in (*_STRONG, Kind.NOT, Kind.INSTEAD, Kind.SCRAP) for k in kinds)


def _plain(clause: list[Mark], request: Request, *, goes_on: bool = False) -> list[Mark] | None:
    """The clause in plain wording; none where a word of it has no place, or where it does not fit what is stored.

    Where it `goes_on` behind another correction, a set that is named and its value are enough: `and set 2 185`.
    """
    name = next((m for m in clause if m.kind is Kind.NAME), None)
    exercise = exercise_of(name, request)
    rows = [p for p in request.done if p.exercise == exercise and p.set is not None]
    stored = sorted({p.set for p in rows if p.set is not None})
    said = read_clause(clause, stored) if stored else None
    if said is None or exercise is None or (said.which is None and (not said.olds or _is_of_several(clause))):
        return None
    new, old = new_and_old(said)
    follows = goes_on and said.which is not None and not said.which.lasts
    cued = follows or bool(said.cues & set(_STRONG)) or is_told(said, exercise, request)
    if new is None or (old is None and not cued):
        return None
    stages = (Stage.DROP,) if said.drops else (Stage.WORK, Stage.DROP)
    of_drop = [p for p in rows if p.stage is Stage.DROP]
    named = None if said.which is None else said.which.sets
    chosen = with_old(of_drop[-1:] if said.drops else rows, old) if named is None else named
    staged = [[p for p in rows if p.set == n] for n in chosen]
    stage, counts = what_changes(staged, new, old, stages)
    if not chosen or stage is None:
        return None
    helped = counts is False and all_helped(staged)
    value = _told_plainly(new, old, counts=counts, helped=helped)
    put = _put(said, chosen, value, drops=stage is Stage.DROP)
    return [*_edge(clause[0], put), *put, *_edge(clause[-1], put)]


def _edge(mark: Mark, put: Sequence[Mark]) -> list[Mark]:
    """The first or the last word of the clause as one that says nothing: the evidence holds the whole of it."""
    kept = any(m.start <= mark.start and mark.end <= m.end for m in put)
    return [] if kept else [replace(mark, kind=Kind.FILL, text="that", value=None, parts=(), names=())]


def _is_of_several(clause: Sequence[Mark]) -> bool:
    """`those were 9 not 10`: which ones is for the message to say."""
    return any(m.text.split()[:1] in (["those"], ["they"], ["these"]) for m in clause)


def _told_plainly(new: Value, old: Value | None, *, counts: bool | None, helped: bool) -> list[Mark]:
    """`was with 190`, `was 9 not 11`, `was 190`: what the sets were, and of what."""
    start, end = new.marks[0].start, new.marks[-1].end
    was = Mark(Kind.MEANT, "was" if counts is not False else "was with", start, start)
    value = [m for m in new.marks if m.kind is not Kind.S or counts is None]
    if counts and old is not None:
        return [was, *value, Mark(Kind.NOT, "not", end, end), old.marks[0]]
    reps = [Mark(Kind.REPS, "", end, end)] if counts else []
    less = new.amount < 0 or (helped and new.marks[0].kind is not Kind.BODY)
    return [was, *value, *reps, *([Mark(Kind.ASSIST, "assist", end, end)] if less else [])]


def _put(said: Said, chosen: Sequence[int], value: Sequence[Mark], *, drops: bool) -> list[Mark]:
    """The sets by their numbers, and what they were."""
    beside = said.at if said.at is not None else value[1]
    label = replace(beside, kind=Kind.LABEL, parts=(), names=())
    labels = [replace(label, value=Decimal(n)) for n in chosen]
    drop = [Mark(Kind.DROP, "drop", value[0].start, value[0].start)] if drops else []
    return [*([] if said.name is None else [said.name]), *labels, *drop, *value]
