"""Talk that holds the words of a correction, a skip, an end or a set told in free words, and is none of them.

Work, kids, buses, the gym's other people, plans and wishes, with numbers near those of the exercise under way. Each
table is of one meaning; behind the talk stand messages of that meaning that must still be read. Common practice of the
gym, no source.
"""

from decimal import Decimal

import pytest

from tests.notation.plans import read, rows

BENCH = ("Bench Press#1 60x5", "Bench Press#2 60x4")
ROWS = ("Barbell Row#1 50x10", "Barbell Row#2 50x9")
FLIES = ("Chest Fly#1 10x10", "Chest Fly#2 10x10")

NOT_OF_ROWS = """
typed the wrong code 11 at the door
put 11 in the oven for the kids
he was wrong, it was 11 of them queueing
honestly there were only 11 people in the gym
sorry i'm late, got the 11 bus
oops forgot my kid turns 11
my last place had 11 racks
i was wrong, there are 11 of us
correction: my flight is at 11
correction, train's on platform 11
knock one off my class list please
take one off the waiting list
add one to the booking please
one too many coffees
the trainer counted 11 members in
the one before that was 9 euros
mate's first set was 11
her last set was 11
his was 11
the first of my kids is 11
make it 11 for dinner
"""
NOT_OF_BENCH = """
he was 55 not 60
the guy is 55 not 60
she lifted 55 not 60
55 not 60 people there
only 55 quid not 60
paid 55 instead of 60
battery said 60 but now 55
got told 60 but paid 55
honestly 55 people in here
i've 4 kids not 3 lol
rounded up to 3 people
video shows 3 people behind me
watched 3 videos
brain is 3 days behind
"""


@pytest.mark.parametrize("text", NOT_OF_ROWS.strip().splitlines())
def test_talk_puts_no_row_right(text: str) -> None:
    """No kept set is changed, and none is added."""
    reading = read(text, *ROWS, current="Barbell Row")
    assert (reading.performed, reading.replaces) == ((), ())


@pytest.mark.parametrize("text", NOT_OF_BENCH.strip().splitlines())
def test_talk_puts_no_bench_right(text: str) -> None:
    """No kept set is changed, and none is added."""
    reading = read(text, *BENCH, current="Bench Press")
    assert (reading.performed, reading.replaces) == ((), ())


@pytest.mark.parametrize(
    "text",
    [
        "my mate says he counted 8, put 8",
        "sorry, typed 9 but it was 8",
        "fat fingers, 8 not 9",
        "take one off that last one",
    ],
)
def test_a_set_is_still_put_right(text: str) -> None:
    """Who counted it, and why it was told wrongly, leave it a correction."""
    reading = read(text, *ROWS, current="Barbell Row")
    assert reading.performed == rows("Barbell Row#2 50x8")
    assert reading.replaces == (("Barbell Row", 2),)


KEPT = """
rest of the day off
no bench at home
no row machine at home
tomorrow no bench
on holiday no bench
on my rest days no planks
wish there were no planks
not doing deadlifts like that guy
couldn't do deadlifts as a kid
didn't do bench for years before you
deadlifts are off the menu at his gym
no fly zone
depends, may skip the plank
bench 60x5 so the others can go
"""


@pytest.mark.parametrize("text", KEPT.strip().splitlines())
def test_talk_leaves_nothing_out(text: str) -> None:
    """Another place, another day, others and wishes skip no exercise."""
    assert read(text, *BENCH, current="Bench Press").skipped == ()


def test_a_skip_is_still_read() -> None:
    """With today's own words."""
    assert read("no bench today", current="Bench Press").skipped == ("Bench Press",)


GOES_ON = """
over and out of breath
that's me in the video
that's me at the gym
that's me ready
that's me back
that's all the news
that's all i ate today
that's a wrap for lunch
that's the end of the music
going home to train
finish line in sight
work is done for today
done for today at work
finished for the day at work so heading in
school's out so kids are with me
signing off the invoice
finish with what weight
60x5, that's all i had for breakfast
"""
BEFORE_ANY = """
packed my gym bag
bag packed
home again
mission complete: found parking
"""


@pytest.mark.parametrize("text", GOES_ON.strip().splitlines())
def test_talk_ends_no_session(text: str) -> None:
    """What is over is something else."""
    assert not read(text, *BENCH, current="Bench Press").finished


@pytest.mark.parametrize("text", BEFORE_ANY.strip().splitlines())
def test_nothing_ends_before_the_first_set(text: str) -> None:
    """A bag is packed on the way to the gym too."""
    assert not read(text).finished


@pytest.mark.parametrize("text", ["bag packed", "that's all from me today", "that's me for today, shattered"])
def test_the_end_is_still_read(text: str) -> None:
    """With sets kept."""
    assert read(text, *BENCH, current="Bench Press").finished


NOT_AGAIN = """
same to you
same gym as last time
same old
again?
repeat that?
copy that
like the first time
ditto on the coffee
same setup
same grip
same tempo
felt the same
looks the same
same again tomorrow
and again tomorrow
once again late
"""


@pytest.mark.parametrize("text", NOT_AGAIN.strip().splitlines())
def test_talk_repeats_no_set(text: str) -> None:
    """What is the same, or again, is something else."""
    assert read(text, *BENCH, current="Bench Press").performed == ()


