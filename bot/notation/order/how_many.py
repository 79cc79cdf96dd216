"""How many sets alike, in other words than `sets`: `four lots of 20m`, `three of them`, `one set`, `2 further sets`.

Each becomes a number with `sets` behind it, which the grammar knows.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS, MOST_SETS, SEVERAL
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.more_sets import MORE_SETS
from bot.notation.order.near import counted_sets, past_fill, whole_number
from bot.notation.order.steps import put_in_place, step
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_TURNS = frozenset(
    words(
        "lot lots go goes bout bouts effort efforts turn turns pass passes attempts hold holds hang hangs run runs walk"
    )
    + words("walks push pushes pull pulls trip trips length lengths carry carries round rounds circuit circuits")
)
"""What people call sets beside `sets` (common usage, no source)."""
_THEM = frozenset(words("them em those these"))
_OF = ("of", "sets of", "set of", "rounds of", "sets like", "like")
_LITTLE = frozenset(words("now today in total so far done haha lol yep yes ok nice phew please each"))
_ENDS = (None, *EDGES, Kind.AND, Kind.THEN, Kind.AT, Kind.WITH, Kind.EACH, Kind.ALL, Kind.DONE, Kind.OPEN, Kind.CLOSE)


def how_many(marks: list[Mark]) -> list[Mark]:
    """The marks with each such number as one of sets."""
    if not any(m.kind is Kind.NUM for m in marks):
        return marks
    return put_in_place(marks, HOW_MANY)


def _plain(marks: list[Mark]) -> list[Mark]:
    """`2 further sets`, `three solid sets`: what the sets were like has no bearing."""
    return [
        replace(m, kind=Kind.FILL)
        if m.kind is Kind.WORD and kind_at(marks, i - 1) is Kind.NUM and kind_at(marks, i + 1) is Kind.SETS
        else m
        for i, m in enumerate(marks)
    ]


def _one_set(marks: list[Mark]) -> list[Mark]:
    """`one set 28s 10 each`: the set that is told; `two sets of 8 and one of 7`: one more, behind so many."""
    out = list(marks)
    counted = next((i for i, m in enumerate(marks) if m.kind is Kind.SETS), len(marks))
    for place in range(len(marks) - 2):
        if marks[place].kind not in (Kind.NUM, Kind.FILL):
            continue
        if place > counted:
            one_of = text_at(marks, place) == "one" and text_at(marks, place + 1) in ("of", "with", "at")
            one = kind_at(marks, place) is Kind.NUM and marks[place].value == 1
            if one and kind_at(marks, place + 1) is Kind.SET and kind_at(marks, place + 2) is Kind.NUM:
                out[place + 1] = counted_sets(marks[place + 1])
            if one_of and kind_at(marks, place) is Kind.FILL and kind_at(marks, place + 2) is Kind.NUM:
                out[place] = replace(marks[place], kind=Kind.NUM, value=Decimal(1))
                out[place + 1] = counted_sets(marks[place + 1])
            continue
        one = kind_at(marks, place) is Kind.NUM and marks[place].value == 1
        free = kind_at(marks, place - 1) not in (Kind.X, Kind.FOR, Kind.ANOTHER, Kind.NUM)
        if (
            one
            and free
            and kind_at(marks, place + 1) in (Kind.SET, Kind.SETS)
            and kind_at(marks, place + 2) is Kind.NUM
        ):
            if _counts_more(marks, place + 3):
                out[place + 1] = counted_sets(marks[place + 1])
                continue
            out[place : place + 2] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place : place + 2]]
    return out


def _counts_more(marks: Sequence[Mark], at: int) -> bool:
    """`one set 90x10, two sets 85x10`: whether others are counted in the same words."""
    return any(
        m.kind is Kind.SETS and kind_at(marks, i - 1) is Kind.NUM and kind_at(marks, i + 1) is Kind.NUM
        for i, m in enumerate(marks)
        if i > at
    )


def _got_all(marks: list[Mark]) -> list[Mark]:
    """`1 more at 100, got all 5`: repetitions."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        word = mark.text.split()[-1:] if mark.kind is Kind.ALL else []
        led = place > 0 and marks[place - 1].text in ("got", "hit", "made", "managed", "for")
        value = _NUMBERS.get(word[0]) if word else None
        if value is not None and led and kind_at(marks, place + 1) in (None, *EDGES, Kind.REPS):
            out += [replace(mark, kind=Kind.NUM, value=Decimal(value), text=str(value))]
            out += [] if kind_at(marks, place + 1) is Kind.REPS else [replace(mark, kind=Kind.REPS, start=mark.end)]
        else:
            out.append(mark)
    return out


