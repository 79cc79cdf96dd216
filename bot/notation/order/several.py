"""Several sets told at once: `all other sets five`, `sets 1-5`, `one two three all`, `the other two were nine`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_SETS
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.spoken import UNITS
from bot.notation.tokens import Mark

_COUNTS = {"both": 2, "two": 2, "2": 2, "three": 3, "3": 3}
_COUNTED = (Kind.NUM, Kind.REPS, Kind.METRES, Kind.M, Kind.SECONDS, Kind.EACH)
_OTHERS = ("other", "remaining", "my", "the", "of", "these", "those")


def all_sets(marks: list[Mark]) -> list[Mark]:
    """`all other sets five`, `80x8 all`, `same 3x`: each set, and how many."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, end = marks[at], at + 1
        while end < len(marks) and marks[end].text in _OTHERS:
            end += 1
        if mark.kind is Kind.ALL and mark.text == "all" and kind_at(marks, end) is Kind.SETS and end > at + 1:
            out.append(replace(mark, text="all sets", end=marks[end].end))
            at = end + 1
            continue
        if mark.text == "all" and kind_at(marks, at - 1) is Kind.DONE and _heads_more(marks, at + 1):
            mark = replace(mark, kind=Kind.FILL)
        if mark.kind is Kind.WAS and mark.text.endswith(" all") and kind_at(marks, at - 1) is Kind.NAME:
            out.append(replace(mark, text=mark.text.removesuffix(" all")))
            mark = replace(mark, kind=Kind.ALL, text="all")
        if mark.kind is Kind.ALL and mark.text == "all" and _is_whole(marks, at):
            mark = replace(mark, kind=Kind.FILL)
        if mark.kind is Kind.ALL and mark.text == "all" and _leads_one(marks, at):
            mark = replace(mark, text="all sets")
        whole = [m.kind for m in marks[max(0, at - 3) : at]] == [Kind.NUM, Kind.X, Kind.NUM]
        if mark.text == "all" and mark.kind is Kind.ALL and whole and kind_at(marks, at + 1) in (None, *EDGES):
            mark = replace(mark, text="all sets")
        same = Kind.SAME in (kind_at(marks, at - 2), kind_at(marks, at + 1))
        if (
            mark.kind is Kind.X
            and same
            and kind_at(marks, at - 1) is Kind.NUM
            and kind_at(marks, at + 1) is not Kind.NUM
        ):
            mark = replace(mark, kind=Kind.SETS, text="sets")
        out.append(mark)
        at += 1
    return out


def _is_whole(marks: Sequence[Mark], at: int) -> bool:
    """`second push done, 180, all 20 metres`: behind one set by its number, all of what it counts."""
    which = [m for m in marks[:at] if m.kind in (Kind.ORD, Kind.LASTSET)]
    units = (Kind.METRES, Kind.M, Kind.REPS, Kind.SECONDS)
    return len(which) == 1 and kind_at(marks, at + 1) is Kind.NUM and kind_at(marks, at + 2) in units


