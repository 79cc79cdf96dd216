"""Warm-ups that are told behind their sets: `40x6, not a work set`, `20x8 30x5 all warmups`, `first was a warmup`."""

from dataclasses import replace

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.order.warmups.entries import ENDS, OF_ONE_SET, counts_sets
from bot.notation.tokens import Mark


def told_after(marks: list[Mark]) -> list[Mark]:
    """`60x7 after a warm up of 40x8`: two sentences."""
    for place in range(2, len(marks) - 1):
        article = kind_at(marks, place - 1) is Kind.FILL and text_at(marks, place - 1) in ("a", "my", "one", "the")
        before = place - 1 - article
        opened = before - (kind_at(marks, before - 1) in (Kind.OPEN, Kind.COMMA))
        whole = [m.kind for m in marks[max(0, opened - 3) : opened]] in _ENTRIES
        if marks[place].kind is Kind.WARMUP and text_at(marks, before) == "after" and whole:
            stop = replace(marks[before], kind=Kind.STOP, text=".", value=None)
            return [*marks[:opened], stop, *marks[place:]]
    return marks


_ENTRIES = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM], [Kind.X, Kind.NUM, Kind.REPS])


def not_of_work(marks: list[Mark]) -> list[Mark]:
    """`40x6, not a work set`: a warm-up."""
    out = list(marks)
    for place, mark in enumerate(marks):
        at = place + 1
        while text_at(marks, at) in _REAL:
            at += 1
        real = text_at(marks, at - 1) in _REAL - {"a"} and kind_at(marks, at) is Kind.SET
        if mark.kind is Kind.NOT and (kind_at(marks, at) is Kind.WORKSET or real):
            warm = Mark(Kind.WARMUP, "warm up", mark.start, marks[at].end)
            out[place : at + 1] = [warm, *(replace(m, kind=Kind.GAP) for m in marks[place + 1 : at + 1])]
    return out


_REAL = frozenset(["a", "real", "proper", "working", "work", "counted", "true", "top"])


