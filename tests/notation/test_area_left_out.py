"""What is left out, put right, told again and ended: one list of wordings for each meaning and what is done so far.

The wanted rows follow from the reading rules (common practice, no source). `sq2 100x4` is stored, `-sq2` replaced,
`/sq` left out, `end` ends the session.
"""

from datetime import timedelta

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed
from bot.training.units import Unit
from tests.notation.plans import NOW, row, sets

PLANS = {
    "sq": PlannedExercise("Box Squat", sets("100", 5, 5), aliases=("squat", "squats")),
    "ro": PlannedExercise("Machine Row", sets("60", 8, 10), aliases=("row", "rows")),
    "cu": PlannedExercise("Leg Curl", sets("40", 10, 12, 2), aliases=("curls",)),
    "pl": PlannedExercise("Side Plank", sets(None, 30, 45, 2), aliases=("plank", "planks"), load_style=LoadStyle.NONE,
                          sides=2, measure=Measure.SECONDS),
}  # fmt: skip
TOP = PlannedExercise("Sumo Deadlift", (*sets("150", 3, 3, 1), *sets("125", 6, 6, 2)), aliases=("sumo",))
SQUATS = "sq1 100x5; sq2 100x5; sq3 100x5"
ROW, ROWS_2, ROWS = "ro1 60x10", "ro1 60x10; ro2 60x9", "ro1 60x10; ro2 60x9; ro3 60x8"
CURL, CURLS = "cu1 40x12", "cu1 40x12; cu2 40x11"
PLANK, PLANKS = "pl1 -x40", "pl1 -x40; pl2 -x35"
DONE = {
    "": "",
    "sq1": "sq1 100x5",
    "sq2": "sq1 100x5; sq2 100x5",
    "sq": SQUATS,
    "ro1": f"{SQUATS}; {ROW}",
    "ro2": f"{SQUATS}; {ROWS_2}",
    "ro": f"{SQUATS}; {ROWS}",
    "cu1": f"{SQUATS}; {ROWS}; {CURL}",
    "cu": f"{SQUATS}; {ROWS}; {CURLS}",
    "pl1": f"{SQUATS}; {ROWS}; {CURLS}; {PLANK}",
    "pl": f"{SQUATS}; {ROWS}; {CURLS}; {PLANKS}",
}
NAMES = {exercise.name: short for short, exercise in PLANS.items()}


def _performed(written: str) -> tuple[Performed, ...]:
    """`sq1 100x5; ro2 60x9` as rows."""
    parts = [p.split(" ", 1) for p in written.split("; ") if p]
    return tuple(row(f"{PLANS[short[:2]].name}#{short[2:]} {body}") for short, body in parts)


def _read(done: str, text: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, tuple(PLANS.values()), _performed(DONE[done])))


def _check(done: str, text: str, wanted: str) -> None:
    said = [part for part in wanted.split("; ") if part]
    reading = _read(done, text)
    assert reading.ask is None
    assert set(reading.performed) == set(_performed("; ".join(p for p in said if p[0] not in "-/" and p != "end")))
    assert {f"-{NAMES[name]}{number}" for name, number in reading.replaces} == {p for p in said if p[0] == "-"}
    assert {f"/{NAMES[name]}" for name in reading.skipped} == {p for p in said if p[0] == "/"}
    assert reading.finished == ("end" in said)


