"""Whether each cue is the client's pain now, and why."""

from dataclasses import dataclass
from enum import Enum

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.scene import Scene, Spot
from bot.notation.hurt.scopes import anothers, gone, hypothetical, laughed, long_ago, negated
from bot.notation.hurt.tokens import Gap


class Verdict(Enum):
    """What a cue of hurt comes to."""

    PAIN = "pain"
    DENIED = "denied"
    OVER = "over"
    ANOTHERS = "somebody else's"
    SUPPOSED = "only supposed"
    SORENESS = "soreness after training"
    EFFORT = "effort"
    TALK = "no hurt without a place"


@dataclass(frozen=True, slots=True)
class Hurt:
    """A cue of hurt judged: its tokens, its place if one is said, the verdict and why."""

    mark: Mark
    spot: Spot | None
    verdict: Verdict
    why: str


_JUDGED = (
    Cue.PAIN, Cue.HURT, Cue.PAINFUL, Cue.SHARP, Cue.QUALITY, Cue.SORE, Cue.BURN, Cue.WHISPER, Cue.STRAIN, Cue.INJURED, Cue.MARK,
    Cue.JOINT_NOISE, Cue.OUCH, Cue.CONDITION, Cue.KILLING, Cue.WRECKED, Cue.BECAUSE, Cue.HEADACHE, Cue.POP, Cue.GAVE_WAY, Cue.SWOLLEN,
)  # fmt: skip


def judge_hurts(scene: Scene) -> list[Hurt]:
    """Every cue of hurt with its verdict, in order; last a place that stands alone as the reason for cutting short."""
    return [_judged(scene, m) for m in scene.of(*_JUDGED)] + _bare_reasons(scene)


_CUT = word_set(
    """
    bin binned skip skipped skipping stop stopped stopping cut drop dropped left bailed bail swapped modified lighter
    light rest resting no
    """
)


def _bare_reasons(scene: Scene) -> list[Hurt]:
    """`had to bin the squats, knee`: a joint alone in its clause, after something was cut."""
    out: list[Hurt] = []
    for spot in scene.spots:
        tissue = spot.place.tissue
        start = spot.first - (1 if spot.side else 0) - (1 if scene.word(spot.first - 1) == "my" else 0)
        alone = spot.end >= len(scene.tokens) or scene.tokens[spot.end].gap is not Gap.NONE
        if start < 1 or not alone or spot.place.plural or tissue not in (Tissue.JOINT, Tissue.MIXED):
            continue
        before = {scene.word(i) for i in range(start) if scene.same_sentence(i, spot.first)}
        if scene.tokens[start].gap is Gap.SOFT and before & _CUT and not before & {"no", "time"} == {"no", "time"}:
            mark = Mark(spot.first, spot.end, None, spot.place)
            out.append(Hurt(mark, spot, Verdict.PAIN, "a place alone as the reason for cutting short"))
    return out


def _judged(scene: Scene, mark: Mark) -> Hurt:
    spot = next(iter(places_of(scene, mark)), None)
    if mark.place is not None and (spot is None or mark.place.tissue is Tissue.ORGAN):
        spot = Spot(mark.first, mark.end, mark.place, None, None, mark.doubts, mark.solid, mark.typed)
    verdict, why = _verdict(scene, mark, spot)
    return Hurt(mark, spot, verdict, why)


