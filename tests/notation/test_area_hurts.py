"""Hurts and times told beside sets: neither changes what the other says.

Made by construction: a hurt (or a time), a set, and how they meet; what is right is the union, so that no row needs
judgement. Common practice, no source.
"""

from itertools import product

import pytest

from bot.notation.pain import read_pain
from bot.training.pain import PainSaid
from bot.training.report import Side
from tests.notation.plans import read, rows

HURTS = [
    ("left knee hurts", PainSaid("knee", None, Side.LEFT, False)),
    ("lower back is killing me on the belt squat", PainSaid("lower back", None, None, False)),
    ("lower back gave a wee twinge on the last rep", PainSaid("lower back", None, None, False)),
    ("little twinge in the right groin on rep 3 so stopped there", PainSaid("groin", None, Side.RIGHT, False)),
    ("my elbow is playing up again since the curls yesterday", PainSaid("elbow", None, None, False)),
    ("knee hurt on the last one, 2/10", PainSaid("knee", 2, None, False)),
    ("wrist is sore from catching the bar", PainSaid("wrist", None, None, False)),
    ("big toe is throbbing after dropping a plate on it", PainSaid("toe", None, None, False)),
    ("sharp pain in my left hip when I sit down", PainSaid("hip", None, Side.LEFT, False)),
    ("neck hurts on the second rep of every set", PainSaid("neck", None, None, False)),
    (
        "my left shoulder it hurts when the bar goes over the head, I say 4/10",
        PainSaid("shoulder", 4, Side.LEFT, False),
    ),
    ("calf cramped up on the way down", PainSaid("calf", None, None, False)),
    ("mid swings i got so dizzy and had to sit on the floor", PainSaid(None, None, None, True)),
    ("my right hand has gone numb since the pull ups, can't grip my phone", PainSaid("hand", None, Side.RIGHT, True)),
    ("thunderclap headache out of nowhere, lying down now", PainSaid("head", None, None, True)),
    ("right arm just went floppy and it still won't lift", PainSaid("arm", None, Side.RIGHT, True)),
    ("chest feels like someone is standing on it", PainSaid("chest", None, None, True)),
]
MEETINGS = ["{set}. {hurt}", "{hurt}. {set}", "{hurt} - {set}", "{set} - {hurt}", "{set} ({hurt})", "{hurt} but {set}"]
SETS = [("60x5", "Bench Press#2 60x5"), ("did 4 at 60", "Bench Press#2 60x4"), ("got 4", "Bench Press#2 60x4")]


@pytest.mark.parametrize(("hurt", "meets"), list(product(HURTS, MEETINGS)), ids=str)
def test_a_hurt_and_a_set_say_what_they_say_alone(hurt: tuple[str, PainSaid], meets: str) -> None:
    """The exercise, the day, the repetition and the words of a hurt are no set's; a set's numbers are no score."""
    for told, kept in SETS:
        text = meets.format(hurt=hurt[0], set=told)
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert got.ask is None, text
        assert (got.pain, got.performed, got.replaces, got.day) == (hurt[1], rows(kept), (), None), text


HAD = [
    ("1 hr 15 till school pickup", 75), ("lunch break only, 30 mins", 30), ("gotta run in 20 min", 20),
    ("between shifts so half hour max", 30), ("today I have time only to 18.30", 30), ("hard stop at 6.15", 15),
    ("got 15 min between drop-off and work", 15), ("an hour and a quarter for once", 75),
    ("quick one, three quarters of an hour", 45), ("got an hour 10", 70), ("im on a clock, 20 minutes", 20),
    ("boss gave me 45 mins", 45), ("half an hour before work", 30), ("20 mins before my lift arrives", 20),
    ("pushed for time. 30 min", 30), ("parking ends in 40 min", 40), ("my little one was sick all night so 30 min", 30),
    ("need to be out by 6:30", 30), ("45 min is all i have", 45), ("today only 30 minutes sorry", 30),
]  # fmt: skip
NOT_HAD = [
    "watched the match till 2am", "slept till 10", "was up until 3 with the baby", "drove an hour to get here",
    "been here an hour already", "had a nap for half an hour before", "next week ill have 90 minutes",
    "warmed up for 10 min", "queue was half an hour", "rested 3 min between sets", "took me 50 min all in",
    "physio gave me 20 minutes of stretching",
]  # fmt: skip


