"""Urgent signs told by what the client cannot do: hold water, get breath, feel what is done to a limb, stand on a knee.

The wordings are made from verbs, times and negations of many people's English; those marked `!` are none. The signs:
the table of major signs in the ACSM Guidelines; British Association of Spine Surgeons 2018. Common practice for the
words, no source.
"""

import pytest

from bot.notation.pain import told_pain

SIGNS = """
not managing to get any air in
i haven't been able to breathe right since that set
i am no longer able to catch my breath
don't succeed in breathing normally
i fail to get my breath
can't for the life of me get air in
could not recover my breathing, been sat for a while
my breath isn't back and i'm just sitting here
ten min on the bench and my breath isn't coming back
couldn't stop myself peeing
i can't keep my wee in
could not retain my urine on that lift
not controlling my bladder since the deadlift
lost the ability to hold my pee
i wet the mat and couldn't help it
couldn't hold it and wet the platform
soiled myself and couldn't stop
i urinated without wanting it
the urine comes out by itself
my bladder emptied on its own
lost control of my waterworks
i did wee in my shorts
leaked and had no control
it trickled down my leg and i never noticed
the pee escaped on the third rep
had an accident and could not hold it
you could pinch my left arm and i'd not notice
someone could stab my hand and i wouldn't know
if you pricked my arm i would not feel it
i poke my foot and nothing
my left hand can't feel when i touch it
my right arm does not belong to me
prodded my arm and don't feel a thing
knee popped and it won't support me
pop in the knee, no weight on it now
knee went crack and had to be carried out
left knee gave way, cant put weight on it
left knee buckled and i cant bear weight on it
ankle gave way, cant walk
can't put any weight on my left leg
can't stand on my right leg
i cant take any weight on my right foot since the lunge
unable to weight bear on my ankle
"""
NONE = """
can't put any more weight on the leg press
can't stand on my left leg for longer than 20 seconds
cant stand the smell on the leg press
can't put weight on the knee extension today, stack broken
couldn't put weight on my left leg last year
knee gave way last year and i couldnt walk then
arms gave way on the last rep, cant put more weight on
messed that set up, couldn't control the bar
hands were wet, could not hold the bar
mat was wet with sweat, couldn't hold the plank
quick wee then two more sets
had a pee, then held the plank for 50
an accident on the road, couldn't help being late
my son wet the floor, he couldn't hold it
can't hold 50 seconds
could not help doing another set
didn't manage the last rep
no longer than 40 seconds in the plank
not able to come tomorrow
haven't been able to train on friday
can't touch my toes yet
stuck on 60 for arms, no idea why
no weight on the bar yet
knees pop now and then, no bother
my breath is back, 60x9
got my breath back, on to set 2
if the plan says so i'll stop
bench pad was wet, couldnt keep my back in place
wet shirt, couldnt keep my back on the bench
belt kept poking my arm, didnt notice till later
strap kept poking my arm but didnt feel it
60x5, had another two in me
60 for 5 with two in me still
two in my hand, two on the rack
"""


@pytest.mark.parametrize("text", SIGNS.strip().splitlines())
def test_what_cannot_be_held_or_felt_is_urgent(text: str) -> None:
    pain = told_pain(text)
    assert pain is not None
    assert pain.urgent
    beside = told_pain(f"60x9, {text}")
    assert beside is not None
    assert beside.urgent


@pytest.mark.parametrize("text", NONE.strip().splitlines())
def test_what_only_sounds_like_it_is_not(text: str) -> None:
    pain = told_pain(text)
    assert pain is None or not pain.urgent