Meaning = tuple[str, str, tuple[str, ...]]
LEFT_OUT: list[Meaning] = [
    ("", "sq1 100x5; sq2 100x5; /sq", (
        "squats 100x5 100x5 and skipped the last one", "squats 2x5 at 100, left the third out",
        "squats 100x5 5 the third was not happening", "squats 100x5 5, gave the last one a miss")),
    ("", "sq1 100x5; /sq", (
        "squats 100x5 and skipped the other two", "squats 100x5, not doing the other 2",
        "squats 100x5 only one set, the other ones i leave out", "squats 100x5, i let the last two sets fall",
        "squats 100x5, left the other two for another day")),
    ("", f"sq1 100x5; sq2 100x5; /sq; {ROWS}", (
        "squats 100x5 5 and skipped the last one, rows 60x10 9 8",
        "squats 100x5 5 then the third got binned, rows 60x10 9 8")),
    ("", "sq1 100x5; sq2 100x5; sq3 100x5; ro1 60x10; /ro; cu1 40x12", (
        "squats 100x5 5 5, rows 60x10, other two sets skipped, curls 40x12",)),
    ("sq1", "/sq", ("skip the other two", "leaving out the last two", "sets 2 and 3 skipped", "skipped sets 2 and 3")),
    ("sq2", "/sq", ("set 3 not done", "left the last set", "missed the last set", "third set no, bus is coming",
                    "last set? nah", "no set 3 today")),
    ("sq", "/cu", ("curls? nope", "curls? not today", "curls? didnt happen", "curls I let fall today")),
    ("sq", "/cu; /pl", ("just rows today", "only doing rows, no time for the rest", "only the rows tonight")),
    ("sq", f"{ROWS}; /cu; /pl", ("rows 60x10 9 8. curls? no. planks? also no",)),
    ("sq", "/pl", ("planks got axed", "planks never happened")),
    ("ro", "/cu; /pl", ("skip the other two", "skipping both others")),
    ("ro", "/cu", ("nah on the curls today", "nope on the curls", "no to curls today", "curls not for me today",
                   "not curling today", "wont be curling", "cant curl today", "curls hurt my knee so i left them",
                   "curls hurt my knee, didnt do them", "had to stop the curls, knee hurts",
                   "curls are off the table, knee hurts", "couldn't do curls cause machine was taken")),
    ("sq", f"{ROWS}; /cu", ("rows 60x10 9 8 and not doing curls today", "rows 60kg 10/9/8, nah to the curls",
                            "rows 60x10 9 8. didnt do curls because the machine was taken")),
    ("pl1", "", ("peed myself a little on that plank and couldnt stop it", "skip planks?", "bit tired thats all")),
    ("sq", "ro1 60x10", ("rows felt heavy so i left it at 60x10",)),
    ("sq", "", ("saving planks for last", "keeping the planks for the end")),
    ("sq", "ro1 60x10", ("wanted to skip rows but 60x10",)),
    ("pl1", "end; /pl", ("I leave it here for today, the second plank no, the bus comes",)),
]  # fmt: skip
ENDS: list[Meaning] = [
    ("pl", "end", ("aaand done", "annnd done", "doneee", "job done", "finished at last", "all boxes ticked")),
    ("ro1", "", ("gym closes at 21:00 so thats all i got",)),
    (
        "sq1",
        "/sq",
        (
            "squats are done for today, back is tired",
            "done with squats for today",
            "squats done for the day",
            "tore my palm, im done with squats",
            "thatll do for squats",
        ),
    ),
    (
        "pl1",
        "end; pl2 -x35",
        ("plank 35. done", "plank 35, done", "35. that was the last one, done", "planks 35 and done"),
    ),
    ("cu", "/pl; end", ("no planks. done",)),
    (
        "cu1",
        "cu2 40x11",
        ("curls 40x11. done", "curls 40x11, hammies a bit tight thats all", "40x11, just tired, thats all"),
    ),
    ("cu1", "cu2 40x11; end", ("curls 40x11, thats all", "40x11 tight, thats all for today")),
]
OF_STORED: list[Meaning] = [
    ("ro2", "-ro1; ro1 60x9", ("the 10 was only 9", "the 10 was really 9", "that 10 should be a 9",
                               "the first one i overcounted, it was 9")),
    ("ro", "-ro3; ro3 60x7", ("coach small lie, the 8 was only 7, my brother counted", "the 8 was a 7")),
    ("ro2", "-ro2; ro2 60x8", ("the 60x9 was 60x8", "looking at the video i only got 8 on set 2")),
    ("ro2", "-ro2; ro2 60x8; ro3 60x8", (
        "60x8. the set before was 8 tho, not 9", "60x8, previous one was 8 not 9 sorry",
        "60x8 and the one before that was actually 8")),
    ("ro2", "-ro1; ro1 62.5x10; -ro2; ro2 62.5x9", (
        "both were 62.5", "sorry both the rows were 62.5", "set 1 was 62.5 and set 2 as well",
        "correction: set 1 was 62.5 and set 2 also", "those were 62.5 not 60")),
    ("ro2", "-ro2; ro2 60x9 rir 1", ("thinking about it that one was more like rir 1",)),
    ("ro2", "-ro2", ("take the last set off, it wasnt real", "that last one doesnt count",
                     "forget set 2, didnt happen", "delete set 2, i only did one", "wipe the second row")),
    ("sq", "-sq3", ("delete set 3 of squats, i only did two", "delete squat set 3, only did two")),
    ("pl", "-pl1; pl1 -x30 left; pl1 -x40 right", ("on set 1 of planks the left only made 30",)),
]  # fmt: skip
NEW: list[Meaning] = [
    ("sq2", "sq3 100x4", ("last set was 100x4", "last one was 100x4", "not my best, 100x4", "100x4, not 5 but fine",
                          "wasnt pretty, 100x4", "i mean come on, 100x4")),
    ("sq2", "sq3 95x5", ("95x5 not 100", "95x5, so not 100")),
    ("cu1", "cu2 40x12", ("sorry, 12 also the second",)),
]  # fmt: skip
ITSELF: list[Meaning] = [
    ("", "sq1 100x4", ("one hundred for five um no sorry for four", "100x4 not 5", "100x4 (not 5)",
                       "I did 100 times 5 pardon times 4")),
    ("", "sq1 100x5", ("no not 90, 100x5", "no not ninety a hundred by five", "100 not 95 x5", "1000x5 lol 100",
                       "1000x5. ok ok 100", "10x5, typo, 100x5", "ten... no five reps at 100")),
    ("", SQUATS, ("100x5x2. no, x3", "2 sets of 5 at 100, no 3 sets", "two sets sorry three sets of 5 at 100",
                  "2x5 at 100, i mean 3x5")),
    ("", "sq1 100x5; sq2 100x5; sq3 100x4", ("100x5 100x4 wait no.. my notes say 5 5 4",)),
    ("", "sq1 100x5 rir 1", ("100x5 @8, make it @9",)),
    ("ro1", "ro2 60x9", ("600x9 whoops 60x9",)),
]  # fmt: skip
CASES = [
    (done, text, wanted)
    for table in (LEFT_OUT, ENDS, OF_STORED, NEW, ITSELF)
    for done, wanted, texts in table
    for text in texts
]


