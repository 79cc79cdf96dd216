"""Sets told in groups: `first two 140x12`, `140x12 for the first two`, `11 on the third`, `5th at 72.5`.

A group becomes the number of its first set and how many sets, before what is told of it.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS, MOST_SETS
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.order.by_number import BY_NUMBER, TELLS, group_marks
from bot.notation.order.near import OF_LOAD, past_fill, whole_number
from bot.notation.order.steps import put_in_place, step
from bot.notation.tokens import Mark

_ENDS = (None, *EDGES, Kind.AND, Kind.THEN)
_ENTRY = (Kind.NUM, Kind.X, Kind.FOR, Kind.REPS, Kind.FILL, Kind.AT, Kind.WITH, Kind.EACH, Kind.M, Kind.METRES,
          Kind.SECONDS, Kind.CLOCK, Kind.TO, *OF_LOAD)  # fmt: skip
_LINKS = (Kind.FOR, Kind.AT, Kind.WITH)
_LOWS = ("singles", "doubles", "triples", "single", "double", "triple")
_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4}
_LASTS = ("last", "the last", "final", "the final", "next", "the next", "other", "the other", "remaining", "my last")


def groups(marks: list[Mark]) -> list[Mark]:
    """The marks with each group before what is told of it."""
    return put_in_place(marks, GROUPS if any(m.kind is Kind.NUM for m in marks) else BY_NUMBER)


def _last_behind(marks: list[Mark]) -> list[Mark]:
    """`first two with 24s, 22s for the last`: the last one before what is told of it, behind a group."""
    for place in range(2, len(marks)):
        last = marks[place].kind in (Kind.LASTSET, Kind.LASTREP) and marks[place].text.split(" ")[-1] in (
            "last",
            "one",
            "set",
        )
        link = place - (marks[place - 1].kind in _LINKS)
        bare = link == place and marks[place - 1].kind not in (Kind.NUM, Kind.S, Kind.REPS)
        if not last or bare or kind_at(marks, past_fill(marks, place + 1)) not in _ENDS:
            continue
        start = link
        while kind_at(marks, start - 1) in (Kind.NUM, Kind.X, Kind.FOR, Kind.FILL, Kind.REPS, *OF_LOAD):
            start -= 1
        grouped = any(m.text in _GROUPS for m in marks[:start])
        if grouped and any(m.kind is Kind.NUM for m in marks[start:place]):
            which = replace(marks[place], kind=Kind.LASTSET)
            return [*marks[:start], which, *marks[start:link], *marks[place + 1 :]]
    return marks


_GROUPS = ("group", "last group")


def _opening(marks: Sequence[Mark], place: int) -> tuple[int | None, int, int] | None:
    """A group that opens at a place: its first set (`None`: the next one), how many, and where its words end."""
    mark = marks[place]
    first = mark.kind is Kind.ORD and mark.value == 1
    last = mark.text in _LASTS or (mark.kind is Kind.LASTREP and mark.text.endswith("last"))
    at = past_fill(marks, place + 1)
    count = whole_number(marks, at, 2, FEW_SETS)
    if not (first or last) or count is None or kind_at(marks, at + 1) in (Kind.X, *OF_LOAD, Kind.REPS, Kind.SECONDS):
        return None
    if any(m.text == "one" for m in marks[place + 1 : at]) or _at_load(marks, at + 1):
        return None
    end = at + 1
    while kind_at(marks, end) in (Kind.SETS, Kind.SET) or (
        end < len(marks) and marks[end].text in ("ones", "of", "them", "those", "rounds")
    ):
        end += 1
    if kind_at(marks, end) is Kind.NAME and kind_at(marks, end + 1) in (*TELLS, Kind.COMMA, Kind.FILL):
        end += 1
        while kind_at(marks, end) in (Kind.SETS, Kind.SET):
            end += 1
    return (1 if first else None), count, end


def _at_load(marks: Sequence[Mark], at: int) -> bool:
    """`next 5@285`: the repetitions of one set at its load, no group (`last two @8` is one with an effort)."""
    load = marks[at + 1].value if kind_at(marks, at + 1) is Kind.NUM and marks[at].text == "@" else None
    return load is not None and load > MOST_SETS


def _led(marks: list[Mark]) -> list[Mark]:
    """`first two at 140 for 12`, `the last two were 130x12`: before what is told of them."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        opened = _opening(marks, at)
        name = _name_in(marks, at, opened[2]) if opened is not None else None
        named = name is not None
        tells = opened is not None and (kind_at(marks, past_fill(marks, opened[2])) in TELLS or named)
        if opened is None or not tells or _counts_again(marks, opened[2]):
            if _is_fifth_at(marks, at):
                out.append(replace(marks[at], kind=Kind.LABEL))
                at += 2
                continue
            out.append(marks[at])
            at += 1
            continue
        first, count, end = opened
        if first is None and any(m.kind is Kind.LABEL for m in out):
            first = None
        out += [] if name is None else [name]
        out += group_marks(marks[at], first, count, marks[end - 1].end)
        at = end
        rest = past_fill(marks, at)
        if kind_at(marks, rest) in (Kind.WAS, Kind.AT, Kind.WITH, Kind.COLON, Kind.ALL, Kind.DROP):
            text = "was" if marks[rest].kind is Kind.WAS else marks[rest].text
            out.append(replace(marks[rest], kind=Kind.WAS if text == "was" else Kind.FILL))
            at = rest + 1
    return out


def _name_in(marks: Sequence[Mark], start: int, end: int) -> Mark | None:
    """The name in `first two swings sets`."""
    return next((m for m in marks[start:end] if m.kind is Kind.NAME), None)


