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
from bot.notation.hurt.over import long_ago
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.people import hypothetical, is_anothers_place
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.said_words import (
    AT_WORK,
    BE,
    CHEST_WELL,
    HAD,
    LEADS,
    MUSCLES,
    NO_HURT,
    SMALL,
    SOME,
    SPOKEN_OF,
    UNHURT_NOUNS,
)
from bot.notation.hurt.spots import SIDES, Spot
from bot.notation.hurt.tokens import Gap, Kind


def said_of_joints(scene: Passage) -> list[tuple[Mark, Spot]]:
    """The joints of which something is said that is neither well nor a matter of form."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        muscle = spot.place.name in MUSCLES and not spot.place.plural
        joint = spot.place.name in SPOKEN_OF and (spot.mine is True or not spot.place.plural)
        if not joint and (not muscle or scene.sentence_words(spot.first) & AT_WORK):
            continue
        if scene.word(spot.end - 1) == "one":
            continue  # `knees fine, the left one was hard` may be of a set
        mark = _said(scene, spot, NO_HURT)
        if mark is not None and not _set_aside(scene, mark, spot):
            out.append((mark, spot))
    return out


def said_of_chest(scene: Passage, spot: Spot) -> Mark | None:
    """Something said of the chest that is no talk of the muscle at work: `got this dull thing in my chest`."""
    mark = _said(scene, spot, CHEST_WELL)
    return None if mark is None or scene.sentence_words(spot.first) & AT_WORK else mark


def _said(scene: Passage, spot: Spot, well: frozenset[str]) -> Mark | None:
    return (
        _felt(scene, spot) or _predicate(scene, spot, well) or _something_in(scene, spot) or _clause(scene, spot, well)
    )


def _felt(scene: Passage, spot: Spot) -> Mark | None:
    """`i felt the hip a wee bit`: a joint that is felt."""
    first = _named_from(scene, spot, 0)
    joint = spot.place.name in SPOKEN_OF and not spot.place.plural
    if not joint or first == spot.first or scene.word(first - 1) not in ("felt", "feel", "feeling"):
        return None
    then = scene.words(spot.end, spot.end + 4) - SMALL - set(SIDES)
    ends = all(scene.ends(i) or scene.word(i) in SMALL for i in range(spot.end, spot.end + 2))
    moved = scene.word(spot.end) in ("when", "whenever") and scene.word(spot.end + 1) == "i"
    then_on = scene.words(spot.end + 1, spot.end + 4) & _WHEN or scene.word(spot.end + 1).startswith("rep")
    when = moved or bool(scene.word(spot.end) in _WHEN_FIRST and then_on)
    ends, then = (True, then - _WHEN) if when else (ends, then)
    return Mark(first - 1, spot.end, None, spot.place) if ends and not then & NO_HURT else None


_WHEN_FIRST = word_set("on in during at from")
_WHEN = word_set("last first second third final rep reps set sets two one three bottom top couple few way up down")


def _set_aside(scene: Passage, mark: Mark, spot: Spot) -> bool:
    """Denied, another's, supposed; or a phrase of everyday talk stands there."""
    talk = any(m.first < mark.end and mark.first < m.end for m in scene.of(Cue.NEUTRAL, Cue.GONE, Cue.FINE, Cue.GOOD))
    over = negated(scene, mark) or long_ago(scene, mark)
    return talk or over or is_anothers_place(scene, spot) or hypothetical(scene, mark)


def _predicate(scene: Passage, spot: Spot, well: frozenset[str]) -> Mark | None:
    """`knee's having none of it`, `hip (left) felt like a rusty gate`."""
    at = spot.end
    while scene.word(at) in SIDES or scene.word(at) in ("still", "just", "really", "again"):
        at += 1
    if scene.word(at) not in BE or (scene.tokens[at].gap is not Gap.NONE and at == spot.end):
        return None
    end = at + 1
    while end < len(scene.tokens) and end - at <= 7 and scene.tokens[end].gap is Gap.NONE and not _turns(scene, end):
        end += 1
    said = scene.words(at + 1, end)
    plain = all(t.kind is Kind.WORD for t in scene.tokens[at + 1 : end])
    if not plain or _is_well(said, well) or not said - SMALL - set(SIDES):
        return None
    return Mark(spot.first, end, None, spot.place)


def _clause(scene: Passage, spot: Spot, well: frozenset[str]) -> Mark | None:
    """`elbow making a nuisance of itself`, `still got that shoulder`: a clause of a joint in which nothing is well."""
    low, high = spot.first, spot.end
    while low > 0 and scene.tokens[low].gap is Gap.NONE and not _turns(scene, low - 1):
        low -= 1
    while high < len(scene.tokens) and scene.tokens[high].gap is Gap.NONE and not _turns(scene, high):
        high += 1
    named = _named_from(scene, spot, low)
    if _outlasted(scene, low, named):
        return None
    said = scene.words(low, named) | scene.words(spot.end, high)
    if said & _NO_CLAUSE or not _is_meant(scene, spot, low) or scene.word(low) in _ASKS:
        return None
    plain = all(t.kind is Kind.WORD for t in scene.tokens[low:high]) and not _touched(scene, spot)
    if not plain or high - low > _LONG or _is_well(said, well) or not said - SMALL - _OWNERS - _LEFT_OUT - set(SIDES):
        return None
    return Mark(low, high, None, spot.place)


