"""Idioms that lend a body's words, urgent signs however they are said, a time put better, an end beside the next day.

What is pain, urgent, a time, a set or an end is that of the words; common practice, no source.
"""

import pytest

from bot.notation.pain import told_pain
from tests.notation.plans import read

BENCH = "Bench Press"

TALK = [
    "right now im numb with boredom, two lads glued to the hack squat",
    "numb from boredom, a pair of lads on the bench",
    "im going numb with boredom waiting on the leg press",
    "numb from watching two lads text on the bench",
    "parking round here is a real headache, with you shortly",
    "traffic was such a headache today",
    "the wifi at this gym is a bloody headache",
    "wifi in here is a pain in the neck, sorry for going quiet",
    "the signal in the basement is a massive pain in the neck",
    "my boss is a real pain in the neck, running late",
    "getting parked here was a right headache",
    "what a headache this parking is",
    "new rota is a total headache, might miss thursday",
    "100 x nine, hips locked out every rep",
    "60x5 elbows locked out each time",
    "full lockout, knees locked at the top of every rep",
    "kept the elbows locked on all of them",
    "do you want the knees locked out at the top?",
    "should my elbows be locked at the top or soft",
    "got locked out of my car",
    "knocked it on the head at 10",
    "lets knock it on the head there",
    "plates are all black here, cant tell 15 from 20",
    "power cut, all went dark in here",
    "zero feeling in my glutes on the thrusts",
]


@pytest.mark.parametrize("text", TALK)
def test_idioms_and_form_are_no_pain(text: str) -> None:
    assert told_pain(text) is None


PAIN = [
    ("the wifi is down and i have a real headache", "head"),
    ("real headache with this weather", "head"),
    ("had such a headache all day", "head"),
    ("there is a real pain in the neck when i press", "neck"),
    ("getting up is a real pain in the neck", "neck"),
    ("knee locked up on the last rep", "knee"),
    ("elbow locked out of place", "elbow"),
    ("my knee keeps locking at the top", "knee"),
    ("knees locked on the way up", "knee"),
    ("knocked it on the head with the bar", "head"),
    ("the bar knocked me on the head", "head"),
]


@pytest.mark.parametrize(("text", "where"), PAIN)
def test_a_hurt_in_like_words_is_pain(text: str, where: str) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.where == where


URGENT = [
    "85x9 and now zero feeling in my right calf",
    "hardly any feeling in my right hand",
    "barely any feeling in my left foot since that set",
    "not much feeling in my left leg",
    "my right calf has zero feeling",
    "nothing at all in my right foot when i touch it",
    "right foot is numb, bored of this",
    "left hand numb, boring session",
    "after the deadlift i was falling on the floor for some second, all was black. now is ok",
    "i fell down and all became dark",
    "all turned black when i stood up",
    "i was falling, all dark, then ok",
    "i was on the floor some seconds and dont remember",
    "knee locked out and now i cant bend it",
]


@pytest.mark.parametrize("text", URGENT)
def test_lost_feeling_and_fainting_are_urgent_however_said(text: str) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.urgent


MINUTES = [
    ("an hour, make that 50 minutes", 50),
    ("told you 60 min, more like 45 actually", 45),
    ("can stay an hr. well, 55 minutes realistically", 55),
    ("i have an hour, well 50", 50),
    ("hour minus a shower = 45 min of actual lifting", 45),
    ("somewhere between 30 and 40 mins today so plan on 35", 35),
    ("30 to 40 min today, plan for 35", 35),
    ("three quarters of an hour, maybe a touch less.. put 40 min", 40),
    ("i've an hour. no, 50 min", 50),
    ("i have an hour, scratch that, 45 min", 45),
    ("could do an hour, 50 min is safer", 50),
    ("i have 45 min, or 40 to be safe", 40),
    ("not an hour today, 40 min", 40),
    ("i've 50 min, no wait, 40", 40),
    ("i have an hour, say 15 min for bench", 60),
    ("i have an hour. rested 5 min, bench 60x5", 60),
    ("took me an hour, well 50 min to get here", None),
    ("traffic was an hour, make that 50 minutes", None),
    ("i told you an hour ago, 50 x 5", None),
    ("half an hour till my first call, so that's your lot", 30),
    ("20 min until the bus, thats your lot today", 20),
    ("half an hour max, thats all you get today", 30),
]


@pytest.mark.parametrize(("text", "minutes"), MINUTES)
def test_the_better_time_counts(text: str, minutes: int | None) -> None:
    reading = read(text)
    assert reading.minutes == minutes
    assert reading.ask is None
    assert not reading.finished


SETS = [
    ("knocked it on the head at 5. same weight", 5),
    ("same weight, pulled up at 4", 4),
    ("same bar, pulled the plug at 4", 4),
    ("sacked it off at 5, same load", 5),
    ("bottled it at 4, same weight", 4),
    ("drew the line at 5. same weight", 5),
    ("shut it down at 4, same bar", 4),
    ("same load, ended on 5 bc i felt a twinge", 5),
    ("same load, ended on 4", 4),
    ("same weight, finished on 5 as my back felt tight", 5),
]


@pytest.mark.parametrize(("text", "reps"), SETS)
def test_what_ended_a_set_tells_its_repetitions(text: str, reps: int) -> None:
    reading = read(text, "Bench Press#1 60x5", current=BENCH)
    assert [(p.set, p.reps) for p in reading.performed] == [(2, reps)]
    assert not reading.finished


ENDS = [
    "ok i finished everything thx a lot. next one is tuesday, no forget",
    "i finished everything ty. bye",
    "finished everything tysm coach, next is friday",
    "im finished. tuesday is the next one, dont forget me",
    "finish for today, next training is saturday",
    "finished the lot, tuesday next",
    "knocked it on the head, thats me",
    "ended with 60x5",
    "took half an hour, thats your lot",
]


@pytest.mark.parametrize("text", ENDS)
def test_an_end_counts_beside_thanks_and_the_next_day(text: str) -> None:
    reading = read(text, "Bench Press#1 60x5")
    assert reading.finished
    assert reading.day is None


NO_SETS = [
    "on the 60s do you want a pause every rep?",
    "on the 60s do you want elbows locked out every rep, or is five scrappy ones ok?",
    "with the 16s do you want me to hold the top?",
    "No strength in my left arm all of a sudden, I just dropped the 16",
    "dropped the 60 on the floor",
    "pulled up at 10 to find it shut",
]


@pytest.mark.parametrize("text", NO_SETS)
def test_a_load_asked_about_or_let_fall_is_no_set(text: str) -> None:
    reading = read(text)
    assert reading.performed == ()
    assert reading.ask is None
