"""What changes what was said, and what is said beside sets: a row each, with near ones that say something else."""

from collections.abc import Sequence
from decimal import Decimal

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import SetKey
from bot.training.units import Unit
from tests.notation.plans import DROP, NOW, row, rows, sets

SQUAT = PlannedExercise("Back Squat", sets("100", 4, 6), aliases=("squat",))
BENCH = PlannedExercise("Bench Press", sets("80", 6, 8), aliases=("bench",))
ROW = PlannedExercise("Bent-Over Row", sets("70", 8, 10), aliases=("row",))
SPLIT = PlannedExercise("Bulgarian Split Squat", sets("14", 8, 10), aliases=("bulgarians",),
                        load_style=LoadStyle.PER_HAND, sides=2)  # fmt: skip
CURL = PlannedExercise("Lying Leg Curl", sets("40", 10, 12, 3, DROP), aliases=("leg curl",))
CALF = PlannedExercise("Standing Calf Raise", sets("60", 12, 15, 2), aliases=("calves",))
SESSION = (SQUAT, BENCH, ROW, SPLIT, CURL, CALF)
_NAMES = {"sq": SQUAT, "be": BENCH, "ro": ROW, "sp": SPLIT, "cu": CURL, "ca": CALF}
TWO = "sq 100x6 100x5"
THREE = "sq 100x6 100x5 100x5"
BENCHED = f"{THREE}; be 80x8 80x7"
ROWED = f"{THREE}; be 80x8 80x7 80x6; ro 70x10 70x9 70x9"
SPLITS = f"{THREE}; be 80x8 80x7 80x6; ro 70x10 70x9 70x9; sp 14x10 14x10 14x9"


def _rows(written: str) -> tuple[str, ...]:
    """`sq 100x6 100x5; be 80x8` as rows in the way of `plans.row`: each exercise's sets from the first on."""
    out = []
    for part in filter(None, written.split("; ")):
        short, *bodies = part.split()
        out += [f"{_NAMES[short].name}#{n} {body}" for n, body in enumerate(bodies, 1)]
    return tuple(out)


def _read(text: str, done: str = "", current: PlannedExercise | None = None) -> Reading:
    told = tuple(row(r) for r in _rows(done))
    return read_message(Request(text, Unit.KG, NOW, SESSION, told, None if current is None else current.name))


def _numbered(written: str) -> tuple[str, ...]:
    """`sq2 100x4; sq3 100x5 rir 2` as rows."""
    parts = [part.split(" ", 1) for part in written.split("; ")]
    return tuple(f"{_NAMES[p[0][:2]].name}#{p[0][2:]} {p[1]}" for p in parts)


def _keys(written: Sequence[str]) -> list[SetKey]:
    return sorted({(r.split("#")[0], int(r.split("#")[1].split()[0])) for r in written})


