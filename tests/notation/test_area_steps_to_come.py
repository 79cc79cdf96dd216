"""A step that is only proposed, a choice between two, a load to come, leave that is asked for: nothing of it was done.

The sets are those of the words; common practice, no source.
"""

import pytest

from tests.notation.plans import read, rows

Case = tuple[str, tuple[str, ...], bool, bool, tuple[str, ...], str | None]
"""A text, its sets, whether it is a question and whether it is asked about; what is done and under way."""

PROPOSED: list[Case] = [
    ("60x5 keep 60 for the last one?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5 💪 keep it at 60 for the last?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, too greedy to do the last one with 62.5?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. too soon to try 62.5 for the third?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. worth trying 62.5 for the third?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5 worth loading 65 on the last set?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, silly to jump to 65 for set 3?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. repeat 60 for the last?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5 drop to 55 for the last set?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5 add 2.5 for the 3rd?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5, ok to take 62.5 for the last one?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. stick with 60 for set 3?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5, crazy to put 65 on for the last?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5, mad to go 65 next?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5. risky to go to 62.5 for the last one?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5 😅 drop back to 57.5 for the last one?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, better to stay at 60 for the third?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. smart to keep 60 for the last one?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5 - would it be dumb to add 5 for the third?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5 wise to repeat 60 for the last?",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. 60 again or drop back to 55", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. 60 again or up to 62.5", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5, same again or go up to 62.5", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. 62.5 next or stay at 60", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5. another 60 or back off to 55",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. stay at 60 or go down to 57.5",
        ("Bench Press#2 60x5",),
        True,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5 62.5 for the last or hold 60", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. 60 once more or 62.5", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. 60 again or down to 55?", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. up to 65 or stay", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. repeat 60 or bump it up", ("Bench Press#2 60x5",), True, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5, kept 60 for the last one 5 reps",
        ("Bench Press#2 60x5", "Bench Press#3 60x5"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, kept 60 for the last one x5",
        ("Bench Press#2 60x5", "Bench Press#3 60x5"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5 and 60x5 again",
        ("Bench Press#2 60x5", "Bench Press#3 60x5"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, too ambitious to do the third with 62.5, got 4",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. 62.5x4 for the last one",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5 then 62.5x4, worth it",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
]


@pytest.mark.parametrize("case", PROPOSED)
def test_a_proposed_step_and_a_choice_ask_and_tell_no_set(case: Case) -> None:
    _check(case)


INTENDED: list[Case] = [
    (
        "60x5 felt nice. bumping to 62.5 for set 3",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, going up to 62.5 for the last one",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. gonna try 62.5 for the third",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. trying 65 next", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5. dropping to 55 for the last one",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. adding 2.5 for the last", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. sticking with 60 for set 3", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5 nice. will go 62.5 on the last",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. ill take 62.5 for set 3", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    ("60x5. loading 62.5 for the third", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5 moved well, moving up to 62.5 for set 3",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. about to try 62.5", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5, staying at 60 for the last one",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("60x5. putting 65 on for set 3", ("Bench Press#2 60x5",), False, False, ("Bench Press#1 60x5",), "Bench Press"),
    (
        "60x5, taking 62.5 for the next one",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. i am going to 62.5 for set 3",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. im bumping it to 62.5 for the third",
        ("Bench Press#2 60x5",),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. bumped to 62.5 for set 3, 4 reps",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5, going up to 62.5 for the last one, got 4",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. bumping to 62.5 for set 3, 62.5x4",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. bumping to 62.5 for set 3: 4",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    (
        "60x5. bumping to 62.5x4 for set 3",
        ("Bench Press#2 60x5", "Bench Press#3 62.5x4"),
        False,
        False,
        ("Bench Press#1 60x5",),
        "Bench Press",
    ),
    ("theres only a 70 lb bar free, do i use it for the 5s or wait for the 60?", (), True, False, (), None),
    ("all that is free is a 50 bar, should i use it for the 5s?", (), True, False, (), None),
    ("someone has the 60s, do i do the 55s instead or wait?", (), True, False, (), None),
    ("do i use the 70 for the 5s or wait for the 60", (), True, False, (), None),
]


@pytest.mark.parametrize("case", INTENDED)
def test_a_load_to_come_is_no_set_until_its_repetitions_are_told(case: Case) -> None:
    _check(case)


ASKED: list[Case] = [
    ("planks on elbows or on hands, what you prefer", (), True, False, (), None),
    ("chin ups overhand or underhand, what do you prefer", (), True, False, (), None),
    ("rows with a pause or without, which you want", (), True, False, (), None),
    ("bench with feet up or down, what would you rather", (), True, False, (), None),
    ("chin ups wide or narrow, what u prefer", (), True, False, (), None),
    ("split squats with front foot raised or flat, which is better", (), True, False, (), None),
    ("rows to the belly or to the chest, what you think", (), True, False, (), None),
    ("planks with one leg up or both down, your call", (), True, False, (), None),
    ("flies standing or lying, which one you like", (), True, False, (), None),
    ("deads with straps or without, what you say", (), True, False, (), None),
    ("pulldown with wide bar or with the close one, what suits me", (), True, False, (), None),
    ("rows with belt or no belt, what you recommend", (), True, False, (), None),
    ("i prefer planks on elbows", (), False, False, (), None),
    ("flies or planks, i dont care what you say", (), False, False, (), None),
    ("not what you prefer but i did my best", (), False, False, (), None),
    ("you prefer long sets, i know", (), False, False, (), None),
    ("ok to swap chin ups for the pulldown machine today", (), True, False, (), None),
    ("okay to swap rows for the machine today", (), True, False, (), None),
    ("fine to swap bench for dips today", (), True, False, (), None),
    ("ok to do dips instead of bench today", (), True, False, (), None),
    ("alright to trade rows for the t bar today", (), True, False, (), None),
    ("is it ok to switch the chin ups for a machine", (), True, False, (), None),
    ("cool to swap flies for the pec deck", (), True, False, (), None),
    ("mind if i swap the bench for push ups today", (), True, False, (), None),
    ("happy for me to swap rows for the machine", (), True, False, (), None),
    ("all right to leave flies for tomorrow", (), True, False, (), None),
    ("good to swap rows for dumbbells today", (), True, False, (), None),
    ("possible to swap chin ups for pulldowns", (), True, False, (), None),
    ("any problem swapping chin ups for the machine today", (), True, False, (), None),
    ("allowed to swap rows for the machine", (), True, False, (), None),
    ("swapped rows for the t bar today", (), False, True, (), None),
    ("swapped chin ups for the pulldown machine", (), False, True, (), None),
]


@pytest.mark.parametrize("case", ASKED)
def test_what_is_preferred_and_what_is_allowed_is_asked(case: Case) -> None:
    _check(case)


def _check(case: Case) -> None:
    text, stored, question, asks, done, current = case
    reading = read(text, *done, current=current)
    assert (reading.ask is not None) == asks
    assert reading.question == question
    assert reading.performed == rows(*stored)
    assert not reading.skipped
    assert reading.pain is None
