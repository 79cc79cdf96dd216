"""Talk with the words of a hurt, and hurts whose place or urgency was heard wrong; common practice, no source.

Beside each class of talk stand real signs with the same words, which stay.
"""

import pytest

from bot.notation.pain import told_pain
from tests.notation.plans import read

TALK = (
    "dude next to me fainted mid set, ambulance and everything, hes good now. 60x5",
    "lad on the next bench passed out, 60x5",
    "some bloke fainted by the racks",
    "woman beside me collapsed on the rower, medics came. 60x5",
    "girl near me blacked out after her set. 60x5",
    "man opposite me had chest pains, all fine. 60x5",
    "phone passed out agn, batt at 2%. 60x5",
    "laptop blacked out mid set so no log. 60x5",
    "my watch fainted on me again, no battery. 60x5",
    "treadmill passed out, power cut. 60x5",
    "ths playlist knockd me out cold so boring. 60x5",
    "that film put me out cold, so dull. 60x5",
    "podcast knocked me out, boring as anything. 60x5",
    "this preworkout is dark as old pee n tastes worse. 60x5",
    "the coffee here is brown as pee. 60x5",
    "this tea looks dark like wee. 60x5",
    "quite numb with joy in fact, my sister won. 60x5",
    "numb with relief after that exam. 60x5",
    "left me numb with pride, my lad graduated. 60x5",
    "i was without air but after one minute i breathe normal again, all good. 60x5",
    "couldn't get air on that last rep, then breath back after 30 sec, fine. 60x5",
    "in 2018 i faint one time in the heat, doctor check everything and never again. 60x5",
    "fainted once in 2015 on a hot day, checked out, never again since. 60x5",
    "passed out in 2012, never happened again. 60x5",
    "tore me left calf in 2009, blew up like a marrow, been grand ever since. 60x5",
    "tore my calf in 2011, been fine ever since. 60x5",
    "popped my knee in 2014, couldn't walk, been sound ever since. 60x5",
    "this parking lot is one giant headache. 60x5",
    "new foreman's a right pain in the neck. 60x5",
    "traffic was a massive headache. 60x5",
    "the new manager is one big headache. 60x5",
    "my landlord's a right pain in the neck. 60x5",
    "that app is a total pain in the neck. 60x5",
    "the divorce has been one long headache lol 60x5",
    "this machine screams like it's in agony, needs oil. 60x5",
    "bench squeaks like its in agony, needs oil. 60x5",
    "door creaks like someone in pain. 60x5",
    "the cable groans like it's in pain. 60x5",
    "It hurts me to say it, but your plan is working. 60x5",
    "hurts to admit but you were right. 60x5",
    "pains me to say, the rows were good. 60x5",
    "kills me to admit it, 60x5",
    "ouch, just saw the score of the game. 60x5",
    "ouch, looked at my electric bill. 60x5",
    "ouch just read the news, fuel price again. 60x5",
    "the price o they new plates is hurtin ma wallet. 60x5",
    "that membership is hurting our budget. 60x5",
    "breathless? me? was singin btwn sets. 60x5",
    "was swingin kettlebells with the lads, 60x5",
    "nae pain, nae bother. 60x5",
    "knee isnae sore the day. 60x5",
    "didnae hurt at all. 60x5",
    "calf checked, isn't hot or swollen. 60x5",
    "calf not red, not swollen, all fine. 60x5",
    "hurts to say it but good plan. 60x5",
    "there could be pain in my knee tomorrow. 60x5",
)


@pytest.mark.parametrize("text", TALK)
def test_talk_of_others_things_and_long_ago_is_no_hurt(text: str) -> None:
    assert told_pain(text) is None


URGENT = (
    "dude i fainted mid set. 60x5",
    "dude nearly passed out, 60x5",
    "guy next to me spotted me and i fainted. 60x5",
    "woman beside me caught me when i collapsed. 60x5",
    "a plate knocked me out cold. 60x5",
    "phone fell and i passed out. 60x5",
    "phone in hand i passed out. 60x5",
    "sat in my car passed out. 60x5",
    "on the treadmill blacked out. 60x5",
    "playlist on, knocked out cold by the bar. 60x5",
    "blacked out during that song. 60x5",
    "my pee is dark as coffee. 60x5",
    "pee looks like this preworkout, dark brown. 60x5",
    "wee is dark as old tea. 60x5",
    "it came out dark as old cola, the pee. 60x5",
    "fingers numb with every rep. 60x5",
    "left arm numb with the bar on my back. 60x5",
    "numb from the waist down. 60x5",
    "without air and still can't breathe normal. 60x5",
    "couldn't breathe, took 20 minutes until i breathe normal again. 60x5",
    "couldn't breathe, chest tight, back to normal breathing after a minute. 60x5",
    "can't breathe, it is not back to normal. 60x5",
    "fainted in 2018 and again today. 60x5",
    "in 2018 i fainted, and i fainted again this morning. 60x5",
    "passed out today, never again. 60x5",
    "calf not right, hot and swollen. 60x5",
    "calf swollen but not hot. 60x5",
    "right calf isn't normal, puffy and warm. 60x5",
    "calf is hot and swollen, not sore. 60x5",
    "not just hot but swollen calf. 60x5",
    "cannae feel ma foot. 60x5",
    "nae breath left, cannae get it back. 60x5",
    "cannae breathe right, 60x5",
    "sudden massive headache, worst of my life. 60x5",
    "passed out in 2012 and today, never again. 60x5",
    "my coffee is black and my pee is brown 60x5",
    "tea like pee. pee dark brown today. 60x5",
)


