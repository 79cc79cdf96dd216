"""Urgent signs: what no coach should wait on, whether it hurts or not.

The signs follow published lists: chest pain or pressure, fainting, breathlessness and palpitations as the ACSM Guidelines
table of major signs and Thompson et al. 2007 (MSSE 39:886-897) have them; saddle numbness and loss of bladder or bowel
control from the British Association of Spine Surgeons (2018); the sudden worst headache, the drooping face and dark urine
from memory of public health campaigns. The words for them are the clients' own.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.scene import Scene, Spot
from bot.notation.hurt.scopes import anothers, laughed, long_ago, negated, supposed
from bot.notation.hurt.tokens import Kind


@dataclass(frozen=True, slots=True)
class Sign:
    """An urgent sign found: its name, its tokens, and the place if one is said."""

    name: str
    tokens: tuple[int, ...]
    spot: Spot | None
    doubts: int = 0
    """Words of it that are another real word, read as a slip."""
    solid: bool = True
    """Whether a telling word of it stands as typed."""


def find_signs(scene: Scene) -> list[Sign]:
    """Every urgent sign that stands, in no order; of those that hang on a doubted word only the well supported."""
    return [sign for rule in _RULES for sign in rule(scene) if sign.doubts == 0 or (sign.doubts == 1 and sign.solid)]


def _stands(scene: Scene, mark: Mark, spot: Spot | None = None) -> bool:
    """Not denied, not another's, not a mere supposition, not history."""
    mine = spot.mine if spot else None
    return not (negated(scene, mark) or anothers(scene, mark, mine) or supposed(scene, mark) or long_ago(scene, mark))


def _near(scene: Scene, a: Mark | Spot, b: Mark | Spot, within: int) -> bool:
    """Within so many tokens of each other and no full stop between, one unsure word at most."""
    if not (a.sure or b.sure) or not scene.same_sentence(a.first, b.first):
        return False
    return (b.first - a.end <= within) if b.first >= a.first else (a.first - b.end <= within)


def _sign(name: str, *parts: Mark | Spot, spot: Spot | None = None) -> Sign:
    tokens = tuple(sorted({i for p in parts for i in range(p.first, p.end)}))
    doubts = len({p.first for p in parts if p.doubts}) if parts else 0
    return Sign(name, tokens, spot, max(doubts, *(p.doubts for p in parts)), any(p.solid for p in parts))


_CHEST_FEELS = (
    Cue.PAIN,
    Cue.HURT,
    Cue.PAINFUL,
    Cue.SHARP,
    Cue.BURN,
    Cue.TIGHT,
    Cue.PRESSURE,
    Cue.QUALITY,
    Cue.KILLING,
    Cue.WHISPER,
    Cue.MARK,
    Cue.NUMB,
)


def _chest(scene: Scene) -> Iterator[Sign]:
    chests = [s for s in scene.spots if s.place.tissue is Tissue.CHEST]
    for chest in chests:
        for feel in scene.of(*_CHEST_FEELS):
            linked = any(s == chest for s in places_of(scene, feel))
            inside = scene.word(chest.first - 2) in (
                "in",
                "on",
                "across",
                "into",
                "to",
                "up",
                "through",
                "inside",
            ) and _near(scene, feel, chest, 8)
            if not (linked or inside) or not (feel.sure or chest.sure) or not _stands(scene, feel, chest):
                continue
            if feel.cue in (Cue.BURN, Cue.WHISPER, Cue.TIGHT, Cue.QUALITY) and _muscular(scene, feel, chest):
                continue
            if feel.cue is Cue.PRESSURE and scene.word(feel.first) == "heavy" and not _near(scene, chest, feel, 3):
                continue
            yield _sign("chest", feel, chest, spot=chest)


