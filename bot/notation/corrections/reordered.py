"""What a correction says in another order than others: an effort before its numbers, what is to be ignored first."""

from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def ignored(sentence: list[Mark]) -> list[Mark]:
    """`ignore the 6, it was a 5`, `forget the 20, i had 17.5 on`: what was told before is the first."""
    for place, mark in enumerate(sentence):
        voids = mark.kind is Kind.SCRAP or mark.text.removesuffix(" the") in _VOIDING
        at = place + 1
        while voids and at < len(sentence) and sentence[at].text in ("the", "that", "my"):
            at += 1
        if not (voids and place < at < len(sentence) and sentence[at].kind is Kind.NUM):
            continue
        wrote = replace(mark, kind=Kind.WROTE)
        if any(m.kind in (Kind.WAS, Kind.MEANT) for m in sentence[at:]):
            return [*sentence[:place], wrote, *sentence[place + 1 :]]
        new = next((i for i in range(at + 1, len(sentence)) if sentence[i].kind is Kind.NUM), None)
        had = {w for m in sentence[at:new] for w in m.text.split()} & _HAD
        if new is not None and had and sum(m.kind is Kind.NUM for m in sentence) == _TWO:
            meant = replace(sentence[new], kind=Kind.MEANT, text="was", end=sentence[new].start, value=None)
            return [*sentence[:place], wrote, *sentence[place + 1 : at + 1], meant, sentence[new],
                    *(m for m in sentence[new + 1 :] if m.text not in ("on", "for", "on for", "that"))]  # fmt: skip
    return sentence


_VOIDING = ("forget", "scratch", "never mind", "nevermind", "strike")
_HAD = frozenset(["had", "used", "did", "got", "actually", "put", "have"])
_TWO = 2
"""Numbers of such a sentence: what was written, and what it was."""


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
        sentence[at].kind in _AFTER_RATE or sentence[at].text in _LOWS or (forgot and sentence[at].kind is Kind.COMMA)
    ):
        at += 1
    if at == place + 1 or at >= len(sentence) or sentence[at].kind is not Kind.NUM:
        return sentence
    kept = [m for m in sentence[place + 1 : at] if m.kind not in (Kind.COMMA, Kind.FOR, Kind.AT, Kind.WORD)]
    return [*sentence[:place], *kept, sentence[place], *sentence[at:]]


_LOWS = frozenset(["single", "double", "triple", "top", "set"])
_FORGOTTEN = frozenset(["forgot", "forget", "forgotten", "missed", "missing", "add", "adding", "also"])
