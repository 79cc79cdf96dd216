"""Exercises done in turn, told with their loads; drops, minis and sets taken back; days of late reports."""

import pytest

from tests.notation.plans import read, row

TWICE = (
    row("Bench Press#1 60x5"),
    row("Bench Press#2 60x5"),
    row("Barbell Row#1 50x9"),
    row("Barbell Row#2 50x9"),
)


@pytest.mark.parametrize(
    "text",
    [
        "2 rounds: bench 60x5, row 50x9",
        "two rounds of bench 60 for 5 and row 50 for 9",
        "did bench 60x5 + row 50x9 for two rounds",
        "bench 60x5 row 50x9, two rounds",
        "bench 60x5 / row 50x9, 2 rounds of that",
        "(bench 60x5, row 50x9) x2",
        "2x (bench 60x5, row 50x9)",
        "two supersets of bench 60x5 and row 50x9",
        "bench 60x5 and row 50x9 as a superset, done twice",
        "went through twice: bench 60x5, row 50x9",
        "round 1: bench 60x5, row 50x9. round 2: same",
        "round 1 bench 60x5 row 50x9\nround 2 same again",
        "sixty for five on bench and fifty for nine on rows, two rounds",
    ],
)
def test_a_circuit_has_as_many_sets_of_each(text: str) -> None:
    """However it is told how often the exercises were gone through."""
    assert read(text).performed == TWICE


def test_an_effort_in_a_circuit_is_the_last_sets() -> None:
    """As behind sets of one exercise."""
    rated = (*TWICE[:3], row("Barbell Row#2 50x9 rir 2"))
    assert read("2 rounds: bench 60x5, row 50x9 @8").performed == rated


@pytest.mark.parametrize("beside", ["2 rounds: bench 60x5, row 50x9. {}", "{}. 2 rounds: bench 60x5, row 50x9"])
@pytest.mark.parametrize("told", ["20 min left", "left knee hurts", "gym was packed"])
def test_what_stands_beside_a_circuit(beside: str, told: str) -> None:
    """Minutes, pain and talk leave the circuit what it is."""
    assert read(beside.format(told)).performed == TWICE


@pytest.mark.parametrize(
    "text",
    ["2 rounds left, bench 60x5 row 50x9", "first round bench 60x5 row 50x9", "bench 60x5, row 50x9, round one done"],
)
def test_rounds_that_are_not_done_count_nothing(text: str) -> None:
    """One set of each."""
    assert read(text).performed in ((TWICE[0], TWICE[2]), ())


@pytest.mark.parametrize(
    "text",
    [
        "oh and there was a drop on that one as well, 40x8",
        "also did a drop to 40, got 8",
        "forgot the drop: 40x8",
        "there was a drop after it, 40 x 8",
    ],
)
def test_a_drop_told_of_a_kept_set_is_added_to_it(text: str) -> None:
    """It takes nothing back and is no next set, whatever is planned."""
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    assert reading.performed == (row("Bench Press#1 40x8 drop"),)
    assert reading.replaces == ()


@pytest.mark.parametrize(
    "text",
    [
        "then two mini sets, three reps each time",
        "two little minis off the back of it, 3 reps and 3 reps",
        "add two minis to that last set, 3 both times",
        "2 minis at the same weight, 3 and 3",
        "minis after: 3, 3",
    ],
)
def test_minis_that_are_counted_are_so_many(text: str) -> None:
    """Their number is no repetitions."""
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    assert reading.performed == (row("Bench Press#1 60x3 mini"),) * 2


KEPT = ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x4", "Barbell Row#1 50x9")


@pytest.mark.parametrize(
    "text",
    [
        "nix the last bench set",
        "bench set 3 needs deleting",
        "throw the third bench set away",
        "cross out the third set of bench",
        "get rid of bench set 3",
        "the third bench set was a mistake, chuck it out",
    ],
)
def test_a_named_set_is_taken_back(text: str) -> None:
    """In any words for it."""
    reading = read(text, *KEPT)
    assert (reading.replaces, reading.performed) == ((("Bench Press", 3),), ())