def _muscular(scene: Scene, feel: Mark, chest: Spot) -> bool:
    """Talk of a trained chest: tight since Monday's bench, on fire after flyes."""
    sentence = {scene.word(i) for i in range(len(scene.tokens)) if scene.same_sentence(i, chest.first)}
    if any(scene.word(i) in ("in", "inside") for i in range(chest.first - 2, chest.first)):
        return False
    earlier = any(_near(scene, m, chest, 8) for m in scene.of(Cue.PAST)) or "doms" in sentence
    if feel.cue is Cue.TIGHT:
        return earlier
    if feel.cue is Cue.BURN:
        return bool(
            sentence
            & {
                "fire",
                "nice",
                "nicely",
                "good",
                "lovely",
                "pump",
                "flyes",
                "flys",
                "flies",
                "pushups",
                "dips",
                "benching",
                "bench",
                "set",
                "reps",
                "press",
                "lol",
            }
        )
    return scene.word(feel.first) in ("hit", "felt", "feel", "feeling", "bad", "pulling", "worse") or earlier


def _faint(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.FAINT):
        if not _stands(scene, m) or _slight(scene, m) or _asleep(scene, m):
            continue
        yield _sign("fainting", m)


_FAINT_OF = word_set(
    """
    pain twinge click niggle ache hope idea line pinch tingle
    """
)


def _slight(scene: Scene, m: Mark) -> bool:
    """`a faint twinge`; form that collapsed; stars of a rating."""
    if scene.word(m.first) in ("faint", "fainter") and m.end - m.first == 1 and scene.word(m.end) in _FAINT_OF:
        return True
    if scene.word(m.first).startswith("collaps"):
        before = {scene.word(i) for i in range(max(0, m.first - 4), m.first)}
        return bool(
            before
            & {
                "form",
                "knees",
                "technique",
                "arch",
                "back",
                "bar",
                "bench",
                "ankle",
                "ankles",
                "arches",
                "position",
                "knee",
                "elbows",
                "chest",
            }
        )
    return False


def _asleep(scene: Scene, m: Mark) -> bool:
    words = {scene.word(i) for i in range(m.first, min(m.end + 10, len(scene.tokens)))}
    return scene.word(m.first).startswith("pass") and bool(
        words & {"bed", "asleep", "slept", "sleep", "laughing", "10pm", "9pm"}
    )


def _breath(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.BREATHLESS):
        if _stands(scene, m) and "nose" not in {scene.word(i) for i in range(m.end, m.end + 4)}:
            yield _sign("breath", m)
    lasting = scene.of(Cue.SETTLE)
    times = [i for i, t in enumerate(scene.tokens) if t.kind is Kind.TIME]
    for m in scene.of(Cue.WINDED):
        if not _stands(scene, m):
            continue
        for s in lasting:
            if scene.word(s.first) not in ("still", "keeps", "later") and _near(scene, m, s, 6):
                yield _sign("breath", m, s)
        still = any(scene.word(s.first) == "still" and _near(scene, s, m, 4) for s in lasting)
        for i in times:
            lasts = (
                scene.word(i + 1) in ("later", "after", "on", "now", "since", "ago")
                or still
                or scene.word(i - 1) in ("after", "for", "last", "past", "over")
            )
            if lasts and scene.same_sentence(i, m.first) and (still or scene.word(i - 1) in ("for", "last", "past")):
                yield Sign("breath", (*range(m.first, m.end), i), None)


def _headache(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.HEADACHE):
        if not _stands(scene, m):
            continue
        spot = Spot(m.first, m.end, m.place, None, None, m.doubts, m.solid) if m.place else None
        mild = any(_near(scene, x, m, 3) for x in scene.of(Cue.LITTLE))
        inner = {scene.word(i) for i in range(m.first, m.end)} & {
            "splitting",
            "exploding",
            "exploded",
            "explode",
            "pounding",
            "banging",
            "thunderclap",
        }
        strong = [x for x in scene.of(Cue.SEVERE, Cue.SUDDEN) if _near(scene, x, m, 7)]
        if inner and not mild:
            yield _sign("headache", m, spot=spot)
        for x in strong:
            if not (mild and x.cue is Cue.SEVERE):
                yield _sign("headache", m, x, spot=spot)


_LIMBS = (Tissue.JOINT, Tissue.MUSCLE, Tissue.MIXED, Tissue.ORGAN, Tissue.CHEST)


