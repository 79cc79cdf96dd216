"""Hurts and signs in words that were new to the reader, and talk that only sounds like them.

Common practice, no source: how people in a gym put it, English as a second language among them. Beside each class of
talk stand real hurts with the same words, which stay.
"""

import pytest

from bot.notation.pain import told_pain
from bot.training.pain import PainSaid
from bot.training.report import Side
from tests.notation.plans import read, rows

L, R = Side.LEFT, Side.RIGHT
Said = tuple[str, str | None, int | None, Side | None]
URGENT: tuple[Said, ...] = (
    # typed, where, score, side
    ("today in the chest it presses me when i climb the stairs. 60x5", "chest", None, None),
    ("in the chest presses me when i walk", "chest", None, None),
    ("in the chest me presses. 60x5", "chest", None, None),
    ("the chest presses me when i climb", "chest", None, None),
    ("in the breast something pulls me when i breathe", "breast", None, None),
    ("feels like somebody parked a van on my chest, ah well. 60x5", "chest", None, None),
    ("felt as if someone dropped a brick on my chest", "chest", None, None),
    ("feels like some bloke sat on my chest. 60x5", "chest", None, None),
    ("feels as though a man is kneeling on my chest", "chest", None, None),
    ("feels like a wardrobe on my chest. 60x5", "chest", None, None),
    ("like a caravan parked on my chest", "chest", None, None),
    ("felt like someone pulled the rug, woke up on the floor", None, None, None),
    ("felt like somebody switched the lights off. 60x5", None, None, None),
    ("felt like someone shot my calf, can't stand on it now", "calf", None, None),
    ("both legs feel like they're not there since then. 60x5", "leg", None, None),
    ("arms feel like they're not there", "arm", None, None),
    ("my hands feel like they're not mine", "hand", None, None),
    ("hands feel like they're someone else's", "hand", None, None),
    ("my feet are not mine today. 60x5", "foot", None, None),
    ("feet don't feel attached", "foot", None, None),
    ("both legs, i can't feel them at all. 60x5", "leg", None, None),
    ("pinched both my legs and felt nothing", "leg", None, None),
    ("you could poke my legs and i'd not feel it", "leg", None, None),
    ("touched my feet and can't feel it", "foot", None, None),
    ("the legs do not answer me", "leg", None, None),
    ("the hand sleeps me since the set", "hand", None, None),
    ("pressure in the chest on exertion, 4/10, settles within a minute. 60x5", "chest", 4, None),
    ("chest pain on mild exertion 6/10", "chest", 6, None),
    ("right side of me face has gone all slack and i sound drunk. 60x5", "face", None, R),
    ("left side of me mouth is drooping", "mouth", None, L),
    ("me left arm's gone numb. 60x5", "arm", None, L),
    ("summat popped in me right shoulder, cant get the arm up past me belt now", "shoulder", None, R),
    ("can't feel me legs", "leg", None, None),
    ("pop goes the ankle! cannot stand on it at all. right one of course", "ankle", None, R),
    ("ankle went pop, can't stand on it. the left one, naturally", "ankle", None, L),
    ("something make crack in the wrist right and now is not possible to hold the dumbbell", "wrist", None, R),
    ("pop in the knee and no possible to walk", "knee", None, None),
    ("is not possible for me to stand, the ankle made crack", "ankle", None, None),
    ("i heard crack in knee, no can stand", "knee", None, None),
    ("something did crack in the shoulder and impossible lift it", "shoulder", None, None),
    ("tmi but it looked like stout in the bowl when i went for a pee just now, anyway 60x5", None, None, None),
    ("went for a slash and the bowl was the colour of port", None, None, None),
    ("looked like someone poured gravy in the pan after i peed", None, None, None),
    ("what came out was like cola. 60x5", None, None, None),
    ("the pee she is brown", None, None, None),
    ("the air lacks me", None, None, None),
    ("heart makes me jumps. 60x5", "heart", None, None),
    ("acute weakness of the right quad, unable to straighten against gravity. pain nil.", "quad", None, R),
    ("can't feel my left foot, pain 0/10", "foot", None, L),
)
PAIN: tuple[Said, ...] = (
    ("60x5 60x5. i might mention a mild ache at the left elbow, perhaps two out of ten.", "elbow", 2, L),
    ("60x5, i would also report a pinch in the hip", "hip", None, None),
    ("i'll flag the left knee pain, 4/10. 60x5", "knee", 4, L),
    ("in the lower back something pulls me", "lower back", None, None),
    ("in the knee it pricks me when i squat", "knee", None, None),
    ("felt as if somebody kicked me in the calf, sore since", "calf", None, None),
    ("knee pain on effort, 3/10", "knee", 3, None),
    ("pain in the knee right and then gone, back again now", "knee", None, R),
    ("wrist hurts. left wrist btw", "wrist", None, L),
    ("me left knee hurts. 60x5", "knee", None, L),
    ("pins and needles down me arm", "arm", None, None),
)


