"""Things that do as people do: `my phone's fainted twice`, `the wifi lost consciousness`, `it cannot catch its breath`.

Common practice, no source.
"""

from bot.notation.hurt.kit_words import KIT, MACHINES
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap

THINGS = word_set(
    """
    phone mobile laptop tablet computer pc watch smartwatch tracker app headphones earbuds earphones speaker
    speakers timer printer router wifi internet boiler car van ute telly tv fan screen battery lamp lamps bulb
    bulbs radio wireless stereo stopwatch projector monitor keyboard camera charger kettle fridge freezer hoover
    heater heating aircon engine motor scooter moped tyre tire machine website server browser signal broadband
    power electricity generator microphone mic torch recording audio toaster oven microwave mower lawnmower
    plant plants cactus fern robot drone console hairdryer satnav gps alarm earphone earbud
    modem tannoy jukebox blender dishwasher steering clutch pedal pedals brake
    brakes gearbox gearstick
    """
)
_RIDDEN = word_set("treadmill rower erg elliptical crosstrainer stepper bike")
"""Things that are also what somebody did: `rower then blacked out`; without an article they are none."""
_DOING = word_set(
    """
    has have had 's is was are were be been being keeps keep kept just totally completely again always
    cannot can't finally also both simply only basically practically literally about to a the having got getting
    started starts suddenly fully properly apparently went goes gone
    """
)
_NAMING = word_set(
    """
    the my a an this that our your his her their old new other damn bloody stupid poor wretched ancient cheap little
    big same gym work whole voice entire leg chest calf row squat bench cable smith
    """
)
_OPENS = word_set("and but then so because as when while cos though although since if or think thought say says hi hey")
_ONE = word_set("one two three both some all half")
_WHERE = word_set("in on at near by next behind beside over above under opposite from of")
_BARELY = word_set("nearly almost about")
"""What nobody says of a thing: `fan in the corner broken, nearly fainted`."""
_ARTICLES = word_set("the my our this that your to")
"""Behind where these name a place: `the lamp in the corner`, `the screen next to me`; not `heating on full`."""
_FAR = 6
"""Words between a thing and what it does, for where it stands: `the lamp in the squat corner blacked out`."""
_SELF = word_set("i i'm i've i'd me my we us")
_BESIDE_ME = word_set("to beside near behind by opposite")
_ITS = word_set("its it's their")
_BREATH = word_set("breath wind puff air lungs")


def is_of_a_thing(scene: Passage, mark: Mark) -> bool:
    """Whether a thing opens the clause and does what the mark says; not `sat in my car passed out`."""
    return _has_its_own(scene, mark) or any(_opens_clause(scene, at) for at in _things_before(scene, mark))


def is_of_kit(scene: Passage, mark: Mark) -> bool:
    """`the seat's collapsed`, `a pin popped out and won't hold`; not `on the seat collapsed`, `my pins collapsed`."""
    if _came_from(scene, mark) or _pops_itself(scene, mark):
        return True
    at = mark.first
    while at > 0 and scene.tokens[at].gap is Gap.NONE and scene.word(at - 1) in _DOING | _ALL_OF_IT:
        at -= 1
    if at == 0 or scene.tokens[at].gap is not Gap.NONE or scene.words(at - 1, mark.end) & _BARELY:
        return False
    if scene.word(at - 1) not in KIT or scene.words(at - 2, at) == {"my", "pins"}:
        return False
    if scene.words(mark.end, mark.end + 4) >= {"so", "did", "i"}:
        return False
    named = scene.ends(at - 1) or scene.word(at - 2) in _NAMING
    return named and _opens_clause(scene, at - 1)


def _came_from(scene: Passage, mark: Mark) -> bool:
    """`heard a pop from the stack and it won't move`; not `felt a pop`."""
    told = (
        scene.word(mark.end) == "from"
        and scene.word(mark.end + 1) in _ARTICLES
        and scene.word(mark.end + 2) in MACHINES
    )
    return told and not scene.clause_before(mark.first, 6) & {"felt", "feel", "feeling", "my"}


def _pops_itself(scene: Passage, mark: Mark) -> bool:
    """`spring's gone on the clip, it pops off every rep`: the `it` of a clause in which kit was named first."""
    if scene.word(mark.first - 1) != "it" or scene.spots:
        return False
    for at in range(mark.first - 2, -1, -1):
        if not scene.same_sentence(at, mark.first) or scene.word(at) in _SELF | {"felt", "feel"}:
            return False
        if scene.word(at) in KIT and (scene.ends(at) or scene.word(at - 1) in _NAMING) and _opens_clause(scene, at):
            return True
    return False


_ALL_OF_IT = word_set("half back")


def _has_its_own(scene: Passage, mark: Mark) -> bool:
    """`the machine wheezes and cannot catch its breath`."""
    own = any(scene.word(i) in _ITS and scene.word(i + 1) in _BREATH for i in range(mark.first, mark.end + 1))
    return (
        own
        and bool(scene.clause_before(mark.first, 9) & (THINGS | _RIDDEN | {"press"}))
        and not _is_told_of_me(scene, mark)
    )