CORRECTIONS = [
    (TWO, "in last serie i write 5 but it was 4", "sq2 100x4"),
    (TWO, "naw wait that last wan wis 6", "sq2 100x6"),
    (TWO, "oh hang on, I only did 4 there", "sq2 100x4"),
    (TWO, "excuse me, the two sets were with 97,5", "sq1 97.5x6; sq2 97.5x5"),
    (THREE, "the last two squats were 95 not 100", "sq2 95x5; sq3 95x5"),
    (THREE, "last 2 sets were only 4 reps each sorry", "sq2 100x4; sq3 100x4"),
    (BENCHED, "squats were all 5s, not 6 5 5", "sq1 100x5; sq2 100x5; sq3 100x5"),
    (BENCHED, "can you change my first bench set to 7", "be1 80x7"),
    (BENCHED, "pls fix bench 1 to 7 reps", "be1 80x7"),
    (BENCHED, "sorry coach i have made error, second bench is 6 and not 7", "be2 80x6"),
    (BENCHED, "my bad, bench 2 = 82.5x6", "be2 82.5x6"),
    (BENCHED, "miscounted that. 6", "be2 80x6"),
    (BENCHED, "sorry mistyped, 6 bench last set", "be2 80x6"),
    (BENCHED, "I said 80 but loaded 82.5 haha", "be2 82.5x7"),
    (BENCHED, "ignore the 7, it was a 6", "be2 80x6"),
    (BENCHED, "scratch that, 6", "be2 80x6"),
    (BENCHED, "Could you please amend my last set to 6 reps?", "be2 80x6"),
    (BENCHED, "squat set three should be 4, bench set two should be 6", "sq3 100x4; be2 80x6"),
    (SPLITS, "the bulgarians were 16s sorry not 14s. all three", "sp1 16x10; sp2 16x10; sp3 16x9"),
    ("sq 225x5 225x5", "both of those are lbs!!", "sq1 225lbx5; sq2 225lbx5"),
    ("sq 225x5", "that 225 was pounds btw not kilos", "sq1 225lbx5"),
    ("sq 225x5", "i'm an idiot, that's pounds", "sq1 225lbx5"),
    (THREE, "last 2 squats were rpe 8 and 9", "sq2 100x5 rir 2; sq3 100x5 rir 1"),
    (BENCHED, "rpe for the squats was 7 8 and 9", "sq1 100x6 rir 3; sq2 100x5 rir 2; sq3 100x5 rir 1"),
    (BENCHED, "first bench had 3 in reserve, second 1", "be1 80x8 rir 3; be2 80x7 rir 1"),
    (BENCHED, "bench set 1 was rpe 7, set 2 rpe 9", "be1 80x8 rir 3; be2 80x7 rir 1"),
    (BENCHED, "rpe 8 on both benches", "be1 80x8 rir 2; be2 80x7 rir 2"),
    (BENCHED, "forgot the rpe, 8.5", "be2 80x7 rir 1.5"),
    (BENCHED, "bench was 2 rir then 1 rir", "be1 80x8 rir 2; be2 80x7 rir 1"),
]
TAKEN_BACK = [
    ("bin the bench i just logged", ("Bench Press", 2)),
    ("can you take the last bench set off, that wasnt me", ("Bench Press", 2)),
    ("bench set 1 never happened, delete it", ("Bench Press", 1)),
    ("please cancel my last entry", ("Bench Press", 2)),
    ("could you remove the second bench set please?", ("Bench Press", 2)),
    ("scrap bench 1", ("Bench Press", 1)),
]
IN_ONE_BREATH = [
    ("105 x 5 lol jk 100", "sq1 100x5"),
    ("100 x 5, 100 x 5, 100 x 4. oh and the first one was 6", "sq1 100x6; sq2 100x5; sq3 100x4"),
    ("100x5 100x5 100x4 (second was 6 sorry)", "sq1 100x5; sq2 100x6; sq3 100x4"),
    ("squat 100 5, 5, 4 — no wait last one was 5 too", "sq1 100x5; sq2 100x5; sq3 100x5"),
    ("squats 100: 6, 6, no 5, 4", "sq1 100x6; sq2 100x5; sq3 100x4"),
    ("100x5 rpe 7 make that 8", "sq1 100x5 rir 2"),
    ("100x5 100x5 100x4 sorry those were 95", "sq1 95x5; sq2 95x5; sq3 95x4"),
]


@pytest.mark.parametrize(("done", "text", "stored"), CORRECTIONS)
def test_what_was_stored_is_put_right(done: str, text: str, stored: str) -> None:
    """Each replaces what it names, and nothing else."""
    reading = _read(text, done)
    assert (reading.ask, reading.performed) == (None, rows(*_numbered(stored)))
    assert sorted(reading.replaces) == _keys(_numbered(stored))


def test_the_effort_of_a_drop_set_put_right_keeps_the_work_set() -> None:
    """`drop was at 25 actually` changes the drop's load, and repeats its work set."""
    done = (row("Lying Leg Curl#1 40x12"), row("Lying Leg Curl#1 30x8 drop"))
    reading = read_message(Request("drop was at 25 actually", Unit.KG, NOW, (CURL,), done))
    assert reading.performed == rows("Lying Leg Curl#1 40x12", "Lying Leg Curl#1 25x8 drop")
    assert reading.replaces == (("Lying Leg Curl", 1),)


@pytest.mark.parametrize(("text", "key"), TAKEN_BACK)
def test_a_set_is_taken_back(text: str, key: SetKey) -> None:
    """In plain words too; nothing takes its place, and nothing is asked of the coach."""
    reading = _read(text, BENCHED)
    assert (reading.ask, reading.performed, reading.replaces, reading.question) == (None, (), (key,), False)


@pytest.mark.parametrize(("text", "stored"), IN_ONE_BREATH)
def test_what_is_put_right_in_one_message_replaces_nothing(text: str, stored: str) -> None:
    """The message's own sets are as they were put right."""
    reading = _read(text)
    assert (reading.ask, reading.performed, reading.replaces) == (None, rows(*_numbered(stored)), ())


