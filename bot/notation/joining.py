"""Sentences that are halves of one report, joined: `Squat. 155. 5 5 5`, `ten reps. sixty.`, `the minis!! 4 4 2`.

The mark between two halves becomes what joins them; what is told twice over (`x2... x3!`) keeps its last telling.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_PLAIN = frozenset((Kind.FILL, Kind.NUM, Kind.REPS, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.EACH, Kind.THEN))
"""Kinds of a sentence that is nothing but repetitions."""
_LEADING = (Kind.ORD, Kind.L, Kind.R, Kind.LEFT, Kind.RIGHT)
"""Kinds before repetitions that say of which set or side they are."""
_EFFORTS = (Kind.EMPTY, Kind.RPE, Kind.RIR)
_UNITS = (Kind.KG, Kind.LB)
_LEAST = 12
"""A smaller number with repetitions in the next sentence is no load for certain."""
Sentence = tuple[int, int]
"""From a place to another, without the mark that ends it."""


def with_joined_halves(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with halves of one report joined."""
    if not any(m.kind is Kind.STOP for m in marks):
        return list(marks)
    out = _listed(_without_pauses(masked(marks, _told_again(marks))))
    parts = _sentences(out)
    for one, two in pairwise(parts):
        join = _join(out, one, two)
        if join is None:
            continue
        for place in range(two[0], two[1]):
            if join is Kind.WITH and out[place].kind in (Kind.AT, Kind.WITH, Kind.ALL):
                out[place] = replace(out[place], kind=Kind.FILL)
        for place in range(one[1], two[0]):
            kind = join if place == one[1] else Kind.FILL
            out[place] = replace(out[place], kind=kind, text=kind.lower(), tight=False)
    return out


def _without_pauses(marks: Sequence[Mark]) -> list[Mark]:
    """`70 for... 4`: stops between a link and its number, which no set of its own follows."""
    out = list(marks)
    for place, mark in enumerate(marks):
        at = place + 1
        while at < len(marks) and marks[at].kind in (Kind.STOP, Kind.FILL):
            at += 1
        linked = mark.kind in (Kind.FOR, Kind.X) and place > 0 and marks[place - 1].kind is Kind.NUM
        ends = at + 1 >= len(marks) or marks[at + 1].kind not in (Kind.X, Kind.FOR, *_UNITS)
        if linked and at > place + 1 and at < len(marks) and marks[at].kind is Kind.NUM and ends:
            out[place + 1 : at] = [replace(m, kind=Kind.FILL) for m in marks[place + 1 : at]]
    return out


def _listed(marks: list[Mark]) -> list[Mark]:
    """`wall ball 9... 17... 14`: numbers that sentences part, one in each, are a list."""
    parts = _sentences(marks)
    run: list[Sentence] = []
    out = list(marks)
    for part in [*parts, (len(marks), len(marks))]:
        said = [m for m in marks[part[0] : part[1]] if m.kind is not Kind.FILL]
        alone = bool(said) and (_is_load_alone(said) if not run else [m.kind for m in said] == [Kind.NUM])
        parted = bool(run) and all(m.kind is Kind.STOP for m in marks[run[-1][1] : part[0]])
        if alone and (parted or not run):
            run.append(part)
            continue
        if len(run) > _FEW:
            for one, two in pairwise(run):
                for place in range(one[1], two[0]):
                    out[place] = replace(out[place], kind=Kind.COMMA if place == one[1] else Kind.FILL, tight=False)
        run = [part] if bool(said) and _is_load_alone(said) else []
    return out


_FEW = 2
"""Sentences of one number each: more are a list."""


def _sentences(marks: Sequence[Mark]) -> list[Sentence]:
    """Where the sentences stand that a full stop (or several) parts; not over lines and questions."""
    found: list[Sentence] = []
    start = 0
    for place, mark in enumerate([*marks, Mark(Kind.STOP, "", 0, 0)]):
        if mark.kind in _ENDS:
            if place > start:
                found.append((start, place))
            start = place + 1
    return found


