"""Seconds beside a hold that are no hold: by how many another was beaten, how many more they are, the last few of it.

`hang 1:10, beat my kid by 4 sec`, `thats 5 sec up on last week`, `shook for the last 5 secs`. What is compared is short
beside what was held; a time as long as that may be the next hold. Common wordings, no source.
"""

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.worded import sentence_of
from bot.notation.wordlist import words

COMPARING = frozenset(words(
    "by more longer up down better less shorter worse than over under ahead behind off extra difference improvement "
    "gain gained added last final first short shy pb pr record away closing from"
))  # fmt: skip
"""Words of which one is said wherever seconds are only compared."""
_ROUGHLY = r"(?: (?:about|roughly|around|like|only|just|at least|maybe|a good|good|a whole|whole|nearly|some))*$"
_BEATEN = re.compile(
    r"\b(?:beat|beats|beaten|beating|bested|pipped|edged|nicked|outlasted|outheld|won|win|wins|lost|lose|loses|ahead|"
    r"missed|topped|smashed|improved|short|bettered|broke|broken|past|behind|longer|shorter|up|down|over|under|better|"
    r"worse|quicker|leads?|leading|owns?|(?:has|have|had|got|gets|still has|still got) "
    r"(?:me|him|her|them|us|it|mine|that))\b[^,.]* by" + _ROUGHLY
)
"""What leads to by how many seconds: `beat my kid by`, `my brother has me by`."""
_GAINED = re.compile(
    r"\b(?:gained|added|adding|shaved|knocked|lost|thats|that is|thats like|which is|its|makes it|made|a|another)"
    + _ROUGHLY
)
_AFTER = re.compile(
    r"(?:up|down|more|longer|better|less|shorter|worse|over|under|ahead|behind|clear|past|beyond|off|short|shy|away|"
    r"extra)"
    r" (?:than|on|of|from|my|the|last|what)\b|off (?:it|that|last|my)|(?:of )?(?:an? )?(?:difference|improvement)\b|"
    r"(?:a )?(?:pb|pr|record|gain|progress)\b"
)
"""What says behind seconds that they are compared: `up on last week`, `of difference`."""
_MORE = re.compile(r"(?:up|more|longer|better|less|shorter|worse|extra|over|under|ahead|down)\b")
_PART = re.compile(
    r"\b(?:for|in|over|during|through|throughout|on|at|with|about|by|until|till|from)"
    r"(?: (?:the|my|those|about|like))* (?:last|final|first|closing|opening)(?: (?:of|few|like|good|whole))*$"
)
"""What leads to a part of the hold: `for the last`."""
_PART_BARE = re.compile(r"\b(?:last|final|first|closing|opening)$")
_WERE = re.compile(r"(?:were|was|are|is|felt|got|had|nearly|almost|of it)\b")
_TIMES = (Kind.SECONDS, Kind.S, Kind.MINUTES)
_SHORT = 2
"""So many times the seconds that are compared are within what was held (common practice, no source)."""


def seconds_compared(marks: Sequence[Mark]) -> Iterator[int]:
    """The places of such seconds."""
    for place, mark in enumerate(marks):
        timed = kind_at(marks, place + 1) in (Kind.SECONDS, Kind.S)
        if mark.kind is not Kind.NUM or mark.value is None or mark.parts or not timed:
            continue
        start, end = sentence_of(marks, place)
        before = " ".join(m.text for m in marks[start:place])
        behind = " ".join(m.text for m in marks[place + 2 : min(end, place + 7)])
        if _BEATEN.search(before) or (
            _is_compared(before, behind) and mark.value * _SHORT <= _held_before(marks, place)
        ):
            yield from range(place, place + 2 + (kind_at(marks, place + 2) is Kind.MORE))


def _is_compared(before: str, behind: str) -> bool:
    """Whether the words on both sides of seconds compare them, or say which part of the hold they were."""
    gained = bool(_GAINED.search(before)) and bool(_MORE.match(behind))
    part = bool(_PART.search(before)) or (bool(_PART_BARE.search(before)) and bool(_WERE.match(behind)))
    return gained or part or bool(_AFTER.match(behind))


def _held_before(marks: Sequence[Mark], place: int) -> Decimal:
    """The longest time that is told before, in seconds."""
    longest = Decimal(0)
    for at, mark in enumerate(marks[:place]):
        if mark.kind is Kind.CLOCK and mark.parts:
            longest = max(longest, mark.parts[0] * 60 + mark.parts[1])
        elif mark.kind is Kind.NUM and mark.value is not None and kind_at(marks, at + 1) in _TIMES:
            longest = max(longest, mark.value * (60 if kind_at(marks, at + 1) is Kind.MINUTES else 1))
    return longest
