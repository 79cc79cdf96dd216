"""As many sets as are told by `each` or `both` behind a set: `10 on each of the three`, `65x8 for both`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS, MOST_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import counted_sets, past_fill, whole_number
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

ENDS = (None, *EDGES, Kind.AND, Kind.THEN, Kind.AT, Kind.WITH, Kind.EACH, Kind.ALL, Kind.DONE, Kind.OPEN, Kind.CLOSE)


def is_few(marks: Sequence[Mark], place: int, most: int = MOST_SETS) -> bool:
    return whole_number(marks, place, 1, most) is not None


def on_both(marks: list[Mark]) -> list[Mark]:
    """`8 at 65 on both`, `65x8 for both`: the sets, with no link to a number; `60 both 12`: both of them, 12."""
    marks = [
        part
        for i, m in enumerate(marks)
        for part in ([replace(m, kind=Kind.COMMA, text=",", end=m.start), m] if _is_load_of_both(marks, i) else [m])
    ]
    return [
        replace(m, kind=Kind.FILL)
        if m.kind in (Kind.AT, Kind.FOR)
        and m.text in ("on", "for")
        and marks[i + 1 : i + 2]
        and marks[i + 1].text == "both"
        and kind_at(marks, past_fill(marks, i + 2)) in (*ENDS, Kind.COMMA)
        else m
        for i, m in enumerate(marks)
    ]


def _is_load_of_both(marks: Sequence[Mark], place: int) -> bool:
    """Whether the number before `both` is the load of both sets: `60 both 12`, `60 pounds both for 12`."""
    load = place - 1
    while kind_at(marks, load) in (Kind.KG, Kind.LB, Kind.HAND):
        load -= 1
    alone = kind_at(marks, load) is Kind.NUM and kind_at(marks, load - 1) not in (
        Kind.X,
        Kind.FOR,
        Kind.NUM,
        Kind.COMMA,
    )
    count = place + 1 + (kind_at(marks, place + 1) is Kind.FOR)
    ends = kind_at(marks, count + 1) not in (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.NUM)
    return marks[place].text == "both" and alone and kind_at(marks, count) is Kind.NUM and ends


def each_of(marks: list[Mark]) -> list[Mark]:
    """`8 on each of the three`, `10 on all of em`, `8 on three`: as many sets of what was told."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        if mark.kind not in (Kind.EACH, Kind.ALL, Kind.NUM):
            out.append(mark)
            at += 1
            continue
        each = (mark.kind is Kind.EACH and mark.text == "each") or mark.kind is Kind.ALL
        end = at + 1
        while each and text_at(marks, end) in _THOSE:
            end += 1
        bracketed = [m.kind for m in marks[at + 1 : at + 4]] == [Kind.OPEN, Kind.NUM, Kind.CLOSE]
        if mark.kind is Kind.ALL and bracketed and is_few(marks, at + 2, FEW_SETS):
            out += [marks[at + 2], counted_sets(marks[at + 2], "of them")]  # `8 reps each set (3)`
            at += 4
            continue
        count = is_few(marks, end, FEW_SETS) and marks[end].text != "one"
        led = bool(out) and out[-1].kind is Kind.AT and out[-1].text == "on"
        if (
            each
            and end > at + 1
            and any(m.kind is Kind.NUM for m in out)
            and kind_at(marks, end + count) in (*ENDS, Kind.SETS)
        ):
            out = out[:-1] if led else out
            out.append(replace(mark, kind=Kind.ALL, text="every set", end=marks[end - 1 + count].end))
            at = end + count + (kind_at(marks, end + count) is Kind.SETS)
            continue
        alone = kind_at(marks, at + 1) in (None, *EDGES) and mark.text in SPOKEN
        if led and alone and kind_at(out, len(out) - 2) in (Kind.NUM, Kind.REPS) and mark.kind is Kind.NUM:
            out[-1] = replace(out[-1], kind=Kind.FILL)
            out += [mark, counted_sets(mark, "of them")]
            at += 1
            continue
        out.append(mark)
        at += 1
    return out


_THOSE = frozenset(words("of the them em those these my remaining"))
SPOKEN = frozenset(words("two three four"))
