"""The careful pain reader: whether a message speaks of the client's pain, where, how strong, and whether it is urgent.

>>> read_pain("90x8, left knee hurt on the way up, about a 4").pain
PainSaid(where='knee', score=4, side=<Side.LEFT: 'left'>, urgent=False)

How it reads, each step in `bot.notation.hurt`: tokens; the meaning of phrases (matching); places with owner and side
(spots); what stands over a cue (negation, over, people); urgent signs (signs); a verdict on each cue with its reason
(judge); scores; and of what is then claimed the one that is kept (claims). In doubt it is pain. Long messages are read
in overlapping stretches, so that time grows with length and no faster.

Decided here, where the rules leave room: plain dizziness is urgent (a major sign in the ACSM's table); of a range of
scores (`3-4/10`) the higher end counts; what hurts another person is no pain of the client's, urgent signs included.
"""

from dataclasses import dataclass

from bot.notation.hurt.claims import claims_of
from bot.notation.hurt.courtesies import without_courtesies
from bot.notation.hurt.cues import Cue
from bot.notation.hurt.judge import judge_hurts
from bot.notation.hurt.matching import Mark, has_doubtful
from bot.notation.hurt.mending import parted
from bot.notation.hurt.owning import Claim
from bot.notation.hurt.passage import Passage, Stretch, stretches
from bot.notation.hurt.placed import HURTING
from bot.notation.hurt.scores import Score, find_scores
from bot.notation.hurt.sign import Sign
from bot.notation.hurt.signs import find_signs
from bot.notation.hurt.spans import Span, join_spans, spans_of
from bot.notation.hurt.tokens import Kind, Token, read_tokens
from bot.notation.hurt.verdict import Hurt, Verdict
from bot.notation.hurt_apart import hurts_apart
from bot.notation.little_words import without_little_words
from bot.notation.sentences import joined
from bot.notation.separators import with_commas
from bot.notation.thinning import thinned
from bot.notation.unpunctuated import punctuated
from bot.training.pain import PainSaid

LONGEST = 4096
"""Characters that are read: the longest message of the chat."""


@dataclass(frozen=True, slots=True)
class PainEvidence:
    """Why the reader read as it did: the characters of the raw text, what they count as, and the reason."""

    start: int
    end: int
    counts_as: str
    why: str


@dataclass(frozen=True, slots=True)
class PainReading:
    """What a message says of pain.

    `spans` are character ranges of the raw text that speak of pain, denied pain and soreness too, its score included
    and sets never: the numbers in them are no loads. `evidence` explains every cue, also those that came to nothing.
    """

    pain: PainSaid | None
    spans: tuple[Span, ...] = ()
    evidence: tuple[PainEvidence, ...] = ()


@dataclass(frozen=True, slots=True)
class _Part:
    """What one stretch of the message gives."""

    claims: tuple[tuple[int, Claim], ...] = ()
    """Each with the character where it begins."""
    spans: tuple[Span, ...] = ()
    evidence: tuple[PainEvidence, ...] = ()


def told_pain(text: str) -> PainSaid | None:
    """The pain that a whole message tells of, the commas that it lacks put in, as the reading of its sets has it.

    >>> told_pain("60x5 right knee pinched on the last")
    PainSaid(where='knee', score=None, side=<Side.RIGHT: 'right'>, urgent=False)
    """
    said = joined(with_commas(punctuated(without_little_words(text[:LONGEST])).text))
    reading = read_sentences(said)
    apart = hurts_apart(said, reading.spans)
    return reading.pain if apart == said else read_sentences(apart).pain


def read_pain(text: str) -> PainReading:
    """What any text says of pain; never raises."""
    return read_sentences(joined(with_commas(text[:LONGEST])))


def read_sentences(text: str) -> PainReading:
    """The same of a text whose sentences are joined already, and which may have grown by the commas put into it."""
    tokens = without_courtesies(parted(read_tokens(text)))
    if not any(t.kind in (Kind.WORD, Kind.SCORE) for t in tokens):
        return PainReading(None)
    tokens = tuple(thinned(tokens, [t.word if t.kind is Kind.WORD else None for t in tokens]))
    parts = [_read_stretch(s) for s in stretches(tokens)]
    chosen = _chosen([c for p in parts for c in p.claims])
    return PainReading(
        _said(chosen) if chosen else None,
        join_spans(span for p in parts for span in p.spans),
        tuple(e for p in parts for e in p.evidence),
    )


def _said(claim: Claim) -> PainSaid:
    where = claim.spot.place.name if claim.spot else None
    return PainSaid(where, claim.score.value if claim.score else None, claim.side, claim.urgent)


def _chosen(claims: list[tuple[int, Claim]]) -> Claim | None:
    """The urgent one, else the higher score, else the first said; one with a place before one without, one of a pair
    (`knees crunchy and the right one hurt`) before the pair."""
    sided = {c.spot.place.name for _, c in claims if c.spot is not None and c.side is not None}

    def rank(placed: tuple[int, Claim]) -> tuple[bool, bool, int, bool, bool, int]:
        start, c = placed
        nowhere = c.spot is None
        pair = c.spot is not None and c.side is None and c.spot.place.plural and c.spot.place.name in sided
        return not c.urgent, c.urgent and nowhere, -(c.score.value if c.score else -1), nowhere, pair, start

    return min(claims, key=rank)[1] if claims else None


def _read_stretch(stretch: Stretch) -> _Part:
    scene = Passage(stretch.tokens)
    signs = find_signs(scene)
    if not signs and has_doubtful(stretch.tokens):
        signs = find_signs(Passage(stretch.tokens, doubtful=True))
    hurts, scores = judge_hurts(scene), find_scores(scene)
    own = range(stretch.first, stretch.end)
    claims = [c for c in claims_of(scene, signs, hurts, scores) if c.tokens[0] in own]
    none = (Verdict.DENIED, Verdict.OVER, Verdict.SORENESS)
    denied = [h.mark for h in hurts if h.verdict in none and h.mark.first in own]
    sore = [h.spot for h in hurts if h.spot is not None and h.verdict is Verdict.SORENESS and h.mark.first in own]
    denied += [Mark(s.first, s.end, None, s.place) for s in sore]
    denied += [g for g in scene.of(Cue.GONE) if g.first in own and scene.words(g.first, g.end) & HURTING]
    return _Part(
        tuple((scene.tokens[c.tokens[0]].start, c) for c in claims),
        spans_of(scene, claims, denied, scores),
        _evidence(scene.tokens, own, signs, hurts, scores),
    )


def _evidence(
    tokens: tuple[Token, ...], own: range, signs: list[Sign], hurts: list[Hurt], scores: list[Score]
) -> tuple[PainEvidence, ...]:
    seen = [(s.tokens[0], s.tokens[-1] + 1, "urgent sign", s.name) for s in signs if s.tokens]
    seen += [(h.mark.first, h.mark.end, h.verdict.value, h.why) for h in hurts]
    said = {True: "out of ten was said", False: "a number right after a hurt"}
    seen += [(s.first, s.end, f"score {s.value}", said[s.plain]) for s in scores]
    return tuple(
        PainEvidence(tokens[first].start, tokens[end - 1].end, counts_as, why)
        for first, end, counts_as, why in seen
        if first in own
    )
