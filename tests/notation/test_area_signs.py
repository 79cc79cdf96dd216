"""Pain whispered and denied, urgent signs, near misses, and questions: alone and beside a set.

Made by construction: what hurts, its denial, its gear or its owner are put into the sentences of many people; what is
right follows from the construction. Common practice, no source.
"""

from itertools import product

import pytest

from bot.notation.pain import read_pain
from bot.training.pain import PainSaid
from bot.training.report import Side
from tests.notation.plans import read, rows

PAIN = """
upper back|||something in my upper back keeps hurting when i breathe in deep
shoulder|3|right|right shoulder is a bit sore in the joint maybe a three out of ten
knee|4|left|left knee hurts inside the joint 4/10
toe|3||pain in the joint of my big toe, 3/10
joint|4||the joint is sore, maybe a 4
hammy||left|sharp tug in my left hammy on the 7th
shin|||shins are splitting me
knee|||the knee he is hurting since two days
shoulder|||my shoulder she cries when i press
si joint|||si joint is out again
back|||back has gone out
neck|||threw my neck out
arm|||like electric in the arm from the neck
leg||left|electricity down the left leg
kneecap|||kinda feels like my kneecap wants out the side
hip|||feels like my hip wants to jump out
chin|||smacked my chin with the bar
knee|||not pain exactly but my knee feels off
knee|||no pain but my knee feels off
knee|||knee feels off, no sharp pain
knee|||knee is grumbling, doesn't hurt unless i go deep
knee|||no pain at rest but knee is grumbling on stairs
knee|||knee is grumbling, hip no pain
knee|||80x4, knee threw a tantrum
groin|||got that old familiar feeling in my groin
groin||left|groin a bit naughty on the left
shin|||bar rubbed my shin, bit of blood
neck|||slept funny, neck wont turn to the left
elbow|5||do i need to see someone about this elbow pain? 5/10
hamstring||right|felt something pull in my right hamstring, stopped there
knee||left|85 for 5 and if im honest the left knee wasnt great
hip||right|if i had to say something the right hip pinched
knee|2|right|the right knee speaks a little pain when i step up, 2 from 10
shoulder|3||step up 12x10, shoulder 3 from 10
elbow|3|left|elbow niggling on the tricep thing, left one, maybe a 3 out of 10
shoulder|||shoulder pinching on the chest thing
foot|||dropped a plate on my foot last week and it still hurts
knee|||hurts nowhere except the knee
elbow|||elbow is blown up, pump was good though
back|||skipping rdls, back
back|||had to stop the rows with this back pain
rib|||25 tibs and a cramp under the ribs
|||25 tibs and cramp
shoulder|||85x5, shoulder twinged on the 4th, gone now
wrist|||little sting in the wrist, gone
knee|||felt my knee on the last two
elbow|||bothersome elbow
hand|||booboo on my hand
hip|5|right|there is a pinch deep in the hip at the bottom, 3/10 left and 5/10 right
hip|5|right|hip pinch left 3/10 and right 5/10
elbow|4|right|both elbows hurt, 2/10 left one, 4/10 the right one
back|6||did me back in on that yates set, 6 outta 10
wrist|2||Wrists. Both. Sore joint, maybe 2/10
knee|3|left|Left knee. Joint pain, 3/10
shoulder|4|right|Right shoulder. Pain in the joint. 4/10
elbow|2||the elbow say hello again on triceps, small pain, maybe 2 of 10
shoulder|3|left|front of my left shoulder hurts, 3
forearm|||forearm cramped so bad, dropped off at 5
finger|||trapped my finger between two 20s
finger|||bent my finger back on the bar
back|||had to rack it, back pinched
back|||60x8 my back went before i finished
knee|||felt my knee on rep 3 and again on rep 6
"""
URGENT = """
|Ten minutes after bike and the breath still is not coming back
|10 min on and i still cant get my breath
|out of breath since 15 minutes
|puffing after 3 steps. never had this
|hurts when i breathe
|i cant breathe and my upper back hurts
bicep|bicep is now up by my shoulder
heart|heart is doing little flip flops since the second set
|my watch says hr 190 and its not coming down after 15 min
|i got up from bench and the room moved
|couldn't hear anything for a few seconds then ok
foot|dropped the plate on my foot cant walk on it
hand|my hand wont close properly since yesterday
shoulder|shoulder keeps slipping out of the socket
chest|dont want to make a fuss but ive had tightness across my chest since warm up
foot|can't lift my left foot properly since the hack squats, it just flops
wrist|wrist just drops, cant pull it up
foot|foot keeps dropping when i walk
toe|cant pull my toes up
foot|cant walk on my heels, foot falls down
leg|legs gave way going down the stairs and i cant feel them properly
finger|fingers gone dead and wont move
|one eye went blurry
|leaked when i jumped and couldnt stop
|cant feel myself wee
|cant tell when i need to poo since the back thing
|no wee since yesterday
|trickled on every rep and i couldnt feel it
|pulse 180 and im sitting down for ten minutes
heart|heart racing for 20 min after
|heart jumped all over the place for ten minutes
head|head feels like its splitting, came on in one second
neck|neck hurt and now both hands tingle and are clumsy
back|back went and now both legs are weak
|couldnt think of the words and my arm was heavy
leg|weak left leg since the deads, cant stand on it
chest|there was a pressing feeling in my chest on the way in, it went away. 90 x 12
chest|my chest felt as if it was in a vice earlier
chest|it pulls in the chest when i breathe deep
chest|sharp jab in the chest out of nowhere
|faintish after the squats
breastbone|indigestion burning behind the breastbone every time i push - bench 60x5
heart|my ticker felt squeezed
jaw|pain between the shoulder blades and into my jaw
|i went down on the gym floor, someone woke me
|my ears were ringing and the room closed in
|i was on the floor before i knew it
|almost passed away on the last rep, had to lie down
|lost myself for a couple of seconds
|proper head rush, went down on one knee and couldnt see
|my partner says i was gone for ten seconds
|things went far away and quiet
|i do not become enough air
|winded and it isnt going away
|my breathing never went back to normal after the rower
|respiration is bad, not recovering
|i run out of air walking to the car
|need to sit up in bed to breathe
head|the back of my head blew up on rep 3, agony
arm|lost the feel in my right arm
thigh|my thigh has no sensation when i touch it
calf|the outside of my calf is numb to the touch
leg|the feeling in my left leg is gone since set 2
leg|my leg fell asleep during the set and hasnt come back
|when i wipe i dont feel anything
leg|left leg feels much weaker than the right since yesterday
finger|i couldnt button my shirt this morning, fingers wont do it
achilles|achilles popped, foot wont push down
|vision in one eye went for a minute
|i dont feel when i need to go
leg|there is a hot lump in the back of my lower leg
|when i went to the loo this morning it came out the colour of cola
|number one is coming out brown
|took a leak and it looked like coffee
|the water i pass is brown
heart|my heart races when i lie down
heart|heart rate is stuck at 150 an hour after
heart|felt my heart stop and start again
skull|boiling water in my skull
|bra feels too small
arm|arms tingling and weak after the shrugs
arm|pins and needles down my arm and its weak
|is this what a heart attack feels like
"""
NONE = """
rpe 8 the last one. I've twenty minutes left so I'm leaving out the ab wheel
is it normal that my wrists click on these? doesnt hurt at all
Old disc injury says hi but no pain
old knee injury reminding me its there, no pain tho
physio said rest the hamstring, it is not painful just a precaution
saving my knee today, no pain just being careful
ankle feels funny but doesn't hurt
elbow was moaning last week, not a peep today
not a twinge from the knee today
heart attack levels of cardio on the way here, stairs, lift broken
my wife she hurt her knee
these squats are crippling me
hips went out of line
feels like my shoulder is brand new
was worried about my back but it was fine
usually my elbow hurts on these, today nothing
and not one complaint from the knee
my belt pinches
my feelings are hurt, only 4 at 80
saw your post about shoulder pain, great read
sorry im late, back is killing time on the bus
bit my tongue and said nothing
bar rolled onto my foot last week, foot is fine now
hurts nowhere, promise
numb 3 on the list
gym was spinning with people
i see stars on the gym ceiling
smoothie prices will give me a heart attack
that spider gave me a heart attack
new bra feels too small
washed my hair in hot water and my head is fresh
parking here is a pain in the neck
60x8 knee feels a million dollars
60x8 shoulder feels A1 today
60x8 grip went before the back did
60x8, forearms quit way before the back did
arms weak after all those sets
i'll rack it back
pain nowhere
chest is blown up lol best pump in months
calves swollen with pump
weak leg (left) 8, strong leg 10
forearm on fire lol
blacked out my calendar for friday
couldnt lift my foot high enough for the box lol
half an hour is all ive got, leaving the bugs out
heart racing after 20 min on the bike
fainted when i saw the price of creatine
if im honest i couldve done more
skipped chest, back
calf raise 40x20 and 40x18, ow the burn is real but good
that's me finished, now pani puri time
with the 5kg plate on my back this time: 12
weight on my hips, 80x10
bench felt heavy on my chest today, 80x5
a real headache to find a free bench
ouch my wallet, new belt
out of breath walking lunges 12 each
out of air on the last sprint lol
number one on the plan done 60x5
took a leak between sets, 60x5
gym's closing in a sec so no rows today
everything is closing at 8 so quick
left leg weaker than right, 8 and 10
wiped down the bench, felt good
floor press woke me up lol
saw black plates and got scared
dizzy with joy
no feeling for it today
the niggle has gone, 80x5
knee pain gone since tuesday, 80x5
whoever invented these owes me money
"""
SIDES = {"left": Side.LEFT, "right": Side.RIGHT, "": None}


