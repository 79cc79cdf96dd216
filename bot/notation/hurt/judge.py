"""Whether each cue is the client's pain now, and why. In doubt it is."""

from collections.abc import Sequence

from bot.notation.hurt.alone import bare_reasons, likened, named_alone, struck
from bot.notation.hurt.cues import Cue
from bot.notation.hurt.figures import is_at_news, is_noise_likened, is_nuisance, is_oath
from bot.notation.hurt.links import head_of, places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.me_verbs import done_to_me
from bot.notation.hurt.negation import negated
from bot.notation.hurt.no_body import is_swelling_of_a_thing
from bot.notation.hurt.over import gone, long_ago
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import anothers, hypothetical, laughed
from bot.notation.hurt.placed import judge_placed
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.said_of import said_of_joints
from bot.notation.hurt.soreness import (
    after_training,
    is_burn_of_a_set,
    is_hurting_of_soreness,
    is_hyperbole,
    is_pumped,
    is_soreness,
)
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Gap, Kind
from bot.notation.hurt.verdict import Hurt, Judged, Verdict

_JUDGED = (
    *(Cue.PAIN, Cue.HURT, Cue.PAINFUL, Cue.SHARP, Cue.QUALITY, Cue.SORE, Cue.BURN, Cue.WHISPER, Cue.STRAIN),
    *(Cue.INJURED, Cue.MARK, Cue.JOINT_NOISE, Cue.OUCH, Cue.CONDITION, Cue.KILLING, Cue.WRECKED, Cue.BECAUSE),
    *(Cue.HEADACHE, Cue.POP, Cue.GAVE_WAY, Cue.SWOLLEN),
)
_THAT = word_set("that this those these ones one that's sets reps session workout finisher everything everywhere it'll")
_EDGED = word_set("bar bars knurl knurling edge edges plate plates handle handles pin hook cable box corner rack knife")
_GEAR = word_set(
    """
    belt strap straps sleeve sleeves wrap wraps shoe shoes trainers vest harness band bands clip collar brace bra shorts
    leggings socks gloves grips sock glove trainer lifters watch
    """
)
_WORN = ("pinch", "nip", "dig", "stab", "jab", "pok")
_DONE_TO_A_THING = word_set("pinched nipped nip pinch cramped swelling jabbed stung")
_A_THING = word_set(
    """
    the a some in out to over off into for little tiny small hotel home gym space room garage with this my by back up
    """
)
_A_LITTLE = word_set("bit little tiny touch tad wee lot fraction smidge smidgen teeny bunch good few couple")
"""Behind `pinched a` these tell how much: `the groin pinched a tiny bit`."""
_LOVED = word_set("loved love loving enjoyed enjoying worth buzzing")
_NUISANCE = word_set("is was 's been being such are were")
_NOT_SO = word_set("not isn't wasn't never")
_PINPOINT = word_set("spot pinpoint")
_ARTICLES = word_set("an a bit dull this that the")


def judge_hurts(scene: Passage) -> list[Hurt]:
    """Every cue of hurt with its verdict; last the places that stand alone as the reason for cutting short."""
    judged = [_judge(scene, m) for m in scene.of(*_JUDGED)]
    why = "a place alone as the reason for cutting short"
    alone = [Hurt(m, spot, Verdict.PAIN, why) for m, spot in bare_reasons(scene)]
    like = [Hurt(m, spot, Verdict.PAIN, "likened to something that is not well") for m, spot in likened(scene)]
    alone += [Hurt(m, spot, Verdict.PAIN, "something fell on a place") for m, spot in struck(scene)]
    alone += [Hurt(m, spot, Verdict.PAIN, "something is done to me there") for m, spot in done_to_me(scene)]
    alone += [Hurt(m, spot, Verdict.PAIN, "a joint is named, and nothing else") for m, spot in named_alone(scene)]
    told = {h.spot for h in judged if h.spot and h.verdict is not Verdict.TALK}
    why = "said of a joint, and it is neither well nor a matter of form: in doubt"
    said = [Hurt(m, spot, Verdict.PAIN, why) for m, spot in said_of_joints(scene) if spot not in told]
    return judged + like + alone + said


def _judge(scene: Passage, mark: Mark) -> Hurt:
    spot = _hurting(scene, mark, places_of(scene, mark))
    if mark.place is not None and (spot is None or mark.place.tissue is Tissue.ORGAN):
        spot = head_of(scene, mark)
    verdict, why = _scoped(scene, mark, spot) or _by_cue(scene, mark, spot)
    return Hurt(mark, spot, verdict, why)


def _hurting(scene: Passage, mark: Mark, spots: Sequence[Spot]) -> Spot | None:
    """Of the places of a cue the first that hurts by more than soreness: `grip before legs, left knee hurts`."""
    first = next(iter(spots), None)
    if first is None or len(spots) == 1 or not is_hurting_of_soreness(scene, mark, first):
        return first
    return next((s for s in spots if not is_hurting_of_soreness(scene, mark, s)), first)


