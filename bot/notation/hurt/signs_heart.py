"""Urgent signs of heart and breath: chest, breath that does not come back, palpitations."""

from collections.abc import Iterator

from bot.notation.hurt.breath_back import came_back
from bot.notation.hurt.cues import Cue
from bot.notation.hurt.links import places_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.me_verbs import done_to_me
from bot.notation.hurt.no_body import is_in_a_story
from bot.notation.hurt.of_things import is_of_a_thing
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import LAUGHING, is_anothers_place, laughed
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.said_of import said_of_chest
from bot.notation.hurt.sign import Sign, near, sign_of, stands
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Kind

_FEELS = (
    *(Cue.PAIN, Cue.HURT, Cue.PAINFUL, Cue.SHARP, Cue.BURN, Cue.TIGHT, Cue.PRESSURE, Cue.QUALITY),
    *(Cue.KILLING, Cue.WHISPER, Cue.MARK, Cue.NUMB, Cue.SORE),
)
_FAR = 20
"""Tokens over which a feeling may still be the chest's."""
_ACHES = word_set("ache aches aching ached achy achey achin")
_INSIDE = word_set("in on across into up through inside around round over behind under")
_PUMPED = word_set(
    """
    fire nice nicely good lovely pump pumped flyes flys flies pushups dips benching bench
    set sets reps press lol great
    """
)
_TRAINED_ON = word_set(
    """
    press pressing session workout gym training trained push pushups dips pecs pec stretch stretched doms sore day
    monday tuesday wednesday thursday friday saturday sunday mondays tuesdays wednesdays thursdays fridays saturdays
    sundays mon tues weds thurs fri sat sun yesterdays yesterday's 's volume
    """
)
_LOADED = word_set("bench bar barbell weight load plates dumbbells bells press it that reps set")
_AT_WORK = word_set("hit felt feel feeling bad pulling pulls worse rough work working activated")


def chest(scene: Passage) -> Iterator[Sign]:
    """Pain, pressure, tightness or an odd feeling in the chest; not a chest that trained."""
    for spot in scene.spots:
        if spot.place.tissue is not Tissue.CHEST or is_in_a_story(scene, Mark(spot.first, spot.end, None)):
            continue
        for feel in scene.of(*_FEELS):
            felt = _of_chest(scene, feel, spot) and stands(scene, feel, spot) and not _trained(scene, feel, spot)
            if felt and not _only_tomorrow(scene, spot.first, feel.end):
                yield sign_of("chest", (feel, spot), spot)
        done = any(s is spot for _, s in done_to_me(scene))
        said = None if spot.place.name == "heart" else said_of_chest(scene, spot)
        if said is not None and (not stands(scene, said, spot) or _only_tomorrow(scene, said.first, said.end)):
            said = None
        felt_there = _something_in(scene, spot) or _feels_like(scene, spot) or done or said
        if felt_there and not is_anothers_place(scene, spot):
            yield sign_of("chest", (spot,), spot)


def _only_tomorrow(scene: Passage, first: int, end: int) -> bool:
    """`my chest is gonna hate me tmrw`: soreness that is looked forward to, and nothing now."""
    return bool(scene.words(first, end) & _WILL and scene.words(first, end + 5) & _TOMORROW)


_WILL = word_set("gonna going will 'll gon")
_TOMORROW = word_set("tomorrow tmrw tmr tmw tomoz 2moro 2morrow")


def _of_chest(scene: Passage, feel: Mark, spot: Spot) -> bool:
    if abs(feel.first - spot.first) > _FAR:
        return False
    if spot in places_of(scene, feel):
        return True
    return bool(scene.words(spot.first - 2, spot.first) & _INSIDE) and near(scene, feel, spot, 8)


def _something_in(scene: Passage, spot: Spot) -> bool:
    """`i feel a … in the chest`, whatever the word, where it is not the muscle at work."""
    inside = {"in", "across", "inside", "behind", "around", "round", "over"}
    midst = scene.words(spot.first - 3, spot.first) & {"middle", "centre", "center", "side", "top", "front"}
    if not scene.words(spot.first - (5 if midst else 2), spot.first) & inside:
        return False
    before = scene.words(spot.first - 9, spot.first)
    feels = before & {"feel", "feeling", "feels", "felt", "got", "have", "had", "something", "has", "getting"}
    noun = before & {"a", "some", "something", "this", "an", "weird"}
    noun |= (
        before & {"feeling", "sensation"}
        if scene.words(spot.first - 6, spot.first) & {"feeling", "sensation"}
        else set()
    )
    talk = scene.sentence_words(spot.first) & word_set(
        "pump stretch it that working muscle strength growth size no never"
    )
    return bool(feels and noun) and not talk


def _feels_like(scene: Passage, spot: Spot) -> bool:
    """`chest feels like someone is standing on it`."""
    feels = scene.word(spot.end) in ("feels", "felt", "feeling", "feel") or scene.word(spot.end + 1) in ("feeling",)
    like = "like" in scene.words(spot.end + 1, spot.end + 5)
    return feels and like and not scene.sentence_words(spot.first) & _PUMPED


