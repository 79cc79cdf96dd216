"""Whole sessions that hold more than bare sets: warm-ups, drops, minis, sides, efforts, numbers put right, questions.

Each was once stored otherwise than told, or asked about; beside them stand near ones that tell otherwise. Common
practice, no source: how people in a gym write it.
"""

import pytest

from bot.notation.reading import read_message
from tests.notation.plans import read, request, rows

BENCH = tuple(f"Bench Press#{n} 60x{r}" for n, r in ((1, 5), (2, 5), (3, 4)))
FIVES = tuple(f"Bench Press#{n} 60x5" for n in (1, 2, 3))
ROW = tuple(f"Barbell Row#{n} 50x{r}" for n, r in ((1, 10), (2, 9), (3, 9)))
CHIN = ("Chin-Up#1 0x9", "Chin-Up#2 0x8", "Chin-Up#3 0x7")
PLANK = ("Plank#1 -x50", "Plank#2 -x45")
PUSHDOWN = tuple(f"Triceps Pushdown#{n} 25x{r}" for n, r in ((1, 14), (2, 13), (3, 12)))
MINIS = tuple(f"Triceps Pushdown#3 25x{r} mini" for r in (5, 4, 3))
PULLDOWN = tuple(f"Lat Pulldown#{n} 55x{r}" for n, r in ((1, 12), (2, 11), (3, 10)))
APART = ("Split Squat#1 16x10 left", "Split Squat#1 16x9 right", "Split Squat#2 16x9 left", "Split Squat#2 16x8 right")


def _rated(sets: tuple[str, ...], *left: int) -> tuple[str, ...]:
    return tuple(f"{one} rir {rir}" for one, rir in zip(sets, left, strict=True))