@pytest.mark.parametrize(("done", "text", "wanted"), CASES)
def test_what_is_left_out_put_right_and_ended(done: str, text: str, wanted: str) -> None:
    _check(done, text, wanted)


@pytest.mark.parametrize("text", ["rows 60x10, i mean squats 100x5", "rows 60x10. i meant squats 100x5"])
def test_whether_the_first_sets_stand_is_asked_where_another_exercise_is_meant(text: str) -> None:
    assert _read("", text).ask is not None


def test_hurt_that_may_be_ignored_takes_no_set_back() -> None:
    reading = _read("cu1", "tiny tingling in my fingers, ignore it")
    assert reading.pain is not None
    assert (reading.replaces, reading.ask) == ((), None)


@pytest.mark.parametrize(
    ("text", "load", "numbers"),
    [
        ("sorry both the sumo back offs were 127.5", "127.5", (2, 3)),
        ("sumo top set was 155 not 150", "155", (1,)),
    ],
)
def test_a_set_is_named_by_what_the_plan_has_it_for(text: str, load: str, numbers: tuple[int, ...]) -> None:
    done = tuple(row(f"Sumo Deadlift#{n} {b}") for n, b in ((1, "150x3"), (2, "125x6"), (3, "125x6")))
    reading = read_message(Request(text, Unit.KG, NOW, (TOP,), done))
    wanted = tuple(row(f"Sumo Deadlift#{n} {load}x{3 if n == 1 else 6}") for n in numbers)
    assert (reading.ask, set(reading.performed)) == (None, set(wanted))
    assert reading.replaces == tuple(("Sumo Deadlift", n) for n in numbers)


REFUSALS = (
    "not gonna fool with {} today", "ain't messing with {}", "cannae be arsed wi {} the day", "canny be bothered wi {}",
    "cant be fagged with {}", "not in the mood for {}", "zero interest in {} today", "havent got it in me for {}",
    "noping out of {}", "hard pass on {} today", "{} can get in the bin", "i will not be attempting {} this evening",
    "theres no way im doing {}", "never bothered with {}", "i'm sacking {} off", "im out on {} today",
    "opted out of {} today", "steering clear of {} today", "decided against {}", "chose not to do {}",
    "i refuse to do {} today", "left {} undone", "{} went undone", "{} didn't get a look in", "{}: hell no",
    "{} - cba", "cba wi {}", "could not stomach {}", "not feeling {} today", "{} got the boot",
    "punted {} to next week",
    "moving {} to saturday", "rain check on {}", "{} will need to wait", "never reached {}", "no time left 4 {}",
    "had to bail before {}", "nothing in the tank for {}", "no gas left for {}", "too gassed for {}",
    "too knackered to do {}",
)  # fmt: skip
KEPT = (
    "don't let me skip {} lol", "never let me skip {} again", "stop me skipping {}", "i wont let myself skip {}",
    "i refuse to skip {} again", "no way im skipping {}", "not about to skip {}", "i know i shouldnt skip {}",
    "gotta stop skipping {}", "can't wait to skip {}, joking", "my mate skips {}", "people who skip {} smh",
    "i skipped {} last week", "cant believe i used to skip {}", "not started {} yet",
)  # fmt: skip


@pytest.mark.parametrize("name", ["curls", "the planks"])
@pytest.mark.parametrize("text", REFUSALS)
def test_a_refusal_of_any_making_leaves_the_exercise_out(text: str, name: str) -> None:
    _check("ro", text.format(name), "/cu" if name == "curls" else "/pl")


@pytest.mark.parametrize("name", ["curls", "the planks"])
@pytest.mark.parametrize("text", KEPT)
def test_a_skip_that_is_denied_or_not_of_today_leaves_nothing_out(text: str, name: str) -> None:
    _check("ro", text.format(name), "")


BESIDE = [
    ("ro2", "60x8, not gonna mess with curls today", "ro3 60x8; /cu"),
    ("ro2", "60x10. cba wi curls or planks", "ro3 60x10; /cu; /pl"),
    ("ro2", "60x10, noping out of the curls, planks next", "ro3 60x10; /cu"),
    ("ro2", "rows 60x10, then too cooked for anything else", "ro3 60x10; /cu; /pl"),
    ("ro2", "not messing with the weight, 60x10", "ro3 60x10"),
    ("ro2", "too gassed for more than 8. 60x8", "ro3 60x8"),
    ("ro2", "never touched my chest on that one, 60x9", "ro3 60x9"),
    ("ro2", "not bothering with the last set of rows", "/ro"),
    ("ro2", "skipping the last row set and the planks", "/ro; /pl"),
    ("ro", "skip curls, plank 40 left 35 right", "/cu; pl1 -x40 left; pl1 -x35 right"),
    ("ro2", "60x8 and I stopped the set", "ro3 60x8"),
    ("ro1", "The two sets that are missing I skip", "/ro"),
    ("ro", "no curls, no dumbbells free", "/cu"),
    ("cu", "planks?? couldn't, queue out the door, so that's me done", "/pl; end"),
    ("ro", "knocking it on the head there no curls no plank we've a christening", "/cu; /pl; end"),
    ("cu", "skipping the planks bc downstairs neighbour 🙄 done for today", "/pl; end"),
    ("cu", "planks 40 35 and done, shower time", "pl1 -x40; pl2 -x35; end"),
    *(("cu1", t, "end") for t in ("wrap!", "gonna call it a night", "done for the morning", "hitting the showers",
                                  "im donezo", "packing it in", "all is done", "enough for today")),
    *(("cu1", t, "") for t in ("im out of town till friday", "im out of chalk", "calling it heavy",
                               "going home for christmas", "im out sick tomorrow")),
]  # fmt: skip


