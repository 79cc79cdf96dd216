"""Kit and weights that are only spoken of: loads on the rack, a pin that sticks, plates by colour, what one feels like.

The sets are those of the words; common practice, no source.
"""

import pytest

from tests.notation.plans import read, rows

Case = tuple[str, tuple[str, ...], bool, bool, tuple[str, ...], str | None]
"""A text, its sets, whether it is a question and whether it is asked about; what is done and under way."""

LIKENED: list[Case] = [
    ("i feel about 300 pounds after that lunch lol", (), False, False, (), None),
    ("i feel like 200 kilos today", (), False, False, (), None),
    ("feeling like i weigh 150 kg after that breakfast", (), False, False, (), None),
    ("arms like two 40 kilo sacks of spuds and i havent touched a bar yet", (), False, False, (), None),
    ("legs feel like 100 kilo bags of cement", (), False, False, (), None),
    ("my arms weigh 50 kg each this morning", (), False, False, (), None),
    ("the bar of only 20 kilos is today like an elephant", (), False, False, (), None),
    ("20 kilo bar feels like 200", (), False, False, (), None),
    ("the 20 kg bar feels like 100 today", (), False, False, (), None),
    ("the twenty kilo bar weighs more than my car", (), False, False, (), None),
    ("even the 20 kilo bar is heavy at this hour", (), False, False, (), None),
    ("the empty 20 kg bar is like a truck", (), False, False, (), None),
    ("i weigh about 200 kilos after that pizza", (), False, False, (), None),
    ("body feels like a 120 kg sandbag", (), False, False, (), None),
    ("my gym bag weighs 20 kilos", (), False, False, (), None),
    ("my backpack is 15 kg today lol", (), False, False, (), None),
    ("the bar with only 20 kilos is killing me like an elephant", (), False, False, (), None),
    ("the 20 kg bar seems heavier than a house", (), False, False, (), None),
    ("feet like 50 lb anchors", (), False, False, (), None),
    ("head like a 20 kg ball", (), False, False, (), None),
    ("60x5 but i feel about 300 pounds after lunch", ("Bench Press#1 60x5",), False, False, (), None),
    ("60x5 arms like two 40 kilo sacks", ("Bench Press#1 60x5",), False, False, (), None),
    ("60x5, my hands are 2 feet wide now", ("Bench Press#1 60x5",), False, False, (), None),
    ("60x5 legs weigh 100 kilos each now haha", ("Bench Press#1 60x5",), False, False, (), None),
    ("60x5, the 20 kg bar weighs more than my car", ("Bench Press#1 60x5",), False, False, (), None),
    ("60x5 arms are 10 feet long now", ("Bench Press#1 60x5",), False, False, (), None),
    ("60 feels like 200, 5 reps", ("Bench Press#1 60x5",), False, False, (), None),
    ("60 kg x 5 feels like 200", ("Bench Press#1 60x5",), False, False, (), None),
    ("bench 60 for 5 felt like an elephant", ("Bench Press#1 60x5",), False, False, (), None),
    ("60 kilos for 5 and i feel about 90 years old", ("Bench Press#1 60x5",), False, False, (), None),
    ("warm up 20 kg bar x 10, feels like 200", ("Bench Press#0 20x10 warmup",), False, False, (), None),
]


@pytest.mark.parametrize("case", LIKENED)
def test_a_weight_that_something_feels_like_is_no_load(case: Case) -> None:
    _check(case)


