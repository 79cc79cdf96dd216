"""Typed answers to questions: which reading they choose, what they complete, and what is a message of its own.

The questions are the reader's own about messages of ours; what an answer means is common practice, no source.
"""

from dataclasses import replace

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bot.notation.answer import Ask, Reading, Request
from bot.notation.printer import show_sets
from bot.notation.reading import read_message
from bot.notation.replies import Unsettled, read_reply
from bot.training.plan import PlannedExercise
from tests.notation.plans import BENCH, ROW, request, sets

CABLE_ROW = PlannedExercise("Cable Row", sets("50", 8, 10))
FLY, PRESS = "Chest Fly", "Bench Press"
OPEN, REFUSED = Unsettled.OPEN, Unsettled.REFUSED


def asked(text: str, current: str | None = None, *done: str) -> tuple[Request, Ask]:
    """A doubtful message on the test session, or on two rows where it is of rows, and the question about it."""
    said = request(text, *done, current=current)
    if "row" in text:
        said = replace(said, exercises=(BENCH, ROW, CABLE_ROW))
    ask = read_message(said).ask
    assert ask is not None, text
    return said, ask


def answer(text: str, reply: str, current: str | None = None, *done: str) -> str | Unsettled | None:
    """What is kept once it is answered, as printed sets, skips or a day before them."""
    said, ask = asked(text, current, *done)
    read = read_reply(said, ask, reply)
    return kept(read, said) if isinstance(read, Reading) else read


def kept(reading: Reading, said: Request) -> str:
    """Day, sets and skips in one line."""
    day = [reading.day.isoformat()] if reading.day is not None else []
    return " / ".join([*day, show_sets(reading.performed, said.exercises), *reading.skipped]).strip(" /")


LOADS = [
    ("8", "Chest Fly: 8 kg x 10"),
    ("8 kilos", "Chest Fly: 8 kg x 10"),
    ("the 8s", "Chest Fly: 8 kg x 10"),
    ("it was 8kg each", "Chest Fly: 8 kg x 10"),
    ("with 7,5", "Chest Fly: 7.5 kg x 10"),
    ("eight", "Chest Fly: 8 kg x 10"),
    ("18 lb", "Chest Fly: 18 lb x 10"),
    ("16 total", "Chest Fly: 8 kg x 10"),
    ("800", OPEN),
    ("yes", OPEN),
    ("12 reps", None),
    ("8x10", None),
    ("no idea, ask the gym", None),
]


@pytest.mark.parametrize(("reply", "want"), LOADS)
def test_a_load_alone_completes_the_sets_that_lack_one(reply: str, want: str | Unsettled | None) -> None:
    assert answer("took a lighter pair, 10 reps", reply, FLY) == want


NUMBERS = [
    # which number is which
    ("12x10", "12kg", FLY, "Chest Fly: 12 kg x 10"),
    ("12x10", "10 reps", FLY, "Chest Fly: 12 kg x 10"),
    ("12x10", "12 reps at 10", FLY, "Chest Fly: 10 kg x 12"),
    ("12x10", "12kg x 10", FLY, "Chest Fly: 12 kg x 10"),
    ("12x10", "10x12", FLY, "Chest Fly: 10 kg x 12"),
    ("12x10", "the first", FLY, "Chest Fly: 12 kg x 10"),
    ("12x10", "second one", FLY, "Chest Fly: 10 kg x 12"),
    ("12x10", "12", FLY, OPEN),
    ("12x10", "no", FLY, OPEN),
    ("12x10", "bench 60x5", FLY, None),
    # far from the plan
    ("600x5", "60", PRESS, "Bench Press: 60 kg x 5"),
    ("600x5", "yes", PRESS, "Bench Press: 600 kg x 5"),
    ("600x5", "yep that's right", PRESS, "Bench Press: 600 kg x 5"),
    ("600x5", "no, 62.5", PRESS, "Bench Press: 62.5 kg x 5"),
    ("600x5", "that was 60 not 600", PRESS, "Bench Press: 60 kg x 5"),
    ("600x5", "thumb slipped, 60", PRESS, "Bench Press: 60 kg x 5"),
    ("600x5", "no", PRESS, REFUSED),
    ("600x5", "none of these", PRESS, REFUSED),
    ("600x5", "62.5x4", PRESS, None),
    ("225x5", "its lbs", PRESS, "Bench Press: 225 lb x 5"),
    # one hand or both
    ("20x10", "each hand", FLY, "Chest Fly: 20 kg x 10"),
    ("20x10", "10 each", FLY, "Chest Fly: 10 kg x 10"),
    ("20x10", "20 each", FLY, "Chest Fly: 20 kg x 10"),
    ("20x10", "total", FLY, "Chest Fly: 10 kg x 10"),
    ("20x10", "20 in total", FLY, "Chest Fly: 10 kg x 10"),
    # a number that can be written for several, nothing to repeat, as planned
    ("1.000 x 5", "60", PRESS, "Bench Press: 60 kg x 5"),
    ("same", "60x5", PRESS, "Bench Press: 60 kg x 5"),
    ("as planned", "5 5 4", PRESS, "Bench Press: 60 kg x 5, 60 kg x 5, 60 kg x 4"),
    # a number without a place
    ("60x5 5th 4", "yes that's it", PRESS, "Bench Press: 60 kg x 5, 60 kg x 4"),
    ("60x5 5th 4", "no", PRESS, REFUSED),
]


@pytest.mark.parametrize(("text", "reply", "current", "want"), NUMBERS)
def test_numbers_and_a_yes_choose_a_reading(text: str, reply: str, current: str, want: str | Unsettled | None) -> None:
    assert answer(text, reply, current) == want