@pytest.mark.parametrize(("done", "text", "wanted"), BESIDE)
def test_what_is_left_out_beside_sets_reasons_and_ends(done: str, text: str, wanted: str) -> None:
    _check(done, text, wanted)


LATE = {
    1: ("yesty: {}", "last nite: {}", "forgot to send these from yesterday sorry. {}", "yesterday (forgot my phone) {}",
        "did this yesterday arvo before nights, forgot to log it: {}", "should have sent this yesterday. {}",
        "{} all from yesterday, forgot to send", "from yesterday night: {}"),
    2: ("two days ago (forgot my phone) {}", "2 days ago, forgot to log. {}"),
    None: ("football yesterday (legs dead) {}", "did yoga two days ago {}", "nothing yesterday, {}",
           "forgot to eat yesterday. {}", "meant to come yesterday, {}", "sore from yesterday. {}"),
}  # fmt: skip


@pytest.mark.parametrize(("back", "text"), [(back, text) for back, texts in LATE.items() for text in texts])
@pytest.mark.parametrize("sets_told", ["squats 100x5 5 5", "box squat 100 5, 100 5, 100 5"])
def test_a_late_report_is_of_its_day_whatever_excuses_it(back: int | None, text: str, sets_told: str) -> None:
    reading = _read("", text.format(sets_told))
    assert (reading.ask, set(reading.performed)) == (None, set(_performed(SQUATS)))
    assert reading.day == (None if back is None else NOW.date() - timedelta(days=back))


MORE = [
    *(("ro2", f"{t} the last set", "/ro") for t in ("binned", "tired, bailed on", "bagged", "so called off")),
    *(("ro", f"{lack} for {name}", f"/{short}") for lack in ("run outta time", "no fuel", "no legs left", "outta gas")
      for name, short in (("curls", "cu"), ("the planks", "pl"))),
    *(("ro", t, "/cu; /pl") for t in ("not doing the two curl sets or the planks", "curls n planks r not happening",
                                      "both curl sets and the planks skipped", "curls and planks went out the window")),
    *(("sq", t, "/cu; /pl") for t in ("everything bar the rows got skipped", "all but the rows was binned")),
    *(("ro", t, "/cu") for t in ("forgot to do the curls", "curls slipped my mind", "curls are kicked to friday",
                                 "pulled the plug on curls")),
    ("ro", "forgot the curls: 40x12 40x11", CURLS),
    ("ro", "forgot to do the curls, doing them now", ""),
    ("ro2", "thats 2 of 3 on rows, not doing the third, moving on to curls", "/ro"),
    ("ro1", "knee's fine on the rows. not doing the last 2", "/ro"),
    ("ro2", "no energy, 60x8", "ro3 60x8"),
    ("ro2", "no leg pain at all, 60x8", "ro3 60x8"),
    ("ro2", "had to stop the rows at 8", "ro3 60x8"),
    ("ro1", "bailed on the second at 8", "ro2 60x8"),
    ("pl1", "left 40 right 35, done with everything now", "pl2 -x40 left; pl2 -x35 right; end"),
    ("ro2", "60x8, that was everything i had", "ro3 60x8"),
    ("pl", "FINISHED 🎓 even the planks lol", "end"),
]  # fmt: skip


@pytest.mark.parametrize(("done", "text", "wanted"), MORE)
def test_what_is_given_up_forgotten_or_over_in_more_words(done: str, text: str, wanted: str) -> None:
    _check(done, text, wanted)


AT = NOW.replace(hour=18, minute=55, second=0)
TIMES = {
    20: ("gotta bounce at 7:15", "must dash at 19:15", "bouncing at 7:15 today", "outta here at 7:15"),
    35: ("gotta run at half past 7", "i have until 19h30", "have to shoot off at 7.30", "need to dip at 7:30"),
    40: ("got 40ish min before placement starts", "have 40 or so min before a call"),
    None: ("need 3 min then curls", "hotel has dumbbells only until 12", "waited for 10 min"),
}


@pytest.mark.parametrize(("minutes", "text"), [(m, t) for m, texts in TIMES.items() for t in texts])
@pytest.mark.parametrize("done", ["", "sq2", "ro"])
def test_the_time_there_is_and_what_is_none(done: str, minutes: int | None, text: str) -> None:
    request = Request(text, Unit.KG, AT, tuple(PLANS.values()), _performed(DONE[done]))
    reading = read_message(request)
    assert reading.minutes == minutes
    assert (reading.performed, reading.finished, reading.ask) == ((), False, None)


ASKED = ("which row matters more if i can do only one", "kindly tell whether I should stay at 60", "how'd you want my "
         "elbows", "tell me please if next time i must take more", "you want my elbows tucked or flared",
         "Twelve has become too easy, should i add weight?", "No bench free for the rows, would cables do instead?",
         "not sure which grip you want on the rows")  # fmt: skip