def _scoped(scene: Passage, mark: Mark, spot: Spot | None) -> Judged | None:
    """The verdict of what stands over the cue, if anything does."""
    if _is_gadget(scene, mark):
        return Verdict.TALK, "a thing in the gym, and the set done on it"
    if negated(scene, mark):
        return Verdict.DENIED, "a negation stands over it"
    if anothers(scene, mark, spot.mine if spot else None):
        return Verdict.ANOTHERS, "somebody else hurts"
    if long_ago(scene, mark) or gone(scene, mark):
        return Verdict.OVER, "said to be over"
    if hypothetical(scene, mark):
        return Verdict.SUPPOSED, "a question or a supposition"
    return None


_GADGETS = word_set("thing thingy thingie gizmo gadget whatsit contraption doodah thingamajig whatnot")
_DETERMINERS = word_set("the this then and")


def _is_gadget(scene: Passage, mark: Mark) -> bool:
    """`the calf thingy 90x15`: a muscle's machine and straight behind it a set; not `the calf thing again, 60x8`."""
    at, end = mark.end - 1, mark.end
    if scene.word(at) not in _GADGETS or end >= len(scene.tokens):
        return False
    spot = next((s for s in scene.spots if s.end == at and s.place.tissue is Tissue.MUSCLE), None)
    if spot is None or spot.side is not None or scene.tokens[end].kind is not Kind.SET:
        return False
    led = scene.word(spot.first - 1) in _DETERMINERS or scene.ends(spot.first)
    led = led or (scene.word(spot.first - 1) == "that" and scene.word(at) != "thing")
    return led and scene.tokens[end].gap is Gap.NONE and scene.tokens[at].gap is Gap.NONE


def _by_cue(scene: Passage, mark: Mark, spot: Spot | None) -> Judged:
    if spot is not None and is_pumped(scene, mark, spot):
        return Verdict.EFFORT, "a pump"
    match mark.cue:
        case Cue.PAIN | Cue.HURT | Cue.PAINFUL | Cue.OUCH:
            return _plain(scene, mark, spot)
        case Cue.SHARP | Cue.MARK | Cue.CONDITION | Cue.INJURED | Cue.HEADACHE:
            return _anywhere(scene, mark)
        case Cue.SORE:
            return _sore(scene, mark, spot)
        case Cue.BURN:
            burn = is_burn_of_a_set(scene, mark, spot)
            return (Verdict.EFFORT, "the burn of a set") if burn else (Verdict.PAIN, "burning in a joint")
        case Cue.KILLING | Cue.WRECKED:
            return _exaggerated(scene, mark, spot)
        case _:
            return judge_placed(scene, mark, spot)


def _anywhere(scene: Passage, mark: Mark) -> Judged:
    """Sharp hurts, injuries and complaints are pain anywhere, but for other uses of the word."""
    word, before, after = scene.word(mark.first), scene.word(mark.first - 1), scene.word(mark.end)
    if word == "sharp" and not scene.ends(mark.first) and (before.isdigit() or before in ("am", "pm", "clock", "half")):
        return Verdict.TALK, "a time of day"
    if word.startswith("sharp") and scene.clause_before(mark.first, 5) & _EDGED:
        return Verdict.TALK, "a thing that is sharp"
    nowhere = not _placed(scene, mark)
    if nowhere and word.startswith(_WORN) and scene.clause_before(mark.first, 4) & _GEAR:
        return Verdict.TALK, "gear that is worn"
    little = after == "a" and scene.word(mark.end + 1) in _A_LITTLE
    if nowhere and word.startswith(("swoll", "swell", "puff", "bulg")) and is_swelling_of_a_thing(scene, mark):
        return Verdict.TALK, "a thing is swollen"
    if nowhere and word in _DONE_TO_A_THING and after in _A_THING and not little:
        return Verdict.TALK, "done to a thing"
    if is_oath(scene, mark):
        return Verdict.TALK, "an oath"
    if word.startswith("scrap") and nowhere:
        return Verdict.EFFORT, "a set that was only just done"
    if word.startswith("pinch") and scene.words(mark.end, mark.end + 3) & _EDGED:
        return Verdict.TALK, "a thing that pinches another"
    stolen = after in ("your", "his", "her", "a", "their") and scene.word(mark.end + 1) not in _A_LITTLE
    if word in ("pinched", "nipped") and stolen:
        return Verdict.TALK, "something was taken"
    if word.startswith(("sw", "puff")) and scene.sentence_words(mark.first) & {"pump", "pumped"}:
        return Verdict.EFFORT, "a pump"
    if word in ("headache", "migraine") and is_nuisance(scene, mark):
        return Verdict.TALK, "a nuisance"
    chore = after == "to" and scene.word(mark.end + 1) not in ("the", "my", "left", "right", "one")
    if word == "headache" and (chore or (before == "a" and _is_likened(scene, mark))):
        return Verdict.TALK, "a nuisance"
    return Verdict.PAIN, "a hurt by itself"


_HAS = word_set("have had has got i've getting with woke gives gave gotten")
_CAUSED = word_set("from since after all on behind when now today")


