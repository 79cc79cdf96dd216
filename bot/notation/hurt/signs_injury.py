"""Urgent signs of injury and of what is within: a pop with loss of function, a hot swollen calf, blood, dark urine."""

from collections.abc import Iterator

from bot.notation.hurt.alone import struck
from bot.notation.hurt.cues import Cue
from bot.notation.hurt.figures import is_of_a_drink
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.of_things import is_of_a_thing, is_of_kit
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import laughed
from bot.notation.hurt.places import HEADS, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sign import Sign, near, sign_of, stands, tears_skin
from bot.notation.hurt.spots import Spot

_NAMES_A_POP = word_set("a big loud something heard felt it proper massive horrible nasty sickening audible huge")


def _only_gone(scene: Passage, m: Mark) -> bool:
    """`a ping in the forearm, gone now`, `back has gone a bit twangy`: over, or how it became."""
    if scene.word(m.first) != "gone" or m.end - m.first > 1:
        return False
    return scene.ends(m.first) or (not scene.ends(m.end) and scene.word(m.end) in _BECAME)


_ITSELF = word_set("i i'm i've me myself my")
_BECAME = word_set("a bit all very quite so really slightly tight stiff funny weird rather again since")


def popped(scene: Passage) -> Iterator[Sign]:
    """A pop, and what no longer works."""
    losses = [
        m
        for m in scene.of(Cue.NO_FUNCTION, Cue.NO_STRENGTH, Cue.GAVE_WAY)
        if not negated(scene, m) and not _only_gone(scene, m)
    ]
    for pop in scene.of(Cue.POP):
        spot = next(iter(places_of(scene, pop)), None) or _cried(scene, pop)
        if spot is not None and spot.place.tissue is Tissue.ORGAN:
            spot = next((s for s in scene.spots if s.place.tissue is not Tissue.ORGAN), spot)
        if spot is None and not scene.words(pop.first - 3, pop.first) & _NAMES_A_POP:
            continue
        kit = (spot is None or not spot.typed) and (is_of_a_thing(scene, pop) or is_of_kit(scene, pop))
        if tears_skin(scene, pop.first) or not stands(scene, pop, spot):
            continue
        for loss in losses:
            if kit and scene.words(pop.end, loss.first + 1).isdisjoint(_ITSELF):
                continue  # `a pin popped out and it won't hold`; not `a cable snapped on me and i can't move`
            after = loss.first >= pop.end and loss.first - pop.end <= 24
            before = loss.end <= pop.first and pop.first - loss.end <= 14
            told = scene.sentence[spot.first if spot is not None and _cried(scene, pop) is spot else pop.first]
            if (after or before) and abs(scene.sentence[loss.first] - told) <= 1:
                yield sign_of("pop", (pop, loss, *((spot,) if spot else ())), spot)


def _cried(scene: Passage, pop: Mark) -> Spot | None:
    """The place that follows a pop which is a sentence of its own: `pop!! left knee. cannot put weight on it`."""
    alone = scene.ends(pop.end) or scene.sentence[pop.end] != scene.sentence[pop.first]
    return next((s for s in scene.spots if alone and 0 <= s.first - pop.end <= 1), None)


_BEARS = word_set(
    "knee ankle hip foot leg achilles calf hamstring hammy quad back groin shin heel thigh kneecap glute adductor spine"
)
_STANDS = word_set("stand walk weight bear put step move")


def loss_of_function(scene: Passage) -> Iterator[Sign]:
    """Hurt in a leg or the back that can no longer bear weight, or a joint that gave way and does not."""
    for loss in scene.of(Cue.NO_FUNCTION):
        if scene.word(loss.first) != "can't" or not scene.words(loss.first + 1, loss.end) & _STANDS:
            continue
        fell = [m for m, _ in struck(scene)]
        for hurt in (
            *scene.of(Cue.PAIN, Cue.HURT, Cue.SHARP, Cue.STRAIN, Cue.INJURED, Cue.SWOLLEN, Cue.GAVE_WAY),
            *fell,
        ):
            spot = next(iter(places_of(scene, hurt)), None)
            if spot is None or spot.place.plural or spot.place.name not in _BEARS | {"lower back"}:
                continue
            close = (
                abs(scene.sentence[loss.first] - scene.sentence[hurt.first]) <= 1 and abs(loss.first - hurt.first) <= 16
            )
            if (
                close
                and stands(scene, hurt, spot)
                and not scene.words(loss.end, loss.end + 7) & {"without", "far", "fast"}
            ):
                yield sign_of("no function", (hurt, loss, spot), spot)


_ONTO = word_set("on through onto")
_STRONGER = word_set("more extra heavier enough bar plate plates press curl extension machine sled")
_BALANCES = word_set("for longer long without balance balancing wobbling falling shaking eyes")