_NUMBERS = {"3": 3, "three": 3, "4": 4, "four": 4, "5": 5, "five": 5}


def _is_few(marks: Sequence[Mark], place: int, most: int = MOST_SETS) -> bool:
    return whole_number(marks, place, 1, most) is not None


def _turns(marks: list[Mark]) -> list[Mark]:
    """`4 lots of 20m`, `4 pushes of 20`: the name in it, if it is one, stands before its sets."""
    out = list(marks)
    named: tuple[int, ...] = ()
    for place in range(len(marks)):
        mark = out[place]
        if mark.kind is Kind.NAME:
            named = mark.names
        if not place or not _is_few(out, place - 1) or mark.kind in (Kind.SETS, Kind.SET):
            continue
        of = place + 1 < len(out) and out[place + 1].text == "of"
        numbered = kind_at(out, place + 1 + of) is Kind.NUM
        is_name = mark.kind in (Kind.NAME, Kind.WEAK)
        other = is_name and bool(mark.names) and not set(named) & set(mark.names)
        turn = mark.text in _TURNS and not other
        linked = kind_at(out, place + 1) in (Kind.AT, Kind.WITH, Kind.X) and kind_at(out, place + 2) is Kind.NUM
        entry = turn and kind_at(out, place - 2) in (Kind.COMMA, Kind.FOR, None)
        entry = entry and any(m.kind is Kind.NUM for m in out[: place - 1])
        behind = entry and kind_at(out, place + 1) in _ENDS
        if turn and ((of and numbered) or (linked and not is_name)):
            out[place] = counted_sets(mark)
        elif turn and behind:
            out[place] = counted_sets(mark, "of them")
        elif is_name and of and numbered and kind_at(out, place - 2) not in (Kind.X, Kind.FOR):
            out[place - 1 : place + 1] = [mark, out[place - 1]]
            out[place + 1] = counted_sets(out[place + 1])
    return out


def _thrice(marks: list[Mark]) -> list[Mark]:
    """`20x10 thrice`: three of what was told before it; `thrice 50x12`: of what follows."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.text != "thrice":
            out.append(mark)
            continue
        three = replace(mark, kind=Kind.NUM, value=Decimal(3), text="three")
        told = any(m.kind is Kind.NUM for m in out)
        heads = kind_at(marks, past_fill(marks, place + 1)) in (Kind.NUM, Kind.COMMA, Kind.COLON)
        if told or heads:
            out += [three, counted_sets(mark, "of them" if told else "sets")]
        else:
            out.append(mark)
    return out


def _of_them(marks: list[Mark]) -> list[Mark]:
    """`80 by 8, 3 of em`, `80x8, three sets of that`: how many of what was told before it."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        said = [m.text for m in marks[at + 1 : at + 3]]
        counted = len(said) > 1 and said[0] in _OF and (said[1] in _THEM or said[1] in ("that", "it"))
        end = at + 3 if counted else at
        while end < len(marks) and marks[end].text in _LITTLE:
            end += 1
        spoken = counted and kind_at(marks, at - 1) in (Kind.AT, Kind.WITH) and kind_at(marks, at) is Kind.NUM
        if spoken and any(m.kind in (Kind.X, Kind.FOR) for m in out):
            out += [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[at : at + 3]]
            at += 3
            continue
        told = counted and (any(m.kind is Kind.NUM for m in out) or kind_at(marks, end) in (Kind.AT, Kind.WITH))
        if told and _lifts(out) and kind_at(marks, at) is Kind.NUM:
            out += [marks[at], Mark(Kind.REPS, "reps", marks[at].end, marks[at + 2].end)]
            at += 3
            continue
        if told and _is_few(marks, at) and kind_at(marks, end) in _ENDS:
            out += [marks[at], counted_sets(marks[at + 1], "of them")]
            at += 3
            continue
        out.append(marks[at])
        at += 1
    return out


def _lifts(before: Sequence[Mark]) -> bool:
    """`70 on the bar and six of em`: a load with no repetitions yet, which `of them` then tells."""
    start = next((i + 1 for i in range(len(before) - 1, -1, -1) if before[i].kind in (Kind.STOP, Kind.LINE)), 0)
    kinds = [m.kind for m in before[start:]]
    said = [w for m in before[start:] for w in m.text.split()]
    loaded = bool(set(said) & _LOADING) or any(said[i : i + 2] == ["on", "it"] for i in range(len(said)))
    return loaded and kinds.count(Kind.NUM) == 1 and not {Kind.X, Kind.FOR, Kind.REPS, Kind.SECONDS} & set(kinds)


