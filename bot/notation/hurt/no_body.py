"""Signs and hurts that are told of no body: what a song is about, how an old machine sounds, a shirt that got tight.

Common practice, no source.
"""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.kit_words import HAS_PARTS, KIT, MACHINES
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.of_things import THINGS
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap

_SELF = word_set("i i'm i've i'd i'll me my mine myself ma we us our")


def is_nobodys(scene: Passage, mark: Mark) -> bool:
    """Whether a mark tells of a story, of a thing's noise, or of what is worn; never where the client is in it."""
    return is_in_a_story(scene, mark) or _sounds_so(scene, mark) or _fits_tightly(scene, mark)


_STORIES = word_set(
    """
    song songs track tune lyric lyrics ballad film films movie series episode book novel podcast documentary chapter
    article album play poem story storyline plot soap drama comic joke painting poster
    """
)
_ABOUT = word_set("about called named titled entitled on")
_LED = word_set("a an the her his their some someone somebody people folk man woman guy girl having getting of and")
_NOUNS = word_set(
    "pain pains attack attacks failure injury injuries infection pressure clot clots blood stroke strokes"
)


def is_in_a_story(scene: Passage, mark: Mark) -> bool:
    """`a song about a broken heart`, `a book called bleeding chests`; not `a song came on, chest tight`."""
    if not scene.words(mark.first - _FAR_ABOUT - 2, mark.first) & _STORIES:
        return False
    placed = {i for s in scene.spots for i in range(s.first, s.end)}
    noun = bool(scene.words(mark.first, mark.end) & _NOUNS)
    for at in range(mark.first - 1, max(mark.first - _FAR_ABOUT, 0), -1):
        if scene.tokens[at + 1].gap is not Gap.NONE:
            return False
        if scene.word(at) in _ABOUT:
            led = scene.word(at - 1) in ("is", "was", "'s", "all", "just", "only", "it's")
            story = at - 1 - led
            return scene.word(story) in _STORIES and not scene.soft_gaps(story + 1, at + 1)
        if scene.word(at) not in _LED and not (noun and at in placed):
            return False
    return False


_FAR_ABOUT = 5
_NOISES = word_set(
    """
    squeaks squeaked squeals squealed creaks creaked groans groaned groaning moans moaned screams screamed screeches
    whines whined howls wheezes wheezed wheezing coughs coughed rattles rattled clicks clicked clunks grinds sounds
    sounded shrieks wails puffs pants gasps splutters spluttered sighs sighed creaking squeaking squealing moaning
    whining rattling clicking wobbles wobbled shakes shook limps looks looked
    """
)
_THEY = word_set("it it's its a an someone somebody they they're he she he's she's some grandad grandpa granny old")


def _sounds_so(scene: Passage, mark: Mark) -> bool:
    """`this old stack groans like it has a bad back`: a thing opens the clause, makes a noise, and is likened.

    Not `i wheezed like it was asthma`, `wheezing on the bike like someone with asthma`, `the bar clicks like my knee`.
    """
    low = mark.first
    while low > 0 and scene.tokens[low].gap is Gap.NONE and mark.first - low < _FAR_LIKENED:
        low -= 1
    for at in range(low, min(mark.first + 1, len(scene.tokens))):
        if scene.word(at) not in _NOISES or not _thing_opens(scene, low, at):
            continue
        like = next((i for i in range(at + 1, at + 4) if scene.word(i) == "like" or _as_if(scene, i)), None)
        if like is None or scene.word(like + 1) not in _THEY:
            continue
        if scene.words(like, mark.first) & _TURNS:
            return False
        return not scene.words(like, mark.end) & _SELF and scene.soft_gaps(at, max(mark.first, like) + 1) == 0
    return False


_FAR_LIKENED = 14
_TURNS = word_set("and but then so because plus also")


def _as_if(scene: Passage, at: int) -> bool:
    return scene.word(at) == "if" and scene.word(at - 1) == "as"


