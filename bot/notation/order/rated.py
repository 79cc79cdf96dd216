"""Efforts of every set and efforts between two numbers, in the order in which the grammar knows them.

`60: 10, 9, 8 all at 9` is `rpe 9` of each; `between rpe 7 and rpe 8` is a range as `rpe 7 to 8` is.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark

_OF_EACH = ("each", "ea", "on each", "each one", "both")
_WORDS = (Kind.RPE, Kind.RIR, Kind.FEELS)
_BEHIND = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.LEFT)
_ENDS = (None, *EDGES, Kind.AND, Kind.THEN, Kind.DASH, Kind.NAME)
_OPENS = (*EDGES, Kind.AND, Kind.DASH)
_LED = (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB, Kind.S, Kind.SETS, Kind.EACH)
_RANGED = (Kind.TO, Kind.OR, Kind.DASH, Kind.AND)
_COUNTED = (Kind.X, Kind.FOR, Kind.REPS)
_HEAVY = 2
"""So many times an effort a load is at least, for the effort not to be a load itself."""


@dataclass(frozen=True, slots=True)
class _Effort:
    """An effort as the grammar has it, and where its words end."""

    said: list[Mark]
    end: int


def rated_all(marks: list[Mark]) -> list[Mark]:
    """`60: 10, 9, 8 all at 9`, `each @9`, `rpe for all was 9`: the effort, and behind it that it is of every set."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        every = _every(marks, at)
        effort = None if every is None else _effort(marks, at + 1)
        if every is not None and effort is not None:
            out += [*effort.said, replace(every, start=effort.said[-1].end, end=effort.said[-1].end)]
            at = effort.end
            continue
        if every is not None and _may_be_load(marks, at):
            behind = marks[at + 2].end
            out = out[:-1] if out[-1].kind is Kind.COMMA else out
            out += [*marks[at + 1 : at + 3], replace(every, start=behind, end=behind)]
            at += 3
            continue
        link = past(marks, at + 1, Kind.FOR, Kind.AT, Kind.WITH, Kind.FILL)
        number = past(marks, link + 1, Kind.WAS, Kind.FILL, Kind.AT, Kind.COLON)
        of_all = mark.kind in (Kind.RPE, Kind.RIR) and kind_at(marks, link) is Kind.ALL
        if of_all and kind_at(marks, number) is Kind.NUM and kind_at(marks, number + 1) in _ENDS:
            out += [mark, marks[number], replace(marks[link], start=marks[number].end, end=marks[number].end)]
            at = number + 1
            continue
        out.append(mark)
        at += 1
    return out


def rated_last(marks: list[Mark]) -> list[Mark]:
    """`70x6x3, last one at nine`, `the last was a 9`: an effort of the last set, where so many more repetitions than in
    the others would be told otherwise.
    """
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.LASTSET, Kind.LASTREP) or mark.text.split()[-1] not in _LAST:
            continue
        told = sorted(m.value for m in marks[:place] if m.kind is Kind.NUM and m.value is not None)
        whole = any(m.kind in (*_COUNTED, Kind.SETS) for m in marks[:place]) and kind_at(marks, place - 1) in _OPENS
        number = past(marks, place + 1, Kind.FILL, Kind.WAS, Kind.AT)
        led = any(m.kind is Kind.AT or m.text in ("a", "an") for m in marks[place + 1 : number])
        more = kind_at(marks, number) is Kind.NUM and (marks[number].value or 0) > next(iter(told[-2:-1]), 0)
        effort = _effort(marks, place + 1) if whole and led and more else None
        if effort is not None:
            out[place + 1 : effort.end] = effort.said
            return out
    return out


_LAST = frozenset(["last", "one", "set", "final"])


def _every(marks: Sequence[Mark], place: int) -> Mark | None:
    """The word at a place for every set that was told before it; not the `both` that is of two sides."""
    mark, before = marks[place], kind_at(marks, place - 1)
    each = (mark.kind is Kind.EACH and mark.text in _OF_EACH) or mark.text == "both were"
    opens = before in _OPENS or (mark.kind is Kind.ALL and before in _LED)
    if not (mark.kind is Kind.ALL or each) or not opens or not any(m.kind is Kind.NUM for m in marks[:place]):
        return None
    if mark.kind is Kind.ALL:
        return mark
    both = "both" in mark.text.split()
    if both and any(m.kind in (Kind.EACH, Kind.LEFT, Kind.RIGHT) for m in marks[:place]):
        return None
    return replace(mark, kind=Kind.ALL, text="both" if both else "each set")


