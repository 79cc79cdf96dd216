"""The careful pain reader: whether a message speaks of the client's pain, where, how strong, and whether it is urgent.

>>> read_pain("90x8, left knee hurt on the way up, about a 4").pain
PainSaid(where='knee', score=4, side=<Side.LEFT: 'left'>, urgent=False)

How it reads: tokens (`hurt.tokens`), the meaning of phrases (`hurt.phrases`, `hurt.matching`), places with owner and side
(`hurt.scene`), what stands over each cue (`hurt.scopes`), urgent signs (`hurt.signs`), a verdict on each cue with its
reason (`hurt.judge`), scores (`hurt.scores`), and here the choice among them. In doubt it is pain.
"""

from dataclasses import dataclass, replace

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.judge import Hurt, Verdict, judge_hurts
from bot.notation.hurt.links import side_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.scene import Scene, Spot
from bot.notation.hurt.scopes import anothers
from bot.notation.hurt.scores import ABOUT, Score, find_scores
from bot.notation.hurt.sign import Sign
from bot.notation.hurt.signs import find_signs
from bot.notation.hurt.tokens import Kind
from bot.training.pain import PainSaid
from bot.training.report import Side

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

    `spans` are character ranges of the raw text that speak of pain, its score included, sets never: the numbers in
    them are no loads. `evidence` explains every cue, also those that came to nothing.
    """

    pain: PainSaid | None
    spans: tuple[tuple[int, int], ...] = ()
    evidence: tuple[PainEvidence, ...] = ()


@dataclass(frozen=True, slots=True)
class _Claim:
    """A hurt or a sign that stands, with its score."""

    spot: Spot | None
    side: Side | None
    tokens: tuple[int, ...]
    urgent: bool
    score: Score | None


def read_pain(text: str) -> PainReading:
    """What any text says of pain; never raises."""
    scene = Scene(text[:LONGEST])
    if not any(t.kind is Kind.WORD or t.kind is Kind.SCORE for t in scene.tokens):
        return PainReading(None)
    signs = find_signs(scene) or _doubted_signs(text)
    hurts = judge_hurts(scene)
    scores = find_scores(scene)
    claims = _claims(scene, signs, hurts, scores)
    chosen = _chosen(claims)
    pain = None
    if chosen is not None:
        place = chosen.spot.place if chosen.spot else None
        pain = PainSaid(
            where=place.name if place else None,
            score=chosen.score.value if chosen.score else None,
            side=chosen.side,
            urgent=chosen.urgent,
        )
    denied = [tuple(range(h.mark.first, h.mark.end)) for h in hurts if h.verdict in (Verdict.DENIED, Verdict.OVER)]
    return PainReading(
        pain,
        _spans(scene, claims, denied, scores if (claims or denied) else []),
        _evidence(scene, signs, hurts, scores),
    )


def _doubted_signs(text: str) -> list[Sign]:
    """Urgent signs that one slip into another real word hides: `cheat pain`."""
    return find_signs(Scene(text[:LONGEST], doubtful=True))


def _claims(scene: Scene, signs: list[Sign], hurts: list[Hurt], scores: list[Score]) -> list[_Claim]:
    """Signs and standing hurts, each with the score nearest to it; a place with a score is a hurt by itself."""
    raw = [_Claim(s.spot, _side(scene, None, s.spot), s.tokens, True, None) for s in signs]
    for h in hurts:
        if h.verdict is Verdict.PAIN:
            place = range(h.spot.first, h.spot.end) if h.spot else ()
            tokens = tuple(sorted({*range(h.mark.first, h.mark.end), *place}))
            raw.append(_Claim(h.spot, _side(scene, h.mark, h.spot), tokens, False, None))
    judged = {h.spot for h in hurts if h.spot and h.verdict is not Verdict.TALK}
    for score in scores:
        spot = _scored_place(scene, score)
        if spot is not None and spot not in judged:
            raw.append(_Claim(spot, _side(scene, None, spot), tuple(range(spot.first, spot.end)), False, None))
    owned = _owners(scene, raw, scores)
    claims = _settled([replace(c, score=owned.get(i)) for i, c in enumerate(raw)])
    nought = {c.spot for c in claims if c.score is not None and c.score.value == 0}
    return [c for c in claims if c.urgent or c.spot not in nought or (c.score is not None and c.score.value > 0)]


def _side(scene: Scene, mark: Mark | None, spot: Spot | None) -> Side | None:
    return side_of(scene, mark, spot) if spot else None


def _settled(claims: list[_Claim]) -> list[_Claim]:
    """Where a place is said, a hurt without one speaks of it too: its score goes to the last place before it."""
    placed = [c for c in claims if c.spot is not None]
    loose = [c for c in claims if c.spot is None and not c.urgent and c.score is not None]
    if not placed or not loose:
        return claims
    for c in loose:
        before = [p for p in placed if p.tokens[0] < c.tokens[0]] or placed
        host = before[-1]
        if host.score is None:
            claims = [replace(x, score=c.score) if x.spot == host.spot else x for x in claims if x is not c]
    return claims


def _scored_place(scene: Scene, score: Score) -> Spot | None:
    """The place that a score is of where no cue is said: `knee's at 5 out of 10`."""
    for spot in reversed(scene.spots):
        if (
            spot.end <= score.first
            and score.first - spot.end <= (6 if score.plain else 5)
            and scene.same_sentence(spot.first, score.first)
        ):
            fresh = any(spot.end <= m.first < score.end + 2 for m in scene.of(Cue.GOOD, Cue.FINE))
            bare = all(
                scene.word(i) in ABOUT
                or scene.word(i) in ("went", "gone", "maybe", "felt", "feels")
                or scene.tokens[i].kind is Kind.NUMBER
                for i in range(spot.end, score.first)
            ) or all(
                scene.word(i)
                in ("is", "'s", "at", "about", "a", "was", "like", "around", "still", "now", "today", "feels", "felt")
                for i in range(spot.end, score.first)
            )
            if fresh or spot.mine is False or anothers_spot(scene, spot) or not (score.plain or bare):
                return None
            if not score.plain and (spot.place.tissue is Tissue.MUSCLE or spot.place.plural):
                return None
            return spot
        if score.plain and 0 <= spot.first - score.end <= 3 and scene.same_sentence(spot.first, score.first):
            return spot
    return None


def anothers_spot(scene: Scene, spot: Spot) -> bool:
    """Whether a place is somebody else's."""
    mark = next(m for m in scene.marks if m.place is not None and m.first == spot.first)
    return anothers(scene, mark, spot.mine)