def _feeling(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.NUMB):
        spots = places_of(scene, m)
        spot = spots[0] if spots else None
        if _stands(scene, m, spot):
            yield _sign("numb", m, *spots[:1], spot=spot)
    for m in scene.of(Cue.NO_FEELING):
        spots = tuple(s for s in places_of(scene, m) if _near(scene, m, s, 5))
        if not spots or not _stands(scene, m, spots[0]):
            continue
        if spots[0].place.tissue is Tissue.MUSCLE and _working(scene, m, spots[0]):
            continue
        yield _sign("no feeling", m, spots[0], spot=spots[0])


def _working(scene: Scene, m: Mark, spot: Spot) -> bool:
    """`can't feel my glutes working`, `can't feel my legs lol killer session`: unmistakable gym talk."""
    after = {scene.word(i) for i in range(m.first, min(spot.end + 8, len(scene.tokens)))}
    if after & {
        "working",
        "engage",
        "engaging",
        "activate",
        "activating",
        "firing",
        "it",
        "much",
        "contract",
        "contracting",
        "squeeze",
        "stretch",
        "fire",
    } and spot.place.name not in ("leg", "arm"):
        return True
    praise = {t.word for t in scene.tokens} & {
        "killer",
        "brutal",
        "great",
        "session",
        "workout",
        "leg",
        "awesome",
        "good",
        "amazing",
        "beast",
        "savage",
        "love",
        "loved",
    }
    return spot.place.plural and laughed(scene, m) and bool(praise) and spot.side is None


def _dead(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.DEAD):
        spots = [s for s in places_of(scene, m) if _near(scene, m, s, 3)]
        for spot in spots[:1]:
            went = {scene.word(i) for i in range(spot.end, m.first)} & {
                "went",
                "gone",
                "goes",
                "go",
                "suddenly",
                "just",
                "feels",
                "felt",
                "going",
            }
            if scene.word(m.first) in ("paralysed", "paralyzed", "lifeless"):
                went = {"went"}
            tired = spot.place.plural and spot.side is None
            if not tired and (went or spot.side) and _stands(scene, m, spot):
                yield _sign("dead limb", m, spot, spot=spot)


def _strength(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.WEAK):
        for spot in places_of(scene, m)[:1]:
            sudden = [x for x in scene.of(Cue.SUDDEN) if _near(scene, x, m, 6)]
            went = {scene.word(i) for i in range(spot.end, m.first)} & {"went", "gone", "goes", "suddenly"}
            if (
                (spot.side or sudden or went)
                and not spot.place.plural
                and _near(scene, spot, m, 5)
                and _stands(scene, m, spot)
            ) or (
                scene.of(Cue.BOTH_LEGS)
                and spot.place.plural
                and scene.word(spot.first - 1) in ("both", "my")
                and (sudden or any(_near(scene, b, m, 14) for b in scene.of(Cue.PAIN, Cue.SHARP, Cue.MARK)))
                and _stands(scene, m, spot)
            ):
                yield _sign("weakness", m, spot, spot=spot)
    for m in scene.of(Cue.NO_STRENGTH):
        for spot in [s for s in places_of(scene, m) if _near(scene, m, s, 4)][:1]:
            if (
                _stands(scene, m, spot)
                and not spot.place.plural
                and not _limited_by_hurt(scene, m, spot)
                and spot.place.tissue is not Tissue.CHEST
            ):
                yield _sign("no strength", m, spot, spot=spot)
    for m in scene.of(Cue.DROOP):
        if _stands(scene, m) and not (
            scene.word(m.first).startswith(("droop", "sag"))
            and not any(s.place.name in ("face", "eye", "lip") for s in scene.spots)
        ):
            spot = next((s for s in scene.spots if _near(scene, s, m, 4) and s.place.tissue is Tissue.ORGAN), None)
            yield _sign("stroke", m, spot=spot)
    for m in scene.of(Cue.GAVE_WAY):
        for spot in [s for s in places_of(scene, m) if _near(scene, m, s, 4)][:1]:
            if (
                spot.place.name in ("leg", "foot")
                and not spot.place.plural
                and _stands(scene, m, spot)
                and scene.word(m.end) != "on"
            ):
                yield _sign("gave way", m, spot, spot=spot)