@pytest.mark.parametrize("text", ["same again", "copy of the last one", "same as before", "again"])
def test_a_set_is_still_repeated(text: str) -> None:
    """By its bare words."""
    assert read(text, *BENCH, current="Bench Press").performed == rows("Bench Press#3 60x4")


NO_TIME = """
he only has 20 minutes
my wife only has 20 min
i only had 20 minutes yesterday
what if i only have 20 minutes
if i had 20 minutes more
wish i had 20 more minutes
do i have 20 minutes?
20 minutes left in the match
20 minutes left of the podcast
20 minutes left on the washing machine
phone has 20 minutes left
roast needs 20 minutes
saved 20 minutes today
"""


@pytest.mark.parametrize("text", NO_TIME.strip().splitlines())
def test_minutes_of_something_else(text: str) -> None:
    """They are not the time that the client has today."""
    assert read(text).minutes is None


@pytest.mark.parametrize("text", ["only got 20 minutes", "20 minutes left", "my lift comes in 20 minutes"])
def test_the_time_that_there_is(text: str) -> None:
    """It is still read."""
    assert read(text).minutes == Decimal(20)


UNRATED = """
60x5, 2 in the bag
60x5, 62.5 would have been the limit
60x5, the next guy died under it
60x5, tried a sixth coffee, no chance
60x5, sixth floor, no lift
60x5, sixth in the queue, no luck
60x5, next one down
60x5, next one no belt
60x5, the next didn't start yet
60x5, mate tried a sixth, no chance
60x5, he tried a 6th and missed
60x5, another one down
"""


@pytest.mark.parametrize("text", UNRATED.strip().splitlines())
def test_talk_rates_no_set(text: str) -> None:
    """Nothing was told of what was left in reserve."""
    assert all(p.rir is None for p in read(text, *BENCH, current="Bench Press").performed)


@pytest.mark.parametrize("text", ["60x5, tried a sixth, no chance", "60x5, the next one wouldn't budge"])
def test_a_failed_repetition_is_still_read(text: str) -> None:
    """It is to failure."""
    assert read(text, *BENCH, current="Bench Press").performed == rows("Bench Press#3 60x5 rir 0")


NO_SET = """
5 tries at 60 levels
60 kg got me 5 stares
grabbed the 55 bus at 5
took the 55 to town, 5 stops
went for a 55 minute run, 5 km
went with the 55 plan, 5 weeks
had the 55 exam, 5 points
the gym has only 55 lockers, 5 broken
next two benches the same model
my mate's warm up is 40x10
60x6, 2 more
"""


@pytest.mark.parametrize("text", NO_SET.strip().splitlines())
def test_talk_is_no_set(text: str) -> None:
    """Nothing is stored of it."""
    assert read(text, *BENCH, current="Bench Press").performed == ()


NO_FLY = """
grabbed the 10s. 11 people here
grabbed the 10s at 11
two 10 kg dogs: 10 and 12 years old
2 10 kg bags of cement, 12
next two flies the same?
next two flies same tomorrow
two more flies same as last week
"""


@pytest.mark.parametrize("text", NO_FLY.strip().splitlines())
def test_talk_is_no_fly(text: str) -> None:
    """Nothing is stored of it."""
    assert read(text, *FLIES, current="Chest Fly").performed == ()


NOT_HELD = """
my phone lasted till 50
battery lasted till 50
my mate lasted till 50
he held on for 50
hanging around for 50
watch says 50 steps
i'll hold till 50
going to hold 50
try to last till 50
stood for 50 minutes on the train
two planks of wood, 50 and 45 cm
"""


@pytest.mark.parametrize("text", NOT_HELD.strip().splitlines())
def test_talk_is_no_hold(text: str) -> None:
    """Nothing is stored of it, and no time is taken."""
    reading = read(text, current="Plank")
    assert (reading.performed, reading.minutes) == ((), None)


def test_a_vest_worn_yesterday_keeps_its_day() -> None:
    """The day is not lost."""
    assert read("6 chin ups wearing 10 kg vest yesterday", current="Chin-Up").day is not None


@pytest.mark.parametrize("text", ["chin ups with 10 kg in 6 weeks", "chin ups with 10 kg, week 6"])
def test_weeks_are_no_repetitions(text: str) -> None:
    """Nothing is stored of it."""
    assert read(text, current="Chin-Up").performed == ()


@pytest.mark.parametrize(
    "text",
    [
        "9 and 8 year olds left and right",
        "9 and 8, left and right turns",
        "plan says 9 left 8 right split squats with 16s",
    ],
)
def test_left_and_right_of_something_else(text: str) -> None:
    """No set is told by its sides."""
    performed = read(text, current="Split Squat").performed
    assert {p.side for p in performed} <= {None}


@pytest.mark.parametrize("text", ["warm in here, 60x4", "warm hands. 60x4"])
def test_warmth_is_no_warm_up(text: str) -> None:
    """The set is a working one."""
    assert read(text, current="Bench Press").performed == rows("Bench Press#1 60x4")


@pytest.mark.parametrize("text", ["warm up done, light day 40x6", "warm up done. easy week 40x6", "warm in here, 40x6"])
def test_a_light_working_set_is_no_warm_up(text: str) -> None:
    """Why it is light is told; it is kept with its own load."""
    assert read(text, current="Bench Press").performed == rows("Bench Press#1 40x6")
