"""Which place a cue speaks of."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.scene import Scene, Spot
from bot.notation.hurt.tokens import Gap, Kind

FAR = 16
"""The dearest link that still holds, in tokens and penalties."""
_CHAIN = frozenset(["and", "&", "or", "my", "the", "n", "plus", "a", "bit", "both", "on", "in", "left", "right", "of", "side", "lower", "upper", "around", "also", "into", "to"])
_LEADS = frozenset(
    ["in", "on", "at", "of", "around", "behind", "under", "to", "down", "across", "by", "near", "inside", "my", "along", "through", "into", "up", "above", "below", "over", "round", "from", "the"]
)
_RIVALS = (Cue.PAIN, Cue.HURT, Cue.SHARP, Cue.SORE, Cue.MARK, Cue.BURN, Cue.GOOD, Cue.FINE)


def places_of(scene: Scene, mark: Mark) -> tuple[Spot, ...]:
    """The places that a cue speaks of, first named first; empty where none is said near it."""
    here = [s for s in scene.spots if scene.same_sentence(s.first, mark.first)]
    priced = sorted((_price(scene, mark, s), s.first, s) for s in here) if here else []
    if priced and priced[0][0] <= FAR:
        return _chain(here, scene, priced[0][2])
    return _next_door(scene, mark)


def _price(scene: Scene, mark: Mark, spot: Spot) -> int:
    """How far a place is from a cue: tokens between, dearer over commas, joints of speech and rival cues."""
    if spot.first < mark.end and mark.first < spot.end:
        return 0
    after = spot.first >= mark.end
    low, high = (mark.end, spot.first) if after else (spot.end, mark.first)
    price = (high - low) * 1
    price += 3 * scene.soft_gaps(low, high + 1)
    price += sum(
        4 for i in range(low, high) if scene.word(i) in ("but", "and", "then", "so", "because", "plus", "also", "while")
    )
    price += sum(5 for m in scene.marks if m.cue in _RIVALS and low <= m.first < high)
    price += sum(3 for i in range(low, high) if scene.tokens[i].kind is Kind.SET)
    if after and high > low and scene.word(low) not in _LEADS and scene.word(spot.first - 1) not in _LEADS:
        price += 3
    if after and high == low and mark.cue not in (Cue.STRAIN, Cue.HURT, Cue.SORE, Cue.SHARP, Cue.WHISPER):
        price += 2
    if (
        after
        and low < high
        and scene.word(low) in ("in", "on", "at", "behind", "under", "around", "across", "inside", "down", "to")
    ):
        price -= 4
    return price


def _chain(here: list[Spot], scene: Scene, found: Spot) -> tuple[Spot, ...]:
    """The places coordinated with the one found: `knee and hip`, `chest and left arm`."""
    at = here.index(found)
    first, last = at, at
    while first > 0 and _joined(scene, here[first - 1], here[first]):
        first -= 1
    while last + 1 < len(here) and _joined(scene, here[last], here[last + 1]):
        last += 1
    return tuple(here[first : last + 1])


def _joined(scene: Scene, a: Spot, b: Spot) -> bool:
    between = range(a.end, b.first)
    return (
        len(between) <= 4
        and all(scene.word(i) in _CHAIN for i in between)
        and (len(between) > 0 or scene.tokens[b.first].gap is Gap.SOFT)
    )


def _next_door(scene: Scene, mark: Mark) -> tuple[Spot, ...]:
    """A place in the sentence before or after, where this one names none."""
    number = scene.sentence[mark.first]
    before = [s for s in scene.spots if scene.sentence[s.first] == number - 1 and mark.first - s.end <= 12]
    after = [s for s in scene.spots if scene.sentence[s.first] == number + 1 and s.first - mark.end <= 6]
    fine = {scene.sentence[m.first] for m in scene.of(Cue.FINE, Cue.GOOD)}
    other_cue = {scene.sentence[m.first] for m in scene.of(Cue.SORE, Cue.BURN)}
    if before and number - 1 not in fine | other_cue:
        return (before[-1],)
    if after and number + 1 not in fine | other_cue:
        return (after[0],)
    return ()
