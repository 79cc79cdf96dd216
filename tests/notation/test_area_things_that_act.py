"""Things that do as hurt people do, what was long ago and never again, and signs in the words of many; common practice,
no source.

Beside each class of talk stand real signs with the same words, which stay.
"""

import pytest

from bot.notation.pain import told_pain
from bot.training.report import Side

TALK = (
    "my phone's fainted twice already, battery's on its last legs. 60x5",
    "phone keeps blacking out. 60x5",
    "the fan passed out on us, so hot. 60x5",
    "the lamp in the squat corner blacked out, so i lifted in the dark. 60x5",
    "my laptop had a stroke, then the wifi lost consciousness. 60x5",
    "the machine next to me passed out. 60x5",
    "the leg press wheezes and cannot catch its breath, it needs oil. 60x5",
    "treadmill wheezes and can't catch its breath. 60x5",
    "treadmill next to me is screaming like it's in agony. 60x5",
    "that stabbing riff at the end of the track got me through. 60x5",
    "only pain today is the price of petrol. 60x5",
    "only pain today was the queue for the rack. 60x5",
    "bench has a broken leg so i used the other. 60x5",
    "the bench for the hip thrust has a broken leg. 60x5",
    "laughed so hard i nearly wet myself. 60x5",
    "i fainted on a ward in 1987 and never once since. 60x5",
    "broke my collarbone as a kid, haven't felt a thing since. 60x5",
    "when i was child i lose one time the feeling in the hand, never more after. 60x5",
    "broke my wrist in 2010, never bothered me since. 60x5",
    "breathing's back to normal, not been bad. 60x5",
    "goin great, feelin strong. 60x5",
    "fell in love with this bar, didn't know it. 60x5",
    "legs wont support more than 100kg. 60x5",
    "still gasping for a coffee. 60x5",
)
URGENT = (
    "i was on my phone and passed out. 60x5",
    "sat in my car passed out. 60x5",
    "heater on full blast and passed out by the rack. 60x5",
    "rower then blacked out. 60x5",
    "the treadmill made me pass out. 60x5",
    "the bike left me and i cannot catch my breath. 60x5",
    "phone died and i blacked out. 60x5",
    "my watch says hr 190 and its not coming down after 15 min",
    "peed myself on the deadlift and laughed it off. 60x5",
    "laughed so hard i peed myself. 60x5",
    "fainted once when i was 12 and yesterday. 60x5",
    "passed out in 2012 and today, never again. 60x5",
    "hip popped as a kid, never since, but today it popped and i can't stand on it",
    "fell off the bench, broken leg",
    "syncopal episode approx 2 min after, no injury. 60x5",
    "me breathin's not come back since them chins. 60x5",
    "i am thinking the air is not entering well. 60x5",
    "20 minutes sitting and still i gasp. 60x5",
    "chest went heavy like a wet towel laid on it. 60x5",
    "after it i am fallen, the people say two or three seconds i did not answer them. 60x5",
    "legs have no strength in em since and wont hold me. 60x5",
    "my legs won't hold me since the last set. 60x5",
)


@pytest.mark.parametrize("text", TALK)
def test_talk_of_things_and_of_long_ago_is_no_hurt(text: str) -> None:
    assert told_pain(text) is None


@pytest.mark.parametrize("text", URGENT)
def test_signs_with_the_same_words_are_urgent(text: str) -> None:
    said = told_pain(text)
    assert said is not None
    assert said.urgent


def test_a_g_left_out_makes_no_groin() -> None:
    said = told_pain("knees ache a bit goin down, nothin new, 3 out of 10")
    assert said is not None
    assert (said.where, said.score, said.urgent) == ("knee", 3, False)


def test_the_half_of_a_face_is_its_side() -> None:
    said = told_pain("can't feel half my face though, the left half")
    assert said is not None
    assert (said.where, said.side, said.urgent) == ("face", Side.LEFT, True)


def test_seconds_are_no_score() -> None:
    said = told_pain("knee pinched and i did not move for two or three seconds")
    assert said is not None
    assert said.score is None
