"""Urgent signs of lost strength: a limb that is weak, can't be moved, gives way; and what is only tired or limited."""

from collections.abc import Iterator
from itertools import pairwise

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import FACES, LIMBS, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sides import side_of
from bot.notation.hurt.sign import Sign, near, sign_of, stands
from bot.notation.hurt.spots import SIDES, Spot
from bot.notation.hurt.tokens import Kind

_BENDS = LIMBS | FACES | word_set("knee elbow shoulder hip hamstring hammy achilles")
_FORCE = word_set("strength power movement force control grip squeeze use strenght forces life")
_COUNTS = word_set("two three four last little one half some ring both")
_BESIDE_WEAK = (*(Cue.PAIN, Cue.SHARP, Cue.MARK, Cue.NUMB, Cue.HURT, Cue.NO_STRENGTH, Cue.DROPS, Cue.LIMP),)
_SIDED = LIMBS | FACES | word_set("knee hip hamstring")
"""What is weak on one side for a cause; a weak left glute or shoulder is what is trained."""
_CLUMSY = word_set("clumsy drops dropping since still morning shaky awkward")


def weakness(scene: Passage) -> Iterator[Sign]:
    """Sudden or one-sided weakness of a limb, or of both legs beside pain; not a weak day."""
    for m in scene.of(Cue.WEAK):
        for spot in places_of(scene, m)[:1]:
            if not near(scene, spot, m, 5) or not stands(scene, m, spot):
                continue
            sudden = [x for x in scene.of(Cue.SUDDEN) if near(scene, x, m, 6)]
            went = scene.words(spot.end, m.first) & {"went", "gone", "goes", "suddenly"}
            beside = [x for x in scene.of(*_BESIDE_WEAK) if near(scene, x, m, 14)]
            beside += [m] if scene.sentence_words(m.first) & _CLUMSY else []
            gives = any(near(scene, x, m, 14) for x in scene.of(Cue.GAVE_WAY))
            if _is_named_so(scene, m, spot):
                continue
            sided = side_of(scene, m, spot) if spot.place.name in _SIDED else None
            one = (sided or sudden or went or gives) and not spot.place.plural
            legs = spot.place.plural and spot.place.name in ("leg", "foot") and (sudden or beside)
            grip = spot.place.name == "hand" and (beside or sudden or went)
            tingles = spot.place.name in LIMBS and any(near(scene, x, m, 8) for x in _tingling(scene))
            if one or legs or grip or tingles:
                yield sign_of("weakness", (m, spot), spot)


def _tingling(scene: Passage) -> list[Mark]:
    """`tingling`, `pins and needles`, `numb`: a nerve beside which no weakness is a tired muscle's."""
    marks = scene.of(Cue.MARK, Cue.NUMB)
    return [m for m in marks if m.cue is Cue.NUMB or scene.word(m.first).startswith(("tingl", "pins", "prick"))]


def _is_named_so(scene: Passage, m: Mark, spot: Spot) -> bool:
    """`weak leg (left) 8, strong leg 10`: the weaker of two sides, and what it did."""
    if not 0 <= spot.first - m.end <= 1:
        return False
    at = spot.end + (scene.word(spot.end) in SIDES)
    told = at < len(scene.tokens) and scene.tokens[at].kind in (Kind.NUMBER, Kind.SET)
    return told or bool(scene.sentence_words(m.first) & {"strong", "stronger"})


def no_strength(scene: Passage) -> Iterator[Sign]:
    """`no strength in my left hand`, `can't move my arm`; a limb that hangs, drags or lets go; a leg that gives way."""
    for m in scene.of(Cue.NO_STRENGTH):
        reach = 16 if scene.word(m.end) in ("them", "it", "both") else 5
        chained = [s for s in places_of(scene, m) if near(scene, m, s, reach)]
        limbs = [s for s in chained if s.mine is not False and s.place.name in _BENDS]
        for spot in (limbs or chained)[:1]:  # `shirt's tight across the chest, my right leg won't move`
            told = spot.place.name in _BENDS or scene.words(m.first, m.end) & _FORCE
            if told and stands(scene, m, spot) and fails(scene, m, spot) and not _only_limited(scene, spot):
                yield sign_of("no strength", (m, spot), spot)
    for m in scene.of(Cue.GAVE_WAY):
        for spot in [s for s in places_of(scene, m) if near(scene, m, s, 4)][:1]:
            limb = spot.place.name in ("leg", "foot") and not spot.place.plural
            in_a_set = scene.word(m.end) == "on" and scene.word(m.end + 1) not in ("me", "stairs")
            if limb and stands(scene, m, spot) and not in_a_set:
                yield sign_of("gave way", (m, spot), spot)


_CANNOT = word_set("can't won't")
_LIFTS = word_set("lift raise pull pick point wiggle")


def fails(scene: Passage, m: Mark, spot: Spot) -> bool:
    """One limb, or some of the fingers; both arms at the end of a set are tired."""
    if spot.place.tissue in (Tissue.CHEST, Tissue.ORGAN):
        return False
    hands = spot.place.name == "hand" and "strength" in scene.words(m.first, m.end)
    said = scene.words(m.first, m.end)
    if spot.place.name in ("finger", "toe", "hand") and said & _CANNOT and "move" in said:
        return True
    if spot.place.name == "toe" and said & _CANNOT and said & _LIFTS:
        return True
    told = scene.words(m.first, m.end) & {"tell", "told", "ask", "asked", "want", "obey", "listen", "ordered"}
    if spot.place.name in ("finger", "toe", "hand") and told:
        return True
    some = spot.place.name in ("finger", "toe") and scene.words(spot.first - 2, spot.first) & _COUNTS
    return not spot.place.plural or hands or bool(some) or side_of(scene, m, spot) is not None


def _only_limited(scene: Passage, spot: Spot) -> bool:
    """`can't lift my arm without pain`, `can't bend my knee as much`."""
    pause = next((i for i in range(spot.end, spot.end + 8) if scene.ends(i) and i > spot.end), spot.end + 8)
    after = [scene.word(i) for i in range(spot.end, pause)]
    after = after[: next((i for i, word in enumerate(after) if word in ("and", "when")), len(after))]
    any_more = any(pair == ("any", "more") for pair in pairwise(after))
    words = set(after) - ({"more"} if any_more else set())
    if spot.place.name in ("hand", "finger", "foot", "toe", "thumb"):
        words -= {"fully", "properly"}
    limits = word_set("without much further higher high heavier more fully properly")
    return bool(words & limits) and "all" not in words
