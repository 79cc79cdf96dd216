"""Hurts that are none, by what they are said of: a nuisance, a thing that makes a noise, a cry at the news,
a drink as dark as water that was passed.

Common practice, no source.
"""

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import EXERCISE_TAILS
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Kind

_SIZED = word_set(
    """
    one giant huge massive big long enormous proper right real total utter absolute complete bloody pure constant royal
    serious major walking genuine mighty colossal monumental
    """
)
_NOBODY = word_set(
    """
    it it's that that's this these those there there's here what which who i i'm me mine he's she's they one all still
    today now then everything set sets rep reps session workout lift lifting which
    """
)


def is_nuisance(scene: Passage, mark: Mark) -> bool:
    """`this car park is one giant headache`, `the new foreman's a right pain in the neck`: said of a thing or somebody.

    Not `it was a massive headache`, `there is a real pain in the neck`, `my shoulder's a right pain`.
    """
    at = mark.first - 1
    while scene.word(at) in _SIZED and not scene.ends(at):
        at -= 1
    led = scene.word(at) in ("a", "an") or (scene.word(at + 1) == "one" and at + 1 < mark.first)
    at -= scene.word(at) in ("a", "an")
    while scene.word(at) in ("just", "such", "always", "still", "turned", "out"):
        at -= 1
    copula = scene.word(at) in _NUISANCE
    at -= scene.word(at) == "been" and scene.word(at - 1) in ("has", "have", "had")
    if not led or not copula or scene.word(at - 1) in _NOBODY or at < 1:
        return False
    subject = scene.tokens[at - 1]
    hurts = any(s.first < mark.first and scene.same_sentence(s.first, at) for s in scene.spots)
    return (
        subject.kind is Kind.WORD
        and subject.word not in EXERCISE_TAILS
        and not hurts
        and scene.word(mark.end) not in _FELT_IN
    )


_NUISANCE = word_set("is was 's been being such are were")
_FELT_IN = word_set("when since after behind on during every whenever now")


def is_noise_likened(scene: Passage, mark: Mark) -> bool:
    """`the bench squeaks like it's in agony`, `machine screams like somebody in pain`: a thing that makes a noise."""
    cried = scene.word(mark.first - 1) == "in" and scene.word(mark.first - 2) in _NOISY
    if cried and scene.word(mark.first - 3) in _NOISY_THINGS:
        return True  # `the sled screamed in agony`
    near = range(max(0, mark.first - 6), mark.first)
    like = next((i for i in near if scene.word(i) == "like" or scene.words(i - 1, i + 1) == {"as", "if"}), None)
    if like is None or scene.word(like + 1) not in _SOMEBODY or not scene.same_sentence(like, mark.first):
        return False
    before = scene.clause_before(like, 9)
    if any(scene.word(i) == "me" and scene.word(i - 1) in _NEAR for i in range(max(0, like - 9), like)):
        before -= {"me"}  # `the treadmill next to me`
    return bool(before & _NOISY) and not before & _OF_ME and not scene.words(like, mark.first) & _OF_ME


_SOMEBODY = word_set("it it's its they they're someone somebody a an someone's he she")
_NOISY = word_set(
    """
    squeak squeaks squeaking squeaked squeal squeals squealing creak creaks creaking groan groans groaning moan moans
    moaning scream screams screamed screaming screech screeches screeching whine whines whining howl howls sounds
    sounding
    sounded shriek shrieks rattles wails
    """
)
_NOISY_THINGS = word_set(
    "sled machine press cable cables pulley bench door rack hinge treadmill rower bike bar chain fan radio tv stack "
    "bearings"
)
_NEAR = word_set("to beside near behind by opposite")
_OF_ME = word_set("i i'm i've me my mine ma")


def is_at_news(scene: Passage, mark: Mark) -> bool:
    """`ouch, just saw the score of the game`: a cry at what was read or seen."""
    behind = range(mark.end, min(mark.end + 9, len(scene.tokens)))
    seen = next((i for i in behind if scene.word(i) in _READ), None)
    return seen is not None and bool(scene.words(seen, seen + 7) & _NEWS)


