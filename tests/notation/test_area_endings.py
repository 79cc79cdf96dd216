"""The end of a session told in a clause of its own, with sets or alone; and what only sounds like it.

From memory, no source.
"""

import pytest

from tests.notation.plans import read, row

STORED = "Bench Press#1 60x5"
ENDS = (
    "closing out the session here", "terminated today's training", "wrapping up my workout now",
    "finishing up for the day", "drawing a line under today", "calling time on the session", "i end here for today",
    "quitting for tonight", "for today i finish the training", "training is concluded", "party's over for tonight",
    "my workout has come to a close", "session's in the bank", "that was the final set of my session",
    "this completes today's workout", "that rounds off the session", "that's where my workout finishes",
    "enough lifting for one evening", "on my way to the car", "heading to the showers", "already under the shower",
    "walking home now", "my kit is packed", "packed my stuff away", "clocking off", "roll the credits", "fertig",
    "alles fertig", "c'est tout", "session finito", "nothing left on the list", "no exercises left today",
    "made it to the end of the plan", "everything on the list is ticked off", "hanging up the belt for tonight",
    "please mark the session as complete",
)  # fmt: skip


@pytest.mark.parametrize("frame", ["60x5 and {}", "60x5. {}", "{}, 60x5", "60x5, {}, thanks coach"])
@pytest.mark.parametrize("end", ENDS)
def test_ends_beside_a_set(end: str, frame: str) -> None:
    """The set is kept, and the session is over."""
    reading = read(frame.format(end), STORED, current="Bench Press")
    assert (reading.performed, reading.finished) == ((row("Bench Press#2 60x5"),), True)


@pytest.mark.parametrize("end", ENDS)
def test_ends_alone(end: str) -> None:
    """No set, and the session is over."""
    reading = read(end, STORED)
    assert (reading.performed, reading.finished, reading.ask) == ((), True, None)


@pytest.mark.parametrize("end", ["hitting the road", "off i trot", "out the door", "i'm gone", "walking out"])
def test_leaving_ends_beside_a_set(end: str) -> None:
    """Who leaves behind a set has done; alone it may be the way to the gym."""
    assert read(f"60x5 and {end}", STORED, current="Bench Press").finished
    assert not read(f"{end} to the gym").finished


@pytest.mark.parametrize("told", ["calling it a night after 60x5", "bowing out on 60x5", "i'll finish on that: 60x5"])
def test_the_set_that_it_ends_with(told: str) -> None:
    """The last set stands behind the words that end."""
    reading = read(told, STORED, current="Bench Press")
    assert (reading.performed, reading.finished) == ((row("Bench Press#2 60x5"),), True)


@pytest.mark.parametrize(
    "text",
    [
        "my mate is wrapping up his workout",
        "can i finish the session tomorrow?",
        "have to finish early today",
        "need to stop the session at seven",
        "i'll finish up the rows first",
        "not finishing the session yet",
        "should i end the session here?",
        "when the session is over i stretch",
        "game over on that last rep",
        "the gym is closed today",
        "heading out the door to the gym",
        "on my way home from work, training at 6",
        "got to the end of the set",
        "took my belt off",
        "had enough of lunges for today",
        "going home for christmas",
        "it's over, is it?",
        "is the session over?",
    ],
)
def test_no_end(text: str) -> None:
    """Others, other days, what is to come, a question, a set or an exercise: the session goes on."""
    assert not read(text, STORED, current="Bench Press").finished
