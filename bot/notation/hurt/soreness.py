"""Soreness, burning and hyperbole: when a body that trained is no body that hurts.

Diffuse, on both sides, after earlier training and eased within days is soreness; one side, a joint, pinpoint or for
weeks is not (the course of soreness: Vickers 2001, BMC Musculoskelet Disord 2:5; the telling apart: common practice).
"""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.headed import heads_report
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import laughed
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import Spot

_ACHES = word_set("ache aches aching")
_NOT_TRAINING = word_set("doms muscular soreness muscle from")
_PROVOKED = word_set("when whenever every sit sitting during night sleep walk walking")
_LASTING = word_set("weeks months spot touch night pinpoint sharply joint tendon")


def after_training(scene: Passage, mark: Mark, *, of_training: bool = False) -> bool:
    """`from monday`, `after leg day`, `still sore`; with `of_training` no mere day or time."""
    return any(
        scene.same_sentence(m.first, mark.first) and -6 <= m.first - mark.end <= 6 and not heads_report(scene, m, mark)
        for m in scene.of(*((Cue.TRAINED,) if of_training else (Cue.TRAINED, Cue.PAST)))
    )


def is_soreness(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """Whether a sore place is muscle soreness after training rather than a hurt."""
    if _is_more(scene, mark) or (spot.place.name == "foot" and not spot.place.plural):
        return False
    trained, both = after_training(scene, mark), spot.side is None
    match spot.place.tissue:
        case Tissue.MUSCLE:
            aches = not spot.place.plural and scene.word(mark.first) in _ACHES
            provoked = aches and bool(scene.words(mark.end, mark.end + 8) & _PROVOKED)
            return trained or (both and not provoked)
        case Tissue.CHEST:
            return True
        case Tissue.MIXED:
            return both and (trained or spot.place.plural)
        case Tissue.JOINT | Tissue.ORGAN:
            return False


def is_hurting_of_soreness(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """Whether even `hurt` means soreness: trained muscles on both sides, `quads hurt from monday`."""
    if _is_more(scene, mark) or spot.place.tissue is not Tissue.MUSCLE or spot.side is not None:
        return False
    return after_training(scene, mark) or (spot.place.plural and laughed(scene, mark))


def _is_more(scene: Passage, mark: Mark) -> bool:
    """Sore for weeks, at rest, to the touch; or said to be no soreness of training."""
    if scene.sentence_words(mark.first) & _LASTING:
        return True
    if scene.lasts_weeks:
        return True
    denials = [m.first for m in scene.of(Cue.NOT) if scene.word(m.first) in ("not", "isn't", "don't")]
    return any(scene.same_sentence(i, mark.first) and scene.words(i + 1, i + 3) & _NOT_TRAINING for i in denials)


def is_burn_of_a_set(scene: Passage, mark: Mark, spot: Spot | None) -> bool:
    """Whether burning is the burn of a set: muscles, lungs; a joint that burns hurts."""
    if spot is None or spot.place.name == "lung" or spot.place.tissue is Tissue.CHEST:
        return True
    if spot.place.tissue is not Tissue.MUSCLE and not spot.place.plural:
        return False
    inside = scene.word(mark.end) in ("in", "sensation", "pain", "feeling", "down")
    return not (scene.word(mark.first) == "burning" and inside and not spot.place.plural)


def is_pumped(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`chest is blown up, best pump in months`: blood in a muscle that worked."""
    swells = mark.cue in (Cue.WRECKED, Cue.SWOLLEN, Cue.BURN)
    trained = spot.place.tissue in (Tissue.MUSCLE, Tissue.CHEST) or spot.place.plural
    return swells and trained and bool(scene.sentence_words(mark.first) & {"pump", "pumped", "pumps"})


def is_hyperbole(mark: Mark, spot: Spot) -> bool:
    """Whether `killing me` or `wrecked` is talk: far from a place, or of trained muscles."""
    far = 7 if spot.place.tissue is Tissue.JOINT else 4
    near = -1 <= mark.first - spot.end <= far or 0 <= spot.first - mark.end <= 1 or mark.first <= spot.first < mark.end
    muscles = spot.place.tissue is Tissue.MUSCLE or (spot.place.plural and spot.place.tissue is Tissue.MIXED)
    grip = spot.place.plural and spot.place.name == "hand" and spot.mine is None
    return not near or muscles or grip
