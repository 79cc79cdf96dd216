"""How many sets, told in any words, and how hard they were: grids whose answers are known by how they are made."""

from itertools import product

import pytest

from bot.notation.reading import Reading, Request, read_message
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import Performed, Side
from bot.training.units import Unit
from tests.notation.plans import NOW, row, sets

THRUST = (
    PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",)),
    PlannedExercise("Romanian Deadlift", sets("60", 8, 10), aliases=("rdl",)),
)
CLOSE = (PlannedExercise("Close-Grip Bench", sets("65", 6, 8), aliases=("cgbp",)),)
PULL = (PlannedExercise("Snatch-Grip Deadlift", sets("90", 4, 4, 5)),)

Session = tuple[PlannedExercise, ...]
Case = tuple[str, Session, str, str]

_ALIKE = ("across all three", "on all three", "all three the same", "every set the same", "same every set",
          "three sets of that", "in every set", "every time", "all the way through", "x3", "three times")  # fmt: skip
ALIKE: list[Case] = [
    (
        f"{head}, {tail}" if "same" in tail or "of that" in tail else f"{head} {tail}",
        CLOSE,
        "",
        "1 65x8, 2 65x8, 3 65x8",
    )
    for head, tail in product(("65 8s", "65x8", "65, 8 reps", "8 at 65"), _ALIKE)
]
_BOTH = ("65x8 on both", "8 at 65 both", "65x8, both the same", "65 8s, two sets of that", "65, 8 reps, two sets")
ALIKE += [(text, CLOSE, "1 65x8", "2 65x8, 3 65x8") for text in _BOTH]
_AGAIN = ("same same", ", ditto, ditto", ", same twice more", ", same 2x", ", and the same for the next two",
          ", same for the other two", ", two more of the same", ", same for sets 2 and 3",
          ", next two also")  # fmt: skip
AGAIN: list[Case] = [(f"65x8 {tail}".replace(" ,", ","), CLOSE, "", "1 65x8, 2 65x8, 3 65x8") for tail in _AGAIN]

_HEADS = ("did three sets of thrusts at 90, {}", "ok so i did the three sets of thrusts all at 90 kilos, {}",
          "thrusts: three sets, all at 90. {}", "did my 3 sets of thrusts. 90kg. {}",
          "i did thrusts with 90, three sets, {}")  # fmt: skip
_LISTS = ("10, 9 and 8", "10/9/8", "the first was 10 second 9 third 8", "first 10, second 9, third 8",
          "10 on the first, 9 on the second, 8 on the third", "set 1 10, set 2 9, set 3 8")  # fmt: skip
ANNOUNCED: list[Case] = [
    (head.format(told), THRUST, "", "1 90x10, 2 90x9, 3 90x8") for head, told in product(_HEADS, _LISTS)
]

_WHICH = ("65 - eights on the first two, 7 on the last", "65, 7 on the last, eights on the others",
          "65 8 on the others, 7 on the last", "65 eights but 7 on the last", "65 eights until the last one, 7",
          "eights on the first two and 7 on the last at 65", "65 8 first two, 7 last",
          "65 two sets of 8 and one of 7", "two sets of 8 at 65 and one set of 7")  # fmt: skip
WHICH: list[Case] = [(f"cgbp {text}", CLOSE, "", "1 65x8, 2 65x8, 3 65x7") for text in _WHICH]

_BETWEEN = ("somewhere between 7 and 8 rpe", "rpe between 7 and 8", "between rpe 7 and rpe 8", "7-8 rpe",
            "between 7 and 8 for effort", "rpe somewhere between seven and eight")  # fmt: skip
_LEFT = ("between 2 and 3 left", "rir between 2 and 3", "somewhere between 2 and 3 left")
BETWEEN: list[Case] = [
    (f"{head}, {tail}", THRUST, "", "1 90x10 rir 2.5")
    for head, tail in product(("thrusts 90x10", "90 for 10"), (*_BETWEEN, *_LEFT))
]

_EVERY = ("all at 9", "each @9", "every set at 9", "all three at 9", "rpe for all was 9", "all around 9",
          "rpe 9 the whole way", "all 1 rir", "all three felt like rpe 9")  # fmt: skip