def bears_nothing(scene: Passage) -> Iterator[Sign]:
    """`can't put any weight on my left leg`, `cannot stand on my ankle`: hurt or not, it carries no longer."""
    for loss in scene.of(Cue.NO_FUNCTION):
        said = scene.words(loss.first, loss.end + 3)
        if scene.word(loss.first) != "can't" or not said & {"weight", "stand"}:
            continue
        for spot in scene.spots:
            between = scene.words(loss.first, spot.first)
            one = spot.place.name in _BEARS and not spot.place.plural and 1 <= spot.first - loss.first <= 9
            onto = bool(between & _ONTO) and not between & _STRONGER
            behind = scene.words(spot.end, spot.end + 4)
            if one and onto and stands(scene, loss, spot) and not behind & (_BALANCES | _STRONGER):
                yield sign_of("no function", (loss, spot), spot)


def calf(scene: Passage) -> Iterator[Sign]:
    """A swollen or hot calf, or a limb both hot and swollen."""
    for m in scene.of(Cue.SWOLLEN, Cue.HOT, Cue.THICK):
        for spot in places_of(scene, m)[:1]:
            pumped = spot.place.plural and scene.sentence_words(m.first) & {"pump", "pumped", "pumping"}
            if pumped or not near(scene, m, spot, 8) or not stands(scene, m, spot):
                continue
            others = [
                x
                for x in scene.of(Cue.HOT, Cue.SWOLLEN, Cue.THICK, Cue.PAIN, Cue.SHARP, Cue.HURT, Cue.PAINFUL, Cue.MARK)
                if x.first != m.first
                and near(scene, x, m, 8)
                and (x.cue is not Cue.MARK or scene.word(x.first) == "lump")
            ]
            if _clotting(scene, m, spot, others):
                yield sign_of("clot", (m, spot, *others[:1]), spot)


_BOTH = ({Cue.HOT, Cue.SWOLLEN}, {Cue.HOT, Cue.THICK}, {Cue.HOT, Cue.MARK})


_BIGGER = word_set("size thick twice double bulging ballooning fat fatter thicker wider inflated")


def _clotting(scene: Passage, m: Mark, spot: Spot, others: list[Mark]) -> bool:
    if spot.place.name == "calf":
        hot = scene.word(m.first) in ("hot", "red", "hotter") and not spot.place.plural
        big = not spot.place.plural or scene.words(m.first, m.end).isdisjoint(
            {"huge", "massive", "enormous", "bigger", "blew"}
        )
        size = scene.words(m.first, m.end) & _BIGGER
        if spot.place.plural and scene.word(m.first) in ("bigger", "larger"):
            return False
        if m.cue is Cue.THICK and not others:
            return bool(size) and not spot.place.plural
        return (m.cue is Cue.SWOLLEN and big) or hot or (bool(others) and not spot.place.plural)
    limb = spot.place.name in ("leg", "thigh", "arm", "shin", "hamstring", "hammy", "forearm")
    if spot.place.plural and scene.word(m.first) in ("bigger", "larger"):
        return False
    return limb and any({x.cue, m.cue} in _BOTH for x in others)


def blood_and_urine(scene: Passage) -> Iterator[Sign]:
    """Dark or bloody urine, blood coughed up."""
    for m in scene.of(Cue.BLOOD):
        if stands(scene, m):
            yield sign_of("blood", (m,), None)
    for m in scene.of(Cue.URINE):
        if scene.word(m.end) == "bottle":
            continue
        if scene.word(m.first) == "pissing" and "down" in scene.words(m.end, m.end + 2) and _rains(scene, m):
            continue
        near_by = [i for i in range(m.first, min(m.end + 6, len(scene.tokens))) if scene.same_sentence(i, m.first)]
        said_of = ("that", "this", "it", "and", "but")
        clear = [i for i in near_by if scene.word(i) in _CLEAR and scene.word(i - 1) not in said_of]
        for dark in scene.of(Cue.DARK, Cue.LOOKS):
            cleared = any(i < dark.first or scene.word(i) in _PALE for i in clear)
            if dark.first == m.first or cleared or not _coloured(scene, m, dark) or _drunk(scene, dark):
                continue
            if is_of_a_drink(scene, dark, m):
                continue
            if stands(scene, dark) and stands(scene, m):
                yield sign_of("urine", (m, dark), None)


def _rains(scene: Passage, m: Mark) -> bool:
    """`pissing down outside`: the weather."""
    return bool(scene.sentence_words(m.first) & {"rain", "raining", "outside", "weather", "wind", "storm", "drookit"})


_CLEAR = word_set("clear normal fine pale ok")
"""Words that clear the water of suspicion; not where they are asked: `is that ok?`, `brown like cola, normal?`"""
_PALE = word_set("clear pale")
"""Colours, which clear it behind the dark word too."""


