"""The reading rules, one table each. Asked about is `ask`; a message that stores nothing has no rows."""

import pytest

from bot.notation.reading import AskKind
from tests.notation.plans import read, rows

B1, B2, B3 = "Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"


@pytest.mark.parametrize(
    "text",
    [
        "60x5",
        "60 x 5",
        "60*5",
        "60×5",
        "60 5",
        "60 for 5",
        "60kg 5 reps",
        "5 reps at 60",
        "5@60",
        "5x60",
        "60kg x 5",
        "60 kilos, 5 reps",
        "sixty for five",
        "5 with 60",
        "60: 5",
        "bench 60x5",
        "60x5 bench",
        "5 on bench at 60",
        "did 60 for 5",
        "６０×５",
        "٦٠x٥",
        "60\xa0x\xa05",
        "60x\u200b5",
    ],
)
def test_load_and_repetitions(text: str) -> None:
    """Rule 1: load, then repetitions, in any of the usual ways; turned round where only that is plausible."""
    assert read(text).performed == rows(B1), text


@pytest.mark.parametrize("text", ["12x10", "11x10", "10 10 10", "10 12", "12x11, 11x12"])
def test_both_orders_ask(text: str) -> None:
    """Rule 1: two plausible orders that differ are asked about, each offered with all that it would store."""
    reading = read(text, current="Chest Fly")
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.ORDER
    assert len({choice.reading.performed for choice in reading.ask.choices}) >= 2


def test_exactly_as_planned_is_taken() -> None:
    """Rule 1: load first, exactly the planned load with repetitions in range; `for` is never turned round."""
    assert read("10x12", current="Chest Fly").performed == rows("Chest Fly#1 10x12")
    assert read("12 for 10", current="Chest Fly").performed == rows("Chest Fly#1 12x10")


@pytest.mark.parametrize(
    ("text", "reps"),
    [
        ("60x5x3", (5, 5, 5)),
        ("60 3x5", (5, 5, 5)),
        ("3x5", (5, 5, 5)),
        ("60: 5 5 4", (5, 5, 4)),
        ("60x5,5,4", (5, 5, 4)),
        ("60 5 5 4", (5, 5, 4)),
        ("60x5 x2", (5, 5)),
        ("60x5 twice", (5, 5)),
        ("3 sets of 5 at 60", (5, 5, 5)),
        ("3x5@60", (5, 5, 5)),
        ("all three at 60x5", (5, 5, 5)),
        ("60x5, same, same", (5, 5, 5)),
        ("first set 60x5 second 60x5 third 60x4", (5, 5, 4)),
        ("1) 60x5 2) 60x5", (5, 5)),
        ("5/5/4 @60", (5, 5, 4)),
        ("5-5-4 at 60", (5, 5, 4)),
        ("60 5, 60 5, 60 4", (5, 5, 4)),
    ],
)
def test_sets(text: str, reps: tuple[int, ...]) -> None:
    """Rule 2: several sets at once."""
    wanted = rows(*(f"Bench Press#{n} 60x{r}" for n, r in enumerate(reps, 1)))
    assert read(text).performed == wanted, text


@pytest.mark.parametrize(
    ("text", "done", "stored"),
    [
        ("8", ("Deadlift#1 140x5",), "Deadlift#2 115x8"),
        ("8", ("Deadlift#1 140x5", "Deadlift#2 120x8"), "Deadlift#3 120x8"),
        ("same", ("Deadlift#1 140x5", "Deadlift#2 120lbx8"), "Deadlift#3 120lbx8"),
        ("ditto", ("Deadlift#1 140x5", "Deadlift#2 115x8"), "Deadlift#3 115x8"),
        ("same weight 7", ("Deadlift#1 140x5", "Deadlift#2 117.5x8"), "Deadlift#3 117.5x7"),
        ("140", (), "Deadlift#1 140x5"),
    ],
)
def test_what_is_not_said(text: str, done: tuple[str, ...], stored: str) -> None:
    """Rule 3: the set before where the plan has both alike, else the plan."""
    assert read(text, *done, current="Deadlift").performed == rows(stored)


