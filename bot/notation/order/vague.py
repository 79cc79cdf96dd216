"""Numbers of which one is meant, not known which: `60x10 or was it 9`, `8 maybe 9`, `60x8-9`: asked about."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LEAST_LOAD = 30
"""A number that is less may be repetitions: `60x10 maybe 9`."""
_WIDEST = 2
"""A range of repetitions is no wider; a list falls or holds, or goes on."""
MAYBE = frozenset(words("maybe perhaps possibly might mightve potentially mebbe prob"))
_RATING = (Kind.TANK, Kind.LEFT, Kind.RPE, Kind.RIR, Kind.MORE, Kind.RPEPOST, Kind.RIRPOST)
_EFFORTS = (*_RATING, Kind.X, Kind.FOR, *UNITS)
_ENTRY = (Kind.X, Kind.FOR, Kind.KG, Kind.LB)
_RATED = (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.AT, Kind.COULD)


def vague(marks: list[Mark]) -> list[Mark]:
    """The marks with what joins two such numbers as a slip."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if _is_some(marks, place):
            out[place] = replace(mark, kind=Kind.SLIP)
            continue
        if kind_at(marks, place - 1) is not Kind.NUM:
            maybe = mark.text in MAYBE or mark.kind is Kind.OR or _is_could_be(marks, place)
            was = _is_or_was(marks, place)
            if (maybe and _is_doubted(marks, place)) or was is not None:
                out[place : was or place + 1] = [replace(m, kind=Kind.SLIP) for m in marks[place : was or place + 1]]
            continue
        at = place + 1
        while kind_at(marks, at) in (Kind.WAS, Kind.FILL):
            at += 1
        numbered = kind_at(marks, at) is Kind.NUM
        told = kind_at(marks, at + 1) not in _ENTRY
        doubted = mark.kind is Kind.OR and at > place + 1 and any(m.kind is Kind.WAS for m in marks[place:at])
        between = mark.kind is Kind.AND and place > 1 and marks[place - 2].text.split()[-1:] == ["between"]
        between = between and not _is_rated(marks, place)
        doubted = doubted or between or _is_range(marks, place) or _is_was(marks, place)
        if (numbered and told and doubted) or (mark.text in MAYBE and _is_doubted(marks, place)):
            out[place] = replace(mark, kind=Kind.SLIP)
        elif (was := _is_or_was(marks, place)) is not None:
            out[place:was] = [replace(m, kind=Kind.SLIP) for m in marks[place:was]]
    return out


_COUNT_LOST = frozenset(words("dunno idk unsure forgot forget count sure remember"))