def _effort(marks: Sequence[Mark], at: int) -> _Effort | None:
    """The effort that is told from here on, and nothing else to the end of the part."""
    start = past(marks, at, Kind.FILL, Kind.WAS)
    place = past(marks, start, Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.COLON)
    around = any(m.kind is Kind.AT or m.text.split()[-1:] in _AROUND for m in marks[at - 1 : place])
    word = marks[place] if kind_at(marks, place) in _WORDS else None
    place = past(marks, place + (word is not None), Kind.FILL, Kind.WAS, Kind.COLON, Kind.AT)
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    if value is None or value * 2 != int(value * 2):
        return None
    number = marks[place]
    behind = past(marks, place + 1, Kind.REPS)
    if kind_at(marks, behind) in _BEHIND and kind_at(marks, behind + 1) in _ENDS and word is None:
        most = HARDEST if marks[behind].kind is Kind.RPE else MOST_LEFT
        return _Effort([number, marks[behind]], behind + 1) if value <= most else None
    if kind_at(marks, place + 1) not in _ENDS:
        return None
    if word is not None:
        return _Effort([word, number], place + 1)
    plain = around and EASIEST <= value <= HARDEST and _is_beside_load(marks[:at], value)
    rpe = replace(number, kind=Kind.RPE, text="rpe", value=None, parts=(), end=number.start)
    return _Effort([rpe, number], place + 1) if plain else None


def _may_be_load(marks: Sequence[Mark], place: int) -> bool:
    """`10, 9, 8 all at 9`: the plan says whether it is the load or the effort, where no load is told before."""
    start = max((i for i in range(place) if marks[i].kind in (Kind.NAME, Kind.LINE, Kind.STOP)), default=-1)
    listed = [m for m in marks[start + 1 : place] if m.kind is Kind.NUM]
    bare = all(m.kind in (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.FILL) for m in marks[start + 1 : place])
    value = marks[place + 2].value if kind_at(marks, place + 2) is Kind.NUM else None
    scaled = value is not None and EASIEST <= value <= HARDEST
    several = len(listed) > 1 or any(m.parts for m in listed)
    led = kind_at(marks, place + 1) is Kind.AT and text_at(marks, place + 1) == "at"
    return bare and several and scaled and led and kind_at(marks, place + 3) in _ENDS


_AROUND = (["an"], ["a"], ["around"], ["about"], ["roughly"], ["approx"], ["near"])


def _is_beside_load(before: Sequence[Mark], value: Decimal) -> bool:
    """Whether a load and its repetitions are told already, and this number is no load beside them."""
    start = max((i for i, m in enumerate(before) if m.kind in (Kind.NAME, Kind.LINE)), default=-1)
    told = [m for m in before[start + 1 :] if m.kind is Kind.NUM]
    numbers = [n for m in told for n in (m.parts if m.value is None else (m.value,))]
    load = max(numbers, default=Decimal(0))
    counted = any(m.kind in _COUNTED for m in before[start + 1 :]) or any(n * 3 <= load * 2 for n in numbers)
    return load >= _HEAVY * value and counted


def rated_between(marks: list[Mark]) -> list[Mark]:
    """`between rpe 7 and rpe 8`, `between 7 and 8 for effort`: one word of effort, beside its two numbers."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        again = mark.kind in _WORDS and mark.kind is kind_at(marks, place - 3)
        ranged = [kind_at(marks, place + n) for n in (-2, 1)] == [Kind.NUM, Kind.NUM]
        between = kind_at(marks, place - 1) is not Kind.AND or text_at(marks, place - 4).endswith("between")
        if again and ranged and kind_at(marks, place - 1) in _RANGED and between:
            continue
        closes = mark.kind is Kind.FOR and kind_at(marks, place + 1) is Kind.RPE and kind_at(marks, place + 2) in _ENDS
        if closes and _is_range(marks, place - 3):
            continue
        out.append(mark)
    return out


def _is_range(marks: Sequence[Mark], place: int) -> bool:
    """Whether two numbers with a join between them start at a place."""
    kinds = [kind_at(marks, place + n) for n in range(3)]
    return kinds[0] is kinds[2] is Kind.NUM and kinds[1] in _RANGED
