"""Urgent signs in dialect, in courteous words and in the English of others, and what only sounds like them.

Common practice, no source; which signs are urgent stands beside the rules of `bot.notation.hurt`.
"""

import pytest

from tests.notation.plans import read, rows

URGENT = [
    "coach after deadlift my chest it press inside and the arm is heavy",
    "chest, it squeeze inside since the bench. 60x5",
    "my left leg will not bear me this evening; it folds whenever I try the stair",
    "knee wont bear me at all now",
    "my trousers were soaked after the row, i honestly had no control over it",
    "leggings wet after the jumps, lost control completely. 60x5",
    "a hammer blow to my head from inside, out of nowhere",
    "heid is splitting, came oot o nowhere",
    "ma chest is tight an a cannae breathe",
    "ma left airm's gone deid",
    "a cannae feel ma left foot",
    "breath won't come back, ma lips tingle",
    "i leaked again, third time today. 60x5",
    "i keep leaking on the swings",
    "i'm leaking a bit since the squats",
    "breath refuses to come back, been twenty minutes. 60x5",
    "my breath seems in no hurry to come back, sat here 20 min",
    "my wind is reluctant to return",
    "breathing declines to settle, fifteen minutes in the chair",
    "cannae get ma breath back, been sat a good while",
    "ah cannae breathe",
    "still cannae catch ma breath an hour on",
    "a dinnae get any air in",
    "my breath is refusing to settle down. 60x5",
    "never had a headache in my life, got one on that last rep like a hammer blow, out of nowhere",
    "i don't get headaches but one just hit me like a brick, instantly",
    "I am not one for headaches, yet one arrived like a thunderclap during the press and it is blinding",
    "got a bad head all of a sudden on the pull, like a nail gun going off",
    "a dreadful head came over me quite suddenly at the top of the press",
    "my head, like a nail gun, from nothing in a blink. 60x5",
    "awful head came on in a flash mid set",
    "I've come into possession of a rather monstrous head, quite abruptly, mid set",
    "feels like someone sit on my chest since the bench",
    "after the bench press its like a man is sitting on my chest",
    "like somebody kneeling on my chest and not getting off. bench 60x7",
    "it is as if someone stands on my chest after the incline bench",
    "as though someone were seated upon my chest",
    "there's nae feelin in ma arse",
    "nae feeling in ma left leg",
    "ma bum is numb",
    "I wet the chair and knew nothing of it until I got up",
    "wet the bench and never felt it. 60x5",
    "i've wet the mat during the last set",
    "i wet myself a bit on the third",
    "every jump i leak a wee bit",
    "leak on every rep now, leggings soaked",
    "i leak each time i swing, had to change my shorts",
    "cannae haud ma pee",
    "cannot hold my water since that last set",
    "each skip i leak. 60x5",
    "big pop in my right elbow, now it won't go past halfway",
    "loud snap from the left ankle and it folds when i stand on it",
    "knee went crack and it folds under me every step",
    "shoulder went bang on the last one and wont lift now",
    "L shoulder went pop on rep 3, wont straighten",
    "there was a distinct ping in my right calf and it declines to take my weight",
    "heard a twang in my wrist and it refuses to grip anything",
    "R knee went bang, cant bend it",
    "my elbow popped and it refuses to straighten",
    "left thumb cracked and now it declines to hold a cup",
    "pishin brown since yesterday",
    "pishing cola. 60x5",
    "what I passed this morning was the shade of strong tea, in the loo",
    "my water has been the shade of cola",
    "in the loo this morning it was the hue of stout",
    "what came out in the toilet was the tint of beetroot",
    "peed and its the shade of black tea",
    "i fell asleep on my arm and it's numb since",
    "arm asleep on the bench, won't wake up",
    "right shoulder pop and now can't lift",
    "it went bang on the way up, left achilles, and i can't push off",
    "suddenly the worst head of my life",
]


@pytest.mark.parametrize("text", URGENT)
def test_a_sign_is_urgent_in_whatever_words(text: str) -> None:
    pain = read(text, current="Bench Press").pain
    assert pain is not None
    assert pain.urgent


HURTS = [
    "something bite little in the left elbow, only when i make it straight. 60x5",
    "100x5. right knee's having a quiet little moan, nothing dramatic",
    "left elbow is having a tiny moan. 60x5",
    "my hip had a small grumble on the last rep",
    "A slight catch in the left side of my groin as I get up, if you must know. 60 for 11.",
    "theres a catch in my right hip at the bottom",
    "a small catch in the lower back on the way up. 60x5",
    "same dull head since the 4am feed, my usual no sleep one, 2/10. 95x8",
    "got a dull head today. 60x5",
    "woke with a thumping head. 60x5",
    "got a splinter in my palm, smarts when i grip, feelin n strength all there. 270x11",
    "thorn in my left heel. 60x5",
    "my palm smarts when i hold the bar. 60x5",
    "theres a bit of a grumble in my left hip i wouldnt go as far as calling it pain",
    "a wee murmur from my right shoulder. 60x5",
    "some muttering from the left knee. 60x5",
    "35x15. not me limping lol. ankle. trod on a wooden block at 3am",
    "not me hobbling, left ankle. 60x5",
    "not me limping on my right foot lol",
    "back barked at me hoistin a bundle, hush now. 95x8",
    "my shoulder barked at me on the press. 60x5",
    "left knee snarled at me. 60x5",
    "a slight pull in the groin at the bottom. 60x5",
    "a nasty grab in the right side of my neck",
    "limping. left ankle. 60x5",
    "bad head today from the wine, nothing sudden. 60x5",
    "got a bit of a bad head. 60x5",
    "left knee went pop but it bends fine and holds. 60x5",
    "i fell asleep on my arm and its sore",
    "never get cramp but got one in the calf just now. 60x5",
    "i don't usually get headaches but i've one now",
    "wrist twinged and now it's tender holding the bar",
]


