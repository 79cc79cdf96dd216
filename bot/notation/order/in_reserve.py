"""What was left in reserve, hedged or turned round: `just one left`, `prob 2 more`, `left one in the tank`, `rated 8`.

Only behind a whole set of the same sentence, and where no side but `left` is named.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import HARDEST, MOST_LEFT
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

HEDGES = frozenset(words("just only maybe prob probably perhaps possibly about around roughly like approx barely"))
_DOUBTS = frozenset(words("maybe prob probably perhaps possibly"))
_KEPT = frozenset(words("kept keeping saved saving held holding leaving"))
_BACK = frozenset(words("back in there it the hand were was still left possible doable easily easy"))
_JUDGED = frozenset(words("rated rating rate scored"))
_ENDS = (None, *EDGES, Kind.CLOSE, Kind.FILL)
_POSSIBLE = frozenset(words("possible doable there"))
_RATES = (Kind.EMPTY, Kind.FAILED, Kind.RPE, Kind.RIR, Kind.TANK)


REMAINED = frozenset(words("remained remains rested rests"))
NOTHING = frozenset(words("none nothing nowt zilch nada"))
IN_RESERVE = (*HEDGES, *REMAINED, *NOTHING, Kind.WAS, *_KEPT, *_JUDGED, Kind.TANK, Kind.LEFT, Kind.ANOTHER, "the")
"""Kinds and words of which one is said where anything of this is."""


def in_reserve(marks: list[Mark]) -> list[Mark]:
    """The marks with such words as `N in the tank` and `rpe N`."""
    if any(m.kind is Kind.RIGHT for m in marks):
        return marks
    marks = _last_by_count(marks)
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        told = _reserve_at(marks, place)
        if told is None or not _has_set(marks, place):
            out.append(marks[place])
            place += 1
            continue
        number, end = told
        while out and out[-1].text in HEDGES | _KEPT:
            out.pop()
        out += [number, Mark(Kind.TANK, "left", marks[end - 1].start, marks[end - 1].end)]
        place = end
    return [
        replace(m, kind=Kind.RPE) if m.text in _JUDGED and _is_scale(out, i + 1) and _has_set(out, i) else m
        for i, m in enumerate(out)
    ]


_RESERVING = (Kind.NUM, Kind.LEFT, Kind.ANOTHER, Kind.COULD, Kind.WITH)
_NONE = NOTHING | {"zero", "0"}
_ALONE = _NONE | {"one more"}
"""Words of other kinds that such words begin with."""


def _reserve_at(marks: Sequence[Mark], place: int) -> tuple[Mark, int] | None:
    """How many are left by the words that start here, as a number, and where they end."""
    mark = marks[place]
    if mark.kind not in _RESERVING and mark.text not in _ALONE:
        return None
    one = replace(mark, kind=Kind.NUM, text="one", value=Decimal(1), parts=())
    after = kind_at(marks, place + 1)
    ends = kind_at(marks, place + 2) in _ENDS
    if mark.kind is Kind.LEFT and mark.text.split(" ")[-1] == "one" and after is Kind.TANK:
        return one, place + 2
    if mark.kind is Kind.LEFT and after is Kind.NUM and kind_at(marks, place + 2) is Kind.TANK:
        return marks[place + 1], place + 3
    if mark.kind is Kind.ANOTHER and mark.text == "one more" and after is Kind.LEFT and ends:
        return one, place + 2
    if mark.kind is Kind.ANOTHER and mark.text == "another" and after is Kind.NUM:
        end = _past_back(marks, place + 2)
        held = end > place + 2 and (marks[place + 1].value or HARDEST) <= MOST_LEFT and kind_at(marks, end) in _ENDS
        return (marks[place + 1], end) if held else None
    if mark.kind is Kind.COULD and set(mark.text.split()) & REMAINED and after is Kind.NUM:
        counted = kind_at(marks, place + 2) is Kind.REPS and kind_at(marks, place + 3) in _ENDS
        return (marks[place + 1], place + 3) if counted else None
    if mark.kind is Kind.ANOTHER and mark.text == "one more" and text_at(marks, place - 1) in _DOUBTS:
        return (one, place + 1) if after in (None, Kind.STOP, Kind.LINE, Kind.COMMA) else None
    if text_at(marks, place + 1) in NOTHING and mark.kind is Kind.WITH and ends:
        return replace(one, text="none", value=Decimal(0)), place + 2
    at = place + 1
    while kind_at(marks, at) in (Kind.WAS, Kind.COULD, Kind.FILL) and text_at(marks, at) not in _POSSIBLE:
        at += 1
    if mark.kind is Kind.ANOTHER and mark.text == "one more" and text_at(marks, at) in _POSSIBLE:
        return one, at + 1
    if mark.text in _NONE and _is_bare_behind(marks, place):
        return replace(one, text="none", value=Decimal(0)), place + 1
    article = place + 1 + (text_at(marks, place + 1) in ("a", "one"))
    if mark.kind is Kind.LEFT and (article > place + 1 or mark.text.split()[-1:] == ["one"]):
        start = article + (kind_at(marks, article) is Kind.REPS)
        end = _past_back(marks, start)
        told = any(m.text not in ("was", "were") for m in marks[start:end])  # `left one was shaky` is of a side
        return (one, end) if told and kind_at(marks, end) in _ENDS else None
    behind = place + 1 + int(mark.kind is Kind.NUM and after is Kind.MORE)
    bounded = past_most(marks, behind)
    few = mark.text == "one more" or (behind > place + 1 and (mark.value or HARDEST) <= MOST_LEFT)
    if bounded > behind and few and kind_at(marks, bounded) in _ENDS:
        return (one if mark.kind is Kind.ANOTHER else mark), bounded
    if mark.kind is not Kind.NUM or mark.value is None or mark.value > MOST_LEFT:
        return None
    kept = text_at(marks, place - 1) in _KEPT or (
        kind_at(marks, place - 1) is Kind.LEFT
        and {"in", "there", "in there"} & {m.text for m in marks[place + 1 : place + 4]}
    )
    back = _past_back(marks, place + 1 + (after is Kind.REPS))
    if kept and kind_at(marks, back) in _ENDS:
        return mark, back
    second = marks[place + 2] if place + 2 < len(marks) and kind_at(marks, place + 2) is Kind.NUM else None
    if after in (Kind.TANK, Kind.LEFT) and text_at(marks, place + 1).endswith("maybe") and second is not None:
        next_one = second.value == mark.value + 1 and kind_at(marks, place + 3) in (None, *EDGES)
        return (replace(mark, value=mark.value + Decimal("0.5"), end=second.end), place + 3) if next_one else None
    if not ends:
        return None
    if place > 1 and (marks[place - 2].value or HARDEST) <= MOST_LEFT:  # `one maybe two left` is between the two
        return None
    hedged = text_at(marks, place - 1) in HEDGES and after is Kind.LEFT
    doubted = text_at(marks, place - 1) in _DOUBTS and after is Kind.MORE
    return (mark, place + 2) if hedged or doubted else None


def _is_bare_behind(marks: Sequence[Mark], place: int) -> bool:
    """The `none` of `95x5 none`: all that its part says, straight behind a whole set."""
    at = place - 1 - (kind_at(marks, place - 1) in (Kind.COMMA, Kind.DASH))
    linked = kind_at(marks, at) is Kind.NUM and kind_at(marks, at - 1) in (Kind.X, Kind.FOR)
    return linked and kind_at(marks, place + 1) in (None, Kind.STOP, Kind.LINE)


def past_most(marks: Sequence[Mark], at: int) -> int:
    """Behind the `at most`, `at the very most`, `tops` of `one more at most`; the place itself where none is said."""
    end = at + (kind_at(marks, at) is Kind.AT)
    while text_at(marks, end) in ("the", "very", "absolute"):
        end += 1
    said = text_at(marks, end).split()
    bounds = said[-1:] in (["most"], ["best"], ["push"]) and (end > at or said[:1] == ["at"])
    return end + 1 if bounds or said in (["tops"], ["max"], ["maximum"]) else at


def _past_back(marks: Sequence[Mark], at: int) -> int:
    """Behind the words of `kept two back`, `another two were there`."""
    while at < len(marks) and marks[at].text and set(marks[at].text.split()) <= _BACK:
        at += 1
    return at


def _is_scale(marks: Sequence[Mark], place: int) -> bool:
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and value <= HARDEST and kind_at(marks, place + 1) in (*_ENDS, Kind.SLASH)


def _has_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether load and repetitions stand before a place."""
    kinds = [m.kind for m in marks[:place] if m.kind is not Kind.FILL]
    possible = kind_at(marks, place) is Kind.ANOTHER and kinds[-1:] == [Kind.COMMA]
    again = Kind.SAME in kinds or Kind.AGAIN in kinds
    return (again or kinds.count(Kind.NUM) > (not possible)) and kinds[-1] not in (
        Kind.X,
        Kind.FOR,
        Kind.AT,
        Kind.WITH,
        Kind.COLON,
    )


def _last_by_count(marks: list[Mark]) -> list[Mark]:
    """The `the 8` of `90x10,9,8, the 8 was to failure`, as the last one."""
    for place in range(2, len(marks) - 1):
        number, end = marks[place], place + 1
        while kind_at(marks, end) in (Kind.WAS, Kind.FILL):
            end += 1
        the = text_at(marks, place - 1) == "the"
        led = kind_at(marks, place - 1) in (Kind.COMMA, Kind.STOP) and kind_at(marks, place - 3) in (Kind.X, Kind.FOR)
        again = the or (led and kind_at(marks, place + 1) is Kind.WAS)
        if not again or number.kind is not Kind.NUM or kind_at(marks, end) not in _RATES:
            continue
        told = [value for m in marks[: place - the] if m.kind is Kind.NUM for value in (m.parts or (m.value,))]
        if len(told) > 2 and told[-1] == number.value and told[:-1].count(number.value) == 0:
            last = replace(
                number, kind=Kind.LASTREP, text="last one", start=marks[place - the].start, value=None, parts=()
            )
            return [*marks[: place - the], last, *marks[place + 1 :]]
    return marks
