"""What two exercises, told one after the other, did next: `abduction 120x15, adduction 110x15, then both again for 14`.

It is told behind the name of each, a line each. `both twice` is as many sets of each as the plan has.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, PlannedExercise

_PARTS = frozenset((*EDGES, Kind.THEN))
_TOLD = frozenset((Kind.NUM, Kind.REPS, Kind.KG, Kind.LB, Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.SECONDS,
                   Kind.METRES))  # fmt: skip
_AGAIN = frozenset((Kind.SAME, Kind.AGAIN, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.SAMELOAD))
_SAID = frozenset((*_AGAIN, Kind.NUM, Kind.NAME, Kind.WEAK, Kind.SETS, Kind.SET, Kind.RPE, Kind.RIR, Kind.TANK,
                   Kind.EMPTY, Kind.FAILED, Kind.SKIP, Kind.SKIPPED, Kind.PLANNED, Kind.DONE))  # fmt: skip
"""What a part says of sets: a `both` of none of it is of how they felt."""
_COUNTING = frozenset((Kind.SETS, Kind.SET, Kind.TIMES))
_SMALL = frozenset(
    words("and then i did of them those the exercises both time round go with for on again once more of")
)
_LINKS = frozenset(words("on for of at with in"))


def with_both_again(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with what is said of both behind the name of each."""
    if not any(m.text == "both" or m.kind is Kind.EACH for m in marks):
        return list(marks)
    marks = [
        replace(m, kind=Kind.THEN) if m.text == "and again" and text_at(marks, i + 1) == "both" else m
        for i, m in enumerate(marks)
    ]
    out: list[Mark] = []
    told: dict[int, Mark] = {}
    at = 0
    while at < len(marks):
        end = _end(marks, at)
        part = marks[at:end]
        names = [m for m in part if m.kind in (Kind.NAME, Kind.WEAK)]
        for name in names:
            told = {**told, name.names[0]: name} if len(name.names) == 1 and kind_at(part, 1) else told
        shared = _shared(part, [exercises[p] for p in told]) if len(told) == SEVERAL and not names else None
        if shared is None:
            talk = len(told) == SEVERAL and not any(m.kind in _SAID for m in part)
            out += [replace(m, kind=Kind.FILL) if talk and m.text == "both" else m for m in part]
            out += marks[end : end + 1]
        else:
            while out and out[-1].kind in _PARTS:
                out.pop()
            for name in told.values():
                line = replace(part[0], kind=Kind.LINE, text="\n", value=None, parts=(), end=part[0].start)
                out += [line, name, *shared]
            out += [] if end >= len(marks) or marks[end].kind is Kind.COMMA else [marks[end]]
        at = end + 1
    return out


def _end(marks: Sequence[Mark], at: int) -> int:
    """Where a part ends that starts here: before `and again both`, too, and behind the count of `both again, 14`."""
    end = at
    while end < len(marks) and marks[end].kind not in _PARTS:
        opens = kind_at(marks, end + 1) in _AGAIN or text_at(marks, end + 1) == "both"
        if end > at and opens and marks[end].kind is Kind.AND:
            return end
        end += 1
    part = marks[at:end]
    bare = kind_at(marks, end + 1) is Kind.NUM and kind_at(marks, end + 2) in (None, Kind.REPS, *_PARTS)
    said = any(m.text == "both" for m in part) and not any(m.kind in (Kind.NUM, Kind.NAME) for m in part)
    counted = said and bare and kind_at(marks, end) in (Kind.COMMA, Kind.COLON)
    return end + 2 + (kind_at(marks, end + 2) is Kind.REPS) if counted else end


def _shared(part: Sequence[Mark], told: Sequence[PlannedExercise]) -> list[Mark] | None:
    """What a part tells of each of two exercises; `None` where it tells nothing of both."""
    alone = all(e.sides == 1 and e.load_style is not LoadStyle.PER_HAND for e in told)
    again = any(m.kind in _AGAIN for m in part)
    each = [i for i, m in enumerate(part) if m.text == "both" or (alone and m.kind is Kind.EACH and m.text == "each")]
    known = all(
        m.kind in _TOLD | _AGAIN | _COUNTING | _PARTS or i in each or set(m.text.split()) <= _SMALL
        for i, m in enumerate(part)
    )
    if not each or not known or not (alone or again):
        return None
    which = any(m.kind in (Kind.ORD, Kind.LASTSET) for m in part)
    counted = next((i for i, m in enumerate(part) if m.kind in _COUNTING and m.text != "time" and not which), None)
    if counted is not None:
        count = SEVERAL if part[counted].text == "twice" else whole_number(part, counted - 1, SEVERAL, FEW_SETS)
        if count is None or any(len(e.sets) != count for e in told) or sum(m.kind is Kind.NUM for m in part) > 1:
            return None
        same = replace(part[each[0]], kind=Kind.SAME, text="same")
        comma = replace(same, kind=Kind.COMMA, text=",")
        return [same, *(m for _ in range(count - SEVERAL) for m in (comma, same))]
    kept = [
        m
        for i, m in enumerate(part)
        if m.kind in _TOLD and not (i + 1 in each and m.text in _LINKS) and (m.kind is not Kind.FOR or i)
    ]
    while kept and kept[0].kind in (Kind.FOR, Kind.X):
        del kept[0]
    if kept:
        return kept if any(m.kind is Kind.NUM for m in kept) else None
    return [replace(part[each[0]], kind=Kind.SAME, text="same")] if again else None
