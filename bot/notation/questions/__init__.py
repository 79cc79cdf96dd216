"""Whether a message wants the coach's answer, and which of its words only ask.

Numbers and names after the opening of a question (`should i go to 65`) report nothing; a question mark after a report
(`60x5, add weight?`) leaves the report as it is.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import Span
from bot.notation.kinds import Kind
from bot.notation.order.vague import is_hedged, is_thought
from bot.notation.questions.asked import (
    ENDS,
    NO_OPENING,
    asks_to_change,
    clause_asking,
    has_other_query,
    is_request_to_change,
    opens,
    question_end,
    starts_asking,
    states,
)
from bot.notation.questions.worded import asks_in_order
from bot.notation.tokens import Mark

_ANYWHERE = (
    "should i",
    "shall i",
    "can i",
    "could i",
    "do i",
    "is it ok",
    "is it okay",
    "ok to",
    "okay to",
    "how long",
    "how many",
    "how much",
    "how heavy",
    "what weight",
    "what should",
    "any idea",
    "any tips",
    "any advice",
    "any alternative",
    "wondering if",
    "wondering whether",
    "not sure if",
    "not sure whether",
    "not sure what",
    "do i need",
    "am i ok",
    "what if",
    "can we",
    "could we",
    "should we",
    "mind if i",
    "let me know if",
    "let me know what",
    "what next",
    "whats next",
    "do you",
    "would you",
    "may i",
    "what do",
    "any thoughts",
    "is that ok",
    "is that okay",
    "is that enough",
    "how should",
    "how do",
    "what load",
    "please advise",
    "thoughts on",
    "any chance",
    "shud i",
    "shoud i",
    "is there",
    "what about",
    "is it better",
    "is it fine",
    "is it alright",
    "dont know if",
    "dont know what",
    "dont know whether",
    "can you",
    "could you",
    "will you",
    "ok if",
    "okay if",
    "is it cool if",
    "any pointers",
    "any suggestions",
    "what to leave",
    "what to skip",
    "what to drop",
    "what to cut",
    "which to skip",
    "which to leave",
    "is that normal",
    "is this normal",
    "is it normal",
    "is that right",
    "is this right",
    "is this ok",
    "is it bad",
    "is it safe",
    "how come",
)
"""Openings that open a question in the middle of a clause too."""


@dataclass(frozen=True, slots=True)
class QuestionSaid:
    """What a message asks: where the words of the question stand (`None`: nothing is asked), and what only asks."""

    at: Span | None
    places: frozenset[int]


def read_question(marks: Sequence[Mark]) -> QuestionSaid:
    """Whether something is asked, and which marks only ask."""
    asked, only_asks = _asked(marks)
    places = sorted(only_asks) or [i for i, m in enumerate(marks) if m.kind is Kind.QUERY]
    if not asked:
        return QuestionSaid(None, frozenset(only_asks))
    first = last = places[0]
    while last + 1 in only_asks:
        last += 1
    return QuestionSaid((marks[first].start, marks[last].end), frozenset(only_asks))


def _asked(marks: Sequence[Mark]) -> tuple[bool, set[int]]:
    asked = any(
        m.kind is Kind.QUERY and not asks_to_change(marks, i) and not is_thought(marks, i) for i, m in enumerate(marks)
    )
    only_asks: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ASKING or place in only_asks:
            continue
        if not (opens(marks, place) or mark.text in _ANYWHERE) or states(marks, place):
            continue
        end = question_end(marks, place)
        if is_hedged(marks[place:end]) or (place and marks[place - 1].text in ("asked", "asks", "wondered")):
            continue
        if is_request_to_change(marks[place:end]):
            asked = asked and has_other_query(marks, end)
            continue
        if mark.text in NO_OPENING and not (end < len(marks) and marks[end].kind is Kind.QUERY):
            continue
        asked = True
        only_asks.update(range(place, end))
    for place in range(len(marks)):
        ends = asks_in_order(marks, place)
        rhetorical = marks[place].text in NO_OPENING
        if ends is not None and not rhetorical and not is_request_to_change(marks[place:ends]):
            asked = True
            only_asks.update(range(place, ends))
    for place in range(len(marks) - 1):
        if marks[place].text == "is" and starts_asking(marks, place) and marks[place + 1].kind is Kind.NUM:
            end = place
            while end < len(marks) and marks[end].kind not in ENDS:
                end += 1
            asked = True
            only_asks.update(range(place, end))
    for place, mark in enumerate(marks):
        if mark.kind is Kind.QUERY:
            only_asks |= clause_asking(marks, place)
    return asked, only_asks