@pytest.mark.parametrize("said", [*HAD, *((text, None) for text in NOT_HAD)], ids=str)
def test_a_time_and_a_set_say_what_they_say_alone(said: tuple[str, int | None]) -> None:
    """Time that there is, and time that something took, beside a set: no correction, no repetitions."""
    for meets in ("{set}. {time}", "{time}. {set}", "{time} - {set}", "{set}\n{time}"):
        text = meets.format(time=said[0], set="60x5")
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert got.ask is None, text
        assert (got.minutes, got.performed, got.replaces) == (said[1], rows("Bench Press#2 60x5"), ()), text


URGENT = [
    "sharp pain in chest on bench 60x5", "pain in my chest on the pad", "pressure in the chest against the pad",
    "my fingers don't feel anything on the left", "left leg sleeps since the deadlift and doesn't wake up",
    "my hand lets things fall all day", "biceps made a bang and now it's a lump",
    "i lost my conscience for some seconds", "it presses me in the chest since the warm up",
    "this morning I peed brown like cola. normal after so many squats?", "my leg doesn't obey since the last set",
    "Carried the 12 for 30 metres, the cat watching, R calf warm, red and swollen",
]  # fmt: skip
NONE = [
    "chest glued to the pad or a bit off?",
    "kept my chest on the pad",
    "chest stays on the pad or off it?",
    "hands were toast",
    "bar felt heavy on my chest",
    "chest pump was unreal",
    "did the bar go over my head lol",
]


@pytest.mark.parametrize("text", URGENT)
def test_an_urgent_sign_is_caught(text: str) -> None:
    """Whispered, and in the words of a second language."""
    got = read_pain(text).pain
    assert got is not None
    assert got.urgent


@pytest.mark.parametrize("text", NONE)
def test_talk_is_no_pain(text: str) -> None:
    """Hyperbole and form."""
    assert read_pain(text).pain is None


UNSCORED = [
    "knee hurts. minis were 4 3 3", "14 kg: 10/10, 10/9. knee hurts", "12s, 10/10 - knee hurts", "knee hurts - got 9",
    "my left calf is hot and swollen\nsame but only 5", "machine press thirty five, knee hurts",
    "knee hurts, push up 10 then 8", "knee hurts\nhack squats at one eighty ten",
    "hands tingling after the set of 9", "hands tingling after that set of 9, both of them", "knee hurts on sets of 8",
]  # fmt: skip


def test_a_score_is_of_its_own_sentence() -> None:
    """Repetitions beside a hurt are no score, and both sides' repetitions behind their load are none."""
    for text in UNSCORED:
        got = read_pain(text).pain
        assert got is not None, text
        assert got.score is None, text
    for text in ("knee hurts. about a 4", "knee hurts. i would say maybe a 4", "knee hurt, got to a 4"):
        got = read_pain(text).pain
        assert got is not None, text
        assert got.score == 4, text


