"""Exercises left out in a clause of its own, alone and beside a set, by name or as `the rest` in all its wordings.

From memory, no source.
"""

import pytest

from tests.notation.plans import SESSION, read, row

STORED = ("Bench Press#1 60x5", "Bench Press#2 60x5")
ALL = tuple(e.name for e in SESSION)

NAMED = (
    "ditching the {}", "{} get the axe", "you may strike {} off the list", "let's leave out {} today",
    "going to give the {} a miss", "{}: hard pass", "{} are out of the question today", "wriggling out of {} tonight",
    "you won't see any {} from me today", "{} I do not make today", "{}, count me out", "count the {} out",
    "tonight without {}", "none of the {} today", "saying no to {} today", "cross {} off", "{} will have to wait",
    "{} can get stuffed", "struck the {} off my list today", "not starting the {} today", "sorry, {} are cancelled",
    "I dodge the {} today", "no energy to do the {}",
)  # fmt: skip


@pytest.mark.parametrize("told", NAMED)
def test_a_name_is_left_out(told: str) -> None:
    """The exercise that is named, and no other."""
    assert read(told.format("chest flys"), *STORED, current="Bench Press").skipped == ("Chest Fly",)


@pytest.mark.parametrize("told", NAMED)
def test_a_name_is_left_out_beside_a_set(told: str) -> None:
    """The set is that of the exercise under way, and not of the name behind it."""
    reading = read(f"60x5. {told.format('chest flys')}", *STORED, current="Bench Press")
    assert (reading.performed, reading.skipped) == ((row("Bench Press#3 60x5"),), ("Chest Fly",))


def test_several_names() -> None:
    """A list of them."""
    reading = read("you can strike the split squats, the chest flys and the planks today", *STORED)
    assert set(reading.skipped) == {"Split Squat", "Chest Fly", "Plank"}


WHOLE = (
    "drop everything that is still open", "cross out the rest of the list", "the outstanding exercises I leave out",
    "I omit whatever remains on the plan", "everything still on the sheet is cancelled", "whatever's left gets skipped",
    "all remaining exercises are dropped today", "not doing any of the remaining exercises", "the remainder I skip",
    "binning the rest of today's session", "what remains of the session is skipped", "ditching all the rest",
    "none of the remaining exercises for me today", "the rest falls away today", "sorry, all that is left has to wait",
    "forgoing the rest of my workout", "everything else can wait", "bin what is still to come today",
)  # fmt: skip


@pytest.mark.parametrize("told", WHOLE)
def test_the_rest_is_left_out(told: str) -> None:
    """All exercises with sets left."""
    assert read(told, *STORED).skipped == ALL


@pytest.mark.parametrize("told", WHOLE)
def test_the_rest_beside_a_set(told: str) -> None:
    """All but the exercise whose last set is told."""
    reading = read(f"60x5. {told}", *STORED, current="Bench Press")
    assert (reading.performed, reading.skipped) == ((row("Bench Press#3 60x5"),), ALL[1:])


@pytest.mark.parametrize(
    "told",
    [
        "nothing after the pulldowns today",
        "everything below the pulldowns is off",
        "not doing anything after pulldowns",
    ],
)
def test_all_after_a_name(told: str) -> None:
    """What stands behind it in the plan."""
    assert read(told, *STORED).skipped == ALL[4:]


@pytest.mark.parametrize(
    "text",
    [
        "should i skip the chest flys?",
        "my mate skipped chest flys today",
        "not skipping the chest flys today",
        "will drop the rest to 60 seconds",
        "chest flys next",
        "i left the chest flys for last",
        "can we drop the chest flys next week?",
        "can the rest be skipped?",
        "everything after rows felt heavy",
        "i did not skip the chest flys",
        "the rest was hard",
        "the rest is still to come",
        "everything else is fine",
        "what's left for today?",
        "rest of the session went well",
        "leaving the chest flys for the end",
        "all that is left is chest flys",
        "thinking of dropping chest flys",
    ],
)
def test_nothing_is_left_out(text: str) -> None:
    """A question, others, what is to come, how it went."""
    assert read(text, *STORED, current="Bench Press").skipped == ()