def _lines(table: str) -> list[str]:
    return table.strip().splitlines()


@pytest.mark.parametrize("row", _lines(PAIN))
def test_pain_is_read_with_its_place(row: str) -> None:
    """Whispered, in a second language, denied in part only."""
    where, score, side, text = row.split("|")
    assert read_pain(text).pain == PainSaid(where or None, int(score) if score else None, SIDES[side], urgent=False)


@pytest.mark.parametrize("row", _lines(URGENT))
def test_an_urgent_sign_is_never_left_waiting(row: str) -> None:
    """What no coach should wait on, however it is said."""
    where, text = row.split("|")
    got = read_pain(text).pain
    assert got is not None
    assert (got.where, got.urgent) == (where or None, True)


@pytest.mark.parametrize("text", _lines(NONE))
def test_a_near_miss_is_no_pain(text: str) -> None:
    """Denied behind the cue, feared, usual, another's, worn, an idiom."""
    assert read_pain(text).pain is None


PLACES = ["knee", "elbow", "hip", "shoulder"]
WEAK = ["{p} clicks", "{p} feels weird", "{p} is grumbling", "being careful with my {p}", "{p}'s a bit off"]
DENIED = [", no pain", " but it doesn't hurt", ", not painful at all", ". no pain though", " but nothing painful"]
IN_PART = [", no sharp pain", " but it doesn't hurt that much", ", no pain until i go deep", " and it hurts"]