def with_lost_counts(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the `or` of `dunno if that was 5 or 6, lost count` as a slip, which corrects nothing."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.OR or kind_at(marks, place - 1) is not Kind.NUM:
            continue
        after = place + 1 + (kind_at(marks, place + 1) in (Kind.WAS, Kind.FILL))
        one, two = marks[place - 1].value, marks[after].value if kind_at(marks, after) is Kind.NUM else None
        near = range(max(0, place - _NEAR), min(len(marks), place + _NEAR))
        if any(m.kind is Kind.MEANT for m in marks[near.start : place]):
            continue
        lost = any(set(marks[i].text.split()) & _COUNT_LOST for i in near)
        if one is None or two is None or not 0 < abs(one - two) <= _WIDEST or not lost:
            continue
        out[place] = replace(mark, kind=Kind.SLIP)
        for i in near:
            lost_it = marks[i].kind is Kind.MEANT and "count" in marks[i].text and i > place
            asked = (marks[i].kind is Kind.WAS or marks[i].text.startswith("not sure")) and i < place
            if lost_it or asked or marks[i].text == "if":
                out[i] = replace(marks[i], kind=Kind.FILL)
    return out


_NEAR = 8
"""Marks on either side in which a client says that the count was lost."""


def _is_some(marks: list[Mark], place: int) -> bool:
    """The `something` of `forty something for 12`, `40-odd x 12`: which of ten loads it was is not known."""
    number = place - 1 - (kind_at(marks, place - 1) is Kind.DASH)
    value = marks[number].value if number >= 0 and kind_at(marks, number) is Kind.NUM else None
    if marks[place].text not in SOME or value is None or value % 5 or value < _LEAST_TENS:
        return False
    return kind_at(marks, place + 1) in (None, *EDGES, *_UNSURE) and kind_at(marks, number - 1) not in (
        Kind.X,
        Kind.FOR,
    )


_LEAST_TENS = 20
"""The lowest load of which only the tens are told: `twenty something`."""
SOME = frozenset(words("something odd sommat summat smth sth somethin"))
_UNSURE = (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.S, Kind.NUM, Kind.WITH, Kind.REPS)


def _is_doubted(marks: list[Mark], place: int) -> bool:
    """`8 maybe 9`, `60x5 i think? maybe 6`: two counts a little apart, the second no load, effort or time."""
    before = place - 1
    thought = (Kind.FILL, Kind.COMMA, Kind.QUERY, Kind.OR, Kind.REPS, Kind.GAP, Kind.WORD, Kind.STOP,
               Kind.AT, Kind.WITH, Kind.NAME)  # fmt: skip
    while kind_at(marks, before) in thought and place - before < 7:
        before -= 1
    after = place + 1
    while kind_at(marks, after) in (Kind.FILL, Kind.WAS):
        after += 1
    one, two = (marks[i].value if kind_at(marks, i) is Kind.NUM else None for i in (before, after))
    if one is None or two is None or not 0 < abs(one - two) <= _WIDEST:
        return False
    return kind_at(marks, after + 1) not in _EFFORTS and kind_at(marks, before - 1) not in (Kind.RPE, Kind.RIR)


def _is_or_was(marks: list[Mark], place: int) -> int | None:
    """Where the number stands of `275x5. or was it 265`, `275x5 maybe 265`, behind a whole set: which one it was."""
    if marks[place].kind is not Kind.OR and marks[place].text not in MAYBE:
        return None
    at = place + 1
    while kind_at(marks, at) in (Kind.WAS, Kind.FILL):
        at += 1
    was = marks[place].kind is Kind.OR and any(m.kind is Kind.WAS for m in marks[place:at])
    was = was or (marks[place].text in MAYBE and at < len(marks) and (marks[at].value or 0) >= _LEAST_LOAD)
    ends = kind_at(marks, at + 1 + (kind_at(marks, at + 1) in UNITS)) in (None, *EDGES)
    told = kind_at(marks, at) is Kind.NUM and any(m.kind is Kind.NUM for m in marks[:place])
    return at if was and told and ends else None


def _is_could_be(marks: list[Mark], place: int) -> bool:
    """`could be 8`."""
    said = [w for m in marks[place : place + 3] for w in m.text.split()]
    return marks[place].kind is Kind.COULD and said[:2] == ["could", "be"]


def _is_rated(marks: list[Mark], place: int) -> bool:
    """The `and` of `rpe between 7 and 8`, `between 1 and 2 left`: efforts, whose middle is meant."""
    before = place - 2
    while kind_at(marks, before) in (Kind.COLON, Kind.WAS, Kind.FILL):
        before -= 1
    after = place + 2 + (kind_at(marks, place + 2) is Kind.REPS)
    return kind_at(marks, before) in _RATED or kind_at(marks, after) in _RATING


def _is_was(marks: list[Mark], place: int) -> bool:
    """`10 was 9`, and nothing else: what is stored and what it was, or two sets."""
    if marks[place].kind is not Kind.WAS:
        return False
    whole = [m.kind for m in marks if m.kind not in (Kind.FILL, Kind.STOP, Kind.LINE, Kind.COMMA)]
    return whole == [Kind.NUM, Kind.WAS, Kind.NUM]


def _is_range(marks: list[Mark], place: int) -> bool:
    """`60x8-9`, `pull ups 6-7`: two numbers with a dash, the second a little greater, and no more of them."""
    before = place - 2
    while kind_at(marks, before) in (Kind.COLON, Kind.WAS, Kind.FILL):
        before -= 1
    if marks[place].kind is not Kind.DASH or kind_at(marks, before) in _RATED:
        return False
    low, high = marks[place - 1].value, marks[place + 1].value if place + 1 < len(marks) else None
    alone = kind_at(marks, place + 2) not in (Kind.DASH, Kind.X, Kind.NUM, Kind.SETS, *_EFFORTS)
    alone = alone and kind_at(marks, place - 2) is not Kind.DASH
    tight = marks[place].tight and place + 1 < len(marks) and marks[place + 1].tight
    tight = tight or kind_at(marks, place + 2) is Kind.REPS
    return tight and alone and low is not None and high is not None and low < high <= low + _WIDEST


def is_thought(marks: Sequence[Mark], query: int) -> bool:
    """`60x5 i think?`: a question mark behind a number that is not sure, not a question to the coach."""
    start = query
    while start > 0 and marks[start - 1].kind in (Kind.FILL, Kind.QUERY):
        start -= 1
    said = {w for m in marks[start:query] for w in m.text.split()}
    return kind_at(list(marks), start - 1) in (Kind.NUM, Kind.REPS) and bool(said & {"think", "guess", "reckon", "ish"})
