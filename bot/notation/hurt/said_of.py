"""Whatever is said of a joint: `the knee was having none of it`, `a bit of a zing in my elbow`. In doubt it is pain.

The words for a joint that is not well are endless, those for one that is well, or that is placed or moved in an
exercise, are few: so these are known, and anything else said of a joint counts. Muscles, hands and feet are left out:
of them people talk for many reasons. Common practice, no source.
"""

from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.people import anothers, hypothetical
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import SIDES, Spot
from bot.notation.hurt.tokens import Gap, Kind

_SPOKEN_OF = word_set(
    """
    knee kneecap patella elbow wrist ankle achilles shin shoulder hip groin neck spine rib ribcage collarbone
    tailbone coccyx sacrum meniscus
    """
) | {"lower back", "back", "upper back", "mid back", "hip flexor", "shoulder blade", "rotator cuff", "ac joint"}
_MUSCLES = word_set("hamstring calf quad adductor")
"""Muscles of which one alone is spoken of where it hurts."""
_AT_WORK = word_set(
    """
    burn burning fire fired firing cooked toast fried smoked dead screaming squeeze contraction contracting growing
    bigger grow growth burned shaking shake shaky trembling pop popping failed failing failure activate activated
    activating engaging targeted hit focus curl curls raise raises press day machine pumping twitching
    """
)
_BE = word_set("'s is was feels felt feel seems seemed has had been are were got getting gets having keeps kept")
_SMALL = word_set(
    """
    a an the bit little wee touch tad slightly somewhat rather quite very really so super pretty still just also all
    again today now a-bit kinda kind sort of like been being having had got getting feeling feel felt some more too
    this that it to be as well being tbh really ever always definitely probably maybe fairly proper in on my me i is
    was 's has have gets get currently already actually both not quite only mine up at with for from there here
    """
)
_NO_HURT = word_set(
    """
    100% hundred percent good fine ok okay great well better best perfect alright solid happy fresh strong stronger
    normal healthy lovely
    nice amazing brilliant improved improving improvement healed recovered recovering sorted cured fixed behaving
    behaved cooperating quiet silent calm settled holding held coping stable steady loose looser free freer smooth
    smoother clear cleared ready comfortable supported safe secure protected ace spot top sound cool super superb
    fantastic excellent grand dandy decent pleased brand new gold magic champion peachy mint grateful thankful
    bulletproof

    tight tighter tightness stiff stiffer stiffness sore tired fatigued pumped warm warmed warming cold heavy weaker
    stretched limited limiting limits limit mobile immobile flexible inflexible restricted

    high higher low lower out in down straight bent flat neutral rounded rounding arched arching caving caved flared
    flaring rounds round caves cave flares flare drifts shifts moves move rises rise drops lifts lift bend turns turn
    drifting drift dropping dropped drop tucked tuck shifting shifted shift rising rose lifting lifted moving
    tracking working work worked engaged locked over above below under past behind touching next level parallel
    square braced packed extended extending flexed flexing bending bends straightening rotating rotated turning turned
    pointing close closer wide wider narrow forward forwards back backwards away apart together position place line
    angle width depth hinging hinge popping-up pressed against resting rested parked sliding first last second
    main focus weak-point point spotlight mobility warmups warmup rehab physio exercises exercise stretch stretches
    band pad machine sleeve sleeves belt wraps wrap strap straps brace tape taped strapped mark done finished next
    measured size inches cm brother sister mum dad checked seen scanned assessed looked operated replaced replacement
    surgery op year years birthday
    """
)
_UNHURT_NOUNS = _NO_HURT | word_set(
    """
    tension range motion movement strength stability control room sweat drive bend pump towel support confidence
    difference power flexibility warmth activation shrug rotation twist extension flexion break arch more less
    burn fatigue tiredness workout session set sets reps rep times time weight load plate plates weights much lot lots
    change snap kick throw crease height bounce speed lean slack stuff thing minute minutes day days week weeks bar
    massage roll foam ice heat gel cream lotion cushion cushions blanket sun hair tattoo scarf shave wind gym coach
    app
    """
)
_LEADS = word_set("in with from around at inside behind round")
_SOME = word_set("a an some slight slightly little small tiny this weird strange odd funny big proper constant")
_HAD = word_set(
    """
    had felt feel got getting get have with there's feeling is was there having noticed notice still again bit had
    suffered experiencing experienced slight of just only and but also
    """
)


def said_of_joints(scene: Passage) -> list[tuple[Mark, Spot]]:
    """The joints of which something is said that is neither well nor a matter of form."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        muscle = spot.place.name in _MUSCLES and not spot.place.plural
        joint = spot.place.name in _SPOKEN_OF and (spot.mine is True or not spot.place.plural)
        if not joint and (not muscle or scene.sentence_words(spot.first) & _AT_WORK):
            continue
        mark = _predicate(scene, spot) or _something_in(scene, spot) or _clause(scene, spot)
        if mark is not None and not _set_aside(scene, mark, spot):
            out.append((mark, spot))
    return out


def _set_aside(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """Denied, another's, supposed; or a phrase of everyday talk stands there."""
    talk = any(m.first < mark.end and mark.first < m.end for m in scene.of(Cue.NEUTRAL, Cue.GONE, Cue.FINE, Cue.GOOD))
    return talk or negated(scene, mark) or anothers(scene, mark, spot.mine) or hypothetical(scene, mark)


