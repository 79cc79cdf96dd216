"""What a correction says in another order than others: an effort before its numbers, what is to be ignored first."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def ignored(sentence: list[Mark]) -> list[Mark]:
    """`ignore the 6, it was a 5`: what was told before is the 6."""
    for place, mark in enumerate(sentence):
        at = place + 1
        while mark.kind is Kind.SCRAP and at < len(sentence) and sentence[at].text in ("the", "that", "my"):
            at += 1
        old = place < at < len(sentence) and sentence[at].kind is Kind.NUM and mark.kind is Kind.SCRAP
        if old and any(m.kind in (Kind.WAS, Kind.MEANT) for m in sentence[at:]):
            return [*sentence[:place], replace(mark, kind=Kind.WROTE), *sentence[place + 1 :]]
    return sentence


_RATES = (Kind.RPE, Kind.RIR)
_AFTER_RATE = (Kind.FILL, Kind.FOR, Kind.AT, Kind.NAME, Kind.WAS, Kind.LABEL, Kind.SET, Kind.SETS, Kind.LASTSET,
               Kind.ORD, Kind.LASTREP, Kind.ALL, Kind.EACH, Kind.COLON, Kind.WITH, Kind.MEANT)  # fmt: skip
_LOADED = (Kind.X, Kind.KG, Kind.LB, Kind.REPS)


def rated_last(sentence: list[Mark]) -> list[Mark]:
    """`rpe for the squats was 7 8 and 9`, `forgot the rpe, 8.5`: the word of the effort brought to its first number."""
    place = next((i for i, m in enumerate(sentence) if m.kind in _RATES), None)
    if place is None or any(m.kind in (*_LOADED, Kind.NUM) for m in sentence[:place]):
        return sentence
    if any(m.kind in _LOADED or (m.kind in _RATES and i > place) for i, m in enumerate(sentence)):
        return sentence
    forgot = any(set(m.text.split()) & _FORGOTTEN for m in sentence[:place])
    at = place + 1
    while at < len(sentence) and (
        sentence[at].kind in _AFTER_RATE or (forgot and sentence[at].kind is Kind.COMMA) or _is_count(sentence, at)
    ):
        at += 1
    if at == place + 1 or at >= len(sentence) or sentence[at].kind is not Kind.NUM:
        return sentence
    kept = [m for m in sentence[place + 1 : at] if m.kind not in (Kind.COMMA, Kind.FOR, Kind.AT)]
    return [*sentence[:place], *kept, sentence[place], *sentence[at:]]


_FORGOTTEN = frozenset(["forgot", "forget", "forgotten", "missed", "missing", "add", "adding", "also"])


def _is_count(sentence: Sequence[Mark], at: int) -> bool:
    """The 2 of `set 2`, `last 2 sets`, `last two squats`: no effort."""
    after = sentence[at + 1].kind if at + 1 < len(sentence) else None
    named = sentence[at - 1].kind is Kind.SET or after in (Kind.SETS, Kind.NAME)
    return sentence[at].kind is Kind.NUM and named
