"""Whose hurt it is where others are told of, and which place hurts where muscles are told of: in doubt the client's."""

import pytest

from bot.notation.pain import read_pain, told_pain

OWN = (
    "had to wait, somebody was on the rack, left knee hurts a bit",
    "skipping the machine, some guy has it, right elbow hurts",
    "scrap the last set, that was my brother's, left knee hurts",
    "my wife counted for me, right shoulder hurts a bit",
    "kid's got a fever so i left early, left wrist hurts",
    "that photo was for my sister, left hip hurts",
)
ANOTHERS = (
    "my gran is in hospital, hip broken",
    "saw a guy at the rack stumble, knee hurt badly",
    "my mate is limping, left knee hurts",
    "my sister's knee hurts",
)


@pytest.mark.parametrize("text", OWN)
def test_a_place_that_opens_a_clause_is_the_clients_own(text: str) -> None:
    """Somebody else's doings before a comma take no hurt from the client."""
    assert read_pain(text).pain is not None


@pytest.mark.parametrize("text", ANOTHERS)
def test_anothers_hurt_is_none_of_the_clients(text: str) -> None:
    """What is told of another's illness or fall stays the other's."""
    assert read_pain(text).pain is None


@pytest.mark.parametrize("text", ["grip went before the legs, left knee hurts a bit", "legs first, right knee hurts"])
def test_a_joint_beside_sore_muscles_hurts(text: str) -> None:
    """Of places told one behind the other, the one that is no muscle after training is kept."""
    pain = read_pain(text).pain
    assert pain is not None
    assert pain.where == "knee"


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("60x5 right knee pinched on the last", "knee"),
        ("ok left wrist hurts thanks", "wrist"),
        ("hey coach, my elbow hurts. the left one", "elbow"),
    ],
)
def test_pain_is_heard_whatever_its_signs(text: str, where: str) -> None:
    """Without commas, behind a greeting, in two sentences: the pain is told."""
    pain = told_pain(text)
    assert pain is not None
    assert pain.where == where