def _leads_one(marks: Sequence[Mark], at: int) -> bool:
    """`dips all 10`, `l-sits were all 15 sec`: behind a name, one count or one whole set of all."""
    named = Kind.NAME in (kind_at(marks, at - 1), kind_at(marks, at - 2)) and kind_at(marks, at - 1) in _OF_NAME
    end = at + 1
    while kind_at(marks, end) in (Kind.NUM, Kind.X, Kind.FOR, Kind.S, Kind.REPS, Kind.SECONDS, Kind.EACH):
        end += 1
    kinds = [m.kind for m in marks[at + 1 : end] if m.kind not in (Kind.S, Kind.REPS, Kind.SECONDS, Kind.EACH)]
    one = kinds in ([Kind.NUM], [Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
    listed = kind_at(marks, end) is Kind.COMMA and kind_at(marks, end + 1) is Kind.NUM
    return named and one and kind_at(marks, end) in (None, *EDGES, Kind.AND) and not listed


_OF_NAME = (Kind.NAME, Kind.WAS, Kind.FILL)


def _heads_more(marks: Sequence[Mark], at: int) -> bool:
    """`did it all at lunch: bench 60x5`: no number stands between the words and the colon, the line or the name."""
    while kind_at(marks, at) in (Kind.FILL, Kind.WORD, Kind.AT, Kind.WITH):
        at += 1
    edge = kind_at(marks, at) in (Kind.COLON, Kind.STOP, Kind.LINE, Kind.COMMA, Kind.DASH)
    return edge and kind_at(marks, at + 1) is Kind.NAME and any(m.kind is Kind.NUM for m in marks[at:])


def set_ranges(marks: list[Mark]) -> list[Mark]:
    """`set one to five`, `sets 1-5`, `set 2 and 3`: the first of them, and how many."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        span = marks[at : at + 4]
        kinds = [m.kind for m in span]
        first, last = (span[1].value, span[3].value) if len(span) == 4 else (None, None)
        ranged = kinds[:2] in ([Kind.SET, Kind.NUM], [Kind.SETS, Kind.NUM]) and kinds[3:] == [Kind.NUM]
        changed = kind_at(marks, at - 1) is Kind.MEANT and kinds[2:3] == [Kind.TO]
        if ranged and _is_heading(span):
            out += [*span[:2], replace(span[2], kind=Kind.COLON, text=":")]
            at += 3
            continue
        joined = ranged and not changed and kinds[2] in (Kind.TO, Kind.DASH, Kind.AND, Kind.THEN)
        if joined and first is not None and last is not None and first < last <= MOST_SETS and _holds_on(span):
            out.append(replace(span[1], kind=Kind.LABEL, start=span[0].start))
            out.append(replace(span[3], value=last - first + 1))
            out.append(replace(span[3], kind=Kind.SETS, text="sets", value=None, start=span[3].end))
            at += 4
            if kind_at(marks, at) is Kind.ALL:
                out += _count_of_all(marks[at])
                at += 1
            continue
        out.append(marks[at])
        at += 1
    return out


def _is_heading(span: Sequence[Mark]) -> bool:
    """`set 2 - 9`: a dash with room about it behind one set's number heads what it was."""
    apart = not span[2].tight and not span[3].tight and span[2].kind is Kind.DASH
    return apart and span[0].kind is Kind.SET and span[0].text == "set"


def _count_of_all(mark: Mark) -> list[Mark]:
    """The repetitions in `all 5` behind the numbers of the sets."""
    word = mark.text.split(" ")[-1]
    value = Decimal(word) if word.isdigit() else UNITS.get(word)
    return [] if value is None else [replace(mark, kind=Kind.NUM, text=word, value=value)]


def _holds_on(span: Sequence[Mark]) -> bool:
    """Whether `and` joins two sets next to each other."""
    one, two = span[1].value, span[3].value
    return span[2].kind is not Kind.AND or (one is not None and two == one + 1)


def numbered_all(marks: list[Mark]) -> list[Mark]:
    """`one two three all with 45`: the numbers of the sets that are all alike."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ALL:
            continue
        at, expected = place - 1, Decimal(0)
        while at >= 0 and marks[at].kind in (Kind.NUM, Kind.COMMA, Kind.AND):
            value = marks[at].value
            if marks[at].kind is Kind.NUM and (value is None or (expected and value != expected - 1)):
                break
            expected = value if value is not None else expected
            at -= 1
        count = sum(m.kind is Kind.NUM for m in marks[at + 1 : place])
        led = expected == 1 or (at >= 0 and expected == 2 and marks[at].text == "one")
        if led and count > 1 - (expected == 2):
            out[at + 1 : place] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[at + 1 : place]]
    return out


def work_sets(marks: list[Mark]) -> list[Mark]:
    """`both back offs at 125`, `two back-off sets`: so many sets of what follows."""
    out: list[Mark] = []
    for place, said in enumerate(marks):
        mark = replace(said, kind=Kind.FILL) if _is_load_across(marks, place) else said
        before = out[-1] if out else None
        told = mark.kind is Kind.WORKSET or (mark.kind is Kind.SETS and bool({"back", "down"} & set(mark.text.split())))
        told = told or mark.text.startswith("backoff")
        numbered = told and kind_at(marks, place + 1) in _BEFORE_NUMBERS
        if before is None or not numbered:
            out.append(mark)
            continue
        word = "".join(before.text.split()[-1:])
        count = 2 if before.text == "both" else _COUNTS.get(word) if before.kind in (Kind.NUM, Kind.ALL) else None
        if count is None:
            out.append(mark)
            continue
        out[-1] = replace(before, kind=Kind.NUM, value=Decimal(count), text=str(count))
        out.append(replace(mark, kind=Kind.SETS, text="sets"))
    return out


_BEFORE_NUMBERS = (Kind.NUM, Kind.AT, Kind.WITH, Kind.WAS, Kind.COLON, Kind.FILL)


def _is_load_across(marks: Sequence[Mark], place: int) -> bool:
    """The `sets` of `270 sets across, all tens`: too many to be so many sets, so their load."""
    if marks[place].text != "sets":
        return False
    number = place - 1 - (kind_at(marks, place - 1) in (Kind.FOR, Kind.KG, Kind.LB))
    number -= kind_at(marks, number) in (Kind.KG, Kind.LB)
    loaded = kind_at(marks, number) is Kind.NUM and (marks[number].value or 0) > MOST_SETS
    across = kind_at(marks, place + 1) is Kind.ALL and "across" in marks[place + 1].text.split()
    return loaded and across


def the_others(marks: list[Mark]) -> list[Mark]:
    """`the other two were nine`, `the rest nine`: so many sets, or all that are left, of what follows; `180 for 20 the
    other two times` of what was told."""
    out: list[Mark] = []
    skips = any(m.kind in (Kind.SKIP, Kind.SKIPPED, Kind.NO) for m in marks)
    for place, mark in enumerate(marks):
        if mark.kind in (Kind.SETS, Kind.ALL) and place and marks[place - 1].kind is Kind.THEREST and not skips:
            continue
        count = (
            next((_COUNTS[w] for w in mark.text.split() if w in _COUNTS), None) if mark.kind is Kind.THEREST else None
        )
        if count is not None and kind_at(marks, place + 1) is Kind.TIMES and kind_at(marks, place - 1) in _COUNTED:
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(count), text=str(count)))
            continue
        if mark.kind is not Kind.THEREST or skips:
            out.append(mark)
            continue
        at = place + 1
        while kind_at(marks, at) in (Kind.WAS, Kind.FILL, Kind.AT, Kind.WITH, Kind.SETS, Kind.ALL, Kind.COLON):
            at += 1
        timed = mark.text == "rest" and kind_at(marks, at + 1) in (Kind.S, Kind.SECONDS, Kind.MINUTES)
        if timed or kind_at(marks, at) is not Kind.NUM:
            out.append(mark)
            continue
        if count is None:
            out.append(replace(mark, kind=Kind.ALL, text="the rest"))
            continue
        out.append(replace(mark, kind=Kind.NUM, value=Decimal(count), text=str(count)))
        entry = [kind_at(marks, at + n) for n in range(1, 3)]
        whole = Kind.X in entry or Kind.FOR in entry
        out.append(replace(mark, kind=Kind.SETS, text="group" if whole else "sets", start=mark.end))
    return out