def _trained(scene: Passage, feel: Mark, spot: Spot) -> bool:
    """Talk of a trained chest: sore, tight since Monday's bench, on fire after flyes."""
    word = scene.word(feel.first)
    inside = bool(scene.words(spot.first - 2, spot.first) & {"in", "inside", "behind", "under", "beneath"})
    earlier = any(
        near(scene, m, spot, 8) for m in scene.of(Cue.PAST, Cue.TRAINED) if scene.word(m.first) != "doms"
    ) or _doms_said(scene, spot)
    if spot.place.name not in ("chest", "breast") and feel.cue in (Cue.SORE, Cue.BURN):
        return False
    match feel.cue:
        case Cue.SORE:
            ill = any(near(scene, m, spot, 8) for m in scene.of(Cue.WINDED, Cue.BREATHLESS, Cue.FAINT, Cue.SWEAT))
            return not ill and (word not in _ACHES or earlier)
        case Cue.TIGHT:
            told = scene.sentence_words(spot.first) & (_PUMPED | _TRAINED_ON)
            return (
                earlier
                and not inside
                and scene.word(spot.first - 1) != "but"
                and bool(scene.of(Cue.PAST))
                and bool(told)
            )
        case Cue.BURN:
            return not inside and bool(scene.sentence_words(spot.first) & _PUMPED)
        case Cue.WHISPER | Cue.QUALITY:
            breathing = scene.sentence_words(spot.first) & {"breathe", "breath", "breathing"}
            return (word in _AT_WORK and not breathing) or (earlier and not inside)
        case Cue.PRESSURE:
            before = scene.words(feel.first - 3, feel.first)
            loaded = before & _LOADED and not before & {"but", "something"} and scene.word(feel.end) == "on"
            return word == "heavy" and (bool(loaded) or not near(scene, spot, feel, 3))
        case _:
            return False


def _doms_said(scene: Passage, spot: Spot) -> bool:
    """`doms`, and no `not doms`."""
    return any(
        scene.word(i) == "doms" and not scene.words(i - 2, i) & {"not", "no", "isn't"}
        for i in range(len(scene.tokens))
        if scene.same_sentence(i, spot.first)
    )


_ENJOYED = word_set("amazing loved love awesome brilliant enjoyed buzzing savage fantastic class")


def winded(scene: Passage) -> Iterator[Sign]:
    """Breath that does not come back; being out of breath after a set is none."""
    for m in scene.of(Cue.BREATHLESS):
        exaggerated = scene.word(m.first) == "can't" and scene.sentence_words(m.first) & _ENJOYED
        exaggerated = exaggerated or scene.words(m.end, m.end + 2) & LAUGHING
        if (
            stands(scene, m)
            and "nose" not in scene.words(m.end, m.end + 4)
            and not exaggerated
            and not _left_by_a_set(scene, m)
            and not _after_a_set(scene, m)
            and not came_back(scene, m)
            and not is_of_a_thing(scene, m)
            and not _elsewhere(scene, m)
        ):
            yield sign_of("breath", (m,), None)
    for m in scene.of(Cue.WINDED):
        if (
            not stands(scene, m)
            or is_of_a_thing(scene, m)
            or (m.doubts and "still" not in scene.sentence_words(m.first))
        ):
            continue
        for s in scene.of(Cue.SETTLE):
            if scene.word(s.first) not in ("still", "keeps", "later", "since") and near(scene, m, s, 6):
                yield sign_of("breath", (m, s), None)
        for i, token in enumerate(scene.tokens):
            timed = token.kind is Kind.TIME or (token.word in _UNITS and scene.word(i - 1) in _MANY)
            timed = timed and not _a_minute(scene, i)
            if timed and _lasting(scene, m, i):
                yield Sign("breath", (*range(m.first, m.end), i), None, m.doubts, m.solid)


_LEFT = word_set("left leaves leaving had has have got gets")
_NO_EFFORT = word_set(
    """
    still can't won't doesn't isn't not since later hour hours minutes mins minute now again walking stairs sitting
    lying rest resting night chest dizzy faint lightheaded tight pain home shower talking asthma inhaler
    """
)


def _left_by_a_set(scene: Passage, m: Mark) -> bool:
    """`left me wheezing at the radio`: how a set left them, with nothing that tells of breath that does not return."""
    at = m.first - 1
    while scene.word(at) in ("absolutely", "properly", "totally", "literally", "a", "bit", "right"):
        at -= 1
    timed = any(t.kind is Kind.TIME and scene.same_sentence(i, m.first) for i, t in enumerate(scene.tokens))
    by_set = scene.word(at) == "me" and scene.word(at - 1) in _LEFT and scene.word(m.first).endswith("ing")
    return by_set and not timed and not scene.sentence_words(m.first) & _NO_EFFORT


def _after_a_set(scene: Passage, m: Mark) -> bool:
    """`short of breath after the 20 rep set, normal`."""
    said = scene.sentence_words(m.first)
    usual = said & {"normal", "usual", "expected"} and not said & {"not", "isn't", "never", "than"}
    short = scene.word(m.first) in ("short", "shortness") and "after" in scene.words(m.end, m.end + 2)
    return bool(usual) and short