def _is_likened(scene: Passage, mark: Mark) -> bool:
    """`is a headache`, `such a headache`; not `had such a headache`, `such a headache since the last set`."""
    led = scene.word(mark.first - 2)
    owned = scene.words(mark.first - 6, mark.first - 2) & _HAS or scene.word(mark.end) in _CAUSED
    return led in _NUISANCE and not (led == "such" and owned)


def _placed(scene: Passage, mark: Mark) -> bool:
    """Whether a place is named in the sentence."""
    return any(scene.same_sentence(s.first, mark.first) for s in scene.spots)


def _plain(scene: Passage, mark: Mark, spot: Spot | None) -> Judged:
    if mark.cue is Cue.PAIN and scene.word(mark.end + 2) == "neck" and is_nuisance(scene, mark):
        return Verdict.TALK, "a nuisance"
    if spot is None:
        return _placeless(scene, mark)
    if is_hurting_of_soreness(scene, mark, spot):
        return Verdict.SORENESS, "a muscle after earlier training"
    return Verdict.PAIN, f"hurt in a place ({spot.place.name})"


def _placeless(scene: Passage, mark: Mark) -> Judged:
    """Hurt and no place: effort talk where the session is what hurt, else in doubt it is pain."""
    if mark.cue is Cue.OUCH and is_at_news(scene, mark):
        return Verdict.TALK, "a cry at the news"
    if mark.cue is Cue.PAIN and is_noise_likened(scene, mark):
        return Verdict.TALK, "a thing that makes a noise"
    if {"good", "way"} <= scene.words(mark.end, mark.end + 6) and not scene.words(mark.end, mark.end + 6) & _NOT_SO:
        return Verdict.TALK, "in a good way"
    burns = scene.sentence_words(mark.first) & {"burn", "burns", "burned", "burning", "burnt"}
    if mark.cue is Cue.OUCH and burns and scene.of(Cue.GOOD, Cue.LAUGH, Cue.FINE):
        return Verdict.EFFORT, "the burn of a set"
    if mark.cue in (Cue.HURT, Cue.PAIN, Cue.OUCH) and scene.sentence_words(mark.first) & _LOVED:
        return Verdict.EFFORT, "and they liked it"
    stopped = any(scene.same_sentence(m.first, mark.first) for m in scene.of(Cue.STOPPED))
    one_before, before = scene.word(mark.first - 1), scene.words(mark.first - 4, mark.first)
    if mark.cue is Cue.PAIN:
        if one_before == "a" and scene.word(mark.first - 2) in _NUISANCE:
            return Verdict.TALK, "a nuisance"
        if not stopped and (laughed(scene, mark) or one_before == "pure"):
            return Verdict.EFFORT, "laughed off, and no place"
        return Verdict.PAIN, "pain, in doubt"
    if stopped:
        return Verdict.PAIN, "hurt, and it stopped them"
    efforts = [m for m in scene.of(Cue.EFFORT) if scene.same_sentence(m.first, mark.first)]
    if scene.sentence[mark.first] != scene.sentence[max(0, mark.first - 1)] and _joint_before(scene, mark):
        return Verdict.PAIN, "a joint is what the sentence before is of"
    if before & _THAT or laughed(scene, mark) or any(abs(m.first - mark.first) <= 5 for m in efforts):
        return Verdict.EFFORT, "the effort is what hurt, and no place is said"
    return Verdict.PAIN, "hurt, in doubt"


def _joint_before(scene: Passage, mark: Mark) -> bool:
    """`not my good knee, the other one. hurts.`"""
    number = scene.sentence[mark.first]
    joint = (Tissue.JOINT, Tissue.MIXED)
    return any(scene.sentence[s.first] == number - 1 and s.place.tissue in joint for s in scene.spots)


def _sore(scene: Passage, mark: Mark, spot: Spot | None) -> Judged:
    if any(scene.words(m.first, m.end) >= {"not", "good"} for m in scene.of(Cue.STOPPED)):
        return Verdict.PAIN, "not the good kind"
    if "doms" in scene.words(mark.first, mark.end):
        return Verdict.SORENESS, "called soreness"
    if spot is None and scene.sentence_words(mark.first) & _PINPOINT:
        return Verdict.PAIN, "sore in one spot"
    if spot is None:
        led = scene.word(mark.first - 1) in _ARTICLES or scene.ends(mark.first)
        noun = scene.word(mark.first) in ("ache", "aches") and led
        if noun and not after_training(scene, mark):
            return Verdict.PAIN, "an ache, in doubt"
        return Verdict.SORENESS, "sore, no place"
    if is_soreness(scene, mark, spot):
        return Verdict.SORENESS, "a trained muscle is sore"
    return Verdict.PAIN, f"sore where training does not make sore ({spot.place.name})"


def _exaggerated(scene: Passage, mark: Mark, spot: Spot | None) -> Judged:
    if spot is None or spot.place.name == "body":
        return Verdict.TALK, "hyperbole"
    if is_hyperbole(mark, spot):
        return Verdict.EFFORT, "hyperbole of a trained muscle"
    if mark.cue is Cue.WRECKED and after_training(scene, mark, of_training=True):
        return Verdict.SORENESS, "hyperbole after training"
    return Verdict.PAIN, f"a {spot.place.name} is said to be in a bad way"