def _join(marks: Sequence[Mark], one: Sentence, two: Sentence) -> Kind | None:
    """What joins two sentences, if they are halves."""
    between = marks[one[1] : two[0]]
    first = _behind_gaps([m for m in marks[one[0] : one[1]] if m.kind is not Kind.FILL])
    second = [m for m in marks[two[0] : two[1]] if m.kind is not Kind.FILL]
    if not first or not second or any(m.kind is not Kind.STOP for m in between):
        return None
    if first[-1].kind in (Kind.MINI, Kind.DROP) and not _numbers(first) and second[0].kind is Kind.NUM:
        return Kind.COLON
    if [m.kind for m in second] == [Kind.X, Kind.NUM] and any(m.kind in (Kind.X, Kind.FOR) for m in first[:-1]):
        return Kind.FILL
    if _is_load_alone(second) and _is_far_heavier(first, second):
        return Kind.AT
    if _is_load_alone(first) and _is_repetitions(second):
        load = _numbers(first)[0].value or 0
        smaller = all(m.value is not None and m.value < load for m in _numbers(second))
        counted = second[0].kind is not Kind.NUM or [m.kind for m in second[1:2]] in ([Kind.EACH], [Kind.REPS])
        sure = any(m.kind in (Kind.S, Kind.HAND) for m in first) and counted
        return Kind.COLON if sure or (smaller and load >= _LEAST) else None
    if any(m.kind is Kind.NAME for m in second):
        return None
    if any(m.text == "still" for m in marks[two[0] : two[1]]):
        alone = _is_load_alone([m for m in second if m.kind not in (Kind.AT, Kind.WITH)])
        return Kind.WITH if alone and _numbers(first) and not _has_load(first) else None
    if second[0].kind is Kind.ALL and _is_load_alone([m for m in second[1:] if m.kind not in (Kind.AT, Kind.WITH)]):
        return Kind.COMMA if second[1].kind in (Kind.AT, Kind.WITH) and len(_numbers(first)) > 1 else None
    if (
        second[-1].kind is Kind.ALL
        and _is_load_alone(second[:-1])
        and len(_numbers(first)) > 1
        and not _has_load(first)
    ):
        return Kind.WITH
    if [m.kind for m in first] == [Kind.NUM, Kind.SETS] and second[0].kind in (Kind.NUM, Kind.NAME):
        return Kind.COLON
    if not _is_load_alone(second):
        return None
    counted = first[-1].kind is Kind.REPS or (first[-1].kind is Kind.NUM and second[-1].kind in _UNITS)
    return Kind.AT if counted and not _has_load(first) and len(_numbers(first)) == 1 else None


_MOST_REPS, _LEAST_LOAD = 20, 40
"""Numbers so far apart are repetitions and a load (common practice, no source)."""


def _is_far_heavier(first: Sequence[Mark], second: Sequence[Mark]) -> bool:
    """`got 4. 100`: repetitions that end a sentence, and a load that is the next."""
    counts, loads = _numbers(first), _numbers(second)
    one, two = (counts[0].value, loads[0].value) if len(counts) == len(loads) == 1 else (None, None)
    plain = first[-1].kind is Kind.NUM and not _has_load(first)
    return plain and one is not None and two is not None and one <= _MOST_REPS and two >= _LEAST_LOAD


def _behind_gaps(said: list[Mark]) -> list[Mark]:
    """What stands behind words that are read already: the `took the 10s` of `was gonna take 14s but took the 10s`."""
    last = max((i for i, m in enumerate(said) if m.kind is Kind.GAP), default=-1)
    rest = said[last + 1 :]
    while last >= 0 and rest and rest[0].kind is Kind.COMMA:
        rest = rest[1:]
    return rest or said


def _numbers(marks: Sequence[Mark]) -> list[Mark]:
    return [m for m in marks if m.kind in (Kind.NUM, Kind.CLOCK, Kind.BAD)]


def _has_load(marks: Sequence[Mark]) -> bool:
    return any(m.kind in (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.BODY, *_UNITS) for m in marks)


def _is_load_alone(said: Sequence[Mark]) -> bool:
    """Whether marks are one number, with its name or unit: `squat 155kg`."""
    if not any(m.kind is Kind.NUM for m in said):
        return False
    named = {i - 1 for i, m in enumerate(said) if m.kind is Kind.NAME and i and said[i - 1].kind in (Kind.FOR, Kind.AT)}
    kinds = [m.kind for i, m in enumerate(said) if m.kind not in (Kind.NAME, Kind.COLON) and i not in named]
    kinds = kinds[1:] if kinds[:1] == [Kind.WITH] else kinds
    tails = (*_UNITS, Kind.S, Kind.HAND, Kind.ASSIST, Kind.ADDED)
    return kinds[:1] == [Kind.NUM] and all(k in tails for k in kinds[1:])


def _is_repetitions(said: Sequence[Mark]) -> bool:
    led = said[0].kind in (Kind.NUM, *_LEADING) and any(m.kind is Kind.NUM for m in said)
    rated = next((i for i, m in enumerate(said) if m.kind in _EFFORTS), len(said))
    told = all(m.kind in (*_PLAIN, *_LEADING, Kind.WAS) for m in said[:rated])
    return led and told and said[-1].kind is not Kind.THEN


def _told_again(marks: Sequence[Mark]) -> set[int]:
    """The first telling of how many sets: the `x2` of `60x5 x2... x3!`, and `did three of them` after it."""
    out: set[int] = set()
    for place in range(3, len(marks) - 3):
        if [m.kind for m in marks[place : place + 2]] != [Kind.X, Kind.NUM] or marks[place - 2].kind is not Kind.X:
            continue
        at = place + 2
        while at < len(marks) and marks[at].kind is Kind.STOP:
            at += 1
        if at - place < 4 or [m.kind for m in marks[at : at + 2]] != [Kind.X, Kind.NUM]:
            continue
        out |= set(range(place, at))
        count = marks[at + 1].value
        out |= {
            i for i in range(at + 2, len(marks) - 1) if marks[i].value == count and marks[i + 1].text.startswith("of")
        }
    return out