def _counts_again(marks: Sequence[Mark], end: int) -> bool:
    """`first 5 at 100, second 5 at 100`: repetitions of each, no group."""
    spoken = any(m.kind is Kind.ORD and m.value == 2 for m in marks[end:])
    return spoken and kind_at(marks, end) in (Kind.AT, Kind.WITH, Kind.NUM, Kind.FOR)


def _is_fifth_at(marks: Sequence[Mark], place: int) -> bool:
    """`5th at 72.5 x 3`: the number of a set before its load."""
    if marks[place].kind is not Kind.ORD:
        return False
    before = kind_at(marks, place - 1)
    linked = kind_at(marks, place + 1) in (Kind.AT, Kind.WITH) and kind_at(marks, place + 2) is Kind.NUM
    at = place - 1
    while at >= 0 and marks[at].kind is Kind.FILL:
        at -= 1
    opens = before is None or kind_at(marks, at) in (None, *EDGES, Kind.AND, Kind.THEN)
    return linked and opens and marks[place + 1].text != "@"


def _behind(marks: list[Mark]) -> list[Mark]:
    """`140x12 for the first two, 11 on the third`: behind what is told of them."""
    out: list[Mark] = []
    start = 0
    at = 0
    while at < len(marks):
        mark = marks[at]
        if mark.kind in (*EDGES, Kind.AND, Kind.THEN, Kind.NAME, Kind.COLON) or _parts(mark):
            out.append(mark)
            at, start = at + 1, len(out) + 1
            start = len(out)
            continue
        linked = mark.kind in _LINKS or mark.text in ("in", "of")
        if not linked and mark.kind is not Kind.ORD:
            out.append(mark)
            at += 1
            continue
        place = past_fill(marks, at + 1)
        entry = [replace(m, kind=Kind.FILL) if m.kind is Kind.DROP else m for m in out[start:]]
        told = any(m.kind is Kind.NUM for m in entry) and all(m.kind in _ENTRY or m.text in _LOWS for m in entry)
        found = _numbered(marks, place) if told and linked else None
        if told and mark.kind is Kind.ORD and _opening(marks, at) is not None and out[-1].kind in (Kind.NUM, Kind.S):
            found = _numbered(marks, at)
        if told and mark.kind is Kind.ORD and kind_at(marks, at + 1) is Kind.SET and _is_whole(entry):
            found = _numbered(marks, at)
        one = found is not None and not any(m.text in _GROUPS for m in found[0])
        if found is not None and one and any(m.kind is Kind.TO for m in entry) and _counts_behind(marks, found[1]):
            found = None
        if found is None:
            out.append(mark)
            at += 1
            continue
        said, end = found
        out[start:] = [*said, *entry]
        at = end
    return out


def _is_whole(entry: Sequence[Mark]) -> bool:
    """Whether a load and its repetitions are told: `95x8 first set`."""
    return [m.kind for m in entry if m.kind is not Kind.FILL][:3] in (
        [Kind.NUM, Kind.X, Kind.NUM],
        [Kind.NUM, Kind.FOR, Kind.NUM],
    )


def _parts(mark: Mark) -> bool:
    """A dash with room before it: `60 - 8 on the first two`."""
    return mark.kind is Kind.DASH and not mark.tight


def _counts_behind(marks: Sequence[Mark], at: int) -> bool:
    """`went to 16s for the 3rd and got 9`: the repetitions of a load that was gone to are still to come."""
    joined = kind_at(marks, at) in (Kind.AND, Kind.COMMA)
    number = past_fill(marks, at + 1)
    counted = kind_at(marks, number) is Kind.NUM and kind_at(marks, number + 1) not in (Kind.X, Kind.FOR, *OF_LOAD)
    return joined and counted


def _numbered(marks: Sequence[Mark], place: int) -> tuple[list[Mark], int] | None:
    """The group or the number of a set that ends its part: the marks that say so, and where it ends."""
    opened = _opening(marks, place) if place < len(marks) else None
    if opened is not None:
        first, count, end = opened
        done = kind_at(marks, past_fill(marks, end)) in _ENDS
        return (group_marks(marks[place], first, count, marks[end - 1].end), end) if done else None
    if [kind_at(marks, place + n) for n in range(3)] == [Kind.LABEL, Kind.NUM, Kind.SETS]:
        ended = kind_at(marks, past_fill(marks, place + 3)) in _ENDS
        return (list(marks[place : place + 3]), place + 3) if ended else None
    if place < len(marks) and (marks[place].kind is Kind.THEREST or marks[place].text == "others"):
        ended = kind_at(marks, past_fill(marks, place + 1)) in _ENDS
        others = [_COUNTS[w] for w in marks[place].text.split() if w in _COUNTS]
        if others and ended:
            return group_marks(marks[place], None, others[0], marks[place].end), place + 1
        return ([replace(marks[place], kind=Kind.THEREST, text="the others")], place + 1) if ended else None
    if kind_at(marks, place) is not Kind.ORD or (marks[place].value or 0) > MOST_SETS:
        return None
    end = place + 1
    while kind_at(marks, end) in (Kind.SET, Kind.LASTSET) or (end < len(marks) and marks[end].text in ("one", "set")):
        end += 1
    if kind_at(marks, past_fill(marks, end)) not in _ENDS:
        return None
    return [replace(marks[place], kind=Kind.LABEL)], end


_HEADS = (Kind.ORD, Kind.LASTREP, "last", "final", "next", "other", "remaining")
"""What a group or the number of a set may open with."""
GROUPS = (
    *BY_NUMBER,
    step(_behind, (*_HEADS, Kind.LABEL, Kind.THEREST, "others")),
    step(_led, _HEADS),
    step(_last_behind, (Kind.LASTSET, Kind.LASTREP)),
)
"""The steps, in order."""
