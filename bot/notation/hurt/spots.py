"""The places named in a passage, each with its owner and its side."""

from dataclasses import dataclass, replace

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.kit_words import HAS_PARTS, KIT
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.places import BACK_BEFORE, EXERCISE_TAILS, NOT_MY_BACK, Place, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.scene import HURTING, Scene
from bot.notation.hurt.tokens import Gap, Kind
from bot.training.report import Side

SIDES = dict.fromkeys(("left", "l", "lh", "lhs", "lefthand"), Side.LEFT) | dict.fromkeys(
    ("right", "r", "rh", "rhs", "righthand"), Side.RIGHT
)
"""The words for a side."""
_BETWEEN_SIDE = word_set(
    """
    lower upper inner outer front back rear of my the side hand inside outside mid sided big medial lateral poor old
    bad dodgy sore hamstring hammy quad bottom top part corner half edge base tip ball whole underside heel small big
    ring index middle
    """
)
_NOT_A_SIDE_AFTER = word_set(
    """
    now after in it at before away where the to for me you there here well and so as i we my about when then work
    home right
    """
)
_COPULA = word_set(
    """
    is was 's felt feels feeling has really still so pretty bit slightly started starts been got gets a did does do
    kinda sorta lowkey proper legit defo def actually definitely always now also just properly
    bloody fully totally deffo genuinely honestly kindof
    """
)
_TELLS_A_PLACE = word_set("'s is was felt feels feeling went has are doesn't didn't isn't wasn't")
_RETURNED = word_set("is 's was come came comes coming go went get got be been i'm going breath are it right pain i")
"""Words before `back` that make it `again`."""


_TRAINED = (Tissue.MUSCLE, Tissue.CHEST, Tissue.MIXED)
_OF_IT = word_set("on of in my the left right")


@dataclass(frozen=True, slots=True)
class Spot:
    """A place named in the message."""

    first: int
    end: int
    place: Place
    side: Side | None
    mine: bool | None
    """Whose it is: the client's, another's (False), or not said."""
    doubts: int
    """Words of it that are another real word, read as a slip."""
    solid: bool
    """Whether a telling word of it stands as typed."""
    typed: bool
    """Whether every word of it stands as typed."""


def find_spots(scene: Scene) -> tuple[Spot, ...]:
    """The places, in order; exercises (`leg press`) and the adverb `back` are none."""
    out: list[Spot] = []
    for m in scene.place_marks:
        if m.place is None or (out and m.first < out[-1].end) or _is_exercise(scene, m):
            continue
        if m.place.name == "back" and not _is_my_back(scene, m):
            continue
        if m.place.name in ("side", "back") and scene.word(m.end) == "of":
            continue
        if m.place.name == "waist" and scene.word(m.end) in ("down", "up"):
            continue
        if m.place.name == "side" and out and _tells_which(scene, m, out[-1]):
            continue
        if m.end - m.first == 1 and m.place.name in _PARTS_OF_THINGS and _of_a_thing(scene, m.end):
            continue
        if _of_furniture(scene, m):
            continue
        before = scene.tokens[m.first - 1] if m.first and scene.tokens[m.first].gap is Gap.NONE else None
        if before is not None and before.kind is Kind.SET and before.word.endswith("each"):
            continue
        out.append(Spot(m.first, m.end, m.place, _side(scene, m), _mine(scene, m.first), m.doubts, m.solid, m.typed))
    sided = [_with_side(scene, s, then) for s, then in zip(out, (*out[1:], None), strict=False)]
    return tuple(sorted([*sided, *_ones(scene, sided)], key=lambda s: s.first))


def _ones(scene: Scene, spots: list[Spot]) -> list[Spot]:
    """`knees felt crunchy and the right one hurt`, `left foot tingles, the right one I can't feel`: one of the pair."""
    out: list[Spot] = []
    for first in range(1, len(scene.tokens) - 1):
        if scene.word(first) not in SIDES or scene.word(first + 1) != "one":
            continue
        before = [s for s in spots if s.end <= first and first - s.end <= _OF_THE_PAIR]
        pair = before[-1] if before else None
        other = pair is not None and pair.side not in (None, SIDES[scene.word(first)])
        other = other and not scene.words(first - 3, first) & _COMPARING
        if pair is not None and (other or (pair.place.plural and pair.side is None)):
            one = replace(pair.place, plural=False)
            out.append(replace(pair, first=first, end=first + 2, place=one, side=SIDES[scene.word(first)]))
    return out


_COMPARING = word_set("than double twice like as to from with of half size vs versus compared")
"""Words that compare a place with the other of its pair, which itself is well."""
_OF_THE_PAIR = 12
"""Words between a pair and the one of it that is spoken of."""