_BEFORE_THINGS = word_set(
    """
    t the this that these those my our your an a old ancient new other gym poor bloody damn cheap one of front rear back
    leg chest calf cable row squat weight big little whole rusty knackered last and but so
    """
)
_BESIDE = word_set("here there still always just now really next beside behind near in on at to by the corner window")
_STACKS = word_set("stack stacks floorboards floorboard gate step steps stairs rope barbell dumbbell bar pin")


def _thing_opens(scene: Passage, low: int, verb: int) -> bool:
    """Whether a clause that begins here has a thing for its subject, which does what the verb says."""
    at = verb - 1
    while at > low and scene.word(at) in _BESIDE | {"me", "us"}:
        at -= 1
    thing = scene.word(at) in KIT | MACHINES | HAS_PARTS | _STACKS
    return thing and at >= low and scene.words(low, at) <= _BEFORE_THINGS | KIT | MACHINES | HAS_PARTS


_WORN = word_set(
    "shirt tshirt t-shirt tee top jumper hoodie vest jacket sweater blouse suit uniform singlet tank polo fleece"
)
_IS = word_set("is 's was are were got getting gets")
_HOW = word_set("so too a bit very really getting got gotten well pretty quite little still bloody proper gone")
_ACROSS = word_set("across on round around at over in for")
_ILL = word_set(
    """
    breath breathe breathing pain pains hurt hurts ache aches sweat sweating dizzy sick faint jaw arm like sudden
    suddenly off loosened inside heart weird odd even without no not
    """
)


def _fits_tightly(scene: Passage, mark: Mark) -> bool:
    """`shirt's tight across the chest`: a garment is, where nothing else is said; not `shirt off, chest is tight`."""
    if mark.cue is None:
        return any(0 < mark.first - m.end <= _FAR_ACROSS and _fits_tightly(scene, m) for m in scene.of(Cue.TIGHT))
    if mark.cue is not Cue.TIGHT or scene.sentence_words(mark.first) & _ILL:
        return False
    at = mark.first - 1
    while scene.word(at) in _HOW | _IS:
        at -= 1
    if scene.word(at) not in _WORN or scene.word(mark.end) not in _ACROSS:
        return False
    if scene.words(at + 1, mark.first).isdisjoint(_IS):
        return False
    first = at
    while first > 0 and scene.tokens[first].gap is Gap.NONE and scene.word(first - 1) in _BEFORE_THINGS:
        first -= 1
    return first == 0 or scene.tokens[first].gap is not Gap.NONE


_FAR_ACROSS = 3
"""Words between `tight` and the place across which a garment is."""
_FOODS = word_set(
    "bread dough soup rice raisins beans pasta porridge oats couscous sponge cake pastry wood timber radiator puddle "
    "river sea tide crowd"
)


def is_swelling_of_a_thing(scene: Passage, mark: Mark) -> bool:
    """`front tyre's got a bulge, hot and swollen`, `a swollen, hot radiator`: a thing, and no place is named at all."""
    things = KIT | MACHINES | HAS_PARTS | THINGS | _FOODS
    first = mark.first
    while first > 0 and scene.same_sentence(first - 1, mark.first):
        first -= 1
    mine = [i for i in range(first, mark.end) if scene.word(i) == "my" and scene.words(i + 1, i + 3) & things]
    said = {scene.word(i) for i in range(first, mark.end) if i not in mine}
    if scene.spots or said & (_SELF | {"it", "them", "him", "her"}):
        return False
    behind = range(mark.end, min(mark.end + 3, len(scene.tokens)))
    if scene.word(mark.first - 1) in ("a", "the") and any(scene.word(i) in things for i in behind):
        return True
    subjects = [i for i in range(first, mark.first) if scene.word(i) in things and _opens(scene, i)]
    return bool(subjects)


def _opens(scene: Passage, at: int) -> bool:
    low = at
    while low > 0 and scene.tokens[low].gap is Gap.NONE and scene.word(low - 1) in _BEFORE_THINGS:
        low -= 1
    return low == 0 or scene.tokens[low].gap is not Gap.NONE
