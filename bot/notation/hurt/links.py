"""Which place a cue speaks of."""

from rapidfuzz.distance import OSA

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.places import HEADS, SURFACE, VAGUE, Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import SIDES, Spot, implied
from bot.notation.hurt.tokens import Gap, Kind

FAR = 16
"""The dearest link that still holds, in tokens and penalties."""
_NEARER = 4
"""What a word such as `in` right after the cue takes off a price."""
_CHAIN = word_set(
    """
    and & or my the n plus a bit both on in left right of side lower upper around also into to
    """
)
_LEADS = word_set(
    """
    in on at of around behind under to down across by near inside my along through into up above below over round
    from the off against
    """
)
_RIVALS = (Cue.PAIN, Cue.HURT, Cue.SHARP, Cue.SORE, Cue.MARK, Cue.BURN, Cue.GOOD, Cue.FINE)


def places_of(scene: Passage, mark: Mark) -> tuple[Spot, ...]:
    """The places that a cue speaks of, first named first; empty where none is said near it."""
    return scene.once("places", mark, lambda: _places_of(scene, mark))


def head_of(scene: Passage, mark: Mark) -> Spot | None:
    """The place that a cue means by itself, by the name said for it: `pain in my temple`."""
    inside = [s for s in scene.spots if mark.first <= s.first < mark.end and s.place.name in HEADS]
    return inside[0] if inside else implied(mark)


def _places_of(scene: Passage, mark: Mark) -> tuple[Spot, ...]:
    close = [s for s in scene.spots if abs(s.first - mark.first) <= 2 * FAR]
    here = [s for s in close if scene.same_sentence(s.first, mark.first)]
    found = _cheapest(scene, mark, here)
    if found is None:
        meant = _meant_by_it(scene, mark, here)
        return (meant,) if meant else _next_door(scene, mark)
    if found.place.name in VAGUE and not found.place.plural:
        if (whole := _said_before(scene, mark, found)) is not None:
            return (whole,)
        return _whole_of(scene, mark) or _chain(here, scene, found, mark)
    return _chain(here, scene, found, mark)


def _whole_of(scene: Passage, mark: Mark) -> tuple[Spot, ...]:
    """`Wrists. Both. Sore joint`, `left knee. joint pain`: what a vague place is of, told by itself before."""
    number = scene.sentence[mark.first]
    for spot in reversed(scene.spots):
        back = number - scene.sentence[spot.first]
        if not 1 <= back <= 2 or spot.place.name in VAGUE:
            continue
        said = [i for i, n in enumerate(scene.sentence) if number - back <= n < number]
        own = all(spot.first <= i < spot.end or scene.word(i) in _BY_ITSELF or scene.word(i) in SIDES for i in said)
        return (spot,) if own else ()
    return ()


_INNER = frozenset({"joint", "tendon", "ligament", "bone", "nerve"})
_TO_INNER = word_set("at in the my on of around inside near right into a deep behind")


def _said_before(scene: Passage, mark: Mark, found: Spot) -> Spot | None:
    """`my thumb is none too pleased with that handle, a bit sore at the joint`: the place that the joint is of.

    Not where another place is said behind it, or where that place is well: `wrist fine, sore at the joint of the toe`.
    """
    if found.place.name not in _INNER or found.side is not None or mark.end > found.first or found.mine:
        return None
    joint = (Tissue.JOINT, Tissue.MIXED)
    here = [s for s in scene.spots if scene.same_sentence(s.first, found.first)]
    before = [s for s in here if s.end <= mark.first and s.place.name not in VAGUE and s.place.tissue in joint]
    after = any(s.first >= found.end and s.first - found.end <= 5 for s in here)
    led = scene.words(mark.end, found.first) <= _TO_INNER
    if not led or after or not before or before[-1].place.plural:
        return None
    well = [f for f in scene.of(Cue.FINE) if before[-1].end <= f.first < mark.first and not negated(scene, f)]
    return None if well and not scene.sentence_words(mark.first) & _LYING else before[-1]


_LYING = word_set("lie lying lyin liar wish fib fibbing")
"""Before what is well these take it back: `i'd be lying if i said the wrist felt great`."""
_BY_ITSELF = word_set("my the both it's its so yeah again inside outside front them of")


_IS = word_set("is 's was a bit still feels felt really quite so very just got gets")


def _meant_by_it(scene: Passage, mark: Mark, here: list[Spot]) -> Spot | None:
    """`my foot has a hot spot and it's sore to stand on`: the place before that `it` stands for."""
    at = mark.first - 1
    while at > 0 and scene.word(at) in _IS:
        at -= 1
    before = [s for s in here if s.end <= at and s.place.name not in VAGUE]
    return before[-1] if scene.word(at) in ("it", "it's") and before else None


def _cheapest(scene: Passage, mark: Mark, here: list[Spot]) -> Spot | None:
    """The place of the least price, the first of those; nothing where all are too dear."""
    best, found = FAR + 1, None
    apart = sorted((max(s.first - mark.end, mark.first - s.end), s.first, s) for s in here)
    for distance, _, spot in apart:
        if distance - _NEARER > best:
            break
        price = _price(scene, mark, spot)
        if price < best or (price == best and found is not None and spot.first < found.first):
            best, found = price, spot
    return found


