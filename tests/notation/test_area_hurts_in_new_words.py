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


def test_the_score_of_an_ache_that_is_mentioned_is_no_set() -> None:
    reading = read("60x6 60x5. i might mention a mild ache at the left elbow, perhaps two out of ten.")
    assert reading.ask is None
    assert reading.performed == rows("Bench Press#1 60x6", "Bench Press#2 60x5")
    assert reading.pain == PainSaid("elbow", 2, L, urgent=False)