_LOADING = frozenset(words("bar barbell loaded stack pin put"))


def _on_both(marks: list[Mark]) -> list[Mark]:
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
        and kind_at(marks, past_fill(marks, i + 2)) in (*_ENDS, Kind.COMMA)
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


def _each_of(marks: list[Mark]) -> list[Mark]:
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
        count = _is_few(marks, end, FEW_SETS) and marks[end].text != "one"
        led = bool(out) and out[-1].kind is Kind.AT and out[-1].text == "on"
        if (
            each
            and end > at + 1
            and any(m.kind is Kind.NUM for m in out)
            and kind_at(marks, end + count) in (*_ENDS, Kind.SETS)
        ):
            out = out[:-1] if led else out
            out.append(replace(mark, kind=Kind.ALL, text="every set", end=marks[end - 1 + count].end))
            at = end + count + (kind_at(marks, end + count) is Kind.SETS)
            continue
        alone = kind_at(marks, at + 1) in (None, *EDGES) and mark.text in _SPOKEN
        if led and alone and kind_at(out, len(out) - 2) in (Kind.NUM, Kind.REPS) and mark.kind is Kind.NUM:
            out[-1] = replace(out[-1], kind=Kind.FILL)
            out += [mark, counted_sets(mark, "of them")]
            at += 1
            continue
        out.append(mark)
        at += 1
    return out


_THOSE = frozenset(words("of the them em those these my remaining"))
_SPOKEN = frozenset(words("two three four"))


def _counted_load(marks: list[Mark]) -> list[Mark]:
    """`three sets at one sixty eight seven five`: three counts, so at 160; `ninety five all three ten`: so at 95."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        spoken = mark.kind is Kind.NUM and mark.value is not None and len(mark.parts) == SEVERAL
        linked = place - (kind_at(marks, place - 1) is Kind.AT)
        announced = whole_number(marks, linked - 2, 2, FEW_SETS) if kind_at(marks, linked - 1) is Kind.SETS else None
        at, counts = place + 1, 0
        while spoken and announced and kind_at(marks, at) in (Kind.NUM, Kind.COMMA, Kind.AND):
            counts += kind_at(marks, at) is Kind.NUM
            at += 1
        every = kind_at(marks, place + 1) is Kind.ALL and kind_at(marks, place + 2) is Kind.NUM
        if spoken and announced and counts == announced - 1 and " " in mark.text:
            last = mark.text.split(" ")[-1]
            cut = mark.end - len(last)
            out += [replace(mark, text=mark.text[: -len(last)].strip(), end=cut - 1, value=mark.parts[0], parts=()),
                    replace(mark, text=last, start=cut, value=mark.parts[1], parts=(), tight=False)]  # fmt: skip
        else:
            whole = spoken and (every or (announced is not None and counts == announced))
            out.append(replace(mark, parts=()) if whole else mark)
    return out


def _twice_ahead(marks: list[Mark]) -> list[Mark]:
    """`chins twice 8 and then 6`: how often, before the count that it is of."""
    for place in range(1, len(marks) - 1):
        led = marks[place].text == "twice" and marks[place].kind is Kind.TIMES and marks[place - 1].kind is Kind.NAME
        loaded = kind_at(marks, place + 2) in (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.NUM, Kind.SETS, Kind.TIMES)
        if led and marks[place + 1].kind is Kind.NUM and not loaded:
            return [*marks[:place], marks[place + 1], marks[place], *marks[place + 2 :]]
    return marks


HOW_MANY = (
    step(_counted_load, (Kind.SETS, Kind.ALL)),
    step(_twice_ahead, ("twice",), (Kind.NAME,)),
    step(_each_of, (Kind.EACH, Kind.ALL, *_SPOKEN)),
    step(_on_both, ("both",)),
    step(_thrice, ("thrice",)),
    step(_plain, (Kind.WORD,), (Kind.SETS,)),
    step(_one_set, (Kind.NUM,), (Kind.SET, Kind.SETS)),
    step(_got_all, (Kind.ALL,)),
    step(_turns, (*_TURNS, "of")),
    step(_of_them, ("of",)),
    *MORE_SETS,
)
"""The steps, in order."""
