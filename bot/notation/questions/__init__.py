"""Whether a message wants the coach's answer, and which of its words only ask.

Numbers and names after the opening of a question (`should i go to 65`) report nothing; a question mark after a report
(`60x5, add weight?`) leaves the report as it is.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import Span
from bot.notation.kinds import Kind
from bot.notation.order.vague import is_thought
from bot.notation.questions.asked import (
    ENDS,
    NO_OPENING,
    asks_to_change,
    clause_asking,
    is_request_to_change,
    opens,
    question_end,
    starts_asking,
    states,
)
from bot.notation.questions.openings import opens_anywhere
from bot.notation.questions.proposed import chooses, proposed
from bot.notation.questions.reported import is_reported
from bot.notation.questions.rhetorical import idle_questions
from bot.notation.questions.turned import tagged, turns
from bot.notation.questions.wished import asks_for
from bot.notation.questions.worded import asks_in_order
from bot.notation.tokens import Mark


@dataclass(frozen=True, slots=True)
class QuestionSaid:
    """What a message asks: where the words of the question stand (`None`: nothing is asked), and what only asks."""

    at: Span | None
    places: frozenset[int]
    wants_other: bool = False
    """Whether it asks for something else to do: `no rack free for the squats, would the hack machine do instead?`."""


_THUMBS = frozenset(["👍", "✅"])
"""Signs that a set is done, whatever is asked beside them."""


def read_question(marks: Sequence[Mark]) -> QuestionSaid:
    """Whether something is asked, and which marks only ask."""
    asked, only_asks = _asked(marks)
    only_asks |= _fronted(marks, only_asks)
    only_asks -= {p for p in only_asks if marks[p].text in _THUMBS and not {p - 1, p + 1} <= only_asks}
    places = sorted(only_asks) or [i for i, m in enumerate(marks) if m.kind is Kind.QUERY]
    if not asked:
        return QuestionSaid(None, frozenset(only_asks))
    first = last = places[0]
    while last + 1 in only_asks:
        last += 1
    said = {w for p in only_asks for w in marks[p].text.split()}
    other = bool(said & _OTHER) or any(marks[p].kind is Kind.INSTEAD for p in only_asks)
    return QuestionSaid((marks[first].start, marks[last].end), frozenset(only_asks), other)


def _fronted(marks: Sequence[Mark], only_asks: set[int]) -> set[int]:
    """The places of `on the 60s` in `on the 60s do you want a pause?`: a load put before what is asked of it."""
    out: set[int] = set()
    for opening in (i for i in only_asks if i > 1 and i - 1 not in only_asks):
        at = opening - 1
        while at > 0 and marks[at].kind in _UNITS:
            at -= 1
        number, at = marks[at].kind is Kind.NUM, at - 1
        while at > 0 and marks[at].text in ("the", "my", "todays"):
            at -= 1
        leads = at >= 0 and set(marks[at].text.split()[:1]) <= _LEADS
        if number and leads and (at == 0 or marks[at - 1].kind in ENDS):
            out |= set(range(at, opening))
    return out


_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.SETS)
_LEADS = frozenset(("on", "at", "for", "with", "using", "re", "about", "regarding"))
_OTHER = frozenset(("instead", "alternative", "alternatives", "substitute", "sub", "swap", "replace", "replacement"))


def _is_topic(marks: Sequence[Mark], query: int) -> bool:
    """`face pulls? skipped em.`: names what is told straight behind."""
    start, end = query, query + 1
    while start > 0 and marks[start - 1].kind not in ENDS:
        start -= 1
    while end < len(marks) and marks[end].kind not in ENDS:
        end += 1
    before = [m.kind for m in marks[start:query] if m.kind is not Kind.FILL]
    telling = (Kind.NUM, Kind.SKIP, Kind.SKIPPED, Kind.DONE)
    asks = query + 1 < end and marks[query + 1].kind is Kind.OR
    asks = asks or (end < len(marks) and marks[end].kind is Kind.QUERY)
    return before == [Kind.NAME] and not asks and any(m.kind in telling for m in marks[query + 1 : end])


def _is_surprise(marks: Sequence[Mark], query: int) -> bool:
    """`65 x 3 felt even better?!`: amazed at a set that is told, which asks nothing."""
    cried = [m.text for m in marks[query + 1 : query + 2]] == ["!"]
    end = query
    if query and marks[query - 1].text == "!":
        cried, end = True, query - 1
    start = end
    while start > 0 and marks[start - 1].kind not in ENDS:
        start -= 1
    part = marks[start:end]
    told = any(m.kind in (Kind.X, Kind.FOR) for m in part) and not any(m.kind is Kind.ASKING for m in part)
    return cried and told and bool(_AMAZED & {w for m in part for w in m.text.split()})


_AMAZED = frozenset(("felt", "moved", "flew", "somehow", "apparently", "even", "easier", "better"))


def opens_question(part: Sequence[Mark]) -> bool:
    """Whether a part of a message, seen by itself, opens a question."""
    start = 0
    while start < len(part) and part[start].kind is Kind.FILL and not _opens_at(part, start):
        start += 1
    return (start < len(part) and _opens_at(part, start)) or tagged(part, len(part)) is not None


def _opens_at(part: Sequence[Mark], place: int) -> bool:
    mark = part[place]
    if mark.kind is Kind.ASKING and mark.text not in NO_OPENING and not states(part, place):
        return not is_reported(part, place)
    if mark.text == "is" and place + 1 < len(part) and part[place + 1].kind is Kind.NUM:
        return True
    return (turns(part, place) or asks_in_order(part, place)) is not None


_UNASKING = frozenset(
    (Kind.NUM, Kind.LINE, Kind.CLOCK, Kind.SCRAP, Kind.COMMA, Kind.STOP, Kind.BREAK, Kind.OPEN, Kind.CLOSE, Kind.X,
     Kind.KG, Kind.LB, Kind.S, Kind.SLASH)
)  # fmt: skip
"""Kinds that open no question."""


def _asked(marks: Sequence[Mark]) -> tuple[bool, set[int]]:
    idle = idle_questions(marks)
    asked = any(
        m.kind is Kind.QUERY
        and i not in idle
        and not asks_to_change(marks, i)
        and not is_thought(marks, i)
        and not _is_topic(marks, i)
        and not _is_surprise(marks, i)
        for i, m in enumerate(marks)
    )
    only_asks: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ASKING or place in only_asks or place in idle:
            continue
        if not (opens(marks, place) or opens_anywhere(mark.text)) or states(marks, place):
            continue
        end = question_end(marks, place)
        if is_reported(marks, place):
            continue
        if is_request_to_change(marks[place:end]):
            continue
        if mark.text in NO_OPENING and not (end < len(marks) and marks[end].kind is Kind.QUERY):
            continue
        asked = True
        only_asks.update(range(place, end))
    for place in range(len(marks)):
        if place in idle or marks[place].kind in _UNASKING:
            continue
        turned = turns(marks, place)
        ends = turned or asks_in_order(marks, place) or asks_for(marks, place)
        if ends is not None and is_reported(marks, place):
            continue
        rhetorical = turned is None and marks[place].text in NO_OPENING
        if ends is not None and not rhetorical and not is_request_to_change(marks[place:ends]):
            asked = True
            only_asks.update(range(place, ends))
    if any(m.kind is Kind.OR for m in marks):
        for place in range(len(marks)):
            ends = None if place in only_asks else chooses(marks, place)
            if ends is not None:
                asked = True
                only_asks.update(range(place, ends))
    for place in range(len(marks) - 1):
        if marks[place].text == "is" and starts_asking(marks, place) and marks[place + 1].kind is Kind.NUM:
            end = place
            while end < len(marks) and marks[end].kind not in ENDS:
                end += 1
            asked = True
            only_asks.update(range(place, end))
    for place in range(len(marks) + 1):
        ends_here = place == len(marks) or marks[place].kind in (*ENDS, Kind.CLOSE)
        start = tagged(marks, place) if ends_here else None
        if start is not None and start not in idle:
            asked = True
            only_asks.update(range(start, place))
        if place < len(marks) and marks[place].kind is Kind.QUERY and place not in idle:
            only_asks |= clause_asking(marks, place) | proposed(marks, place)
    return asked, only_asks