@pytest.mark.parametrize("text", ASKED)
@pytest.mark.parametrize("done", ["sq", "ro1"])
def test_a_question_in_any_words_stores_and_skips_nothing(done: str, text: str) -> None:
    reading = _read(done, text)
    assert (reading.question, reading.performed, reading.skipped, reading.ask) == (True, (), (), None)


IN_PLACE = (
    "row machine was taken so i did 20 minutes on the bike",
    "no rows here. i did the bike 12 min instead",
    "rows are out of order, went on the treadmill for 10",
    "rows busy so i pushed the prowler, 60x10 60x10",
)


@pytest.mark.parametrize("text", IN_PLACE)
def test_what_was_done_in_place_of_an_exercise_is_asked_about(text: str) -> None:
    reading = _read("sq", text)
    assert reading.ask is not None
    assert (reading.performed, reading.skipped) == ((), ())


@pytest.mark.parametrize(("back", "text"), [
    (1, "yesterday in the garage, {}"), (1, "did the rows yesterday cuz the gym closes early today, 60x10 60x9 60x8"),
    (2, "night before last: {}"), (None, "yesterday at the physio, {}"), (None, "slept ill the night before last, {}"),
])  # fmt: skip
def test_a_day_with_its_place_or_reason_is_the_reports(back: int | None, text: str) -> None:
    reading = _read("sq", text.format("rows 60x10 60x9 60x8"))
    assert (reading.ask, set(reading.performed)) == (None, set(_performed(ROWS)))
    assert reading.day == (None if back is None else NOW.date() - timedelta(days=back))


STOPPED: list[Meaning] = [
    ("ro2", "/ro", (
        "only doing 2 sets of rows, moving on to curls", "2 sets of rows is enough, on to curls",
        "two sets of rows will have to do, onto curls", "two sets of rows was plenty, leaving the third",
        "keeping rows to two sets", "rows stay at two sets", "calling rows at two sets", "rows: just 2 sets today",
        "two sets of rows is all im doing", "only managed two sets of rows", "two rows sets were enough")),
    ("ro1", "/ro", ("one set of rows was enough", "one set was plenty", "rows: one set only",
                    "leaving rows at one set")),
    ("cu1", f"/cu; {PLANKS}", ("one set of curls was plenty, leaving the other one. planks 40, 35",)),
    ("", "sq1 100x5; sq2 100x5; /sq", (
        "squats 100x5 5, that's all i am doing of those", "squats 100x5 5. no more of those",
        "squats 100x5 5, enough of those", "squats 100x5 5, done with those", "squats 100x5 5, only two sets",
        "only did 2 sets of squats: 100x5 5", "squats 100x5, 5, none", "squats 100x5 5 x", "squats 100x5 5 skip")),
    ("sq", "/ro", (
        "rows, no.", "rows = nope", "Rows: none.", "had to drop the rows", "had to drop rows today", "let the rows go",
        "rows had to be dropped", "rows off the menu", "forget the rows", "rows tomorrow", "forced to skip the rows")),
    ("ro", "/cu; /pl", ("curls + planks = nope", "curls and planks, no")),
    ("sq2", "/sq", (
        "set 3 = no", "set 3: nope", "third set = no", "had to drop the last set", "bailed on the last one",
        "bailed on the third", "wimped out on the last set", "cried off the last one",
        "third set isnt going to happen")),
    ("", f"{ROWS}; /sq; /cu; /pl", ("rows only: 60x10 9 8", "just rows today: 60x10 9 8")),
    ("ro", f"{CURLS}; end", (
        "curls 40x12 11 and that is me finished", "curls 40x12 11 and that was me finished")),
    ("sq", "", ("rows next", "only rows left", "not skipping the rows")),
    ("ro1", "", ("elbow not bad at all",)),
]  # fmt: skip


@pytest.mark.parametrize(("done", "wanted", "text"), [(d, w, t) for d, w, texts in STOPPED for t in texts])
def test_enough_of_an_exercise_leaves_out_what_is_left_of_it(done: str, wanted: str, text: str) -> None:
    _check(done, text, wanted)


@pytest.mark.parametrize(("minutes", "text"), [
    (15, "quarter of an hour for the rest, what do i prioritise"), (35, "walked in with 35 min, what do i drop?"),
    (15, "15 min for everything, what first"), (15, "15 min to do the lot, what stays"),
])  # fmt: skip
def test_the_time_for_all_that_is_left(minutes: int, text: str) -> None:
    reading = _read("sq", text)
    assert reading.minutes == minutes
    assert (reading.question, reading.skipped, reading.ask) == (True, (), None)


@pytest.mark.parametrize("text", ["20 min, thats all i have", "gym closes in 20 min, thats all i have",
                                  "i have 20 min and thats it"])  # fmt: skip
def test_all_the_time_there_is_ends_nothing(text: str) -> None:
    reading = _read("sq", text)
    assert reading.minutes == 20
    assert (reading.finished, reading.ask) == (False, None)