@pytest.mark.parametrize(
    ("done", "text", "stored"),
    [
        (TWO, "sorry for the delay, 100x5", "sq3 100x5"),
        (f"{THREE}; be 80x8", "last two sets were 80x7 and 80x6", "be2 80x7; be3 80x6"),
        (TWO, "100x5 and that's the squats done", "sq3 100x5"),
    ],
)
def test_what_only_sounds_like_a_correction_is_new(done: str, text: str, stored: str) -> None:
    """An apology for something else, sets still to come, a thing that is done."""
    reading = _read(text, done)
    assert (reading.ask, reading.performed, reading.replaces) == (None, rows(*_numbered(stored)), ())


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("hav tae be oot in 40 minites", 40),
        ("have to be out in 40", 40),
        ("hard stop at 6:50", 50),
        ("gym shuts early got like 45 min", 45),
        ("got called in for a late so 40 mins max from now", 40),
        ("need to be out the door by 6:45", 45),
        ("i need to wrap up in 15 min", 15),
        ("must leave 19:15", 75),
        ("whole session 70 minutes", None),
        ("65 minutes all in", None),
        ("done in 55 minutes", None),
        ("time 52:10", None),
        ("waited 15 mins for a bench", None),
        ("24 hour gym is great", None),
        ("10 minutes on the bike to warm up", None),
    ],
)
def test_the_time_that_there_is(text: str, minutes: int | None) -> None:
    """Not the time that something took; neither is a set."""
    reading = _read(text)
    assert reading.minutes == (None if minutes is None else Decimal(minutes))
    assert (reading.ask, reading.performed) == (None, ())


@pytest.mark.parametrize(
    ("text", "skipped", "finished"),
    [
        ("skipped the calves I'm done", ("Standing Calf Raise",), True),
        ("no time for leg curl or calves", ("Lying Leg Curl", "Standing Calf Raise"), False),
        ("everything after bulgarians is off today", ("Lying Leg Curl", "Standing Calf Raise"), False),
        ("skipping calves, doing leg curl next", ("Standing Calf Raise",), False),
        ("would rather not do calves today", ("Standing Calf Raise",), False),
        ("calves: i not had time", ("Standing Calf Raise",), False),
        ("maybe skip calves, lets see", (), False),
        ("im so done with this machine lol", (), False),
        ("haven't done calves yet", (), False),
        ("i finish now", (), True),
    ],
)
def test_what_is_left_out_and_the_end(text: str, skipped: tuple[str, ...], finished: bool) -> None:
    """Given up, or only thought of; the end, or the end of something else."""
    reading = _read(text, ROWED)
    assert (reading.ask, reading.performed) == (None, ())
    assert (reading.skipped, reading.finished) == (skipped, finished)


def test_one_set_and_no_other() -> None:
    """`just the one set, skipping the other` gives up what is left of the exercise."""
    reading = _read("calves 60x14, just the one set, skipping the other", ROWED)
    assert (reading.performed, reading.skipped) == (rows("Standing Calf Raise#1 60x14"), ("Standing Calf Raise",))


@pytest.mark.parametrize(
    ("text", "asks"),
    [
        ("how wide should my grip be on bench", True),
        ("what's the difference between a bent over row and a pendlay row", True),
        ("what grip for rows", True),
        ("does my setup look ok is that normal", True),
        ("have you finished the new plan", True),
        ("coach does the bar count", True),
        ("what i want to know is how you do it lol", False),
        ("what a session that was", False),
        ("is what it is", False),
        ("i know what you mean about depth now", False),
    ],
)
def test_questions_by_the_order_of_their_words(text: str, asks: bool) -> None:
    """Without a mark too; statements with the same words are none."""
    reading = _read(text, TWO)
    assert (reading.question, reading.ask, reading.performed) == (asks, None, ())


@pytest.mark.parametrize(
    "text",
    [
        "session rpe 8",
        "overall effort 7 out of 10 today",
        "today was a 6/10 day",
        "everything felt like a 9 today",
        "squats took it all out of me",
        "Weighed myself, 84.2 kg",
        "hit 82 on the scale finally",
        "hit the 10,000 steps already",
    ],
)
def test_talk_rates_no_set(text: str) -> None:
    """The whole session's effort, what a lift cost, the body's weight."""
    reading = _read(text, THREE)
    assert (reading.ask, reading.performed, reading.replaces) == (None, (), ())