@pytest.mark.parametrize(("typed", "where", "score", "side"), URGENT)
def test_signs_in_new_words_are_urgent(typed: str, where: str | None, score: int | None, side: Side | None) -> None:
    assert told_pain(typed) == PainSaid(where, score, side, urgent=True)


@pytest.mark.parametrize(("typed", "where", "score", "side"), PAIN)
def test_hurts_in_new_words_are_pain(typed: str, where: str | None, score: int | None, side: Side | None) -> None:
    assert told_pain(typed) == PainSaid(where, score, side, urgent=False)


TALK = (
    # kit that pops, snaps and collapses
    "a pin popped out of the rack and now it won't hold, moved to the other one. 60x5",
    "one of the bolts snapped and the seat won't move. 60x5",
    "a bolt on the leg press snapped and it won't hold. 60x5",
    "the pin popped out of its place. 60x5",
    "a wheel popped off the sled and it won't push. 60x5",
    "heard a pop from the stack and it wont move. 60x5",
    "the incline bench's back is broken and the seat's collapsed, where else can i do it?",
    "the stool collapsed, don't know how. 60x5",
    "spring's gone on the clip, it pops off every rep. 60x5",
    "whole rig collapsed, gym shut. 60x5",
    "the seat collapsed on me. 60x5",
    "bench collapsed mid set",
    "the deal collapsed, 60x5",
    "stool's leg snapped and it won't stand. 60x5",
    # what is held and has no feeling
    "handles on the pulldown are so worn theres no feeling left in the rubber. 60x5",
    "no feeling in these old handles. 60x5",
    "no feeling left in the grips on that bar. 60x5",
    # an oath
    "bleedin freezing in here, 60x5",
    "bleedin hot in here. 60x5",
    "bleeding knackered. 60x5",
    "the bleedin bar is bent. 60x5",
    # spilt
    "spilt cola all down my shorts, looks like an accident, it isn't. 60x5",
    "dropped my shake on my leggings, looks like i had an accident. 60x5",
    # lost, and shot down
    "we lost in the last second, gutting. 60x5",
    "lost the final in the dying seconds. 60x5",
    "lost by half a second. 60x5",
    "got shot down for the promotion, took it out on the bar. 60x5",
    "my idea was shot down again. 60x5",
    # slept on
    "neck is stiff from sleeping funny. 60x5",
    "stiff neck, slept weird. 60x5",
    "neck stiff from a dodgy pillow. 60x5",
    "neck stiff, dodgy hotel pillow. 60x5",
    "hip was stiff from sitting funny on the train. 60x5",
    # only supposed, somebody else's
    "i might report any ache in the elbow. 60x5",
    "i will mention if the knee hurts. 60x5",
    "my mate feels like somebody parked a van on his chest. 60x5",
    "looks like someone fainted on my bench. 60x5",
    "in the legs it hits me good today. 60x5",
    "in the chest it helps me. 60x5",
    "in the chest nothing presses me. 60x5",
    "what came out of the machine was like cola. 60x5",
    "feels like someone turned the heating off. 60x5",
    "the rowing machine squeaks as if it were in pain. 60x5",
    "legs weren't there today, 60x5",
    "did arms, can't feel them working. 60x5",
    "stuck the legs on the end, don't know why. 60x5",
    "no can do. 60x5",
)


