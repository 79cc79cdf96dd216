"""Days of which the client is not sure, clocks and hours told beside sets, and talk whose numbers are no sets.

Each line stands with a set or alone; the wanted readings are those of a coach who knows the plan. Common practice, no
source.
"""

import pytest

from bot.notation.reading import AskKind
from tests.notation.plans import read, rows

SET = "60x5"
STORED = "Bench Press#1 60x5"


@pytest.mark.parametrize(
    "days",
    [
        "monday or tuesday, can't remember",
        "yesterday or the day before, can't remember which",
        "it was either monday or yesterday",
        "over the weekend or monday i think",
        "either monday or over the weekend",
        "did it yesterday or monday, no idea",
    ],
)
def test_one_of_two_days(days: str) -> None:
    """A report for one of two past days is asked about, and nothing is stored."""
    reading = read(f"{days}: {SET}")
    assert reading.ask is not None
    assert (reading.ask.kind, reading.performed, reading.day) == (AskKind.DAY, (), None)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("i did them in the park yesterday evening, 5, 5 and 4", "2026-03-03"),
        ("did this monday: 5, 5 and 4", "2026-03-02"),
        ("today was heavy, knee was sore on monday or tuesday. 5, 5, 4", None),
    ],
)
def test_day_of_what_was_done(text: str, day: str | None) -> None:
    """`did them yesterday` dates the sets that follow; a day of something else does not."""
    reading = read(text)
    assert (None if reading.day is None else reading.day.isoformat()) == day
    assert [p.reps for p in reading.performed] == [5, 5, 4]


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("have to pick up my son at 18:50 so i can only train until 18:30", 30),
        ("gym shuts at 18:40, have until 18:45", 40),
        ("until 18:30, gym shuts at 19:00", 30),
        ("got till quarter to seven then a meeting", 45),
        ("25 more min then ive got to get the kids", 25),
        ("20 more minutes then gotta go", 20),
        ("running late, ten min, dont wait up", None),
        ("running late, only got 30 min", 30),
        ("stuck in traffic, 15 min", None),
        ("rest 3 min then i have to go heavy", None),
    ],
)
def test_minutes_there_are(text: str, minutes: int | None) -> None:
    """The time that is left for the session: the sooner of two ends, and not the time until one is there."""
    reading = read(text)
    assert (reading.minutes, reading.performed, reading.ask) == (minutes, (), None)


@pytest.mark.parametrize(
    "talk",
    [
        "was supposed to sleep 8 hours, got 5",
        "slept 8 hours, got 5",
        "just me and the cleaner in here tonight",
        "my right hand has gone completely numb, dropped my bottle twice",
        "right hip is nipping when i set up, 2 out of 10",
    ],
)
def test_numbers_of_talk(talk: str) -> None:
    """What talk counts is no set: not the hours slept, not how often a bottle fell, not a score."""
    for text in (f"{SET}. {talk}", f"{talk}. {SET}"):
        reading = read(text)
        assert (reading.ask, reading.performed) == (None, rows(STORED)), text
    assert read(talk).performed == ()


@pytest.mark.parametrize(
    "text",
    [
        "60x5, and please i want to know, the back must be flat all time?",
        "60x5, the back must be flat all the time?",
        "60x5, dont know what weight to use next",
    ],
)
def test_asks(text: str) -> None:
    """A question beside a set is one, however it is worded."""
    reading = read(text)
    assert (reading.question, reading.performed) == (True, rows(STORED))


@pytest.mark.parametrize("text", ["60x5, not sure what weight it was", "60x5, dont know what plates"])
def test_not_known(text: str) -> None:
    """What the client does not know of a set is no question to the coach."""
    reading = read(text)
    assert (reading.question, reading.performed) == (False, rows(STORED))


def test_far_too_few() -> None:
    """A bare count of less than half of what is asked counts something else more often than not; told with its load,
    or with the set's number, it is kept."""
    assert read("1").ask is not None
    assert read("60x1").performed == rows("Bench Press#1 60x1")


WHERE = ("at the park", "in the garage", "at my cousins place", "outside", "in the hotel gym", "before lunch")


@pytest.mark.parametrize("where", WHERE)
@pytest.mark.parametrize("text", ["bench was yesterday {}, 60x5", "60x5, yesterday {}", "60x5 (yesterday {})",
                                  "did bench yesterday {}: 60x5", "those are from yesterday {}: 60x5"])  # fmt: skip
def test_a_day_with_its_place(where: str, text: str) -> None:
    """Where it was done that day changes nothing."""
    reading = read(text.format(where))
    assert (reading.ask, reading.performed) == (None, rows(STORED))
    assert reading.day is not None
    assert reading.day.isoformat() == "2026-03-03"


@pytest.mark.parametrize(
    "question",
    ["wuts a good cue for curls", "whats the pt of curls anyway", "how i know with which weight to begin",
     "y do we do curls", "why curls", "got any cues for curls", "what muscle is it for", "which attachment for curls",
     "how long rest between sets", "lmk if i should go heavier", "need some advice on curls", "normal to feel it here",
     "not sure why we do curls", "confused what rir means", "dumb question but what is rir", "what you mean with rir",
     "how i must hold the handles", "shouldnt i be going heavier by now", "opinion on straps"],
)  # fmt: skip
def test_asks_without_a_mark(question: str) -> None:
    """A question in slang or in another tongue's order is one, alone and beside a set, which it does not name."""
    for form, wanted in (("{}", ()), (f"{SET}, {{}}", rows(STORED)), (f"yo {{}}, also {SET}", rows(STORED))):
        reading = read(form.format(question))
        assert (reading.ask, reading.question, reading.performed) == (None, True, wanted), form


@pytest.mark.parametrize("text", ["60x5, which i should rate an 8", "60x5, back to normal", "60x5, a tip jar"])
def test_asks_nothing(text: str) -> None:
    """Words of a question within a report ask nothing."""
    assert read(text).question is False
