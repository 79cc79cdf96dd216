"""Numbers with their decimals said apart, sets numbered by a point, repetitions called by their name."""

from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LOWS = {"single": 1, "double": 2, "triple": 3}
_HALF = Decimal("0.5")
"""What `and a half` adds to a number before it."""
_ANDS = frozenset(words("and n y e et und og och i en ve &"))
_ARTICLES = frozenset(words("a one an ein eine un una um uma en et"))
HALVES = frozenset(
    words("half halfs halve medio media mezzo mezza meio meia demi demie halb halbe halber halv halvt pol")
)
"""What a half is called, by those too who count in another language: `9 y medio`, `22 und halb`."""
BARE_HALVES = frozenset(words("bucuk buchuk"))
"""Halves that no `and` leads: `9 bucuk`."""
_POINT = 100
"""Digits after a spoken `point` are fewer than three."""


def numbered(marks: list[Mark]) -> list[Mark]:
    """`1. set 80x15 2. set 80x14`, `1set 80x15 2set 80x14`: which set each is."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        kinds = [kind_at(marks, at + n) for n in (0, 1, 2)]
        mark = marks[at]
        told = bool(out) and out[-1].kind in (Kind.X, Kind.FOR, Kind.RIR, Kind.RPE, Kind.AT)
        opens = not out or out[-1].kind in (*EDGES, Kind.NAME)
        next_one = mark.value == sum(m.kind is Kind.LABEL for m in out) + 1
        stopped = kinds == [Kind.NUM, Kind.STOP, Kind.SET] and (opens or next_one)
        glued = kinds == [Kind.NUM, Kind.SET, Kind.NUM] and marks[at + 1].tight and next_one and mark.text.isdigit()
        if not told and (stopped or glued) and mark.value is not None and mark.value <= 12:
            out.append(replace(mark, kind=Kind.LABEL, end=marks[at + 1 + stopped].end))
            at += 2 + stopped
            continue
        out.append(mark)
        at += 1
    return out


def with_linked_decimals(marks: list[Mark]) -> list[Mark]:
    """`5 with 2,5`, `8 at 92,5`: what a link leads to is one load, and no list."""
    return [
        replace(m, parts=())
        if m.kind is Kind.NUM
        and len(m.parts) == 2
        and "," in m.text
        and m.parts[1] in _TENTHS
        and kind_at(marks, i - 1) in (Kind.WITH, Kind.AT)
        else m
        for i, m in enumerate(marks)
    ]


_TENTHS = (Decimal(5), Decimal(25), Decimal(75))
"""What stands behind the comma of a load that is no list: `92,5`, `11,25`, `3,75`."""


def with_decimals(marks: list[Mark]) -> list[Mark]:
    """`22 point 5`, `22 and half`: one number."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        said = [m.text for m in marks[at + 1 : at + 3]]
        whole = mark.kind is Kind.NUM and mark.value is not None and mark.value == int(mark.value)
        if whole and mark.value is not None and said[:1] == ["point"] and kind_at(marks, at + 2) is Kind.NUM:
            tail = marks[at + 2].value or Decimal(0)
            if tail < _POINT and tail == int(tail):
                value = mark.value + tail / (10 if tail < 10 else 100)
                out.append(replace(mark, value=value, parts=(), end=marks[at + 2].end))
                at += 3
                continue
        rest, length = _fraction(marks, at)
        called = _called_whole(marks, at, at + length + 1) if whole and rest else None
        if called is not None:
            out.append(mark)
            at = called
            continue
        counted = rest and _is_half_rep(marks, at + length + 1)
        timed = kind_at(marks, at + length + 1) is Kind.MINUTES
        if whole and mark.value is not None and rest and not counted and not timed:
            out.append(replace(mark, value=mark.value + rest, parts=(), end=marks[at + length].end))
            at += length + 1
            continue
        out.append(mark)
        at += 1
    return out


def _called_whole(marks: list[Mark], place: int, at: int) -> int | None:
    """Where `so call it eight` ends behind `eight and a half`: the half is not counted; `None` where it is."""
    while kind_at(marks, at) in (Kind.COMMA, Kind.FILL):
        at += 1
    says = text_at(marks, at) in ("call it", "call that", "count it as", "so call it", "lets call it", "say", "make it")
    return at + 2 if says and kind_at(marks, at + 1) is Kind.NUM and marks[at + 1].value == marks[place].value else None


def with_half_minutes(marks: list[Mark]) -> list[Mark]:
    """`hang half a minute` as 30 seconds, but where it is rested so long."""
    out = list(marks)
    for place in range(len(marks) - 2, -1, -1):
        said = [m.text for m in marks[place : place + 3]]
        rests = {"rest", "rests", "rested", "break", "between"} & {
            w for m in marks[max(0, place - 2) : place + 5] for w in m.text.split()
        }
        if said in (["half", "a", "minute"], ["half", "a", "min"]) and not rests:
            first, last = marks[place], marks[place + 2]
            number = replace(first, kind=Kind.NUM, text="30", value=_HALF * 60, end=marks[place + 1].end)
            out[place : place + 3] = [number, replace(last, kind=Kind.SECONDS)]
    return out