def _owners(scene: Scene, raw: list[_Claim], scores: list[Score]) -> dict[int, Score]:
    """For each score the claim nearest to it; of several scores of one claim, the one said of now, else the highest."""
    owned: dict[int, Score] = {}
    for score in scores:
        best: tuple[int, int] | None = None
        for i, claim in enumerate(raw):
            tokens = claim.tokens
            if not tokens:
                continue
            low, high = tokens[0], tokens[-1]
            ahead = score.first > high
            distance = score.first - high if ahead else low - score.end + 1 if score.end <= low else 0
            between = range(high + 1, score.first) if ahead else range(score.end, low)
            apart = abs(scene.sentence[score.first] - scene.sentence[low])
            if apart > 1 or distance > (14 if score.plain else 9) or (not ahead and distance and not score.plain):
                continue
            if not score.plain and any(m.first in between for m in scene.of(Cue.GOVERNS)):
                continue
            price = (
                distance
                + 4 * apart
                + (2 if not ahead else 0)
                + 2 * len(scene.tokens[score.first : score.first + 1]) * apart
            )
            if best is None or price < best[0]:
                best = (price, i)
        if best is not None:
            host = raw[best[1]].spot
            same = [i for i, c in enumerate(raw) if i == best[1] or (host is not None and c.spot == host)]
            for i in same:
                old = owned.get(i)
                if old is None or _supersedes(scene, score, old):
                    owned[i] = score
    return owned


def _supersedes(scene: Scene, new: Score, old: Score) -> bool:
    """`from 6 to 3` is 3; what was last week's gives way; else the higher."""
    if _earlier(scene, old) and not _earlier(scene, new):
        return True
    if _earlier(scene, new) and not _earlier(scene, old):
        return False
    words = {scene.word(i) for i in range(old.first - 1, new.first)}
    if words & {"to", "now", "down", "gone"} and not words & {"and"}:
        return True
    if new.plain != old.plain:
        return new.plain
    return new.value > old.value


def _earlier(scene: Scene, score: Score) -> bool:
    return any(
        scene.same_sentence(m.first, score.first) and (0 <= m.first - score.end <= 3) for m in scene.of(Cue.PAST)
    )


def _chosen(claims: list[_Claim]) -> _Claim | None:
    """The urgent one, else the higher score, else the first said; one with a place before one without."""
    if not claims:
        return None
    return min(
        claims,
        key=lambda c: (
            not c.urgent,
            c.urgent and c.spot is None,
            -(c.score.value if c.score else -1),
            c.spot is None,
            c.tokens[0] if c.tokens else 0,
        ),
    )


def _spans(
    scene: Scene, claims: list[_Claim], denied: list[tuple[int, ...]], scores: list[Score]
) -> tuple[tuple[int, int], ...]:
    """Character ranges: each claim's tokens with its score, whole through plain words, never through sets or other numbers."""
    groups = [(*c.tokens, *(range(c.score.first, c.score.end) if c.score else ())) for c in claims] + denied
    owned = {i for c in claims if c.score for i in range(c.score.first, c.score.end)}
    groups += [tuple(range(s.first, s.end)) for s in scores if s.value == 0 and s.plain and s.first not in owned]
    inside: set[int] = set()
    for group in groups:
        ordered = sorted(set(group))
        inside |= set(ordered)
        for a, b in zip(ordered, ordered[1:], strict=False):
            between = range(a + 1, b)
            if (
                scene.same_sentence(a, b)
                and len(between) <= 8
                and all(scene.tokens[i].kind is Kind.WORD for i in between)
            ):
                inside |= set(between)
    out: list[tuple[int, int]] = []
    last = -2
    for index in sorted(inside):
        token = scene.tokens[index]
        if out and index == last + 1 and scene.same_sentence(index, last):
            out[-1] = (out[-1][0], token.end)
        else:
            out.append((token.start, token.end))
        last = index
    return tuple(out)


def _evidence(scene: Scene, signs: list[Sign], hurts: list[Hurt], scores: list[Score]) -> tuple[PainEvidence, ...]:
    out: list[PainEvidence] = []
    for sign in signs:
        if sign.tokens and sign.tokens[-1] < len(scene.tokens):
            out.append(_seen(scene, sign.tokens[0], sign.tokens[-1] + 1, "urgent sign", sign.name))
    for h in hurts:
        out.append(_seen(scene, h.mark.first, h.mark.end, h.verdict.value, h.why))
    for s in scores:
        out.append(
            _seen(
                scene,
                s.first,
                s.end,
                f"score {s.value}",
                "out of ten was said" if s.plain else "a number right after a hurt",
            )
        )
    return tuple(out)


def _seen(scene: Scene, first: int, end: int, counts_as: str, why: str) -> PainEvidence:
    return PainEvidence(scene.tokens[first].start, scene.tokens[end - 1].end, counts_as, why)
