"""Words of another time or another person than this session: plans, wishes, last week's, a mate's."""

from collections.abc import Sequence

from bot.notation.bounds import HARDEST
from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.other_times.reach import DOING, reached_from
from bot.notation.strays.substitutes import taken_up
from bot.notation.tokens import Mark


def other_times(marks: Sequence[Mark]) -> set[int]:
    """The places of numbers that are no set of this session: plans, wishes, last week's, and things counted.

    What is told of another time reaches to the end of its part, or to a word of doing (`going for 8 but got 7`).
    """
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if _is_went_back(marks, place):
            continue
        out |= _before(marks, place)
        if mark.text == "up from" and not _is_compared(marks, place):
            continue
        if mark.kind in (Kind.OTHERTIME, Kind.OTHERPERSON):
            out |= reached_from(marks, place)
        elif _heads_counts(marks, place):
            continue
        elif mark.kind is Kind.TALKNUM or (mark.kind is Kind.INSTEAD and _next_kind(marks, place) is Kind.NUM):
            out |= _with_scale(marks, _next_number(marks, place))
    return out - taken_up(marks)


def _heads_counts(marks: Sequence[Mark], place: int) -> bool:
    """The `resting` of `so i am resting: 12 and 11 at 40`: a colon behind it heads several sets, and no pause."""
    kinds = [m.kind for m in marks[place + 1 : place + 5]]
    several = kinds[:2] == [Kind.COLON, Kind.NUM] and kinds[2:] in ([Kind.AND, Kind.NUM], [Kind.COMMA, Kind.NUM])
    return several and marks[place].kind is Kind.TALKNUM and marks[place].text.startswith("rest")


def _with_scale(marks: Sequence[Mark], places: set[int]) -> set[int]:
    """The places of a score with the rest of `four out of ten`."""
    last = max(places, default=-1)
    ten = last + 3 if [m.text for m in marks[last + 1 : last + 3]] == ["out", "of"] else -1
    scored = 0 < ten < len(marks) and marks[ten].value == HARDEST
    return places | set(range(last + 1, ten + 1)) if scored else places


def _is_went_back(marks: Sequence[Mark], place: int) -> bool:
    """`then went back to 120 for 9`, `back to rows 60x8`, `back to kilos 60x8`: what was done, not what is to
    come."""
    if marks[place].text.split()[-2:] != ["back", "to"]:
        return False
    at = place + 1
    ahead = (Kind.NAME, Kind.BODY, Kind.PLUS, Kind.KG, Kind.LB)
    while at < len(marks) and (marks[at].text in ("the", "for") or marks[at].kind in ahead):
        at += 1
    if at < len(marks) and marks[at].kind is Kind.X and marks[at - 1].kind is Kind.BODY:
        return True
    if at >= len(marks) or marks[at].kind is not Kind.NUM:
        return False
    units = (Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.ASSIST, Kind.ADDED)
    following = [m for m in marks[at + 1 : at + 6] if m.kind not in units]
    got = [m for m in following[1:] if m.kind is not Kind.FILL or m.text in DOING]
    told = [m.kind for m in (following[:1] + got)[:3]]
    counted = told[:2] in ([Kind.NUM, Kind.REPS], [Kind.COMMA, Kind.NUM]) or told == [Kind.AND, Kind.FILL, Kind.NUM]
    return told[:1] in ([Kind.X], [Kind.FOR]) or counted


def _is_compared(marks: Sequence[Mark], place: int) -> bool:
    """`60x5, up from 57.5`, `up from last week's 8`: what was, and no `stood up from the chair 12`."""
    following = [m for m in marks[place + 1 : place + 4] if m.kind is not Kind.FILL]
    stood = place > 0 and marks[place - 1].text in _STOOD
    return not stood and bool(following) and following[0].kind is not Kind.WORD


_STOOD = ("stood", "standing", "stand", "getting", "got", "get", "rose", "rising")
_LATELY = ("last time", "last week", "last session", "last month")


