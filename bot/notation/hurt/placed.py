"""Words that mean a hurt only beside a place: something off, strained, clicking."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.soreness import is_hurting_of_soreness
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Kind
from bot.notation.hurt.verdict import Judged, Verdict

_THINGS = word_set("bar barbell pad belt machine harness vest strap sandbag dumbbell kettlebell plate stance grip")
_WENT_WELL = word_set(
    "well fine ok okay great good numb dead over up down past through to smoothly better straight smooth forward back"
)
_WORKING = (Cue.WHISPER, Cue.QUALITY, Cue.GAVE_WAY, Cue.BECAUSE, Cue.JOINT_NOISE, Cue.SWOLLEN)
_SIDE_OF = frozenset({"side", "of"})
_IN = frozenset({"in", "inside"})
_OF_WHICH = frozenset({"i", "that", "which", "what", "from"})
"""Right behind a place these tell more of it: `the hamstring i did in the summer is grumbling`."""
_CLOSE = (Cue.STRAIN, Cue.QUALITY, Cue.BECAUSE)


_WELL = word_set("fine ok okay alright okey")


def judge_placed(scene: Passage, mark: Mark, spot: Spot | None) -> Judged:
    """The verdict on such a cue."""
    if spot is None:
        return Verdict.TALK, "no place is said"
    if mark.end <= spot.first and scene.words(mark.first - 3, mark.first) & _THINGS:
        return Verdict.TALK, "a thing feels so"
    if mark.cue is Cue.STRAIN and scene.word(mark.first) == "hurt" and is_hurting_of_soreness(scene, mark, spot):
        return Verdict.SORENESS, "a muscle after earlier training"
    if scene.word(mark.end - 1) in _WELL and not 0 <= mark.first - spot.end <= 1:
        return Verdict.TALK, "something else is not well"
    if _is_how_they_slept(scene, mark, spot):
        return Verdict.TALK, "how they slept, and it is only stiff"
    said = scene.words(mark.first, mark.end)
    if mark.cue is Cue.WHISPER and said & _FELT and not said & _UNWELL and _no_pain_beside(scene, mark):
        return Verdict.DENIED, "felt there, and said to be no pain"
    if mark.cue in (Cue.WHISPER, Cue.BECAUSE) and _no_pain_beside(scene, mark, next_door=True, behind=True):
        return Verdict.DENIED, "said behind it to be no pain"
    if _moved(scene, mark, spot):
        return Verdict.TALK, "it went or was rolled somewhere"
    if mark.cue in (Cue.JOINT_NOISE, Cue.POP) and _said_not_to_hurt(scene, mark):
        return Verdict.DENIED, "a noise, and said not to hurt"
    low, high = (mark.end, spot.first) if spot.first >= mark.end else (spot.end, mark.first)
    if mark.end <= low and "but" in scene.words(low, high) and mark.end <= spot.first:
        return Verdict.TALK, "a place of another thought"
    if scene.word(mark.first) == "rough" and spot.place.name in ("hand", "palm", "skin"):
        return Verdict.TALK, "skin that is rough"
    if sum(t.kind is Kind.NUMBER for t in scene.tokens[low:high]) >= 2:
        return Verdict.TALK, "sets told between"
    far = (
        14
        if spot.end <= mark.first
        and ("it" in scene.words(mark.first - 2, mark.first) or scene.word(spot.end) in _OF_WHICH)
        else 3
        if mark.cue in _CLOSE and not scene.words(low, high) & _IN and not scene.words(low, high).issuperset(_SIDE_OF)
        else 5
    )
    if spot.end <= mark.first and _goes_on_with_it(scene, mark, spot):
        return Verdict.PAIN, f"told of a place in the sentence before ({spot.place.name})"
    if mark.cue is Cue.BECAUSE and _named_next(scene, mark, spot):
        return Verdict.PAIN, f"the place is a sentence of its own ({spot.place.name})"
    if high - low > far or not scene.same_sentence(mark.first, spot.first):
        return Verdict.TALK, "too far from a place"
    if mark.cue is Cue.POP and (spot.place.name == "ear" or _pops_something(scene, mark, spot)):
        return Verdict.TALK, "a pop that is none of a joint"
    if mark.cue is Cue.POP and scene.word(mark.first).startswith(("crack", "bang")) and spot.place.name == "back":
        return Verdict.TALK, "a back that was cracked"
    if scene.word(mark.first).startswith("lock") and _locked_out(scene, mark, spot):
        return Verdict.EFFORT, "locked out, as a lift ends"
    if _at_work(scene, mark, spot):
        return Verdict.EFFORT, "muscles at work"
    return Verdict.PAIN, f"something wrong in a place ({spot.place.name})"


def _is_how_they_slept(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`neck is stiff from sleeping funny`, `stiff neck, dodgy pillow`: how they lay; not `slept funny, neck off`.

    Only where the place is said to be stiff or tight and nothing else, which alone is no pain.
    """
    manner = scene.word(mark.first) in _MANNER and mark.end - mark.first == 1
    lay = scene.words(mark.first - 3, mark.first) & _LAY and scene.word(mark.first - 1) not in (
        "and",
        "but",
        "is",
        "'s",
    )
    bedded = scene.words(mark.end, mark.end + 2) & _BEDDING and not scene.ends(mark.end)
    if not manner or not (lay or bedded):
        return False
    stiff = [m for m in scene.of(Cue.TIGHT) if scene.same_sentence(m.first, mark.first) and not negated(scene, m)]
    return any(spot in places_of(scene, m) for m in stiff)


