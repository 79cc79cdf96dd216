"""A full stop, dots or a new line where others type a comma change nothing: `it was 20. not 15.`, `the left one.`.

Each row is a message with a bar where its ends are put: with every end it is read as it is with commas, and so as the
row says. The rest are sentences that stand by themselves: they keep their end. What is meant is common practice, no
source.
"""

import pytest

from bot.notation.pain import read_pain
from bot.notation.sentences import joined
from bot.training.report import Side
from tests.notation.plans import read, rows

ENDS = {"comma": ", ", "stop": ". ", "dots": "... ", "one sign for dots": "… ", "line": "\n", "stop and line": ".\n"}
BENCH_DONE = "Bench Press#1 60x5"
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...], bool], ...] = (
    # typed, done before, stored, corrects
    ("that was 57.5|not 60", (BENCH_DONE,), ("Bench Press#1 57.5x5",), True),
    ("Sorry|it was 4|not 5", (BENCH_DONE,), ("Bench Press#1 60x4",), True),
    ("oops|only 4 on that", (BENCH_DONE,), ("Bench Press#1 60x4",), True),
    ("5|same weight", (BENCH_DONE,), ("Bench Press#2 60x5",), False),
    ("another 5|same weight", (BENCH_DONE,), ("Bench Press#2 60x5",), False),
    ("62.5|no wait 60|for 5", (), ("Bench Press#1 60x5",), False),
    ("bench 60 kg|got 5", (), ("Bench Press#1 60x5",), False),
    ("bench with 57.5 kg on the bar|five reps", (), ("Bench Press#1 57.5x5",), False),
    ("bench 60 for 5|all three sets", (), ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"), False),
    ("plank 50 seconds|twice", (), ("Plank#1 -x50", "Plank#2 -x50"), False),
    ("plank 50 seconds|both sets", (), ("Plank#1 -x50", "Plank#2 -x50"), False),
    ("bench 60: 5, 5|and 4 before my arms quit", (),
     ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x4"), False),
    ("bench 60x5|last one at 9", (), ("Bench Press#1 60x5 rir 1",), False),
)  # fmt: skip
PAIN = (
    ("my knee is not happy|the left one", "knee", Side.LEFT, None),
    ("sharp twinge in my shoulder|right side|maybe 3/10", "shoulder", Side.RIGHT, 3),
    ("elbow hurts again|same as last week|call it 2/10", "elbow", None, 2),
    ("bit of pain|the hip|right one", "hip", Side.RIGHT, None),
)
STAND = (
    "Bench 60x5. Rows 50x8.",
    "bench 60x5. and then 50x8 rows",
    "60x5. not sure about the next one",
    "60x5. left my straps at home",
    "60x5. right then, on to rows",
    "did 60x5. no time for the rows",
    "Bench press\n60x5\n60x5",
    "split squat\nL 10 R 10\nL 9 R 9",
    "weight 60\nreps 5 5 5\nrpe 9 on the last",
    "bench at 60 because I slept badly. 60x5x3",
    "60: 5, 5, 4. RPE 9 on all of them",
    "L10 R8. right one always lags behind",
    "speed was the same as on 72.5",
    "1,60.5,9",
    "plain words without any end",
)


@pytest.mark.parametrize("end", ENDS.values(), ids=ENDS)
@pytest.mark.parametrize(("typed", "done", "stored", "corrects"), SAID, ids=[s[0] for s in SAID])
def test_sets_are_read_alike_with_any_end(
    typed: str, done: tuple[str, ...], stored: tuple[str, ...], corrects: bool, end: str
) -> None:
    """What leans on the sentence before it is said of that, whatever end stands between."""
    reading = read(typed.replace("|", end), *done)
    assert (reading.ask, reading.performed, bool(reading.replaces)) == (None, rows(*stored), corrects)


@pytest.mark.parametrize("end", ENDS.values(), ids=ENDS)
@pytest.mark.parametrize(("typed", "where", "side", "score"), PAIN, ids=[p[0] for p in PAIN])
def test_hurts_are_read_alike_with_any_end(
    typed: str, where: str, side: Side | None, score: int | None, end: str
) -> None:
    """A side, a score or a place told in a sentence of its own is that of the hurt before it."""
    pain = read_pain(typed.replace("|", end)).pain
    assert pain is not None
    assert (pain.where, pain.side, pain.score, pain.urgent) == (where, side, score, False)


@pytest.mark.parametrize("text", STAND)
def test_what_stands_by_itself_keeps_its_end(text: str) -> None:
    """A sentence that says all it needs is no part of the one before it."""
    assert joined(text) == text


@pytest.mark.parametrize(
    ("typed", "put"),
    [
        ("Bench 60x5; felt fine", "Bench 60x5. felt fine"),
        ("it was 20; not 15", "it was 20, not 15"),
        ("Set;Load;Reps\n1;60;5", "Set;Load;Reps\n1;60;5"),
    ],
)
def test_a_semicolon_is_a_stop_or_a_comma(typed: str, put: str) -> None:
    """Between words it ends a sentence, or joins one that leans on it; between columns it is neither."""
    assert joined(typed) == put


@pytest.mark.parametrize("text", [typed.replace("|", end) for typed, *_ in (*SAID, *PAIN) for end in ENDS.values()])
def test_nothing_but_ends_changes(text: str) -> None:
    """Every place in the text stays where it was, and every letter and number as it was typed."""
    put = joined(text)
    assert len(put) == len(text)
    assert all(a == b or (a in ".…\n" and b in ", ") for a, b in zip(text, put, strict=True))
