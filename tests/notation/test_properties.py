"""What holds of every message: what the printer prints is read back, how it is typed changes nothing, none raises."""

import re
from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bot.notation.grammar import parser
from bot.notation.kinds import KINDS
from bot.notation.names import session_index
from bot.notation.printer import show_sets
from bot.notation.reading import Ask, AskKind, Reading, Request, read_message
from bot.notation.script import read_script
from bot.notation.shaping import shape_marks
from bot.notation.tagging import read_kinds
from bot.notation.tokens import read_marks
from bot.notation.wordlist import words
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit
from tests.notation.judging import rows_of
from tests.notation.plans import BENCH, CARRY, CHIN, NOW, PLANK, PULLDOWN, PUSHDOWN, SESSION, SPLIT, read, request

RIRS = st.one_of(st.none(), st.integers(0, 20).map(lambda n: Decimal(n) / 2))


def _loads(low: int, high: int) -> st.SearchStrategy[Load]:
    """Loads in steps of half a kilogram, or in pounds of about the same."""
    kilos = st.integers(low * 2, high * 2).map(lambda n: Load(n * 500, Unit.KG))
    pounds = st.integers(int(low * 2.21) + 1, int(high * 2.2)).map(lambda n: Load.of(n, Unit.LB))
    return st.one_of(kilos, pounds)


@given(st.lists(st.tuples(_loads(40, 90), st.integers(1, 12), RIRS), min_size=1, max_size=3))
def test_printed_sets_are_read_back(done: list[tuple[Load, int, Decimal | None]]) -> None:
    """The printer and the reader are inverse: work sets with loads in either unit, and efforts."""
    rows = tuple(
        Performed("Bench Press", n, Stage.WORK, load, reps, rir) for n, (load, reps, rir) in enumerate(done, 1)
    )
    assert read(show_sets(rows, SESSION)).performed == rows


@given(_loads(10, 25), st.integers(1, 20), st.integers(1, 20), RIRS)
def test_printed_sides_are_read_back(load: Load, left: int, right: int, rir: Decimal | None) -> None:
    """Both sides of a set."""
    rows = tuple(
        Performed("Split Squat", 1, Stage.WORK, load, reps, rir, side)
        for side, reps in ((Side.LEFT, left), (Side.RIGHT, right))
    )
    assert read(show_sets(rows, SESSION)).performed == rows


@given(_loads(34, 60), st.integers(1, 24), st.integers(1, 15), st.integers(15, 30))
def test_printed_drops_are_read_back(load: Load, reps: int, dropped: int, kilos: int) -> None:
    """A set and its drop."""
    rows = (
        Performed("Lat Pulldown", 1, Stage.WORK, load, reps),
        Performed("Lat Pulldown", 1, Stage.DROP, Load.of(kilos, Unit.KG), dropped),
    )
    assert read(show_sets(rows, SESSION)).performed == rows


@given(st.integers(12, 24), st.lists(st.integers(1, 8), min_size=1, max_size=4))
def test_printed_minis_are_read_back(reps: int, minis: list[int]) -> None:
    """A set and its minis, at the same load."""
    load = Load.of(25, Unit.KG)
    rows = (
        Performed("Triceps Pushdown", 1, Stage.WORK, load, reps),
        *(Performed("Triceps Pushdown", 1, Stage.MINI, load, mini) for mini in minis),
    )
    assert read(show_sets(rows, SESSION)).performed == rows


@given(st.integers(-30, 30), st.integers(1, 20), RIRS)
def test_printed_body_weight_is_read_back(added: int, reps: int, rir: Decimal | None) -> None:
    """Added, taken off, or neither."""
    rows = (Performed("Chin-Up", 1, Stage.WORK, Load.of(added, Unit.KG), reps, rir),)
    assert read(show_sets(rows, SESSION)).performed == rows


@given(st.integers(1, 120), st.integers(1, 80))
def test_printed_times_and_distances_are_read_back(seconds: int, metres: int) -> None:
    """Seconds and metres; warm-ups."""
    for rows in (
        (Performed("Plank", 1, Stage.WORK, None, seconds),),
        (Performed("Farmer Carry", 1, Stage.WORK, Load.of(32, Unit.KG), metres),),
        (Performed("Bench Press", None, Stage.WARMUP, Load.of(40, Unit.KG), 8),),
    ):
        assert read(show_sets(rows, SESSION)).performed == rows


def test_every_exercise_of_the_tables_prints() -> None:
    """The printed name is the exercise's own."""
    for exercise in (BENCH, CARRY, CHIN, PLANK, PULLDOWN, PUSHDOWN, SPLIT):
        row = Performed(exercise.name, 1, Stage.WORK, None, 5)
        assert show_sets((row,), SESSION).startswith(exercise.name)


