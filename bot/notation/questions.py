"""Whether a message wants the coach's answer, and which of its words only ask.

Numbers and names after the opening of a question (`should i go to 65`) report nothing; a question mark after a report
(`60x5, add weight?`) leaves the report as it is.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import Span
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_EDGES = (*_ENDS, Kind.COMMA, Kind.BREAK, Kind.COLON, Kind.OPEN, Kind.DASH)
_NO_OPENING = ("what a", "how good was", "hows", "how is", "how are")
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
    asked = any(m.kind is Kind.QUERY and not _asks_to_change(marks, i) for i, m in enumerate(marks))
    only_asks: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ASKING or place in only_asks:
            continue
        if not (_opens(marks, place) or mark.text in _ANYWHERE) or _states(marks, place):
            continue
        end = place
        while end < len(marks) and marks[end].kind not in _ENDS:
            end += 1
        if _is_request_to_change(marks[place:end]):
            asked = asked and _other_query(marks, end)
            continue
        if mark.text in _NO_OPENING and not (end < len(marks) and marks[end].kind is Kind.QUERY):
            continue
        asked = True
        only_asks.update(range(place, end))
    for place in range(len(marks) - 1):
        if marks[place].text == "is" and _opens(marks, place) and marks[place + 1].kind is Kind.NUM:
            end = place
            while end < len(marks) and marks[end].kind not in _ENDS:
                end += 1
            asked = True
            only_asks.update(range(place, end))
    for place, mark in enumerate(marks):
        if mark.kind is Kind.QUERY:
            only_asks |= _clause(marks, place)
    return asked, only_asks


_STATING = frozenset(words("but im i am feel feels felt was is still its thats all seems seem were feeling"))


def _states(marks: Sequence[Mark], place: int) -> bool:
    """`but ok to go on`: says that it is, and asks nothing."""
    if marks[place].text not in ("ok to", "okay to", "fine to", "is ok to", "its ok to") or place == 0:
        return False
    return set(marks[place - 1].text.split()) <= _STATING


_VERBS = frozenset(words(
    "is are was were should can could do does did will would am has have may shall what how which when where why",
    "who whats hows add go up drop raise more less increase reduce swap change keep stay",
))  # fmt: skip


_CHANGING = ("add", "increase", "reduce", "raise", "bump", "should i", "go up", "up", "go", "drop")


def _clause(marks: Sequence[Mark], query: int) -> set[int]:
    """The clause that a question mark ends, where it is worded as a question and reports no set itself."""
    start = query
    while start > 0 and marks[start - 1].kind not in _EDGES:
        start -= 1
    words = [w for m in marks[start:query] for w in m.text.split()]
    kinds = [m.kind for m in marks[start:query]]
    if Kind.OR in kinds and kinds.count(Kind.NUM) > 1 and Kind.X not in kinds:
        return set(range(start, query))
    if len(words) < 2 or not set(words[:3]) & _VERBS:
        last = max((i for i in range(start, query) if marks[i].kind is Kind.X), default=start)
        later = [i for i in range(last + 2, query) if marks[i].text in _CHANGING]
        return set(range(later[0], query)) if later else set()
    if words[0] == "did" and Kind.X in kinds:
        return set()
    if Kind.MEANT in kinds and Kind.NUM in kinds and Kind.SET in kinds:
        return set()
    return set(range(start, query))


def _asks_to_change(marks: Sequence[Mark], query: int) -> bool:
    """Whether the clause before a question mark politely corrects: `can you make that 9?`."""
    start = query
    while start > 0 and marks[start - 1].kind not in _ENDS:
        start -= 1
    return any(m.kind is Kind.MEANT and m.text.split()[0] in ("can", "could") for m in marks[start:query])


def _opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether a question can open here: after an edge, with only fillers and names of talk between."""
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.AND, Kind.THEN, Kind.SORRY):
        at -= 1
    return at < 0 or marks[at].kind in _EDGES


def _is_request_to_change(marks: Sequence[Mark]) -> bool:
    """`can you change set 2 to 9`: asks for a correction, not for advice."""
    polite = marks[0].text in ("can you", "could you", "would you", "can we", "could we", "will you", "do you")
    return polite and any(
        m.kind in (Kind.MEANT, Kind.SCRAP) or m.text in ("change", "fix", "correct") for m in marks[1:5]
    )


def _other_query(marks: Sequence[Mark], end: int) -> bool:
    return any(m.kind is Kind.QUERY for m in marks[:end]) or any(m.kind is Kind.QUERY for m in marks[end + 1 :])
