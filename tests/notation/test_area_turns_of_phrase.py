"""Turns of phrase that hold a word of sets and tell none, and others that tell sets, skips and ends in other words.

Common practice, no source: how people in a gym put it, with near ones that tell something else.
"""

from datetime import date
from decimal import Decimal

import pytest

from bot.notation.answer import AskKind
from tests.notation.plans import read, rows

FIRST = "Bench Press#1 60x6"
BENCHED = (FIRST, "Bench Press#2 60x6", "Bench Press#3 60x6")
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...] = (
    # typed, done before, stored
    ("60x6 60x5, same as when i walk uphill", (), ("Bench Press#1 60x6", "Bench Press#2 60x5")),
    ("60x6, same as when i was 20", (), ("Bench Press#1 60x6",)),
    ("60x6, same as last time", (), ("Bench Press#1 60x6",)),
    ("it falls to one side, so i use the other rack. 60x5", (), ("Bench Press#1 60x5",)),
    ("60x5, dumbbell fell to one side", (), ("Bench Press#1 60x5",)),
    ("i paid attention as you asked. 60x5", (), ("Bench Press#1 60x5",)),
    ("warmed up as planned. 60x5 60x5", (), ("Bench Press#1 60x5", "Bench Press#2 60x5")),
    ("60x5, racked by two nice young men", (), ("Bench Press#1 60x5",)),
    ("bench 60kg, made all three with 5", (), tuple(f"Bench Press#{n} 60x5" for n in (1, 2, 3))),
    ("bench 60kg, all three with 5 reps", (), tuple(f"Bench Press#{n} 60x5" for n in (1, 2, 3))),
    ("fly 10 x 10, left one was shaky", (), ("Chest Fly#1 10x10",)),
    ("fly 10 x 10, left one in the tank", (), ("Chest Fly#1 10x10 rir 1",)),
    ("fly 20 all in, both dumbbells together, for 12", (), ("Chest Fly#1 10x12",)),
    ("so that was fifty for nine", BENCHED, ("Barbell Row#1 50x9",)),
    ("that was 50 for 9", BENCHED, ("Barbell Row#1 50x9",)),
    ("wrist pinches when i do flys, tens for twelve", (), ("Chest Fly#1 10x12",)),
    ("wrist pinches when i fly tens for twelve", (), ("Chest Fly#1 10x12",)),
    ("60x5 taking five", (), ("Bench Press#1 60x5",)),
    ("60x5, taking 5 now", (), ("Bench Press#1 60x5",)),
    ("60x5 and the world stood still for one moment", (), ("Bench Press#1 60x5",)),
    ("someone nicked the 55 so rows with the 50: 9 9", (), ("Barbell Row#1 50x9", "Barbell Row#2 50x9")),
    ("got 60x5 b4 the bell", (), ("Bench Press#1 60x5",)),
    ("i would kill for a coffee comma bench sixty for five", (), ("Bench Press#1 60x5",)),
    ("bench sixty two comma five for five", (), ("Bench Press#1 62.5x5",)),
    ("bench 60x5 full stop rows 50x9 full stop", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
    ("bench 60x5 period rows 50x9 period", (), ("Bench Press#1 60x5", "Barbell Row#1 50x9")),
    ("bench 60x5 / shoulder's cranky again / plank 45", (), ("Bench Press#1 60x5", "Plank#1 -x45")),
    ("bench 60x5, knee was hurting a bit so i left it at 5", (), ("Bench Press#1 60x5",)),
    ("negative for chest pain or numbness, as you asked. 60x5", (), ("Bench Press#1 60x5",)),
    ("no chest pain, like you asked me to check. 60x5", (), ("Bench Press#1 60x5",)),
    (
        "chins because the platform got taken: 8 8 7",
        (),
        tuple(f"Chin-Up#{n} 0x{r}" for n, r in enumerate((8, 8, 7), 1)),
    ),
    ("barbell row - 50, 9 reps each set (3)", (), tuple(f"Barbell Row#{n} 50x9" for n in (1, 2, 3))),
    ("60x5, miscounted the fives", (), ("Bench Press#1 60x5",)),
    ("bench 60x5 60x5, grip slipped on the 2nd", (), ("Bench Press#1 60x5", "Bench Press#2 60x5")),
    ("rack dropped on one side so i moved, 60x5", (), ("Bench Press#1 60x5",)),
    ("chins +5x8, +2.5x8", (), ("Chin-Up#1 5x8", "Chin-Up#2 2.5x8")),
    ("splits, calf cramped so L9 R8 with 16s", (), ("Split Squat#1 16x9 left", "Split Squat#1 16x8 right")),
    ("so i am resting: 5 and 4 at 60", (), ("Bench Press#1 60x5", "Bench Press#2 60x4")),
)


@pytest.mark.parametrize(("typed", "done", "stored"), SAID)
def test_sets_beside_a_turn_of_phrase(typed: str, done: tuple[str, ...], stored: tuple[str, ...]) -> None:
    """Every set is kept, none twice, and nothing is asked."""
    reading = read(typed, *done)
    assert reading.ask is None
    assert reading.performed == rows(*stored)


def test_what_is_left_out_ends_before_a_sign_and_a_number() -> None:
    """`skip rows, chins +10 8 7` gives up no chins."""
    reading = read("skip rows, chins +10 8 7")
    assert reading.skipped == ("Barbell Row",)
    assert reading.performed == rows("Chin-Up#1 10x8", "Chin-Up#2 10x7")


def test_what_was_dropped_beside_a_sign_is_no_exercise() -> None:
    assert read("left arm went weak all of a sudden, i dropped the dumbbell", *BENCHED).skipped == ()


def test_the_second_of_a_month_heads_a_late_report() -> None:
    """`on the 2nd` before its sets, or with words of a session, is a day."""
    assert read("on the 2nd: bench 60x5").day == date(2026, 3, 2)
    assert read("bench 60x5 60x5, all done on the 2nd").day == date(2026, 3, 2)


def test_ten_more_minutes_before_an_appointment_are_the_time_there_is() -> None:
    assert read("20 more minutes and then the dentist").minutes == Decimal(20)


def test_what_was_of_the_exercise_under_way_puts_right() -> None:
    """`that was 57.5 for 6` beside presses is of the press."""
    reading = read("that was 57.5 for 6", FIRST)
    assert reading.performed == rows("Bench Press#1 57.5x6")
    assert reading.replaces == (("Bench Press", 1),)


@pytest.mark.parametrize("typed", ["finished that set", "completed the set", "done with this set coach", "set done"])
def test_a_set_said_to_be_finished_on_a_range_asks_how_many(typed: str) -> None:
    reading = read(typed)
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.RANGE
    assert not reading.finished


@pytest.mark.parametrize(
    "typed",
    [
        "won't get the rows in today",
        "can't get rows in",
        "no way i get the rows in today",
        "won't fit the rows in today the missus is parked outside",
        "not getting the rows in time",
    ],
)
def test_what_does_not_fit_in_is_skipped(typed: str) -> None:
    reading = read(typed, *BENCHED)
    assert reading.skipped == ("Barbell Row",)
    assert reading.ask is None


@pytest.mark.parametrize("typed", ["can't get 9 rows in", "won't get 10 in on the rows", "can't get in the rows rack"])
def test_near_ones_skip_nothing(typed: str) -> None:
    assert read(typed, *BENCHED).skipped == ()


def test_a_day_of_notes_that_were_found_is_the_report_s() -> None:
    reading = read("bench from last monday, found em in my notes: 60x6 60x5")
    assert reading.day == date(2026, 3, 2)
    assert reading.performed == rows("Bench Press#1 60x6", "Bench Press#2 60x5")


@pytest.mark.parametrize("typed", ["60x6 flew up will i go heavier", "60x6, will i be ok with 62.5"])
def test_will_i_asks(typed: str) -> None:
    reading = read(typed)
    assert reading.question
    assert reading.performed == rows("Bench Press#1 60x6")


def test_what_cannot_be_told_is_no_question() -> None:
    assert not read("numb down below, cant tell when i wipe. 60x5").question
    assert read("60x5. cant tell if i should go heavier").question


@pytest.mark.parametrize(
    "typed", ["60x5. my arm since one hour has no force", "60x5. film had a bloke clutching his chest for ten minutes"]
)
def test_how_long_something_lasts_is_no_time_there_is(typed: str) -> None:
    assert read("can we train an hour later next week?").minutes is None
    assert read("from last half hour my leg is numb. 60x5").minutes is None
    assert read(typed).minutes is None
    assert read("60x5, since the meeting moved i have one hour").minutes == Decimal(60)


@pytest.mark.parametrize("typed", ["60x6 zorp 🤪 asdf 5,5", "60x6 zorp asdf 5", "60x6 qwerk 5 blib 5"])
def test_a_number_behind_a_word_that_nobody_knows_is_asked_about(typed: str) -> None:
    reading = read(typed)
    assert reading.ask is not None
    assert reading.performed == ()


@pytest.mark.parametrize(
    "typed", ["60x6 uff 5", "60x6 phone rang 5", "60x6 and a sad 5", "60x6 danach 5", "60x6 luego 60x5", "60x6 phew 5"]
)
def test_a_number_behind_a_word_of_everyday_is_kept(typed: str) -> None:
    reading = read(typed)
    assert reading.ask is None
    assert reading.performed == rows("Bench Press#1 60x6", "Bench Press#2 60x5")