def _limited_by_hurt(scene: Scene, m: Mark, spot: Spot) -> bool:
    """`can't lift my arm without pain`, `can't use my arms as much`."""
    after = {scene.word(i) for i in range(spot.end, min(spot.end + 8, len(scene.tokens)))}
    return bool(
        after & {"without", "much", "further", "higher", "heavier", "more", "today", "properly"}
        and not after & {"all", "anymore"}
    )


def _control(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.CONTROL):
        joking = laughed(scene, m) or {scene.word(i) for i in range(m.first - 2, m.first)} & {"nearly", "almost"}
        fear = scene.word(m.first) in ("shat", "shit", "crapped", "pissed", "pissing", "pooed", "pooped")
        laughing = any(scene.word(i) in ("laughing", "laughter") for i in range(len(scene.tokens)))
        if _stands(scene, m) and not (joking and fear) and not laughing:
            yield _sign("control", m)
    for m in scene.of(Cue.SADDLE):
        for n in scene.of(Cue.NUMB, Cue.NO_FEELING, Cue.MARK):
            tingles = n.cue is not Cue.MARK or scene.word(n.first).startswith(("tingl", "pins", "prick"))
            if tingles and _near(scene, m, n, 6) and _stands(scene, n):
                spot = Spot(m.first, m.end, m.place, None, None, m.doubts, m.solid) if m.place else None
                yield _sign("saddle", m, n, spot=spot)


def _pop(scene: Scene) -> Iterator[Sign]:
    losses = [m for m in scene.of(Cue.NO_FUNCTION, Cue.NO_STRENGTH, Cue.GAVE_WAY) if scene.word(m.first) != "need"]
    hurt_here = scene.of(Cue.PAIN, Cue.HURT, Cue.SHARP, Cue.STRAIN, Cue.INJURED, Cue.SWOLLEN)
    for pop in scene.of(Cue.POP):
        spots = places_of(scene, pop)
        named = spots or scene.word(pop.first - 1) in ("a", "big", "loud", "something", "heard", "felt", "it")
        for loss in losses:
            if (
                named
                and loss.first >= pop.end
                and abs(scene.sentence[loss.first] - scene.sentence[pop.first]) <= 1
                and loss.first - pop.end <= 24
                and _stands(scene, pop, spots[0] if spots else None)
                and not negated(scene, loss)
            ) or (
                named
                and loss.first < pop.first
                and scene.same_sentence(loss.first, pop.first)
                and pop.first - loss.end <= 14
                and _stands(scene, pop)
            ):
                yield _sign("pop", pop, loss, *spots[:1], spot=spots[0] if spots else None)
    for loss in scene.of(Cue.NO_FUNCTION):
        verb = scene.word(loss.end - 1)
        if scene.word(loss.first) != "can't" or verb not in (
            "stand",
            "walk",
            "weight",
            "bear",
            "put",
            "step",
            "move",
            "stand up",
        ):
            continue
        for hurt in hurt_here:
            spots = places_of(scene, hurt)
            if (
                spots
                and not spots[0].place.plural
                and abs(scene.sentence[loss.first] - scene.sentence[hurt.first]) <= 1
                and abs(loss.first - hurt.first) <= 16
                and _stands(scene, hurt, spots[0])
            ):
                yield _sign("no function", hurt, loss, spots[0], spot=spots[0])


def _calf(scene: Scene) -> Iterator[Sign]:
    for swollen in scene.of(Cue.SWOLLEN, Cue.HOT):
        for spot in places_of(scene, swollen)[:1]:
            if not _near(scene, swollen, spot, 8) or not _stands(scene, swollen, spot):
                continue
            calf = spot.place.name == "calf" and not (spot.place.plural and swollen.cue is Cue.HOT)
            limb = spot.place.name in ("leg", "thigh", "arm", "foot", "ankle", "shin", "hamstring", "forearm", "calf")
            others = [
                m
                for m in scene.of(Cue.HOT, Cue.SWOLLEN, Cue.PAIN, Cue.SHARP, Cue.HURT, Cue.PAINFUL)
                if m.first != swollen.first and _near(scene, m, swollen, 8)
            ]
            hot = [m for m in others if {m.cue, swollen.cue} == {Cue.HOT, Cue.SWOLLEN}]
            if calf and (swollen.cue is Cue.SWOLLEN or others):
                yield _sign("calf", swollen, *others[:1], spot, spot=spot)
            elif limb and hot and spot.place.name not in ("ankle", "foot"):
                yield _sign("clot", swollen, hot[0], spot, spot=spot)