@pytest.mark.parametrize("text", URGENT)
def test_signs_with_the_same_words_stay_urgent(text: str) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.urgent


PLACED = (
    ("woke up at 3 with cramp in my right calf, not hot, not swollen, just cramp. 60x5", "calf", "right"),
    (
        "took a cleat to the right calf at soccer, bruised and it hurts, not hot or puffy or anything. 60x5",
        "calf",
        "right",
    ),
    ("left calf sore to touch, no heat, no swelling. 60x5", "calf", "left"),
    ("calf strain, right side, not red or warm. 60x5", "calf", "right"),
    ("nae pop, nae drama, jist ma right hamstring nippin at the bottom. 60x5", "hamstring", "right"),
    ("ma left knee's nippin. 60x5", "knee", "left"),
    ("My thumb is none too pleased with that handle, a bit sore at the joint. 60x5", "thumb", None),
    ("60x5 and id be lyin if i said the wrist felt great, kinda sore in the joint", "wrist", None),
    ("elbow is not a fan of these, ache in the tendon. 60x5", "elbow", None),
    ("my big toe again, pain in the joint. 60x5", "toe", None),
    ("shoulder was moaning, bit of pain at the joint. 60x5", "shoulder", None),
    ("wrist fine, sore at the joint of the thumb. 60x5", "thumb", None),
    ("knees fine, pain in the joint of my big toe. 60x5", "toe", None),
    ("nae greetin fae me but ma left forearm's throbbin like a disco. 60x5", "forearm", "left"),
    ("maybe pain, maybe not pain, in the left wrist when i hold the bar. 60x5", "wrist", "left"),
    ("perhaps pain perhaps not, left knee. 60x5", "knee", "left"),
    ("pain or not pain, i can't tell, right wrist. 60x5", "wrist", "right"),
    ("60x5 lft shldr kinda ouch", "shoulder", "left"),
    ("rt shldr twinge 60x5", "shoulder", "right"),
    ("60x5 low bk twinge nbd", "lower back", None),
    ("60x5 lower bk pain", "lower back", None),
    ("bk hurts 60x5", "back", None),
    ("elbw sore 60x5", "elbow", None),
    ("60x5 scar stings a smidge when i brace", "scar", None),
    ("op scar is sore, 60x5", "scar", None),
    ("scar on my knee hurts 60x5", "knee", None),
    ("there is a real pain in the neck. 60x5", "neck", None),
    ("my shoulder's a right pain. 60x5", "shoulder", None),
    ("got one giant headache. 60x5", "head", None),
    ("left knee squeaks like it's in agony. 60x5", "knee", "left"),
    ("i screamed like i was in agony, elbow. 60x5", "elbow", None),
    ("it hurts me to lift. 60x5", None, None),
    ("hurts to say ah, jaw. 60x5", "jaw", None),
    ("ouch that hurt, knee. 60x5", "knee", None),
    ("ouch, elbow got caught. 60x5", "elbow", None),
    ("ouch that one, fine now. 60x5", None, None),
    ("hurtin ma wrist. 60x5", "wrist", None),
    ("stingin in ma hand. 60x5", "hand", None),
    ("knee isnae right. 60x5", "knee", None),
    ("calf cramped, didnae swell. 60x5", "calf", None),
    ("might be pain in my right elbow. 60x5", "elbow", "right"),
    ("could be a sharp pain in the hip, hard to say. 60x5", "hip", None),
    ("i have had one long headache. 60x5", "head", None),
    ("hurts to say ah, jaw. 60x5", "jaw", None),
)


@pytest.mark.parametrize(("text", "where", "side"), PLACED)
def test_the_place_and_side_that_was_meant_is_kept(text: str, where: str | None, side: str | None) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert (pain.where, pain.side and pain.side.value, pain.urgent) == (where, side, False)


@pytest.mark.parametrize("text", [*TALK[:1], *URGENT[:1], *(row[0] for row in PLACED[:1])])
def test_the_set_beside_it_is_kept(text: str) -> None:
    reading = read(text, current="Bench Press")
    assert [(p.load and f"{p.load.amount:f}", p.reps) for p in reading.performed] == [("60", 5)]


KEPT = (
    "my legs today are two pieces of concrete. 60x5",
    "three pieces of toast for breakfast. 60x5",
    "arms like two pieces of wood, 60x5",
    "heart stoppd when my crush walkd in lol. 60x5",
    "bar droppd on the rack, loud. 60x5",
    "i popped out to feed the meter and now im back bench press sixty for five",
    "im back bench press 60x5",
    "came back bench 60x5",
)


@pytest.mark.parametrize("text", KEPT)
def test_a_set_beside_such_talk_is_kept_and_nothing_is_asked(text: str) -> None:
    reading = read(text, current="Bench Press")
    assert reading.ask is None
    assert reading.pain is None
    assert not reading.skipped
    assert [(p.load and f"{p.load.amount:f}", p.reps) for p in reading.performed] == [("60", 5)]


@pytest.mark.parametrize("text", ["im back squatting 60x5", "back squat 60x5"])
def test_a_back_squat_that_the_session_lacks_is_asked_about(text: str) -> None:
    assert read(text, current="Bench Press").ask is not None


def test_pieces_by_themselves_count_repetitions() -> None:
    assert [p.reps for p in read("60 for 5 pieces", current="Bench Press").performed] == [5]
