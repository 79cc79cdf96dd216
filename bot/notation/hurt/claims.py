"""From signs, hurts and scores to what the client claims, and the one of them that is kept."""

from dataclasses import replace
from itertools import pairwise

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.owning import Claim, owners, scores_of
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import is_anothers_place
from bot.notation.hurt.places import HEADS, VAGUE, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.scores import ABOUT, Score
from bot.notation.hurt.sides import side_of
from bot.notation.hurt.sign import Sign
from bot.notation.hurt.spots import SIDES, Spot
from bot.notation.hurt.tokens import Kind
from bot.notation.hurt.verdict import Hurt, Verdict
from bot.training.report import Side

SEVERE = 7
"""A headache from this score is severe: the cut point of Serlin et al. 1995 (Pain 61:277-284)."""
_WELL = 8
"""From this score on `fine` behind it says that the number is of how well it is."""
_TO_SCORE = ABOUT | word_set("went gone maybe felt feels")
_NUMERALS = word_set("one two three four five six seven eight nine ten")


def claims_of(scene: Passage, signs: list[Sign], hurts: list[Hurt], scores: list[Score]) -> list[Claim]:
    """Signs and standing hurts, each with the score nearest to it; a place with a score is a hurt by itself."""
    raw = [Claim(s.spot, _side(scene, None, s.spot), s.tokens, True, None) for s in signs if s.tokens]
    for h in hurts:
        if h.verdict is Verdict.PAIN:
            place = range(h.spot.first, h.spot.end) if h.spot else ()
            tokens = tuple(sorted({*range(h.mark.first, h.mark.end), *place}))
            raw.append(Claim(h.spot, _side(scene, h.mark, h.spot), tokens, False, None))
    judged = {h.spot for h in hurts if h.spot and h.verdict is not Verdict.TALK}
    for score in scores:
        spot = _scored_place(scene, score)
        if spot is not None and spot not in judged and not _of_another(scene, spot, judged):
            chest = spot.place.tissue is Tissue.CHEST
            raw.append(Claim(spot, _side(scene, None, spot), tuple(range(spot.first, spot.end)), chest, None))
    owned = owners(scene, raw, scores)
    claims = _settled([replace(c, score=owned.get(i), scored=scores_of(scene, c, scores)) for i, c in enumerate(raw)])
    nought = {c.spot for c in claims if c.score is not None and c.score.value == 0}
    claims = [replace(c, score=None) if c.urgent and c.score is not None and c.score.value == 0 else c for c in claims]
    standing = [c for c in claims if c.urgent or c.spot not in nought or (c.score is not None and c.score.value > 0)]
    return [_severe_headache(_of_two_sides(scene, _of_scored_side(scene, c), scores)) for c in standing]


def _of_another(scene: Passage, spot: Spot, judged: set[Spot]) -> bool:
    """`shoulder is sore in the joint, a 3 out of 10`: the joint is the one that hurts."""
    here = scene.sentence[spot.first]
    return spot.place.name in VAGUE and any(0 <= here - scene.sentence[s.first] <= 2 for s in judged)


def _of_scored_side(scene: Passage, claim: Claim) -> Claim:
    """`left shoulder 2/10, right one 5/10`: the side whose score is kept."""
    if claim.spot is None or claim.side is None or claim.score is None:
        return claim
    at = claim.score.first - 1
    while scene.word(at) in _TO_SCORE | _ONE and at > claim.spot.end:
        at -= 1
    told = at > claim.spot.end and scene.word(at) in SIDES and scene.same_sentence(at, claim.score.first)
    named = told and (scene.ends(at) or scene.word(at - 1) in ("the", "and", "but") or scene.word(at + 1) in _ONE)
    return replace(claim, side=SIDES[scene.word(at)]) if named else claim


_ONE = word_set("one side 's is was knee shoulder elbow hip")


def _of_two_sides(scene: Passage, claim: Claim, scores: list[Score]) -> Claim:
    """`both knees sore, left 3 right 5`, `hip hurts 3/10 left, 5/10 right`: the side with the higher score."""
    if claim.spot is None or claim.side is not None:
        return claim
    told = _sides_and_scores(scene, claim, scores, bare=claim.spot.place.plural)
    sides = [x for x in told if isinstance(x, Side)]
    numbers = [x for x in told if isinstance(x, Score)]
    in_turn = all(isinstance(a, Side) is not isinstance(b, Side) for a, b in pairwise(told))
    if len(told) != 4 or not in_turn or len(set(sides)) != 2:
        return claim
    score, side = max(zip(numbers, sides, strict=True), key=lambda x: x[0].value)
    tokens = tuple(sorted({*claim.tokens, *(i for s in numbers for i in range(s.first, s.end))}))
    return replace(claim, side=side, score=score, tokens=tokens)