def _verdict(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    if negated(scene, mark):
        return Verdict.DENIED, "a negation stands over it"
    if anothers(scene, mark, spot.mine if spot else None):
        return Verdict.ANOTHERS, "somebody else hurts"
    if long_ago(scene, mark):
        return Verdict.OVER, "long ago"
    if gone(scene, mark):
        return Verdict.OVER, "said to be over"
    if hypothetical(scene, mark):
        return Verdict.SUPPOSED, "a question or a supposition"
    return _by_cue(scene, mark, spot)


def _by_cue(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    match mark.cue:
        case Cue.PAIN | Cue.HURT | Cue.PAINFUL | Cue.OUCH:
            return _plain(scene, mark, spot)
        case Cue.SHARP | Cue.MARK | Cue.CONDITION | Cue.INJURED | Cue.HEADACHE:
            return _anywhere(scene, mark)
        case Cue.SORE:
            return _sore(scene, mark, spot)
        case Cue.BURN:
            return _burning(scene, mark, spot)
        case Cue.KILLING | Cue.WRECKED:
            return _hyperbole(scene, mark, spot)
        case _:
            return _in_place(scene, mark, spot)


def _anywhere(scene: Scene, mark: Mark) -> tuple[Verdict, str]:
    before = scene.word(mark.first - 1)
    if scene.word(mark.first) == "sharp" and (before.isdigit() or before in ("am", "pm", "clock", "half")):
        return Verdict.TALK, "a time of day"
    if scene.word(mark.first) in ("pinched", "nipped") and scene.word(mark.end) in ("your", "his", "her", "a", "their"):
        return Verdict.TALK, "something else was taken"
    if (
        scene.word(mark.first) == "headache"
        and scene.word(mark.first - 1) == "a"
        and scene.word(mark.first - 2) in ("is", "was", "such", "'s")
    ):
        return Verdict.TALK, "a nuisance"
    return Verdict.PAIN, "a hurt by itself"


def _plain(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    if spot is None:
        return _placeless(scene, mark)
    if _soreness(scene, mark, spot, strong=True):
        return Verdict.SORENESS, "a muscle after earlier training"
    return Verdict.PAIN, f"hurt in a place ({spot.place.name})"


_THAT = word_set(
    """
    that this those these ones one that's set sets reps session workout finisher everything everywhere it'll
    """
)


def _placeless(scene: Scene, mark: Mark) -> tuple[Verdict, str]:
    """Hurt and no place: effort talk where the session is what hurt, else in doubt it is pain."""
    if "way" in {scene.word(i) for i in range(mark.end, mark.end + 6)} and "good" in {
        scene.word(i) for i in range(mark.end, mark.end + 6)
    }:
        return Verdict.TALK, "in a good way"
    stopped = any(scene.same_sentence(m.first, mark.first) for m in scene.of(Cue.STOPPED))
    before = [scene.word(i) for i in range(max(0, mark.first - 4), mark.first)]
    efforts = [
        m for m in scene.of(Cue.EFFORT) if scene.same_sentence(m.first, mark.first) and abs(m.first - mark.first) <= 5
    ]
    if (
        mark.cue is Cue.PAIN
        and before[-1:] == ["a"]
        and set(before[-2:-1]) & {"is", "was", "'s", "been", "being", "such"}
    ):
        return Verdict.TALK, "a nuisance"
    if mark.cue is Cue.PAIN:
        talk = laughed(scene, mark) or (before[-1:] == ["pure"]) or "face" in before
        return (
            (Verdict.EFFORT, "laughed off, and no place") if talk and not stopped else (Verdict.PAIN, "pain, in doubt")
        )
    if stopped:
        return Verdict.PAIN, "hurt, and it stopped them"
    if set(before) & _THAT or efforts or laughed(scene, mark):
        return Verdict.EFFORT, "the effort is what hurt, and no place is said"
    return Verdict.PAIN, "hurt, in doubt"


def _earlier_training(scene: Scene, mark: Mark) -> bool:
    """`from monday`, `after leg day`, `still sore`."""
    for m in scene.of(Cue.TRAINED, Cue.PAST):
        if scene.same_sentence(m.first, mark.first) and -6 <= m.first - mark.end <= 6:
            return True
    return False


def _soreness(scene: Scene, mark: Mark, spot: Spot, *, strong: bool) -> bool:
    """Whether this is muscle soreness after training rather than a hurt."""
    tissue, trained = spot.place.tissue, _earlier_training(scene, mark)
    if _lasting(scene, mark) or _called_other(scene, mark):
        return False
    if strong:
        plural_muscle = tissue is Tissue.MUSCLE and spot.side is None
        return plural_muscle and (trained or (spot.place.plural and laughed(scene, mark)))
    match tissue:
        case Tissue.MUSCLE:
            provoked = not spot.place.plural and scene.word(mark.first) in _ACHES and _provoked(scene, mark)
            return trained or (spot.side is None and not provoked)
        case Tissue.CHEST:
            return True
        case Tissue.MIXED:
            return trained or (spot.place.plural and spot.side is None)
        case Tissue.JOINT | Tissue.ORGAN:
            return False


def _called_other(scene: Scene, mark: Mark) -> bool:
    """`sore, not doms`: said to be no soreness of training."""
    words = [scene.word(i) for i in range(len(scene.tokens)) if scene.same_sentence(i, mark.first)]
    for a, b, c in zip(words, words[1:], [*words[2:], ""], strict=False):
        if a in ("not", "isn't", "don't") and ({b, c} & {"doms", "muscular", "soreness", "muscle", "from"}):
            return True
    return False


_ACHES = frozenset({"ache", "aches", "aching"})


def _provoked(scene: Scene, mark: Mark) -> bool:
    """Hurts when something is done: `when i sit`, `every time`, `at night`."""
    after = {scene.word(i) for i in range(mark.end, min(mark.end + 8, len(scene.tokens)))}
    return bool(after & {"when", "whenever", "every", "sit", "sitting", "during", "night", "sleep", "walk", "walking"})


def _lasting(scene: Scene, mark: Mark) -> bool:
    """Sore for weeks, at rest, to the touch: no soreness of training."""
    words = {scene.word(i) for i in range(len(scene.tokens)) if scene.same_sentence(i, mark.first)}
    weeks = any("week" in t.word or "month" in t.word for t in scene.tokens if t.kind.name == "TIME")
    return bool(words & {"weeks", "months", "spot", "touch", "night", "pinpoint", "sharply"}) or weeks


def _sore(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    if "doms" in (scene.word(i) for i in range(mark.first, mark.end)):
        return Verdict.SORENESS, "called soreness"
    if spot is None:
        noun = scene.word(mark.first) in ("ache", "aches") and scene.word(mark.first - 1) in (
            "an",
            "a",
            "bit",
            "dull",
            "this",
            "that",
            "the",
        )
        if noun and not _earlier_training(scene, mark):
            return Verdict.PAIN, "an ache, in doubt"
        return Verdict.SORENESS, "sore, no place"
    if _soreness(scene, mark, spot, strong=False):
        return Verdict.SORENESS, "a trained muscle is sore"
    return Verdict.PAIN, f"sore where training does not make sore ({spot.place.name})"


def _burning(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    if spot is None or spot.place.name == "lung":
        return Verdict.EFFORT, "the burn of a set"
    if spot.place.tissue is Tissue.MUSCLE or spot.place.plural:
        inside = (
            scene.word(mark.first) == "burning"
            and scene.word(mark.end) in ("in", "sensation", "pain", "feeling", "down")
            and not spot.place.plural
        )
        if not inside:
            return Verdict.EFFORT, "a muscle burns in a set"
    if spot.place.tissue is Tissue.CHEST:
        return Verdict.EFFORT, "a chest burns in a set"
    return Verdict.PAIN, "burning in a joint"


def _hyperbole(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    if spot is None or spot.place.name == "body":
        return Verdict.TALK, "hyperbole"
    near = -1 <= mark.first - spot.end <= 4 or 0 <= spot.first - mark.end <= 1 or mark.first <= spot.first < mark.end
    if not near or spot.place.tissue is Tissue.MUSCLE or (spot.place.plural and spot.place.tissue is Tissue.MIXED):
        return Verdict.EFFORT, "hyperbole of a trained muscle"
    if mark.cue is Cue.WRECKED and _earlier_training(scene, mark):
        return Verdict.SORENESS, "hyperbole after training"
    return Verdict.PAIN, f"a {spot.place.name} is said to be in a bad way"


_WENT_WELL = frozenset(
    "well fine ok okay great good numb dead over up down past through to smoothly better straight smooth forward back".split()
)


def _hurt_before(scene: Scene, mark: Mark) -> bool:
    """`the niggle in my knee has gone`: it is the niggle that went."""
    cues = scene.of(Cue.PAIN, Cue.SHARP, Cue.SORE, Cue.WHISPER, Cue.CONDITION)
    return any(scene.same_sentence(m.first, mark.first) and 0 <= mark.first - m.end <= 6 for m in cues)


def _in_place(scene: Scene, mark: Mark, spot: Spot | None) -> tuple[Verdict, str]:
    if spot is None:
        return Verdict.TALK, "no place is said"
    if scene.word(mark.end - 1) in ("went", "gone") and (
        scene.word(mark.end) in _WENT_WELL or _hurt_before(scene, mark)
    ):
        return Verdict.TALK, "went somewhere"
    if scene.word(mark.first) == "rolled" and "out" in {scene.word(i) for i in range(spot.end, spot.end + 2)}:
        return Verdict.TALK, "rolled out"
    if mark.cue is Cue.JOINT_NOISE and spot.place.tissue is Tissue.MUSCLE:
        return Verdict.EFFORT, "muscles at work"
    if mark.cue is Cue.JOINT_NOISE and any(
        negated(scene, m) for m in scene.of(Cue.PAIN, Cue.HURT, Cue.PAINFUL) if scene.same_sentence(m.first, mark.first)
    ):
        return Verdict.DENIED, "a noise, and said not to hurt"
    low, high = (mark.end, spot.first) if spot.first >= mark.end else (spot.end, mark.first)
    if high - low > 5 or not scene.same_sentence(mark.first, spot.first):
        return Verdict.TALK, "too far from a place"
    if mark.cue in (Cue.STRAIN, Cue.QUALITY, Cue.BECAUSE) and high - low > 3:
        return Verdict.TALK, "too far from a place"
    if mark.cue is Cue.POP and scene.word(mark.first).startswith(("crack", "bang")) and spot.place.name == "back":
        return Verdict.TALK, "a back that was cracked"
    if (
        spot.place.tissue is Tissue.MUSCLE
        and spot.place.plural
        and mark.cue in (Cue.WHISPER, Cue.QUALITY, Cue.GAVE_WAY, Cue.BECAUSE)
    ):
        return Verdict.EFFORT, "muscles at work"
    if spot.place.name == "lung":
        return Verdict.EFFORT, "lungs at work"
    if scene.word(mark.first) == "can" and spot.place.tissue is Tissue.MUSCLE:
        return Verdict.EFFORT, "a muscle felt at work"
    if (
        spot.place.tissue in (Tissue.MUSCLE, Tissue.CHEST)
        and mark.cue is Cue.WHISPER
        and scene.word(mark.first) in ("felt", "feel", "feeling")
    ):
        return Verdict.EFFORT, "a muscle felt at work"
    return Verdict.PAIN, f"something wrong in a place ({spot.place.name})"
