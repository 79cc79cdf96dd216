"""The side of a hurt place: said with it, behind it, or in a sentence of its own."""

from itertools import pairwise

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import SIDES, Spot, is_effort
from bot.notation.hurt.tokens import Gap, Kind
from bot.training.report import Side


def side_of(scene: Passage, mark: Mark | None, spot: Spot) -> Side | None:
    """The side of a hurt place: said with the place, or after the cue (`cramped up on the right`, `calf cramp R`)."""
    if spot.side is not None:
        return spot.side
    start = max(spot.end, mark.end if mark and mark.cue is not None else 0)
    seen: set[Side] = set()
    for index in range(start, min(start + 9, len(scene.tokens))):
        word = scene.word(index)
        if scene.tokens[index].gap is Gap.HARD or not scene.begins.isdisjoint((index, index + 1, index + 2)):
            break
        if word in SIDES and _is_side(scene, index, start):
            seen.add(SIDES[word])
    if not seen:
        first = min(spot.first, mark.first if mark else 999)
        return _side_of_its_own(scene, spot, mark) or _side_ahead(scene, first) or _side_meant(scene, spot)
    return seen.pop() if len(seen) == 1 else None


def _side_ahead(scene: Passage, first: int) -> Side | None:
    """`left side tingling in the fingers`, `on the right side my knee hurts`."""
    for index in range(first - 1, max(first - 7, -1), -1):
        token = scene.tokens[index]
        if token.kind is not Kind.WORD or scene.tokens[index + 1].gap is not Gap.NONE:
            return None
        if token.word in SIDES and scene.word(index + 1) == "side":
            return SIDES[token.word]
    return None


def _side_meant(scene: Passage, spot: Spot) -> Side | None:
    """`right 22 and a pull in the groin on that side`, `not the right, that knee hurts`: the side named before."""
    that = scene.word(spot.first - 1) in ("that", "same") or any(
        scene.word(i) in ("that", "same") and scene.word(i + 1) == "side" and scene.same_sentence(i, spot.first)
        for i in range(spot.end, min(spot.end + 6, len(scene.tokens)))
    )
    named = [i for i in range(max(0, spot.first - _NEAR), spot.first) if scene.word(i) in SIDES] if that else []
    return SIDES[scene.word(named[-1])] if named else None


_NEAR = 12
"""Words between a side and what points back at it."""
_ALONE = word_set(
    """
    the my it it's 's is on side one was mainly mostly this time that just only again i mean think by way hand sided
    a bit mild mildly slight slightly nothing new same usual as ever still though sorry forgot to say btw be precise
    specifically exactly always worse worst knee hip leg arm shoulder coach hi hey yeah yes
    of course obviously naturally typically typical annoyingly sadly luckily thankfully apparently if matters you ask
    asking wondering to
    """
)


def _side_of_its_own(scene: Passage, spot: Spot, mark: Mark | None) -> Side | None:
    """The side in a sentence or a clause that says nothing else: `my old hip hurts today. The left.`"""
    told = (spot.first, mark.first if mark else spot.first)
    for first, end in _clauses_beside(scene, min(told), max(told)):
        words = [scene.word(i) for i in range(first, end)]
        sides = {SIDES[w] for w in words if w in SIDES}
        if len(sides) != 1 or not all(w in SIDES or w in _ALONE or w == spot.place.name for w in words):
            continue
        if any(is_effort(scene, i) for i in range(first, end)):
            continue
        same = ("side", "arm", "leg", spot.place.name)
        others = [s for s in scene.spots if s.first in range(first, end) and s.place.name not in same]
        if others:
            continue
        if words[-1:] != ["right"] or len(words) > 1 or words[0] in SIDES:
            return sides.pop()
    return None


def _clauses_beside(scene: Passage, first: int, last: int) -> list[tuple[int, int]]:
    """Clauses inside a hurt, those after it as far as the next sentence goes, then the sentence before."""
    ends = [i for i in range(len(scene.tokens)) if scene.tokens[i].gap is not Gap.NONE] + [len(scene.tokens)]
    spans = list(pairwise(ends))
    inside = [(a, b) for a, b in spans if first < a and b <= last]
    after = [(a, b) for a, b in spans if a > last and scene.sentence[a] - scene.sentence[last] <= 1]
    after += [(a, b) for a, b in spans if scene.sentence[a] - scene.sentence[last] == 2 and _tells_more(scene, a)]
    before = [(a, b) for a, b in spans if scene.sentence[a] == scene.sentence[first] - 1]
    return inside + after + before


def _tells_more(scene: Passage, first: int) -> bool:
    """Whether the sentence before goes on with `it` and names no place: `pop, the ankle! can't stand on it. left`."""
    between = [i for i in range(first) if scene.sentence[i] == scene.sentence[first] - 1]
    goes_on = any(scene.word(i) in ("it", "it's") for i in between)
    return goes_on and not any(s.first in between for s in scene.spots)


_TURNS = word_set("turn turns turning turned look looking rotate rotating bend bending lean leaning twist twisting")
"""Before `to the left` these tell where to, not where it hurts."""


def _is_side(scene: Passage, index: int, start: int) -> bool:
    """`on the left`, `, left side`, `left one`; `R` right after the cue."""
    before, after = scene.word(index - 1), scene.word(index + 1)
    if (scene.word(index - 2), before) == ("to", "the") and scene.words(index - 5, index - 2) & _TURNS:
        return False
    if before in ("the", "my") and scene.word(index - 2) in ("on", "in", "at", "to"):
        return True
    if before == "on" or after in ("side", "one", "sided") or (before == "the" and after == "half"):
        return after != "now"
    if scene.tokens[index - 1].kind is Kind.SCORE and scene.ends(index + 1):
        return True
    alone = scene.ends(index + 1) and scene.ends(index - (before in ("the", "my")))
    return alone or (index == start and scene.ends(index + 1))
