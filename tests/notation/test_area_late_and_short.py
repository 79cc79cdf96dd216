"""The day of a late report and the time that there is, each told in a clause of its own; and what only sounds like it.

From memory, no source. The messages come on a Wednesday.
"""

import pytest

from tests.notation.plans import read, row

YESTERDAY = "2026-03-03"
STORED = "Bench Press#1 60x5"


@pytest.mark.parametrize("day", [("yesterday", YESTERDAY), ("monday", "2026-03-02")])
@pytest.mark.parametrize(
    "told",
    [
        "belated report from {}: bench 60x5",
        "late one for {}, bench 60x5",
        "forgot to send you {}, bench 60x5",
        "adding to {}: bench 60x5",
        "these belong to {}, bench 60x5",
        "an addendum to {}: bench 60x5",
        "bench 60x5, should be under {}",
        "bench 60x5. Log it under {}",
        "bench 60x5 - that's for {}",
        "bench set from {}: 60x5",
        "better late than never, bench 60x5 {}",
        "battery was flat {} so here it is: bench 60x5",
        "did it in the park {}, only typed today: bench 60x5",
    ],
)
def test_a_late_report(told: str, day: tuple[str, str]) -> None:
    """The set is that day's."""
    reading = read(told.format(day[0]))
    assert reading.performed == (row(STORED),)
    assert reading.day is not None
    assert reading.day.isoformat() == day[1]


@pytest.mark.parametrize("told", ["monday a week ago: bench 60x5", "last week monday i did bench 60x5"])
def test_a_weekday_of_the_week_before(told: str) -> None:
    """Not the last one, where that is of this week."""
    reading = read(told)
    assert reading.day is not None
    assert (reading.performed, reading.day.isoformat()) == ((row(STORED),), "2026-02-23")


@pytest.mark.parametrize(
    "text",
    [
        "felt better than yesterday, bench 60x5",
        "sore from yesterday, bench 60x5",
        "slept badly yesterday, bench 60x5",
        "bench 60x5, legs still dead from yesterday",
        "had a session with the physio yesterday, bench 60x5",
        "the workout from yesterday left me sore, bench 60x5",
        "the message from yesterday helped, bench 60x5",
        "trained legs yesterday, so bench 60x5",
        "back from yesterday's trip, bench 60x5",
    ],
)
def test_a_day_of_something_else(text: str) -> None:
    """The set is today's."""
    reading = read(text)
    assert (reading.performed, reading.day) == ((row(STORED),), None)


SHORT = (
    "my ride comes in 25 minutes", "the babysitter leaves in 25 mins", "the class needs the room in 25 min",
    "meter runs out in 25 minutes", "they lock up in twenty five minutes", "in 25 minutes my bus leaves",
    "i need to be at the office in 25 min", "in 25 min i have to collect the kids", "i'm yours for 25 minutes",
    "i can spare another 25 minutes", "25 minutes remain for me", "not more than 25 minutes today",
    "25 mins and then i have to leave", "hard stop in 25 minutes", "i turn into a frog in 25 minutes",
)  # fmt: skip


@pytest.mark.parametrize("frame", ["{}", "60x5, {}", "{}. 60x5"])
@pytest.mark.parametrize("told", SHORT)
def test_the_time_that_there_is(told: str, frame: str) -> None:
    """By what ends it, or who waits; the set beside it is kept."""
    reading = read(frame.format(told), STORED, current="Bench Press")
    assert reading.minutes == 25
    assert not reading.finished
    assert reading.performed == ((row("Bench Press#2 60x5"),) if "60x5" in frame else ())


@pytest.mark.parametrize("told", ["1/2 hour left", "a half hour stays for me", "no longer than half an hour now"])
def test_half_an_hour(told: str) -> None:
    """In all its spellings."""
    assert read(told, STORED).minutes == 30


@pytest.mark.parametrize(
    "text",
    [
        "back in 20 minutes",
        "starting in 20 minutes",
        "be there in 20 minutes",
        "rested 5 minutes",
        "bus was 20 minutes late",
        "session took 20 minutes",
        "waited 20 min for the rack",
        "i was here for 20 minutes",
        "i'm here in 20 minutes",
        "next set in 5 minutes",
        "are you free in 20 minutes?",
        "only 20 minutes late",
    ],
)
def test_a_time_of_something_else(text: str) -> None:
    """A rest, the way there, what was done: no limit."""
    assert read(text, STORED).minutes is None
