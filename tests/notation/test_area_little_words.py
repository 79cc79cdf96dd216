"""Words beside a report that say nothing of it change no reading; what means something stays."""

from dataclasses import replace

import pytest

from bot.notation.answer import Reading, Request
from bot.notation.little_words import without_little_words
from bot.notation.pain import told_pain
from bot.notation.reading import read_message
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import NOW, ROW, read, sets

REPORTS = ("60x5", "60 for 5, 5 and 4", "squat 62.5 x 5 @8", "monday: squat 60x5, 60x5")
"""Reports of the squat below."""
OPENINGS = (
    "music was bad, ", "the playlist was dire. ", "sorry for the slow reply, ", "back from vacation so ",
    "gym is heaving tonight. ", "my bus was 15 min late. ", "slept badly, 4 hours. ", "shattered today, ",
    "with chalk, ", "home gym today ", "quick update: ", "three coffees in and flying\n",
)  # fmt: skip
ENDINGS = (
    " in my old trainers", " with a belt", " with straps on", " beltless", " on the rusty bar", ", felt really heavy",
    ". music was awful", ", vid to follow", " sweating buckets", ". had to wait for the bench", ", chuffed with that",
    " with knee sleeves today",
)  # fmt: skip


def lifts(name: str, style: LoadStyle = LoadStyle.TOTAL) -> tuple[PlannedExercise, ...]:
    """A plan of one exercise and rows."""
    return PlannedExercise(name, sets("60", 4, 6), load_style=style), ROW


def reading_of(text: str) -> Reading:
    """What a message on a plan of squats says, wherever in it that stands."""
    return replace(read_message(Request(text, Unit.KG, NOW, lifts("Squat"))), evidence=())


@pytest.mark.parametrize("report", REPORTS)
@pytest.mark.parametrize("opening", OPENINGS)
def test_an_opening_changes_nothing(opening: str, report: str) -> None:
    """A report behind such an opening is read as alone."""
    assert reading_of(opening + report) == reading_of(report)


@pytest.mark.parametrize("report", REPORTS)
@pytest.mark.parametrize("ending", ENDINGS)
def test_an_ending_changes_nothing(ending: str, report: str) -> None:
    """A report before such an ending is read as alone."""
    assert reading_of(report + ending) == reading_of(report)


@pytest.mark.parametrize(
    "said",
    ["done with chalk", "the 60 felt heavy", "starving again", "should i do 60 with a belt", "👍 music was bad",
     "chest tight, felt heavy", "60x5 with a vest", "only 2 sets today", "not today", "music was bad"],
)  # fmt: skip
def test_what_says_something_stays(said: str) -> None:
    """Nothing is put as blanks where the words are part of what is told, or all of it."""
    assert without_little_words(said) == said


def test_a_belt_stays_where_it_hangs_weight() -> None:
    """On body weight, or beside an exercise with that name, a belt has a meaning."""
    assert without_little_words("8 with a belt", lifts("Dip", LoadStyle.BODYWEIGHT)) == "8 with a belt"
    assert without_little_words("60x8 with a belt", lifts("Belt Squat")) == "60x8 with a belt"
    assert without_little_words("60x8 with a belt", lifts("Squat")).strip() == "60x8"


@pytest.mark.parametrize(
    ("said", "where"),
    [("i cant feel my left foot, in my new shoes", "foot"), ("with a belt Tweaked my neck", "neck")],
)
def test_a_hurt_beside_them_is_told(said: str, where: str) -> None:
    """Such words hide no hurt."""
    told = told_pain(said)
    assert told is not None
    assert told.where == where


def test_done_for_day_finishes() -> None:
    """Without its article it says the same."""
    assert read("bench 60x5 and im done for day").finished