def _predicate(scene: Passage, spot: Spot) -> Mark | None:
    """`knee's having none of it`, `hip (left) felt like a rusty gate`."""
    at = spot.end
    while scene.word(at) in SIDES or scene.word(at) in ("still", "just", "really", "again"):
        at += 1
    if scene.word(at) not in _BE or (scene.tokens[at].gap is not Gap.NONE and at == spot.end):
        return None
    end = at + 1
    while end < len(scene.tokens) and end - at <= 7 and scene.tokens[end].gap is Gap.NONE and not _turns(scene, end):
        end += 1
    said = scene.words(at + 1, end)
    plain = all(t.kind is Kind.WORD for t in scene.tokens[at + 1 : end])
    if not plain or _well(said) or not said - _SMALL - set(SIDES):
        return None
    return Mark(spot.first, end, None, spot.place)


def _clause(scene: Passage, spot: Spot) -> Mark | None:
    """`elbow making a nuisance of itself`, `still got that shoulder`: a clause of a joint in which nothing is well."""
    low, high = spot.first, spot.end
    while low > 0 and scene.tokens[low].gap is Gap.NONE and not _turns(scene, low - 1):
        low -= 1
    while high < len(scene.tokens) and scene.tokens[high].gap is Gap.NONE and not _turns(scene, high):
        high += 1
    said = scene.words(low, spot.first) | scene.words(spot.end, high)
    if said & _NO_CLAUSE or not _is_meant(scene, spot, low) or scene.word(low) in _ASKS:
        return None
    plain = all(t.kind is Kind.WORD for t in scene.tokens[low:high])
    if not plain or high - low > _LONG or _well(said) or not said - _SMALL - _OWNERS - set(SIDES):
        return None
    return Mark(low, high, None, spot.place)


def _is_meant(scene: Passage, spot: Spot, low: int) -> bool:
    """Whether the joint is the client's own, no first word of another thing's name (`shin guards`)."""
    at = spot.first - 1
    while at > low and scene.word(at) in SIDES:
        at -= 1
    if spot.mine or scene.word(at) in _ONE_OF_MINE or scene.word(spot.first) == "my":
        return scene.word(spot.end) not in _THINGS
    then = scene.word(spot.end)
    tells = then in _SMALL - {"to", "on", "in", "at", "with", "for"} or then.endswith(("ing", "ed"))
    return spot.place.name != "back" and tells


_ONE_OF_MINE = word_set("my the of that this old same me dodgy bad")
_THINGS = word_set("height width rest pad pads guard guards press joint position path angle support line")
_ASKS = word_set("should what how do does is are can could would which where why shall may might will any")
_NO_CLAUSE = word_set(
    """
    no not never didn't doesn't don't isn't wasn't aren't haven't hasn't nothing without barbell bar pad belt strap
    cracked crack haha lol focus focused think thinking remember cue cues thanks thank you your hit hits between
    """
)
_LONG = 12
"""Words beyond which a clause says too much to be of a joint."""
_OWNERS = word_set("my the i i'm me we you your he she his her no")


def _well(said: frozenset[str]) -> bool:
    """Whether any of the words, or a slip of it, says that the joint is well or is a matter of form."""
    return not said.isdisjoint(_NO_HURT) or any(_slipped(w) for w in said)


@lru_cache(maxsize=4096)
def _slipped(word: str) -> bool:
    if len(word) < 5 or SPELLER.is_known(word):
        return False
    return any(abs(len(w) - len(word)) <= 1 and len(w) >= 5 and OSA.distance(w, word) == 1 for w in _NO_HURT)


def _turns(scene: Passage, index: int) -> bool:
    return scene.word(index) in ("but", "and", "because", "when", "then", "during", "after", "though", "while")


def _something_in(scene: Passage, spot: Spot) -> Mark | None:
    """`had a bit of a zing in my elbow`, `some bother with the left knee`."""
    low = spot.first - 1
    while low >= 0 and (scene.word(low) in SIDES or scene.word(low) in ("my", "the", "old", "bad", "me")):
        low -= 1
    if low < 1 or scene.word(low) not in _LEADS or spot.first - low < 2:
        return None
    noun = low - 1
    if scene.tokens[noun].kind is not Kind.WORD or scene.word(noun) in _UNHURT_NOUNS | _SMALL or noun < 1:
        return None
    before = noun - 1
    while before > 0 and scene.word(before) not in _SOME and noun - before < 3 and not scene.ends(before):
        before -= 1
    lead = scene.words(before - 4, before)
    opens = before == 0 or scene.tokens[before].gap is not Gap.NONE
    if scene.word(before) not in _SOME or scene.words(before, noun) & _UNHURT_NOUNS or not (opens or lead & _HAD):
        return None
    return Mark(before, spot.end, None, spot.place) if scene.same_sentence(before, spot.first) else None
