"""What is put right inside one message, told late or of another day, left out, ended, and the minutes there are.

Each list holds wordings of one meaning, as clients type or dictate them; the wanted rows follow from the reading rules
(common practice, no source). `sq2 100x4` is stored, `-sq2` replaced, `/sq` left out, `end` ends the session, `m20` are
minutes, `d3` is the third of March, `pain` is told.
"""

from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed
from bot.training.units import Unit
from tests.notation.plans import DROP, NOW, row, sets

PLANS = {
    "sq": PlannedExercise("Box Squat", sets("100", 5, 5), aliases=("squat", "squats")),
    "ro": PlannedExercise("Seal Row", sets("50", 8, 10, 3, DROP), aliases=("rows", "row")),
    "sp": PlannedExercise("Shoulder Press", sets("20", 8, 10), load_style=LoadStyle.PER_HAND, aliases=("press",)),
    "la": PlannedExercise("Landmine Press", sets("45", 8, 10, 2), sides=2, aliases=("landmine",)),
    "pl": PlannedExercise("Plank", sets(None, 30, 45, 2), load_style=LoadStyle.NONE, measure=Measure.SECONDS),
}
SQUATS, ROWS = "sq1 100x5; sq2 100x5; sq3 100x5", "ro1 50x10; ro2 50x9; ro3 50x8"
PRESSES = "sp1 20x10; sp2 20x9; sp3 20x8"
DONE = {
    "": "",
    "sq1": "sq1 100x5",
    "sq": SQUATS,
    "ro1": f"{SQUATS}; ro1 50x10",
    "ro2": f"{SQUATS}; ro1 50x10; ro2 50x9",
    "ro": f"{SQUATS}; {ROWS}",
    "sp1": f"{SQUATS}; {ROWS}; sp1 20x10",
    "sp": f"{SQUATS}; {ROWS}; {PRESSES}",
    "la1": f"{SQUATS}; {ROWS}; {PRESSES}; la1 45x10",
}
NAMES = {exercise.name: short for short, exercise in PLANS.items()}


def _performed(written: str) -> tuple[Performed, ...]:
    parts = [p.split(" ", 1) for p in written.split("; ") if p]
    return tuple(row(f"{PLANS[short[:2]].name}#{short[2:]} {body}") for short, body in parts)


def _check(done: str, text: str, wanted: str) -> None:
    said = [part for part in wanted.split("; ") if part]
    rows = [p for p in said if p[0] not in "-/" and " " in p]
    reading = read_message(Request(text, Unit.KG, NOW, tuple(PLANS.values()), _performed(DONE[done])))
    assert reading.ask is None
    assert set(reading.performed) == set(_performed("; ".join(rows)))
    told = {f"-{NAMES[name]}{number}" for name, number in reading.replaces}
    told |= {f"/{NAMES[name]}" for name in reading.skipped}
    told |= {"end"} if reading.finished else set()
    told |= {"pain"} if reading.pain is not None else set()
    told |= {f"m{reading.minutes:.0f}"} if reading.minutes is not None else set()
    told |= {f"d{reading.day.day}"} if reading.day is not None else set()
    assert told == set(said) - set(rows)