def with_times(marks: list[Mark]) -> list[Mark]:
    """`a minute and 5 seconds`, `1 minute 5 seconds`: one time."""
    out = list(marks)
    for place in range(len(marks) - 1, 0, -1):
        if marks[place].kind is not Kind.MINUTES:
            continue
        seconds = place + 1 + (kind_at(marks, place + 1) is Kind.AND)
        before, after = marks[place - 1], out[seconds] if seconds < len(out) else None
        one = before.text in ("a", "one") and before.kind is not Kind.NUM and text_at(marks, place - 2) != "half"
        minutes = Decimal(1) if one else before.value if before.kind is Kind.NUM else None
        told = kind_at(out, seconds + 1) in (Kind.SECONDS, Kind.S)
        if after is None or after.kind is not Kind.NUM or after.value is None or minutes is None or not told:
            continue
        if after.value < _MINUTE and minutes <= _MOST_MINUTES:
            whole = replace(after, start=before.start, value=60 * minutes + after.value, parts=())
            out[place - 1 : seconds + 1] = [whole]
    return out


_MINUTE = 60
_MOST_MINUTES = 20
"""What is held or carried longer is told in minutes."""


def with_hundreds(marks: list[Mark]) -> list[Mark]:
    """`1 hundred`, `hundred and 5`: one number, said with digits in it."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        value, end = _hundreds(marks, at)
        if value is None:
            out.append(marks[at])
            at += 1
            continue
        out.append(replace(marks[at], value=value, parts=(), end=marks[end - 1].end))
        at = end
    return out


def _hundreds(marks: list[Mark], at: int) -> tuple[Decimal | None, int]:
    """The number of hundreds from a mark on and where it ends; `None` where none is said."""
    first, second, third = ((*marks[at : at + 3], None, None, None))[:3]
    if first is None or second is None or first.kind is not Kind.NUM or first.value is None:
        return None, at
    if first.text.isdigit() and first.value < 10 and second.value is not None and second.text.startswith("hundred"):
        value, end = first.value * 100 + second.value - 100, at + 2
        tens = marks[end + 1] if kind_at(marks, end) is Kind.AND and end + 1 < len(marks) else None
        if second.text == "hundred" and tens is not None and tens.text.isdigit() and tens.value is not None:
            return value + tens.value, end + 2
        return value, end
    joined = first.text.endswith("hundred") and second.kind is Kind.AND
    if joined and third is not None and third.text.isdigit() and third.value is not None and third.value < 100:
        return first.value + third.value, at + 3
    return None, at


def _is_half_rep(marks: list[Mark], at: int) -> bool:
    """`6 and a half one i wont count`: what is behind a half of one repetition, which is none."""
    said = [w for m in marks[at : at + 4] for w in m.text.split()]
    one = said[:1] in (["one"], ["rep"]) or said[:2] in (["of", "one"], ["of", "a"], ["of", "another"])
    return one or (said[:1] in (["i"], ["that"], ["not"], ["which"]) and not {"count", "counting"}.isdisjoint(said))


def _fraction(marks: list[Mark], at: int) -> tuple[Decimal, int]:
    """The fraction said after a whole number, and how many marks say it: `and a half`, `1/2`, the `fifty` of 72.50."""
    if text_at(marks, at + 1) not in _OPENING:
        return Decimal(0), 0
    said = [m.text for m in marks[at + 1 : at + 5]]
    led = said[:1] != [] and said[0] in _ANDS
    bare = said[led:]
    article = len(bare) > 1 and bare[0] in _ARTICLES
    if said and (said[0] in BARE_HALVES or (led and bare[article : article + 1] and bare[article] in HALVES)):
        return _HALF, 1 if not led else 1 + article + led
    if bare[:3] == ["1", "/", "2"]:
        return _HALF, led + 3
    if said[:3] == ["and", "a", "quarter"]:
        return _HALF / 2, 3
    value = marks[at].value
    linked = kind_at(marks, at - 1) in (Kind.X, Kind.FOR, Kind.AT)
    ends_in_half = value is not None and value % 10 in (2, 7) and value > 20 and not linked
    if said[:1] in (["fifty"], ["50"]) and ends_in_half and kind_at(marks, at + 2) in (Kind.FOR, Kind.X, Kind.KG):
        return Decimal("0.5"), 1
    return Decimal(0), 0


_OPENING = frozenset([*_ANDS, *BARE_HALVES, "and", "1", "fifty", "50"])
"""Words with which a fraction begins."""


def counts_by_name(marks: list[Mark]) -> list[Mark]:
    """`315 triple`, `160 for the single`: a load, and repetitions by their name."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        led = kind_at(out, len(out) - 2) is Kind.FOR and kind_at(out, len(out) - 3) in (Kind.NUM, Kind.KG, Kind.LB)
        if mark.text in _LOWS and led and out[-1].text in ("the", "my", "that"):
            out[-1] = replace(mark, kind=Kind.NUM, value=Decimal(_LOWS[mark.text]))
            continue
        if mark.text in _LOWS and kind_at(marks, place - 1) is Kind.NUM and kind_at(marks, place + 1) is not Kind.NUM:
            out.append(replace(mark, kind=Kind.FOR, text="for", end=mark.start))
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(_LOWS[mark.text])))
        else:
            out.append(mark)
    return out
