"""Drops that are counted or told of in the plural: `two drops: 180x11, 90x10`, `dropped it twice, 10 and 8`."""

from dataclasses import replace
from itertools import pairwise

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.drops.untold import ENDS
from bot.notation.order.near import past
from bot.notation.tokens import Mark


def uncounted(marks: list[Mark]) -> list[Mark]:
    """`two drops: 180x11, 90x10`, `dropped twice, 180x11`, `drop 1 180x11`: the drops, not how many or which; so too in
    `35x9 and again to 25x7`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.NUM, Kind.TIMES, Kind.TO):
            out.append(mark)
            continue
        entry = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in (
            Kind.X,
            Kind.FOR,
            Kind.KG,
            Kind.LB,
        )
        many = kind_at(marks, place + 1) is Kind.DROP and set(text_at(marks, place + 1).split()) & _PLURAL
        counts = mark.kind is Kind.NUM and mark.value in (1, 2, 3, 4)
        behind = kind_at(marks, place - 1) is Kind.DROP
        numbered = behind and counts and mark.value != 4 and (entry or kind_at(marks, place + 1) is Kind.COLON)
        if (counts and (many or numbered)) or (mark.kind is Kind.TIMES and behind):
            out.append(replace(mark, kind=Kind.FILL, value=None, parts=()))
        else:
            led = text_at(marks, place - 1).split()[-1:]
            to = mark.kind is Kind.TO and (kind_at(marks, place - 1) is Kind.THEN or led == ["again"])
            went = to and any(m.kind in (Kind.DROP, Kind.ARROW) for m in marks[:place])
            if went and led == ["again"]:
                out[-1] = replace(out[-1], kind=Kind.FILL)
            out.append(replace(mark, kind=Kind.DROP, text="drop to") if went else mark)
    return out


def each_counted(marks: list[Mark]) -> list[Mark]:
    """`dropped it twice, 10 and 8`, `two drops of 10 and 8`: as many drops, each told by its number alone."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.DROP:
            continue
        at = past(marks, place + 1, Kind.FILL)
        twice = kind_at(marks, at) is Kind.TIMES and text_at(marks, at).split()[-1:] == ["twice"]
        two = kind_at(marks, place - 1) is Kind.NUM and marks[place - 1].value == SEVERAL
        two = two or text_at(marks, place - 1) == "double"
        if not (twice or two or mark.text in _DOUBLED):
            continue
        at = past(marks, at + twice, Kind.FILL, Kind.COMMA, Kind.COLON, Kind.FOR)
        counted = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        joined = counted + (kind_at(marks, counted) in (Kind.COMMA, Kind.AND, Kind.SLASH, Kind.THEN))
        end = joined + 1 + (kind_at(marks, joined + 1) is Kind.REPS)
        pair = kind_at(marks, at) is kind_at(marks, joined) is Kind.NUM
        if not pair or kind_at(marks, end) in _LOADED:
            continue
        led = text_at(marks, at - 1) in ("for", "of") or end > joined + 1
        last = next((m.value for m in reversed(marks[: place - two]) if m.kind is Kind.NUM), None)
        if not led and last is not None and (marks[at].value or 0) > last > (marks[joined].value or 0):
            continue
        reps = [replace(mark, kind=Kind.REPS, text="reps", start=mark.end)] if led else []
        one, other = (replace(m, tight=False) for m in (marks[at], marks[joined]))
        drop = replace(mark, kind=Kind.DROP, text="drop")
        apart = replace(mark, kind=Kind.COMMA, text=",", start=one.end, end=one.end)
        first = [replace(marks[place - 1], kind=Kind.FILL, value=None)] if two else []
        again = replace(drop, start=one.end, end=one.end)
        out[place - two : end] = [*first, drop, one, *reps, apart, again, other, *reps]
        return out
    return out


_LOADED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB, Kind.NUM, Kind.S, Kind.HAND)
_DOUBLED = frozenset(["double drop", "double drops", "double dropped", "double drop set"])


def of_several(marks: list[Mark]) -> list[Mark]:
    """`180 for 11 and 90 for 10 on the drops`: each set of the part before, but the first of more than two."""
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.DROP, Kind.DROPPED):
            continue
        plural = bool(set(mark.text.split()) & _PLURAL)
        plural = plural or (mark.kind is Kind.DROPPED and kind_at(marks, place + 1) is Kind.SETS)
        end = place + 1 + (kind_at(marks, place + 1) is Kind.SETS)
        if not plural or kind_at(marks, end) not in (None, Kind.COMMA, *ENDS):
            continue
        opens = (*ENDS, Kind.THEN, Kind.NAME, Kind.COLON, Kind.DROP)
        start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind in opens), 0)
        led = kind_at(marks, place - 1) is Kind.FOR
        linked = [i for i in range(start, place - led) if marks[i].kind in (Kind.X, Kind.FOR, Kind.NUM)]
        entries = [i for i, link in pairwise(linked) if marks[link].kind is not Kind.NUM]
        loads = [i for i in entries if marks[i].kind is Kind.NUM]
        if len(loads) < SEVERAL:
            continue
        lower = [marks[i].value or 0 for i in loads]
        dropped = loads if len(loads) == SEVERAL else loads[1:]
        if lower != sorted(lower, reverse=True):
            continue
        out: list[Mark] = []
        for at, one in enumerate(marks[:place]):
            if at in dropped:
                out.append(replace(mark, kind=Kind.DROP, text="drop", start=one.start, end=one.start))
            led = one.kind is Kind.FOR and at == place - 1
            joins = one.kind is Kind.ARROW and at > start
            out.append(replace(one, kind=Kind.FILL) if led else replace(one, kind=Kind.COMMA) if joins else one)
        return [*out, *(replace(m, kind=Kind.FILL) for m in marks[place:end]), *marks[end:]]
    return marks


_PLURAL = frozenset(["drops", "dropsets", "sets"])