def _drunk(scene: Passage, dark: Mark) -> bool:
    """`drank so much cola i need to pee`."""
    had = scene.words(dark.first - 2, dark.first)
    cup = scene.word(dark.first) in ("coffee", "tea", "cola", "coke") and had & _HAD and not had & {"like", "as"}
    eaten = scene.word(dark.first) in _FOOD and scene.sentence_words(dark.first) & _MEAL and not had & {"like", "as"}
    return bool(cup or eaten or scene.words(dark.first - 5, dark.first) & {"drank", "drink", "drinking", "drunk"})


_FOOD = word_set("gravy beet beetroot tomato ketchup soy")
_MEAL = word_set("dinner lunch breakfast tea salad soup roast ate eat eating sauce")
_HAD = word_set("had have need another after grab grabbed make made making")


def _coloured(scene: Passage, m: Mark, dark: Mark) -> bool:
    if dark.cue is Cue.DARK:
        return near(scene, m, dark, 7)
    return near(scene, m, dark, 3 if dark.first >= m.end else 1)


_MIXED_UP = word_set("the my it them those these that set sets rep reps number numbers")
"""What somebody confused who mixed it up, in English of a second language too: `i confused the sets`."""
_SLIPS = word_set("sorry wrong mistake meant instead was were not")
_ABOUT_PLAN = word_set("about by with on how what which as is over here why if whether lol again coach where today")
_EXCUSES = word_set("sorry apologies apologize apologise pardon excuse avoid any my no cause caused causing clear plan")
"""Words before `confusion` that is one between people."""
_SEEN = word_set("the your my his this that any it a message video plan app from past much")
_SMALL = word_set("toe finger thumb nose nail")


_MACHINES = word_set(
    "car ute van truck bike scooter laptop computer pc phone mobile app internet wifi router printer boiler heating "
    "treadmill playlist speaker watch bus train"
)
"""What breaks down, and is then said to have had a stroke or a heart attack."""


def _is_of_machine(scene: Passage, mark: Mark) -> bool:
    """`the ute had a stroke in the car park`: said of what breaks down, which does it itself."""
    fits = bool(scene.words(mark.first, mark.end) & {"stroke", "attack", "seizure", "fit"})
    owned = scene.word(mark.first - 2) in ("the", "my", "our", "this")
    led = scene.word(mark.first - 3) in ("on", "in", "off", "from", "at", "by", "with", "under", "onto")
    if fits and is_of_a_thing(scene, mark):
        return True  # `my car's battery had a heart attack`
    return fits and owned and not led and scene.word(mark.first - 1) in _MACHINES


def grave(scene: Passage) -> Iterator[Sign]:
    """What is grave by itself: seizure, dislocation, fracture, lost sight, confusion; bleeding in pregnancy."""
    for m in scene.of(Cue.GRAVE, Cue.VISION):
        if not stands(scene, m) or _not_meant(scene, m) or _is_of_anothers(scene, m):
            continue
        spot = next((s for s in scene.spots if near(scene, s, m, 4)), None) if m.cue is Cue.GRAVE else None
        if _is_of_machine(scene, m) or (spot is None and is_of_kit(scene, m)):
            continue
        yield sign_of("grave", (m,), None if spot is None or spot.place.name in {"heart", *HEADS} else spot)
    for m in scene.of(Cue.PREGNANT):
        for b in scene.of(Cue.BLEED):
            if abs(m.first - b.first) <= 14 and stands(scene, b):
                yield sign_of("pregnancy", (m, b), None)


def _is_of_anothers(scene: Passage, m: Mark) -> bool:
    """`the rower's arm popped out of its socket`: the only place there is another's, or a thing's."""
    here = [s for s in scene.spots if near(scene, s, m, 4)]
    return bool(here) and all(s.mine is False for s in here)


def _not_meant(scene: Passage, m: Mark) -> bool:
    """`nearly had a heart attack lol`, `confused about the plan`, `broke my toe`."""
    word = scene.word(m.first)
    if word == "heart":
        nearly = scene.words(m.first - 4, m.first) & {"nearly", "almost", "giving", "gave", "give"}
        return laughed(scene, m) or bool(nearly)
    if word in ("confused", "confusion"):
        mixed_up = scene.word(m.first - 1) == "i" and scene.word(m.end) in _MIXED_UP
        if mixed_up or (scene.word(m.first - 1) == "i" and scene.ends(m.end) and scene.words(0, m.first) & _SLIPS):
            return True
        excused = bool(scene.words(m.first - 5, m.first) & _EXCUSES)
        return excused or scene.word(m.end) in _ABOUT_PLAN or laughed(scene, m)
    if word in ("broke", "broken", "fractured", "fracture"):
        return not scene.spots or bool(scene.words(m.first, m.end) & _SMALL)
    return m.cue is Cue.VISION and m.end - m.first <= 2 and scene.word(m.end) in _SEEN
