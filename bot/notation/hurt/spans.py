"""The character ranges of a message that speak of pain."""

from collections.abc import Iterable
from itertools import pairwise

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.owning import Claim
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.scores import Score
from bot.notation.hurt.tokens import Kind

Span = tuple[int, int]
"""A range of characters: the first, and the one after the last."""
_WIDEST = 8
"""Plain words that a range may reach across."""


def spans_of(scene: Passage, claims: list[Claim], denied: list[Mark], scores: list[Score]) -> tuple[Span, ...]:
    """Each claim's words with its score, whole through plain words, never through sets or other numbers."""
    groups = [{*c.tokens, *(range(c.score.first, c.score.end) if c.score else ())} for c in claims]
    groups += [set(range(s.first, s.end)) for c in claims for s in c.scored]
    groups += [set(range(m.first, m.end)) for m in denied]
    if claims or denied:
        groups += [set(range(s.first, s.end)) for s in scores if s.plain and s.value == 0]
    inside: set[int] = set()
    for group in groups:
        inside |= group
        for a, b in pairwise(sorted(group)):
            between = range(a + 1, b)
            plain = all(scene.tokens[i].kind is Kind.WORD for i in between)
            if plain and len(between) <= _WIDEST and scene.same_sentence(a, b):
                inside.update(between)
    return _ranges(scene, sorted(inside))


def _ranges(scene: Passage, indexes: list[int]) -> tuple[Span, ...]:
    out: list[Span] = []
    last = -2
    for index in indexes:
        token = scene.tokens[index]
        if index == last + 1 and scene.same_sentence(index, last):
            out[-1] = (out[-1][0], token.end)
        else:
            out.append((token.start, token.end))
        last = index
    return tuple(out)


def join_spans(spans: Iterable[Span]) -> tuple[Span, ...]:
    """Ranges in order, those that overlap as one."""
    out: list[Span] = []
    for start, end in sorted(spans):
        if out and start <= out[-1][1]:
            out[-1] = (out[-1][0], max(end, out[-1][1]))
        else:
            out.append((start, end))
    return tuple(out)
