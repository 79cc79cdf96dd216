"""What is put right inside one message, told late or of another day, left out, ended, and the minutes there are.

Each list holds wordings of one meaning, as clients type or dictate them; the wanted rows follow from the reading rules
(common practice, no source). `sq2 100x4` is stored, `-sq2` replaced, `/sq` left out, `end` ends the session, `m20` are
minutes, `d3` is the third of March, `pain` is told; `ask`: what was meant is asked about, `asks`: the client asks.
"""

from collections.abc import Mapping
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


Plans = Mapping[str, PlannedExercise]


def _performed(written: str, plans: Plans) -> tuple[Performed, ...]:
    parts = [p.split(" ", 1) for p in written.split("; ") if p]
    return tuple(row(f"{plans[short[:2]].name}#{short[2:]} {body}") for short, body in parts)


def _check(done: str, text: str, wanted: str, plans: Plans = PLANS, stored: Mapping[str, str] = DONE) -> None:
    said = [part for part in wanted.split("; ") if part]
    rows = [p for p in said if p[0] not in "-/" and " " in p]
    names = {exercise.name: short for short, exercise in plans.items()}
    reading = read_message(Request(text, Unit.KG, NOW, tuple(plans.values()), _performed(stored[done], plans)))
    assert set(reading.performed) == set(_performed("; ".join(rows), plans))
    told = {f"-{names[name]}{number}" for name, number in reading.replaces}
    told |= {f"/{names[name]}" for name in reading.skipped}
    told |= {"ask"} if reading.ask is not None else set()
    told |= {"asks"} if reading.question else set()
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


