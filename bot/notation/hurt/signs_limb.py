"""Urgent signs of a limb that hangs, drags, lets go, or does not do what it is told, however that is put."""

from collections.abc import Iterator

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.over import long_ago
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import anothers, laughed, supposed
from bot.notation.hurt.places import LIMBS
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sides import side_of
from bot.notation.hurt.sign import Sign, near, sign_of, stands
from bot.notation.hurt.signs_strength import fails
from bot.notation.hurt.spots import Spot

_WEIGHTS = word_set("bar barbell weight weights handle dumbbell kettlebell db kb bell plate plates rope grip set rep")


def hanging(scene: Passage) -> Iterator[Sign]:
    """`foot slaps the floor`, `hand just lets go`, `tripping over my foot`, `drop everything with my left hand`."""
    for m in scene.of(Cue.LIMP):
        meant = places_of(scene, m) if _of_it(scene, m) else ()
        for spot in {*(s for s in scene.spots if near(scene, m, s, 4)), *meant}:
            legs = spot.place.name in ("knee", "ankle") and "hold" in scene.words(m.first, m.end)
            limb = (spot.place.name in LIMBS or legs) and fails(scene, m, spot)
            over = scene.word(m.first).startswith(("trip", "stumbl", "drag"))
            if scene.word(m.end - 1) == "go" and "let" in scene.word(m.end - 2):
                limb = limb and spot.place.name in ("hand", "finger", "thumb")
            before = spot.end <= m.first or m.first <= spot.first < m.end or (over and spot.first - m.end <= 2)
            if limb and before and stands(scene, m, spot) and not _tired(scene, m, spot):
                yield sign_of("limp", (m, spot), spot)
    for m in scene.of(Cue.DROPS):
        for spot in [s for s in scene.spots if near(scene, m, s, 6) and s.place.name in ("hand", "arm", "finger")][:1]:
            if stands(scene, m, spot):
                yield sign_of("drops", (m, spot), spot)


def _of_it(scene: Passage, m: Mark) -> bool:
    """`can't lift my foot, it just flops`: what hangs is the limb named before."""
    at = m.first - 1
    while scene.word(at) in ("just", "keeps", "only", "always", "kinda"):
        at -= 1
    return scene.word(at) in ("it", "they")


def _tired(scene: Passage, m: Mark, spot: Spot) -> bool:
    """A limb that let go at the end of a set, a posture of an exercise; useless arms without a side."""
    words = scene.sentence_words(m.first)
    if scene.word(m.first) == "useless":
        return side_of(scene, m, spot) is None and not words & {"since", "still", "suddenly"}
    return bool(words & _WEIGHTS) and not words & {"since", "suddenly", "still", "keeps", "anymore"}


_DISTAL = word_set("hand wrist finger pinky thumb foot toe arm leg forearm")
_STRONG_NOT = word_set(
    "can't won't wont refuses refuse lost lose losing no zero nothing stopped unable fails failing without"
)
_ANY_NOT = _STRONG_NOT | word_set("doesn't don't isn't not never didn't hardly barely")
_DOES = word_set(
    """
    move lift raise grip hold squeeze close open clench straighten bend curl wiggle function button write type carry
    """
)
_FINE = word_set("button write type")
"""What only fingers do: of these many may fail at once."""
_OBEYS = word_set(
    "obey obeys respond responds answer answers listen listens listening strength force power feeling sensation"
)
_OTHERS = word_set(
    """
    further higher heavier fully properly without pain hurt hurts hurting tight stiff sore much cramp path speed fast
    drive form technique deeper lower rom range
    """
)


def unable(scene: Passage) -> Iterator[Sign]:
    """A limb, a negation and what a limb does, in any order: `the fingers do not obey me`."""
    for spot in scene.spots:
        if spot.place.name not in _DISTAL or spot.mine is False:
            continue
        low, high = max(0, spot.first - 7), min(len(scene.tokens), spot.end + 7)
        here = [i for i in range(low, high) if scene.same_sentence(i, spot.first)]
        words = scene.words(here[0], here[-1] + 1)
        obeys, does = words & _OBEYS, words & _DOES
        told = (obeys and words & _ANY_NOT) or (does and words & _STRONG_NOT)
        if not told or words & (_OTHERS | _WEIGHTS):
            continue
        acts = [i for i in here if scene.word(i) in (_OBEYS if obeys else _DOES)]
        mark = Mark(acts[0], acts[0] + 1, Cue.NO_STRENGTH)
        nots = [i for i in here if scene.word(i) in _ANY_NOT and 0 <= acts[0] - i <= 4]
        fine = obeys or words & _FINE
        one = not spot.place.plural or (fine and spot.place.name in ("finger", "toe")) or spot.side is not None
        if (
            nots
            and one
            and not anothers(scene, mark, spot.mine)
            and not supposed(scene, mark)
            and not long_ago(scene, mark)
            and not laughed(scene, mark)
        ):
            yield sign_of("no strength", (mark, spot), spot)