KIT: list[Case] = [
    (
        "only the 10s and 20s are on the rack, waiting for the 16s to come back",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "only the 5s and 20s are left, waiting for the 10s",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "the 12s and 14s are on the rack, no 10s",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "just the 8s and 14s here, waiting on the 10s",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "the 10s are gone, only 8s and 12s left",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "nothing but 8s and 14s on the rack right now",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "waiting for the 10s to come free",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "somebody has the 10s, waiting",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "all thats left on the rack are the 6s and 20s",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "queueing for the 10s",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "someone walked off with the 10s, waiting for them to come back",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "there are only 8s and 14s, looking for the 10s",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "looking for the other 10",
        (),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "only the 12s and 20s are on the rack, 12s x 10",
        ("Chest Fly#1 12x10",),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "10s were gone, 12s x 10",
        ("Chest Fly#1 12x10",),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "only 12s and 20s left so did 12s x 10",
        ("Chest Fly#1 12x10",),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    (
        "waiting for the 10s got boring, 12s x 10",
        ("Chest Fly#1 12x10",),
        False,
        False,
        ("Bench Press#1 60x5", "Bench Press#2 60x5", "Bench Press#3 60x5"),
        "Chest Fly",
    ),
    ("pin is stuck at 55 on the pulldown, getting someone from the desk", (), False, False, (), None),
    ("pin stuck at 55, getting help", (), False, False, (), None),
    ("the pin got stuck at 55 on the lat pulldown", (), False, False, (), None),
    ("the stack is jammed at 55 on the pulldown, asking the desk", (), False, False, (), None),
    ("the pulldown is stuck at 55", (), False, False, (), None),
    ("pin wont come out of 55 on the pulldown, fetching someone", (), False, False, (), None),
    ("somebody left the pin at 55 on the pulldown", (), False, False, (), None),
    ("pulldown machine broke with the pin at 55", (), False, False, (), None),
    ("the pin is bent at 55 on the pulldown, telling the staff", (), False, False, (), None),
    ("cable jammed at 55 on the pulldown", (), False, False, (), None),
    ("the pushdown pin is stuck in the 25 hole", (), False, False, (), None),
    ("pin keeps slipping out at 55", (), False, False, (), None),
    ("pin is stuck at 55 on the pulldown, did 55x10", ("Lat Pulldown#1 55x10",), False, False, (), None),
    ("pin stuck at 55 so pulldown 55x10", ("Lat Pulldown#1 55x10",), False, False, (), None),
    ("pulldown 55x10, pin got stuck at 55", ("Lat Pulldown#1 55x10",), False, False, (), None),
    ("pulldown got stuck at 55, 10 reps", ("Lat Pulldown#1 55x10",), False, False, (), None),
]


@pytest.mark.parametrize("case", KIT)
def test_what_is_on_the_rack_or_stuck_is_no_load_where_nothing_was_done_with_it(case: Case) -> None:
    _check(case)


PLATES: list[Case] = [
    ("putting 2 reds and a green on each side, weird colours here", (), False, False, (), "Bench Press"),
    ("loading 2 reds and a blue a side, no numbers on these", (), False, False, (), "Bench Press"),
    ("two reds and a green each side on the bar here", (), False, False, (), "Bench Press"),
    ("their plates are 2 reds and 3 blues, odd", (), False, False, (), "Bench Press"),
    ("got 2 greens and a yellow on each side, confusing", (), False, False, (), "Bench Press"),
    ("sticking 2 blues and 1 red on each end", (), False, False, (), "Bench Press"),
    ("these plates have no numbers, 2 reds and a white a side i think", (), False, False, (), "Bench Press"),
    ("stacking 3 blues a side, weird kit", (), False, False, (), "Bench Press"),
    ("no idea what 2 reds and a green weigh", (), False, False, (), "Bench Press"),
    ("putting on 2 blues per side", (), False, False, (), "Bench Press"),
    ("left his 6 plates on the bar so thats 60 x 5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("some guy left his 4 plates on the bar, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("took his 6 plates off first, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("someone left 6 plates on the bar, stripped it, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("he left 4 plates on so i used them, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("left her 2 plates on the bar, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("kept his 4 plates on, thats 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("used their 6 plates, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("unloaded his 8 plates, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("cleared 8 plates off the bar, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("moved somebodys 6 plates, 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("2 reds a side so 60x5", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("60x5, thats 2 reds a side", ("Bench Press#1 60x5",), False, False, (), "Bench Press"),
    ("60, 2 reps", ("Bench Press#1 60x2",), False, False, (), "Bench Press"),
    ("60 x 2 reds face", ("Bench Press#1 60x2",), False, False, (), "Bench Press"),
]


@pytest.mark.parametrize("case", PLATES)
def test_plates_by_colour_and_those_of_others_are_no_repetitions(case: Case) -> None:
    _check(case)


def _check(case: Case) -> None:
    text, stored, question, asks, done, current = case
    reading = read(text, *done, current=current)
    assert (reading.ask is not None) == asks
    assert reading.question == question
    assert reading.performed == rows(*stored)
    assert not reading.skipped
    assert reading.pain is None