@pytest.mark.parametrize(("place", "weak"), list(product(PLACES, WEAK)))
def test_a_denial_behind_a_weak_word_takes_it_back(place: str, weak: str) -> None:
    """Whole denials take it back; a denial in part, or of another place, leaves the pain."""
    said = weak.format(p=place)
    for denied in DENIED:
        assert read_pain(said + denied).pain is None, said + denied
    if "clicks" not in weak:
        for part in IN_PART:
            got = read_pain(said + part).pain
            assert got is not None, said + part
            assert got.where == place, said + part


LASTED = ["been 5 min", "started 5 minutes ago", "its been 10 minutes now", "lasted 30 seconds"]


@pytest.mark.parametrize("lasted", LASTED)
def test_how_long_it_hurts_is_no_hold(lasted: str) -> None:
    """Beside an exercise that counts seconds a time of the hurt stores nothing and asks nothing; a hold is stored."""
    got = read(f"shoulder hurts, {lasted}", current="Plank")
    assert (got.ask, got.performed, got.pain is not None) == (None, (), True)
    got = read(f"plank 45 sec. shoulder hurts, {lasted}", current="Plank")
    assert (got.ask, got.performed) == (None, rows("Plank#1 -x45"))


ASKS = """
i dont understand what rpe is
i don't get how the tempo works
no idea what a plank is
not sure how deep i should go on bench
can't work out which handle you mean
explain rir to me please
i want to know if i can do these at home
i would like to know how long to rest
you never told me the tempo
send me a video of the bench
video of a good bench please
need help with the bench setup
my question is about the rest
new plan when
can you change the bench, it hurts my wrist
the 60s feel light, can I try the 65s next time
bench next week instead?
"""
ASKS_NOT = """
what was i thinking
who invented these and can i punch him
am i a joke to you coach
why do i do this to myself
what have i done to deserve this
is it friday yet
are we having fun yet lol
how is it only tuesday
why is this so hard lol
maybe the 65s next week then
ok noted coach, maybe 65 kg next week then
65kg next week for sure
gonna be late, stuck on the 405
the 15s are too light coach
60kg felt heavy
"""


