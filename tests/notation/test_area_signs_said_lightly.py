"""Urgent signs that are told in passing or as a joke, hurts in odd words, and what only looks like them.

Common practice, no source; which signs are urgent stands beside the rules of `bot.notation.hurt`.
"""

import pytest

from tests.notation.plans import read, rows

URGENT = [
    "since the deads i sort of leak without noticing. tmi sorry mate",
    "leaking pee without feeling it since the squats",
    "chest feels like a belt's been pulled round it since the second set. 60x5",
    "feels like a strap round my chest",
    "code brown on that third pull, didnt feel it coming at all. 60x5",
    "had a little accident on the last rep, never felt it coming",
    "60x5 then BOOM back of my head, from zero to worst ever in a second",
    "The breath I lost on the carries an hour ago has not yet returned, I'm afraid.",
    "the right foot, now i not feel it. what i do?",
    "my hand, i don't feel it",
    "i touch the inside of my thighs and feel nothing there",
    "had a stroke on the bike",
    "i was on the bike, had a stroke i think",
    "no swelling but the calf is red and hot",
    "my foot is dead right now",
    "my foot went dead straight after",
    "my left hand is dead straight away after the set",
]


@pytest.mark.parametrize("text", URGENT)
def test_a_sign_is_urgent_however_lightly_it_is_told(text: str) -> None:
    pain = read(text, current="Bench Press").pain
    assert pain is not None
    assert pain.urgent


HURTS = [
    ("in the top of the step something bite me in the knee, left. 60x5", "knee"),
    ("theres a little electric thing down my neck when i look up", "neck"),
    ("60x5. forearm burning, NOT the good burn, even with the weight down", "forearm"),
    ("knee woke me up last night", "knee"),
    ("dead honest the achilles is a 7/10 today. left. havent started yet", "achilles"),
    ("promise you wont make it a thing but my tailbone stings", "tailbone"),
]


@pytest.mark.parametrize(("text", "where"), HURTS, ids=[text for text, _ in HURTS])
def test_a_hurt_in_odd_words_is_none_that_is_urgent(text: str, where: str) -> None:
    reading = read(text, current="Bench Press")
    assert reading.pain is not None
    assert (reading.pain.where, reading.pain.urgent, reading.skipped) == (where, False, ())


NONE = [
    "can't breathe for laughing at a man curling in a tie. 60x5",
    "the ute had a stroke in the car park, running late, be there soon",
    "my laptop had a stroke",
    "calf checked, no swelling no heat no pain. 60x5",
    "got my breath back, next set soon",
    "my bottle leaks without me noticing",
    "forearms burning, the good burn",
    "the baby woke me twice in the night",
    "dropped a plate by accident, didnt know it was loose",
    "skipped it by accident, did not notice",
    "ate brown rice, never felt so heavy",
    "touch the floor with my fingers, nothing to it",
]


@pytest.mark.parametrize("text", NONE)
def test_what_only_looks_like_a_hurt_is_none(text: str) -> None:
    assert read(text, current="Bench Press").pain is None


def test_a_set_behind_the_reason_why_nothing_hurts_is_kept() -> None:
    reading = read("the shoulder doesnt hurt anymore since we changed the angle pushdown twenty five for twelve")
    assert (reading.performed, reading.pain) == (rows("Triceps Pushdown#1 25x12"), None)