def test_same_repeats_continuations_and_sides() -> None:
    """Rule 3: `same` repeats drops and sides; effort is never filled in."""
    done = ("Split Squat#1 16x10 left rir 2", "Split Squat#1 16x9 right rir 2")
    assert read("same", *done, current="Split Squat").performed == rows(
        "Split Squat#2 16x10 left", "Split Squat#2 16x9 right"
    )


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("62,5x5", ("Bench Press#1 62.5x5",)),
        ("62.5x5", ("Bench Press#1 62.5x5",)),
        ("62,5 x 5, 4", ("Bench Press#1 62.5x5", "Bench Press#2 62.5x4")),
        ("60x5,4", ("Bench Press#1 60x5", "Bench Press#2 60x4")),
        ("60x6,5,4", ("Bench Press#1 60x6", "Bench Press#2 60x5", "Bench Press#3 60x4")),
        ("62½ x 5", ("Bench Press#1 62.5x5",)),
        ("62·5 x 5", ("Bench Press#1 62.5x5",)),
    ],
)
def test_decimals(text: str, stored: tuple[str, ...]) -> None:
    """Rule 4: point and comma; a comma that separates."""
    assert read(text).performed == rows(*stored)


@pytest.mark.parametrize("text", ["1.000x5", "1,000 x 5", "1e9", "100²", "60x1e9", "⑤"])
def test_odd_numbers_ask(text: str) -> None:
    """A number that can be written for several is asked about."""
    reading = read(text)
    assert reading.ask is not None
    assert reading.performed == ()


@pytest.mark.parametrize(
    ("said", "rir"),
    [
        ("@9", "1"),
        ("rpe 9", "1"),
        ("rpe9", "1"),
        ("RPE 8.5", "1.5"),
        ("rir 2", "2"),
        ("2 rir", "2"),
        ("2 in the tank", "2"),
        ("2 left", "2"),
        ("could have done 2 more", "2"),
        ("to failure", "0"),
        ("nothing left", "0"),
        ("rpe 8-9", "1.5"),
        ("1-2 in the tank", "1.5"),
        ("8 rpe", "2"),
        ("one in reserve", "1"),
        ("could've done another", "1"),
        ("failed the 6th", "0"),
        ("w/ 2 in the tank", "2"),
        ("felt like an 8", "2"),
        ("maybe 1-2 left", "1.5"),
        ("had 1 more in me", "1"),
    ],
)
def test_effort(said: str, rir: str) -> None:
    """Rule 5: effort as repetitions in reserve."""
    assert read(f"60x5 {said}").performed == rows(f"{B1} rir {rir}")


@pytest.mark.parametrize("said", ["hard", "easy", "felt heavy", "smashed it", "not to failure", "nowhere near failure"])
def test_words_are_no_effort(said: str) -> None:
    """Rule 5: words with no number are no effort rating."""
    assert read(f"60x5 {said}").performed == rows(B1)


def test_effort_of_a_list() -> None:
    """Rule 5: an effort after a list is the last set's, unless `all` is said."""
    assert read("60x5 60x5 @9").performed == rows(B1, f"{B2} rir 1")
    assert read("60x5 60x5 all @9").performed == rows(f"{B1} rir 1", f"{B2} rir 1")


@pytest.mark.parametrize(
    "text",
    ["55x10 > 40x8", "55x10 then 40x8", "55x10 drop 40x8", "55x10/40x8", "55x10 -> 40x8", "55x10, dropped to 40 for 8"],
)
def test_drops(text: str) -> None:
    """Rule 6: a set and its drop."""
    done = ("Lat Pulldown#1 55x12", "Lat Pulldown#2 55x11")
    assert read(text, *done, current="Lat Pulldown").performed == rows(
        "Lat Pulldown#3 55x10", "Lat Pulldown#3 40x8 drop"
    )


@pytest.mark.parametrize(
    "text", ["25x13 +4+4+3", "25x13 4 4 3", "13 + 4 + 4 + 3", "25x13 minis 4 4 3", "25x13, minis 4/4/3"]
)
def test_minis(text: str) -> None:
    """Rule 6: a set and its minis at the same load."""
    done = ("Triceps Pushdown#1 25x15", "Triceps Pushdown#2 25x14")
    assert read(text, *done, current="Triceps Pushdown").performed == rows(
        "Triceps Pushdown#3 25x13",
        "Triceps Pushdown#3 25x4 mini",
        "Triceps Pushdown#3 25x4 mini",
        "Triceps Pushdown#3 25x3 mini",
    )