def _urine(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.URINE):
        if scene.word(m.first) in ("water", "toilet", "bathroom"):
            if scene.word(m.first - 1) != "my":
                continue
        for dark in scene.of(Cue.DARK, Cue.LOOKS):
            if (
                dark.cue is Cue.LOOKS
                and not (dark.first >= m.end and _near(scene, m, dark, 3))
                and not (dark.first < m.first and _near(scene, dark, m, 1))
            ):
                continue
            if (
                dark.first != m.first
                and _near(scene, m, dark, 7)
                and _stands(scene, dark)
                and _stands(scene, m)
                and not _clear(scene, m)
            ):
                yield _sign("urine", m, dark)


def _clear(scene: Scene, m: Mark) -> bool:
    after = {scene.word(i) for i in range(m.first, min(m.end + 6, len(scene.tokens)))}
    return bool(after & {"clear", "normal", "fine", "pale"})


def _heart(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.PALPITATION):
        if _stands(scene, m):
            yield _sign("palpitations", m)
    for m in scene.of(Cue.HEART_RACE):
        others = [
            x
            for x in scene.of(Cue.SETTLE)
            if _near(scene, m, x, 6) and scene.word(x.first) not in ("when", "while", "later", "minutes")
        ]
        if others and _stands(scene, m):
            yield _sign("heart", m, others[0])


def _grave(scene: Scene) -> Iterator[Sign]:
    for m in scene.of(Cue.GRAVE, Cue.BLOOD, Cue.VISION):
        first = scene.word(m.first)
        joke = first in ("heart",) and (
            laughed(scene, m)
            or any(
                scene.word(i) in ("nearly", "almost", "giving", "gave", "give")
                for i in range(max(0, m.first - 4), m.first)
            )
        )
        if (
            _stands(scene, m)
            and not joke
            and not (first in ("broke", "broken") and not scene.spots)
            and not _about_plan(scene, m)
        ):
            spot = next((s for s in scene.spots if _near(scene, m, s, 4)), None) if m.cue is Cue.GRAVE else None
            yield _sign("grave", m, spot=spot)
    for m in scene.of(Cue.PREGNANT):
        for b in scene.of(Cue.BLEED):
            if abs(m.first - b.first) <= 14 and _stands(scene, b):
                yield _sign("pregnancy", m, b)
    for m in scene.of(Cue.PAIN, Cue.SHARP, Cue.HURT, Cue.MARK):
        spots = places_of(scene, m)
        jaw = [s for s in spots if s.place.name == "jaw"]
        arm = [s for s in spots if s.place.name == "arm" and s.side is not None]
        sweat = [
            x for x in scene.of(Cue.SWEAT) if _near(scene, x, m, 14) and scene.word(x.first) not in ("jaw", "left")
        ]
        if _stands(scene, m) and ((jaw and arm) or ((jaw or arm) and sweat)):
            yield _sign("heart", m, (jaw or arm)[0], spot=(jaw or arm)[0])


def _about_plan(scene: Scene, m: Mark) -> bool:
    """`confused about the plan` is no confusion."""
    return scene.word(m.first) in ("confused", "confusion") and scene.word(m.end) in (
        "about",
        "by",
        "with",
        "on",
        "how",
        "what",
        "which",
        "with",
        "as",
        "is",
        "over",
        "here",
        "why",
        "if",
        "whether",
        "lol",
        "on",
        "again",
        "coach",
        "where",
    )


_RULES = (_chest, _faint, _breath, _headache, _feeling, _dead, _strength, _control, _pop, _calf, _urine, _heart, _grave)