@pytest.mark.parametrize("text", [
    "row machine was taken, did dips", "rows taken so i did dips", "rows busy, dips it was",
    "someone on the rows so did dips", "used the smith machine for rows 60x8", "did rows on the smith 60x8",
    "dunno if that was 8 or 9 i lost count, 60",
])  # fmt: skip
def test_another_exercise_or_a_lost_count_is_asked_about(text: str) -> None:
    reading = _read("sq", text)
    assert (reading.ask is not None, reading.performed) == (True, ())


@pytest.mark.parametrize("text", ["60x10, no row pain", "60x10 zero pain", "60x10, how light was that",
                                  "60x10, no idea how i did that"])  # fmt: skip
def test_what_hurts_nowhere_and_asks_nothing_is_talk(text: str) -> None:
    reading = _read("sq", text)
    assert (reading.pain, reading.question, reading.ask) == (None, False, None)
    assert set(reading.performed) == set(_performed(ROW))


@pytest.mark.parametrize("excuse", ["late i know", "sorry its late", "better late than never", "forgot to send"])
def test_a_day_with_an_excuse_behind_it(excuse: str) -> None:
    reading = _read("sq", f"rows from yesterday, {excuse}: 60x10 60x9 60x8")
    assert (reading.day, set(reading.performed)) == (NOW.date() - timedelta(days=1), set(_performed(ROWS)))


SETS_OF_ONE = ("leaving the last two squats", "dropping the last two squat sets", "skipping the last 2 squats",
               "the last two squats i leave", "missed the last two squats on purpose", "left the last two squats",
               "let the last two squat sets go", "two squat sets skipped")  # fmt: skip
BESIDE_OTHERS = ("{}. rows 60x10 60x9", "{}, rows 60x10, 9", "ran out of legs, {}. rows 60x10 60x9",
                 "{}, back feels fine just short on time. rows 60x10 60x9")  # fmt: skip


@pytest.mark.parametrize("beside", BESIDE_OTHERS)
@pytest.mark.parametrize("text", SETS_OF_ONE)
def test_sets_left_of_one_exercise_leave_no_other_out(text: str, beside: str) -> None:
    _check("sq1", text, "/sq")
    _check("sq1", beside.format(text), f"/sq; {ROWS_2}")


NAME_FIRST = ("{} i skip", "{} i have not make", "{} i have not done", "{} i have let out", "{} i give up",
              "i did not make {}", "i have not made {}", "keeping off {}", "staying well clear of {}",
              "giving {} a rest", "{} fell out today", "please remove {} for today")  # fmt: skip


@pytest.mark.parametrize("because", ["", " because somebody used it", ", no time left"])
@pytest.mark.parametrize("text", NAME_FIRST)
def test_what_is_left_out_in_a_second_tongue(text: str, because: str) -> None:
    _check("ro", text.format("curls") + because, "/cu")
    _check("ro", text.format("the planks") + because, "/pl")


@pytest.mark.parametrize("text", ["the rest i dont do", "the rest i have not done", "i dont do the rest",
                                  "the rest not", "the rest i let out", "the others i wont do"])  # fmt: skip
def test_the_rest_that_is_not_done(text: str) -> None:
    _check("ro", f"that's it for me today, {text}", "/cu; /pl; end")
    _check("sq", f"rows 60x10 60x9 60x8, {text}", f"{ROWS}; /cu; /pl")


@pytest.mark.parametrize("third", ["skip the third", "the third i skip", "no third", "the third set i have let out"])
def test_how_many_were_done_beside_the_next_one_left_out_is_no_set(third: str) -> None:
    _check("sq2", f"only managed 2 of squats, {third}", "/sq")
    _check("", f"squats 100x5 100x5 {third} because somebody took the rack rows 60x10 60x9",
           f"sq1 100x5; sq2 100x5; /sq; {ROWS_2}")  # fmt: skip


LUNGES = (PLANS["sq"], PlannedExercise("Reverse Lunge", sets("16", 8, 10)),
          PlannedExercise("Lateral Lunge", sets("12", 8, 10)))  # fmt: skip


@pytest.mark.parametrize(("text", "asks"), [
    ("no lunges of either kind today", False), ("lunges can wait, skipping both of those", False),
    ("not doing either lunges", False), ("no lunges at all today", False), ("leaving both sorts of lunges", False),
    ("no lunges today, reverse or lateral", False), ("no lunges today", True), ("skip lunges", True),
])  # fmt: skip
def test_both_of_a_kind_are_left_out_only_where_both_are_said(text: str, asks: bool) -> None:
    reading = read_message(Request(text, Unit.KG, NOW, LUNGES, _performed(DONE["sq"])))
    assert (reading.ask is not None, len(reading.skipped)) == (asks, 0 if asks else 2)


TIMES_FIVE = (PlannedExercise("Bench Press", sets("100", 5, 5), aliases=("bench",)),
              PlannedExercise("Pendlay Row", sets("75", 6, 6)), PLANS["cu"])  # fmt: skip
BOTH_PLANNED = {("Bench Press", n, 5) for n in (1, 2, 3)} | {("Pendlay Row", n, 6) for n in (1, 2, 3)}


