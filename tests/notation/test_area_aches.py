"""Aches and urgent signs in ordinary, whispered, joking and second-language words, and what only sounds like them.

The rows were labelled by the reading rules alone before the reader was asked. A row is the kind (P pain, U urgent,
N neither), the place, the score, the side, the message. The templates are made by construction: a wording, a place and
where it stands beside sets; the answer needs no judgement. Common practice, no source.
"""

from itertools import product

import pytest

from bot.notation.pain import read_pain
from bot.training.pain import PainSaid
from bot.training.report import Side
from tests.notation.plans import read, rows

SAID = """
P|hamstring||left|nordics bw 6, bw 6 and my left hamstring cramped in the last
P|finger|||tingling in two fingers since the presses, goes away when i shake my hands out. 80x10
P|finger||left|left side tingling in the fingers
P|shoulder|5|right|left shoulder 2/10, right one 5/10
P|knee|4|right|hurt me the knee right in the leg press, more or less 4 of 10
P|knee|2||my knee hurts. I give it 2 from 10
P|knee|||my knee hurts, dropped 2 from 10 reps to 8
P|elbow||right|tennis elbow is back, right arm. curls 10x12
P|elbow|2|left|Elbow 2/10 L, fine otherwise. chins bw 9
P|shoulder||left|I feel a needle in the shoulder left when I lower the bar
P|knee|||knees complaining about the lunges so I did 2 sets of 8
P|collarbone|||bar came down on my collarbone in the clean, going to have a mark there. 60x3
P|palm||right|hook of skin hanging off my right palm after toes to bar
P|back|||hurt my back 2 days ago, today it's ok-ish but I feel it, 60x8
P|neck|||neck spasmed putting the bar down, 80x5 was fine before
P|shoulder|||shoulder bit me on the way down again
P|hip|||hip's screaming at me on the step ups
P|back|||did my back getting the shopping in, silly me. press 20x12
P|thumb||right|hook grip has split my right thumb open 90x2
P|hand|||tore up my hands on the rope climb
P|shin|||someone kicked me in the shin at football
P|shoulder|||can press fine but sleeping on the shoulder hurts
P|knee|||not my good knee, the other one. hurts.
P|toenail|||toe nail's coming off thanks to the sled push
P|knee|||knee needs ice
N||||back feels loose as anything
N||||Legs like jelly round the back nine but no complaints
N||||I feel it all in the front of my shoulders, not pain, just work
N||||is it bad that one arm goes up faster?
N||||is it normal that my knee clicks? doesnt hurt
N||||this app is painful to type in with chalk hands
N||||nearly dropped the bar on my toe
N||||my physio gave me 3 exercises for the hip
N||||shoulder blades are finally doing something
N||||spain
N||||12 cals on the bike, back from paris in december
N||||neck of the bottle was broken so no water
N||||ankle I sprained in the spring is 100%, 60x8
N||||the incline bench pinches the plates, hard to load
N||||can't breathe in this new belt, too tight, loosened it. 140x3
N||||breathing like a train for a minute
N||||numb from boredom
N||||dizzy heights of 60kg
N||||cold so my chest is a bit phlegmy but trained ok
N||||how do i protect my knee?
N||||the guy next to me fainted
N||||my mum tells me she fainted
N||||calves tight, rolled them
U||||had to hold onto the rack til the room came back
U||||did 100x5 then I woke up looking at the strip lights haha
U||||i was gone for a couple of seconds
U||||woke with people standing over me
U||||my knees went and i was on the floor before i knew
U||||everything turns when I lie down for the bench
U||||i almost loose the consience on the leg press
U||||still cannot get my puff back and it's been a quarter of an hour
U||||can't seem to get enough air even sitting still
U||||i can only say three words then i need air
U|chest|||dont tell the wife but got chest pains on the bike again
U|chest|||chest ache all evening, not doms
U|chest|||indigestion feeling in the middle of my chest since the sled
U|heart|||heart went bonkers after the sled and hasnt calmed in 20 min, lying down now
U|head|||head feels like it split in two, came on in a second on the last clean
U||||words keep coming out wrong this morning
U|pinky|||pinky and ring finger dead to the touch since the dips
U|leg||right|right leg feels like it isn't listening
U|finger|||fingers won't do what i tell them
U|leg|||my knee gives way on the stairs and the leg is weak
U||||can't hold a cup
U||||I can not hold the pipi since the deadlifts
U||||dark brown pee, is that ok??
U|achilles|||someone kicked me in the achilles but nobody was there, can't push off it now
U|pec|||felt my pec rip, heard it too, arm won't push anything now
U|shoulder blade|||sudden tearing between my shoulder blades
U||||head rush so bad i had to grab the wall not to fall
U|leg|||one leg is weaker all of a sudden, it shakes on the stairs
U||||hubby found me on the garage floor
U|leg|||my legs give up under me without notice since 2 days
U||||mouth won't do what i want, drink runs out the side
U||||i have lost the urge to pee, nothing comes
U|shoulder|||felt a pop in the shoulder and now the arm won't go above my chest at all
P|elbow|5||elbow's a 5 on chins, 0 on rows
P|back|||back twinge at 8, 100x8
P|hammy|||cramp in hammy at 9 so stopped: leg curl 40x9
U||||someone had to help me up, I just dropped after set 4
N||||the playlist was painful
U|neck|||can't turn my neck and my arms tingle
"""