def _is_told_of_me(scene: Passage, mark: Mark) -> bool:
    """Whether the client stands before the mark, other than in `next to me`, `my phone`."""
    low = mark.first
    while low > max(0, mark.first - 9) and scene.tokens[low].gap is Gap.NONE:
        low -= 1
    said = [i for i in range(low, mark.first) if scene.word(i) in _SELF - {"my"}]
    return any(scene.word(i - 1) not in _BESIDE_ME for i in said)


def _things_before(scene: Passage, mark: Mark) -> list[int]:
    """Where the thing stands that may do it: right before, or before the words of where it is."""
    at = mark.first
    if scene.words(at - 2, mark.end) & _BARELY:
        return []
    while at > 0 and scene.tokens[at].gap is Gap.NONE and scene.word(at - 1) in _DOING:
        at -= 1
    if at == 0 or scene.tokens[at].gap is not Gap.NONE:
        return []
    if scene.word(at - 1) in ("here", "there") and _is_thing(scene, at - 2) and scene.tokens[at - 1].gap is Gap.NONE:
        return [at - 2]  # `the wifi here keeps fainting`
    ghost = _gave_up_first(scene, at)
    if ghost is not None:
        return [ghost]
    if _is_thing(scene, at - 1) or (at == mark.first and scene.word(at - 1) in _RIDDEN):
        return [at - 1]
    for there in range(at - 1, max(0, at - _FAR), -1):
        if scene.tokens[there].gap is not Gap.NONE or scene.word(there) in _OPENS:
            return []
        if scene.word(there) in _WHERE and scene.word(there + 1) in _ARTICLES and _is_thing(scene, there - 1):
            return [] if _is_told_of_me(scene, Mark(at, at, None)) else [there - 1]
    return []


_AS_A_PERSON = word_set(
    "gave up the ghost lost it's mind will "
    "wheezed coughed spluttered sighed groaned whimpered shuddered juddered twice once then just"
)
_FAR_GHOST = 8


def _gave_up_first(scene: Passage, at: int) -> int | None:
    """The fan of `the fan gave up the ghost and fainted`: a thing that did as people do before; no `i` between."""
    if scene.word(at - 1) not in ("and", "then"):
        return None
    for there in range(at - 2, max(-1, at - _FAR_GHOST), -1):
        if scene.tokens[there + 1].gap is not Gap.NONE:
            return None
        if scene.word(there) not in _AS_A_PERSON | {"and"}:
            named = scene.word(there - 1) in _NAMING and there < at - 2
            return there if named and _is_thing(scene, there) else None
    return None


def _is_thing(scene: Passage, at: int) -> bool:
    ridden = scene.word(at) in _RIDDEN and scene.word(at - 1) in _NAMING
    noted = scene.word(at) == "note" and scene.word(at - 1) == "voice"
    return ridden or noted or scene.word(at) in THINGS


def _opens_clause(scene: Passage, thing: int) -> bool:
    at = thing
    while (
        at > 0
        and scene.tokens[at].gap is Gap.NONE
        and (scene.word(at - 1) in _NAMING | THINGS or (scene.word(at - 1) == "'s" and scene.word(at - 2) in THINGS))
    ):
        at -= 1
    if scene.word(at - 1) == "of" and scene.word(at - 2) in _ONE and scene.ends(at - 2):
        return True  # `one of the pins popped`
    return at == 0 or scene.tokens[at].gap is not Gap.NONE or scene.word(at - 1) in _OPENS


_HELD = word_set(
    """
    rubber handle handles rope ropes bar bars foam pad pads pedals brakes clutch wheel steering knurl knurling tape
    leather cable cables band bands machine stack plates lever song music track playlist film script voice
    """
)
_GRIPS = word_set("grip grips")
_LEFT_IN = word_set("left at all whatsoever anymore any more")
_POINTED = word_set("the this that these those them")
_WORN = word_set("old worn new cheap rubber foam plastic leather bar handle")


def is_in_a_thing(scene: Passage, mark: Mark) -> bool:
    """`no feeling left in the rubber`, `no feeling in these old handles`: of a thing, where no place is named.

    A grip is a thing only beside what it is a part of: not `no feeling left in the grip`.
    """
    at = mark.end
    while scene.word(at) in _LEFT_IN and not scene.ends(at):
        at += 1
    if scene.word(at) not in ("in", "from", "of", "through") or scene.word(at + 1) not in _POINTED or scene.spots:
        return False
    at += 2
    while scene.word(at) in _WORN and not scene.ends(at + 1) and scene.word(at + 1) in _HELD | _GRIPS:
        at += 1
    whole = scene.ends(at + 1) or scene.word(at + 1) in _AND
    held = scene.word(at) in _GRIPS and bool(scene.sentence_words(mark.first) & (_HELD | {"worn"}))
    return whole and (scene.word(at) in _HELD or held)


_AND = word_set("and so but anymore now on any")