def _tells_which(scene: Scene, m: Mark, before: Spot) -> bool:
    """`the elbow thing is back, right side, maybe 4/10`: which of the two it is, in a clause of its own."""
    first = m.first - (scene.word(m.first - 1) in SIDES)
    sided = first < m.first or scene.word(m.first) in SIDES
    alone = scene.tokens[first].gap is Gap.SOFT and scene.ends(m.end)
    return sided and alone and scene.same_sentence(before.first, m.first) and first - before.end <= _OF_THE_PAIR


_PARTS_OF_THINGS = word_set("neck foot head heart leg arm shoulder body mouth lip face eye nose hand heel toe")
_OF_WHAT = word_set("the a an this that each every")


def _of_a_thing(scene: Scene, end: int) -> bool:
    """`neck of the bottle`, `foot of the bed`; not `sole of the foot`, `base of the neck`."""
    if scene.word(end) != "of" or scene.word(end + 1) not in _OF_WHAT:
        return False
    return not any(m.first in (end + 2, end + 3) for m in scene.place_marks)


def _with_side(scene: Scene, spot: Spot, then: Spot | None) -> Spot:
    """`toes on my right foot` are the right ones."""
    if spot.side is not None or then is None or then.side is None or not 2 <= then.first - spot.end <= 4:
        return spot
    leads = scene.word(spot.end) in ("on", "of", "in") and scene.words(spot.end, then.first) <= _OF_IT
    return replace(spot, side=then.side) if leads else spot


def implied(mark: Mark) -> Spot | None:
    """The place that a cue means by itself: a headache's head."""
    if mark.place is None:
        return None
    return Spot(mark.first, mark.end, mark.place, None, None, mark.doubts, mark.solid, mark.typed)


def _is_exercise(scene: Scene, m: Mark) -> bool:
    if m.end >= len(scene.tokens):
        return False
    tail = scene.tokens[m.end]
    if tail.word in ("pump", "pumps") and scene.word(m.end + 1) in ("turned", "became", "turns", "went"):
        return False
    noise = tail.word.startswith("crunch") and m.place is not None and m.place.tissue in (Tissue.JOINT, Tissue.MIXED)
    if tail.word == "presses" and scene.word(m.end + 1) == "me":
        return False  # `in the chest presses me`
    return tail.kind is Kind.WORD and tail.gap is Gap.NONE and tail.word in EXERCISE_TAILS and not noise


_WANTS = word_set(
    "wants want wanted need needs text texts texted message messaged call called ring rang email let get got"
)
"""Before `me back` these bring the client back, or an answer."""
_BENT = word_set("bent bends bending pushed pulled pushing pulling leaning lean leaned tilted folded twisted swung")


def _is_my_back(scene: Scene, m: Mark) -> bool:
    before, after = scene.word(m.first - 1), scene.word(m.end)
    alone = m.first > 0 and scene.tokens[m.first].gap is Gap.SOFT and scene.ends(m.end)
    if alone and not any(x.place is not None and x.place.tissue in _TRAINED for x in scene.place_marks if x is not m):
        return True
    mine = "my" in (before, scene.word(m.first - 2))
    wanted = before == "me" and scene.word(m.first - 2) in _WANTS
    if m.end - m.first == 1 and not mine and (wanted or before in _BENT):
        return False
    if m.end - m.first > 1 or mine or (before in BACK_BEFORE and after not in ("to", "at")):
        return True
    bent = any(x.place is not None and x.end == m.first for x in scene.place_marks) and not scene.ends(m.first)
    if (before in _RETURNED and not scene.ends(m.first)) or bent:
        return False
    if before in ("of", "in") and any(x.end == m.first - 1 and x.cue in HURTING for x in scene.marks):
        return True
    hurts = {x.first for x in scene.marks if x.cue in HURTING}
    if m.end in hurts or (m.end + 1 in hurts and after in _COPULA):
        return after not in ("to", "at", "again")
    opens = scene.ends(m.first) or before in ("and", "or", "on", "with", "but", "through")
    starts = opens and m.end < len(scene.tokens)
    return after in _TELLS_A_PLACE or (after not in NOT_MY_BACK and starts)


def _mine(scene: Scene, first: int) -> bool | None:
    for index in range(first - 1, max(first - 6, -1), -1):
        if scene.tokens[index + 1].gap is Gap.HARD:
            return None
        word = scene.word(index)
        if word in ("my", "me", "mine"):
            return True
        if word in ("his", "her", "their"):
            return False
        if word == "it's" and _has_it(scene, index):
            return False
        if word == "'s":
            apart = scene.tokens[index + 1].gap is not Gap.NONE  # `it was my brother's, left knee hurts`
            another = any(x.end == index for x in scene.of(Cue.OTHER)) or scene.word(index - 1) in HAS_PARTS
            return False if not apart and another else None
        if word not in _BETWEEN_SIDE and word not in SIDES:
            return None
    return None


_LOSES = word_set(
    "lost loses losing broke breaks snapped cracked popped blew blown bent dropped lose off bust busted shed out"
)
_NOBODY = word_set("i i'm i've me my mine myself")