@pytest.mark.parametrize("text", [
    "bench and pendlay all as planned", "bench + pendlay as planned", "bench, pendlay like in plan",
    "both bench and pendlay as planned", "bench and pendlay both as planned", "did bench and pendlay as planned",
    "all as planned on bench and pendlay", "all of bench and all of pendlay as in the plan",
])  # fmt: skip
@pytest.mark.parametrize("behind", ["", ", leg curl 40x12 11"])
def test_several_exercises_as_planned(text: str, behind: str) -> None:
    reading = read_message(Request(text + behind, Unit.KG, NOW, TIMES_FIVE, ()))
    curls = {("Leg Curl", 1, 12), ("Leg Curl", 2, 11)} if behind else set()
    assert reading.ask is None
    assert {(p.exercise, p.set, p.reps) for p in reading.performed} == BOTH_PLANNED | curls


@pytest.mark.parametrize("lead", ["everything as planned", "all to plan", "whole session as planned"])
@pytest.mark.parametrize("apart", [
    " except the last set of pendlay, only got 4", " except pendlay set 3, 4 reps", " but the last pendlay was 4",
    " apart from the last set of pendlay which was 4", ", only 4 on the last pendlay set",
])  # fmt: skip
def test_all_as_planned_but_one_set_of_one_exercise(lead: str, apart: str) -> None:
    reading = read_message(Request(lead + apart, Unit.KG, NOW, TIMES_FIVE[:2], ()))
    assert reading.ask is None
    assert {(p.exercise, p.set, p.reps) for p in reading.performed} == {
        *(BOTH_PLANNED - {("Pendlay Row", 3, 6)}), ("Pendlay Row", 3, 4)}  # fmt: skip


@pytest.mark.parametrize("text", ["got all 5", "made all five", "all 5", "got all 5 clean", "hit all five reps"])
def test_all_repetitions_of_a_set_are_those_of_one(text: str) -> None:
    _check("sq2", text, "sq3 100x5")
    _check("", text, "sq1 100x5")


LYING = (PlannedExercise("Lying Leg Curl", sets("40", 10, 12), aliases=("leg curl",)),)


@pytest.mark.parametrize(("text", "asks"), [
    ("lying curl was taken so I did the seated one instead, 35x12", True), ("i make the leg curl seated, 35x12", True),
    ("did them seated, 35x12", True), ("used the seated one: 35x12", True), ("lying leg curl 40x12", False),
    ("leg curl 40x12, seated for a bit now", False),
])  # fmt: skip
def test_another_posture_is_another_exercise(text: str, asks: bool) -> None:
    reading = read_message(Request(text, Unit.KG, NOW, LYING, ()))
    assert (reading.ask is not None, len(reading.performed)) == (asks, 0 if asks else 1)


@pytest.mark.parametrize(("text", "seconds"), [
    ("walked 12 minutes", 720), ("walked for twelve minutes", 720), ("i walked 12 mins today", 720),
    ("walked 12 minutes to the gym", None), ("walked the dog 12 minutes", None),
])  # fmt: skip
def test_a_walk_that_the_plan_has(text: str, seconds: int | None) -> None:
    walk = PlannedExercise(
        "Treadmill Walk", sets(None, 600, 900, 1), load_style=LoadStyle.NONE, measure=Measure.SECONDS
    )
    reading = read_message(Request(text, Unit.KG, NOW, (walk,), ()))
    assert [p.reps for p in reading.performed] == ([] if seconds is None else [seconds])


def test_all_done_asks_where_one_exercise_is_under_way_and_others_wait() -> None:
    assert _read("ro2", "all done").ask is not None
    _check("pl", "all done", "end")


@pytest.mark.parametrize(("done", "text", "wanted"), [
    ("", "squats 100x5x3 all done in 9 minutes, new record", SQUATS),
    ("", "squats 100x5x3 all done inside 12 min", SQUATS),
    ("", "squats 100x5x3 all done", f"{SQUATS}; end"),
    ("", "squats 100x5x3, rows 60x10 9 8 all done in 40 minutes", f"{SQUATS}; {ROWS}; end"),
    ("", "squats 100 5 5 5 then the kids came down so I stopped there, rows tonight", SQUATS),
    ("", "squats 100 5 5 5. leaving it there, rows later", SQUATS),
    ("", "squats 100 5 5 5, stopped there", f"{SQUATS}; end"),
])  # fmt: skip
def test_how_long_it_took_and_a_pause_are_no_end(done: str, text: str, wanted: str) -> None:
    """Rule 12: the sets of one exercise took so long; the rest is done later that day."""
    _check(done, text, wanted)


FOREIGN = (
    "i resign from {} today", "I renounce on {}", "i abstain from {}", "i spare me {} today", "{} I leave today",
    "i leave {} away", "{} make i not today", "I have no force left for {}", "had not the power for {}",
    "{}: giving them a miss today", "{} - gave them a miss", "{}? gave them the swerve", "{} off tonight",
    "{} are off tonight", "{} none because no time", "{} none bc the machine was taken", "zero {} today",
    "{} zero sets", "{}: pass", "couldn't squeeze {} in", "{} got the chop", "{} fell through",
    "{} had to give way", "bin {} today", "{} stay out today", "dropped {} today", "scratch {}", "parked {}",
    "put {} off", "{} moved to tomorrow", "{} sacrificed to the school run", "{} ignored", "miss {} today",
    "screw {} today", "to hell with {}", "❌ {}", "{} 🚫", "{} were a casualty of the clock", "{} will not be today",
    "knocking {} on the head today", "{} were a no", "{} are a write off", "{}: didnt bother", "{} i do friday",
    "didnt have {} in me", "{} got swallowed by a work call", "left {} for the weekend",
)  # fmt: skip
STAYS = (
    "{} next", "saving {} for last", "{} to go", "{} will follow", "gave {} a good go", "wont be leaving {} out",
    "{} up next", "keeping {} in",
)  # fmt: skip