WAYS: dict[str, Callable[[str], str]] = {
    "capitals": str.upper,
    "times sign": lambda t: re.sub(r"(?<=\d)(\s*)x(\s*)(?=\d)", r"\1×\2", t),
    "star": lambda t: re.sub(r"(?<=\d)(\s*)x(\s*)(?=\d)", r"\1*\2", t),
    "spaces about x": lambda t: re.sub(r"(?<=\d)\s*x\s*(?=\d)", " x ", t),
    "no spaces about x": lambda t: re.sub(r"(?<=\d)\s*x\s*(?=\d)", "x", t),
    "arabic digits": lambda t: t.translate(str.maketrans("0123456789", "٠١٢٣٤٥٦٧٨٩")),
    "devanagari digits": lambda t: t.translate(str.maketrans("0123456789", "०१२३४५६७८९")),
    "full width": lambda t: t.translate(str.maketrans("0123456789", "０１２３４５６７８９")),
    "no-break spaces": lambda t: t.replace(" ", "\u00a0"),
    "zero width": lambda t: t.replace("x", "x\u200b"),
    "double spaces": lambda t: t.replace(" ", "  "),
    "edges": lambda t: f"  {t} \n",
    "kilos": lambda t: re.sub(r"(?<=\d) ?kgs?\b", " kilos", t),
    "pounds": lambda t: re.sub(r"(?<=\d) ?lbs?\b", " pounds", t),
    "fire": lambda t: f"{t} 🔥",
}
ROWS = [row for name in ("shared", "hand_b") for row in rows_of(name)]


@pytest.mark.parametrize("way", WAYS)
def test_how_it_is_typed_changes_nothing(way: str) -> None:
    """Case, spacing, digit script, the sign between numbers and the spelling of a unit never change a reading."""
    from bot.cli.read import ReadRequest  # noqa: PLC0415

    for row in ROWS:
        asked = ReadRequest.model_validate(row["request"]).request()
        typed = WAYS[way](asked.text)
        one = read_message(asked)
        two = read_message(Request(typed, asked.unit, asked.now, asked.exercises, asked.done, asked.current))
        assert _said(one) == _said(two), (asked.text, typed)


def _said(reading: Reading) -> Reading:
    """All that a reading says, without where its words stand."""
    asks = None if reading.ask is None else Ask(AskKind.UNSURE, (0, 0))
    return replace(reading, evidence=(), ask=asks)


PIECES = st.sampled_from(
    (
        *words(
            "60 5 x @ + - > / , . : ( ) 9 10 8.5 22,5 kg lb reps sets each left right bench row squat then drop mini",
            "same rpe rir warm up done skipped not sorry was set first 2nd could have more in the tank failed the all",
            "bw assist per hand total minutes until yesterday ? ! 1:05 1.000 1e9 100² ½ 👍 s m l r for at with and or",
            "to no scrap that monday knee hurts a half hundred sixty twelve point x5 *62.5 pair of twice as planned",
            "instead of plates band finished cancel @8",
        ),
        "\n",
    )
)


@given(st.lists(PIECES, max_size=25).map(" ".join))
@settings(max_examples=400)
def test_no_arrangement_raises_or_stores_in_doubt(text: str) -> None:
    """Whatever is typed from the words of reports is read; where it asks, nothing is stored, and spans lie inside."""
    done = ("Bench Press#1 60x5", "Split Squat#1 16x10 left", "Lat Pulldown#1 55x12")
    reading = read_message(request(text, *done))
    if reading.ask is not None:
        assert (reading.performed, reading.replaces) == ((), ())
        assert 0 <= reading.ask.span[0] <= reading.ask.span[1] <= len(text)
    for item in reading.evidence:
        assert 0 <= item.span[0] <= item.span[1] <= len(text)


@given(st.text(max_size=300))
@settings(max_examples=300)
def test_no_text_raises(text: str) -> None:
    """Any characters at all."""
    read_message(request(text, "Bench Press#1 60x5"))


@pytest.mark.parametrize(
    "text",
    [
        *("60x8 the bar\n60x8", "just the bar\n60x8", "failed the 4th at 85. failed the 5th at 80"),
        *("at eight and a", "right, at seven and a", "\ncancelled so i will\nskip: 45: 10/10/9"),
        "elbow's at a 3/10. it hurts a bit. 6 then failed on. i put 80 but. oops only 9 on. no time.",
    ],
)
def test_what_once_raised_is_read(text: str) -> None:
    """A bar that ends its line, repetitions that failed at their loads, words that break off."""
    assert isinstance(read(text), Reading)


@given(st.lists(st.sampled_from(sorted(KINDS)), max_size=12))
@settings(max_examples=300)
def test_no_session_is_too_odd(kinds: list[str]) -> None:
    """A session without exercises, or with nothing to name, is read too."""
    read_message(Request(" ".join(kinds), Unit.KG, NOW, ()))


@given(st.lists(PIECES, max_size=20).map(" ".join))
@example("60 for assist 1:05")
@settings(max_examples=300)
def test_the_grammar_takes_all_that_shaping_gives(text: str) -> None:
    """Shaped marks of any message are a sentence of the grammar: nothing falls back to being asked about."""
    marks = read_kinds(read_marks(read_script(text).text), session_index(SESSION))
    shaped = shape_marks(marks, True)
    parser().parse(" ".join(m.kind for m in shaped))
