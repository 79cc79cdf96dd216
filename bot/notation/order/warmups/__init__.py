"""Warm-ups told behind their sets or before them: `20x8 30x5 all warmups`, `first was a warmup`."""

from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.order.warmups.behind import all_were, first_was, it_was, not_of_work, one_behind, told_after
from bot.notation.order.warmups.counted import counted_first, only_counted, so_many
from bot.notation.order.warmups.entries import ENDS, entry_end
from bot.notation.order.warmups.spoken_of import of_talk
from bot.notation.tokens import Mark


def warmups(marks: list[Mark]) -> list[Mark]:
    """The marks with the word before the sets that it is of."""
    marks = _moved_ahead(_bracketed(marks))
    marks = [replace(m, kind=Kind.FILL) if _leads_name(marks, i) else m for i, m in enumerate(marks)]
    marks = one_behind(not_of_work(told_after(_headed(of_talk(_crossed(marks))))))
    return it_was(all_were(first_was(_done(only_counted(counted_first(so_many(marks)))))))


_OF_WARMUP = frozenset((Kind.WARMUP, Kind.NUM, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.S, Kind.COMMA, Kind.AND,
                        Kind.FILL, Kind.SET, Kind.SETS, Kind.REPS, Kind.COLON, Kind.BODY, Kind.EACH))  # fmt: skip
"""Kinds of a warm-up's sets in brackets."""


def _bracketed(marks: list[Mark]) -> list[Mark]:
    """`rdl (warm-up 45x7) 90: 8, 8`: the sets in brackets, and then those behind."""
    out: list[Mark] = []
    opened: int | None = None
    for place, mark in enumerate(marks):
        inside = marks[opened + 1 : place] if opened is not None and mark.kind is Kind.CLOSE else []
        if opened is not None and _tells_warmup(inside) and _is_led(marks, place + 1):
            out[opened - place :] = [*inside, replace(mark, kind=Kind.THEN, text="then")]
        else:
            out.append(mark)
        opened = place if mark.kind is Kind.OPEN else None if mark.kind is Kind.CLOSE else opened
    return out


def _moved_ahead(marks: list[Mark]) -> list[Mark]:
    """`curls 10x5 warm-up, 25 x 11` as `curls warm-up 10x5, then 25 x 11`: one set straight behind a name."""
    out = list(marks)
    for place in range(4, len(marks)):
        entry = [m.kind for m in marks[place - 3 : place]] == [Kind.NUM, Kind.X, Kind.NUM]
        if marks[place].kind is not Kind.WARMUP or not entry or marks[place - 4].kind is not Kind.NAME:
            continue
        if kind_at(marks, place + 1) is not Kind.COMMA or kind_at(marks, place + 2) is not Kind.NUM:
            continue
        out[place - 3 : place + 1] = [marks[place], *marks[place - 3 : place]]
        out[place + 1] = replace(marks[place + 1], kind=Kind.THEN, text="then")
    return out


def _tells_warmup(inside: list[Mark]) -> bool:
    kinds = [m.kind for m in inside]
    return Kind.WARMUP in kinds and Kind.NUM in kinds and _OF_WARMUP.issuperset(kinds)


def _is_led(marks: list[Mark], at: int) -> bool:
    """Whether sets follow: `90: 8, 8`, `then 90x8`, `work 90x8`."""
    return next((m.kind for m in marks[at : at + 2] if m.kind not in (Kind.FILL, Kind.COMMA, Kind.THEN, Kind.WORKSET)),
                None) is Kind.NUM  # fmt: skip


def _leads_name(marks: list[Mark], place: int) -> bool:
    """The `for` of `couple of warm up sets for push press, then 135 for 5`."""
    led = marks[place].kind is Kind.FOR and kind_at(marks, place - 1) is Kind.WARMUP
    return led and kind_at(marks, place + 1) is Kind.NAME


def _crossed(marks: list[Mark]) -> list[Mark]:
    """`warm up bw x5 x5`: two sets, and not five of five, where each has its own cross straight before it."""
    out = list(marks)
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), len(marks))
    for place in range(first + 3, len(marks) - 1):
        if marks[place].kind is Kind.WORKSET or marks[place].kind in ENDS:
            break
        if marks[place].kind is Kind.BODY and kind_at(marks, place - 1) is Kind.NUM:
            out[place] = replace(marks[place], kind=Kind.COMMA, text=",")
        listed = [m.kind for m in marks[place - 2 : place + 2]] == [Kind.X, Kind.NUM, Kind.X, Kind.NUM]
        apart = marks[place].kind is Kind.X and not marks[place].tight and marks[place + 1].tight
        if apart and (listed or [m.kind for m in out[place - 2 : place]] == [Kind.COMMA, Kind.NUM]):
            out[place] = replace(marks[place], kind=Kind.COMMA, text=",")
    return out


def _headed(marks: list[Mark]) -> list[Mark]:
    """`warm up` on a line of its own: the sets on the lines below it, up to an empty one or a name."""
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), len(marks))
    line = first + 1
    while kind_at(marks, line) in (Kind.SET, Kind.SETS, Kind.COLON, Kind.DASH):
        line += 1
    if kind_at(marks, line) is not Kind.LINE or kind_at(marks, first - 1) not in (None, Kind.LINE, Kind.NAME):
        return marks
    at, told = line + 1, 0
    while (end := entry_end(marks, at)) is not None:
        told, at = told + 1, end
        while kind_at(marks, at) is Kind.COMMA:
            at += 1
        at += kind_at(marks, at) is Kind.LINE and entry_end(marks, at + 1) is not None
    name = at + 1
    parted = kind_at(marks, at) is Kind.LINE and kind_at(marks, name) in (Kind.LINE, Kind.NAME, Kind.WORKSET)
    if not told or not parted:
        return marks
    listed = [replace(m, kind=Kind.COMMA, text=",") if m.kind is Kind.LINE else m for m in marks[line + 1 : at]]
    return [*marks[: first + 1], *listed, replace(marks[at], kind=Kind.WORKSET, text="work set"), *marks[at:]]


def _done(marks: list[Mark]) -> list[Mark]:
    """`warm up done: bar only 20x8, then 35x5. work set: 50x5`: the sets up to the working ones."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    work = next((i for i, m in enumerate(marks) if m.kind is Kind.WORKSET), None)
    if place is None:
        return marks
    out = list(marks)
    if [kind_at(marks, place + n) for n in (1, 2)] == [Kind.DONE, Kind.COLON]:
        out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    for at in range(place, work or place):
        if marks[at].kind is Kind.THEN:
            out[at] = replace(marks[at], kind=Kind.COMMA, text=",")
        if marks[at].kind is Kind.PLATES and kind_at(marks, at + 1) is Kind.NUM:
            out[at] = replace(marks[at], kind=Kind.FILL)
    return out