THRUSTS, CHINS = "hi1 80x10; hi2 80x9; hi3 80x8", "ch1 5x8; ch2 5x7; ch3 5x6"
GYM = {
    "hi": PlannedExercise("Hip Thrust", sets("80", 8, 10), aliases=("thrusts",)),
    "ch": PlannedExercise("Chin-Up", sets("5", 6, 8), load_style=LoadStyle.BODYWEIGHT, aliases=("chins",)),
    "sp": PlannedExercise("Shoulder Press", sets("20", 8, 10), load_style=LoadStyle.PER_HAND, aliases=("press",)),
    "sl": PlannedExercise("Sled Push", sets("90", 20, 20, 4), measure=Measure.METRES, aliases=("sled",)),
    "cu": PlannedExercise("EZ-Bar Curl", sets("30", 10, 10), aliases=("curls", "curl")),
}
HALF = f"{THRUSTS}; {CHINS}"
PUSHED = f"{HALF}; {PRESSES}; sl1 90x20; sl2 90x20"
TOLD = {
    "": "",
    "hi1": "hi1 80x10",
    "hi2": "hi1 80x10; hi2 80x9",
    "hi": THRUSTS,
    "ch1": f"{THRUSTS}; ch1 5x8",
    "ch": HALF,
    "sp2": f"{HALF}; sp1 20x10; sp2 20x9",
    "sl2": PUSHED,
    "cu1": f"{PUSHED}; sl3 90x20; sl4 90x20; cu1 30x10",
}
REASONS: list[Meaning] = [
    ("hi1", "-hi1; hi1 90x10", (
        "i put 80 but it was 90, the bar here is 20 not 10", "it was 90 not 80, the bar here is 20 not 10",
        "i wrote 80, it was 90 because the bar is 20 not 15", "that was 90, bar weighs 20 not 10",
        "80 should be 90, forgot the bar is 20 not 10", "90 not 80, plates were 20 not 15")),
    ("cu1", "-cu1; cu1 27.5x10", (
        "that curl was on the metric plates, so 27.5 not 30", "that curl was with the light bar, so it was 27.5 not 30",
        "that set was on the small plates, so 27.5 not 30")),
    ("ch1", "-ch1; ch1 0x8", (
        "those chins had no belt on, just bodyweight", "no belt on that one, just bodyweight",
        "no plate on those, bodyweight only", "those chins were bodyweight, no belt")),
    ("ch1", "ch2 0x7", ("no belt, bodyweight 7",)),
    ("sl2", "-sl2; sl2 95x15", (
        "for the sled, number 2 should read 95 and 15 metres", "number 2 on the sled should read 95 for 15",
        "no 2 of the sled was 95 and 15m", "the sled, number two was really 95 for 15 metres",
        "sled no. 2 should be 95x15")),
    ("sp2", "-sp2; sp2 18x8", (
        "sorry that 9 was an 8 and with the 18s", "the 9 was an 8 with the 18s", "that 9 should be 8 and with 18s",
        "that 9 was 8 on the 18s", "sorry, that was 8 and with the 18s", "that was 8 with the 18s")),
    ("sp2", "-sp2; sp2 20x8", ("sorry that 9 was an 8", "that 9 was an 8", "the 9 was an 8")),
    ("sp2", "-sp2; sp2 18x9", (
        "last one was supposed to be 20 but i grabbed the 18s",)),
    ("hi2", "-hi1; hi1 82.5x10", ("for thrusts number 1 it should say 82.5", "for thrusts set 1 it should say 82.5")),
    ("hi", "-hi3; hi3 85x8", (
        "thrusts set 3: I put 80, meant 85.", "set 3 i put 80 meant 85", "hip thrust set 3: i wrote 80, should be 85",
        "thrusts third set: i put 80 but meant 85", "for set 3 i put 80, it was 85")),
    ("hi", "-hi2; hi2 80x10", ("thrusts set 2: I put 9, meant 10.", "set 2: i put 9, meant 10")),
    ("ch", "sp1 18x10; sp2 18x9; sp3 18x8", (
        "press was supposed to be 20 but i grabbed 18s, so 18 10 9 8", "press supposed to be on 20 but went 18, 10 9 8",
        "press: supposed to be 20s, but used 18s 10 9 8", "press was meant to be 20 but i had to use 18, 10 9 8",
        "supposed to be 20s but used the 18s for press, 18 10 9 8",
        "press was down as 20 but i grabbed 18 so 18x10 18x9 18x8")),
    ("hi1", "hi2 75x10; hi3 75x9", ("supposed to be 80 but i put 75 on, 75 10 9",)),
    ("hi1", "hi2 80x9", ("80x9, was supposed to be 10 but i got 9", "supposed to get 10 but got 9 at 80")),
    ("", "hi1 80x9", (
        "thrusts 80x10. no hang on, 9. yes 9", "80x10, no 9, definitely 9", "80x10 no hang on 9. yep 9",
        "80x10... no, 9. 9 it was", "80x10. no 9. 9 for sure", "80x10. no wait, 9. final answer 9")),
    ("", "hi1 80x10; hi2 80x9; hi3 80x9", ("80x10. 9. 9", "80x10, 9, and another 9")),
    ("", "hi1 85x10", ("80 x 10... felt heavy for an 80. ah no it was 85, checked the plates",)),
    ("", "hi1 80x10", ("80x10. easy for a 6am session", "80 for 10 felt light for an 80")),
]  # fmt: skip
ASIDE: list[Meaning] = [
    ("", "ask", tuple(f"{said} thrusts 80x10 9" for said in (
        "thursday or friday, cant remember which,", "it was thursday or friday,", "either monday or tuesday:",
        "think it was tuesday, or maybe wednesday.", "tuesday/wednesday, cant remember:", "sat or sun,"))),
    ("", "hi1 80x10", (
        "80x10. can train thursday or friday next", "80x10, thursday or friday is fine for the next one",
        "thursday or friday i can make it. 80x10", "the gym is closed thursday or friday, not sure. 80x10")),
    ("", "m65; asks", (
        "i have 65 minutes, which ones matter most", "65 mins, which exercises matter most",
        "have 65 mins, which to cut")),
    ("", "hi1 80x10", ("80x10, the ones that matter most", "80x10. that one matters most")),
    ("", "ask", (
        "my friend told me the leg press is better so i did that one with 120 for 10",
        "someone said leg press is better so i did it with 120 for 10", "leg press was free so i did that one, 80x10",
        "a guy told me the leg extension is safer so i went with that, 80 for 10")),
    ("", "hi1 80x10", (
        "leg press is taken so did thrusts 80x10", "my mate was on the leg press so i did thrusts 80x10",
        "i hate the leg press so glad its thrusts 80x10")),
    ("", "ask", ("done 👌 legs wasted", "done 👍 legs wasted", "done 💪 im wrecked", "done 😅 glutes dead")),
    ("sl2", "sl3 90x20", ("done 👌 legs wasted", "done 💪 im wrecked")),
    ("", "end", ("all done 💪 see you friday",)),
    ("", "", (
        "pain in the neck finding parking, starting now", "parking was a pain in the neck",
        "this bar is a pain in the neck to load", "real pain in the neck finding a free bench")),
    ("", "pain", (
        "pain in the neck", "pain in the neck when i press", "pain in the neck finding a comfy position on the bench",
        "there is a pain in the neck finding it hard to turn my head", "the bar gave me a pain in the neck",
        "bar is a pain in the neck, literally, on squats", "pain in the neck to turn left")),
]  # fmt: skip


@pytest.mark.parametrize(
    ("done", "text", "wanted"),
    [(done, text, wanted) for done, wanted, texts in (*REASONS, *ASIDE) for text in texts],
)
def test_a_reason_beside_a_correction_and_what_stands_beside_a_report(done: str, text: str, wanted: str) -> None:
    _check(done, text, wanted, GYM, TOLD)
