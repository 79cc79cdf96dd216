"""Pain as people say it: whispered, in a second language, by effect; and what holds its words and is none.

The rows were written by the reading rules alone, before the reader was asked; each is of a class. A row is the kind
(P pain, U urgent, N neither), the place, the score, the side, the message; `?` leaves a place to taste.
"""

import pytest

from bot.notation.pain import read_pain
from bot.training.pain import PainSaid
from bot.training.report import Side
from tests.notation.plans import read, rows

SAID = """
P|hip||left|My left hip has been a bit ouchy since I did the hedge on Sunday, but lunges felt ok xx
P|hip||left|My old hip hurts today. The left. Nothing new.
P|shoulder||left|Left one again coach. Shoulder. Hurts when I reach back.
P|knee||right|80x8 80x8 80x6. Knee hurt on the last one. Right.
P|shoulder|||shoulder's having a whinge about the overhead stuff
P|knee||left|did what you said love but the left knee is having none of it
P|elbow|||elbow making a nuisance of itself
P|elbow|||had a bit of a zing in my elbow on dips
P|hamstring|||hamstring is threatening to go
P|knee|||that knee of mine
P|knee|||it's only my knee, I shouldn't moan
P|hip|||I felt the hip a wee bit
P|elbow|||Couldn't do the dips, elbow
P|knee||right|Sets went up nicely. One gripe, the right knee, coming out of the hole.
P|lower back|||it pricks me in the lower back
P|shoulder|||my shoulder makes bad when i go up with the arm
P|wrist|||i feel discomfortable in the wrist
P|knee|||I hit myself in the knee with the bar
P|back|||put me back out picking up the dog
P|knee|||yh my knee's lowkey cooked
P|foot|||My foot's got a hot spot on the ball of it and it's sore to stand
P|toe|||dropped a 2.5 on my big toe
P|hand|||my hand opened up on the deads, taped it
P|knee|4|left|Left knee 4/10 on the way down, 2/10 on the way up
P|knee|2||knee ok on squats but 2/10 on lunges
P|hip|3|left|hip (left) 3/10 today, was 5/10 last week
P|hammy|6|right|Right hammy is a 6 now, was 3 at the start
P|knee|5|right|both knees sore, left 3 right 5
P|back|5||back pain @ 5/10
P|knee|5|right|knee's sharp on the way down, the right one... 5/10. hip a bit sore too, 2/10
P||||bit sore but not the good kind
U|chest|||got this dull thing in the middle of my chest
U|chest|||me presses the chest when I make the rowing
U|chest|||chest a bit heavy today, might be a cold coming
U|chest|3||chest 3/10 on the rower
U||||I went a bit peculiar and they made me sit down, all white they said
U||||went a bit light in the head
U||||the head turned and I had to hold the machine
U||||vision went all sparkly then I had to sit
U||||breathing's not come right since the bike, 40 mins ago
U||||I'm breathless just talking
U||||lungs feel like they won't open
U|head|||never had a headache like this one, it came in a second
U|head|||like somebody hit me on the head with a hammer
U|arm||right|right arm feels like it doesn't belong to me
U|finger|||cant move my fingers
U|hand|||I have not force in the hand
U||||weakness down one side
U||||I've been leaking since the heavy squats and can't feel it
U||||had an accident, didn't make it to the loo, no warning at all
U|?|||haven't been able to pee since my back went
U|knee|||pop in the knee and it's locked
U||||toilet is cola coloured when I go
N||||chest support rose 45 for 10
N||||need to train chest more
N||||heart was pumping after the sled
N||||hip mobility work done
N||||my left knee keeps caving in at the bottom
N||||my back wasn't straight on the last one
N||||hips feel loose after that mobility
N||||elbow's been quiet this week
N||||foot position felt weird
N||||bar felt weird on my back, low bar is new
N||||shin guards on for the football, no gym
N||||the knee that hurt last month is 100% now
N||||old knee injury from 2009 never bothers me now
N||||barely a twinge, actually none
N||||what does a pulled hamstring feel like?
N||||worried about hurting my back with these
N||||should i ice my knees after running as a precaution?
N||||hurt so bad but loved it
N||||couldn't breathe after that sled push, amazing
N||||saw the price of protein and nearly fainted
N||||Gym was quiet today, got it all done
N||||lights went out in the gym haha finished by torch
N||||the bar knurling is sharp on my new gym's bars
N||||cramped little hotel gym, DB only 20x12
N||||nipped in for a quick session
N||||7, scraped the last
N||||overhead stuff was fine, backpack squats 20 x 15
N||||the old boy on the treadmill collapsed, session cut short
"""


@pytest.mark.parametrize("row", SAID.strip().splitlines())
def test_what_is_said_of_pain(row: str) -> None:
    """Each is read as a coach would."""
    kind, where, score, side, text = row.split("|", 4)
    got = read_pain(text).pain
    if kind == "N":
        assert got is None
        return
    assert got is not None
    place = got.where if where == "?" else where or None
    assert got == PainSaid(place, int(score) if score else None, Side(side) if side else None, kind == "U")


BOTH = [
    ("60x5 left wrist 2/10 60x5", "60x5 60x5", PainSaid("wrist", 2, Side.LEFT, urgent=False)),
    ("60x5, 5/10 shoulder pain, 60x4", "60x5 60x4", PainSaid("shoulder", 5, None, urgent=False)),
    ("dropped a 5 on my toe, bench 60x5", "60x5", PainSaid("toe", None, None, urgent=False)),
    ("60x5@8 felt something in my shoulder 3/10", "60x5@2", PainSaid("shoulder", 3, None, urgent=False)),
    ("60x5 8/10 effort, no pain", "60x5@2", None),
    ("60x5 rpe 8 pain 2", "60x5@2", PainSaid(None, 2, None, urgent=False)),
    ("knee is a 6 now, was 3 at the start. 60x5", "60x5", PainSaid("knee", 6, None, urgent=False)),
    ("60x5, knee was a 2 at first then 4 by the end", "60x5", PainSaid("knee", 4, None, urgent=False)),
    ("hip 3 on the way down and 2 on the way up, 60x5", "60x5", PainSaid("hip", 3, None, urgent=False)),
    ("knee 4 last week 2 today 60x5", "60x5", PainSaid("knee", 2, None, urgent=False)),
    ("elbow 4/10 on the first set 2/10 on the last. 60x5", "60x5", PainSaid("elbow", 4, None, urgent=False)),
    ("both elbows hurt left 2 right 4. 60x5", "60x5", PainSaid("elbow", 4, Side.RIGHT, urgent=False)),
    ("knee 5-6/10 so stopped at 60x4", "60x4", PainSaid("knee", 6, None, urgent=False)),
    ("60x5 60x5 then felt faint", "60x5 60x5", PainSaid(None, None, None, urgent=True)),
]


@pytest.mark.parametrize(("text", "sets", "pain"), BOTH)
def test_sets_and_pain_are_both_kept(text: str, sets: str, pain: PainSaid | None) -> None:
    """What a score counts is never a load or repetitions, and a set is never a score."""
    reading = read(text)
    told = [s.replace("@", " rir ") for s in sets.split()]
    assert (reading.ask, reading.pain) == (None, pain)
    assert reading.performed == rows(*(f"Bench Press#{n} {s}" for n, s in enumerate(told, 1)))
