"""Corrections, warm-ups, holds, sides, hung loads and missing kit told in free words, and what only sounds like them.

Each table has its own sentences for one meaning; behind them stand those that must not be read so. Common practice of
the gym, no source.
"""

import pytest

from tests.notation.plans import read, rows

BENCH = ("Bench Press#1 60x5", "Bench Press#2 60x4")
FIVE = """
take a rep off that, i counted wrong
knock one off set 2 please
my mate says he counted 3 so log 3
my spotter reckons 3 so put 3 down
make that 3, four was optimistic
four was wishful, it was 3
you can change 4 to 3
turn that 4 into a 3
i typed a 4 but meant a 3
you've got 4 there but it was 3
one rep too many on that one, call it 3
recounted on the video, it was 3 not 4
there were only 3 of them in the end
one less than i said
i overcounted, 3
set 2 should say 3, leave set 1 alone
second one was 3, the first stays 5
my last set was 3
"""
LOAD = """
typed 60, the bar said 55
kindly change the weight to 55
my head said 60 but the bar said 55
five kilos lighter than i told you, 55
misread the plates, 55
60 was wrong, 55 is right
it was the light bar so 55 in total
fat thumbs: 55 not 60
re my last set, the load was 55
put the weight as 55 please
"""
FIRST = """
knock one off the first set
first of the two was 4, second stays 4
set 1 should read 4, the other is fine
the earlier one was 4
going back to set one please write 4
my partner says the first set was 4, so correct that one
you can drop that 5 to a 4
change the first to four
5 was wrong, it was 4
"""
OTHER = """
next set 3
third set 3
3 on the third
going for 3 next
should i put 3 next time?
my mate did 3
my mate next to me did 3 lol
only 3 to go
that was tough, 3 next
take one off next set
add one rep next time
i'd like to change it to 3 reps next week
it might have been 3, not sure
"""


@pytest.mark.parametrize("text", FIVE.strip().splitlines())
def test_the_last_set_is_put_right(text: str) -> None:
    """What the repetitions of the last set were."""
    reading = read(text, *BENCH, current="Bench Press")
    assert reading.performed == rows("Bench Press#2 60x3")
    assert reading.replaces == (("Bench Press", 2),)


@pytest.mark.parametrize("text", LOAD.strip().splitlines())
def test_the_load_is_put_right(text: str) -> None:
    """What the load of the last set was."""
    reading = read(text, *BENCH, current="Bench Press")
    assert reading.performed == rows("Bench Press#2 55x4")
    assert reading.replaces == (("Bench Press", 2),)


@pytest.mark.parametrize("text", FIRST.strip().splitlines())
def test_an_earlier_set_is_put_right(text: str) -> None:
    """What the repetitions of a set before the last were."""
    reading = read(text, *BENCH, current="Bench Press")
    assert reading.performed == rows("Bench Press#1 60x4")
    assert reading.replaces == (("Bench Press", 1),)


@pytest.mark.parametrize("text", OTHER.strip().splitlines())
def test_what_puts_nothing_right(text: str) -> None:
    """Plans, others' sets, doubts and further sets replace nothing."""
    assert read(text, *BENCH, current="Bench Press").replaces == ()


WARM = """
warm up's done, forty for ten
warm-up complete: 40x10
got the warm up out of the way with 40x10
just getting the joints warm, 40x10
one warm up set in, 40 by 10
opened with a warm up, 40x10
as warming 40 kg 10 reps
warm up: 10 reps at 40
bench warm up done, 40x10
"""
WORK = """
all warmed up now: 60x5
warm up's out of the way, first set 60x5
finished warming up and got 60 for 5
some arm circles to warm up, then 60x5
after my usual warm up i hit 60x5
couple of warm up sets first, then 60x5
warm ups went fine. 60x5
60 x 5, warm up felt good
"""


@pytest.mark.parametrize("text", WARM.strip().splitlines())
def test_a_light_set_behind_talk_of_warming_up(text: str) -> None:
    """It is a warm-up, and answers no set of the plan."""
    assert read(text).performed == rows("Bench Press#0 40x10 warmup")


@pytest.mark.parametrize("text", WORK.strip().splitlines())
def test_a_set_as_planned_behind_talk_of_warming_up(text: str) -> None:
    """It is the first working set."""
    assert read(text).performed == rows("Bench Press#1 60x5")


HELD = """
lasted till 50
hung on for 50
held on until 50
made it to 50
timer said 50
stopwatch read 50 sec
a minute minus ten
ten seconds short of a minute
0 min 50 sec
50 sekunden
fiddy secs
"""
HELD_TWICE = """
held 50, then a wobbly 45
50 und 45 sekunden
50 en daarna 45 seconden
two planks: 50s 45s
plank one 50 plank two 45
50 on plank 1, 45 on plank 2
both planks done: 50, 45
"""


