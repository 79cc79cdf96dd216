"""How many sets alike, in other words than `sets`: `four lots of 20m`, `three of them`, `one set`.

Each becomes a number with `sets` behind it, which the grammar knows.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.how_many.of_each import ENDS, SPOKEN, each_of, is_few, on_both
from bot.notation.order.how_many.of_them import of_them
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


def how_many(marks: list[Mark]) -> list[Mark]:
    """The marks with each such number as one of sets."""
    if not any(m.kind is Kind.NUM for m in marks):
        return marks
    return put_in_place(marks, HOW_MANY)


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


def _all_with(marks: list[Mark]) -> list[Mark]:
    """`30kg, made all three with 11`: so many sets of as many repetitions, behind their load."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        out.append(mark)
        every = mark.kind is Kind.ALL and any(m.kind is Kind.NUM for m in marks[:place])
        every = every and bool({*mark.text.removesuffix(" sets").split()[-1:]} & _NUMBERS.keys())
        counted = kind_at(marks, place + 2) is Kind.NUM and kind_at(marks, place + 3) in (None, *EDGES, Kind.REPS)
        if every and text_at(marks, place + 1) == "with" and counted:
            out.append(counted_sets(mark, "sets of"))
    return [m for i, m in enumerate(out) if not (m.text == "with" and i and out[i - 1].text == "sets of")]


_NUMBERS = {"3": 3, "three": 3, "4": 4, "four": 4, "5": 5, "five": 5}


def _turns(marks: list[Mark]) -> list[Mark]:
    """`4 lots of 20m`, `4 pushes of 20`: the name in it, if it is one, stands before its sets."""
    out = list(marks)
    named: tuple[int, ...] = ()
    for place in range(len(marks)):
        mark = out[place]
        if mark.kind is Kind.NAME:
            named = mark.names
        if not place or not is_few(out, place - 1) or mark.kind in (Kind.SETS, Kind.SET):
            continue
        of = place + 1 < len(out) and out[place + 1].text == "of"
        numbered = kind_at(out, place + 1 + of) is Kind.NUM
        is_name = mark.kind in (Kind.NAME, Kind.WEAK)
        other = is_name and bool(mark.names) and not set(named) & set(mark.names)
        turn = mark.text in _TURNS and not other
        linked = kind_at(out, place + 1) in (Kind.AT, Kind.WITH, Kind.X) and kind_at(out, place + 2) is Kind.NUM
        entry = turn and kind_at(out, place - 2) in (Kind.COMMA, Kind.FOR, None)
        entry = entry and any(m.kind is Kind.NUM for m in out[: place - 1])
        behind = entry and kind_at(out, place + 1) in ENDS
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
    step(each_of, (Kind.EACH, Kind.ALL, *SPOKEN)),
    step(on_both, ("both",)),
    step(_thrice, ("thrice",)),
    step(_one_set, (Kind.NUM,), (Kind.SET, Kind.SETS)),
    step(_got_all, (Kind.ALL,)),
    step(_all_with, (Kind.ALL,), ("with",)),
    step(_turns, (*_TURNS, "of")),
    step(of_them, ("of",)),
    *MORE_SETS,
)
"""The steps, in order."""