@pytest.mark.parametrize("name", ["curls", "planks"])
@pytest.mark.parametrize("text", FOREIGN)
def test_left_out_in_other_tongues_slang_and_idioms(text: str, name: str) -> None:
    _check("ro", text.format(name), "/cu" if name == "curls" else "/pl")


@pytest.mark.parametrize("name", ["curls", "planks"])
@pytest.mark.parametrize("text", STAYS)
def test_what_is_still_to_be_done_is_not_left_out(text: str, name: str) -> None:
    _check("ro", text.format(name), "")


ONE_TOLD = [
    *(("ro", f"{lead}, {tail}", "cu1 40x12; /cu")
      for lead in ("curls 40x12", "one set of curls 40x12", "40x12", "I made only one set, 40x12")
      for tail in ("the other I leave", "the other one I leave away", "other set not done", "second one i leave",
                   "the remaining one i skip", "gave the other one a miss", "the second I let out",
                   "so i left the other")),
    ("ro", "the second one of curls i leave away, the first was 40x12", "cu1 40x12; /cu"),
    *(("", t, "/cu; /pl") for t in ("I make squats and rows, curls and planks I leave", "curls i leave and planks also",
                                    "will do squats and rows, leaving curls and planks", "curls i leave, planks too",
                                    "curls and planks: giving them a miss", "curls & planks: giving them both a miss",
                                    "squats and rows i do, curls and planks i leave")),
    ("sq", "so rows and nothing else, 60x10 9 8", f"{ROWS}; /cu; /pl"),
    ("ro", "dropped the curls to 35x12", ""),
    ("ro", "curls felt off tonight 40x12", "cu1 40x12"),
    ("cu1", "curls 40x11, phone was left at home", "cu2 40x11"),
    ("", "just two sets of squats, 100x5 and 100x5, then power cut", "sq1 100x5; sq2 100x5"),
    ("ro", "curls none because my wrist hurt a bit", "/cu"),
    ("ro", "curls were too spicy for my elbow, it pulls, so none", "/cu"),
]  # fmt: skip


@pytest.mark.parametrize(("done", "text", "wanted"), [c for c in ONE_TOLD if c[2]])
def test_one_set_told_the_other_left_and_names_on_both_sides(done: str, text: str, wanted: str) -> None:
    _check(done, text, wanted)


ORDERS = ("so i did the curls before the rows{}", "did curls ahead of the rows today{}", "curls before rows{}",
          "switched the order, curls first{}", "before the rows i did curls{}")  # fmt: skip


@pytest.mark.parametrize("order", ORDERS)
@pytest.mark.parametrize("told", [", 40 for 12 and 40 for 11", ": 40x12 11", " 40x12 40x11"])
def test_a_name_that_only_tells_the_order_has_no_sets(order: str, told: str) -> None:
    _check("sq", order.format(told), CURLS)


BANDS = PlannedExercise("Band Pull-Apart", sets(None, 15, 20, 2), load_style=LoadStyle.NONE)


@pytest.mark.parametrize("text", ["I left out the bands, my granddaughter has borrowed them", "the bands i leave today",
                                  "not doing the bands", "gave the bands a miss"])  # fmt: skip
def test_the_bands_are_the_one_exercise_with_them(text: str) -> None:
    reading = read_message(Request(text, Unit.KG, NOW, (PLANS["ro"], BANDS), ()))
    assert (reading.ask, reading.skipped) == (None, ("Band Pull-Apart",))


DEADS = PlannedExercise("Trap Bar Deadlift", sets("140", 5, 5), aliases=("trap bar",))


@pytest.mark.parametrize("other", ["shrugs", "floor press", "step ups", "lunges"])
@pytest.mark.parametrize("gear", ["on the hex bar", "with the trap bar", "using the trap bar"])
def test_what_the_session_lacks_is_asked_about_whatever_it_was_done_with(other: str, gear: str) -> None:
    reading = read_message(Request(f"did {other} {gear}, 140x10", Unit.KG, NOW, (DEADS, PLANS["pl"]), ()))
    assert reading.ask is not None
    assert reading.performed == ()


LEAVING = [
    *((f"{must} be {what} {when}", minutes) for must in ("gotta", "need to", "i wanna", "i have to")
      for what in ("outta here", "out", "finished", "on the bus", "packed up")
      for when, minutes in (("by quarter to 8", 50), ("at 19:30", 35), ("before 7:30", 35))),
    ("packing up at 19:30", 35), ("20 min then off home", 20), ("need to be finished in 20 min", 20),
]  # fmt: skip


@pytest.mark.parametrize(("text", "minutes"), LEAVING)
def test_a_time_to_leave_is_no_end_yet(text: str, minutes: int) -> None:
    request = Request(text, Unit.KG, AT, tuple(PLANS.values()), _performed(DONE["sq"]))
    reading = read_message(request)
    assert reading.minutes == minutes
    assert (reading.performed, reading.finished, reading.ask) == ((), False, None)