@pytest.mark.parametrize(
    "text", ["roll that back", "that wasnt a set, delete it please", "dont count what i just sent", "nix that"]
)
def test_the_last_set_is_taken_back(text: str) -> None:
    """It, and no other: `a set` is not every set."""
    assert read(text, *KEPT).replaces == (("Barbell Row", 1),)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("on march 2 i did bench 60x5", 2),
        ("mar 2nd, bench 60x5", 2),
        ("sorry late, march the 2nd i did bench 60x5", 2),
        ("catching up: monday, bench, 60x5", 2),
        ("2d ago bench 60x5", 2),
        ("2 days back i did bench 60x5", 2),
        ("bench 60x5 but it was from the day before yesterday", 2),
        ("put this under yesterday, bench 60x5", 3),
        ("forgot to send my bench from monday. 60x5", 2),
    ],
)
def test_the_day_of_a_late_report(text: str, day: int) -> None:
    """Days by date, by how long ago, and as what a report is put under."""
    reading = read(text)
    assert reading.performed == (row("Bench Press#1 60x5"),)
    assert reading.day is not None
    assert (reading.day.month, reading.day.day) == (3, day)


@pytest.mark.parametrize(
    "text", ["quads sore but that is from monday. bench 60x5", "may the 4th be with you, bench 60x5"]
)
def test_a_day_of_talk_is_not_the_reports(text: str) -> None:
    """Soreness has its own day."""
    assert read(text).day is None


@pytest.mark.parametrize(
    "text",
    [
        "set 2: 2.5 kilos more than the last set, 5 reps",
        "went up 2.5 kilos for the second set, got 5",
        "bumped it by 2.5 kilos, second set 5 reps",
        "second set with 2,5 kilos more, 5 reps",
        "5 reps on the second, 2.5kg heavier than the first",
        "stuck another 2.5kg on and got 5, set two",
        "raised the weight 2.5 kg for set 2, 5 reps",
    ],
)
def test_a_step_of_load_beside_the_number_of_the_next_set(text: str) -> None:
    """The load is the last one's and the step."""
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    assert reading.performed == (row("Bench Press#2 62.5x5"),)


@pytest.mark.parametrize("text", ["dropped another 2.5kg and got 6, set two", "2.5 kilos less on set 2, 6 reps"])
def test_a_step_down(text: str) -> None:
    """As one up."""
    reading = read(text, "Bench Press#1 60x5", current="Bench Press")
    assert reading.performed == (row("Bench Press#2 57.5x6"),)


@pytest.mark.parametrize(
    "text",
    [
        "that was rows not bench",
        "hang on that wasn't bench, that was rows",
        "i meant row there not bench",
        "wrong exercise, that last set was barbell rows",
        "put the last set under barbell row instead of bench",
        "the last set belongs to rows",
        "set 2 was row not bench, my mistake",
    ],
)
def test_a_set_that_was_another_exercises_is_moved(text: str) -> None:
    """What was lifted stays; it is the next set of the exercise that it was done on."""
    reading = read(text, "Bench Press#1 60x5", "Bench Press#2 57.5x5", current="Bench Press")
    assert (reading.replaces, reading.performed) == ((("Bench Press", 2),), (row("Barbell Row#1 57.5x5"),))


@pytest.mark.parametrize(
    "text", ["doing rows instead of bench today", "that was bench not rows", "rows next, not bench", "rows > bench"]
)
def test_what_moves_no_set(text: str) -> None:
    """What is to come, and what is as it was kept."""
    assert read(text, "Bench Press#1 60x5", current="Bench Press").replaces == ()


@pytest.mark.parametrize("named", ["fly", "chin ups", "deads", "split squats", "plank"])
def test_a_set_that_does_not_fit_the_other_exercise_is_asked_about(named: str) -> None:
    """60 kg on the bar is no load of each hand, nor of a plan of 140: nothing is moved, and nothing goes in silence."""
    reading = read(f"that was {named} not bench", "Bench Press#1 60x5", current="Bench Press")
    assert (reading.performed, reading.replaces) == ((), ())
    assert reading.ask is not None


@pytest.mark.parametrize(
    "talk",
    [
        "calf cramped, had to rub it out",
        "spotter had to take it out of my hands",
        "pay no attention to my moaning",
        "tripped over a plate, forget i said that",
        "bar was bent so they threw it out",
        "take it away maestro!",
        "chuck it in the corner lol",
    ],
)
def test_what_is_thrown_out_in_talk_is_no_kept_set(talk: str) -> None:
    """The set kept before stays, and the one told is the next."""
    reading = read(f"{talk}. 60x5", "Bench Press#1 60x5", current="Bench Press")
    assert (reading.performed, reading.replaces) == ((row("Bench Press#2 60x5"),), ())


@pytest.mark.parametrize("month", ["march", "august", "dec"])
def test_a_month_behind_a_sets_full_stop_is_no_date_of_it(month: str) -> None:
    """`2. march` is a date at the head of a message, or behind `the`."""
    reading = read(f"60x5. {month} was awful")
    assert (reading.performed, reading.day) == ((row("Bench Press#1 60x5"),), None)