def _outlasted(scene: Passage, low: int, named: int) -> bool:
    """`grip went before the back did`: what gave out is named before, and the joint only what would have held."""
    before = [i for i in range(low + 2, named + 1) if scene.word(i) == "before"]
    return bool(before) and before[-1] >= named - 1 and bool(scene.words(low + 1, before[-1]) & _GAVE_OUT)


_GAVE_OUT = word_set(
    "went go goes gone gave give gives failed fails failing died dies quit quits gassed fried done packed cooked tired "
    "burned burnt burns stopped tapped"
)


def _named_from(scene: Passage, spot: Spot, low: int) -> int:
    """Where the name of a place begins: `my 'good' knee` is no knee that is well."""
    my = [i for i in range(max(low, spot.first - 3), spot.first) if scene.word(i) in ("my", "the", "me")]
    return my[-1] if my else spot.first


def _touched(scene: Passage, spot: Spot) -> bool:
    """`pausing on the chest`, `bar off my chest`: a chest that is only where something is."""
    at = spot.first - (2 if scene.word(spot.first - 1) in ("my", "the") else 1)
    if spot.place.name == "back" and scene.word(at) == "on":
        return True
    return spot.place.tissue is Tissue.CHEST and scene.word(at) in ("on", "to", "off", "at", "over", "from", "against")


def _is_meant(scene: Passage, spot: Spot, low: int) -> bool:
    """Whether the joint is the client's own, no first word of another thing's name (`shin guards`)."""
    at = spot.first - 1
    while at > low and scene.word(at) in SIDES:
        at -= 1
    chest = spot.place.tissue is Tissue.CHEST
    if spot.mine or scene.word(at) in _ONE_OF_MINE or scene.word(spot.first) == "my":
        return scene.word(spot.end) not in _THINGS
    then = scene.word(spot.end)
    tells = then in SMALL - {"to", "on", "in", "at", "with", "for"} or then.endswith(("ing", "ed")) or then in _DID
    return spot.place.name != "back" and tells and (not chest or then in _OF_A_CHEST)


_DID = word_set("did does made threw went gave said took told spoke lost began woke broke quit spat bit")
"""What a joint may have done."""
_OF_A_CHEST = word_set("a bit slightly kinda really very so rather still feels felt is was 's")
_ONE_OF_MINE = word_set("my the of that this old same me dodgy bad")
_THINGS = word_set("height width rest pad pads guard guards press joint position path angle support line")
_ASKS = word_set("should what how do does is are can could would which where why shall may might will any")
_NO_CLAUSE = word_set(
    """
    no not never didn't doesn't don't isn't wasn't aren't haven't hasn't nothing without barbell bar pad belt strap
    weight weights plate plates dumbbell dumbbells kettlebell load sandbag vest
    cracked crack focus focused think thinking remember cue cues thanks thank you your hit hits between stuff
    """
)
_LONG = 12
"""Words beyond which a clause says too much to be of a joint."""
_LEFT_OUT = word_set("leave leaving skip skipping do doing standing seated next week tomorrow")
"""Words of an exercise that is left out: `standing calf i leave for today`."""
_OWNERS = word_set("my the i i'm me we you your he she his her no")


def _is_well(said: frozenset[str], well: frozenset[str]) -> bool:
    """Whether any of the words, or a slip of it, says that the joint is well or is a matter of form."""
    return not said.isdisjoint(well) or any(_slipped(w, well) for w in said)


@lru_cache(maxsize=4096)
def _slipped(word: str, well: frozenset[str]) -> bool:
    if len(word) < 5 or SPELLER.is_known(word):
        return False
    near = [w for w in well if len(w) >= 4 and abs(len(w) - len(word)) <= 1 and OSA.distance(w, word) == 1]
    return any(len(w) > 5 or w[0] == word[0] for w in near)


def _turns(scene: Passage, index: int) -> bool:
    return scene.word(index) in ("but", "and", "because", "when", "then", "during", "after", "though", "while")


_INTO_IT = word_set("my the old bad me middle centre center front back of inside side part outside top bottom")


def _something_in(scene: Passage, spot: Spot) -> Mark | None:
    """`had a bit of a zing in my elbow`, `some bother with the left knee`."""
    low = spot.first - 1
    while low >= 0 and (scene.word(low) in SIDES or scene.word(low) in _INTO_IT):
        low -= 1
    named = spot.first - low >= 2 or scene.word(spot.first) == "my"
    if low < 1 or scene.word(low) not in LEADS or not named:
        return None
    noun = low - 1
    if scene.tokens[noun].kind is not Kind.WORD or scene.word(noun) in UNHURT_NOUNS | SMALL or noun < 1:
        return None
    before = noun - 1
    while before > 0 and scene.word(before) not in SOME and noun - before < 3 and not scene.ends(before):
        before -= 1
    lead = scene.words(before - 4, before)
    opens = before == 0 or scene.tokens[before].gap is not Gap.NONE
    if scene.word(before) not in SOME or scene.words(before, noun) & UNHURT_NOUNS or not (opens or lead & HAD):
        return None
    return Mark(before, spot.end, None, spot.place) if scene.same_sentence(before, spot.first) else None
