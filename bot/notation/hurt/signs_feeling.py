"""Urgent signs of lost feeling: numb, asleep, wooden, dead; and what is cold, stiff, tired or was sat on."""

from collections.abc import Iterator

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.of_things import is_in_a_thing, is_of_a_thing
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.people import laughed
from bot.notation.hurt.places import FACES, LIMBS, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sides import side_of
from bot.notation.hurt.sign import Sign, bounds, near, sign_of, stands
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Gap, Kind


def numbness(scene: Passage) -> Iterator[Sign]:
    """Anything numb."""
    for m in scene.of(Cue.NUMB):
        chained = [s for s in places_of(scene, m) if near(scene, s, m, 9)]
        spot = next((s for s in chained if s.mine is not False), next(iter(chained), None))
        if (
            stands(scene, m, spot)
            and not _cold(scene, m, spot)
            and not _is_number(scene, m)
            and (
                scene.word(m.end) not in ("cream", "spray", "gel", "er", "to")
                or "touch" in scene.words(m.end, m.end + 3)
            )
            and not is_of_mind(scene, m)
            and not is_of_a_thing(scene, m)
            and not is_in_a_thing(scene, m)
            and not (scene.word(m.first) == "numbing" and scene.sentence_words(m.first) & _CHILLED)
        ):
            yield sign_of("numb", (m, *((spot,) if spot else ())), spot)


_MIND = word_set("mind brain emotionally mentally")
_SAD = word_set("news funeral bereavement emotionally breakup grief")
_BORED = word_set("boredom bored boring tedium")
_BY = word_set("with from by of out for waiting watching listening staring scrolling looking in")
_DULL = _BORED | word_set(
    """
    waiting watching listening staring scrolling meetings meeting spreadsheets spreadsheet admin shock paperwork joy
    happiness relief pride excitement delight disbelief surprise gratitude embarrassment nerves love rage
    """
)


def is_of_mind(scene: Passage, m: Mark) -> bool:
    """`numb with boredom`, `bored numb`, `numb from watching lads text`, `numb since the funeral`; not a numb limb.

    Where a place is named beside it, only what stands right behind it tells: `numb with boredom, my leg day is late`.
    """
    if scene.words(m.first - 4, m.first) & _MIND or scene.word(m.first - 1) in _BORED:
        return True
    by = scene.word(m.end) in _BY
    if any(s.typed and near(scene, s, m, 9) for s in scene.spots):
        return by and scene.word(m.end + 1) in _BORED
    dull = by and bool(scene.words(m.end, m.end + 4) & _DULL)
    return dull or bool(scene.sentence_words(m.first) & (_SAD | _BORED))


def _is_number(scene: Passage, m: Mark) -> bool:
    """`hold num 2`, `num 1 60x5`: a short `number`."""
    counted = m.end < len(scene.tokens) and scene.tokens[m.end].kind in (Kind.NUMBER, Kind.SET)
    listed = scene.word(m.first) == "numb" and scene.words(m.end + 1, m.end + 4) & _LISTS and not scene.spots
    return counted and bool(scene.word(m.first) in ("num", "nub") or listed) and scene.tokens[m.end].gap is Gap.NONE


_LISTS = word_set("list plan sheet programme program menu")
_CHILLED = word_set("shower ice plunge bath cold spray")
_MUSCLE_WORK = word_set(
    "working engage engaging activate activating firing much contract contracting squeeze stretch fire burn really"
)
_PRAISE = word_set("killer brutal great session workout leg awesome good amazing beast savage love loved day best")


def no_feeling(scene: Passage) -> Iterator[Sign]:
    """`can't feel my foot`; not `can't feel my glutes working`, nor what is plainly gym talk."""
    for m in scene.of(Cue.NO_FEELING):
        meant = [s for s in places_of(scene, m) if near(scene, m, s, 5)][:1]
        if meant and bounds(scene, meant[0]):
            meant = [*(s for s in scene.spots if s.first >= m.end and near(scene, m, s, 5)), *meant]
        for spot in meant[:1]:
            if is_of_a_thing(scene, m):
                continue  # `my headphones lost feeling in the left ear`
            if _is_stiff(scene, m, spot) or _slept_on(scene, m, spot):
                continue
            if (
                stands(scene, m, spot)
                and not _gym_talk(scene, m, spot)
                and not sat_on(scene, m)
                and not _cold(scene, m, spot)
            ):
                yield sign_of("no feeling", (m, spot), spot)


