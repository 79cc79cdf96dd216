"""Urgent signs of fainting or near it; and what only sounds like it: sleep, power cuts, prices."""

from collections.abc import Iterator

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.of_things import is_of_a_thing, is_of_kit
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.sign import Sign, near, sign_of, stands
from bot.notation.hurt.tokens import Gap, Kind

_FAINT_OF = word_set(
    """
    pain twinge click niggle ache hope idea line pinch tingle clicking soreness discomfort smell memory sound trace
    whiff light mark chance possibility recollection interest outline noise taste signal music buzz hint praise glow
    """
)
_GAVE = word_set("form knees technique arch back bar ankle ankles arches position knee elbows chest core wrists")
_BEDS = word_set("bed couch sofa telly tv film movie")
_SLEEP = _BEDS | word_set("asleep slept sleep sleeping laughing nap baby log")
_AT_THE_GYM = word_set(
    "platform rack mat bar gym set rep squat squats bench deadlift deadlifts session floor training dizzy after during"
)
_SIGHTS = word_set("saw seeing seen read heard price bill laughing looked laughter")
_THOUGHTS = word_set("thinking looking reading seeing hearing sight thought")
_AT_A_SIGHT = word_set("when seeing reading looking at hearing laughing from with")
_VISIONS = word_set("stars spots black dots double")
_OUTAGE = word_set("power timer outage electricity bulb bulbs curtains curtain windows blinds fuse")
_DARK_BY_ITSELF = word_set("early outside sky timer app screen phone tv site website winter laptop page cut")
_BLACK_THINGS = word_set("kit gear clothes plates bumpers dumbbells bands bars band belt shoes leggings outfit rack")
_OF_A_ROOM = word_set(
    "lights it all went screen room gym everything seeing see saw black blacked blackout world sight music"
)


def fainting(scene: Passage) -> Iterator[Sign]:
    """Fainting or near it; plain dizziness counts (ACSM's table of major signs has it)."""
    for m in scene.of(Cue.FAINT):
        word = scene.word(m.first)
        slight = word in ("faint", "fainter") and m.end - m.first == 1 and scene.word(m.end) in _FAINT_OF
        form = word.startswith("collaps") and bool(scene.clause_before(m.first, 4) & _GAVE)
        form = form or (word == "collapse" and scene.word(m.end) == "of")  # `total collapse of morale`
        slept = _slept(scene, m, word)
        knocked = scene.word(m.end - 1) == "out" and word in ("knocked", "knock") and _counts(scene, m.end)
        if _of_a_thing(scene, m, word):
            continue
        if stands(scene, m) and not slight and not form and not slept and not knocked and not _of_a_sight(scene, m):
            yield sign_of("fainting", (m,), None)
    for m in scene.of(Cue.PALE):
        for laid in (*scene.of(Cue.LAID_DOWN), *(n for n in scene.of(Cue.PALE) if n.first >= m.end)):
            if near(scene, m, laid, 8) and stands(scene, m):
                yield sign_of("fainting", (m, laid), None)


_TEDIOUS = word_set(
    """
    playlist podcast film movie show lecture meeting book music song songs album commentary webinar audiobook series
    documentary sermon episode match game seminar podcasts
    """
)
_BY_IT = word_set("knocked knockd knocks put puts puttin bored had sent")
_DULL = word_set("boring dull tedious slow bored yawn snoozefest dreary long asleep lol haha")


def _of_a_thing(scene: Passage, m: Mark, word: str) -> bool:
    """`phone passed out again`, `this playlist knocked me out cold, so boring`."""
    if is_of_a_thing(scene, m) or (word.startswith("collaps") and is_of_kit(scene, m)):
        return True
    if scene.word(m.end - 1) != "cold" and scene.word(m.end - 1) != "out":
        return False
    at = m.first - 1
    if scene.word(at) in ("me", "us"):
        at -= 1
    told = scene.word(at) in _BY_IT or word in _BY_IT
    by = scene.word(at - (scene.word(at) in _BY_IT))
    return told and by in _TEDIOUS and bool(scene.sentence_words(m.first) & _DULL)


