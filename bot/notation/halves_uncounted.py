"""A half or a botched repetition that is not counted: `7, 6 and a half one i wont count`, `a kippy 8th but no`.

Nothing was done by it, and nothing is taken back: the words say why there is not one more. Common wordings; no source.
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.next_failed import told_last
from bot.notation.tokens import Mark
from bot.notation.worded import line_at
from bot.notation.wordlist import words

_ADJECTIVE = (
    r"(?:ugly|dodgy|dirty|messy|sloppy|kippy|kipped|little|sad|weak|grindy|scrappy|horrible|shaky|bonus|cheeky|poor|bad|"
    r"last|final|extra|rubbish|pathetic|lousy|filthy|questionable|other|third|very|more|last one)"
)
_LEAD = rf"(?:(?:and|then|and then|plus|n|\+|with|also|just|maybe|a|an|one|the|that|another|my|did|got|{_ADJECTIVE}) )*"
_HALF = re.compile(
    rf"{_LEAD}(?:half a (?:rep|#th|one)|half of (?:a |an |one|the )?(?:rep|one|#th|another)?|half (?:rep|one)|half|"
    r"partial(?: rep)?|wiggle|twitch|no rep|cheat rep|cheater)(?= |$)"
)
_BOTCHED = re.compile(
    rf"(?:(?:and|then|but|plus|with|also|a|an|one|the|that|time|on|in|there|was|i|had|did|got|set|second|#th|"
    rf"{_ADJECTIVE}) )*#th(?: rep| one)?(?= |$)"
)
_UNCOUNTED = re.compile(
    r"\b(?:count|counts|counting|counted|take|taking|taken|binned|bin|binning|scrap|scrapped|scrapping|no good|"
    r"rubbish|ignore|ignored|ignoring|void|voided|leaving it|leave it|left out|leaving that|log|logging|logged|having|"
    r"claim|claiming|not in|cheat|cheating|cheated|kipped|kipping|doesnt matter|dont matter|forget)\b"
)
_CHEATED = re.compile(
    r"\b(?:cheat|cheating|cheated|cheaty|kip|kippy|kipped|kipping|doesnt count|dont count|isnt one)\b"
)
NEEDS = frozenset(words("half partial wiggle twitch cheat cheater cheating cheated kippy kipped kipping"))
_EDGES = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.PLUS, Kind.OPEN, Kind.DASH, Kind.STOP)
_STOPS = frozenset((None, Kind.STOP, Kind.LINE, Kind.CLOSE, Kind.QUERY, Kind.NUM, Kind.COMMA, Kind.BREAK))
_LISTED = (Kind.NUM, Kind.REPS)


def without_halves_uncounted(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such words without bearing."""
    out = list(marks)
    for place in range(1, len(out)):
        if out[place].kind not in _EDGES or kind_at(out, place - 1) not in _LISTED:
            continue
        start = place + (out[place].kind in (Kind.COMMA, Kind.OPEN, Kind.DASH, Kind.STOP))
        end = _half(out, start) or _botched(out, start)
        if end is not None:
            closes = kind_at(out, end) is Kind.CLOSE and out[place].kind is Kind.OPEN
            bracketed = kind_at(out, end) is Kind.OPEN
            while bracketed and end < len(out) and kind_at(out, end - 1) is not Kind.CLOSE:
                end += 1
            gone = range(start - (out[place].kind in (Kind.OPEN, Kind.DASH)), end + closes)
            for at in gone:
                out[at] = replace(out[at], kind=Kind.GAP, value=None, parts=(), names=())
    return out


def _half(marks: Sequence[Mark], start: int) -> int | None:
    """Where the words of a half that starts here end, with what is said of it."""
    line = line_at(marks, start)
    found = _HALF.match(line.said)
    behind = None if found is None else line.ends.get(found.end())
    if found is None or behind is None:
        return None
    end = behind
    while kind_at(marks, end) not in _STOPS and kind_at(marks, end) is not Kind.OPEN:
        end += 1
    said = " ".join(m.text for m in marks[behind:end])
    bracket = " ".join(m.text for m in marks[end : end + 4]) if kind_at(marks, end) is Kind.OPEN else ""
    alone = end == behind and "half" in found[0] and ("of" in found[0] or "rep" in found[0] or "one" in found[0])
    uncounted = bool(_UNCOUNTED.search(said) or _UNCOUNTED.search(bracket))
    named = any(
        m.kind in (Kind.NAME, Kind.SET, Kind.SETS, Kind.FOR, Kind.X, Kind.KG, Kind.LB) for m in marks[behind:end]
    )
    return end if (uncounted or alone) and not named else None


def _botched(marks: Sequence[Mark], start: int) -> int | None:
    """Where the words of one repetition more end, that was no clean one: `there was a kippy 8th but thats cheating`."""
    line = line_at(marks, start)
    found = _BOTCHED.match(line.said)
    behind = None if found is None else line.ends.get(found.end())
    if behind is None:
        return None
    done = told_last(marks[:start])
    nth = next((m for m in reversed(marks[start:behind]) if m.kind is Kind.ORD), None)
    if nth is None or done is None or nth.value != done + 1:
        return None
    end = behind
    while kind_at(marks, end) not in _STOPS:
        end += 1
    if not _CHEATED.search(" ".join(m.text for m in marks[start:end])):
        return None
    if kind_at(marks, end) is Kind.NUM and marks[end].value == done and marks[end - 1].text in ("so", "its", "thats"):
        end += 1
        while kind_at(marks, end) is Kind.FILL:
            end += 1
    return end if kind_at(marks, end) is not Kind.NUM else None