_MANNER = word_set("funny weird weirdly odd oddly strange wrong wrongly bad badly rough awkward awkwardly dodgy crook")
_LAY = word_set("slept sleeping sleep lay lain laying lying sat sitting dozed dozing napped napping kipped nodded")
_BEDDING = word_set("pillow bed mattress night sleep sofa couch chair seat position angle posture cushion kip")
_STUCK = word_set(
    "can't couldn't won't wouldn't stuck straighten straight bend suddenly place socket me scary jammed moving unlock"
)
_EACH = word_set("every each all both full fully hard tight kept keep keeping hold holding held lockout soft overhead")
_AT_TOP = word_set("top finish end start standing")


def _locked_out(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`hips locked out every rep`, `knees locked at the top`: how a lift ends; not `knee locked`.

    A joint that is said to stick, or one that locked and no more is told of it, is no form.
    """
    said = scene.sentence_words(mark.first)
    if said & _STUCK:
        return False
    if "out" in scene.words(mark.end - 1, mark.end + 1):
        return spot.side is None or bool(said & (_EACH | _AT_TOP))
    near_by = scene.words(min(mark.first, spot.first) - 3, max(mark.end, spot.end) + 6)
    pair = spot.place.plural and spot.side is None and scene.word(mark.end) != "up"
    return pair and bool(near_by & _EACH or (near_by & _AT_TOP and scene.word(mark.end) in ("at", "in", "and", "on")))


def _goes_on_with_it(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`that left shoulder i told you of. 60x9 and it flared up`: a new sentence that goes on with `it`."""
    next_one = scene.sentence[mark.first] - scene.sentence[spot.first] == 1
    flares = scene.word(mark.first).startswith("flar")
    return next_one and flares and scene.word(mark.first - 1) == "it" and not spot.place.plural


def _pops_something(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`popped a lat spread`."""
    popped = scene.word(mark.first).startswith("pop")
    return popped and scene.word(mark.end) in ("a", "some", "on") and spot.first > mark.end


def _moved(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`hips went up`, `the niggle in my knee has gone`, `rolled my ankles out`."""
    if scene.word(mark.end - 1) in ("went", "gone"):
        cues = scene.of(Cue.PAIN, Cue.SHARP, Cue.SORE, Cue.WHISPER, Cue.CONDITION)
        hurt = any(scene.same_sentence(m.first, mark.first) and 0 <= mark.first - m.end <= 6 for m in cues)
        return hurt or scene.word(mark.end) in _WENT_WELL
    if scene.word(mark.first) == "rolled" and spot.place.tissue is Tissue.MUSCLE:
        return True
    return scene.word(mark.first) == "rolled" and "out" in scene.words(spot.end, spot.end + 2)


def _said_not_to_hurt(scene: Passage, mark: Mark) -> bool:
    if scene.sentence_words(mark.first) & {"painless", "painlessly", "painfree"}:
        return True
    if mark.cue is Cue.POP and scene.words(mark.end, mark.end + 4) & {"nice", "good", "great", "lovely", "satisfying"}:
        return True
    return _no_pain_beside(scene, mark, next_door=True)


_FELT = word_set("feel felt feeling feels")
_UNWELL = word_set("off weird funny odd wrong strange bad rough unstable terrible awful horrible nasty loose jarred")


def _no_pain_beside(scene: Passage, mark: Mark, *, next_door: bool = False, behind: bool = False) -> bool:
    """`not pain, just work`; next door also `my knee clicks? doesn't hurt`, where no other place is named there.

    `behind`: only what stands behind it, unqualified: `knee grumbles but no pain`, not `no pain, but it grumbles`.
    """
    here = scene.sentence[mark.first]
    denied = [m for m in scene.of(Cue.PAIN, Cue.HURT, Cue.PAINFUL) if negated(scene, m)]
    denied += [g for g in scene.of(Cue.GONE) if scene.words(g.first, g.end) & HURTING]
    for m in denied:
        there = scene.sentence[m.first]
        if behind and not _denies_it(scene, m, mark):
            continue
        places = any(scene.sentence[s.first] == there for s in scene.spots)
        if there == here or (next_door and there == here + 1 and not places):
            return True
    return False


def _denies_it(scene: Passage, denied: Mark, mark: Mark) -> bool:
    """Whether a denial behind a cue leaves nothing of it and is of no other place: not `knee grumbles, hip no pain`."""
    left = scene.clause_before(denied.first, 4) & _QUALIFIED or scene.words(denied.end, denied.end + 3) & _QUALIFIED_BY
    mine, its = places_of(scene, mark), places_of(scene, denied)
    return denied.first >= mark.end and not left and (not its or its[0] in mine)


HURTING = frozenset({"hurt", "hurting", "painful", "sore", "aching", "niggling", "pinching"})
"""Words of what is gone: `not sore any more`, `stopped hurting`."""
_QUALIFIED = word_set("exactly really quite such sharp real actual bad major proper much too that as so very severe")
_QUALIFIED_BY = word_set("exactly yet really such per se but until unless if when anymore more much except only")
"""Beside a denial of pain these leave some of it: `no sharp pain`, `not pain as such`, `doesn't hurt that much`."""


_LOOSENED = frozenset({"back", "lower back", "upper back", "mid back", "neck", "hip", "hip flexor", "body"})
"""Places that are the better for being loose; a loose knee or shoulder is not."""
_READY = word_set("ready free warm good fresh great mobile light limber")
_EASED = word_set("mobility stretch stretching stretched warm warmup massage nice nicely foam rolling yoga finally")


def _at_work(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """Muscles that are felt, tremble or complain in a set."""
    muscle = spot.place.tissue is Tissue.MUSCLE
    if spot.place.name == "lung" or (muscle and mark.cue is Cue.JOINT_NOISE):
        return True
    if muscle and spot.place.plural and scene.word(mark.end - 1) == "gone":
        return True
    if muscle and ((spot.place.plural and mark.cue in _WORKING) or scene.word(mark.first) == "can"):
        return True
    ready = scene.words(mark.end, mark.end + 3) & _READY
    if "loose" in scene.words(mark.first, mark.end) and (
        ready or spot.place.plural or spot.place.name in _LOOSENED or scene.sentence_words(mark.first) & _EASED
    ):
        return True
    if scene.word(mark.first) == "wobbly" and spot.place.plural:
        return True
    felt = mark.cue is Cue.WHISPER and scene.word(mark.first) in ("felt", "feel", "feeling")
    beside = scene.words(spot.end, spot.end + 8)
    limb = spot.place.name in _LIMBS and bool(beside & _MORE_THAN) and bool(beside & _MEANT)
    return (felt and (muscle or spot.place.tissue is Tissue.CHEST)) or (mark.cue is Cue.WHISPER and limb)


_LIMBS = word_set("leg arm thigh")
_MEANT = word_set(
    "glute glutes quad quads ham hams hamstring hamstrings lat lats pec pecs bicep biceps tricep triceps delts butt bum"
)
_MORE_THAN = word_set("than not instead rather")
"""What sets a limb where a set was felt against the muscle that was meant: `in the front of the leg, not the glute`."""


def _named_next(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """`limping lol. ankle.`: the sentence behind names nothing but the place."""
    here = [i for i, n in enumerate(scene.sentence) if n == scene.sentence[spot.first]]
    own = all(spot.first <= i < spot.end or scene.word(i) in ("my", "left", "right", "the") for i in here)
    return own and scene.sentence[spot.first] == scene.sentence[mark.first] + 1