@pytest.mark.parametrize("text", HELD.strip().splitlines())
def test_a_hold(text: str) -> None:
    """How long it was held."""
    assert read(text, current="Plank").performed == rows("Plank#1 -x50")


@pytest.mark.parametrize("text", HELD_TWICE.strip().splitlines())
def test_two_holds(text: str) -> None:
    """How long each was held."""
    assert read(text, current="Plank").performed == rows("Plank#1 -x50", "Plank#2 -x45")


@pytest.mark.parametrize("text", ["50 sec rest", "50 to go", "aiming for 50", "try for 50 next"])
def test_no_hold(text: str) -> None:
    """Rest and plans are no holds."""
    assert read(text, current="Plank").performed == rows()


SIDED = """
left 9, right 8 on split squats with 16s
split squats with the 16s: nine left, eight right
split squat 16 kg, left got 9, right only 8
split squats with 16s, 9 on the left, one fewer on the right
9 and 8, left and right, split squats with 16s
"""
HUNG = """
chin ups 6 reps plus 10 kilos
6 chin ups wearing a 10 kg vest
hung 10 kg off the belt for chin ups, got 6
slung a 10 kg plate on for chin ups, 6 reps
chin ups 10kg backpack, 6
"""


@pytest.mark.parametrize("text", SIDED.strip().splitlines())
def test_both_sides(text: str) -> None:
    """What each side did."""
    assert read(text).performed == rows("Split Squat#1 16x9 left", "Split Squat#1 16x8 right")


@pytest.mark.parametrize("text", HUNG.strip().splitlines())
def test_a_load_hung_on_the_body(text: str) -> None:
    """It is added to the body's weight."""
    assert read(text).performed == rows("Chin-Up#1 10x6")


def test_help_is_not_hung() -> None:
    """What helps takes weight off."""
    assert read("chin ups 6 with 10 kg assist").performed == rows("Chin-Up#1 -10x6")


SWAPPED = """
row 55 x 9, no 50s free
couldn't find the 50 so barbell row with the 55, 9 reps
barbell row: someone had the 50 so used the 55 for 9
only the 55 was free for barbell rows. 9 reps
barbell row 55 x 9 (50 was taken)
"""
WAITING = """
the 50 is missing
someone's got the 50
waiting for the 50 to free up
looking for the 50 kg
the 50 isn't on the rack
gym is packed, no bench free yet
still waiting for the bench
"""


@pytest.mark.parametrize("text", SWAPPED.strip().splitlines())
def test_another_load_was_taken(text: str) -> None:
    """The set has the load that was there."""
    assert read(text).performed == rows("Barbell Row#1 55x9")


@pytest.mark.parametrize("text", WAITING.strip().splitlines())
def test_what_is_not_to_be_had_is_no_set(text: str) -> None:
    """It reports nothing, leaves nothing out and asks nothing."""
    reading = read(text, current="Barbell Row")
    assert (reading.performed, reading.skipped, reading.ask) == ((), (), None)


@pytest.mark.parametrize(
    ("text", "score"),
    [
        ("level 3 pain in my right knee", 3),
        ("on a scale of one to ten my knee hurts 4", 4),
        ("grade 2 pain in my knee", 2),
    ],
)
def test_a_score_on_a_scale(text: str, score: int) -> None:
    """How strong a hurt is."""
    pain = read(text).pain
    assert pain is not None
    assert pain.score == score


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        (
            "chest fly, two 10-kilo dumbbells: 12, 11, 10",
            ("Chest Fly#1 10x12", "Chest Fly#2 10x11", "Chest Fly#3 10x10"),
        ),
        ("2 sets of rows, 10 and 9", ("Barbell Row#1 50x10", "Barbell Row#2 50x9")),
        ("bench 60. five! FIVE!", ("Bench Press#1 60x5",)),
    ],
)
def test_what_only_counts(text: str, wanted: tuple[str, ...]) -> None:
    """How many bells, how many sets, and a number shouted twice."""
    assert read(text).performed == rows(*wanted)


def test_more_sets_are_counted_and_told() -> None:
    """The count of further sets is none of theirs."""
    wanted = rows("Bench Press#2 60x5", "Bench Press#3 60x4")
    assert read("bench 2 more sets, 5 and 4", "Bench Press#1 60x5").performed == wanted
    again = rows("Bench Press#2 60x5", "Bench Press#3 60x5")
    assert read("and the next two bench the same", "Bench Press#1 60x5").performed == again


@pytest.mark.parametrize("end", ["this concludes today's program", "end for today", "that completes the session"])
def test_the_end_in_other_words(end: str) -> None:
    """It finishes the session."""
    assert read(f"bench 60x5. {end}").finished


def test_a_hurt_like_an_old_one_is_told() -> None:
    """What is compared with last year is of today."""
    pain = read("left shoulder: a dull ache at the bottom, 2 out of 10. same as last year's trouble").pain
    assert pain is not None
    assert (pain.where, pain.score) == ("shoulder", 2)