def _price(scene: Passage, mark: Mark, spot: Spot) -> int:
    """How far a place is from a cue: tokens between, dearer over commas, joints of speech, sets and rival cues."""
    vague = (10 if spot.place.name in SURFACE else 6) if spot.place.name in VAGUE else 0
    if spot.first < mark.end and mark.first < spot.end:
        return vague + (0 if spot.typed or mark.place is not None else 8)
    after = spot.first >= mark.end
    low, high = (mark.end, spot.first) if after else (spot.end, mark.first)
    price = high - low
    if price > FAR:
        return price
    price += 3 * scene.soft_gaps(low, high + 1)
    price += sum(4 for i in range(low, high) if scene.word(i) in _JOINTS)
    price += sum(3 for i in range(low, high) if scene.tokens[i].kind is Kind.SET)
    price += sum(5 for m in scene.of(*_RIVALS) if low <= m.first < high)
    if after:
        price = _price_after(scene, mark, spot, price)
    if _names_a_lift(scene, spot):
        price += 8
    if not spot.typed and any(s.typed for s in scene.spots):
        price += 2
    return price + vague


def _names_a_lift(scene: Passage, spot: Spot) -> bool:
    """`the elbow says hello on triceps, small pain`: a muscle for its exercise, behind the joint that is spoken of."""
    lift = scene.word(spot.first - 1) in ("on", "during", "doing") and spot.place.tissue in (
        Tissue.MUSCLE,
        Tissue.CHEST,
    )
    joints = (Tissue.JOINT, Tissue.MIXED)
    return lift and any(s.end < spot.first and s.place.tissue in joints for s in scene.spots)


def _price_after(scene: Passage, mark: Mark, spot: Spot, price: int) -> int:
    """A place after its cue wants a word that leads to it: `pain in my knee`."""
    low, high = mark.end, spot.first
    lead = scene.word(low)
    if high > low and lead not in _LEADS and not scene.words(spot.first - 3, spot.first) & _LEADS:
        price += 3
    if high == low and mark.cue not in (Cue.STRAIN, Cue.HURT, Cue.SORE, Cue.SHARP, Cue.WHISPER):
        price += 2
    if low < high and lead in _IN:
        price = max(1, price - _NEARER)
    if lead == "to" and scene.word(low + 1) not in ("the", "my"):
        price += 8
    return price


_JOINTS = word_set("but and then so because plus also while")
_IN = frozenset({"in", "on", "at", "behind", "under", "around", "across", "inside"})


def _chain(here: list[Spot], scene: Passage, found: Spot, mark: Mark) -> tuple[Spot, ...]:
    """The places coordinated with the one found: `knee and hip`, `chest and left arm`."""
    at = here.index(found)
    first, last = at, at
    if at > 0 and _led_from(scene, here[at - 1], found):
        return (here[at - 1], found)
    if at > 0 and _part_of(scene, here[at - 1], found):
        return (here[at - 1], found)
    here = [s for s in here if s == found or s.place.name not in VAGUE]
    at = first = last = here.index(found)
    while first > 0 and _joined(scene, here[first - 1], here[first], mark):
        first -= 1
    while last + 1 < len(here) and _joined(scene, here[last], here[last + 1], mark):
        last += 1
    return tuple(here[first : last + 1])


def _led_from(scene: Passage, a: Spot, b: Spot) -> bool:
    """`from the hip down to the knee`: it hurts in the first."""
    start = any(scene.word(i) == "from" for i in range(a.first - 3, a.first))
    return start and any(scene.word(i) in ("down", "to", "into", "up", "through") for i in range(a.end, b.first))


def _part_of(scene: Passage, a: Spot, b: Spot) -> bool:
    """`the calf of my operated leg`: the part is what is meant."""
    return scene.word(a.end) == "of" and 1 <= b.first - a.end <= 4 and a.place.name not in VAGUE


def _joined(scene: Passage, a: Spot, b: Spot, mark: Mark) -> bool:
    between = range(a.end, b.first)
    if len(between) > 4 or not all(scene.word(i) in _CHAIN or _slipped_and(scene.word(i)) for i in between):
        return False
    if not between and scene.tokens[b.first].gap is not Gap.SOFT:
        return False
    if _set_aside(scene, a, b):
        return False
    taken = [m for m in scene.of(*_RIVALS) if m.first != mark.first and 0 <= a.first - m.end <= 3]
    return not any(scene.same_sentence(m.first, a.first) for m in taken)


_ASIDE = word_set("skip skipped skipping skips no without drop dropped binned cut leave leaving instead more")


def _set_aside(scene: Passage, a: Spot, b: Spot) -> bool:
    """`skipping calves, right calf is swollen`: the first names an exercise that is left out."""
    return scene.soft_gaps(a.end, b.first + 1) > 0 and bool(scene.words(a.first - 4, a.first) & _ASIDE)


def _slipped_and(word: str) -> bool:
    return 2 <= len(word) <= 4 and not SPELLER.is_known(word) and OSA.distance(word, "and") == 1


def _says_well(scene: Passage, mark: Mark) -> bool:
    """Whether a word of well-being says so; not `my good knee`, `ok so the knee`."""
    return scene.word(mark.first - 1) != "my" and scene.word(mark.end) != "so"


def _next_door(scene: Passage, mark: Mark) -> tuple[Spot, ...]:
    """A place in the sentence before or after, where this one names none."""
    number = scene.sentence[mark.first]
    before = [s for s in scene.spots if scene.sentence[s.first] == number - 1 and mark.first - s.end <= 12]
    after = [s for s in scene.spots if scene.sentence[s.first] == number + 1 and s.first - mark.end <= 6]
    fine = {scene.sentence[m.first] for m in scene.of(Cue.FINE, Cue.GOOD) if _says_well(scene, m)}
    other_cue = {scene.sentence[m.first] for m in scene.of(Cue.SORE, Cue.BURN)}
    if before and number - 1 not in fine | other_cue:
        return (before[-1],)
    if after and number + 1 not in fine | other_cue:
        return (after[0],)
    return ()