def _sides_and_scores(scene: Passage, claim: Claim, scores: list[Score], *, bare: bool) -> list[Side | Score]:
    """The sides and the scores that are told behind a claim, in order; with `bare` also numbers behind a side."""
    out: list[Side | Score] = []
    at = claim.tokens[-1] + 1
    while at < min(claim.tokens[-1] + _FAR, len(scene.tokens)) and len(out) < 4:
        token = scene.tokens[at]
        score = next((s for s in scores if s.first == at and s.plain), None)
        if score is None and bare and token.kind is Kind.NUMBER and token.word.isdigit() and int(token.word) <= 10:
            score = Score(at, at + 1, int(token.word), plain=False)
        if token.kind is Kind.WORD and token.word in SIDES:
            out.append(SIDES[token.word])
        elif score is not None:
            out.append(score)
        at = score.end if score is not None else at + 1
    return out


_FAR = 24
"""Words behind a claim in which its sides and their scores are told."""


def _severe_headache(claim: Claim) -> Claim:
    head = claim.spot is not None and claim.spot.place.name in HEADS
    return replace(claim, urgent=True) if head and claim.score and claim.score.value >= SEVERE else claim


def _side(scene: Passage, mark: Mark | None, spot: Spot | None) -> Side | None:
    return side_of(scene, mark, spot) if spot else None


def _settled(claims: list[Claim]) -> list[Claim]:
    """Where a place is said, a hurt without one speaks of it too: its score goes to the last place before it."""
    placed = [c for c in claims if c.spot is not None]
    loose = [c for c in claims if c.spot is None and not c.urgent and c.score is not None]
    for c in loose if placed else ():
        host = ([p for p in placed if p.tokens[0] < c.tokens[0]] or placed)[-1]
        if host.score is None:
            claims = [replace(x, score=c.score) if x.spot == host.spot else x for x in claims if x is not c]
    return claims


def _scored_place(scene: Passage, score: Score) -> Spot | None:
    """The place that a score is of where no cue is said: `knee's at 5 out of 10`, `3/10 knee`."""
    here = [s for s in scene.spots if scene.same_sentence(s.first, score.first)]
    for spot in reversed(here):
        compared = any(spot.end <= m.first < score.first for m in scene.of(Cue.PAST))
        if 0 <= score.first - spot.end <= (9 if compared else 6 if score.plain else 5):
            return spot if _is_scored(scene, spot, score) else None
    inside = [s for s in here if score.first <= s.first < score.end]
    if inside and score.plain:  # `on a scale to ten my wrist is a 6`
        return inside[-1] if _is_scored(scene, inside[-1], score) else None
    ahead = [s for s in here if 0 <= s.first - score.end <= 3]
    return ahead[0] if ahead and score.plain and ahead[0].place.name != "side" else None


def _is_scored(scene: Passage, spot: Spot, score: Score) -> bool:
    if spot.place.name == "side":
        return False  # `right side was 10` tells repetitions; a side that hurts says so
    between = range(spot.end, score.first)
    good = [
        m
        for m in scene.of(Cue.GOOD, Cue.FINE)
        if spot.end <= m.first < score.end + 2 and not (m.first >= score.end and score.plain and score.value < _WELL)
    ]
    turns = max((m.first for m in scene.of(Cue.CONTRAST) if spot.end <= m.first < score.first), default=spot.end)
    if any(m.first >= turns and not (scene.word(m.end - 1) == "solid" and m.end == score.first) for m in good):
        return False
    if is_anothers_place(scene, spot):
        return False
    if score.plain:
        return True
    then = {i for m in scene.of(Cue.PAST, Cue.NOW) for i in range(m.first, m.end)}
    bare = all(
        scene.word(i) in _TO_SCORE or i in then or scene.tokens[i].kind is Kind.NUMBER or scene.word(i) in _NUMERALS
        for i in between
    )
    weighed = scene.word(score.first - 1) == "a"
    if spot.place.tissue is Tissue.MUSCLE:
        return bare and weighed and not spot.place.plural and scene.word(score.first - 2) in ("is", "'s", "at", "was")
    return bare and (weighed or not spot.place.plural)