def one_behind(marks: list[Mark]) -> list[Mark]:
    """`20x8 warm up, 60x10`, `first 60x15, doesnt count just warm up`: the only set of its sentence before it."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    end = place + 1 if place is not None else 0
    while kind_at(marks, end) in (Kind.FILL, Kind.SET, Kind.GAP):
        end += 1
    if place is None or kind_at(marks, end) not in (None, Kind.COMMA, Kind.THEN, Kind.AND, Kind.CLOSE, *ENDS):
        return marks
    start = max((i + 1 for i in range(place) if marks[i].kind in ENDS), default=0)
    numbers = [i for i in range(start, place) if marks[i].kind is Kind.NUM]
    after = next((i for i in range(place + 1, len(marks)) if marks[i].kind is Kind.NUM), None)
    again = after is not None and any(m.kind is Kind.WARMUP for m in marks[place + 1 : after + 4])
    if len(numbers) != OF_ONE_SET or again:
        return marks
    entry, told = marks[numbers[0] : numbers[1] + 1], marks[numbers[1] + 1 : place]
    plain = all(m.kind in _OF_ENTRY for m in entry)
    plain = plain and all(m.kind in _LITTLE for m in told)
    if not plain or not any(m.kind in (Kind.X, Kind.FOR, Kind.WITH) for m in entry):
        return marks
    early = replace(marks[place], start=entry[0].start, end=entry[0].start)
    work = replace(marks[place], kind=Kind.WORKSET, text="work set")
    led = [replace(m, kind=Kind.FILL) if m.kind is Kind.ORD and m.value == 1 else m for m in marks[: numbers[0]]]
    behind = [m for m in told if m.kind is not Kind.COMMA and not (m.kind is Kind.ORD and m.value == 1)]
    return [*led, early, *entry, *behind, work, *marks[end:]]


_OF_ENTRY = (Kind.NUM, Kind.X, Kind.FOR, Kind.WITH, Kind.REPS, Kind.KG, Kind.LB, Kind.FILL, Kind.S)
_LITTLE = (Kind.REPS, Kind.EACH, Kind.S, Kind.KG, Kind.LB, Kind.FILL, Kind.OPEN, Kind.COMMA, Kind.WAS, Kind.WORD,
           Kind.TO, Kind.ORD, Kind.DASH, Kind.NOT, Kind.GAP)  # fmt: skip


def all_were(marks: list[Mark]) -> list[Mark]:
    """`135x8, 185x5, 225x3 just warm ups so far`, `135x8, 185x5 to warm up, 225x3`: all of the part before."""
    for place, mark in enumerate(marks):
        if not _is_of_all(marks, place):
            continue
        start = _start(marks, place, (*ENDS, Kind.NAME))
        if all(m.kind in _LED for m in marks[start:place]) and kind_at(marks, place - 1) is Kind.WAS:
            start = _start(marks, start - 1, (*ENDS, Kind.NAME))
        before = marks[start:place]
        last = next((m for m in reversed(before) if m.kind not in _LED), None)
        ended = last is not None and last.kind in (Kind.NUM, Kind.REPS)
        if not ended or any(m.kind is Kind.WARMUP for m in before):
            continue
        entries = [i for i, m in enumerate(before) if m.kind in (Kind.X, Kind.FOR) and counts_sets(before, i + 1)]
        if len(entries) < SEVERAL:
            continue
        first = start + next(i for i, m in enumerate(before) if m.kind is Kind.NUM)
        held = [replace(m, kind=Kind.COMMA) if m.kind is Kind.THEN else m for m in marks[first:place]]
        while held[-1].kind in _LED:
            held.pop()
        held = [m for m in held if m.kind is not Kind.ALL]
        early = replace(mark, end=mark.start)
        return [*marks[:first], early, *held, replace(mark, kind=Kind.WORKSET, text="work set"), *marks[place + 1 :]]
    return marks


_LED = (Kind.FILL, Kind.ALL, Kind.WAS, Kind.EACH, Kind.FOR, Kind.TO, Kind.DASH, Kind.COMMA, Kind.OPEN, Kind.STOP)


def _start(marks: list[Mark], place: int, bounds: tuple[Kind, ...]) -> int:
    """Where the part starts in which a place is."""
    return next((i for i in range(place, 0, -1) if marks[i - 1].kind in bounds), 0)


def _is_of_all(marks: list[Mark], place: int) -> bool:
    """Whether a warm-up is of all sets before it: `all warm up`, `warm ups`, `to warm up`."""
    mark = marks[place]
    if mark.kind is not Kind.WARMUP:
        return False
    said = mark.text.split()
    plural = said[-1] in ("ups", "warmups", "warms", "feelers") or mark.text.endswith(("up sets", "warmup sets"))
    ends = kind_at(marks, place + 1) in (None, Kind.COMMA, Kind.THEN, Kind.AND, Kind.BREAK, Kind.CLOSE, *ENDS)
    purpose = said[0] in ("to", "as", "for") or "warming" in said
    start = _start(marks, place, (*ENDS, Kind.NAME, Kind.COMMA, Kind.THEN))
    was = kind_at(marks, place - 1) is Kind.WAS and start == _start(marks, place, (*ENDS, Kind.NAME))
    return plural or kind_at(marks, place - 1) is Kind.ALL or (ends and (purpose or was))


def first_was(marks: list[Mark]) -> list[Mark]:
    """`120x8, 135x8 - first was a warmup`, `first two were warm ups`: the first sets that the message tells."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    if place is None or any(m.kind is Kind.NUM for m in marks[place:]):
        return marks
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.FILL, Kind.WAS, Kind.SET, Kind.SETS)):
        at -= 1
    many = whole_number(marks, at, 2, FEW_SETS) if kind_at(marks, at - 1) in (Kind.ORD, Kind.LABEL) else None
    at -= many is not None
    first = kind_at(marks, at) in (Kind.ORD, Kind.LABEL) and marks[at].value == 1
    numbers = [i for i in range(max(at, 0)) if marks[i].kind is Kind.NUM]
    parts = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.THEN, Kind.AND)
    ends = [i for i in range(numbers[0], at) if marks[i].kind in parts] if numbers else []
    end = ends[(many or 1) - 1] if len(ends) >= (many or 1) else None
    if not first or end is None or not any(i > end for i in numbers):
        return marks
    rest = [replace(m, kind=Kind.GAP, value=None) for m in marks[at : place + 1]]
    early = replace(marks[place], start=marks[numbers[0]].start, end=marks[numbers[0]].start)
    work = replace(marks[end], kind=Kind.WORKSET, text="work set")
    return [*marks[: numbers[0]], early, *marks[numbers[0] : end + 1], work, *marks[end + 1 : at], *rest,
            *marks[place + 1 :]]  # fmt: skip


_WAS = frozenset(["only", "just", "was", "my", "last", "a", "the", "still", "as", "for", "to"])


def it_was(marks: list[Mark]) -> list[Mark]:
    """`140 for the feeling, 2 reps, only warm up. then 150x3`: the one set of the sentence that the word ends."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.WARMUP or kind_at(marks, place + 1) not in (None, *ENDS):
            continue
        start = max((i + 1 for i in range(place) if marks[i].kind in ENDS), default=0)
        numbers = [i for i in range(start, place) if marks[i].kind is Kind.NUM]
        led = place - 1
        while led >= start and (marks[led].kind in (Kind.WAS, Kind.FILL, Kind.LASTREP, Kind.LASTSET)):
            led -= 1
        apart = led < place - 1 and kind_at(marks, led) in (Kind.COMMA, Kind.DASH, Kind.NUM, Kind.REPS)
        if not apart or len(numbers) != OF_ONE_SET or not set(_words(marks[led + 1 : place])) & _WAS:
            continue
        first = numbers[0]
        early = replace(mark, end=mark.start)
        work = replace(mark, kind=Kind.WORKSET, text="work set")
        return [*marks[:first], early, *marks[first : led + 1], work, *marks[place + 1 :]]
    return marks


def _words(marks: list[Mark]) -> list[str]:
    return [w for m in marks for w in m.text.split()]