@pytest.mark.parametrize("typed", TALK)
def test_talk_that_only_sounds_like_it(typed: str) -> None:
    assert told_pain(typed) is None


STAYS_URGENT = (
    # kit beside a body
    "felt a pop like a pin, knee won't hold",
    "something popped on the seat and now i can't stand on it",
    "popped something when the bench collapsed, can't lift my arm",
    "knee popped out of place as the pin dropped",
    "the pin dropped and my knee popped, can't stand on it",
    "felt a pop from the stack up, knee won't hold",
    "finished the bench collapsed on the floor",
    "60x5 bench collapsed after",
    "got off the bench collapsed",
    "on the chair collapsed again",
    "walked to the seat collapsed",
    "my pins collapsed under me",
    "missed the rep and rack collapsed",
    "nearly collapsed in the chair",
    "sat on the stool and collapsed",
    "because of the heater fainted",
    "the seat collapsed and so did i",
    "the seat collapsed and i blacked out",
    "a cable snapped on me and now i can't move",
    "a strap popped and i can't lift my arm now",
    "chest is tight from sleeping funny",
    "jaw stiff from sleeping funny and left arm aches",
    "the bench was fine, felt it pop and it won't bend",
    "on the bench, it popped and my knee won't bend",
    # no feeling
    "no feeling left in the grip",
    "no feeling in the grip hand",
    "no feeling in my grip since the set",
    "no feeling in the bar hand",
    "no feeling in the pad of my thumb",
    "worn handles, no feeling left in the fingers",
    "no feeling from the seat down",
    "no feeling left in it",
    # blood, water and control
    "bleeding badly",
    "can't stop bleeding, cold",
    "looks like an accident in my shorts, didnt feel it",
    "spilt my tea when i had an accident in my shorts",
    "spilt water, looks like an accident in my shorts but i peed",
    "accident in my pants on the last rep",
    # lost seconds
    "lost a few seconds in the last set",
    "lost consciousness in the last seconds of the hold",
    "lost my sight in the last second",
    "lost two seconds, woke on the floor",
    "lost a second there, came to on the floor",
    "nearly lost consciousness in the final second",
    # nought beside a sign
    "calf hot and swollen 0/10 pain",
)


@pytest.mark.parametrize("typed", STAYS_URGENT)
def test_near_ones_stay_urgent(typed: str) -> None:
    told = told_pain(typed)
    assert told is not None
    assert told.urgent


SIGNS = (
    *("chest pain", "i fainted", "can't breathe", "left leg went numb", "no feeling in my right hand"),
    *("knee popped and can't stand on it", "calf is hot and swollen", "pee was like cola", "i collapsed"),
    *("lost control of my bladder", "worst headache ever, sudden", "face is drooping", "blacked out on the last rep"),
    *("passed out for a few seconds", "arm won't move", "nearly fainted", "vision went black", "wet myself"),
)
BEFORE = (
    *(
        "a pin popped out of the rack, ",
        "a pin popped out of the rack and ",
        "the seat collapsed and ",
        "bench collapsed, ",
    ),
    *("no feeling left in the handles, ", "worn handles have no feeling left in them and ", "bleeding knackered and "),
    *(
        "bleedin freezing in here, ",
        "spilt cola down my shorts, looks like an accident, but ",
        "we lost in the last second, ",
    ),
    *(
        "we lost in the last second and ",
        "got shot down for the job, ",
        "my idea was shot down and ",
        "the pin, it popped, ",
    ),
    *("neck stiff from sleeping funny, ", "neck stiff, dodgy pillow and ", "feels like someone parked a van, "),
    *("i might mention ", "stool's leg snapped and ", "heard a pop from the stack and ", "feels ok if i dont turn, "),
)
BEHIND = (
    *(", a pin popped out of the rack", ", the seat's collapsed", " and the bench collapsed", ", bleedin freezing"),
    *(", no feeling left in the rubber", ", spilt cola, looks like an accident", ", we lost in the last second"),
    *(", got shot down for the job", ", neck stiff from sleeping funny", ". pain nil", ", right of course"),
    *(" on exertion", ", feels ok if i dont turn"),
)