EVERY: list[Case] = [
    (f"{head}, {tail}", THRUST, "", "1 90x10 rir 1, 2 90x9 rir 1, 3 90x8 rir 1")
    for head, tail in product(("thrusts 90 10,9,8", "90: 10 9 8"), _EVERY)
]
EVERY += [("10, 9, 8 all at 9", THRUST, "", "1 90x10 rir 1, 2 90x9 rir 1, 3 90x8 rir 1"),
          ("10, 9, 8 all at 85", THRUST, "", "1 85x10, 2 85x9, 3 85x8")]  # fmt: skip

_NEXT = ("next one @8 same weight", "second one @8", "then another @8", "next set same weight @8", "same load @8",
         "then again rpe 8", "next one was rpe 8")  # fmt: skip
NEXT: list[Case] = [(f"90x4 @7, {tail}", PULL, "", "1 90x4 rir 3, 2 90x4 rir 2") for tail in _NEXT]
NEXT += [("first 90x4 @7, second @8, third @9", PULL, "", "1 90x4 rir 3, 2 90x4 rir 2, 3 90x4 rir 1")]

BELLS = (PlannedExercise("Dumbbell Bench", sets("24", 8, 10), load_style=LoadStyle.PER_HAND),)
SPLITS = (PlannedExercise("Split Squat", sets("16", 8, 10), load_style=LoadStyle.PER_HAND, sides=2),)
SIX = (PlannedExercise("Step-Up", sets("16", 8, 8), load_style=LoadStyle.PER_HAND, sides=2),)
DIPS = (PlannedExercise("Assisted Dip", sets("-20", 6, 10), load_style=LoadStyle.BODYWEIGHT),)
TRIPLES = (PlannedExercise("Trap Bar Deadlift", sets("150", 5, 5), aliases=("trap bar",)),)

_OF_EACH = ("on each of the three", "on all of em", "in each of the three sets", "for each of the 3", "on three")
COUNTED: list[Case] = [
    (f"{head} 9 {tail}", THRUST, "", "1 90x9, 2 90x9, 3 90x9")
    for head, tail in product(("thrusts 90,", "90kg thrusts:", ""), _OF_EACH)
]
COUNTED += [
    (f"{head} {told}", THRUST, "", "1 90x10, 2 90x9, 3 90x8")
    for head, told in product(
        ("90kg thrusts.", "thrusts 90."),
        ("sets were 10, 9 and 8", "sets were 10 9 8", "sets: 10 9 8", "got 10, 9, 8"),
    )
]
COUNTED += [(text, THRUST, "", "1 90x10, 2 90x10, 3 85x9") for text in (
    "two sets with 90x10 and one with 85x9", "2 sets at 90x10, third at 85x9", "2 sets at 90x10, last one 85x9",
    "2 sets 90x10, 1 set 85x9")]  # fmt: skip
COUNTED += [("one set 90x10, two sets 85x10", THRUST, "", "1 90x10, 2 85x10, 3 85x10"),
            ("95x8 first set, 90x9 for the other two", THRUST, "", "1 95x8, 2 90x9, 3 90x9"),
            ("tens on the first two, eight on the last. all at 90", THRUST, "", "1 90x10, 2 90x10, 3 90x8"),
            ("did the three at 90, 10, 9, 8", THRUST, "", "1 90x10, 2 90x9, 3 90x8"),
            ("went 10/9/9 with 90", THRUST, "", "1 90x10, 2 90x9, 3 90x9"),
            ("thrusts 3 x 8 to 10 at 90, got 10 9 8", THRUST, "", "1 90x10, 2 90x9, 3 90x8"),
            ("65 for 3x7", CLOSE, "", "1 65x7, 2 65x7, 3 65x7")]  # fmt: skip

