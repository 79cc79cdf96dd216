"""Words that mean a hurt only beside a place: something off, strained, clicking; and a place alone as a reason."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.soreness import is_hurting_of_soreness
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Gap, Kind
from bot.notation.hurt.verdict import Judged, Verdict

_THINGS = word_set("bar barbell pad belt machine harness vest strap sandbag dumbbell kettlebell plate stance grip")
_WENT_WELL = word_set(
    "well fine ok okay great good numb dead over up down past through to smoothly better straight smooth forward back"
)
_WORKING = (Cue.WHISPER, Cue.QUALITY, Cue.GAVE_WAY, Cue.BECAUSE, Cue.JOINT_NOISE, Cue.SWOLLEN)
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
    if _moved(scene, mark, spot):
        return Verdict.TALK, "it went or was rolled somewhere"
    if mark.cue in (Cue.JOINT_NOISE, Cue.POP) and _said_not_to_hurt(scene, mark):
        return Verdict.DENIED, "a noise, and said not to hurt"
    low, high = (mark.end, spot.first) if spot.first >= mark.end else (spot.end, mark.first)
    if sum(t.kind is Kind.NUMBER for t in scene.tokens[low:high]) >= 2:
        return Verdict.TALK, "sets told between"
    far = 14 if scene.word(mark.first - 1) == "it" and spot.end <= mark.first else 3 if mark.cue in _CLOSE else 5
    if high - low > far or not scene.same_sentence(mark.first, spot.first):
        return Verdict.TALK, "too far from a place"
    if mark.cue is Cue.POP and (spot.place.name == "ear" or _pops_something(scene, mark, spot)):
        return Verdict.TALK, "a pop that is none of a joint"
    if mark.cue is Cue.POP and scene.word(mark.first).startswith(("crack", "bang")) and spot.place.name == "back":
        return Verdict.TALK, "a back that was cracked"
    if _at_work(scene, mark, spot):
        return Verdict.EFFORT, "muscles at work"
    return Verdict.PAIN, f"something wrong in a place ({spot.place.name})"


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
    return scene.word(mark.first) == "rolled" and "out" in scene.words(spot.end, spot.end + 2)


def _said_not_to_hurt(scene: Passage, mark: Mark) -> bool:
    if scene.sentence_words(mark.first) & {"painless", "painlessly", "painfree"}:
        return True
    hurts = scene.of(Cue.PAIN, Cue.HURT, Cue.PAINFUL)
    if mark.cue is Cue.POP and scene.words(mark.end, mark.end + 4) & {"nice", "good", "great", "lovely", "satisfying"}:
        return True
    return any(scene.same_sentence(m.first, mark.first) and negated(scene, m) for m in hurts)


_EASED = word_set("mobility stretch stretching stretched warm warmup massage nice nicely foam rolling yoga finally")


def _at_work(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """Muscles that are felt, tremble or complain in a set."""
    muscle = spot.place.tissue is Tissue.MUSCLE
    if spot.place.name == "lung" or (muscle and mark.cue is Cue.JOINT_NOISE):
        return True
    if muscle and ((spot.place.plural and mark.cue in _WORKING) or scene.word(mark.first) == "can"):
        return True
    if "loose" in scene.words(mark.first, mark.end) and (
        spot.place.plural or scene.sentence_words(mark.first) & _EASED
    ):
        return True
    felt = mark.cue is Cue.WHISPER and scene.word(mark.first) in ("felt", "feel", "feeling")
    return felt and (muscle or spot.place.tissue is Tissue.CHEST)


_CUT = word_set(
    """
    bin binned skip skipped skipping stop stopped stopping cut drop dropped left bailed bail swapped modified lighter
    light rest resting no
    """
)


_SIMILES_OF_WELL = word_set(
    """
    new butter dream magic million steel rock normal silk charm before ready best nothing clockwork working helping
    stretching better good great fine usual always should supposed warm loose pump pumped fire gold
    """
)


def likened(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`kneecap feels like it's sliding`: a joint likened to something that is not well."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        feels = scene.word(spot.end) in ("feels", "felt", "feeling", "feel") and scene.word(spot.end + 1) == "like"
        joint = spot.place.tissue in (Tissue.JOINT, Tissue.MIXED) and not spot.place.plural
        first = spot.end + 2
        if not (feels and joint) or first >= len(scene.tokens) or scene.tokens[first].kind is not Kind.WORD:
            continue
        well = scene.words(first, first + 6) & _SIMILES_OF_WELL
        mark = Mark(spot.end, spot.end + 2, None, spot.place)
        if not well and spot.mine is not False and not negated(scene, mark):
            out.append((mark, spot))
    return out


_FELL = word_set("dropped drop dropping landed fell fallen rolled")
_CARELESS = word_set("ball smoothly gently softly lightly")


def struck(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`dropped a 2.5 on my big toe`."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        low = spot.first - (1 if spot.side else 0) - 1
        on = scene.word(low) in ("my", "me", "the") and scene.word(low - 1) in ("on", "onto")
        fell = [i for i in range(max(0, low - 7), low) if scene.word(i) in _FELL and scene.same_sentence(i, low)]
        if on and fell and spot.place.tissue is not Tissue.CHEST and not scene.words(fell[-1], low) & _CARELESS:
            out.append((Mark(fell[-1], spot.end, None, spot.place), spot))
    return out


_NOTHING_ELSE = word_set(
    """
    it's it is 's its only just mainly mostly my the old bad same usual again today this time still yeah sorry tonight
    oh ah and but i'm me that that's left right there got have i of mine afraid
    """
)


def named_alone(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`it's only my knee`, `same old hip again`: a joint is named, and nothing else."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        joint = spot.place.tissue in (Tissue.JOINT, Tissue.MIXED) and not spot.place.plural
        low, high = spot.first, spot.end
        while low > 0 and scene.tokens[low].gap is Gap.NONE:
            low -= 1
        while high < len(scene.tokens) and scene.tokens[high].gap is Gap.NONE:
            high += 1
        around = scene.words(low, spot.first) | scene.words(spot.end, high)
        only = around <= _NOTHING_ELSE and around & {"it's", "it", "same", "usual", "again", "only", "mine", "got"}
        if joint and only and around & {"my", "old", "bad", "again", "that", "mine"} and spot.mine is not False:
            out.append((Mark(low, high, None, spot.place), spot))
    return out


def bare_reasons(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`had to bin the squats, knee`: a joint alone in its clause, after something was cut."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        start = spot.first - (1 if spot.side else 0) - (1 if scene.word(spot.first - 1) == "my" else 0)
        joint = spot.place.tissue in (Tissue.JOINT, Tissue.MIXED) and not spot.place.plural
        if start < 1 or not joint or not scene.ends(spot.end) or not scene.ends(start):
            continue
        if not scene.same_sentence(start - 1, start):
            continue
        first = scene.sentence.index(scene.sentence[start])
        before = scene.words(first, start)
        had_to = {"had", "to"} <= before and not before & {"rush", "go", "leave", "shorten", "share"}
        if (before & _CUT or had_to) and not {"no", "time"} <= before:
            out.append((Mark(spot.first, spot.end, None, spot.place), spot))
    return out