@pytest.mark.parametrize(
    ("text", "question"), [(t, True) for t in _lines(ASKS)] + [(t, False) for t in _lines(ASKS_NOT)]
)
def test_what_wants_an_answer(text: str, question: bool) -> None:
    """Told as a wish or a lack, without a question mark; rhetorical, joking, planned: nothing is stored, none asked."""
    got = read(text, "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.performed, got.replaces, got.question) == (None, (), (), question)


@pytest.mark.parametrize("said", ["can you believe it", "would you believe it", "what can i say", "how good is that"])
def test_a_set_beside_a_rhetorical_question_is_stored(said: str) -> None:
    """The set stays, and nothing is asked."""
    for text in (f"60x5, {said}", f"{said}. 60x5"):
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.performed, got.question) == (None, rows("Bench Press#2 60x5"), False), text


BESIDE = [
    "i was dizzy",
    "wrists a bit ouchy, both of them",
    "elbows niggle, both of em",
    "two fingers are numb since the row",
    "a pressing in the chest that came and went",
    "respiration is bad, not recovering",
    "coach, not to worry you but there was an ache behind my breastbone",
    "cant feel my left foot since the deadlifts",
    "knee hurts but only when i climb stairs",
]


@pytest.mark.parametrize("hurt", BESIDE)
def test_what_tells_of_a_hurt_changes_no_set(hurt: str) -> None:
    """What was, is or began in it corrects, counts and names nothing: the set is kept as it is told."""
    for text in (f"60x5. {hurt}", f"{hurt}. 60x5", f"{hurt}, 60x5", f"60x5 but {hurt}"):
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.replaces, got.performed) == (None, (), rows("Bench Press#2 60x5")), text
        assert got.pain is not None, text


