"""Another load than the plan's, told without a number, is asked for; one that is told, or only felt, is not. No source.

And the other ways to say a thing that stood beside it in the same messages: a time of minutes and seconds, an effort
that `would be` a number, a set told before in the message put right by its ordinal, scores of things that are no set.
"""

import pytest

from bot.notation.answer import AskKind
from tests.notation.plans import read, rows

UNSAID = (
    "took a lighter pair, 5 reps",
    "went a bit lighter, 5 reps",
    "had to go heavier, 5 reps",
    "used whatever was there, 5 reps",
    "somebody walked off with my plates so i grabbed what was left, 5 reps",
    "5 reps, lighter than planned",
    "5 reps but with less weight",
    "the good bar was gone so a different pair. 5 reps",
    "60x5, then two back offs of 5",
    "60x5 then 2 lighter sets of 5",
)
SAID = (
    ("5 reps, felt lighter", ("Bench Press#1 60x5",)),
    ("went heavier last week, today 5", ("Bench Press#1 60x5",)),
    ("so much heavier than it looks, 5 reps", ("Bench Press#1 60x5",)),
    ("went a bit lighter, 55x5", ("Bench Press#1 55x5",)),
    ("took a lighter pair, 55 kg, 5 reps", ("Bench Press#1 55x5",)),
    ("60x5, back off 55x6", ("Bench Press#1 60x5", "Bench Press#2 55x6")),
    ("60x5, back offs 55: 6 6", ("Bench Press#1 60x5", "Bench Press#2 55x6", "Bench Press#3 55x6")),
    ("60x5 and the back off 60x4", ("Bench Press#1 60x5", "Bench Press#2 60x4")),
    ("deads 140x5, both back offs as planned", ("Deadlift#1 140x5", "Deadlift#2 115x8", "Deadlift#3 115x8")),
)


@pytest.mark.parametrize("text", UNSAID)
def test_another_load_that_is_not_told_is_asked_for(text: str) -> None:
    """The plan's load is not what was lifted."""
    reading = read(text)
    assert reading.ask is not None
    assert (reading.ask.kind, reading.performed) == (AskKind.LOAD, ())


@pytest.mark.parametrize(("text", "stored"), SAID)
def test_a_load_that_is_told_or_only_felt_is_not(text: str, stored: tuple[str, ...]) -> None:
    """Nothing is missing there."""
    reading = read(text)
    assert (reading.ask, reading.performed) == (None, rows(*stored))


OTHERWISE = (
    ("plank held for 1 minute and 5 seconds", ("Plank#1 -x65",)),
    ("plank a minute and 5 secs, second time it was 48 seconds", ("Plank#1 -x65", "Plank#2 -x48")),
    ("60x5, 60x5, 60x4. The last of them I would rate at RPE 8,5.",
     ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x4 rir 1.5")),
    ("60x5, i'd call the last one an 8", ("Bench Press#1 60x5 rir 2",)),
    ("60x5, id give it 2 weeks till this is easy", ("Bench Press#1 60x5",)),
    ("60x5, 60x4, wait no, someone had moved the bar, the second one was 55 x 5",
     ("Bench Press#1 60x5", "Bench Press#2 55x5")),
    ("zero out of ten on the ankle today, bench 60x5", ("Bench Press#1 60x5",)),
    ("gym music 2/10, bench 60x5", ("Bench Press#1 60x5",)),
    ("60x5, 2 in the tonk", ("Bench Press#1 60x5 rir 2",)),
    ("60x5, it remains me 2 repetition", ("Bench Press#1 60x5 rir 2",)),
    ("the weight 60, I repeat 5 and 4", ("Bench Press#1 60x5", "Bench Press#2 60x4")),
    ("warm-up 40x5 and 50x2, now 60x5",
     ("Bench Press#0 40x5 warmup", "Bench Press#0 50x2 warmup", "Bench Press#1 60x5")),
)  # fmt: skip


@pytest.mark.parametrize(("text", "stored"), OTHERWISE)
def test_the_same_in_other_words(text: str, stored: tuple[str, ...]) -> None:
    """Each is one reading, and asks nothing."""
    reading = read(text)
    assert (reading.ask, reading.performed, reading.question) == (None, rows(*stored), False)


def test_what_is_put_right_beside_a_new_set() -> None:
    """The effort of a kept set, its sides, and a kept set told with a slip."""
    reading = read("set 1 was rpe 8, set 2 60x5 rpe 9", "Bench Press#1 60x5")
    assert reading.performed == rows("Bench Press#1 60x5 rir 2", "Bench Press#2 60x5 rir 1")
    reading = read("last split squats were left 9 right 8. bench 60x5", "Split Squat#1 16x9", current="Bench Press")
    assert {(p.exercise, p.reps, p.side) for p in reading.performed} == {
        (p.exercise, p.reps, p.side)
        for p in rows("Split Squat#1 16x9 left", "Split Squat#1 16x8 right", "Bench Press#1 60x5")
    }
    assert read("sory that was 5 not 4 reps", "Bench Press#1 60x4").performed == rows("Bench Press#1 60x5")


@pytest.mark.parametrize("text", ["failure was 2 reps away", "failure was 2 reps away on that one"])
def test_how_far_failure_was_is_no_failure(text: str) -> None:
    """By itself it rates the set kept last."""
    assert read(text, "Bench Press#1 60x5").performed == rows("Bench Press#1 60x5 rir 2")


def test_the_words_of_the_other_load_are_asked_about() -> None:
    """The question shows them whole."""
    reading = read("took a lighter pair, 5 reps")
    assert reading.ask is not None
    start, end = reading.ask.span
    assert "took a lighter pair, 5 reps"[start:end] == "took a lighter pair"


def test_a_lighter_load_of_the_exercise_that_the_chat_is_on_is_no_drop_of_the_one_before() -> None:
    """`dropped it to 45`: of what comes now, where nothing is planned to be dropped."""
    done = ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5")
    reading = read("dropped it to 45 today: 9 9 8", *done, current="Barbell Row")
    assert reading.performed == rows("Barbell Row#1 45x9", "Barbell Row#2 45x9", "Barbell Row#3 45x8")


@pytest.mark.parametrize("said", ["which is a record", "which is my best so far", "which was not easy"])
def test_what_says_more_of_a_set_asks_nothing(said: str) -> None:
    """A clause that begins with `which` is no question."""
    assert not read(f"bench 60x5, {said}").question


def test_a_plank_that_the_phone_takes_for_a_blank_is_no_fainting() -> None:
    """`side blank 35 sec`; what went blank is."""
    assert read("side blank 35 sec, bench 60x5").pain is None
    pain = read("everything went blank for 10 seconds").pain
    assert pain is not None
    assert pain.urgent
