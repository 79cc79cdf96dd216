"""Urgent signs of head and nerves: sudden headache, loss of feeling, strength, speech or control."""

from collections.abc import Iterator

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of, side_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.people import laughed
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sign import Sign, near, sign_of, stands
from bot.notation.hurt.spots import Spot, implied

_BURSTING = word_set("splitting exploding exploded explode explodes thunderclap bursting burst")


def headache(scene: Passage) -> Iterator[Sign]:
    """A headache that is sudden or severe; a plain one is pain, not urgent."""
    heads = [(m, implied(m)) for m in scene.of(Cue.HEADACHE)]
    for m in scene.of(Cue.PAIN, Cue.SHARP, Cue.HURT, Cue.PRESSURE):
        heads += [(m, s) for s in places_of(scene, m)[:1] if s.place.name == "head"]
    for m, spot in heads:
        if not stands(scene, m, spot):
            continue
        mild = any(near(scene, x, m, 3) for x in scene.of(Cue.LITTLE))
        if scene.words(m.first, m.end) & _BURSTING and not mild:
            yield sign_of("headache", (m,), spot)
        for x in scene.of(Cue.SEVERE, Cue.SUDDEN):
            if near(scene, x, m, 7) and not (mild and x.cue is Cue.SEVERE):
                yield sign_of("headache", (m, x), spot)


def numbness(scene: Passage) -> Iterator[Sign]:
    """Anything numb."""
    for m in scene.of(Cue.NUMB):
        spot = next((s for s in places_of(scene, m) if near(scene, s, m, 9)), None)
        mind = scene.words(m.first - 4, m.first) & {"mind", "brain", "emotionally", "mentally"}
        if stands(scene, m, spot) and scene.word(m.end) not in ("cream", "spray", "gel", "er", "to") and not mind:
            yield sign_of("numb", (m, *((spot,) if spot else ())), spot)


_MUSCLE_WORK = word_set(
    "working engage engaging activate activating firing much contract contracting squeeze stretch fire burn really"
)
_PRAISE = word_set("killer brutal great session workout leg awesome good amazing beast savage love loved day best")


def no_feeling(scene: Passage) -> Iterator[Sign]:
    """`can't feel my foot`; not `can't feel my glutes working`, nor what is plainly gym talk."""
    for m in scene.of(Cue.NO_FEELING):
        for spot in [s for s in places_of(scene, m) if near(scene, m, s, 5)][:1]:
            if stands(scene, m, spot) and not _gym_talk(scene, m, spot):
                yield sign_of("no feeling", (m, spot), spot)


def _gym_talk(scene: Passage, m: Mark, spot: Spot) -> bool:
    limb = spot.place.name in ("leg", "arm")
    muscle = spot.place.tissue in (Tissue.MUSCLE, Tissue.CHEST) and not limb
    working = scene.words(m.first - 3, spot.end + 8) & (_MUSCLE_WORK | {"it"})
    if muscle and (working or scene.words(spot.end, spot.end + 2) & {"in", "on"}):
        return True
    plural = spot.place.plural and spot.side is None
    return plural and laughed(scene, m) and bool({t.word for t in scene.tokens} & _PRAISE)


def dead_limb(scene: Passage) -> Iterator[Sign]:
    """An arm that went dead; dead legs after squats are talk."""
    for m in scene.of(Cue.DEAD):
        for spot in [s for s in places_of(scene, m) if near(scene, m, s, 3)][:1]:
            between = scene.words(spot.end, m.first)
            went = between & word_set("went gone goes go suddenly just feels felt feeling going completely")
            went |= {w for w in between if not SPELLER.is_known(w)}
            plain = scene.word(m.first) in ("paralysed", "paralyzed", "lifeless")
            tired = spot.place.plural and spot.side is None and not plain
            if not tired and (went or plain or side_of(scene, m, spot)) and stands(scene, m, spot):
                yield sign_of("dead limb", (m, spot), spot)