NAMES = [
    ("rows 50x10", "cable", "Cable Row: 50 kg x 10"),
    ("rows 50x10", "the barbel one", "Barbell Row: 50 kg x 10"),
    ("rows 50x10", "row", OPEN),
    ("skip rows", "both", "Barbell Row / Cable Row"),
    ("skip rows", "just the cable row", "Cable Row"),
    ("the weekend: bench 60x5", "saturday", "2026-02-28 / Bench Press: 60 kg x 5"),
    ("the weekend: bench 60x5", "on sunday", "2026-03-01 / Bench Press: 60 kg x 5"),
    ("the weekend: bench 60x5", "1 march", "2026-03-01 / Bench Press: 60 kg x 5"),
]


@pytest.mark.parametrize(("text", "reply", "want"), NAMES)
def test_a_name_or_a_day_chooses_a_reading(text: str, reply: str, want: str | Unsettled) -> None:
    assert answer(text, reply) == want


BEHIND = [
    ("sorry 10 reps", "Chest Fly: 12 kg x 10"),
    ("actually 12kg", "Chest Fly: 12 kg x 10"),
    ("scrap that", REFUSED),
    ("same", OPEN),
    ("no 11", OPEN),
    ("set 1 was 9", None),
]


@pytest.mark.parametrize(("reply", "want"), BEHIND)
def test_behind_a_question_the_last_set_is_the_one_asked_about(reply: str, want: str | Unsettled | None) -> None:
    """A set is kept before it, which such words changed or repeated."""
    assert answer("12x10", reply, FLY, "Chest Fly#1 10x12") == want


OWN = [
    ("600x5", "60x5 chest pressure"),
    ("600x5", "same, i nearly fainted"),
    ("600x5", "scrap that, sharp pain in my knee"),
    ("600x5", "sorry 60, shoulder pinched"),
    ("600x5", "60x5 that's me done"),
    ("600x5", "60x5, only 20 min left"),
    ("600x5", "60x5, is my form ok to go heavier?"),
    ("600x5", "next set 60x5"),
    ("600x5", "another 60x5"),
    ("600x5", "row 50"),
    ("600x5", "60 60"),
    ("same", "60x5, chest tight"),
    ("same", "yesterday 60x5"),
    ("3 sets", "5 5 5 chest pain"),
    ("60", "5 knee hurts"),
    ("60", "5 5 5"),
    ("as planned", "10 left 9 right"),
    ("went lighter, 5 reps", "-55"),
    ("went lighter, 5 reps", "55 knee hurts"),
    ("went lighter, 5 reps", "50?"),
    ("225x5", "kg no lb"),
]


@pytest.mark.parametrize(("text", "reply"), OWN)
def test_pain_time_ends_and_next_sets_are_messages_of_their_own(text: str, reply: str) -> None:
    """So that they are heard as ever, whatever is asked."""
    done = ("Bench Press#1 57.5x5",) if text == "600x5" else ()
    assert answer(text, reply, PRESS, *done) is None


LEFT_OPEN = [
    ("600x5", "6"),
    ("600x5", "2"),
    ("600x5", "1"),
    ("600x5", "yes but 6 reps"),
    ("600x5", "60lb"),
    ("600x5", "no 600"),
    ("1.000 x 5", "5"),
    ("60x5, 600x5, 62.5x4", "2"),
    ("set 1 was 600", "set 2"),
    ("3 sets", "5"),
]


@pytest.mark.parametrize(("text", "reply"), LEFT_OPEN)
def test_a_number_that_fits_nothing_is_asked_about_again(text: str, reply: str) -> None:
    """It is never put in the place of another number where that makes other sets."""
    done = () if text == "3 sets" else ("Bench Press#1 57.5x5", "Bench Press#2 57.5x5")
    assert answer(text, reply, PRESS, *done) is OPEN


TALK = ["knee hurts", "how long should i rest?", "60x5 8 left", "waiting for the bench", "that's me done", "👍", ""]


@pytest.mark.parametrize("reply", TALK)
@pytest.mark.parametrize("text", ["12x10", "took a lighter pair, 10 reps"])
def test_what_says_more_is_no_answer(text: str, reply: str) -> None:
    """Pain, questions, sets and talk go their own way."""
    assert answer(text, reply, FLY) is None


DOUBTFUL = ["12x10", "took a lighter pair, 10 reps", "20x10", "10 10 10", "1.000 x 5"]
BITS = [
    "12",
    "10",
    "kg",
    "lb",
    "yes",
    "no",
    "each",
    "total",
    "not",
    "the",
    "first",
    "reps",
    "saturday",
    "row",
    "sorry",
    ",",
]


@settings(max_examples=400, deadline=None)
@example("1.000 x 5", "row")
@given(st.sampled_from(DOUBTFUL), st.lists(st.sampled_from(BITS), max_size=6).map(" ".join))
def test_any_words_are_answered_and_never_raise(text: str, reply: str) -> None:
    """And whatever is kept has a load and count that the message or the answer said."""
    said, ask = asked(text, FLY)
    read = read_reply(said, ask, reply)
    if isinstance(read, Reading):
        numbers = {
            float(n.replace("1.000", "1000")) for n in f"{text} {reply}".replace("x", " ").split() if n[0].isdigit()
        }
        halves = numbers | {n / 2 for n in numbers}
        assert read.ask is None
        assert all(row.load is None or float(row.load.amount) in halves | {10} for row in read.performed)
        assert all(row.reps in numbers for row in read.performed)
