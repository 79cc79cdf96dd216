"""Things that do as hurt people do, what was long ago and never again, and signs in the words of many; common practice,
no source.

Beside each class of talk stand real signs with the same words, which stay.
"""

import pytest

from bot.notation.pain import told_pain
from bot.training.report import Side
from tests.notation.plans import read, rows

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
    "one of the heifer calves has a hot swollen joint and the vet's coming. 60x5",
    "one of our calves is hot and swollen at the hock so the vet is coming out to the farm. 60x5",
    "the radio sings all the time about hearts that hurt. 60x5",
    "stabbing cold wind in the barn today. 60x5",
    "fainted once at school in assembly when i was nine, never since. 60x5",
    "in old times i had pain in shoulder, but since ten years nothing. 60x5",
    "blew out my knee playing hockey in '98, never had a peep outta it since, just filling in your form. 60x5",
    "had a hernia done as a boy and nothing from it in forty years since. 60x5",
    "the chest freezer died. 60x5",
    "coffee machine here pisses out stuff dark as tar. 60x5",
    "the bar stabs the floor every rep. 60x5",
    "collar popped clean off the bar and shot across the room, nobody hurt. 60x5",
    "my doctor asked about numbness, weakness and trouble with the waterworks; i answered no to all three. 60x5",
    "negative for chest pain, dizziness or numbness. 60x5",
    "steering's gone numb in the old wagon. 60x5",
    "total collapse of morale. 60x5",
    "machine is a little bit painful to adjust. 60x5",
    "that's 60 and not 62, fat fingers",
    "this new booking system is one massive headache, took me ages to get in. 60x5",
    "that new track blew my head clean off. 60x5",
    "you're a pain in the neck making me do these. 60x5",
    "dad had a stroke so my head is elsewhere, he can't feel his left side. 60x5",
    "the wee man's calf is all hot and swollen from a bee sting, his mum has taken him. 60x5",
    "burst my water bottle, shorts soaked, looks like i wet myself lol. 60x5",
    "my heart is broken, they've taken the good rack away. 60x5",
    "that stabbing scene in episode four. 60x5",
    "this song stabs me right in the heart every time. 60x5",
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
    "i believe that i will fall in the apples, all becomes white and i must lie down. 60x5",
    "the world switched itself off for one moment, a guy has held me. 60x5",
    "my right arm, i say to it lift and it doesn't lift. 60x5",
    "my right leg just wouldn't do what i told it. 60x5",
    "the breath no come back. 60x5",
    "left calf's up like a footy and hot as. 60x5",
    "in my chest there is a pressing which comes and goes. 60x5",
    "i have felt a pop in my left ankle and now it is not possible to stand on it",
    "at the farm all day, my calf is hot and swollen. 60x5",
    "left calf swollen and hot, vet tomorrow for the dog. 60x5",
    "doctor asked about chest pain and i said yes to all. 60x5",
    "collapsed off the rower. 60x5",
    "hands went numb on the steering wheel. 60x5",
    "foot gone numb on the clutch. 60x5",
    "dyspnoea at rest since the set. 60x5",
    "got a hot swollen calf, taking the dog to the vet later. 60x5",
    "it stabbed me right in the heart on rep 3. 60x5",
    "i have one swollen hot calf and a vet bill. 60x5",
    "stabbing cold pain in my chest. 60x5",
    "fan in the corner broken nearly fainted. 60x5",
    "heating on full nearly fainted. 60x5",
    "breathing not back, can't talk. 60x5",
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


PLAIN = (
    ("you asked about my knee: hurts, no to the lunges. 60x5", "knee"),
    ("like in the old days my knee hurts. 60x5", "knee"),
    ("knee hurt in the past and hurts now. 60x5", "knee"),
    ("heel hurts in these dumb shoes. 60x5", "heel"),
    ("my fingers are fat and swollen today. 60x5", "finger"),
    ("knee hurt as a kid, but today it hurts. 60x5", "knee"),
)


@pytest.mark.parametrize(("text", "where"), PLAIN)
def test_hurts_with_words_of_talk_stay(text: str, where: str) -> None:
    said = told_pain(text)
    assert said is not None
    assert (said.where, said.urgent) == (where, False)


SIGNS = (
    "my chest hurts", "chest pain", "pressure on my chest", "i fainted", "i nearly passed out", "everything went black",
    "i can't breathe", "can't catch my breath", "i can't breathe or talk", "sudden splitting headache",
    "i can't feel my left hand", "my arm went numb", "my left arm has no strength", "i can't lift my arm",
    "my leg gave way and won't hold me", "my words come out slurred", "i wet myself on that set",
    "i lost control of my bladder", "my knee popped and i can't stand on it", "my calf is hot and swollen",
    "my pee is brown", "heart is racing and won't calm down", "coughing up blood", "dizzy",
)  # fmt: skip
BESIDE = (
    "no pain, {}", "no pain but {}", "no pain. {}", "{}, no pain", "{} but no pain", "{}. no pain though", "{} lol",
    "all good, {}", "not a big deal but {}", "probably nothing, {}", "don't worry, {}", "my knee is fine, {}",
    "60x5, {}", "{}. 60x5", "60x5 but {}", "no idea why, {}", "{}, no idea why", "not sure if it matters but {}",
    "hey coach {}", "oh and {}", "since the last set {}", "{} again", "{} and i had to sit down", "{} so i stopped",
    "{}, should i stop?", "is it normal that {}", "could be nothing but {}", "not hurting but {}",
    "it doesn't hurt but {}", "no rows today, {}", "skip rows, {}", "i'm not joking, {}", "good session but {}",
    "that's me done, {}", "{} otherwise fine", "my mate says i'm fine but {}", "don't know why {}", "not bad, {}",
)  # fmt: skip
"""What people say before and behind a sign, none of which takes it back."""


@pytest.mark.parametrize("beside", BESIDE)
def test_a_sign_stays_urgent_whatever_stands_beside_it(beside: str) -> None:
    heard = {sign: told_pain(beside.format(sign)) for sign in SIGNS}
    assert [sign for sign, said in heard.items() if said is None or not said.urgent] == []


@pytest.mark.parametrize(
    "beside",
    [
        "60x5, {}", "{}. 60x5", "60x5 but {}", "60x5 and {}", "60x5 {}", "{}, 60x5", "bench 60x5, {}",
        "{} after bench 60x5", "did 60 for 5 and then {}", "60x5 then {}", "{} on that set, 60x5",
        "60x5. {}. should i go on?", "sixty for five {}", "60x5, {} for 10 min now", "60x5 (but {})", "60x5\n{}",
        "{}\n60x5", "60x5 - {}", "{} - 60x5", "{} during my last set which was 60x5",
    ],
)  # fmt: skip
def test_the_set_beside_a_sign_is_kept(beside: str) -> None:
    """Nothing of the sign is a set, an end, a skip or a question back, and the set is no less kept."""
    heard = {sign: read(beside.format(sign)) for sign in SIGNS}
    kept = (rows("Bench Press#1 60x5"), None, (), False, None)
    told = {s: (r.performed, r.ask, r.skipped, r.finished, r.minutes) for s, r in heard.items()}
    assert [sign for sign, said in told.items() if said != kept] == []
