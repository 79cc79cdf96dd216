"""A message with a dash, a semicolon, a slash or a line's end where others type a comma or a colon is read as theirs.

The sentences are written for this table: a bar parts the sign that is typed from the one that it stands for.
"""

import pytest

from bot.notation.pain import told_pain
from bot.notation.reading import Reading, Request, read_message
from bot.notation.separators import with_commas
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.units import Unit
from tests.notation.plans import DROP, MINI, NOW, row, sets

CLEAN = PlannedExercise("Power Clean", sets("65", 2, 4, 4), aliases=("cleans",))
PULL = PlannedExercise("Pull-Up", sets("5", 5, 9), load_style=LoadStyle.BODYWEIGHT)
HACK = PlannedExercise("Hack Squat", sets("110", 8, 10, 3, DROP), aliases=("hacks",))
LUNGE = PlannedExercise("Reverse Lunge", sets("14", 8, 12), load_style=LoadStyle.PER_HAND, sides=2, aliases=("lunges",))
LATERAL = PlannedExercise("Lateral Raise", sets("9", 12, 15, 3, MINI), aliases=("laterals",))
PLAN = (CLEAN, PULL, HACK, LUNGE, LATERAL)
HACKS = ("Hack Squat#1 110x9", "Hack Squat#2 110x9", "Hack Squat#3 110x8")

ALIKE = (
    ("cleans 65 for 3{}same{}same", " - ", ", "), ("65x3 @8.5{}hmm no call it 9", " - ", ", "),
    ("hacks 110: 9, 9, 8{}last one to failure", " - ", ", "), ("65x3{}left wrist pinched", " — ", ", "),
    ("cleans 65x3{}no laterals today{}shoulder hurts", " - ", ", "), ("65x3{}is that enough?", " - ", ", "),
    ("laterals from monday{}9x14, 9x13", " - ", ": "), ("cleans from the weekend{}65x3", " - ", ": "),
    ("right leg only{}14 x 10", " - ", ": "), ("forgot to send{}cleans 65x3 65x3", " - ", ": "),
    ("warm up 40x3{}50x2", "; ", ", "), ("hacks 110x9{}110x9{}110x8, all at rpe 8", "; ", ", "),
    ("65, no sorry{}62.5 x 3", "; ", ", "), ("left 10 right 8{}14", "; ", ", "), ("my knee hurts{}4/10", "; ", ", "),
    ("lunges 10 each{}9 each{}8 each", " / ", ", "), ("lunges 14s 10 a side{}9 a side", " / ", ", "),
    ("gasping like a steam train{}65x3", " / ", ", "), ("hacks 110: 9{}9{}8. left hip hurts a bit", " / ", ", "),
    ("cleans from monday{}65x3 65x3", "\n", ": "), ("pull{}ups 8 8 6", " - ", "-"),
)  # fmt: skip
CORRECTED = (
    ("set 3 was 9 reps not 8{}drop stays the same", " - ", ", "), ("not 8{}9", "; ", ", "),
    ("forgot the drop{}75 x 9", "; ", ", "), ("forgot the drop on that last hack{}75 x 9", "\n", ": "),
)  # fmt: skip
WHOLE = (
    "65 - 3", "cleans 60-65", "- cleans\n- hacks", "bodyweight - 20 x 8", "-20 x 8", "110x9 / 75x9", "110s / 75s",
    "10 / 9", "hacks 110x9; cleans 65x3", "cleans 65\n3 x 4", "set 3\n9 9", "push ups 25\n20 18",
    "legs sore from monday\n65x3", "still tired from the weekend - 65x3", "warm up felt fine\n65x3",
    "laterals - skipped",
)  # fmt: skip
DARK = ("my pee is dark brown, normal?", "i peed brown like cola normal after squats?", "peed brown, fine?")


def _read(text: str, *done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, PLAN, tuple(row(d) for d in done)))


def _kept(reading: Reading) -> tuple[object, ...]:
    """What is kept, and whether it is asked about."""
    said = (reading.pain, reading.minutes, reading.day, reading.question, reading.finished, reading.skipped)
    return reading.performed, reading.replaces, *said, reading.ask is None


@pytest.mark.parametrize(("said", "typed", "meant"), ALIKE)
def test_another_sign_says_the_same(said: str, typed: str, meant: str) -> None:
    other, plain = _read(said.replace("{}", typed)), _read(said.replace("{}", meant))
    assert _kept(other) == _kept(plain)
    assert _kept(other) != _kept(_read(""))


@pytest.mark.parametrize(("said", "typed", "meant"), CORRECTED)
def test_a_correction_with_another_sign_says_the_same(said: str, typed: str, meant: str) -> None:
    other, plain = _read(said.replace("{}", typed), *HACKS), _read(said.replace("{}", meant), *HACKS)
    assert _kept(other) == _kept(plain)
    assert other.performed


@pytest.mark.parametrize("text", WHOLE)
def test_a_sign_that_says_something_else_stays(text: str) -> None:
    assert with_commas(text) == text


def test_the_text_keeps_its_length() -> None:
    for said, typed, _ in (*ALIKE, *CORRECTED):
        text = said.replace("{}", typed)
        assert len(with_commas(text)) == len(text)


def test_a_load_over_its_repetitions_is_no_decimal() -> None:
    """The lines `+5` and `8 8 6` are not 5.8."""
    assert {p.load for p in _read("pull ups +5\n8 8 6").performed} == {row("Pull-Up#1 5x8").load}


def test_repetitions_between_slashes_are_no_score() -> None:
    said = told_pain("hacks 110: 10 / 10 / 8. left hip hurts a bit")
    assert said is not None
    assert said.score is None


@pytest.mark.parametrize("text", DARK)
def test_dark_water_asked_to_be_normal_is_urgent(text: str) -> None:
    said = told_pain(text)
    assert said is not None
    assert said.urgent