def test_continuations_reported_later_are_added() -> None:
    """Rule 6: they carry the set of their work set and replace nothing, whatever the chat is on by then."""
    done = ("Lat Pulldown#1 55x12", "Lat Pulldown#2 55x11", "Lat Pulldown#3 55x10")
    reading = read("drop 40x8", *done, current="Plank")
    assert reading.performed == rows("Lat Pulldown#3 40x8 drop")
    assert reading.replaces == ()


@pytest.mark.parametrize(
    "text", ["10/9", "L10 R9", "left 10 right 9", "10 left 9 right", "10L 9R", "10 on the left, 9 on the right"]
)
def test_sides(text: str) -> None:
    """Rule 7: the sides named apart."""
    assert read(text, current="Split Squat").performed == rows("Split Squat#1 16x10 left", "Split Squat#1 16x9 right")


@pytest.mark.parametrize("text", ["10 each", "10/leg", "16x10 each", "16s x 10 per side", "10 e/s", "2x16 for 10 each"])
def test_each_side(text: str) -> None:
    """Rule 7: each side alike."""
    assert read(text, current="Split Squat").performed == rows("Split Squat#1 16x10")


@pytest.mark.parametrize(
    "text",
    [
        "2x10 for 12",
        "10s x 12",
        "10/hand x12",
        "20 total x12",
        "two 10s for 12",
        "pair of 10s x 12",
        "10 each hand x 12",
    ],
)
def test_hands(text: str) -> None:
    """Rule 8: the number on one dumbbell."""
    assert read(text, current="Chest Fly").performed == rows("Chest Fly#1 10x12")


def test_twice_the_dumbbell_asks() -> None:
    """Rule 8: exactly double the plan, unexplained, asks and offers both."""
    reading = read("20x12", current="Chest Fly")
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.PER_HAND
    assert [c.reading.performed for c in reading.ask.choices] == [rows("Chest Fly#1 10x12"), rows("Chest Fly#1 20x12")]


@pytest.mark.parametrize(
    ("text", "load"),
    [
        ("bw x 8", "0"),
        ("8", "0"),
        ("8 bodyweight", "0"),
        ("+10 x 8", "10"),
        ("bw+10 x 8", "10"),
        ("-20 x 8", "-20"),
        ("20 assist x 8", "-20"),
        ("8 with 20kg assistance", "-20"),
        ("10kg added for 8", "10"),
    ],
)
def test_body_weight(text: str, load: str) -> None:
    """Rule 9: what is added to the body."""
    assert read(text, current="Chin-Up").performed == rows(f"Chin-Up#1 {load}x8")


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("135lb x 5", "Bench Press#1 135lbx5"),
        ("135 lbs for 5", "Bench Press#1 135lbx5"),
        ("60 kilos 5", "Bench Press#1 60x5"),
        ("all in pounds here, bench 135x5", "Bench Press#1 135lbx5"),
        ("plank 1:05", "Plank#1 -x65"),
        ("plank 1 min 5 sec", "Plank#1 -x65"),
        ("plank a minute", "Plank#1 -x60"),
        ("carry 32s for 40m", "Farmer Carry#1 32x40"),
    ],
)
def test_units(text: str, stored: str) -> None:
    """Rule 10: units named on a number, or once for the message; seconds and metres."""
    assert read(text).performed == rows(stored)


@pytest.mark.parametrize(
    ("text", "exercise"),
    [
        ("bnech 60x5", "Bench Press"),
        ("bb row 50x10", "Barbell Row"),
        ("splitsquats 16x10", "Split Squat"),
        ("flyes 10x12", "Chest Fly"),
        ("deads 140x5", "Deadlift"),
        ("chin ups 8", "Chin-Up"),
        ("farmers 32x40", "Farmer Carry"),
        ("pull down 55x12", "Lat Pulldown"),
        ("tricep pushdowns 25x15", "Triceps Pushdown"),
    ],
)
def test_names(text: str, exercise: str) -> None:
    """Rule 11: shortened, misspelt, abbreviated, by alias."""
    assert {p.exercise for p in read(text).performed} == {exercise}