@pytest.mark.parametrize("text", HURTS)
def test_a_hurt_beside_such_words_is_not_urgent(text: str) -> None:
    pain = read(text, current="Bench Press").pain
    assert pain is not None
    assert not pain.urgent


NONE = [
    "chest press it felt better inside the rack, 60x5",
    "can't bear leg day",
    "the bar wont bear more than 200 lol",
    "my shorts were soaked in sweat no idea how. 60x5",
    "shorts soaked, had no towel",
    "seat was wet, no idea who left it like that",
    "leaking sink at home on each floor. 60x5",
    "a leaking pipe on each floor, late in, 60x5",
    "gravy for dinner, pee break then 60x5",
    "pants soaked from the gym shower, didn't notice the puddle",
    "leggings soaked, felt great, no cardio since march",
    "the ankle strap wont bear me pulling hard",
    "got caught in the rain, trousers soaked, had no umbrella",
    "the breath work app refused to load, back to normal",
    "seat folded back, knee pad fine",
    "the band snapped and it folds on itself, wrist wraps fine",
    "it snapped shut. my calf sleeves, now they won't go any higher",
    "no bang, nothing odd in the shoulder",
    "doon tae the gym, heid in the game",
    "ma neck of the woods. 60x5",
    "skip rope leaks air each time",
    "every jump was clean, leggings wet from sweat",
    "he wet the mat",
    "the toddler wet the chair",
    "i'd wet the bench before i wipe it",
    "hammer curls done, head clear, all of a sudden easy. 60x5",
    "hammer curls 12x10, headphones died suddenly",
    "the lad at the desk refused to stand, chest day",
    "felt like a man today, chest up, sat tall",
    "she sat on my chest pad, feels like a circus",
    "grumble from my coach about the sleeve",
    "moan in the group chat",
    "code in my head: one flash of green",
    "coach barked at me, 60x5",
    "the dog barked at me on the way. 60x5",
    "the catch on the rack is stiff. 60x5",
    "no catch in my hip today. 60x5",
    "not a grumble from my hip. 60x5",
    "not a murmur from my knee today. 60x5",
    "splinter on the plyo box, watch out. 60x5",
    "smart plan today. 60x5",
    "her mum has a splinter in her palm",
    "not me, 60x5",
    "not limping today, ankle is fine. 60x5",
    "head banging tunes on today. 60x5",
    "the fridge has a quiet little moan. 60x5",
    "had a moan at the staff. 60x5",
    "a moan from the next bench. 60x5",
    "knees fine, no moans. 60x5",
    "a slight pull in the handle of the machine",
    "a small click in the rack when it locks",
    "i keep leaking energy at the bottom. 60x5",
    "i leaked chalk everywhere. 60x5",
    "limping home. 60x5",
    "not limping. ankle.",
    "breath took a minute to come back, fine now. 60x5",
    "got my breath back quickly. 60x5",
    "not reluctant to return to squats, 60x5",
    "took a breather, reluctant to get back under the bar lol. 60x5",
    "ma gym bag is in the car. 60x5",
    "ma is watching the kids. 60x5",
    "nae bother, 60x5",
    "cannae make it the morra",
    "i never get headaches. 60x5",
    "never had a headache, got one rep left",
    "turned my head suddenly to look at the door, bad form. 60x5",
    "like a hammer on the pull, got one clean. 60x5",
    "the sun is blinding in here. 60x5",
    "used the nail gun all day, arms tired. 60x5",
    "looks like someone is sitting on the chest press. 60x5",
    "the cat sat on my chest between sets lol. 60x5",
    "bench 60x5, touched my chest every rep",
    "somebody sat on my bench. 60x5",
    "someone is sat on the chest fly machine",
    "the bench was wet and i didn't notice, sorted it. 60x5",
    "wet the floor with my bottle, didn't notice, mopped it",
    "my bottle leaks every swing. 60x5",
    "i leak power at the bottom of every swing. 60x5",
    "i leak tension on every rep. 60x5",
    "leggings soaked with sweat. 60x5",
    "every swing drips sweat on the floor. 60x5",
    "roof leaks on every machine here. 60x5",
    "the bar went bang on the rack. 60x5",
    "app declines to load, 60x5",
    "folded the towel and went. 60x5",
    "bench folds up after. 60x5",
    "door went bang. 60x5",
    "pishin doon outside, 60x5",
    "pissing down with rain, brown puddles. 60x5",
    "passed the loo on the way, drank cola. 60x5",
    "passed on the gravy, dinner later. 60x5",
    "loo door is the shade of cola. 60x5",
    "the loo is painted a shade of brown",
    "popped to the loo, coffee after. 60x5",
    "refuse to quit, 60x5",
    "i refuse to stop, legs good. 60x5",
    "the pin refuses to move, used the next stack. 60x5",
    "declined to go heavier, 60x5",
    "the bar refused to move on the fifth. 60x4",
    "bar refused to move off my chest. 60x4",
    "haud on, 60x5",
    "a'm doon the gym, back in 5",
    "went doon tae 60x5",
    "heid doon and oot, 60x5",
    "ma maw is here. 60x5",
    "ma da hurt his back",
    "every step counts, no leaks. 60x5",
    "asleep on my arm, the baby. 60x5",
    "someone sat on the bench like a statue, chest work later",
    "feels like someone is standing on the chest machine all day",
    "somebody stands at the chest press as always",
    "hit it like a truck, head down. 60x5",
    "like a boss, smashed it, head in the game. 60x5",
    "hit depth like never before, head up. 60x5",
    "like it was nothing, struck gold on head position cue. 60x5",
    "bad headphones. 60x5",
    "never had one this easy, 60x5",
    "i never get cramp, got one last set in. 60x5",
    "no pain, got one in the tank. 60x5",
    "knee doesn't hurt, got one on the tape to remind me. 60x5",
    "breath no rush back to back sets",
    "no rush to return to squats, breathing fine",
    "can't catch my breath for laughing. 60x5",
    "wet the bench with my towel lol, sorry to the next one",
    "soaked leggings from the rain, 60x5",
    "soaked shorts, sweat city. 60x5",
    "leak in the gym roof every time it rains, my shorts wet",
    "popped in, the seat won't go any lower, knee pad works",
    "the seat went pop, shoulder pads won't go up",
    "pec deck went bang, machine won't move",
    "bang on 60x5",
    "went bang on target, 60x5 knee fine",
    "my head is not in it today. suddenly awful weather",
    "sudden awful noise, everyone's head turned",
    "toilet break, tinted windows, beer later",
    "passed the shade of the tree on the run",
    "coffee shade of brown. 60x5",
    "pissin it doon ootside. 60x5",
    "no water in the loo, hue of the tiles brown",
]