_TWO = ("two 24s", "both 24s", "2x24", "2 x 24kg", "24s in both hands")
HANDS: list[Case] = [
    (text.format(two), BELLS, "", told)
    for two, (text, told) in product(
        _TWO,
        (
            ("10 @ {}", "1 24x10"),
            ("10/9/8 with {}", "1 24x10, 2 24x9, 3 24x8"),
            ("10, 9, 8 @ {}", "1 24x10, 2 24x9, 3 24x8"),
        ),
    )
]
SIDED: list[Case] = [
    ("16x9 left then right", SPLITS, "", "1 16x9"),
    ("16 for 9 right and left", SPLITS, "", "1 16x9"),
    ("7 on my bad side (left)", SPLITS, "", "1 16x7 left"),
    ("only 6 on that leg, 9 on the right", SPLITS, "", "1 16x6 left, 1 16x9 right"),
]
HELPED: list[Case] = [(text, DIPS, "", "1 0x7") for text in ("no assist!! bw x 7", "no assist, bodyweight x7")]
HELPED += [("9, 8, then bw x 5", DIPS, "", "1 -20x9, 2 -20x8, 3 0x5")]
HELPED += [
    (text, DIPS, "", "1 -20x8, 2 -15x5")
    for text in ("assist 20kg 8 reps, with 15 only 5", "20 assist 8 reps, with 15 just 5")
]
RATED: list[Case] = [
    (f"{head}{tail}", THRUST, "", "1 90x10 rir 2, 2 90x9 rir 2")
    for head, tail in product(
        ("90x10, 90x9", "thrusts 90 10 and 9"), (". both rpe 8", ", both with 2 left", ". both were an 8", ", both @8")
    )
]
RATED += [("90x8, then 90x8. both rpe 9", THRUST, "1 90x10", "2 90x8 rir 1, 3 90x8 rir 1"),
          ("90x10, 90x10, rpe 8 then 9", THRUST, "", "1 90x10 rir 2, 2 90x10 rir 1"),
          ("two sets of 90x10, rpe 8 then 9", THRUST, "", "1 90x10 rir 2, 2 90x10 rir 1")]  # fmt: skip
RATED += [
    (f"trap bar {text}", TRIPLES, "", "1 150x3 rir 2")
    for text in ("triple 150, @8", "triple 150 rpe 8", "150, triple rpe 8")
]
RATED += [(text, THRUST, "1 90x10", "2 87.5x9") for text in ("87.5x9, took 2.5 off", "9 reps at 87,5, took 2,5 off")]

_OF_ALL = ("all at rpe 8", "all with 2 in the tank", "each one with 2 left", "2 in the tank on all of them",
           "rpe 8 across the board", "every set was rpe 8", "all felt like an 8")  # fmt: skip
_NAMED = ("10, 9, 8 on the thrusts", "ten nine and eight on the thrusts", "90x10, 90x9, 90x8 thrusts",
          "thrusts: 10, then 9, then 8")  # fmt: skip
OF_ALL: list[Case] = [
    (f"{head}, {tail}", THRUST, "", "1 90x10 rir 2, 2 90x9 rir 2, 3 90x8 rir 2")
    for head, tail in product(_NAMED, _OF_ALL)
]
OF_ALL += [
    (text, THRUST, "", "1 90x10 rir 2, 2 90x9 rir 2, 3 90x8 rir 2")
    for text in ("all at rpe 8. thrusts 90x10,9,8", "thrusts (all rpe 8): 90 10,9,8", "thrusts 90, all @8: 10, 9, 8",
                 "warmed up. thrusts 90 10 9 8 (2 in the tank each set)", "thrusts 90 10 9 8 all at 8.")
]  # fmt: skip
OF_ALL += [("thrusts 60x10 warmup, then 90 10,9,8 all rpe 9", THRUST, "",
            "0 60x10 warmup, 1 90x10 rir 1, 2 90x9 rir 1, 3 90x8 rir 1"),
           ("thrusts 90 10 9 all rpe 8-9", THRUST, "", "1 90x10 rir 1.5, 2 90x9 rir 1.5")]  # fmt: skip

_LAST_FAILED = ("failed the 9th on the third", "on the third failed the 9th", "third set failed the 9th",
                "last one failed the 9th", "failed rep 9 on the third", "third: failed the 9th", "then failed the 9th",
                "set 3 failed the 9th", "the 9th didn't come on the third", "third one died on the 9th",
                "third one got pinned on the 9th")  # fmt: skip
