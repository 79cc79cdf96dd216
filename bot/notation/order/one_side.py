"""Sides told apart from their numbers: `left leg only. 16s x 8`, `10 at 16 each leg`, `10 each x 3`.

Said of the message as a whole, one side is put before each part that holds numbers.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, number_before
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD, counted_sets, past_fill, whole_number
from bot.notation.tokens import Mark

_SIDES = (Kind.LEFT, Kind.RIGHT)
_ONLY = frozenset(["only", "just", "solely"])
_LIMBS = frozenset(["leg", "legs", "arm", "arms", "foot", "limb"])
_EDGES = (Kind.STOP, Kind.LINE, Kind.BREAK)
_ENDS = (None, Kind.COMMA, Kind.CLOSE, Kind.QUERY, *_EDGES)


def one_side(marks: list[Mark]) -> list[Mark]:
    """The marks with sides beside the numbers that are of them."""
    return _only_one(_load_first(_each_behind(_times(_all_sets(_listed(_on_each(_both_sets(marks))))))))


def _both_sets(marks: list[Mark]) -> list[Mark]:
    """`both 45 sec both sides`, `35 secs each both`: of two words for both, the plain one is of the sets."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.EACH or mark.text != "both":
            continue
        beside = (
            marks[place + 1 : place + _FAR]
            if kind_at(marks, place + 1) is Kind.NUM
            else marks[max(0, place - 1) : place]
        )
        end = next((i for i, m in enumerate(beside) if m.kind in (Kind.NAME, *_EDGES)), len(beside))
        if any(m.kind is Kind.EACH and m.text != "both" for m in beside[:end]):
            out[place] = replace(mark, kind=Kind.ALL, text="both sets")
    return out


_FAR = 5
"""Marks from `both` to the word for the sides behind it."""


def _listed(marks: list[Mark]) -> list[Mark]:
    """`16s, 9 each and 9 each`: two sets of each side, where `9 and 9` may be of both."""
    spans = [[Kind.NUM, Kind.EACH, joined, Kind.NUM, Kind.EACH] for joined in (Kind.AND, Kind.SLASH)]
    found = [i for i in range(len(marks)) if [m.kind for m in marks[i : i + len(spans[0])]] in spans]
    found += [i - 1 for i in range(1, len(marks) - 3) if _is_each_of_two(marks, i)]
    return [replace(m, kind=Kind.COMMA, text=",") if i - 2 in found else m for i, m in enumerate(marks)]


def _is_each_of_two(marks: list[Mark], place: int) -> bool:
    """`45/31 sec each side`, `10/9 each`: two sets and not two sides, for each side did it."""
    one, slash, two, unit = marks[place : place + 4]
    each = marks[place + 4] if unit.kind in (Kind.SECONDS, Kind.REPS, Kind.METRES) and place + 4 < len(marks) else unit
    pair = one.kind is two.kind is Kind.NUM and slash.kind is Kind.SLASH
    alone = kind_at(marks, place - 1) is not Kind.SLASH
    sides = bool({"side", "leg", "arm", "sides", "each", "ea", "hand", "foot"} & set(each.text.split()))
    return pair and alone and each.kind is Kind.EACH and sides


def _on_each(marks: list[Mark]) -> list[Mark]:
    """`10 on each leg, then 9 on each`: of each side; the `s` of `tens each leg` is of what each leg did."""
    return [
        m
        for i, m in enumerate(marks)
        if not (
            m.text == "on"
            and kind_at(marks, i - 1) in (Kind.NUM, Kind.REPS)
            and kind_at(marks, i + 1) is Kind.EACH
            and kind_at(marks, i + 2) in (*_ENDS, Kind.THEN)
        )
        and not _is_of_limb(marks, i)
    ]


def _is_of_limb(marks: list[Mark], place: int) -> bool:
    """The `s` of `tens each leg`; not that of `16s each side for 8`."""
    each = marks[place + 1] if place + 1 < len(marks) else None
    counted = marks[place].kind is Kind.S and kind_at(marks, place - 1) is Kind.NUM
    limb = each is not None and each.kind is Kind.EACH and bool({"leg", "side"} & set(each.text.split()))
    alone = kind_at(marks, place - 2) not in (Kind.AT, Kind.WITH, Kind.NUM, Kind.PAIR)
    return counted and limb and alone and kind_at(marks, place + 2) not in (Kind.FOR, Kind.X, Kind.NUM, Kind.COLON)