@pytest.mark.parametrize(
    "text",
    [
        "leg press 100x10",
        "front squats 60x5",
        "hack squat 60x5",
        "did dips instead of bench, 3x10",
        "dumbbell bench 24x5",
    ],
)
def test_unknown_exercises_ask(text: str) -> None:
    """Rule 11: an exercise that the session does not have, or a substitute, asks."""
    reading = read(text)
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.UNKNOWN_EXERCISE


def test_several_exercises() -> None:
    """Rule 11: several in one message, a line or a clause each, the name before or after, or alone on its line."""
    wanted = rows("Bench Press#1 60x5", "Bench Press#2 60x5", "Barbell Row#1 50x10")
    for text in (
        "bench 60x5 60x5, row 50x10",
        "60x5 60x5 bench, 50x10 row",
        "bench\n60x5\n60x5\nrow\n50x10",
        "- bench 60x5, 60x5\n- row 50x10",
        "1. bench 60x5 60x5\n2. row 50x10",
    ):
        assert read(text).performed == wanted, text


@pytest.mark.parametrize(
    ("text", "skipped"),
    [
        ("skipped rows", ("Barbell Row",)),
        ("no time for plank", ("Plank",)),
        ("plank and rows skipped", ("Plank", "Barbell Row")),
        ("bench 60x5, skipping set 2", ("Bench Press",)),
        ("shoulder was meh so stopped bench", ("Bench Press",)),
        ("can i skip rows?", ()),
        ("i never skip rows", ()),
        ("might skip rows", ()),
    ],
)
def test_skips(text: str, skipped: tuple[str, ...]) -> None:
    """Rule 12: what is given up, and what is only thought of."""
    assert sorted(read(text).skipped) == sorted(skipped)


@pytest.mark.parametrize(
    ("text", "finished"),
    [
        ("that's me done", True),
        ("finished", True),
        ("calling it a day", True),
        ("60x5. all done", True),
        ("finished bench", False),
        ("not done yet", False),
        ("almost finished", False),
        ("one more and then i'm done", False),
    ],
)
def test_finish(text: str, finished: bool) -> None:
    """Rule 12: the end of the session only where the message says so."""
    assert read(text).finished is finished


def test_bare_done() -> None:
    """Rule 12: `done` is the current set as planned where that is one number with a load; else it asks."""
    assert read("done", current="Deadlift").performed == rows("Deadlift#1 140x5")
    assert read("👍", current="Deadlift").performed == rows("Deadlift#1 140x5")
    assert read("done", current="Bench Press").ask is not None


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("that was 62.5 not 60", "Bench Press#2 62.5x5"),
        ("sorry 4 reps", "Bench Press#2 60x4"),
        ("set 1 was 4", "Bench Press#1 60x4"),
        ("the last one was rpe 9", "Bench Press#2 60x5 rir 1"),
        ("rpe 9", "Bench Press#2 60x5 rir 1"),
        ("*62.5", "Bench Press#2 62.5x5"),
        ("i put 60 but it was 62.5", "Bench Press#2 62.5x5"),
        ("change set 1 to 4", "Bench Press#1 60x4"),
        ("no 4", "Bench Press#2 60x4"),
        ("wait, 62.5x4", "Bench Press#2 62.5x4"),
    ],
)
def test_corrections(text: str, stored: str) -> None:
    """Rule 13: what is corrected, and the rest as it was stored."""
    reading = read(text, B1, B2)
    assert reading.performed == rows(stored)
    assert reading.replaces == ((stored.split("#", maxsplit=1)[0], int(stored.split("#")[1][0])),)


def test_scrapping() -> None:
    """Rule 13: `scrap that` replaces with nothing; a correction inside one message replaces nothing."""
    assert (read("scrap that", B1).performed, read("scrap that", B1).replaces) == ((), (("Bench Press", 1),))
    inside = read("60x5 no wait 60x4")
    assert (inside.performed, inside.replaces) == (rows("Bench Press#1 60x4"), ())