FAILED: list[Case] = [
    (f"{head} {tail}", THRUST, "", "1 90x10, 2 90x9, 3 90x8 rir 0")
    for head, tail in product(("thrusts 90 for 10, 9,", "10, 9 with 90,"), _LAST_FAILED)
    if tail != "then failed the 9th"
]
FAILED += [
    (f"thrusts {load}{talk}{tail}", THRUST, "", "1 92.5x8 rir 0")
    for load, talk, tail in product(
        ("92,5 kg", "92.5"), (". Too heavy! ", ". "), ("Failed the 9th.", "9th didnt go up")
    )
]
FAILED += [
    (f"thrusts 90x10, 90x8{effort}{tail}", THRUST, "", "1 90x10, 2 90x8 rir 0")
    for effort, tail in product(("", " rpe 10"), (" (9th stalled)", ", failed the 9th", " - the 9th stopped halfway"))
]
JUDGED: list[Case] = [
    (f"thrusts 90x10{tail}", THRUST, "", "1 90x10 rir 1")
    for tail in (", spotter reckons 1 left", ", my mate said rpe 9", ". he thinks i had one more", " (partner: 1 left)",
                 ", spotter says that was a 9")
]  # fmt: skip

_APART = ("left 10 right 9", "10 rep left and 9 rep right", "10 (L) 9 (R)", "10 reps left leg, 9 reps right leg",
          "10 reps with left and 9 reps with right", "left did 10 right did 9", "left 10, 9 on the right",
          "10/9")  # fmt: skip
_NEXT_BOTH = (", second set 9 each", ", other set 9 on both", ", then 9 each", ". second set 9 on both", ", 9 on both")
PAIRS: list[Case] = [
    (f"splits {apart}{then}", SPLITS, "", "1 16x10 left, 1 16x9 right, 2 16x9")
    for apart, then in product(_APART, _NEXT_BOTH)
]
PAIRS += [
    (text, SPLITS, "1 16x8", "2 16x8 left, 2 16x6 right")
    for text in ("same on the left, only 6 on the right", "left same, right 6", "left as before, right 6")
]
PAIRS += [("16s for 10 each first set, left 10 right 7", SPLITS, "", "1 16x10, 2 16x10 left, 2 16x7 right"),
          ("left 10, right failed the 9th", SPLITS, "", "1 16x10 left, 1 16x8 rir 0 right"),
          ("done both sides", SIX, "1 16x8", "2 16x8")]  # fmt: skip


def _read(text: str, session: Session, done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, session, tuple(_rows(session, done))))


def _rows(session: Session, told: str) -> list[Performed]:
    """`1 60x10`: sets of the first exercise."""
    return [row(f"{session[0].name}#{one}") for one in told.split(", ") if one]


@pytest.mark.parametrize(
    ("text", "session", "done", "told"),
    [
        *ALIKE,
        *AGAIN,
        *ANNOUNCED,
        *WHICH,
        *BETWEEN,
        *EVERY,
        *NEXT,
        *COUNTED,
        *HANDS,
        *SIDED,
        *HELPED,
        *RATED,
        *OF_ALL,
        *FAILED,
        *JUDGED,
        *PAIRS,
    ],
)
def test_the_sets_and_efforts_are_as_told(text: str, session: Session, done: str, told: str) -> None:
    """As many sets as are said, each with its own repetitions and effort."""
    reading = _read(text, session, done)
    assert reading.ask is None, reading.ask
    assert list(reading.performed) == _rows(session, told)
    assert not reading.replaces


TWO = (*THRUST, PlannedExercise("Leg Curl", sets("35", 8, 10)))
SEVERAL: list[tuple[str, bool]] = [
    *((f"thrusts 90 10 10 10, rdl 60 9 9 9{join}{tail}", True)
      for join, tail in product((", ", ". "), ("all at rpe 8", "every set rpe 8", "2 left on everything"))),
    *((f"thrusts 90 10 10 10, rdl 60 9 9 9 {tail}", False) for tail in ("all at rpe 8", "all with 2 in the tank")),
    ("thrusts 90 10 10 10. rdl 60 9 9 9, all rpe 8", False),
    ("thrusts 90 10 10 10\nrdl 60 9 9 9 all rpe 8", False),
    ("all rpe 8: thrusts 90 10 10 10, rdl 60 9 9 9", True),
]  # fmt: skip


@pytest.mark.parametrize(("text", "both"), SEVERAL)
def test_an_effort_of_all_reaches_as_far_as_it_stands_apart(text: str, both: bool) -> None:
    """Behind a comma or by itself it is of all exercises, straight behind a list of that list."""
    reading = _read(text, TWO, "")
    assert reading.ask is None, reading.ask
    assert [None if p.rir is None else int(p.rir) for p in reading.performed] == [2 if both else None] * 3 + [2] * 3


