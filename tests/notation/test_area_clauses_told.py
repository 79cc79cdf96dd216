"""What whole clauses beside a set tell: what was left, the next repetition missed, a load spoken of, other numbers.

Each row is a class of wordings, not one text: what was left in reserve (`none to spare`, `kept a pair back`), a
repetition that did not come (`the next one pinned me`), the planned load as the reason for another (`60 felt grim`),
and counts of things, hours, ages and ways. The second tables hold near ones that tell something else. No source.
"""

import pytest

from tests.notation.plans import read, rows

RESERVE: tuple[tuple[str, str], ...] = (
    # typed behind `60x5`, effort stored
    (", none to spare", "0"),
    (" with nothing to spare", "0"),
    (", zero reps remaining", "0"),
    (", there were no reps left in there", "0"),
    (", tank totally drained", "0"),
    (" and the tank was bone dry", "0"),
    (". I was out of reps", "0"),
    (" - another one was out of the question", "0"),
    (", a sixth would not have gone", "0"),
    (", no chance of a further rep", "0"),
    (", in reserve: nothing", "0"),
    (" (reps left: zero)", "0"),
    (", remaining reps 0", "0"),
    (", nothing more would come", "0"),
    (", couldn't have pressed a sixth", "0"),
    (", not a single one more", "0"),
    (", that was all I had in me", "0"),
    (", next one would have failed", "0"),
    (", spare: 2", "2"),
    (", had another two in me", "2"),
    (", left a couple in there", "2"),
    (", saved two for later", "2"),
    (" with a couple of reps in hand", "2"),
    (", 7 would have been my max", "2"),
    (", I think 7 was the limit", "2"),
    (", I could have got seven", "2"),
    (", I could have done 2 reps more", "2"),
    (", good for another 2", "2"),
    (", failure was 2 reps away", "2"),
    (", an 8 on the effort scale", "2"),
    (", about a 9 on the rpe scale", "1"),
    (", could have done the sixth easily", "1"),
)
NO_RESERVE = (
    "no tank top today. 60x5",
    "60x5, left the belt in the bag",
    "60x5, the tank top is empty of sweat",
    "hips a bit stiff, nothing more. 60x5",
)
MISSED = (
    "60x5, tried a sixth, no chance, bar came back down",
    "60x5 then pinned by the sixth, safeties caught it",
    "five at 60, the next one failed",
    "five at 60, missed the subsequent rep",
    "60 x 5, 6. rep failed",
    "60 for 5, rep number 6 stopped halfway",
    "60x5 and on the 6th my spotter had to help",
    "60kg 5 reps, went for another one but the bar sank back to my chest",
    "60 for 5. Sixth just rolled back onto me",
    "60x5, the 6th needed rescuing",
    "60x5 - six got stuck",
    "60x5, bar would not move for the sixth",
    "60x5, next rep: fail",
    "60x5, wanted 6 but it got stuck",
)
NOT_MISSED = (
    "60x5, didn't risk a sixth",
    "60x5, the 6th would be for next week",
    "60x5, another guy helped me rack it",
    "60x5, my mate failed his sixth",
    "60x5, left my phone on the sixth bench",
)
SPOKEN_OF: tuple[tuple[str, tuple[str, ...], str], ...] = (
    # typed, done before, stored
    ("57.5x5, 60 was too much today", (), "Bench Press#1 57.5x5"),
    ("57.5x5, 60 felt grim", (), "Bench Press#1 57.5x5"),
    ("57.5 for 5, I was shaky at 60", (), "Bench Press#1 57.5x5"),
    ("57.5x5, couldn't face 60 today", (), "Bench Press#1 57.5x5"),
    ("57.5x5 because 60 is scary", (), "Bench Press#1 57.5x5"),
    ("57.5 for 5, didn't trust myself with 60", (), "Bench Press#1 57.5x5"),
    ("sixty felt impossible so 57.5 for 5", (), "Bench Press#1 57.5x5"),
    ("57.5, five reps, because 60 felt like 100", (), "Bench Press#1 57.5x5"),
    ("57.5x5, 2.5 under plan", (), "Bench Press#1 57.5x5"),
    ("57.5x4, that first five cost me", ("Bench Press#1 60x5",), "Bench Press#2 57.5x4"),
    ("57.5x4 since the first set killed me", ("Bench Press#1 60x5",), "Bench Press#2 57.5x4"),
    ("57.5 for 4, after the first at 60 I was cooked", ("Bench Press#1 60x5",), "Bench Press#2 57.5x4"),
    ("2nd set chickened out of 60 and took 57.5 for 4", ("Bench Press#1 60x5",), "Bench Press#2 57.5x4"),
    ("next set four reps", ("Bench Press#1 60x5",), "Bench Press#2 60x4"),
    ("60x7, all seven done", (), "Bench Press#1 60x7"),
    ("60x5, exact copy of the first", ("Bench Press#1 60x5",), "Bench Press#2 60x5"),
)
TWO_SETS = (
    "60x5, then 57.5 for 5",
    "60x5. 57.5 went well for 5",
    "60x5, 57.5x5",
)
BESIDE = (
    "60x5, 18:42 on the clock",
    "60x5, it is 7:15 already and the place is empty",
    "60x5, all 4 platforms are full",
    "60x5, gym has 6 racks and 5 are taken",
    "60x5, the bar next to me has 120 on it",
    "60x5 with my 3 year old watching",
    "60x5, I'm 47 after all",
    "60x5, not bad for 52",
    "Woke at 4:50, gym by 5:30. 60x5",
    "60x5, 1.5 l of water gone",
    "60x5 on bench number 4",
    "60x5, queue of 5 at the rack",
)
TALK = (
    "On bus 48, there in 10",
    "be there in 20",
    "Parking was 9 euros! Nine!",
    "3 of the 4 racks are taken",
    "4 to 6 reps, understood",
    "three sets of 4 to 6, ok will do",
    "scale here is off by 3 kilos",
    "guys next to me load 4 plates a side",
    "my son (7) drew 3 dumbbells for you",
)