def _has_it(scene: Scene, its: int) -> bool:
    """`one of the dumbbells lost its head` (typed either way); not `again it's my knee`, `my hip popped its socket`."""
    before = scene.clause_before(its, 9)
    return scene.word(its - 1) in _LOSES and bool(before & (HAS_PARTS | KIT)) and not before & _NOBODY


_FURNITURE = word_set("chair chairs stool stools table tables sofa couch bed desk tripod shelf")
_ITS_PARTS = word_set("leg legs arm arms foot feet back")
_BREAKS = word_set(
    "snapped broke broken breaks cracked gave fell came wobbles wobbled buckled collapsed bent split went"
)
_OWNED = word_set("the a my this that one old new other")


def _of_furniture(scene: Scene, m: Mark) -> bool:
    """`the chair leg snapped under me`; not `fell off the chair leg broke`, where the chair ends what was before."""
    at = m.first - 1
    if scene.word(m.first) not in _ITS_PARTS or scene.word(at) not in _FURNITURE or scene.word(m.end) not in _BREAKS:
        return False
    if scene.tokens[m.first].gap is not Gap.NONE:
        return False
    while at > 0 and scene.tokens[at].gap is Gap.NONE and scene.word(at - 1) in _OWNED:
        at -= 1
    return at == 0 or scene.tokens[at].gap is not Gap.NONE


def _side(scene: Scene, m: Mark) -> Side | None:
    seen: set[Side] = set()
    for index in range(m.first - 1, max(m.first - 6, -1), -1):
        word = scene.word(index)
        if word in SIDES and scene.tokens[index + 1].gap is not Gap.NONE and _has_number(scene, index):
            break  # `10 left 8 right - hamstring cramped`
        if word in SIDES and (is_effort(scene, index) or (word == "left" and scene.word(index + 1) in ("my", "me"))):
            break
        if word in SIDES and not (word == "right" and scene.word(index - 1) in ("all", "not")):
            seen.add(SIDES[word])
        elif word not in _BETWEEN_SIDE and not (word == "and" and seen):
            break
        if scene.tokens[index].gap is Gap.HARD or (scene.tokens[index].gap is Gap.SOFT and seen):
            break
    seen |= {SIDES[w] for w in scene.words(m.first, m.end) if w in SIDES}
    if not seen:
        seen = _side_after(scene, m.end)
    return seen.pop() if len(seen) == 1 else None


def _has_number(scene: Scene, index: int) -> bool:
    """Whether a side ends what is told of its set: `35 left 30 right`, `only 10 on the right`."""
    at = index - 1
    while at > 0 and scene.word(at) in ("on", "the", "my", "sec", "reps") and scene.tokens[at + 1].gap is Gap.NONE:
        at -= 1
    return at >= 0 and scene.tokens[at].kind in (Kind.NUMBER, Kind.TIME) and scene.tokens[at + 1].gap is Gap.NONE


_IN_RESERVE = word_set(
    """
    rep reps one two three four five six none nothing anything much more zero couple few lots loads plenty bit
    """
)


def is_effort(scene: Scene, index: int) -> bool:
    """Whether `left` counts repetitions to spare, which no side does: `nothing left, knee hurts`, `2 left, elbow`."""
    if scene.word(index) != "left" or index == 0 or scene.tokens[index].gap is not Gap.NONE:
        return False
    before = scene.tokens[index - 1]
    ends = index + 1 < len(scene.tokens) and scene.tokens[index + 1].gap is not Gap.NONE
    counted = before.kind is not Kind.WORD or before.word in _IN_RESERVE
    return counted and (ends or before.word in ("rep", "reps", "nothing", "none") or before.word.endswith("reps"))


def _behind_its_place(scene: Scene, index: int) -> bool:
    """`hurt me the knee right in the press`, `a needle in the shoulder left when i lower`: a side put last."""
    if scene.tokens[index].gap is not Gap.NONE:
        return False
    lead, before = scene.word(index - 3), scene.word(index - 2)
    if scene.word(index) == "right":
        goes_on = scene.word(index + 1) == "and" and scene.word(index + 2) not in SIDES
        return before in ("my", "the") and (lead == "me" or (goes_on and lead in _INTO))
    return before in ("my", "the") and scene.word(index + 1) in ("when", "in", "as") and lead in _INTO


_INTO = word_set("in me at on hurts hurt")


def _side_after(scene: Scene, end: int) -> set[Side]:
    index = end
    while scene.word(index) in ("on", "the", "my", "side"):
        index += 1
    word = scene.word(index)
    if word not in SIDES or not scene.same_sentence(end - 1, index):
        return set()
    if scene.word(index + 1) in _NOT_A_SIDE_AFTER and scene.tokens[index + 1].gap is Gap.NONE:
        return {SIDES[word]} if index == end and _behind_its_place(scene, index) else set()
    if index == end and scene.tokens[index].gap is Gap.NONE and len(word) == 1:
        return set()
    begins_another = any(m.first == index + 1 for m in scene.place_marks)
    return set() if begins_another else {SIDES[word]}
