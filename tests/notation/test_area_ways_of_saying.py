"""Other ways of saying what a set was, of a hurt and of a farewell: common practice, no source."""

import pytest

from tests.notation.plans import read, rows

SETS = [
    ("60x4, i had still one inside the tank", "Bench Press", ["Bench Press#1 60x4 rir 1"]),
    ("60x4 one still in my tank", "Bench Press", ["Bench Press#1 60x4 rir 1"]),
    ("plank half a minute and 45 sec", "Plank", ["Plank#1 -x30", "Plank#2 -x45"]),
    ("plank a minute and 5 sec", "Plank", ["Plank#1 -x65"]),
    ("chins 9 first set 8 second", "Chin-Up", ["Chin-Up#1 0x9", "Chin-Up#2 0x8"]),
    ("chins 9 first, 8 second set", "Chin-Up", ["Chin-Up#1 0x9", "Chin-Up#2 0x8"]),
    ("32 for 30m both runs", "Farmer Carry", ["Farmer Carry#1 32x30", "Farmer Carry#2 32x30"]),
    ("32 both trips, 30 metres", "Farmer Carry", ["Farmer Carry#1 32x30", "Farmer Carry#2 32x30"]),
    ("16s, 8 on one leg and 8 on the other", "Split Squat", ["Split Squat#1 16x8"]),
    (
        "16s, left 8, right 9, lefty is a princess",
        "Split Squat",
        ["Split Squat#1 16x8 left", "Split Squat#1 16x9 right"],
    ),
    ("16s x 8 left only, right still to come", "Split Squat", ["Split Squat#1 16x8 left"]),
    ("the 50 bag for 9", "Barbell Row", ["Barbell Row#1 50x9"]),
]


@pytest.mark.parametrize(("text", "current", "expected"), SETS, ids=[text for text, _, _ in SETS])
def test_sets(text: str, current: str, expected: list[str]) -> None:
    reading = read(text, current=current)
    assert (reading.performed, reading.ask) == (rows(*expected), None)


@pytest.mark.parametrize("text", ["did all the chins like it was written", "all chins how it was planned"])
def test_as_planned_asks_for_a_range(text: str) -> None:
    ask = read(text, current="Chin-Up").ask
    assert ask is not None
    assert "chins" not in text[ask.span[0] : ask.span[1]]


HURTS = [
    ("my low back talks to me a bit since the second set, 4 of 10", "lower back", 4, False),
    ("knee talks to me when i squat", "knee", None, False),
    ("hip is chatting to me on the way down", "hip", None, False),
    ("my ribs on the left are a good six out of ten when i twist", "rib", 6, False),
    ("knee is a solid 4/10", "knee", 4, False),
    ("i touch the inside of my thighs since that set and feel nothing there", "thigh", None, True),
    ("i rub my thigh and dont feel a thing", "thigh", None, True),
    ("stroked my foot and felt nothing", "foot", None, True),
]


@pytest.mark.parametrize(("text", "where", "score", "urgent"), HURTS, ids=[text for text, _, _, _ in HURTS])
def test_hurts(text: str, where: str, score: int | None, *, urgent: bool) -> None:
    pain = read(text, current="Bench Press").pain
    assert pain is not None
    assert (pain.where, pain.score, pain.urgent) == (where, score, urgent)


@pytest.mark.parametrize(
    "text",
    ["the coach here talks to me too much", "felt nothing in my chest on these, any cue?",
     "rubbed my hands with chalk and felt nothing slip", "a good 8/10 session"],
)  # fmt: skip
def test_no_hurts(text: str) -> None:
    assert read(text, current="Bench Press").pain is None


@pytest.mark.parametrize("text", ["right im finished, catch you thursday", "thats me, catch ya on friday"])
def test_farewells_tell_no_day(text: str) -> None:
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    assert (reading.day, reading.finished) == (None, True)