def _slept_on(scene: Passage, m: Mark, spot: Spot) -> bool:
    """`baby asleep on my arm`: who sleeps there is not the arm."""
    return scene.word(m.end - 1) == "asleep" and scene.word(m.end) in ("on", "across") and spot.first > m.end


_STUFF = word_set("wood wooden rubber rubbery stone plastic cotton wool meat")
_SEATS = word_set("flight plane bus train car toilet loo couch sofa desk meeting chair film driving")


def _is_stiff(scene: Passage, m: Mark, spot: Spot) -> bool:
    """`back stiff like wood`, `legs like rubber`: stiff or tired, not without feeling."""
    if not scene.words(m.first, m.end) & _STUFF:
        return False
    both = spot.place.plural and side_of(scene, m, spot) is None
    trunk = spot.place.name not in LIMBS | FACES | {"heel", "knee"}
    return both or trunk or bool(scene.sentence_words(m.first) & {"stiff", "tight"})


_COLD = word_set("freezing garage snow winter weather frost frozen frosty")


def _cold(scene: Passage, m: Mark, spot: Spot | None) -> bool:
    """`can't feel my face, it's so cold outside`, `hands numb from the cold bar`."""
    if spot is None or spot.side is not None or not (spot.place.plural or spot.place.name in ("face", "nose")):
        return False
    if scene.sentence_words(m.first) & _COLD:
        return True
    after = range(m.end, min(m.end + 6, len(scene.tokens)))
    return any(scene.word(i) == "cold" and scene.word(i - 1) in ("the", "so", "this") for i in after)


def sat_on(scene: Passage, m: Mark) -> bool:
    """A limb that fell asleep under one who sat, and is fine since."""
    sleeps = scene.words(m.first, m.end) & {"asleep", "sleep", "sleeping"}
    words = scene.sentence_words(m.first)
    if not sleeps or not words & _SEATS or words & {"since", "still"}:
        return False
    return any(abs(scene.sentence[f.first] - scene.sentence[m.first]) <= 1 for f in scene.of(Cue.FINE, Cue.GOOD))


def _gym_talk(scene: Passage, m: Mark, spot: Spot) -> bool:
    limb = spot.place.name in ("leg", "arm")
    muscle = spot.place.tissue in (Tissue.MUSCLE, Tissue.CHEST) and not limb
    touched = scene.sentence_words(m.first) & {"touch", "touched", "touching", "sensation"}
    working = scene.words(m.first - 3, spot.end + 8) & (_MUSCLE_WORK | {"it"}) if not touched else frozenset()
    if muscle and (working or scene.words(spot.end, spot.end + 2) & {"in", "on"}):
        return True
    plural = spot.place.plural and spot.side is None
    if spot.place.name == "face" and laughed(scene, m):
        return True
    return plural and laughed(scene, m) and bool({t.word for t in scene.tokens} & _PRAISE)


_SOME_OF_THEM = word_set("two three last little half some ring")
_ENDS = word_set("hand foot finger toe thumb pinky")


def dead_limb(scene: Passage) -> Iterator[Sign]:
    """An arm that went dead; dead legs after squats are talk."""
    for m in scene.of(Cue.DEAD):
        for spot in [s for s in places_of(scene, m) if near(scene, m, s, 3)][:1]:
            between = scene.words(spot.end, m.first)
            went = between & word_set("went gone goes go suddenly just feels felt feeling going completely")
            went |= {w for w in between if not SPELLER.is_known(w)}
            plain = scene.word(m.first) in ("paralysed", "paralyzed", "lifeless")
            if scene.word(m.end) in (
                "honest",
                "serious",
                "sure",
                "certain",
                "level",
            ):  # `dead honest the achilles is a 7`
                continue
            went |= {"is"} if spot.place.name in _ENDS and m.first - spot.end in (0, 1) else set()
            if not spot.place.plural and spot.place.name in LIMBS:
                went |= scene.sentence_words(m.first) & {"since", "still"}
            some = spot.place.name == "toe" or scene.words(spot.first - 2, spot.first) & _SOME_OF_THEM
            went |= {"is"} if spot.place.name in ("toe", "finger") and some else set()
            tired = spot.place.plural and spot.side is None and not plain and not ("is" in went and some)
            if not tired and (went or plain or side_of(scene, m, spot)) and stands(scene, m, spot):
                yield sign_of("dead limb", (m, spot), spot)