SAID: tuple[tuple[str, tuple[str, ...]], ...] = (
    # a time of what is timed stays with it, whatever stands between it and the next name
    ("plank 50 seconds then 45 seconds row with 50 10 then 9 then 9", (*PLANK, *ROW)),
    ("plank fifty seconds then forty five seconds moved on to row with fifty ten then nine then nine", (*PLANK, *ROW)),
    ("plank 50 sec, 45 sec / row 50 10 9 9", (*PLANK, *ROW)),
    ("plank 50s 45s (music was awful) -> chins 9, 8, 7", (*PLANK, *CHIN)),
    ("plank 50 sec, 45 sec how long should i rest btw?", PLANK),
    # minis and drops with signs and brackets about them
    ("chins 9 8 7. triceps pushdown 25 14, 13, 12, minis 5, 4, 3 ✅", (*CHIN, *PUSHDOWN, *MINIS)),
    ("triceps pushdown 25 14 13 12 (minis 5/4/3). grip went a bit. chins 9 8 7", (*PUSHDOWN, *MINIS, *CHIN)),
    ("lat pulldown 55: 12, 11, 10 > 40x8 and then did 9, 8 and 7 chins",
     (*PULLDOWN, "Lat Pulldown#3 40x8 drop", *CHIN)),
    ("triceps pushdown 25 14 13 12 +5+4+3 which was hard and then 9, 8, 7 chins", (*PUSHDOWN, *MINIS, *CHIN)),
    # warm-ups in the middle, in brackets, with a load that could be repetitions
    ("chins 9 8 7. bench (warmup 30x7) 60: 5, 5, 4", (*CHIN, "Bench Press#0 30x7 warmup", *BENCH)),
    ("chins 9 8 7 -> bench (warmup 30x7) 60kg: 5, 5, 4", (*CHIN, "Bench Press#0 30x7 warmup", *BENCH)),
    ("bench (warm-up 30x7, 45x3) 60 5 5 4", ("Bench Press#0 30x7 warmup", "Bench Press#0 45x3 warmup", *BENCH)),
    ("triceps pushdown wu 15x7, 25x14 25x13 25x12", ("Triceps Pushdown#0 15x7 warmup", *PUSHDOWN)),
    ("chins 9 8 7 | triceps pushdown 10x5 warmup, 25 x 14, 13, 12",
     (*CHIN, "Triceps Pushdown#0 10x5 warmup", *PUSHDOWN)),
    ("bench warm up 30x7, then 60: 5, 5, 4", ("Bench Press#0 30x7 warmup", *BENCH)),
    # efforts, one a set, of all, in brackets
    ("bench 60 5 5 4, rpe 8 8 9", _rated(BENCH, 2, 2, 1)),
    ("bench 60 5/5/4 @ 7/8/10", _rated(BENCH, 3, 2, 0)),
    ("bench 60 5 5 4 (rpe 9/8/9)", _rated(BENCH, 1, 2, 1)),
    ("chins 9 8 7 and then bench 60 5 5 4, rpe 9 10 9", (*CHIN, *_rated(BENCH, 1, 0, 1))),
    ("plank 50 sec, 45 sec | bench 60x5 (2 left), 60x5 (1 left), 60x4 (1 left)", (*PLANK, *_rated(BENCH, 2, 1, 1))),
    ("row 50 10 9 9 then bench 60 5 5 4 (1 left on all). that was tough", (*ROW, *_rated(BENCH, 1, 1, 1))),
    ("row 50 10 9 9, bench 60 5 5 4, all rpe 8, plank 50, 45 sec", (*ROW, *_rated(BENCH, 2, 2, 2), *PLANK)),
    ("chins 9 8 7. row 50 10 9 9. bench 60 5 5 4. rpe 8 on all the row and bench",
     (*CHIN, *_rated(ROW, 2, 2, 2), *_rated(BENCH, 2, 2, 2))),
    ("row 50 10 9 9. bench 60 5 5 4. 2 rir on all the bench, row was easy", (*ROW, *_rated(BENCH, 2, 2, 2))),
    # numbers put right inside, with talk, signs and the next exercise behind them
    ("bench 60 5, 5, 5, no 4 -> row 50 10 9 9", (*BENCH, *ROW)),
    ("bench 60 5, 5, 5, no 4. row: 10, 9, 9 at 50", (*BENCH, *ROW)),
    ("bench 60 5, 5, 5, no 4 / row 50 10 9 9", (*BENCH, *ROW)),
    ("bench 60 5, 5, 3, no 4", BENCH),
    ("bench 60 5, 5, 5, no 4 lol my belt broke", BENCH),
    ("bench 60 5, 5, 5, no 4 (music was awful)", BENCH),
    ("bench 60 5 5 5 (actually 4) - bar felt slow", BENCH),
    ("bench 60x5 60x5 60x5 no wait 4 - bar felt slow", BENCH),
    ("bench 60 5 5 5 (actually 4) and then chins 9 8 7", (*BENCH, *CHIN)),
    ("bench 60 5, 5, 5, i mean 4, felt heavy today and chins 9 8 7", (*BENCH, *CHIN)),
    ("bench 60 5, 5, 5 scratch that, 4 / chins 9 8 7", (*BENCH, *CHIN)),
    ("row 50 10 9 8 scratch that, 9 - bar felt slow and bench 60: 5, 5, 5 scratch that, 4, happy and chins 9 8 7",
     (*ROW, *BENCH, *CHIN)),
    ("row 50 10 9 8 scratch that, 9, bench 60: 5, 5, 5 scratch that, 4", (*ROW, *BENCH)),
    # sides with a load that could be repetitions
    ("split squat 16: 10 left 9 right, then 9 left 8 right", APART),
    ("split squat 16 L10/R9 and L9/R8", APART),
    # talk between
    ("bench 60 x 5, 5, 4, felt heavy today and row 50 10 9 9", (*BENCH, *ROW)),
    ("bench 60 x 5, 5, 4 which was hard how long should i rest btw?", BENCH),
    ("bench 60 5 5 4. pb i think! + row 50 for 10, 9 and 9 + chins 9 8 7", (*BENCH, *ROW, *CHIN)),
    ("row 50 got 10 then 9 then 9 and bench at 60 got 5 then 5 then 4 and chins 9 8 7", (*ROW, *BENCH, *CHIN)),
    ("plank fifty then forty five seconds chins nine then eight then seven row at fifty got ten then nine then nine",
     (*PLANK, *CHIN, *ROW)),
    ("bench 60 5; 62.5 5; 65 4", ("Bench Press#1 60x5", "Bench Press#2 62.5x5", "Bench Press#3 65x4")),
)  # fmt: skip
NEAR: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("bench 60x5 60x5, two down", BENCH[:2]),
    ("bench 60x5, 60x5, two ✅", BENCH[:2]),
    ("bench 60 5 5 rpe 8, 4", (BENCH[0], f"{BENCH[1]} rir 2", BENCH[2])),
    ("bench 60x5 @8 4", ("Bench Press#1 60x5 rir 2", "Bench Press#2 60x4")),
    ("bench 60 5 5 4 @ 60", BENCH),
    ("row 50 10 9 9, bench 60 5 5 4, all rpe 8", (*_rated(ROW, 2, 2, 2), *_rated(BENCH, 2, 2, 2))),
    ("bench 60 5 5 4. no 20s free", BENCH),
    ("bench 60 5 5 4, no 3 plates left", BENCH),
    ("the 90s playlist again, bench 60 5 5 4", BENCH),
    ("bench 60x5 60x5 60x4 - bar felt slow", BENCH),
    ("sorry slow today, bench 60 5 5 4", BENCH),
    ("pfff (tired) bench 60 5 5 4", BENCH),
    ("knackered (hungover) bench 60 5 5 4", BENCH),
)