def weakness(scene: Passage) -> Iterator[Sign]:
    """Sudden or one-sided weakness of a limb, or of both legs beside pain; not a weak day."""
    for m in scene.of(Cue.WEAK):
        for spot in places_of(scene, m)[:1]:
            if not near(scene, spot, m, 5) or not stands(scene, m, spot):
                continue
            sudden = [x for x in scene.of(Cue.SUDDEN) if near(scene, x, m, 6)]
            went = scene.words(spot.end, m.first) & {"went", "gone", "goes", "suddenly"}
            beside = [x for x in scene.of(Cue.PAIN, Cue.SHARP, Cue.MARK, Cue.NUMB, Cue.HURT) if near(scene, x, m, 14)]
            one = (side_of(scene, m, spot) or sudden or went) and not spot.place.plural
            legs = spot.place.plural and spot.place.name in ("leg", "foot") and (sudden or beside)
            grip = spot.place.name == "hand" and (beside or sudden or went)
            if one or legs or grip:
                yield sign_of("weakness", (m, spot), spot)


def no_strength(scene: Passage) -> Iterator[Sign]:
    """`no strength in my left hand`, `can't move my arm`; a leg that gives way."""
    for m in scene.of(Cue.NO_STRENGTH):
        reach = 16 if scene.word(m.end) in ("them", "it", "both") else 4
        for spot in [s for s in places_of(scene, m) if near(scene, m, s, reach)][:1]:
            organ = spot.place.tissue in (Tissue.CHEST, Tissue.ORGAN)
            hands = spot.place.name == "hand" and "strength" in scene.words(m.first, m.end)
            one = not spot.place.plural or hands
            if stands(scene, m, spot) and one and not organ and not _only_limited(scene, spot):
                yield sign_of("no strength", (m, spot), spot)
    for m in scene.of(Cue.GAVE_WAY):
        for spot in [s for s in places_of(scene, m) if near(scene, m, s, 4)][:1]:
            limb = spot.place.name in ("leg", "foot") and not spot.place.plural
            if limb and stands(scene, m, spot) and scene.word(m.end) != "on":
                yield sign_of("gave way", (m, spot), spot)


def _only_limited(scene: Passage, spot: Spot) -> bool:
    """`can't lift my arm without pain`, `can't bend my knee as much`."""
    after = scene.words(spot.end, spot.end + 8)
    return bool(after & word_set("without much further higher heavier more fully properly")) and "all" not in after


def stroke(scene: Passage) -> Iterator[Sign]:
    """A drooping face, slurred or lost speech."""
    for m in scene.of(Cue.DROOP):
        sags = scene.word(m.first).startswith(("droop", "sag"))
        if sags and not any(s.place.name in ("face", "eye", "lip") for s in scene.spots):
            continue
        if stands(scene, m) and not (scene.word(m.first) == "can't" and laughed(scene, m)):
            spot = next((s for s in scene.spots if near(scene, s, m, 4) and s.place.tissue is Tissue.ORGAN), None)
            yield sign_of("stroke", (m,), spot)


_FRIGHT = word_set("shat shit crapped pissed pissing pooed pooped messed")


def control(scene: Passage) -> Iterator[Sign]:
    """Loss of bladder or bowel control, and numbness or tingling in the saddle."""
    for m in scene.of(Cue.CONTROL):
        joking = laughed(scene, m) or scene.words(m.first - 2, m.first) & {"nearly", "almost"}
        fright = scene.word(m.first) in _FRIGHT
        laughing = scene.sentence_words(m.first) & {"laughing", "laughter"}
        if stands(scene, m) and not (joking and fright) and not laughing:
            spot = next((s for s in scene.spots if s.place.name == "bladder"), None)
            yield sign_of("control", (m,), spot)
    for m in scene.of(Cue.SADDLE):
        for n in scene.of(Cue.NUMB, Cue.NO_FEELING, Cue.MARK):
            tingles = n.cue is not Cue.MARK or scene.word(n.first).startswith(("tingl", "pins", "prick"))
            if tingles and near(scene, m, n, 6) and stands(scene, n):
                spot = next((s for s in scene.spots if m.first <= s.first < m.end), None)
                yield sign_of("saddle", (m, n), spot)