@pytest.mark.parametrize(("behind", "left"), RESERVE, ids=[r[0] for r in RESERVE])
def test_reserve(behind: str, left: str) -> None:
    """What a clause says of what was left is the set's effort."""
    reading = read(f"60x5{behind}", current="Bench Press")
    assert reading.ask is None
    assert reading.performed == rows(f"Bench Press#1 60x5 rir {left}")


@pytest.mark.parametrize("text", NO_RESERVE)
def test_no_reserve(text: str) -> None:
    """Other talk of tanks, bags and more is no effort."""
    assert read(text, current="Bench Press").performed == rows("Bench Press#1 60x5")


@pytest.mark.parametrize("text", MISSED)
def test_missed(text: str) -> None:
    """The repetition behind the last one, told as one that did not come: to failure."""
    reading = read(text, current="Bench Press")
    assert (reading.ask, reading.pain) == (None, None)
    assert reading.performed == rows("Bench Press#1 60x5 rir 0")


@pytest.mark.parametrize("text", NOT_MISSED)
def test_not_missed(text: str) -> None:
    """What was not tried, or was somebody else's, tells of no failure."""
    assert read(text, current="Bench Press").performed == rows("Bench Press#1 60x5")


@pytest.mark.parametrize(("text", "done", "stored"), SPOKEN_OF, ids=[s[0] for s in SPOKEN_OF])
def test_spoken_of(text: str, done: tuple[str, ...], stored: str) -> None:
    """A load or a set that is only spoken of is stored no second time."""
    reading = read(text, *done, current="Bench Press")
    assert (reading.ask, reading.replaces) == (None, ())
    assert reading.performed == rows(stored)


@pytest.mark.parametrize("text", TWO_SETS)
def test_two_sets(text: str) -> None:
    """A second load that was lifted stays a second set."""
    assert len(read(text, current="Bench Press").performed) == 2


@pytest.mark.parametrize("text", BESIDE)
def test_numbers_beside(text: str) -> None:
    """A number of things, hours, years or other people's loads is no part of a set."""
    reading = read(text, current="Bench Press")
    assert (reading.ask, reading.pain) == (None, None)
    assert reading.performed == rows("Bench Press#1 60x5")


@pytest.mark.parametrize("text", TALK)
def test_talk(text: str) -> None:
    """Numbers of talk alone store and ask nothing."""
    reading = read(text, current="Bench Press")
    assert (reading.ask, reading.performed, reading.minutes) == (None, (), None)