def _slept(scene: Passage, m: Mark, word: str) -> bool:
    """`passed out on the couch`, `knocked out last night`: asleep, where nothing says that it was in training."""
    if not word.startswith(("pass", "knock", "conk", "black", "lights", "out")):
        return False
    bed = next((i for i in range(m.end, m.end + 4) if scene.word(i) in _BEDS), None)
    if (bed is not None and not scene.soft_gaps(m.end, bed + 1) and scene.same_sentence(m.first, bed)) or (
        word == "out" and scene.words(m.end, m.end + 4) & {"by", "pm"}
    ):
        return True
    if scene.words(m.end, m.end + 5) & {"second", "seconds", "sec", "secs"}:
        return False  # `slept badly, passed out for a few seconds`
    hurts = next((i for i in range(m.end, m.end + 8) if i in scene.hurting), m.end + 8)
    around = scene.words(m.first - 3, hurts)
    if around & {"no", "didn't", "haven't", "without", "not", "little"} and around & {"sleep", "slept"}:
        return False  # `no sleep, i nearly passed out`
    return bool(around & _SLEEP) and not scene.sentence_words(m.first) & _AT_THE_GYM


def _of_a_sight(scene: Passage, m: Mark) -> bool:
    """`nearly fainted when i saw the price`; a room, a screen that went dark by itself."""
    told = scene.words(m.first - 3, m.first + 1) & {"nearly", "almost", "could", "would", "about", "like"}
    after = scene.words(m.end, m.end + 6)
    made = scene.words(m.first - 3, m.first) & {"makes", "make", "made"}
    seen = told and (after & _IN_TRAINING or scene.sentence_words(m.first) & _ILL)
    if (told or made) and scene.sentence_words(m.first) & {"price", "prices", "bill", "cost", "cheque"} and not seen:
        return True
    if told and scene.clause_before(m.first, 3) & _NEARLY and _saw_a_price(scene, m):
        return True
    if (told or made) and "total" in after:
        return True
    if told and scene.word(m.end) in ("when", "at", "hearing", "reading", "seeing") and not seen and _costs(scene, m):
        return True
    joking = after & {"laughing", "laughter"} or scene.words(m.end, m.end + 3) & _AT_A_SIGHT
    if told and joking and after & _SIGHTS and not after & _VISIONS:
        return True
    if made and scene.words(m.end, m.end + 4) & _THOUGHTS:
        return True
    if scene.word(m.first) not in _OF_A_ROOM:
        return False
    if scene.word(m.first) == "all" and scene.words(m.first - 6, m.end + 6) & _BLACK_THINGS:
        return True
    dark = scene.words(m.first - 3, m.end + 3) & _DARK_BY_ITSELF
    return bool(dark or scene.words(m.first - 4, m.end + 9) & _OUTAGE)


_SEEN = word_set("saw see seeing seen heard hearing read reading told opened looked looking checked checking")
_MONEY = word_set(
    "charge charges charged charging fee fees cost costs costing rent invoice quote quoted receipt deposit tax fare "
    "price prices priced bill bills mortgage premium statement balance payslip cheque ticket tickets"
)
_IN_TRAINING = word_set(
    "set rep reps floor deck ground rack bar squat squats deadlift deadlifts bench row rows press walking stairs up "
    "standing after still later now since dizzy woozy black again"
)


def _saw_a_price(scene: Passage, m: Mark) -> bool:
    """`when i saw what they charge for plates i almost fainted`; not `saw the bill, almost fainted on my last set`."""
    low = m.first
    while low > 0 and scene.same_sentence(low - 1, m.first) and m.first - low < _FAR_SEEN:
        low -= 1
    seen = [i for i in range(low, m.first) if scene.word(i) in _SEEN]
    behind = scene.words(m.end, m.end + 8) & _IN_TRAINING
    asked = any(scene.word(i) == "what" and scene.words(i, i + 3) & _WANTED for i in range(low, m.first))
    return bool(seen) and (asked or bool(scene.words(seen[0], m.first) & _MONEY)) and not behind


def _costs(scene: Passage, m: Mark) -> bool:
    """`nearly fainted when they told me the rent`."""
    said = scene.words(m.end, m.end + 9)
    return bool(said & _SEEN and said & _MONEY)


_WANTED = word_set("want wants asked asking ask paid pay charge charged charges cost costs")


_FAR_SEEN = 20
_NEARLY = word_set("nearly almost could would about like")
_ILL = word_set("black stars dizzy floor ambulance woozy spinning")


def _counts(scene: Passage, index: int) -> bool:
    """`knocked out 10 reps`, `knocked out squats 80 for ten`."""
    if index >= len(scene.tokens):
        return False
    if any(t.kind in (Kind.SET, Kind.NUMBER) and t.gap is Gap.NONE for t in scene.tokens[index : index + 4]):
        return True
    return scene.tokens[index].kind is not Kind.WORD or scene.word(index) in word_set(
        "some a my the few another those them reps"
    )