_HURTS = (Cue.PAIN, Cue.HURT, Cue.PAINFUL, Cue.SHARP, Cue.SORE, Cue.WHISPER)
_WHERE = frozenset(
    {"upper back", "lower back", "mid back", "back", "neck", "shoulder", "shoulder blade", "trap", "lat"}
)


def _elsewhere(scene: Passage, m: Mark) -> bool:
    """`upper back keeps hurting when i breathe in`: a place that breathing moves, and no breath that fails."""
    if not scene.words(m.first, m.end) & {"when", "to", "if", "as", "in"} or "can't" in scene.words(m.first, m.end):
        return False
    hurts = [h for h in scene.of(*_HURTS) if near(scene, h, m, 8)]
    hurt_in = [s for h in hurts for s in places_of(scene, h)]
    return bool(hurt_in) and all(s.place.name in _WHERE for s in hurt_in)


_UNITS = word_set("minutes minute mins min hour hours")
_MINUTES = word_set("minute minutes min mins")


def _a_minute(scene: Passage, time: int) -> bool:
    """`for a minute`, `2 min`: as long as anybody's breath takes."""
    token = scene.tokens[time]
    if token.kind is Kind.TIME:
        number, _, unit = token.word.partition(" ")
        return number in ("1", "2") and unit in _MINUTES
    counted = scene.word(time - 1)
    return token.word in _MINUTES and counted in ("a", "one", "two") and scene.word(time - 2) != "half"


_MANY = word_set(
    "five ten fifteen twenty thirty forty sixty an a half few couple several of many quarter whole eight twelve"
)


def _lasting(scene: Passage, m: Mark, time: int) -> bool:
    """`20 min later`, `been 20 min`, `still … after 20 min`, said near being out of breath."""
    if abs(time - m.first) > 10 or abs(scene.sentence[time] - scene.sentence[m.first]) > 1:
        return False
    if "sec" in scene.tokens[time].word:
        return False
    still = "still" in scene.words(min(time, m.first) - 4, max(time, m.end) + 2)
    return (
        still
        or scene.word(time + 1) in ("later", "after", "on", "now", "since")
        or bool(scene.words(time - 4, time) & {"for", "been", "last", "past", "over", "since"})
    )


def heart(scene: Passage) -> Iterator[Sign]:
    """Palpitations, and a racing heart that does not settle or comes with sickness."""
    spot = next((s for s in scene.spots if s.place.name == "heart"), None)
    for m in scene.of(Cue.PALPITATION):
        nearly = scene.words(m.first - 2, m.end) & {"nearly", "almost"} and laughed(scene, m)
        if stands(scene, m) and not nearly:
            yield sign_of("palpitations", (m,), spot)
    for m in scene.of(Cue.HEART_RACE):
        lasting = [
            x for x in scene.of(Cue.SETTLE) if near(scene, m, x, 9) and scene.word(x.first) not in ("later", "since")
        ]
        sick = [x for x in scene.of(Cue.SWEAT) if near(scene, m, x, 6) and scene.word(x.first) in ("cold", "clammy")]
        if (lasting or sick or _goes_on(scene, m)) and stands(scene, m) and not laughed(scene, m):
            yield sign_of("heart", (m, *lasting[:1], *sick[:1]), spot)


def _goes_on(scene: Passage, m: Mark) -> bool:
    """`heart racing for 20 min after`: minutes right behind it, longer than anybody's heart races."""
    at = m.end
    while scene.word(at) in _FOR:
        at += 1
    counted = scene.word(at) in _MANY | {"two", "three", "four"} and scene.word(at + 1) in _UNITS - {"minute"}
    if at > m.end and counted and not _a_minute(scene, at + 1):
        return True
    timed = at - m.end > 0 and at < len(scene.tokens) and scene.tokens[at].kind is Kind.TIME
    return timed and not _a_minute(scene, at) and "sec" not in scene.word(at)


_FOR = word_set("since from for been like about still going over nearly almost the last past good a")


def spread(scene: Passage) -> Iterator[Sign]:
    """Pain in jaw and arm, or in either with sweat or sickness: how a heart may hurt."""
    if not any(s.place.name in ("jaw", "arm") for s in scene.spots):
        return
    for m in scene.of(Cue.PAIN, Cue.SHARP, Cue.HURT, Cue.MARK, Cue.SORE, Cue.WHISPER, Cue.CONDITION):
        spots = [s for s in scene.spots if near(scene, s, m, 8)]
        jaw = [s for s in spots if s.place.name == "jaw"]
        arm = [s for s in spots if s.place.name == "arm" and s.side is not None and s.side.value == "left"]
        back = [s for s in spots if s.place.name in ("shoulder blade", "upper back", "stomach")]
        burns = "heartburn" in scene.words(m.first, m.end)
        sweat = [x for x in scene.of(Cue.SWEAT) if near(scene, x, m, 14)]
        if stands(scene, m) and ((jaw and (arm or back)) or ((jaw or arm) and (sweat or burns))):
            first = min((*jaw, *arm), key=lambda s: s.first)
            yield sign_of("heart", (m, first), first)