@pytest.mark.parametrize("text", ["hands tingling after that set of 5, both of them", "hands numb after the set of 5"])
def test_the_set_that_hurt_is_kept(text: str) -> None:
    """One set, however many hands: the number is neither lost nor the score."""
    got = read(text, "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.performed) == (None, rows("Bench Press#2 60x5"))
    assert got.pain is not None
    assert (got.pain.where, got.pain.score) == ("hand", None)


NO_PAIN = ["no pain in the shoulder anymore 🎉 {}", "no pain in the shoulder {}", "no shoulder pain {}",
           "no pain anymore {}", "no issues with the shoulder {}", "no twinges in the left shoulder {}"]  # fmt: skip


@pytest.mark.parametrize("text", NO_PAIN)
def test_no_pain_leaves_the_set_and_its_effort(text: str) -> None:
    """What does not hurt takes nothing from the set that runs on behind it."""
    got = read(text.format("60x5 rir 2"), "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.pain, got.performed) == (None, None, rows("Bench Press#2 60x5 rir 2"))


SUPPOSED = [
    ("what do i do if my shoulder pinches on bench? did just now at 60x5", "shoulder"),
    ("what do i do if my shoulder pinches? it did just now", "shoulder"),
    ("should i stop if my knee hurts? it does today. 60x5", "knee"),
    ("what if my shoulder pinches on bench? happened just now", "shoulder"),
    ("what if my shoulder hurts tomorrow?", None),
    ("what do i do if my shoulder pinches? did 60x5", None),
    ("what if my knee hurts? it did not today", None),
    ("standing calf i leave for today", None),
    ("calf doing something odd", "calf"),
    ("skip the calf raises, calf being weird", "calf"),
]


@pytest.mark.parametrize(("text", "where"), SUPPOSED)
def test_a_hurt_supposed_and_come_true(text: str, where: str | None) -> None:
    """What is only supposed is no pain; what is said to be so right behind it is."""
    got = read_pain(text).pain
    assert (None if got is None else got.where) == where


MEANT = [
    ("left 30 secs, right 22 and i felt a sharp pull in the groin on that side", Side.RIGHT),
    ("right 22, left 30, groin tweaked that side", Side.LEFT),
    ("didnt do the right, that knee hurts 2/10", Side.RIGHT),
    ("left 30, right 22, groin hurts", None),
    ("left 30 right 30, both fine but that old knee hurts", None),
]


@pytest.mark.parametrize(("text", "side"), MEANT)
def test_that_side_is_the_side_named_before(text: str, side: Side | None) -> None:
    got = read_pain(text).pain
    assert got is not None
    assert got.side is side


OLD = """
still    | ankle     | rolled my ankle bouldering on sunday and it still aches. pullups are fine though right?
still    | toe       | kicked the bed frame with my little toe last night and it hasn't calmed down
still    | shoulder  | shoulder from the crash in may hasn't healed
still    | hamstring | the hamstring i did in the summer is grumbling
still    | shoulder  | shoulder improved but still there at the top
still    | knee      | surgery was in 2019 but the knee still swells
still    | back      | thought the back was sorted, it's not
still    | shoulder  | shoulder was ok till set 3
gone     |           | first time in weeks w/o elbow pain!!
gone     |           | blew out my back in 09. been fine since. just so you have it
gone     |           | hurt my shoulder back in '14, all good since
gone     |           | tore my hamstring in 2022, all healed up now
gone     |           | did my back in when i was 20. fine ever since
gone     |           | had a bad back in my 20s, nothing for years
gone     |           | had sciatica years ago, nothing since
gone     |           | broke my wrist as a kid, no trouble since
gone     |           | busted my ankle in college, good as new now
gone     |           | knee pain has left the building
another  |           | the da was taken in with chest pain last night so my head's not in it
another  |           | me mam has a bad hip so i was late
another  |           | uncle ji had heart attack yesterday so no gym
another  |           | amma's knee is paining, took her to doctor
another  |           | pops had a stent put in monday, chest pain all weekend
another  |           | our lass has a bad back
another  |           | my da has bad chest
another  |           | my ex had a seizure
another  |           | my bro passed out after his set
another  |           | took the da to a&e, chest pain
another  |           | my manager collapsed in a meeting
another  |           | student of mine fainted in class
another  |           | colleague's heart attack has me rattled
beside   | back      | lifted the baby out of the cot and back twinged
beside   | knee      | wife says to see a physio, knee still hurts
beside   | back      | moved house for the mother in law, back hurts
beside   | hip       | carried my sister's sofa up the stairs, hip hurts now
beside   | neck      | massage from the girlfriend didn't help, neck still hurts
beside   | back      | helped a mate move and tweaked the back
beside   | groin     | kicked a ball with my son and felt the groin go
beside   | elbow     | new baby so no sleep, elbow hurting too
beside   | wrist     | bumped into a guy on the stairs, wrist aches
beside   | back      | carrying the toddler all weekend, lower back is in bits
urgent   | chest     | ran for the bus with the kids, chest pain
urgent   | chest     | argued with the boss and felt chest pressure
urgent   | chest     | told the missus about the chest pain
urgent   |           | left me wheezing and i still can't breathe
urgent   |           | that set left me gasping for 20 minutes
urgent   | chest     | had me panting, chest tight
urgent   |           | i fell without sense in the toilet
whisper  | elbow     | elbow having a wee moan on the last two
whisper  | elbow     | my elbow he is not content today
whisper  | back      | back said nope at rep 4
whisper  | wrist     | wrists weren't best pleased with the front rack
whisper  | head      | can't turn my head to the left this morning
whisper  | rib       | think i've done a rib coughing
whisper  | heel      | heel first thing in the morning is murder
whisper  | pec       | pec had a tug near the armpit
whisper  | groin     | groin not thanking me for the side lunges
whisper  | knee      | left knee talking back today
whisper  | neck      | catch in neck since morning
whisper  | wrist     | wrists are goosed
whisper  |           | that one pinched a bit
whisper  |           | ache where the bar sits
talk     |           | left me wheezing at the radio
talk     |           | bar was moving like a speed day
talk     |           | chest machine 12 12 10, sticker torn so weight not known
talk     |           | pec deck handle snapped
talk     |           | weight unknown, sticker peeled off
talk     |           | the calf block cracked
talk     |           | felt easy, moved sharp
still    | back      | back was grand until i sneezed
still    | elbow     | elbow hasn't been right since christmas
still    | shoulder  | shoulder's grand most days but today it was nagging
gone     |           | long time since that knee bothered me
gone     |           | shoulder is a non issue these days
gone     |           | did my ankle in 2013, grand since
gone     |           | the niggle from last week is away
gone     |           | zero elbow bother now that we swapped to ez bar
gone     |           | took weeks but the hip's finally painless
another  |           | our goalie dislocated his finger
another  |           | the girl training beside me was crying with back pain
urgent   | heart     | heart is running too fast since two hours
urgent   | chest     | pressing in the chest, mild, probably wind
whisper  | back      | back isn't a hundred percent after the move
whisper  | shoulder  | shoulder wasn't having any of it
whisper  | back      | did a number on my back gardening
whisper  | forearm   | forearm has a hot wire in it when i grip
whisper  | shin      | barked my shin on the bar
whisper  | wrist     | wrist is in rag order
whisper  |           | felt a weird pull, stopped
whisper  |           | pretty sore in one spot after that
whisper  |           | that last rep hurt, and not in a good way
talk     |           | gasping for a pint
talk     |           | hand grips ripped
talk     |           | ouch those prices
talk     |           | seat back was broken
"""


@pytest.mark.parametrize("line", OLD.strip().splitlines())
def test_whose_hurt_it_is_and_whether_it_is_still_there(line: str) -> None:
    """An old hurt that is there is pain; one that is over, another's, and talk are none."""
    kind, where, text = (part.strip() for part in line.split("|"))
    got = read_pain(text).pain
    if kind in ("gone", "another", "talk"):
        assert got is None
        return
    assert got is not None
    assert got.urgent is (kind == "urgent")
    assert (got.where or "").removeprefix("lower ") == where


LISTS = [
    ("neck 2, right hip 5 (out of ten) after sleeping on the floor", PainSaid("hip", 5, Side.RIGHT, False)),
    ("neck 2, hip 5 out of ten", PainSaid("hip", 5, None, False)),
    ("hip 5, neck 2 out of 10", PainSaid("hip", 5, None, False)),
    ("elbow 3 wrist 1 today out of 10", PainSaid("elbow", 3, None, False)),
    ("so pain wise: back 1, hip 4, rest nothing", PainSaid("hip", 4, None, False)),
    ("knee 2 hip 0 (scale of 10)", PainSaid("knee", 2, None, False)),
    ("left knee 2, right knee 4 out of ten today", PainSaid("knee", 4, Side.RIGHT, False)),
]


@pytest.mark.parametrize(("text", "pain"), LISTS)
def test_places_listed_with_their_scores_are_no_sets(text: str, pain: PainSaid) -> None:
    """Out of ten is said once for all of them."""
    for told, kept in (("{hurt}", ()), ("60x5. {hurt}", ("Bench Press#2 60x5",))):
        got = read(told.format(hurt=text), "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.pain, got.performed) == (None, pain, rows(*kept))


ENDED = [
    ("sharp stab in the {place} at lockout so i put it down, that was 60 for 4", "Bench Press#2 60x4"),
    ("{place} twinged on rep 3 so i racked it, that was 60 for 4", "Bench Press#2 60x4"),
    ("{place} pinched so i stopped, that was 60 for 4", "Bench Press#2 60x4"),
    ("something bit me in the {place} on rep 4, it hurts. stopped there so 4", "Bench Press#2 60x4"),
    ("{place} twinged on rep 4, stopped there so 4", "Bench Press#2 60x4"),
    ("60x4, {place} twinged on the last", "Bench Press#2 60x4"),
]


@pytest.mark.parametrize(("told", "place"), list(product(ENDED, ("elbow", "wrist", "shoulder"))), ids=str)
def test_the_set_that_a_hurt_ended_is_a_new_one(told: tuple[str, str], place: str) -> None:
    """`that was` behind a hurt corrects nothing; without the hurt it corrects."""
    got = read(told[0].format(place=place), "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.performed, got.replaces) == (None, rows(told[1]), ())
    assert got.pain is not None
    assert read("that was 60 for 4", "Bench Press#1 60x6", current="Bench Press").replaces


@pytest.mark.parametrize("hurt", ["left hamstring twinged on the 3", "hamstring pulled a bit on the 4"])
def test_in_which_mini_set_it_hurt_is_no_further_one(hurt: str) -> None:
    got = read(
        f"25x14 +4+3, {hurt}", "Triceps Pushdown#1 25x15", "Triceps Pushdown#2 25x15", current="Triceps Pushdown"
    )
    minis = ("Triceps Pushdown#3 25x4 mini", "Triceps Pushdown#3 25x3 mini")
    assert (got.ask, got.performed) == (None, rows("Triceps Pushdown#3 25x14", *minis))


BESIDE = [
    "same ankle as last month, swelled up after the run", "minding the kids all weekend, lower back is in bits",
    "five a side with work colleagues, ankle swollen", "coworker had a stroke last week, everyone's shook",
    "i had a bad shoulder in my twenties but it's fine", "knee's not sore any more",
    "legs still tender from saturday's squats", "calf swollen and warm, only one side",
    "no hip pain since we dropped the lunges", "used to get headaches on these, not any more",
]  # fmt: skip


@pytest.mark.parametrize(("text", "meets"), list(product(BESIDE, ("{set}. {hurt}", "{hurt}. {set}", "{set}, {hurt}"))))
def test_what_is_told_with_a_hurt_is_no_set(text: str, meets: str) -> None:
    got = read(meets.format(set="60x5", hurt=text), "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.performed, got.replaces) == (None, rows("Bench Press#2 60x5"), ())


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("ripped the skin off my left palm hanging", PainSaid("palm", None, Side.LEFT, False)),
        ("ripped the skin off my left calf", PainSaid("calf", None, Side.LEFT, False)),
        ("tore the skin and my bicep came off the bone", PainSaid("bicep", None, None, True)),
        ("tore the pec off the bone", PainSaid("pec", None, None, True)),
        ("ripped my bicep hanging", PainSaid("bicep", None, None, True)),
        ("ripped something in my calf and can't walk", PainSaid("calf", None, None, True)),
        ("no lunges today, the back half of the hall is full of prams", None),
        ("the back room is full of prams", None),
        ("the back wall is broken", None),
        ("my back half is sore", PainSaid("back", None, None, False)),
        ("in the back half of the set my back hurt", PainSaid("back", None, None, False)),
        ("bar really hurts my elbows in the crease", PainSaid("elbow", None, None, False)),
        ("hurts both elbows in the crook", PainSaid("elbow", None, None, False)),
        ("hurts my knees in the hole", PainSaid("knee", None, None, False)),
        ("kept my elbows in, knees in, no pain", None),
    ],
)
def test_skin_rooms_and_folds_are_told_from_what_they_sound_like(text: str, said: PainSaid | None) -> None:
    """Torn skin is no tendon, the back of a hall no back; the fold of a joint is where it hurts, and no cue of form."""
    assert read_pain(text).pain == said


@pytest.mark.parametrize("hurt", ["left knee grumbling at 3/10", "knee at a 3", "knee grumbling at 3 out of 10"])
def test_a_score_hides_no_load_that_was_used(hurt: str) -> None:
    """The `at` of a score tells no load, so that what was used is the load of the sets."""
    got = read(f"used the 14s for split squats, 8 each. {hurt}")
    assert (got.ask, got.performed) == (None, rows("Split Squat#1 14x8"))
    assert got.pain is not None
    assert got.pain.score == 3