@pytest.mark.parametrize("sign", SIGNS)
def test_no_talk_beside_a_sign_silences_it(sign: str) -> None:
    """Whatever of the talk above stands before it or behind it."""
    beside = [before + sign for before in BEFORE] + [sign + behind for behind in BEHIND]
    missed = [typed for typed in beside if (told := told_pain(typed)) is None or not told.urgent]
    assert missed == []


STAYS_PAIN = (
    "hands bleeding, cold",
    "my knuckle is bleeding hot and sore",
    "bleeding hard from the shin",
    "nose bleeding hard",
    "bleeding a bit",
    "cut myself, bleeding cold",
    "i'm still bleeding, freezing in here",
    "bleeding fast",
    "something shot down my leg",
    "shot down the arm",
    "pain got shot down my leg",
    "got shot down the leg by a zap",
    "slept funny and now my neck is off",
    "slept funny, neck hurts",
    "neck feels funny and stiff",
    "slept on my neck funny",
    "neck stiff from sleeping funny and can't turn my head",
    "back stiff, sleeping badly, and it feels weird",
    "neck is not stiff but slept funny",
    "stiff neck from sleeping wrong, 3/10",
    "the bench's hurting my back",
    "squats give me knee grief",
    "knee squeaks as if it were in pain",
    "knee feels as if it will give",
)


@pytest.mark.parametrize("typed", STAYS_PAIN)
def test_near_ones_stay_pain(typed: str) -> None:
    assert told_pain(typed) is not None


@pytest.mark.parametrize(
    "typed",
    [
        "knee hurts. right of course i stopped",
        "knee hurts. Right then, rows",
        "ankle sore. right as rain otherwise",
        "twinge in the wrist right and left",
        "pain in my knee right when i land",
    ],
)
def test_a_right_that_is_no_side(typed: str) -> None:
    told = told_pain(typed)
    assert told is not None
    assert told.side is None


@pytest.mark.parametrize(
    "typed",
    [
        "rows 40x12, effort 8/10, knee twinge",
        "knee twinge, effort 8/10",
        "knee twinge on the last, 8/10 effort",
        "hip sore, with effort at 8/10",
    ],
)
def test_effort_out_of_ten_is_no_pain_out_of_ten(typed: str) -> None:
    told = told_pain(typed)
    assert told is not None
    assert told.score is None


def test_me_back_comes_back() -> None:
    """`text me back` names no place."""
    assert told_pain("text me back. 60x5") is None


@pytest.mark.parametrize(
    "typed",
    [
        "60x5, tweaked something by my right shoulder blade, feels ok if i dont turn",
        "60x5, feels pretty ok if i dont turn",
        "60x5, knee was ok if i went slow",
        "60x5, seems okay if the elbows stay in",
    ],
)
def test_what_feels_ok_asks_nothing(typed: str) -> None:
    assert not read(typed).question


@pytest.mark.parametrize(
    "typed",
    [
        "ok if i skip rows",
        "60x5, is it ok if i dont turn",
        "60x5, would be ok if i skip rows",
        "felt good ok if i skip rows",
        "60x5, it feels off, ok if i stop",
        "feels ok if i go light?",
    ],
)
def test_leave_that_is_asked_asks(typed: str) -> None:
    assert read(typed).question


def test_the_score_of_an_ache_that_is_mentioned_is_no_set() -> None:
    reading = read("60x6 60x5. i might mention a mild ache at the left elbow, perhaps two out of ten.")
    assert reading.ask is None
    assert reading.performed == rows("Bench Press#1 60x6", "Bench Press#2 60x5")
    assert reading.pain == PainSaid("elbow", 2, L, urgent=False)
