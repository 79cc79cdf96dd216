"""How many sets, told beside them and not with them: `plank 45s 3x`, `three planks, 45s each`, `did 3, each 60x9`.

Each becomes a number of sets before or behind what it counts; a number of minis that are listed has no bearing.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.order.near import past, past_fill
from bot.notation.order.steps import put_in_place, step
from bot.notation.tokens import Mark

_ENDS = (None, *EDGES, Kind.AND, Kind.THEN)
_COUNTED = (Kind.S, Kind.SECONDS, Kind.METRES, Kind.M, Kind.REPS, Kind.KG, Kind.LB, Kind.EACH, Kind.NUM)
_DOING = ("did", "managed", "got", "made", "done", "completed")
_ALIKE = (Kind.EACH, Kind.ALL)
_OF_ONE = ("per set", "each set", "every set", "a set", "each time", "every time", "in each set", "for each set")


def told_counts(marks: list[Mark]) -> list[Mark]:
    """The marks with each such number as one of sets."""
    if not any(m.kind is Kind.NUM for m in marks):
        return marks
    return put_in_place(marks, TOLD_COUNTS)


def _is_few(marks: Sequence[Mark], place: int) -> bool:
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and value == int(value) and 2 <= value <= FEW_SETS


def _sets(at: Mark, text: str = "sets") -> Mark:
    return replace(at, kind=Kind.SETS, text=text, value=None, parts=(), names=(), start=at.end, end=at.end)


def _times(marks: list[Mark]) -> list[Mark]:
    """`45s 3x`: an `x` behind the number of sets, with nothing to link."""
    out = list(marks)
    for place, mark in enumerate(marks):
        headed = kind_at(marks, place - 1) in (Kind.NAME, Kind.DONE) and _is_few(marks, place + 1)
        if mark.kind is Kind.X and headed and kind_at(marks, place + 2) in (Kind.COLON, Kind.COMMA, Kind.NUM):
            return [*marks[:place], marks[place + 1], _sets(marks[place + 1], "group"), *marks[place + 2 :]]
        ends = kind_at(marks, place + 1) in _ENDS
        if mark.kind is Kind.X and mark.text == "x" and ends and place > 1 and _is_few(marks, place - 1):
            before = marks[place - 2].kind if marks[place - 2].kind is not Kind.COMMA else kind_at(marks, place - 3)
            if before in _COUNTED and mark.tight:
                out[place] = replace(mark, kind=Kind.SETS, text="of them")
    return out


def _named(marks: list[Mark]) -> list[Mark]:
    """`three planks, 45 seconds each`: how many of the exercise, and what each was."""
    out = list(marks)
    for place in range(len(marks) - 3):
        opens = place == 0 or marks[place - 1].kind in (*EDGES, Kind.AND, Kind.FILL)
        named = kind_at(marks, place + 1) in (Kind.NAME, Kind.WEAK) and marks[place + 1].names
        parted = kind_at(marks, place + 2) in (Kind.COMMA, Kind.COLON, Kind.DASH)
        if not (opens and named and parted and _is_few(marks, place)):
            continue
        at = place + 3
        while at < len(marks) and marks[at].kind not in (*EDGES, Kind.NAME):
            at += 1
        part = marks[place + 3 : at]
        if any(m.kind in _ALIKE for m in part) and any(m.kind is Kind.NUM for m in part):
            out[place : place + 3] = [replace(marks[place + 1], kind=Kind.NAME), marks[place], _sets(marks[place])]
            return out
    return out


def _did(marks: list[Mark]) -> list[Mark]:
    """`did 3, each one 60 for 9`, `managed 4: 60x10 10 9 8`: before the sets that are so many, or all alike."""
    out = list(marks)
    for place in range(1, len(marks) - 2):
        led = marks[place - 1].text in _DOING or [m.text for m in marks[max(0, place - 2) : place]] == ["did", "only"]
        parted = kind_at(marks, place + 1) in (Kind.COMMA, Kind.COLON)
        if _heads(marks, place):
            out[place + 1 : place + 1] = [_sets(marks[place])]
            return out
        if not (led and parted and _is_few(marks, place)):
            continue
        end = next((i for i in range(place + 2, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
        rest = marks[place + 2 : end]
        alike = any(m.kind in _ALIKE for m in rest) and any(m.kind in (Kind.X, Kind.FOR, Kind.AT) for m in rest)
        if alike or _listed(rest) == marks[place].value:
            out.insert(place + 1, _sets(marks[place]))
            return out
    return out


def _did_all(marks: list[Mark]) -> list[Mark]:
    """`did the three at 90, 10s then a 9`: how many there were, each told behind."""
    for place in range(2, len(marks) - 2):
        article = marks[place - 1].text in ("the", "my", "all", "them") and marks[place - 2].text in _DOING
        loaded = kind_at(marks, place + 1) in (Kind.AT, Kind.WITH) and kind_at(marks, place + 2) is Kind.NUM
        end = place + 3 + (kind_at(marks, place + 3) in (Kind.KG, Kind.LB))
        parted = kind_at(marks, end) in (Kind.COMMA, Kind.COLON, Kind.DASH)
        if not (article and loaded and parted and _is_few(marks, place)):
            continue
        told = sum(max(1, len(m.parts)) for m in marks[end:] if m.kind is Kind.NUM)
        if told:
            alike = told == marks[place].value
            gone = replace(marks[place], kind=Kind.GAP if alike else Kind.SLIP, value=None, parts=())
            colon = replace(marks[end], kind=Kind.COLON)
            return [*marks[:place], gone, *marks[place + 2 : end], colon, *marks[end + 1 :]]
    return marks


def _heads(marks: Sequence[Mark], place: int) -> bool:
    """`just the two on bench so far: 60x10, 60x9`: the only number before a colon, and as many sets behind it."""
    if marks[place - 1].text in ("number", "no", "set"):
        return False
    if not _is_few(marks, place) or marks[place - 1].kind not in (Kind.FILL, Kind.WAS):
        return False
    start, _ = part_of(marks, place)
    colon = next((i for i in range(place + 1, len(marks)) if marks[i].kind in (*EDGES, Kind.COLON)), len(marks))
    if kind_at(marks, colon) is not Kind.COLON or sum(m.kind is Kind.NUM for m in marks[start:colon]) != 1:
        return False
    if kind_at(marks, place + 1) not in (Kind.AT, Kind.FILL, Kind.COLON, Kind.UNDONE, Kind.NAME, Kind.DONE):
        return False
    end = next((i for i in range(colon, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    return _listed(marks[colon + 1 : end]) == marks[place].value


def _listed(marks: Sequence[Mark]) -> int:
    """How many sets a list tells: its numbers, each load with its repetitions one."""
    linked = (Kind.X, Kind.FOR, Kind.KG, Kind.LB)
    return sum(m.kind is Kind.NUM for m in marks) - sum(m.kind in linked for m in marks)


def _of_minis(marks: list[Mark]) -> list[Mark]:
    """`2 mini sets, 4 and 3`: the minis that are listed are counted in them; `3 minis, 4 each`: so many of four."""
    out = [
        m
        for i, m in enumerate(marks)
        if not (m.kind in (Kind.FILL, Kind.WORD, Kind.SETS) and _MINI_LOTS & set(m.text.split()) and _is_lot(marks, i))
    ]
    marks = out = _minis_plainly(out)
    for place in range(1, len(marks) - 1):
        counted = marks[place].kind is Kind.MINI and _is_few(marks, place - 1)
        each = past(marks, place + 1, Kind.COMMA, Kind.COLON, Kind.FILL)
        if counted and kind_at(marks, each) is Kind.NUM and kind_at(marks, each + 1) is Kind.EACH:
            of = replace(marks[place], text="minis of")
            return _of_minis([*marks[:place], of, marks[each], *marks[each + 2 :]])
        free = kind_at(marks, place - 2) not in (Kind.X, Kind.FOR)
        if counted and kind_at(marks, place + 1) is Kind.REPS and kind_at(marks, place + 2) is Kind.COLON:
            return _of_minis([*marks[: place + 1], *marks[place + 2 :]])
        parted = kind_at(marks, place + 1) in (Kind.COMMA, Kind.COLON, Kind.DASH)
        if not (counted and free and parted):
            continue
        rest = marks[place + 2 :]
        end = next((i for i, m in enumerate(rest) if m.kind in (Kind.STOP, Kind.LINE, Kind.NAME)), len(rest))
        if _listed(rest[:end]) == marks[place - 1].value:
            out[place - 1] = replace(marks[place - 1], kind=Kind.GAP, value=None, parts=())
            out[place + 1] = replace(marks[place + 1], kind=Kind.COLON)
    return out


def _minis_plainly(marks: list[Mark]) -> list[Mark]:
    """`two little minis off the back of it, 3 reps each time`: without where they stood, each time as each."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        behind = past(marks, place + 1, *_STOOD)
        each = mark.kind is Kind.ALL and mark.text in _EACH_TIME and any(m.kind is Kind.MINI for m in out)
        if each and out[-1].kind is Kind.REPS:
            out.pop()
        minis = next((i for i in range(len(out) - 1, -1, -1) if out[i].kind is not Kind.FILL), None)
        stood = mark.kind in _STOOD and kind_at(marks, behind) in (Kind.COMMA, Kind.COLON)
        if stood and minis is not None and out[minis].kind is Kind.MINI and _is_counted(out, minis):
            continue
        if mark.kind is Kind.MINI and _is_counted([*out, mark], len(out)):
            while out[-1].kind is Kind.FILL:
                out.pop()
        out.append(replace(mark, kind=Kind.EACH) if each else mark)
    return out