CUES = (" wait no, ", ", no hang on, ", ". no wait. ", ", i mean ", "... actually ", ", scratch that, ", ", oops, ")
ANEW = [
    ("sp1", "20x8{}20x9", "sp2 20x9"),
    ("", "100x5{}100x4", "sq1 100x4"),
    ("sq", "50x10 9 8{}50x10 10 8", "ro1 50x10; ro2 50x10; ro3 50x8"),
    ("", "squat 3x5 at 100{}3x5 at 102.5", "sq1 102.5x5; sq2 102.5x5; sq3 102.5x5"),
    ("ro1", "50x9 8{}50x10 8", "ro2 50x10; ro3 50x8"),
    ("", "100x5 5 5{}5 5 4, rows 50x10 10 9", "sq1 100x5; sq2 100x5; sq3 100x4; ro1 50x10; ro2 50x10; ro3 50x9"),
]
Meaning = tuple[str, str, tuple[str, ...]]
INSIDE: list[Meaning] = [
    ("", "sq1 100x5; sq2 100x4", ("100x5, 100x5, no 4",)),
    ("", "sq1 100x5; sq2 100x5; sq3 100x4", ("squat: 100x5, 100x4... make that 5, 100x4",)),
    ("sq", "ro1 50x10; ro2 50x10; ro3 50x8", (
        "rows fifty for ten, fifty for nine no sorry fifty for ten then fifty for eight",)),
    ("", "sq1 100x5; sq2 100x5", ("100 x 5 x 3, hang on thats wrong, 100 x 5 x 2",)),
    ("", "sq1 95x5", ("the bar was 95 not 100, got 5", "had 95 on the bar for 5", "95 not 100, 5 reps")),
    ("sq1", "sq2 100x4", ("4 on this one, not 5", "4 reps this set not 5", "only 4 on this one", "this set 4 not 5")),
    ("", "sq1 100x4", tuple(f"100x5{link}100x4" for link in (" rather ", ", rather ", " or rather ", ". rather "))),
    ("sp", "la1 45x8 left; la1 45x7 right", tuple(
        f"45x8 {both}{wrong} right was 7"
        for both, wrong in product(("each", "each side"), (", no wait", ". no", ", actually", ", oh wait", ","))
    )),
    ("sq", "ro1 50x10; ro2 50x9; ro3 50x8", (
        "50x10, actually felt easy, 9, 8", "50x10 9 8. wait for the rack was long", "50x10, no sweat, 50x9, 50x8")),
]  # fmt: skip
STORED: list[Meaning] = [
    ("la1", "-la1; la1 45x9 left; la1 45x10 right", (
        "landmine left was 9 not 10 sorry, right stays 10", "left was 9 not 10, right unchanged",
        "landmine left should be 9, right should be 10", "left was 9 not 10, right is still 10")),
    ("ro1", "-ro1; ro1 47.5x10", (
        "forget the 50, i had 47.5 on", "forget the 50, it was 47.5", "scratch the 50, had 47.5 on",
        "forget 50, i used 47.5 for the rows", "ignore the 50, that row was 47.5")),
    ("ro", "ro3 30x8 drop", (
        "forgot the drop on that last row: 30 x 8", "forgot to say the drop on the last one: 30 for 8",
        "oh and the drop from the rows, 30 8", "i missed off the drop for rows: 30 x 8",
        "i forgot to write the drop, it was 30 for 8", "the drop i did not write: 30 for 8",
        "btw i did the drop on the rows, 30 for 8, didnt log it")),
    ("ro1", "-ro1; ro1 52.5x10; ro2 50x8", (
        "50x8. earlier set was 52.5 not 50", "50x8, the one earlier should be 52.5 not 50",
        "just did 50x8. earlier i used 52.5 not 50", "50x8, btw first one was 52.5")),
    ("sq", "-sq1; sq1 102.5x5; -sq2; sq2 102.5x5; -sq3; sq3 102.5x5", ("all three should be 102.5, bar is 25 not 20",)),
    ("ro2", "-ro2; ro2 52.5x9", ("please change my last row to 52.5, i read the plates wrong",)),
]  # fmt: skip
DAYS: list[Meaning] = [
    ("", f"d3; {SQUATS}", (
        "forgot this one from tuesday, squats 100 5 5 5", "still owe you tuesday, squats 100 5 5 5",
        "squats from tuesday 100 5 5 5", "squats 100x5 5 5 (from tuesday, sorry)",
        "back on tuesday I did squats, 100 5 5 5")),
    ("", "sq1 100x5", (
        "it is wednesday and wednesday is squat day, 100x5", "happy wednesday! 100x5", "tuesday left me sore but 100x5",
        "squats 100x5, better than tuesday", "i had to miss tuesday so today squats 100x5",
        "saturday i am free. 100x5")),
    ("sq", ROWS, ("rows with 50, it was 10, 9, 8 times",)),
]  # fmt: skip
LEFT: list[Meaning] = [
    ("sq", f"{ROWS}; /sp", (
        "rows 50x10 9 8. press bailed", "rows 50x10 9 8. press - not feeling it",
        "rows 50x10 9 8, press will not happen", "rows 50x10 9 8, press gone for today because my ride is here")),
    ("sq", "ro1 50x10; ro2 50x9; /ro", (
        "rows 50x10 9, cut the last set", "rows 50x10 9, bailed on the third", "quit rows after two: 50x10, 50x9",
        "gave up on rows after two, 50x10 9", "stopped after two sets, 50x10 50x9", "rows 50x10 9, called rows there")),
    ("", "sq1 100x5; sq2 100x5; /ro", (
        "100 kg, i do five, five. row i leave for other day", "100x5 5. rows i'll do another day")),
    ("ro", "sp1 20x10", ("was going to skip press but did 20x10",)),
    ("", SQUATS, ("squat is finish as planned, all three set",)),
    ("ro2", "ro3 50x7; pain", ("got 7 at 50 then felt something pull in my right hamstring, stopped there",)),
]  # fmt: skip
MINUTES: list[Meaning] = [
    ("", "m35; sq1 100x5", ("good morning I've got thirty five minutes before the dentist squat 100x5",)),
    ("", "m45", ("after night shift I have only 3 quarter of hour", "three quarters of an hour only")),
    ("", "m30", ("lunch break only, 30 mins", "half hour lunch break only", "squeezing this into 30 minutes")),
    ("", "m10", ("back on the ward in ten minutes", "need to be back at my desk in 10", "break is over in 10 min")),
    ("", "m15", ("fifteen minutes and im out", "quarter of an hour is all")),
    ("", "", ("walked here, 25 min", "on my way, 15 minutes out", "be there in ten minutes")),
    ("", "sq1 100x5", ("ten minute warmup then 100x5", "100x5. 20 minute walk here", "3 minutes between sets, 100x5")),
    ("", "sq1 100x5", ("100x5, my train goes at 23:05", "100x5. gym shuts 22:30 so have to be quick")),
    ("ro", "m20; /sp", ("I've twenty minutes left so I'm leaving out the press",)),
]  # fmt: skip
CASES = [(done, text.format(cue), wanted) for (done, text, wanted), cue in product(ANEW, CUES)] + [
    (done, text, wanted)
    for table in (INSIDE, STORED, DAYS, LEFT, MINUTES)
    for done, wanted, texts in table
    for text in texts
]


@pytest.mark.parametrize(("done", "text", "wanted"), CASES)
def test_what_is_put_right_told_late_left_out_and_how_long_there_is(done: str, text: str, wanted: str) -> None:
    _check(done, text, wanted)


@pytest.mark.parametrize(
    ("hour", "text"), [(11, "out the door by noon"), (11, "until noon only"), (11, "leaving at noon")]
)
def test_noon_is_a_time_of_day(hour: int, text: str) -> None:
    now = NOW.replace(hour=hour, minute=35)
    assert read_message(Request(text, Unit.KG, now, tuple(PLANS.values()))).minutes == 25
