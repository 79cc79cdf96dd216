"""Urgent signs of head and nerves: sudden headache, drooping face, lost speech or control."""

from collections.abc import Iterator

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.figures import is_nuisance
from bot.notation.hurt.links import head_of, places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.of_things import is_of_a_thing
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import laughed
from bot.notation.hurt.places import FACES, HEADS, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sign import Sign, near, sign_of, stands
from bot.notation.hurt.signs_feeling import is_of_mind, sat_on
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Kind

_BURSTING = word_set(
    """
    splitting exploding exploded explode explodes thunderclap bursting burst bursts thunder lightning explosion bomb
    erupted axe gunshot
    """
)
_STRUCK = _BURSTING - {"splitting"}


def _inside(scene: Passage, spot: Spot) -> bool:
    return bool(scene.words(spot.first - 3, spot.first) & word_set("in inside behind of through my across"))


def headache(scene: Passage) -> Iterator[Sign]:
    """A headache that is sudden or severe; a plain one is pain, not urgent."""
    heads = [(m, head_of(scene, m)) for m in scene.of(Cue.HEADACHE)]
    for m in scene.of(Cue.PAIN, Cue.SHARP, Cue.HURT, Cue.PRESSURE):
        heads += [(m, s) for s in places_of(scene, m)[:1] if s.place.name in HEADS]
    for m in scene.of(Cue.SEVERE):
        if scene.words(m.first, m.end) & _STRUCK and not laughed(scene, m):
            heads += [
                (m, s) for s in scene.spots if s.place.name in HEADS and _inside(scene, s) and near(scene, m, s, 5)
            ]
    for m, spot in heads:
        if not stands(scene, m, spot) or is_nuisance(scene, m):
            continue
        mild = any(near(scene, x, m, 3) and not scene.soft_gaps(x.end, m.first + 1) for x in scene.of(Cue.LITTLE))
        if scene.words(m.first, m.end) & _BURSTING and not mild:
            yield sign_of("headache", (m,), spot)
        for x in scene.of(Cue.SEVERE, Cue.SUDDEN):
            if near(scene, x, m, 7) and not (mild and x.cue is Cue.SEVERE):
                yield sign_of("headache", (m, x), spot)


def stroke(scene: Passage) -> Iterator[Sign]:
    """A drooping face, slurred or lost speech."""
    for m in scene.of(Cue.DROOP):
        sags = scene.word(m.first).startswith(("droop", "sag"))
        if sags and not any(s.place.name in FACES for s in scene.spots):
            continue
        if is_of_a_thing(scene, m):
            continue  # `the voice note sounds drunk`
        if stands(scene, m) and not (scene.word(m.first) == "can't" and laughed(scene, m)):
            spot = next((s for s in scene.spots if near(scene, s, m, 4) and s.place.tissue is Tissue.ORGAN), None)
            yield sign_of("stroke", (m,), spot)


def _laughed_so(scene: Passage, m: Mark) -> bool:
    """`laughed so hard that i nearly wet myself`; not `laughed it off but wet myself`."""
    if not scene.words(m.first - 3, m.first) & {"nearly", "almost", "practically", "about", "could", "just"}:
        return False
    low = max(0, m.first - 12)
    laughed_at = [i for i in range(low, m.first) if scene.word(i) in ("laughed", "giggled", "cackled", "chuckled")]
    return any(scene.word(i + 1) in ("so", "that", "until", "till", "hard") for i in laughed_at)


_LOOKS = word_set("look looks looked looking")
"""What only looks so: `water everywhere, looks like i wet myself`."""
_FRIGHT = word_set("shat shit crapped pissed pissing pooed pooped messed")


_WENT_ABOUT = word_set(
    "ran run running jogged cycled cycling rode biked walked walking trained training lifted squatted worked swam came"
)
_WET_OTHERWISE = word_set("rain rained raining drizzle puddle river sea pool swim swimming shower washing wash laundry")
_EMBARRASSED = word_set(
    """
    accident oops leak leaked pee peed wee weed hold feel felt notice noticed embarrassed embarrassing mortified again
    warning without suddenly ended finished found stood standing sat sitting left laughed sorry tmi stop stopped help
    control idea know knew then last after ashamed awkward
    """
)


def _only_wore(scene: Passage, m: Mark) -> bool:
    """`ran home in wet shorts`: what was worn on the way; not `stood there in wet shorts, couldn't hold it`."""
    worn = scene.word(m.first - 1) == "in" and scene.word(m.first) in ("wet", "soaked")
    said = scene.sentence_words(m.first)
    before = scene.clause_before(m.first, 6)
    alone = scene.ends(m.first - 1) or scene.tokens[m.first - 2].kind is not Kind.WORD
    return worn and bool(before & _WENT_ABOUT or said & _WET_OTHERWISE or alone) and not said & _EMBARRASSED


def control(scene: Passage) -> Iterator[Sign]:
    """Loss of bladder or bowel control, and numbness or tingling in the saddle."""
    for m in scene.of(Cue.CONTROL):
        joking = laughed(scene, m) or scene.words(m.first - 2, m.first) & {"nearly", "almost"}
        fright = scene.word(m.first) in _FRIGHT
        laughing = scene.sentence_words(m.first) & {"laughing", "laughter"} or _laughed_so(scene, m)
        likened = scene.words(m.first - 4, m.first) & _LOOKS
        if stands(scene, m) and not (joking and fright) and not laughing and not likened and not _only_wore(scene, m):
            spot = next((s for s in scene.spots if s.place.name == "bladder"), None)
            yield sign_of("control", (m,), spot)
    for m in scene.of(Cue.WET):
        for n in scene.of(Cue.UNNOTICED):
            sweat = scene.sentence_words(m.first) & {"sweat", "sweating", "sweaty", "rain", "water", "shower"}
            if near(scene, m, n, 10) and stands(scene, m) and not sweat:
                yield sign_of("control", (m, n), None)
    for m in scene.of(Cue.SADDLE):
        for n in scene.of(Cue.NUMB, Cue.NO_FEELING, Cue.MARK):
            tingles = n.cue is not Cue.MARK or scene.word(n.first).startswith(("tingl", "pins", "prick"))
            if (
                tingles
                and near(scene, m, n, 6)
                and stands(scene, n)
                and not sat_on(scene, n)
                and not is_of_mind(scene, n)
            ):
                spot = next((s for s in scene.spots if m.first <= s.first < m.end), None)
                yield sign_of("saddle", (m, n), spot)