_PUT_RIGHT = ("set 2 was left 5 right 3", "second set was 5 left 3 right", "sorry, set 2 L5 R3",
              "sorry coach i did write it wrong, second set was left 5 right 3",
              "set 2 should be right 3 left 5")  # fmt: skip


@pytest.mark.parametrize("text", _PUT_RIGHT)
def test_both_sides_of_a_set_are_put_right(text: str) -> None:
    """`left 5 right 3` counts repetitions of each side, and none in reserve."""
    reading = _read(text, SPLITS, "1 16x8, 2 16x8")
    assert reading.ask is None, reading.ask
    assert reading.replaces == ((SPLITS[0].name, 2),)
    assert {(p.side, p.reps, p.rir) for p in reading.performed} == {(Side.LEFT, 5, None), (Side.RIGHT, 3, None)}


_TOLD = ("second and third both 65x8", "65x8 both", "65x8 twice", "65x8x2")
_RATED = ("second was rpe 8 third was rpe 9", "second was 8 third was rpe 9", "second was rpe 8, third was 9",
          "second rpe 8, third rpe 9")  # fmt: skip
_EACH = ("65x8x2 rpe 8 and 9", "65x8x2, rpe 8 then 9", "two sets of 65x8, rpe 8 and 9")
NUMBERED: list[Case] = [
    *((text, CLOSE, "1 65x8", "2 65x8 rir 2, 3 65x8 rir 1") for text in _EACH),
    *((f"{told}, {rated}", CLOSE, "1 65x8", "2 65x8 rir 2, 3 65x8 rir 1") for told, rated in product(_TOLD, _RATED)),
]


@pytest.mark.parametrize(("text", "session", "done", "stored"), NUMBERED)
def test_efforts_of_sets_by_their_number_in_the_exercise(text: str, session: Session, done: str, stored: str) -> None:
    """The second and the third, where the first is stored."""
    reading = _read(text, session, done)
    assert (reading.ask, list(reading.performed)) == (None, _rows(session, stored))


ASKED: list[tuple[str, Session, str]] = [
    ("thrusts 3 sets at 90, 10 9", THRUST, ""),
    ("thrusts 3 sets at 90, 10, 10, 10, 10", THRUST, ""),
    ("90x10 @7, 90x10 @8, second one @9", THRUST, ""),
    ("90x10x3 @7, second one @8", THRUST, ""),
    ("90 for between 8 and 9", THRUST, ""),
    ("90x10. or was it 85", THRUST, ""),
    ("90x10 maybe 85", THRUST, ""),
    ("90x10 @7. rpe 8", THRUST, ""),
    ("thrusts: did the three at 90, 10 then a 9", THRUST, ""),
    ("one side 10 other side 9 with 16", SPLITS, ""),
    ("20 20 and 5 each side so 90 total", THRUST, ""),
]


@pytest.mark.parametrize(("text", "session", "done"), ASKED)
def test_what_the_words_leave_open_is_asked(text: str, session: Session, done: str) -> None:
    """Another number of sets than is listed, and an effort of a set that has one, store nothing."""
    reading = _read(text, session, done)
    assert reading.ask is not None, reading.performed
    assert reading.performed == ()


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("three sets of six at seventy, last one at nine", (6, 1)),
        ("70 3x6, last one at a nine", (6, 1)),
        ("70x6x3, the last was a 9", (6, 1)),
        ("70x6x3, last one was about an 8", (6, 2)),
        ("70x6x3, last one at 72.5", (6, None)),
        ("70x10x3, last one was a 9", (9, None)),
        ("70x6x3, last one 9", (9, None)),
    ],
)
def test_the_last_one_at_nine_is_an_effort(text: str, last: tuple[int, int | None]) -> None:
    """More than the others had, behind `at` or `a`, it is no number of repetitions."""
    press = (PlannedExercise("Close-Grip Bench Press", sets("70", 6, 10), aliases=("close grip",)),)
    reading = read_message(Request(text, Unit.KG, NOW, press, ()))
    assert reading.ask is None
    assert [p.set for p in reading.performed] == [1, 2, 3]
    assert (reading.performed[-1].reps, reading.performed[-1].rir) == last