_STOOD = (Kind.FILL, Kind.AT, Kind.TO, Kind.LASTSET, Kind.SAMELOAD, Kind.WITH)
_EACH_TIME = ("each time", "both times", "every time", "apiece", "all times", "each one")


def _is_counted(marks: Sequence[Mark], minis: int) -> bool:
    """Whether minis have their number before them: `two minis`, `two little minis`."""
    at = minis - 1
    while kind_at(marks, at) is Kind.FILL:
        at -= 1
    return _is_few(marks, at)


def _all_but(marks: list[Mark]) -> list[Mark]:
    """`100x5 except the last one 100x4`: all but that one."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.EXCEPT or any(m.kind in (Kind.ALL, Kind.SETS, Kind.PLANNED) for m in marks[:place]):
            continue
        at = past_fill(marks, place + 1)
        if kind_at(marks, at) in (Kind.LASTSET, Kind.ORD) and sum(m.kind is Kind.X for m in marks[:place]) == 1:
            start = next(i for i, m in enumerate(marks) if m.kind is Kind.NUM)
            every = replace(mark, kind=Kind.ALL, text="all", end=mark.start)
            return [*marks[:start], every, *marks[start:place], replace(mark, kind=Kind.COMMA), *marks[place + 1 :]]
    return marks


def _per_set(marks: list[Mark]) -> list[Mark]:
    """`20 per set with the 24`: in every set, before what links its load."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ALL or mark.text not in _OF_ONE or not place:
            continue
        linked = (
            kind_at(marks, place + 1) in (Kind.AT, Kind.WITH)
            and kind_at(marks, past_fill(marks, place + 2)) is Kind.NUM
        )
        start, _ = part_of(marks, place)
        number = place - 1 - (kind_at(marks, place - 1) in (Kind.REPS, Kind.SECONDS, Kind.M, Kind.METRES))
        if linked and number >= start and kind_at(marks, number) is Kind.NUM:
            return [*marks[:number], mark, *marks[number:place], *marks[place + 1 :]]
    return marks


_MINI_LOTS = frozenset(["lots", "rounds", "bunches", "goes", "of"])


def _is_lot(marks: Sequence[Mark], place: int) -> bool:
    """Whether a word stands between so many and their minis: `4 lots of minis`."""
    after = place + 1
    while kind_at(marks, after) is Kind.FILL:
        after += 1
    before = place - 1 if kind_at(marks, place - 1) is Kind.NUM else place - 2
    return kind_at(marks, after) is Kind.MINI and kind_at(marks, before) is Kind.NUM


TOLD_COUNTS = (
    step(_times, (Kind.X,)),
    step(_named, _ALIKE, (Kind.NAME, Kind.WEAK)),
    step(_did, (Kind.COMMA, Kind.COLON)),
    step(_did_all, _DOING, (Kind.AT, Kind.WITH)),
    step(_of_minis, (Kind.MINI,)),
    step(_per_set, (Kind.ALL,)),
    step(_all_but, (Kind.EXCEPT,)),
)
"""The steps, in order."""