PUT_RIGHT = [
    ("60x5, 4 and that 4 should say 5", ["Bench Press#1 60x5", "Bench Press#2 60x5"]),
    ("57.5x5, 60x5. that 60 should be 62.5", ["Bench Press#1 57.5x5", "Bench Press#2 62.5x5"]),
    ("60x5 and that 5 should be 4", ["Bench Press#1 60x4"]),
]


@pytest.mark.parametrize(("text", "expected"), PUT_RIGHT, ids=[text for text, _ in PUT_RIGHT])
def test_a_number_called_by_its_value_is_put_right(text: str, expected: list[str]) -> None:
    assert read(text, current="Bench Press").performed == rows(*expected)


MORE_SETS = [
    ("rows 50: 10, 9, 8 and a half so call it 8", "Barbell Row", 3),
    ("rows 50, eleven of them", "Barbell Row", 1),
    ("rows 50x10, 3 of them", "Barbell Row", 3),
    ("60x5, elbow same as ever", "Bench Press", 1),
    ("60x5, back the same", "Bench Press", 1),
    ("60x5 same", "Bench Press", 2),
    ("60x5, had a couple more sets, 5 and 4", "Bench Press", 3),
    ("60x5, got a couple more sets to go", "Bench Press", 1),
    ("60x6 5 and 4 it was boredom that stopped me not my legs", "Bench Press", 3),
    ("60x5 finished on 62.5x4", "Bench Press", 2),
    ("60x5 then i lie on the bench for a while", "Bench Press", 1),
    ("both carries 32 for 30m", "Bench Press", 2),
    ("60x5 @9.5, less easy", "Bench Press", 1),
    ("32 for 40m, my shopping weighs more", "Farmer Carry", 1),
]


@pytest.mark.parametrize(("text", "current", "count"), MORE_SETS, ids=[text for text, _, _ in MORE_SETS])
def test_so_many_sets(text: str, current: str, count: int) -> None:
    reading = read(text, current=current)
    assert (len(reading.performed), reading.ask) == (count, None)


def test_a_set_before_a_sign_that_then_follows_is_kept() -> None:
    reading = read("16s, 8 each then everything went black", current="Split Squat")
    assert reading.performed == rows("Split Squat#1 16x8")
    assert reading.pain is not None
    assert reading.pain.urgent


def test_a_hurt_that_is_as_ever_repeats_no_set() -> None:
    reading = read("elbow pain 2/10, same as ever", current="Bench Press")
    assert (reading.performed, reading.ask) == ((), None)


def test_another_life_puts_an_exercise_off() -> None:
    assert read("flys can wait for another life", current="Bench Press").skipped == ("Chest Fly",)


QUESTIONS = [
    ("60x5 theres a weight on my breastbone is that from the bench", True),
    ("60x5 knee clicks is that just age", True),
    ("knee hurts could it be the shoes", True),
    ("60x5 the problem is that the bar slips", False),
    ("60x5 its the bar that is just heavy", False),
    ("60x5, sharp zap on the last one, couldnt tell you where from", False),
    ("60x5 felt a tear, not sure what that was", False),
    ("60x5 knee pain, dunno why", False),
    ("can you tell me where to rest", True),
    ("not sure what weight to use next", True),
]


@pytest.mark.parametrize(("text", "asks"), QUESTIONS, ids=[text for text, _ in QUESTIONS])
def test_questions(text: str, *, asks: bool) -> None:
    assert read(text, current="Bench Press").question is asks


WARMED = [
    ("8s x 8 each leg warm up", 8),
    ("8s x 8 each leg but that was only a warm-up, dont count it", 8),
    ("10 reps with the 8s to warm up", 10),
]


@pytest.mark.parametrize(("text", "reps"), WARMED, ids=[text for text, _ in WARMED])
def test_warm_ups_told_behind_their_sides(text: str, reps: int) -> None:
    reading = read(text, current="Split Squat")
    assert reading.performed == rows(f"Split Squat#0 8x{reps} warmup")