@pytest.mark.parametrize("text", ["sorry for the delay, 60x4", "sorry forgot, 60x4", "60x4 sorry for the spam"])
def test_apologies_correct_nothing(text: str) -> None:
    """An apology for something else is a report like any other."""
    assert (read(text, B1, B2).performed, read(text, B1, B2).replaces) == (rows("Bench Press#3 60x4"), ())


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("yesterday: bench 60x5", "2026-03-03"),
        ("monday's session: bench 60x5", "2026-03-02"),
        ("3 days ago bench 60x5", "2026-03-01"),
        ("wednesday: bench 60x5", "2026-02-25"),
        ("on 13/2 bench 60x5", "2026-02-13"),
        ("2026-03-01 bench 60x5", "2026-03-01"),
        ("sore from monday, 60x5", None),
        ("slept badly last night, 60x5", None),
        ("the monday workout: bench 60x5", None),
        ("couldn't train yesterday, today bench 60x5", None),
        ("will do rows friday. bench 60x5", None),
    ],
)
def test_days(text: str, day: str | None) -> None:
    """Rule 14: the day of the report, always past; a day in talk is none."""
    said = read(text).day
    assert (None if said is None else said.isoformat()) == day


@pytest.mark.parametrize("text", ["at the weekend bench 60x5", "3/4: bench 60x5", "last week bench 60x5"])
def test_doubtful_days_ask(text: str) -> None:
    """Rule 14: a day that may be several asks."""
    ask = read(text).ask
    assert ask is not None
    assert ask.kind is AskKind.DAY


def test_pain_and_sets_together() -> None:
    """Rule 15: a message may hold sets and pain; a score is no set."""
    reading = read("60x5, left knee 4/10")
    assert reading.performed == rows(B1)
    assert reading.pain is not None
    assert (reading.pain.where, reading.pain.score) == ("knee", 4)


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("only got 25 min", 25),
        ("half an hour today", 30),
        ("gotta leave in an hour and ten", 70),
        ("until 18:30", 30),
        ("need to leave at half six", 30),
        ("1h15 today", 75),
        ("3 min rest, 60x5", None),
        ("10 min late", None),
        ("45 min drive here", None),
        ("took me 45 minutes", None),
    ],
)
def test_minutes(text: str, minutes: int | None) -> None:
    """Rule 16: the time that there is, not rests, travel or lateness."""
    assert read(text).minutes == minutes


def test_spoken_numbers() -> None:
    """Rule 17."""
    assert read("sixty for five at nine").performed == rows(f"{B1} rir 1")
    assert read("sixty two and a half for five").performed == rows("Bench Press#1 62.5x5")


@pytest.mark.parametrize("text", ["warm up 40x5", "40x5 warm up", "warm-up: 40 for 5", "warmed up with 40x5"])
def test_warmups(text: str) -> None:
    """Rule 18: they answer no prescribed set."""
    assert read(text).performed == rows("Bench Press#0 40x5 warmup")


@pytest.mark.parametrize("text", ["600x5", "60x50", "6x5kg", "20x5", "135x5"])
def test_out_of_reason_asks(text: str) -> None:
    """Rule 19: far outside the plan and the history."""
    reading = read(text)
    assert reading.ask is not None
    assert reading.performed == ()


@pytest.mark.parametrize(
    "text",
    [
        "gym at 7 tonight",
        "see you at 6",
        "my kids are 5 and 8",
        "4 people waiting for the rack",
        "2 sets left",
        "slept 4 hours",
        "had 3 coffees",
        "weighed in at 82.4",
        "my mate pulled 220 for 3",
        "want to hit 100 by summer",
        "my best is 80x5",
        "on my way",
        "lol",
        "🔥🔥",
        "",
        "   ",
        "nearly done, one exercise to go",
        "100% effort today",
    ],
)
def test_talk(text: str) -> None:
    """Rule 20: talk stores nothing and asks nothing."""
    reading = read(text, B1)
    assert (reading.performed, reading.replaces, reading.ask, reading.skipped) == ((), (), None, ())


def test_asking_keeps_the_rest() -> None:
    """Rule 21: asking empties the sets; pain, minutes and day stay."""
    reading = read("yesterday bench 600x5, knee hurts, only got 20 min today")
    assert reading.ask is not None
    assert reading.performed == ()
    assert reading.pain is not None
    assert reading.minutes == 20
    assert reading.day is not None
