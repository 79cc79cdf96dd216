"""Messages beside the labelled ones: what a near reading would store wrongly, and what must be asked about instead."""

import pytest

from bot.notation.reading import AskKind, read_message
from bot.training.report import Side
from tests.growth import LONG, steps
from tests.notation.plans import read, request, rows

B1, B2, B3 = "Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"
P1, P2 = "Lat Pulldown#1 55x12", "Lat Pulldown#2 55x12"


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("60: 5 5 5, last one at 9", (B1, B2, f"{B3} rir 1")),
        ("60x5, 60x5, last one @9", (B1, f"{B2} rir 1")),
        ("60 5 5 5, final set was a 9", (B1, B2, f"{B3} rir 1")),
        ("60 for five, felt like 8", (f"{B1} rir 2",)),
        ("60x5 felt like 12 reps", (B1,)),
        ("felt like 100kg. 60x5", (B1,)),
        ("no warm up today: 60x5", (B1,)),
        ("didn't warm up, 60x5", (B1,)),
        ("skipped the warm up. 60x5", (B1,)),
        ("60x5 while the squat rack is taken", (B1,)),
        ("60x5, both wrists hurt", (B1,)),
        ("60x5, 2 reps fewer than last week", (B1,)),
        ("60x5 tempo 3-1-1", (B1,)),
        ("60x5 with 2s pause", (B1,)),
        ("60x5 rest was 90s", (B1,)),
        ("60x5 @ 7pm", (B1,)),
        ("60x5 out of 6", (B1,)),
        ("60x5 and 2 half reps", (B1,)),
        ("60kg (132lb) x5", (B1,)),
        ("60kg x5 (132lb)", (B1,)),
        ("first set 60x5 second set 60x5", (B1, B2)),
        ("3 series of 5 with 60", (B1, B2, B3)),
        ("60x5, 5 at 55", (B1, "Bench Press#2 55x5")),
    ],
)
def test_beside_a_set(text: str, stored: tuple[str, ...]) -> None:
    """What is said beside a set is no set of its own, and an effort said of the last set is its effort."""
    reading = read(text)
    assert reading.ask is None, text
    assert reading.performed == rows(*stored)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("60: 5 5 5, last set 9", AskKind.UNSURE),
        ("same minus 1", AskKind.UNSURE),
        ("bench as planned except last set 60x3", AskKind.RANGE),
        ("all as planned except last bench set 60x3", AskKind.UNSURE),
        ("2 sets at 60x5, 1 at 55x5", AskKind.UNSURE),
        ("one rep less", AskKind.UNSURE),
        ("60x5 (8), 60x5 (9)", AskKind.UNSURE),
        ("bar + 40kg x 5", AskKind.UNSURE),
        ("60kg 6 solo 2 with spotter", AskKind.UNSURE),
        ("60kg (100lb) x5", AskKind.UNIT),
        ("and again, 4", AskKind.ORDER),
        ("calves 60x5", AskKind.UNKNOWN_EXERCISE),
        ("60x5 biceps", AskKind.UNKNOWN_EXERCISE),
        ("bench and row 60x5 and 50x8", AskKind.WHICH_EXERCISE),
    ],
)
def test_asked_rather_than_guessed(text: str, kind: AskKind) -> None:
    """Where a near reading stores something else, it is asked about."""
    reading = read(text, B1)
    assert reading.ask is not None, reading.performed
    assert reading.ask.kind is kind
    assert not reading.performed
    assert not reading.replaces


@pytest.mark.parametrize(
    ("text", "stored"),
    [
        ("left 10 right 9 with the 16, right was to failure", ("16x10 left", "16x9 right rir 0")),
        ("L10 R9, left @8", ("16x10 left rir 2", "16x9 right")),
        ("L 10, R 9, rpe 9 on the right", ("16x10 left", "16x9 right rir 1")),
        ("L10 R9 @8", ("16x10 left rir 2", "16x9 right rir 2")),
        ("10 each, left was rpe 8", ("16x10 left rir 2", "16x10 right")),
    ],
)
def test_the_effort_of_a_side(text: str, stored: tuple[str, ...]) -> None:
    """An effort said of one side is of that side only."""
    assert read(text, current="Split Squat").performed == rows(*(f"Split Squat#1 {s}" for s in stored))


def test_repetitions_in_reserve_are_no_side() -> None:
    """Before a comma, `3 left` counts repetitions; `left knee` is a side."""
    for text in ("60x5 3 left, knee a bit sore", "60x5, nothing left, knee hurts", "60x5 2 reps left. knee hurts"):
        pain = read(text).pain
        assert pain is not None, text
        assert (pain.where, pain.side) == ("knee", None), text
    pain = read("60x5, left knee hurts").pain
    assert pain is not None
    assert pain.side is Side.LEFT


def test_a_drop_behind_a_plus() -> None:
    """`10 + 8 drop` is a set and its drop, not a drop of 10."""
    stored = rows("Lat Pulldown#3 55x10", "Lat Pulldown#3 -x8 drop")
    assert read("10 + 8 drop", P1, P2, current="Lat Pulldown").performed == stored


def test_finishing_a_warm_up_ends_nothing() -> None:
    """A warm-up that is done is not the session."""
    for text in ("warm ups all done, first real set next", "warm up is done", "warmups all finished"):
        assert not read(text).finished, text
    for text in ("im finished", "i'm finished"):
        assert read(text, B1).finished, text


def test_a_late_report_says_its_day() -> None:
    """`from monday` heads a report, or stands behind one; `sore from monday` does neither."""
    for text in ("from monday, 60x5", "from monday, forgot to press send: bench 60x5", "bench 60x5 from monday"):
        assert str(read(text).day) == "2026-03-02", text
    for text in ("sore from monday, 60x5", "60x5, tired from monday"):
        assert read(text).day is None, text


@pytest.mark.parametrize("piece", LONG)
def test_the_work_grows_with_the_length_and_no_faster(piece: str) -> None:
    """Four times the message is at most six times the work (sixteen would be its square): up to 4,096 characters."""
    short, long = (request((piece * 4096)[:length], B1) for length in (1024, 4096))
    read_message(long)
    assert steps(lambda: read_message(long)) < 6 * steps(lambda: read_message(short))
