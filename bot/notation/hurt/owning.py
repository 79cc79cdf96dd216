"""Which score is whose: each belongs to the claim nearest to it."""

from dataclasses import dataclass

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.scores import Score, says_when
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Kind
from bot.training.report import Side

_FAR_PLAIN, _FAR_BARE = 14, 9
"""Tokens over which a score out of ten, and a bare number, still belong to a hurt."""


@dataclass(frozen=True, slots=True)
class Claim:
    """A hurt or a sign that stands, with its place, side and score."""

    spot: Spot | None
    side: Side | None
    tokens: tuple[int, ...]
    urgent: bool
    score: Score | None
    scored: tuple[Score, ...] = ()
    """Every number that was said of it, the score among them: `4/10 going down, 2/10 going up`."""


def owners(scene: Passage, claims: list[Claim], scores: list[Score]) -> dict[int, Score]:
    """For each score the claim nearest to it, with all claims of its place."""
    owned: dict[int, Score] = {}
    for score in scores:
        priced = [(p, i) for i, c in enumerate(claims) if (p := _price(scene, c, score)) is not None]
        if not priced:
            continue
        nearest = min(priced)[1]
        host = claims[nearest].spot
        for i, c in enumerate(claims):
            if i == nearest or (host is not None and c.spot == host):
                old = owned.get(i)
                owned[i] = score if old is None or _supersedes(scene, score, old) else old
    return owned


def _price(scene: Passage, claim: Claim, score: Score) -> int | None:
    """How far a score is from a claim; nothing where it can't be its."""
    low, high = claim.tokens[0], claim.tokens[-1]
    ahead = score.first > high
    distance = score.first - high if ahead else max(0, low - score.end + 1)
    apart = min(abs(scene.sentence[score.first] - scene.sentence[i]) for i in (low, high))
    if apart > 1 or distance > (_FAR_PLAIN if score.plain else _FAR_BARE):
        return None
    if not score.plain:
        between = range(high + 1, score.first)
        measures = [m for m in scene.of(Cue.GOVERNS) if m.first in between and not says_when(scene, m.first)]
        if (not ahead and distance) or measures or (apart and not _opens(scene, score)):
            return None
    next_door = 8 if apart and not ahead else 0  # a score belongs to what was said before it
    return distance + 6 * apart + (0 if ahead else 2) + next_door


def _opens(scene: Passage, score: Score) -> bool:
    """Whether a bare number in a sentence of its own is what that sentence is of: `knee hurts. about a 4`."""
    at = score.first
    while at > 0 and scene.same_sentence(at - 1, score.first):
        at -= 1
    if score.first > at and scene.word(score.first - 1) not in _WEIGHING:
        return False
    return score.first - at <= _LEADS and not any(scene.tokens[i].kind is not Kind.WORD for i in range(at, score.first))


_WEIGHING = word_set(
    "a an about around roughly maybe like say probably prob approx level solid i'd is 's it's score pain call at"
)
"""Before a number in a sentence of its own these weigh it; `only 5` and `same but 5` tell repetitions."""
_LEADS = 5
"""Words before a bare number in a sentence of its own: `i would say maybe a 4`."""


def scores_of(scene: Passage, claim: Claim, scores: list[Score]) -> tuple[Score, ...]:
    """The scores that may be of a claim, in its own sentence."""
    here = [s for s in scores if scene.same_sentence(s.first, claim.tokens[0])]
    return tuple(s for s in here if _price(scene, claim, s) is not None)


def _supersedes(scene: Passage, new: Score, old: Score) -> bool:
    """`from 6 to 3` is 3; what was last week's gives way; else the higher."""
    if _earlier(scene, old) is not _earlier(scene, new):
        return _earlier(scene, old)
    if "from" in scene.words(old.end, new.first) or scene.word(old.end) == "now":
        return False
    words = scene.words(old.first - 1, new.first)
    if words & {"to", "now", "down", "gone"} and not words & {"and", "way"}:
        return True
    return new.plain if new.plain != old.plain else new.value > old.value


def _earlier(scene: Passage, score: Score) -> bool:
    if any(m.first == score.end for m in scene.of(Cue.NOW)):
        return False
    past = [m for m in scene.of(Cue.PAST) if 0 <= m.first - score.end <= 3]
    return any(scene.same_sentence(m.first, score.first) for m in past)