def _before(marks: Sequence[Mark], place: int) -> set[int]:
    """`57.5x10 last time, 60x9 now`: the set straight before, where another set is told elsewhere."""
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
    if marks[place].text not in _LATELY or not ends:
        return set()
    start = place
    while start > 0 and marks[start - 1].kind in (Kind.NUM, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS):
        start -= 1
    led = start == 0 or marks[start - 1].kind in EDGES or marks[start - 1].kind is Kind.NAME
    whole = any(m.kind in (Kind.X, Kind.FOR) for m in marks[start:place])
    other = any(m.kind in (Kind.X, Kind.FOR) for m in (*marks[:start], *marks[place:]))
    return set(range(start, place)) if led and whole and other else set()


def _next_kind(marks: Sequence[Mark], place: int) -> Kind | None:
    """What follows, past a sign."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.PLUS, Kind.DASH, Kind.MINUS):
        at += 1
    return marks[at].kind if at < len(marks) else None


def _weighed_behind(marks: Sequence[Mark], place: int) -> set[int]:
    """`weighed myself this morning, 84.2 kg.`: the number straight behind the comma that ends its part."""
    at = place + 1
    while at < len(marks) and marks[at].kind not in EDGES and marks[at].kind is not Kind.NUM:
        at += 1
    number = at + 1
    if not (number < len(marks) and marks[at].kind in (Kind.COMMA, Kind.STOP) and marks[number].kind is Kind.NUM):
        return set()
    end = number + 1
    while end < len(marks) and marks[end].kind in (Kind.KG, Kind.LB):
        end += 1
    ends = end >= len(marks) or marks[end].kind in EDGES
    return set(range(number, end)) if ends else set()


_WEIGHED = ("weighed", "weigh", "weighed in at")
_PAID_OR_UP = ("paid", "cost", "costs", "spent", "price", "woke", "wake", "arrive", "arrived", "bed", "awake",
               "got up at", "get up at", "getting up at", "was up at", "set my alarm for",
               "alarm went off at")  # fmt: skip
"""Behind these a number with `for` tells what was paid, or the time of day: `woke up at 5 for this`."""


_PAST_TALK = (*EDGES, Kind.THEN, Kind.NAME, Kind.COULD, Kind.RPE, Kind.RIR)
"""What ends the reach of counted talk: in `felt like flying could have done 3 more` the number is what was left."""


def _next_number(marks: Sequence[Mark], place: int) -> set[int]:
    at = place
    reached = {place}
    if "weigh" in marks[place].text:
        reached |= _weighed_behind(marks, place)
    while at + 1 < len(marks) and marks[at + 1].kind not in _PAST_TALK and at - place < 5:
        at += 1
        if marks[at].kind in (Kind.NUM, Kind.CLOCK, Kind.BAD):
            if marks[at - 1].text == "@":
                return {place}
            if marks[place].kind is Kind.INSTEAD and marks[at - 1].kind in (Kind.PLUS, Kind.DASH, Kind.MINUS):
                reached.add(at - 1)
            following = marks[at + 1].kind if at + 1 < len(marks) else None
            if following in (Kind.METRES, Kind.M):
                return {place}
            if marks[place].text.startswith("arriv") and marks[at - 1].kind is not Kind.AT:
                return {place}
            if following in (Kind.SLASH, Kind.DASH) and at + 2 < len(marks) and marks[at + 2].kind is Kind.NUM:
                reached |= {at + 1, at + 2}
            bought = marks[place].text in _PAID_OR_UP and following is Kind.FOR and at + 2 < len(marks)
            bought = bought and marks[at + 2].kind is not Kind.NUM
            if following in (Kind.X, Kind.FOR) and marks[place].text not in _WEIGHED and not bought:
                return {place}
            reached.add(at)
            if following in (Kind.KG, Kind.LB, Kind.MINUTES, Kind.HOURS, Kind.SECONDS, Kind.M, Kind.WORD):
                reached.add(at + 1)
            return reached
    return reached