@pytest.mark.parametrize("text", NONE)
def test_what_only_sounds_like_a_sign_is_none(text: str) -> None:
    assert read(text, current="Bench Press").pain is None


WHERE = [
    ("baby asleep on my arm so one thumb only. little stabby thing in my chest each time i breathe in", "chest"),
    ("the right leg i do not feel from the knee to down, i touch it and is nothing", "leg"),
    ("from the ankle down i cannot feel my right foot", "foot"),
    ("omg my head. like someone hit it w a bat outta nowhere mid pull, cant keep eyes open", "head"),
    ("my head. like somebody hit me with a brick, eyes stinging", "head"),
    ("there's nae feelin in ma backside at all", "backside"),
]


@pytest.mark.parametrize(("text", "where"), WHERE)
def test_the_place_is_the_one_that_the_sign_is_of(text: str, where: str) -> None:
    pain = read(text, current="Bench Press").pain
    assert pain is not None
    assert (pain.where, pain.urgent) == (where, True)


BESIDE = [
    ("60x5. peed myself, three times already", "Bench Press#2 60x5"),
    ("went dizzy, second time this week. 60x5", "Bench Press#2 60x5"),
    ("had one of my dizzy spells, 60x5", "Bench Press#2 60x5"),
    ("in one second everything went black. 60x5", "Bench Press#2 60x5"),
    ("felt faint after the press. that was 60 for 5", "Bench Press#2 60x5"),
    ("i wet myself. that has never happened to me. it was 60 for 5", "Bench Press#2 60x5"),
    ("nearly passed out, sat down. it was 62.5 for 5", "Bench Press#2 62.5x5"),
    ("knee hurts, that is the second time today 60x5", "Bench Press#2 60x5"),
    ("60 x 5 two times, knee sore", "Bench Press#2 60x5, Bench Press#3 60x5"),
    ("60x5 twice today, knee hurts", "Bench Press#2 60x5, Bench Press#3 60x5"),
    ("one of my sets was 60x5, knee pain", "Bench Press#2 60x5"),
    ("knee hurts. it was 62.5 for 5, not 60", "Bench Press#1 62.5x5"),
    ("that was 62.5 for 5, knee hurts", "Bench Press#1 62.5x5"),
]


@pytest.mark.parametrize(("text", "sets"), BESIDE)
def test_how_often_a_hurt_came_is_no_set(text: str, sets: str) -> None:
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    assert reading.ask is None
    assert reading.pain is not None
    assert reading.performed == rows(*sets.split(", "))


@pytest.mark.parametrize("text", ["it shakes whether i like it or not", "60x5 whether a like it or no"])
def test_willing_or_not_is_no_question(text: str) -> None:
    assert not read(text, current="Bench Press").question