_READ = word_set("saw seen seeing read reading heard hearing checked checking looked got opened")
_NEWS = word_set(
    """
    score scores result results game match news price prices bill bills invoice forecast email emails table total
    receipt traffic electric rent fuel petrol cost fee fees exam grade grades weather standings
    """
)


def is_of_a_drink(scene: Passage, dark: Mark, water: Mark) -> bool:
    """`this preworkout is dark as old pee`: what is drunk is likened to it."""
    return likens_a_drink(scene, water.first) and dark.first <= water.first


def likens_a_drink(scene: Passage, water: int) -> bool:
    """`the coffee here is the colour of dark pee`, `this is dark as old pee`; not `coffee, the colour of my pee`."""
    like = next((i for i in range(water - 1, water - 6, -1) if scene.word(i) in _ALIKE), None)
    if like is None or scene.words(like, water) & _MINE or not scene.same_sentence(like, water):
        return False
    before = scene.clause_before(like, 9)
    drinks = [i for i in range(max(0, like - 9), like) if scene.word(i) in _DRINKS and scene.word(i - 1) == "my"]
    told = {w for w in before & _WATERS if w != "my" or not drinks}
    return bool(before & _DRINKS) and not told


_ALIKE = word_set("as like colour color shade tint")
_MINE = word_set("my mine me i")


_DRINKS = word_set(
    """
    preworkout pre-workout pre coffee tea shake smoothie drink squash juice cola beer cordial puddle tap kombucha
    stout ale lager latte espresso mocha chai soup gravy broth stew paintwork cooler varnish pond
    river lake sea canal sky carpet wall fountain soda lemonade supplement electrolytes brew espresso cider
    bcaas eaas creatine paint oil
    """
)
_WATERS = word_set("my mine pee wee piss urine toilet loo peed went came comes it's it")


def is_oath(scene: Passage, mark: Mark) -> bool:
    """`bleedin freezing in here`, `bleeding knackered`: it only strengthens; not where a place is named."""
    if scene.sentence_words(mark.first) & _WOUNDS:
        return False
    named = scene.word(mark.first) == "bleeding" and mark.end - mark.first == 1 and not scene.ends(mark.end)
    return (
        named
        and scene.word(mark.end) in _STRENGTHENED
        and not any(scene.same_sentence(s.first, mark.first) for s in scene.spots)
    )


_WOUNDS = word_set("cut cuts blood nose wound wounds gash scab plaster plasters tissue tissues bandage stitches")
_STRENGTHENED = word_set(
    """
    freezing cold hot boiling roasting baltic busy knackered shattered exhausted tired wrecked
    useless lovely brilliant great marvellous awful terrible typical obvious ridiculous stupid daft mad
    packed rammed heaving late early ages miles starving hungry hell nora cheek gym rack machine bar bench bike
    treadmill radio music traffic weather rain kids dog bus train car van alarm phone app nuisance idiot idiots
    miracle fantastic amazing impossible love loved hate fuming raging
    """
)


def is_spilt(scene: Passage, at: int) -> bool:
    """`spilt cola down my shorts, looks like an accident`: only what it looks like, and what was spilt is told."""
    said = scene.sentence_words(at)
    looks = scene.word(at - 1) in ("an", "a", "the", "i'd") and scene.words(at - 5, at) >= {"like"}
    looks = looks and bool(scene.words(at - 6, at) & _LOOKS)
    return looks and bool(said & _SPILT) and bool(said & _POURED) and not said & _UNNOTICED


_LOOKS = word_set("look looks looked looking")
_SPILT = word_set("spilt spilled spill spilling dropped poured knocked tipped splashed leaked sat burst opened")
_POURED = word_set(
    "cola coke coffee tea water juice shake squash drink beer milk soup lemonade smoothie bottle shaker cup preworkout"
)
_UNNOTICED = word_set("feel felt notice noticed know knew control help stop hold peed weed wee pee")
