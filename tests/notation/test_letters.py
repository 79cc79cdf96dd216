"""A message many times as long as any report: a letter, in which pain and questions are heard, and sets are asked for.

How long a report gets: the longest of all messages in the corpus has 281 characters.
"""

import pytest

from bot.notation.answer import AskKind
from bot.notation.preparing import MOST_MARKS
from bot.notation.tokens import read_marks
from tests.notation.judging import CORPUS, rows_of
from tests.notation.plans import read

BENCH = "Bench Press"
TALK = "the new flat is nice and the kids like their school, we painted all the walls. "
LETTER = TALK * 20


def test_no_message_of_the_corpus_is_a_letter() -> None:
    texts = [row["request"]["text"] for file in CORPUS.glob("hand_*.jsonl") for row in rows_of(file.stem)]
    longest = max(len(read_marks(text)) for text in texts)
    assert longest * 2 < MOST_MARKS < len(read_marks(LETTER))


def test_a_letter_that_reports_nothing_is_not_asked_about() -> None:
    reading = read(LETTER)
    assert reading.ask is None
    assert not reading.performed
    assert not reading.question


@pytest.mark.parametrize(
    "report", ["bench 60x5", "sixty for five", "same again", "skip the rows", "that's me done", "as planned"]
)
@pytest.mark.parametrize("place", [0, 10, 20])
def test_what_a_letter_may_report_is_asked_about_and_not_kept(report: str, place: int) -> None:
    reading = read(f"{TALK * place}{report}. {TALK * (20 - place)}")
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.TOO_LONG
    assert not reading.performed
    assert not reading.skipped
    assert not reading.finished


@pytest.mark.parametrize("place", [0, 10, 20])
def test_pain_and_a_question_are_heard_in_a_letter(place: int) -> None:
    hurt = "my left knee hurts when i squat. should i stop?"
    reading = read(f"{TALK * place}{hurt} {TALK * (20 - place)}")
    assert reading.pain is not None
    assert reading.pain.where == "knee"
    assert reading.question


def test_an_urgent_sign_is_heard_in_a_letter() -> None:
    reading = read(f"{LETTER}60x5. my chest feels tight and i cant breathe. {LETTER}")
    assert reading.pain is not None
    assert reading.pain.urgent


@pytest.mark.parametrize("times", range(6, 14))
def test_a_letter_is_one_as_it_is_typed(times: int) -> None:
    """Words that are tagged as one make it shorter: what was prepared as a letter is still read as one."""
    told = "by the way the kids are at the sea for a couple of days and it was a lot of fun. "
    text = told * times + "bench 60x5"
    reading = read(text)
    is_letter = len(read_marks(text)) > MOST_MARKS
    assert bool(reading.performed) is not is_letter
    assert (reading.ask is not None) is is_letter


def test_a_report_just_short_of_a_letter_is_read_whole() -> None:
    talk = TALK * 9
    assert len(read_marks(talk)) < MOST_MARKS - 10
    [kept] = read(f"{talk}bench 60x5").performed
    assert (kept.exercise, kept.set, kept.reps) == (BENCH, 1, 5)