def test_stiff_is_how_the_client_is() -> None:
    """No other kind of lift where it is felt."""
    for said in ("back a bit stiff", "felt stiff", "shoulders still stiff"):
        got = read(f"{said}, 60x5", "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.pain, got.performed) == (None, None, rows("Bench Press#2 60x5")), said


@pytest.mark.parametrize("asked", ["i train the same?", "the same weight next time?", "train same weight?"])
def test_the_same_that_is_only_asked_about_is_no_set(asked: str) -> None:
    """With and without a set before it."""
    for done in ((), ("Bench Press#1 60x6",)):
        got = read(asked, *done, current="Bench Press")
        assert (got.ask, got.performed, got.question) == (None, (), True), asked


FAMILIES = [
    (["my breath is", "breathing is"], ["a fight", "getting cut", "not going back to normal"]),
    (["breathless", "winded", "out of breath"], ["tying my laces", "doing nothing", "lying in bed", "on the sofa"]),
    (["my lungs wont", "my lungs dont"], ["fill", "open", "take air"]),
    (["hurts", "sharp pain", "stabbing"], ["when i inhale", "with every breath", "breathing in"]),
    (["someones parked a van", "an elephant is sitting", "there is a slab"], ["on my chest", "across the chest"]),
    (["my heart", "my pulse"], ["stumbled then thudded", "is irregular", "did a somersault", "stopped for a second"]),
    (["vision", "my sight"], ["went spotty", "went", "got all patchy", "is closing"]),
    (["the room", "the gym", "everything"], ["did a loop", "tipped over", "lurched sideways"]),
    (["next thing i know", "next i remember"], ["im on the floor", "people over me", "sat against the wall"]),
    (["i lost"], ["five seconds", "a few seconds there", "10 seconds i think"]),
    (["mate slapped me", "someone shook me"], ["awake", "back to consciousness"]),
    (["my words", "the words"], ["wont come", "came out wrong", "wouldnt come out"]),
    (["my mouth", "one eyelid", "my smile"], ["wont move", "is drooping on one side", "is uneven on the left"]),
    (["cant"], ["do up my buttons", "turn the key", "undo the jar", "make a fist", "hold a pen"]),
    (["my arm", "left hand", "my foot"], ["just hangs", "dangles", "is floppy", "wont wake up"]),
    (["i keep dropping"], ["cups since tuesday", "my keys lately"]),
    (["one calf is", "my calf is"], ["fatter than the other", "twice its size", "swollen since the long drive"]),
    (["bicep", "pec"], ["popped and theres a dent", "ripped clean off", "snapped, now theres a lump"]),
    (["calf", "achilles"], ["went bang like someone kicked it", "popped, was like being shot"]),
    (["peed", "leaked"], ["during the squats", "on the last rep", "on the platform"]),
    (["no control of", "no control over"], ["my bladder", "my bowels"]),
    (["peeing", "weeing"], ["black coffee", "cola", "tea"]),
    (["legs feel", "my hand feels"], ["disconnected", "like they are detached"]),
]
"""Who or what, and what is wrong with it: each of the first with each of the second."""


@pytest.mark.parametrize(
    "said", [f"{who} {wrong}" for whos, wrongs in FAMILIES for who, wrong in product(whos, wrongs)]
)
def test_a_family_of_signs_is_urgent(said: str) -> None:
    """Alone, and beside a set, which is kept."""
    got = read_pain(said).pain
    assert got is not None
    assert got.urgent
    beside = read(f"60x5. {said}", "Bench Press#1 60x6", current="Bench Press")
    assert (beside.ask, beside.replaces, beside.performed) == (None, (), rows("Bench Press#2 60x5"))
    assert beside.pain is not None


NO_SIGN = """
lost 10 sec on my plank
lost a couple of secs on the sprint
lost my grip for a second
was out for a bit with flu, bench felt heavy
no air in the gym, aircon broken
no air in the tyre so i walked
cushion under my knees
heart skipped a beat when i saw 140 on the bar
had a coffee, peed, then 60x5
cant speak highly enough of this plan
hold num 2 was 40 sec
arm hangs straight at the bottom of the row
dead hang 40 sec
fist bump coach 60x5
cant find my key to the locker
said the wrong words, meant squats
band round my knees 15 reps
next week is when i know
dropped my phone on the mat lol
best man speech on saturday so no training
weak left glute
i blacked out the date in my diary
my boss wants me back
slipped a disc in 2018, been fine for years
elbows are slow in the catch
"""


@pytest.mark.parametrize("said", _lines(NO_SIGN))
def test_what_only_sounds_like_a_sign_is_none(said: str) -> None:
    """Of things, training, others' words and long ago."""
    assert read_pain(said).pain is None


WHISPERED = """
hip|quick stab in the hip, didnt come back
|had a pinch earlier, gone
piriformis|my piriformis again
knee|the knee, again
elbow|its nothing, elbow
neck|im fine, just the neck
shoulder|could feel the old shoulder thing
elbow|my old mate the left elbow is back
elbow|elbow isnt 100
groin|something small in the groin
kneecap|hot spot on my kneecap
toe|toe got stood on
back|there was a moment with my back on rep 3
knee|knee wants a word
neck|slept on my neck wrong
foot|plantar thing is back
shoulder|both shoulders sore in the joint
wrist|my left wrist hurts when its bent back
"""


@pytest.mark.parametrize("row", _lines(WHISPERED))
def test_a_whisper_is_heard(row: str) -> None:
    """Made light of, over again, or only named."""
    where, text = row.split("|")
    got = read_pain(text).pain
    assert got is not None
    assert (got.where, got.urgent, got.score) == (where or None, False, None)


ENDED = [
    "ended at 5",
    "called it at 5",
    "cut it at 5",
    "left it at 5",
    "racked it at 5",
    "finished on 5",
    "stopped at 5",
]
WHY = ["knee hurts so i", "hip pinched so i", "my lower back grabbed so i", "elbow niggled, so"]


@pytest.mark.parametrize(("why", "ended"), list(product(WHY, ENDED)))
def test_a_set_that_a_hurt_ended_is_kept(why: str, ended: str) -> None:
    """The number is of repetitions, no score."""
    got = read(f"{why} {ended}", "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.skipped, got.performed) == (None, (), rows("Bench Press#2 60x5"))
    assert got.pain is not None
    assert got.pain.score is None


APPOINTED = ["be there at 8", "see you at 8", "home at 7", "training at 7 instead"]


@pytest.mark.parametrize("said", APPOINTED)
def test_a_time_of_day_is_no_score(said: str) -> None:
    """Behind a hurt."""
    assert read_pain(f"knee hurts, {said}").pain == PainSaid("knee", None, None, urgent=False)


@pytest.mark.parametrize("said", ["same as last week", "same as monday", "same as last time", "same as usual"])
def test_how_a_hurt_compares_repeats_no_set(said: str) -> None:
    """`knee 2 out of 10, same as last week`."""
    for text in (f"60x5, left knee 2/10, {said}", f"60x5. knee hurts {said}"):
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.performed) == (None, rows("Bench Press#2 60x5")), text


def test_what_a_body_stops_doing_skips_nothing() -> None:
    """`my legs stopped working`."""
    got = read("my legs stopped working 60x5", "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.skipped, got.performed) == (None, (), rows("Bench Press#2 60x5"))


REPS_HURT = [
    "hip pinched on the last two reps",
    "knee hurt on the first 2 reps",
    "elbow sore in the final three reps",
    "hip hurt on the first couple of reps",
    "wrist hurt on reps 4 and 5",
    "wrist hurt on reps 3, 4 and 5",
    "knee buckled on rep 4 and again on 5",
    "dropped a 20 on my foot",
    "whacked my shin with a 15",
    "20kg plate landed on my toe",
    "Wrists. Both. Sore joint, maybe 2/10",
]


@pytest.mark.parametrize("hurt", REPS_HURT)
def test_when_and_by_what_it_hurt_is_no_set(hurt: str) -> None:
    """The repetitions in which it hurt and the weight that fell are no loads: the set beside is the only one."""
    for text in (f"60x5. {hurt}", f"{hurt}. 60x5", f"60x5, {hurt}"):
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.replaces, got.performed) == (None, (), rows("Bench Press#2 60x5")), text
        assert got.pain is not None, text
    alone = read(hurt, "Bench Press#1 60x6", current="Bench Press")
    assert (alone.ask, alone.performed) == (None, ())


@pytest.mark.parametrize(
    "again", ["and again at home", "and again on the way home", ", same sunday", "and again this morning"]
)
def test_a_hurt_that_came_back_repeats_no_set(again: str) -> None:
    """Where or when it hurt once more."""
    got = read(f"my knee hurt on the stairs {again}", "Bench Press#1 60x6", current="Bench Press")
    assert (got.ask, got.performed) == (None, ())
    assert got.pain == PainSaid("knee", None, None, urgent=False)


@pytest.mark.parametrize(
    "praise",
    ["great set", "tough set", "solid set", "knee feels A1", "everything is A1", "dead now", "dead after that"],
)
def test_praise_behind_a_set_is_no_set(praise: str) -> None:
    """`60x5 great set` asks nothing, `dead` is no deadlift."""
    for text in (f"60x5 {praise}", f"60x5, {praise}"):
        got = read(text, "Bench Press#1 60x6", current="Bench Press")
        assert (got.ask, got.pain, got.performed) == (None, None, rows("Bench Press#2 60x5")), text


@pytest.mark.parametrize(
    ("text", "where", "side"),
    [
        ("left foot's tingling and the right one i can't feel at all", "foot", "right"),
        ("my left hand tingles and the right one is dead", "hand", "right"),
        ("my right calf is double the left one and warm", "calf", "right"),
        ("elbow sore on the press, 2/10, but my chest feels like someones standing on it", "chest", None),
        ("wrist grumbled on the bench but it feels like something heavy sitting on my chest", "chest", None),
    ],
)
def test_the_sign_stands_beside_another_hurt(text: str, where: str, side: str | None) -> None:
    """An urgent sign beside a lesser hurt, or beside the name of an exercise, is the one that counts."""
    said = read_pain(text).pain
    assert said is not None
    assert (said.where, said.urgent, said.side and said.side.value) == (where, True, side)