@pytest.mark.parametrize(("text", "stored"), SAID, ids=[text for text, _ in SAID])
def test_a_session_is_stored_as_told(text: str, stored: tuple[str, ...]) -> None:
    reading = read_message(request(text))
    assert reading.ask is None
    assert sorted(reading.performed, key=repr) == sorted(rows(*stored), key=repr)


@pytest.mark.parametrize(("text", "stored"), NEAR, ids=[text for text, _ in NEAR])
def test_what_only_sounds_like_it_is_not_read_so(text: str, stored: tuple[str, ...]) -> None:
    """Nothing is stored otherwise: it is read as said, or asked about."""
    reading = read(text)
    assert reading.ask is not None or sorted(reading.performed, key=repr) == sorted(rows(*stored), key=repr)


BEGUN = ("Chin-Up#1 0x9", "Chin-Up#2 0x8", "Barbell Row#1 50x10", "Barbell Row#2 50x9")
GOES_ON: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("row 50x9, no wait the last was 8", ("Barbell Row#3 50x8",)),
    ("row 50x10, make that 9, last one slow", ("Barbell Row#3 50x9",)),
    ("row 50x10, the last was actually 9", ("Barbell Row#3 50x9",)),
    ("row 50x10, no wait the last was 9 and then bench 60 5 5 4", ("Barbell Row#3 50x9", *BENCH)),
    ("bench 60x5, 60x5, 60x5, no wait the last was 4", BENCH),
)


@pytest.mark.parametrize(("text", "stored"), GOES_ON, ids=[text for text, _ in GOES_ON])
def test_what_is_put_right_inside_a_message_is_not_what_was_stored_before(text: str, stored: tuple[str, ...]) -> None:
    reading = read(text, *BEGUN)
    assert (reading.ask, reading.replaces) == (None, ())
    assert sorted(reading.performed, key=repr) == sorted(rows(*stored), key=repr)


def test_the_last_set_of_another_exercise_is_the_stored_one() -> None:
    reading = read("bench 60x5. last row set was 8", *BEGUN)
    assert reading.replaces == (("Barbell Row", 2),)


@pytest.mark.parametrize("text", ["row 50x9, second set 10", "row 50x9, set 2 10"])
def test_a_second_set_may_be_of_today_or_of_what_is_stored(text: str) -> None:
    assert read(text, *BEGUN).ask is not None


def test_a_second_set_alone_is_the_stored_one() -> None:
    reading = read("second set of row was 10", *BEGUN)
    assert (reading.ask, reading.replaces) == (None, (("Barbell Row", 2),))


WHEN: tuple[tuple[str, str | None], ...] = (
    ("yesterday: bench warm up 30x7, then 60 5 5 4", "2026-03-03"),
    ("yesterday bench warm up 30x7, then 60 5 5 4", "2026-03-03"),
    ("monday's session: bench (warmup 30x7) 60 5 5 4", "2026-03-02"),
    ("yesterday: row a dozen with 50", "2026-03-03"),
    ("last week i got 55x5 so bench 60 5 5 4", None),
    ("last week bench was 55x5 so chins 9 8 7", None),
)


@pytest.mark.parametrize(("text", "day"), WHEN, ids=[text for text, _ in WHEN])
def test_a_day_stays_whatever_is_told_behind_it(text: str, day: str | None) -> None:
    reading = read(text)
    assert reading.ask is None
    assert reading.performed
    assert (None if reading.day is None else reading.day.isoformat()) == day
    assert not any(p.load is not None and str(p.load.amount) == "55" for p in reading.performed)


@pytest.mark.parametrize(("text", "where"), [
    ("yesterday: lower back's been aching since the bus ride, bench 60x5", "lower back"),
    ("monday's session: lower back ached, bench 60x5", "lower back"),
    ("yesterday: bench 60x5, felt a twinge in left hip 2/10, carried on 60x5. row 50x10 fine", "hip"),
    ("yesterday i felt a twinge in my knee, fine today. bench 60x5", None),
    ("yesterday: quads sore, bench 60x5", None),
    ("lower back sore from monday, bench 60x5", None),
])  # fmt: skip
def test_a_day_that_heads_a_report_hides_no_hurt(text: str, where: str | None) -> None:
    reading = read(text)
    assert (None if reading.pain is None else reading.pain.where) == where


@pytest.mark.parametrize("text", [
    "asdf (qwer) 4,5", "asdf (qwer) no 12,5 -> ✅ 🤪 @",
    "5/3 session - bench 60 5 5 4", "bench 60 5 5 4 the 145 how heavy is that?", "fly 10 10 10",
    "row 50x9, 45 should i go for it?",
])  # fmt: skip
def test_what_is_in_doubt_is_asked_about(text: str) -> None:
    assert read(text, current="Bench Press").ask is not None