def _all_sets(marks: list[Mark]) -> list[Mark]:
    """`all three sets at 16`: the sets are counted already."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.SETS and place and marks[place - 1].kind is Kind.ALL and mark.text.startswith("sets"):
            linked = mark.text.split(" ")[-1] in ("at", "with")
            out += [replace(mark, kind=Kind.AT, text="at")] if linked else []
            continue
        out.append(mark)
    return out


def _times(marks: list[Mark]) -> list[Mark]:
    """`10 each x 3`, `10 each side times 3`, `5 at 80, times 3`: three sets."""
    for place in range(2, len(marks) - 1):
        each = marks[place - 1].kind is Kind.EACH and kind_at(marks, place - 2) is Kind.NUM
        each = each or (marks[place].kind is Kind.TIMES and marks[place - 1].kind is Kind.COMMA)
        counts = each and marks[place].kind in (Kind.X, Kind.TIMES)
        ends = kind_at(marks, past_fill(marks, place + 2)) in (*_ENDS, Kind.WITH, Kind.AT)
        if counts and ends and whole_number(marks, place + 1, 2, FEW_SETS) is not None:
            number = marks[place + 1]
            return [*marks[:place], number, counted_sets(number, "of them"), *marks[place + 2 :]]
    return marks


def _each_behind(marks: list[Mark]) -> list[Mark]:
    """`10 at 16 each leg`: ten each leg, at 16."""
    out = list(marks)
    for place in range(3, len(marks)):
        if marks[place].kind is not Kind.EACH or not set(marks[place].text.split()) & _LIMBS:
            continue
        load = place - 1 - (marks[place - 1].kind in OF_LOAD)
        linked = kind_at(marks, load - 1) in (Kind.AT, Kind.WITH) and kind_at(marks, load) is Kind.NUM
        count = load - 2 - (kind_at(marks, load - 2) is Kind.REPS)
        if linked and kind_at(marks, count) is Kind.NUM and kind_at(marks, count - 1) not in (Kind.X, Kind.FOR):
            out[count + 1 : place + 1] = [marks[place], *marks[count + 1 : place]]
    return out


def _load_first(marks: list[Mark]) -> list[Mark]:
    """`left 10 right 10 all three with 16`, `10 a side, three sets, 16s`: the load before what both sides did."""
    for place in range(len(marks)):
        if marks[place].kind not in _BOTH_OPEN:
            continue
        both = next((n for n in (4, 3, 2) if [m.kind for m in marks[place : place + n]] in _BOTH), None)
        if both is None or kind_at(marks, place - 1) in (*OF_LOAD, *_LINKS, Kind.COMMA, Kind.SLASH, Kind.NUM):
            continue
        times = _past(marks, place + both, Kind.COMMA)
        counted = whole_number(marks, times, 2, FEW_SETS) is not None and kind_at(marks, times + 1) in _COUNTED
        end = times + 2 if counted else times + 1 if kind_at(marks, times) is Kind.ALL else None
        if end is None:
            continue
        load = _past(marks, end, Kind.COMMA)
        link = load + (kind_at(marks, load) in (Kind.AT, Kind.WITH))
        unit = kind_at(marks, link + 1) in OF_LOAD
        stop = link + 1 + unit
        if (
            kind_at(marks, link) is Kind.NUM
            and (unit or link > load)
            and kind_at(marks, stop) in (*_ENDS, Kind.THEN, Kind.NAME)
        ):
            comma = Mark(Kind.COMMA, ",", marks[place].start, marks[place].start)
            return [*marks[:place], *marks[link:stop], comma, *marks[place:end], *marks[stop:]]
    return marks


_BOTH = [
    [Kind.LEFT, Kind.NUM, Kind.RIGHT, Kind.NUM],
    [Kind.RIGHT, Kind.NUM, Kind.LEFT, Kind.NUM],
    [Kind.NUM, Kind.SLASH, Kind.NUM],
    [Kind.NUM, Kind.EACH],
]
_BOTH_OPEN = frozenset(kinds[0] for kinds in _BOTH)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_COUNTED = (Kind.SETS, Kind.TIMES)


def _past(marks: Sequence[Mark], at: int, kind: Kind) -> int:
    return at + (kind_at(marks, at) is kind)


def _only_one(marks: list[Mark]) -> list[Mark]:
    """`left leg only. 16s x 8`, `16s x 8 left only`: what is told is of that side."""
    sided = [i for i, m in enumerate(marks) if m.kind in _SIDES]
    if len(sided) != 1 or any(m.kind in (Kind.TANK, Kind.RIR, Kind.L, Kind.R, Kind.SLASH) for m in marks):
        return marks
    at = sided[0]
    before = [m.text for m in marks[max(0, at - 3) : at]]
    after = marks[at + 1].text if at + 1 < len(marks) else ""
    if after not in _ONLY and not set(before) & _ONLY:
        return marks
    counted = kind_at(marks, at + 1) is Kind.NUM or kind_at(marks, at + 2) is Kind.NUM
    if counted or not any(m.kind is Kind.NUM for m in marks):
        return marks
    side = marks[at]
    rest = [replace(m, kind=Kind.FILL) if i == at else m for i, m in enumerate(marks)]
    out: list[Mark] = []
    for place, mark in enumerate(rest):
        opens = mark.kind is Kind.NUM and not number_before(rest, place, _EDGES)
        out += [side, mark] if opens else [mark]
    return out