@pytest.mark.parametrize("row", SAID.strip().splitlines())
def test_what_is_said_of_aches(row: str) -> None:
    """Each is read as a coach would."""
    kind, where, score, side, text = row.split("|", 4)
    want = PainSaid(where or None, int(score) if score else None, Side(side) if side else None, kind == "U")
    assert read_pain(text).pain == (None if kind == "N" else want)


PLACES = ["knee", "shoulder", "lower back", "neck"]
FRAMES = ["{}", "60x5. {}", "{}. 60x5 60x5", "60x5, 60x4, {}"]
HURTS = """
{} twinge; felt my {} go a bit; the {} makes pain; my {} it pains me; {} bit dodgy today;
don't like what my {} is doing; {} woke me up last night hurting; {}... ouch; it hurts, {}; the {} has started again;
bashed my {} on the rack;
{} needs ice; put ice on my {} after; the {} i told you about still hurts; {} isn't getting better; nerve thing in my {}
"""
WELL = """
no {} pain; {} 0/10; {} is much better, no pain at all; my brother hurt his {}; how do i protect my {}?;
{} feels loose and ready;
{} clicks but no pain; hurt my {} ten years ago, fine since; kept my {} still; where should my {} be at the bottom?;
dad's {} surgery tomorrow so no session; is it normal to feel a stretch in the {}?; not a peep from the {};
{} behaved today
"""


@pytest.mark.parametrize("wording", [w.strip() for w in HURTS.split(";")])
def test_a_hurt_is_heard_in_any_place_and_anywhere_in_a_message(wording: str) -> None:
    """The same words of every place, alone and beside sets."""
    for place, frame in product(PLACES, FRAMES):
        assert read_pain(frame.format(wording.format(place))).pain == PainSaid(place, None, None, urgent=False)


@pytest.mark.parametrize("wording", [w.strip() for w in WELL.split(";")])
def test_a_place_that_is_well_is_no_pain_anywhere_in_a_message(wording: str) -> None:
    """The same words of every place, alone and beside sets."""
    for place, frame in product(PLACES, FRAMES):
        assert read_pain(frame.format(wording.format(place))).pain is None


@pytest.mark.parametrize("hurt", [r.split("|", 4)[4] for r in SAID.strip().splitlines() if r[0] == "P"][:2])
def test_the_sets_beside_an_ache_are_kept(hurt: str) -> None:
    """What hurts in the last set takes nothing from the sets told."""
    told = hurt.replace("nordics bw 6, bw 6", "bench 60x5, 60x5").replace("80x10", "60x5, 60x5")
    reading = read(told)
    assert reading.pain is not None
    assert (reading.ask, reading.performed) == (None, rows("Bench Press#1 60x5", "Bench Press#2 60x5"))
